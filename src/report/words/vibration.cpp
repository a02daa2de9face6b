// Words for smooth running: whirling, resonance and the phase of the yokes.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"whirl.unstated",
           "Both members of the telescope are examined together over all positions in which they turn: their sizes, "
           "lengths, the positions or the highest speed are not all stated."},
    Phrase{"whirl.apart", "At the longest driven position the members come apart: there is no shaft to examine."},
    Phrase{"whirl.stout", "The members are too stout for the theory of slender shafts."},
    Phrase{"whirl.in_range",
           "With the engine at high idle the driveline turns at {speed}, which is {value} of the lowest speed at which "
           "it would whirl, {critical}, at {length} between the joint centres. Play and wear of the telescope, "
           "and bent or dented tubes, lower that speed further."},
    Phrase{"whirl.shorten",
           "Fit members of larger diameter, or a shorter driveline with a bearing between, or limit the positions that "
           "pull it out this far while it turns; a whirling shaft bends, breaks and flails."},
    Phrase{"vibration.extreme", "The sizes as stated lie too far apart to be computed with."},
    Phrase{"resonance.unstated", "Masses, shafts, pulses or speeds of the torsional line are not all stated."},
    Phrase{"resonance.no_pulse", "Both joints are wide-angle and the case names nothing else that pulses in the line."},
    Phrase{"resonance.joints", "the joints (two pulses in a turn)"},
    Phrase{"resonance.joints_four", "the joints (four weaker pulses in a turn)"},
    Phrase{
        "resonance.weak_within",
        "At a PTO speed of {critical}, within the {low} to {high} at which the machine works, {pulses} meet a natural "
        "frequency of the line, {natural}. The smaller the joint angles, the less they do; the torque under all pulses "
        "says how much."},
    Phrase{"resonance.apart",
           "At PTO speeds from {low} to {high} pulses come no nearer than {value} to a natural frequency of the line: "
           "{pulses} meet its {natural} at a PTO speed of {critical}."},
    Phrase{
        "resonance.within",
        "At a PTO speed of {critical}, within the {low} to {high} at which the machine works, {pulses} meet a natural "
        "frequency of the line, {natural}: it swings itself up and multiplies the torque in its shafts."},
    Phrase{
        "resonance.shift",
        "Work at speeds away from {critical}, or shift the natural frequency: a softer coupling or a longer, thinner "
        "shaft lowers it, a stiffer one raises it; smaller and equal joint angles make their pulses weaker."},
    Phrase{"resonance.other_gear",
           "Do not change to the gear \"{gear}\" without thought: there {gear_pulses} meet a natural frequency of the "
           "line, {gear_natural}, at a PTO speed of {gear_critical}, {gear_separation} away from the working speeds."},
    Phrase{"resonance.play",
           "The line has play. What is said of its frequencies holds only while its torque never reverses, and the "
           "case does not say how far the torque swings."},
    Phrase{"resonance.apart_with_play",
           "At PTO speeds from {low} to {high} pulses come no nearer than {value} to a natural frequency of the line: "
           "{pulses} meet its {natural} at a PTO speed of {critical}. The line has play: this holds only while its "
           "torque never reverses. Without load the play hammers: let it idle no longer than needed."},
    Phrase{
        "phase.best",
        "At the position looked at where they are worst the joints bend {front} and {rear}; at a yoke phase of {phase} "
        "the pair is as uneven as a single joint bent {equivalent}: {value} of the PTO speed. No other "
        "phase of the yokes is smoother over these positions; only more equal angles are."},
    Phrase{
        "phase.best_of_positions",
        "At the position looked at where they are worst the joints bend {front} and {rear}; at a yoke phase of {phase} "
        "the pair is as uneven as a single joint bent {equivalent}: {value} of the PTO speed. No other "
        "position of the telescope is smoother. Put together one position wrong ({step}) it would run like a joint "
        "bent {wrong_equivalent}, {wrong_variation}: mark both members before taking them apart."},
    Phrase{
        "phase.better",
        "At the position looked at where they are worst the joints bend {front} and {rear}; at a yoke phase of {phase} "
        "the pair is as uneven as a single joint bent {equivalent}: {value} of the PTO speed, twice in "
        "every turn. With the rear yoke {best_phase} from the front one it would be {best_variation}."},
    Phrase{"phase.set",
           "Engine off, key out, everything at rest: take the telescope apart and turn its rear half by {turn} "
           "(clockwise, seen from the tractor, where positive), so that the rear yoke stands {best_phase} from the "
           "front one: the implement's shaft then turns unevenly by {best_variation} of the PTO speed instead of "
           "{value}. Half "
           "a turn more is the same. Mark both members."},
    Phrase{"swing.unstated",
           "Inertia behind the driveline, its stiffness, mean torque, joints or working positions are not all stated."},
    Phrase{"swing.near_resonance",
           "At PTO speeds from {low} to {high} the joints' two pulses in a turn come within a tenth of the natural "
           "frequency of driveline and rotor, nearest at {speed}: there damping that nobody knows decides how far the "
           "torque swings."},
    Phrase{
        "swing.driven",
        "At the worst position and speed, {speed} of {low} to {high}, the joints run like a single one bent "
        "{equivalent} and make the torque swing "
        "by {swing} to either side of its mean, {mean}, twice in every turn: peaks of {peak}. Bent {front}, the "
        "front joint with these peaks bends the tractor's stub by a couple of up to {front_couple}; bent {rear}, the "
        "rear joint bends the implement's input shaft and loads its bearings with up to {couple}."},
    Phrase{"swing.reverses_light",
           "At the worst position and speed, {speed} of {low} to {high}, the joints run like a single one bent "
           "{equivalent} and make the torque swing by {swing} to either side of its mean. In the lightest part of the "
           "working time that mean is {least}: there the torque reverses twice in every turn and the line hammers "
           "through its play. Under the full need, {mean}, the peaks are {peak}."},
    Phrase{"swing.endless", "A joint passes a right angle while it turns: its torque has no bound there."},
    Phrase{"swing.support",
           "Hold the implement's input shaft in bearings that bear it: {span} apart, each of the two takes up to "
           "{support} from the couple alone, twice in every turn, besides the pull of gears or belts."},
    Phrase{"swing.reduce",
           "Make the joint angles smaller and equal, or fit a softer coupling: beyond its mean the torque reverses in "
           "every turn and the line hammers through its play."},
};

} // namespace

Phrases vibration_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
