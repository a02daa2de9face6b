#include <fieldshaft/power.hpp>
#include <fieldshaft/shaft.hpp>

#include "rows.hpp"

using namespace fieldshaft;
using rows::Row;

namespace {

RoundSection round_of(const rows::Json& given) {
  if (given.contains("solid")) return SolidSection(rows::read<Length>(given.at("solid")));
  const rows::Json& tube = given.at("tube");
  return TubeSection(rows::read<Length>(tube.at(0)), rows::read<Length>(tube.at(1)));
}
RoundSection round_section(const Row& row) { return round_of(row.given("section")); }

Section section_of(const rows::Json& given) {
  if (given.contains("RectangleSection")) {
    const rows::Json& g = given.at("RectangleSection");
    return RectangleSection(rows::read<Length>(g.at("width")), rows::read<Length>(g.at("height")));
  }
  if (given.contains("TriangleSection")) {
    return TriangleSection(rows::read<Length>(given.at("TriangleSection").at("side")));
  }
  return round_of(given);
}
Section section(const Row& row) { return section_of(row.given("section")); }

Torque torque(const Row& row) { return row.get<Torque>("torque"); }
Length length(const Row& row) { return row.get<Length>("length"); }
Stress shear_modulus(const Row& row) { return row.get<Stress>("shear_modulus"); }
Stress shear_yield(const Row& row) { return row.get<Stress>("shear_yield"); }
Stress youngs_modulus(const Row& row) { return row.get<Stress>("youngs_modulus"); }
Density density(const Row& row) { return row.get<Density>("density"); }
TwistRate rate(const Row& row) { return row.get<TwistRate>("twist_rate"); }

std::vector<SaggingWeight> weights(const Row& row) {
  std::vector<SaggingWeight> list;
  for (const rows::Json& entry : row.given("weights")) {
    list.push_back({rows::read<Force>(entry.at("weight")), rows::read<Length>(entry.at("sag"))});
  }
  return list;
}

std::vector<ShaftStep> steps(const Row& row) {
  std::vector<ShaftStep> list;
  for (const rows::Json& entry : row.given("steps")) {
    list.push_back({section_of(entry.at("section")), rows::read<Length>(entry.at("length")),
                    rows::read<Torque>(entry.at("torque")), rows::read<Stress>(entry.at("shear_yield")),
                    rows::read<Stress>(entry.at("shear_modulus"))});
  }
  return list;
}

std::vector<AngularSpeed> speeds(const Row& row) {
  std::vector<AngularSpeed> list;
  for (const rows::Json& entry : row.given("speeds")) list.push_back(rows::read<AngularSpeed>(entry));
  return list;
}

double shoulder(const Row& row) {
  const bool torsion = row.given("load") == "torsion";
  return shoulder_concentration(row.get<Length>("larger_diameter"), row.get<Length>("smaller_diameter"),
                                row.get<Length>("fillet_radius"), torsion ? NotchLoad::torsion : NotchLoad::bending)
      .value;
}

void expect_overload(const Row& row) {
  const Overload result = overload(round_section(row), torque(row), shear_yield(row), shear_modulus(row));
  row.expect("core_diameter", result.core_diameter);
  row.expect("twist_rate", result.twist_rate);
  row.expect("permanent_twist", result.permanent_twist);
  row.expect("residual_surface", result.residual_surface);
  row.expect("residual_core", result.residual_core);
}

void expect_impact(const Row& row) {
  const TorsionImpact result =
      torsion_impact(round_section(row), length(row), shear_modulus(row), row.get<Energy>("energy"));
  row.expect("torque", result.torque);
  row.expect("stress", result.stress);
  row.expect("twist", result.twist);
}

const std::map<std::string, rows::Runner> torsion_runners = {
    {"torsion_stress", [](const Row& row) { row.expect("value", torsion_stress(section(row), torque(row))); }},
    {"yield_torque", [](const Row& row) { row.expect("value", yield_torque(section(row), shear_yield(row))); }},
    {"plastic_torque", [](const Row& row) { row.expect("value", plastic_torque(section(row), shear_yield(row))); }},
    {"twist_rate",
     [](const Row& row) { row.expect("value", twist_rate(section(row), torque(row), shear_modulus(row))); }},
    {"twist",
     [](const Row& row) { row.expect("value", twist(section(row), torque(row), shear_modulus(row), length(row))); }},
    {"torque_for_twist",
     [](const Row& row) { row.expect("value", torque_for_twist(section(row), rate(row), shear_modulus(row))); }},
    {"torsion_stress_at",
     [](const Row& row) {
       row.expect("value", torsion_stress_at(round_section(row), torque(row), row.get<Length>("radius")));
     }},
    {"wall_stress",
     [](const Row& row) {
       row.expect("value", wall_stress(row.get<Area>("enclosed_area"), torque(row), row.get<Length>("wall")));
     }},
    {"partly_plastic_torque",
     [](const Row& row) {
       row.expect("value", partly_plastic_torque(round_section(row), rate(row), shear_yield(row), shear_modulus(row)));
     }},
    {"overload", expect_overload},
    {"torsion_impact", expect_impact},
};

const std::map<std::string, rows::Runner> other_runners = {
    {"diameter_for_torque",
     [](const Row& row) {
       row.expect("value", diameter_for_torque(torque(row), row.get<Stress>("shear_stress"),
                                               row.get_or<double>("bore_ratio", 0.0)));
     }},
    {"diameter_for_twist",
     [](const Row& row) {
       row.expect("value", diameter_for_twist(torque(row), rate(row), shear_modulus(row),
                                              row.get_or<double>("bore_ratio", 0.0)));
     }},
    {"impact_diameter",
     [](const Row& row) {
       row.expect("value", impact_diameter(row.get<Energy>("energy"), length(row), shear_modulus(row),
                                           row.get<Stress>("shear_stress")));
     }},
    {"shaft_power",
     [](const Row& row) { row.expect("value", shaft_power(torque(row), row.get<AngularSpeed>("speed"))); }},
    {"critical_speed",
     [](const Row& row) {
       row.expect("value", critical_speed(round_section(row), length(row), youngs_modulus(row), density(row)));
     }},
    {"critical_length",
     [](const Row& row) {
       row.expect("value", critical_length(round_section(row), row.get<AngularSpeed>("speed"), youngs_modulus(row),
                                           density(row)));
     }},
    {"lumped_critical_speed",
     [](const Row& row) {
       row.expect("value",
                  lumped_critical_speed(round_section(row), length(row), youngs_modulus(row), row.get<Mass>("mass")));
     }},
    {"rayleigh_critical_speed", [](const Row& row) { row.expect("value", rayleigh_critical_speed(weights(row))); }},
    {"dunkerley_critical_speed", [](const Row& row) { row.expect("value", dunkerley_critical_speed(speeds(row))); }},
    {"stepped_shaft", [](const Row& row) { row.expect("twist", stepped_shaft(steps(row)).twist); }},
    {"shoulder_concentration", [](const Row& row) { row.expect("value", shoulder(row)); }},
    {"sag_critical_speed",
     [](const Row& row) {
       row.expect("value", sag_critical_speed(row.get<Length>("load_sag"), row.get<Length>("shaft_sag")));
     }},
};

} // namespace

TEST_CASE("reference rows of shaft") {
  std::map<std::string, rows::Runner> runners = torsion_runners;
  runners.insert(other_runners.begin(), other_runners.end());
  rows::run("shaft", runners);
}
