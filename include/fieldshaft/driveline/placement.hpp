#pragma once
// Where to put pin and input shaft so that the joints share the turn, or the worst angle is least.

#include <fieldshaft/driveline/envelope.hpp>
#include <fieldshaft/hitch/drawbar.hpp>

#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// The pin distance at which both joints stand equally far from the pin, so that each takes half of a turn [m].
///
/// distance = front joint + (how far the rear joint lies behind the pin)
///   driveline  its input shaft pointing forward; the rear joint behind the pin
/// Exact for equal angles where everything lies in one plane; out of plane use best_placement.
/// Source: planar_joint_angles with a = b. Example: front joint 100 mm, rear joint 450 mm behind the pin: 550 mm.
inline Length equal_angle_pin_distance(const Driveline& driveline) {
  check::driveline(driveline, "equal_angle_pin_distance");
  const Length behind = -rear_joint_position(driveline).forward();
  check::positive(behind.value(), {"equal_angle_pin_distance", "rear joint behind the pin", "m"});
  return driveline.front_joint + behind;
}

/// How far behind the pin the rear joint has to stand for a given drawbar [m]: the same equation for the implement's
/// side.
inline Length equal_angle_rear_joint(const Driveline& driveline, const DrawbarHitch& hitch) {
  check::driveline(driveline, "equal_angle_rear_joint");
  const Length ahead = hitch.distance - driveline.front_joint;
  check::positive(ahead.value(), {"equal_angle_rear_joint", "front joint ahead of the pin", "m"});
  return ahead;
}

enum class PlacementGoal {
  least_worst_angle,     ///< the larger of the two greatest joint angles
  least_angle_difference ///< the greatest difference of the two
};

/// What can be moved.
enum class PlacementParameter {
  pin_distance, ///< another drawbar hole or an extension: PTO shaft end to pin
  pin_drop,     ///< another height of the drawbar
  input_up,     ///< another height of the input shaft
  input_behind, ///< another place of the input shaft along the machine
};

/// One place and what it leads to, proved over the whole range.
struct Placement {
  Length place{}; ///< value of the parameter
  Angle worst{};  ///< upper bound of the goal's angle
  DrivelineEnvelope envelope;
};

namespace detail {

struct Placed {
  Driveline driveline;
  DrawbarHitch hitch;
};

inline Placed placed(const Driveline& driveline, const DrawbarHitch& hitch, PlacementParameter parameter,
                     Length value) {
  Placed p{driveline, hitch};
  const Position& input = driveline.input;
  switch (parameter) {
  case PlacementParameter::pin_distance: p.hitch.distance = value; break;
  case PlacementParameter::pin_drop: p.hitch.drop = value; break;
  case PlacementParameter::input_up: p.driveline.input = Position(input.forward(), input.left(), value); break;
  case PlacementParameter::input_behind: p.driveline.input = Position(-value, input.left(), input.up()); break;
  }
  return p;
}

} // namespace detail

/// What one place of a parameter leads to.
inline Placement placement(const Driveline& driveline, const DrawbarHitch& hitch, const AttitudeRange& range,
                           PlacementParameter parameter, Length value, PlacementGoal goal,
                           const EnvelopeOptions& options = {}) {
  EnvelopeOptions few = options;
  few.with_speed_variation = false;
  const detail::Placed p = detail::placed(driveline, hitch, parameter, value);
  Placement result{value, {}, driveline_envelope(p.driveline, pin_position(p.hitch), range, few)};
  const DrivelineEnvelope& e = result.envelope;
  result.worst = goal == PlacementGoal::least_angle_difference ? e.difference.upper
                                                               : std::max(e.front_angle.upper, e.rear_angle.upper);
  return result;
}

/// The best of some places, such as the holes of a drawbar.
///
///   places  at least one value of the parameter
/// Each place's worst angle is proved over the range; the first of equally good ones is given.
inline Placement best_placement(const Driveline& driveline, const DrawbarHitch& hitch, const AttitudeRange& range,
                                PlacementParameter parameter, const std::vector<Length>& places, PlacementGoal goal,
                                const EnvelopeOptions& options = {}) {
  if (places.empty()) fail_input("best_placement", "places", "none", "at least one");
  Placement best = placement(driveline, hitch, range, parameter, places.front(), goal, options);
  for (std::size_t i = 1; i < places.size(); ++i) {
    const Placement next = placement(driveline, hitch, range, parameter, places[i], goal, options);
    if (next.worst < best.worst) best = next;
  }
  return best;
}

/// The best place within an interval: 25 places, then the neighbourhood of the best narrowed by the golden section.
///
///   from, to  ends of the interval [m]
/// The angles at the place found are proved; that no other place of the interval is better is not.
/// Source: golden section, any text on numerical methods. Example: joints in one plane: the place of
/// equal_angle_pin_distance.
inline Placement best_placement(const Driveline& driveline, const DrawbarHitch& hitch, const AttitudeRange& range,
                                PlacementParameter parameter, Length from, Length to, PlacementGoal goal,
                                const EnvelopeOptions& options = {}) {
  check::finite(from.value(), {"best_placement", "from", "m"});
  check::at_least(to.value(), from.value(), {"best_placement", "to", "m"});
  constexpr int places = 25;
  std::vector<Length> grid;
  grid.reserve(places);
  for (int i = 0; i < places; ++i) grid.push_back(from + (static_cast<double>(i) / (places - 1)) * (to - from));
  Placement best = best_placement(driveline, hitch, range, parameter, grid, goal, options);
  const Length step = (to - from) / static_cast<double>(places - 1);
  Length low = std::max(from, best.place - step);
  Length high = std::min(to, best.place + step);
  constexpr double golden = 0.6180339887498949; // (sqrt 5 - 1)/2
  while (high - low > millimetres(0.1)) {
    const Placement left = placement(driveline, hitch, range, parameter, high - golden * (high - low), goal, options);
    const Placement right = placement(driveline, hitch, range, parameter, low + golden * (high - low), goal, options);
    const bool go_left = left.worst < right.worst;
    (go_left ? high : low) = go_left ? right.place : left.place;
    const Placement& better = go_left ? left : right;
    if (better.worst < best.worst) best = better;
  }
  return best;
}

} // namespace v0
} // namespace fieldshaft
