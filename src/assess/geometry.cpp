#include "assess/geometry.hpp"

#include <fieldshaft/driveline.hpp>
#include <fieldshaft/hitch.hpp>

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
  if (hitch.kind == HitchKind::drawbar) {
    for (auto& path : unstated({{hitch.distance.has_value(), "tractor.hitch.distance"},
                                {hitch.drop.has_value(), "tractor.hitch.drop"},
                                {hitch.lateral.has_value(), "tractor.hitch.lateral"}})) {
      missing.push_back(std::move(path));
    }
  }
  return missing;
}

Driveline driveline_of(const Case& value) {
  Driveline driveline;
  driveline.front_joint = value.driveline.front_joint->value;
  driveline.rear_joint = value.driveline.rear_joint->value;
  const InputConnection& input = value.implement.input;
  driveline.input = {-input.behind->value, input.lateral->value, input.above->value};
  return driveline;
}

AngleRange angle_range(const Interval<Angle>& interval) { return {interval.low, interval.high}; }

PoseAt pose_at(const Attitude& attitude) { return {attitude.yaw, attitude.pitch, attitude.roll, std::nullopt}; }

/// Every extreme is taken at its proved bound, so that no position of the range can be worse.
StateExtremes trailed_extremes(const Case& value, MachineState state, const StateRange& range) {
  const Hitch& hitch = value.tractor.hitch;
  const DrawbarHitch drawbar{hitch.distance->value, hitch.lateral->value, hitch.drop->value};
  const AttitudeRange attitudes{angle_range(*range.yaw), angle_range(*range.pitch), angle_range(*range.roll), {}};
  const DrivelineEnvelope envelope = driveline_envelope(driveline_of(value), pin_position(drawbar), attitudes);
  StateExtremes extremes;
  extremes.state = state;
  extremes.front = {envelope.front_angle.upper, pose_at(envelope.front_angle.at)};
  const bool front_worse = envelope.front_angle.upper >= envelope.rear_angle.upper;
  const Extreme<Angle>& larger = front_worse ? envelope.front_angle : envelope.rear_angle;
  extremes.angle = {larger.upper, pose_at(larger.at)};
  extremes.difference = {envelope.difference.upper, pose_at(envelope.difference.at)};
  extremes.longest = {envelope.longest.upper, pose_at(envelope.longest.at)};
  extremes.shortest = {envelope.shortest.lower, pose_at(envelope.shortest.at)};
  return extremes;
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
    if (!trailed || !found.missing_for(entry.state).empty()) continue;
    found.states.push_back(trailed_extremes(value, entry.state, range));
    found.states.back().driven = *range.driven;
  }
  return found;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
