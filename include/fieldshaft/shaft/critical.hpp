#pragma once
// Lateral critical (whirling) speed of a uniform member on two pinned ends.

#include <fieldshaft/shaft/section.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
template <class I, class A, class L, class E, class R>
auto critical_speed(I second_moment, A area, L length, E youngs_modulus, R density) noexcept {
  return as_angular_speed(pi * pi / (length * length) * math::sqrt(youngs_modulus * second_moment / (density * area)));
}
} // namespace text

/// First lateral critical speed of a uniform shaft, pinned at both ends [rad/s].
///
/// w = (pi/L)^2 sqrt(E I / (rho A)); a round section has I/A = (D^2 + d^2)/16
///   section         solid or tube
///   length          L    between the pinned ends, which are the joint centres [m], above 0
///   youngs_modulus  E    [Pa], above 0
///   density         rho  [kg/m3], above 0
/// Slender member (L above about ten diameters), even along its length, rigid supports. A telescoping member is slower
/// than a uniform one of its outer tube: see whirling in dynamics. Source: Shigley, Eq. 7-22.
/// Example: steel tube of 60/52 mm, 1.2 m, 207 GPa, 7850 kg/m3: 6671.25 r/min.
inline AngularSpeed critical_speed(const RoundSection& section, Length length, Stress youngs_modulus, Density density) {
  constexpr const char* function = "critical_speed";
  check::positive(length.value(), {function, "length", "m"});
  check::positive(youngs_modulus.value(), {function, "youngs_modulus", "Pa"});
  check::positive(density.value(), {function, "density", "kg/m³"});
  return text::critical_speed(section.second_moment(), section.area(), length, youngs_modulus, density);
}

} // namespace v0
} // namespace fieldshaft
