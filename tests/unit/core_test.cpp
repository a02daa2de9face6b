#include <fieldshaft/core.hpp>

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <type_traits>
#include <typeinfo>

using namespace fieldshaft;

namespace {

constexpr double nan_value = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr double tiny = std::numeric_limits<double>::denorm_min();

} // namespace

static_assert(is_finite(0.0) && is_finite(-0.0) && is_finite(tiny) && is_finite(std::numeric_limits<double>::max()));
static_assert(!is_finite(nan_value) && !is_finite(infinity) && !is_finite(-infinity));

TEST_CASE("the version is told once in parts and once as a text, and names stand in an inline versioned namespace") {
  const std::string parts = std::to_string(FIELDSHAFT_VERSION_MAJOR) + "." + std::to_string(FIELDSHAFT_VERSION_MINOR) +
                            "." + std::to_string(FIELDSHAFT_VERSION_PATCH);
  CHECK(parts == FIELDSHAFT_VERSION_STRING);
  static_assert(std::is_same_v<fieldshaft::InputError, fieldshaft::v0::InputError>);
  CHECK(std::string(typeid(InputError).name()).find("2v0") != std::string::npos); // part of every symbol
}

TEST_CASE("checks let through what is allowed") {
  const check::Place place{"f", "x", "m"};
  CHECK_NOTHROW(check::finite(-1.0, place));
  CHECK_NOTHROW(check::positive(tiny, place));
  CHECK_NOTHROW(check::not_negative(0.0, place));
  CHECK_NOTHROW(check::not_negative(-0.0, place));
  CHECK_NOTHROW(check::within(1.0, 1.0, 2.0, place));
  CHECK_NOTHROW(check::within(2.0, 1.0, 2.0, place));
  CHECK_NOTHROW(check::between(1.5, 1.0, 2.0, place));
  CHECK_NOTHROW(check::from_below(1.0, 1.0, 2.0, place));
  CHECK_NOTHROW(check::at_least(1.0, 1.0, place));
  CHECK_NOTHROW(check::below(std::nextafter(1.0, 0.0), 1.0, place));
}

TEST_CASE("each check refuses what lies outside, NaN and the infinities, and says what is allowed") {
  const check::Place place{"f", "x", "m"};
  for (const double value : {nan_value, infinity, -infinity}) {
    CHECK_THROWS_AS(check::finite(value, place), InputError);
    CHECK_THROWS_AS(check::positive(value, place), InputError);
    CHECK_THROWS_AS(check::not_negative(value, place), InputError);
    CHECK_THROWS_AS(check::within(value, -infinity, infinity, place), InputError);
    CHECK_THROWS_AS(check::between(value, 0.0, 1.0, place), InputError);
    CHECK_THROWS_AS(check::from_below(value, 0.0, 1.0, place), InputError);
    CHECK_THROWS_AS(check::at_least(value, 0.0, place), InputError);
    CHECK_THROWS_AS(check::below(value, 0.0, place), InputError);
  }
  CHECK_THROWS_WITH(check::positive(0.0, place), "f: x = 0 m; allowed: a finite number above 0 m");
  CHECK_THROWS_WITH(check::not_negative(-1.0, place), "f: x = -1 m; allowed: a finite number, at least 0 m");
  CHECK_THROWS_WITH(check::within(3.0, 1.0, 2.0, place), "f: x = 3 m; allowed: from 1 m to 2 m, both included");
  CHECK_THROWS_WITH(check::between(1.0, 1.0, 2.0, place), "f: x = 1 m; allowed: from 1 m to 2 m, both excluded");
  CHECK_THROWS_WITH(check::from_below(2.0, 1.0, 2.0, place),
                    "f: x = 2 m; allowed: from 1 m to 2 m, upper end excluded");
  CHECK_THROWS_WITH(check::at_least(0.5, 1.0, place), "f: x = 0.5 m; allowed: a finite number, at least 1 m");
  CHECK_THROWS_WITH(check::below(1.0, 1.0, place), "f: x = 1 m; allowed: a finite number below 1 m");
  CHECK_THROWS_WITH(check::finite(nan_value, {"f", "x", ""}), "f: x = nan; allowed: a finite number");
}

TEST_CASE("an input error carries its parts") {
  try {
    fail_input("f", "x", "3 m", "less");
    FAIL("fail_input returned");
  } catch (const InputError& error) {
    CHECK(error.function() == "f");
    CHECK(error.parameter() == "x");
    CHECK(error.value() == "3 m");
    CHECK(error.allowed() == "less");
    CHECK(std::string(error.what()) == "f: x = 3 m; allowed: less");
  }
}

TEST_CASE("each standing has a name of its own, and only memory is remembered") {
  CHECK(std::string(standing_name(Standing::from_memory)) == "from memory, verify");
  CHECK(std::string(standing_name(Standing::common_practice)) == "common practice, no source");
  CHECK(is_remembered(Standing::from_memory));
  CHECK(!is_remembered(Standing::published));
  CHECK(!is_remembered(Standing::common_practice));
}

TEST_CASE("a validated value says whether it is valid") {
  CHECK(Validated<double>{1.0}.valid());
  CHECK(!Validated<double>{1.0, "outside"}.valid());
}
