#pragma once
// Straight-sided splines: any count by its sizes, and the fits of the SAE rule for 4, 6, 10 and 16 teeth.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/spline/spline.hpp>

#include <string>

namespace fieldshaft {
inline namespace v0 {

/// A straight-sided spline: parallel flanks, touching over the whole height of the teeth.
class StraightSpline : public Spline {
public:
  ///   count           of teeth, at least 3
  ///   major_diameter  D  over the teeth [m], above 0
  ///   minor_diameter  d  between the teeth [m], above 0, below D
  ///   tooth_width     W  [m], above 0; below d sin(pi/count), where the flanks of neighbours meet at the bottom
  ///   length          L  over which hub and shaft touch [m], above 0
  /// The teeth carry at the mean diameter (D + d)/2 over the height (D - d)/2. Their flanks are parallel, so that at
  /// that diameter they stand at asin(W / mean diameter) to the radius and spread the hub.
  StraightSpline(int count, Length major_diameter, Length minor_diameter, Length tooth_width, Length length)
      : Spline(sizes_of(count, major_diameter, minor_diameter, tooth_width, length), "StraightSpline") {}

  constexpr Length minor_diameter() const noexcept { return root_diameter(); }
  constexpr Length tooth_width() const noexcept { return tooth_thickness(); }

private:
  static SplineSizes sizes_of(int count, Length major, Length minor, Length width, Length length) {
    constexpr const char* maker = "StraightSpline";
    check::at_least(count, 3.0, {maker, "count", ""});
    check::positive(major.value(), {maker, "major_diameter", "m"});
    check::between(minor.value(), 0.0, major.value(), {maker, "minor_diameter", "m"});
    check::between(width.value(), 0.0, minor.value() * math::sin(pi / count), {maker, "tooth_width", "m"});
    check::positive(length.value(), {maker, "length", "m"});
    const Length mean = 0.5 * (major + minor);
    return {count,  major, minor,
            mean,   width, 0.5 * (major - minor),
            length, major, angle_from_ratio(std::asin(static_cast<double>(width / mean)))};
  }
};

/// The fits of the SAE rule for straight-sided splines.
enum class SplineFit {
  a_permanent,       ///< fit A: the hub stays in its place
  b_slides_unloaded, ///< fit B: the hub slides while no torque is on it
  c_slides_loaded,   ///< fit C: the hub slides under torque; not made with 4 teeth
};

/// Sizes over the major diameter of a straight-sided spline by the SAE rule.
struct SplineFractions {
  double height; ///< h/D of a tooth
  double minor;  ///< d/D
  double width;  ///< W/D of a tooth
};

/// The fractions are largest sizes; the tolerances of the rule are not known here. Those of 6 teeth were read in a
/// textbook (Table 11-4), the others are remembered.
inline constexpr Source sae_six_tooth_source{"SAE straight splines, textbook Table 11-4", Standing::published};
inline constexpr Source sae_fraction_source{"SAE J499 as in Machinery's Handbook, SAE Standard Splines",
                                            Standing::from_memory};

/// The fractions of the SAE rule for 4, 6, 10 or 16 teeth and a fit, with their source.
///
/// 6 teeth: W 0.250 D; fit A h 0.050 D, d 0.900 D; fit B 0.075, 0.850; fit C 0.100, 0.800.
/// Any other count, or fit C with 4 teeth, raises InputError: the rule has none.
/// Source: textbook Table 11-4 (6 teeth, published); SAE J499 (the others, from memory).
constexpr Sourced<SplineFractions> sae_fractions(int count, SplineFit fit) {
  constexpr const char* function = "sae_fractions";
  const int f = static_cast<int>(fit);
  if (f < 0 || f > 2) fail_input(function, "fit", std::to_string(f), "a_permanent, b_slides_unloaded, c_slides_loaded");
  // Heights of fits A, B, C; a zero is a fit that the rule does not have. The minor diameter is what they leave.
  struct Row {
    int count;
    double heights[3];
    double width;
  };
  constexpr Row rows[] = {{4, {0.075, 0.125, 0.0}, 0.241},
                          {6, {0.050, 0.075, 0.100}, 0.250},
                          {10, {0.045, 0.070, 0.095}, 0.156},
                          {16, {0.045, 0.070, 0.095}, 0.098}};
  for (const Row& row : rows) {
    if (row.count != count) continue;
    const double height = row.heights[f];
    if (!(height > 0.0)) fail_input(function, "fit", "c_slides_loaded", "fits A and B for 4 teeth");
    return {{height, 1.0 - 2.0 * height, row.width}, count == 6 ? sae_six_tooth_source : sae_fraction_source};
  }
  fail_input(function, "count", std::to_string(count), "4, 6, 10 or 16");
}

/// A straight-sided spline by the SAE rule.
///
///   count           4, 6, 10 or 16
///   fit             A, B or C; C not with 4 teeth
///   major_diameter  D  [m], above 0
///   length          L  over which hub and shaft touch [m], above 0
/// Source as sae_fractions; SAE itself calls the rule obsolete for new designs (J499a, abstract), but it describes what
/// is in use. Example: 6 teeth, fit B, 1.375 in: d = 29.69 mm, W = 8.73 mm, h = 2.62 mm.
inline StraightSpline sae_spline(int count, SplineFit fit, Length major_diameter, Length length) {
  check::positive(major_diameter.value(), {"sae_spline", "major_diameter", "m"});
  const SplineFractions f = sae_fractions(count, fit).value;
  return {count, major_diameter, f.minor * major_diameter, f.width * major_diameter, length};
}

} // namespace v0
} // namespace fieldshaft
