// Words for strength and life.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"peak.device", "the upper bound of the overload device"},
    Phrase{"peak.implement", "the implement's peak"},
    Phrase{"peak.engine", "the engine lugged down to its peak torque"},
    Phrase{"peak.device_raised", "the upper bound of the overload device, raised on its way by joints at an angle"},
    Phrase{"peak.implement_raised", "the implement's peak, raised on its way by joints at an angle"},
    Phrase{"peak.engine_raised", "the engine lugged down to its peak torque, raised on its way by joints at an angle"},
    Phrase{"stub.strength_unstated",
           "Stub, its steel, the yoke's hub length or what sets the peak torque are not all stated."},
    Phrase{"stub.unknown_geometry", "The sizes of this stub are not known well enough to judge its strength."},
    Phrase{"strength.section_too_large",
           "Within the limit, but the strength was stated for a smaller section than this one, and "
           "a thicker bar is weaker: state the strength from a certificate."},
    Phrase{"stub.section.root", "between the teeth"},
    Phrase{"stub.section.groove", "in the retaining groove"},
    Phrase{"stub.root_torsion",
           "Peak torque {torque} ({origin}) on the smallest section, {diameter} {section}. The limit "
           "shown, yield over its margin, is reached at {capacity}."},
    Phrase{"stub.tooth_shear",
           "Peak torque {torque} ({origin}) on {engaged} of engaged spline, half of the teeth carrying. "
           "The limit shown, yield over its margin, is reached at {capacity}."},
    Phrase{"rise.unstated",
           "Joints that run unevenly, or one that is bent, raise the torque on its way to this part; how far is not "
           "known. By the torque of straight joints there would be no stop."},
    Phrase{"stub.faster",
           "Carry the power at 1000 r/min: the mean torque falls from {mean} to {mean_at_1000}, and every peak "
           "in proportion. It needs a tractor gear, a stub, a yoke and an implement for 1000."},
    Phrase{"stub.larger_type", "Use a larger PTO type or a stub of stronger steel, by the tractor's manual."},
    Phrase{"stub.flanks_loose",
           "Mean torque {mean} on {engaged} of engaged spline, all teeth carrying. The yoke sits with "
           "clearance, so that it rocks on the flanks in every turn: the whole pressure counts, over "
           "the turns of the wanted life. Beyond the first limit they wear, beyond yield they crush."},
    Phrase{"stub.flanks_clamped",
           "Mean torque {mean} on {engaged} of engaged spline, all teeth carrying. The yoke is clamped "
           "and does not rock: a ninth of the nominal pressure counts."},
    Phrase{"stub.flanks_clamp",
           "Use a yoke that clamps on the stub, keep the spline greased, and look at flanks and hub for "
           "wear at every coupling, engine off and key removed."},
    Phrase{"stub.flanks_longer", "Use a yoke with a longer hub or a larger PTO type."},
    Phrase{"tube.unstated",
           "Sizes and steel of the telescoping member or what sets the peak torque are not all stated."},
    Phrase{"tube.torsion",
           "Peak torque {torque} ({origin}). The limit shown, yield over its margin, is reached at {capacity}."},
    Phrase{"tube.larger", "Use a driveline of a larger size."},
    Phrase{"joint_rating.unstated",
           "The rating of the joints (their manual gives it) or what sets the peak torque is not stated."},
    Phrase{"joint_rating.peak", "Peak torque {value} ({origin}) against the rating by the manual."},
    Phrase{"joint_rating.larger", "Use a driveline whose joints are rated for more than {value}."},
    Phrase{"stub.root_at_angle",
           "Peak torque {torque} ({origin}) with a front joint angle of {angle}: the "
           "joint bends the stub by up to {couple}, once to each side in every turn. Combined stress (von Mises) on "
           "{diameter} {section}."},
    Phrase{"stub.root_at_angle_only",
           "Strong enough straight, not at this angle: peak torque {torque} ({origin}) with a front "
           "joint angle of {angle} bends the stub by up to {couple}, once to each side in every "
           "turn. Combined stress (von Mises) on {diameter} {section}."},
    Phrase{"stub.less_angle",
           "Make the front joint bend less while the shaft turns (pin distance, turn limit, height of the "
           "input), or let no more than {capacity} arrive."},
    Phrase{"part.stub", "the stub in torsion"},
    Phrase{"part.teeth", "the stub's spline teeth"},
    Phrase{"part.tube", "the telescoping member"},
    Phrase{"part.joints", "the joints"},
    Phrase{"window.unstated",
           "Overload device, peak factor, power need or the strength of a part of the line are not all stated."},
    Phrase{"window.within",
           "The work needs a setting of at least {lowest}; the weakest part, {part}, allows at most {highest}. "
           "The device sits between, its scatter included."},
    Phrase{"window.too_high",
           "The weakest part, {part}, may take at most {part_torque}; with margin and scatter the device may be set "
           "to {highest} at most. As it is set the part goes before the device does."},
    Phrase{"window.too_low",
           "The work itself reaches {working_peak}; with its scatter the device must be set to {lowest} at "
           "least, or it lets go in normal work, heats up and wears."},
    Phrase{"window.none_fitted",
           "No device is fitted, and implement or engine bring more than the {highest} that the weakest "
           "part, {part}, bears with margin."},
    Phrase{"window.none_fitted_small",
           "No device is fitted. Implement and engine alone stay below the {highest} that the weakest "
           "part, {part}, bears with margin, but a blockage against the turning masses is bounded "
           "by nothing."},
    Phrase{"start.unstated",
           "What bounds the torque at a start (overload device or the tractor's PTO clutch) or the strength of a "
           "part of the line is not stated."},
    Phrase{
        "start.device",
        "In a harsh start the overload device begins to slip at up to {value}; seen from there {part} may take at most "
        "{part_torque}."},
    Phrase{
        "start.device_behind",
        "In a harsh start the overload device begins to slip at up to {value}; seen from there {part} may take at most "
        "{part_torque}. "
        "This is static: ahead of a device at the implement end the shaft can swing to twice that, {twice}, when the "
        "rotor is stopped at once. State `start` to have start and blockage simulated."},
    Phrase{"start.clutch", "A harsh start brings up to {value}, where the tractor's PTO clutch slips; {part} yields at "
                           "{part_torque}."},
    Phrase{"start.gently",
           "Engage the PTO at low engine speed and let the clutch bite slowly; which setting of the overload "
           "device is right, if any, stands with its finding."},
    Phrase{"heal.faster",
           "Smallest change of the stub that bears it with this steel: {healing_type} at 1000 r/min, where a device "
           "that never slips in the work lets {healing_peak} through at most."},
    Phrase{"heal.steel",
           "No standard stub of this steel bears it: at 1000 r/min {healing_type} needs a tensile yield of at least "
           "{healing_yield}."},
    Phrase{"window.lower",
           "Set the overload device between {lowest} and {highest}, by its manual, and test that it still slips."},
    Phrase{"window.raise",
           "Set the overload device between {lowest} and {highest}, by its manual; never tighten it solid."},
    Phrase{"window.fit",
           "Fit an overload device at the implement end, set between {lowest} and {highest} less its scatter."},
    Phrase{"window.closed",
           "No setting is right: the work needs at least {lowest}, {part} allows at most {highest}. Make {part} "
           "stronger (larger size, higher speed), lower the implement's peaks, or use a device of less "
           "scatter."},
    Phrase{"life.unstated",
           "Stub and its tensile strength, power need, swing of the torque or the working positions are not all "
           "stated."},
    Phrase{"life.wanted",
           "Life class: {life}; wanted: {wanted}. Mean torque {mean}, swinging by {swing} to either side, and a front "
           "joint angle of {angle} that bends the stub by {couple} in every turn, together do the harm "
           "of a reversed stress of {value} (notched, 99 % reliability, Goodman)."},
    Phrase{"life.no_wish", "Life class: {life}; no wanted life is stated. Mean torque {mean}, swinging by {swing} to "
                           "either side, and a front "
                           "joint angle of {angle} that bends the stub by {couple} in every turn, together do the harm "
                           "of a reversed stress of {value} (notched, 99 % reliability, Goodman)."},
    Phrase{"life.outside",
           "Within the limit, but the steel is outside the range for which the fatigue formulas are stated."},
    Phrase{"stub.joint_past_lock", "The front joint would pass a right angle while the shaft turns."},
    Phrase{
        "pulsing.unstated",
        "Masses, shafts and which of them holds the joints, how strongly each pulse swings, mean torque, rating, yield "
        "of the parts or working positions are not all stated."},
    Phrase{"pulsing.endless", "A joint passes a right angle while it turns: its pulses have no bound there."},
    Phrase{
        "pulsing.in_work",
        "At a PTO speed of {speed}, the worst of {low} to {high}, all pulses together swing the torque of the "
        "driveline by {swing} to either side of its mean, {mean}: peaks of {value}, against the joints' rating and the "
        "yield of the weakest part, {part}. Most comes from {pulses}, {largest}. The line damps {damping} of "
        "critical."},
    Phrase{"pulsing.reverses",
           "At a PTO speed of {speed} all pulses together, {pulses} most, would swing the torque of the driveline by "
           "{swing}, beyond its mean, {mean}: it reverses, the line hammers through its play, and the peaks are not "
           "known."},
    Phrase{
        "pulsing.reverses_light",
        "At a PTO speed of {speed} all pulses together, {pulses} most, swing the torque of the driveline by {swing}. "
        "In the lightest part of the working time its mean is {least}: beyond that it reverses, the line hammers "
        "through its play, and the peaks are not known."},
    Phrase{
        "pulsing.reduce",
        "Work at speeds away from {speed}, bend the joints less and alike, fit a softer or more damping coupling, or "
        "make what pulses feed more evenly."},
    Phrase{"pulsing.device",
           "The overload device may let go at {device}, below these peaks: it slips or tires in every pulse and gets "
           "hot. That is no protection; calm the line first."},
    Phrase{
        "bearing.unstated",
        "Load rating and arm of the bearings, shares, power and angle of each part of the working time, or else power "
        "need and working positions, are not all stated."},
    Phrase{
        "bearing.leaves_out",
        "No part of the working time as stated is the heaviest work, {need}: what wears the bearings most is left out, "
        "and the life is not known."},
    Phrase{"bearing.past_lock", "A joint would pass a right angle in work."},
    Phrase{"bearing.no_wish",
           "Nine crosses of ten would reach {value} of running under {torque} at {speed}, joint bent {angle}; the case "
           "does not say how long they shall last."},
    Phrase{
        "bearing.of_work",
        "Nine crosses of ten reach {value} of running under the mean torque of the heaviest work, {torque} at {speed}, "
        "joint bent {angle}: {force} on each bearing, up to {peak} in the turn, of a rating of {rating}. Greased as "
        "the manual says; dry or dirty needles last a fraction of it."},
    Phrase{
        "bearing.of_parts",
        "Nine crosses of ten reach {value} of running over the parts of the working time, which wear them like "
        "{torque} at {speed}, joint bent {angle}, all the time. In the heaviest part, {heaviest}, each bearing takes "
        "{force}, up to {peak} in the turn, of a rating of {rating}. Greased as the manual says; dry or dirty needles "
        "last a fraction of it."},
    Phrase{
        "bearing.beyond_numbers",
        "By the life formula nine crosses of ten would outlast {value} of running, which is more than any machine of "
        "the trade runs: so long a life is no number to plan with, and means only that these loads do not wear them "
        "out. In the heaviest part, {heaviest}, each bearing takes {force}, up to {peak} in the turn, of a rating of "
        "{rating}."},
    Phrase{
        "bearing.small_share",
        "Only {share} of the working time is stated under the full need of power, {need}: less than {least_share} is "
        "hardly ever true. State how long the heaviest work really lasts, else the life comes out too long."},
    Phrase{
        "bearing.small_angle",
        "Under the full need of power, {need}, the parts of the working time bend the joints by {stated_angle} at "
        "most, and the positions in work of this same case bend them up to {working_angle}. State the angle at which "
        "the heaviest work is done, else the life comes out too long."},
    Phrase{"bearing.beyond_half",
           "In the heaviest part, {heaviest}, each bearing takes {force}, more than half of its rating, {rating}: the "
           "life formula is not meant for such loads."},
    Phrase{
        "bearing.larger",
        "Use a driveline of a larger size, whose joints have larger bearings, or bend them less; a faster PTO carries "
        "the same power at less torque."},
    Phrase{"life.lengthen",
           "Bend the front joint less in work, or use a tractor and an implement that are made for a larger PTO type."},
    Phrase{"life.under_10_h", "under 10 h"},
    Phrase{"life.from_10_to_100_h", "10 to 100 h"},
    Phrase{"life.from_100_to_1000_h", "100 to 1000 h"},
    Phrase{"life.from_1000_to_10000_h", "1000 to 10 000 h"},
    Phrase{"life.beyond_10000_h", "beyond 10 000 h"},
};

} // namespace

Phrases strength_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
