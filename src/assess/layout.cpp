#include "assess/layout.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

void append(std::vector<std::string>& paths, std::vector<std::string> more) {
  for (std::string& path : more) paths.push_back(std::move(path));
}

std::vector<std::string> linkage_missing(const Case& value) {
  const Hitch& hitch = value.tractor.hitch;
  return unstated({{hitch.lower_pivot_behind.has_value(), "tractor.hitch.lower_pivot_behind"},
                   {hitch.lower_pivot_below.has_value(), "tractor.hitch.lower_pivot_below"},
                   {hitch.lower_link.has_value(), "tractor.hitch.lower_link"},
                   {hitch.top_pivot_behind.has_value(), "tractor.hitch.top_pivot_behind"},
                   {hitch.top_pivot_below.has_value(), "tractor.hitch.top_pivot_below"},
                   {hitch.top_link.has_value(), "tractor.hitch.top_link"},
                   {value.implement.mast_height.has_value(), "implement.mast_height"}});
}

std::vector<std::string> drawbar_missing(const Hitch& hitch) {
  return unstated({{hitch.distance.has_value(), "tractor.hitch.distance"},
                   {hitch.drop.has_value(), "tractor.hitch.drop"},
                   {hitch.lateral.has_value(), "tractor.hitch.lateral"}});
}

/// Tolerances of driveline and input connection; those of the hitch are added by its kind.
DrivelineTolerance own_tolerance(const Case& value) {
  const InputConnection& input = value.implement.input;
  DrivelineTolerance tolerance;
  tolerance.front_joint = value.driveline.front_joint->tolerance;
  tolerance.rear_joint = value.driveline.rear_joint->tolerance;
  tolerance.input_behind = input.behind->tolerance;
  tolerance.input_left = input.lateral->tolerance;
  tolerance.input_up = input.above->tolerance;
  return tolerance;
}

} // namespace

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
  if (hitch.kind == HitchKind::three_point) append(missing, linkage_missing(value));
  if (hitch.kind == HitchKind::drawbar) append(missing, drawbar_missing(hitch));
  return missing;
}

Driveline driveline_of(const Case& value) {
  Driveline driveline;
  driveline.wide_angle_front = value.driveline.front_joint_kind == JointKind::wide_angle;
  driveline.wide_angle_rear = value.driveline.rear_joint_kind == JointKind::wide_angle;
  driveline.yoke_phase = value.driveline.yoke_phase.value_or(Angle{});
  driveline.front_joint = value.driveline.front_joint->value;
  driveline.rear_joint = value.driveline.rear_joint->value;
  const InputConnection& input = value.implement.input;
  driveline.input = {-input.behind->value, input.lateral->value, input.above->value};
  const auto& adaptor = value.driveline.adaptor;
  return adaptor && adaptor->present ? with_adaptor(driveline, *adaptor->item.length) : driveline;
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

ThreePointLinkage linkage_of(const Case& value) {
  const Hitch& hitch = value.tractor.hitch;
  ThreePointLinkage linkage;
  linkage.lower_pivot_behind = hitch.lower_pivot_behind->value;
  linkage.lower_pivot_below = hitch.lower_pivot_below->value;
  linkage.lower_link = hitch.lower_link->value;
  linkage.top_pivot_behind = hitch.top_pivot_behind->value;
  linkage.top_pivot_below = hitch.top_pivot_below->value;
  linkage.top_link = hitch.top_link->value;
  linkage.mast_height = *value.implement.mast_height;
  return linkage;
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
  tolerance.top_link = hitch.top_link->tolerance;
  return tolerance;
}

MountedEnvelope mounted_envelope(const Case& value, const MountedTolerance& tolerance, const MountedRange& positions,
                                 const EnvelopeOptions& options) {
  return driveline_envelope(driveline_of(value), linkage_of(value), tolerance, positions, options);
}

MountedRange positions_of(const Case& value, MachineState state) {
  const Positions positions = positions_in(value, state);
  MountedRange range;
  range.lift = positions.lift;
  range.yaw = positions.yaw;
  range.roll = positions.roll;
  return range;
}

AttitudeRange attitudes_of(const Case& value, MachineState state) {
  const Positions positions = positions_in(value, state);
  return {positions.yaw, positions.pitch, positions.roll, {}};
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
