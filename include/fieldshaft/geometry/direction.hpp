#pragma once
// A direction: a vector of length one, without a unit.

#include <fieldshaft/geometry/position.hpp>

#include <Eigen/Geometry>

#include <cmath>

namespace fieldshaft {
inline namespace v0 {

class Direction {
public:
  /// Forward, along x.
  Direction() noexcept : unit_(Eigen::Vector3d::UnitX()) {}

  /// Along a vector of any length above 0; InputError where a part is not finite or all are 0.
  Direction(double forward, double left, double up) : unit_(forward, left, up) {
    check::finite(forward, {"Direction", "forward", ""});
    check::finite(left, {"Direction", "left", ""});
    check::finite(up, {"Direction", "up", ""});
    const double length = std::hypot(forward, left, up);
    check::positive(length, {"Direction", "length", ""});
    unit_ /= length;
  }

  /// Level or inclined, straight ahead or turned: `turn` to the left seen from above, then `rise` upwards.
  static Direction ahead(Angle turn, Angle rise) {
    return {math::cos(rise) * math::cos(turn), math::cos(rise) * math::sin(turn), math::sin(rise)};
  }

  /// From a vector of length one, unchecked: for inner loops.
  static Direction from_unit(const Eigen::Vector3d& unit) noexcept {
    Direction direction;
    direction.unit_ = unit;
    return direction;
  }

  const Eigen::Vector3d& unit() const noexcept { return unit_; }
  double forward() const noexcept { return unit_.x(); }
  double left() const noexcept { return unit_.y(); }
  double up() const noexcept { return unit_.z(); }

  friend Direction operator-(const Direction& a) noexcept { return from_unit(-a.unit_); }

private:
  Eigen::Vector3d unit_;
};

/// The point that lies a length along a direction from another.
inline Position along(const Position& from, const Direction& direction, Length length) noexcept {
  return Position::from_metres(from.metres() + length.value() * direction.unit());
}

/// The angle between two directions, from 0 to 180° [rad].
///
/// angle = atan2(|a x b|, a · b), which keeps its digits at small and at large angles
/// Source: definition of the vector and the scalar product. Example: forward and left: 90°.
inline Angle angle_between(const Direction& a, const Direction& b) noexcept {
  return Angle::from_value(std::atan2(a.unit().cross(b.unit()).norm(), a.unit().dot(b.unit())));
}

/// The direction as a mirror in the tractor's middle plane shows it, exactly.
inline Direction mirrored(const Direction& direction) noexcept {
  return Direction::from_unit({direction.forward(), -direction.left(), direction.up()});
}

} // namespace v0
} // namespace fieldshaft
