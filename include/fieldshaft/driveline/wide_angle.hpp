#pragma once
// Wide-angle (double Cardan) joints: two crosses in a coupling yoke that a centring device holds at equal angles.

#include <fieldshaft/joint.hpp>

namespace fieldshaft {
inline namespace v0 {

/// Angle of the far joint where a wide-angle joint's centre does not sit over the hitch pivot [rad].
///
/// angle = atan2(|a| sin turn, b + a cos turn), a the offset, b from pivot to far joint
///   offset  of the wide-angle joint's centre ahead of the pivot; below 0: behind it [m]
///   behind  pivot to the far joint centre, rearwards [m], above 0, more than the offset behind the pivot
///   turn    between tractor and implement [rad], from 0, below 180°
/// 0 at every turn for offset 0: the far joint runs straight, which is why the centre belongs over the pivot. In one
/// plane. Source: triangle of pivot and joint centres; the rule itself is quoted from operator's guidance.
/// Example: 100 mm off, 900 mm, 60°: 5.21°.
inline Angle wide_angle_far_angle(Length offset, Length behind, Angle turn) {
  constexpr const char* name = "wide_angle_far_angle";
  check::finite(offset.value(), {name, "offset", "m"});
  check::positive(behind.value(), {name, "behind", "m"});
  check::below(math::abs(offset).value(), behind.value(), {name, "size of the offset", "m"});
  check::from_below(turn.value(), 0.0, pi, {name, "turn", "rad"});
  return radians(
      std::atan2((math::abs(offset) * math::sin(turn)).value(), (behind + offset * math::cos(turn)).value()));
}

/// How far the meeting point of the two shafts moves out of the coupling yoke's middle as the joint bends [m].
///
/// shift = (c/2) [1/cos(angle/2) - 1], along either shaft, away from its cross
///   yoke_length  c, between the two crosses [m], above 0
///   angle        of the whole joint [rad], from 0, below 180°
/// Each cross stays on its shaft, so a joint whose centre sits over the pivot when straight is off by this when bent.
/// Exact for equal angles at both crosses. Source: isosceles triangle of crosses and meeting point.
/// Example: 100 mm, 70°: 11.0 mm.
inline Length wide_angle_centre_shift(Length yoke_length, Angle angle) {
  check::positive(yoke_length.value(), {"wide_angle_centre_shift", "yoke_length", "m"});
  check::from_below(angle.value(), 0.0, pi, {"wide_angle_centre_shift", "angle", "rad"});
  // 1/cos x - 1 without cancellation
  return 0.5 * yoke_length * (2.0 * math::power<2>(math::sin(0.25 * angle)) / math::cos(0.5 * angle));
}

/// How much farther a bent wide-angle joint pushes the telescope together than a joint that bends in one point [m].
///
/// shortening = c (1 - cos x) cos x, x half of the angle
///   yoke_length  c, between the two crosses [m], above 0
///   angle        between both shafts [rad], from 0, below 180°
/// The joint in one point stands in the middle of the straight coupling yoke. Bent, the far cross stands c (1 - cos x)
/// outside of where that one would have it, along the bisector: this is its part along the far shaft. What stands
/// across, c (1 - cos x) sin x, bends the joint a little further. Greatest, c/4, at 120°. Exact for equal angles at
/// both crosses. Source: two sides of the coupling yoke's triangle. Example: 100 mm, 70°: 14.8 mm.
inline Length wide_angle_shortening(Length yoke_length, Angle angle) {
  check::positive(yoke_length.value(), {"wide_angle_shortening", "yoke_length", "m"});
  check::from_below(angle.value(), 0.0, pi, {"wide_angle_shortening", "angle", "rad"});
  // 1 - cos x without cancellation
  return yoke_length * (2.0 * math::power<2>(math::sin(0.25 * angle)) * math::cos(0.5 * angle));
}

/// The single joint that is as uneven as a wide-angle joint whose centring lets its crosses differ [rad].
///
/// equivalent of the pair angle/2 + imbalance, angle/2 - imbalance, phase 0
///   angle      of the whole joint [rad], from 0, below 180°
///   imbalance  by which each cross is off its half [rad], from 0 to half of the angle
/// Exact. Source: equivalent_joint_angle. Example: 60° with 2° of imbalance: 16.16°; without: 0.
inline Angle wide_angle_residual(Angle angle, Angle imbalance) {
  check::from_below(angle.value(), 0.0, pi, {"wide_angle_residual", "angle", "rad"});
  check::within(imbalance.value(), 0.0, 0.5 * angle.value(), {"wide_angle_residual", "imbalance", "rad"});
  return equivalent_joint_angle(0.5 * angle + imbalance, 0.5 * angle - imbalance, Angle{});
}

} // namespace v0
} // namespace fieldshaft
