#pragma once
// The unevenness of a pair of plain joints over a range: k + 1/k - 2, k the greatest speed ratio.
//
// With c1, c2 the joint cosines, c12 that of the outer shafts and v the volume of the three unit directions,
//   (k + 1/k) c1 c2 = [(1 + c1²)(1 + c2²) - cos 2y (x² - v²) - 2 sin 2y x v] / 2,   x = c1 c2 - c12, y the yoke phase,
// which has no joint plane in it and is smooth where a joint is straight. For y = 0 it becomes 1 + 2 c1 c2 c12 - c12²,
// so that k + 1/k = (1 - c12²)/(c1 c2) + 2 c12: parallel shafts are smooth whatever the joints do. Any other phase adds
// [sin² y (x² - v²) - sin 2y x v]/(c1 c2).

#include <fieldshaft/driveline/objective.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace detail {

/// By how much k + 1/k grows at most where the centre line and one outer shaft turn elsewhere.
///
///   unevenness   bound of k + 1/k - 2 before
///   front, rear  bounds of the joint angles after [rad]
///   bend         bound of the angle between the outer shafts after [rad]
///   line, shaft  greatest turn of the centre line and of an outer shaft [rad]
/// With yokes in line by the slopes of (1 - c12²)/(c1 c2) + 2 c12; else N/(c1 c2), N the bracket above, whose terms
/// change by no more than 13 turns together.
inline double unevenness_change(double unevenness, double front, double rear, double bend, double line, double shaft,
                                bool in_line) noexcept {
  const double c1 = std::cos(front);
  const double c2 = std::cos(rear);
  if (!(c1 > 0.0 && c2 > 0.0)) return std::numeric_limits<double>::infinity();
  const double turn = 2.0 * std::sin(0.5 * line) + shaft;
  if (turn == 0.0) return 0.0;
  if (in_line) {
    const double sine = std::sin(std::min({0.5 * pi, front + rear, bend}));
    return sine * sine / (c1 * c2) * turn * (1.0 / c1 + 1.0 / c2) + 2.0 * (1.0 + 1.0 / (c1 * c2)) * shaft;
  }
  return (unevenness + 2.0) * ((1.0 + turn / c1) * (1.0 + turn / c2) - 1.0) + 13.0 * (turn + shaft) / (c1 * c2);
}

class UnevennessObjective {
public:
  UnevennessObjective(const Shafts& shafts, double yoke_phase, double gap, double least_length)
      : shafts_(shafts), in_line_(yoke_phase == 0.0), squared_sine_(math::power<2>(std::sin(yoke_phase))),
        double_sine_(std::sin(2.0 * yoke_phase)), gap_(gap), cosine_rounding_(shafts.cosine_rounding(least_length)) {}

  double value(const Triple& at) const noexcept { return expand(at, 0.0).jet.value; }

  Expansion expand(const Triple& at, double size) const noexcept {
    const Turn turn(at);
    const Jet inverse_length = inverse_root(shafts_.square(turn));
    const CosineExpansion front = expand_cosine(shafts_, End::front, turn, size, inverse_length);
    const CosineExpansion rear = expand_cosine(shafts_, End::rear, turn, size, inverse_length);
    Expansion e;
    const double least_front = front.cosine.value - front.ratio * size;
    const double least_rear = rear.cosine.value - rear.ratio * size;
    if (!(least_front > near_lock && least_rear > near_lock)) {
      e.jet.value = std::numeric_limits<double>::infinity();
      if (front.cosine.value > 0.0 && rear.cosine.value > 0.0)
        e.jet.value = unevenness(turn, inverse_length, front, rear, 0.0).jet.value;
      return e;
    }
    const Bounded u = unevenness(turn, inverse_length, front, rear, size);
    const double least = least_front * least_rear;
    e.jet = u.jet;
    e.third = u.over[3];
    e.jet.value += (in_line_ ? 20.0 : 80.0) * cosine_rounding_ / (least * least);
    return e;
  }

  double slope_rounding() const noexcept { return 1e7 * cosine_rounding_; }
  double target(double best) const noexcept {
    const double wanted = variation_from(std::max(0.0, best)) + gap_;
    // sqrt(wanted² + 4) - 2 without cancellation
    return wanted * wanted / (std::sqrt(wanted * wanted + 4.0) + 2.0);
  }
  /// k - 1/k that belongs to a bound.
  double variation(double bound) const noexcept { return variation_from(std::max(0.0, bound)) * (1.0 + 1e-14); }
  /// Of a state's k - 1/k: it is a root of squares of differences, each wrong by the cosines' rounding.
  double variation_rounding(double value) const noexcept {
    return is_finite(value) ? 20.0 * cosine_rounding_ * (1.0 + value) * (1.0 + value) : 0.0;
  }

private:
  /// Cosine below which no bound is attempted: about 87°, where a plain joint is about to lock.
  static constexpr double near_lock = 0.05;

  /// (1 - c12) [(1 + c12)/(c1 c2) - 2] + [sin² y (x² - v²) - sin 2y x v]/(c1 c2), every part of it small where the
  /// joints are nearly straight. Rounding: three cosines in terms of at most 4/(c1 c2)², and x and v, each wrong by a
  /// few roundings, in terms of at most 9/(c1 c2)².
  Bounded unevenness(const Turn& turn, const Jet& inverse_length, const CosineExpansion& front,
                     const CosineExpansion& rear, double size) const noexcept {
    const Bounded c1 = bounded(front.cosine, direction_bounds(front.ratio), size);
    const Bounded c2 = bounded(rear.cosine, direction_bounds(rear.ratio), size);
    const Bounded c12 = bounded(shafts_.shafts_cosine(turn), {1.0, 1.0, 1.0, 1.0}, size);
    const Bounded pair = product(c1, c2, size);
    const double least = (c1.jet.value - c1.over[1] * size) * (c2.jet.value - c2.over[1] * size);
    const Bounded over = inverse(pair, least, size);
    const Bounded bracket = scaled(1.0, product(scaled(1.0, c12, 1.0, size), over, size), -2.0, size);
    const Bounded in_line = product(scaled(-1.0, c12, 1.0, size), bracket, size);
    if (in_line_) return in_line;
    const Bounded x = combined(1.0, pair, -1.0, c12, 0.0, size);
    const Bounds n = direction_bounds(front.ratio); // first · (n x last), where last turns as well
    const Bounded v = bounded(shafts_.volume(turn) * inverse_length,
                              {1.0, n[1] + 1.0, n[2] + 2.0 * n[1] + 1.0, n[3] + 3.0 * n[2] + 3.0 * n[1] + 1.0}, size);
    const Bounded squares = combined(1.0, product(x, x, size), -1.0, product(v, v, size), 0.0, size);
    const Bounded planes = combined(squared_sine_, squares, -double_sine_, product(x, v, size), 0.0, size);
    return combined(1.0, in_line, 1.0, product(planes, over, size), 0.0, size);
  }

  static Bounded bounded(const Jet& jet, const Bounds& everywhere, double size) noexcept {
    return {jet, near(jet, everywhere, size)};
  }

  const Shafts& shafts_;
  bool in_line_;
  double squared_sine_, double_sine_; ///< sin² y and sin 2y of the yoke phase y
  double gap_, cosine_rounding_;
};

} // namespace detail
} // namespace v0
} // namespace fieldshaft
