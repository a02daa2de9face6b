// Words for power.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"power.interface.unstated", "Type of the stub, PTO speed and power need are not all stated."},
    Phrase{"power.interface.no_edition",
           "No edition is known that recommends a power for this stub ({stub}) at {speed}."},
    Phrase{"power.interface",
           "For {stub} at {speed} the standards recommend at most {lowest} in the strictest and {highest} in "
           "the widest edition; the implement needs {value} (mean torque {torque})."},
    Phrase{"power.interface.faster",
           "Use an implement and a tractor for 1000 r/min, where the same power asks {torque_at_1000} instead of "
           "{torque} of the stub, or a smaller implement."},
    Phrase{"power.interface.smaller", "Use a larger PTO type at the same power, or an implement that needs less."},
    Phrase{"power.through.unstated", "Tractor power and its basis, type of the stub and PTO speed are not all stated."},
    Phrase{"power.through", "The tractor can put up to {value} into a stub for which the widest edition recommends "
                            "{limit}. What it really puts in is set by the implement and its overload device."},
    Phrase{"power.through.device",
           "Fit and test an overload device at the implement end, set within its window: nothing "
           "else keeps the tractor's power off the stub when the implement blocks."},
    Phrase{"power.through.look",
           "See whether an overload device is fitted at the implement end, and state it: nothing else keeps the "
           "tractor's power off the stub when the implement blocks."},
    Phrase{"power.through.test",
           "Test that the overload device still lets go where it is set to, before each season and after long "
           "rest: nothing else keeps the tractor's power off the stub when the implement blocks."},
    Phrase{"power.reserve.unstated", "Tractor power, its basis, engine speeds (with a curve: one that reaches down to "
                                     "the gear's) and power need are "
                                     "not all stated."},
    Phrase{"power.reserve",
           "In gear \"{gear}\" the PTO can give {available_low} to {available_high}; the implement needs "
           "{value}, and {reserve} % of the power should be left over in the heaviest work."},
    Phrase{"power.reserve.one",
           "In gear \"{gear}\" the PTO can give {available_high}; the implement needs {value}, and {reserve} % of the "
           "power should be left over in the heaviest work."},
    Phrase{"power.reserve.lacking", "Take a smaller working width or forward speed, or a stronger tractor."},
    Phrase{"need.unstated", "The table's row \"{machine}\" goes with entries that are not stated."},
    Phrase{"need.row",
           "The published table gives a \"{machine}\" {low} to {high} at its input, {value} on average. Everything is "
           "judged at the high end; a stop is raised where the average is too much already. With the wanted reserve, "
           "and with pull, climb and hydraulics where all of them are stated, the high end asks for a tractor of at "
           "least {tractor} at the PTO."},
    Phrase{"need.row_noted",
           "The published table gives a \"{machine}\" {low} to {high} at its input, {value} on average ({note}). "
           "Everything is judged at the high end; a stop is raised where the average is too much already. With the "
           "wanted reserve, and with pull, climb and hydraulics where all of them are stated, the high end asks for a "
           "tractor of at least {tractor} at the PTO."},
    Phrase{
        "need.row_note_open",
        "The published table gives a \"{machine}\" {low} to {high} at its input, {value} on average. Its note may "
        "apply "
        "({note}): the high end counts it, the low end and the average do not. Everything is judged at the high end; a "
        "stop is raised where the average is too much already. With the wanted reserve, and with pull, climb and "
        "hydraulics where all of them are stated, the high end asks for a tractor of at least {tractor} at the PTO."},
    Phrase{"need.state_note",
           "State with implement.note_applies whether the note of the table's row is so here: {note}."},
    Phrase{"need.stated",
           "The case states {value}; for a \"{machine}\" of this size the published table gives {low} to "
           "{high}. The stated figure counts."},
    Phrase{"need.look_again",
           "Look at the stated need again: less than half of the table's low end ({low}) is what a slip of the unit, a "
           "need of light work or a machine that runs empty looks like. The heaviest work counts."},
    Phrase{"need.high_end", "Find out what the implement really needs, from its manual or by measuring: at the high "
                            "end of the table's need "
                            "the power or the strength is not enough, only at its mean."},
    Phrase{"finding.at_high_need",
           "Beyond the limit for a stop at the high end of the table's need; a caution because its "
           "mean passes."},
    Phrase{"need.row_unsized",
           "The published table gives a \"{machine}\" {low} to {high} at its input, {value} on average ({note}). How "
           "large a tractor that asks for is not known before ground speed, climb, hydraulics, ground and what drives "
           "the tractor are stated: the draft belongs to the need."},
    Phrase{
        "need.row_measured",
        "The published table gives a \"{machine}\" {value} on average, but a published measurement reaches {high}. "
        "Everything is judged there; a stop is raised where the table's average is too much already. With the wanted "
        "reserve, and with pull, climb and hydraulics where all of them are stated, the measurement asks for a "
        "tractor of at least {tractor} at the PTO."},
    Phrase{"load.unstated", "Pull, ground speed, climb, hydraulics, ground and what drives the tractor are not all "
                            "stated."},
    Phrase{"load.whole",
           "The PTO takes {pto}; pull and a climb of {slope} take {pull} at the wheels, which {share} % of a PTO power "
           "reach; hydraulics take {hydraulic}. Together that loads the engine like {value} at the PTO, of which "
           "{reserve} % should be left over in gear \"{gear}\"."},
    Phrase{"load.lacking", "Drive slower, take a smaller working width, keep to gentler slopes, or take a stronger "
                           "tractor."},
    Phrase{"power.permitted.unstated",
           "The implement's highest permitted input power is not stated (its manual gives it)."},
    Phrase{"power.permitted", "The implement may take {limit}; the tractor can give up to {value}."},
    Phrase{"power.permitted.advice",
           "Ask the implement's maker which overload device lets it run on this tractor, or use "
           "a smaller tractor."},
};

} // namespace

Phrases power_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
