#include "assess/layout.hpp"

#include "assess/headstock.hpp"

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

void append(std::vector<std::string>& paths, std::vector<std::string> more) {
  for (std::string& path : more) paths.push_back(std::move(path));
}

/// A top link that hangs slack in every position has no length that matters. A state that is not stated asks for what
/// it needs once it is.
bool needs_top_link(const Case& value) {
  const WorkingRange& range = value.range;
  bool stated = false;
  for (const Stated<StateRange>* state : {&range.working, &range.turning, &range.transport}) {
    if (!*state) continue;
    stated = true;
    if ((*state)->top_link != TopLink::slack) return true;
  }
  return !stated;
}

/// The coupler between links and implement; nothing where none is fitted.
const QuickCoupler* coupler_of(const Case& value) {
  const Stated<Fitted<QuickCoupler>>& coupler = value.tractor.hitch.quick_coupler;
  return coupler && coupler->present ? &coupler->item : nullptr;
}

std::vector<std::string> linkage_missing(const Case& value) {
  const Hitch& hitch = value.tractor.hitch;
  return unstated({{hitch.lower_pivot_behind.has_value(), "tractor.hitch.lower_pivot_behind"},
                   {hitch.lower_pivot_below.has_value(), "tractor.hitch.lower_pivot_below"},
                   {hitch.lower_link.has_value(), "tractor.hitch.lower_link"},
                   {hitch.top_pivot_behind.has_value(), "tractor.hitch.top_pivot_behind"},
                   {hitch.top_pivot_below.has_value(), "tractor.hitch.top_pivot_below"},
                   {hitch.top_link || hitch.level_at || !needs_top_link(value), "tractor.hitch.top_link"},
                   {value.implement.mast_height.has_value(), "implement.mast_height"}});
}

std::vector<std::string> coupler_missing(const Case& value) {
  const QuickCoupler* coupler = coupler_of(value);
  if (coupler == nullptr) return {};
  return unstated({{coupler->depth.has_value(), "tractor.hitch.quick_coupler.depth"},
                   {coupler->rise.has_value(), "tractor.hitch.quick_coupler.rise"}});
}

std::vector<std::string> drawbar_missing(const Hitch& hitch) {
  return unstated({{hitch.distance.has_value(), "tractor.hitch.distance"},
                   {hitch.drop.has_value(), "tractor.hitch.drop"},
                   {hitch.lateral.has_value(), "tractor.hitch.lateral"}});
}

} // namespace

Angle input_lean(const InputConnection& input) {
  const auto of = [](const Stated<Measured<Angle>>& angle) { return angle ? angle->tolerance.value() : 0.0; };
  return radians(std::hypot(of(input.yaw), of(input.pitch)));
}

namespace {

/// Tolerances of driveline and input connection; those of the hitch are added by its kind.
DrivelineTolerance own_tolerance(const Case& value) {
  const InputConnection& input = value.implement.input;
  DrivelineTolerance tolerance;
  tolerance.front_joint = value.driveline.front_joint->tolerance;
  tolerance.rear_joint = value.driveline.rear_joint->tolerance;
  tolerance.input_behind = input.behind->tolerance;
  tolerance.input_left = input.lateral->tolerance;
  tolerance.input_up = input.above->tolerance;
  tolerance.input_direction = input_lean(input);
  if (const QuickCoupler* coupler = coupler_of(value)) {
    tolerance.input_behind += coupler->depth->tolerance;
    tolerance.input_up += coupler->rise->tolerance;
  }
  return tolerance;
}

} // namespace

bool input_on_headstock(const Case& value) {
  const auto& pivot = value.implement.steering_pivot;
  const auto& input = value.implement.input.behind;
  return is_semi_mounted(value) && pivot->behind && input && input->value < pivot->behind->value;
}

std::vector<std::string> layout_missing(const Case& value) {
  const Hitch& hitch = value.tractor.hitch;
  const InputConnection& input = value.implement.input;
  const DrivelineCase& driveline = value.driveline;
  auto missing = unstated({{hitch.kind.has_value(), "tractor.hitch.kind"},
                           {input.behind.has_value(), "implement.input.behind"},
                           {input.above.has_value(), "implement.input.above"},
                           {input.lateral.has_value(), "implement.input.lateral"},
                           {driveline.front_joint.has_value(), "driveline.front_joint"},
                           {driveline.rear_joint.has_value(), "driveline.rear_joint"}});
  const bool adaptor_unknown = driveline.adaptor && driveline.adaptor->present && !driveline.adaptor->item.length;
  if (adaptor_unknown) missing.emplace_back("driveline.adaptor.length");
  if (hitch.kind == HitchKind::three_point) {
    append(missing, linkage_missing(value));
    append(missing, coupler_missing(value));
    if (const auto& pivot = value.implement.steering_pivot) {
      append(missing, unstated({{pivot->behind.has_value(), "implement.steering_pivot.behind"},
                                {pivot->lateral.has_value(), "implement.steering_pivot.lateral"}}));
    }
  }
  if (hitch.kind == HitchKind::drawbar) append(missing, drawbar_missing(hitch));
  if (input_on_headstock(value)) missing.emplace_back(input_on_headstock_path);
  return missing;
}

Position coupler_offset(const Case& value) {
  const QuickCoupler* coupler = coupler_of(value);
  return coupler == nullptr ? Position() : Position(-coupler->depth->value, Length{}, coupler->rise->value);
}

namespace {

/// Where the implement's input shaft points.
Direction direction_of(const InputConnection& input) {
  const auto angle = [](const Stated<Measured<Angle>>& stated) { return stated ? stated->value : Angle{}; };
  return Direction::ahead(angle(input.yaw), -angle(input.pitch));
}

} // namespace

Driveline driveline_of(const Case& value) {
  Driveline driveline = joints_of(value.driveline);
  const InputConnection& input = value.implement.input;
  driveline.input = {-input.behind->value, input.lateral->value, input.above->value};
  if (input.yaw || input.pitch) driveline.input_direction = direction_of(input);
  driveline.input = driveline.input + coupler_offset(value);
  const auto& adaptor = value.driveline.adaptor;
  return adaptor && adaptor->present ? with_adaptor(driveline, *adaptor->item.length) : driveline;
}

std::vector<std::string> place_missing(const Place& place, const std::string& path) {
  std::vector<std::string> missing;
  if (!place.behind) missing.push_back(path + ".behind");
  if (!place.left) missing.push_back(path + ".left");
  if (!place.above) missing.push_back(path + ".above");
  return missing;
}

Position position_of(const Place& place) { return {-place.behind->value, place.left->value, place.above->value}; }

Driveline fixed_section_of(const Case& value, const FixedSection& section) {
  Driveline driveline = joints_of(section);
  driveline.output = position_of(section.from);
  const InputConnection& input = value.implement.input;
  if (input.yaw || input.pitch) driveline.output_direction = -direction_of(input);
  driveline.input = position_of(section.to);
  return driveline;
}

Position pin_of(const Case& value) {
  const Hitch& hitch = value.tractor.hitch;
  return pin_position({hitch.distance->value, hitch.lateral->value, hitch.drop->value});
}

DrivelineTolerance trailed_tolerance(const Case& value) {
  const Hitch& hitch = value.tractor.hitch;
  DrivelineTolerance tolerance = own_tolerance(value);
  tolerance.pin_distance = hitch.distance->tolerance;
  tolerance.pin_lateral = hitch.lateral->tolerance;
  tolerance.pin_drop = hitch.drop->tolerance;
  return tolerance;
}

namespace {

Length value_of(const Stated<MeasuredLength>& length) { return length ? length->value : Length{}; }
Length tolerance_of(const Stated<MeasuredLength>& length) { return length ? length->tolerance : Length{}; }

/// The linkage but for its top link.
ThreePointLinkage without_top_link(const Case& value) {
  const Hitch& hitch = value.tractor.hitch;
  ThreePointLinkage linkage;
  linkage.lower_pivot_behind = hitch.lower_pivot_behind->value;
  linkage.lower_pivot_below = hitch.lower_pivot_below->value;
  linkage.lower_link = hitch.lower_link->value;
  linkage.top_pivot_behind = hitch.top_pivot_behind->value;
  linkage.top_pivot_below = hitch.top_pivot_below->value;
  linkage.mast_height = value.implement.mast_height->value;
  linkage.mast_forward = value_of(value.implement.mast_forward);
  linkage.span = value_of(hitch.span);
  linkage.convergence = value_of(hitch.convergence);
  return linkage;
}

/// How far the lower hitch points may stand from their stated place, along the machine, at the lift where it is level.
Length reach_tolerance(const MeasuredLength& link, const MeasuredLength& lift) {
  const auto reach = [](Length l, Length h) {
    check::within(h.value(), -l.value(), l.value(), {"top link", "tractor.hitch.level_at", "m"});
    return metres(std::sqrt(((l - h) * (l + h)).value()));
  };
  const Length stated = reach(link.value, lift.value);
  Length most{};
  for (const double l : {-1.0, 1.0}) {
    for (const double h : {-1.0, 0.0, 1.0}) {
      const Length there = reach(link.value + l * link.tolerance, lift.value + h * lift.tolerance);
      most = std::max(most, math::abs(there - stated));
    }
  }
  // Level links reach the farthest: where the lift may be 0, its ends do not show it.
  if (math::abs(lift.value) < lift.tolerance) most = std::max(most, link.value + link.tolerance - stated);
  return most;
}

} // namespace

MeasuredLength top_link_of(const Case& value) {
  const Hitch& hitch = value.tractor.hitch;
  if (hitch.top_link || !hitch.level_at) return hitch.top_link.value_or(MeasuredLength{});
  const Length length = top_link_for(without_top_link(value), hitch.level_at->value);
  // Its ends move by no more than all that they rest on; so does what lies between them.
  const Length along = hitch.lower_pivot_behind->tolerance + hitch.top_pivot_behind->tolerance +
                       reach_tolerance(*hitch.lower_link, *hitch.level_at) + tolerance_of(value.implement.mast_forward);
  const Length up = hitch.lower_pivot_below->tolerance + hitch.top_pivot_below->tolerance + hitch.level_at->tolerance +
                    value.implement.mast_height->tolerance;
  return {length, metres(std::hypot(along.value(), up.value()))};
}

ThreePointLinkage linkage_of(const Case& value) {
  ThreePointLinkage linkage = without_top_link(value);
  linkage.top_link = top_link_of(value).value;
  return linkage;
}

SupportWheel support_wheel_of(const Case& value) {
  const SupportWheels& wheels = value.implement.support_wheels->item;
  SupportWheel wheel{wheels.behind->value, wheels.below->value,
                     value.tractor.shaft_height->value - value.tractor.hitch.lower_pivot_below->value};
  if (const QuickCoupler* coupler = coupler_of(value)) { // from the ends of the links
    wheel.behind += coupler->depth->value;
    wheel.below -= coupler->rise->value;
  }
  return wheel;
}

Position steering_pivot_of(const Case& value) {
  const SteeringPivot& pivot = *value.implement.steering_pivot;
  return Position(-pivot.behind->value, pivot.lateral->value, Length{}) + coupler_offset(value);
}

Pose pose_on_links(const Case& value, const LinkagePosition& position, Stated<Angle> yaw, Stated<Angle> roll,
                   bool slack) {
  const bool steers = is_semi_mounted(value);
  const Position pivot = steers ? steering_pivot_of(value) : Position();
  const Angle steer = steers ? yaw.value_or(Angle{}) : Angle{};
  ThreePointLinkage linkage = linkage_of(value);
  if (slack) {
    SupportWheel wheel = support_wheel_of(value);
    if (steers) wheel = steered_wheel(wheel, pivot, steer, roll.value_or(Angle{}));
    linkage.top_link = slack_pose(linkage, wheel, position.lift).top_link;
  }
  Pose pose = mounted_pose(linkage, position);
  if (roll) pose.attitude.roll = *roll;
  if (!steers && yaw) pose.attitude.yaw = *yaw;
  if (!steers) return pose;
  const Pose about_pivot = steered_pose(pose, pivot, steer);
  return {in_tractor(about_pivot, -pivot), about_pivot.attitude};
}

MountedTolerance mounted_tolerance(const Case& value) {
  const Hitch& hitch = value.tractor.hitch;
  MountedTolerance tolerance;
  tolerance.driveline = own_tolerance(value);
  tolerance.lower_pivot_behind = hitch.lower_pivot_behind->tolerance;
  tolerance.lower_pivot_below = hitch.lower_pivot_below->tolerance;
  tolerance.lower_link = hitch.lower_link->tolerance;
  tolerance.top_pivot_behind = hitch.top_pivot_behind->tolerance;
  tolerance.top_pivot_below = hitch.top_pivot_below->tolerance;
  tolerance.top_link = top_link_of(value).tolerance;
  if (hitch.level_at && !hitch.top_link) tolerance.level = {hitch.level_at->value, hitch.level_at->tolerance, true};
  const auto both = [](const Stated<MeasuredLength>& a, const Stated<MeasuredLength>& b) {
    return metres(std::hypot(tolerance_of(a).value(), tolerance_of(b).value()));
  };
  tolerance.mast = both(value.implement.mast_height, value.implement.mast_forward);
  tolerance.span = tolerance_of(hitch.span);
  tolerance.convergence = tolerance_of(hitch.convergence);
  if (has_support_wheels(value)) {
    const SupportWheels& wheels = value.implement.support_wheels->item;
    tolerance.wheel = both(wheels.behind, wheels.below);
    if (const QuickCoupler* coupler = coupler_of(value)) tolerance.wheel += both(coupler->depth, coupler->rise);
    tolerance.ground = tolerance_of(value.tractor.shaft_height) + hitch.lower_pivot_below->tolerance;
  }
  if (const auto& pivot = value.implement.steering_pivot) tolerance.pivot = both(pivot->behind, pivot->lateral);
  return tolerance;
}

MountedEnvelope mounted_envelope(const Case& value, const MountedTolerance& tolerance, const MountedRange& positions,
                                 bool slack, const EnvelopeOptions& options) {
  const Driveline driveline = driveline_of(value);
  const ThreePointLinkage linkage = linkage_of(value);
  if (slack) return driveline_envelope(driveline, linkage, support_wheel_of(value), tolerance, positions, options);
  return driveline_envelope(driveline, linkage, tolerance, positions, options);
}

MountedRange positions_of(const Case& value, MachineState state) {
  const Positions positions = positions_in(value, state);
  MountedRange range;
  range.lift = positions.lift;
  if (positions.sway) range.sway = *positions.sway;
  if (!positions.sway) range.yaw = positions.yaw;
  if (positions.difference) range.difference = *positions.difference;
  if (!positions.difference) range.roll = positions.roll;
  if (is_semi_mounted(value)) range.pivot = steering_pivot_of(value);
  return range;
}

namespace {

/// Share of the roll that is left at a turn.
double roll_left(const Positions& positions, Angle yaw) {
  const Angle full = yaw < Angle{} ? positions.yaw.low : positions.yaw.high;
  return yaw == Angle{} ? 1.0 : 1.0 - (1.0 - positions.roll_at_full_turn) * static_cast<double>(yaw / full);
}

} // namespace

Placed placed_at(const Case& value, const Positions& positions, const Shares& shares) {
  const auto part = [](const auto& range, double share) { return (1.0 - share) * range.low + share * range.high; };
  const Angle yaw = part(positions.yaw, shares.turn);
  const Angle roll = roll_left(positions, yaw) * part(positions.roll, shares.roll);
  if (is_trailed(value)) {
    const Angle pitch = part(positions.pitch, shares.tilt);
    return {{pin_of(value), {yaw, pitch, roll}}, {yaw, pitch, roll, {}}};
  }
  const LinkagePosition at{part(positions.lift, shares.tilt),
                           positions.sway ? part(*positions.sway, shares.turn) : Length{},
                           positions.difference ? part(*positions.difference, shares.roll) : Length{}};
  const Pose pose = pose_on_links(value, at, positions.sway ? Stated<Angle>() : yaw,
                                  positions.difference ? Stated<Angle>() : roll, positions.slack);
  return {pose, {pose.attitude.yaw, pose.attitude.pitch, pose.attitude.roll, at.lift}};
}

AttitudeRange attitudes_of(const Case& value, MachineState state) {
  const Positions positions = positions_in(value, state);
  const AttitudeRange range{positions.yaw, positions.pitch, positions.roll, {}};
  return positions.roll_at_full_turn < 1.0 ? with_less_roll_at_full_turn(range, positions.roll_at_full_turn) : range;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
