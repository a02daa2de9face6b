// Words for the page of an assessment: headings, columns, the verdict, figures and limits.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    // The page and what stands above it.
    Phrase{"assessment.title", "PTO check: {case}"},
    Phrase{"assessment.title_of_machines", "PTO check: {tractor} with {implement}"},
    Phrase{"assessment.tractor", "Tractor"},
    Phrase{"assessment.implement", "Implement"},
    Phrase{"assessment.note", "Note"},
    // The verdict; the word for it stands before.
    Phrase{"headline.stop", ": {objections} in {checks}. Do not run this combination as it is."},
    Phrase{"headline.stop_and_unknown",
           ": {objections} in {checks}, {unknown} not known. Do not run this combination as it is."},
    Phrase{"headline.not_known", ": {unknown} of {checks} cannot be decided with what the case states."},
    Phrase{"headline.caution", ": {cautions} in {checks}."},
    Phrase{"headline.high_need", "At the high end of the table's need {n} of the cautions would be a stop: only at its "
                                 "mean do they pass."},
    Phrase{"headline.ok", " in {checks}."},
    Phrase{"headline.one_reason", "{n} of those not known have one reason: {reason}"},
    Phrase{"headline.state",
           "Entries of the case to be stated: {n} (list below; it says how many checks wait for each)."},
    Phrase{"count.check.one", "{n} check"},
    Phrase{"count.check.many", "{n} checks"},
    Phrase{"count.objection.one", "{n} objection"},
    Phrase{"count.objection.many", "{n} objections"},
    Phrase{"count.caution.one", "{n} caution"},
    Phrase{"count.caution.many", "{n} cautions"},
    // Headings.
    Phrase{"heading.change", "What to change"},
    Phrase{"heading.state", "What to state in the case"},
    Phrase{"heading.before", "Before any work on it"},
    Phrase{"heading.glance", "All checks at a glance"},
    Phrase{"heading.stop", "Stop: why"},
    Phrase{"heading.not_known", "Not known: why"},
    Phrase{"heading.caution", "Caution: why"},
    Phrase{"heading.ok", "No objection: what was found"},
    Phrase{"heading.not_examined", "Not examined"},
    Phrase{"finding.to_be_examined", "The case says nothing of what follows. To have it examined, state the entries:"},
    // Columns.
    Phrase{"column.check", "Check"},
    Phrase{"column.status", "Status"},
    Phrase{"column.value", "Value"},
    Phrase{"column.limit", "Limit"},
    Phrase{"column.room", "Room"},
    Phrase{"column.number", "No."},
    Phrase{"column.entry", "Entry"},
    Phrase{"column.meaning", "What it is"},
    Phrase{"column.waiting", "Checks"},
    Phrase{"column.fill_in", "To fill in"},
    // Figures of a finding.
    Phrase{"figures.single_limit", "{value} (limit: {limit})"},
    Phrase{"figures.single_limit_and_room", "{value} (limit: {limit}; {room})"},
    Phrase{"figures.two_limits", "{value} ({limit})"},
    Phrase{"figures.two_limits_and_room", "{value} ({limit}; {room})"},
    Phrase{"figures.where", "{figures}, {condition}"},
    Phrase{"limit.at_most", "at most {limit}"},
    Phrase{"limit.at_least", "at least {limit}"},
    Phrase{"limit.equal", "{limit}"},
    Phrase{"limit.above_two", "caution above {caution}, stop above {stop}"},
    Phrase{"limit.above_caution", "caution above {caution}"},
    Phrase{"limit.below_caution", "caution below {caution}"},
    Phrase{"limit.below_two", "caution below {caution}, stop below {stop}"},
    Phrase{"room.in_hand", "{share} % in hand"},
    Phrase{"room.beyond", "{share} % beyond"},
    // A pose.
    Phrase{"pose.left", "turned {angle} to the left"},
    Phrase{"pose.right", "turned {angle} to the right"},
    Phrase{"pose.hollow", "in a hollow of {angle}"},
    Phrase{"pose.crest", "over a crest of {angle}"},
    Phrase{"pose.front_up", "implement's front end tilted up by {angle}"},
    Phrase{"pose.front_down", "implement's front end tilted down by {angle}"},
    Phrase{"pose.left_up", "implement's left side up by {angle}"},
    Phrase{"pose.right_up", "implement's right side up by {angle}"},
    Phrase{"pose.straight", "straight and level"},
    Phrase{"pose.lift_above", "hitch points {lift} above the front pivots of the lower links"},
    Phrase{"pose.lift_below", "hitch points {lift} below the front pivots of the lower links"},
    // A finding.
    Phrase{"finding.worst", "{reason} Worst {condition}."},
    Phrase{"finding.state", "Waits for the entries {numbers} of the list above."},
    Phrase{"finding.do_not_apply", "Nothing in the case asks for {n} further checks: {subjects}."},
    Phrase{"finding.one_reason", "{n} checks for one reason"},
    Phrase{"finding.note", "{source} [{standing}]"},
};

} // namespace

Phrases assessment_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
