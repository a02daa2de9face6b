#pragma once
// A point, or the way from one point to another, in metres inside.
//
// Axes are those of ISO 8855: x forward, y left, z up.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

#include <Eigen/Core>

namespace fieldshaft {
inline namespace v0 {

class Position {
public:
  /// The origin.
  Position() noexcept : metres_(Eigen::Vector3d::Zero()) {}

  /// forward, left and up of the origin; InputError where one is not finite.
  Position(Length forward, Length left, Length up) : metres_(forward.value(), left.value(), up.value()) {
    check::finite(forward.value(), {"Position", "forward", "m"});
    check::finite(left.value(), {"Position", "left", "m"});
    check::finite(up.value(), {"Position", "up", "m"});
  }

  /// From plain metres, unchecked: for inner loops.
  static Position from_metres(const Eigen::Vector3d& metres) noexcept {
    Position position;
    position.metres_ = metres;
    return position;
  }

  const Eigen::Vector3d& metres() const noexcept { return metres_; }
  Length forward() const noexcept { return Length::from_value(metres_.x()); }
  Length left() const noexcept { return Length::from_value(metres_.y()); }
  Length up() const noexcept { return Length::from_value(metres_.z()); }

  friend Position operator+(const Position& a, const Position& b) noexcept {
    return from_metres(a.metres_ + b.metres_);
  }
  friend Position operator-(const Position& a, const Position& b) noexcept {
    return from_metres(a.metres_ - b.metres_);
  }
  friend Position operator-(const Position& a) noexcept { return from_metres(-a.metres_); }
  friend Position operator*(double factor, const Position& a) noexcept { return from_metres(factor * a.metres_); }

private:
  Eigen::Vector3d metres_;
};

/// Distance between two points [m].
inline Length distance(const Position& from, const Position& to) noexcept {
  return Length::from_value((to.metres() - from.metres()).norm());
}

/// The point as a mirror in the tractor's middle plane shows it: left and right exchanged, exactly.
inline Position mirrored(const Position& position) noexcept {
  const Eigen::Vector3d& m = position.metres();
  return Position::from_metres({m.x(), -m.y(), m.z()});
}

} // namespace v0
} // namespace fieldshaft
