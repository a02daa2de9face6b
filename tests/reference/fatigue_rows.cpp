#include <fieldshaft/fatigue.hpp>

#include "rows.hpp"

#include <vector>

using namespace fieldshaft;

namespace {

using rows::Json;
using rows::read;
using rows::Row;

template <class Enum> Enum named(const Json& name, const std::map<std::string, Enum>& values) {
  return values.at(name.get<std::string>());
}

MeanStressRule rule_of(const Row& row) {
  return named<MeanStressRule>(row.given("rule"), {{"goodman", MeanStressRule::goodman},
                                                   {"gerber", MeanStressRule::gerber},
                                                   {"soderberg", MeanStressRule::soderberg},
                                                   {"asme_elliptic", MeanStressRule::asme_elliptic}});
}
TorsionSchool school_of(const Row& row) {
  return named<TorsionSchool>(row.given("school"), {{"mean_ignored", TorsionSchool::mean_ignored},
                                                    {"goodman_in_shear", TorsionSchool::goodman_in_shear}});
}
SurfaceFinish finish_of(const Row& row) {
  return named<SurfaceFinish>(row.given("finish"), {{"ground", SurfaceFinish::ground},
                                                    {"machined", SurfaceFinish::machined},
                                                    {"hot_rolled", SurfaceFinish::hot_rolled},
                                                    {"forged", SurfaceFinish::forged}});
}
NotchLoad notch_load_of(const Row& row) {
  return named<NotchLoad>(row.given("load"), {{"bending", NotchLoad::bending}, {"torsion", NotchLoad::torsion}});
}
SmallCycles small_cycles_of(const Row& row) {
  if (!row.has("small_cycles")) return SmallCycles::harmless;
  return named<SmallCycles>(row.given("small_cycles"), {{"harmless", SmallCycles::harmless},
                                                        {"reduced_line", SmallCycles::reduced_line},
                                                        {"same_line", SmallCycles::same_line}});
}

ShaftLoad load_of(const Row& row) {
  const Json& load = row.given("load");
  return {read<Torque>(load.at("bending_amplitude")), read<Torque>(load.at("bending_mean")),
          read<Torque>(load.at("torque_amplitude")), read<Torque>(load.at("torque_mean"))};
}
FatigueStrength strength_of(const Json& strength) {
  return {read<Stress>(strength.at("endurance")), read<Stress>(strength.at("ultimate")),
          read<Stress>(strength.at("yield"))};
}
NotchFactors notch_of(const Row& row) {
  if (!row.has("notch")) return {};
  return {read<double>(row.given("notch").at("bending")), read<double>(row.given("notch").at("torsion"))};
}
EnduranceFactors factors_of(const Row& row) {
  const Json& given = row.given("factors");
  return {given.value("surface", 1.0), given.value("size", 1.0), given.value("load", 1.0),
          given.value("temperature", 1.0), given.value("reliability", 1.0)};
}

/// The calls that make an S-N line.
SnLine<Stress> stress_line(const Json& given) {
  return sn_line(strength_of(given.at("strength")), read<double>(given.at("fraction")));
}
template <class Q> SnLine<Q> tested_line(const Json& given) {
  return sn_line_through(read<Q>(given.at("first")), read<double>(given.at("first_cycles")),
                         read<Q>(given.at("second")), read<double>(given.at("second_cycles")),
                         read<Q>(given.at("ultimate")), read<Q>(given.at("yield")));
}
template <class Q> SnLine<Q> line_of(const Row& row) {
  const Json& line = row.given("line");
  if constexpr (std::is_same_v<Q, Stress>) {
    if (line.contains("sn_line")) return stress_line(line.at("sn_line"));
  }
  return tested_line<Q>(line.at("sn_line_through"));
}

template <class Q> std::vector<Q> numbers(const Json& list) {
  std::vector<Q> values;
  for (const Json& value : list) values.push_back(read<Q>(value));
  return values;
}
template <class Q> Validated<double> damage_of(const Row& row) {
  std::vector<Cycle<Q>> cycles;
  for (const Json& c : row.given("cycles")) {
    cycles.push_back({read<Q>(c.at(0)), read<Q>(c.at(1)), read<double>(c.at(2))});
  }
  return miner_damage(cycles, line_of<Q>(row), rule_of(row), small_cycles_of(row));
}

/// Rows one by one ("range_0", "mean_0", "count_0", ...) and their number, or the counts by range ("range 3": 0.5) and
/// the number of different ranges.
void expect_cycles(const Row& row, const std::vector<Cycle<>>& cycles) {
  row.expect("rows", static_cast<double>(cycles.size()));
  std::map<double, double> by_range;
  for (std::size_t i = 0; i < cycles.size(); ++i) {
    const std::string n = std::to_string(i);
    row.expect("range_" + n, cycles[i].range);
    row.expect("mean_" + n, cycles[i].mean);
    row.expect("count_" + n, cycles[i].count);
    by_range[cycles[i].range] += cycles[i].count;
  }
  row.expect("ranges", static_cast<double>(by_range.size()));
  for (const auto& [range, count] : by_range) row.expect("range " + format_number(range, 0), count);
}

void expect_closed(const Row& row, const ClosedCycles<>& closed) {
  expect_cycles(row, closed.cycles);
  row.expect("open", static_cast<double>(closed.residue.size()));
  for (std::size_t i = 0; i < closed.residue.size(); ++i) {
    row.expect("residue_" + std::to_string(i), closed.residue[i]);
  }
}

} // namespace

TEST_CASE("reference rows of fatigue") {
  const std::map<std::string, rows::Runner> strength = {
      {"specimen_endurance",
       [](const Row& row) { row.expect("value", specimen_endurance(row.get<Stress>("ultimate"))); }},
      {"surface_factor",
       [](const Row& row) { row.expect("value", surface_factor(finish_of(row), row.get<Stress>("ultimate"))); }},
      {"size_factor", [](const Row& row) { row.expect("value", size_factor(row.get<Length>("diameter")).value); }},
      {"temperature_factor",
       [](const Row& row) {
         const auto celsius = row.get<TemperatureDifference>("above_zero_celsius");
         row.expect("value", temperature_factor(celsius).value);
       }},
      {"reliability_factor",
       [](const Row& row) { row.expect("value", reliability_factor(row.get<double>("reliability"))); }},
      {"endurance_limit",
       [](const Row& row) { row.expect("value", endurance_limit(row.get<Stress>("ultimate"), factors_of(row))); }},
      {"shear_endurance", [](const Row& row) { row.expect("value", shear_endurance(row.get<Stress>("endurance"))); }},
      {"notch_sensitivity",
       [](const Row& row) {
         row.expect(
             "value",
             notch_sensitivity(row.get<Stress>("ultimate"), row.get<Length>("root_radius"), notch_load_of(row)).value);
       }},
      {"notch_factor",
       [](const Row& row) {
         row.expect("value", notch_factor(row.get<double>("concentration"), row.get<double>("sensitivity")));
       }},
      {"strength_fraction",
       [](const Row& row) { row.expect("value", strength_fraction(row.get<Stress>("ultimate")).value); }},
  };
  const std::map<std::string, rows::Runner> shafts = {
      {"fatigue_diameter",
       [](const Row& row) {
         row.expect("value", fatigue_diameter(load_of(row), strength_of(row.given("strength")), rule_of(row),
                                              row.get<double>("safety_factor"), notch_of(row)));
       }},
      {"shaft_fatigue_safety_factor",
       [](const Row& row) {
         row.expect("value", shaft_fatigue_safety_factor(load_of(row), row.get<Length>("diameter"),
                                                         strength_of(row.given("strength")), rule_of(row)));
       }},
      {"shaft_stresses",
       [](const Row& row) {
         row.expect("amplitude", shaft_stresses(load_of(row), row.get<Length>("diameter")).amplitude);
       }},
      {"shaft_yield_safety_factor",
       [](const Row& row) {
         row.expect("value", shaft_yield_safety_factor(load_of(row), row.get<Length>("diameter"),
                                                       row.get<Stress>("yield"), notch_of(row)));
       }},
      {"torsion_fatigue_diameter",
       [](const Row& row) {
         row.expect("value",
                    torsion_fatigue_diameter(row.get<Torque>("torque_amplitude"), row.get<Torque>("torque_mean"),
                                             row.get<Stress>("shear_endurance"), row.get<Stress>("shear_ultimate"),
                                             school_of(row), row.get<double>("safety_factor")));
       }},
      {"torsion_fatigue_safety_factor",
       [](const Row& row) {
         row.expect("value",
                    torsion_fatigue_safety_factor(row.get<Torque>("torque_amplitude"), row.get<Torque>("torque_mean"),
                                                  row.get<Length>("diameter"), row.get<Stress>("shear_endurance"),
                                                  row.get<Stress>("shear_ultimate"), school_of(row)));
       }},
  };
  const std::map<std::string, rows::Runner> lives = {
      {"sn_line",
       [](const Row& row) {
         const SnLine<Stress> line = sn_line(strength_of(row.given("strength")), row.get<double>("fraction"));
         row.expect("coefficient", line.coefficient);
         row.expect("exponent", line.exponent);
       }},
      {"sn_line_through",
       [](const Row& row) {
         const SnLine<Stress> line =
             sn_line_through(row.get<Stress>("first"), row.get<double>("first_cycles"), row.get<Stress>("second"),
                             row.get<double>("second_cycles"), row.get<Stress>("ultimate"), row.get<Stress>("yield"));
         row.expect("exponent", line.exponent);
       }},
      {"cycles_to_failure",
       [](const Row& row) {
         row.expect("value", cycles_to_failure(row.get<Stress>("amplitude"), line_of<Stress>(row)).value);
       }},
      {"equivalent_reversed",
       [](const Row& row) {
         row.expect("value", equivalent_reversed(row.get<Stress>("amplitude"), row.get<Stress>("mean"),
                                                 line_of<Stress>(row), rule_of(row))
                                 .value);
       }},
      {"damaged_endurance",
       [](const Row& row) {
         CHECK(row.given("method") == "miner");
         row.expect("value", damaged_endurance(line_of<Stress>(row), row.get<Stress>("amplitude"),
                                               row.get<double>("used"), DamageMethod::miner)
                                 .value);
       }},
      {"finite_life_strength",
       [](const Row& row) {
         row.expect("value", finite_life_strength(row.get<Stress>("endurance"), row.get<double>("cycles")).value);
       }},
      {"miner_damage",
       [](const Row& row) {
         const bool plain = row.given("cycles").at(0).at(0).is_number();
         const Validated<double> damage = plain ? damage_of<double>(row) : damage_of<Stress>(row);
         CHECK(damage.valid());
         row.expect("value", damage.value);
       }},
      {"history_damage",
       [](const Row& row) {
         row.expect("value", history_damage(numbers<double>(row.given("history")), line_of<double>(row), rule_of(row),
                                            small_cycles_of(row))
                                 .value);
       }},
      {"damage_life",
       [](const Row& row) {
         const Time life = damage_life(row.get<double>("damage"), row.get<Time>("duration"));
         row.expect("value", life);
         CHECK(life_class(life) == LifeClass::under_10_h);
       }},
  };
  const std::map<std::string, rows::Runner> counts = {
      {"count_cycles", [](const Row& row) { expect_cycles(row, count_cycles(numbers<double>(row.given("history")))); }},
      {"count_repeating_cycles",
       [](const Row& row) { expect_cycles(row, count_repeating_cycles(numbers<double>(row.given("history")))); }},
      {"count_closed_cycles",
       [](const Row& row) { expect_closed(row, count_closed_cycles(numbers<double>(row.given("history")))); }},
      {"close_residue",
       [](const Row& row) { expect_cycles(row, close_residue(numbers<double>(row.given("residue")))); }},
  };
  std::map<std::string, rows::Runner> all = strength;
  for (const auto& group : {shafts, lives, counts}) all.insert(group.begin(), group.end());
  rows::run("fatigue", all);
}
