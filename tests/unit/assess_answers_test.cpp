// What an assessment answers beyond a verdict: lengths to cut, turn and lift limits, fouling, hand checks, placement
// and the certificate.

#include <fieldshaft/driveline.hpp>
#include <fieldshaft/fieldshaft.hpp>
#include <fieldshaft/hitch.hpp>

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <random>

using namespace fieldshaft;
using Json = nlohmann::ordered_json;

namespace {

/// Ids are compared by what they say, not by where they stand.
std::vector<std::string> texts(const std::vector<const char*>& ids) { return {ids.begin(), ids.end()}; }

Json example(const char* name) {
  std::ifstream file(std::string(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/") + name + ".json");
  REQUIRE(file.good());
  return Json::parse(file);
}

Json to_be_cut() { return example("driveline-to-be-cut"); }
Json that_fits() { return example("trailed-cutter-that-fits"); }
Json mounted() { return example("mounted-mower-lifted-for-transport"); }

Assessment assessed(const Json& document) { return assess(read_case(document.dump())); }

const Finding& found(const Assessment& assessment, Check check) {
  const Finding* finding = assessment.find(check);
  REQUIRE(finding != nullptr);
  return *finding;
}

Status status_of(const Assessment& assessment, Check check) { return found(assessment, check).status; }

std::string reason_of(const Assessment& assessment, Check check) { return found(assessment, check).reason; }

Amount amount_fact(const Finding& finding, const std::string& name) {
  for (const Fact& fact : finding.facts) {
    if (name == fact.name) return std::get<Amount>(fact.value);
  }
  FAIL("no fact " << name);
  return {};
}

std::string phrase_fact(const Finding& finding, const std::string& name) {
  for (const Fact& fact : finding.facts) {
    if (name == fact.name) return std::get<PhraseId>(fact.value).id;
  }
  FAIL("no fact " << name);
  return {};
}

bool advises(const Finding& finding, const std::string& id) {
  return std::any_of(finding.advice.begin(), finding.advice.end(), [&](const char* advice) { return id == advice; });
}

bool not_examined(const Assessment& assessment, Check check) {
  return std::find(assessment.not_examined.begin(), assessment.not_examined.end(), check) !=
         assessment.not_examined.end();
}

std::vector<std::string> to_ask(const Assessment& assessment, Check check) {
  for (const Unasked& unasked : assessment.unasked) {
    if (unasked.check == check) return unasked.entries;
  }
  return {};
}

std::string millimetres_text(double metres) { return std::to_string(1e3 * metres) + " mm"; }

} // namespace

TEST_CASE("the smallest cut in whole millimetres, and the interval that it gets into") {
  const Assessment assessment = assessed(to_be_cut());
  const Finding& cut = found(assessment, Check::cut_list);
  CHECK(cut.status == Status::stop); // it bottoms as it stands
  CHECK(std::string(cut.reason) == "cut.needed");
  CHECK(advises(cut, "cut.by_this_much"));
  CHECK(advises(cut, "cut.check_by_hand"));
  // greatest closed = shortest - tolerance of the closed length - 50 mm; the cut leads to just below it.
  const double shortest = assessment.envelopes[2].shortest.bound.si;
  CHECK(amount_fact(cut, "greatest_closed").si ==
        doctest::Approx(1e-3 * std::floor(1e3 * (shortest - 0.003 - 0.05))).epsilon(1e-9)); // whole millimetres
  const double amount = amount_fact(cut, "cut").si;
  CHECK(std::abs(1e3 * amount - std::round(1e3 * amount)) < 1e-6);
  CHECK(0.560 - amount <= amount_fact(cut, "greatest_closed").si);
  CHECK(0.560 - amount > amount_fact(cut, "greatest_closed").si - 0.001);
  CHECK(amount_fact(cut, "clearance_after").si >= 0.05);
  CHECK(amount_fact(cut, "overlap_after").si >= 0.15);
}

TEST_CASE("nothing to cut, tubes that are too short, and an interval that is empty") {
  CHECK(reason_of(assessed(that_fits()), Check::cut_list) == "cut.none_needed");
  CHECK(status_of(assessed(that_fits()), Check::cut_list) == Status::ok);

  Json document = that_fits();
  document["driveline"]["closed_length"] = "400 mm ± 3 mm";
  document["driveline"]["closed_overlap"] = "320 mm ± 3 mm";
  const Assessment too_short = assessed(document);
  CHECK(reason_of(too_short, Check::cut_list) == "cut.too_short");
  CHECK(status_of(too_short, Check::cut_list) == Status::stop); // 59 mm of overlap: below every rule
  const double missing = amount_fact(found(too_short, Check::cut_list), "missing_tube").si;
  document["driveline"]["closed_length"] = millimetres_text(0.4 + missing + 0.0005) + " ± 3 mm";
  document["driveline"]["closed_overlap"] = millimetres_text(0.32 + missing + 0.0005) + " ± 3 mm";
  CHECK(status_of(assessed(document), Check::cut_list) == Status::ok);

  document = that_fits();
  document["range"]["transport"]["yaw"] = {"-80 deg", "80 deg"};
  const Assessment conflict = assessed(document);
  const Finding& cut = found(conflict, Check::cut_list);
  CHECK(std::string(cut.reason) == "cut.conflict");
  CHECK(advises(cut, "cut.open_interval"));
  CHECK(!advises(cut, "cut.by_this_much"));
  CHECK(amount_fact(cut, "too_long").si > 0.0);
  CHECK(amount_fact(cut, "least_closed").si > amount_fact(cut, "greatest_closed").si);
}

TEST_CASE("rules of the tubes are inputs") {
  Json document = to_be_cut();
  const double usual = amount_fact(found(assessed(document), Check::cut_list), "cut").si;
  document["limits"]["minimum_clearance"] = "75 mm";
  CHECK(amount_fact(found(assessed(document), Check::cut_list), "cut").si > usual + 0.0235);
  document = to_be_cut();
  document["limits"]["minimum_overlap"] = "120 mm";
  CHECK(phrase_fact(found(assessed(document), Check::cut_list), "rule") == "cut.rule.stated");
  CHECK(phrase_fact(found(assessed(to_be_cut()), Check::cut_list), "rule") == "cut.rule.least");
}

TEST_CASE("guard tubes: bare shaft stops, unstated is not examined, half stated is not known") {
  CHECK(not_examined(assessed(that_fits()), Check::guard_tubes));
  CHECK(to_ask(assessed(that_fits()), Check::guard_tubes).size() == 2);
  Json document = to_be_cut();
  const Finding bottoms = found(assessed(document), Check::guard_tubes);
  CHECK(bottoms.status == Status::stop);
  document["driveline"]["guard_closed_length"] = "500 mm ± 3 mm";
  CHECK(status_of(assessed(document), Check::guard_tubes) == Status::ok);
  document["driveline"]["guard_closed_overlap"] = "250 mm ± 3 mm"; // 755 - 500 mm and the tolerances are more
  CHECK(reason_of(assessed(document), Check::guard_tubes) == "guard_tubes.overlap");
  CHECK(status_of(assessed(document), Check::guard_tubes) == Status::stop);
  document["driveline"].erase("guard_closed_overlap");
  CHECK(status_of(assessed(document), Check::guard_tubes) == Status::not_known);
}

namespace {

/// The case after the cuts of members and guard tubes that a finding names.
Json cut_as_told(Json document, double members, double guards) {
  Json& line = document["driveline"];
  const Case stated = read_case(document.dump());
  const auto shorter = [](const Stated<MeasuredLength>& length, double by) {
    return millimetres_text(Length(length->value).value() - by) + " ± " +
           millimetres_text(Length(length->tolerance).value());
  };
  line["closed_length"] = shorter(stated.driveline.closed_length, members);
  line["closed_overlap"] = shorter(stated.driveline.closed_overlap, members);
  line["guard_closed_length"] = shorter(stated.driveline.guard_closed_length, guards);
  line["guard_closed_overlap"] = shorter(stated.driveline.guard_closed_overlap, guards);
  line.erase("hand_checks");
  return document;
}

} // namespace

TEST_CASE("no cut of the members leaves the guard tubes apart over a turning shaft") {
  // Guards 540 mm closed, 300 mm of overlap, ± 3 mm each: what is left at the longest of 755 mm falls by twice the cut.
  struct Row {
    const char* overlap;
    const char* order;
    const char* of_guards;
  };
  for (const Row& row :
       {Row{"300 mm ± 3 mm", "cut.members", "cut.guards_by_looser_rules"},
        Row{"360 mm ± 3 mm", "cut.members", "cut.guards_own"}, Row{"460 mm ± 3 mm", "cut.by_this_much", ""},
        Row{"240 mm ± 3 mm", "cut.members", "cut.guards_others"}}) {
    Json document = to_be_cut();
    document["driveline"]["guard_closed_overlap"] = row.overlap;
    CAPTURE(row.overlap);
    const Assessment before = assessed(document);
    const Finding& cut = found(before, Check::cut_list);
    CHECK(advises(cut, row.order));
    CHECK((*row.of_guards == '\0' || advises(cut, row.of_guards)));
    CHECK(found(before, Check::guard_tubes).advice.empty()); // one order about the guard tubes
    const double guards = amount_fact(cut, "guard_cut").si;
    const double members = amount_fact(cut, "cut").si;
    CHECK(members == doctest::Approx(0.059)); // 560 - (554.1 - 3 - 50) mm
    const double overlap = read_case(document.dump()).driveline.guard_closed_overlap->value.value();
    const double longest = before.envelopes[2].longest.bound.si;
    CHECK(amount_fact(cut, "guard_overlap_after").si ==
          doctest::Approx(overlap - 0.006 - (longest - 0.540) - 2.0 * guards).epsilon(1e-9));
    const Assessment after = assessed(cut_as_told(document, members, guards));
    CHECK(status_of(after, Check::clearance) == Status::ok);
    CHECK(status_of(after, Check::overlap) == Status::ok);
    CHECK(found(after, Check::guard_tubes).status <= found(before, Check::guard_tubes).status);
    if (guards > 0.0) CHECK(status_of(after, Check::guard_tubes) <= Status::caution);
  }
  Json unstated = to_be_cut();
  unstated["driveline"].erase("guard_closed_length");
  unstated["driveline"].erase("guard_closed_overlap");
  CHECK(advises(found(assessed(unstated), Check::cut_list), "cut.guards_unstated"));
  unstated["driveline"]["guard"] = "absent";
  CHECK(!advises(found(assessed(unstated), Check::cut_list), "cut.guards_unstated"));
}

TEST_CASE("guard tubes alone: the cut, the looser cut, and the tubes that would suit are each kept when done") {
  Json document = that_fits();
  document["driveline"]["guard_closed_length"] = "525 mm ± 3 mm"; // 26 mm of room where 50 mm are wanted
  document["driveline"]["guard_closed_overlap"] = "420 mm ± 3 mm";
  const Assessment before = assessed(document);
  const Finding& guards = found(before, Check::guard_tubes);
  CHECK(guards.status == Status::caution);
  CHECK(advises(guards, "guard_tubes.cut"));
  const double cut = amount_fact(guards, "guard_cut").si;
  CHECK(status_of(assessed(cut_as_told(document, 0.0, cut)), Check::guard_tubes) == Status::ok);
  document["driveline"]["guard_closed_overlap"] = "220 mm ± 3 mm"; // bare at the longest
  const Assessment bare = assessed(document);
  const Finding& others = found(bare, Check::guard_tubes);
  CHECK(others.status == Status::stop);
  CHECK(advises(others, "guard_tubes.others"));
  document["driveline"]["guard_closed_length"] = millimetres_text(amount_fact(others, "guard_closed").si) + " ± 3 mm";
  document["driveline"]["guard_closed_overlap"] = millimetres_text(amount_fact(others, "guard_overlap").si) + " ± 3 mm";
  CHECK(status_of(assessed(document), Check::guard_tubes) == Status::ok);
}

TEST_CASE("how far to turn is proved, and its closed form is met") {
  // Flat, without tolerances: both joints turn at a = 340 mm ahead of and b = 360 mm behind the pin, in one plane.
  Json document = that_fits();
  document["tractor"]["hitch"]["distance"] = "400 mm";
  document["tractor"]["hitch"]["drop"] = "250 mm";
  document["implement"]["input"]["behind"] = "420 mm";
  document["implement"]["input"]["above"] = "250 mm";
  document["driveline"]["front_joint"] = "60 mm";
  document["driveline"]["rear_joint"] = "60 mm";
  document["driveline"]["closed_length"] = "620 mm";
  document["driveline"]["closed_overlap"] = "400 mm";
  document["limits"]["minimum_clearance"] = "26 mm";
  for (const char* angle : {"pitch", "roll"}) document["range"]["turning"][angle] = {"0 deg", "0 deg"};
  const Assessment assessment = assessed(document);
  const Finding& turn = found(assessment, Check::turn_limit);
  const double left = amount_fact(turn, "left").si;
  // The length may not fall below 620 + 26 mm.
  CHECK(phrase_fact(turn, "left_stop") == "turn.stop.shortest");
  CHECK(planar_centre_distance(metres(0.34), metres(0.36), radians(left)) >= metres(0.646));
  CHECK(planar_centre_distance(metres(0.34), metres(0.36), radians(left) + degrees(0.2)) < metres(0.646));
  CHECK(amount_fact(turn, "right").si == left);
}

TEST_CASE("the turn limit over the pitch: no point of the curve allows less than the limit over the whole pitch") {
  const Assessment assessment = assessed(that_fits());
  REQUIRE(assessment.turn_curve.size() == 9);
  CHECK(assessment.turn_curve.front().pitch.value() == doctest::Approx(in(degrees(-6.0), unit::radian)));
  CHECK(assessment.turn_curve.back().pitch.value() == doctest::Approx(in(degrees(6.0), unit::radian)));
  const Finding& turn = found(assessment, Check::turn_limit);
  double least = 10.0;
  for (const TurnAtPitch& point : assessment.turn_curve) {
    least = std::min(least, point.left.value());
    CHECK(point.left.value() == doctest::Approx(point.right.value()).epsilon(0.05)); // nothing is off centre
  }
  constexpr double halving = 0.001; // 0.05° of halving
  CHECK(least >= amount_fact(turn, "left").si - halving);
  CHECK(Json::parse(to_json(assessment))["geometry"]["turn_limit_over_pitch"].size() == 9);
  CHECK(assessed(mounted()).turn_curve.empty());
}

TEST_CASE("a turn beyond the limit objects, one within it does not, and the wider side decides") {
  Json document = that_fits();
  CHECK(status_of(assessed(document), Check::turn_limit) == Status::ok);
  CHECK(phrase_fact(found(assessed(document), Check::turn_limit), "fouling") == "turn.fouling.unstated");
  document["range"]["turning"]["yaw"] = {"-10 deg", "45 deg"}; // caution above 41.2°
  const Assessment wide = assessed(document);
  CHECK(status_of(wide, Check::turn_limit) == Status::caution);
  CHECK(found(wide, Check::turn_limit).value->si == doctest::Approx(in(degrees(45.0), unit::radian)));
  CHECK(advises(found(wide, Check::turn_limit), "turn.no_further"));
  document["range"]["turning"]["yaw"] = {"-75 deg", "10 deg"};
  CHECK(status_of(assessed(document), Check::turn_limit) == Status::stop);
  document["range"]["turning"]["pitch"] = {"-45 deg", "45 deg"};
  CHECK(reason_of(assessed(document), Check::turn_limit) == "turn.not_even_straight");
  document["range"]["turning"].erase("pitch");
  CHECK(status_of(assessed(document), Check::turn_limit) == Status::not_known);
  CHECK(not_examined(assessed(mounted()), Check::turn_limit));
}

TEST_CASE("how high to lift: the limit of a mounted machine, and the lift as stated against it") {
  Json document = mounted();
  document["driveline"]["closed_length"] = "700 mm ± 3 mm";
  document["driveline"]["closed_overlap"] = "560 mm ± 3 mm";
  const Assessment assessment = assessed(document);
  const Finding& lift = found(assessment, Check::lift_limit);
  CHECK(std::string(lift.reason) == "lift.limit");
  const double allowed = amount_fact(lift, "lift").si;
  CHECK(allowed > -0.3);
  CHECK(allowed < 0.45);
  document["range"]["turning"]["lift"] = {"-300 mm", millimetres_text(allowed - 0.001)};
  CHECK(status_of(assessed(document), Check::lift_limit) == Status::ok);
  document["range"]["turning"]["lift"] = {"-300 mm", millimetres_text(allowed + 0.01)};
  CHECK(status_of(assessed(document), Check::lift_limit) != Status::ok);
  document["range"]["turning"].erase("lift");
  CHECK(status_of(assessed(document), Check::lift_limit) == Status::not_known);
  CHECK(not_examined(assessed(that_fits()), Check::lift_limit));
}

TEST_CASE("fouling: unstated is not examined and asks, half stated is not known, too near objects") {
  const Assessment unstated = assessed(that_fits());
  CHECK(not_examined(unstated, Check::fouling));
  CHECK(to_ask(unstated, Check::fouling).size() == 4);
  Json document = to_be_cut();
  CHECK(status_of(assessed(document), Check::fouling) == Status::ok);
  const double free_turn = amount_fact(found(assessed(that_fits()), Check::turn_limit), "left").si;
  document["fouling"]["tyres"][0]["centre"]["behind"] = "-200 mm";
  document["fouling"]["tyres"][0]["centre"]["left"] = "500 mm";
  document["driveline"]["closed_length"] = that_fits()["driveline"]["closed_length"];
  document["driveline"]["closed_overlap"] = that_fits()["driveline"]["closed_overlap"];
  const Assessment near = assessed(document);
  CHECK(status_of(near, Check::fouling) != Status::ok);
  CHECK(amount_fact(found(near, Check::turn_limit), "left").si <= free_turn);
  CHECK(phrase_fact(found(near, Check::turn_limit), "fouling") == "turn.fouling.considered");
  document["fouling"]["tyres"][0]["centre"].erase("left");
  const Assessment lacking = assessed(document);
  CHECK(status_of(lacking, Check::fouling) == Status::not_known);
  CHECK(found(lacking, Check::fouling).missing == std::vector<std::string>{"fouling.tyres[0].centre.left"});
  CHECK(status_of(lacking, Check::turn_limit) == Status::not_known);
  document.erase("fouling");
  document["driveline"].erase("guard_diameter");
  CHECK(status_of(assessed(document), Check::turn_limit) == Status::ok); // says that fouling is not known
  Json on_linkage = mounted();
  CHECK(not_examined(assessed(on_linkage), Check::fouling));
  CHECK(phrase_fact(found(assessed(on_linkage), Check::lift_limit), "fouling") == "lift.fouling.unstated");
  on_linkage["fouling"] = to_be_cut()["fouling"];
  CHECK(status_of(assessed(on_linkage), Check::fouling) == Status::not_known);
}

TEST_CASE("fouling of a mounted machine: lower links are wanted, objected to where near, and bound the lift") {
  Json document = mounted();
  document["driveline"]["closed_length"] = "500 mm ± 3 mm";
  document["driveline"]["closed_overlap"] = "400 mm ± 3 mm";
  document["driveline"]["guard_diameter"] = "120 mm";
  document["fouling"]["lower_links"] = {{"pivot_span", "450 mm ± 10 mm"}, {"hitch_span", "820 mm ± 10 mm"}};
  const Assessment lacking = assessed(document);
  CHECK(found(lacking, Check::fouling).missing == std::vector<std::string>{"fouling.lower_links.diameter"});
  CHECK(status_of(lacking, Check::lift_limit) >= Status::not_known);
  CHECK(found(lacking, Check::lift_limit).missing == found(lacking, Check::fouling).missing);
  document["fouling"]["lower_links"]["diameter"] = "70 mm";
  const Assessment clear = assessed(document);
  CHECK(status_of(clear, Check::fouling) == Status::ok);
  CHECK(phrase_fact(found(clear, Check::fouling), "part") == "fouling.part.links");
  CHECK(phrase_fact(found(clear, Check::lift_limit), "fouling") == "lift.fouling.considered");
  const double free_lift = amount_fact(found(clear, Check::lift_limit), "lift").si;
  // Links whose pivots stand no wider than guard and links together reach in plan.
  document["fouling"]["lower_links"]["pivot_span"] = "240 mm ± 10 mm";
  const Assessment near = assessed(document);
  CHECK(status_of(near, Check::fouling) != Status::ok);
  CHECK(found(near, Check::fouling).value->si < found(clear, Check::fouling).value->si);
  CHECK(advises(found(near, Check::fouling), "fouling.keep_clear_mounted"));
  CHECK(amount_fact(found(near, Check::lift_limit), "lift").si <= free_lift);
}

TEST_CASE("locks of the joints: unstated is said, one alone is not known, a position past one stops with its pose") {
  CHECK(not_examined(assessed(that_fits()), Check::joint_lock));
  CHECK(to_ask(assessed(that_fits()), Check::joint_lock).size() == 2);
  Json document = that_fits();
  document["driveline"]["front_joint_lock"] = "80 deg";
  CHECK(found(assessed(document), Check::joint_lock).missing == std::vector<std::string>{"driveline.rear_joint_lock"});
  document["driveline"]["rear_joint_lock"] = "80 deg";
  const Assessment within = assessed(document);
  CHECK(status_of(within, Check::joint_lock) == Status::ok);
  const double worst = found(within, Check::joint_lock).value->si;
  CHECK(worst == std::max(within.envelopes[2].front_angle.bound.si, within.envelopes[2].rear_angle.bound.si));
  // A lock just below the worst angle, which occurs in transport with the PTO at rest.
  document["driveline"]["front_joint_lock"] = std::to_string(worst * 180.0 / pi - 0.01) + " deg";
  document["driveline"]["rear_joint_lock"] = document["driveline"]["front_joint_lock"];
  const Finding reached = found(assessed(document), Check::joint_lock);
  CHECK(reached.status == Status::stop);
  CHECK(reached.state == MachineState::transport);
  REQUIRE(reached.pose);
  CHECK(math::abs(reached.pose->yaw) > degrees(50.0));
  CHECK(advises(reached, "lock.keep_off"));
  document["driveline"].erase("rear_joint_lock"); // one lock that is passed stops whatever the other is
  document["driveline"]["front_joint_lock"] = "20 deg";
  CHECK(status_of(assessed(document), Check::joint_lock) == Status::stop);
  // Locks bound the turn as limits do.
  CHECK(amount_fact(found(assessed(document), Check::turn_limit), "left").si <
        amount_fact(found(within, Check::turn_limit), "left").si);
}

TEST_CASE("a wide-angle joint has limits of its own, and its centre belongs over the pin") {
  CHECK(not_examined(assessed(that_fits()), Check::wide_angle_centre));
  CHECK(not_examined(assessed(mounted()), Check::wide_angle_centre));
  Json document = that_fits();
  document["driveline"]["front_joint_kind"] = "wide-angle";
  const Finding off = found(assessed(document), Check::wide_angle_centre);
  CHECK(off.status == Status::caution);
  CHECK(off.value->si == doctest::Approx(0.34)); // 400 - 60 mm
  CHECK(phrase_fact(off, "side") == "centre.ahead");
  // 340 mm off, 360 mm to the other joint, at the greatest turn stated: 55°.
  CHECK(amount_fact(off, "far").si ==
        doctest::Approx(wide_angle_far_angle(metres(0.34), metres(0.36), degrees(55.0)).value()));
  CHECK(advises(off, "centre.move"));
  document["driveline"]["front_joint"] = "390 mm ± 2 mm";
  const Finding over = found(assessed(document), Check::wide_angle_centre);
  CHECK(over.status == Status::ok);
  CHECK(over.value->si == doctest::Approx(0.01));
  document["limits"]["wide_angle_centre"] = "5 mm";
  CHECK(status_of(assessed(document), Check::wide_angle_centre) == Status::stop);
  document["limits"]["wide_angle_centre"] = "100 mm";
  document["tractor"]["hitch"]["lateral"] = "60 mm";
  CHECK(found(assessed(document), Check::wide_angle_centre).value->si == doctest::Approx(std::hypot(0.01, 0.06)));
  document["driveline"].erase("rear_joint_kind");
  CHECK(status_of(assessed(document), Check::wide_angle_centre) == Status::not_known);

  // A limit for wide-angle joints leaves the plain one at the other end alone.
  Json limited = that_fits();
  const double plain_limit = found(assessed(limited), Check::turning_angle).limit->si;
  limited["limits"]["wide_turning_angle"] = "10 deg";
  CHECK(found(assessed(limited), Check::turning_angle).limit->si == plain_limit);
  limited["driveline"]["front_joint_kind"] = "wide-angle";
  CHECK(found(assessed(limited), Check::turning_angle).limit->si == doctest::Approx(in(degrees(10.0), unit::radian)));
  CHECK(status_of(assessed(limited), Check::turning_angle) == Status::stop);
}

TEST_CASE("an adaptor moves the front joint: angles and lengths follow, and the finding says by how much") {
  Json document = that_fits();
  const Assessment bare = assessed(document);
  document["driveline"]["adaptor"] = {{"length", "90 mm"}};
  const Assessment longer = assessed(document);
  const Finding& adaptor = found(longer, Check::adaptor);
  CHECK(adaptor.status == Status::stop);
  CHECK(std::string(adaptor.reason) == "adaptor.moves");
  CHECK(amount_fact(adaptor, "joint").si == doctest::Approx(0.15));
  CHECK(amount_fact(adaptor, "own_front").si == bare.envelopes[2].front_angle.bound.si);
  CHECK(amount_fact(adaptor, "front").si == longer.envelopes[2].front_angle.bound.si);
  CHECK(longer.envelopes[2].front_angle.bound.si > bare.envelopes[2].front_angle.bound.si);
  CHECK(amount_fact(adaptor, "shortest").si < amount_fact(adaptor, "own_shortest").si - 0.05);
  document["driveline"]["front_joint"] = "150 mm ± 2 mm"; // the same joint without it
  document["driveline"]["adaptor"] = "none";
  CHECK(assessed(document).envelopes[2].shortest.bound.si == longer.envelopes[2].shortest.bound.si);
  document["driveline"]["adaptor"] = Json::object();
  const Assessment unknown = assessed(document);
  CHECK(unknown.envelopes.empty());
  CHECK(found(unknown, Check::overlap).missing.front() == "driveline.adaptor.length");
}

TEST_CASE("three members: either slide may give all, stops hold, and the cut list reckons with both") {
  Json document = that_fits();
  const Assessment two = assessed(document);
  document["driveline"]["middle_member"] = Json::object();
  CHECK(found(assessed(document), Check::overlap).missing ==
        std::vector<std::string>{"driveline.middle_member.closed_overlap"});
  CHECK(found(assessed(document), Check::turn_limit).missing ==
        std::vector<std::string>{"driveline.middle_member.closed_overlap"});
  document["driveline"]["middle_member"]["closed_overlap"] = "380 mm ± 3 mm";
  const Assessment three = assessed(document);
  const Finding& overlap = found(three, Check::overlap);
  CHECK(phrase_fact(overlap, "slide") == "telescope.slide.rear");
  // 40 mm less overlap than the other slide, which may not have moved yet.
  CHECK(overlap.value->si == doctest::Approx(found(two, Check::overlap).value->si - 0.04));
  CHECK(amount_fact(found(three, Check::cut_list), "overlap_after").si ==
        doctest::Approx(amount_fact(found(two, Check::cut_list), "overlap_after").si - 0.04));
  // A stop at 100 mm keeps 280 mm in: the front slide gives the rest and decides.
  document["driveline"]["middle_member"]["greatest_travel"] = "100 mm";
  const Assessment held = assessed(document);
  CHECK(phrase_fact(found(held, Check::overlap), "slide") == "telescope.slide.front");
  CHECK(found(held, Check::overlap).value->si == doctest::Approx(found(two, Check::overlap).value->si));
  document["driveline"]["greatest_travel"] = "100 mm"; // 700 mm at the most, which is not enough
  const Assessment stopped = assessed(document);
  CHECK(reason_of(stopped, Check::overlap) == "telescope.against_stop");
  CHECK(status_of(stopped, Check::overlap) == Status::stop);
  CHECK(found(stopped, Check::overlap).limit->si == doctest::Approx(0.697)); // 500 - 3 + 100 + 100
  CHECK(found(stopped, Check::cut_list).status == Status::stop);
}

TEST_CASE("a length measured by hand that disagrees takes every pass on the geometry back, and the cut list") {
  Json document = to_be_cut();
  CHECK(status_of(assessed(document), Check::hand_check) == Status::ok);
  CHECK(not_examined(assessed(that_fits()), Check::hand_check));
  document["driveline"]["hand_checks"].erase(1);
  const Assessment once = assessed(document);
  CHECK(status_of(once, Check::hand_check) == Status::caution);
  CHECK(advises(found(once, Check::hand_check), "hand.second_pose"));
  document["driveline"]["hand_checks"][0]["length"] = "790 mm ± 5 mm";
  const Assessment wrong = assessed(document);
  CHECK(reason_of(wrong, Check::hand_check) == "hand.disagrees");
  for (const Check check :
       {Check::hand_check, Check::cut_list, Check::overlap, Check::turn_limit, Check::working_angle, Check::fouling}) {
    CHECK(status_of(wrong, check) == Status::not_known);
  }
  CHECK(status_of(wrong, Check::clearance) == Status::stop); // an objection stays
  // Nor does any pass of strength that goes by the joint angles; what does not stays.
  for (const Check check : {Check::root_torsion, Check::root_torsion_at_angle, Check::tube_torsion, Check::joint_rating,
                            Check::start_up, Check::fatigue_life}) {
    CHECK(reason_of(wrong, check) == "hand.judge_later");
  }
  CHECK(status_of(wrong, Check::flank_pressure) == Status::ok);
  // The bearings' life goes by the angles in work, unless the duties state their own.
  document["driveline"]["bearing_rating"] = "30 kN";
  document["driveline"]["bearing_arm"] = "40 mm";
  document["limits"]["wanted_life"] = "100 h";
  CHECK(reason_of(assessed(document), Check::joint_bearing_life) == "hand.judge_later");
  document["driveline"]["duties"] =
      Json::parse(R"([{"name": "all", "share": "100 %", "power": "34 kW", "joint_angle": "12 deg"}])");
  CHECK(status_of(assessed(document), Check::joint_bearing_life) == Status::ok);
  const std::string sentence = Json::parse(to_json(assessed(document)))["geometry"]["certificate"][0];
  CHECK(sentence.find("Nothing is proved") == 0);
  document["driveline"]["hand_checks"][0]["length"] = "702 mm";
  document["driveline"]["hand_checks"][0].erase("yaw");
  const Assessment lacking = assessed(document);
  CHECK(found(lacking, Check::hand_check).missing == std::vector<std::string>{"driveline.hand_checks[0].yaw"});
  CHECK(status_of(lacking, Check::cut_list) == Status::not_known);
}

TEST_CASE("a length by hand that is too coarse, or twice of one pose, proves nothing") {
  // The joint centres stand 700 mm apart, straight and level.
  const auto checked = [](const char* length, const char* yaw, const char* other_length, const char* other_yaw) {
    Json document = that_fits();
    document["driveline"]["hand_checks"] = {
        {{"length", length}, {"yaw", yaw}, {"pitch", "0 deg"}, {"roll", "0 deg"}},
        {{"length", other_length}, {"yaw", other_yaw}, {"pitch", "0 deg"}, {"roll", "0 deg"}}};
    return found(assessed(document), Check::hand_check);
  };
  const Finding coarse = checked("900 mm ± 400 mm", "0 deg", "900 mm ± 400 mm", "0 deg");
  CHECK(coarse.status == Status::caution); // it was a pass "at 2 poses", 200 mm off
  CHECK(std::string(coarse.reason) == "hand.too_coarse");
  CHECK(coarse.value->si == doctest::Approx(0.4));
  CHECK(advises(coarse, "hand.finer"));
  const Finding twice = checked("700 mm ± 5 mm", "0 deg ± 1 deg", "700 mm ± 5 mm", "0 deg ± 1 deg");
  CHECK(twice.status == Status::caution);
  CHECK(std::string(twice.reason) == "hand.same_pose");
  CHECK(advises(twice, "hand.second_pose"));
  // Turned by 30 degrees either way they are equally far apart, by 676 mm: one pose. With the straight one they are
  // two.
  CHECK(checked("676 mm ± 5 mm", "-30 deg", "676 mm ± 5 mm", "30 deg").status == Status::caution);
  const Finding two = checked("700 mm ± 5 mm", "0 deg", "676 mm ± 5 mm", "30 deg");
  CHECK(two.status == Status::ok);
  CHECK(amount_fact(two, "shows_from").si == doctest::Approx(two.limit->si + 0.005));
  // A pose by guess is as coarse as a bad tape: at 30 degrees the length changes by 2 mm for each degree or so.
  CHECK(std::string(checked("676 mm ± 5 mm", "30 deg ± 15 deg", "676 mm ± 5 mm", "30 deg ± 15 deg").reason) ==
        "hand.too_coarse");
}

TEST_CASE("hand checks of a mounted machine: the pose by its lift, one out of reach is not known") {
  Json document = mounted();
  document["driveline"]["hand_checks"] = {
      {{"length", "900 mm ± 5 mm"}, {"yaw", "0 deg"}, {"roll", "0 deg"}, {"lift", "-280 mm ± 5 mm"}},
      {{"length", "1000 mm ± 5 mm"}, {"yaw", "0 deg"}, {"roll", "0 deg"}, {"lift", "400 mm ± 5 mm"}}};
  const Finding first = found(assessed(document), Check::hand_check);
  for (std::size_t i = 0; i < 2; ++i) { // measure what the model says: then both agree
    Json one = document;
    one["driveline"]["hand_checks"] = {document["driveline"]["hand_checks"][i]};
    const double model = amount_fact(found(assessed(one), Check::hand_check), "model").si;
    document["driveline"]["hand_checks"][i]["length"] = millimetres_text(model) + " ± 1 mm";
  }
  CHECK(status_of(assessed(document), Check::hand_check) == Status::ok);
  document["driveline"]["hand_checks"][1]["lift"] = "1.5 m";
  CHECK(reason_of(assessed(document), Check::hand_check) == "hand.impossible");
}

TEST_CASE("unequal joints: the hole for PTO work that is better, the place of the input, never the short hole") {
  Json document = that_fits();
  document["implement"]["input"]["behind"] = "700 mm ± 10 mm";
  const Assessment unequal = assessed(document);
  const Finding& difference = found(unequal, Check::angle_difference);
  REQUIRE(difference.status != Status::ok);
  // These members would come apart in the hole and bottom with the input shaft moved: neither is offered.
  CHECK(texts(difference.advice) == std::vector<std::string>{"difference.other_driveline"});
  CHECK(!advises(found(unequal, Check::speed_variation), "difference.equalise"));
  const double hole = amount_fact(difference, "hole").si;
  CHECK(hole == doctest::Approx(0.55)); // the extended hole of type 1
  // a pin at 400 mm: the rear joint belongs 340 mm behind it, the end of the input shaft 60 mm further
  CHECK(amount_fact(difference, "equal_behind").si == doctest::Approx(0.4));
  document["implement"]["input"]["behind"] = millimetres_text(amount_fact(difference, "equal_behind").si);
  const Finding healed = found(assessed(document), Check::angle_difference);
  CHECK(healed.status == Status::ok);
  CHECK(healed.value->si == doctest::Approx(amount_fact(difference, "equal_difference").si).epsilon(1e-3));
  document["implement"]["input"]["behind"] = "700 mm ± 10 mm";
  document["tractor"]["hitch"]["distance"] = millimetres_text(hole);
  const double there = found(assessed(document), Check::angle_difference).value->si;
  CHECK(there == doctest::Approx(amount_fact(difference, "hole_difference").si).epsilon(1e-3));
  // Where the pin lies midway the difference comes from heights and rolling: no place of the pin is blamed or advised.
  document = that_fits();
  document["implement"]["input"]["behind"] = "400 mm ± 10 mm";
  document["implement"]["input"]["above"] = "500 mm ± 5 mm";
  const Finding high = found(assessed(document), Check::angle_difference);
  REQUIRE(high.status != Status::ok);
  CHECK(std::string(high.reason) == "difference.in_work");
  CHECK(!advises(high, "difference.place_of_input_runs"));
  // An input so near that the short hole would be the best of all: it is not named.
  document = that_fits();
  document["tractor"]["hitch"]["distance"] = "550 mm ± 5 mm";
  document["implement"]["input"]["behind"] = "250 mm ± 5 mm";
  const Finding near = found(assessed(document), Check::angle_difference);
  REQUIRE(near.status != Status::ok);
  CHECK(amount_fact(near, "hole").si > 0.34);
}

TEST_CASE("unequal joints: the pin beside the line of the stub is the cause, and is told") {
  Json document = example("cutter-measured-with-a-tape");
  const Assessment assessment = assessed(document);
  const Finding& difference = found(assessment, Check::angle_difference);
  CHECK(texts(difference.advice) ==
        std::vector<std::string>{"difference.into_line"}); // the input at 400 mm helps nothing
  CHECK(amount_fact(difference, "pin_beside").si == doctest::Approx(0.020));
  document["tractor"]["hitch"]["lateral"] = "0 mm ± 5 mm";
  const Finding mended = found(assessed(document), Check::angle_difference);
  // As measured it keeps the limit there; with every measurement at the worse end of its tolerance not quite.
  CHECK(std::string(mended.reason) == "difference.loose");
  CHECK(amount_fact(mended, "stated").si ==
        doctest::Approx(amount_fact(difference, "difference_there").si).epsilon(1e-3));
  CHECK(mended.value->si < difference.value->si);
}

TEST_CASE("a pin outside its holes comes first: no report tells to put it into one hole and into another") {
  const Assessment assessment = assessed(example("drawbar-left-in-the-540-hole"));
  CHECK(advises(found(assessment, Check::drawbar_distance), "drawbar.move_pin"));
  const Finding& difference = found(assessment, Check::angle_difference);
  REQUIRE(difference.status != Status::ok);
  CHECK(texts(difference.advice) == std::vector<std::string>{"difference.pin_first"});
}

TEST_CASE("a cut that only the looser rules allow is told with its range, and no cut is forbidden beside it") {
  Json document = to_be_cut();
  document["range"]["transport"]["yaw"] = {"-60 deg", "60 deg"};
  // Members chosen so that the rules of 150 and 50 mm leave nothing, those of 110 and 25 mm a few millimetres.
  std::optional<Assessment> assessment;
  for (int overlap = 500; overlap > 250 && !assessment; overlap -= 5) {
    document["driveline"]["closed_overlap"] = std::to_string(overlap) + " mm ± 3 mm";
    Assessment one = assessed(document);
    if (advises(found(one, Check::cut_list), "cut.by_looser_rules")) assessment = std::move(one);
  }
  REQUIRE(assessment.has_value());
  const Finding& cut = found(*assessment, Check::cut_list);
  CHECK(cut.status == Status::stop);
  for (const char* end : {"least_cut", "greatest_cut"}) {
    Json made = document;
    const double by = amount_fact(cut, end).si;
    const double overlap = Length(read_case(document.dump()).driveline.closed_overlap->value).value();
    made["driveline"]["closed_length"] = millimetres_text(0.560 - by) + " ± 3 mm";
    made["driveline"]["closed_overlap"] = millimetres_text(overlap - by) + " ± 3 mm";
    const Assessment after = assessed(made);
    CHECK(status_of(after, Check::overlap) <= Status::caution);
    CHECK(status_of(after, Check::clearance) <= Status::caution);
    CHECK(status_of(after, Check::cut_list) == Status::caution);
    CHECK(reason_of(after, Check::cut_list) == "cut.conflict_of_rules");
    CHECK(advises(found(after, Check::cut_list), "cut.open_interval"));
  }
}

TEST_CASE("where even the lowest lift breaks a limit no height is named, wherever the state ends") {
  for (const char* high : {"-300 mm", "100 mm"}) {
    Json document = mounted();
    document["range"]["turning"]["lift"] = {"-300 mm", high};
    const Assessment assessment = assessed(document);
    const Finding& lift = found(assessment, Check::lift_limit);
    REQUIRE(std::string(lift.reason) == "lift.not_even_low");
    CHECK(advises(lift, "lift.mend_first"));
    CHECK(!advises(lift, "lift.no_higher"));
    const std::string report = to_text(assessment);
    CHECK(report.find("Lift no higher") == std::string::npos);
  }
}

TEST_CASE("the certificate: bounds of every state, none better than what attains them, and what matters most") {
  const Assessment assessment = assessed(that_fits());
  REQUIRE(assessment.envelopes.size() == 3);
  for (const StateEnvelope& e : assessment.envelopes) {
    for (const StateExtreme* extreme : {&e.front_angle, &e.rear_angle, &e.difference, &e.longest}) {
      CHECK(extreme->bound.si >= extreme->attained.si);
      CHECK(extreme->gap.si == doctest::Approx(extreme->bound.si - extreme->attained.si).epsilon(1e-6));
    }
    CHECK(e.shortest.bound.si <= e.shortest.attained.si);
    REQUIRE(e.longest.most.has_value());
    CHECK(e.longest.most->entry == "implement.input.behind"); // ± 10 mm, the widest that lies along the driveline
    CHECK(e.longest.most->moves.si == doctest::Approx(0.01).epsilon(0.05));
  }
  const Json report = Json::parse(to_json(assessment));
  CHECK(report["geometry"]["states"].size() == 3);
  const std::string sentence = report["geometry"]["certificate"][0];
  CHECK(sentence.find("no joint angle above 33.7°") != std::string::npos);
  CHECK(sentence.find("554 mm to 755 mm") != std::string::npos);
  CHECK(to_text(assessment).find("Proved over the whole range") != std::string::npos);
  Json two_states = that_fits();
  two_states["range"]["transport"].erase("roll");
  const std::string some = Json::parse(to_json(assessed(two_states)))["geometry"]["certificate"][0];
  CHECK(some.find("that could be examined, not of all") != std::string::npos);
  Json without = that_fits();
  without["implement"]["input"].erase("above");
  CHECK(assessed(without).envelopes.empty());
  CHECK(to_text(assessed(without)).find("Proved over the whole range") == std::string::npos);
}

namespace {

/// The cutter with its turning range measured in the field instead of stated as angles.
Json measured_in_the_field() {
  Json document = that_fits();
  document["tractor"]["wheelbase"] = "2.5 m ± 20 mm";
  document["tractor"]["rear_axle_ahead"] = "500 mm ± 10 mm";
  document["tractor"]["shaft_height"] = "700 mm ± 20 mm";
  document["tractor"]["track"] = "1.6 m ± 20 mm";
  document["implement"]["tongue_length"] = "3 m ± 50 mm";
  document["implement"]["track"] = "1.8 m ± 20 mm";
  document["tractor"]["hitch"]["lateral"] = "80 mm ± 5 mm";
  Json& turning = document["range"]["turning"];
  for (const char* angle : {"yaw", "pitch", "roll"}) turning.erase(angle);
  turning["left_turn_radius"] = "8 m ± 300 mm";
  turning["right_turn_radius"] = "7 m ± 300 mm";
  turning["hollow_radius"] = "40 m ± 2 m";
  turning["crest_radius"] = "30 m ± 2 m";
  turning["wheel_drop"] = {{"tractor_left", "0 mm"},
                           {"tractor_right", "200 mm ± 20 mm"},
                           {"implement_left", "50 mm ± 10 mm"},
                           {"implement_right", "100 mm ± 10 mm"}};
  return document;
}

/// A report without its line breaks.
std::string unwrapped(const std::string& report) {
  std::string text;
  for (const char c : report) {
    const bool space = c == ' ' || c == '\n';
    if (!space || (!text.empty() && text.back() != ' ')) text += space ? ' ' : c;
  }
  return text;
}

const StateEnvelope& turning_of(const Assessment& assessment) {
  for (const StateEnvelope& envelope : assessment.envelopes) {
    if (envelope.state == MachineState::turning) return envelope;
  }
  FAIL("the turning state was not examined");
  return assessment.envelopes.front();
}

} // namespace

TEST_CASE("ranges from what was measured hold every machine within the tolerances, and are reached by one") {
  const StateEnvelope envelope = turning_of(assessed(measured_in_the_field()));
  REQUIRE(envelope.pitch.has_value());
  const unsigned seed = 41U;
  CAPTURE(seed);
  std::mt19937 random(seed);
  // At the ends of the tolerances or anywhere within.
  const auto within = [&](double value, double tolerance) {
    const double side = std::uniform_real_distribution<double>(-1.5, 1.5)(random);
    return metres(value + tolerance * std::clamp(side, -1.0, 1.0));
  };
  AngleRange yaw, pitch, roll;
  for (int i = 0; i < 40000; ++i) {
    const Length distance = within(0.4, 0.005), ahead = within(0.5, 0.01), tongue = within(3.0, 0.05);
    const Length lateral = within(0.08, 0.005);
    yaw.low = std::min(yaw.low, -steady_turn_angle(within(8.0, 0.3) - lateral, ahead + distance, tongue));
    yaw.high = std::max(yaw.high, steady_turn_angle(within(7.0, 0.3) + lateral, ahead + distance, tongue));
    const Length drop = within(0.25, 0.01);
    const WheelPlaces wheels{within(2.5, 0.02), ahead + distance, tongue, within(0.7, 0.02) - drop};
    pitch.low = std::min(pitch.low, crest_pitch(wheels, within(30.0, 2.0)));
    pitch.high = std::max(pitch.high, hollow_pitch(wheels, within(40.0, 2.0)));
    const Length track = within(1.6, 0.02), own_track = within(1.8, 0.02);
    // Roll is that of the implement less that of the tractor; the left side goes up where the right wheel is low.
    const Angle tractor_high = -wheel_drop_roll(metres(0.0), track);
    const Angle tractor_low = wheel_drop_roll(within(0.2, 0.02), track);
    roll.high = std::max(roll.high, wheel_drop_roll(within(0.1, 0.01), own_track) - tractor_high);
    roll.low = std::min(roll.low, -wheel_drop_roll(within(0.05, 0.01), own_track) - tractor_low);
  }
  const auto encloses = [](const AmountRange& proved, const AngleRange& seen) {
    constexpr double reached = 0.006; // of 3e4 samples, some lie so near to the corner
    CHECK(proved.low.si <= seen.low.value());
    CHECK(proved.high.si >= seen.high.value());
    CHECK(proved.low.si > seen.low.value() - reached);
    CHECK(proved.high.si < seen.high.value() + reached);
  };
  encloses(envelope.yaw, yaw);
  encloses(*envelope.pitch, pitch);
  encloses(envelope.roll, roll);
}

TEST_CASE("ranges from what was measured: sides and signs, closed forms, origins in every form of report") {
  Json document = measured_in_the_field();
  const Assessment assessment = assessed(document);
  REQUIRE(turning_of(assessment).origins.size() == 3);
  CHECK(turning_of(assessment).origins[0].of == "yaw");
  CHECK(turning_of(assessment).origins[0].from.size() == 6);
  const Json states = Json::parse(to_json(assessment))["geometry"]["states"];
  CHECK(states[0]["measured"].empty());
  CHECK(states[1]["measured"][1]["from"][0]["entry"] == "range.turning.hollow_radius");
  CHECK(states[1]["measured"][1]["from"][0]["tolerance"]["si"] == doctest::Approx(2.0));
  for (const std::string& report : {to_text(assessment), to_markdown(assessment), to_html(assessment)}) {
    CHECK(unwrapped(report).find("follows from what was measured") != std::string::npos);
    CHECK(unwrapped(report).find("7000 mm ± 300 mm") != std::string::npos);
  }
  // Without tolerances: 46.4° of the worked example to the left, and nothing of the pin's place beside the middle.
  document["tractor"]["rear_axle_ahead"] = "500 mm";
  document["tractor"]["hitch"]["distance"] = "400 mm";
  document["tractor"]["hitch"]["lateral"] = "-100 mm";
  document["implement"]["tongue_length"] = "3 m";
  document["range"]["turning"]["left_turn_radius"] = "4.9 m";  // the pin stands 100 mm farther from this centre
  document["range"]["turning"]["right_turn_radius"] = "5.1 m"; // and as much nearer to that one
  const StateEnvelope five = turning_of(assessed(document));
  const double turn = std::atan(0.9 / 5.0) + std::asin(3.0 / std::hypot(5.0, 0.9));
  CHECK(five.yaw.low.si == doctest::Approx(-turn));
  CHECK(five.yaw.high.si == doctest::Approx(turn));
  CHECK(turn == doctest::Approx(46.4 * pi / 180.0).epsilon(1e-3));
  // A side slope leans either way, its tolerance on top.
  document["range"]["turning"].erase("wheel_drop");
  document["range"]["turning"]["side_slope"] = "4 deg ± 1 deg";
  const StateEnvelope slope = turning_of(assessed(document));
  CHECK(slope.roll.low.si == doctest::Approx(-5.0 * pi / 180.0));
  CHECK(slope.roll.high.si == doctest::Approx(5.0 * pi / 180.0));
}

TEST_CASE("a measured range that lacks something, or cannot be, is not known and names what") {
  const auto missing = [](const Json& document) { return found(assessed(document), Check::turning_angle).missing; };
  Json document = measured_in_the_field();
  CHECK(status_of(assessed(document), Check::turning_angle) != Status::not_known);
  document["range"]["turning"].erase("right_turn_radius"); // one side says nothing of the other
  CHECK(missing(document) == std::vector<std::string>{"range.turning.right_turn_radius"});
  for (const std::string path : {"tractor.wheelbase", "tractor.shaft_height", "implement.tongue_length",
                                 "tractor.track", "range.turning.wheel_drop.implement_left"}) {
    std::string pointer = "/" + path;
    std::replace(pointer.begin(), pointer.end(), '.', '/');
    Json lacking = measured_in_the_field();
    const Json::json_pointer at(pointer);
    lacking[at.parent_pointer()].erase(at.back());
    CHECK(missing(lacking) == std::vector<std::string>{path});
    CHECK(status_of(assessed(lacking), Check::overlap) == Status::not_known); // the telescope is judged over all states
  }
  document = measured_in_the_field();
  document["range"]["turning"]["left_turn_radius"] = "2.5 m"; // the tongue would never settle
  const Assessment tight = assessed(document);
  CHECK(reason_of(tight, Check::turning_angle) == "angle.impossible");
  CHECK(status_of(tight, Check::turn_limit) == Status::not_known);
  CHECK(status_of(tight, Check::cut_list) == Status::not_known);
}

namespace {

/// The mounted mower without any tolerance, its links' places known.
Json exact_mounted() {
  Json document = mounted();
  document["tractor"]["hitch"] = {{"kind", "three-point"},         {"lower_pivot_behind", "-250 mm"},
                                  {"lower_pivot_below", "150 mm"}, {"lower_link", "900 mm"},
                                  {"top_pivot_behind", "-150 mm"}, {"top_pivot_below", "-250 mm"},
                                  {"top_link", "700 mm"},          {"span", "825 mm"},
                                  {"convergence", "2 m"}};
  document["implement"]["input"] = {{"behind", "450 mm"}, {"above", "250 mm"}, {"lateral", "0 mm"}};
  document["driveline"]["front_joint"] = document["driveline"]["rear_joint"] = "60 mm";
  return document;
}

/// Two assessments that prove the same of every state, but for what the searches leave open.
void check_same_bounds(const Assessment& a, const Assessment& b) {
  REQUIRE(a.envelopes.size() == 3);
  REQUIRE(b.envelopes.size() == 3);
  constexpr double gap = 2e-4; // twice 0.1 mm and 0.01°
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK(std::abs(a.envelopes[i].front_angle.bound.si - b.envelopes[i].front_angle.bound.si) < 2.0 * gap);
    CHECK(std::abs(a.envelopes[i].rear_angle.bound.si - b.envelopes[i].rear_angle.bound.si) < 2.0 * gap);
    CHECK(std::abs(a.envelopes[i].longest.bound.si - b.envelopes[i].longest.bound.si) < gap);
    CHECK(std::abs(a.envelopes[i].shortest.bound.si - b.envelopes[i].shortest.bound.si) < gap);
  }
}

ThreePointLinkage linkage_of_example() {
  ThreePointLinkage l;
  l.lower_pivot_behind = millimetres(-250);
  l.lower_pivot_below = millimetres(150);
  l.lower_link = millimetres(900);
  l.top_pivot_behind = millimetres(-150);
  l.top_pivot_below = millimetres(-250);
  l.top_link = millimetres(700);
  l.mast_height = millimetres(610);
  l.span = millimetres(825);
  l.convergence = metres(2.0);
  return l;
}

} // namespace

TEST_CASE("the lift at which a machine stands level stands for the top link, wider by every tolerance") {
  Json stated = exact_mounted();
  stated["tractor"]["hitch"]["top_link"] =
      millimetres_text(top_link_for(linkage_of_example(), millimetres(-200)).value());
  Json level = exact_mounted();
  level["tractor"]["hitch"].erase("top_link");
  level["tractor"]["hitch"]["level_at"] = "-200 mm";
  check_same_bounds(assessed(stated), assessed(level));
  const Assessment assessment = assessed(level);
  REQUIRE(assessment.envelopes[0].origins.size() == 1);
  CHECK(assessment.envelopes[0].origins[0].of == "top_link");
  CHECK(unwrapped(to_text(assessment)).find("a top link of") != std::string::npos);
  // Every machine within the tolerances that stands level at a lift within its own has a top link within the interval.
  level["tractor"]["hitch"]["level_at"] = "-10 mm ± 30 mm";
  level["tractor"]["hitch"]["lower_link"] = "900 mm ± 5 mm";
  level["tractor"]["hitch"]["lower_pivot_below"] = "150 mm ± 8 mm";
  level["tractor"]["hitch"]["top_pivot_behind"] = "-150 mm ± 10 mm";
  level["implement"]["mast_height"] = "610 mm ± 6 mm";
  const AmountRange length = assessed(level).envelopes[0].origins[0].range;
  for (int corner = 0; corner < 32; ++corner) {
    const auto end = [corner](int bit, double mm) { return millimetres((corner >> bit & 1) != 0 ? mm : -mm); };
    ThreePointLinkage l = linkage_of_example();
    l.lower_link += end(0, 5);
    l.lower_pivot_below += end(1, 8);
    l.top_pivot_behind += end(2, 10);
    l.mast_height += end(3, 6);
    const double own = top_link_for(l, millimetres(-10) + end(4, 30)).value();
    CHECK(own >= length.low.si);
    CHECK(own <= length.high.si);
  }
  level["tractor"]["hitch"]["level_at"] = "-890 mm ± 20 mm"; // beyond the reach of the links
  CHECK(reason_of(assessed(level), Check::working_angle) == "angle.impossible");
}

TEST_CASE("a quick coupler moves the implement, as the input connection that much further back") {
  Json coupled = exact_mounted();
  coupled["tractor"]["hitch"]["quick_coupler"] = {{"depth", "110 mm"}, {"rise", "15 mm"}};
  Json moved = exact_mounted();
  moved["implement"]["input"]["behind"] = "560 mm";
  moved["implement"]["input"]["above"] = "265 mm";
  check_same_bounds(assessed(coupled), assessed(moved));
  coupled["tractor"]["hitch"]["quick_coupler"].erase("rise");
  CHECK(found(assessed(coupled), Check::working_angle).missing ==
        std::vector<std::string>{"tractor.hitch.quick_coupler.rise"});
  coupled["tractor"]["hitch"]["quick_coupler"] = "none";
  check_same_bounds(assessed(coupled), assessed(exact_mounted()));
}

TEST_CASE("sway and height difference of the lower links: closed forms, sides, tolerances, missing companions") {
  Json document = exact_mounted();
  for (const char* state : {"working", "turning", "transport"}) {
    document["range"][state].erase("yaw");
    document["range"][state].erase("roll");
    document["range"][state]["sway"] = {"-40 mm", "80 mm"};
    document["range"][state]["lower_link_difference"] = {"-20 mm", "60 mm"};
  }
  const Assessment assessment = assessed(document);
  REQUIRE(assessment.envelopes.size() == 3);
  const StateEnvelope& working = assessment.envelopes[0];
  // To the left the implement turns about the point where the links meet ahead of it: its front to the right.
  CHECK(working.yaw.low.si == doctest::Approx(-std::asin(0.08 / 2.0)));
  CHECK(working.yaw.high.si == doctest::Approx(std::asin(0.04 / 2.0)));
  CHECK(working.roll.low.si == doctest::Approx(-std::asin(0.02 / 0.825)));
  CHECK(working.roll.high.si == doctest::Approx(std::asin(0.06 / 0.825)));
  CHECK(working.origins.size() == 2);
  // No pose of the linkage lies outside.
  Driveline line;
  line.front_joint = line.rear_joint = millimetres(60);
  line.input = Position(millimetres(-450), Length{}, millimetres(250));
  for (int i = 0; i <= 8; ++i) {
    for (int j = 0; j <= 4; ++j) {
      const LinkagePosition at{millimetres(-320 + 10 * i), millimetres(-40 + 30 * j), millimetres(-20 + 20 * j)};
      const DrivelineState s = driveline_at(line, mounted_pose(linkage_of_example(), at));
      CHECK(s.front_angle.value() <= working.front_angle.bound.si);
      CHECK(s.rear_angle.value() <= working.rear_angle.bound.si);
      CHECK(s.length.value() <= working.longest.bound.si);
      CHECK(s.length.value() >= working.shortest.bound.si);
    }
  }
  Json mirror = document;
  Json loose = document;
  for (const char* state : {"working", "turning", "transport"}) {
    mirror["range"][state]["sway"] = {"-80 mm", "40 mm"};
    mirror["range"][state]["lower_link_difference"] = {"-60 mm", "20 mm"};
  }
  check_same_bounds(assessment, assessed(mirror)); // nothing of the machine is off centre
  loose["tractor"]["hitch"]["convergence"] = "2 m ± 300 mm";
  loose["tractor"]["hitch"]["span"] = "825 mm ± 10 mm";
  const StateEnvelope wider = assessed(loose).envelopes[0];
  CHECK(wider.yaw.low.si == doctest::Approx(-std::asin(0.08 / 1.7)));
  CHECK(wider.roll.high.si == doctest::Approx(std::asin(0.06 / 0.815)));
  CHECK(wider.front_angle.bound.si > working.front_angle.bound.si);
  CHECK(wider.longest.bound.si >= working.longest.bound.si);
  document["tractor"]["hitch"].erase("convergence");
  CHECK(found(assessed(document), Check::working_angle).missing ==
        std::vector<std::string>{"tractor.hitch.convergence"});
  document["tractor"]["hitch"]["convergence"] = "2 m";
  document["range"]["working"]["sway"] = {"-2.1 m", "0 mm"}; // farther than the links reach
  CHECK(reason_of(assessed(document), Check::working_angle) == "angle.impossible");
}

TEST_CASE("a slack top link on support wheels: its pose, what it asks for, and no silent choice") {
  Json document = exact_mounted();
  document["implement"]["support_wheels"] = {{"behind", "1.5 m"}, {"below", "400 mm"}};
  document["tractor"]["shaft_height"] = "700 mm";
  CHECK(found(assessed(document), Check::working_angle).missing == std::vector<std::string>{"range.working.top_link"});
  document["range"]["working"]["top_link"] = "slack";
  document["range"]["turning"]["top_link"] = document["range"]["transport"]["top_link"] = "tight";
  document["range"]["working"]["lift"] = {"-300 mm", "-300 mm"};
  document["range"]["working"]["roll"] = {"0 deg", "0 deg"};
  const Assessment assessment = assessed(document);
  REQUIRE(assessment.envelopes.size() == 3);
  Driveline line;
  line.front_joint = line.rear_joint = millimetres(60);
  line.input = Position(millimetres(-450), Length{}, millimetres(250));
  // The pivots stand 150 mm below the shaft: 550 mm above the ground.
  const SupportWheel wheel{millimetres(1500), millimetres(400), millimetres(550)};
  const DrivelineState s = driveline_at(line, slack_pose(linkage_of_example(), wheel, millimetres(-300)).pose);
  const StateEnvelope& working = assessment.envelopes[0];
  CHECK(working.slack_top_link);
  CHECK(!assessment.envelopes[1].slack_top_link);
  CHECK(working.front_angle.bound.si == doctest::Approx(s.front_angle.value()).epsilon(1e-3));
  CHECK(working.rear_angle.bound.si == doctest::Approx(s.rear_angle.value()).epsilon(1e-3));
  CHECK(working.longest.bound.si == doctest::Approx(s.length.value()).epsilon(1e-3));
  CHECK(unwrapped(to_text(assessment)).find("top link slack, on its own wheels") != std::string::npos);
  document["tractor"].erase("shaft_height");
  CHECK(found(assessed(document), Check::working_angle).missing == std::vector<std::string>{"tractor.shaft_height"});
  document["tractor"]["shaft_height"] = "2.5 m"; // the wheels hang in the air
  CHECK(reason_of(assessed(document), Check::working_angle) == "angle.impossible");
}

namespace {

/// The same behind a headstock: on its own wheels, turned about a pivot.
Json semi_mounted() {
  Json document = exact_mounted();
  document["tractor"]["shaft_height"] = "700 mm";
  document["implement"]["steering_pivot"] = {{"behind", "200 mm"}, {"lateral", "30 mm"}};
  document["implement"]["support_wheels"] = {{"behind", "3 m"}, {"below", "450 mm"}};
  document["implement"]["input"]["behind"] = "700 mm";
  document["driveline"]["closed_length"] = "950 mm ± 3 mm";
  document["driveline"]["closed_overlap"] = "650 mm ± 3 mm";
  for (const char* state : {"working", "turning", "transport"}) {
    document["range"][state]["yaw"] = {"-20 deg", "15 deg"};
    document["range"][state]["roll"] = {"-2 deg", "3 deg"};
    document["range"][state]["lift"] = {"-250 mm", "-150 mm"};
    document["range"][state]["top_link"] = "slack";
  }
  document["range"]["transport"]["top_link"] = "tight";
  return document;
}

} // namespace

TEST_CASE("a semi-mounted machine: no lift, roll or turn about its pivot lies outside what is proved") {
  const Json document = semi_mounted();
  const Assessment assessment = assessed(document);
  REQUIRE(assessment.envelopes.size() == 3);
  Driveline line;
  line.front_joint = line.rear_joint = millimetres(60);
  const Position pivot(millimetres(-200), millimetres(30), Length{});
  line.input = Position(millimetres(-700), Length{}, millimetres(250)) - pivot; // from the pivot
  for (const StateEnvelope& envelope : assessment.envelopes) {
    CHECK(envelope.steers_about_pivot);
    double longest = 0.0;
    double front = 0.0;
    double rear = 0.0;
    double shortest = 9.0;
    for (int i = 0; i < 11 * 7 * 5; ++i) {
      const Length lift = millimetres(-250 + 10 * (i % 11));
      const Angle roll = degrees(-2.0 + 5.0 * (i / 11 % 7) / 6.0);
      const Angle steer = degrees(-20.0 + 35.0 * (i / 77) / 4.0);
      const SupportWheel wheel{metres(3), millimetres(450), millimetres(550)};
      Pose headstock = envelope.slack_top_link
                           ? slack_pose(linkage_of_example(), steered_wheel(wheel, pivot, steer, roll), lift).pose
                           : mounted_pose(linkage_of_example(), {lift, {}, {}});
      headstock.attitude.roll = roll;
      const DrivelineState s = driveline_at(line, steered_pose(headstock, pivot, steer));
      longest = std::max(longest, s.length.value());
      shortest = std::min(shortest, s.length.value());
      front = std::max(front, s.front_angle.value());
      rear = std::max(rear, s.rear_angle.value());
    }
    CHECK(longest <= envelope.longest.bound.si);
    CHECK(shortest >= envelope.shortest.bound.si);
    CHECK(front <= envelope.front_angle.bound.si);
    CHECK(rear <= envelope.rear_angle.bound.si);
    CHECK(envelope.longest.bound.si - longest < 0.002); // the corners of the range are among the positions
    CHECK(shortest - envelope.shortest.bound.si < 0.001);
    CHECK(envelope.rear_angle.bound.si - rear < 2e-3);
  }
  CHECK(unwrapped(to_text(assessment)).find("turned about its pivot -20.0° to 15.0°") != std::string::npos);
}

TEST_CASE("a semi-mounted machine: how far to turn, its own limits, what is missing and what is not followed") {
  Json document = semi_mounted();
  const Finding turn = found(assessed(document), Check::turn_limit);
  CHECK(turn.state == MachineState::turning);
  CHECK(amount_fact(turn, "left").si > 0.0);
  CHECK(amount_fact(turn, "left").si <= amount_fact(turn, "left_most").si);
  CHECK(found(assessed(document), Check::turning_angle).limits->stop.si == doctest::Approx(45.0 * pi / 180.0));
  // The mirrored machine turns as far to the other side.
  Json mirror = document;
  mirror["implement"]["steering_pivot"]["lateral"] = "-30 mm";
  for (const char* state : {"working", "turning", "transport"}) {
    mirror["range"][state]["yaw"] = {"-15 deg", "20 deg"};
    mirror["range"][state]["roll"] = {"-3 deg", "2 deg"};
  }
  const Finding other = found(assessed(mirror), Check::turn_limit);
  CHECK(amount_fact(other, "right").si == doctest::Approx(amount_fact(turn, "left").si).epsilon(0.02));
  CHECK(status_of(assessed(document), Check::lift_limit) != Status::not_known);
  document["implement"]["steering_pivot"].erase("lateral");
  CHECK(found(assessed(document), Check::working_angle).missing ==
        std::vector<std::string>{"implement.steering_pivot.lateral"});
  document = semi_mounted();
  document["driveline"]["guard_diameter"] = "140 mm";
  document["fouling"]["lower_links"] = {{"pivot_span", "600 mm"}, {"hitch_span", "825 mm"}, {"diameter", "60 mm"}};
  const Assessment with_parts = assessed(document);
  CHECK(status_of(with_parts, Check::fouling) == Status::not_known);
  CHECK(reason_of(with_parts, Check::fouling) == "fouling.not_followed");
  CHECK(found(with_parts, Check::fouling).missing.empty()); // no entry mends a limit of the model
  for (const Check check : {Check::turn_limit, Check::lift_limit}) {
    CHECK(status_of(with_parts, check) == status_of(assessed(semi_mounted()), check));
    CHECK(found(with_parts, check).missing.empty());
    CHECK(phrase_fact(found(with_parts, check), "fouling").find("not_followed") != std::string::npos);
  }
  // A wide-angle joint belongs over the pivot, which stands 200 mm behind the hitch points.
  document["driveline"]["rear_joint_kind"] = "wide-angle";
  const Finding centre = found(assessed(document), Check::wide_angle_centre);
  REQUIRE(centre.value.has_value());
  CHECK(centre.value->si == doctest::Approx(std::hypot(0.7 - 0.06 - 0.2, 0.03)).epsilon(1e-6));
}

TEST_CASE("a semi-mounted machine: its turn is asked as far as it can stand, and no rule is said to object beyond") {
  const Json example_of = example("semi-mounted-mower-behind-its-headstock");
  double before = 0.0;
  for (const char* turn : {"20 deg", "50 deg"}) {
    Json document = example_of;
    document["range"]["turning"]["yaw"] = {std::string("-") + turn, turn};
    const Assessment assessment = assessed(document);
    const Finding& limit = found(assessment, Check::turn_limit);
    // By an own search the first rule objects from about 46 degrees on, and the last from 60 to 62.
    for (const char* side : {"left", "right"}) {
      CHECK(amount_fact(limit, side).si * 180.0 / pi == doctest::Approx(45.5).epsilon(0.02));
      CHECK(amount_fact(limit, std::string(side) + "_most").si >= 59.0 * pi / 180.0);
    }
    if (before > 0.0) CHECK(amount_fact(limit, "left").si == doctest::Approx(before).epsilon(0.01));
    before = amount_fact(limit, "left").si;
  }
  const Assessment as_stated = assessed(example_of);
  CHECK(reason_of(as_stated, Check::lift_limit) == "lift.limit.open");
  CHECK(to_text(as_stated).find("every rule does beyond -130 mm") == std::string::npos);
}

TEST_CASE("a machine that steers behind the links gets the advice of one that turns") {
  Json document = example("semi-mounted-mower-behind-its-headstock");
  document["implement"]["steering_pivot"]["behind"] = "-150 mm ± 5 mm"; // no midpoint
  document["range"]["working"]["yaw"] = {"-25 deg", "25 deg"};
  const Assessment assessment = assessed(document);
  const Finding& angle = found(assessment, Check::working_angle);
  REQUIRE(angle.status != Status::ok);
  CHECK(texts(angle.advice) == std::vector<std::string>{"angle.reduce_driven"});
  const Finding& difference = found(assessment, Check::angle_difference);
  REQUIRE(difference.status != Status::ok);
  CHECK(texts(difference.advice) == std::vector<std::string>{"difference.equalise_pivot"});
  const double front = amount_fact(difference, "front_arm").si;
  const double rear = amount_fact(difference, "rear_arm").si;
  CHECK(rear == doctest::Approx(1.300 - 0.060 + 0.150)); // from the pivot to the joint at the implement
  CHECK(amount_fact(difference, "equal_behind").si == doctest::Approx(1.300 + front - rear));
  document["implement"]["input"]["behind"] = millimetres_text(amount_fact(difference, "equal_behind").si);
  CHECK(found(assessed(document), Check::angle_difference).value->si < 0.5 * difference.value->si);
}

TEST_CASE("one state alone of a machine whose top link hangs slack asks for no top link") {
  Json document = example("semi-mounted-mower-behind-its-headstock");
  const double whole = found(assessed(document), Check::turning_angle).value->si;
  document["range"].erase("working"); // remedies look at each state by itself
  document["range"].erase("transport");
  const Assessment alone = assessed(document);
  CHECK(status_of(alone, Check::working_angle) == Status::not_known);
  CHECK(found(alone, Check::turning_angle).value->si == doctest::Approx(whole));
}

TEST_CASE("an input shaft on the headstock, ahead of the steering pivot, is not followed and said so") {
  Json document = example("semi-mounted-mower-behind-its-headstock");
  document["implement"]["steering_pivot"]["behind"] = "900 mm ± 5 mm";
  document["implement"]["input"]["behind"] = "200 mm ± 10 mm";
  const Assessment assessment = assessed(document);
  for (const Check check : {Check::working_angle, Check::turning_angle, Check::transport_angle, Check::overlap,
                            Check::clearance, Check::turn_limit, Check::lift_limit}) {
    CHECK(status_of(assessment, check) == Status::not_known);
    CHECK(reason_of(assessment, check) == "pivot.input_ahead");
    CHECK(found(assessment, check).missing.empty());
  }
  CHECK(assessment.envelopes.empty());
}

TEST_CASE("a second section behind a machine whose top link hangs slack in every state needs no top link") {
  Json document = example("semi-mounted-mower-behind-its-headstock");
  document["driveline"]["fixed_section"] = Json::parse(R"({
    "front_joint_kind": "plain", "rear_joint_kind": "plain", "front_joint": "60 mm", "rear_joint": "60 mm",
    "yoke_phase": "0 deg", "bearing_phase": "0 deg",
    "from": {"behind": "1500 mm", "left": "0 mm", "above": "380 mm"},
    "to": {"behind": "2500 mm", "left": "0 mm", "above": "380 mm"}})");
  const Assessment assessment = assessed(document);
  const Finding& chain = found(assessment, Check::chain_variation);
  CHECK(chain.status != Status::not_known);
  // A straight second section leaves what the first one makes.
  CHECK(amount_fact(chain, "attained").si > 0.04); // 5.4 %, which the first section makes alone
  CHECK(amount_fact(chain, "attained").si <= amount_fact(chain, "moving").si);
  CHECK(chain.value->si <= amount_fact(chain, "moving").si + 1e-6);
}

TEST_CASE("what is worst at the lowest lift is not mended by lifting less, and a passed turn hides no objection") {
  const Finding angle = found(assessed(mounted()), Check::working_angle);
  REQUIRE(angle.status != Status::ok);
  CHECK(angle.pose->lift->value() == doctest::Approx(-0.320)); // by hand the angle falls with the lift
  CHECK(texts(angle.advice) == std::vector<std::string>{"angle.reduce_mounted_low"});
  const Assessment shakes = assessed(example("unequal-joints-that-shake"));
  REQUIRE(status_of(shakes, Check::speed_variation) == Status::caution);
  CHECK(phrase_fact(found(shakes, Check::turn_limit), "others") == "turn.others.object");
  CHECK(phrase_fact(found(assessed(that_fits()), Check::turn_limit), "others") == "turn.others.none");
}

TEST_CASE("less roll at full turn: the bounds hold for what is left, and no less is looked at than that") {
  Json document = that_fits();
  document["range"]["turning"]["yaw"] = {"-50 deg", "40 deg"};
  document["range"]["turning"]["roll"] = {"-6 deg", "10 deg"};
  document["implement"]["input"]["lateral"] = "60 mm";
  const StateEnvelope whole = assessed(document).envelopes.at(1);
  document["range"]["turning"]["roll_at_full_turn"] = "25 %";
  const Assessment assessment = assessed(document);
  const StateEnvelope less = assessment.envelopes.at(1);
  CHECK(less.roll_at_full_turn->si == doctest::Approx(0.25));
  CHECK_FALSE(whole.roll_at_full_turn.has_value());
  CHECK(less.rear_angle.bound.si <= whole.rear_angle.bound.si);
  CHECK(less.shortest.bound.si >= whole.shortest.bound.si);
  CHECK(less.rear_angle.bound.si + less.front_angle.bound.si <
        whole.rear_angle.bound.si + whole.front_angle.bound.si - 1e-3);
  // At the pose of each extreme there is no more roll than the turn leaves.
  for (const StateExtreme* extreme : {&less.front_angle, &less.rear_angle, &less.longest, &less.shortest}) {
    const double yaw = extreme->pose.yaw.value();
    const double turned = yaw < 0.0 ? yaw / less.yaw.low.si : yaw / less.yaw.high.si;
    const double roll = extreme->pose.roll.value();
    const double share = roll < 0.0 ? roll / less.roll.low.si : roll / less.roll.high.si;
    CHECK(share <= 1.0 - 0.75 * turned + 1e-9);
  }
  CHECK(unwrapped(to_text(assessment)).find("of which 25.0 % at full turn") != std::string::npos);
  document["range"]["turning"]["roll_at_full_turn"] = "100 %";
  CHECK(assessed(document).envelopes.at(1).rear_angle.bound.si == whole.rear_angle.bound.si);
}

TEST_CASE("difference and uneven running count what measurements within their tolerances make of them") {
  Json document = that_fits();
  const auto with_tolerance = [&document](const std::string& tolerance) {
    document["tractor"]["hitch"]["distance"] = "400 mm" + tolerance;
    document["tractor"]["hitch"]["drop"] = "250 mm" + tolerance;
    document["implement"]["input"]["behind"] = "430 mm" + tolerance;
    document["implement"]["input"]["above"] = "250 mm" + tolerance;
    document["range"]["working"]["yaw"] = {"-15 deg", "15 deg"};
    return assessed(document);
  };
  const double degree = pi / 180.0;
  const Assessment exact = with_tolerance("");
  const Assessment loose = with_tolerance(" ± 10 mm");
  const auto difference = [](const Assessment& a) { return found(a, Check::angle_difference).value->si; };
  CHECK(difference(exact) < 5.0 * degree);
  CHECK(status_of(exact, Check::angle_difference) == Status::ok);
  CHECK(difference(loose) >= 5.6 * degree); // 5.65 deg by random machines within the tolerances, hand calculation
  CHECK(difference(loose) <= 6.0 * degree);
  CHECK(status_of(loose, Check::angle_difference) == Status::caution);
  CHECK(reason_of(loose, Check::angle_difference) == "difference.loose");
  CHECK(amount_fact(found(loose, Check::angle_difference), "stated").si == doctest::Approx(difference(exact)));
}

namespace {

/// What a measurement without its tolerance is, as a number of millimetres.
double stated_millimetres(const Json& entry) { return std::stod(entry.get<std::string>()); }

std::string as_measured(double millimetres, const char* tolerance) {
  return std::to_string(millimetres) + " mm" + tolerance;
}

} // namespace

TEST_CASE("each tolerance alone: a machine at either end of it lies within what is proved, and goes beyond it exact") {
  const std::vector<const char*> own = {"/implement/input/behind", "/implement/input/above", "/implement/input/lateral",
                                        "/driveline/front_joint", "/driveline/rear_joint"};
  const std::vector<const char*> drawbar = {"/tractor/hitch/distance", "/tractor/hitch/drop", "/tractor/hitch/lateral"};
  const std::vector<const char*> linkage = {"/tractor/hitch/lower_pivot_behind",
                                            "/tractor/hitch/lower_pivot_below",
                                            "/tractor/hitch/top_pivot_behind",
                                            "/tractor/hitch/top_pivot_below",
                                            "/tractor/hitch/lower_link",
                                            "/tractor/hitch/top_link",
                                            "/implement/mast_height"};
  for (Json document : {that_fits(), mounted()}) {
    const bool trailed = document["tractor"]["hitch"]["kind"] == "drawbar";
    std::vector<const char*> entries = own;
    for (const char* entry : trailed ? drawbar : linkage) entries.push_back(entry);
    for (const char* entry : entries) {
      Json& text = document[Json::json_pointer(entry)];
      text = as_measured(stated_millimetres(text), "");
    }
    document["range"].erase("turning");
    document["range"].erase("transport");
    const auto envelope = [&document](const char* entry, double moved, const char* tolerance) {
      Json other = document;
      Json& text = other[Json::json_pointer(entry)];
      text = as_measured(stated_millimetres(text) + moved, tolerance);
      const Assessment assessment = assessed(other);
      REQUIRE(assessment.envelopes.size() == 1);
      return assessment.envelopes[0];
    };
    for (const char* entry : entries) {
      CAPTURE(std::string(entry));
      const StateEnvelope exact = envelope(entry, 0.0, "");
      const StateEnvelope loose = envelope(entry, 0.0, " ± 20 mm");
      bool beyond = false; // what the exact machine attains, clearly
      for (const double moved : {-20.0, 20.0}) {
        const StateEnvelope end = envelope(entry, moved, "");
        CHECK(end.front_angle.attained.si <= loose.front_angle.bound.si);
        CHECK(end.rear_angle.attained.si <= loose.rear_angle.bound.si);
        CHECK(end.longest.attained.si <= loose.longest.bound.si);
        CHECK(end.shortest.attained.si >= loose.shortest.bound.si);
        beyond = beyond || end.front_angle.attained.si > exact.front_angle.bound.si ||
                 end.rear_angle.attained.si > exact.rear_angle.bound.si ||
                 end.longest.attained.si > exact.longest.bound.si || end.shortest.attained.si < exact.shortest.bound.si;
      }
      CHECK(beyond);
    }
  }
}

TEST_CASE("difference on a linkage: an input shaft that leans within its tolerance bends the rear joint by as much") {
  // Both shafts level at one lift and the machine stands still: both joints bend by the drop of the centre line, and a
  // lean of 2° is the whole difference, but for the place of the rear joint, 60 mm along the shaft.
  Json document = mounted();
  for (const char* entry : {"lower_pivot_behind", "lower_pivot_below", "top_pivot_behind", "top_pivot_below"}) {
    std::string text = document["tractor"]["hitch"][entry];
    document["tractor"]["hitch"][entry] = text.substr(0, text.find(" ±"));
  }
  document["tractor"]["hitch"]["lower_link"] = "900 mm";
  document["tractor"]["hitch"].erase("top_link");
  document["tractor"]["hitch"]["level_at"] = "-200 mm";
  document["implement"]["input"].update({{"behind", "450 mm"}, {"above", "250 mm"}});
  document["driveline"].update({{"front_joint", "60 mm"}, {"rear_joint", "60 mm"}});
  document["range"]["working"].update({{"roll", {"0 deg", "0 deg"}}, {"lift", {"-200 mm", "-200 mm"}}});
  document["limits"]["angle_difference"] = "1.5 deg";
  const Finding exact = found(assessed(document), Check::angle_difference);
  CHECK(exact.status == Status::ok);
  CHECK(std::abs(exact.value->si) < 1e-3);
  const double lean = 2.0 * pi / 180.0;
  document["implement"]["input"]["pitch"] = "0 deg ± 2 deg";
  const Finding loose = found(assessed(document), Check::angle_difference);
  // From the stub's end: lower hitch points 250 mm ahead less the links, 350 mm lower; the input shaft 250 mm above
  // them.
  const double back = std::sqrt(0.9 * 0.9 - 0.2 * 0.2) - 0.250 + 0.450;
  const double down = 0.150 + 0.200 - 0.250;
  const auto difference = [&](double rise) { // of the input shaft's forward end
    const double x = back - 0.060 * std::cos(rise) - 0.060;
    const double z = -down + 0.060 * std::sin(rise);
    const double line = std::atan2(-z, x);
    return std::abs(std::abs(line) - std::abs(line + rise));
  };
  const double by_hand = std::max(difference(lean), difference(-lean));
  CHECK(loose.value->si >= by_hand - 1e-9);
  CHECK(loose.value->si <= by_hand * 1.1);
  CHECK(loose.status == Status::stop);
  CHECK(std::string(loose.reason) == "difference.loose");
}

TEST_CASE("tolerances of the difference are looked at over all positions, not where it is worst without them alone") {
  // Distances alike, as a good hitch has them: as stated the joints differ most straight ahead, by the input's 2°.
  Json document = that_fits();
  document["tractor"]["hitch"]["distance"] = "300 mm ± 25 mm";
  document["tractor"]["hitch"]["drop"] = "0 mm";
  document["implement"]["input"]["behind"] = "300 mm ± 25 mm";
  document["implement"]["input"]["above"] = "0 mm";
  document["implement"]["input"]["pitch"] = "2 deg";
  document["driveline"]["front_joint"] = document["driveline"]["rear_joint"] = "60 mm ± 5 mm";
  document["driveline"].erase("hand_checks");
  for (const char* axis : {"pitch", "roll"}) document["range"]["working"][axis] = {"0 deg", "0 deg"};
  document["range"]["working"]["yaw"] = {"-40 deg", "40 deg"};
  // Every corner of the tolerances at full turn, each driveline by itself.
  double greatest = 0.0;
  for (int corner = 0; corner < 16; ++corner) {
    const auto end = [corner](int bit) { return (corner >> bit & 1) == 0 ? -1.0 : 1.0; };
    Driveline line;
    line.front_joint = millimetres(60.0 + 5.0 * end(0));
    line.rear_joint = millimetres(60.0 + 5.0 * end(1));
    line.input = {-millimetres(300.0 + 25.0 * end(2)), Length{}, Length{}};
    line.input_direction = Direction::ahead(Angle{}, degrees(-2.0));
    const Pose turned{{-millimetres(300.0 + 25.0 * end(3)), Length{}, Length{}}, {degrees(40.0), Angle{}, Angle{}}};
    greatest = std::max(greatest, std::abs(driveline_at(line, turned).difference.value()));
  }
  CHECK(greatest * 180.0 / pi == doctest::Approx(5.31).epsilon(2e-3)); // by NumPy, with formulas of its own
  const Finding difference = found(assessed(document), Check::angle_difference);
  CHECK(difference.status == Status::caution);
  CHECK(std::string(difference.reason) == "difference.loose");
  CHECK(difference.value->si == doctest::Approx(greatest).epsilon(1e-6));
  CHECK(std::abs(difference.pose->yaw.value()) == doctest::Approx(40.0 * pi / 180.0));
  CHECK(amount_fact(difference, "stated").si == doctest::Approx(2.0 * pi / 180.0).epsilon(0.01));
}

TEST_CASE("a wide-angle joint over the pin and a straight far joint are no unequal pair") {
  Json document = that_fits();
  document["driveline"]["front_joint_kind"] = "wide-angle";
  CHECK(not_examined(assessed(document), Check::angle_difference));
  document["driveline"]["front_joint_kind"] = "plain";
  document["driveline"]["rear_joint_kind"] = "wide-angle";
  CHECK(not_examined(assessed(document), Check::angle_difference));
}

TEST_CASE("what measured ranges leave out stands in the first sentence of the certificate") {
  const auto says = [](const Json& document, const char* words) {
    return unwrapped(to_text(assessed(document))).find(words) != std::string::npos;
  };
  CHECK(says(measured_in_the_field(), "backing up and jack-knifing bend further"));
  CHECK(says(measured_in_the_field(), "a ditch or a short hump bends further"));
  CHECK_FALSE(says(that_fits(), "bend further"));
  CHECK(says(semi_mounted(), "taken to stand on level ground"));
  CHECK_FALSE(says(exact_mounted(), "level ground"));
}

TEST_CASE("lengths to cut are shown rounded inward, and a length that suits is never called unsuitable") {
  for (const char* name : {"unequal-joints-that-shake", "trailed-cutter-that-fits", "driveline-to-be-cut"}) {
    const Json document = example(name);
    const Assessment assessment = assessed(document);
    const Finding& finding = found(assessment, Check::cut_list);
    const double least = 1e3 * amount_fact(finding, "least_closed").si;
    const double greatest = 1e3 * amount_fact(finding, "greatest_closed").si;
    const double closed = 1e3 * amount_fact(finding, "closed").si;
    CAPTURE(name);
    CHECK(least <= greatest);
    for (const double end : {least, greatest}) CHECK((std::abs(end - std::round(end)) < 1e-6 || end == closed));
    if (finding.status == Status::ok) CHECK((closed >= least && closed <= greatest));
  }
  const Assessment shaking = assessed(example("unequal-joints-that-shake"));
  CHECK(amount_fact(found(shaking, Check::cut_list), "least_closed").si == doctest::Approx(0.681));    // 680.79 mm
  CHECK(amount_fact(found(shaking, Check::cut_list), "greatest_closed").si == doctest::Approx(0.768)); // 768.61 mm
}

TEST_CASE("both sections: a straight second one leaves what the first one makes, on any hitch") {
  const Json straight = Json::parse(R"({
    "front_joint_kind": "plain", "rear_joint_kind": "plain", "front_joint": "60 mm", "rear_joint": "60 mm",
    "yoke_phase": "0 deg", "bearing_phase": "0 deg",
    "from": {"behind": "900 mm", "left": "0 mm", "above": "250 mm"},
    "to": {"behind": "2 m", "left": "0 mm", "above": "250 mm"}})");
  const auto alike = [&straight](Json document) {
    document["driveline"]["fixed_section"] = straight;
    const Assessment assessment = assessed(document);
    const Finding& chain = found(assessment, Check::chain_variation);
    CHECK(amount_fact(chain, "attained").si == doctest::Approx(amount_fact(chain, "moving").si).epsilon(0.03));
  };
  alike(semi_mounted()); // slack, turned and rolled
  Json sways = exact_mounted();
  for (const char* state : {"working", "turning", "transport"}) {
    sways["range"][state].erase("yaw");
    sways["range"][state].erase("roll");
    sways["range"][state]["sway"] = {"-250 mm", "250 mm"};
    sways["range"][state]["lower_link_difference"] = {"-20 mm", "60 mm"};
  }
  alike(sways);
  // A larger range is no smoother: straight ahead is within it.
  Json narrow = that_fits();
  narrow["driveline"]["fixed_section"] = straight;
  narrow["driveline"]["fixed_section"]["from"]["behind"] = "600 mm";
  narrow["driveline"]["fixed_section"]["to"] = {{"behind", "1720 mm"}, {"left", "0 mm"}, {"above", "510 mm"}};
  narrow["driveline"]["fixed_section"]["yoke_phase"] = narrow["driveline"]["fixed_section"]["bearing_phase"] = "90 deg";
  for (const char* state : {"working", "turning"}) narrow["range"][state]["yaw"] = {"-2 deg", "2 deg"};
  Json wide = narrow;
  wide["range"]["turning"]["yaw"] = {"-36 deg", "36 deg"};
  const double near = amount_fact(found(assessed(narrow), Check::chain_variation), "attained").si;
  CHECK(found(assessed(wide), Check::chain_variation).value->si >= near - 1e-6);
  CHECK(near > 0.05);
}

TEST_CASE("an input shaft that does not point straight forward: signs, closed form, tolerance") {
  Json document = that_fits();
  for (const char* angle : {"yaw", "pitch", "roll"}) document["range"]["working"][angle] = {"0 deg", "0 deg"};
  document["tractor"]["hitch"]["distance"] = "400 mm";
  document["tractor"]["hitch"]["drop"] = "250 mm";
  document["implement"]["input"]["behind"] = "420 mm";
  document["implement"]["input"]["above"] = "250 mm";
  document["driveline"]["front_joint"] = document["driveline"]["rear_joint"] = "60 mm";
  const auto working = [&] { return assessed(document).envelopes.at(0); };
  CHECK(working().rear_angle.bound.si == doctest::Approx(0.0).epsilon(3e-4));
  const double turn = 6.0 * pi / 180.0;
  // The rear joint stands 60 mm ahead of the input along the turned shaft, both angles in one plane.
  const double across = 0.06 * std::sin(turn);
  const double along = 0.82 - 0.06 - 0.06 * std::cos(turn);
  for (const char* key : {"yaw", "pitch"}) {
    document["implement"]["input"][key] = "6 deg";
    CHECK(working().front_angle.bound.si == doctest::Approx(std::atan2(across, along)).epsilon(1e-2));
    CHECK(working().rear_angle.bound.si == doctest::Approx(turn + std::atan2(across, along)).epsilon(3e-3));
    document["implement"]["input"].erase(key);
  }
  // A tractor that turns right (yaw above 0) straightens a shaft that points to the right.
  document["range"]["working"]["yaw"] = {"6 deg", "6 deg"};
  document["implement"]["input"]["yaw"] = "-6 deg";
  const double right = working().rear_angle.bound.si;
  document["implement"]["input"]["yaw"] = "6 deg";
  CHECK(right < working().rear_angle.bound.si - 0.1);
  document["implement"]["input"]["yaw"] = "6 deg ± 2 deg";
  const StateEnvelope loose = working();
  document["implement"]["input"]["yaw"] = "8 deg";
  CHECK(loose.rear_angle.bound.si >= working().rear_angle.attained.si);
  CHECK(loose.rear_angle.most->entry == "implement.input.yaw");
}

TEST_CASE("the linkage against its category: agreement, a pin of another category, nothing to compare") {
  Json document = mounted();
  CHECK(not_examined(assessed(document), Check::linkage));
  CHECK(to_ask(assessed(document), Check::linkage) == std::vector<std::string>{"tractor.hitch.category"});
  CHECK(not_examined(assessed(that_fits()), Check::linkage));
  document["tractor"]["hitch"]["category"] = "2";
  // Links of 600 mm, their pivots 250 mm ahead of the shaft's end: 350 mm where the category has 550 to 625 mm.
  document["tractor"]["hitch"]["lower_link"] = "600 mm";
  const Assessment short_links = assessed(document);
  CHECK(status_of(short_links, Check::linkage) == Status::caution);
  CHECK(found(short_links, Check::linkage).value->si == doctest::Approx(0.350));
  CHECK(found(short_links, Check::linkage).limit->si == doctest::Approx(0.550));
  document["tractor"]["hitch"]["lower_link"] = "850 mm";
  const Assessment few = assessed(document);
  CHECK(status_of(few, Check::linkage) == Status::caution); // mast and links alone are too little
  CHECK(reason_of(few, Check::linkage) == "linkage.agrees_in_few");
  CHECK(amount_fact(found(few, Check::linkage), "count").si == 2.0);
  document["implement"]["upper_pin"] = "25.4 mm ± 0.2 mm";
  CHECK(status_of(assessed(document), Check::linkage) == Status::ok);
  document["implement"]["lower_pin"] = "36.6 mm ± 0.2 mm"; // of category 3
  const Assessment differs = assessed(document);
  CHECK(status_of(differs, Check::linkage) == Status::caution);
  CHECK(found(differs, Check::linkage).limit->si == doctest::Approx(0.028));
  CHECK(unwrapped(to_text(differs)).find("implement.lower_pin is 37 mm, in category 2 it is 28 mm") !=
        std::string::npos);
  document["implement"]["lower_pin"] = "28 mm";
  document["tractor"]["hitch"]["span"] = "683 mm ± 5 mm";
  CHECK(status_of(assessed(document), Check::linkage) == Status::caution);
  document["tractor"]["hitch"]["category"] = "2N"; // with the span of category 1
  CHECK(status_of(assessed(document), Check::linkage) == Status::ok);
  for (const char* entry : {"lower_pin", "upper_pin", "mast_height"}) document["implement"].erase(entry);
  for (const char* entry : {"span", "lower_link"}) document["tractor"]["hitch"].erase(entry);
  CHECK(status_of(assessed(document), Check::linkage) == Status::not_known);
}

TEST_CASE("a mounted machine raised at the headland has its own limit of the joint angle") {
  Json document = exact_mounted();
  const auto turning = [&] { return found(assessed(document), Check::turning_angle); };
  REQUIRE(turning().limits.has_value());
  CHECK(turning().limits->caution.si == doctest::Approx(25.0 * pi / 180.0));
  CHECK(turning().limits->stop.si == doctest::Approx(30.0 * pi / 180.0)); // a supplier's guide; 45 deg is for turns
  CHECK(turning().basis.front().standing == Standing::common_practice);
  document["limits"]["lifted_angle"] = "20 deg";
  CHECK(turning().limit->si == doctest::Approx(20.0 * pi / 180.0)); // below every school: the one limit
  CHECK(turning().basis.front().standing == Standing::given);
  document["driveline"]["rear_joint_kind"] = "wide-angle";
  document["limits"] = {{"lifted_angle", "60 deg"}, {"wide_lifted_angle", "10 deg"}};
  CHECK(turning().limit->si == doctest::Approx(10.0 * pi / 180.0));
  document["driveline"]["rear_joint_kind"] = "plain";
  document["range"]["turning"]["driven"] = "no"; // at rest it is transport's
  CHECK(turning().limits->stop.si == doctest::Approx(90.0 * pi / 180.0));
}

TEST_CASE("what matters most on a linkage and of a measured range, against a second assessment without tolerances") {
  // One measurement alone has a tolerance: at its worse end the extreme lies by so much further.
  const auto longest = [](const Json& document, std::size_t state) {
    return assessed(document).envelopes.at(state).longest;
  };
  Json document = exact_mounted();
  for (const char* state : {"working", "turning", "transport"}) document["range"][state]["roll"] = {"0 deg", "0 deg"};
  const double exact = longest(document, 2).attained.si;
  document["tractor"]["hitch"]["top_link"] = "700 mm ± 12 mm";
  const StateExtreme loose = longest(document, 2);
  REQUIRE(loose.most.has_value());
  CHECK(loose.most->entry == "tractor.hitch.top_link");
  double most = 0.0;
  for (const char* length : {"688 mm", "712 mm"}) {
    document["tractor"]["hitch"]["top_link"] = length;
    most = std::max(most, longest(document, 2).attained.si - exact);
  }
  CHECK(loose.most->moves.si == doctest::Approx(most).epsilon(0.05));

  Json measured = measured_in_the_field();
  for (const auto& [pointer, value] : {std::pair<const char*, const char*>{"/tractor/rear_axle_ahead", "500 mm"},
                                       {"/tractor/wheelbase", "2.5 m"},
                                       {"/tractor/shaft_height", "700 mm"},
                                       {"/tractor/hitch/distance", "400 mm"},
                                       {"/tractor/hitch/drop", "250 mm"},
                                       {"/tractor/hitch/lateral", "0 mm"},
                                       {"/implement/tongue_length", "3 m"},
                                       {"/implement/input/behind", "420 mm"},
                                       {"/implement/input/above", "250 mm"},
                                       {"/driveline/front_joint", "60 mm"},
                                       {"/driveline/rear_joint", "60 mm"},
                                       {"/range/turning/right_turn_radius", "7 m"},
                                       {"/range/turning/hollow_radius", "1000 m"},
                                       {"/range/turning/crest_radius", "1000 m"}}) {
    measured[Json::json_pointer(pointer)] = value;
  }
  measured["range"]["turning"].erase("wheel_drop");
  measured["range"]["turning"]["side_slope"] = "0 deg";
  measured["range"]["turning"]["left_turn_radius"] = "6 m";
  const double six = assessed(measured).envelopes.at(1).front_angle.attained.si;
  measured["range"]["turning"]["left_turn_radius"] = "5.7 m";
  const double tighter = assessed(measured).envelopes.at(1).front_angle.attained.si;
  measured["range"]["turning"]["left_turn_radius"] = "6 m ± 300 mm";
  const StateExtreme front = assessed(measured).envelopes.at(1).front_angle;
  REQUIRE(front.most.has_value());
  CHECK(front.most->entry == "range.turning.left_turn_radius");
  CHECK(front.most->moves.si == doctest::Approx(tighter - six).epsilon(1e-3));
}

TEST_CASE("wrong entries for these answers name their path") {
  const auto problem = [](const Json& document) {
    const CaseReading reading = try_read_case(document.dump());
    REQUIRE(!reading.problems.empty());
    return reading.problems.front().path;
  };
  Json document = to_be_cut();
  document["fouling"]["tyres"][0]["diameter"] = "-1 m";
  CHECK(problem(document) == "fouling.tyres[0].diameter");
  document = to_be_cut();
  document["driveline"]["hand_checks"][0]["length"] = "0 mm";
  CHECK(problem(document) == "driveline.hand_checks[0].length");
  document = to_be_cut();
  document["driveline"]["guard_closed_overlap"] = 420;
  CHECK(problem(document) == "driveline.guard_closed_overlap");
  document = to_be_cut();
  document["fouling"]["tractor"][0].erase("name");
  CHECK(problem(document) == "fouling.tractor[0].name");
}

TEST_CASE(
    "branches: every wing has its findings by its name, in one plane with closed forms, and a direct one has none") {
  const Json document = example("cutter-with-folding-wings");
  const Assessment assessment = assessed(document);
  for (const Check check :
       {Check::branch_angle, Check::branch_variation, Check::branch_telescope, Check::branch_strength}) {
    CHECK(assessment.find(check, "left wing") != nullptr);
    CHECK(assessment.find(check, "right wing") != nullptr);
    CHECK(assessment.find(check, "middle part") == nullptr);
    CHECK(not_examined(assessed(that_fits()), check));
  }
  CHECK(assessment.find(Check::branch_angle, "left wing")->status == Status::ok);
  CHECK(assessment.find(Check::branch_angle, "right wing")->status == Status::caution);
  CHECK(Json::parse(to_json(assessment))["geometry"]["branches"].size() == 3); // the right wing at rest too

  // Without tolerances: joints 640 mm inside and 440 mm outside the hinge, 100 mm above it.
  Json exact = document;
  for (Json& branch : exact["implement"]["branches"]) {
    for (const char* place : {"output", "hinge", "input"}) {
      if (!branch.contains(place)) continue;
      for (auto& entry : branch[place]) entry = entry.get<std::string>().substr(0, entry.get<std::string>().find(" ±"));
    }
    for (const char* joint : {"front_joint", "rear_joint"}) {
      if (branch.contains(joint)) branch[joint] = "60 mm";
    }
  }
  const Assessment planar = assessed(exact);
  const auto length_at = [](double fold) {
    const double out = 0.44 * std::cos(fold) - 0.1 * std::sin(fold) + 0.64;
    const double up = 0.44 * std::sin(fold) + 0.1 * std::cos(fold) - 0.1;
    return std::pair<double, double>(std::hypot(out, up), std::atan2(up, out));
  };
  REQUIRE(planar.branches.size() == 3);
  for (const BranchEnvelopeOfCase& branch : planar.branches) { // both fold up alike, on opposite sides
    const double up = branch.fold.high.si;
    CHECK(std::abs(branch.shortest.bound.si - length_at(up).first) < 1e-4);
    CHECK(std::abs(branch.longest.bound.si - length_at(branch.fold.low.si).first) < 1e-4);
    CHECK(std::abs(branch.front_angle.bound.si - length_at(up).second) < 2e-4);
    CHECK(std::abs(branch.rear_angle.bound.si - (up - length_at(up).second)) < 2e-4);
  }
  // The left wing takes what its own device at the splitter lets through at most, raised by its front joint at 20°.
  const double torque = 600.0 * 1.15 / std::cos(length_at(20.0 * pi / 180.0).second);
  for (const auto& [share, status] : {std::pair{1.002, Status::ok}, std::pair{0.999, Status::stop}}) {
    exact["implement"]["branches"][0]["joint_rating"] = std::to_string(share * torque) + " N·m";
    const Assessment rated = assessed(exact);
    const Finding* strength = rated.find(Check::branch_strength, "left wing");
    REQUIRE(strength != nullptr);
    CHECK((strength->status == status));
    CHECK(strength->value->si == doctest::Approx(torque).epsilon(1e-3));
  }
}

TEST_CASE("branches: folded for transport counts as well, or the driveline is taken off, or nothing is known") {
  const Json document = example("cutter-with-folding-wings");
  const auto finding = [](const Json& changed, Check check, const char* wing) {
    return *assessed(changed).find(check, wing);
  };
  // Folded by 90 degrees the joint centres are sqrt(540^2 + 340^2) = 638 mm apart, the driveline is 870 mm long.
  const Finding bottoms = finding(document, Check::branch_telescope, "right wing");
  CHECK(bottoms.status == Status::stop);
  CHECK(std::string(bottoms.reason) == "branch.bottoms");
  CHECK(amount_fact(bottoms, "fold").si == doctest::Approx(pi / 2));
  CHECK(std::abs(bottoms.value->si + 0.232) < 0.035); // and all tolerances
  CHECK(advises(bottoms, "branch.take_off_or_fit"));
  const Finding off = finding(document, Check::branch_telescope, "left wing");
  CHECK(off.status == Status::ok);
  CHECK(phrase_fact(off, "rest") == "branch.rest.taken_off");

  Json sixty = document;
  sixty["implement"]["branches"][1]["fold_at_rest"] = {"0 deg", "60 deg"};
  CHECK(std::abs(finding(sixty, Check::branch_telescope, "right wing").value->si - (0.841 - 0.870)) < 0.035);
  // All that lies between counts: a wing that rests folded up passes every fold on its way.
  sixty["implement"]["branches"][1]["fold_at_rest"] = {"60 deg", "60 deg"};
  CHECK(finding(sixty, Check::branch_telescope, "right wing").value->si < 0.0);

  Json unstated = document;
  unstated["implement"]["branches"][0].erase("coupled_at_rest");
  for (const Check check : {Check::branch_angle, Check::branch_telescope}) {
    CHECK(finding(unstated, check, "left wing").status == Status::not_known);
    CHECK(finding(unstated, check, "left wing").missing ==
          std::vector<std::string>{"implement.branches[0].fold_at_rest"});
  }
  CHECK(finding(unstated, Check::branch_variation, "left wing").status == Status::ok); // it does not turn at rest
  unstated["implement"]["branches"][0]["closed_length"] = "1020 mm ± 3 mm";
  CHECK(finding(unstated, Check::branch_telescope, "left wing").status == Status::stop); // an objection stands

  Json locked = document; // the rear joint bends by 90 - atan(340/540) = 57.8 degrees
  locked["implement"]["branches"][1]["rear_joint_lock"] = "55 deg";
  const Finding lock = finding(locked, Check::branch_angle, "right wing");
  CHECK(lock.status == Status::stop);
  CHECK(std::string(lock.reason) == "branch.angle_at_rest");
  CHECK(lock.value->si == doctest::Approx(57.8 * pi / 180).epsilon(0.05));
  CHECK(advises(lock, "branch.take_off"));

  Json both = document;
  both["implement"]["branches"][1]["coupled_at_rest"] = "no";
  const CaseReading reading = try_read_case(both.dump());
  REQUIRE(reading.problems.size() == 1);
  CHECK(reading.problems.front().path == "implement.branches[1].fold_at_rest");
}

TEST_CASE("branches: what is let through arrives whole where a part jams alone, held down by a device of its own") {
  Json document = example("cutter-with-folding-wings");
  const auto strength = [](const Assessment& assessment) {
    return *assessment.find(Check::branch_strength, "left wing");
  };
  const auto angle = [](const Assessment& assessment, bool front) {
    for (const BranchEnvelopeOfCase& branch : assessment.branches) {
      if (branch.name == "left wing" && branch.driven) {
        return front ? branch.front_angle.bound.si : branch.rear_angle.bound.si;
      }
    }
    return 0.0;
  };
  Json& left = document["implement"]["branches"][0];
  // By hand 1290 N·m and 15 % more, over the cosine of the joint at the splitter: beyond the 900 N·m of the joints,
  // though the wing carries 30 % of the work.
  left.erase("overload");
  const Assessment whole = assessed(document);
  CHECK(strength(whole).status == Status::stop);
  CHECK(amount_fact(strength(whole), "torque").si == doctest::Approx(1483.5 / std::cos(angle(whole, true))));
  // Its own device at the splitter, or at the wing, raised by the joint there.
  left["overload"] = {
      {"kind", "friction clutch"}, {"setting", "600 N.m"}, {"scatter", "15 %"}, {"place", "tractor end"}};
  const Assessment held = assessed(document);
  CHECK(strength(held).status == Status::ok);
  CHECK(amount_fact(strength(held), "torque").si == doctest::Approx(690.0 / std::cos(angle(held, true))));
  left["overload"]["place"] = "implement end";
  const Assessment behind = assessed(document);
  CHECK(amount_fact(strength(behind), "torque").si == doctest::Approx(690.0 / std::cos(angle(behind, false))));
  // One that lets go below 30 % of the work's peak, 1.8 times the mean, is a caution.
  left["overload"]["setting"] = "380 N.m";
  const double work = 0.3 * 1.8 * 34e3 / rpm(540).value();
  REQUIRE(0.85 * 380.0 < work);
  CHECK(strength(assessed(document)).status == Status::caution);
  CHECK(amount_fact(strength(assessed(document)), "work").si == doctest::Approx(work));
  left["overload"].erase("scatter");
  CHECK(strength(assessed(document)).missing == std::vector<std::string>{"implement.branches[0].overload.scatter"});
  // Without any device nothing bounds it; what arrives at least may still be too much.
  document["overload"] = "none";
  left["overload"] = "none";
  left["joint_rating"] = "9000 N.m";
  left["tube"]["outer_diameter"] = "90 mm";
  CHECK(std::string(strength(assessed(document)).reason) == "branch.unbounded");
  CHECK(strength(assessed(document)).status == Status::not_known);
  left["joint_rating"] = "400 N.m";
  CHECK(strength(assessed(document)).status == Status::stop);
}

TEST_CASE("branches: the torque is at the branch's own speed, what is missing is not known, stops are stops") {
  Json document = example("cutter-with-folding-wings");
  for (std::size_t wing : {0U, 1U}) document["implement"]["branches"][wing].erase("overload");
  const auto strength = [](const Json& changed) {
    return *assessed(changed).find(Check::branch_strength, "left wing");
  };
  const double torque = amount_fact(strength(document), "torque").si;
  Json faster = document;
  faster["implement"]["branches"][0]["speed"] = "1080 r/min";
  CHECK(amount_fact(strength(faster), "torque").si == doctest::Approx(0.5 * torque));
  Json shared = document;
  shared["implement"]["branches"][0]["torque_share"] = 0.6;
  shared["implement"]["branches"][2]["torque_share"] = 0.1;
  CHECK(amount_fact(strength(shared), "torque").si == doctest::Approx(torque));
  CHECK(amount_fact(strength(shared), "share").si == doctest::Approx(0.6));
  Json weak = document;
  weak["implement"]["branches"][0]["joint_rating"] = "100 N.m";
  CHECK(strength(weak).status == Status::stop);
  weak["implement"]["branches"][0].erase("tube"); // one part that breaks stops whatever the other is
  CHECK(strength(weak).status == Status::stop);
  Json lacking = document;
  lacking["implement"]["branches"][1]["hinge"].erase("left");
  const Assessment unknown = assessed(lacking);
  CHECK(unknown.find(Check::branch_angle, "right wing")->missing ==
        std::vector<std::string>{"implement.branches[1].hinge.left"});
  CHECK(unknown.find(Check::branch_strength, "right wing")->status == Status::not_known);
  CHECK(unknown.find(Check::branch_angle, "left wing")->status == Status::ok);
  CHECK(unknown.branches.size() == 1);
  Json shorter = document;
  shorter["implement"]["branches"][0]["closed_length"] = "1020 mm ± 3 mm";
  CHECK(std::string(assessed(shorter).find(Check::branch_telescope, "left wing")->reason) == "branch.bottoms");
  Json apart = document;
  apart["implement"]["branches"][0]["closed_length"] = "500 mm ± 3 mm";
  apart["implement"]["branches"][0]["closed_overlap"] = "400 mm ± 3 mm";
  CHECK(std::string(assessed(apart).find(Check::branch_telescope, "left wing")->reason) == "branch.apart");
  // In another gear than the implement's own nothing is known of its strength.
  Json wrong = document;
  wrong["implement"]["input_speed"] = "1000 r/min";
  wrong["implement"]["rotor"] = "none";
  CHECK(strength(wrong).status >= Status::not_known);
}

namespace {

/// A wide-angle joint with its centre over the pin, the other joint 900 mm behind it, turned by 70 degrees.
Json over_the_pin(const char* at_rest = "70 deg") {
  Json document = that_fits();
  document["tractor"]["hitch"]["distance"] = "400 mm";
  document["tractor"]["hitch"]["drop"] = "0 mm";
  document["implement"]["input"]["behind"] = "960 mm";
  document["implement"]["input"]["above"] = "0 mm";
  Json& line = document["driveline"];
  line["front_joint_kind"] = "wide-angle";
  line["front_joint"] = "400 mm";
  line["rear_joint"] = "60 mm";
  line["closed_length"] = "840 mm";
  line["closed_overlap"] = "640 mm";
  for (const char* state : {"working", "turning", "transport"}) {
    Json& range = document["range"][state];
    range["pitch"] = range["roll"] = {"0 deg", "0 deg"};
    const std::string turn = state == std::string("working") ? "4 deg" : at_rest;
    range["yaw"] = {"-" + turn, turn};
  }
  return document;
}

/// Two crosses, each bent by half of the joint: the joint's angle and the distance of the joint centres as the
/// telescope has it, solved from its crosses one by one.
std::pair<double, double> two_crosses(double yoke, double far, double turn) {
  const auto rest = [&](double angle) { // far joint as seen from the cross at the telescope
    const double x = far * std::cos(turn) + 0.5 * yoke - yoke * std::cos(0.5 * angle);
    const double y = far * std::sin(turn) - yoke * std::sin(0.5 * angle);
    return std::pair<double, double>(std::atan2(y, x) - angle, std::hypot(x, y));
  };
  double low = turn;
  double high = turn + 0.2;
  for (int i = 0; i < 60; ++i) {
    const double middle = 0.5 * (low + high);
    (rest(middle).first > 0.0 ? low : high) = middle;
  }
  return {low, rest(low).second + 0.5 * yoke};
}

} // namespace

TEST_CASE("a wide-angle joint is two crosses: the telescope is shorter than with a joint that bends in one point") {
  Json document = over_the_pin();
  const Assessment unstated = assessed(document);
  for (const Check check : {Check::clearance, Check::cut_list, Check::turn_limit}) {
    CHECK(status_of(unstated, check) == Status::not_known); // clearance was a pass with 60 mm
    CHECK(found(unstated, check).missing == std::vector<std::string>{"driveline.front_coupling_yoke"});
  }
  CHECK(status_of(unstated, Check::overlap) != Status::not_known); // crosses only shorten
  CHECK(to_text(unstated).find("bending in one point") != std::string::npos);

  document["driveline"]["front_coupling_yoke"] = "100 mm";
  const auto [angle, length] = two_crosses(0.1, 0.9, 70 * pi / 180);
  CHECK(length == doctest::Approx(0.8849).epsilon(1e-4)); // hand calculation: 884.9 mm and 70.7 degrees
  CHECK(angle == doctest::Approx(70.7 * pi / 180).epsilon(1e-3));
  const Assessment stated = assessed(document);
  CHECK(std::abs(found(stated, Check::clearance).value->si - (length - 0.840)) < 2e-4);
  CHECK(status_of(stated, Check::clearance) == Status::caution);
  CHECK(std::abs(found(stated, Check::transport_angle).value->si - angle) < 4e-4);
  CHECK(status_of(stated, Check::transport_angle) == Status::caution); // beyond 70 degrees
  CHECK(to_text(stated).find("two crosses") != std::string::npos);

  document["driveline"]["closed_length"] = "900 mm"; // too long whatever the yoke
  document["driveline"].erase("front_coupling_yoke");
  CHECK(status_of(assessed(document), Check::clearance) == Status::stop);
}

TEST_CASE("crosses shorten a driveline by how far they bend, not by how far they may") {
  Json document = over_the_pin("40 deg"); // straight ahead 900 - 840 = 60 mm of clearance, where 50 mm are wanted
  document["driveline"]["front_coupling_yoke"] = "100 mm";
  const Assessment assessment = assessed(document);
  const Finding& limit = found(assessment, Check::turn_limit);
  CHECK(limit.status == Status::ok);
  double turn = 40.0 * pi / 180.0; // where 50 mm are left, by its crosses one by one
  while (two_crosses(0.1, 0.9, turn).second > 0.890) turn += 1e-4;
  CHECK(amount_fact(limit, "left").si <= turn);
  CHECK(amount_fact(limit, "left").si > turn - 1.5 * pi / 180.0);
  CHECK(amount_fact(limit, "left_most").si > 75.0 * pi / 180.0); // 25 mm are left until the joint bends too far
  document["driveline"]["rear_joint_kind"] = "wide-angle";       // straight at every turn
  document["driveline"]["rear_coupling_yoke"] = "100 mm";
  CHECK(status_of(assessed(document), Check::turn_limit) == Status::ok);
}

TEST_CASE("the joints with crosses that a turn limit allows keep every limit") {
  Json document = over_the_pin("40 deg");
  document["driveline"]["front_coupling_yoke"] = "100 mm ± 2 mm";
  document["limits"]["wide_turning_angle"] = "60 deg";
  document["driveline"]["closed_length"] = "820 mm";
  const Finding limit = found(assessed(document), Check::turn_limit);
  const double turn = amount_fact(limit, "left").si;
  const auto [angle, length] = two_crosses(0.102, 0.9, turn);
  CHECK(angle <= 60 * pi / 180);
  CHECK(angle > 58.5 * pi / 180);
  CHECK(length >= 0.820 + 0.050);
}

TEST_CASE("the bearing's shaft goes on in the line of the input connection, level or not") {
  Json document = that_fits();
  document["implement"]["input"]["pitch"] = "-14 deg";
  document["driveline"]["fixed_section"] = {{"from", {{"behind", "600 mm"}, {"left", "0 mm"}, {"above", "295 mm"}}},
                                            {"to", {{"behind", "1600 mm"}, {"left", "0 mm"}, {"above", "295 mm"}}},
                                            {"front_joint_kind", "plain"},
                                            {"rear_joint_kind", "plain"},
                                            {"front_joint", "60 mm"},
                                            {"rear_joint", "60 mm"},
                                            {"yoke_phase", "0 deg"},
                                            {"bearing_phase", "0 deg"}};
  // The input shaft points 14 degrees up, so that the bearing's shaft leaves 14 degrees down: its joint stands 58.2 mm
  // behind and 14.5 mm below, the section rises by atan(14.5/881.8) = 0.94 degrees.
  const double lower = 60 * std::sin(14 * pi / 180);
  const double rise = std::atan2(lower, 1000 - 60 - 60 * std::cos(14 * pi / 180));
  const Assessment stated = assessed(document);
  CHECK(found(stated, Check::fixed_section).value->si == doctest::Approx(14 * pi / 180 + rise).epsilon(1e-4));
  CHECK(status_of(stated, Check::chain_variation) != Status::not_known); // it was, for shafts that do not go on
  document["implement"]["input"]["pitch"] = "-14 deg ± 1 deg";
  CHECK(found(assessed(document), Check::fixed_section).value->si >= 15 * pi / 180 + rise - 1e-6);
}

TEST_CASE("a section behind a bearing bends alike in every state, and all joints count together for even running") {
  CHECK(not_examined(assessed(that_fits()), Check::fixed_section));
  Json document = that_fits();
  document["driveline"]["fixed_section"] = Json::parse(R"({
    "front_joint_kind": "plain", "rear_joint_kind": "plain", "front_joint": "60 mm", "rear_joint": "60 mm",
    "yoke_phase": "0 deg", "bearing_phase": "0 deg",
    "from": {"behind": "600 mm", "left": "0 mm", "above": "250 mm"},
    "to": {"behind": "1720 mm", "left": "0 mm", "above": "250 mm"}})");
  const Assessment straight = assessed(document);
  CHECK(status_of(straight, Check::fixed_section) == Status::ok);
  CHECK(found(straight, Check::fixed_section).value->si < 1e-5);
  // A second section in line adds nothing to what the first one leaves.
  CHECK(found(straight, Check::chain_variation).value->si ==
        doctest::Approx(amount_fact(found(straight, Check::chain_variation), "moving").si).epsilon(0.02));
  CHECK(amount_fact(found(straight, Check::chain_variation), "attained").si <=
        found(straight, Check::chain_variation).value->si);
  CHECK(found(straight, Check::chain_variation).value->si -
            amount_fact(found(straight, Check::chain_variation), "attained").si <
        1e-3); // twice the wanted gap
  CHECK(unwrapped(to_text(straight)).find("it is proved that the machine's shaft turns unevenly") != std::string::npos);
  // 1 m between the joint centres, 400 mm up: both joints at atan 0.4.
  document["driveline"]["fixed_section"]["to"]["above"] = "650 mm";
  const Assessment raised = assessed(document);
  CHECK(found(raised, Check::fixed_section).value->si == doctest::Approx(std::atan(0.4)).epsilon(1e-4));
  CHECK(status_of(raised, Check::fixed_section) == Status::caution);
  document["driveline"]["fixed_section"]["yoke_phase"] = "90 deg";
  CHECK(found(assessed(document), Check::chain_variation).value->si > found(raised, Check::chain_variation).value->si);
  document["driveline"]["fixed_section"]["to"]["above"] = "900 mm";
  CHECK(status_of(assessed(document), Check::fixed_section) == Status::stop);
  document["driveline"]["fixed_section"]["from"].erase("left");
  CHECK(found(assessed(document), Check::fixed_section).missing ==
        std::vector<std::string>{"driveline.fixed_section.from.left"});
  document["driveline"]["fixed_section"]["from"]["left"] = "0 mm";
  document["driveline"]["fixed_section"].erase("bearing_phase");
  CHECK(status_of(assessed(document), Check::chain_variation) == Status::not_known);
}

TEST_CASE("both sections: a larger range is no smoother, and a linkage is followed too") {
  Json narrow = that_fits();
  narrow["driveline"]["fixed_section"] = Json::parse(R"({
    "front_joint_kind": "plain", "rear_joint_kind": "plain", "front_joint": "60 mm", "rear_joint": "60 mm",
    "yoke_phase": "90 deg", "bearing_phase": "90 deg",
    "from": {"behind": "600 mm", "left": "0 mm", "above": "250 mm"},
    "to": {"behind": "1720 mm", "left": "0 mm", "above": "510 mm"}})");
  for (const char* state : {"working", "turning"}) narrow["range"][state]["yaw"] = {"-2 deg", "2 deg"};
  Json wide = narrow;
  wide["range"]["turning"]["yaw"] = {"-36 deg", "36 deg"};
  const Assessment in_narrow = assessed(narrow);
  const Assessment in_wide = assessed(wide);
  const double near = amount_fact(found(in_narrow, Check::chain_variation), "attained").si;
  CHECK(near > 0.05);
  CHECK(found(in_wide, Check::chain_variation).value->si >= near - 1e-6); // straight ahead is within it
  Json on_links = exact_mounted();
  on_links["driveline"]["fixed_section"] = narrow["driveline"]["fixed_section"];
  const Assessment mounted_line = assessed(on_links);
  const Finding& proved = found(mounted_line, Check::chain_variation);
  CHECK(amount_fact(proved, "attained").si <= proved.value->si);
}

TEST_CASE("a wide-angle joint over the pin and a straight far joint are no unequal pair") {
  Json document = that_fits();
  document["driveline"]["front_joint_kind"] = "wide-angle";
  CHECK(not_examined(assessed(document), Check::angle_difference));
  document["driveline"]["front_joint_kind"] = "plain";
  document["driveline"]["rear_joint_kind"] = "wide-angle";
  CHECK(not_examined(assessed(document), Check::angle_difference));
}
