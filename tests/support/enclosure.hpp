#pragma once
// Intervals rounded outward after every operation: they hold the true value whatever the processor rounds. Slow and
// plain, a second opinion for the proofs and nothing else.

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace enclosure {

inline double down(double x, int steps = 1) {
  for (int i = 0; i < steps; ++i) x = std::nextafter(x, -std::numeric_limits<double>::infinity());
  return x;
}
inline double up(double x, int steps = 1) { return -down(-x, steps); }

struct Interval {
  double low;
  double high;
};

inline Interval exactly(double x) { return {x, x}; }
inline Interval operator+(Interval a, Interval b) { return {down(a.low + b.low), up(a.high + b.high)}; }
inline Interval operator-(Interval a) { return {-a.high, -a.low}; }
inline Interval operator-(Interval a, Interval b) { return a + -b; }
inline Interval operator*(Interval a, Interval b) {
  const auto [least, most] = std::minmax({a.low * b.low, a.low * b.high, a.high * b.low, a.high * b.high});
  return {down(least), up(most)};
}
/// `b` does not hold 0.
inline Interval operator/(Interval a, Interval b) {
  const auto [least, most] = std::minmax({a.low / b.low, a.low / b.high, a.high / b.low, a.high / b.high});
  return {down(least), up(most)};
}
inline Interval square(Interval a) {
  const double least = a.low <= 0.0 && a.high >= 0.0 ? 0.0 : std::min(a.low * a.low, a.high * a.high);
  return {std::max(0.0, down(least)), up(std::max(a.low * a.low, a.high * a.high))};
}
inline Interval root(Interval a) {
  return {std::max(0.0, down(std::sqrt(std::max(0.0, a.low)))), up(std::sqrt(a.high))};
}

// The C library's sine, cosine and arc cosine are taken to err by less than 4 units of the last digit: glibc states 1.
constexpr int library = 4;

inline bool holds_point(Interval a, double first, double period) {
  return std::floor((a.high - first) / period) != std::floor((a.low - first) / period);
}
/// Cosine of an interval of an angle [rad]; the turning points are looked for a little beyond the ends.
inline Interval cosine(Interval a) {
  constexpr double pi = 3.14159265358979323846;
  const Interval wide{a.low - 1e-12, a.high + 1e-12};
  double least = std::min(std::cos(a.low), std::cos(a.high));
  double most = std::max(std::cos(a.low), std::cos(a.high));
  if (a.low != a.high && holds_point(wide, 0.0, 2 * pi)) most = 1.0;
  if (a.low != a.high && holds_point(wide, pi, 2 * pi)) least = -1.0;
  return {std::max(-1.0, down(least, library)), std::min(1.0, up(most, library))};
}
inline Interval sine(Interval a) {
  constexpr double pi = 3.14159265358979323846;
  const Interval wide{a.low - 1e-12, a.high + 1e-12};
  double least = std::min(std::sin(a.low), std::sin(a.high));
  double most = std::max(std::sin(a.low), std::sin(a.high));
  if (a.low != a.high && holds_point(wide, pi / 2, 2 * pi)) most = 1.0;
  if (a.low != a.high && holds_point(wide, -pi / 2, 2 * pi)) least = -1.0;
  return {std::max(-1.0, down(least, library)), std::min(1.0, up(most, library))};
}
inline Interval arc_cosine(Interval a) {
  return {std::max(0.0, down(std::acos(std::min(1.0, a.high)), library)),
          up(std::acos(std::max(-1.0, a.low)), library)};
}

using Vector = std::array<Interval, 3>;
using Turn = std::array<Vector, 3>; ///< rows

inline Vector operator+(const Vector& a, const Vector& b) { return {a[0] + b[0], a[1] + b[1], a[2] + b[2]}; }
inline Vector operator-(const Vector& a, const Vector& b) { return {a[0] - b[0], a[1] - b[1], a[2] - b[2]}; }
inline Interval dot(const Vector& a, const Vector& b) { return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]; }
inline Interval length(const Vector& a) { return root(square(a[0]) + square(a[1]) + square(a[2])); }
inline Vector operator*(const Turn& m, const Vector& v) { return {dot(m[0], v), dot(m[1], v), dot(m[2], v)}; }
/// The angle between two directions of any lengths.
inline Interval angle(const Vector& a, const Vector& b) {
  const Interval lengths = length(a) * length(b);
  if (lengths.low <= 0.0) return {0.0, 4.0};
  const Interval cosine = dot(a, b) / lengths;
  return arc_cosine({std::max(-1.0, cosine.low), std::min(1.0, cosine.high)});
}

/// Rz(yaw) Ry(pitch) Rx(roll), written out.
inline Turn rotation(Interval yaw, Interval pitch, Interval roll) {
  const Interval cy = cosine(yaw), sy = sine(yaw), cp = cosine(pitch), sp = sine(pitch), cr = cosine(roll),
                 sr = sine(roll);
  return {{{cy * cp, cy * sp * sr - sy * cr, cy * sp * cr + sy * sr},
           {sy * cp, sy * sp * sr + cy * cr, sy * sp * cr - cy * sr},
           {-sp, cp * sr, cp * cr}}};
}

} // namespace enclosure
