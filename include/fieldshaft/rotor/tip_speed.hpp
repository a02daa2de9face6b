#pragma once
// Speed of a turning part at a radius, and what follows from it.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
template <class W, class L> constexpr auto tip_speed(W speed, L radius) noexcept {
  return without_radian(speed) * radius;
}
template <class V, class L> constexpr auto speed_for_tip_speed(V tip_speed, L radius) noexcept {
  return as_angular_speed(tip_speed / radius);
}
template <class W, class L, class T> constexpr auto wrapped_length(W speed, L radius, T reaction_time) noexcept {
  return tip_speed(speed, radius) * reaction_time;
}
} // namespace text

/// Speed of a part that turns at a radius [m/s]: a blade tip, a flail, the surface of a shaft.
///
/// v = w r
///   speed   w  of the rotor [rad/s], at least 0
///   radius  r  from the rotor's axis [m], at least 0
/// Exact, relative to the machine. Source: kinematics.
/// Example: 793.8 r/min on 750 mm (a cutter of 1.5 m, step-up 1.47, at 540 r/min) give 62.3 m/s = 12 270 ft/min.
constexpr Speed tip_speed(AngularSpeed speed, Length radius) {
  check::not_negative(speed.value(), {"tip_speed", "speed", "rad/s"});
  check::not_negative(radius.value(), {"tip_speed", "radius", "m"});
  return text::tip_speed(speed, radius);
}

/// Greatest speed of a blade tip over the ground while the machine travels [m/s].
///
/// v = v_tip + v_ground; a tip runs along a cycloid and is fastest where it moves the way the machine does.
///   tip_speed     relative to the machine [m/s], at least 0
///   ground_speed  of the machine [m/s], at least 0, square to the rotor's axis
/// Exact. Source: kinematics. Example: 80 m/s at 10 km/h give 82.8 m/s.
constexpr Speed tip_speed_over_ground(Speed tip_speed, Speed ground_speed) {
  check::not_negative(tip_speed.value(), {"tip_speed_over_ground", "tip_speed", "m/s"});
  check::not_negative(ground_speed.value(), {"tip_speed_over_ground", "ground_speed", "m/s"});
  return tip_speed + ground_speed;
}

/// Rotor speed at which the tip has a given speed [rad/s].
///
/// w = v / r
///   tip_speed  v  [m/s], at least 0
///   radius     r  [m], above 0
/// Exact. Source: kinematics. Example: 19 000 ft/min on a blade of 19 in need 3820 r/min.
constexpr AngularSpeed speed_for_tip_speed(Speed tip_speed, Length radius) {
  check::not_negative(tip_speed.value(), {"speed_for_tip_speed", "tip_speed", "m/s"});
  check::positive(radius.value(), {"speed_for_tip_speed", "radius", "m"});
  return text::speed_for_tip_speed(tip_speed, radius);
}

/// Length that a turning shaft winds up before a person reacts [m].
///
/// s = w r t
///   speed          w  of the shaft [rad/s], at least 0
///   radius         r  to which the material is wound [m], at least 0: half the joint's width, not the shaft's
///   reaction_time  t  [s], at least 0; texts say 0.75 to 1 s
/// The first moments only; the radius grows as material is wound. A slow shaft is not a safe one: a death is on record
/// at about 200 r/min. Source: arithmetic behind the extension texts on entanglement.
/// Example: 540 r/min on a diameter of 75 mm for 0.75 s wind up 1.6 m = 5.2 ft.
constexpr Length wrapped_length(AngularSpeed speed, Length radius, Time reaction_time) {
  check::not_negative(speed.value(), {"wrapped_length", "speed", "rad/s"});
  check::not_negative(radius.value(), {"wrapped_length", "radius", "m"});
  check::not_negative(reaction_time.value(), {"wrapped_length", "reaction_time", "s"});
  return text::wrapped_length(speed, radius, reaction_time);
}

} // namespace v0
} // namespace fieldshaft
