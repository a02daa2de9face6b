#include "report/catalogue.hpp"

#include <algorithm>
#include <array>

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

struct Phrase {
  std::string_view id;
  std::string_view text;
};

constexpr std::array phrases = {
    // PTO speed.
    Phrase{"speed.unstated", "The speeds of the engaged gear and of the implement are not both stated."},
    Phrase{
        "speed.match",
        "The engaged gear \"{gear}\" turns the PTO at the speed for which the implement is made (within {tolerance})."},
    Phrase{"speed.too_fast",
           "The engaged gear \"{gear}\" turns the PTO at {value}; the implement is made for {limit}. "
           "At {ratio} times its speed every pull on its rotating parts is {pull_ratio} times as large."},
    Phrase{
        "speed.too_fast_rotor",
        "The engaged gear \"{gear}\" turns the PTO at {value}; the implement is made for {limit}. At {ratio} times "
        "its speed the pull on the blades and the energy in the rotor are {pull_ratio} times as large, and the blade "
        "tips would reach {tip_speed}. Parts break off and objects are thrown."},
    Phrase{"speed.too_slow", "The engaged gear \"{gear}\" turns the PTO at {value}; the implement is made for {limit}. "
                             "For the same power the torque on every shaft is larger in the same ratio."},
    Phrase{"speed.select_gear", "Stop engine and PTO, wait until everything stands still, then select the gear "
                                "\"{right_gear}\", which gives {limit}; see that the stub is the one for that speed."},
    Phrase{"speed.no_gear", "Use a tractor that has a PTO gear for {limit}: this one lists none. No adaptor and no "
                            "off-speed running makes up for it."},
    Phrase{"speed.judge_later",
           "Not judged until the PTO is known to turn at the implement's own speed: what the implement needs "
           "at another speed is not known."},
    Phrase{"stub.unstated", "The stub and the engaged gear are not both stated."},
    Phrase{"stub.no_type", "The stub fits no known type, so its speed is not known."},
    Phrase{"stub.agrees", "The stub, {stub}, and the engaged gear \"{gear}\" mean the same speed."},
    Phrase{"stub.disagrees",
           "The stub, {stub}, stands for {limit}, but the engaged gear \"{gear}\" turns it at {value}. "
           "Whoever goes by the stub couples an implement for the wrong speed."},
    Phrase{"stub.change", "Make stub and speed lever agree: either fit the stub for {value} or select the gear for "
                          "{limit}, as the implement needs and by the tractor's manual."},
    // Fit.
    Phrase{"fit.unstated", "Stub and tractor yoke are not both stated."},
    Phrase{"fit.same", "Stub and tractor yoke are the same: {stub}."},
    Phrase{"fit.different", "The stub is {stub}, the yoke is {yoke}: they do not go together."},
    Phrase{"fit.unidentified", "Stub: {stub}; yoke: {yoke}. Nearest to what was counted and measured: {near}."},
    Phrase{"fit.measure", "Count the splines again and measure over them with a calliper, engine off and key removed."},
    Phrase{"fit.change_yoke",
           "Fit a tractor-end yoke for {stub} where the driveline's manual allows it, or use the stub "
           "that fits {yoke} together with its speed. Never bridge the difference with an adaptor."},
    Phrase{"adaptor.unstated", "Whether an adaptor sits between stub and driveline is not stated."},
    Phrase{"adaptor.none", "No adaptor sits between stub and driveline."},
    Phrase{"adaptor.fitted",
           "An adaptor sits between stub and driveline. It moves the joint away from its place over the "
           "hitch, leaves parts uncovered by the master shield, lengthens the lever arm on the stub and "
           "lets the wrong implement be coupled."},
    Phrase{"adaptor.remove", "Take the adaptor off and fit the yoke that belongs to the stub."},
    Phrase{"interface.unknown", "of no known type"},
    Phrase{"interface.ambiguous", "one of several types"},
    Phrase{"interface.none_near", "none of the known types"},
    // Power.
    Phrase{"power.interface.unstated", "Type of the stub, PTO speed and power need are not all stated."},
    Phrase{"power.interface.no_edition", "No edition is known to recommend a power for {stub} at {speed}."},
    Phrase{"power.interface", "{stub} at {speed}: the standards' recommended maximum is {lowest} in the strictest and "
                              "{highest} in the widest edition; the implement needs {value} (mean torque {torque})."},
    Phrase{"power.interface.faster",
           "At 1000 r/min the same power asks {torque_at_1000} instead of {torque} of the stub: "
           "use an implement and a tractor for 1000 r/min, or a smaller implement."},
    Phrase{"power.interface.smaller", "Use a larger PTO type at the same power, or an implement that needs less."},
    Phrase{"power.through.unstated", "Tractor power and its basis, type of the stub and PTO speed are not all stated."},
    Phrase{"power.through", "The tractor can put up to {value} into a stub for which the widest edition recommends "
                            "{limit}. What it really puts in is set by the implement and its overload device."},
    Phrase{"power.through.device",
           "Fit and test an overload device at the implement end, set within its window: nothing "
           "else keeps the tractor's power off the stub when the implement blocks."},
    Phrase{"power.through.test",
           "Test that the overload device still lets go where it is set to, before each season and after long "
           "rest: nothing else keeps the tractor's power off the stub when the implement blocks."},
    Phrase{"power.reserve.unstated", "Tractor power, its basis, engine speeds and power need are not all stated."},
    Phrase{"power.reserve",
           "In gear \"{gear}\" the PTO can give {available_low} to {available_high}; the implement needs "
           "{value}, and {reserve} % of the power should be left over in the heaviest work."},
    Phrase{"power.reserve.lacking", "Take a smaller working width or forward speed, or a stronger tractor."},
    Phrase{"power.permitted.unstated",
           "The implement's highest permitted input power is not stated (its manual gives it)."},
    Phrase{"power.permitted", "The implement may take {limit}; the tractor can give up to {value}."},
    Phrase{"power.permitted.advice",
           "Ask the implement's maker which overload device lets it run on this tractor, or use "
           "a smaller tractor."},
    // Strength.
    Phrase{"peak.device", "the upper bound of the overload device"},
    Phrase{"peak.implement", "the implement's peak"},
    Phrase{"peak.engine", "the engine lugged down to its peak torque"},
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
    Phrase{"joint_rating.peak", "Peak torque: {origin}."},
    Phrase{"joint_rating.larger", "Use a driveline whose joints are rated for more than {value}."},
    Phrase{"stub.root_at_angle",
           "Peak torque {torque} ({origin}) with a front joint angle of {angle}: the joint bends the stub "
           "by up to {couple}, once to each side in every turn. Combined stress (von Mises) on "
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
           "The weakest part, {part}, yields at {part_torque}; with margin and scatter the device may be set "
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
    Phrase{"start.device",
           "A harsh start brings up to {value}, where the overload device lets go; {part} yields at {part_torque}."},
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
    Phrase{"life.lengthen",
           "Bend the front joint less in work, carry the power at a higher PTO speed, or use a larger PTO type."},
    Phrase{"life.under_10_h", "under 10 h"},
    Phrase{"life.from_10_to_100_h", "10 to 100 h"},
    Phrase{"life.from_100_to_1000_h", "100 to 1000 h"},
    Phrase{"life.from_1000_to_10000_h", "1000 to 10 000 h"},
    Phrase{"life.beyond_10000_h", "beyond 10 000 h"},
    // Joint angles and telescope.
    Phrase{"angle.unstated", "Hitch, joints, input connection or the positions in this state are not all stated."},
    Phrase{"angle.impossible", "A position as stated cannot be: {why}."},
    Phrase{"angle.driven",
           "Over all positions of this state, with the shaft turning: {end} fares worse against its limit."},
    Phrase{"angle.at_rest",
           "Over all positions of this state, with the shaft at rest: {end} fares worse against its limit."},
    Phrase{"angle.reduce_driven",
           "Bend the joints no further than {limit} while the shaft turns: disengage the PTO before "
           "tighter turns, bring both joint centres equally far from the pin, or use a wide-angle joint where its "
           "manual allows it."},
    Phrase{"angle.reduce_mounted",
           "Bend the joints no further than {limit} while the shaft turns: disengage the PTO before higher "
           "lifts, limit the lift, and set the top link so that the input shaft runs parallel to the "
           "stub in work."},
    Phrase{"angle.reduce_at_rest",
           "Limit turn or lift so that no joint passes {limit} even at rest: it locks and breaks."},
    Phrase{"joint.front", "the joint at the tractor"},
    Phrase{"joint.rear", "the joint at the implement"},
    Phrase{"variation.unstated",
           "Hitch, kinds of the joints, phase of the yokes, engaged gear or the positions are not all stated."},
    Phrase{"variation.driven",
           "The implement's shaft turns unevenly by {value} of the PTO speed ({speed}) at the worst position "
           "in which it is driven, both joints in their true planes together. The limits are guide "
           "values for its angular acceleration, from passenger cars."},
    Phrase{"variation.endless",
           "How unevenly the implement's shaft turns has no bound: a joint reaches a right angle, or the yokes "
           "stand out of line."},
    Phrase{"variation.yokes",
           "See that both yokes of the intermediate shaft stand in line; a splined tube put together one "
           "position wrong makes it worse."},
    Phrase{"difference.unstated", "Hitch, joints, input connection or the working positions are not all stated."},
    Phrase{"difference.in_work",
           "Greatest difference of the two joint angles in work. Unequal angles make the implement run "
           "unevenly, twice in every turn, and shake the line."},
    Phrase{"difference.equalise",
           "Bring both joint centres equally far from the pin (hitch extension, place of the input "
           "connection; the drawbar keeps the position that belongs to its PTO type), so that each joint takes half of "
           "the turn."},
    Phrase{"difference.equalise_mounted",
           "Set the top link so that the input shaft runs parallel to the stub in work: then both joints "
           "bend equally."},
    Phrase{"telescope.unstated",
           "Closed length, overlap, hitch or the positions of all three states are not all stated."},
    Phrase{"telescope.overlap", "The joint centres are at most {length} apart."},
    Phrase{"telescope.apart",
           "The joint centres are up to {length} apart: the members come apart and the loose halves swing."},
    Phrase{"telescope.longer",
           "Fit a driveline with longer members, or limit the position that pulls it out this far."},
    Phrase{"telescope.clearance", "The joint centres are at least {length} apart."},
    Phrase{"telescope.bottoms",
           "The joint centres come as near as {length}: the members bottom and push on gearbox and PTO "
           "bearings."},
    Phrase{"telescope.shorter",
           "Cut both members and both guard tubes by the same amount, by the driveline's manual, if the "
           "overlap at the longest position allows it; else limit the position that pushes it together."},
    // Drawbar.
    Phrase{"drawbar.unstated",
           "Kind of hitch, distance from shaft end to pin and type of the stub are not all stated."},
    Phrase{"drawbar.no_distance", "No drawbar distance is known for {stub}; the tractor's manual states it."},
    Phrase{"drawbar.met", "The pin stands in {position} for {stub}."},
    Phrase{"drawbar.measure_again",
           "The pin may stand in {position} for {stub}, but the measurement is too loose to prove it."},
    Phrase{"drawbar.between", "The pin stands between the known positions for {stub}; nearest is {position}."},
    Phrase{"drawbar.too_short", "The pin is nearer to the shaft end than any position for work with {stub}: the front "
                                "joint bends more in turns, and the driveline bottoms earlier."},
    Phrase{"drawbar.too_long", "The pin is farther from the shaft end than any known position for {stub}."},
    Phrase{"drawbar.move_pin", "Set the drawbar so that the pin stands {limit} behind the shaft end ({position}); then "
                               "check driveline length and clearance again, by hand and engine off."},
    Phrase{"drawbar.position.short", "the short position"},
    Phrase{"drawbar.position.regular", "the regular position"},
    Phrase{"drawbar.position.extended", "the extended position"},
    Phrase{"drawbar.position.us", "the position usual in the United States"},
    // Rotor.
    Phrase{"rotor.unstated", "The rotor's tip radius and speed, or the engaged gear, are not all stated."},
    Phrase{"rotor.tip_speed",
           "Blade tips at the nominal PTO speed of the engaged gear, against the highest tip speed that "
           "the case states."},
    Phrase{"rotor.tip_speed_line",
           "Blade tips at the nominal PTO speed of the engaged gear. The manual's limit is not "
           "stated; the line is one for lawn and turf mowers, no legal limit of a farm cutter."},
    Phrase{"rotor.slow_down", "Run the implement at its own input speed only; if the tips are too fast there, rotor or "
                              "gearbox are not the ones that its manual means."},
    Phrase{"rotor.ask_manual",
           "Look up the highest tip or input speed in the implement's manual and state it in the case."},
    Phrase{"overspeed.unstated", "Engine speeds, engaged gear and implement speed are not all stated."},
    Phrase{"overspeed.no_limit", "No ceiling is known for an implement of this input speed; its manual states it."},
    Phrase{"overspeed.at_high_idle",
           "With the engine at high idle ({high_idle}) the gear \"{gear}\" turns the PTO at {value}."},
    Phrase{"overspeed.at_high_idle_rotor",
           "With the engine at high idle ({high_idle}) the gear \"{gear}\" turns the PTO at "
           "{value} and the blade tips at {tip_speed}."},
    Phrase{"overspeed.tips_beyond",
           "With the engine at high idle ({high_idle}) the gear \"{gear}\" turns the blade tips at "
           "{tip_speed}, faster than the {tip_limit} that they may."},
    Phrase{"overspeed.keep_below", "In the gear \"{gear}\" never let the engine pass {engine_speed}."},
    Phrase{"other_gears.unstated", "Gears, engaged gear, stub arrangement and implement speed are not all stated."},
    Phrase{"other_gears.speed", "The fastest other gear, \"{gear}\", reaches {value} at most."},
    Phrase{"other_gears.too_fast", "One movement of the lever to \"{gear}\" turns this implement at up to {value}."},
    Phrase{"other_gears.too_fast_rotor",
           "One movement of the lever to \"{gear}\" turns this implement at up to {value}; its "
           "blade tips would reach {tip_speed}."},
    Phrase{"other_gears.secure", "Lock or tag the lever against \"{gear}\" while this implement is coupled, and tell "
                                 "everybody who drives."},
    // Guards.
    Phrase{"guard.master.unstated", "Whether the tractor's master shield is in place is not stated."},
    Phrase{"guard.master.present", "The tractor's master shield is in place."},
    Phrase{"guard.master.damaged", "The tractor's master shield is damaged."},
    Phrase{"guard.master.absent", "The tractor's master shield is missing."},
    Phrase{"guard.master.refit", "Fit a sound master shield before the PTO turns again."},
    Phrase{"guard.driveline.unstated", "Whether the driveline's guard is in place is not stated."},
    Phrase{"guard.driveline.present", "The driveline's guard is in place."},
    Phrase{"guard.driveline.damaged", "The driveline's guard is damaged."},
    Phrase{"guard.driveline.absent",
           "The driveline has no guard. It winds up clothing faster than a person can react."},
    Phrase{"guard.driveline.refit",
           "Fit a sound guard of the right length, held against turning, before the PTO turns again."},
    Phrase{"guard.input.unstated", "Whether the guard of the implement's input connection is in place is not stated."},
    Phrase{"guard.input.present", "The guard of the implement's input connection is in place."},
    Phrase{"guard.input.damaged", "The guard of the implement's input connection is damaged."},
    Phrase{"guard.input.absent", "The guard of the implement's input connection is missing."},
    Phrase{"guard.input.refit", "Fit a sound guard at the implement's input connection before the PTO turns again."},
    // States of the machine.
    Phrase{"state.working", "in work"},
    Phrase{"state.turning", "while turning"},
    Phrase{"state.transport", "in transport"},
    // The report itself.
    Phrase{"report.not_all", "Not everything was examined (see below)."},
    Phrase{"report.memory", "It rests partly on limits that are remembered and not yet verified (marked below)."},
    Phrase{"report.never_examined",
           "Also outside this assessment: the implement-end yoke and its shaft; sense of rotation; an overrunning "
           "clutch for a rotor that runs on; thrust of the telescope and life of the joint bearings; guard tubes that "
           "bottom before the members; fouling of the driveline with tongue, links or tyres; critical speed and "
           "vibration; engagement shock; brakes, weights and stability; electrical and hydraulic lines."},
    // Cautions.
    Phrase{"caution.standstill", "Stop the engine, remove the key and wait until everything stands still before you go "
                                 "near driveline or implement; rotors run on for a long time."},
    Phrase{"caution.guards", "Keep master shield, driveline guard and input guard in place and sound."},
    Phrase{"caution.speed", "Never run a 540 implement at 1000, nor a 1000 implement at 540."},
    Phrase{"caution.thrown",
           "Keep everybody out of the way of thrown objects; a rotary cutter can throw them more than "
           "300 ft (91 m) [published]."},
    Phrase{"caution.manual", "The operator's manuals of tractor, implement and driveline, local codes and licensed "
                             "practice come before this report. Limits are limits, not permissions."},
};

} // namespace

std::string_view title_of(Check check) noexcept {
  switch (check) {
  case Check::pto_speed: return "PTO speed against implement speed";
  case Check::stub_and_lever: return "Stub against speed lever";
  case Check::spline_fit: return "Spline of stub and yoke";
  case Check::adaptor: return "Adaptor between stub and driveline";
  case Check::interface_power: return "Implement power against the recommendation for the PTO type";
  case Check::tractor_power_through_interface: return "Tractor power against the recommendation for the PTO type";
  case Check::power_reserve: return "Tractor power against need";
  case Check::permitted_power: return "Tractor power against the implement's permitted input";
  case Check::root_torsion: return "Stub: torsion at the smallest section";
  case Check::root_torsion_at_angle: return "Stub: torsion with the bending that the joint angle adds";
  case Check::tooth_shear: return "Stub: shear of the spline teeth";
  case Check::flank_pressure: return "Stub: pressure on the spline flanks";
  case Check::tube_torsion: return "Driveline: torsion of the telescoping member";
  case Check::joint_rating: return "Driveline: torque against the joints' rating";
  case Check::overload_window: return "Overload device: setting between work and damage";
  case Check::start_up: return "Start: torque that can arrive when the PTO is engaged";
  case Check::fatigue_life: return "Stub: life under joint bending and changing torque";
  case Check::drawbar_distance: return "Drawbar: shaft end to hitch pin";
  case Check::working_angle: return "Joint angle in work";
  case Check::turning_angle: return "Joint angle while turning";
  case Check::transport_angle: return "Joint angle in transport";
  case Check::angle_difference: return "Difference of the two joint angles";
  case Check::speed_variation: return "Uneven running of the implement's shaft";
  case Check::overlap: return "Telescope: overlap at the longest";
  case Check::clearance: return "Telescope: clearance at the shortest";
  case Check::tip_speed: return "Rotor: blade tip speed";
  case Check::overspeed_at_high_idle: return "PTO speed with the engine at high idle";
  case Check::overspeed_in_other_gears: return "PTO speed in the other gears";
  case Check::master_shield: return "Guard: master shield of the tractor";
  case Check::driveline_guard: return "Guard: driveline";
  case Check::input_guard: return "Guard: implement's input connection";
  }
  return "";
}

std::string_view phrase(std::string_view id) noexcept {
  const auto found = std::find_if(phrases.begin(), phrases.end(), [&](const Phrase& p) { return p.id == id; });
  return found == phrases.end() ? std::string_view() : found->text;
}

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
