#include <fieldshaft/dynamics.hpp>

#include "rows.hpp"

using namespace fieldshaft;
using rows::Json;
using rows::Row;

namespace {

/// A named part of a row, or a default where the row leaves it out.
template <class Q> Q part(const Json& object, const char* name) { return rows::read<Q>(object.at(name)); }
template <class Q> Q part_or(const Json& object, const char* name, Q otherwise) {
  return object.contains(name) ? part<Q>(object, name) : otherwise;
}

BeamSegment round_segment(const Json& made) {
  const Json& section = made.at("section");
  const auto length = part<Length>(made, "length");
  const auto modulus = part<Stress>(made, "youngs_modulus");
  const auto density = part<Density>(made, "density");
  if (section.contains("solid")) {
    return beam_segment(SolidSection(part<Length>(section, "solid")), length, modulus, density);
  }
  const TubeSection tube(rows::read<Length>(section.at("tube")[0]), rows::read<Length>(section.at("tube")[1]));
  return beam_segment(tube, length, modulus, density);
}

BeamSegment segment(const Json& object) {
  if (object.contains("beam_segment")) return round_segment(object.at("beam_segment"));
  return {part<Length>(object, "length"), part<BendingStiffness>(object, "stiffness"),
          part<MassPerLength>(object, "mass")};
}

BeamLine line(const Json& object) {
  BeamLine line;
  for (const Json& entry : object.at("segments")) line.segments.push_back(segment(entry));
  for (const Json& entry : object.at("masses")) {
    line.masses.push_back({part<Length>(entry, "at"), part<Mass>(entry, "mass")});
  }
  for (const Json& entry : object.at("supports")) {
    const bool clamped = entry.at("kind") == "clamped";
    line.supports.push_back({part<Length>(entry, "at"), clamped ? SupportKind::clamped : SupportKind::simple, {}});
  }
  return line;
}

WhirlTelescope telescope(const Json& object) {
  WhirlTelescope telescope{{segment(object.at("front").at("tube")), {}, {}},
                           {segment(object.at("rear").at("tube")), {}, {}}};
  telescope.overlap_share = part<double>(object, "overlap_share");
  return telescope;
}

TorsionalTrain train(const Json& object) {
  TorsionalTrain train;
  for (const Json& entry : object.at("inertias")) train.inertias.push_back({part<MomentOfInertia>(entry, "inertia")});
  for (const Json& entry : object.at("shafts")) {
    train.shafts.push_back({entry.at("from"), entry.at("to"), part<TorsionalStiffness>(entry, "stiffness"),
                            part_or<double>(entry, "ratio", 1.0)});
  }
  for (const Json& entry : object.at("anchors")) {
    train.anchors.push_back({entry.at("inertia"), part<TorsionalStiffness>(entry, "stiffness"),
                             part_or<TorsionalDamping>(entry, "damping", {})});
  }
  return train;
}

void expect_speeds(const Row& row) {
  const std::vector<AngularSpeed> speeds =
      beam_critical_speeds(line(row.given("line")), static_cast<int>(row.get<double>("count")),
                           static_cast<int>(row.get<double>("elements")));
  for (std::size_t i = 0; i < speeds.size(); ++i) row.expect("speed_" + std::to_string(i + 1), speeds[i]);
}

void expect_modes(const Row& row) {
  const std::vector<TorsionalMode> modes = torsional_modes(train(row.given("train")));
  for (std::size_t i = 0; i < modes.size(); ++i) {
    const std::string name = "frequency_" + std::to_string(i);
    if (modes[i].frequency.value() == 0.0) {
      row.expect(name, modes[i].frequency.value());
    } else {
      row.expect(name, modes[i].frequency);
    }
  }
}

void expect_interference(const Row& row) {
  const Json& order = row.given("orders")[0];
  const Json& speeds = row.given("speeds");
  const Interference found =
      interference_table(train(row.given("train")), {{order.at("per_turn"), order.at("inertia")}},
                         {part<AngularSpeed>(speeds, "low"), part<AngularSpeed>(speeds, "high")})
          .front();
  row.expect("natural", found.natural);
  row.expect("critical_speed", found.critical_speed);
  row.expect("nearest", found.nearest);
  row.expect("separation", found.separation);
  row.expect("swing", found.swing);
}

void expect_response(const Row& row) {
  const Json& given = row.given("excitation");
  TorsionalExcitation excitation{part<Frequency>(given, "frequency"), {}, {}};
  for (const Json& entry : given.at("torques")) {
    const Json& torque = entry.at("torque");
    excitation.torques.push_back(
        {entry.at("inertia"), {part<Torque>(torque, "amplitude"), part<Angle>(torque, "phase")}});
  }
  const Validated<ForcedResponse> response = forced_response(train(row.given("train")), excitation);
  CHECK(response.valid());
  row.expect("swing", response.value.swings.front().amplitude);
}

void expect_equivalent_length(const Row& row) {
  std::vector<StepLength> steps;
  for (const Json& entry : row.given("steps")) {
    steps.push_back({SolidSection(part<Length>(entry.at("section"), "solid")), part<Length>(entry, "length")});
  }
  const SolidSection section(part<Length>(row.given("section"), "solid"));
  row.expect("value", equivalent_shaft_length(steps, section));
}

void expect_torque_swing(const Row& row) {
  row.expect("value", joint_torque_swing(row.get<TorsionalStiffness>("stiffness"), row.get<MomentOfInertia>("inertia"),
                                         row.get<Angle>("angle"), row.get<AngularSpeed>("speed"))
                          .value);
}

} // namespace

TEST_CASE("reference rows of dynamics") {
  rows::run("dynamics",
            {
                {"beam_critical_speeds", expect_speeds},
                {"telescope_critical_speed",
                 [](const Row& row) {
                   row.expect("value",
                              telescope_critical_speed(telescope(row.given("telescope")), row.get<Length>("length")));
                 }},
                {"slender_tube_excess",
                 [](const Row& row) {
                   const SolidSection section(part<Length>(row.given("section"), "solid"));
                   row.expect("value", slender_tube_excess(section, row.get<Length>("length")).value);
                 }},
                {"torsional_modes", expect_modes},
                {"two_inertia_frequency",
                 [](const Row& row) {
                   row.expect("value", two_inertia_frequency(row.get<MomentOfInertia>("first"),
                                                             row.get<MomentOfInertia>("second"),
                                                             row.get<TorsionalStiffness>("stiffness")));
                 }},
                {"equivalent_shaft_length", expect_equivalent_length},
                {"interference_table", expect_interference},
                {"joint_pulse",
                 [](const Row& row) {
                   row.expect("value",
                              joint_pulse(row.get<Angle>("angle"), static_cast<int>(row.get<double>("pulse"))));
                 }},
                {"forced_response", expect_response},
                {"joint_torque_swing", expect_torque_swing},
                {"shaft_damping",
                 [](const Row& row) {
                   row.expect("value", shaft_damping(row.get<TorsionalStiffness>("stiffness"),
                                                     row.get<double>("loss_factor"), row.get<Frequency>("frequency")));
                 }},
            });
}
