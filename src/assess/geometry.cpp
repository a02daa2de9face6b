#include "assess/geometry.hpp"

#include <fieldshaft/driveline.hpp>
#include <fieldshaft/hitch.hpp>
#include <fieldshaft/hitch/linkage.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

std::vector<std::string> geometry_missing(const Case& value) {
  const Hitch& hitch = value.tractor.hitch;
  const InputConnection& input = value.implement.input;
  const DrivelineCase& driveline = value.driveline;
  auto missing = unstated({{hitch.kind.has_value(), "tractor.hitch.kind"},
                           {input.behind.has_value(), "implement.input.behind"},
                           {input.above.has_value(), "implement.input.above"},
                           {input.lateral.has_value(), "implement.input.lateral"},
                           {driveline.front_joint.has_value(), "driveline.front_joint"},
                           {driveline.rear_joint.has_value(), "driveline.rear_joint"}});
  if (hitch.kind == HitchKind::three_point) {
    for (auto& path : unstated({{hitch.lower_pivot_behind.has_value(), "tractor.hitch.lower_pivot_behind"},
                                {hitch.lower_pivot_below.has_value(), "tractor.hitch.lower_pivot_below"},
                                {hitch.lower_link.has_value(), "tractor.hitch.lower_link"},
                                {hitch.top_pivot_behind.has_value(), "tractor.hitch.top_pivot_behind"},
                                {hitch.top_pivot_below.has_value(), "tractor.hitch.top_pivot_below"},
                                {hitch.top_link.has_value(), "tractor.hitch.top_link"},
                                {value.implement.mast_height.has_value(), "implement.mast_height"}})) {
      missing.push_back(std::move(path));
    }
  }
  if (hitch.kind == HitchKind::drawbar) {
    for (auto& path : unstated({{hitch.distance.has_value(), "tractor.hitch.distance"},
                                {hitch.drop.has_value(), "tractor.hitch.drop"},
                                {hitch.lateral.has_value(), "tractor.hitch.lateral"}})) {
      missing.push_back(std::move(path));
    }
  }
  return missing;
}

/// What decides how evenly the implement's shaft turns, beside the angles.
bool variation_known(const Case& value) {
  const DrivelineCase& driveline = value.driveline;
  return driveline.front_joint_kind && driveline.rear_joint_kind && driveline.yoke_phase;
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
  return driveline;
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

DrivelineTolerance trailed_tolerance(const Case& value) {
  const Hitch& hitch = value.tractor.hitch;
  DrivelineTolerance tolerance = own_tolerance(value);
  tolerance.pin_distance = hitch.distance->tolerance;
  tolerance.pin_lateral = hitch.lateral->tolerance;
  tolerance.pin_drop = hitch.drop->tolerance;
  return tolerance;
}

AngleRange angle_range(const Interval<Angle>& interval) { return {interval.low, interval.high}; }

PoseAt pose_at(const Attitude& attitude) { return {attitude.yaw, attitude.pitch, attitude.roll, std::nullopt}; }

/// The driveline at one place of the pin over a range of attitudes. Every extreme is taken at its proved bound, so that
/// no attitude of the range is worse. Angles and lengths hold for all measurements within their tolerances; difference
/// and uneven running, whose bounds over tolerances are wide, for the measurements as stated.
StateExtremes extremes_at(const Case& value, const Position& pin, const AttitudeRange& attitudes,
                          const DrivelineTolerance& tolerance) {
  const Driveline driveline = driveline_of(value);
  EnvelopeOptions options;
  options.with_speed_variation = false;
  const DrivelineEnvelope tolerant = driveline_envelope(driveline, pin, tolerance, attitudes, options).envelope;
  options.with_speed_variation = variation_known(value);
  const DrivelineEnvelope stated = driveline_envelope(driveline, pin, attitudes, options);
  StateExtremes extremes;
  extremes.front = {tolerant.front_angle.upper, pose_at(tolerant.front_angle.at)};
  extremes.rear = {tolerant.rear_angle.upper, pose_at(tolerant.rear_angle.at)};
  extremes.longest = {tolerant.longest.upper, pose_at(tolerant.longest.at)};
  extremes.shortest = {tolerant.shortest.lower, pose_at(tolerant.shortest.at)};
  extremes.difference = {stated.difference.upper, pose_at(stated.difference.at)};
  if (stated.speed_variation) extremes.variation = {stated.speed_variation->upper, pose_at(stated.speed_variation->at)};
  return extremes;
}

StateExtremes trailed_extremes(const Case& value, const StateRange& range) {
  const Hitch& hitch = value.tractor.hitch;
  const DrawbarHitch drawbar{hitch.distance->value, hitch.lateral->value, hitch.drop->value};
  const AttitudeRange attitudes{angle_range(*range.yaw), angle_range(*range.pitch), angle_range(*range.roll), {}};
  return extremes_at(value, pin_position(drawbar), attitudes, trailed_tolerance(value));
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

/// By how much the tolerances of the linkage may pitch the implement at a lift: each measurement moved to the end of
/// its tolerance by itself, the changes added up.
Angle pitch_tolerance(const Case& value, const ThreePointLinkage& linkage, Length lift) {
  const Hitch& hitch = value.tractor.hitch;
  const Angle stated = mounted_pose(linkage, {lift, {}, {}}).attitude.pitch;
  const std::pair<Length ThreePointLinkage::*, Length> measured[] = {
      {&ThreePointLinkage::lower_pivot_behind, hitch.lower_pivot_behind->tolerance},
      {&ThreePointLinkage::lower_pivot_below, hitch.lower_pivot_below->tolerance},
      {&ThreePointLinkage::lower_link, hitch.lower_link->tolerance},
      {&ThreePointLinkage::top_pivot_behind, hitch.top_pivot_behind->tolerance},
      {&ThreePointLinkage::top_pivot_below, hitch.top_pivot_below->tolerance},
      {&ThreePointLinkage::top_link, hitch.top_link->tolerance}};
  Angle sum{};
  for (const auto& [member, tolerance] : measured) {
    Angle largest{};
    for (const double side : {-1.0, 1.0}) {
      ThreePointLinkage moved = linkage;
      moved.*member += side * tolerance;
      const Angle pitch = mounted_pose(moved, {lift, {}, {}}).attitude.pitch;
      if (math::abs(pitch - stated) > largest) largest = math::abs(pitch - stated);
    }
    sum += largest;
  }
  return sum;
}

DrivelineTolerance mounted_tolerance(const Case& value) {
  const Hitch& hitch = value.tractor.hitch;
  DrivelineTolerance tolerance = own_tolerance(value);
  tolerance.pin_distance = hitch.lower_pivot_behind->tolerance + hitch.lower_link->tolerance;
  tolerance.pin_drop = hitch.lower_pivot_below->tolerance + hitch.lower_link->tolerance;
  return tolerance;
}

template <class Q> void keep_greater(WorstCase<Q>& worst, const WorstCase<Q>& other) {
  if (other.value > worst.value) worst = other;
}

/// Steps of the lift: proved over yaw, roll and tolerances at each of them; between two of them the linkage moves by a
/// 240th of the lift range.
constexpr int lift_steps = 240;

StateExtremes mounted_extremes(const Case& value, const StateRange& range) {
  const ThreePointLinkage linkage = linkage_of(value);
  std::optional<StateExtremes> worst;
  for (int i = 0; i <= lift_steps; ++i) {
    const double share = static_cast<double>(i) / lift_steps;
    const Length lift = (1.0 - share) * range.lift->low + share * range.lift->high;
    const Pose pose = mounted_pose(linkage, {lift, {}, {}});
    const Angle slack = pitch_tolerance(value, linkage, lift);
    const AttitudeRange attitudes{angle_range(*range.yaw),
                                  {pose.attitude.pitch - slack, pose.attitude.pitch + slack},
                                  angle_range(*range.roll),
                                  {}};
    StateExtremes here = extremes_at(value, pose.pin, attitudes, mounted_tolerance(value));
    for (PoseAt* at : {&here.front.pose, &here.rear.pose, &here.longest.pose, &here.shortest.pose,
                       &here.difference.pose, &here.variation.pose}) {
      at->lift = lift;
    }
    if (!worst) worst = here;
    keep_greater(worst->front, here.front);
    keep_greater(worst->rear, here.rear);
    keep_greater(worst->longest, here.longest);
    keep_greater(worst->difference, here.difference);
    keep_greater(worst->variation, here.variation);
    if (here.shortest.value < worst->shortest.value) worst->shortest = here.shortest;
  }
  return *worst;
}

} // namespace

const StateExtremes* DrivelineOverRange::find(MachineState state) const {
  const auto found =
      std::find_if(states.begin(), states.end(), [&](const StateExtremes& e) { return e.state == state; });
  return found == states.end() ? nullptr : &*found;
}

std::vector<std::string> DrivelineOverRange::missing_for(MachineState state) const {
  std::vector<std::string> paths = missing;
  for (const auto& [of, path] : missing_of_state) {
    if (of == state) paths.push_back(path);
  }
  return paths;
}

DrivelineOverRange driveline_over_range(const Case& value) {
  DrivelineOverRange found;
  found.missing = geometry_missing(value);
  const bool trailed = value.tractor.hitch.kind == HitchKind::drawbar;
  const struct {
    MachineState state;
    const Stated<StateRange>& range;
    std::string path;
  } states[] = {{MachineState::working, value.range.working, "range.working"},
                {MachineState::turning, value.range.turning, "range.turning"},
                {MachineState::transport, value.range.transport, "range.transport"}};
  for (const auto& entry : states) {
    const StateRange range = entry.range.value_or(StateRange{});
    std::vector<std::string> lacking;
    if (!range.yaw) lacking.push_back(entry.path + ".yaw");
    if (!range.roll) lacking.push_back(entry.path + ".roll");
    if (trailed && !range.pitch) lacking.push_back(entry.path + ".pitch");
    if (!trailed && !range.lift) lacking.push_back(entry.path + ".lift");
    if (!range.driven) lacking.push_back(entry.path + ".driven");
    for (std::string& path : lacking) found.missing_of_state.emplace_back(entry.state, std::move(path));
    if (!found.missing_for(entry.state).empty()) continue;
    try {
      StateExtremes extremes = trailed ? trailed_extremes(value, range) : mounted_extremes(value, range);
      extremes.state = entry.state;
      extremes.driven = *range.driven;
      found.states.push_back(extremes);
    } catch (const InputError& error) { // a lift out of reach, a linkage that cannot close, joint centres that meet
      found.missing_of_state.emplace_back(entry.state, entry.path + (trailed ? "" : ".lift"));
      found.impossible.emplace_back(error.what());
    }
  }
  return found;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
