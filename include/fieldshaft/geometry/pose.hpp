#pragma once
// Where the implement is: the place of its frame's origin in the tractor frame, and its attitude.

#include <fieldshaft/geometry/attitude.hpp>
#include <fieldshaft/geometry/direction.hpp>
#include <fieldshaft/geometry/position.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The tractor frame has its origin at the centre of the PTO shaft's end face, the shaft points to -x. The implement
/// frame has its origin at the hitch pin (trailed) or midway between the lower hitch pins (mounted).
struct Pose {
  Position pin;      ///< origin of the implement frame, in the tractor frame
  Attitude attitude; ///< of the implement relative to the tractor
};

/// A point of the implement in the tractor frame.
///
/// p_tractor = pin + Rz(yaw) Ry(pitch) Rx(roll) p_implement
/// Exact. Source: definition of the frames.
inline Position in_tractor(const Pose& pose, const Position& in_implement) {
  return Position::from_metres(pose.pin.metres() + rotation(pose.attitude) * in_implement.metres());
}

/// A direction of the implement in the tractor frame.
inline Direction in_tractor(const Pose& pose, const Direction& in_implement) {
  return Direction::from_unit(rotation(pose.attitude) * in_implement.unit());
}

/// A point of the tractor in the implement frame: the way back.
inline Position in_implement(const Pose& pose, const Position& in_tractor) {
  return Position::from_metres(rotation(pose.attitude).transpose() * (in_tractor.metres() - pose.pin.metres()));
}

inline Pose mirrored(const Pose& pose) noexcept { return {mirrored(pose.pin), mirrored(pose.attitude)}; }

} // namespace v0
} // namespace fieldshaft
