#pragma once
// Closed forms for a driveline that lies in one plane with the hitch pin: seen from above, level and on the centre
// line.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

#include <cmath>

namespace fieldshaft {
inline namespace v0 {

namespace text {
template <class L, class A> auto planar_centre_distance(L ahead, L behind, A turn) noexcept {
  // (a + b)² less the shortening, as a sum that keeps its digits for a straight line and for a = b folded up.
  const auto sum = ahead + behind;
  const auto difference = ahead - behind;
  return math::sqrt(math::power<2>(sum * math::cos(0.5 * turn)) + math::power<2>(difference * math::sin(0.5 * turn)));
}
} // namespace text

/// Distance of the joint centres while turning [m].
///
/// L = sqrt(a² + b² + 2 a b cos turn)
///   ahead   a  hitch pin to front joint centre [m], above 0 where the joint is ahead of the pin
///   behind  b  hitch pin to rear joint centre [m], above 0 where the joint is behind the pin
///   turn       angle between tractor and implement [rad], any
/// Exact where both joints, the pin and both shafts lie in one plane. Longest straight ahead if a and b are above 0.
/// Source: law of cosines. Example: 0.3 m, 0.7 m, 60°: 888.8 mm.
inline Length planar_centre_distance(Length ahead, Length behind, Angle turn) {
  check::positive(ahead.value(), {"planar_centre_distance", "ahead", "m"});
  check::positive(behind.value(), {"planar_centre_distance", "behind", "m"});
  check::finite(turn.value(), {"planar_centre_distance", "turn", "rad"});
  return text::planar_centre_distance(ahead, behind, turn);
}

struct PlanarJointAngles {
  Angle front{};
  Angle rear{};
};

/// Joint angles while turning, in one plane [rad].
///
/// front = atan2(b sin turn, a + b cos turn), rear = atan2(a sin turn, b + a cos turn); front + rear = turn
/// Symbols as for planar_centre_distance; turn from 0, below 180°. Equal, turn/2 each, only for a = b: the joint nearer
/// to the pin bends more. Exact in one plane. Source: triangle of pin and joint centres.
/// Example: 0.3 m, 0.7 m, 60°: 43.00° and 17.00°.
inline PlanarJointAngles planar_joint_angles(Length ahead, Length behind, Angle turn) {
  check::positive(ahead.value(), {"planar_joint_angles", "ahead", "m"});
  check::positive(behind.value(), {"planar_joint_angles", "behind", "m"});
  check::from_below(turn.value(), 0.0, pi, {"planar_joint_angles", "turn", "rad"});
  const double a = ahead.value();
  const double b = behind.value();
  const double sine = math::sin(turn);
  const double cosine = math::cos(turn);
  return {radians(std::atan2(b * sine, a + b * cosine)), radians(std::atan2(a * sine, b + a * cosine))};
}

} // namespace v0
} // namespace fieldshaft
