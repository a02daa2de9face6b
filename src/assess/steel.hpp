#pragma once
// The strengths of a steel that a case names or states.

#include "assess/context.hpp"

#include <fieldshaft/materials.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

struct ResolvedSteel {
  Stated<Stress> yield;
  Stated<Stress> ultimate;
  Stated<double> hardness;
  const char* outside = nullptr; ///< why the strengths may not hold for the section, if so
  bool section_stated = true;    ///< the source says for which section its strengths hold
  Source source{"strengths as the case states them", Standing::given};
  std::vector<std::string> missing;
};

/// The steel for a section of this diameter.
ResolvedSteel resolve_steel(const SteelChoice& steel, Length diameter, const char* path);

/// A pass on a strength that may not hold for the section is not known.
void doubt_strength(Finding& finding, const ResolvedSteel& steel);

/// Both schools of the yield strength in shear, each divided by the wanted margin: strictest is the maximum-shear
/// theory, loosest the distortion-energy theory.
LimitBand shear_yield_band(const ResolvedSteel& steel, double margin);

/// Wanted yield torque over peak torque: the case's, else the default.
double yield_margin(const Case& value);
Source yield_margin_source(const Case& value);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
