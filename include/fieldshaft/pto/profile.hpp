#pragma once
// The spline profiles of PTO shafts as data: sizes with their limits and sources. Stresses are the spline module's.

#include <fieldshaft/core/datum.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

enum class SplineForm { straight, involute };

/// A size and the limits between which the real part lies.
struct LengthLimits {
  Length nominal;
  Length smallest;
  Length largest;
};

/// A lowest and a highest value.
struct LengthRange {
  Length low;
  Length high;
};

/// A size in mm with its deviations.
constexpr LengthLimits limits_mm(double nominal, double lower, double upper) noexcept {
  return {millimetres(nominal), millimetres(nominal + lower), millimetres(nominal + upper)};
}

/// A six-tooth straight-sided profile as one source states it.
struct StraightProfile {
  LengthLimits major_diameter;
  LengthLimits minor_diameter;
  LengthLimits tooth_width;
};

/// The profile by the general rule for six teeth that slide without load (fit B): tooth width 0.250 D, minor diameter
/// 0.850 D. The rule states largest sizes; its tolerances are not known here, so that all three limits are equal.
constexpr Datum<StraightProfile> straight_profile_by_rule(Length diameter) noexcept {
  const Length minor = 0.850 * diameter;
  const Length width = 0.250 * diameter;
  return {{{diameter, diameter, diameter}, {minor, minor, minor}, {width, width, width}},
          {"SAE rule for six straight teeth, fit B (textbook, Table 11-4)", Standing::published}};
}

/// An involute profile. Module and pressure angle are data; the rest follows from them by the formulas of ANSI B92.1.
struct InvoluteProfile {
  int teeth;
  Length module;
  Angle pressure_angle;
  Length pitch_diameter;
  Length major_diameter;
  Length minor_diameter_flat;   ///< flat root
  Length minor_diameter_fillet; ///< fillet root
  Length tooth_thickness;       ///< at the pitch diameter
  Source derived;               ///< of the lengths above; the datum's source is that of module and angle
};

/// The profile that belongs to a tooth count and module at 30°: pitch diameter m Z, major m (Z + 1), minor m (Z - 1.35)
/// in the inch system and m (Z - 1.5) in the metric one, fillet root m (Z - f), tooth thickness pi m / 2.
constexpr Datum<InvoluteProfile> involute_profile(int teeth, Length module, double flat_depth, double fillet_depth,
                                                  Source source, Source derived) noexcept {
  const double z = teeth;
  return {{teeth, module, degrees(30.0), module * z, module * (z + 1.0), module * (z - flat_depth),
           module * (z - fillet_depth), module * (pi / 2.0), derived},
          source};
}

} // namespace v0
} // namespace fieldshaft
