#pragma once
// A shaft that has to catch a moving mass: all of its energy goes into twist.

#include <fieldshaft/shaft/torsion.hpp>

namespace fieldshaft {
inline namespace v0 {

/// What a blow does to a shaft while it stays elastic.
struct TorsionImpact {
  Torque torque; ///< peak
  Stress stress; ///< peak, in shear
  Angle twist;   ///< wind-up at the peak
};

namespace text {
template <class U, class G, class J, class L>
auto impact_torque(U energy, G shear_modulus, J constant, L length) noexcept {
  return as_torque(math::sqrt(2.0 * energy * shear_modulus * constant / length));
}
template <class U, class G, class L, class S>
auto impact_diameter(U energy, G shear_modulus, L length, S shear_stress) noexcept {
  return math::sqrt(16.0 * shear_modulus * energy / (pi * length)) / shear_stress;
}
} // namespace text

/// Peak torque, stress and wind-up of a uniform shaft that catches a kinetic energy [N·m, Pa, rad].
///
/// T = sqrt(2 U G J / L): the whole energy becomes strain energy T^2 L / (2 G J)
///   section        any of the shapes
///   length         L  that twists [m], above 0
///   shear_modulus  G  [Pa], above 0
///   energy         U  of the mass that is caught, I w^2/2 [J], at least 0
/// Instant engagement, no slip, no loss, no give anywhere else: an upper bound. Above the yield torque the shaft yields
/// and the numbers end: compare with yield_torque. Source: strain energy (Gere, section 3.9).
/// Example: 2123.06 lbf·in into 1.55010 in solid, 42 in, 11.2e6 psi: 25 333.8 lbf·in, 9.603°.
inline TorsionImpact torsion_impact(const Section& section, Length length, Stress shear_modulus, Energy energy) {
  constexpr const char* function = "torsion_impact";
  check::positive(length.value(), {function, "length", "m"});
  check::positive(shear_modulus.value(), {function, "shear_modulus", "Pa"});
  check::not_negative(energy.value(), {function, "energy", "J"});
  const Torque torque = text::impact_torque(energy, shear_modulus, section.torsion_constant(), length);
  return {torque, torsion_stress(section, torque), twist(section, torque, shear_modulus, length)};
}

/// Diameter of a solid shaft that catches a kinetic energy at a shear stress [m].
///
/// d^2 = 16 G U / (pi L t^2)
///   energy         U  [J], above 0
///   length         L  that twists [m], above 0
///   shear_modulus  G  [Pa], above 0
///   shear_stress   t  allowed [Pa], above 0
/// A longer shaft may be thinner: energy goes with the volume. Source and bounds as torsion_impact.
/// Example: 2123.06 lbf·in, 42 in, 11.2e6 psi, 34 641 psi: 1.55010 in.
inline Length impact_diameter(Energy energy, Length length, Stress shear_modulus, Stress shear_stress) {
  constexpr const char* function = "impact_diameter";
  check::positive(energy.value(), {function, "energy", "J"});
  check::positive(length.value(), {function, "length", "m"});
  check::positive(shear_modulus.value(), {function, "shear_modulus", "Pa"});
  check::positive(shear_stress.value(), {function, "shear_stress", "Pa"});
  return text::impact_diameter(energy, shear_modulus, length, shear_stress);
}

} // namespace v0
} // namespace fieldshaft
