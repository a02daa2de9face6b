#include <fieldshaft/materials.hpp>

#include "rows.hpp"

using namespace fieldshaft;

namespace {

void check_steel(const rows::Row& row) {
  const auto name = row.given("name").get<std::string>();
  const auto condition = row.given("condition").get<std::string>();
  const Material* steel = find_material(name, condition);
  REQUIRE(steel != nullptr);
  row.expect("ultimate", steel->ultimate);
  row.expect("yield", steel->yield);
}

void check_bolt(const rows::Row& row) {
  const auto name = row.given("name").get<std::string>();
  const BoltGrade* grade = find_bolt_grade(name, row.get<Length>("diameter"));
  REQUIRE(grade != nullptr);
  row.expect("ultimate_min", grade->ultimate_min);
  row.expect("ultimate_max", grade->ultimate_max);
  row.expect("yield_min", grade->yield_min);
}

void check_shear_yield(const rows::Row& row) {
  const auto yield = row.get<Stress>("yield");
  row.expect("value", row.has("ratio") ? shear_yield(yield, row.get<double>("ratio")) : shear_yield(yield));
}

void check_shear_ultimate(const rows::Row& row) {
  const auto ultimate = row.get<Stress>("ultimate");
  row.expect("value", row.has("ratio") ? shear_ultimate(ultimate, row.get<double>("ratio")) : shear_ultimate(ultimate));
}

} // namespace

TEST_CASE("reference rows of materials") {
  rows::run("materials", {{"find_material", check_steel},
                          {"find_bolt_grade", check_bolt},
                          {"shear_yield", check_shear_yield},
                          {"shear_ultimate", check_shear_ultimate}});
}
