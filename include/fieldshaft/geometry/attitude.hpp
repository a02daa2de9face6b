#pragma once
// The attitude of the implement relative to the tractor, by three angles.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

#include <Eigen/Core>

#include <cmath>

namespace fieldshaft {
inline namespace v0 {

/// Applied to the implement in the order roll, pitch, yaw; all zero when it stands straight behind the tractor and
/// level.
struct Attitude {
  Angle yaw{};   ///< about z; negative: the tractor turns left
  Angle pitch{}; ///< about y; positive: the implement's front end down (a hollow); negative: a crest
  Angle roll{};  ///< about x; positive: the implement's left side up
};

namespace text {
/// Rz(yaw) Ry(pitch) Rx(roll).
inline Eigen::Matrix3d rotation(double yaw, double pitch, double roll) noexcept {
  const double cy = std::cos(yaw);
  const double sy = std::sin(yaw);
  const double cp = std::cos(pitch);
  const double sp = std::sin(pitch);
  const double cr = std::cos(roll);
  const double sr = std::sin(roll);
  Eigen::Matrix3d matrix;
  matrix << cy * cp, cy * sp * sr - sy * cr, cy * sp * cr + sy * sr, //
      sy * cp, sy * sp * sr + cy * cr, sy * sp * cr - cy * sr,       //
      -sp, cp * sr, cp * cr;
  return matrix;
}
} // namespace text

/// The matrix that turns directions of the implement frame into those of the tractor frame.
///
/// R = Rz(yaw) Ry(pitch) Rx(roll), right-handed, axes of ISO 8855
/// Exact. Source: ISO 8855 (order and signs, from memory, verify). Example: yaw 90° turns forward into left.
inline Eigen::Matrix3d rotation(const Attitude& attitude) {
  check::finite(attitude.yaw.value(), {"rotation", "yaw", "rad"});
  check::finite(attitude.pitch.value(), {"rotation", "pitch", "rad"});
  check::finite(attitude.roll.value(), {"rotation", "roll", "rad"});
  return text::rotation(attitude.yaw.value(), attitude.pitch.value(), attitude.roll.value());
}

/// The attitude whose matrix this is, pitch within 90° to either side.
///
/// pitch = -asin(m20), yaw = atan2(m10, m00), roll = atan2(m21, m22)
/// Straight up or down, where yaw and roll turn about one axis, the roll is given as 0. Source: inverse of rotation().
inline Attitude attitude_of(const Eigen::Matrix3d& matrix) noexcept {
  const double flat = std::hypot(matrix(0, 0), matrix(1, 0));
  const Angle pitch = Angle::from_value(std::atan2(-matrix(2, 0), flat));
  if (!(flat > 1e-12)) return {Angle::from_value(std::atan2(-matrix(0, 1), matrix(1, 1))), pitch, {}};
  return {Angle::from_value(std::atan2(matrix(1, 0), matrix(0, 0))), pitch,
          Angle::from_value(std::atan2(matrix(2, 1), matrix(2, 2)))};
}

/// The attitude as a mirror in the tractor's middle plane shows it: a left turn becomes a right turn.
constexpr Attitude mirrored(const Attitude& attitude) noexcept {
  return {-attitude.yaw, attitude.pitch, -attitude.roll};
}

} // namespace v0
} // namespace fieldshaft
