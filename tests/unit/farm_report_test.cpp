// The page of a farm study: that of the example is stored beside it, and every form of it is whole.

#include <fieldshaft/core/threads.hpp>
#include <fieldshaft/fieldshaft.hpp>

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <cstdlib>
#include <fstream>
#include <sstream>

using namespace fieldshaft;

namespace {

const std::string examples = FIELDSHAFT_SOURCE_DIR "/docs/examples/";

std::string file_text(const std::string& path) {
  std::ifstream file(path);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

const Farm& example_farm() {
  static const Farm farm = read_farm(file_text(examples + "farms/three-tractors-seven-implements.json"));
  return farm;
}

/// The study as the demo prints it.
const FarmStudy& example_study() {
  static const FarmStudy study = [] {
    FarmStudySettings settings;
    settings.executor = thread_executor(2);
    settings.remedies = true;
    settings.remedy_options.most_sets = 1;
    return study_farm(example_farm(), settings);
  }();
  return study;
}

bool holds(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

} // namespace

TEST_CASE("the example farm gives its stored report") {
  // With FIELDSHAFT_WRITE_REPORTS set the stored report is written anew, to be read before it is committed.
  const std::string stored = examples + "reports/three-tractors-seven-implements.txt";
  const std::string report = to_text(example_study());
  if (std::getenv("FIELDSHAFT_WRITE_REPORTS") != nullptr) std::ofstream(stored) << report;
  CHECK(report == file_text(stored));
}

TEST_CASE("every failing pair is answered: by a verified remedy, by an option, or by what is to be stated") {
  const FarmStudy& study = example_study();
  std::size_t failing = 0;
  for (std::size_t t = 0; t < study.tractors.size(); ++t) {
    for (std::size_t i = 0; i < study.implements.size(); ++i) failing += !study.verdicts.runs(t, i);
  }
  REQUIRE(study.remedies.size() == failing);
  REQUIRE(failing > 0);
  for (const PairRemedies& entry : study.remedies) {
    CAPTURE(study.tractors[entry.pair.tractor]);
    CAPTURE(study.implements[entry.pair.implement]);
    bool answered = !entry.remedies.state_first.empty();
    for (const Remedy& remedy : entry.remedies.sets) {
      if (remedy.left.empty()) {
        CHECK(verdict_code(assess(remedy.changed)).runs()); // once more, from the changed case alone
        answered = true;
      }
    }
    for (const PayOff& pay_off : study.pay_offs) {
      for (const PairNames& gained : pay_off.gained) {
        answered = answered || (gained.tractor == study.tractors[entry.pair.tractor] &&
                                gained.implement == study.implements[entry.pair.implement]);
      }
    }
    CHECK(answered);
  }
}

TEST_CASE("text, Markdown and HTML leave no placeholder unfilled and tell the same") {
  for (const UnitStyle style : {UnitStyle::metric, UnitStyle::us}) {
    for (const std::string& report :
         {to_text(example_study(), style), to_markdown(example_study(), style), to_html(example_study(), style)}) {
      CHECK(!holds(report, "[farm."));
      CHECK(!holds(report, "{pair}"));
      CHECK(holds(report, "Do I need 1000 r/min?"));
      CHECK(holds(report, "Does it pay?"));
      CHECK(holds(report, "Changing tractor B over"));
      CHECK(holds(report, "20 % higher"));
    }
  }
  CHECK(holds(to_html(example_study()), "<!DOCTYPE html>"));
}

TEST_CASE("the JSON of a study is complete") {
  const auto json = nlohmann::json::parse(to_json(example_study()));
  CHECK(json.at("schema") == farm_report_schema_version);
  CHECK(json.at("verdicts").size() == 3);
  CHECK(json.at("verdicts").at(0).size() == 7);
  CHECK(json.at("verdicts").at(0).at(5).at("status") == "stop");
  CHECK(json.at("verdicts").at(0).at(5).at("governing") == "pto.speed");
  CHECK(json.at("plan").at("exact") == true);
  CHECK(json.at("plan").at("lost").empty());
  CHECK(json.at("plan").at("changes") == 2); // one option, and one joint that brings two tractors
  CHECK(json.at("changeovers").size() == 3);
  CHECK(json.at("options").at(0).at("year").at("net").at("currency") == "EUR");
  CHECK(json.at("options").at(0).at("sensitivity").size() == 4);
  CHECK(json.at("one_down").at(0).at("down").at(0) == "tractor B");
  CHECK(json.at("cautions").size() >= 5);
}

TEST_CASE("the page of a large screening says what it is and stays short") {
  Farm farm = example_farm();
  farm.options.clear();
  const FarmTractor first = farm.tractors.front();
  for (int i = 0; i < 200; ++i) {
    farm.tractors.push_back(first);
    farm.tractors.back().machine.name = "tractor " + std::to_string(i);
  }
  FarmStudySettings settings;
  settings.depth = StudyDepth::screening;
  const std::string report = to_text(study_farm(farm, settings));
  CHECK(holds(report, "This is a screening"));
  CHECK(report.size() < 20000);
}
