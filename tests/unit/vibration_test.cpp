// Whirling, resonance, phase of the yokes and torque swing of a case, in each status.

#include <fieldshaft/fieldshaft.hpp>
#include <fieldshaft/shaft.hpp>

#include "close.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>

using namespace fieldshaft;
using Json = nlohmann::ordered_json;

namespace {

/// The example that passes, with all that these checks need.
Json document() {
  std::ifstream file(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/trailed-cutter-that-fits.json");
  REQUIRE(file.good());
  Json document = Json::parse(file);
  document["driveline"]["other_tube"] = {{"outer_diameter", "70 mm"}, {"inner_diameter", "62 mm"}};
  document["driveline"]["telescope_positions"] = 6;
  document["torsion"] = Json::parse(R"({
    "masses": [{"name": "engine", "inertia": "1.2 kg.m^2", "turns_with": "engine"},
               {"name": "gearbox", "inertia": "0.1 kg.m^2", "turns_with": "pto"},
               {"name": "rotor", "inertia": "3 kg.m^2", "turns_with": "geared", "speed": "860 r/min"}],
    "shafts": [{"from": "gearbox", "to": "engine", "stiffness": "40000 N.m/rad"},
               {"from": "gearbox", "to": "rotor", "stiffness": "9000 N.m/rad"}],
    "pulses": [{"name": "blades", "of": "rotor", "per_turn": 2}]})");
  document["start"] = Json::parse(R"({"driveline_stiffness": "9000 N.m/rad", "rotor_inertia": "3 kg.m^2"})");
  return document;
}

Assessment assessed(const Json& document) { return assess(read_case(document.dump())); }

Assessment with(const char* pointer, Json value) {
  Json changed = document();
  const Json::json_pointer at(pointer);
  if (value.is_null()) {
    changed[at.parent_pointer()].erase(at.back());
  } else {
    changed[at] = std::move(value);
  }
  return assessed(changed);
}

const Finding& finding(const Assessment& assessment, Check check) {
  const Finding* found = assessment.find(check);
  REQUIRE_MESSAGE(found != nullptr, check_id(check) << " was not examined");
  return *found;
}

bool examined(const Assessment& assessment, Check check) {
  const auto& left = assessment.not_examined;
  const bool left_out = std::find(left.begin(), left.end(), check) != left.end();
  CHECK(left_out == (assessment.find(check) == nullptr));
  return !left_out;
}

double fact(const Finding& found, const std::string& name) {
  for (const Fact& fact : found.facts) {
    if (name == fact.name) return std::get<Amount>(fact.value).si;
  }
  FAIL("no fact " << name);
  return 0.0;
}

/// Whether the finding asks for the entry or for a part of it.
bool misses(const Finding& found, const std::string& path) {
  return std::any_of(found.missing.begin(), found.missing.end(),
                     [&](const std::string& entry) { return entry.rfind(path, 0) == 0; });
}

} // namespace

TEST_CASE("a case that says nothing of these subjects is not examined for them") {
  Json plain = document();
  plain["driveline"].erase("other_tube");
  plain.erase("torsion");
  plain.erase("start");
  const Assessment assessment = assessed(plain);
  CHECK(!examined(assessment, Check::whirling));
  CHECK(!examined(assessment, Check::resonance));
  CHECK(!examined(assessment, Check::joint_torque_swing));
  CHECK(examined(assessment, Check::yoke_phase));
}

TEST_CASE("whirling: the speed at high idle against the lowest critical speed of all driven lengths") {
  const Finding good = finding(assessed(document()), Check::whirling);
  CHECK(good.status == Status::ok);
  CHECK(std::string(good.reason) == "whirl.in_range");
  REQUIRE(good.value);
  CHECK_CLOSE(good.value->si, fact(good, "speed") / fact(good, "critical"), 1e-12);
  CHECK(fact(good, "critical") < critical_speed(TubeSection(millimetres(70), millimetres(62)),
                                                Length::from_value(fact(good, "length")), gigapascals(207),
                                                kilograms_per_cubic_metre(7850))
                                     .value());
  CHECK(finding(with("/limits/critical_speed_share", "1 %"), Check::whirling).status != Status::ok);
  // A long, thin driveline.
  Json thin = document();
  thin["driveline"]["tube"] = {{"outer_diameter", "12 mm"}, {"inner_diameter", "0 mm"}};
  thin["driveline"]["other_tube"] = {{"outer_diameter", "14 mm"}, {"inner_diameter", "12 mm"}};
  const Assessment slow = assessed(thin);
  CHECK(finding(slow, Check::whirling).value->si > good.value->si);
  Json profile = document();
  profile["driveline"]["other_tube"] = Json::parse(
      R"({"enclosed_area": "1296 mm2", "perimeter": "144 mm", "wall": "4 mm", "second_moment": "127000 mm^4"})");
  CHECK(finding(assessed(profile), Check::whirling).status == Status::ok);
}

TEST_CASE("whirling is not known where something is missing, never passed") {
  const auto missing = [](const char* pointer, const char* path) {
    const Assessment assessment = with(pointer, nullptr);
    const Finding found = finding(assessment, Check::whirling);
    CHECK(found.status == Status::not_known);
    CHECK_MESSAGE(misses(found, path), path);
  };
  missing("/driveline/other_tube/inner_diameter", "driveline.other_tube.inner_diameter");
  missing("/driveline/tube/outer_diameter", "driveline.tube.outer_diameter");
  missing("/driveline/closed_overlap", "driveline.closed_overlap");
  missing("/tractor/engine/high_idle", "tractor.engine.high_idle");
  missing("/range/turning", "range.turning");
  Json profile = document();
  profile["driveline"]["other_tube"] = {{"perimeter", "144 mm"}};
  const Finding found = finding(assessed(profile), Check::whirling);
  CHECK(misses(found, "driveline.other_tube.wall"));
  CHECK(misses(found, "driveline.other_tube.second_moment"));
  CHECK(std::string(finding(with("/driveline/tube/outer_diameter", "260 mm"), Check::whirling).reason) ==
        "whirl.stout");
}

TEST_CASE("whirling of three members asks for the middle one, and is slower than two of the same tubes") {
  Json three = document();
  three["driveline"]["middle_member"] = {{"closed_overlap", "420 mm"}};
  CHECK(misses(finding(assessed(three), Check::whirling), "driveline.middle_member.tube.outer_diameter"));
  three["driveline"]["middle_member"]["tube"] = {{"outer_diameter", "44 mm"}, {"inner_diameter", "36 mm"}};
  const Finding found = finding(assessed(three), Check::whirling);
  CHECK(found.status == Status::ok);
  CHECK(found.value->si > finding(assessed(document()), Check::whirling).value->si);
}

TEST_CASE("resonance: pulses apart from, near, and at a natural frequency") {
  const Finding first = finding(assessed(document()), Check::resonance);
  REQUIRE(first.value);
  const double natural = fact(first, "natural");
  // Work exactly where the nearest order meets its mode: a stop.
  const double critical = fact(first, "critical") * 30.0 / pi;
  const auto working_at = [](double low, double high) {
    Json at = document();
    at["torsion"]["pto_speeds"] = {std::to_string(low) + " rpm", std::to_string(high) + " rpm"};
    return finding(assessed(at), Check::resonance);
  };
  const Finding within = working_at(0.95 * critical, 1.05 * critical);
  CHECK(within.status == Status::stop);
  CHECK(std::string(within.reason) == "resonance.within");
  CHECK(within.value->si == 0.0);
  CHECK(natural > 0.0);
  CHECK(!within.advice.empty());
}

TEST_CASE("resonance: one order and one mode, by hand") {
  Json two = document();
  two["torsion"] = Json::parse(R"({
    "masses": [{"name": "tractor", "inertia": "2 kg.m^2", "turns_with": "pto"},
               {"name": "rotor", "inertia": "3 kg.m^2", "turns_with": "geared", "speed": "540 r/min"}],
    "shafts": [{"from": "tractor", "to": "rotor", "stiffness": "5000 N.m/rad"}]})");
  const auto at = [&](const char* low, const char* high) {
    two["torsion"]["pto_speeds"] = {low, high};
    return finding(assessed(two), Check::resonance);
  };
  // Two pulses in a turn meet 10.2734 Hz at 308.2 r/min.
  CHECK_CLOSE(fact(at("500 rpm", "600 rpm"), "critical") * 30.0 / pi, 308.2022, 1e-6);
  CHECK_CLOSE(at("500 rpm", "600 rpm").value->si, 500.0 / 308.20222 - 1.0, 1e-6);
  CHECK(at("500 rpm", "600 rpm").status == Status::ok);
  CHECK(at("350 rpm", "600 rpm").status == Status::caution);
  CHECK(at("330 rpm", "600 rpm").status == Status::stop);
  CHECK(at("300 rpm", "320 rpm").value->si == 0.0);
  two["limits"]["resonance_separation"] = "70 %";
  CHECK(at("500 rpm", "600 rpm").status != Status::ok);
  two["limits"].erase("resonance_separation");
  two["driveline"]["front_joint_kind"] = "wide-angle";
  two["driveline"]["rear_joint_kind"] = "wide-angle";
  CHECK(std::string(at("500 rpm", "600 rpm").reason) == "resonance.no_pulse");
}

TEST_CASE("resonance with play: a pass wants to know how far the torque swings") {
  Json loose = document();
  loose["torsion"]["shafts"][1]["backlash"] = "2 deg";
  loose["torsion"]["pto_speeds"] = {"5000 rpm", "5001 rpm"}; // far above every natural frequency
  loose["implement"]["torque_swing"] = "15 %";
  CHECK(std::string(finding(assessed(loose), Check::resonance).reason) == "resonance.apart_with_play");
  loose["implement"].erase("torque_swing");
  const Finding found = finding(assessed(loose), Check::resonance);
  CHECK(found.status == Status::not_known);
  CHECK(misses(found, "implement.torque_swing"));
}

TEST_CASE("resonance is not known where something is missing") {
  const auto missing = [](const char* pointer, const char* path) {
    const Finding found = finding(with(pointer, nullptr), Check::resonance);
    CHECK(found.status == Status::not_known);
    CHECK_MESSAGE(misses(found, path), path);
  };
  missing("/torsion/masses/0/inertia", "torsion.masses[0].inertia");
  missing("/torsion/masses/1/turns_with", "torsion.masses[1].turns_with");
  missing("/torsion/masses/2/speed", "torsion.masses[2].speed");
  missing("/torsion/shafts/0/stiffness", "torsion.shafts[0].stiffness");
  missing("/torsion/pulses/0/per_turn", "torsion.pulses[0].per_turn");
  missing("/torsion/shafts", "torsion.shafts");
  missing("/tractor/pto/selected", "tractor.pto.selected");
  missing("/tractor/engine/high_idle", "torsion.pto_speeds");
}

TEST_CASE("the phase of the yokes: a tube put together one position wrong is found, with the way back") {
  const Finding good = finding(assessed(document()), Check::yoke_phase);
  CHECK(good.status == Status::ok);
  CHECK(std::string(good.reason) == "phase.best_of_positions");
  CHECK_CLOSE(fact(good, "step"), degrees(60).value(), 1e-14);
  CHECK(fact(good, "wrong_variation") > 1.5 * good.value->si);
  for (const double wrong : {60.0, -60.0, 120.0}) {
    const Finding found = finding(with("/driveline/yoke_phase", std::to_string(wrong) + " deg"), Check::yoke_phase);
    CHECK(std::string(found.reason) == "phase.better");
    CHECK_CLOSE(fact(found, "best_variation"), good.value->si, 1e-9);
    // Back to in line: 0, or half a turn away, which is the same.
    CHECK(std::abs(math::sin(radians(fact(found, "best_phase")))) < 1e-9);
    CHECK(fact(found, "turn") != 0.0);
    CHECK(found.value->si > fact(found, "best_variation"));
  }
  CHECK(finding(with("/driveline/yoke_phase", "60 deg"), Check::yoke_phase).status == Status::caution);
  // Without positions any whole 5° may be chosen.
  Json free = document();
  free["driveline"].erase("telescope_positions");
  CHECK(std::string(finding(assessed(free), Check::yoke_phase).reason) == "phase.best");
  free["driveline"]["yoke_phase"] = "35 deg";
  CHECK(std::string(finding(assessed(free), Check::yoke_phase).reason) == "phase.better");
  CHECK(!examined(with("/driveline/front_joint_kind", "wide-angle"), Check::yoke_phase));
  CHECK(!examined(with("/driveline/yoke_phase", nullptr), Check::yoke_phase));
}

TEST_CASE("the torque that uneven joints add in work, and the couple on the implement's input shaft") {
  const Assessment assessment = assessed(document());
  const Finding found = finding(assessment, Check::joint_torque_swing);
  CHECK(found.status == Status::ok);
  CHECK_CLOSE(fact(found, "peak"), fact(found, "mean") + fact(found, "swing"), 1e-12);
  CHECK_CLOSE(fact(found, "couple"), fact(found, "peak") * math::sin(radians(fact(found, "rear"))), 1e-9);
  CHECK_CLOSE(found.value->si, fact(found, "swing") / fact(found, "mean"), 1e-12);
  // A stiffer driveline takes more of it, up to reversal.
  CHECK(finding(with("/start/driveline_stiffness", "900000 N.m/rad"), Check::joint_torque_swing).status != Status::ok);
  const Finding missing = finding(with("/start/rotor_inertia", nullptr), Check::joint_torque_swing);
  CHECK(missing.status == Status::not_known);
  CHECK(misses(missing, "start.rotor_inertia"));
  CHECK(misses(finding(with("/implement/rotor", "none"), Check::joint_torque_swing), "implement.rotor"));
  CHECK(misses(finding(with("/driveline/yoke_phase", nullptr), Check::joint_torque_swing), "driveline.yoke_phase"));
}

TEST_CASE("sizes too far apart to compute with are not known") {
  CHECK(std::string(finding(with("/torsion/shafts/1/stiffness", "1e300 N.m/rad"), Check::resonance).reason) ==
        "vibration.extreme");
  Json wide = document();
  wide["driveline"]["other_tube"] = Json::parse(
      R"({"enclosed_area": "1296 mm2", "perimeter": "144 mm", "wall": "4 mm", "second_moment": "1e308 m^4"})");
  CHECK(finding(assessed(wide), Check::whirling).status == Status::not_known);
}

TEST_CASE("a line that contradicts itself is refused when it is read") {
  const auto problem = [](const char* pointer, Json value) {
    Json changed = document();
    changed[Json::json_pointer(pointer)] = std::move(value);
    const auto result = try_read_case(changed.dump());
    REQUIRE(!result.problems.empty());
    return result.problems.front().path;
  };
  CHECK(problem("/torsion/masses/1/name", "engine") == "torsion.masses[1].name");
  CHECK(problem("/torsion/masses/0/speed", "500 rpm") == "torsion.masses[0].speed");
  CHECK(problem("/torsion/shafts/0/to", "wheel") == "torsion.shafts[0].to");
  CHECK(problem("/torsion/shafts/0/to", "gearbox") == "torsion.shafts[0].to");
  CHECK(problem("/torsion/shafts/1/from", "rotor") == "torsion.shafts[1].to");
  Json loose = document();
  loose["torsion"]["shafts"].erase(1);
  CHECK(try_read_case(loose.dump()).problems.at(0).path == "torsion.shafts");
  CHECK(problem("/torsion/pulses/0/of", "wheel") == "torsion.pulses[0].of");
  CHECK(problem("/torsion/masses/0/inertia", "-1 kg.m^2") == "torsion.masses[0].inertia");
  CHECK(problem("/torsion/shafts/0/stiffness", "0 N.m/rad") == "torsion.shafts[0].stiffness");
  CHECK(problem("/driveline/telescope_positions", 2.5) == "driveline.telescope_positions");
  CHECK(problem("/driveline/other_tube/inner_diameter", "80 mm") == "driveline.other_tube.inner_diameter");
}
