// Each check of an assessment in each of its statuses, by changing one entry of a case that passes.

#include <fieldshaft/fieldshaft.hpp>

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <limits>
#include <sstream>

using namespace fieldshaft;
using Json = nlohmann::ordered_json;

namespace {

Json good_document() {
  std::ifstream file(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/trailed-cutter-that-fits.json");
  REQUIRE(file.good());
  return Json::parse(file);
}

Assessment assessed(const Json& document) { return assess(read_case(document.dump())); }

/// The assessment of the good case with one entry changed; a null value erases the entry.
Assessment with(const char* pointer, Json value) {
  Json document = good_document();
  const Json::json_pointer at(pointer);
  if (value.is_null()) {
    document[at.parent_pointer()].erase(at.back());
  } else {
    document[at] = std::move(value);
  }
  return assessed(document);
}

Status status_of(const Assessment& assessment, Check check) {
  const Finding* finding = assessment.find(check);
  REQUIRE_MESSAGE(finding != nullptr, check_id(check) << " was not examined");
  return finding->status;
}

std::string reason_of(const Assessment& assessment, Check check) {
  const Finding* finding = assessment.find(check);
  REQUIRE_MESSAGE(finding != nullptr, check_id(check) << " was not examined");
  return finding->reason;
}

/// The same document with every measurement exact.
Json exactly_measured(Json document) {
  const std::string sign = " ± ";
  const Json flat = document.flatten();
  for (const auto& [path, value] : flat.items()) {
    if (!value.is_string()) continue;
    const std::string text = value.get<std::string>();
    const std::size_t at = text.find(sign);
    if (at != std::string::npos) document[Json::json_pointer(path)] = text.substr(0, at);
  }
  return document;
}

double amount_in(const Assessment& assessment, Check check, const std::string& name) {
  const Finding* finding = assessment.find(check);
  REQUIRE_MESSAGE(finding != nullptr, check_id(check) << " was not examined");
  const auto found = std::find_if(finding->facts.begin(), finding->facts.end(),
                                  [&name](const Fact& fact) { return fact.name == name; });
  REQUIRE(found != finding->facts.end());
  return std::get<Amount>(found->value).si;
}

} // namespace

TEST_CASE("the good case passes, says on what it rests, and names what was not examined") {
  const Assessment assessment = assessed(good_document());
  CHECK(assessment.verdict() == Status::ok);
  CHECK(assessment.rests_on_memory());
  CHECK(assessment.count(Status::ok) == assessment.findings.size());
  REQUIRE(!assessment.not_examined.empty());
  const std::string report = to_text(assessment);
  CHECK(report.find("NO OBJECTION in") == 0);
  CHECK(report.find("fits") == std::string::npos);
  CHECK(report.find("from memory, verify") != std::string::npos);
  CHECK(report.find("remove the key") != std::string::npos);
}

TEST_CASE("an assessment of nothing is not known, never ok") {
  const Assessment assessment = assess(Case{});
  CHECK(assessment.verdict() == Status::not_known);
  CHECK(assessment.count(Status::ok) == 0);
  CHECK(assessment.count(Status::caution) == 0);
  CHECK(Assessment{}.verdict() == Status::not_known);
}

TEST_CASE("speed") {
  Json document = good_document();
  document["tractor"]["pto"]["gears"].push_back(
      {{"name", "1000"}, {"pto_speed", "1000 rpm"}, {"engine_speed", "2100 rpm"}});
  document["tractor"]["pto"]["selected"] = "1000";
  document["tractor"]["pto"]["arrangement"] = "lever only";
  const Assessment fast = assessed(document);
  CHECK(status_of(fast, Check::pto_speed) == Status::stop);
  CHECK(reason_of(fast, Check::pto_speed) == "speed.too_fast_rotor");
  CHECK(status_of(fast, Check::stub_and_lever) == Status::stop);
  CHECK(status_of(fast, Check::tip_speed) == Status::stop);
  CHECK(status_of(fast, Check::overspeed_at_high_idle) == Status::stop);

  document["implement"]["input_speed"] = "1000 rpm";
  document["implement"]["rotor"]["input_speed"] = "1000 rpm";
  const Assessment lever = assessed(document);
  CHECK(status_of(lever, Check::pto_speed) == Status::ok);
  CHECK(status_of(lever, Check::stub_and_lever) == Status::caution); // six splines at 1000

  document["tractor"]["pto"]["selected"] = "540";
  const Assessment slow = assessed(document);
  CHECK(reason_of(slow, Check::pto_speed) == "speed.too_slow");
  CHECK(status_of(slow, Check::pto_speed) == Status::stop);

  CHECK(status_of(with("/implement/input_speed", nullptr), Check::pto_speed) == Status::not_known);
  CHECK(status_of(with("/tractor/pto/gears/0/pto_speed", "530 rpm"), Check::pto_speed) == Status::ok);
  CHECK(status_of(with("/tractor/pto/gears/0/pto_speed", "552 rpm"), Check::pto_speed) == Status::stop);
}

TEST_CASE("fit of the spline") {
  CHECK(status_of(with("/driveline/tractor_yoke", {{"type", 2}}), Check::spline_fit) == Status::stop);
  const Json measured = {{"spline_count", 6}, {"diameter", "35 mm ± 1 mm"}};
  CHECK(status_of(with("/driveline/tractor_yoke", measured), Check::spline_fit) == Status::ok);
  const Json wrong_reading = {{"spline_count", 20}, {"diameter", "35 mm"}};
  CHECK(status_of(with("/driveline/tractor_yoke", wrong_reading), Check::spline_fit) == Status::not_known);
  const Json odd = {{"spline_count", 8}, {"diameter", "50 mm"}};
  CHECK(status_of(with("/tractor/pto/stub", odd), Check::spline_fit) == Status::not_known);
  CHECK(status_of(with("/driveline/adaptor", {{"length", "100 mm"}}), Check::adaptor) == Status::stop);
  CHECK(status_of(with("/driveline/adaptor", nullptr), Check::adaptor) == Status::not_known);
}

TEST_CASE("power: the band of the editions, reserve, and the permitted input") {
  CHECK(status_of(with("/implement/power_need", "55 kW"), Check::interface_power) == Status::caution);
  CHECK(status_of(with("/implement/power_need", "61 kW"), Check::interface_power) == Status::stop);
  CHECK(status_of(with("/tractor/power", "90 kW"), Check::tractor_power_through_interface) == Status::caution);
  CHECK(status_of(with("/implement/power_need", "50 kW"), Check::power_reserve) == Status::caution);
  CHECK(status_of(with("/implement/power_need", "80 kW"), Check::power_reserve) == Status::stop);
  CHECK(status_of(with("/tractor/power_basis", nullptr), Check::power_reserve) == Status::not_known);
  CHECK(status_of(with("/implement/permitted_power", "50 kW"), Check::permitted_power) == Status::stop);
  // The same figure as engine power is less at the PTO.
  Json document = good_document();
  document["tractor"]["power"] = "43 kW";
  CHECK(status_of(assessed(document), Check::power_reserve) == Status::caution);
  document["tractor"]["power"] = "50 kW";
  CHECK(status_of(assessed(document), Check::power_reserve) == Status::ok);
  document["tractor"]["power_basis"] = "gross engine";
  CHECK(status_of(assessed(document), Check::power_reserve) == Status::caution);
}

TEST_CASE("strength: the device's upper bound, else the larger of implement and lugged engine") {
  CHECK(status_of(with("/overload/setting", "2000 N·m"), Check::root_torsion) == Status::stop);
  CHECK(status_of(with("/overload/scatter", "30 %"), Check::root_torsion) == Status::caution);
  CHECK(status_of(with("/overload/scatter", nullptr), Check::root_torsion) == Status::not_known);
  CHECK(status_of(with("/overload", nullptr), Check::root_torsion) == Status::not_known);
  CHECK(status_of(with("/overload/setting", "2600 N·m"), Check::joint_rating) == Status::stop);
  CHECK(status_of(with("/driveline/joint_rating", nullptr), Check::joint_rating) == Status::not_known);
  CHECK(status_of(with("/driveline/tube/inner_diameter", "58 mm"), Check::tube_torsion) == Status::stop);
  CHECK(status_of(with("/tractor/pto/stub_steel", nullptr), Check::root_torsion) == Status::not_known);
  CHECK(status_of(with("/driveline/hub_length", "9 mm"), Check::tooth_shear) == Status::not_known);

  // Without a device 58 kW at rated speed lugged by 28 % bring 1254 N·m; the implement's peak is 1082 N·m.
  const Assessment without = with("/overload", "none");
  const Finding* root = without.find(Check::root_torsion);
  REQUIRE(root != nullptr);
  const auto torque = std::find_if(root->facts.begin(), root->facts.end(),
                                   [](const Fact& f) { return std::string(f.name) == "torque"; });
  REQUIRE(torque != root->facts.end());
  const double expected = 58e3 * 1.28 / (540.0 * 2200.0 / 2100.0 * 2.0 * pi / 60.0);
  CHECK(std::get<Amount>(torque->value).si == doctest::Approx(expected).epsilon(1e-12));
  Json document = good_document();
  document["overload"] = "none";
  document["implement"]["peak_factor"] = 3.0;
  const Assessment implement = assessed(document);
  CHECK(to_text(implement).find("the implement's peak") != std::string::npos);
  document["implement"].erase("peak_factor");
  CHECK(status_of(assessed(document), Check::root_torsion) == Status::not_known);
}

TEST_CASE("a stub that is strong enough straight and not at an angle is shown as such") {
  Json document = good_document();
  document["range"]["turning"]["yaw"] = {"-75 deg", "75 deg"};
  document["overload"]["place"] = "tractor end"; // bounds the torque at the stub, however the joints are bent
  const Assessment assessment = assessed(document);
  CHECK(status_of(assessment, Check::root_torsion) == Status::ok);
  CHECK(status_of(assessment, Check::root_torsion_at_angle) == Status::stop);
  CHECK(reason_of(assessment, Check::root_torsion_at_angle) == "stub.root_at_angle_only");
}

TEST_CASE("uneven joints raise at the stub what a device behind them lets through") {
  // A pair whose speed varies by U turns at most k times as fast behind as ahead, with k - 1/k = U; power is kept.
  const Torque device = newton_metres(1220.0 * 1.15);
  Json document = exactly_measured(good_document());
  const Assessment behind = assessed(document);
  const double u = behind.find(Check::speed_variation)->value->si;
  REQUIRE(u > 0.01);
  const double k = 0.5 * (u + std::sqrt(u * u + 4.0));
  CHECK(amount_in(behind, Check::root_torsion, "torque") == doctest::Approx(device.value() * k).epsilon(1e-9));
  CHECK(amount_in(behind, Check::tooth_shear, "torque") == doctest::Approx(device.value() * k).epsilon(1e-9));
  document["overload"]["place"] = "tractor end";
  const Assessment ahead = assessed(document);
  CHECK(amount_in(ahead, Check::root_torsion, "torque") == doctest::Approx(device.value()).epsilon(1e-12));
  // The stub governs the window, which closes by the same factor.
  CHECK(amount_in(ahead, Check::overload_window, "highest") / amount_in(behind, Check::overload_window, "highest") ==
        doctest::Approx(k).epsilon(1e-9));
  // Without the geometry it is the torque of straight joints, and the angles are asked for elsewhere.
  const Assessment unknown = with("/driveline/yoke_phase", nullptr);
  CHECK(amount_in(unknown, Check::root_torsion, "torque") == doctest::Approx(device.value()).epsilon(1e-12));
  CHECK(unknown.verdict() == Status::not_known);
}

TEST_CASE("uneven running must pass at high idle too, where the guide value allows less by the square of the speed") {
  Json document = exactly_measured(good_document());
  const double uneven = assessed(document).find(Check::speed_variation)->value->si;
  // 400 rad/s² over the square of the PTO speed: the engine speed, 2100 r/min at 540, at which that is this unevenness.
  const double meets = std::sqrt(400.0 / uneven) / rpm(540).value() * 2100.0;
  document["tractor"]["engine"]["high_idle"] = std::to_string(0.99 * meets) + " r/min";
  CHECK(status_of(assessed(document), Check::speed_variation) == Status::ok);
  document["tractor"]["engine"]["high_idle"] = std::to_string(1.01 * meets) + " r/min";
  const Assessment fast = assessed(document);
  CHECK(status_of(fast, Check::speed_variation) == Status::caution);
  CHECK(reason_of(fast, Check::speed_variation) == "variation.at_high_idle");
  CHECK(amount_in(fast, Check::speed_variation, "speed") == doctest::Approx(std::sqrt(400.0 / uneven) * 1.01));
}

TEST_CASE("flanks: how the yoke sits decides, and hardness must be known") {
  CHECK(status_of(with("/driveline/seat", "clearance"), Check::flank_pressure) == Status::caution);
  CHECK(status_of(with("/driveline/seat", nullptr), Check::flank_pressure) == Status::not_known);
  const Json own = {{"yield", "800 MPa"}, {"ultimate", "950 MPa"}};
  CHECK(status_of(with("/tractor/pto/stub_steel", own), Check::flank_pressure) == Status::not_known);
  CHECK(status_of(with("/limits/flank_pressure", "3 MPa"), Check::flank_pressure) == Status::caution);
}

TEST_CASE("life is a class, judged against the wanted life") {
  CHECK(status_of(with("/implement/torque_swing", "60 %"), Check::fatigue_life) == Status::stop);
  CHECK(status_of(with("/implement/torque_swing", nullptr), Check::fatigue_life) == Status::not_known);
  CHECK(status_of(with("/limits/wanted_life", nullptr), Check::fatigue_life) == Status::ok);
}

TEST_CASE("drawbar") {
  CHECK(status_of(with("/tractor/hitch/distance", "14 in"), Check::drawbar_distance) == Status::ok);
  CHECK(status_of(with("/tractor/hitch/distance", "378 mm"), Check::drawbar_distance) == Status::caution);
  CHECK(status_of(with("/tractor/hitch/distance", "250 mm"), Check::drawbar_distance) == Status::stop);
  CHECK(status_of(with("/tractor/hitch/distance", "700 mm"), Check::drawbar_distance) == Status::caution);
  CHECK(status_of(with("/tractor/pto/stub", {{"type", 4}}), Check::drawbar_distance) == Status::not_known);
}

TEST_CASE("joint angles and telescope") {
  CHECK(status_of(with("/range/working/yaw", Json{"-20 deg", "35 deg"}), Check::working_angle) == Status::caution);
  CHECK(status_of(with("/range/working/yaw", Json{"-60 deg", "60 deg"}), Check::working_angle) == Status::stop);
  CHECK(status_of(with("/range/turning/yaw", Json{"-60 deg", "60 deg"}), Check::turning_angle) == Status::caution);
  CHECK(status_of(with("/range/turning", nullptr), Check::turning_angle) == Status::not_known);
  CHECK(status_of(with("/limits/working_angle", "5 deg"), Check::working_angle) == Status::stop);
  CHECK(status_of(with("/limits/angle_difference", "0.1 deg"), Check::angle_difference) == Status::stop);
  CHECK(status_of(with("/driveline/closed_length", "650 mm"), Check::clearance) == Status::stop);
  CHECK(reason_of(with("/driveline/closed_length", "650 mm"), Check::clearance) == "telescope.bottoms");
  CHECK(status_of(with("/driveline/closed_overlap", "370 mm"), Check::overlap) == Status::caution);
  CHECK(reason_of(with("/driveline/closed_overlap", "150 mm"), Check::overlap) == "telescope.apart");
  CHECK(status_of(with("/driveline/closed_overlap", nullptr), Check::overlap) == Status::not_known);
}

TEST_CASE("rotor") {
  CHECK(status_of(with("/implement/rotor/highest_tip_speed", "60 m/s"), Check::tip_speed) == Status::stop);
  const Assessment line = with("/implement/rotor/highest_tip_speed", nullptr);
  CHECK(status_of(line, Check::tip_speed) == Status::caution); // a line for lawn mowers proves nothing
  CHECK(reason_of(line, Check::tip_speed) == "rotor.tip_speed_line");
  CHECK(status_of(with("/implement/rotor", nullptr), Check::tip_speed) == Status::not_known);
  CHECK(with("/implement/rotor", "none").find(Check::tip_speed) == nullptr);
  CHECK(status_of(with("/tractor/engine/high_idle", "2460 rpm"), Check::overspeed_at_high_idle) == Status::caution);
  // Beyond the PTO's ceiling a caution, beyond the tips' limit a stop.
  CHECK(status_of(with("/tractor/engine/high_idle", "2600 rpm"), Check::overspeed_at_high_idle) == Status::stop);
  CHECK(reason_of(with("/tractor/engine/high_idle", "2600 rpm"), Check::overspeed_at_high_idle) ==
        "overspeed.tips_beyond");
  Json fast = good_document();
  fast["implement"]["rotor"].erase("highest_tip_speed");
  fast["implement"]["rotor"]["tip_radius"] = "4 m";
  CHECK(status_of(assessed(fast), Check::tip_speed) == Status::stop);
  fast["limits"]["tip_speed"] = "900 m/s"; // tightens at most
  CHECK(status_of(assessed(fast), Check::tip_speed) == Status::stop);
  CHECK(status_of(with("/tractor/engine/high_idle", nullptr), Check::overspeed_at_high_idle) == Status::not_known);
}

TEST_CASE("tips beyond the line of lawn mowers are not known without the manual, and make no engine speed") {
  Json document = good_document();
  document["implement"]["rotor"].erase("highest_tip_speed");
  document["implement"]["rotor"]["rotor_speed"] = "1300 r/min"; // 0.75 m: 102 m/s
  const Assessment fast = assessed(document);
  CHECK(status_of(fast, Check::tip_speed) == Status::not_known);
  CHECK(fast.find(Check::tip_speed)->missing == std::vector<std::string>{"implement.rotor.highest_tip_speed"});
  CHECK(in(*fast.gears[0].never_pass, unit::rpm) == doctest::Approx(2450.0)); // 630 r/min, where guards act
  document["limits"]["tip_speed"] = "102.5 m/s";                              // the owner's own makes one
  CHECK(in(*assessed(document).gears[0].never_pass, unit::rpm) < 2200.0);
}

TEST_CASE("an owner's PTO speed tightens the guards' and never loosens them") {
  Json document = good_document();
  document["tractor"]["engine"]["high_idle"] = "2460 r/min"; // 633 r/min at the PTO
  const auto high_idle = [&] { return *assessed(document).find(Check::overspeed_at_high_idle); };
  const Amount printed = *high_idle().limit;
  document["limits"]["pto_speed"] = "900 r/min";
  CHECK(high_idle().limit->si == printed.si);
  CHECK(high_idle().status == Status::caution);
  document["limits"]["pto_speed"] = "580 r/min";
  CHECK(high_idle().limit->si == doctest::Approx(580.0 * pi / 30.0));
}

TEST_CASE("of two stubs that stand out the unused one is asked for, and stops where it is bare") {
  Json document = good_document();
  const auto cap = [&] {
    for (const Finding& finding : assessed(document).findings) {
      if (finding.check == Check::master_shield && finding.part == "other stub") return finding;
    }
    return Finding{};
  };
  CHECK(cap().part.empty()); // one stub alone
  document["tractor"]["pto"]["arrangement"] = "two stubs out";
  CHECK(cap().status == Status::not_known);
  CHECK(cap().missing == std::vector<std::string>{"tractor.pto.other_stub_cap"});
  document["tractor"]["pto"]["other_stub_cap"] = "absent";
  CHECK(cap().status == Status::stop);
  const Remedies found = remedies(read_case(document.dump()));
  REQUIRE(!found.sets.empty());
  CHECK(found.sets[0].changes[0].kind == ChangeKind::refit_guard);
  document["tractor"]["pto"]["other_stub_cap"] = "present";
  CHECK(cap().status == Status::ok);
}

TEST_CASE("other gears: every one that the lever reaches is judged") {
  Json document = good_document();
  document["tractor"]["pto"]["arrangement"] = "two stubs out";
  document["tractor"]["pto"]["gears"].push_back(
      {{"name", "1000"}, {"pto_speed", "1000 rpm"}, {"engine_speed", "2100 rpm"}});
  CHECK(assessed(document).find(Check::overspeed_in_other_gears) == nullptr); // on a stub of its own
  document["tractor"]["pto"]["gears"].push_back(
      {{"name", "540E"}, {"pto_speed", "540 rpm"}, {"engine_speed", "1600 rpm"}});
  CHECK(status_of(assessed(document), Check::overspeed_in_other_gears) == Status::caution); // on the same stub
  const Finding economy = *assessed(document).find(Check::overspeed_in_other_gears);
  REQUIRE(economy.advice.size() == 1);
  CHECK(std::string(economy.advice[0]) == "other_gears.keep_below"); // of use, with a ceiling
  document["tractor"]["pto"]["arrangement"] = "lever only";
  CHECK(status_of(assessed(document), Check::overspeed_in_other_gears) == Status::caution);
}

TEST_CASE("joints of different kinds are judged by their own limits, and crossed planes by how unevenly they run") {
  Json document = good_document();
  document["range"]["working"]["yaw"] = {"-40 deg", "40 deg"};
  document["driveline"]["front_joint_kind"] = "wide-angle";
  const Assessment one_wide = assessed(document);
  CHECK(status_of(one_wide, Check::working_angle) == Status::caution); // the plain joint at the implement
  CHECK(status_of(one_wide, Check::speed_variation) == Status::caution);
  document["driveline"]["rear_joint_kind"] = "wide-angle";
  CHECK(status_of(assessed(document), Check::speed_variation) == Status::ok);
  CHECK(status_of(with("/driveline/yoke_phase", "60 deg"), Check::speed_variation) != Status::ok);
  CHECK(status_of(with("/driveline/yoke_phase", nullptr), Check::speed_variation) == Status::not_known);
  CHECK(status_of(with("/driveline/rear_joint_kind", nullptr), Check::turning_angle) == Status::not_known);
}

TEST_CASE("a stated limit that is laxer than the practice gives a caution at best") {
  Json document = good_document();
  document["range"]["working"]["yaw"] = {"-60 deg", "60 deg"};
  document["limits"]["working_angle"] = "80 deg";
  CHECK(status_of(assessed(document), Check::working_angle) == Status::caution);
  document = good_document();
  document["limits"]["minimum_overlap"] = "1 mm";
  document["driveline"]["closed_overlap"] = "300 mm";
  CHECK(status_of(assessed(document), Check::overlap) == Status::caution);
}

TEST_CASE("a loose measurement never passes where a tight one does not") {
  Json document = good_document();
  document["tractor"]["hitch"]["distance"] = "378 mm ± 30 mm";
  CHECK(status_of(assessed(document), Check::drawbar_distance) == Status::caution);
  document["tractor"]["hitch"]["distance"] = "400 mm ± 20 mm";
  CHECK(reason_of(assessed(document), Check::drawbar_distance) == "drawbar.measure_again");
}

TEST_CASE("a device bounds the torque only if its kind and place are known, and none is a caution at best") {
  CHECK(status_of(with("/overload/kind", nullptr), Check::root_torsion) == Status::not_known);
  CHECK(status_of(with("/overload/place", nullptr), Check::root_torsion) == Status::not_known);
  CHECK(status_of(with("/overload/setting", "1400 N·m"), Check::overload_window) == Status::stop);
  CHECK(status_of(with("/overload/setting", "1100 N·m"), Check::overload_window) == Status::caution);
  CHECK(status_of(with("/overload", "none"), Check::overload_window) != Status::ok);
}

TEST_CASE("a start is bounded by the device, else by the tractor's clutch, else by nothing that is known") {
  CHECK(status_of(assessed(good_document()), Check::start_up) == Status::ok);
  CHECK(status_of(with("/overload", "none"), Check::start_up) == Status::not_known);
  Json document = good_document();
  document["overload"] = "none";
  document["tractor"]["pto"]["clutch_torque"] = "1200 N·m";
  CHECK(reason_of(assessed(document), Check::start_up) == "start.clutch");
  CHECK(status_of(assessed(document), Check::start_up) == Status::ok);
  document["tractor"]["pto"]["clutch_torque"] = "3000 N·m";
  CHECK(status_of(assessed(document), Check::start_up) == Status::stop);
}

TEST_CASE("where no setting of a device is right, the smallest change of the stub is named") {
  std::ifstream file(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/strong-tractor-at-540.json");
  Json document = Json::parse(file);
  const std::string healed = to_text(assessed(document));
  CHECK(healed.find("Smallest change of the stub that bears it with this steel: type 3") != std::string::npos);
  document["tractor"]["pto"]["stub_steel"]["yield"] = "400 MPa";
  const Assessment weak = assessed(document); // by id: the sentence is broken over lines in the report
  const Finding* window = weak.find(Check::overload_window);
  REQUIRE(window != nullptr);
  CHECK(std::string(window->advice.back()) == "heal.steel");
}

TEST_CASE("a joint at an angle raises the torque behind it") {
  Json document = good_document();
  document["driveline"]["joint_rating"] = "1450 N·m"; // the device lets 1403 N·m through
  CHECK(status_of(assessed(document), Check::joint_rating) == Status::stop);
  document["driveline"]["joint_rating"] = "1550 N·m";
  CHECK(status_of(assessed(document), Check::joint_rating) == Status::ok);
}

TEST_CASE("a mounted machine: the linkage gives the pose, and a lift that cannot be is not known") {
  std::ifstream file(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/mounted-mower-lifted-for-transport.json");
  Json document = Json::parse(file);
  const Assessment lifted = assessed(document);
  const Finding* overlap = lifted.find(Check::overlap);
  REQUIRE(overlap != nullptr);
  CHECK(overlap->status == Status::stop);
  CHECK(overlap->state == MachineState::transport);
  REQUIRE(overlap->pose->lift.has_value());
  CHECK(*overlap->pose->lift == millimetres(450));
  document["range"]["transport"]["lift"] = {"100 mm", "2 m"};
  const Assessment impossible = assessed(document);
  CHECK(status_of(impossible, Check::transport_angle) == Status::not_known);
  CHECK(reason_of(impossible, Check::transport_angle) == "angle.impossible");
  CHECK(status_of(impossible, Check::clearance) == Status::not_known);
  document["tractor"]["hitch"].erase("top_link");
  CHECK(status_of(assessed(document), Check::working_angle) == Status::not_known);
}

TEST_CASE("a missing or damaged guard stops, an unstated one is not known") {
  const struct {
    const char* pointer;
    Check check;
  } guards[] = {{"/tractor/pto/master_shield", Check::master_shield},
                {"/driveline/guard", Check::driveline_guard},
                {"/implement/input/guard", Check::input_guard}};
  for (const auto& guard : guards) {
    CHECK(status_of(with(guard.pointer, "absent"), guard.check) == Status::stop);
    CHECK(status_of(with(guard.pointer, "damaged"), guard.check) == Status::stop);
    CHECK(status_of(with(guard.pointer, nullptr), guard.check) == Status::not_known);
  }
}

TEST_CASE("a case built in code with numbers that cannot be throws, and its twin does not") {
  Case value = read_case(good_document().dump());
  value.implement.power_need = Power::from_value(std::numeric_limits<double>::quiet_NaN());
  CHECK_THROWS_AS(assess(value), InputError);
  const AssessmentResult result = try_assess(value);
  CHECK(!result.result);
  CHECK(result.problem.find("power") != std::string::npos);
  CHECK(try_assess(read_case(good_document().dump())).result);
}

TEST_CASE("the JSON report carries the findings with numbers, limits, sources and what is missing") {
  const Json report = Json::parse(to_json(with("/driveline/guard", nullptr)));
  CHECK(report.at("schema") == report_schema_version);
  CHECK(report.at("verdict") == "not_known");
  CHECK(report.at("counts").at("not_known") == 1);
  bool seen = false;
  for (const Json& finding : report.at("findings")) {
    CHECK(!finding.at("text").get<std::string>().empty());
    if (finding.at("id") != "strength.root_torsion") continue;
    seen = true;
    CHECK(finding.at("value").at("unit") == "Pa");
    CHECK(finding.at("value").at("si").get<double>() < finding.at("limit").at("si").get<double>());
    CHECK(finding.at("basis").size() >= 3);
  }
  CHECK(seen);
  const Json& guard = *std::find_if(report.at("findings").begin(), report.at("findings").end(),
                                    [](const Json& f) { return f.at("id") == "guard.driveline"; });
  CHECK(guard.at("missing") == Json{"driveline.guard"});
}

TEST_CASE("reports in US units name no metric unit in their numbers") {
  const std::string report = to_text(assessed(good_document()), UnitStyle::us);
  CHECK(report.find(" N·m") == std::string::npos);
  CHECK(report.find("lbf·ft") != std::string::npos);
  CHECK(report.find(" hp") != std::string::npos);
}

// Values and limits reckoned by hand, in one plane: two triangles, a ring under torsion, a circle.

namespace {

/// Front joint 340 mm ahead of the pin, rear joint 360 mm behind it, all level, every measurement exact. The machine
/// turns 10° to either side in work, 30° at the headland and 55° with the driveline at rest.
Json in_one_plane() {
  Json document = good_document();
  document["tractor"]["hitch"].update({{"distance", "400 mm"}, {"drop", "250 mm"}, {"lateral", "0 mm"}});
  document["implement"]["input"].update({{"behind", "420 mm"}, {"above", "250 mm"}, {"lateral", "0 mm"}});
  document["driveline"].update(
      {{"front_joint", "60 mm"}, {"rear_joint", "60 mm"}, {"closed_length", "500 mm"}, {"closed_overlap", "420 mm"}});
  for (Json& state : document["range"]) state["pitch"] = state["roll"] = {"0 deg", "0 deg"};
  return document;
}

/// The triangle of pin and joint centres at a turn [rad], with the joints so far from the pin [m].
struct Triangle {
  double turn;
  double ahead = 0.340;
  double behind = 0.360;

  double front() const { return std::atan2(behind * std::sin(turn), ahead + behind * std::cos(turn)); }
  double rear() const { return turn - front(); }
  double length() const { return std::sqrt(ahead * ahead + behind * behind + 2.0 * ahead * behind * std::cos(turn)); }
};

constexpr double degree = pi / 180.0;
const Triangle in_work{10.0 * degree};
const Triangle at_headland{30.0 * degree};
const Triangle at_rest{55.0 * degree};

std::string text_of(double value, const char* unit) {
  std::ostringstream text;
  text.precision(12);
  text << value << ' ' << unit;
  return text.str();
}

Json changed(Json document, const char* pointer, Json value) {
  document[Json::json_pointer(pointer)] = std::move(value);
  return document;
}

/// A finding has the value of a hand reckoning, or lies up to `allowance` of it on the safe side, and this status.
void check_by_hand(const Json& document, Check check, double by_hand, Status status, double allowance = 0.0) {
  const Assessment assessment = assessed(document);
  const Finding* finding = assessment.find(check);
  CAPTURE(std::string(check_id(check)));
  REQUIRE(finding != nullptr);
  CHECK(finding->status == status);
  REQUIRE(finding->value.has_value());
  const double worse =
      finding->sense == LimitSense::at_least ? by_hand - finding->value->si : finding->value->si - by_hand;
  const double rounding = 1e-12 * (1.0 + std::abs(by_hand)); // of the numbers written into the document
  CHECK(worse >= -rounding);
  CHECK(worse <= allowance * std::abs(by_hand) + rounding);
}

constexpr double proved = 1e-3; // bounds that are proved stand off by less

} // namespace

TEST_CASE("by hand: joint angles, their difference and their locks, just within a limit and just beyond it") {
  const Json plane = in_one_plane();
  const auto angle = [](double radians) { return text_of(radians / degree, "deg"); };
  const struct {
    const char* limit;
    Check check;
    double by_hand;
  } rows[] = {{"/limits/working_angle", Check::working_angle, in_work.front()},
              {"/limits/turning_angle", Check::turning_angle, at_headland.front()},
              {"/limits/transport_angle", Check::transport_angle, at_rest.front()},
              {"/limits/angle_difference", Check::angle_difference, in_work.front() - in_work.rear()}};
  for (const auto& row : rows) {
    check_by_hand(changed(plane, row.limit, angle(1.05 * row.by_hand)), row.check, row.by_hand, Status::ok, 0.04);
    check_by_hand(changed(plane, row.limit, angle(0.99 * row.by_hand)), row.check, row.by_hand, Status::stop, 0.04);
  }
  Json locked = changed(plane, "/driveline/rear_joint_lock", "40 deg");
  locked["driveline"]["front_joint_lock"] = angle(1.002 * at_rest.front());
  check_by_hand(locked, Check::joint_lock, at_rest.front(), Status::ok, proved);
  locked["driveline"]["front_joint_lock"] = angle(0.999 * at_rest.front());
  check_by_hand(locked, Check::joint_lock, at_rest.front(), Status::stop, proved);
  // With the shorter end at the rear, the rear joint bends more.
  locked = changed(locked, "/tractor/hitch/distance", "440 mm");
  locked["driveline"].update({{"front_joint_lock", "40 deg"}, {"rear_joint_lock", "28 deg"}});
  check_by_hand(locked, Check::joint_lock, Triangle{at_rest.turn, 0.380}.rear(), Status::stop, proved);
}

TEST_CASE("by hand: the telescope at its longest and shortest, and what each rule of the overlap makes of it") {
  const Json plane = in_one_plane();
  // Straight the centres are 700 mm apart: a driveline of 500 mm is drawn out by 200 mm.
  const auto overlap = [&plane](double closed) {
    return changed(plane, "/driveline/closed_overlap", text_of(closed, "mm"));
  };
  check_by_hand(overlap(351.0), Check::overlap, 0.151, Status::ok, proved);
  check_by_hand(overlap(349.0), Check::overlap, 0.149, Status::caution, proved);
  check_by_hand(overlap(311.0), Check::overlap, 0.111, Status::caution, proved);
  check_by_hand(overlap(309.0), Check::overlap, 0.109, Status::stop, proved);
  // A third of 600 mm is more than 150 mm. Straight these centres are 1100 mm apart.
  Json far = overlap(600.0);
  far["tractor"]["hitch"]["distance"] = "600 mm";
  far["implement"]["input"]["behind"] = "620 mm";
  const auto third = [&far](double length) { return changed(far, "/driveline/closed_length", text_of(length, "mm")); };
  check_by_hand(third(701.0), Check::overlap, 0.201, Status::ok, proved);
  check_by_hand(third(699.0), Check::overlap, 0.199, Status::caution, proved);
  // At 55° the centres are nearest.
  const auto room = [&plane](double left) {
    return changed(plane, "/driveline/closed_length", text_of(1e3 * at_rest.length() - left, "mm"));
  };
  check_by_hand(room(51.0), Check::clearance, 0.051, Status::ok, 0.01);
  check_by_hand(room(49.5), Check::clearance, 0.0495, Status::caution, 0.01);
  check_by_hand(room(25.5), Check::clearance, 0.0255, Status::caution, 0.01);
  check_by_hand(room(24.5), Check::clearance, 0.0245, Status::stop, 0.01);
}

TEST_CASE("by hand: every tolerance is added at the end that makes the answer worse") {
  Json loose = in_one_plane();
  loose["tractor"]["hitch"]["distance"] = "400 mm ± 5 mm";
  loose["implement"]["input"]["behind"] = "420 mm ± 10 mm";
  loose["driveline"].update({{"front_joint", "60 mm ± 2 mm"},
                             {"rear_joint", "60 mm ± 1 mm"},
                             {"closed_length", "500 mm ± 3 mm"},
                             {"closed_overlap", "420 mm ± 4 mm"}});
  // Straight, all in line: 718 mm at most, less a driveline of 497 mm, drawn out of 416 mm.
  check_by_hand(loose, Check::overlap, 0.416 - (0.718 - 0.497), Status::ok, proved);
  const Triangle nearest{at_rest.turn, 0.333, 0.349};
  check_by_hand(loose, Check::clearance, nearest.length() - 0.503, Status::ok, 0.01);
  const Triangle bent{at_rest.turn, 0.333, 0.371}; // the joint nearer to the pin bends more
  check_by_hand(loose, Check::transport_angle, bent.front(), Status::ok, 0.01);

  // An input shaft that points elsewhere by up to 2° turns the rear joint by these 2°, and its centre with it.
  Json turned = changed(in_one_plane(), "/implement/input/yaw", "0 deg ± 2 deg");
  turned["limits"]["transport_angle"] = "20 deg";
  const double lean = 2.0 * degree;
  const double aside = 0.060 * std::sin(lean);
  const double back = 0.420 - 0.060 * std::cos(lean);
  const double out = std::atan2(aside, back); // of the rear joint from the line through the pin
  const Triangle swung{at_rest.turn - out, 0.340, std::hypot(aside, back)};
  check_by_hand(turned, Check::transport_angle, at_rest.turn + lean - swung.front(), Status::stop, 0.01);
}

TEST_CASE("by hand: joints and tube bear the device's upper torque, raised by the joint that it stands behind") {
  const double device = 1220.0 * 1.15;
  const auto newton_metres = [](double torque) { return text_of(torque, "N·m"); };
  const auto megapascals = [](double stress) { return text_of(1e-6 * stress, "MPa"); };
  const struct {
    const char* place;
    double angle;
  } rows[] = {{"implement end", at_headland.rear()}, {"tractor end", at_headland.front()}};
  for (const auto& row : rows) {
    const Json plane = changed(in_one_plane(), "/overload/place", row.place);
    const double torque = device / std::cos(row.angle);
    check_by_hand(changed(plane, "/driveline/joint_rating", newton_metres(1.002 * torque)), Check::joint_rating, torque,
                  Status::ok, proved);
    check_by_hand(changed(plane, "/driveline/joint_rating", newton_metres(0.999 * torque)), Check::joint_rating, torque,
                  Status::stop, proved);
    // A tube of 60 mm by 50 mm. The schools differ: half of the yield strength, or 1/√3 of it, each over 1.25.
    const double stress = 16.0 * torque * 0.060 / (pi * (std::pow(0.060, 4) - std::pow(0.050, 4)));
    const auto yield = [&](double strength) {
      return changed(plane, "/driveline/tube_steel", {{"yield", megapascals(strength)}});
    };
    check_by_hand(yield(1.002 * 2.0 * 1.25 * stress), Check::tube_torsion, stress, Status::ok, proved);
    check_by_hand(yield(0.999 * 2.0 * 1.25 * stress), Check::tube_torsion, stress, Status::caution, proved);
    check_by_hand(yield(1.002 * std::sqrt(3.0) * 1.25 * stress), Check::tube_torsion, stress, Status::caution, proved);
    check_by_hand(yield(0.999 * std::sqrt(3.0) * 1.25 * stress), Check::tube_torsion, stress, Status::stop, proved);
  }
}

TEST_CASE("by hand: the stub, straight and bent by the front joint") {
  const Json plane = in_one_plane();
  // In one plane the pair of joints turns the stub slower than the implement by the ratio of the cosines at most.
  const double uneven = std::cos(at_headland.rear()) / std::cos(at_headland.front());
  const double device = 1220.0 * 1.15 * std::max(uneven, 1.0 / uneven);
  const double section = pi * std::pow(0.02886, 3); // the root of the six splines, 28.91 mm ± 0.05 mm
  const double shear = 16.0 * device / section;
  const double bent = 32.0 * device * std::tan(at_headland.front()) / section;
  const auto yield = [&plane](double strength) {
    return changed(plane, "/tractor/pto/stub_steel", {{"yield", text_of(1e-6 * strength, "MPa")}});
  };
  check_by_hand(yield(1.002 * 2.0 * 1.25 * shear), Check::root_torsion, shear, Status::ok, proved);
  check_by_hand(yield(0.999 * 2.0 * 1.25 * shear), Check::root_torsion, shear, Status::caution, proved);
  check_by_hand(yield(0.999 * std::sqrt(3.0) * 1.25 * shear), Check::root_torsion, shear, Status::stop, proved);
  const double mises = std::sqrt(bent * bent + 3.0 * shear * shear);
  const double tresca = std::sqrt(bent * bent + 4.0 * shear * shear);
  check_by_hand(yield(1.002 * 1.25 * tresca), Check::root_torsion_at_angle, mises, Status::ok, proved);
  check_by_hand(yield(0.999 * 1.25 * tresca), Check::root_torsion_at_angle, mises, Status::caution, proved);
  check_by_hand(yield(0.999 * 1.25 * mises), Check::root_torsion_at_angle, mises, Status::stop, proved);
}

TEST_CASE("by hand: an implement's peak below the engine's passes it where uneven joints raise it on its way") {
  Json plane = in_one_plane();
  plane["overload"] = "none";
  plane["implement"]["peak_factor"] = 2.083;
  // 58 kW at 2200 r/min of the engine, 2100 for 540: lugged with 28 % more torque. The implement: 34 kW at 540 r/min.
  const double lugged = 1.28 * 58e3 / (2.0 * pi * 540.0 / 60.0 * 2200.0 / 2100.0);
  const double implement = 2.083 * 34e3 / (2.0 * pi * 540.0 / 60.0);
  const double uneven = std::cos(at_headland.rear()) / std::cos(at_headland.front());
  const double raised = implement * std::max(uneven, 1.0 / uneven);
  REQUIRE(implement < lugged);
  REQUIRE(raised > 1.001 * lugged);
  const double torque = amount_in(assessed(plane), Check::root_torsion, "torque");
  CHECK(torque >= raised * (1.0 - 1e-12));
  CHECK(torque <= raised * (1.0 + proved));
}

TEST_CASE("by hand: power and the speed of the tips") {
  const Json plane = in_one_plane();
  // 58 kW at 2200 r/min are 55.4 kW at 2100 r/min; 18 % stay in reserve. With 28 % more torque 58 kW are there too.
  const double kept = 58e3 * 2100.0 / 2200.0 * 0.82;
  const auto need = [&plane](double watts) { return changed(plane, "/implement/power_need", text_of(watts, "W")); };
  check_by_hand(need(0.999 * kept), Check::power_reserve, 0.999 * kept, Status::ok);
  check_by_hand(need(1.001 * kept), Check::power_reserve, 1.001 * kept, Status::caution);
  check_by_hand(need(57.9e3), Check::power_reserve, 57.9e3, Status::caution);
  check_by_hand(need(58.1e3), Check::power_reserve, 58.1e3, Status::stop);
  check_by_hand(changed(plane, "/implement/permitted_power", "58.1 kW"), Check::permitted_power, 58e3, Status::ok);
  check_by_hand(changed(plane, "/implement/permitted_power", "57.9 kW"), Check::permitted_power, 58e3, Status::stop);
  const double tips = 2.0 * pi * 860.0 / 60.0 * 0.750;
  const auto tip_limit = [&plane](double speed) {
    return changed(plane, "/implement/rotor/highest_tip_speed", text_of(speed, "m/s"));
  };
  check_by_hand(tip_limit(1.001 * tips), Check::tip_speed, tips, Status::ok);
  check_by_hand(tip_limit(0.999 * tips), Check::tip_speed, tips, Status::stop);
}

TEST_CASE(
    "by hand: of a power that is only known between two shares, the parts and the implement meet the higher one") {
  Json engine = in_one_plane();
  engine["overload"] = "none";
  engine["implement"]["peak_factor"] = 1.2; // 722 N·m at most: the engine has more
  engine["tractor"]["power"] = "60 kW";
  engine["tractor"]["power_basis"] = "net engine"; // 86 to 90 % of it reach the PTO, as the handbook has it
  const double section = pi * std::pow(0.02886, 3);
  const auto check_stub = [section](Json document, double torque) {
    const double shear = 16.0 * torque / section;
    document["tractor"]["pto"]["stub_steel"] = {{"yield", text_of(1e-6 * 1.001 * 2.5 * shear, "MPa")}};
    check_by_hand(document, Check::root_torsion, shear, Status::ok);
    document["tractor"]["pto"]["stub_steel"] = {{"yield", text_of(1e-6 * 0.999 * 2.5 * shear, "MPa")}};
    check_by_hand(document, Check::root_torsion, shear, Status::caution);
  };
  // 28 % more than the torque at rated speed, where the PTO turns with 540 * 2200/2100.
  check_stub(engine, 0.90 * 60e3 * 1.28 / (2.0 * pi * 540.0 * 2200.0 / 2100.0 / 60.0));
  const auto permitted = [&engine](const char* power) { return changed(engine, "/implement/permitted_power", power); };
  check_by_hand(permitted("54.1 kW"), Check::permitted_power, 54e3, Status::ok);
  check_by_hand(permitted("53.9 kW"), Check::permitted_power, 54e3, Status::caution);
  check_by_hand(permitted("51.7 kW"), Check::permitted_power, 54e3, Status::caution);
  check_by_hand(permitted("51.5 kW"), Check::permitted_power, 54e3, Status::stop); // even 86 % are more
  // A stated curve: its greatest torque, at the gearing's 2100 to 540.
  Json curve = engine;
  curve["tractor"]["engine"].erase("torque_rise");
  curve["tractor"]["engine"]["curve"] = {{{"speed", "1400 r/min"}, {"torque", "330 N·m"}},
                                         {{"speed", "2200 r/min"}, {"power", "60 kW"}}};
  check_stub(curve, 0.90 * 330.0 * 2100.0 / 540.0);
}

TEST_CASE("by hand: a need from the table is judged at its upper end, and a stop at that alone is a caution") {
  std::ifstream file(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/baler-by-the-table.json");
  Json document = Json::parse(file);
  // 4 kW and 1.1 kWh/t at 12 t/h are 17.2 kW, give or take a half: 25.8 kW at most (row of the table, from memory).
  check_by_hand(document, Check::power_reserve, 25.8e3, Status::ok);
  const double torque = 25.8e3 * 1.8 / (2.0 * pi * 540.0 / 60.0); // what a device must let through
  document["overload"] = {
      {"kind", "friction clutch"}, {"scatter", "10 %"}, {"place", "implement end"}, {"setting", "1000 N·m"}};
  const Finding window = *assessed(document).find(Check::overload_window);
  const auto peak = std::find_if(window.facts.begin(), window.facts.end(),
                                 [](const Fact& fact) { return std::string(fact.name) == "working_peak"; });
  REQUIRE(peak != window.facts.end());
  CHECK(std::get<Amount>(peak->value).si == doctest::Approx(torque).epsilon(1e-12));
}

TEST_CASE("by hand: bearings of the joints live by their load, and nothing is known above half their rating") {
  Json bearings = in_one_plane();
  const double load = 34e3 / (2.0 * pi * 540.0 / 60.0) / (2.0 * 0.040);
  bearings["driveline"]["bearing_arm"] = "40 mm";
  const auto rated = [&bearings](double newtons) {
    return changed(bearings, "/driveline/bearing_rating", text_of(newtons, "N"));
  };
  const double share = 2.002; // of the rating over the load
  const double life = 1e6 * pi * pi / (2.0 * pi * 540.0 / 60.0 * in_work.front()) * std::pow(share, 10.0 / 3.0);
  const auto wanted = [&](double seconds) {
    return changed(rated(share * load), "/limits/wanted_life", text_of(seconds / 3600.0, "h"));
  };
  check_by_hand(wanted(0.95 * life), Check::joint_bearing_life, life, Status::ok, 0.04);
  check_by_hand(wanted(1.01 * life), Check::joint_bearing_life, life, Status::stop, 0.04);
  CHECK(status_of(assessed(rated(1.998 * load)), Check::joint_bearing_life) == Status::not_known);
}
