#include <fieldshaft/materials.hpp>

#include "close.hpp"
#include "random.hpp"

using namespace fieldshaft;

TEST_CASE("a thicker section never turns an unproven strength into a proved one, for every steel") {
  RandomInputs random;
  for (const Material& steel : materials()) {
    for (int i = 0; i < 200; ++i) {
      const Length diameter = millimetres(random.across(1.0, 500.0));
      const Length thicker = diameter * random.between(1.0, 3.0);
      if (!strength_at_section(steel, diameter).valid()) CHECK_FALSE(strength_at_section(steel, thicker).valid());
      CHECK(strength_at_section(steel, diameter).value.yield == steel.yield);
    }
  }
}

TEST_CASE("shear strength is in proportion to strength and ratio, and below the tensile one") {
  RandomInputs random;
  for (int i = 0; i < 1000; ++i) {
    const Stress yield = megapascals(random.across(50.0, 2500.0));
    const double ratio = random.between(0.01, 1.0);
    CHECK_CLOSE(shear_yield(2.0 * yield, ratio).value(), 2.0 * shear_yield(yield, ratio).value(), 1e-15);
    CHECK_CLOSE(shear_yield(yield, 0.5 * ratio).value(), 0.5 * shear_yield(yield, ratio).value(), 1e-15);
    CHECK(shear_yield(yield, ratio) <= yield);
    CHECK(shear_ultimate(yield) > shear_yield(yield));
  }
}

TEST_CASE("every size of bolt has at most one entry of a grade") {
  RandomInputs random;
  for (int i = 0; i < 2000; ++i) {
    const Length size = millimetres(random.across(1.0, 60.0));
    for (const BoltGrade& grade : bolt_grades()) {
      int entries = 0;
      for (const BoltGrade& other : bolt_grades()) {
        const bool same = std::string_view(other.name) == grade.name;
        if (same && size > other.size_above && size <= other.size_max) ++entries;
      }
      CHECK(entries <= 1);
      CHECK((find_bolt_grade(grade.name, size) != nullptr) == (entries == 1));
    }
  }
}
