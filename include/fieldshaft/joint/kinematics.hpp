#pragma once
// One Cardan (Hooke) joint: how the driven shaft turns while the driving shaft turns steadily.
//
// The rotation of the driving shaft is counted from the position in which its yoke lies in the plane of the two
// shafts. There the driven shaft is fastest. All forms are free of cancellation at small and at large angles.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace check {
/// A joint angle: from 0 to 90°, 90° excluded, where a plain joint no longer turns.
constexpr void joint_angle(Angle angle, const char* function, const char* parameter) {
  from_below(angle.value(), 0.0, pi / 2.0, {function, parameter, "rad"});
}
} // namespace check

namespace text {
/// cos² b cos² t + sin² t = 1 - sin² b cos² t, as a sum of positive terms.
template <class B, class R> auto joint_denominator(B angle, R rotation) noexcept {
  return math::power<2>(math::cos(angle) * math::cos(rotation)) + math::power<2>(math::sin(rotation));
}
/// 1 - cos b without loss at small angles.
template <class B> auto versine(B angle) noexcept { return 2.0 * math::power<2>(math::sin(0.5 * angle)); }

template <class B, class R> auto joint_speed_ratio(B angle, R rotation) noexcept {
  return math::cos(angle) / joint_denominator(angle, rotation);
}
template <class B> auto joint_speed_variation(B angle) noexcept { return math::sin(angle) * math::tan(angle); }
template <class U> auto joint_angle_for_variation(U variation) noexcept {
  return math::atan(math::sqrt(0.5 * variation * (variation + math::sqrt(variation * variation + 4.0))));
}
template <class B, class R> auto joint_displacement(B angle, R rotation) noexcept {
  const auto sine = math::sin(rotation);
  const auto cosine = math::cos(rotation);
  return math::atan(versine(angle) * sine * cosine / (math::cos(angle) * cosine * cosine + sine * sine));
}
template <class B, class R> auto joint_output_rotation(B angle, R rotation) noexcept {
  return rotation + joint_displacement(angle, rotation);
}
template <class B> auto joint_peak_displacement(B angle) noexcept {
  return math::atan(0.5 * versine(angle) / math::sqrt(math::cos(angle)));
}
template <class B> auto joint_equal_speed_rotation(B angle) noexcept {
  return math::atan(math::sqrt(math::cos(angle)));
}
} // namespace text

/// Speed of the driven shaft over that of the driving shaft [-].
///
/// w2/w1 = cos b / (1 - sin² b cos² t)
///   angle     b  joint angle [rad], from 0, below 90°
///   rotation  t  of the driving yoke from the plane of the shafts [rad], any
/// Exact for an ideal joint. Largest, 1/cos b, at t = 0 and 180°; least, cos b, at 90° and 270°.
/// Source: Khurmi & Gupta, Theory of Machines, ch. 9.
/// Example: 20°: 1.064178 at 0, 0.939693 at 90°.
inline double joint_speed_ratio(Angle angle, Angle rotation) {
  check::joint_angle(angle, "joint_speed_ratio", "angle");
  check::finite(rotation.value(), {"joint_speed_ratio", "rotation", "rad"});
  return text::joint_speed_ratio(angle, rotation);
}

/// Total variation of the driven speed over one turn, as a share of the driving speed [-].
///
/// U = 1/cos b - cos b = sin b tan b (about b² for small angles)
///   angle  b  joint angle [rad], from 0, below 90°
/// Exact. Source: Khurmi & Gupta, ex. 9.4 to 9.6. Example: 20°: 0.1244852.
inline double joint_speed_variation(Angle angle) {
  check::joint_angle(angle, "joint_speed_variation", "angle");
  return text::joint_speed_variation(angle);
}

/// The joint angle at which the driven speed varies by a given share [rad].
///
/// tan² b = U (U + sqrt(U² + 4)) / 2, the exact inverse of U = 1/cos b - cos b
///   variation  U  at least 0
/// Exact. Source: algebra from the above. Example: 12.5 %: 20.0404°.
inline Angle joint_angle_for_variation(double variation) {
  check::not_negative(variation, {"joint_angle_for_variation", "variation", ""});
  return angle_from_ratio(text::joint_angle_for_variation(variation));
}

/// Rotation of the driven shaft, counted from where the driving yoke lies in the plane of the shafts [rad].
///
/// tan t2 = tan t / cos b, on the branch that follows t over any number of turns
///   angle     b  joint angle [rad], from 0, below 90°
///   rotation  t  of the driving yoke [rad], any
/// Exact. Source: Khurmi & Gupta, ch. 9. Example: 20° and 45°: 46.78°.
inline Angle joint_output_rotation(Angle angle, Angle rotation) {
  check::joint_angle(angle, "joint_output_rotation", "angle");
  check::finite(rotation.value(), {"joint_output_rotation", "rotation", "rad"});
  return angle_from_ratio(text::joint_output_rotation(without_radian(angle), without_radian(rotation)));
}

/// By how much the driven shaft is ahead of the driving shaft [rad]; behind if negative.
///
/// tan(t2 - t) = (1 - cos b) sin t cos t / (cos b cos² t + sin² t)
///   angle     b  joint angle [rad], from 0, below 90°
///   rotation  t  of the driving yoke [rad], any
/// Exact. Source: tan t2 = tan t / cos b. Example: 20° and 45°: 1.781°.
inline Angle joint_displacement(Angle angle, Angle rotation) {
  check::joint_angle(angle, "joint_displacement", "angle");
  check::finite(rotation.value(), {"joint_displacement", "rotation", "rad"});
  return angle_from_ratio(text::joint_displacement(without_radian(angle), without_radian(rotation)));
}

/// The greatest lead, and the greatest lag, of the driven shaft over one turn [rad].
///
/// tan D = (1 - cos b) / (2 sqrt(cos b)), the lead at tan t = sqrt(cos b), where both shafts are equally fast
///   angle  b  joint angle [rad], from 0, below 90°
/// Exact. Source: textbooks of mechanisms (from memory, proved in the handbook). Example: 20°: 1.7817°.
inline Angle joint_peak_displacement(Angle angle) {
  check::joint_angle(angle, "joint_peak_displacement", "angle");
  return angle_from_ratio(text::joint_peak_displacement(without_radian(angle)));
}

/// The first rotation at which both shafts are equally fast, from 0 to 45° [rad].
///
/// tan t = sqrt(cos b), the same as cos² t = 1/(1 + cos b); again at 180° - t, 180° + t and 360° - t
///   angle  b  joint angle [rad], from 0, below 90°
/// Exact. Source: Khurmi & Gupta, ex. 9.3, whose companion text prints 43.2° for 18°: it typed cos for arc cos.
/// Example: 18°: 44.2813°.
inline Angle joint_equal_speed_rotation(Angle angle) {
  check::joint_angle(angle, "joint_equal_speed_rotation", "angle");
  return angle_from_ratio(text::joint_equal_speed_rotation(without_radian(angle)));
}

} // namespace v0
} // namespace fieldshaft
