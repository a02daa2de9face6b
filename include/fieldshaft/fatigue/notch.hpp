#pragma once
// What a notch does in fatigue: less than its stress concentration says, and the less so the sharper it is.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The load that a notch sees.
enum class NotchLoad { bending, torsion };

namespace text {
/// Square root of Neuber's constant, in square roots of an inch, from the tensile strength in ksi.
template <class R> constexpr R neuber_root(R ksi, NotchLoad load) noexcept {
  return load == NotchLoad::bending ? 0.246 + ksi * (-3.08e-3 + ksi * (1.51e-5 - ksi * 2.67e-8))
                                    : 0.190 + ksi * (-2.51e-3 + ksi * (1.35e-5 - ksi * 2.67e-8));
}
template <class R> auto notch_sensitivity(R neuber_root, R radius_inch) noexcept {
  const auto root = math::sqrt(radius_inch);
  return root / (root + neuber_root);
}
template <class R> constexpr R notch_factor(R concentration, R sensitivity) noexcept {
  return 1.0 + sensitivity * (concentration - 1.0);
}
} // namespace text

/// Notch sensitivity of steel [-]: 0 a notch does no harm in fatigue, 1 all that its stress concentration says.
///
/// q = 1 / (1 + sqrt(a) / sqrt(r)), with r in inches and, S being the tensile strength in ksi,
/// sqrt(a) = 0.246 - 3.08e-3 S + 1.51e-5 S^2 - 2.67e-8 S^3 in bending (and axial load),
/// sqrt(a) = 0.190 - 2.51e-3 S + 1.35e-5 S^2 - 2.67e-8 S^3 in torsion
///   ultimate     tensile strength [Pa], above 0
///   root_radius  r  of the notch [m], above 0
///   load         bending or torsion
/// Valid from 50 to 250 ksi in bending, to 220 ksi in torsion (345 to 1724 and 1517 MPa; bounds from memory). Outside,
/// 1 is given, which is on the safe side, and said to be outside.
/// Source: Shigley, Eqs. 6-33 to 6-35 (polynomials published in a calculation sheet to ex. 6-6).
/// Example: 630 MPa, 1 mm: 0.739 in bending, 0.789 in torsion.
inline Validated<double> notch_sensitivity(Stress ultimate, Length root_radius, NotchLoad load) {
  check::positive(ultimate.value(), {"notch_sensitivity", "ultimate", "Pa"});
  check::positive(root_radius.value(), {"notch_sensitivity", "root_radius", "m"});
  const double strength = in(ultimate, unit::ksi);
  const double highest = load == NotchLoad::bending ? 250.0 : 220.0;
  if (strength < 50.0) return {1.0, "the notch sensitivity is stated from 50 ksi (345 MPa)"};
  if (strength > highest) return {1.0, "the notch sensitivity is stated up to 250 ksi in bending, 220 ksi in torsion"};
  return {text::notch_sensitivity(text::neuber_root(strength, load), in(root_radius, unit::inch))};
}

/// By how much a notch raises the stress in fatigue [-].
///
/// K_f = 1 + q (K_t - 1)
///   concentration  K_t  stress concentration of the shape, at least 1
///   sensitivity    q    from 0 to 1; 1 where it is not known, which is on the safe side
/// Source: Shigley, Eq. 6-32. Example: K_t 2.7, q 0.739: 2.256.
constexpr double notch_factor(double concentration, double sensitivity = 1.0) {
  check::at_least(concentration, 1.0, {"notch_factor", "concentration", ""});
  check::within(sensitivity, 0.0, 1.0, {"notch_factor", "sensitivity", ""});
  return text::notch_factor(concentration, sensitivity);
}

} // namespace v0
} // namespace fieldshaft
