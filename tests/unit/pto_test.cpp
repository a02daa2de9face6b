#include <fieldshaft/power.hpp>
#include <fieldshaft/pto.hpp>

#include "close.hpp"

#include <cstring>
#include <limits>
#include <set>
#include <stdexcept>
#include <string>

using namespace fieldshaft;

static_assert(pto_type(1).spline_count == 6);
static_assert(pto_type(3).nominal_diameter == inches(1.75));
static_assert(&pto_type(0) == &pre_standard_pto_type());
static_assert(identify_pto(20, millimetres(45)).found());
static_assert(!PtoIdentification::speed_is_proved());
static_assert(recommended_power(pto_type(2), rpm(1000)).editions.size() == 3);
static_assert(!recommended_power(pto_type(2), rpm(750)).known());
static_assert(lever_can_disagree(StubArrangement::lever_only) && !lever_can_disagree(StubArrangement::fixed));
static_assert(!usable_for_pto_work(DrawbarPosition::short_).value);
static_assert(is_nominal_speed(rpm(1025), rpm(1000)) && !is_nominal_speed(rpm(1026), rpm(1000)));

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();

bool lists(const FixedList<PtoMatch, 5>& matches, int number) {
  for (const PtoMatch& match : matches) {
    if (match.type->number == number) return true;
  }
  return false;
}

bool known_at(const PtoType& type, AngularSpeed speed) {
  for (const auto& known : type.known_speeds) {
    if (known.value == speed) return true;
  }
  return false;
}

} // namespace

TEST_CASE("an unknown type is refused with the allowed numbers") {
  CHECK_THROWS_WITH_AS(
      pto_type(5), "pto_type: number = 5; allowed: 1, 2, 3, 4, or 0 for the pre-standard 1 1/8 in shaft", InputError);
  CHECK_THROWS_AS(pto_type(-1), InputError);
  CHECK_THROWS_WITH_AS(drawbar_category(6), "drawbar_category: number = 6; allowed: 0 to 5", InputError);
}

TEST_CASE("every type is named once, sourced, and driven at its nominal speed first") {
  std::set<int> numbers;
  for (const PtoType& type : pto_types()) {
    CAPTURE(type.name);
    CHECK(numbers.insert(type.number).second);
    CHECK(&pto_type(type.number) == &type);
    CHECK(std::strlen(type.identity.text) > 0);
    REQUIRE_FALSE(type.known_speeds.empty());
    CHECK(type.known_speeds[0].value == type.nominal_speed);
    CHECK_FALSE(is_remembered(type.known_speeds[0].source.standing));
  }
  CHECK(numbers.size() == 5);
}

TEST_CASE("an involute profile meets the nominal diameter of its type exactly") {
  for (const int number : {2, 3, 4}) {
    const PtoType& type = pto_type(number);
    REQUIRE(type.form == SplineForm::involute);
    const InvoluteProfile& profile = type.involute.value();
    CHECK(profile.teeth == type.spline_count);
    CHECK_CLOSE(profile.major_diameter.value(), type.nominal_diameter.value(), 1e-15);
    CHECK(profile.pressure_angle == degrees(30));
    CHECK(profile.minor_diameter_fillet < profile.minor_diameter_flat);
    CHECK(profile.minor_diameter_flat < profile.pitch_diameter);
    CHECK(is_remembered(type.involute.source().standing));
    CHECK_FALSE(type.straight_rule.known());
  }
}

TEST_CASE("the two readings of the six-spline profile agree within what their sources differ by") {
  const PtoType& type = pto_type(1);
  const StraightProfile& rule = type.straight_rule.value();
  const StraightProfile& standard = type.straight_standard.value();
  CHECK_FALSE(type.involute.known());
  CHECK_CLOSE(rule.tooth_width.nominal.value(), standard.tooth_width.nominal.value(), 0.005);
  CHECK_CLOSE(rule.minor_diameter.nominal.value(), standard.minor_diameter.nominal.value(), 0.03);
  CHECK(standard.minor_diameter.largest < rule.minor_diameter.nominal);
  CHECK(type.straight_rule.source().standing == Standing::published);
  CHECK(is_remembered(type.straight_standard.source().standing));
}

TEST_CASE("what no source states is unknown") {
  const PtoType& large = pto_type(4);
  CHECK_FALSE(large.useful_spline_length.known());
  CHECK_FALSE(large.groove_diameter.known());
  CHECK_FALSE(large.height.known());
  CHECK(drawbar_distances(large).empty());
  const PtoType& old = pto_type(0);
  CHECK_FALSE(old.straight_rule.known());
  CHECK_FALSE(old.straight_standard.known());
  CHECK_FALSE(old.shield_overlap.known());
  CHECK_FALSE(recommended_power(old, rpm(540)).known());
  CHECK_FALSE(recommended_power(old, rpm(540)).lowest().known());
  CHECK(drawbar_distances(old).empty());
  CHECK_THROWS_WITH_AS(old.height.value(), "Datum: value = not known; allowed: asked for only where known() is true",
                       InputError);
  CHECK_FALSE(drawbar_category(0).pin_diameter.known());
  CHECK_FALSE(drawbar_category(1).hole_diameter.known());
}

TEST_CASE("the two 35 mm shafts carry about the same torque in each edition") {
  // Supports the remembered pairs: 849 and 879 N·m before 2004, 1061 and 1098 N·m since (within 4 %).
  for (const char* edition : {"ISO 500:1979 and 1991", "ISO 500-1:2004 and 2014"}) {
    double torque[2] = {0.0, 0.0};
    for (const int number : {1, 2}) {
      const PtoType& type = pto_type(number);
      for (const RecommendedPower& entry : recommended_power(type, type.nominal_speed).editions) {
        if (std::string(entry.edition) == edition) {
          torque[number - 1] = shaft_torque(entry.power, type.nominal_speed).value();
        }
      }
    }
    CAPTURE(edition);
    REQUIRE(torque[0] > 0.0);
    CHECK_CLOSE(torque[0], torque[1], 0.04);
  }
}

TEST_CASE("the torques behind the recommended powers are those of the table") {
  const auto torque = [](double kw, double n) { return shaft_torque(kilowatts(kw), rpm(n)).value(); };
  CHECK_CLOSE(torque(48, 540), 849, 6e-4);
  CHECK_CLOSE(torque(60, 540), 1061, 5e-4);
  CHECK_CLOSE(torque(92, 1000), 879, 6e-4);
  CHECK_CLOSE(torque(115, 1000), 1098, 5e-4);
  CHECK_CLOSE(torque(119, 1000), 1136, 5e-4);
  CHECK_CLOSE(torque(185, 1000), 1767, 3e-4);
  CHECK_CLOSE(torque(205, 1000), 1958, 3e-4);
  CHECK_CLOSE(torque(275, 1000), 2626, 2e-4);
  CHECK_CLOSE(torque(450, 1300), 3306, 2e-4);
}

TEST_CASE("recommended power depends on the edition and is empty off the nominal speeds") {
  const RecommendedPowers powers = recommended_power(pto_type(1), rpm(540));
  REQUIRE(powers.known());
  CHECK(powers.editions.size() == 4);
  CHECK(powers.lowest().value() == kilowatts(48));
  CHECK(powers.highest().value() == kilowatts(60));
  CHECK(is_remembered(powers.highest().source().standing));
  CHECK(recommended_power(pto_type(1), rpm(548)).known());
  CHECK_FALSE(recommended_power(pto_type(1), rpm(600)).known());
  CHECK_FALSE(recommended_power(pto_type(1), rpm(750)).known());
  CHECK_FALSE(recommended_power(pto_type(4), rpm(540)).known());
  CHECK_THROWS_AS(recommended_power(pto_type(1), rpm(0)), InputError);
  CHECK_THROWS_AS(recommended_power(pto_type(1), rpm(not_a_number)), InputError);
}

TEST_CASE("a shaft is identified by count and tape, in either way of naming its diameter") {
  for (const PtoType& type : pto_types()) {
    for (const Length& diameter : {type.nominal_diameter, type.named_diameter}) {
      const PtoIdentification found = identify_pto(type.spline_count, diameter);
      CAPTURE(type.name);
      REQUIRE(found.found());
      CHECK(found.candidates[0].type == &type);
      CHECK(found.candidates[0].count_difference == 0);
      CHECK_FALSE(found.ambiguous());
    }
  }
}

TEST_CASE("a tape read to the millimetre or to the sixteenth of an inch is good enough") {
  CHECK(identify_pto(6, millimetres(34)).found());
  CHECK(identify_pto(6, millimetres(36)).found());
  CHECK(identify_pto(6, millimetres(33.925)).found());
  CHECK_FALSE(identify_pto(6, millimetres(33.92)).found());
  CHECK_FALSE(identify_pto(6, millimetres(36.01)).found());
  CHECK_FALSE(identify_pto(6, millimetres(35), millimetres(0.05)).candidates.empty());
  CHECK(identify_pto(6, inches(1.3125)).candidates.empty());
  CHECK(identify_pto(6, inches(1.3125), inches(0.0625)).found());
}

TEST_CASE("a wrong tape reading is explained by the difference") {
  const PtoIdentification found = identify_pto(6, millimetres(31));
  CHECK(found.candidates.empty());
  REQUIRE(found.near_misses.size() == 2);
  CHECK(lists(found.near_misses, 1));
  CHECK(lists(found.near_misses, 0));
  CHECK_CLOSE(in(found.near_misses[0].diameter_difference, unit::millimetre), -3.925, 1e-9);
  CHECK(found.near_misses[0].count_difference == 0);
}

TEST_CASE("a miscounted spline is explained") {
  const PtoIdentification found = identify_pto(20, millimetres(35));
  CHECK(found.candidates.empty());
  CHECK(found.near_misses.size() == 2);
  CHECK(lists(found.near_misses, 2));
  CHECK(lists(found.near_misses, 3));
  CHECK(found.near_misses[0].count_difference == -1);
  CHECK(identify_pto(13, millimetres(35)).near_misses.empty());
}

TEST_CASE("ambiguous and unknown shafts are answers, not errors") {
  const PtoIdentification both = identify_pto(6, millimetres(32), millimetres(4));
  CHECK(both.ambiguous());
  CHECK_FALSE(both.found());
  CHECK(both.candidates.size() == 2);
  const PtoIdentification none = identify_pto(8, millimetres(30));
  CHECK(none.candidates.empty());
  CHECK(none.near_misses.empty());
}

TEST_CASE("bad input of the identification is refused") {
  CHECK_THROWS_WITH_AS(identify_pto(0, millimetres(35)),
                       "identify_pto: spline_count = 0; allowed: a count of at least 1", InputError);
  CHECK_THROWS_AS(identify_pto(-6, millimetres(35)), InputError);
  CHECK_THROWS_AS(identify_pto(6, millimetres(0)), InputError);
  CHECK_THROWS_AS(identify_pto(6, millimetres(not_a_number)), InputError);
  CHECK_THROWS_AS(identify_pto(6, millimetres(35), millimetres(-0.1)), InputError);
  CHECK_THROWS_AS(identify_pto(6, millimetres(35), millimetres(not_a_number)), InputError);
}

TEST_CASE("six splines do not prove 540") {
  const PtoIdentification found = identify_pto(6, millimetres(35));
  CHECK_FALSE(found.speed_is_proved());
  CHECK(known_at(*found.candidates[0].type, rpm(540)));
  CHECK(known_at(*found.candidates[0].type, rpm(1000)));
  CHECK(known_at(pto_type(2), rpm(540)));
}

TEST_CASE("where a lever sets the speed the stub can disagree with it") {
  CHECK_FALSE(lever_can_disagree(StubArrangement::two_stubs_out));
  for (const StubArrangement arrangement :
       {StubArrangement::exchanged_from_carrier, StubArrangement::bolted_with_separate_lever,
        StubArrangement::reversible, StubArrangement::lever_only}) {
    CHECK(lever_can_disagree(arrangement));
  }
}

TEST_CASE("every arrangement lists its hazards, the worst first, each with a source") {
  for (const StubArrangement arrangement : stub_arrangements) {
    const StubHazards hazards = stub_hazards(arrangement);
    REQUIRE_FALSE(hazards.empty());
    const bool disagreement_first = hazards[0].value == StubHazard::spline_at_other_speed;
    CHECK(disagreement_first == lever_can_disagree(arrangement));
    bool adaptor = false;
    for (const auto& hazard : hazards) {
      CHECK(std::strlen(hazard.source.text) > 0);
      CHECK(has_hazard(arrangement, hazard.value));
      adaptor = adaptor || hazard.value == StubHazard::adaptor_fitted;
    }
    CHECK(adaptor);
  }
  CHECK(stub_hazards(StubArrangement::fixed).size() == 1);
  CHECK(has_hazard(StubArrangement::reversible, StubHazard::ring_not_seated));
  CHECK_FALSE(has_hazard(StubArrangement::bolted_with_separate_lever, StubHazard::ring_not_seated));
  CHECK(has_hazard(StubArrangement::bolted_with_separate_lever, StubHazard::bolts_not_tightened));
  CHECK(has_hazard(StubArrangement::two_stubs_out, StubHazard::other_stub_turns));
  CHECK_FALSE(has_hazard(StubArrangement::lever_only, StubHazard::oil_lost));
}

TEST_CASE("drawbar distances are in order, and the short hole is never for PTO work") {
  for (const int number : {1, 2, 3}) {
    Length last = millimetres(0);
    for (const DrawbarDistance& entry : drawbar_distances(pto_type(number))) {
      if (entry.position == DrawbarPosition::us_practice) continue;
      CHECK(entry.distance.value > last);
      CHECK(is_remembered(entry.distance.source.standing));
      last = entry.distance.value;
    }
  }
  CHECK(usable_for_pto_work(DrawbarPosition::regular).value);
  CHECK(usable_for_pto_work(DrawbarPosition::extended).value);
  CHECK(usable_for_pto_work(DrawbarPosition::us_practice).value);
}

TEST_CASE("drawbar categories grow with their number, and every pin goes into its hole") {
  for (std::size_t i = 0; i < drawbar_categories.size(); ++i) {
    const DrawbarCategory& category = drawbar_categories[i];
    if (i > 0) CHECK(category.greatest_pto_power.value() > drawbar_categories[i - 1].greatest_pto_power.value());
    if (category.pin_diameter.known()) CHECK(category.pin_diameter.value() < category.hole_diameter.value());
  }
  CHECK(drawbar_power_classes.size() == 4);
  CHECK(drawbar_power_classes[2].low == kilowatts(60));
  CHECK(drawbar_power_classes[2].high == kilowatts(170));
  CHECK(drawbar_power_class_source.standing == Standing::published);
}

TEST_CASE("speeds, guards and the sense of turning are as published") {
  CHECK(nominal_pto_speeds.size() == 3);
  CHECK(pto_speed_tolerances[0].tolerance == rpm(10));
  CHECK(pto_speed_tolerances[1].tolerance == rpm(25));
  CHECK(standard_speed_engine_share.value == 0.8);
  CHECK(pto_rotation_from_behind.value == Rotation::clockwise);
  for (const OverspeedGuard& guard : pto_overspeed_guards) {
    CHECK(guard.guard > guard.nominal);
    CHECK(guard.guard <= 1.17 * guard.nominal + rpm(1e-6));
    if (guard.source.standing == Standing::published) CHECK(guard.printed_for > guard.nominal);
  }
  CHECK_CLOSE(economy_overspeed_guard.value / rpm(540), 1.27, 2e-3);
  CHECK_THROWS_AS(is_nominal_speed(rpm(0), rpm(540)), InputError);
  CHECK_THROWS_AS(is_nominal_speed(rpm(540), rpm(not_a_number)), InputError);
}

TEST_CASE("where texts disagree about the clearance both figures stand") {
  CHECK(pto_clearance_radii[0].value == millimetres(80));
  CHECK(pto_clearance_radii[0].source.standing == Standing::published);
  CHECK(pto_clearance_radii[1].value == millimetres(76));
  CHECK(is_remembered(pto_clearance_radii[1].source.standing));
  CHECK_CLOSE(in(master_shield_load.value, unit::kilogram), 113.4, 1e-4);
  CHECK(pto_lateral_tolerance.value == millimetres(50));
  CHECK(implement_guard_overlap.value == millimetres(50));
  CHECK(drawbar_height.value.low < drawbar_height.value.high);
  CHECK(pto_height_over_drawbar.value.low < pto_height_over_drawbar.value.high);
}

TEST_CASE("a list refuses one entry too many") {
  FixedList<int, 2> list{1, 2};
  CHECK_THROWS_AS(list.push_back(3), std::out_of_range);
  CHECK(list.size() == 2);
}
