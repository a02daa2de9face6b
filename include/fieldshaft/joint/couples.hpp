#pragma once
// Torque and couples at one joint under a steady driving torque: what bends the shafts and loads their bearings.

#include <fieldshaft/joint/kinematics.hpp>

namespace fieldshaft {
inline namespace v0 {

/// Moments at a joint. The couples stand at right angles to their shaft and bend it; they swing twice each turn.
struct JointCouples {
  Torque output;  ///< torque of the driven shaft
  Torque driving; ///< couple on the driving shaft
  Torque driven;  ///< couple on the driven shaft
};

namespace text {
template <class T, class B, class R> auto joint_output_torque(T torque, B angle, R rotation) noexcept {
  return torque * (joint_denominator(angle, rotation) / math::cos(angle));
}
template <class T, class B, class R> auto joint_driving_couple(T torque, B angle, R rotation) noexcept {
  return torque * (math::tan(angle) * math::abs(math::sin(rotation)));
}
template <class T, class B, class R> auto joint_driven_couple(T torque, B angle, R rotation) noexcept {
  const auto sine = math::sin(rotation);
  const auto cosine = math::cos(rotation);
  const auto root =
      math::sqrt(math::power<2>(math::cos(angle) * cosine) + math::power<2>(sine)); // as joint_denominator
  return torque * (math::tan(angle) * math::abs(cosine) * root);
}
} // namespace text

/// Output torque and bending couples at one rotation of a joint [N·m].
///
/// output  T2 = T1 (1 - sin² b cos² t) / cos b
/// driving M1 = T1 tan b |sin t|
/// driven  M2 = T1 tan b |cos t| sqrt(1 - sin² b cos² t)
///   torque    T1  steady, on the driving shaft [N·m], at least 0
///   angle     b   joint angle [rad], from 0, below 90°
///   rotation  t   of the driving yoke from the plane of the shafts [rad], any
/// Magnitudes, without friction and inertia. The one moment that the cross carries, at right angles to both its pins,
/// has T1 and M1 as its parts along and across the driving shaft, T2 and M2 along and across the driven one. Source:
/// Seherr-Thoss, Schmelz & Aucktor, Universal Joints and Driveshafts, section 1.2, and SAE AE-7 (peaks from memory);
/// full forms from the balance of moments (handbook). Example: 100 N·m, 20°, 45°: 100.194, 25.737 and 24.973 N·m.
inline JointCouples joint_couples(Torque torque, Angle angle, Angle rotation) {
  check::not_negative(torque.value(), {"joint_couples", "torque", "N·m"});
  check::joint_angle(angle, "joint_couples", "angle");
  check::finite(rotation.value(), {"joint_couples", "rotation", "rad"});
  return {text::joint_output_torque(torque, angle, rotation), text::joint_driving_couple(torque, angle, rotation),
          text::joint_driven_couple(torque, angle, rotation)};
}

/// The greatest output torque and couples over one turn [N·m]; they do not occur at the same rotation.
///
/// output  T1 / cos b, at t = 90°
/// driving T1 tan b, at t = 90°
/// driven  T1 sin b, at t = 0, up to b = 45°; above, T1 / (2 cos b), at cos² t = 1/(2 sin² b)
///   torque  T1  steady, on the driving shaft [N·m], at least 0
///   angle   b   joint angle [rad], from 0, below 90°
/// The books give T1 sin b alone for the driven shaft; past 45° the couple is greater elsewhere in the turn (at 60°
/// T1 where T1 sin b is 0.866 T1). Source: as joint_couples; the part above 45° by the derivative (handbook).
/// Example: 100 N·m, 20°: 106.418, 36.397 and 34.202 N·m.
inline JointCouples joint_peak_couples(Torque torque, Angle angle) {
  check::not_negative(torque.value(), {"joint_peak_couples", "torque", "N·m"});
  check::joint_angle(angle, "joint_peak_couples", "angle");
  const double sine = math::sin(angle);
  const double cosine = math::cos(angle);
  return {torque / cosine, torque * math::tan(angle),
          2.0 * sine * sine <= 1.0 ? torque * sine : torque / (2.0 * cosine)};
}

/// Force that a couple puts on each of the two bearings that carry a shaft [N].
///
/// F = M / s, equal and opposite on both, wherever along the shaft the joint sits
///   couple  M  on the shaft, from joint_couples [N·m], at least 0
///   span    s  between the middles of the two bearings [m], above 0
/// Rigid shaft, two bearings that let it tilt. Source: balance of moments. Example: 100 N·m, 80 mm: 1250 N.
inline Force couple_bearing_force(Torque couple, Length span) {
  check::not_negative(couple.value(), {"couple_bearing_force", "couple", "N·m"});
  check::positive(span.value(), {"couple_bearing_force", "span", "m"});
  return without_radian(couple) / span;
}

} // namespace v0
} // namespace fieldshaft
