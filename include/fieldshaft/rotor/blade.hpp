#pragma once
// What a blade pulls at its bolt, and what it or an object that it strikes carries away.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/rotor/tip_speed.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
template <class M, class L, class W> constexpr auto blade_pull(M mass, L radius, W speed) noexcept {
  return mass * radius * math::power<2>(without_radian(speed));
}
template <class M, class V> constexpr auto object_energy(M mass, V speed) noexcept {
  return 0.5 * mass * speed * speed;
}
template <class V, class R> constexpr auto object_speed_bound(V tip_speed, R restitution) noexcept {
  return tip_speed * (1.0 + restitution);
}
} // namespace text

/// Pull of a blade on its bolt [N].
///
/// F = m r w^2
///   mass    m  of the blade with all that hangs on the bolt [kg], at least 0
///   radius  r  from the rotor's axis to the blade's centre of mass [m], at least 0: not the tip's radius
///   speed   w  of the rotor [rad/s], at least 0
/// Exact for steady turning; an impact adds to it. Source: centripetal force.
/// Example: 2 kg at 0.4 m and 1000 r/min pull with 8773 N.
constexpr Force blade_pull(Mass mass, Length radius, AngularSpeed speed) {
  check::not_negative(mass.value(), {"blade_pull", "mass", "kg"});
  check::not_negative(radius.value(), {"blade_pull", "radius", "m"});
  check::not_negative(speed.value(), {"blade_pull", "speed", "rad/s"});
  return text::blade_pull(mass, radius, speed);
}

/// Energy of an object that flies [J].
///
/// E = m v^2 / 2
///   mass   m  [kg], at least 0
///   speed  v  [m/s], at least 0
/// Exact; turning of the object adds to it. Source: kinetic energy. Example: a stone of 50 g at 67 m/s carries 112 J.
constexpr Energy object_energy(Mass mass, Speed speed) {
  check::not_negative(mass.value(), {"object_energy", "mass", "kg"});
  check::not_negative(speed.value(), {"object_energy", "speed", "m/s"});
  return text::object_energy(mass, speed);
}

/// Greatest speed that a struck object can leave with [m/s].
///
/// v = (1 + e) v_tip
///   tip_speed    v_tip  of the blade [m/s], at least 0
///   restitution  e      of the impact, 0 to 1: 0 for what sticks to the blade, 1 for what springs off without loss
/// A bound for an object at rest that is light against the blade and is struck once; a heavy one or a blade that can
/// swing back gives less (8 to 28 % less in published tests). The claim that an object cannot leave faster than the
/// blade is wrong. Source: impact of two bodies.
/// Example: 89.4 m/s (200 mph) with e = 0.36 give 121.6 m/s (published: nearly 400 ft/s).
constexpr Speed object_speed_bound(Speed tip_speed, double restitution) {
  check::not_negative(tip_speed.value(), {"object_speed_bound", "tip_speed", "m/s"});
  check::within(restitution, 0.0, 1.0, {"object_speed_bound", "restitution", ""});
  return text::object_speed_bound(tip_speed, restitution);
}

} // namespace v0
} // namespace fieldshaft
