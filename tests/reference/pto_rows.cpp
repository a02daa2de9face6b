#include <fieldshaft/pto.hpp>

#include "rows.hpp"

using namespace fieldshaft;

namespace {

const PtoType& type_of(const rows::Row& row) { return pto_type(row.given("type").at("number").get<int>()); }

template <class T> void expect_datum(const rows::Row& row, const char* name, const Datum<T>& datum) {
  if (datum.known()) row.expect(name, datum.value());
}

void expect_limits(const rows::Row& row, const std::string& name, const LengthLimits& limits) {
  row.expect(name + ".nominal", limits.nominal);
  row.expect(name + ".smallest", limits.smallest);
  row.expect(name + ".largest", limits.largest);
}

void expect_straight(const rows::Row& row, const std::string& reading, const Datum<StraightProfile>& profile) {
  if (!profile.known()) return;
  expect_limits(row, reading + ".major_diameter", profile.value().major_diameter);
  expect_limits(row, reading + ".minor_diameter", profile.value().minor_diameter);
  expect_limits(row, reading + ".tooth_width", profile.value().tooth_width);
}

void expect_involute(const rows::Row& row, const Datum<InvoluteProfile>& profile) {
  if (!profile.known()) return;
  row.expect("involute.module", profile.value().module);
  row.expect("involute.pitch_diameter", profile.value().pitch_diameter);
  row.expect("involute.major_diameter", profile.value().major_diameter);
  row.expect("involute.minor_diameter_flat", profile.value().minor_diameter_flat);
  row.expect("involute.minor_diameter_fillet", profile.value().minor_diameter_fillet);
  row.expect("involute.tooth_thickness", profile.value().tooth_thickness);
}

/// Expected names of a type are the paths of its members.
void check_type(const rows::Row& row) {
  const PtoType& type = pto_type(row.given("number").get<int>());
  row.expect("nominal_speed", type.nominal_speed);
  row.expect("nominal_diameter", type.nominal_diameter);
  row.expect("named_diameter", type.named_diameter);
  row.expect("spline_count", static_cast<double>(type.spline_count));
  expect_straight(row, "straight_rule", type.straight_rule);
  expect_straight(row, "straight_standard", type.straight_standard);
  expect_involute(row, type.involute);
  expect_datum(row, "useful_spline_length", type.useful_spline_length);
  expect_datum(row, "end_to_groove", type.end_to_groove);
  if (type.groove_diameter.known()) expect_limits(row, "groove_diameter", type.groove_diameter.value());
  if (type.groove_radius.known()) expect_limits(row, "groove_radius", type.groove_radius.value());
  if (type.cross_hole.known()) expect_limits(row, "cross_hole", type.cross_hole.value());
  if (type.shield_overlap.known()) expect_limits(row, "shield_overlap", type.shield_overlap.value());
  if (type.height.known()) {
    row.expect("height.low", type.height.value().low);
    row.expect("height.high", type.height.value().high);
  }
}

void check_power(const rows::Row& row) {
  const RecommendedPowers powers = recommended_power(type_of(row), row.get<AngularSpeed>("speed"));
  for (const RecommendedPower& entry : powers.editions) row.expect(entry.edition, entry.power);
  row.expect("lowest", powers.lowest().value());
  row.expect("highest", powers.highest().value());
}

void check_identity(const rows::Row& row) {
  const PtoIdentification found = identify_pto(row.given("spline_count").get<int>(), row.get<Length>("diameter"));
  REQUIRE(found.found());
  row.expect("number", static_cast<double>(found.candidates[0].type->number));
}

void check_distances(const rows::Row& row) {
  for (const DrawbarDistance& entry : drawbar_distances(type_of(row))) {
    switch (entry.position) {
    case DrawbarPosition::short_: row.expect("short", entry.distance.value); break;
    case DrawbarPosition::regular: row.expect("regular", entry.distance.value); break;
    case DrawbarPosition::extended: row.expect("extended", entry.distance.value); break;
    case DrawbarPosition::us_practice: row.expect("us_practice", entry.distance.value); break;
    }
  }
}

void check_category(const rows::Row& row) {
  const DrawbarCategory& category = drawbar_category(row.given("number").get<int>());
  expect_datum(row, "greatest_pto_power", category.greatest_pto_power);
  expect_datum(row, "pin_diameter", category.pin_diameter);
  expect_datum(row, "hole_diameter", category.hole_diameter);
}

} // namespace

TEST_CASE("reference rows of pto") {
  rows::run("pto", {{"pto_type", check_type},
                    {"recommended_power", check_power},
                    {"identify_pto", check_identity},
                    {"drawbar_distances", check_distances},
                    {"drawbar_category", check_category}});
}
