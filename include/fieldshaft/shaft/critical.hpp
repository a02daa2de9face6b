#pragma once
// Lateral critical (whirling) speed of a uniform member on two pinned ends.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/shaft/bar.hpp>
#include <fieldshaft/shaft/lobed.hpp>
#include <fieldshaft/shaft/section.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
template <class I, class A, class L, class E, class R>
auto critical_speed(I second_moment, A area, L length, E youngs_modulus, R density) noexcept {
  return as_angular_speed(pi * pi / (length * length) * math::sqrt(youngs_modulus * second_moment / (density * area)));
}
template <class I, class A, class W, class E, class R>
auto critical_length(I second_moment, A area, W speed, E youngs_modulus, R density) noexcept {
  return pi * math::sqrt(math::sqrt(youngs_modulus * second_moment / (density * area)) / without_radian(speed));
}
} // namespace text

namespace detail {
inline void check_member(Stress youngs_modulus, Density density, const char* function) {
  check::positive(youngs_modulus.value(), {function, "youngs_modulus", "Pa"});
  check::positive(density.value(), {function, "density", "kg/m³"});
}
template <class S>
AngularSpeed checked_critical_speed(const S& section, Length length, Stress youngs_modulus, Density density) {
  check::positive(length.value(), {"critical_speed", "length", "m"});
  check_member(youngs_modulus, density, "critical_speed");
  return text::critical_speed(section.second_moment(), section.area(), length, youngs_modulus, density);
}
} // namespace detail

/// First lateral critical speed of a uniform shaft, pinned at both ends [rad/s].
///
/// w = (pi/L)^2 sqrt(E I / (rho A)); a round section has I/A = (D^2 + d^2)/16
///   section         solid or tube, or a shaped profile or rectangular bar about its weaker axis
///   length          L    between the pinned ends, which are the joint centres [m], above 0
///   youngs_modulus  E    [Pa], above 0
///   density         rho  [kg/m3], above 0
/// Slender member (L above about ten diameters), even along its length, rigid supports. A telescoping member is slower
/// than a uniform one of its outer tube: see whirling in dynamics. Source: Shigley, Eq. 7-22.
/// Example: steel tube of 60/52 mm, 1.2 m, 207 GPa, 7850 kg/m3: 6671.25 r/min.
inline AngularSpeed critical_speed(const RoundSection& section, Length length, Stress youngs_modulus, Density density) {
  return detail::checked_critical_speed(section, length, youngs_modulus, density);
}
inline AngularSpeed critical_speed(const ShapedProfile& section, Length length, Stress youngs_modulus,
                                   Density density) {
  return detail::checked_critical_speed(section, length, youngs_modulus, density);
}
inline AngularSpeed critical_speed(const RectangleSection& section, Length length, Stress youngs_modulus,
                                   Density density) {
  return detail::checked_critical_speed(section, length, youngs_modulus, density);
}

/// Length at which a uniform pinned shaft has a given critical speed [m].
///
/// L = pi (E I / (rho A))^(1/4) / sqrt(w)
///   section                  solid or tube
///   speed                    w  [rad/s], above 0: the running speed over the share of working_speed_share
///   youngs_modulus, density  as for critical_speed
/// Validity and source as critical_speed. Example: steel tube of 60/52 mm, 6671.25 r/min: 1.2 m.
inline Length critical_length(const RoundSection& section, AngularSpeed speed, Stress youngs_modulus, Density density) {
  check::positive(speed.value(), {"critical_length", "speed", "rad/s"});
  detail::check_member(youngs_modulus, density, "critical_length");
  return text::critical_length(section.second_moment(), section.area(), speed, youngs_modulus, density);
}

/// The share of the critical speed that a shaft may run at: schools say from 0.65 to 0.75.
struct SpeedShare {
  Sourced<double> low;
  Sourced<double> high;
};
inline constexpr SpeedShare working_speed_share{
    {0.65, {"working limit of driveshafts, lower of the figures in use", Standing::from_memory}},
    {0.75, {"working limit of driveshafts, higher of the figures in use", Standing::from_memory}}};

} // namespace v0
} // namespace fieldshaft
