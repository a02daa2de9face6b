#include "assess/geometry.hpp"

#include "assess/coupling_yokes.hpp"
#include "assess/layout.hpp"
#include "assess/limits.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// What decides how evenly the implement's shaft turns, beside the angles.
bool variation_known(const Case& value) {
  const DrivelineCase& driveline = value.driveline;
  return driveline.front_joint_kind && driveline.rear_joint_kind && driveline.yoke_phase;
}

PoseAt pose_at(const Attitude& attitude) { return {attitude.yaw, attitude.pitch, attitude.roll, std::nullopt}; }

/// An extreme at its proved bound: the upper one, or the lower one of a least value.
template <class Q> WorstCase<Q> at_bound(const Extreme<Q>& extreme, bool least = false) {
  return {least ? extreme.lower : extreme.upper, pose_at(extreme.at), extreme.value, extreme.proved};
}

StateExtremes trailed_extremes(const Case& value, MachineState state, bool with_variation) {
  return extremes_at(driveline_of(value), pin_of(value), attitudes_of(value, state), trailed_tolerance(value),
                     with_variation);
}

/// An extreme of a mounted implement at its proved bound, with the lift at which it is attained.
template <class Q> WorstCase<Q> at_bound(const Extreme<Q>& extreme, const LinkagePosition& at, bool least = false) {
  WorstCase<Q> worst = at_bound(extreme, least);
  worst.pose.lift = at.lift;
  return worst;
}

StateExtremes mounted_extremes(const Case& value, MachineState state, bool with_variation) {
  const MountedRange positions = positions_of(value, state);
  const bool slack = positions_in(value, state).slack;
  EnvelopeOptions options;
  if (positions.pivot) options.budget = budget_of_steered;
  options.with_speed_variation = with_variation;
  const MountedEnvelope tolerant = mounted_envelope(value, mounted_tolerance(value), positions, slack, options);
  options.wanted = detail::WantedExtremes::difference;
  const MountedEnvelope stated = mounted_envelope(value, {}, positions, slack, options);
  StateExtremes extremes;
  extremes.front = at_bound(tolerant.envelope.front_angle, tolerant.front_angle_at);
  extremes.rear = at_bound(tolerant.envelope.rear_angle, tolerant.rear_angle_at);
  extremes.longest = at_bound(tolerant.envelope.longest, tolerant.longest_at);
  extremes.shortest = at_bound(tolerant.envelope.shortest, tolerant.shortest_at, true);
  extremes.difference = at_bound(stated.envelope.difference, stated.difference_at);
  extremes.difference.loose = tolerant.envelope.difference.value;
  if (!stated.envelope.speed_variation) return extremes;
  extremes.variation = at_bound(*stated.envelope.speed_variation, stated.speed_variation_at);
  extremes.variation.loose = tolerant.envelope.speed_variation->value;
  return extremes;
}

} // namespace

StateExtremes extremes_at(const Driveline& driveline, const Position& pin, const AttitudeRange& attitudes,
                          const DrivelineTolerance& tolerance, bool with_variation) {
  EnvelopeOptions options;
  options.with_speed_variation = false;
  options.wanted = detail::WantedExtremes::all_but_difference;
  const TolerantEnvelope tolerant = driveline_envelope(driveline, pin, tolerance, attitudes, options);
  options.with_speed_variation = with_variation;
  options.wanted = detail::WantedExtremes::difference;
  const DrivelineEnvelope stated = driveline_envelope(driveline, pin, attitudes, options);
  StateExtremes extremes;
  extremes.front = at_bound(tolerant.envelope.front_angle);
  extremes.rear = at_bound(tolerant.envelope.rear_angle);
  extremes.longest = at_bound(tolerant.envelope.longest);
  extremes.shortest = at_bound(tolerant.envelope.shortest, true);
  const auto within = [&](const Attitude& at, const auto& of) {
    return detail::greatest_within(driveline, pin, tolerance, at, of);
  };
  extremes.difference = at_bound(stated.difference);
  extremes.difference.loose =
      radians(within(stated.difference.at, [](const DrivelineState& s) { return math::abs(s.difference).value(); }));
  if (!stated.speed_variation) return extremes;
  extremes.variation = at_bound(*stated.speed_variation);
  extremes.variation.loose =
      within(stated.speed_variation->at, [](const DrivelineState& s) { return s.speed_variation; });
  return extremes;
}

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

std::vector<std::string> DrivelineOverRange::missing_for_all() const {
  std::vector<std::string> paths = missing;
  for (const auto& [of, path] : missing_of_state) paths.push_back(path);
  return paths;
}

const StateExtremes* DrivelineOverRange::longest() const {
  const auto at = std::max_element(states.begin(), states.end(), [](const StateExtremes& a, const StateExtremes& b) {
    return a.longest.value < b.longest.value;
  });
  return at == states.end() ? nullptr : &*at;
}

const StateExtremes* DrivelineOverRange::shortest() const {
  const auto at = std::min_element(states.begin(), states.end(), [](const StateExtremes& a, const StateExtremes& b) {
    return a.shortest.value < b.shortest.value;
  });
  return at == states.end() ? nullptr : &*at;
}

DrivelineOverRange driveline_over_range(const Case& value, Depth depth) {
  DrivelineOverRange found;
  found.missing = layout_missing(value);
  const bool trailed = is_trailed(value);
  for (const MachineState state : states_with_positions) {
    for (std::string& path : positions_missing(value, state)) {
      found.missing_of_state.emplace_back(state, std::move(path));
    }
    if (!found.missing_for(state).empty()) continue;
    try {
      const bool driven = *range_of(value, state)->driven;
      const bool variation = variation_known(value) && (depth == Depth::whole || driven);
      StateExtremes extremes =
          trailed ? trailed_extremes(value, state, variation) : mounted_extremes(value, state, variation);
      allow_for_crosses(extremes, yokes_of(value.driveline));
      extremes.state = state;
      extremes.driven = driven;
      found.states.push_back(extremes);
    } catch (const InputError& error) { // a lift out of reach, a linkage that cannot close, joint centres that meet
      found.missing_of_state.emplace_back(state, range_path(state) + (trailed ? "" : ".lift"));
      found.impossible.emplace_back(error.what());
    }
  }
  return found;
}

std::vector<std::string> telescope_missing(const Case& value, const DrivelineOverRange& range) {
  std::vector<std::string> missing = range.missing_for_all();
  for (std::string& path : telescope_entries_missing(value.driveline)) missing.push_back(std::move(path));
  return missing;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
