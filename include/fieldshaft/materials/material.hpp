#pragma once
// A steel in one condition, made by a user or taken from the catalogue, and whether its figures hold for a section.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/datum.hpp>
#include <fieldshaft/core/source.hpp>
#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

/// Elastic constants and density of every carbon and low-alloy steel of the catalogue. Heat treatment does not
/// change them. G = E / (2 (1 + nu)) would give 79.6 GPa: the printed figures agree within 0.4 %.
namespace steel {
inline constexpr Source elastic_source{"textbook table of elastic constants, carbon steel: 207 GPa, 79.3 GPa; "
                                       "Poisson's ratio 0.292, rounded to 0.3",
                                       Standing::from_memory};
inline constexpr Sourced<Stress> youngs_modulus{gigapascals(207.0), elastic_source};
inline constexpr Sourced<Stress> shear_modulus{gigapascals(79.3), elastic_source};
inline constexpr Sourced<double> poisson_ratio{0.3, elastic_source};
inline constexpr Sourced<Density> density{kilograms_per_cubic_metre(7850.0),
                                          {"usual figure for steel", Standing::from_memory}};
} // namespace steel

/// A steel in one condition. `name` and `condition` must live as long as the material (literals do).
struct Material {
  const char* name = "";
  const char* condition = "";
  Stress ultimate{};                  ///< tensile strength
  Stress yield{};                     ///< tensile yield strength
  Length section_min{};               ///< smallest diameter the figures were stated for; zero: not stated
  Length section_max{};               ///< largest diameter the figures were stated for; zero: not stated
  Source source{"", Standing::given}; ///< of the two strengths
  Datum<double> hardness_brinell{};
  Stress youngs_modulus = steel::youngs_modulus.value;
  Stress shear_modulus = steel::shear_modulus.value;
  Density density = steel::density.value;
  double poisson_ratio = steel::poisson_ratio.value;
  Source elastic_source = steel::elastic_source; ///< of the moduli and Poisson's ratio
};

/// Raises InputError unless every figure of the material is possible.
///
///   ultimate, yield  above 0, ultimate at least yield
///   section_min, section_max  at least 0, in order where both are stated
///   hardness_brinell, moduli, density  above 0
///   poisson_ratio  from 0 to 0.5, upper end excluded
constexpr void check_material(const Material& material) {
  constexpr const char* function = "check_material";
  if (material.name == nullptr || *material.name == '\0') fail_input(function, "name", "nothing", "a name");
  if (material.condition == nullptr) fail_input(function, "condition", "nothing", "a text, which may be empty");
  if (material.source.text == nullptr) fail_input(function, "source", "nothing", "a text");
  check::positive(material.yield.value(), {function, "yield", "Pa"});
  check::at_least(material.ultimate.value(), material.yield.value(), {function, "ultimate", "Pa"});
  check::not_negative(material.section_min.value(), {function, "section_min", "m"});
  check::not_negative(material.section_max.value(), {function, "section_max", "m"});
  if (material.section_max.value() > 0.0) {
    check::within(material.section_min.value(), 0.0, material.section_max.value(), {function, "section_min", "m"});
  }
  if (material.hardness_brinell.known()) {
    check::positive(material.hardness_brinell.value(), {function, "hardness_brinell", ""});
  }
  check::positive(material.youngs_modulus.value(), {function, "youngs_modulus", "Pa"});
  check::positive(material.shear_modulus.value(), {function, "shear_modulus", "Pa"});
  check::positive(material.density.value(), {function, "density", "kg/m³"});
  check::from_below(material.poisson_ratio, 0.0, 0.5, {function, "poisson_ratio", ""});
}

/// A steel whose strengths the user states (a mill certificate, a test, a drawing). They hold for the user's part.
/// The other members take the usual figures of steel; set them afterwards and call check_material where they differ.
constexpr Material make_material(const char* name, const char* condition, Stress ultimate, Stress yield,
                                 Source source = {"given by the user", Standing::given}) {
  Material material;
  material.name = name;
  material.condition = condition;
  material.ultimate = ultimate;
  material.yield = yield;
  material.source = source;
  check_material(material);
  return material;
}

/// The two strengths of a material, for a part of a stated size.
struct Strength {
  Stress ultimate;
  Stress yield;
};

/// The strengths of a material for a round part of a diameter [Pa], and whether they hold there.
///
/// Rolled, drawn or quenched steel is weaker in a thicker section: 4340 normalized is stated with a yield strength of
/// 862 MPa at 25 mm but 710 MPa at 100 mm. The figures are therefore taken as valid up to the largest section they
/// were stated for (below the smallest one they are on the safe side for a part that must hold), and as unproven above
/// it or where the source states no section. Nothing is interpolated. Strengths that a user gives without a section
/// are taken as those of the user's own part.
///   diameter  of the part [m], above 0
/// Example: 1045 cold drawn at 30 mm: 530 MPa yield, valid; at 34.925 mm the same figure, outside (stated to 32 mm).
constexpr Validated<Strength> strength_at_section(const Material& material, Length diameter) {
  check::positive(diameter.value(), {"strength_at_section", "diameter", "m"});
  const Strength strength{material.ultimate, material.yield};
  if (material.section_max.value() <= 0.0) {
    if (material.source.standing == Standing::given) return {strength};
    return {strength, "the source of the strength states no section size"};
  }
  if (diameter > material.section_max) {
    return {strength, "the section is larger than the one the strength was stated for; a larger section is weaker"};
  }
  return {strength};
}

} // namespace v0
} // namespace fieldshaft
