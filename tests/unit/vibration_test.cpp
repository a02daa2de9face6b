// Whirling, resonance, phase of the yokes and torque swing of a case, in each status.

#include <fieldshaft/dynamics.hpp>
#include <fieldshaft/fieldshaft.hpp>
#include <fieldshaft/joint.hpp>
#include <fieldshaft/shaft.hpp>

#include "close.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <complex>
#include <fstream>

using namespace fieldshaft;
using Json = nlohmann::ordered_json;

namespace {

Json example(const std::string& name) {
  std::ifstream file(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/" + name + ".json");
  REQUIRE(file.good());
  return Json::parse(file);
}

/// The example that passes, with all that these checks need.
Json document() {
  Json document = example("trailed-cutter-that-fits");
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

std::string millimetres_text(double metres) { return std::to_string(1e3 * metres) + " mm ± 5 mm"; }

/// The entries that would have to be stated for a check that was not asked for; empty where there is nothing to state.
std::vector<std::string> asks_for(const Assessment& assessment, Check check) {
  for (const Unasked& unasked : assessment.unasked) {
    if (unasked.check == check) return unasked.entries;
  }
  return {};
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
  CHECK(!examined(assessment, Check::pulsing_torque));
  CHECK(!examined(assessment, Check::joint_bearing_life));
  CHECK(examined(assessment, Check::yoke_phase));
}

TEST_CASE("what the case says nothing of is named with the entries that would have it examined") {
  Json plain = document();
  plain["driveline"].erase("other_tube");
  plain["driveline"].erase("yoke_phase");
  plain.erase("torsion");
  plain.erase("start");
  const Assessment assessment = assessed(plain);
  using Entries = std::vector<std::string>;
  CHECK(asks_for(assessment, Check::whirling) == Entries{"driveline.other_tube"});
  CHECK(asks_for(assessment, Check::resonance) == Entries{"torsion"});
  CHECK(asks_for(assessment, Check::pulsing_torque) == Entries{"torsion"});
  CHECK(asks_for(assessment, Check::joint_torque_swing) == Entries{"start.driveline_stiffness", "start.rotor_inertia"});
  CHECK(asks_for(assessment, Check::joint_bearing_life) ==
        Entries{"driveline.bearing_rating", "driveline.bearing_arm"});
  CHECK(asks_for(assessment, Check::yoke_phase) == Entries{"driveline.yoke_phase"});
  // A wide-angle joint runs evenly by itself: there is no phase to state.
  CHECK(asks_for(with("/driveline/front_joint_kind", "wide-angle"), Check::yoke_phase).empty());
  CHECK(asks_for(with("/range/turning/yaw", nullptr), Check::yoke_phase) == Entries{"range.turning.yaw"});
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

TEST_CASE("resonance: an economy gear turns the PTO alike and pulses elsewhere") {
  Json two = document();
  // The engine, felt at the PTO, is 1.634 kg·m² in the gear 540 and 0.919 kg·m² in 540E.
  two["tractor"]["pto"]["gears"][0]["engine_speed"] = "2000 r/min";
  two["tractor"]["pto"]["gears"].push_back(
      {{"name", "540E"}, {"pto_speed", "540 r/min"}, {"engine_speed", "1500 rpm"}});
  two["torsion"] = Json::parse(R"({
    "masses": [{"name": "engine", "inertia": "0.1191 kg.m^2", "turns_with": "engine"},
               {"name": "rotor", "inertia": "3 kg.m^2", "turns_with": "geared", "speed": "540 r/min"}],
    "shafts": [{"from": "rotor", "to": "engine", "stiffness": "9000 N.m/rad"}],
    "pto_speeds": ["530 rpm", "550 rpm"]})");
  const auto critical = [](double engine_over_pto) {
    const double engine = 0.1191 * engine_over_pto * engine_over_pto;
    return 0.5 * std::sqrt(9000.0 * (1.0 / engine + 1.0 / 3.0)); // two pulses in a turn
  };
  const Finding found = finding(assessed(two), Check::resonance);
  CHECK(found.status == Status::ok);
  CHECK_CLOSE(fact(found, "critical"), critical(2000.0 / 540.0), 1e-9);
  REQUIRE(found.advice.size() == 1);
  CHECK(std::string(found.advice[0]) == "resonance.other_gear");
  CHECK_CLOSE(fact(found, "gear_critical"), critical(1500.0 / 540.0), 1e-9);
  CHECK(fact(found, "gear_separation") == 0.0);
  // In that gear itself it is a stop, and the other one gives nothing to warn of.
  two["tractor"]["pto"]["selected"] = "540E";
  const Finding economy = finding(assessed(two), Check::resonance);
  CHECK(economy.status == Status::stop);
  CHECK(std::find_if(economy.advice.begin(), economy.advice.end(),
                     [](const char* id) { return std::string(id) == "resonance.other_gear"; }) == economy.advice.end());
  // A gear for another PTO speed does not serve this implement.
  two["tractor"]["pto"]["selected"] = "540";
  two["tractor"]["pto"]["arrangement"] = "lever only";
  two["tractor"]["pto"]["gears"][1]["name"] = "1000";
  two["tractor"]["pto"]["gears"][1]["pto_speed"] = "1000 r/min";
  CHECK(finding(assessed(two), Check::resonance).advice.empty());
}

namespace {

/// Two masses joined by the driveline, 5000 N·m/rad, pulsing twice in a turn of the rotor by 60 N·m.
Json pulsing() {
  Json two = document();
  two["driveline"]["front_joint_kind"] = "wide-angle";
  two["driveline"]["rear_joint_kind"] = "wide-angle";
  two["torsion"] = Json::parse(R"({
    "masses": [{"name": "tractor", "inertia": "2 kg.m^2", "turns_with": "pto"},
               {"name": "rotor", "inertia": "3 kg.m^2", "turns_with": "geared", "speed": "540 r/min"}],
    "shafts": [{"from": "tractor", "to": "rotor", "stiffness": "5000 N.m/rad", "joints": "yes"}],
    "pulses": [{"name": "blades", "of": "rotor", "per_turn": 2, "torque": "60 N.m"}],
    "pto_speeds": ["500 rpm", "600 rpm"]})");
  return two;
}

/// Amplitude of the shaft's torque in closed form: a torque on the rotor and a lead in the shaft.
double shaft_swing(double torque, double lead, double pto_speed, double damping) {
  const std::complex<double> k(5000.0, 5000.0 * 2.0 * damping);
  const double w = 2.0 * pto_speed;
  const std::complex<double> off = k * (1.0 / 2.0 + 1.0 / 3.0) - w * w;
  return std::abs(k / off) * torque / 3.0 + std::abs(k / off) * lead * w * w;
}

} // namespace

TEST_CASE("the torque of the driveline under all pulses, against the closed form of two masses") {
  const double mean = 34e3 / rpm(540).value();
  const Finding found = finding(assessed(pulsing()), Check::pulsing_torque);
  // Natural frequency at 308 r/min: the lowest of 500 to 600 r/min is the worst.
  CHECK_CLOSE(fact(found, "speed"), rpm(500).value(), 1e-12);
  const double swing = shaft_swing(60.0, 0.0, rpm(500).value(), 0.02);
  CHECK_CLOSE(fact(found, "swing"), swing, 1e-9);
  CHECK_CLOSE(found.value->si, mean + swing, 1e-9);
  CHECK_CLOSE(fact(found, "damping"), 0.02, 1e-15);
  CHECK(found.status == Status::ok);

  // At a natural frequency within the working speeds only damping bounds it, and the speed is met exactly.
  Json at = pulsing();
  at["torsion"]["pto_speeds"] = {"300 rpm", "317 rpm"};
  at["torsion"]["damping"] = "5 %";
  const double meets = 0.5 * std::sqrt(5000.0 * (1.0 / 2.0 + 1.0 / 3.0));
  const Finding resonant = finding(assessed(at), Check::pulsing_torque);
  CHECK_CLOSE(fact(resonant, "speed"), meets, 1e-9);
  CHECK_CLOSE(fact(resonant, "swing"), shaft_swing(60.0, 0.0, meets, 0.05), 1e-9);
  CHECK_CLOSE(fact(resonant, "swing"), 60.0 / 3.0 * 1.2 * std::sqrt(1.0 + 0.01) / 0.1, 1e-9);
  // Half the damping, twice the swing.
  at["torsion"]["damping"] = "2.5 %";
  CHECK_CLOSE(fact(finding(assessed(at), Check::pulsing_torque), "swing"), 2.0 * fact(resonant, "swing"), 0.005);
}

TEST_CASE("the joints' own pulse enters as the lead of the equivalent joint") {
  Json plain = pulsing();
  plain["driveline"]["front_joint_kind"] = "plain";
  plain["driveline"]["rear_joint_kind"] = "plain";
  const Assessment assessment = assessed(plain);
  const Finding found = finding(assessment, Check::pulsing_torque);
  double variation = 0.0;
  for (const StateEnvelope& state : assessment.envelopes) {
    if (state.state != MachineState::transport) variation = std::max(variation, state.speed_variation->bound.si);
  }
  const Angle equivalent = joint_angle_for_variation(variation);
  const double lead = joint_pulse(equivalent).value();
  REQUIRE(lead > 0.0);
  // Two pulses in a turn, and four, as two at twice the speed.
  const double four = shaft_swing(0.0, joint_pulse(equivalent, 2).value(), 2.0 * fact(found, "speed"), 0.02);
  CHECK_CLOSE(fact(found, "swing"), shaft_swing(60.0, lead, fact(found, "speed"), 0.02) + four, 1e-9);
}

TEST_CASE("the torque under all pulses against rating, yield, device and its own sense") {
  Json weak = pulsing();
  weak["driveline"]["joint_rating"] = "610 N.m";
  const Finding stopped = finding(assessed(weak), Check::pulsing_torque);
  CHECK(stopped.status == Status::stop);
  CHECK_CLOSE(stopped.limit->si, 610.0, 1e-12);
  // A device that lets go below the peaks is a caution, however strong the parts.
  Json slipping = pulsing();
  slipping["overload"]["setting"] = "700 N.m";
  const Finding slips = finding(assessed(slipping), Check::pulsing_torque);
  CHECK(slips.status == Status::caution);
  CHECK(std::string(slips.advice.back()) == "pulsing.device");
  // Beyond its mean the torque reverses, and no peak is known.
  Json reversing = pulsing();
  reversing["torsion"]["pulses"][0]["torque"] = "2600 N.m";
  reversing["torsion"]["pto_speeds"] = {"500 rpm", "510 rpm"};
  reversing["driveline"]["joint_rating"] = "9000 N.m";
  const Finding reversed = finding(assessed(reversing), Check::pulsing_torque);
  CHECK(reversed.status == Status::not_known);
  CHECK(std::string(reversed.reason) == "pulsing.reverses");
  const auto missing = [](const char* pointer, const char* path) {
    Json changed = pulsing();
    const Json::json_pointer at(pointer);
    changed[at.parent_pointer()].erase(at.back());
    const Finding unknown = finding(assessed(changed), Check::pulsing_torque);
    CHECK(unknown.status == Status::not_known);
    CHECK_MESSAGE(misses(unknown, path), path);
  };
  missing("/torsion/shafts/0/joints", "torsion.shafts[].joints");
  missing("/torsion/pulses/0/torque", "torsion.pulses[0].torque");
  missing("/implement/power_need", "implement.power_need");
  missing("/driveline/joint_rating", "driveline.joint_rating");
  missing("/driveline/yoke_phase", "driveline.yoke_phase");
  missing("/torsion/masses/0/inertia", "torsion.masses[0].inertia");
  Json silent = pulsing();
  silent["torsion"].erase("pulses");
  CHECK(std::string(finding(assessed(silent), Check::pulsing_torque).reason) == "resonance.no_pulse");
}

namespace {

Json with_bearings() {
  Json document = ::document();
  document["driveline"]["bearing_rating"] = "30 kN";
  document["driveline"]["bearing_arm"] = "40 mm";
  document["limits"]["wanted_life"] = "1500 h";
  return document;
}

/// ISO 281 with the swing, in hours: (1.5e6/(n b)) (C/P)^(10/3), P = T/(2 R).
double life_hours(double torque, double speed_rpm, double angle_degrees) {
  return 1.5e6 / (speed_rpm * angle_degrees) * std::pow(30e3 / (torque / 0.08), 10.0 / 3.0);
}

} // namespace

TEST_CASE("life of the joints' bearings under the heaviest work all the time") {
  const Finding found = finding(assessed(with_bearings()), Check::joint_bearing_life);
  const double angle = fact(found, "angle") * 180.0 / pi;
  CHECK(angle > 3.0);
  CHECK_CLOSE(found.value->si / 3600.0, life_hours(34e3 / rpm(540).value(), 540.0, angle), 1e-9);
  CHECK_CLOSE(fact(found, "force"), 34e3 / rpm(540).value() / 0.08, 1e-12);
  CHECK(found.limit->si == 1500.0 * 3600.0);
  // A wide-angle joint shares its angle between two crosses.
  Json wide = with_bearings();
  wide["driveline"]["front_joint_kind"] = "wide-angle";
  wide["driveline"]["rear_joint_kind"] = "wide-angle";
  CHECK_CLOSE(fact(finding(assessed(wide), Check::joint_bearing_life), "angle"), 0.5 * fact(found, "angle"), 1e-9);
  Json small = with_bearings();
  small["driveline"]["bearing_rating"] = "16 kN"; // the force is 7516 N
  small["limits"]["wanted_life"] = "5000 h";
  CHECK(finding(assessed(small), Check::joint_bearing_life).status == Status::stop);
  small["driveline"]["bearing_rating"] = "15 kN";
  const Finding beyond = finding(assessed(small), Check::joint_bearing_life);
  CHECK(beyond.status == Status::not_known);
  CHECK(std::string(beyond.reason) == "bearing.beyond_half");
  CHECK(!beyond.value);
}

TEST_CASE("life of the joints' bearings over the parts of the working time") {
  Json parts = with_bearings();
  parts["driveline"]["duties"] = Json::parse(R"([
    {"name": "mowing", "share": "60 %", "power": "20 kW", "joint_angle": "8 deg"},
    {"name": "thick crop", "share": "30 %", "power": "34 kW", "joint_angle": "10 deg", "pto_speed": "500 rpm"},
    {"name": "headland, idle", "share": "10 %", "power": "4 kW", "joint_angle": "1 deg"}])");
  const Finding found = finding(assessed(parts), Check::joint_bearing_life);
  const auto torque = [](double kilowatts, double speed) { return kilowatts * 1e3 / rpm(speed).value(); };
  // Needles at less than 3° last no longer than at 3°.
  const double wear = 0.6 / life_hours(torque(20, 540), 540, 8) + 0.3 / life_hours(torque(34, 500), 500, 10) +
                      0.1 / life_hours(torque(4, 540), 540, 3);
  CHECK_CLOSE(found.value->si / 3600.0, 1.0 / wear, 1e-9);
  CHECK(std::string(found.reason) == "bearing.of_parts");
  CHECK_CLOSE(fact(found, "heaviest"), torque(34, 500), 1e-12);
  CHECK(found.status == Status::ok);
  // Parts that bend the joints less under the full need than the positions of work do are doubted, both angles printed.
  Json straight = parts;
  straight["driveline"]["duties"][1]["joint_angle"] = "3 deg";
  const Finding doubted = finding(assessed(straight), Check::joint_bearing_life);
  CHECK(doubted.status == Status::caution);
  CHECK(std::string(doubted.advice.back()) == "bearing.small_angle");
  CHECK_CLOSE(fact(doubted, "stated_angle"), degrees(3).value(), 1e-12);
  CHECK(fact(doubted, "working_angle") > degrees(3).value());
  // So are parts that make next to nothing of the heaviest work; and no life beyond 100,000 h is a number.
  Json hardly = parts;
  hardly["driveline"]["duties"] = Json::parse(R"([
    {"name": "all but idle", "share": "99.9 %", "power": "3 kW", "joint_angle": "3 deg"},
    {"name": "thick crop", "share": "0.1 %", "power": "34 kW", "joint_angle": "10 deg"}])");
  const double endless =
      1.0 / (0.999 / life_hours(torque(3, 540), 540, 3) + 0.001 / life_hours(torque(34, 540), 540, 10));
  REQUIRE(endless > 1e5);
  const Finding told = finding(assessed(hardly), Check::joint_bearing_life);
  CHECK(told.status == Status::caution);
  CHECK(std::string(told.reason) == "bearing.beyond_numbers");
  CHECK_CLOSE(told.value->si / 3600.0, 1e5, 1e-12);
  CHECK(std::string(told.advice.front()) == "bearing.small_share");
  // The parts state their own angles: no position of the machine is needed.
  parts["range"].erase("working");
  CHECK_CLOSE(finding(assessed(parts), Check::joint_bearing_life).value->si / 3600.0, 1.0 / wear, 1e-9);
  // Duties without the heaviest work leave out what wears most; without the need nobody knows whether they do.
  Json light = parts;
  light["implement"]["power_need"] = "34.1 kW";
  CHECK(std::string(finding(assessed(light), Check::joint_bearing_life).reason) == "bearing.leaves_out");
  light["implement"].erase("power_need");
  CHECK(misses(finding(assessed(light), Check::joint_bearing_life), "implement.power_need"));
  parts["limits"].erase("wanted_life");
  const Finding unwished = finding(assessed(parts), Check::joint_bearing_life);
  CHECK(unwished.status == Status::not_known);
  CHECK(misses(unwished, "limits.wanted_life"));
  CHECK(unwished.value);
}

TEST_CASE("the bearings' life is not known where something is missing") {
  const auto missing = [](Json changed, const char* pointer, const char* path) {
    const Json::json_pointer at(pointer);
    changed[at.parent_pointer()].erase(at.back());
    const Finding found = finding(assessed(changed), Check::joint_bearing_life);
    CHECK(found.status == Status::not_known);
    CHECK_MESSAGE(misses(found, path), path);
  };
  missing(with_bearings(), "/driveline/bearing_arm", "driveline.bearing_arm");
  missing(with_bearings(), "/driveline/rear_joint_kind", "driveline.rear_joint_kind");
  missing(with_bearings(), "/implement/power_need", "implement.power_need");
  missing(with_bearings(), "/range/working/yaw", "range.working.yaw");
  Json part = with_bearings();
  part["driveline"]["duties"] =
      Json::parse(R"([{"name": "all", "share": "100 %", "power": "34 kW", "joint_angle": "8 deg"}])");
  missing(part, "/driveline/duties/0/power", "driveline.duties[0].power");
  missing(part, "/driveline/duties/0/joint_angle", "driveline.duties[0].joint_angle");
  missing(part, "/driveline/duties/0/share", "driveline.duties[0].share");
  missing(part, "/tractor/pto/selected", "driveline.duties[0].pto_speed");
}

TEST_CASE("the joints' four pulses in a turn are weak: they make a pass a caution, and swing the torque") {
  // 36.1 Hz, which two pulses in a turn meet at 1083 r/min and four at 541.6.
  Json line = pulsing();
  line["torsion"]["masses"][0]["inertia"] = "60 kg.m^2";
  line["torsion"]["masses"][1]["inertia"] = "0.2 kg.m^2";
  line["torsion"]["shafts"][0]["stiffness"] = "10255 N.m/rad";
  line["torsion"]["pto_speeds"] = {"530 rpm", "550 rpm"};
  line["torsion"].erase("pulses");
  line["driveline"]["front_joint_kind"] = "plain";
  line["driveline"]["rear_joint_kind"] = "plain";
  const Assessment assessment = assessed(line);
  const Finding meets = finding(assessment, Check::resonance);
  CHECK(meets.status == Status::caution);
  CHECK(std::string(meets.reason) == "resonance.weak_within");
  const double natural = std::sqrt(10255.0 * (1.0 / 60.0 + 1.0 / 0.2));
  CHECK_CLOSE(fact(meets, "critical"), natural / 4.0, 1e-9);
  const Finding found = finding(assessment, Check::pulsing_torque);
  double variation = 0.0;
  for (const StateEnvelope& state : assessment.envelopes) {
    if (state.state != MachineState::transport) variation = std::max(variation, state.speed_variation->bound.si);
  }
  // Two masses in closed form, the joints' lead at two and at four times the speed.
  const auto swing = [&](int pulse) {
    const double w = 2.0 * pulse * fact(found, "speed");
    const std::complex<double> k(10255.0, 10255.0 * 2.0 * 0.02);
    const double lead = joint_pulse(joint_angle_for_variation(variation), pulse).value();
    return std::abs(k / (k * (1.0 / 60.0 + 1.0 / 0.2) - w * w)) * lead * w * w;
  };
  CHECK_CLOSE(fact(found, "swing"), swing(1) + swing(2), 1e-9);
  // A range away from them passes.
  line["torsion"]["pto_speeds"] = {"700 rpm", "710 rpm"};
  CHECK(finding(assessed(line), Check::resonance).status == Status::ok);
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

TEST_CASE("a hitch that shakes: the pin is no midpoint and the tube is put together wrong, and both cure it") {
  Json shaking = example("unequal-joints-that-shake");
  const Assessment before = assessed(shaking);
  const Finding found = finding(before, Check::angle_difference);
  REQUIRE(found.status == Status::caution);
  CHECK(finding(before, Check::speed_variation).status == Status::caution);
  // 400 and 700 mm behind and ahead, less 60 mm to each joint.
  CHECK(std::string(found.reason) == "difference.by_pin");
  CHECK_CLOSE(fact(found, "front_arm"), 0.34, 1e-12);
  CHECK_CLOSE(fact(found, "rear_arm"), 0.64, 1e-12);
  CHECK_CLOSE(fact(found, "equal_behind"), 0.4, 1e-12);
  CHECK_CLOSE(fact(found, "variation"), finding(before, Check::yoke_phase).value->si, 1e-12);

  // Each cure as advised, assessed: what was looked at lies within a few percent of what is proved.
  const auto runs = [&](double phase, const char* expected) {
    Json cured = shaking;
    cured["driveline"]["yoke_phase"] = std::to_string(phase * 180.0 / pi) + " deg";
    const Finding smooth = finding(assessed(cured), Check::speed_variation);
    CHECK(smooth.status == Status::ok);
    CHECK(smooth.value->si >= fact(found, expected) * (1.0 - 1e-9));
    CHECK_CLOSE(smooth.value->si, fact(found, expected), 0.05);
    return cured;
  };
  shaking["tractor"]["hitch"]["distance"] = millimetres_text(fact(found, "hole"));
  CHECK(finding(assessed(runs(fact(found, "hole_phase"), "hole_variation")), Check::angle_difference).status ==
        Status::ok);
  shaking = example("unequal-joints-that-shake");
  shaking["implement"]["input"]["behind"] = millimetres_text(fact(found, "equal_behind"));
  const Assessment both = assessed(runs(fact(found, "equal_phase"), "equal_variation"));
  CHECK(fact(finding(both, Check::angle_difference), "stated") < degrees(5.0).value()); // as measured
  // Either of them alone leaves more than twice the unevenness of both.
  const double best = finding(both, Check::speed_variation).value->si;
  CHECK(finding(assessed(shaking), Check::speed_variation).value->si > 2.0 * best);
  shaking = example("unequal-joints-that-shake");
  shaking["driveline"]["yoke_phase"] = "0 deg";
  CHECK(finding(assessed(shaking), Check::speed_variation).value->si > 2.0 * best);
}

TEST_CASE("the torque that uneven joints add in work, and the couple on the implement's input shaft") {
  const Assessment assessment = assessed(document());
  const Finding found = finding(assessment, Check::joint_torque_swing);
  CHECK(found.status == Status::ok);
  // Worst while turning, and at the slowest working speed, because driveline and rotor swing at 164 r/min already.
  CHECK(found.state == MachineState::turning);
  CHECK_CLOSE(fact(found, "speed"), 0.9 * rpm(540).value(), 1e-12);
  const double pulses = 2.0 * fact(found, "speed");
  const double natural_squared = 9000.0 / (3.0 * std::pow(860.0 / 540.0, 2));
  CHECK_CLOSE(fact(found, "swing"),
              9000.0 * std::pow(std::tan(0.5 * fact(found, "equivalent")), 2) * pulses * pulses /
                  (pulses * pulses - natural_squared),
              1e-9);
  CHECK_CLOSE(fact(found, "peak"), fact(found, "mean") + fact(found, "swing"), 1e-12);
  CHECK_CLOSE(fact(found, "couple"), fact(found, "peak") * math::sin(radians(fact(found, "rear"))), 1e-9);
  CHECK_CLOSE(fact(found, "front_couple"), fact(found, "peak") * math::tan(radians(fact(found, "front"))), 1e-9);
  CHECK(found.advice.empty());
  // With the bearings of the input shaft 80 mm apart, each takes the couple over the span.
  const Finding carried = finding(with("/implement/input/bearing_span", "80 mm"), Check::joint_torque_swing);
  CHECK_CLOSE(fact(carried, "support"), fact(carried, "couple") / 0.08, 1e-12);
  CHECK(std::string(carried.advice.at(0)) == "swing.support");
  CHECK_CLOSE(found.value->si, fact(found, "swing") / fact(found, "mean"), 1e-12);
  // A stiffer driveline takes more of it, up to reversal.
  CHECK(finding(with("/start/driveline_stiffness", "900000 N.m/rad"), Check::joint_torque_swing).status != Status::ok);
  const Finding missing = finding(with("/start/rotor_inertia", nullptr), Check::joint_torque_swing);
  CHECK(missing.status == Status::not_known);
  CHECK(misses(missing, "start.rotor_inertia"));
  CHECK(misses(finding(with("/implement/rotor", "none"), Check::joint_torque_swing), "implement.rotor"));
  CHECK(misses(finding(with("/driveline/yoke_phase", nullptr), Check::joint_torque_swing), "driveline.yoke_phase"));
  CHECK(misses(finding(with("/tractor/engine/high_idle", nullptr), Check::joint_torque_swing),
               "tractor.engine.high_idle"));
  // At 540 r/min the joints pulse a tenth away from this rotor's natural frequency, which they meet at 485 r/min.
  const double inertia = 9000.0 / std::pow(2.0 * rpm(485).value(), 2) / std::pow(860.0 / 540.0, 2);
  const Finding near =
      finding(with("/start/rotor_inertia", std::to_string(inertia) + " kg.m^2"), Check::joint_torque_swing);
  CHECK(near.status == Status::not_known);
  CHECK(std::string(near.reason) == "swing.near_resonance");
  CHECK_CLOSE(fact(near, "speed"), 0.9 * rpm(540).value(), 1e-12);
}

TEST_CASE("torque swings while turning under power count, against what the line carries there") {
  // 310 N·m while turning at 60° of yoke phase, by a forced response set up apart from this library; 54 N·m in work.
  Json shaking = example("unequal-joints-that-shake");
  const Finding found = finding(assessed(shaking), Check::pulsing_torque);
  CHECK(found.state == MachineState::turning);
  CHECK_CLOSE(fact(found, "swing"), 310.0, 0.01);
  // In the lightest part of the working time it carries 5 kW: there the torque reverses.
  CHECK_CLOSE(fact(found, "least"), 5e3 / rpm(540).value(), 1e-12);
  CHECK(found.status == Status::not_known);
  CHECK(std::string(found.reason) == "pulsing.reverses_light");
  // With the PTO let go in turns the work alone counts.
  shaking["range"]["turning"]["driven"] = "no";
  const Finding rested = finding(assessed(shaking), Check::pulsing_torque);
  CHECK(rested.state == MachineState::working);
  CHECK_CLOSE(fact(rested, "swing"), 54.0, 0.02);
}

namespace {

/// The greatest of an extreme over the states in which the shaft turns.
template <class Of> double greatest_driven(const Assessment& assessment, const Of& of) {
  double greatest = 0.0;
  for (const StateEnvelope& state : assessment.envelopes) {
    if (state.state != MachineState::transport) greatest = std::max(greatest, of(state));
  }
  return greatest;
}

double front_bound(const StateEnvelope& state) { return state.front_angle.bound.si; }
double rear_bound(const StateEnvelope& state) { return state.rear_angle.bound.si; }

} // namespace

TEST_CASE("power is kept: the torque of a device is raised from its own end of the driveline") {
  // The pin far from the front joint and near to the rear one: the rear joint bends most.
  Json line = example("unequal-joints-that-shake");
  line["tractor"]["hitch"]["distance"] = "550 mm ± 5 mm";
  line["implement"]["input"]["behind"] = "160 mm ± 5 mm";
  line["range"]["turning"]["yaw"] = {"-45 deg", "45 deg"};
  line["driveline"]["yoke_phase"] = "0 deg";
  line["driveline"]["joint_rating"] = "1900 N.m";
  const double device = 1290.0 * 1.15;
  const Assessment behind = assessed(line);
  const double front = greatest_driven(behind, front_bound);
  const double rear = greatest_driven(behind, rear_bound);
  REQUIRE(rear > 2.0 * front);
  CHECK_CLOSE(finding(behind, Check::joint_rating).value->si, device / std::cos(rear), 1e-9);
  CHECK(finding(behind, Check::joint_rating).status == Status::stop);

  line["overload"]["place"] = "tractor end";
  const Assessment ahead = assessed(line);
  CHECK_CLOSE(finding(ahead, Check::joint_rating).value->si, device / std::cos(front), 1e-9);
  CHECK(finding(ahead, Check::joint_rating).status == Status::ok);
}

TEST_CASE("the shaft between smooth joints runs as unevenly as the front one makes it") {
  Json line = document();
  const Assessment gentle = assessed(line);
  const Finding even = finding(gentle, Check::speed_variation);
  CHECK(even.status == Status::ok);
  const double speed = rpm(540).value();
  CHECK_CLOSE(even.limits->caution.si, 400.0 / (speed * speed), 1e-12);
  CHECK_CLOSE(even.limits->stop.si, 2.5 * 400.0 / (speed * speed), 1e-12);
  const Finding calm = finding(gentle, Check::inertia_excitation);
  CHECK(calm.status == Status::ok);
  CHECK_CLOSE(calm.value->si, joint_peak_acceleration(radians(greatest_driven(gentle, front_bound)), rpm(540)).value(),
              1e-9);
  // Pin midway and level, no roll or pitch: equal joints, smooth to the last digits, and still too much between them.
  line["tractor"]["hitch"] = {
      {"kind", "drawbar"}, {"distance", "400 mm ± 0 mm"}, {"drop", "250 mm ± 0 mm"}, {"lateral", "0 mm"}};
  line["implement"]["input"]["behind"] = "400 mm ± 0 mm";
  line["implement"]["input"]["above"] = "250 mm ± 0 mm";
  line["range"]["turning"]["yaw"] = {"-70 deg", "70 deg"};
  for (const char* state : {"working", "turning"}) {
    for (const char* angle : {"pitch", "roll"}) line["range"][state][angle] = {"0 deg", "0 deg"};
  }
  // The implement's own shaft keeps its own finding, in its own unit.
  const Assessment turned = assessed(line);
  CHECK(finding(turned, Check::speed_variation).status == Status::ok);
  CHECK(finding(turned, Check::speed_variation).value->kind == Kind::share);
  const Finding between = finding(turned, Check::inertia_excitation);
  CHECK(between.status == Status::caution);
  CHECK(std::string(between.reason) == "inertia.driven");
  // Half of the turn, and what the tolerances of the joints' places add.
  const Angle front = radians(fact(between, "front"));
  CHECK_CLOSE(front.value(), degrees(35).value(), 0.02);
  CHECK_CLOSE(between.value->si, joint_peak_acceleration(front, rpm(540)).value(), 1e-12);
  CHECK_CLOSE(between.limit->si, 1000.0, 1e-12);
  // Bent by 30° it passes at 540 r/min, 924 rad/s², and not with the engine at high idle, 2350 r/min of 2100.
  line["range"]["turning"]["yaw"] = {"-60 deg", "60 deg"};
  const Finding fast = finding(assessed(line), Check::inertia_excitation);
  CHECK(fast.status == Status::caution);
  CHECK(std::string(fast.reason) == "inertia.at_high_idle");
  const double speed_ratio = 2350.0 / 2100.0;
  CHECK_CLOSE(fact(fast, "speed"), speed_ratio * rpm(540).value(), 1e-12);
  CHECK_CLOSE(fast.value->si,
              joint_peak_acceleration(radians(fact(fast, "front")), rpm(540)).value() * speed_ratio * speed_ratio,
              1e-9);
  line["tractor"]["engine"].erase("high_idle");
  const Finding unstated = finding(assessed(line), Check::inertia_excitation);
  CHECK(unstated.status == Status::not_known);
  CHECK(unstated.missing == std::vector<std::string>{"tractor.engine.high_idle"});
  // Bent by 15° it passes at twice the gear's speed, and with that at every high idle.
  line["range"]["turning"]["yaw"] = {"-10 deg", "10 deg"};
  CHECK(finding(assessed(line), Check::inertia_excitation).status == Status::ok);
  // Behind a wide-angle front joint that shaft turns evenly.
  line["driveline"]["front_joint_kind"] = "wide-angle";
  CHECK(!examined(assessed(line), Check::inertia_excitation));
}

TEST_CASE("a joint that passes a right angle in work ends no assessment, and nothing that rests on it is known") {
  Json locked = with_bearings();
  locked["torsion"] = pulsing()["torsion"];
  locked["range"]["working"]["yaw"] = {"-170 deg", "10 deg"};
  const Assessment assessment = assessed(locked);
  CHECK(assessment.verdict() == Status::stop);
  for (const Check check :
       {Check::joint_torque_swing, Check::pulsing_torque, Check::joint_bearing_life, Check::fatigue_life}) {
    CHECK_MESSAGE(finding(assessment, check).status == Status::not_known, check_id(check));
  }
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
  CHECK(problem("/torsion/damping", "0 %") == "torsion.damping");
  CHECK(problem("/torsion/damping", "50 %") == "torsion.damping");
  CHECK(problem("/driveline/duties", Json::parse(R"([{"name": "mowing", "share": "60 %"}])")) == "driveline.duties");
  CHECK(problem("/driveline/bearing_rating", "0 kN") == "driveline.bearing_rating");
  Json twice = document();
  for (Json& shaft : twice["torsion"]["shafts"]) shaft["joints"] = "yes";
  CHECK(try_read_case(twice.dump()).problems.at(0).path == "torsion.shafts");
  CHECK(problem("/torsion/masses/0/inertia", "-1 kg.m^2") == "torsion.masses[0].inertia");
  CHECK(problem("/torsion/shafts/0/stiffness", "0 N.m/rad") == "torsion.shafts[0].stiffness");
  CHECK(problem("/driveline/telescope_positions", 2.5) == "driveline.telescope_positions");
  CHECK(problem("/driveline/other_tube/inner_diameter", "80 mm") == "driveline.other_tube.inner_diameter");
}
