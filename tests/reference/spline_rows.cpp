#include <fieldshaft/spline.hpp>

#include "rows.hpp"

#include <algorithm>

using namespace fieldshaft;
using rows::Json;
using rows::Row;

namespace {

/// A name of a row as one of the values of an enum, which are listed in their order.
template <class E> E named(const Json& name, const std::vector<std::string>& names) {
  const auto at = std::find(names.begin(), names.end(), name.get<std::string>());
  REQUIRE_MESSAGE(at != names.end(), "unknown name " << name);
  return static_cast<E>(at - names.begin());
}
SplineFit fit(const Json& name) {
  return named<SplineFit>(name, {"a_permanent", "b_slides_unloaded", "c_slides_loaded"});
}
SplineRoot root(const Json& name) { return named<SplineRoot>(name, {"usual", "flat", "fillet"}); }
SplineSeat seat(const Json& name) {
  return named<SplineSeat>(name, {"fixed", "sliding_unloaded", "flexible", "sliding_under_load"});
}

Length length_of(const Json& object, const char* name) { return rows::read<Length>(object.at(name)); }

StraightSpline sae(const Json& g) {
  return sae_spline(g.at("count"), fit(g.at("fit")), length_of(g, "major_diameter"), length_of(g, "length"));
}

Spline spline(const Row& row) {
  const Json& given = row.given("spline");
  if (given.contains("sae_spline")) return sae(given.at("sae_spline"));
  if (given.contains("straight")) {
    const Json& g = given.at("straight");
    return StraightSpline(g.at("count"), length_of(g, "major_diameter"), length_of(g, "minor_diameter"),
                          length_of(g, "tooth_width"), length_of(g, "length"));
  }
  const Json& g = given.at("involute");
  return InvoluteSpline(g.at("teeth"), length_of(g, "module"), rows::read<Angle>(g.at("pressure_angle")),
                        length_of(g, "length"), root(g.at("root")));
}

SplineFactors factors(const Row& row) {
  const Json& g = row.given("factors");
  return {g.at("application"), g.at("load_distribution"), g.at("fatigue_life"), g.at("wear")};
}

SplineLimits limits(const Row& row) {
  const Json& g = row.given("limits");
  return {rows::read<Stress>(g.at("root_torsion")), rows::read<Stress>(g.at("tooth_shear")),
          rows::read<Stress>(g.at("flank_pressure"))};
}

void expect_geometry(const Row& row, const InvoluteGeometry& g) {
  row.expect("pitch_diameter", g.pitch_diameter);
  row.expect("base_diameter", g.base_diameter);
  row.expect("circular_pitch", g.circular_pitch);
  row.expect("tooth_thickness", g.tooth_thickness);
  row.expect("shaft_major", g.shaft_major);
  row.expect("shaft_minor", g.shaft_minor);
  row.expect("hub_major", g.hub_major);
  row.expect("hub_minor", g.hub_minor);
}

void expect_sae(const Row& row) {
  const StraightSpline result = sae_spline(row.given("count"), fit(row.given("fit")), row.get<Length>("major_diameter"),
                                           row.get<Length>("length"));
  row.expect("minor_diameter", result.minor_diameter());
  row.expect("tooth_width", result.tooth_width());
}

void expect_stress(const Row& row) {
  const SplineStress result =
      spline_stress(spline(row), row.get<Torque>("torque"), factors(row), seat(row.given("seat")));
  row.expect("root_torsion", result.root_torsion);
  row.expect("tooth_shear", result.tooth_shear);
  row.expect("flank_pressure", result.flank_pressure);
}

void expect_capacity(const Row& row) {
  const SplineCapacity result = spline_torque_capacity(spline(row), limits(row));
  row.expect("flank_pressure", result.flank_pressure);
  row.expect("torque", result.torque);
}

void expect_sleeve(const Row& row) {
  const SleeveStress result =
      sleeve_stress(spline(row), row.get<Torque>("torque"), row.get<Length>("outer_diameter"),
                    row.get<AngularSpeed>("speed"), factors(row), row.get<double>("tooth_form"));
  row.expect("wall", result.wall);
  row.expect("radial", result.radial);
  row.expect("centrifugal", result.centrifugal);
  row.expect("tooth_bend", result.tooth_bend);
  row.expect("tensile", result.tensile);
}

void expect_allowables(const Row& row) {
  const auto steel = named<SplineSteel>(row.given("steel"),
                                        {"brinell_160_200", "brinell_230_260", "brinell_302_351",
                                         "surface_hardened_c48_53", "case_hardened_c58_63", "through_hardened_c42_46"});
  const SplineAllowables result = spline_allowables(steel);
  row.expect("shear", result.shear.value);
  row.expect("tensile", result.tensile.value);
  if (result.flank_straight.known()) row.expect("flank_straight", result.flank_straight.value());
  if (result.flank_crowned.known()) row.expect("flank_crowned", result.flank_crowned.value());
}

double application(const Row& row) {
  const auto drive = named<DriveShock>(row.given("drive"), {"uniform", "light", "medium"});
  return application_factor(drive, named<LoadShock>(row.given("load"), {"uniform", "light", "intermittent", "heavy"}))
      .value;
}

const std::map<std::string, rows::Runner> stress_runners = {
    {"spline_stress", expect_stress},
    {"spline_torque_capacity", expect_capacity},
    {"sleeve_stress", expect_sleeve},
    {"spline_allowables", expect_allowables},
    {"spline_length_for_torque",
     [](const Row& row) {
       row.expect("value", spline_length_for_torque(spline(row), row.get<Torque>("torque"), limits(row)).value);
     }},
    {"slide_force",
     [](const Row& row) {
       row.expect("value", slide_force(row.get<Torque>("torque"), row.get<Length>("bearing_diameter"),
                                       row.get<double>("friction")));
     }},
    {"application_factor", [](const Row& row) { row.expect("value", application(row)); }},
    {"load_distribution_factor",
     [](const Row& row) {
       row.expect("value",
                  load_distribution_factor(row.get<double>("misalignment"), row.get<Length>("face_width")).value);
     }},
    {"fatigue_life_factor",
     [](const Row& row) {
       const auto cycle = named<TorqueCycle>(row.given("cycle"), {"unidirectional", "reversed"});
       row.expect("value", fatigue_life_factor(row.get<double>("cycles"), cycle).value);
     }},
    {"wear_life_factor", [](const Row& row) { row.expect("value", wear_life_factor(row.get<double>("turns")).value); }},
};

const std::map<std::string, rows::Runner> geometry_runners = {
    {"sae_spline", expect_sae},
    {"ansi_b92_1_geometry",
     [](const Row& row) {
       expect_geometry(row, ansi_b92_1_geometry(row.given("teeth"), row.get<Length>("module"),
                                                row.get<Angle>("pressure_angle"), root(row.given("root"))));
     }},
    {"iso_4156_geometry",
     [](const Row& row) {
       expect_geometry(row, iso_4156_geometry(row.given("teeth"), row.get<Length>("module"),
                                              row.get<Angle>("pressure_angle"), root(row.given("root"))));
     }},
    {"din_5480_geometry",
     [](const Row& row) {
       expect_geometry(row, din_5480_geometry(row.get<Length>("reference_diameter"), row.get<Length>("module"),
                                              row.given("teeth")));
     }},
    {"din_5480_shift",
     [](const Row& row) {
       row.expect("value",
                  din_5480_shift(row.get<Length>("reference_diameter"), row.get<Length>("module"), row.given("teeth")));
     }},
};

} // namespace

TEST_CASE("reference rows of spline") {
  std::map<std::string, rows::Runner> runners = stress_runners;
  runners.insert(geometry_runners.begin(), geometry_runners.end());
  rows::run("spline", runners);
}
