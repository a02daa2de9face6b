// The list of laws: each named, counted, told in the handbook, and tried with random inputs.
//
// FIELDSHAFT_LAW_TRIES=50 tries each law 50 times as often, FIELDSHAFT_SEED=7 with other inputs.

#include "laws/case_laws.hpp"
#include "laws/formula_laws.hpp"
#include "laws/geometry_laws.hpp"

#include <set>

namespace {

int times_as_often() {
  const char* text = std::getenv("FIELDSHAFT_LAW_TRIES");
  return text == nullptr ? 1 : std::max(1, std::atoi(text));
}

template <std::size_t N> void hold_all(const Law (&laws)[N]) {
  RandomInputs random;
  for (const Law& law : laws) {
    for (int i = 0; i < law.tries * times_as_often(); ++i) {
      INFO(std::string(law.name));
      law.hold(random);
    }
  }
}

std::set<std::string> names() {
  std::set<std::string> all;
  const auto take = [&all](const Law& law) { CHECK_MESSAGE(all.insert(law.name).second, law.name, " stands twice"); };
  for (const Law& law : formula_laws::laws) take(law);
  for (const Law& law : geometry_laws::laws) take(law);
  for (const Law& law : case_laws::laws) take(law);
  return all;
}

} // namespace

TEST_CASE("laws of formulas hold") { hold_all(formula_laws::laws); }
TEST_CASE("laws of the geometry hold") { hold_all(geometry_laws::laws); }
TEST_CASE("laws of assessments hold") {
  hold_all(case_laws::laws);
  CHECK(case_laws::compared() > 300); // findings of cases that a change was made to
}

TEST_CASE("the list has at least 40 laws, and the handbook names each of them and no other") {
  std::ifstream file(FIELDSHAFT_SOURCE_DIR "/docs/handbook/trust.md");
  std::set<std::string> told;
  bool in_list = false;
  for (std::string line; std::getline(file, line);) {
    if (line.rfind("## ", 0) == 0) in_list = line == "## The list of laws";
    if (in_list && line.rfind("- ", 0) == 0) told.insert(line.substr(2));
  }
  const std::set<std::string> listed = names();
  CHECK(listed.size() >= 40);
  for (const std::string& name : listed) CHECK_MESSAGE(told.count(name) == 1, "not in the handbook: ", name);
  for (const std::string& name : told) CHECK_MESSAGE(listed.count(name) == 1, "only in the handbook: ", name);
  MESSAGE(listed.size() << " laws");
}
