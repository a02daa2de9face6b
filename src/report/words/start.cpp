// Words for start, blockage and run-down.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"simulated.unstated", "Not everything is stated that a simulation of the start needs."},
    Phrase{"simulated.endless", "A joint passes a right angle in work: what it does to a start has no bound."},
    Phrase{"simulated.ended_early",
           "The simulation came to {reached} only: the line as stated is too stiff, or its clutches "
           "stick and slip without end."},
    Phrase{"simulated.never_follows",
           "The rotor is not taken along: after {reached} of a simulated start it turns at {rotor} (of the input). The "
           "tractor's PTO clutch ({clutch}) or the overload device slips on and would burn, or has let go."},
    Phrase{"simulated.start",
           "Simulated start: the clutch has taken the rotor along after {time}, and the highest torque "
           "in the line is {value}; {part} may take at most {part_torque}."},
    Phrase{
        "simulated.start_with_device",
        "Simulated start: the clutch has taken the rotor along after {time}, the overload device slips for {slip} on "
        "the way, and the highest torque in the line is {value}; {part} may take at most {part_torque}."},
    Phrase{"simulated.lets_go",
           "Simulated start: it brings {brought} to the overload device, which then lets go or slips on, and the rotor "
           "is not taken along: set to {setting}, it does so in every such start. Only at the upper end of its scatter "
           "it holds, with {value} in the line."},
    Phrase{"simulated.may_let_go",
           "Simulated start: it brings {brought} to the overload device, which is set to {setting}. A device at the "
           "lower end of its scatter, {least}, lets go or slips on, and the rotor is not taken along. The highest "
           "torque in the line is {value}; {part} may take at most {part_torque}."},
    Phrase{"simulated.hold",
           "Engage at low engine speed and without load, or set the device higher where the weakest part bears it: one "
           "that lets go in starts is worn, or its bolt is replaced by a stronger one, and then nothing protects."},
    Phrase{"braked.unstated",
           "What the tractor's PTO brake does to the line is not known: overrunning clutch, torque of the brake, or "
           "what a simulation of the line needs are not all stated."},
    Phrase{"braked.no_brake", "The tractor does not brake its PTO: the line runs down by itself."},
    Phrase{
        "braked.peak",
        "Simulated stop: the PTO clutch lets go and the tractor brakes its PTO with {brake}. Without an overrunning "
        "clutch the rotor drives the line on from behind, and the torque in it swings to {value} the other way; {part} "
        "may take at most {part_torque}."},
    Phrase{"braked.overrun",
           "Fit an overrunning clutch at the implement where its manual allows it, or let the rotor slow down at low "
           "engine speed before the PTO is let go."},
    Phrase{"simulated.heat",
           "One simulated start makes this heat in the tractor's PTO clutch, which slips for {slip}."},
    Phrase{"simulated.heat_without_limit", "One simulated start makes this heat in the tractor's PTO clutch, which "
                                           "slips for {slip}. What the clutch bears "
                                           "is not stated; starts in quick succession add up."},
    Phrase{"simulated.heat_without_end",
           "The rotor is not taken along: a clutch goes on slipping and heating without end."},
    Phrase{"simulated.cool", "Engage at low engine speed and without load, and let the clutch cool between starts; the "
                             "tractor's manual says how."},
    Phrase{"blocked.device",
           "Simulated blockage: if something stops the rotor at once, the torque in the line swings to {value}; the "
           "device is set to {setting}, and without it {without} would arrive; {part} may take at most {part_torque}."},
    Phrase{
        "blocked.within",
        "Simulated blockage: if something stops the rotor, at once or within some hundredths of a second, the torque "
        "in "
        "the line swings to {value} at the worst; the device is set to {setting} and lets go, and without it {without} "
        "would arrive; {part} may take at most {part_torque}."},
    Phrase{"blocked.slips",
           "Simulated blockage: if something stops the rotor at once, the overload clutch, set to {setting}, slips and "
           "lets the torque in the line swing to {value}; without it {without} would arrive; {part} may take at "
           "most {part_torque}. Slipping it turns {heating} into heat until the PTO is let go: let go at once."},
    Phrase{"blocked.no_device",
           "Simulated blockage: if something stops the rotor at once, {value} arrive, and no overload "
           "device stands between; {part} may take at most {part_torque}."},
    Phrase{
        "blocked.lower",
        "Set the device lower if the work allows it (the swing passes the setting, up to twice as high), or choose the "
        "stronger part."},
    Phrase{"blocked.fit", "Fit an overload device at the implement."},
    Phrase{"run_down.unstated",
           "How long the rotor runs on is not known. Whatever it is: stop the engine, remove the key and wait until "
           "everything stands still."},
    Phrase{
        "run_down.overrunning",
        "Behind its overrunning clutch the rotor runs on from {speed} for at least about {value}, while the driveline "
        "may stand already."},
    Phrase{"run_down.coupled", "With the PTO let go the rotor runs on from {speed} for at least about {value}."},
    Phrase{"run_down.wait",
           "The time is an estimate and no permission: stop the engine, remove the key and go near nothing "
           "before everything stands still."},
};

} // namespace

Phrases start_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
