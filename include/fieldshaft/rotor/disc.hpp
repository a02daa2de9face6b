#pragma once
// Stress that turning alone causes in a thin ring and in a flat disc of even thickness.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
template <class V, class D> constexpr auto ring_hoop_stress(V rim_speed, D density) noexcept {
  return density * rim_speed * rim_speed;
}
/// Density times the square of the speed at a radius.
template <class L, class W, class D> constexpr auto rim_stress(L radius, W speed, D density) noexcept {
  return density * math::power<2>(without_radian(speed) * radius);
}
template <class L, class W, class D, class N>
constexpr auto solid_disc_hoop_stress(L radius, L outer, W speed, D density, N nu) noexcept {
  return ((3.0 + nu) * rim_stress(outer, speed, density) - (1.0 + 3.0 * nu) * rim_stress(radius, speed, density)) / 8.0;
}
template <class L, class W, class D, class N>
constexpr auto ring_disc_hoop_stress(L radius, L inner, L outer, W speed, D density, N nu) noexcept {
  const L bore = inner * (outer / radius);
  return ((3.0 + nu) * (rim_stress(inner, speed, density) + rim_stress(outer, speed, density) +
                        rim_stress(bore, speed, density)) -
          (1.0 + 3.0 * nu) * rim_stress(radius, speed, density)) /
         8.0;
}
template <class L, class W, class D, class N>
constexpr auto solid_disc_radial_stress(L radius, L outer, W speed, D density, N nu) noexcept {
  return (3.0 + nu) * (rim_stress(outer, speed, density) - rim_stress(radius, speed, density)) / 8.0;
}
template <class L, class W, class D, class N>
constexpr auto ring_disc_radial_stress(L radius, L inner, L outer, W speed, D density, N nu) noexcept {
  const L bore = inner * (outer / radius);
  return (3.0 + nu) *
         (rim_stress(inner, speed, density) + rim_stress(outer, speed, density) - rim_stress(bore, speed, density) -
          rim_stress(radius, speed, density)) /
         8.0;
}
} // namespace text

namespace detail {
constexpr void check_disc(const char* function, Length inner_radius, Length outer_radius, AngularSpeed speed,
                          Density density, double poisson_ratio) {
  check::positive(outer_radius.value(), {function, "outer_radius", "m"});
  check::from_below(inner_radius.value(), 0.0, outer_radius.value(), {function, "inner_radius", "m"});
  check::not_negative(speed.value(), {function, "speed", "rad/s"});
  check::positive(density.value(), {function, "density", "kg/m³"});
  check::from_below(poisson_ratio, 0.0, 0.5, {function, "poisson_ratio", ""});
}
} // namespace detail

/// Hoop stress in a thin ring that turns about its axis [Pa].
///
/// sigma = rho v^2
///   rim_speed  v    of the ring [m/s], at least 0
///   density    rho  [kg/m³], above 0
/// Radial thickness small against the radius (at a tenth of it the bore of a flat ring has 7 % more than the mean
/// speed gives); a thicker one is a disc. Source: Ugural and Fenster, ch. 8.
/// Example: steel (7850 kg/m³) at 86.36 m/s = 17 000 ft/min: 58.5 MPa.
constexpr Stress ring_hoop_stress(Speed rim_speed, Density density) {
  check::not_negative(rim_speed.value(), {"ring_hoop_stress", "rim_speed", "m/s"});
  check::positive(density.value(), {"ring_hoop_stress", "density", "kg/m³"});
  return text::ring_hoop_stress(rim_speed, density);
}

/// Hoop stress at a radius of a turning disc [Pa].
///
/// sigma = (3 + nu)/8 rho w^2 (a^2 + b^2 + a^2 b^2 / r^2 - (1 + 3 nu)/(3 + nu) r^2); without hole
/// sigma = rho w^2 ((3 + nu) b^2 - (1 + 3 nu) r^2) / 8
///   radius         r    at which the stress is asked for [m], from inner_radius to outer_radius
///   inner_radius   a    of the hole [m], at least 0 and below outer_radius; 0 is a solid disc
///   outer_radius   b    [m], above 0
///   speed          w    [rad/s], at least 0
///   density        rho  [kg/m³], above 0
///   poisson_ratio  nu   0 to 0.5, upper end excluded
/// Elastic, flat, of even thickness, thin against its radius, free at both rims; no shrink fit, no blades, no heat.
/// Source: Ugural and Fenster, ch. 8; Jindal, ch. 19.
/// Example: solid disc of 364 mm at 250 r/min, 7800 kg/m³, nu = 0.3: 0.124 MPa at the rim.
constexpr Stress disc_hoop_stress_at(Length radius, Length inner_radius, Length outer_radius, AngularSpeed speed,
                                     Density density, double poisson_ratio) {
  constexpr const char* function = "disc_hoop_stress_at";
  detail::check_disc(function, inner_radius, outer_radius, speed, density, poisson_ratio);
  check::within(radius.value(), inner_radius.value(), outer_radius.value(), {function, "radius", "m"});
  if (inner_radius.value() == 0.0) {
    return text::solid_disc_hoop_stress(radius, outer_radius, speed, density, poisson_ratio);
  }
  return text::ring_disc_hoop_stress(radius, inner_radius, outer_radius, speed, density, poisson_ratio);
}

/// Radial stress at a radius of a turning disc [Pa]; parameters and validity as for disc_hoop_stress_at.
///
/// sigma = (3 + nu)/8 rho w^2 (a^2 + b^2 - a^2 b^2 / r^2 - r^2); zero at a free rim, nowhere above the hoop stress.
/// Source: Ugural and Fenster, ch. 8. Example: the same disc at its centre: 0.292 MPa.
constexpr Stress disc_radial_stress_at(Length radius, Length inner_radius, Length outer_radius, AngularSpeed speed,
                                       Density density, double poisson_ratio) {
  constexpr const char* function = "disc_radial_stress_at";
  detail::check_disc(function, inner_radius, outer_radius, speed, density, poisson_ratio);
  check::within(radius.value(), inner_radius.value(), outer_radius.value(), {function, "radius", "m"});
  if (inner_radius.value() == 0.0) {
    return text::solid_disc_radial_stress(radius, outer_radius, speed, density, poisson_ratio);
  }
  return text::ring_disc_radial_stress(radius, inner_radius, outer_radius, speed, density, poisson_ratio);
}

/// Greatest hoop stress in a turning disc [Pa]: at the centre of a solid disc, at the hole of a pierced one.
///
/// Parameters and validity as for disc_hoop_stress_at. Any hole, however small, doubles the stress of the solid disc;
/// inner_radius = 0 therefore means that there is none. Source: Ugural and Fenster, ch. 8.
/// Example: solid disc of 364 mm at 250 r/min, 7800 kg/m³, nu = 0.3: 0.2922 MPa.
constexpr Stress disc_hoop_stress(Length inner_radius, Length outer_radius, AngularSpeed speed, Density density,
                                  double poisson_ratio) {
  detail::check_disc("disc_hoop_stress", inner_radius, outer_radius, speed, density, poisson_ratio);
  return disc_hoop_stress_at(inner_radius, inner_radius, outer_radius, speed, density, poisson_ratio);
}

} // namespace v0
} // namespace fieldshaft
