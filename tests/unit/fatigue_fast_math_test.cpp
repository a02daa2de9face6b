// Built, where the compiler can switch it on in a file, with the optimisation that takes NaN and infinity for
// impossible.
#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC optimize("-ffast-math")
#endif

#include <fieldshaft/fatigue.hpp>

#include "close.hpp"

#include <limits>
#include <string>

using namespace fieldshaft;

TEST_CASE("NaN and infinity are refused by index, also with -ffast-math") {
  for (const double bad : {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
    for (const std::size_t index : {0U, 40U, 4096U, 4999U}) {
      std::vector<double> history(5000);
      for (std::size_t i = 0; i < history.size(); ++i) history[i] = static_cast<double>(i % 700);
      history[index] = bad;
      CHECK_THROWS_WITH_AS(count_cycles(history), doctest::Contains(("[" + std::to_string(index) + "]").c_str()),
                           InputError);
    }
    CHECK_THROWS_AS(
        fatigue_safety_factor(pascals(bad), pascals(0), {pascals(1), pascals(3), pascals(2)}, MeanStressRule::goodman),
        InputError);
  }
}

TEST_CASE("counting gives the same rows with -ffast-math") {
  const std::vector<double> history = {-2, 1, -3, 5, -1, 3, -4, 4, -2};
  const double ranges[] = {3, 4, 4, 8, 9, 8, 6};
  const std::vector<Cycle<>> rows = count_cycles(history);
  REQUIRE(rows.size() == 7);
  for (std::size_t i = 0; i < rows.size(); ++i) CHECK(rows[i].range == ranges[i]);
}

TEST_CASE("an endless life keeps its class with -ffast-math") {
  CHECK(life_class(damage_life(0.0, seconds(6))) == LifeClass::beyond_10000_h);
  CHECK_THROWS_AS(life_class(seconds(std::numeric_limits<double>::quiet_NaN())), InputError);
}
