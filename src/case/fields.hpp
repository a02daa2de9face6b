#pragma once
// The case document described once: every entry with its kind, bounds and meaning.
//
// A visitor with the functions text, field, choice, object, part, fitted, interval and list walks this description.
// Reading, writing and the JSON Schema are three such visitors, so they cannot disagree.

#include "case/price.hpp"

#include <fieldshaft/case/case.hpp>

#include <limits>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {

/// The allowed numbers of an entry, in SI units.
struct Bounds {
  double low = -std::numeric_limits<double>::infinity();
  double high = std::numeric_limits<double>::infinity();
  bool low_open = false;
  bool high_open = false;
};

inline constexpr Bounds above_zero{0.0, std::numeric_limits<double>::infinity(), true, false};
inline constexpr Bounds not_negative{0.0, std::numeric_limits<double>::infinity(), false, false};
inline constexpr Bounds any_size{};
inline constexpr Bounds at_least_one{1.0, std::numeric_limits<double>::infinity(), false, false};
inline constexpr Bounds fraction{0.0, 1.0, false, true};
/// Twice the share is the loss factor of a shaft, and none turns the whole of its energy into heat.
inline constexpr Bounds shaft_damping_share{0.0, 0.5, true, true};
inline constexpr Bounds some_share{0.0, 1.0, true, false};
inline constexpr Bounds whole_share{0.0, 1.0, false, false};
inline constexpr Bounds some_angle{0.0, pi / 2, false, true};
inline constexpr Bounds full_turn{-pi, pi, false, false};
inline constexpr Bounds quarter_turn{-pi / 2, pi / 2, true, true};
inline constexpr Bounds lean{0.0, pi / 2, false, true};
inline constexpr Bounds joint_limit{0.0, pi / 2, true, false};
inline constexpr Bounds climb{0.0, pi / 2, false, true};
inline constexpr Bounds some_power{1.0, 1e8, false, false};
inline constexpr Bounds some_torque{1.0, 1e7, false, false};
/// The strongest steels of the trade stay below this: beyond it a unit was mistaken.
inline constexpr Bounds steel_strength{0.0, 2.5e9, true, false};
/// No device is truer than that.
inline constexpr Bounds device_scatter{0.05, 1.0, false, true};
inline constexpr Bounds type_number{0.0, 4.0, false, false};

enum class Need { optional, required };

template <class V> void fields(V& v, SteelChoice& steel) {
  v.text("name", steel.name, "steel of the catalogue, such as 1045 or 4140");
  v.text("condition", steel.condition, "its condition in the catalogue, such as cold drawn");
  v.field("yield", steel.yield, steel_strength,
          "tensile yield strength, where it is known from a certificate or drawing");
  v.field("ultimate", steel.ultimate, steel_strength, "tensile strength, from the same paper");
  v.field("hardness", steel.hardness, above_zero, "Brinell hardness of the tooth flanks");
}

template <class V> void fields(V& v, Interface& interface) {
  v.field("type", interface.type, type_number, "1 to 4 of ISO 500-1, or 0 for the pre-standard 1 1/8 in shaft");
  v.field("spline_count", interface.spline_count, at_least_one, "splines counted, where the type is not certain");
  v.field("diameter", interface.diameter, above_zero, "diameter over the splines, measured: \"34.9 mm ± 0.3 mm\"");
}

template <class V> void fields(V& v, OtherStub& stub) {
  fields(v, stub.interface);
  v.object("steel", stub.steel, "its own steel: that of the stub which is out says nothing of it");
}

template <class V> void fields(V& v, PtoGear& gear) {
  v.text("name", gear.name, Need::required, "name of the lever position, such as 540 or 540E");
  v.field("pto_speed", gear.pto_speed, above_zero, "nominal PTO speed");
  v.field("engine_speed", gear.engine_speed, above_zero, "engine speed at which the nominal PTO speed is reached");
}

template <class V> void fields(V& v, TractorPto& pto) {
  v.choice("place", pto.place, "where the stub stands; unstated, the case is of a rear one");
  v.choice("drive", pto.drive, "what turns it; unstated, the case is of one that the engine turns");
  v.choice("rotation", pto.rotation,
           "seen facing the end of the stub; unstated, a rear one turns as the standard says");
  v.choice("arrangement", pto.arrangement, "how the stub and its speed are chosen");
  v.object("stub", pto.stub, "the stub shaft that is out");
  v.object("stub_steel", pto.stub_steel, "steel of the stub shaft");
  v.list("other_stubs", pto.other_stubs,
         "further stubs that the tractor has, or that its manual allows in place of the one that is out");
  v.list("gears", pto.gears, "every position of the PTO speed lever");
  v.text("selected", pto.selected, "name of the gear that is engaged");
  v.field("clutch_torque", pto.clutch_torque, some_torque,
          "torque at the PTO shaft at which the tractor's PTO clutch slips");
  v.field("brake_torque", pto.brake_torque, not_negative,
          "torque at the PTO shaft with which the tractor brakes it once its clutch is let go; \"0 N.m\": no brake");
  v.choice("master_shield", pto.master_shield, "the shield over the tractor's stub");
  v.choice("other_stub_cap", pto.other_stub_cap, "two stubs out: the cap or guard over the one that is not in use");
}

template <class V> void fields(V& v, CurvePoint& point) {
  v.field("speed", point.speed, above_zero, "engine speed at full throttle under load");
  v.field("torque", point.torque, some_torque, "torque at that speed, of the engine or as it reaches the PTO ...");
  v.field("power", point.power, some_power, "... or the power there, on the basis of power_basis");
}

template <class V> void fields(V& v, Engine& engine) {
  v.field("rated_speed", engine.rated_speed, above_zero, "engine speed at rated power");
  v.field("high_idle", engine.high_idle, above_zero, "highest engine speed without load");
  v.field("torque_rise", engine.torque_rise, fraction, "peak torque over rated torque, less one: \"25 %\"");
  v.list("curve", engine.curve,
         "points of the full-load curve by rising speed, in place of torque_rise; one at rated speed (unstated: the "
         "last), "
         "those above it on the governor line");
}

template <class V> void fields(V& v, QuickCoupler& coupler) {
  v.field("depth", coupler.depth, not_negative,
          "ends of the lower links to the implement's lower hitch points, rearwards");
  v.field("rise", coupler.rise, any_size, "ends of the lower links up to the implement's lower hitch points");
}

template <class V> void fields(V& v, Hitch& hitch) {
  v.choice("kind", hitch.kind, "what the implement hangs on");
  v.field("distance", hitch.distance, above_zero, "drawbar: PTO shaft end to the hitch pin, horizontally");
  v.field("drop", hitch.drop, any_size, "drawbar: PTO shaft axis down to the contact height of the pin");
  v.field("lateral", hitch.lateral, any_size, "drawbar: pin to the left of the PTO axis");
  v.field("lower_pivot_behind", hitch.lower_pivot_behind, any_size,
          "three-point: front pivots of the lower links behind the PTO shaft end (ahead: negative)");
  v.field("lower_pivot_below", hitch.lower_pivot_below, any_size,
          "three-point: front pivots of the lower links below the PTO axis");
  v.field("lower_link", hitch.lower_link, above_zero, "three-point: length of the lower links in the side view");
  v.field("top_pivot_behind", hitch.top_pivot_behind, any_size,
          "three-point: front pivot of the top link behind the PTO shaft end (ahead: negative)");
  v.field("top_pivot_below", hitch.top_pivot_below, any_size,
          "three-point: front pivot of the top link below the PTO axis (above: negative)");
  v.field("top_link", hitch.top_link, above_zero, "three-point: length of the top link");
  v.field("level_at", hitch.level_at, any_size,
          "three-point, instead of top_link: the lift at which the implement stands level");
  v.field("span", hitch.span, above_zero, "three-point: between the lower hitch points");
  v.field("convergence", hitch.convergence, above_zero,
          "three-point: where the lines of the lower links meet, ahead of the lower hitch points");
  v.choice("category", hitch.category, "three-point: category of the linkage");
  v.fitted("quick_coupler", hitch.quick_coupler, "three-point: coupler between links and implement, or \"none\"");
}

template <class V> void fields(V& v, Tractor& tractor) {
  v.text("name", tractor.name, Need::required, "what its owner calls it");
  v.field("power", tractor.power, some_power, "rated power");
  v.choice("power_basis", tractor.power_basis, "which power that is: at the PTO, or of the engine, net or gross");
  v.field("wheelbase", tractor.wheelbase, above_zero, "front axle to rear axle");
  v.field("rear_axle_ahead", tractor.rear_axle_ahead, not_negative, "rear axle ahead of the end of the stub");
  v.field("shaft_height", tractor.shaft_height, above_zero, "axis of the stub above the ground");
  v.field("track", tractor.track, above_zero, "between the middles of the tractor's rear wheels");
  v.field("mass", tractor.mass, above_zero, "mass with ballast and all that it carries");
  v.choice("traction", tractor.traction, "what drives it forward");
  v.object("engine", tractor.engine, "engine speeds and torque rise");
  v.object("pto", tractor.pto, "PTO that drives the implement");
  v.object("hitch", tractor.hitch, "hitch that carries this implement");
}

template <class V> void fields(V& v, RotorCase& rotor) {
  v.field("tip_radius", rotor.tip_radius, above_zero, "axis of the rotor to the blade tip");
  v.field("input_speed", rotor.input_speed, above_zero, "speed of the implement's input shaft at which ...");
  v.field("rotor_speed", rotor.rotor_speed, above_zero, "... the rotor turns at this speed");
  v.field("highest_tip_speed", rotor.highest_tip_speed, above_zero, "highest tip speed by the operator's manual");
}

template <class V> void fields(V& v, InputConnection& input) {
  v.field("behind", input.behind, above_zero,
          "hitch pin or lower hitch points to the end of the input shaft, rearwards");
  v.field("above", input.above, any_size, "input shaft axis above the pin's contact height or the lower hitch points");
  v.field("lateral", input.lateral, any_size, "input shaft axis to the left of the pin");
  v.field("bearing_span", input.bearing_span, above_zero, "distance of the two bearings that carry the input shaft");
  v.field("yaw", input.yaw, quarter_turn, "input shaft turned from straight forward; positive: it points to the left");
  v.field("pitch", input.pitch, quarter_turn, "input shaft tilted, the machine level; positive: it points downwards");
  v.choice("guard", input.guard, "guard of the power input connection");
}

template <class V> void fields(V& v, SupportWheels& wheels) {
  v.field("behind", wheels.behind, above_zero, "lower hitch points to the wheels' lowest point, rearwards");
  v.field("below", wheels.below, not_negative, "lower hitch points down to it, the machine level");
}

template <class V> void fields(V& v, SteeringPivot& pivot) {
  v.field("behind", pivot.behind, any_size, "lower hitch points to the pivot, rearwards");
  v.field("lateral", pivot.lateral, any_size, "pivot to the left of the middle between them");
}

template <class V> void fields(V& v, Place& place) {
  v.field("behind", place.behind, any_size, "rearwards (ahead: negative)");
  v.field("left", place.left, any_size, "to the left (right: negative)");
  v.field("above", place.above, any_size, "upwards (below: negative)");
}

template <class V> void fields(V& v, TubeProfile& tube) {
  v.field("outer_diameter", tube.outer_diameter, above_zero, "round tube: outer diameter");
  v.field("inner_diameter", tube.inner_diameter, not_negative, "round tube: inner diameter");
  v.field("enclosed_area", tube.enclosed_area, above_zero, "closed profile: area within the middle of its wall");
  v.field("perimeter", tube.perimeter, above_zero, "closed profile: length of the middle of its wall");
  v.field("wall", tube.wall, above_zero, "closed profile: wall thickness");
  v.field("second_moment", tube.second_moment, above_zero,
          "closed profile: second moment of area about its weaker axis, for whirling: \"85000 mm^4\"");
}

template <class V> void fields(V& v, OverloadDevice& device) {
  v.choice("kind", device.kind, "kind of the device");
  v.field("setting", device.setting, some_torque, "torque at which it slips, shears or trips, at its own place");
  v.field("scatter", device.scatter, device_scatter, "how far the true torque may lie from the setting: \"15 %\"");
  v.choice("place", device.place, "where it sits");
}

template <class V> void fields(V& v, BranchCase& branch) {
  v.text("name", branch.name, Need::required, "what it drives, such as left wing");
  v.choice("side", branch.side,
           "where the splitter's shaft points: left, right or rear; direct: driven without a driveline");
  v.field("torque_share", branch.torque_share, some_share, "of the torque that enters the splitter: \"30 %\"");
  v.field("speed", branch.speed, above_zero, "speed of the branch while the input turns at implement.input_speed");
  v.object("output", branch.output, "end of the splitter's shaft, from the pin or the lower hitch points");
  v.object("hinge", branch.hinge, "axis about which the part folds: along the machine, at the rear across it");
  v.object("input", branch.input, "end of the folding part's input shaft, unfolded");
  v.interval("fold", branch.fold, quarter_turn, "folding while the branch turns; positive: up");
  v.interval("fold_at_rest", branch.fold_at_rest, full_turn,
             "how far it folds with its driveline on and the PTO off, as for transport; all that lies between counts");
  v.choice("coupled_at_rest", branch.coupled_at_rest,
           "\"no\": its driveline is taken off before the part folds further than it does while it turns");
  v.choice("front_joint_kind", branch.front_joint_kind, "kind of the joint at the splitter");
  v.choice("rear_joint_kind", branch.rear_joint_kind, "kind of the joint at the folding part");
  v.field("front_joint", branch.front_joint, above_zero, "end of the splitter's shaft to the joint's centre");
  v.field("rear_joint", branch.rear_joint, above_zero, "end of the input shaft to the joint's centre");
  v.field("front_coupling_yoke", branch.front_coupling_yoke, above_zero, "as driveline.front_coupling_yoke");
  v.field("rear_coupling_yoke", branch.rear_coupling_yoke, above_zero, "as driveline.rear_coupling_yoke");
  v.field("front_joint_lock", branch.front_joint_lock, joint_limit, "as driveline.front_joint_lock");
  v.field("rear_joint_lock", branch.rear_joint_lock, joint_limit, "as driveline.rear_joint_lock");
  v.field("yoke_phase", branch.yoke_phase, full_turn, "as driveline.yoke_phase");
  v.field("closed_length", branch.closed_length, above_zero, "joint centre to joint centre, fully closed");
  v.field("closed_overlap", branch.closed_overlap, above_zero, "overlap of the members then");
  v.field("joint_rating", branch.joint_rating, some_torque, "highest torque of the weaker joint by its manual");
  v.object("tube", branch.tube, "the weaker telescoping member");
  v.object("tube_steel", branch.tube_steel, "its steel");
  v.fitted("overload", branch.overload,
           "overload device of this branch, its setting at the branch's speed, or \"none\"");
}

template <class V> void fields(V& v, Implement& implement) {
  v.text("name", implement.name, Need::required, "what its owner calls it");
  v.field("input_speed", implement.input_speed, above_zero, "speed for which the implement is made");
  v.choice("rotation", implement.rotation,
           "rotation of the PTO for which it is made, seen facing the end of the tractor's stub");
  v.field("power_need", implement.power_need, some_power, "mean power at the implement's input in the heaviest work");
  v.text("machine", implement.machine,
         "row of the published table that gives the need, or that power_need is compared with: "
         "\"mower-conditioner, disk\"");
  v.field("width", implement.width, above_zero, "working width");
  v.field("feed_rate", implement.feed_rate, above_zero, "material that goes through in the heaviest work: \"20 t/h\"");
  v.choice("feed_basis", implement.feed_basis, "what the feed rate weighs");
  v.field("moisture", implement.moisture, fraction, "water in the wet material, as a share of its mass: \"65 %\"");
  v.choice(
      "note_applies", implement.note_applies,
      "whether the row's note applies: small rectangular baler in straw; forage harvester at half of 9 mm or with a "
      "recutter screen");
  v.field("peak_factor", implement.peak_factor, at_least_one, "peak torque over mean torque at the input");
  v.field("torque_swing", implement.torque_swing, fraction,
          "how far the torque swings about its mean in steady work, once a turn: \"30 %\"");
  v.field("permitted_power", implement.permitted_power, some_power, "highest input power by the operator's manual");
  v.field("draft", implement.draft, not_negative, "pull that it asks on level ground in work, rolling included");
  v.field("hydraulic_power", implement.hydraulic_power, not_negative,
          "power that its hydraulics take from the engine in work");
  v.field("mass", implement.mass, above_zero, "mass with its load in the heaviest work");
  v.field("mast_height", implement.mast_height, above_zero,
          "mounted: upper hitch point above the lower ones; of a quick coupler, where one is fitted");
  v.field("mast_forward", implement.mast_forward, any_size, "mounted: upper hitch point ahead of the lower ones");
  v.field("lower_pin", implement.lower_pin, above_zero, "mounted: diameter of the lower hitch pins");
  v.field("upper_pin", implement.upper_pin, above_zero, "mounted: diameter of the upper hitch pin");
  v.fitted("support_wheels", implement.support_wheels,
           "mounted: wheels that carry it while the top link is slack, or \"none\"");
  v.part("steering_pivot", implement.steering_pivot,
         "semi-mounted: upright pivot behind the lower links about which the machine steers");
  v.field("tongue_length", implement.tongue_length, above_zero, "trailed: hitch pin to the implement's axle");
  v.field("track", implement.track, above_zero, "between the middles of the implement's wheels");
  v.object("input", implement.input, "power input connection");
  v.fitted("rotor", implement.rotor, "rotor with blades or hammers, or \"none\"");
  v.list("branches", implement.branches, "drivelines behind a splitter gearbox, such as those to folding wings");
}

template <class V> void fields(V& v, Adaptor& adaptor) {
  v.field("length", adaptor.length, above_zero, "by how much it moves the front joint rearwards");
}

template <class V> void fields(V& v, HandCheck& check) {
  v.field("length", check.length, above_zero,
          "joint centre to joint centre as measured, engine off: \"705 mm ± 5 mm\"");
  v.field("yaw", check.yaw, full_turn, "turn of the implement then; negative: the tractor turned left");
  v.field("pitch", check.pitch, quarter_turn, "trailed: pitch then; positive in a hollow");
  v.field("roll", check.roll, quarter_turn, "roll then; positive: the implement's left side up");
  v.field("lift", check.lift, any_size, "mounted: lower hitch points above the front pivots of the lower links then");
  v.choice("top_link", check.top_link, "mounted with support wheels: the top link then");
}

template <class V> void fields(V& v, MiddleMember& middle) {
  v.field("closed_overlap", middle.closed_overlap, above_zero,
          "its overlap with the member at the implement, fully closed");
  v.field("greatest_travel", middle.greatest_travel, above_zero, "travel of that slide, where a stop ends it");
  v.object("tube", middle.tube, "the middle member itself, of steel: to examine whirling");
}

template <class V> void fields(V& v, DutyPart& part) {
  v.text("name", part.name, Need::required, "what the machine does then");
  v.field("share", part.share, some_share, "share of the working time: \"30 %\"");
  v.field("power", part.power, some_power, "mean power through the driveline then");
  v.field("pto_speed", part.pto_speed, above_zero, "PTO speed then, where it is not that of the engaged gear");
  v.field("joint_angle", part.joint_angle, some_angle, "angle then of the joint that bends more");
}

template <class V> void fields(V& v, FixedSection& section) {
  v.object("from", section.from, "rear end of the bearing's shaft, from the pin or the lower hitch points");
  v.object("to", section.to, "end of the machine's input shaft");
  v.choice("front_joint_kind", section.front_joint_kind, "kind of the joint at the bearing");
  v.choice("rear_joint_kind", section.rear_joint_kind, "kind of the joint at the machine");
  v.field("front_joint", section.front_joint, above_zero, "end of the bearing's shaft to the joint's centre");
  v.field("rear_joint", section.rear_joint, above_zero, "end of the input shaft to the joint's centre");
  v.field("yoke_phase", section.yoke_phase, full_turn, "rear yoke of this section turned against its front yoke");
  v.field("bearing_phase", section.bearing_phase, full_turn,
          "rear yoke of the bearing's shaft turned against its front yoke");
}

template <class V> void fields(V& v, DrivelineCase& driveline) {
  v.object("tractor_yoke", driveline.tractor_yoke, "spline of the yoke at the tractor's end");
  v.choice("seat", driveline.seat, "how that yoke sits on the stub: with clearance (usual), or clamped");
  v.field("hub_length", driveline.hub_length, above_zero, "length of the yoke's splined hub");
  v.choice("front_joint_kind", driveline.front_joint_kind, "kind of the joint at the tractor");
  v.choice("rear_joint_kind", driveline.rear_joint_kind, "kind of the joint at the implement");
  v.field("front_coupling_yoke", driveline.front_coupling_yoke, above_zero,
          "wide-angle joint at the tractor: between the centres of its two crosses");
  v.field("rear_coupling_yoke", driveline.rear_coupling_yoke, above_zero,
          "wide-angle joint at the implement: between the centres of its two crosses");
  v.field("front_joint_lock", driveline.front_joint_lock, joint_limit,
          "angle at which the yokes of the joint at the tractor touch, by its manual or measured");
  v.field("rear_joint_lock", driveline.rear_joint_lock, joint_limit, "the same of the joint at the implement");
  v.field("yoke_phase", driveline.yoke_phase, full_turn,
          "rear yoke of the intermediate shaft turned against its front yoke; \"0 deg\" when both stand in line");
  v.field("joint_rating", driveline.joint_rating, some_torque, "highest torque of the weaker joint by its manual");
  v.field("bearing_rating", driveline.bearing_rating, above_zero,
          "dynamic load rating of one needle bearing of the weaker joint: \"20 kN\"");
  v.field("bearing_arm", driveline.bearing_arm, above_zero,
          "centre of that joint's cross to the middle of a bearing: \"40 mm\"");
  v.list("duties", driveline.duties, "parts of the working time, for the life of the joints' bearings");
  v.field("front_joint", driveline.front_joint, above_zero,
          "end of the stub to the front joint's centre, as coupled, without an adaptor: its length is added");
  v.field("rear_joint", driveline.rear_joint, above_zero,
          "end of the input shaft to the rear joint's centre, as coupled");
  v.field("closed_length", driveline.closed_length, above_zero, "joint centre to joint centre, fully closed");
  v.field("closed_overlap", driveline.closed_overlap, above_zero, "overlap of the telescoping members, fully closed");
  v.field("greatest_travel", driveline.greatest_travel, above_zero,
          "travel of that slide, where a stop ends it: \"350 mm\"");
  v.part("middle_member", driveline.middle_member,
         "third member between the other two; then closed_overlap is that of the member at the tractor with it");
  v.list("hand_checks", driveline.hand_checks, "lengths measured by hand at two poses or more, to check the model");
  v.field("guard_closed_length", driveline.guard_closed_length, above_zero,
          "joint centre to joint centre with the guard tubes pushed together until they bottom");
  v.field("guard_closed_overlap", driveline.guard_closed_overlap, above_zero, "overlap of the guard tubes then");
  v.field("guard_diameter", driveline.guard_diameter, above_zero, "outer diameter of the driveline's guard");
  v.object("tube", driveline.tube, "the weaker telescoping member");
  v.object("tube_steel", driveline.tube_steel, "steel of the weaker telescoping member");
  v.object("other_tube", driveline.other_tube, "the other telescoping member, of steel too: to examine whirling");
  v.field("telescope_positions", driveline.telescope_positions, at_least_one,
          "positions in which the members can be pushed together in one turn: 6 for six splines, 1 for only one");
  v.choice("guard", driveline.guard, "guard over the driveline");
  v.fitted("adaptor", driveline.adaptor, "adaptor between stub and driveline, or \"none\"");
  v.part("fixed_section", driveline.fixed_section,
         "second driveline behind a bearing on the implement; implement.input is then the front end of its shaft");
}

template <class V> void fields(V& v, WheelDrop& drop) {
  v.field("tractor_left", drop.tractor_left, not_negative, "the tractor's left wheel below its right one, at most");
  v.field("tractor_right", drop.tractor_right, not_negative, "the tractor's right wheel below its left one, at most");
  v.field("implement_left", drop.implement_left, not_negative,
          "the implement's left wheel below its right one, at most");
  v.field("implement_right", drop.implement_right, not_negative,
          "the implement's right wheel below its left one, at most");
}

template <class V> void fields(V& v, StateRange& state) {
  v.interval("yaw", state.yaw, full_turn,
             "turn of the implement, semi-mounted about its steering pivot; negative: the tractor turns left");
  v.interval("pitch", state.pitch, quarter_turn, "pitch of the implement; positive in a hollow, negative over a crest");
  v.interval("roll", state.roll, quarter_turn, "roll of the implement; positive: its left side up");
  v.interval("lift", state.lift, any_size, "mounted: lower hitch points above the front pivots of the lower links");
  v.interval("sway", state.sway, any_size, "mounted, instead of yaw: lower hitch points to the left; right: negative");
  v.interval("lower_link_difference", state.lower_link_difference, any_size,
             "mounted, instead of roll: left lower hitch point above the right one");
  v.choice("top_link", state.top_link, "mounted with support wheels: whether the top link holds it or hangs slack");
  v.field(
      "left_turn_radius", state.left_turn_radius, above_zero,
      "instead of yaw: tightest steady turn to the left, centre of the turn to the middle of the tractor's rear axle");
  v.field("right_turn_radius", state.right_turn_radius, above_zero, "instead of yaw: the same to the right");
  v.field("hollow_radius", state.hollow_radius, above_zero,
          "instead of pitch: smallest radius of a hollow along the driving direction");
  v.field("crest_radius", state.crest_radius, above_zero, "instead of pitch: smallest radius of a crest");
  v.field("side_slope", state.side_slope, lean,
          "instead of roll: greatest angle between the side slopes under tractor and implement, to either side");
  v.part("wheel_drop", state.wheel_drop, "instead of roll: how much lower single wheels stand, as in a furrow");
  v.field("roll_at_full_turn", state.roll_at_full_turn, whole_share,
          "trailed: share of the roll that is left at full turn, evenly less on the way: \"50 %\"");
  v.choice("driven", state.driven, "whether the PTO turns in this state");
}

template <class V> void fields(V& v, WorkingRange& range) {
  v.part("working", range.working, "positions while the implement works");
  v.part("turning", range.turning, "positions while turning at the headland");
  v.part("transport", range.transport, "positions on the road");
  v.field("ground_speed", range.ground_speed, above_zero, "ground speed in the heaviest work");
  v.field("slope", range.slope, climb, "steepest climb in work, along the way of travel; \"0 deg\" on level land");
  v.choice("ground", range.ground, "ground that the tractor pulls on");
}

template <class V> void fields(V& v, Limits& limits) {
  v.field("working_angle", limits.working_angle, joint_limit, "largest joint angle in work");
  v.field("turning_angle", limits.turning_angle, joint_limit,
          "trailed, semi-mounted: largest joint angle while turning under power");
  v.field("lifted_angle", limits.lifted_angle, joint_limit,
          "mounted: largest joint angle while it is raised at the headland under power");
  v.field("transport_angle", limits.transport_angle, joint_limit, "largest joint angle with the PTO at rest");
  v.field("wide_working_angle", limits.wide_working_angle, joint_limit, "wide-angle joints: largest angle in work");
  v.field("wide_turning_angle", limits.wide_turning_angle, joint_limit,
          "wide-angle joints: largest angle while turning under power");
  v.field("wide_lifted_angle", limits.wide_lifted_angle, joint_limit,
          "wide-angle joints, mounted: largest angle while it is raised at the headland under power");
  v.field("wide_transport_angle", limits.wide_transport_angle, joint_limit,
          "wide-angle joints: largest angle with the PTO at rest");
  v.field("wide_angle_centre", limits.wide_angle_centre, above_zero,
          "largest distance of a wide-angle joint's centre from over the hitch pin, seen from above");
  v.field("angle_difference", limits.angle_difference, joint_limit,
          "largest difference of the two joint angles in work");
  v.field("minimum_overlap", limits.minimum_overlap, above_zero, "smallest overlap at the longest position");
  v.field("minimum_clearance", limits.minimum_clearance, above_zero, "smallest clearance at the shortest position");
  v.field("power_reserve", limits.power_reserve, fraction, "power left over in the heaviest work");
  v.field("yield_margin", limits.yield_margin, at_least_one, "wanted yield torque over peak torque");
  v.field("tip_speed", limits.tip_speed, above_zero, "highest tip speed that the owner accepts");
  v.field("pto_speed", limits.pto_speed, above_zero, "highest PTO speed by the implement's manual");
  v.field("wanted_life", limits.wanted_life, above_zero, "hours of work that the driveline shall last");
  v.field("flank_pressure", limits.flank_pressure, above_zero, "allowable pressure on the spline flanks");
  v.field("fouling_clearance", limits.fouling_clearance, above_zero,
          "room to leave between the driveline's guard and what may foul it");
  v.field("critical_speed_share", limits.critical_speed_share, fraction,
          "greatest speed of the driveline over its critical speed: \"65 %\"");
  v.field("resonance_separation", limits.resonance_separation, fraction,
          "least distance of pulses from a natural frequency, as a share of it: \"20 %\"");
  v.field("clutch_heat", limits.clutch_heat, above_zero, "greatest heat of one start in the tractor's PTO clutch");
}

template <class V> void fields(V& v, Bar& bar) {
  v.text("name", bar.name, Need::required, "what it is, such as tongue");
  v.object("from", bar.from, "one end of its centre line");
  v.object("to", bar.to, "the other end");
  v.field("diameter", bar.diameter, above_zero, "diameter of a cylinder that holds it");
}

template <class V> void fields(V& v, TyreCase& tyre) {
  v.text("name", tyre.name, Need::required, "which tyre, such as rear left");
  v.object("centre", tyre.centre, "middle of the tyre, from the end of the stub");
  v.field("diameter", tyre.diameter, above_zero, "outer diameter");
  v.field("width", tyre.width, above_zero, "width of the tyre");
}

template <class V> void fields(V& v, LowerLinks& links) {
  v.field("pivot_span", links.pivot_span, above_zero, "between the middles of their front pivots");
  v.field("hitch_span", links.hitch_span, above_zero, "between the middles of the lower hitch points");
  v.field("diameter", links.diameter, above_zero, "diameter of a cylinder that holds one link");
}

template <class V> void fields(V& v, FoulingParts& parts) {
  v.list("tractor", parts.tractor, "bars on the tractor, such as the drawbar; from the end of the stub");
  v.list("implement", parts.implement, "bars on the implement, such as the tongue; from the pin");
  v.list("tyres", parts.tyres, "tyres of the tractor beside the driveline and the tongue");
  v.part("lower_links", parts.lower_links, "three-point: the lower links, which move with the lift");
}

template <class V> void fields(V& v, Prices& prices) {
  const auto price = [&v](const char* key, Stated<Money>& entry, const char* meaning) {
    v.price(key, entry, PricePer::thing, meaning);
  };
  price("change_over", prices.change_over, "another stub of the tractor fitted, lever and drawbar set for it");
  price("move_drawbar", prices.move_drawbar, "the hitch pin set into another position");
  price("set_device", prices.set_device, "another setting of the overload device, tested");
  price("fit_device", prices.fit_device, "an overload device where there is none");
  price("cut_tubes", prices.cut_tubes, "telescoping members and guard tubes cut and dressed");
  price("longer_driveline", prices.longer_driveline, "longer telescoping members");
  price("stronger_tube", prices.stronger_tube, "telescoping members of a larger section");
  price("stronger_joints", prices.stronger_joints, "joints of a higher rating");
  price("wide_angle_joint", prices.wide_angle_joint, "a wide-angle joint at one end");
  price("change_yoke", prices.change_yoke, "another tractor yoke: for another stub, clamping, or longer");
  price("align_yokes", prices.align_yokes, "the telescoping members put together anew");
  price("place_of_input", prices.place_of_input, "a hitch extension, or the input connection moved");
  price("guard", prices.guard, "one guard or shield fitted");
  price("rotor_gear", prices.rotor_gear, "another gearbox between input and rotor");
  price("implement_speed", prices.implement_speed, "another gearbox, or another implement, for the other PTO speed");
  price("less_power", prices.less_power, "what a smaller width or feed loses over the time looked at");
}

template <class V> void fields(V& v, LineMass& mass) {
  v.text("name", mass.name, Need::required, "what it is, such as rotor");
  v.field("inertia", mass.inertia, above_zero, "moment of inertia about its own axis: \"2.4 kg.m^2\"");
  v.choice("turns_with", mass.turns_with, "with the engine, with the PTO, or geared in the implement");
  v.field("speed", mass.speed, above_zero,
          "of a geared mass: its speed while the input turns at implement.input_speed");
}

template <class V> void fields(V& v, LineShaftCase& shaft) {
  v.text("from", shaft.from, Need::required, "name of the mass at one end, at whose speed the figures hold");
  v.text("to", shaft.to, Need::required, "name of the mass at the other end");
  v.field("stiffness", shaft.stiffness, above_zero, "torque over twist: \"9000 N.m/rad\"");
  v.field("backlash", shaft.backlash, not_negative, "whole play between both flanks: \"2 deg\"");
  v.choice("joints", shaft.joints, "whether it is the driveline with its joints");
}

template <class V> void fields(V& v, LinePulse& pulse) {
  v.text("name", pulse.name, Need::required, "what pulses, such as plunger");
  v.text("of", pulse.of, Need::required, "name of the mass in step with which it pulses");
  v.field("per_turn", pulse.per_turn, above_zero, "pulses in one turn of that mass");
  v.field("torque", pulse.torque, not_negative, "how far they swing its torque to either side of the mean: \"60 N.m\"");
}

template <class V> void fields(V& v, TorsionCase& torsion) {
  v.list("masses", torsion.masses, "turning masses from engine to rotor");
  v.list("shafts", torsion.shafts, "shafts between them");
  v.list("pulses", torsion.pulses, "what pulses, beside the joints");
  v.interval("pto_speeds", torsion.pto_speeds, above_zero, "PTO speeds at which the machine works");
  v.field("damping", torsion.damping, shaft_damping_share, "damping of the shafts, as a share of critical: \"2 %\"");
}

template <class V> void fields(V& v, StartCase& start) {
  v.field("clutch_ramp", start.clutch_ramp, not_negative, "time in which the tractor's PTO clutch closes: \"0.5 s\"");
  v.field("tractor_inertia", start.tractor_inertia, above_zero,
          "what turns between PTO clutch and driveline, at the PTO's speed: \"0.1 kg.m^2\"");
  v.field("driveline_inertia", start.driveline_inertia, above_zero,
          "the driveline and the half of the overload device that turns with it");
  v.field("driveline_stiffness", start.driveline_stiffness, above_zero,
          "torque over twist from stub to input shaft: \"9000 N.m/rad\"");
  v.field("backlash", start.backlash, not_negative, "whole play of stub, telescope and joints: \"2 deg\"");
  v.field("rotor_inertia", start.rotor_inertia, above_zero,
          "all that runs on with the rotor, at the rotor's own speed");
  v.field("rotor_friction", start.rotor_friction, above_zero, "torque at the rotor that is alike at every speed");
  v.field("rotor_windage", start.rotor_windage, not_negative, "torque of the air at the rotor's working speed");
  v.choice("overrunning_clutch", start.overrunning_clutch,
           "whether one is fitted, so that the rotor runs on while the driveline stands");
}

template <class V> void fields(V& v, SeasonOfWork& season) {
  v.field("hours", season.hours, not_negative, "hours of such work in a season");
  v.price("fuel_price", season.fuel_price, PricePer::litre, "price of fuel: \"1.20 EUR/L\"");
}

template <class V> void fields(V& v, Case& value) {
  v.text("title", value.title, Need::optional, "one line that names the case");
  v.text("note", value.note, Need::optional, "remarks; carried into the report");
  v.required_object("tractor", value.tractor, "the tractor");
  v.required_object("implement", value.implement, "the implement");
  v.required_object("driveline", value.driveline, "the shaft between the two");
  v.fitted("overload", value.overload, "overload device, or \"none\"");
  v.object("range", value.range, "positions that the implement takes");
  v.object("fouling", value.fouling, "what the driveline or the tongue may foul");
  v.part("start", value.start, "inertias and clutch: to examine start, blocked rotor and run-down in time");
  v.part("torsion", value.torsion, "the line as masses and shafts: to examine torsional resonance");
  v.object("limits", value.limits, "limits that replace the defaults");
  v.object("prices", value.prices, "what changes cost, work included: \"120 EUR\"");
  v.object("season", value.season, "for the money that an economy gear saves");
}

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
