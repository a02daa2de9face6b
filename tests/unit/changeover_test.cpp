// Changeovers: steps in their order for each arrangement, hazards, and what cannot be changed.

#include <fieldshaft/fieldshaft.hpp>

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <string>

using namespace fieldshaft;

namespace {

const PtoSetup six_at_540{1, rpm(540)};
const PtoSetup fine_at_1000{2, rpm(1000)};

/// Place of a step in the list; -1 where it is not among them.
int place_of(const Changeover& changeover, const std::string& id) {
  for (std::size_t i = 0; i < changeover.steps.size(); ++i) {
    if (changeover.steps[i].id == id) return static_cast<int>(i);
  }
  return -1;
}

bool warns_of(const Changeover& changeover, StubHazard hazard) {
  return std::any_of(changeover.hazards.begin(), changeover.hazards.end(),
                     [&](const ChangeoverHazard& h) { return h.hazard == hazard; });
}

std::optional<double> fact_of(const Changeover& changeover, const std::string& step, const std::string& name) {
  const int place = place_of(changeover, step);
  if (place < 0) return std::nullopt;
  for (const Fact& fact : changeover.steps[static_cast<std::size_t>(place)].facts) {
    if (name == fact.name) return std::get<Amount>(fact.value).si;
  }
  return std::nullopt;
}

} // namespace

TEST_CASE(
    "every changeover that can be made is at rest before the driveline is uncoupled and ends with a turn by hand") {
  for (const StubArrangement arrangement : stub_arrangements) {
    for (const PtoType& type : pto_types()) {
      for (const double speed : {540.0, 1000.0, 1300.0}) {
        for (const HitchKind hitch : {HitchKind::drawbar, HitchKind::three_point}) {
          if (type.number == 1 && speed == 540.0) continue;
          const Changeover steps = changeover(arrangement, six_at_540, {type.number, rpm(speed)}, hitch);
          CAPTURE(static_cast<int>(arrangement));
          CAPTURE(type.number);
          REQUIRE(!steps.steps.empty());
          if (!steps.possible) {
            CHECK(std::string(steps.steps.front().id) == "changeover.not_possible");
            continue;
          }
          CHECK(place_of(steps, "changeover.stop") >= 0);
          CHECK(place_of(steps, "changeover.wait") == place_of(steps, "changeover.stop") + 1);
          CHECK(place_of(steps, "changeover.uncouple") == place_of(steps, "changeover.wait") + 1);
          CHECK(std::string(steps.steps.back().id) == "changeover.by_hand");
          const bool other_stub = type.number != 1;
          CHECK(place_of(steps, other_stub ? "changeover.length" : "changeover.length_same_stub") >
                place_of(steps, "changeover.couple"));
          CHECK(place_of(steps, other_stub ? "changeover.length_same_stub" : "changeover.length") == -1);
        }
      }
    }
  }
}

TEST_CASE("a drawbar is moved only with the implement off it, and a tractor is driven only clear of hands") {
  for (const StubArrangement arrangement :
       {StubArrangement::exchanged_from_carrier, StubArrangement::reversible,
        StubArrangement::bolted_with_separate_lever, StubArrangement::two_stubs_out}) {
    for (const int type : {2, 3, 4}) {
      const Changeover trailed = changeover(arrangement, six_at_540, {type, rpm(1000)}, HitchKind::drawbar);
      const int set =
          std::max(place_of(trailed, "changeover.drawbar"), place_of(trailed, "changeover.drawbar_by_manual"));
      REQUIRE(set > 0);
      const int unhitch = place_of(trailed, "changeover.unhitch");
      const bool moved = arrangement != StubArrangement::two_stubs_out;
      const int park = place_of(trailed, moved ? "changeover.park_for_stub" : "changeover.park");
      CHECK(unhitch > place_of(trailed, "changeover.uncouple"));
      CHECK(park == unhitch + 1);
      CHECK(park < set);
      CHECK(place_of(trailed, "changeover.raise_shield") < set);
      CHECK(place_of(trailed, "changeover.hitch") == set + 1);
      CHECK(place_of(trailed, "changeover.hitch") < place_of(trailed, "changeover.couple"));
      const Changeover mounted = changeover(arrangement, six_at_540, {type, rpm(1000)}, HitchKind::three_point);
      for (const char* id : {"changeover.unhitch", "changeover.hitch", "changeover.drawbar",
                             "changeover.drawbar_by_manual", "changeover.park", "changeover.park_for_stub"}) {
        CAPTURE(std::string(id));
        CHECK(place_of(mounted, id) == -1);
      }
    }
  }
  const Changeover lever = changeover(StubArrangement::lever_only, {1, rpm(1000)}, six_at_540);
  CHECK(place_of(lever, "changeover.unhitch") == -1); // nothing asks for another position
}

TEST_CASE(
    "the attitude against loss of oil comes before the engine is stopped for the stub, the oil is looked at after") {
  for (const StubArrangement arrangement : {StubArrangement::exchanged_from_carrier, StubArrangement::reversible,
                                            StubArrangement::bolted_with_separate_lever}) {
    const Changeover mounted = changeover(arrangement, six_at_540, fine_at_1000, HitchKind::three_point);
    CHECK(place_of(mounted, "changeover.look_up") == 0);
    CHECK(place_of(mounted, "changeover.attitude") == 1);
    CHECK(place_of(mounted, "changeover.stop") == 2);
    const Changeover trailed = changeover(arrangement, six_at_540, fine_at_1000);
    CHECK(place_of(trailed, "changeover.look_up") == 0);
    CHECK(place_of(trailed, "changeover.attitude") == -1); // no slope with an implement behind
    CHECK(place_of(trailed, "changeover.park_for_stub") < place_of(trailed, "changeover.cool"));
    const int home = std::max(place_of(trailed, "changeover.ring"), place_of(trailed, "changeover.bolt"));
    CHECK(place_of(trailed, "changeover.oil") == home + 1);
  }
  CHECK(place_of(changeover(StubArrangement::two_stubs_out, six_at_540, fine_at_1000), "changeover.oil") == -1);
}

TEST_CASE("where stub and lever disagree no step says that they agree") {
  const Changeover off = changeover(StubArrangement::lever_only, six_at_540, {1, rpm(1000)});
  CHECK(place_of(off, "changeover.lever") == -1);
  CHECK(place_of(off, "changeover.tag") == place_of(off, "changeover.lever_disagrees") + 1);
  const std::string text = to_text(off);
  CHECK(text.find("must agree") == std::string::npos);
  CHECK(text.find("stands elsewhere") == std::string::npos); // the stub is where it was
  const Changeover back = changeover(StubArrangement::lever_only, {1, rpm(1000)}, six_at_540);
  CHECK(place_of(back, "changeover.lever") > 0);
  CHECK(place_of(back, "changeover.tag") == -1);
}

TEST_CASE("what an arrangement cannot do is said") {
  CHECK(!changeover(StubArrangement::fixed, six_at_540, fine_at_1000).possible);
  CHECK(!changeover(StubArrangement::lever_only, six_at_540, fine_at_1000).possible);
  CHECK(changeover(StubArrangement::lever_only, six_at_540, {1, rpm(1000)}).possible);
  CHECK(changeover(StubArrangement::reversible, six_at_540, fine_at_1000).possible);
}

TEST_CASE("a stub that is moved cools, keeps its oil, gets a clean seat and its shield back before the lever is set") {
  for (const StubArrangement arrangement : {StubArrangement::exchanged_from_carrier, StubArrangement::reversible,
                                            StubArrangement::bolted_with_separate_lever}) {
    const Changeover steps = changeover(arrangement, six_at_540, fine_at_1000);
    CHECK(place_of(steps, "changeover.cool") > place_of(steps, "changeover.wait"));
    CHECK(place_of(steps, "changeover.raise_shield") < place_of(steps, "changeover.lower_shield"));
    CHECK(place_of(steps, "changeover.lower_shield") < place_of(steps, "changeover.lever"));
    CHECK(warns_of(steps, StubHazard::oil_lost));
    CHECK(warns_of(steps, StubHazard::spline_at_other_speed));
  }
  const Changeover bolted = changeover(StubArrangement::bolted_with_separate_lever, six_at_540, {3, rpm(1000)});
  CHECK(place_of(bolted, "changeover.bolt") > place_of(bolted, "changeover.clean_flange"));
  CHECK(place_of(bolted, "changeover.ring") == -1);
  const Changeover turned = changeover(StubArrangement::reversible, six_at_540, fine_at_1000);
  CHECK(place_of(turned, "changeover.turn_round") > place_of(turned, "changeover.clean_bore"));
  CHECK(place_of(turned, "changeover.ring") > place_of(turned, "changeover.turn_round"));
  const Changeover two = changeover(StubArrangement::two_stubs_out, six_at_540, fine_at_1000);
  CHECK(place_of(two, "changeover.cover_stub") > 0);
  CHECK(warns_of(two, StubHazard::other_stub_turns));
  CHECK(place_of(two, "changeover.lever") == -1);
}

TEST_CASE("the drawbar goes to a position of the new type, in numbers, and is left alone where the stub stays") {
  const Changeover to_fine = changeover(StubArrangement::reversible, six_at_540, fine_at_1000);
  CHECK(*fact_of(to_fine, "changeover.drawbar", "us") == inches(16).value());
  CHECK(*fact_of(to_fine, "changeover.drawbar", "regular") == millimetres(400).value());
  const Changeover to_thick = changeover(StubArrangement::exchanged_from_carrier, six_at_540, {3, rpm(1000)});
  CHECK(*fact_of(to_thick, "changeover.drawbar", "us") == inches(20).value());
  const Changeover to_largest = changeover(StubArrangement::exchanged_from_carrier, fine_at_1000, {4, rpm(1300)});
  CHECK(place_of(to_largest, "changeover.drawbar_by_manual") > 0);
  const Changeover lever = changeover(StubArrangement::lever_only, six_at_540, {1, rpm(1000)});
  CHECK(place_of(lever, "changeover.drawbar") == -1);
  CHECK(place_of(lever, "changeover.tag") > place_of(lever, "changeover.lever_disagrees")); // six splines at 1000
  CHECK(place_of(to_fine, "changeover.tag") == -1);
}

TEST_CASE("impossible input") {
  CHECK_THROWS_AS(changeover(StubArrangement::reversible, six_at_540, six_at_540), InputError);
  CHECK_THROWS_AS(changeover(StubArrangement::reversible, six_at_540, {7, rpm(1000)}), InputError);
  CHECK_THROWS_AS(changeover(StubArrangement::reversible, six_at_540, {2, rpm(0)}), InputError);
  CHECK_THROWS_WITH_AS(changeover(StubArrangement::reversible, {1, rpm(-540)}, fine_at_1000),
                       doctest::Contains("changeover: from = "), InputError);
}

TEST_CASE("every step and hazard has words, in all forms and both unit styles") {
  for (const StubArrangement arrangement : stub_arrangements) {
    const Changeover steps = changeover(arrangement, six_at_540, fine_at_1000);
    for (const UnitStyle style : {UnitStyle::metric, UnitStyle::us}) {
      const std::string text = to_text(steps, style);
      CHECK(text.find('{') == std::string::npos);
      CHECK(text.find("[changeover") == std::string::npos);
      CHECK(text.find("[hazard") == std::string::npos);
      CHECK(to_markdown(steps, style).find("[hazard") == std::string::npos);
      CHECK(to_html(steps, style).find("<html") != std::string::npos);
      const auto json = nlohmann::json::parse(to_json(steps, style));
      CHECK(json.at("hitch") == "drawbar");
      CHECK(json.at("steps").size() == steps.steps.size());
      CHECK(json.at("hazards").size() == steps.hazards.size());
    }
  }
}

TEST_CASE("the changeover between two cases of one tractor, and none where stub and speed stay") {
  std::ifstream file(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/strong-tractor-at-540.json");
  REQUIRE(file);
  const Case before = read_case(std::string(std::istreambuf_iterator<char>(file), {}));
  CHECK(!changeover_between(before, before));
  Case after = before;
  after.tractor.pto.stub = {};
  after.tractor.pto.stub.type = 3;
  after.tractor.pto.selected = "1000";
  const auto steps = changeover_between(before, after);
  REQUIRE(steps);
  CHECK(steps->from.type == 1);
  CHECK(steps->to.type == 3);
  CHECK(steps->arrangement == StubArrangement::exchanged_from_carrier);
  CHECK(steps->possible);
  after.tractor.hitch.kind = HitchKind::three_point;
  CHECK(place_of(*changeover_between(before, after), "changeover.unhitch") == -1);
  after.tractor.hitch.kind.reset(); // then the earlier case says it, and a drawbar is the one that leaves nothing out
  CHECK(changeover_between(before, after)->hitch == HitchKind::drawbar);
  Case unknown = after;
  unknown.tractor.pto.selected.reset();
  CHECK(!changeover_between(before, unknown));
  unknown = before;
  unknown.tractor.pto.arrangement.reset();
  CHECK(!changeover_between(unknown, after));
}
