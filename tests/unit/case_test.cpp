#include "read_twice.hpp"

#include <fieldshaft/case.hpp>

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <functional>
#include <random>
#include <sstream>

using namespace fieldshaft;
using Json = nlohmann::ordered_json;

namespace {

std::string file_text(const std::filesystem::path& path) {
  std::ifstream file(path);
  REQUIRE_MESSAGE(file.good(), path.string() << " cannot be read");
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

std::vector<std::filesystem::path> example_files() {
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases")) {
    if (entry.path().extension() == ".json") files.push_back(entry.path());
  }
  std::sort(files.begin(), files.end());
  REQUIRE(!files.empty());
  return files;
}

Json good_document() {
  return Json::parse(file_text(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/trailed-cutter-that-fits.json"));
}

Json mounted_document() {
  return Json::parse(file_text(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/mounted-mower-lifted-for-transport.json"));
}

CaseReading read_twice(std::string_view text) { return ::read_twice(try_read_case, read_case, text); }

/// The one problem of a document in which one entry was changed.
CaseProblem only_problem(const Json& document) {
  const CaseReading reading = read_twice(document.dump());
  CHECK(!reading.result);
  for (const CaseProblem& problem : reading.problems) CAPTURE(problem.message());
  REQUIRE(reading.problems.size() == 1);
  return reading.problems.front();
}

Json changed(const char* pointer, Json value) {
  Json document = good_document();
  document[Json::json_pointer(pointer)] = std::move(value);
  return document;
}

} // namespace

TEST_CASE("every example reads, writes and reads back to the same document") {
  for (const auto& file : example_files()) {
    CAPTURE(file.string());
    const Case value = read_case(file_text(file));
    const std::string written = write_case(value);
    CHECK(write_case(read_case(written)) == written);
  }
}

TEST_CASE("each kind of wrong entry names its path, its value and what was expected") {
  SUBCASE("a bare number where a unit is due") {
    const CaseProblem p = only_problem(changed("/tractor/power", 85));
    CHECK(p.path == "tractor.power");
    CHECK(p.value == "85");
    CHECK(p.expected.find("a power such as \"60 kW\" or \"80 hp\", at least 0.001 kW") == 0);
    CHECK(p.expected.find("a bare number has no unit") != std::string::npos);
  }
  SUBCASE("a wrong dimension") {
    const CaseProblem p = only_problem(changed("/implement/input_speed", "540 Hz"));
    CHECK(p.path == "implement.input_speed");
    CHECK(p.expected.find("a frequency, not a shaft speed") != std::string::npos);
  }
  SUBCASE("a misspelt key") {
    Json document = good_document();
    document["implement"]["input_sped"] = "540 rpm";
    const CaseProblem p = only_problem(document);
    CHECK(p.path == "implement.input_sped");
    CHECK(p.value == "unknown key");
    CHECK(p.expected == "\"input_speed\"");
  }
  SUBCASE("a wrong word") {
    const CaseProblem p = only_problem(changed("/tractor/pto/master_shield", "yes"));
    CHECK(p.expected == "one of \"present\", \"damaged\", \"absent\"");
  }
  SUBCASE("out of bounds") {
    CHECK(only_problem(changed("/driveline/hub_length", "-3 mm")).path == "driveline.hub_length");
  }
  SUBCASE("not finite") {
    CHECK(only_problem(changed("/implement/peak_factor", "inf")).path == "implement.peak_factor");
  }
  SUBCASE("a tolerance that reaches below zero") {
    CHECK(only_problem(changed("/driveline/front_joint", "5 mm ± 6 mm")).path == "driveline.front_joint");
  }
  SUBCASE("a tolerance where none is taken") {
    CHECK(only_problem(changed("/tractor/power", "85 hp ± 1 hp")).path == "tractor.power");
  }
  SUBCASE("an interval upside down") {
    CHECK(only_problem(changed("/range/working/yaw", Json{"10 deg", "-10 deg"})).path == "range.working.yaw");
  }
  SUBCASE("an interval of one") {
    CHECK(only_problem(changed("/range/working/yaw", Json::array({"10 deg"}))).path == "range.working.yaw");
  }
  SUBCASE("missing") {
    Json document = good_document();
    document["tractor"].erase("name");
    const CaseProblem p = only_problem(document);
    CHECK(p.path == "tractor.name");
    CHECK(p.value == "missing");
  }
  SUBCASE("an object that is none") { CHECK(only_problem(changed("/tractor/engine", 5)).path == "tractor.engine"); }
  SUBCASE("a list that is none") {
    CHECK(only_problem(changed("/tractor/pto/gears", "540")).path == "tractor.pto.gears");
  }
  SUBCASE("neither none nor an object") {
    CHECK(only_problem(changed("/driveline/adaptor", true)).path == "driveline.adaptor");
  }
}

TEST_CASE("entries that contradict each other are problems") {
  SUBCASE("a gear that is not listed") {
    const CaseProblem p = only_problem(changed("/tractor/pto/selected", "1000"));
    CHECK(p.path == "tractor.pto.selected");
    CHECK(p.expected == "one of \"540\"");
  }
  SUBCASE("two gears of one name") {
    Json document = good_document();
    document["tractor"]["pto"]["gears"].push_back(document["tractor"]["pto"]["gears"][0]);
    CHECK(only_problem(document).path == "tractor.pto.gears[1].name");
  }
  SUBCASE("rated speed above high idle") {
    CHECK(only_problem(changed("/tractor/engine/high_idle", "2150 rpm")).path == "tractor.engine.rated_speed");
  }
  SUBCASE("engine curves that are no function, or that the other entries contradict") {
    const auto problem = [](Json points, const char* other = nullptr, Json value = nullptr) {
      Json document = good_document();
      document["tractor"]["engine"].erase("torque_rise");
      document["tractor"]["engine"]["curve"] = std::move(points);
      if (other != nullptr) document[Json::json_pointer(other)] = std::move(value);
      return only_problem(document);
    };
    const Json low = {{"speed", "1400 r/min"}, {"torque", "320 N·m"}};
    const Json rated = {{"speed", "2200 r/min"}, {"power", "58 kW"}};
    const CaseProblem twice = problem({low, low, rated});
    CHECK(twice.path == "tractor.engine.curve[1].speed");
    CHECK(twice.value == "\"1400 r/min\"");
    CHECK(twice.expected == "more than tractor.engine.curve[0].speed (\"1400 r/min\")");
    CHECK(problem({{{"speed", "1400 r/min"}}, rated}).path == "tractor.engine.curve[0]");
    CHECK(problem({{{"torque", "320 N·m"}}, rated}).path == "tractor.engine.curve[0].speed");
    CHECK(problem({low, {{"speed", "2200 r/min"}, {"power", "58 kW"}, {"torque", "250 N·m"}}}).value ==
          "a torque and a power");
    CHECK(problem({{{"speed", "1400 r/min"}, {"torque", "-3 N·m"}}, rated}, "/tractor/power", "58 kW").path ==
          "tractor.engine.curve[0].torque");
    CHECK(problem({low, {{"speed", "2100 r/min"}, {"power", "58 kW"}}}).path == "tractor.engine.rated_speed");
    const CaseProblem rising = problem({low, rated, {{"speed", "2300 r/min"}, {"torque", "260 N·m"}}});
    CHECK(rising.path == "tractor.engine.curve[2]");
    CHECK(rising.value == "260 N·m");
    CHECK(rising.expected == "on the governor line, less torque than tractor.engine.curve[1] (252 N·m)");
    CHECK(problem({low, rated, {{"speed", "2350 r/min"}, {"torque", "20 N·m"}}}).path ==
          "tractor.engine.curve[2].speed"); // where high idle stands
    const CaseProblem weak = problem({low, {{"speed", "2200 r/min"}, {"power", "50 kW"}}});
    CHECK(weak.path == "tractor.power");
    CHECK(weak.expected == "the power of tractor.engine.curve at rated speed (50.0 kW), within 3 %");
    CHECK(problem({low, rated}, "/tractor/engine/torque_rise", "28 %").path == "tractor.engine.torque_rise");
  }
  SUBCASE("a tube without wall") {
    CHECK(only_problem(changed("/driveline/tube/inner_diameter", "60 mm")).path == "driveline.tube.inner_diameter");
  }
  SUBCASE("overlap longer than the driveline") {
    CHECK(only_problem(changed("/driveline/closed_overlap", "800 mm")).path == "driveline.closed_overlap");
  }
  SUBCASE("a stop beyond the overlap, and a middle member longer than the whole") {
    CHECK(only_problem(changed("/driveline/greatest_travel", "420 mm")).path == "driveline.greatest_travel");
    CHECK(only_problem(changed("/driveline/middle_member", {{"closed_overlap", "900 mm"}})).path ==
          "driveline.middle_member.closed_overlap");
    CHECK(
        only_problem(changed("/driveline/middle_member", {{"closed_overlap", "300 mm"}, {"greatest_travel", "300 mm"}}))
            .path == "driveline.middle_member.greatest_travel");
  }
  SUBCASE("joints that lock beyond a right angle, or at none") {
    CHECK(only_problem(changed("/driveline/front_joint_lock", "91 deg")).path == "driveline.front_joint_lock");
    CHECK(only_problem(changed("/driveline/rear_joint_lock", "0 deg")).path == "driveline.rear_joint_lock");
  }
  SUBCASE("branches whose torque shares do not add up to one, and two of one name") {
    const auto branches = [](double first, Json second) {
      return Json::array({{{"name", "left wing"}, {"torque_share", first}}, std::move(second)});
    };
    const CaseProblem more =
        only_problem(changed("/implement/branches", branches(0.7, {{"name", "right wing"}, {"torque_share", 0.4}})));
    CHECK(more.path == "implement.branches");
    CHECK(more.value == "torque shares that add up to 1.1");
    CHECK(only_problem(changed("/implement/branches", branches(0.5, {{"name", "right wing"}, {"torque_share", 0.4}})))
              .path == "implement.branches");
    CHECK(read_twice(changed("/implement/branches", branches(0.5, {{"name", "right wing"}})).dump()).result);
    CHECK(only_problem(changed("/implement/branches", branches(0.5, {{"name", "left wing"}}))).path ==
          "implement.branches[1].name");
    CHECK(only_problem(changed("/implement/branches", branches(0.0, {{"name", "right wing"}}))).path ==
          "implement.branches[0].torque_share");
  }
  SUBCASE("lower links beside a drawbar") {
    CHECK(only_problem(changed("/fouling/lower_links", {{"diameter", "70 mm"}})).path == "fouling.lower_links");
  }
  SUBCASE("a type and a count") {
    CHECK(only_problem(changed("/tractor/pto/stub/spline_count", 6)).path == "tractor.pto.stub");
  }
  SUBCASE("a named steel with its own strength") {
    CHECK(only_problem(changed("/driveline/tube_steel/yield", "400 MPa")).path == "driveline.tube_steel");
  }
  SUBCASE("a steel that the catalogue lacks") {
    const CaseProblem p = only_problem(changed("/driveline/tube_steel/name", "1021"));
    CHECK(p.path == "driveline.tube_steel");
    CHECK(p.expected.find("no \"1021\"; it holds 1018 1020") != std::string::npos);
  }
  SUBCASE("a fixed stub with two speeds") {
    Json document = good_document();
    document["tractor"]["pto"]["gears"].push_back({{"name", "1000"}, {"pto_speed", "1000 rpm"}});
    CHECK(only_problem(document).path == "tractor.pto.arrangement");
  }
  SUBCASE("an engine speed above high idle") {
    CHECK(only_problem(changed("/tractor/pto/gears/0/engine_speed", "2400 rpm")).path ==
          "tractor.pto.gears[0].engine_speed");
  }
  SUBCASE("a gear whose name states another speed, and an economy gear at the engine speed of the plain one") {
    const CaseProblem p = only_problem(changed("/tractor/pto/gears/0/pto_speed", "1000 rpm"));
    CHECK(p.path == "tractor.pto.gears[0].pto_speed");
    CHECK(p.expected == "the speed that the name \"540\" states, within 2.5 %");
    Json document = good_document();
    document["tractor"]["pto"]["gears"].push_back(
        {{"name", "540E"}, {"pto_speed", "540 rpm"}, {"engine_speed", "2100 rpm"}});
    CHECK(only_problem(document).path == "tractor.pto.gears[1].engine_speed");
  }
  SUBCASE("a rotor stated for another input speed") {
    CHECK(only_problem(changed("/implement/rotor/input_speed", "1000 rpm")).path == "implement.rotor.input_speed");
  }
  SUBCASE("a peak below the swing") {
    CHECK(only_problem(changed("/implement/peak_factor", 1.1)).path == "implement.peak_factor");
  }
  SUBCASE("work with the PTO at rest") {
    CHECK(only_problem(changed("/range/working/driven", "no")).path == "range.working.driven");
  }
  SUBCASE("turning by nothing") {
    CHECK(only_problem(changed("/range/turning/yaw", Json{"0 deg", "0 deg"})).path == "range.turning.yaw");
  }
  SUBCASE("a torque rise of 2500 %") {
    CHECK(only_problem(changed("/tractor/engine/torque_rise", 25)).path == "tractor.engine.torque_rise");
  }
  SUBCASE("a strength in the wrong unit") {
    Json document = good_document();
    document["tractor"]["pto"]["stub_steel"] = {{"yield", "530 ksi"}};
    CHECK(only_problem(document).path == "tractor.pto.stub_steel.yield");
  }
  SUBCASE("a drawbar with links") {
    CHECK(only_problem(changed("/tractor/hitch/lower_link", "900 mm")).path == "tractor.hitch");
  }
  SUBCASE("a trailed implement that is lifted") {
    CHECK(only_problem(changed("/range/working/lift", Json{"0 mm", "1 mm"})).path == "range.working.lift");
  }
  SUBCASE("an angle and what it would be measured by") {
    CHECK(only_problem(changed("/range/turning/left_turn_radius", "5 m")).path == "range.turning.yaw");
    CHECK(only_problem(changed("/range/working/crest_radius", "20 m")).path == "range.working.pitch");
    CHECK(only_problem(changed("/range/transport/side_slope", "4 deg")).path == "range.transport.roll");
    CHECK(only_problem(changed("/range/transport/wheel_drop", {{"tractor_left", "0 mm"}})).path ==
          "range.transport.roll");
    Json document = changed("/range/working/side_slope", "4 deg ± 1 deg");
    document["range"]["working"]["wheel_drop"] = Json::object();
    document["range"]["working"].erase("roll");
    CHECK(only_problem(document).path == "range.working.side_slope");
  }
  SUBCASE("less roll at full turn of what has no turn, no roll or no drawbar") {
    CHECK(only_problem(changed("/range/turning/roll_at_full_turn", "110 %")).path == "range.turning.roll_at_full_turn");
    Json document = changed("/range/turning/roll_at_full_turn", "50 %");
    CHECK(try_read_case(document.dump()).problems.empty());
    document["range"]["turning"]["yaw"] = {"5 deg", "40 deg"};
    CHECK(only_problem(document).path == "range.turning.roll_at_full_turn");
    document = changed("/range/transport/roll_at_full_turn", "50 %");
    document["range"]["transport"]["roll"] = {"-3 deg", "-1 deg"};
    CHECK(only_problem(document).path == "range.transport.roll_at_full_turn");
    document = mounted_document();
    document["range"]["turning"]["roll_at_full_turn"] = "50 %";
    CHECK(only_problem(document).path == "range.turning.roll_at_full_turn");
  }
  SUBCASE("a mounted implement that rolls on wheels") {
    Json document =
        Json::parse(file_text(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/mounted-mower-lifted-for-transport.json"));
    document["range"]["turning"].erase("yaw");
    document["range"]["turning"]["right_turn_radius"] = "5 m";
    CHECK(only_problem(document).path == "range.turning.right_turn_radius");
  }
  SUBCASE("links that are described twice, or of a machine that has none") {
    const auto on_links = [](const char* pointer, Json value) {
      Json document = mounted_document();
      document[Json::json_pointer(pointer)] = std::move(value);
      return only_problem(document).path;
    };
    CHECK(on_links("/range/working/sway", {"-50 mm", "50 mm"}) == "range.working.yaw");
    CHECK(on_links("/range/turning/lower_link_difference", {"-50 mm", "50 mm"}) == "range.turning.roll");
    CHECK(on_links("/tractor/hitch/level_at", "-280 mm") == "tractor.hitch.top_link");
    CHECK(on_links("/tractor/hitch/category", "5") == "tractor.hitch.category");
    CHECK(on_links("/implement/support_wheels", {{"behind", "0 mm"}}) == "implement.support_wheels.behind");
    Json document = mounted_document();
    document["implement"]["support_wheels"] = "none";
    document["range"]["working"]["top_link"] = "slack";
    CHECK(only_problem(document).path == "range.working.top_link");
    document = mounted_document();
    document["limits"]["turning_angle"] = document["limits"]["lifted_angle"] = "28 deg";
    CHECK(only_problem(document).path == "limits.turning_angle");
    document["limits"].erase("turning_angle");
    document["limits"]["wide_turning_angle"] = "60 deg";
    CHECK(only_problem(document).path == "limits.wide_turning_angle");
    document["implement"]["steering_pivot"] = {{"behind", "300 mm"}, {"lateral", "0 mm"}}; // now it turns, not raised
    CHECK(only_problem(document).path == "limits.lifted_angle");
    document["limits"].erase("lifted_angle");
    document["range"]["working"].erase("yaw");
    document["range"]["working"]["sway"] = {"-50 mm", "50 mm"};
    CHECK(only_problem(document).path == "range.working.sway");
    CHECK(only_problem(changed("/implement/steering_pivot", {{"behind", "300 mm"}})).path ==
          "implement.steering_pivot");
    CHECK(on_links("/implement/steering_pivot", {{"lateral", "300"}}) == "implement.steering_pivot.lateral");
    CHECK(only_problem(changed("/tractor/hitch/quick_coupler", "none")).path == "tractor.hitch");
    CHECK(only_problem(changed("/tractor/hitch/category", "2N")).path == "tractor.hitch");
    CHECK(only_problem(changed("/range/working/top_link", "tight")).path == "range.working.top_link");
    CHECK(only_problem(changed("/limits/lifted_angle", "28 deg")).path == "limits.lifted_angle");
    CHECK(only_problem(changed("/implement/input/yaw", "90 deg")).path == "implement.input.yaw");
  }
  SUBCASE("measurements in the field that cannot be") {
    CHECK(only_problem(changed("/range/turning/hollow_radius", "0 m")).path == "range.turning.hollow_radius");
    CHECK(only_problem(changed("/range/turning/side_slope", "90 deg")).path == "range.turning.side_slope");
    CHECK(only_problem(changed("/tractor/wheelbase", "2.5")).path == "tractor.wheelbase");
    CHECK(only_problem(changed("/implement/track", "100 mm ± 120 mm")).path == "implement.track");
  }
  SUBCASE("more area than a circle of that perimeter") {
    Json document = good_document();
    document["driveline"]["tube"] = {{"enclosed_area", "1000 mm²"}, {"perimeter", "100 mm"}, {"wall", "3 mm"}};
    CHECK(only_problem(document).path == "driveline.tube.enclosed_area");
  }
}

TEST_CASE("all problems of a document are reported at once, and read_case carries them") {
  Json document = good_document();
  document["tractor"]["power"] = "85";
  document["implement"].erase("name");
  document["driveline"]["gard"] = "present";
  try {
    read_case(document.dump());
    FAIL("read_case accepted a bad document");
  } catch (const CaseError& error) {
    REQUIRE(error.problems().size() == 3);
    CHECK(error.problems()[0].path == "tractor.power");
    CHECK(error.problems()[1].path == "implement.name");
    CHECK(error.problems()[2].path == "driveline.gard");
    CHECK(std::string(error.what()).find("3 problems in the case") == 0);
  }
}

TEST_CASE("prices have a currency, one for all, and further stubs belong to a tractor that can change them") {
  Json document = good_document();
  document["prices"] = {{"cut_tubes", "80 EUR"}, {"guard", "120 EUR"}};
  const Case value = read_case(document.dump());
  CHECK(*value.prices.cut_tubes == Money{80.0, "EUR"});
  CHECK(!value.prices.fit_device);
  CHECK(write_case(read_case(write_case(value))) == write_case(value));
  document["prices"]["guard"] = "120";
  CHECK(read_twice(document.dump()).problems.at(0).path == "prices.guard");
  document["prices"]["guard"] = 120;
  CHECK(read_twice(document.dump()).problems.at(0).expected.find("no currency") != std::string::npos);
  document["prices"]["guard"] = "120 USD";
  CHECK(read_twice(document.dump()).problems.at(0).expected.find("EUR") == 0);
  document.erase("prices");
  document["tractor"]["pto"]["other_stubs"] = {{{"type", 2}}};
  CHECK(read_twice(document.dump()).problems.at(0).path == "tractor.pto.other_stubs"); // its stub is fixed
  document["tractor"]["pto"]["arrangement"] = "reversible";
  CHECK(*read_case(document.dump()).tractor.pto.other_stubs.at(0).interface.type == 2.0);
  document["tractor"]["pto"]["other_stubs"] = {{{"type", 2}, {"spline_count", 21}}};
  CHECK(read_twice(document.dump()).problems.at(0).path == "tractor.pto.other_stubs[0]");
}

TEST_CASE("documents that are no case") {
  const auto problem = [](std::string_view text) {
    const CaseReading reading = read_twice(text);
    CHECK(!reading.result);
    REQUIRE(!reading.problems.empty());
    return reading.problems.front();
  };
  CHECK(problem("").value == "an empty document");
  CHECK(problem("\xEF\xBB\xBF \n").value == "an empty document");
  CHECK(problem("{\n  \"schema\": }").value == "a value is missing before this } at line 2, column 13");
  CHECK(problem("[]").value == "a list");
  CHECK(problem("{}").path == "schema");
  CHECK(problem("{\"schema\": \"fieldshaft-case/2\"}").value == "\"fieldshaft-case/2\"");
  const auto advice = [&problem](const std::string& version) {
    return problem("{\"schema\": \"" + version + "\"}").expected;
  };
  CHECK(advice("fieldshaft-case/2").find("; the document is newer") != std::string::npos);
  CHECK(advice("fieldshaft-case/0").find("; the document is older") != std::string::npos);
  for (const char* other :
       {"fieldshaft-farm/2", "fieldshaft-case/", "fieldshaft-case/two", "fieldshaft-case/99999999999", "2"})
    CHECK(advice(other) == "\"fieldshaft-case/1\", the version that this library reads");
  CHECK(problem("{\"schema\": \"fieldshaft-case/1\", \"schema\": \"fieldshaft-case/1\"}").value.find("stands twice") !=
        std::string::npos);
  CHECK(problem(std::string(100, '[') + std::string(100, ']')).value == "more than 32 levels of objects and lists");
  CHECK(problem(std::string((4U << 20U) + 1, ' ')).expected == "a case document of at most 4 MiB");
}

TEST_CASE("the allowed range is told in the unit that was written") {
  const auto expected = [](const char* power) {
    Json document = good_document();
    document["tractor"]["power"] = power;
    const CaseReading reading = read_twice(document.dump());
    REQUIRE(reading.problems.size() == 1);
    return reading.problems.front().expected;
  };
  CHECK(expected("0 hp") == "a power such as \"60 kW\" or \"80 hp\", at least 0.00134102 hp and at most 134102 hp");
  CHECK(expected("0 kW") == "a power such as \"60 kW\" or \"80 hp\", at least 0.001 kW and at most 100000 kW");
  CHECK(expected("-1 metric hp").find("at most 135962 metric hp") != std::string::npos);
  CHECK(expected("12 mm").find("at most 100000 kW") != std::string::npos); // no unit of power to speak in
}

TEST_CASE("a contradiction quotes both entries as they were written") {
  Json document = good_document();
  document["driveline"]["closed_length"] = "20 in";
  document["driveline"]["closed_overlap"] = "2 ft";
  const CaseReading reading = read_twice(document.dump());
  REQUIRE(!reading.problems.empty());
  const CaseProblem& problem = reading.problems.front();
  CHECK(problem.path == "driveline.closed_overlap");
  CHECK(problem.value == "\"2 ft\"");
  CHECK(problem.expected == "less than driveline.closed_length (\"20 in\")");
}

TEST_CASE("the slips of somebody who writes JSON by hand are named in plain words, with their place") {
  const auto value = [](std::string_view text) {
    const CaseReading reading = read_twice(text);
    REQUIRE(reading.problems.size() == 1);
    CHECK(reading.problems.front().path.empty());
    CHECK(reading.problems.front().expected == "a case document in JSON");
    return reading.problems.front().value;
  };
  CHECK(value("{\"a\": 1,\n}") == "a comma before the closing } at line 2, column 1");
  CHECK(value("{\"a\": [1, 2,]}") == "a comma before the closing ] at line 1, column 13");
  CHECK(value("{\"a\": 1\n \"b\": 2}") == "a comma or a : is missing before this \" at line 2, column 2");
  CHECK(value("{\"a\": {} {\"b\": 2}}") == "a comma or a : is missing before this { at line 1, column 10");
  CHECK(value("{\"a\": 1,, \"b\": 2}") == "two commas at line 1, column 9");
  CHECK(value("{\"a\" = 1}") == "a = where JSON wants : at line 1, column 6");
  CHECK(value("{'a': 1}") == "a ' where JSON wants \" at line 1, column 2");
  CHECK(value("{\"a\": 540 r/min}") ==
        "a word or number that stands wrong here, or is not in quotes at line 1, column 11");
  CHECK(value("{\"a\": NaN}") == "a word or number that stands wrong here, or is not in quotes at line 1, column 7");
  CHECK(value("{\"a\": 1 // remark\n}") ==
        "a remark, which JSON does not have (the entry \"note\" holds remarks) at line 1, column 9");
  CHECK(value("{\"a\": \"x\ny\"}") == "a line break within a text (is the closing \" missing?) at line 1, column 9");
  CHECK(value("{\"a\": \"C:\\d\"}") == "a \\ in a text (write \\\\ for one \\) at line 1, column 11");
  CHECK(value("{\"a\": 1}}") == "a closing } too many, or of the wrong kind at line 1, column 9");
  CHECK(value("{\"a\": 1") == "the document ends too early: a closing }, ] or \" is missing");
  CHECK(value("{\"a\": \"\xFF\"}") ==
        "a character that is no UTF-8, or that stands outside quotes at line 1, column 8");
  for (const char* toml : {"# remark\n[tractor]\nname = \"x\"", "schema = \"fieldshaft-case/1\"", "[tractor.pto]\n"}) {
    CHECK(value(toml) == "no JSON, but what looks like TOML, which Python reads from files named .toml");
  }
  CHECK(value("<html>") == "no JSON, but what looks like a web page or XML");
  CHECK(value("PK\x03\x04") == "no text: a packed or binary file");
  CHECK(value("{“a”: 1}") == "a quote as word processors make it; JSON wants the straight \" at line 1, column 2");
  CHECK(value("\xFF\xFE{") == "text in UTF-16; save it as UTF-8");
}

TEST_CASE("10,000 mutated documents: each reads or is refused with problems, and none crashes") {
  const unsigned seed = 20250711U;
  CAPTURE(seed);
  std::mt19937 random(seed);
  const std::string original = good_document().dump(1);
  const std::string alphabet = "{}[]\":,0123456789.-+eE±°/ \\nulltrueNaN\xff\x01";
  const auto below = [&](std::size_t n) { return std::uniform_int_distribution<std::size_t>(0, n - 1)(random); };
  std::size_t read = 0;
  for (int i = 0; i < 10000; ++i) {
    std::string text = original;
    const std::size_t edits = 1 + below(4);
    for (std::size_t e = 0; e < edits; ++e) {
      const std::size_t at = below(text.size());
      switch (below(4)) {
      case 0: text[at] = alphabet[below(alphabet.size())]; break;
      case 1: text.erase(at, 1 + below(20)); break;
      case 2: text.insert(at, 1, alphabet[below(alphabet.size())]); break;
      default: text.insert(at, text.substr(below(text.size()), below(40))); break;
      }
    }
    const CaseReading reading = try_read_case(text);
    REQUIRE(reading.result.has_value() == reading.problems.empty());
    read += reading.result ? 1 : 0;
  }
  // Some edits fall into titles or digits and leave a case that reads; most must be refused.
  CHECK(read > 0);
  CHECK(read < 5000);
}

TEST_CASE("the published schema is the one that the library writes, and the handbook names every key") {
  const std::string published = file_text(FIELDSHAFT_SOURCE_DIR "/docs/examples/case.schema.json");
  CHECK(published == case_json_schema());
  const std::string page = file_text(FIELDSHAFT_SOURCE_DIR "/docs/handbook/case.md");
  std::size_t keys = 0;
  const std::function<void(const Json&)> look = [&](const Json& schema) {
    for (const auto& [key, value] : schema.items()) {
      if (key == "properties") {
        for (const auto& entry : value.items()) {
          const std::string& name = entry.key();
          ++keys;
          CHECK_MESSAGE(page.find("`" + name + "`") != std::string::npos, "docs/handbook/case.md lacks " << name);
        }
      }
      if (value.is_structured()) look(value);
    }
  };
  look(Json::parse(published));
  CHECK(keys > 60);
}
