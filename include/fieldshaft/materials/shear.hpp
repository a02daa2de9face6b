#pragma once
// Shear strength from tensile strength by a stated ratio. The schools differ by a third, so the ratio is an input.

#include <fieldshaft/materials/material.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The ratios of shear strength to tensile strength that texts state for steel.
enum class ShearRatio {
  maximum_shear,     ///< 0.5, yield
  distortion_energy, ///< 1/sqrt 3 = 0.577, yield
  tabulated,         ///< 0.6, ultimate (a rough-guide table)
  two_thirds,        ///< 0.67, ultimate
  torsion_test,      ///< 0.8, ultimate
};

/// A ratio as a number with its source.
constexpr Sourced<double> shear_ratio(ShearRatio ratio) noexcept {
  switch (ratio) {
  case ShearRatio::maximum_shear:
    return {0.5, {"maximum-shear theory, S_sy = 0.5 S_y (used by Wentzell, ch. 5)", Standing::textbook}};
  case ShearRatio::distortion_energy:
    return {0.57735026918962576,
            {"distortion-energy theory, S_sy = S_y / sqrt 3 (Shigley, Eq. 5-21; printed 0.577)", Standing::textbook}};
  case ShearRatio::tabulated: return {0.6, {"rough-guide table, steel 0.6 S_u", Standing::common_practice}};
  case ShearRatio::two_thirds: return {0.67, {"S_su = 0.67 S_ut (Shigley, Eq. 6-54)", Standing::from_memory}};
  case ShearRatio::torsion_test:
    return {0.8, {"S_su = 0.8 S_u for steel (Juvinall and Marshek; Norton)", Standing::from_memory}};
  }
  return {0.5, {"maximum-shear theory", Standing::textbook}};
}

namespace text {
template <class S, class R> constexpr auto shear_strength(S strength, R ratio) noexcept { return strength * ratio; }
} // namespace text

/// Yield strength in shear [Pa].
///
/// S_sy = r S_y
///   yield  S_y  tensile yield strength [Pa], above 0
///   ratio  r    above 0, at most 1; by default 1/sqrt 3, the distortion-energy theory
/// The default is the one tests on ductile steel bear out; the maximum-shear theory (0.5) is 13 % lower, for whoever
/// wants the lowest of the schools. Ductile steel only. Source: Shigley, Eq. 5-21.
/// Example: 530 MPa (1045 cold drawn) give 306.0 MPa.
constexpr Stress shear_yield(Stress yield, double ratio) {
  check::positive(yield.value(), {"shear_yield", "yield", "Pa"});
  check::positive(ratio, {"shear_yield", "ratio", ""});
  check::within(ratio, 0.0, 1.0, {"shear_yield", "ratio", ""});
  return text::shear_strength(yield, ratio);
}
constexpr Stress shear_yield(Stress yield, ShearRatio ratio = ShearRatio::distortion_energy) {
  return shear_yield(yield, shear_ratio(ratio).value);
}
constexpr Stress shear_yield(const Material& material, ShearRatio ratio = ShearRatio::distortion_energy) {
  return shear_yield(material.yield, ratio);
}

/// Ultimate strength in shear [Pa].
///
/// S_su = r S_u
///   ultimate  S_u  tensile strength [Pa], above 0
///   ratio     r    above 0, at most 1; by default 0.67
/// The default is the lower of the two ratios that textbooks print (0.67 and 0.8) and suits a part that must hold.
/// A part that must break (a shear bolt) breaks only at the other end: judge it also with 0.8 and with the upper
/// strength of its grade, or a driveline ends as the fuse. Steel only. Source: Shigley, Eq. 6-54.
/// Example: 630 MPa (1045 cold drawn) give 422.1 MPa.
constexpr Stress shear_ultimate(Stress ultimate, double ratio) {
  check::positive(ultimate.value(), {"shear_ultimate", "ultimate", "Pa"});
  check::positive(ratio, {"shear_ultimate", "ratio", ""});
  check::within(ratio, 0.0, 1.0, {"shear_ultimate", "ratio", ""});
  return text::shear_strength(ultimate, ratio);
}
constexpr Stress shear_ultimate(Stress ultimate, ShearRatio ratio = ShearRatio::two_thirds) {
  return shear_ultimate(ultimate, shear_ratio(ratio).value);
}
constexpr Stress shear_ultimate(const Material& material, ShearRatio ratio = ShearRatio::two_thirds) {
  return shear_ultimate(material.ultimate, ratio);
}

} // namespace v0
} // namespace fieldshaft
