#pragma once
// A semi-mounted implement: a headstock on the lower links, and behind it the machine that steers about an upright
// pivot.

#include <fieldshaft/geometry.hpp>
#include <fieldshaft/hitch/linkage.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The pose of the steered part.
///
///   headstock  pose of the headstock, as mounted_pose gives it
///   pivot      place of the steering pivot in the headstock's frame; the pivot stands along the headstock's z
///   steer      turn of the machine about the pivot [rad]; below 0 as the tractor turns left
/// The frame of the steered part has its origin at the pivot. Exact. Source: the turns one after the other.
/// Example: a level headstock and no steering: the pivot's place, no turn.
inline Pose steered_pose(const Pose& headstock, const Position& pivot, Angle steer) {
  const Eigen::Matrix3d turn = rotation(headstock.attitude) * rotation(Attitude{steer, {}, {}});
  return {in_tractor(headstock, pivot), attitude_of(turn)};
}

namespace detail {

/// The lowest point of a wheel that steers with the machine, seen along the leaning headstock [m].
struct SteeredWheel {
  double behind, below; ///< as of a wheel that neither steers nor leans
  double aside;         ///< to the left
};

inline SteeredWheel steered_wheel(double behind, double below, const Position& pivot, double steer,
                                  double roll) noexcept {
  const double x = -behind - pivot.metres().x();
  const double y = -pivot.metres().y();
  const double aside = pivot.metres().y() + std::sin(steer) * x + std::cos(steer) * y;
  return {-(pivot.metres().x() + std::cos(steer) * x - std::sin(steer) * y),
          below * std::cos(roll) - aside * std::sin(roll), aside};
}

} // namespace detail

/// Where the wheel of a machine that steers about a pivot stands, as slack_pose takes it.
///
///   wheel  with the machine straight behind its headstock
///   pivot  of steering, from the lower hitch points
///   steer  turn about it [rad], as for steered_pose
///   roll   of the headstock [rad]
/// behind is the way of the turned wheel along the headstock, below its depth under the leaning one: below cos roll -
/// aside sin roll. Exact for one wheel, or for two taken at their middle. Source: geometry. Example: pivot 0.5 m and
/// wheel 3 m behind, turned by 60°, level: 1.75 m behind.
inline SupportWheel steered_wheel(const SupportWheel& wheel, const Position& pivot, Angle steer, Angle roll = {}) {
  check::finite(steer.value(), {"steered_wheel", "steer", "rad"});
  check::finite(roll.value(), {"steered_wheel", "roll", "rad"});
  const detail::SteeredWheel at =
      detail::steered_wheel(wheel.behind.value(), wheel.below.value(), pivot, steer.value(), roll.value());
  return {metres(at.behind), metres(at.below), wheel.ground_below_pivot};
}

} // namespace v0
} // namespace fieldshaft
