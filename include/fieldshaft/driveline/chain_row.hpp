#pragma once
// How unevenly both sections of a driveline turn together, and by how much that changes at most between two poses.
//
// A row of joints carries the plane of the driving yoke to that of the driven one by a linear map M; k is the ratio of
// its singular values, and f = ln k is bounded here. Each joint is a map of singular values 1 and cos b, seen in planes
// that turn with their shafts no more than they must. Where M turns into M (I + E), f changes by no more than the
// spread of the eigenvalues of E's symmetric part. With a the front and b the rear joint of the moving section:
//
// - the centre line turns by d from the tractor: E has a spread of tan a d in the bend plane, sin a d across it;
// - it turns by d from the implement: between the joints E is of rank one and size tan b d; in front of joint a it is
//   1/cos a times as large at most;
// - the planes between the joints are twisted by t: in front of joint a the spread is (1/cos a - cos a) t. Seen from
// the
//   implement instead of from the tractor the planes are twisted by its own turn at most.
//
//   |f - f'| <= tan a · (turn of the centre line from the tractor)
//             + tan b / cos a · (turn of the centre line from the implement) + tan a sin a · (turn of the implement)
//
// whatever stands behind the bearing: it does not move within the implement and is the same in both.

#include <fieldshaft/driveline/chain.hpp>
#include <fieldshaft/driveline/objective.hpp>

#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace detail {

/// k - 1/k for ln k, and back.
inline double variation_of_unevenness(double log_ratio) noexcept { return 2.0 * std::sinh(log_ratio); }
inline double unevenness_of_variation(double variation) noexcept { return std::asinh(0.5 * variation); }

/// By how much directions turn at most between the middle of a box and its other places [rad].
struct ChainTurns {
  double from_tractor;   ///< of the centre line in the tractor's frame
  double from_implement; ///< and in the implement's
  double implement;      ///< of the implement itself
};

/// For attitudes that differ by `size` and joint centres that stand elsewhere by `slack`.
inline ChainTurns chain_turns(const Shafts& shafts, double size, double slack, double least_length) noexcept {
  const double outward = (1.0 + 1e-9) / least_length;
  return {(shafts.joint_arm() * size + slack) * outward, (shafts.pin_arm() * size + slack) * outward, size};
}

/// The row of both sections at a pose, and the bound of its change.
class ChainRow {
public:
  ChainRow(const Driveline& first, const Driveline& second, Angle between)
      : first_(first), second_(second), between_(between) {}

  /// k - 1/k, the greatest less the least speed over the mean; infinite where a joint is at a right angle.
  double variation(const Pose& pose) const { return chain_at(first_, second_, between_, pose).speed_variation; }
  /// ln k.
  double unevenness(const Pose& pose) const { return unevenness_of_variation(variation(pose)); }

  /// Bound of its change from the attitude at the middle of a box.
  double change(const Shafts& shafts, const Turn& middle, const ChainTurns& turns) const noexcept {
    const double front = bend(shafts.along_first(middle), shafts.square(middle)) + turns.from_tractor;
    const double rear = bend(shafts.along_last(middle), shafts.square(middle)) + turns.from_implement;
    if (!(front < locked && rear < locked)) return std::numeric_limits<double>::infinity();
    const double before = first_.wide_angle_front ? 0.0 : std::tan(front); // a wide-angle joint alters no plane
    const double around = first_.wide_angle_front ? 1.0 : 1.0 / std::cos(front);
    const double across = first_.wide_angle_front ? 0.0 : before * std::sin(front);
    const double behind = first_.wide_angle_rear ? 0.0 : std::tan(rear) * around;
    const double round = first_.wide_angle_rear ? std::tan(0.5 * rear) : 0.0; // it twists as the line goes round it
    return (before * turns.from_tractor + behind * turns.from_implement +
            across * (turns.implement + round * turns.from_implement)) *
               (1.0 + 1e-9) +
           rounding;
  }

private:
  static constexpr double locked = 1.5;    ///< [rad] about 86°, where a plain joint is about to lock
  static constexpr double rounding = 1e-9; ///< of ln k at a pose, generously: the row is good to 1e-8 rad, of which
                                           ///< ln k holds the square

  /// Angle of a joint, rounded up: a cosine good to 1e-15 gives an angle good to 1e-7.
  static double bend(const Jet& along, const Jet& square) noexcept {
    return std::acos(std::clamp(along.value / std::sqrt(square.value), -1.0, 1.0)) + 1e-7;
  }

  Driveline first_;
  Driveline second_;
  Angle between_;
};

} // namespace detail
} // namespace v0
} // namespace fieldshaft
