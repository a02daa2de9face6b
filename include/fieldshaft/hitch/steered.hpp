#pragma once
// A semi-mounted implement: a headstock on the lower links, and behind it the machine that steers about an upright
// pivot.

#include <fieldshaft/geometry.hpp>

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

} // namespace v0
} // namespace fieldshaft
