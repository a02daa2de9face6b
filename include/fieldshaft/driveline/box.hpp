#pragma once
// Boxes of attitude angles, what a function's expansion says about it over a box, and the upper bound that follows.

#include <fieldshaft/driveline/jet.hpp>
#include <fieldshaft/geometry.hpp>

#include <limits>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace detail {

/// The expansion of an objective about the middle of a box.
struct Expansion {
  Jet jet;
  double third = std::numeric_limits<double>::infinity();  ///< bound of third derivatives; infinite: no expansion
  double spread = std::numeric_limits<double>::infinity(); ///< bound of |f(c + d) - f(c)| by the slope alone
  double loose = 0.0;  ///< part of the function that the expansion leaves out, by its bound
  double wobble = 0.0; ///< a further part: by how much at most it changes per |d|; its value at the middle is included
};

/// share · angles <= limit.
struct HalfSpace {
  Triple share;
  double limit;
  double rounding; ///< of the sum of products of shares and angles of at most pi
};

struct Domain {
  Triple low{}, high{};
  std::vector<HalfSpace> couplings;
};

inline Domain domain(const AttitudeRange& range) {
  Domain d;
  d.low = {range.yaw.low.value(), range.pitch.low.value(), range.roll.low.value()};
  d.high = {range.yaw.high.value(), range.pitch.high.value(), range.roll.high.value()};
  for (const AngleCoupling& c : range.couplings) {
    const double shares = std::abs(c.yaw_share) + std::abs(c.pitch_share) + std::abs(c.roll_share);
    d.couplings.push_back(
        {{c.yaw_share, c.pitch_share, c.roll_share}, c.limit.value(), 4e-15 * (shares + std::abs(c.limit.value()))});
  }
  return d;
}

struct Box {
  Triple low{}, high{};
  double upper = std::numeric_limits<double>::infinity();
};

/// Half widths, rounded up so that middle and half width cover the box.
inline Triple half_widths(const Box& box) noexcept {
  Triple half{};
  for (std::size_t i = 0; i < 3; ++i) {
    if (box.high[i] > box.low[i]) half[i] = 0.5 * (box.high[i] - box.low[i]) * (1.0 + 1e-15) + 1e-16;
  }
  return half;
}

inline Triple middle(const Box& box) noexcept {
  return {0.5 * (box.low[0] + box.high[0]), 0.5 * (box.low[1] + box.high[1]), 0.5 * (box.low[2] + box.high[2])};
}

inline double size(const Triple& half) noexcept { return half[0] + half[1] + half[2]; }

/// Greatest value of slope t + curvature t²/2 for |t| <= half.
inline double parabola_top(double slope, double curvature, double half) noexcept {
  const double steep = std::abs(slope);
  if (curvature < 0.0 && steep < -curvature * half) return -0.5 * steep * steep / curvature;
  return (steep + 0.5 * curvature * half) * half;
}

/// Upper bound of slope · d + d H d / 2 over the box of half widths.
inline double quadratic_top(const Triple& slope, const Curvatures& h, const Triple& half) noexcept {
  double top = 0.0;
  for (std::size_t i = 0; i < 3; ++i) top += parabola_top(slope[i], h[i], half[i]);
  return top + std::abs(h[3]) * half[0] * half[1] + std::abs(h[4]) * half[0] * half[2] +
         std::abs(h[5]) * half[1] * half[2];
}

/// What an expansion leaves open over a box of the given size; infinite where there is no expansion.
inline double expansion_rest(const Expansion& e, double size) noexcept {
  if (!is_finite(e.third)) return std::numeric_limits<double>::infinity();
  return e.third * size * size * size / 6.0 + e.loose + e.wobble * size;
}

/// Upper bound of an expansion over a box of half widths.
inline double expansion_top(const Expansion& e, const Triple& half) noexcept {
  const double by_slope = e.spread + e.wobble * size(half);
  const double by_curvature = quadratic_top(e.jet.slope, e.jet.curvature, half) + expansion_rest(e, size(half));
  const double bound = e.jet.value + (by_curvature < by_slope ? by_curvature : by_slope);
  return is_finite(bound) ? bound : std::numeric_limits<double>::infinity();
}

} // namespace detail
} // namespace v0
} // namespace fieldshaft
