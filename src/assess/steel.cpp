#include "assess/steel.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

ResolvedSteel resolve_steel(const SteelChoice& steel, Length diameter, const char* path) {
  ResolvedSteel resolved;
  resolved.hardness = steel.hardness;
  if (!steel.name) {
    resolved.yield = steel.yield;
    resolved.ultimate = steel.ultimate;
    resolved.missing = unstated({{steel.yield.has_value(), path}});
    return resolved;
  }
  const Material* material = find_material(*steel.name, steel.condition.value_or(""));
  if (material == nullptr) { // a case built in code may name what the catalogue lacks; a document cannot
    resolved.missing = {path};
    return resolved;
  }
  const Validated<Strength> strength = strength_at_section(*material, diameter);
  resolved.yield = strength.value.yield;
  resolved.ultimate = strength.value.ultimate;
  // Most tables state no section: that is said with the limit. A section beyond a stated one is a reason to doubt it.
  resolved.section_stated = material->section_max.value() > 0.0;
  if (resolved.section_stated) resolved.outside = strength.outside;
  if (!resolved.hardness && material->hardness_brinell.known()) resolved.hardness = material->hardness_brinell.value();
  resolved.source = material->source;
  return resolved;
}

void doubt_strength(Finding& finding, const ResolvedSteel& steel) {
  if (steel.outside == nullptr || finding.status >= Status::not_known) return;
  finding.status = Status::not_known;
  finding.reason = "strength.section_too_large";
  finding.advice.clear();
}

LimitBand shear_yield_band(const ResolvedSteel& steel, double margin) {
  const Sourced<double> strict = shear_ratio(ShearRatio::maximum_shear);
  const Sourced<double> loose = shear_ratio(ShearRatio::distortion_energy);
  LimitBand band{amount_of(shear_yield(*steel.yield, ShearRatio::maximum_shear) / margin),
                 amount_of(shear_yield(*steel.yield, ShearRatio::distortion_energy) / margin),
                 LimitSense::at_most,
                 {steel.source, strict.source, loose.source}};
  if (!steel.section_stated) {
    band.basis.push_back({"that table states no section size; a thicker bar is weaker, a certificate is better",
                          Standing::common_practice});
  }
  return band;
}

double yield_margin(const Case& value) { return value.limits.yield_margin.value_or(1.25); }

Source yield_margin_source(const Case& value) {
  if (value.limits.yield_margin) return {"yield margin as the case states it", Standing::given};
  return {"yield margin 1.25, a rule of thumb and the default of this library", Standing::common_practice};
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
