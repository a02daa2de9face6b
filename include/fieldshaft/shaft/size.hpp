#pragma once
// The diameter that a round shaft needs for a torque.

#include <fieldshaft/fatigue/shaft.hpp>
#include <fieldshaft/shaft/section.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
template <class T, class G, class P, class R>
auto diameter_for_twist(T torque, G shear_modulus, P twist_rate, R bore_ratio) noexcept {
  const auto constant = without_radian(torque) / (shear_modulus * without_radian(twist_rate));
  return math::sqrt(math::sqrt(32.0 * constant / (pi * (1.0 - math::power<4>(bore_ratio)))));
}
} // namespace text

/// Outer diameter that a round shaft needs to carry a torque at a shear stress [m].
///
/// d^3 = 16 T / (pi t (1 - k^4))
///   torque        T  [N·m], above 0
///   shear_stress  t  allowed [Pa], above 0: the yield strength in shear over a safety factor
///   bore_ratio    k  bore over diameter, from 0 to below 1
/// Away from notches. Source: Gere, ch. 3. Example: 1200 N·m at 40 MPa: 53.460 mm solid, 63.726 mm with k 0.8.
inline Length diameter_for_torque(Torque torque, Stress shear_stress, double bore_ratio = 0.0) {
  constexpr const char* function = "diameter_for_torque";
  check::positive(torque.value(), {function, "torque", "N·m"});
  check::positive(shear_stress.value(), {function, "shear_stress", "Pa"});
  check::from_below(bore_ratio, 0.0, 1.0, {function, "bore_ratio", ""});
  return text::round_diameter(Volume(without_radian(torque) / shear_stress), bore_ratio);
}

/// Outer diameter that a round shaft needs to twist no more than a given rate [m].
///
/// d^4 = 32 T / (pi G (twist rate) (1 - k^4))
///   torque         T  [N·m], above 0
///   twist_rate        allowed [rad/m], above 0
///   shear_modulus  G  [Pa], above 0
///   bore_ratio     k  bore over diameter, from 0 to below 1
/// Source: Gere, ch. 3. Example: 1200 N·m, 0.75°/m, 78 GPa: 58.822 mm solid, 67.104 mm with k 0.8.
inline Length diameter_for_twist(Torque torque, TwistRate twist_rate, Stress shear_modulus, double bore_ratio = 0.0) {
  constexpr const char* function = "diameter_for_twist";
  check::positive(torque.value(), {function, "torque", "N·m"});
  check::positive(twist_rate.value(), {function, "twist_rate", "rad/m"});
  check::positive(shear_modulus.value(), {function, "shear_modulus", "Pa"});
  check::from_below(bore_ratio, 0.0, 1.0, {function, "bore_ratio", ""});
  return text::diameter_for_twist(torque, shear_modulus, twist_rate, bore_ratio);
}

} // namespace v0
} // namespace fieldshaft
