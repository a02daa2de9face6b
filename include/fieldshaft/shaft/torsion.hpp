#pragma once
// Torsion of any section: stress, twist, and the torques at which it yields and gives way.

#include <fieldshaft/shaft/section.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
template <class T, class W> constexpr auto torsion_stress(T torque, W modulus) noexcept {
  return without_radian(torque) / modulus;
}
template <class S, class W> constexpr auto torsion_torque(S stress, W modulus) noexcept {
  return as_torque(stress * modulus);
}
template <class T, class G, class J> constexpr auto twist_rate(T torque, G shear_modulus, J constant) noexcept {
  return as_twist_rate(without_radian(torque) / (shear_modulus * constant));
}
template <class P, class G, class J>
constexpr auto torque_for_twist(P twist_rate, G shear_modulus, J constant) noexcept {
  return as_torque(without_radian(twist_rate) * (shear_modulus * constant));
}
} // namespace text

/// Greatest shear stress of a section under a torque [Pa].
///
/// t = T / W, W the torsion modulus: pi d^3/16 solid, pi (D^4 - d^4)/(16 D) tube, 2 A_m t thin closed profile
///   section  any of the shapes
///   torque   T  [N·m], at least 0
/// Elastic, away from notches: see concentration.hpp for what raises it. Source: Gere, Mechanics of Materials,
/// ch. 3 (round); Hibbeler, section 5.7 (profiles).
/// Example: 250 lbf·ft on 1.5 in solid: 4527.07 psi.
constexpr Stress torsion_stress(const Section& section, Torque torque) {
  check::not_negative(torque.value(), {"torsion_stress", "torque", "N·m"});
  return text::torsion_stress(torque, section.torsion_modulus());
}

/// Torque at which the most stressed fibre of a section begins to yield [N·m].
///
/// T_y = S_sy W, W the torsion modulus
///   section      any of the shapes
///   shear_yield  S_sy  yield strength in shear, or any allowable shear stress [Pa], above 0
/// Away from notches. Source: Beer & Johnston, Mechanics of Materials, section 3.9.
/// Example: 34.925 mm solid, 530 MPa/sqrt 3: 2559.50 N·m.
constexpr Torque yield_torque(const Section& section, Stress shear_yield) {
  check::positive(shear_yield.value(), {"yield_torque", "shear_yield", "Pa"});
  return text::torsion_torque(shear_yield, section.torsion_modulus());
}

/// Torque at which every fibre of a section yields, for a steel that does not harden [N·m].
///
/// T_p = S_sy W_p: 4/3 of the yield torque for a solid round, (2 pi/3)(ro^3 - ri^3) S_sy for a tube; no more than the
/// yield torque for a thin closed profile
///   section, shear_yield  as for yield_torque
/// The shaft twists without end at this torque: a limit for one overload, never for work. Source: Beer & Johnston,
/// section 3.9; Hibbeler, section 5.9. Example: 34.925 mm solid, 530 MPa/sqrt 3: 3412.66 N·m.
constexpr Torque plastic_torque(const Section& section, Stress shear_yield) {
  check::positive(shear_yield.value(), {"plastic_torque", "shear_yield", "Pa"});
  return text::torsion_torque(shear_yield, section.plastic_modulus());
}

/// Twist per length of a section under a torque [rad/m].
///
/// T / (G J), J the torsion constant
///   section        any of the shapes
///   torque         T  [N·m], at least 0
///   shear_modulus  G  [Pa], above 0
/// Elastic. Source: Gere, ch. 3. Example: 500 N·m on a tube of 50/44 mm, 77 GPa: 0.0264368 rad/m.
constexpr TwistRate twist_rate(const Section& section, Torque torque, Stress shear_modulus) {
  check::not_negative(torque.value(), {"twist_rate", "torque", "N·m"});
  check::positive(shear_modulus.value(), {"twist_rate", "shear_modulus", "Pa"});
  return text::twist_rate(torque, shear_modulus, section.torsion_constant());
}

/// Twist of a length of shaft [rad].
///
/// T L / (G J)
///   section, torque, shear_modulus  as for twist_rate
///   length  L  [m], at least 0
/// Elastic. Source: Gere, ch. 3. Example: 250 lbf·ft on 1.5 in solid, 54 in, 11.5e6 psi: 1.62396°.
constexpr Angle twist(const Section& section, Torque torque, Stress shear_modulus, Length length) {
  check::not_negative(length.value(), {"twist", "length", "m"});
  return twist_rate(section, torque, shear_modulus) * length;
}

/// Torque at which a section twists by a given rate [N·m].
///
/// T = G J times the rate
///   section, shear_modulus  as for twist_rate
///   twist_rate              allowed [rad/m], at least 0
/// Elastic: also ask yield_torque. Source: Gere, ch. 3. Example: 1.5 in solid, 2.5° in 54 in, 11.5e6 psi: 384.86
/// lbf·ft.
constexpr Torque torque_for_twist(const Section& section, TwistRate twist_rate, Stress shear_modulus) {
  check::not_negative(twist_rate.value(), {"torque_for_twist", "twist_rate", "rad/m"});
  check::positive(shear_modulus.value(), {"torque_for_twist", "shear_modulus", "Pa"});
  return text::torque_for_twist(twist_rate, shear_modulus, section.torsion_constant());
}

/// Shear stress in a round section at a radius [Pa]; it grows evenly from the axis to the surface.
///
/// t = T r / J
///   section  solid or tube
///   torque   T  [N·m], at least 0
///   radius   r  from the bore to the surface [m]
/// Source: Gere, ch. 3. Example: 4.08407 kN·m on a tube of 60/40 mm: 120 MPa outside, 80 MPa at the bore.
constexpr Stress torsion_stress_at(const RoundSection& section, Torque torque, Length radius) {
  constexpr const char* function = "torsion_stress_at";
  check::not_negative(torque.value(), {function, "torque", "N·m"});
  check::within(radius.value(), 0.5 * section.inner_diameter().value(), 0.5 * section.outer_diameter().value(),
                {function, "radius", "m"});
  return text::torsion_stress(torque, section.torsion_modulus()) * (2.0 * radius / section.outer_diameter());
}

} // namespace v0
} // namespace fieldshaft
