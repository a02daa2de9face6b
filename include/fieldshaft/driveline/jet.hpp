#pragma once
// Value, slopes and curvatures of a function of the three attitude angles, and bounds of its third derivatives.
//
// A function f of (yaw, pitch, roll) is expanded about the middle of a box of angles:
//   f(c + d) = f + g d + d H d / 2 + rest,   |rest| <= third |d|³ / 6,   |d| = |d1| + |d2| + |d3|
// `third` holds over the whole box. It follows from two facts. A point at distance r from the pin, turned by the three
// angles, has derivatives of order n of at most r |d|^n, since each angle turns it about one fixed axis. And the
// direction of a vector m, m/|m|, has derivatives of order 1, 2, 3 of at most 1/|m|, (2/sqrt 3)/|m|², 3/|m|³.

#include <Eigen/Core>

#include <array>
#include <cmath>
#include <limits>
#include <numeric>

namespace fieldshaft {
inline namespace v0 {
namespace detail {

using Triple = std::array<double, 3>;

/// The order of second derivatives: yaw yaw, pitch pitch, roll roll, yaw pitch, yaw roll, pitch roll.
using Curvatures = std::array<double, 6>;

struct Jet {
  double value = 0.0;
  Triple slope{};
  Curvatures curvature{};
};

inline constexpr std::array<std::array<std::size_t, 2>, 6> curvature_axes = {
    {{0, 0}, {1, 1}, {2, 2}, {0, 1}, {0, 2}, {1, 2}}};

/// k1 a + k2 b + constant.
inline Jet combined(double ka, const Jet& a, double kb, const Jet& b, double constant = 0.0) noexcept {
  Jet sum;
  sum.value = ka * a.value + kb * b.value + constant;
  for (std::size_t i = 0; i < 3; ++i) sum.slope[i] = ka * a.slope[i] + kb * b.slope[i];
  for (std::size_t i = 0; i < 6; ++i) sum.curvature[i] = ka * a.curvature[i] + kb * b.curvature[i];
  return sum;
}

inline Jet scaled(double k, const Jet& a, double constant = 0.0) noexcept {
  Jet result;
  result.value = k * a.value + constant;
  for (std::size_t i = 0; i < 3; ++i) result.slope[i] = k * a.slope[i];
  for (std::size_t i = 0; i < 6; ++i) result.curvature[i] = k * a.curvature[i];
  return result;
}

inline Jet operator*(const Jet& a, const Jet& b) noexcept {
  Jet product;
  product.value = a.value * b.value;
  for (std::size_t i = 0; i < 3; ++i) product.slope[i] = a.value * b.slope[i] + b.value * a.slope[i];
  for (std::size_t i = 0; i < 6; ++i) {
    const auto [j, k] = curvature_axes[i];
    product.curvature[i] =
        a.value * b.curvature[i] + b.value * a.curvature[i] + a.slope[j] * b.slope[k] + a.slope[k] * b.slope[j];
  }
  return product;
}

/// f(a), from f and its first two derivatives at a.
inline Jet composed(const Jet& a, double f, double df, double ddf) noexcept {
  Jet result;
  result.value = f;
  for (std::size_t i = 0; i < 3; ++i) result.slope[i] = df * a.slope[i];
  for (std::size_t i = 0; i < 6; ++i) {
    const auto [j, k] = curvature_axes[i];
    result.curvature[i] = df * a.curvature[i] + ddf * a.slope[j] * a.slope[k];
  }
  return result;
}

/// 1/sqrt(a), a above 0.
inline Jet inverse_root(const Jet& a) noexcept {
  const double inverse = 1.0 / a.value;
  const double root = std::sqrt(inverse);
  return composed(a, root, -0.5 * root * inverse, 0.75 * root * inverse * inverse);
}

/// 1/a.
inline Jet inverse(const Jet& a) noexcept {
  const double one_over = 1.0 / a.value;
  return composed(a, one_over, -one_over * one_over, 2.0 * one_over * one_over * one_over);
}

/// Sines and cosines of an attitude.
struct Turn {
  double cy, sy, cp, sp, cr, sr;

  explicit Turn(const Triple& angles) noexcept
      : cy(std::cos(angles[0])), sy(std::sin(angles[0])), cp(std::cos(angles[1])), sp(std::sin(angles[1])),
        cr(std::cos(angles[2])), sr(std::sin(angles[2])) {}
};

/// left · Rz(yaw) Ry(pitch) Rx(roll) right, as a function of the three angles.
inline Jet bilinear(const Eigen::Vector3d& left, const Turn& turn, const Eigen::Vector3d& right) noexcept {
  // left turned back by yaw; right turned by roll, then by pitch; and what each further angle does to them.
  const double px = left.x() * turn.cy + left.y() * turn.sy;
  const double py = left.y() * turn.cy - left.x() * turn.sy;
  const double pz = left.z();
  const double rx = right.x();
  const double ry = right.y() * turn.cr - right.z() * turn.sr;
  const double rz = right.y() * turn.sr + right.z() * turn.cr;
  const double zx = turn.cp * rx + turn.sp * rz;
  const double zz = turn.cp * rz - turn.sp * rx;
  const double pitched_z = px * turn.cp - pz * turn.sp; // what a z of the rolled vector counts after pitching, by roll
  const double pitched_s = px * turn.sp + pz * turn.cp;
  Jet jet;
  jet.value = px * zx + py * ry + pz * zz;
  jet.slope = {py * zx - px * ry, px * zz - pz * zx, pitched_s * ry - py * rz};
  jet.curvature = {-(px * zx + py * ry),        -(px * zx + pz * zz), -(pitched_s * rz + py * ry), py * zz,
                   py * turn.sp * ry + px * rz, pitched_z * ry};
  return jet;
}

/// Bounds of a function and of its derivatives of order 1 to 3 over a box, per |d|^n.
using Bounds = std::array<double, 4>;

inline Bounds product(const Bounds& f, const Bounds& g) noexcept {
  return {f[0] * g[0], f[0] * g[1] + f[1] * g[0], f[0] * g[2] + 2.0 * f[1] * g[1] + f[2] * g[0],
          f[0] * g[3] + 3.0 * f[1] * g[2] + 3.0 * f[2] * g[1] + f[3] * g[0]};
}

/// Bounds of 1/f where f is at least `least`, above 0.
inline Bounds inverse(const Bounds& f, double least) noexcept {
  const double i = 1.0 / least;
  return {i, f[1] * i * i, (f[2] + 2.0 * f[1] * f[1] * i) * i * i,
          (f[3] + (6.0 * f[1] * f[2] + 6.0 * f[1] * f[1] * f[1] * i) * i) * i * i};
}

/// Tightens bounds that hold over a box of the given size by what is known at its middle: a derivative changes over the
/// box by no more than the next higher one times the size. What is small at the middle stays small near it, which
/// bounds for every attitude cannot tell. A billionth on top is far more than the rounding of the expansion.
inline Bounds near(const Jet& middle, Bounds bounds, double size) noexcept {
  const auto largest = [](double most, double x) { return std::fmax(most, std::abs(x)); };
  const double curvature = std::accumulate(middle.curvature.begin(), middle.curvature.end(), 0.0, largest);
  const double slope = std::accumulate(middle.slope.begin(), middle.slope.end(), 0.0, largest);
  const auto least = [](double bound, double at, double change) {
    return std::fmin(bound, (at + change) * (1.0 + 1e-9) + 1e-9);
  };
  bounds[2] = least(bounds[2], curvature, bounds[3] * size);
  bounds[1] = least(bounds[1], slope, bounds[2] * size);
  bounds[0] = least(bounds[0], std::abs(middle.value), bounds[1] * size);
  return bounds;
}

/// A function by its expansion about the middle of a box, with bounds of it and its derivatives over the box.
struct Bounded {
  Jet jet;
  Bounds over;
};

inline Bounded product(const Bounded& f, const Bounded& g, double size) noexcept {
  const Jet jet = f.jet * g.jet;
  return {jet, near(jet, product(f.over, g.over), size)};
}

/// k1 f + k2 g + constant.
inline Bounded combined(double kf, const Bounded& f, double kg, const Bounded& g, double constant,
                        double size) noexcept {
  const Jet jet = combined(kf, f.jet, kg, g.jet, constant);
  Bounds over{std::numeric_limits<double>::infinity()};
  for (std::size_t i = 1; i < 4; ++i) over[i] = std::abs(kf) * f.over[i] + std::abs(kg) * g.over[i];
  return {jet, near(jet, over, size)};
}

/// k f + constant.
inline Bounded scaled(double k, const Bounded& f, double constant, double size) noexcept {
  const Jet jet = scaled(k, f.jet, constant);
  Bounds over{std::numeric_limits<double>::infinity()};
  for (std::size_t i = 1; i < 4; ++i) over[i] = std::abs(k) * f.over[i];
  return {jet, near(jet, over, size)};
}

/// 1/f where f is at least `least`, above 0.
inline Bounded inverse(const Bounded& f, double least, double size) noexcept {
  const Jet jet = inverse(f.jet);
  return {jet, near(jet, inverse(f.over, least), size)};
}

/// Bounds of u · m/|m| for a fixed unit vector u and a vector m whose derivatives of order n are at most
/// `ratio` |m| |d|^n, `ratio` taken with the least |m| in the box.
inline Bounds direction_bounds(double ratio) noexcept {
  constexpr double second = 1.1547005383792517; // 2/sqrt 3, rounded up
  return {1.0, ratio, (second * ratio + 1.0) * ratio, ((3.0 * ratio + 3.0 * second) * ratio + 1.0) * ratio};
}

} // namespace detail
} // namespace v0
} // namespace fieldshaft
