#include <fieldshaft/pto.hpp>

#include "close.hpp"
#include "random.hpp"

using namespace fieldshaft;

namespace {

bool lists(const FixedList<PtoMatch, 5>& matches, const PtoType& type) {
  for (const PtoMatch& match : matches) {
    if (match.type == &type) return true;
  }
  return false;
}

} // namespace

TEST_CASE("a wider tolerance never loses a candidate, and no type is candidate and near miss at once") {
  RandomInputs random;
  for (int i = 0; i < 5000; ++i) {
    const int count = random.whole(1, 30);
    const Length diameter = millimetres(random.across(5.0, 200.0));
    const Length tolerance = millimetres(random.across(0.01, 10.0));
    const PtoIdentification narrow = identify_pto(count, diameter, tolerance);
    const PtoIdentification wide = identify_pto(count, diameter, tolerance * random.between(1.0, 4.0));
    for (const PtoMatch& match : narrow.candidates) {
      CHECK(lists(wide.candidates, *match.type));
      CHECK_FALSE(lists(narrow.near_misses, *match.type));
      CHECK(match.type->spline_count == count);
    }
    CHECK_FALSE(narrow.speed_is_proved());
  }
}

TEST_CASE("every profile is found with any reading within the tolerance, and missed with its difference outside") {
  RandomInputs random;
  for (const PtoType& type : pto_types()) {
    for (int i = 0; i < 500; ++i) {
      const Length error = millimetres(random.between(-0.999, 0.999));
      const PtoIdentification found = identify_pto(type.spline_count, type.nominal_diameter + error);
      CHECK(lists(found.candidates, type));
      const Length far = type.nominal_diameter + millimetres(random.between(2.0, 5.0));
      const PtoIdentification missed = identify_pto(type.spline_count, far);
      CHECK(lists(missed.near_misses, type));
      for (const PtoMatch& match : missed.near_misses) {
        CHECK(match.diameter_difference == far - match.type->nominal_diameter);
      }
    }
  }
}

TEST_CASE("lowest and highest recommendation enclose every edition, and nothing is known between nominal speeds") {
  RandomInputs random;
  for (const PtoType& type : pto_types()) {
    for (int i = 0; i < 500; ++i) {
      const AngularSpeed speed = rpm(random.between(300.0, 1500.0));
      const RecommendedPowers powers = recommended_power(type, speed);
      bool nominal = false;
      for (const auto& known : nominal_pto_speeds) nominal = nominal || is_nominal_speed(speed, known.value);
      if (!nominal) CHECK_FALSE(powers.known());
      CHECK(powers.lowest().known() == powers.known());
      for (const RecommendedPower& entry : powers.editions) {
        CHECK(entry.power >= powers.lowest().value());
        CHECK(entry.power <= powers.highest().value());
      }
    }
  }
}
