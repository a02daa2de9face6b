#pragma once
// Angular acceleration of the shaft behind a Cardan joint: over the turn, at its peak, and the angle it allows.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/joint/kinematics.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
/// Derivative of the speed ratio with the rotation: acceleration over the square of the driving speed.
template <class B, class R> auto joint_ratio_slope(B angle, R rotation) noexcept {
  return -math::cos(angle) * math::power<2>(math::sin(angle)) * math::sin(2.0 * rotation) /
         math::power<2>(joint_denominator(angle, rotation));
}
/// tan² t at the greatest acceleration: the root of x² + 3 sin² b x - cos² b = 0.
template <class B> auto joint_peak_tangent_squared(B angle) noexcept {
  const auto s = math::power<2>(math::sin(angle));
  const auto c2 = math::power<2>(math::cos(angle));
  return 2.0 * c2 / (3.0 * s + math::sqrt(9.0 * s * s + 4.0 * c2));
}
template <class B> auto joint_peak_slope(B angle) noexcept {
  const auto x = joint_peak_tangent_squared(angle);
  const auto c = math::cos(angle);
  return 2.0 * c * math::power<2>(math::sin(angle)) * math::sqrt(x) * (1.0 + x) / math::power<2>(c * c + x);
}
template <class B, class R, class W> auto joint_acceleration(B angle, R rotation, W speed) noexcept {
  return joint_ratio_slope(angle, rotation) * (speed * without_radian(speed));
}
template <class B, class W> auto joint_peak_acceleration(B angle, W speed) noexcept {
  return joint_peak_slope(angle) * (speed * without_radian(speed));
}
} // namespace text

/// Acceleration of the driven shaft while the driving shaft turns steadily [rad/s²]; negative while it slows down.
///
/// a = -w² cos b sin² b sin 2t / (1 - sin² b cos² t)²
///   angle     b  joint angle [rad], from 0, below 90°
///   rotation  t  of the driving yoke from the plane of the shafts [rad], any
///   speed     w  of the driving shaft [rad/s], at least 0
/// Exact for an ideal joint at constant driving speed. Source: Khurmi & Gupta, ex. 9.2 and 9.6.
/// Example: 20°, 45°, 1000 r/min: -1359.86 rad/s².
inline AngularAcceleration joint_acceleration(Angle angle, Angle rotation, AngularSpeed speed) {
  check::joint_angle(angle, "joint_acceleration", "angle");
  check::finite(rotation.value(), {"joint_acceleration", "rotation", "rad"});
  check::not_negative(speed.value(), {"joint_acceleration", "speed", "rad/s"});
  return text::joint_acceleration(angle, rotation, speed);
}

/// Greatest acceleration, and greatest deceleration, of the driven shaft over one turn [rad/s²].
///
/// a = w² 2 cos b sin² b tan t (1 + tan² t) / (cos² b + tan² t)² at the rotation t of joint_peak_acceleration_rotation
///   angle  b  joint angle [rad], from 0, below 90°
///   speed  w  of the driving shaft [rad/s], at least 0
/// Exact. The usual textbook approximation cos 2t = 2 sin² b/(2 - sin² b) for the place is replaced by the exact root.
/// Source: derivative of the above (proved in the handbook).
/// Example: 20° at 1000 r/min: 1370.401 rad/s².
inline AngularAcceleration joint_peak_acceleration(Angle angle, AngularSpeed speed) {
  check::joint_angle(angle, "joint_peak_acceleration", "angle");
  check::not_negative(speed.value(), {"joint_peak_acceleration", "speed", "rad/s"});
  return text::joint_peak_acceleration(angle, speed);
}

/// Where the deceleration is greatest: a rotation from 0 to 45° [rad]. The acceleration is greatest at 180° minus it.
///
/// tan² t = 2 cos² b / (3 s + sqrt(9 s² + 4 cos² b)), s = sin² b; equal to
/// cos 2t = [-(2 - s) + sqrt((2 - s)² + 8 s²)] / (2 s), but without loss of digits as b goes to 0 (t = 45°) or to 90°
///   angle  b  joint angle [rad], from 0, below 90°
/// Exact. Source: derivative of the acceleration set to zero. Example: 20°: 41.4587°.
inline Angle joint_peak_acceleration_rotation(Angle angle) {
  check::joint_angle(angle, "joint_peak_acceleration_rotation", "angle");
  return angle_from_ratio(math::atan(math::sqrt(text::joint_peak_tangent_squared(angle))));
}

/// The joint angle at which the peak acceleration reaches a limit [rad].
///
/// The exact peak is solved for the angle by halving the interval; it grows steadily with the angle.
///   limit  highest acceleration [rad/s²], at least 0
///   speed  of the driving shaft [rad/s], above 0
/// To the last digits of a double, and rounded down so that the limit is kept. Source: joint_peak_acceleration.
/// Example: 400 rad/s² at 540 r/min: 20.0095°.
inline Angle joint_angle_for_acceleration(AngularAcceleration limit, AngularSpeed speed) {
  check::not_negative(limit.value(), {"joint_angle_for_acceleration", "limit", "rad/s²"});
  check::positive(speed.value(), {"joint_angle_for_acceleration", "speed", "rad/s"});
  double low = 0.0;
  double high = pi / 2.0;
  for (double middle = 0.5 * high; low < middle && middle < high; middle = 0.5 * (low + high)) {
    (text::joint_peak_acceleration(radians(middle), speed) <= limit ? low : high) = middle;
  }
  return radians(low);
}

// Guide values of the practice for long drivelines. They are rules of thumb, not limits of strength. --------------

/// Torsional excitation of the shaft behind the joints: peak acceleration of the equivalent joint, about w² b².
inline constexpr Sourced<AngularAcceleration> torsional_excitation_guide{
    radians_per_second_squared(400.0),
    {"SAE AE-7 (1979), Universal Joint and Driveshaft Design Manual; passenger-car practice", Standing::from_memory}};

/// Inertia excitation of the intermediate shaft: peak acceleration behind the front joint, about w² b².
inline constexpr Sourced<AngularAcceleration> inertia_excitation_guide{
    radians_per_second_squared(1000.0),
    {"SAE AE-7 (1979), Universal Joint and Driveshaft Design Manual", Standing::from_memory}};

} // namespace v0
} // namespace fieldshaft
