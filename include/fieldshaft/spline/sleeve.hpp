#pragma once
// The hub of a spline: what bursts it.

#include <fieldshaft/spline/factors.hpp>
#include <fieldshaft/spline/spline.hpp>

namespace fieldshaft {
inline namespace v0 {

/// Tensile stresses round the hub of a spline.
struct SleeveStress {
  Length wall;        ///< between the spaces and the outside
  Stress radial;      ///< S1: the flanks push the hub apart
  Stress centrifugal; ///< S2: it turns
  Stress tooth_bend;  ///< S3: the load bends its teeth
  Stress tensile;     ///< S_t = (Ka Km (S1 + S3) + S2)/Kf, to be compared with the allowable tensile stress
};

namespace detail {
/// Dudley's 1.656e-6 psi per (r/min)^2 in^2, in SI: of a steel ring (3 + v) rho/16, with v 0.3 and 7825 kg/m3.
inline constexpr Density sleeve_spin = kilograms_per_cubic_metre(
    1.656e-6 * unit::psi.factor / (unit::rpm.factor * unit::rpm.factor * unit::inch_m * unit::inch_m));
} // namespace detail

namespace text {
template <class T, class L, class R>
constexpr auto sleeve_radial(T torque, R tangent, L diameter, L wall, L length) noexcept {
  return without_radian(torque) * tangent / (pi * (diameter * wall * length));
}
template <class T, class L> constexpr auto sleeve_tooth_bend(T torque, L diameter, L length, double form) noexcept {
  return 4.0 * without_radian(torque) / (diameter * diameter * length * form);
}
template <class D, class W, class L> constexpr auto sleeve_spin(D factor, W speed, L outer, L root) noexcept {
  const auto w = without_radian(speed);
  return factor * (w * w) * (outer * outer + 0.212 * (root * root));
}
} // namespace text

/// Tensile stresses in the hub of a spline [Pa].
///
/// wall t = (D_oi - D_ri)/2; S1 = T tan f/(pi D t L); S2 = 1.656 n^2 (D_oi^2 + 0.212 D_ri^2)/10^6 psi (r/min, in);
/// S3 = 4 T/(D^2 L Y); S_t = (Ka Km (S1 + S3) + S2)/Kf
///   spline          any form: D the bearing diameter, f the flank angle, D_ri the bottom of the hub's spaces
///   torque          T     [N·m], at least 0
///   outer_diameter  D_oi  of the hub [m], above D_ri
///   speed           n     [rad/s], at least 0
///   factors         Ka, Km, Kf
///   tooth_form      Y     Lewis factor of the hub's teeth, above 0; 1.5 for 30°
/// Steel. A straight-sided spline spreads its hub by the angle of its parallel flanks to the radius; Dudley has no case
/// for it. Source: Dudley, as restated in Machinery's Handbook, Eqs. 6-9 (S1 to S3 quoted elsewhere, Kf from
/// memory); S2 is 0.3 % below the hoop stress of a steel ring (computed). Example: 21 teeth, 16/32, 2 in, 5000 lbf·in,
/// hub 2.0 in, 1000 r/min, Ka 1.2, Kf 0.5: 1160.79, 7.309, 3869.99 and together 12 088.5 psi.
inline SleeveStress sleeve_stress(const Spline& spline, Torque torque, Length outer_diameter, AngularSpeed speed = {},
                                  const SplineFactors& factors = {}, double tooth_form = 1.5) {
  constexpr const char* function = "sleeve_stress";
  check::not_negative(torque.value(), {function, "torque", "N·m"});
  check::finite(outer_diameter.value(), {function, "outer_diameter", "m"});
  if (!(outer_diameter > spline.sleeve_root())) {
    check::fail_bound({function, "outer_diameter", "m"}, outer_diameter.value(), "a finite number above ",
                      spline.sleeve_root().value());
  }
  check::not_negative(speed.value(), {function, "speed", "rad/s"});
  check::spline_factors(factors, function);
  check::positive(tooth_form, {function, "tooth_form", ""});
  const SplineSizes& s = spline.sizes();
  const Length wall = 0.5 * (outer_diameter - s.sleeve_root);
  const Stress radial = text::sleeve_radial(torque, math::tan(s.flank_angle), s.bearing_diameter, wall, s.length);
  const Stress spin = text::sleeve_spin(detail::sleeve_spin, speed, outer_diameter, s.sleeve_root);
  const Stress bend = text::sleeve_tooth_bend(torque, s.bearing_diameter, s.length, tooth_form);
  const double load = factors.application * factors.load_distribution;
  return {wall, radial, spin, bend, (load * (radial + bend) + spin) / factors.fatigue_life};
}

} // namespace v0
} // namespace fieldshaft
