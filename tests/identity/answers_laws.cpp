// Laws of the answers of an assessment: what to cut, how far to turn.

#include <fieldshaft/fieldshaft.hpp>

#include "random.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <fstream>

using namespace fieldshaft;
using Json = nlohmann::ordered_json;

namespace {

Json trailed() {
  std::ifstream file(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/trailed-cutter-that-fits.json");
  return Json::parse(file);
}

Assessment assessed(const Json& document) { return assess(read_case(document.dump())); }

double amount_fact(const Finding& finding, const std::string& name) {
  for (const Fact& fact : finding.facts) {
    if (name == fact.name) return std::get<Amount>(fact.value).si;
  }
  FAIL("no fact " << name);
  return 0.0;
}

std::string with_tolerance(double millimetre, double tolerance) {
  return std::to_string(millimetre) + " mm ± " + std::to_string(tolerance) + " mm";
}

} // namespace

TEST_CASE("a wider range never widens the interval of closed lengths, nor the turn that is allowed") {
  RandomInputs random;
  for (int round = 0; round < 6; ++round) {
    Json document = trailed();
    document["implement"]["input"]["behind"] = with_tolerance(random.between(380.0, 480.0), random.between(0.0, 10.0));
    document["implement"]["input"]["lateral"] = with_tolerance(random.between(-40.0, 40.0), 5.0);
    double least = 0.0;
    double greatest = 1e9;
    double left = 1e9;
    for (int wider = 0; wider < 4; ++wider) {
      for (const char* angle : {"pitch", "roll"}) {
        const std::string text = std::to_string(3 * (wider + 1)) + " deg";
        for (const char* state : {"turning", "transport"}) document["range"][state][angle] = {"-" + text, text};
      }
      const Assessment assessment = assessed(document);
      const Finding& cut = *assessment.find(Check::cut_list);
      const Finding& turn = *assessment.find(Check::turn_limit);
      constexpr double gap = 1.2e-3; // bounds disagree by twice the gap of the lengths; rounded inward to 1 mm
      CHECK(amount_fact(cut, "least_closed") >= least - gap);
      CHECK(amount_fact(cut, "greatest_closed") <= greatest + gap);
      CHECK(amount_fact(turn, "left") <= left + 2e-3); // rounded inward to 0.1°
      least = amount_fact(cut, "least_closed");
      greatest = amount_fact(cut, "greatest_closed");
      left = amount_fact(turn, "left");
    }
  }
}

TEST_CASE("the cut as advised, made and assessed again, heals: nothing is left to cut, overlap and clearance hold") {
  RandomInputs random;
  int healed = 0;
  for (int round = 0; round < 12; ++round) {
    Json document = trailed();
    const double tolerance = random.between(0.0, 4.0);
    const double closed = random.between(505.0, 600.0);
    const double overlap = closed - random.between(70.0, 90.0);
    document["driveline"]["closed_length"] = with_tolerance(closed, tolerance);
    document["driveline"]["closed_overlap"] = with_tolerance(overlap, tolerance);
    const Assessment before = assessed(document);
    const Finding& cut = *before.find(Check::cut_list);
    if (std::string(cut.reason) != "cut.needed") continue;
    CHECK(before.find(Check::clearance)->status != Status::ok);
    const double amount = 1e3 * amount_fact(cut, "cut");
    document["driveline"]["closed_length"] = with_tolerance(closed - amount, tolerance);
    document["driveline"]["closed_overlap"] = with_tolerance(overlap - amount, tolerance);
    const Assessment after = assessed(document);
    CHECK(std::string(after.find(Check::cut_list)->reason) == "cut.none_needed");
    for (const Check check : {Check::cut_list, Check::overlap, Check::clearance})
      CHECK(after.find(check)->status == Status::ok);
    ++healed;
  }
  CHECK(healed >= 3);
}

TEST_CASE("the list of cuts agrees with the checks of overlap and clearance") {
  RandomInputs random;
  for (int round = 0; round < 12; ++round) {
    Json document = trailed();
    const double closed = random.between(420.0, 600.0);
    document["driveline"]["closed_length"] = with_tolerance(closed, 3.0);
    document["driveline"]["closed_overlap"] = with_tolerance(closed - random.between(70.0, 90.0), 3.0);
    const Assessment assessment = assessed(document);
    const Status both = worse(assessment.find(Check::overlap)->status, assessment.find(Check::clearance)->status);
    CAPTURE(closed);
    CHECK(static_cast<int>(assessment.find(Check::cut_list)->status) == static_cast<int>(both));
  }
}

TEST_CASE("a mirrored case swaps left and right of the turn limit, digit by digit") {
  RandomInputs random;
  for (int round = 0; round < 6; ++round) {
    Json document = trailed();
    const double lateral = random.between(10.0, 60.0);
    document["implement"]["input"]["lateral"] = std::to_string(lateral) + " mm";
    document["range"]["turning"]["yaw"] = {"-25 deg", "35 deg"};
    Json mirrored = document;
    mirrored["implement"]["input"]["lateral"] = "-" + std::to_string(lateral) + " mm";
    mirrored["range"]["turning"]["yaw"] = {"-35 deg", "25 deg"};
    const Assessment a = assessed(document);
    const Assessment b = assessed(mirrored);
    const Finding& here = *a.find(Check::turn_limit);
    const Finding& there = *b.find(Check::turn_limit);
    CHECK(amount_fact(here, "left") == amount_fact(there, "right"));
    CHECK(amount_fact(here, "right") == amount_fact(there, "left"));
    CHECK(amount_fact(here, "left_most") == amount_fact(there, "right_most"));
    CHECK(amount_fact(here, "left") != amount_fact(here, "right"));
    CHECK(static_cast<int>(here.status) == static_cast<int>(there.status));
  }
}

TEST_CASE("looser measurements never allow more turn, nor a longer driveline") {
  Json document = trailed();
  double left = 1e9;
  double greatest = 1e9;
  for (const double tolerance : {0.0, 2.0, 5.0, 10.0, 20.0}) {
    document["implement"]["input"]["behind"] = with_tolerance(420.0, tolerance);
    const Assessment assessment = assessed(document);
    const double turn = amount_fact(*assessment.find(Check::turn_limit), "left");
    const double closed = amount_fact(*assessment.find(Check::cut_list), "greatest_closed");
    CHECK(turn <= left);
    CHECK(closed <= greatest); // rounded inward to 1 mm
    left = turn;
    greatest = closed;
  }
}
