#pragma once
// A round shaft twisted beyond yield: what it holds, how far it twists, and what remains after the load is gone.

#include <fieldshaft/shaft/torsion.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
/// Torque while the section is elastic inside `core` and yields outside it; all of them radii.
template <class S, class L> constexpr auto partly_plastic_torque(S shear_yield, L outer, L inner, L core) noexcept {
  const auto whole = 2.0 * pi / 3.0 * math::power<3>(outer);
  const auto lost = pi / 6.0 * math::power<3>(core) + pi / 2.0 * math::power<3>(inner) * (inner / core);
  return as_torque(shear_yield * (whole - lost));
}
} // namespace text

/// Torque that a round shaft holds at a given twist per length, below or beyond yield [N·m].
///
/// Below first yield T = G J (rate); beyond, elastic inside the radius p = S/(G rate) and yielding outside it:
/// T = pi S (2/3 R^3 - p^3/6 - r^4/(2 p)), for a solid shaft 4/3 T_y (1 - (p/R)^3/4); once p reaches the bore the
/// torque stays at its plastic value
///   section        R, r  solid or tube
///   twist_rate     [rad/m], above 0
///   shear_yield    S  [Pa], above 0
///   shear_modulus  G  [Pa], above 0
/// Steel that does not harden, twisted once. Source: Beer & Johnston, Eqs. 3.32-3.36 (solid); integral of the stress
/// over the section (tube). Example: 40 mm solid, 0.6 rad in 1.5 m, 75 MPa, 46.875 GPa: 1.254124 kN·m.
constexpr Torque partly_plastic_torque(const RoundSection& section, TwistRate twist_rate, Stress shear_yield,
                                       Stress shear_modulus) {
  constexpr const char* function = "partly_plastic_torque";
  check::positive(twist_rate.value(), {function, "twist_rate", "rad/m"});
  check::positive(shear_yield.value(), {function, "shear_yield", "Pa"});
  check::positive(shear_modulus.value(), {function, "shear_modulus", "Pa"});
  const Length outer = 0.5 * section.outer_diameter();
  const Length inner = 0.5 * section.inner_diameter();
  const Length core = shear_yield / shear_modulus / without_radian(twist_rate);
  if (core >= outer) return torque_for_twist(section, twist_rate, shear_modulus);
  if (core <= inner) return plastic_torque(section, shear_yield);
  return text::partly_plastic_torque(shear_yield, outer, inner, core);
}

/// A round shaft that was overloaded once.
struct Overload {
  Length core_diameter;      ///< inside it the section stayed elastic; the outer diameter if nothing yielded
  TwistRate twist_rate;      ///< under the torque
  TwistRate permanent_twist; ///< left after unloading
  Stress residual_surface;   ///< left at the surface, against the sense of the torque
  Stress residual_core;      ///< left at the edge of the elastic core, in the sense of the torque
};

namespace detail {
/// The core radius at which a partly plastic section holds the torque; solid: closed form, tube: halving.
inline Length plastic_core(const RoundSection& section, Torque torque, Stress shear_yield) noexcept {
  const Length outer = 0.5 * section.outer_diameter();
  Length low = 0.5 * section.inner_diameter();
  if (low.value() == 0.0) {
    const double share = torque / text::torsion_torque(shear_yield, section.torsion_modulus());
    return outer * math::cbrt(4.0 - 3.0 * share);
  }
  Length high = outer;
  for (int i = 0; i < 60; ++i) { // to the last digit of a double
    const Length middle = 0.5 * (low + high);
    const bool holds_more =
        text::partly_plastic_torque(shear_yield, outer, 0.5 * section.inner_diameter(), middle) > torque;
    (holds_more ? low : high) = middle;
  }
  return 0.5 * (low + high);
}
} // namespace detail

/// What a torque does to a round shaft, and what remains when it is taken off.
///
/// Beyond the yield torque: core p from T = pi S (2/3 R^3 - p^3/6 - r^4/(2 p)), twist S/(G p); unloading is elastic, so
/// that the permanent twist is the twist less T/(G J) and the residual stress is S less T/W at the surface
///   section        solid or tube
///   torque         T  [N·m], at least 0, below the plastic torque (at which there is no bound)
///   shear_yield    S  [Pa], above 0
///   shear_modulus  G  [Pa], above 0
/// Steel that does not harden; real steel twists a little less. Source: Beer & Johnston, Eqs. 3.32-3.36, Ex. 3.09.
/// Example: 50 mm solid, 4.60 kN·m, 150 MPa, 77 GPa: core 31.56 mm, 8.487° in 1.2 m of which 1.793° remain.
inline Overload overload(const RoundSection& section, Torque torque, Stress shear_yield, Stress shear_modulus) {
  constexpr const char* function = "overload";
  check::not_negative(torque.value(), {function, "torque", "N·m"});
  check::positive(shear_modulus.value(), {function, "shear_modulus", "Pa"});
  const Torque first_yield = yield_torque(section, shear_yield);
  check::below(torque.value(), plastic_torque(section, shear_yield).value(), {function, "torque", "N·m"});
  const TwistRate elastic = twist_rate(section, torque, shear_modulus);
  if (torque <= first_yield) return {section.outer_diameter(), elastic, TwistRate{}, Stress{}, Stress{}};
  const Length core = detail::plastic_core(section, torque, shear_yield);
  const TwistRate rate = as_twist_rate(shear_yield / shear_modulus / core);
  const Stress unloading = torsion_stress(section, torque);
  return {2.0 * core, rate, rate - elastic, unloading - shear_yield,
          shear_yield - unloading * (2.0 * core / section.outer_diameter())};
}

} // namespace v0
} // namespace fieldshaft
