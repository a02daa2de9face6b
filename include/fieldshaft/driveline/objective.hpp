#pragma once
// What the search maximises: cosines, squared length, angle difference and unevenness, with their expansions.

#include <fieldshaft/driveline/search.hpp>
#include <fieldshaft/driveline/state.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace detail {

/// Lengths and scalar products of the lines that every objective needs, and the outward allowance for rounding.
///
/// A product left · turn · right is wrong by less than 20 roundings of |left| |right| (three turns in the plane, each
/// of two products with sines good to one rounding, and a sum of three), and every further step by a few roundings of
/// its terms. `allowance` counts 400 of them and is taken relative to the lengths that are subtracted from each other.
class Shafts {
public:
  explicit Shafts(const Lines& lines)
      : lines_(lines), pin_arm_(lines.to_pin.norm()), joint_arm_(lines.to_joint.norm()),
        squares_(lines.to_pin.squaredNorm() + lines.to_joint.squaredNorm()), bend_(lines.to_joint.dot(lines.input)),
        ahead_(lines.output.dot(lines.to_pin)), reach_(pin_arm_ + joint_arm_) {}

  const Lines& lines() const noexcept { return lines_; }
  double pin_arm() const noexcept { return pin_arm_; }     ///< front joint to pin
  double joint_arm() const noexcept { return joint_arm_; } ///< pin to rear joint
  double reach() const noexcept { return reach_; }

  /// Squared joint centre distance.
  Jet square(const Turn& turn) const noexcept {
    return scaled(2.0, bilinear(lines_.to_pin, turn, lines_.to_joint), squares_);
  }
  /// Centre line along the driving shaft.
  Jet along_first(const Turn& turn) const noexcept {
    return scaled(1.0, bilinear(lines_.output, turn, lines_.to_joint), ahead_);
  }
  /// The same along the input shaft.
  Jet along_last(const Turn& turn) const noexcept {
    return scaled(-1.0, bilinear(lines_.to_pin, turn, lines_.input), -bend_);
  }
  /// Cosine between first and last shaft.
  Jet shafts_cosine(const Turn& turn) const noexcept {
    return scaled(-1.0, bilinear(lines_.output, turn, lines_.input));
  }
  /// Volume of first shaft, centre line and last shaft.
  Jet volume(const Turn& turn) const noexcept {
    const Eigen::Vector3d left = lines_.output.cross(lines_.to_pin);
    const Eigen::Vector3d right = lines_.to_joint.cross(lines_.input);
    return combined(-1.0, bilinear(left, turn, lines_.input), -1.0, bilinear(lines_.output, turn, right));
  }

  /// Least distance of the joint centres in a box, from the distance at its middle.
  double least_length(double length, double size) const noexcept {
    return length - std::min(pin_arm_, joint_arm_) * size;
  }
  /// Ratios of the moving arm to the distance, for the bounds of the front and the rear cosine.
  double front_ratio(double least) const noexcept { return joint_arm_ / least; }
  double rear_ratio(double least) const noexcept { return pin_arm_ / least; }

  static constexpr double allowance = 400.0 * std::numeric_limits<double>::epsilon();
  /// Rounding of a cosine where the joint centres are `length` apart.
  double cosine_rounding(double length) const noexcept {
    const double ratio = reach_ / length;
    return allowance * ratio * ratio;
  }

private:
  Lines lines_;
  double pin_arm_, joint_arm_, squares_, bend_, ahead_, reach_;
};

/// Plus or minus the squared joint centre distance.
class SquareObjective {
public:
  SquareObjective(const Shafts& shafts, double sign, double gap) : shafts_(shafts), sign_(sign), gap_(gap) {}

  double value(const Triple& at) const noexcept { return sign_ * shafts_.square(Turn(at)).value; }
  Expansion expand(const Triple& at, double size) const noexcept {
    const double arms = 2.0 * shafts_.pin_arm() * shafts_.joint_arm();
    return {scaled(sign_, shafts_.square(Turn(at))), arms, arms * size};
  }
  /// What belongs to a length.
  double at(double length) const noexcept { return sign_ * length * length; }
  double gap() const noexcept { return gap_; }
  double rounding() const noexcept { return Shafts::allowance * shafts_.reach() * shafts_.reach(); }
  double slope_rounding() const noexcept { return rounding(); }
  double target(double best) const noexcept {
    if (!(best > -std::numeric_limits<double>::infinity())) return best;
    const double length = std::sqrt(std::max(0.0, sign_ * best)) + sign_ * gap_;
    return sign_ * std::max(0.0, length) * std::max(0.0, length) - rounding();
  }
  /// The joint centre distance that belongs to a bound, rounding included.
  double length(double bound) const noexcept { return std::sqrt(std::max(0.0, sign_ * (bound + rounding()))); }

private:
  const Shafts& shafts_;
  double sign_, gap_;
};

enum class End { front, rear };

/// A joint cosine with what is known of it over a box.
struct CosineExpansion {
  Jet cosine;
  double ratio = std::numeric_limits<double>::infinity(); ///< of the moving arm to the least distance
};

inline CosineExpansion expand_cosine(const Shafts& shafts, End end, const Turn& turn, double size,
                                     const Jet& inverse_length) noexcept {
  const Jet along = end == End::front ? shafts.along_first(turn) : shafts.along_last(turn);
  CosineExpansion e{along * inverse_length, std::numeric_limits<double>::infinity()};
  const double least = shafts.least_length(1.0 / inverse_length.value, size) * (1.0 - 1e-12);
  if (least > 0.0) e.ratio = end == End::front ? shafts.front_ratio(least) : shafts.rear_ratio(least);
  return e;
}

/// Minus the cosine of a joint angle: greatest where the angle is greatest.
class AngleObjective {
public:
  AngleObjective(const Shafts& shafts, End end, double gap, double least_length)
      : shafts_(shafts), end_(end), gap_(gap), rounding_(shafts.cosine_rounding(least_length)) {}

  double value(const Triple& at) const noexcept {
    const Turn turn(at);
    const Jet along = end_ == End::front ? shafts_.along_first(turn) : shafts_.along_last(turn);
    return -along.value / std::sqrt(shafts_.square(turn).value);
  }
  Expansion expand(const Triple& at, double size) const noexcept {
    const Turn turn(at);
    const CosineExpansion e = expand_cosine(shafts_, end_, turn, size, inverse_root(shafts_.square(turn)));
    const Bounds bounds = direction_bounds(e.ratio);
    return {scaled(-1.0, e.cosine), bounds[3], std::min(bounds[1] * size, 1.0 + e.cosine.value)};
  }
  /// What belongs to an angle.
  double at(double angle) const noexcept { return -std::cos(std::clamp(angle, 0.0, pi)); }
  double gap() const noexcept { return gap_; }
  double rounding() const noexcept { return rounding_; }
  double slope_rounding() const noexcept { return 100.0 * rounding_; }
  double target(double best) const noexcept {
    if (!(best > -1.0)) return -1.0;
    return -std::cos(std::min(pi, std::acos(std::clamp(-best, -1.0, 1.0)) + gap_)) - rounding_;
  }
  /// The angle that belongs to a bound, rounding included.
  double angle(double bound) const noexcept {
    return std::acos(std::clamp(-bound - rounding_, -1.0, 1.0)) + Shafts::allowance;
  }

private:
  const Shafts& shafts_;
  End end_;
  double gap_, rounding_;
};

/// A joint angle with bounds over a box. Near a straight joint it has a tip and only its slope is bounded.
struct AngleExpansion {
  Jet angle;
  double third = std::numeric_limits<double>::infinity();
  double spread = std::numeric_limits<double>::infinity();
};

/// The third derivative of the angle between a fixed direction and one that moves on the sphere with speed v and
/// accelerations a: with v <= k, |a| <= k² + k, |da| <= third derivative of the direction + k³ and c the cotangent,
/// |A'''| <= |da| + 3 c k (k² + k) + (1 + 3 c²) k³ 2/(3 sqrt 3).
inline AngleExpansion expand_angle(const CosineExpansion& e, double size, double cosine_rounding) noexcept {
  AngleExpansion a;
  const double k = e.ratio;
  const double cosine = std::clamp(e.cosine.value, -1.0, 1.0);
  const double angle = std::acos(cosine);
  a.angle.value = angle;
  a.spread = std::min(k * size + std::sqrt(2.0 * cosine_rounding), pi);
  constexpr double tip = 1e-3; // nearer to a straight joint the digits of the slope suffer
  const double nearest = std::min(angle, pi - angle) - k * size;
  if (!(nearest > tip)) return a;
  const double sine = std::sqrt((1.0 - cosine) * (1.0 + cosine));
  a.angle = composed(e.cosine, angle, -1.0 / sine, -cosine / (sine * sine * sine));
  const double cotangent = 1.0 / std::tan(nearest);
  constexpr double share = 0.38490017945975053; // 2/(3 sqrt 3), rounded up
  a.third = direction_bounds(k)[3] + k * k * k + 3.0 * cotangent * k * k * (k + 1.0) +
            (1.0 + 3.0 * cotangent * cotangent) * k * k * k * share;
  return a;
}

/// Front less rear angle, or the reverse.
class DifferenceObjective {
public:
  DifferenceObjective(const Shafts& shafts, double sign, double gap, double least_length)
      : shafts_(shafts), sign_(sign), gap_(gap), cosine_rounding_(shafts.cosine_rounding(least_length)) {}

  double value(const Triple& at) const noexcept { return expand(at, 0.0).jet.value; }
  Expansion expand(const Triple& at, double size) const noexcept {
    const Turn turn(at);
    const Jet inverse_length = inverse_root(shafts_.square(turn));
    const AngleExpansion f = expand_end(End::front, turn, size, inverse_length);
    const AngleExpansion r = expand_end(End::rear, turn, size, inverse_length);
    Expansion e{combined(sign_, f.angle, -sign_, r.angle), 0.0, f.spread + r.spread, 0.0};
    for (const AngleExpansion* angle : {&f, &r}) {
      if (is_finite(angle->third)) {
        e.third += angle->third;
      } else {
        e.loose += angle->spread;
      }
    }
    return e;
  }
  /// At least 1e-3 rad from a tip a cosine that is wrong by 1e-13 gives an angle wrong by 1e-10 and, within a box that
  /// keeps clear of the tip, an expansion wrong by no more; at a tip the loose part holds the rounding.
  double rounding() const noexcept { return 1e5 * cosine_rounding_; }
  /// There the curvature is wrong by at most the cosine's rounding over the third power of that distance.
  double slope_rounding() const noexcept { return 1e10 * cosine_rounding_; }
  double at(double angle) const noexcept { return angle; }
  double gap() const noexcept { return gap_; }
  double target(double best) const noexcept { return best + gap_ - rounding(); }
  double angle(double bound) const noexcept { return std::min(pi, bound + rounding()); }

private:
  AngleExpansion expand_end(End end, const Turn& turn, double size, const Jet& inverse_length) const noexcept {
    return expand_angle(expand_cosine(shafts_, end, turn, size, inverse_length), size, cosine_rounding_);
  }

  const Shafts& shafts_;
  double sign_, gap_, cosine_rounding_;
};

} // namespace detail
} // namespace v0
} // namespace fieldshaft
