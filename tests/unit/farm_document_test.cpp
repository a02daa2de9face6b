#include "read_twice.hpp"

// The farm document: reading, writing, its schema, and what it answers to wrong entries.

#include <fieldshaft/case.hpp>

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <cstdlib>
#include <fstream>
#include <functional>
#include <sstream>

using namespace fieldshaft;
using Json = nlohmann::ordered_json;

namespace {

const std::string examples = FIELDSHAFT_SOURCE_DIR "/docs/examples/";

std::string file_text(const std::string& path) {
  std::ifstream file(path);
  REQUIRE_MESSAGE(file.good(), path << " cannot be read");
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

Json good_document() { return Json::parse(file_text(examples + "farms/three-tractors-seven-implements.json")); }

FarmReading read_twice(std::string_view text) { return ::read_twice(try_read_farm, read_farm, text); }

/// The one problem of a document in which one entry was changed.
CaseProblem only_problem(const Json& document) {
  const FarmReading reading = read_twice(document.dump());
  CHECK(!reading.result);
  std::string all;
  for (const CaseProblem& problem : reading.problems) all += problem.message() + "\n";
  CAPTURE(all);
  REQUIRE(reading.problems.size() == 1);
  return reading.problems.front();
}

CaseProblem problem_of(const char* pointer, Json value) {
  Json document = good_document();
  document[Json::json_pointer(pointer)] = std::move(value);
  return only_problem(document);
}

bool holds(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

} // namespace

TEST_CASE("the example farm reads, writes and reads back to the same document") {
  const Farm farm = read_farm(good_document().dump());
  CHECK(farm.tractors.size() == 3);
  CHECK(farm.implements.size() == 7);
  CHECK(farm.options.size() == 3);
  CHECK(*farm.fuel_price == Money{1.15, "EUR"});
  CHECK(*farm.interest == 0.05);
  CHECK(farm.tractors[1].machine.pto.other_stubs.size() == 1);
  CHECK(farm.tractors[0].other_hitches.front().kind == HitchKind::three_point);
  CHECK(farm.drivelines[1].serves.size() == 2);
  const std::string once = write_farm(farm);
  CHECK(write_farm(read_farm(once)) == once);
  CHECK(holds(farm.note, "Invented"));
}

TEST_CASE("the published schema is the one that the library writes, and the handbook names every key of the farm") {
  // With FIELDSHAFT_WRITE_REPORTS set the stored schema is written anew.
  const std::string path = examples + "farm.schema.json";
  if (std::getenv("FIELDSHAFT_WRITE_REPORTS") != nullptr) std::ofstream(path) << farm_json_schema();
  CHECK(file_text(path) == farm_json_schema());
  const std::string pages = file_text(FIELDSHAFT_SOURCE_DIR "/docs/handbook/farm.md") +
                            file_text(FIELDSHAFT_SOURCE_DIR "/docs/handbook/case.md");
  const std::function<void(const Json&)> look = [&](const Json& schema) {
    if (schema.contains("properties")) {
      for (const auto& item : schema["properties"].items()) {
        CHECK_MESSAGE(holds(pages, "`" + item.key() + "`"), "the handbook does not name " << item.key());
        look(item.value());
      }
    }
    if (schema.contains("items")) look(schema["items"]);
    if (schema.contains("anyOf")) {
      for (const Json& one : schema["anyOf"]) look(one);
    }
  };
  look(Json::parse(farm_json_schema()));
}

TEST_CASE("a price without a currency is an error, and so are two currencies") {
  CHECK(problem_of("/options/0/price", 2600).path == "options[0].price");
  CHECK(holds(problem_of("/options/0/price", 2600).expected, "no currency"));
  CHECK(holds(problem_of("/options/0/price", "2600").expected, "capital letters"));
  CHECK(holds(problem_of("/options/0/price", "2600 euro").expected, "capital letters"));
  CHECK(holds(problem_of("/options/0/price", "2,600 EUR").expected, "comma"));
  CHECK(holds(problem_of("/options/0/price", "-5 EUR").expected, "below nothing"));
  CHECK(holds(problem_of("/options/0/price", "2600 EUR/L").expected, "more than a currency"));
  CHECK(holds(problem_of("/fuel_price", "1.15 EUR").expected, "what the price is for"));
  CHECK(holds(problem_of("/fuel_price", "1.15 EUR/h").expected, "what the price is for"));
  CHECK(holds(problem_of("/implements/0/hire_price", "75 EUR").expected, "65 EUR/h"));
  const CaseProblem other = problem_of("/options/0/price", "2600 USD");
  CHECK(other.value == "a price in USD");
  CHECK(holds(other.expected, "EUR"));
  CHECK(problem_of("/prices/cut_tubes", "90 USD").path == "prices.cut_tubes");
  CHECK(problem_of("/currency", "euro").path == "currency");
}

TEST_CASE("a price of a gallon is that of a litre") {
  Json document = good_document();
  document["fuel_price"] = "3.785411784 EUR/gal";
  CHECK(read_farm(document.dump()).fuel_price->amount == doctest::Approx(1.0).epsilon(1e-12));
}

TEST_CASE("names that nothing bears are answered with the nearest ones, names that stand twice are refused") {
  const CaseProblem serves = problem_of("/drivelines/0/serves/0", "rotary cuter 2.1 m");
  CHECK(serves.path == "drivelines[0].serves[0]");
  CHECK(holds(serves.expected, "nearest: \"rotary cutter 2.1 m\""));
  CHECK(holds(problem_of("/options/0/tractor", "tractor AA").expected, "nearest: \"tractor A\""));
  CHECK(holds(problem_of("/options/2/replaces", "baler").expected, "\"square baler\""));
  CHECK(holds(problem_of("/implements/0/repair_class", "mowers").expected, "mower, rotary"));
  CHECK(holds(problem_of("/options/1/value_class", "tractor").expected, "tractor 60 to 112 kW"));
  const CaseProblem twice = problem_of("/tractors/2/name", "tractor B");
  CHECK(twice.path == "tractors[2].name");
  CHECK(holds(twice.expected, "no other tractor"));
  CHECK(problem_of("/options/1/name", "both speeds on tractor A").path == "options[1].name");
  CHECK(problem_of("/options/1/tractors/0/name", "tractor A").path == "options[1].tractors[0].name");
  CHECK(problem_of("/drivelines/3/serves", Json::array()).path == "drivelines[3].serves");
}

TEST_CASE("a machine of a farm is held to what a case holds it to") {
  CHECK(problem_of("/tractors/0/power", 58).path == "tractors[0].power");
  CHECK(problem_of("/tractors/0/powr", "58 kW").expected == "\"power\"");
  CHECK(problem_of("/tractors/0/pto/selected", "750").path == "tractors[0].pto.selected");
  CHECK(problem_of("/tractors/2/engine/high_idle", "2100 r/min").path == "tractors[2].engine.rated_speed");
  CHECK(problem_of("/tractors/0/other_hitches/0/kind", "drawbar").path == "tractors[0].other_hitches[0]");
  CHECK(problem_of("/implements/1/range/working/pitch", Json{"0 deg", "1 deg"}).path ==
        "implements[1].range.working.pitch");
  CHECK(problem_of("/drivelines/0/tube/inner_diameter", "70 mm").path == "drivelines[0].tube.inner_diameter");
  CHECK(problem_of("/interest", "120 %").path == "interest");
  CHECK(problem_of("/years", 0).path == "years");
  CHECK(problem_of("/tractors/0/share_down", "100 %").path == "tractors[0].share_down");
  CHECK(problem_of("/tractors/0/hours", "9000 h").path == "tractors[0].hours");
}

TEST_CASE("an option that changes nothing, or whose gears contradict the tractor, is refused") {
  Json document = good_document();
  document["options"][0] = {{"name", "nothing"}, {"price", "1 EUR"}};
  CHECK(only_problem(document).value == "no change");
  document = good_document();
  document["options"][0]["gears"][0]["name"] = "540";
  document["options"][0]["gears"][0]["pto_speed"] = "540 r/min";
  CHECK(holds(only_problem(document).expected, "no other gear"));
  document = good_document();
  document["options"][0].erase("tractor");
  CHECK(only_problem(document).path == "options[0].tractor");
  document = good_document();
  document["implements"][0].erase("hitch");
  CHECK(only_problem(document).path == "implements[0].hitch");
}

TEST_CASE("documents that are no farm are refused without an exception") {
  CHECK(read_twice("").problems.size() == 1);
  CHECK(holds(read_twice("[]").problems.front().expected, "tractors, implements and drivelines"));
  CHECK(read_twice("{}").problems.front().path == "schema");
  CHECK(read_twice(R"({"schema": "fieldshaft-case/1"})").problems.front().value == "\"fieldshaft-case/1\"");
  CHECK(read_twice(R"({"schema": "fieldshaft-farm/1"})").problems.size() == 2);
  CHECK_THROWS_WITH_AS(read_farm(R"({"schema": "fieldshaft-farm/1"})"), doctest::Contains("2 problems in the farm"),
                       CaseError);
}
