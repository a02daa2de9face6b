#pragma once
// Involute splines by DIN 5480: one reference diameter for shaft and hub, and a profile shifted to fit it.

#include <fieldshaft/spline/involute.hpp>

namespace fieldshaft {
inline namespace v0 {

/// How the spaces of a DIN 5480 shaft are cut, which says how deep they go below the middle of the profile.
enum class SplineCutting {
  broached, ///< 0.55 m
  hobbed,   ///< 0.60 m
  shaped,   ///< 0.65 m
  rolled,   ///< 0.84 m, cold
};

namespace text {
template <class L> constexpr auto din_5480_shift(L reference_diameter, L module, double teeth) noexcept {
  return 0.5 * (reference_diameter - module * teeth - 1.1 * module);
}
} // namespace text

/// Profile shift of a DIN 5480 spline [m].
///
/// x m = (d_B - m z - 1.1 m)/2
///   reference_diameter  d_B  [m], above 0
///   module              m    [m], above 0
///   teeth               z    at least 3
/// The standard's own sizes have x from -0.05 to 0.45 (from memory). Source: DIN 5480 (from memory).
/// Example: 120 x 3 x 38: 1.35 mm.
constexpr Length din_5480_shift(Length reference_diameter, Length module, int teeth) {
  check::positive(reference_diameter.value(), {"din_5480_shift", "reference_diameter", "m"});
  check::positive(module.value(), {"din_5480_shift", "module", "m"});
  check::at_least(teeth, 3.0, {"din_5480_shift", "teeth", ""});
  return text::din_5480_shift(reference_diameter, module, teeth);
}

/// Sizes of an involute spline by DIN 5480, 30°.
///
/// d = m z; d_b = m z cos 30°; shaft d_B - 0.2 m over the teeth, d_B - 1.1 m - 2 h at the bottom, h by the way of
/// cutting; hub d_B - 2 m over its teeth, d_B at the bottom; tooth pi m/2 + 2 x m tan 30°; height of contact 0.9 m
///   reference_diameter, module, teeth  as for din_5480_shift
///   cutting                            of the shaft
/// A shift so large that the pitch circle leaves the teeth of the shaft raises InputError when the spline is made.
/// Source: DIN 5480 (from memory). Example: 120 x 3 x 38: d 114, d_b 98.727, 119.4 over the shaft's and 114 mm over the
/// hub's teeth, tooth 6.271 mm.
inline InvoluteGeometry din_5480_geometry(Length reference_diameter, Length module, int teeth,
                                          SplineCutting cutting = SplineCutting::hobbed) {
  constexpr double depths[] = {0.55, 0.60, 0.65, 0.84};
  const int way = static_cast<int>(cutting);
  check::within(way, 0.0, 3.0, {"din_5480_geometry", "cutting", ""});
  const Length shift = din_5480_shift(reference_diameter, module, teeth);
  const Angle pressure_angle = degrees(30.0);
  const Length pitch_diameter = module * static_cast<double>(teeth);
  return {teeth,
          module,
          pressure_angle,
          pitch_diameter,
          pitch_diameter * math::cos(pressure_angle),
          pi * module,
          0.5 * pi * module + 2.0 * shift * math::tan(pressure_angle),
          reference_diameter - 0.2 * module,
          reference_diameter - (1.1 + 2.0 * depths[way]) * module,
          reference_diameter,
          reference_diameter - 2.0 * module,
          0.9 * module};
}

} // namespace v0
} // namespace fieldshaft
