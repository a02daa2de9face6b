#pragma once
// A four-bar linkage in its plane: the position of coupler and rocker for a position of the crank.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

#include <cmath>

namespace fieldshaft {
inline namespace v0 {

/// The two ways in which the same four bars can be put together.
enum class FourBarBranch {
  open,   ///< the coupler lies to the left of the line from the crank pin to the rocker's pivot
  crossed ///< and to its right
};

struct FourBarAngles {
  Angle coupler{};
  Angle rocker{};
};

namespace detail {

struct FourBar {
  bool closes;
  double coupler, rocker;
};

/// Unchecked, in metres and radians.
inline FourBar four_bar(double crank, double coupler, double rocker, double ground, double angle,
                        double side) noexcept {
  // From the crank pin to the rocker's pivot, and the triangle that coupler and rocker make over it.
  const double x = ground - crank * std::cos(angle);
  const double y = -crank * std::sin(angle);
  const double base = std::hypot(x, y);
  const double cosine = (coupler * coupler + base * base - rocker * rocker) / (2.0 * coupler * base);
  if (!(std::abs(cosine) <= 1.0)) return {false, 0.0, 0.0};
  const double at = std::atan2(y, x) + side * std::acos(cosine);
  return {true, at, std::atan2(coupler * std::sin(at) - y, coupler * std::cos(at) - x)};
}

} // namespace detail

/// Angles of coupler and rocker of a four-bar linkage [rad].
///
/// crank + coupler = ground + rocker as vectors; all angles from the ground link, counter-clockwise
///   crank, coupler, rocker, ground  lengths [m], above 0
///   crank_angle                     of the crank [rad], any
///   branch                          open or crossed
/// Exact. A crank angle at which the bars cannot meet is impossible input.
/// Source: vector loop, Norton, Design of Machinery, section on position analysis (numbering from memory, verify).
/// Example: 40, 120, 80, 100 mm, 40°: open 20.30° and 57.32°, crossed -60.98° and -98.00°.
inline FourBarAngles four_bar_angles(Length crank, Length coupler, Length rocker, Length ground, Angle crank_angle,
                                     FourBarBranch branch) {
  constexpr const char* name = "four_bar_angles";
  check::positive(crank.value(), {name, "crank", "m"});
  check::positive(coupler.value(), {name, "coupler", "m"});
  check::positive(rocker.value(), {name, "rocker", "m"});
  check::positive(ground.value(), {name, "ground", "m"});
  check::finite(crank_angle.value(), {name, "crank_angle", "rad"});
  const detail::FourBar bars = detail::four_bar(crank.value(), coupler.value(), rocker.value(), ground.value(),
                                                crank_angle.value(), branch == FourBarBranch::open ? 1.0 : -1.0);
  if (!bars.closes)
    check::fail({name, "crank_angle", "rad"}, crank_angle.value(), "an angle at which the linkage closes");
  return {radians(bars.coupler), radians(bars.rocker)};
}

} // namespace v0
} // namespace fieldshaft
