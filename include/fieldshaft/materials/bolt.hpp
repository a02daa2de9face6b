#pragma once
// Bolt grades with both ends of their strength: a bolt that must hold is judged by the lower, one that must break by
// the upper.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/source.hpp>
#include <fieldshaft/units.hpp>

#include <array>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {

/// A bolt grade in one range of sizes. The standards state a least tensile strength but bound the strength upwards by a
/// greatest hardness only; `ultimate_max` is the strength that belongs to that hardness.
struct BoltGrade {
  const char* standard;
  const char* name;
  Length size_above; ///< holds for sizes above this one ...
  Length size_max;   ///< ... up to and with this one
  Stress ultimate_nominal;
  Stress ultimate_min;
  Stress ultimate_max;
  Stress yield_min;
  Stress proof;
  const char* hardness_max; ///< as the standard prints it
  Source source;            ///< of the figures that the standard states
  Source ultimate_max_source;
};

namespace detail {
inline constexpr Source iso_bolt_source{"ISO 898-1", Standing::from_memory};
inline constexpr Source iso_bolt_upper{"greatest hardness of ISO 898-1, turned into strength by ISO 18265, Table A.1",
                                       Standing::from_memory};
inline constexpr Source sae_bolt_source{"SAE J429", Standing::from_memory};
inline constexpr Source sae_bolt_upper{"greatest core hardness of SAE J429, turned into strength by ASTM A370, "
                                       "Tables 2 and 3",
                                       Standing::from_memory};

/// Sizes in mm, strengths in MPa.
constexpr BoltGrade property_class(const char* name, double size_above, double size_max, double nominal, double minimum,
                                   double maximum, double yield, double proof, const char* hardness) {
  return {"ISO 898-1",
          name,
          millimetres(size_above),
          millimetres(size_max),
          megapascals(nominal),
          megapascals(minimum),
          megapascals(maximum),
          megapascals(yield),
          megapascals(proof),
          hardness,
          iso_bolt_source,
          iso_bolt_upper};
}

/// Sizes in inches, strengths in ksi; the standard knows no nominal strength apart from the least one.
constexpr BoltGrade inch_grade(const char* name, double size_above, double size_max, double minimum, double maximum,
                               double yield, double proof, const char* hardness) {
  return {"SAE J429",   name,       inches(size_above), inches(size_max), ksi(minimum),    ksi(minimum),
          ksi(maximum), ksi(yield), ksi(proof),         hardness,         sae_bolt_source, sae_bolt_upper};
}

inline constexpr std::array bolt_catalogue = {
    property_class("4.6", 0.0, 39.0, 400, 400, 705, 240, 225, "220 HV"),
    property_class("5.8", 0.0, 39.0, 500, 520, 705, 420, 380, "220 HV"),
    property_class("8.8", 0.0, 16.0, 800, 800, 1030, 640, 580, "320 HV"),
    property_class("8.8", 16.0, 39.0, 800, 830, 1080, 660, 600, "335 HV"),
    property_class("10.9", 0.0, 39.0, 1000, 1040, 1220, 940, 830, "380 HV"),
    property_class("12.9", 0.0, 39.0, 1200, 1220, 1405, 1100, 970, "435 HV"),
    inch_grade("grade 2", 0.0, 0.75, 74, 116, 57, 55, "HRB 100"),
    inch_grade("grade 2", 0.75, 1.5, 60, 116, 36, 33, "HRB 100"),
    inch_grade("grade 5", 0.0, 1.0, 120, 153, 92, 85, "HRC 34"),
    inch_grade("grade 5", 1.0, 1.5, 105, 138, 81, 74, "HRC 30"),
    inch_grade("grade 8", 0.0, 1.5, 150, 177, 130, 120, "HRC 39"),
};
} // namespace detail

/// Every bolt grade and size range, to go through.
constexpr const auto& bolt_grades() noexcept { return detail::bolt_catalogue; }

/// The grade of that name ("8.8", "grade 5") for a bolt of that nominal diameter [m, above 0]; null if the standard, as
/// far as known here, has no such grade at that size.
constexpr const BoltGrade* find_bolt_grade(std::string_view name, Length diameter) {
  check::positive(diameter.value(), {"find_bolt_grade", "diameter", "m"});
  for (const BoltGrade& grade : detail::bolt_catalogue) {
    if (name == grade.name && diameter > grade.size_above && diameter <= grade.size_max) return &grade;
  }
  return nullptr;
}

} // namespace v0
} // namespace fieldshaft
