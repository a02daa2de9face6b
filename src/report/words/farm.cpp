// Words for the study of a farm.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"farm.title", "Farm study: {farm}"},
    Phrase{"farm.title.unnamed", "Farm study"},
    // The verdict: what follows its word.
    Phrase{"farm.verdict.never", ": no tractor of the farm can be said to run: {implements}."},
    Phrase{"farm.verdict.single", ": every implement has a tractor, but with one tractor down something stands still."},
    Phrase{"farm.verdict.backed", ": every implement has two tractors or more."},
    Phrase{"farm.counts", "{runs} of {all} pairs work, {not_known} are not known, {stop} have an objection."},
    Phrase{"farm.screened",
           "This is a screening: power, speed, stub, yoke, drawbar hole and guards were looked at; strength, "
           "joint angles and the length of the driveline were not. A pair that passes here still needs a "
           "whole assessment."},
    Phrase{"farm.certified", "Each pair was assessed whole, in every gear, stub, hitch position and driveline that the "
                             "farm has for it; the best set-up counts."},
    Phrase{"farm.label.note", "Note"},
    // The matrix.
    Phrase{"farm.heading.matrix", "Which tractor runs which implement"},
    Phrase{"farm.column.implement", "Implement"},
    Phrase{"farm.column.tractor", "Tractor"},
    Phrase{"farm.column.verdict", "Verdict"},
    Phrase{"farm.column.why", "What governs"},
    Phrase{"farm.column.set_up", "Gear, stub, driveline"},
    Phrase{"farm.set_up", "{gear}; {stub}; {driveline}"},
    Phrase{"farm.none", "none"},
    Phrase{"farm.nobody", "nothing"},
    Phrase{"farm.heading.pairs", "The pairs one by one"},
    Phrase{"farm.governs", "{check}: {figures}"},
    Phrase{"farm.heading.runs", "What each tractor runs"},
    // Backup.
    Phrase{"farm.heading.down", "What stands still when a tractor is down"},
    Phrase{"farm.down.one", "Without {tractors}: {implements}."},
    Phrase{"farm.down.two", "Without both {tractors}, moreover: {implements}."},
    Phrase{"farm.down.never", "Even with all tractors up, none can be said to run: {implements}."},
    Phrase{"farm.down.nothing",
           "Nothing: with any one or two tractors down, another can stand in for every implement."},
    Phrase{"farm.down.scope", "Whether the tractor that stands in has the time is not looked at."},
    // The plan.
    Phrase{"farm.heading.plan", "The fewest changes that give every implement a backup"},
    Phrase{"farm.heading.some_plan", "Changes that give more implements a backup"},
    Phrase{"farm.plan.none", "None is needed."},
    Phrase{
        "farm.plan.no_way",
        "None of the options of this farm, nor any remedy that was found, alone or together, gives a further backup."},
    Phrase{"farm.plan.none_found", "None was found."},
    Phrase{"farm.plan.option", "Take the option \"{option}\"."},
    Phrase{"farm.plan.remedy", "Bring {tractor} to run {implement}: {changes}"},
    Phrase{"farm.plan.without", "Still with fewer than two tractors, whatever of this is changed: {implements}."},
    Phrase{"farm.plan.still_without", "Still with fewer than two tractors: {implements}."},
    Phrase{"farm.plan.lost", "What works today and no longer with these changes: {pairs}."},
    Phrase{"farm.plan.exact",
           "Proved among these options and the remedies that were found: each set was judged on the farm as it leaves "
           "it. What is changed on an implement, a driveline or a guard counts with every tractor that uses it; with "
           "fewer "
           "changes less is reached."},
    Phrase{"farm.plan.bound", "Found step by step and judged on the farm as these changes leave it. A plan that "
                              "reaches more may exist; none with fewer than {n} changes reaches as much."},
    Phrase{
        "farm.plan.not_all",
        "Looked for step by step, not in every combination: some of these changes together may still give a backup."},
    // "Do I need 1000 as well?"
    Phrase{"farm.heading.speed", "Do I need {speed} r/min?"},
    Phrase{"farm.speed.not_needed", "No: no implement of the farm is made for it."},
    Phrase{"farm.speed.covered", "It is needed and there. Made for it, and run by two tractors or more: {implements}."},
    Phrase{"farm.speed.for_backup",
           "Yes, and you have it ({tractors}): without the one tractor that runs it this stands still: {single}. On a "
           "further tractor it is a backup, not needed to get the work done."},
    Phrase{"farm.speed.to_run", "Yes. Made for it, and no tractor can be said to run it: {not_run}."},
    Phrase{"farm.speed.tractors", "Tractors that have this speed: {tractors}."},
    Phrase{"farm.speed.half",
           "Same power at nearly twice the speed takes about half the torque (1000 against 540 r/min: "
           "0.54). {implements} needs more power than is recommended for a six-spline shaft at 540 "
           "r/min: a version for 1000 r/min would load the shaft less."},
    Phrase{"farm.speed.option", "The option \"{option}\" brings it: {answer}."},
    Phrase{"farm.speed.never", "An implement made for 540 r/min is never run at 1000, whatever the tractor offers."},
    // Money.
    Phrase{"farm.heading.pay", "Does it pay?"},
    Phrase{"farm.pay.yes", "pays"},
    Phrase{"farm.pay.narrowly", "pays narrowly"},
    Phrase{"farm.pay.no", "does not pay"},
    Phrase{"farm.pay.not_quite", "does not quite pay"},
    Phrase{"farm.pay.turns", "The answer for \"{option}\" stands on the edge: one figure a fifth off turns it over "
                             "({figures})."},
    Phrase{"farm.pay.not_known", "not known whether it pays"},
    Phrase{"farm.pay.missing", "\"{option}\": not known; state {entries}."},
    Phrase{"farm.pay.caption",
           "What a year gets better (above zero) or worse (below), mean over the years of the study"},
    Phrase{"farm.column.option", "Option"},
    Phrase{"farm.column.ownership", "Owning"},
    Phrase{"farm.column.repair", "Repair"},
    Phrase{"farm.column.running", "Fuel, hours"},
    Phrase{"farm.column.hire", "Hire"},
    Phrase{"farm.column.net", "Net"},
    Phrase{"farm.column.payback", "Paid back"},
    Phrase{"farm.column.answer", "Answer"},
    Phrase{"farm.payback.years", "{years} years"},
    Phrase{"farm.payback.never", "never"},
    Phrase{"farm.payback.by_sale", "by what is sold"},
    Phrase{"farm.pay.gained", "\"{option}\" brings to work: {pairs}."},
    Phrase{"farm.pay.gained_none", "\"{option}\" brings no further pair to work."},
    Phrase{"farm.pay.lost", "\"{option}\" gives up: {pairs}."},
    Phrase{"farm.pair", "{tractor} with {implement}"},
    Phrase{"farm.sensitivity.caption", "Net of a year when one figure is a fifth lower or higher"},
    Phrase{"farm.column.figure", "Figure"},
    Phrase{"farm.column.low", "20 % lower"},
    Phrase{"farm.column.high", "20 % higher"},
    Phrase{"farm.figure.price", "price"},
    Phrase{"farm.figure.hours", "hours"},
    Phrase{"farm.figure.fuel_price", "price of fuel"},
    Phrase{"farm.figure.interest", "interest"},
    Phrase{"farm.remark.worth_nothing",
           "For \"{option}\" no value at the end is stated: it is taken to be worth nothing then."},
    Phrase{"farm.remark.value_held", "For \"{option}\" a value at the end would be more than is paid or fetched for "
                                     "the machine at the start; it is held there."},
    Phrase{"farm.remark.other_hours", "\"{option}\" is stated with other hours a year than the implement that it "
                                      "replaces: the answer holds only if both do the same work in their hours."},
    Phrase{"farm.remark.no_repair", "For \"{option}\" no repair class is stated: its repairs are not counted."},
    Phrase{
        "farm.remark.old_worth_nothing",
        "What the implement given up for \"{option}\" would still have been worth at the end is not stated and counts "
        "as nothing."},
    Phrase{"farm.remark.fuel_range",
           "For \"{option}\" some loads lie outside the 20 to 100 % of rated power for which the "
           "fuel equation is meant."},
    Phrase{"farm.remark.never_down",
           "For \"{option}\" no tractor has a share of the season in which it is down: the worth "
           "of a backup is not counted."},
    Phrase{"farm.remark.hours_not_priced",
           "\"{option}\" makes hours possible for which no hire price is stated: {hours} a "
           "year, not counted."},
    Phrase{"farm.pay.scope", "Fuel by the average of many tractors, repairs and remaining values by averages that are "
                             "remembered and not yet verified; labour, timeliness and tax are left out."},
    // Remedies.
    Phrase{"farm.heading.remedies", "What would bring the other pairs to work"},
    Phrase{"farm.remedy.found", "{pair}: {changes}"},
    Phrase{"farm.remedy.price", "{pair}: {changes} ({price})"},
    Phrase{"farm.remedy.partly", "{pair}: no set of changes was found that heals everything; nearest: {changes}"},
    Phrase{"farm.remedy.state", "{pair}: not known. State first {entries}."},
    Phrase{"farm.remedy.entries", "of {owner}: {entries}"},
    Phrase{"farm.its_driveline", "the driveline"},
    Phrase{"farm.remedy.option", "{pair}: take the option \"{option}\"."},
    Phrase{"farm.heading.changeover", "Changing {tractor} over from {from} to {to}, for {implements}"},
    Phrase{"farm.remedy.none", "{pair}: no remedy was found."},
    Phrase{"farm.remedy.spoils", "That would take away what works today: {pairs}."},
    Phrase{"farm.remedy.scope", "Each set that heals was verified by assessing the changed pair, and the pairs that "
                                "share the changed implement, driveline or guard were judged anew with it."},
};

} // namespace

Phrases farm_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
