#pragma once
// Where a shaft's stress is raised: grooves, shoulders, spline roots, inner corners of profiles. Every factor is the
// elastic one, on the nominal stress of the smaller section; what of it counts in fatigue says notch_factor.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/fatigue/notch.hpp>

namespace fieldshaft {
inline namespace v0 {

inline constexpr Source groove_source{"H. Neuber, Kerbspannungslehre: shallow and deep groove, combined",
                                      Standing::from_memory};
inline constexpr Source shoulder_source{"Pilkey, Peterson's Stress Concentration Factors: shaft with a shoulder fillet",
                                        Standing::quoted};
inline constexpr Source spline_root_source{
    "Peterson, Stress Concentration Factors: torsion of a shaft with eight involute teeth (Yoshitake, photoelastic)",
    Standing::from_memory};
inline constexpr Source corner_source{"Timoshenko & Goodier, Theory of Elasticity, section 112", Standing::from_memory};

namespace text {
/// Neuber's rule between the shallow and the deep notch.
template <class R> R between_notches(R shallow, R deep) noexcept {
  const R s = shallow - 1.0;
  const R d = deep - 1.0;
  return s > 0.0 && d > 0.0 ? 1.0 + s * d / math::sqrt(s * s + d * d) : R(1.0);
}
/// Torsion of a groove; depth over radius, and radius of the section over radius.
template <class R> R groove_torsion(R depth, R section) noexcept {
  const R root = math::sqrt(section + 1.0);
  return between_notches(1.0 + math::sqrt(depth), 3.0 * (root + 1.0) * (root + 1.0) / (4.0 * (1.0 + 2.0 * root)));
}
template <class R> R groove_bending(R depth, R section, R poisson_ratio) noexcept {
  const R v = poisson_ratio;
  const R root = math::sqrt(section + 1.0);
  const R n = 3.0 * (section + 1.0) + (1.0 + 4.0 * v) * root + (1.0 + v) / (1.0 + root);
  const R deep = 0.75 * (root + 1.0) * (3.0 * section - (1.0 - 2.0 * v) * root + 4.0 + v) / n;
  return between_notches(1.0 + 2.0 * math::sqrt(depth), deep);
}
/// A cubic in the depth over the diameter whose coefficients depend on the depth over the radius.
template <class R> R shoulder_cubic(const R (&c)[4][3], R depth_over_radius, R depth_over_diameter) noexcept {
  const R root = math::sqrt(depth_over_radius);
  R sum = 0.0;
  for (int i = 3; i >= 0; --i) {
    sum = sum * depth_over_diameter + (c[i][0] + c[i][1] * root + c[i][2] * depth_over_radius);
  }
  return sum;
}
} // namespace text

namespace detail {
// a, b, c of C1 to C4. Each column sums to nearly (1, 0, 0): no concentration as d goes to 0.
inline constexpr double shoulder_torsion[4][3] = {
    {0.905, 0.783, -0.075}, {-0.437, -1.969, 0.553}, {1.557, 1.073, -0.578}, {-1.061, 0.171, 0.086}};
inline constexpr double shoulder_blunt_bending[4][3] = {
    {0.947, 1.206, -0.131}, {0.022, -3.405, 0.915}, {0.869, 1.777, -0.555}, {-0.810, 0.422, -0.260}};
inline constexpr double shoulder_sharp_bending[4][3] = {
    {1.232, 0.832, -0.008}, {-3.813, 0.968, -0.260}, {7.423, -4.868, 0.869}, {-3.839, 3.070, -0.600}};
} // namespace detail

/// Stress concentration of a round groove round a shaft, such as the retaining groove of a PTO stub.
///
/// torsion, shallow 1 + sqrt(t/r), deep 3 (q + 1)^2/(4 (1 + 2 q)), q = sqrt(a/r + 1);
/// bending, shallow 1 + 2 sqrt(t/r), deep 3 (q + 1) (3 a/r - (1 - 2 v) q + 4 + v)/(4 n),
/// n = 3 q^2 + (1 + 4 v) q + (1 + v)/(1 + q); both by 1 + s d/sqrt(s^2 + d^2), s and d the excess over 1; v = 0.3
///   outer_diameter   D  beside the groove [m], above the groove's
///   groove_diameter  d = 2 a  at its bottom [m], above 0; t = (D - d)/2
///   groove_radius    r  of its bottom [m], above 0
///   load             bending or torsion
/// Accuracy: against solutions of the torsion problem by finite elements, d/D from 0.5 to 0.98 and r/d from 0.013 to
/// 0.5, torsion is between 2.3 % low and 2.0 % high (computed). Bending was not checked so. Source: Neuber (from
/// memory). Example: 34.79 mm, groove 29.4 mm with radius 6.8 mm: 1.248 in torsion, 1.476 in bending.
inline double groove_concentration(Length outer_diameter, Length groove_diameter, Length groove_radius,
                                   NotchLoad load) {
  constexpr const char* function = "groove_concentration";
  check::positive(outer_diameter.value(), {function, "outer_diameter", "m"});
  check::between(groove_diameter.value(), 0.0, outer_diameter.value(), {function, "groove_diameter", "m"});
  check::positive(groove_radius.value(), {function, "groove_radius", "m"});
  const double depth = 0.5 * (outer_diameter - groove_diameter) / groove_radius;
  const double section = 0.5 * groove_diameter / groove_radius;
  constexpr double poisson_ratio = 0.3; // steel; 0.25 to 0.33 changes the result by less than 1 %
  return load == NotchLoad::torsion ? text::groove_torsion(depth, section)
                                    : text::groove_bending(depth, section, poisson_ratio);
}

/// Stress concentration of a shoulder with a fillet, as where a stub meets its flange or adaptor.
///
/// K = C1 + C2 x + C3 x^2 + C4 x^3, x = 2 h/D, C_i = a_i + b_i sqrt(h/r) + c_i h/r, h = (D - d)/2
///   larger_diameter   D  [m], above d
///   smaller_diameter  d  [m], above 0; the nominal stress is that of d
///   fillet_radius     r  [m], above 0
///   load              bending or torsion
/// Valid for h/r from 0.1 to 20 in bending and 0.25 to 4 in torsion. Outside: the nearest end is used and said so; a
/// sharper fillet is then worse than the number. Torsion is 0.9 to 1.9 % above solutions by finite elements for
/// D/d 1.09 to 2 (computed); in bending the series of Roark, Table 17.1, is 1.6 % lower at D/d 1.19, h/r 1. Source:
/// Pilkey, Peterson's Stress Concentration Factors (coefficients as quoted elsewhere). Example: 40 mm to 30 mm with
/// radius 3 mm: 1.389 in torsion, 1.702 in bending.
inline Validated<double> shoulder_concentration(Length larger_diameter, Length smaller_diameter, Length fillet_radius,
                                                NotchLoad load) {
  constexpr const char* function = "shoulder_concentration";
  check::positive(larger_diameter.value(), {function, "larger_diameter", "m"});
  check::between(smaller_diameter.value(), 0.0, larger_diameter.value(), {function, "smaller_diameter", "m"});
  check::positive(fillet_radius.value(), {function, "fillet_radius", "m"});
  const Length height = 0.5 * (larger_diameter - smaller_diameter);
  const double sharpness = height / fillet_radius;
  const double low = load == NotchLoad::torsion ? 0.25 : 0.1;
  const double high = load == NotchLoad::torsion ? 4.0 : 20.0;
  const double held = sharpness < low ? low : sharpness > high ? high : sharpness;
  const auto& coefficients = load == NotchLoad::torsion ? detail::shoulder_torsion
                             : held <= 2.0              ? detail::shoulder_blunt_bending
                                                        : detail::shoulder_sharp_bending;
  const double k = text::shoulder_cubic(coefficients, held, static_cast<double>(2.0 * height / larger_diameter));
  return {k, held == sharpness ? nullptr : "the step over the fillet radius lies outside the range of the formula"};
}

/// Stress concentration at the root of a splined shaft in torsion, on the nominal stress of the root diameter.
///
/// K = 6.083 - 14.775 (10 r/d) + 18.25 (10 r/d)^2
///   root_radius    r  of the fillet between tooth and root [m], above 0
///   root_diameter  d  [m], above 0
/// Read from tests on eight involute teeth, 0.01 <= r/d <= 0.04; outside: the nearest end is used and said so. Straight
/// teeth and other counts are not covered by any source found. Source: Peterson (from memory).
/// Example: r/d = 0.02: 3.858.
inline Validated<double> spline_root_concentration(Length root_radius, Length root_diameter) {
  constexpr const char* function = "spline_root_concentration";
  check::positive(root_radius.value(), {function, "root_radius", "m"});
  check::positive(root_diameter.value(), {function, "root_diameter", "m"});
  const double ratio = root_radius / root_diameter;
  const double x = 10.0 * (ratio < 0.01 ? 0.01 : ratio > 0.04 ? 0.04 : ratio);
  const bool valid = ratio >= 0.01 && ratio <= 0.04;
  return {6.083 - 14.775 * x + 18.25 * x * x, valid ? nullptr : "the root radius lies outside 0.01 to 0.04 diameters"};
}

/// The usual figure where the root radius of a spline is not known: the best of Yoshitake's tests. A sharper root is
/// worse.
inline constexpr Sourced<double> usual_spline_concentration{2.8, spline_root_source};

/// Stress concentration at an inner (re-entrant) corner of a thin profile in torsion.
///
/// K = 1.74 (t/r)^(1/3)
///   wall           t  [m], above 0
///   corner_radius  r  inside [m], above 0
/// For corners sharper than the wall is thick; outside (r > t): said to be so. A sharp corner (r towards 0) has no
/// bound in elastic theory; a ductile tube yields there under its first loads and carries on, but cracks start there.
/// Source: Timoshenko & Goodier, section 112 (from memory). Example: t = 4 mm, r = 2 mm: 2.192.
inline Validated<double> corner_concentration(Length wall, Length corner_radius) {
  constexpr const char* function = "corner_concentration";
  check::positive(wall.value(), {function, "wall", "m"});
  check::positive(corner_radius.value(), {function, "corner_radius", "m"});
  const double k = 1.74 * math::cbrt(static_cast<double>(wall / corner_radius));
  return {k < 1.0 ? 1.0 : k, corner_radius <= wall ? nullptr : "the corner radius is above the wall thickness"};
}

} // namespace v0
} // namespace fieldshaft
