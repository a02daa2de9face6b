#include <fieldshaft/units.hpp>
#include <fieldshaft/units/text.hpp>

#include "close.hpp"

#include <clocale>
#include <cstring>
#include <random>
#include <set>

using namespace fieldshaft;

// Factors by definition.
static_assert(rpm(540).value() > 56.54866776461627 && rpm(540).value() < 56.54866776461629);
static_assert(inches(1).value() == 0.0254);
static_assert(in(degrees(180), unit::radian) == pi);
static_assert(math::power<4>(3.0) == 81.0);
static_assert(without_radian(newton_metres(3)) == joules(3));
static_assert(as_torque(newtons(3) * metres(2)) == newton_metres(6));

namespace {

std::string problem_of(std::string_view text, Kind kind) {
  const ParsedAmount parsed = try_parse(text, kind);
  CHECK_MESSAGE(!parsed.amount, "\"" << text << "\" was taken for a value");
  return parsed.problem;
}

double si_of(std::string_view text, Kind kind) {
  const ParsedAmount parsed = try_parse(text, kind);
  REQUIRE_MESSAGE(parsed.amount, parsed.problem);
  return parsed.amount->value.si;
}

} // namespace

TEST_CASE("the two horsepowers are kept apart") {
  // 550 ft lbf/s and 75 kgf m/s, NIST SP 811 appendix B: 745.69987158227022 W and 735.49875 W.
  CHECK_CLOSE(horsepower(1).value(), 745.69987158227022, 1e-15);
  CHECK(metric_horsepower(1).value() == 735.49875);
  CHECK(parse<Power>("1 hp") == horsepower(1));
  CHECK(parse<Power>("1 metric hp") == metric_horsepower(1));
  CHECK(parse<Power>("1 PS") == metric_horsepower(1));
  CHECK(problem_of("1 cv", Kind::power).find("metric hp") != std::string::npos);
}

TEST_CASE("published conversions") {
  // NIST SP 811 appendix B, printed to seven figures.
  CHECK_CLOSE(psi(1).value(), 6894.757, 1e-7);
  CHECK_CLOSE(pound_feet(1).value(), 1.355818, 1e-6);
  CHECK_CLOSE(pound_inches(1).value(), 0.1129848, 1e-6);
  CHECK_CLOSE(pounds_force(1).value(), 4.448222, 1e-7);
  CHECK_CLOSE(feet_per_minute(1).value(), 0.00508, 1e-15);
  CHECK_CLOSE(miles_per_hour(1).value(), 0.44704, 1e-15);
  // shared figure of the trade: 19,000 ft/min = 96.52 m/s.
  CHECK_CLOSE(feet_per_minute(19000).value(), 96.52, 1e-12);
}

TEST_CASE("text as people write it") {
  CHECK(si_of("1 3/8 in", Kind::length) == inches(1.375).value());
  CHECK(si_of("1-3/8 in", Kind::length) == inches(1.375).value());
  CHECK(si_of("3/4 in", Kind::length) == inches(0.75).value());
  CHECK(si_of("-3/4 in", Kind::length) == inches(-0.75).value());
  CHECK(si_of("+14in", Kind::length) == inches(14).value());
  CHECK(si_of("1.5e3 mm", Kind::length) == millimetres(1500).value());
  CHECK(si_of("  540 r/min ", Kind::angular_speed) == rpm(540).value());
  CHECK(si_of("540 rpm", Kind::angular_speed) == rpm(540).value());
  CHECK(si_of("30000 ft/min", Kind::speed) == feet_per_minute(30000).value());
  for (const char* text : {"7 lb-ft", "7 lbf·ft", "7 ft lbf", "7 lb*ft", "7 ft-lb", "7 lbf ft"}) {
    CHECK(si_of(text, Kind::torque) == pound_feet(7).value());
  }
  CHECK(si_of("7 ft-lb", Kind::energy) == doctest::Approx(pound_feet(7).value()));
  CHECK(si_of("3 kg·m²", Kind::moment_of_inertia) == 3.0);
  CHECK(si_of("3 kg m^2", Kind::moment_of_inertia) == 3.0);
  CHECK(si_of("12 N/mm²", Kind::stress) == 12e6);
  CHECK(si_of("25 %", Kind::number) == 0.25);
  CHECK(si_of("2.5", Kind::number) == 2.5);
}

TEST_CASE("lengths as a tape is read") {
  const double feet_and_inches = feet(7).value() + inches(1).value();
  for (const char* text :
       {"7 ft 1 in", "7ft 1in", "7 ft. 1 in.", "7' 1\"", "7'1\"", "7'-1\"", "7’ 1”", "7′1″", "7 feet 1 inch"}) {
    CAPTURE(text);
    CHECK(si_of(text, Kind::length) == doctest::Approx(feet_and_inches).epsilon(1e-15));
  }
  CHECK(si_of("7 ft 1 3/8 in", Kind::length) == doctest::Approx((84 + 1.375) * 0.0254).epsilon(1e-15));
  CHECK(si_of("1 m 20 cm", Kind::length) == doctest::Approx(1.2).epsilon(1e-15));
  CHECK(si_of("-1 ft 3 in", Kind::length) == doctest::Approx(-15 * 0.0254).epsilon(1e-15));
  CHECK(si_of("-0 ft 3 in", Kind::length) == doctest::Approx(-3 * 0.0254).epsilon(1e-15));
  CHECK(si_of("14 in.", Kind::length) == inches(14).value());
  CHECK(si_of("½ in", Kind::length) == inches(0.5).value());
  CHECK(si_of("14½ in", Kind::length) == inches(14.5).value());
  CHECK(si_of("1 ⅜ in", Kind::length) == inches(1.375).value());
  const auto measured = parse_measured<Length>("7 ft 1 +- ¼ in");
  CHECK(measured.value.value() == doctest::Approx(feet_and_inches).epsilon(1e-15));
  CHECK(measured.tolerance == inches(0.25));
  for (const char* text : {"7 ft 12 in", "7.5 ft 1 in", "7 ft -1 m", "1 m 100 cm"}) {
    CAPTURE(text);
    CHECK(problem_of(text, Kind::length).find("of two parts the first is a whole number") == 0);
  }
  for (const char* text :
       {"7 ft 1", "7 ft 1 in 2 mm", "7 ft1 in", "7 kg 1 in", "5 5 in", "7 ft 1 lb", "5 in2", "5 1/m"}) {
    CAPTURE(text);
    CHECK_FALSE(problem_of(text, Kind::length).empty());
  }
  CHECK_FALSE(problem_of("7 lb 1 lb", Kind::mass).empty()); // of lengths alone
}

TEST_CASE("a tolerance") {
  const auto measured = parse_measured<Length>("600 mm ± 10 mm");
  CHECK(measured.value == millimetres(600));
  CHECK(measured.tolerance == millimetres(10));
  CHECK(parse_measured<Length>("600 ± 10 mm").value == millimetres(600));
  CHECK(parse_measured<Length>("600 mm +/- 1/2 in").tolerance == inches(0.5));
  CHECK(parse_measured<Length>("600 mm").tolerance == millimetres(0));
  CHECK_THROWS_AS(parse<Length>("600 mm ± 10 mm"), InputError);
  CHECK_THROWS_AS(parse_measured<Length>("600 mm ± -10 mm"), InputError);
  CHECK_THROWS_AS(parse_measured<Length>("600 mm ± "), InputError);
  CHECK_THROWS_AS(parse_measured<Length>("± 10 mm"), InputError);
}

TEST_CASE("what is refused says why and what to write") {
  CHECK(problem_of("540", Kind::angular_speed).find("a unit is missing") == 0);
  CHECK(problem_of("540 Hz", Kind::angular_speed).find("a frequency, not a shaft speed") != std::string::npos);
  CHECK(problem_of("9 1/s", Kind::angular_speed).find("a frequency, not a shaft speed") != std::string::npos);
  CHECK(problem_of("900 J", Kind::torque).find("measures an energy; expected a torque") != std::string::npos);
  CHECK(problem_of("30,000 ft/min", Kind::speed).find("a comma") == 0);
  CHECK(problem_of("85 kw", Kind::power).find("did you mean \"kW\"?") != std::string::npos);
  // One edit away may be a thousand times as large: letters regardless of their size come first.
  CHECK(problem_of("34 KW", Kind::power).find("did you mean \"kW\"?") != std::string::npos);
  CHECK(problem_of("14 IN", Kind::length).find("did you mean \"in\"?") != std::string::npos);
  CHECK(problem_of("900 KNM", Kind::torque).find("did you mean \"kNm\"?") != std::string::npos);
  CHECK(problem_of("14 xy", Kind::length).find("did you mean") == std::string::npos);
  try {
    static_cast<void>(parse<Power>("abc"));
    FAIL("read what is no number");
  } catch (const InputError& error) {
    CHECK(error.value() == "\"abc\" (no finite number at the start)");
    CHECK(error.allowed() == "a power such as \"60 kW\" or \"80 hp\"");
  }
  CHECK(problem_of("85 HPP", Kind::power).find("did you mean \"HP\"?") != std::string::npos);
  for (const char* text : {"", "hp", "nan hp", "inf hp", "1e999 hp", "1/0 hp", "--5 hp", "5 5 hp", "1 2/0 hp"})
    problem_of(text, Kind::power);
  problem_of("2.5 kg", Kind::number);
  CHECK_THROWS_AS(parse<Power>("85"), InputError);
}

TEST_CASE("text out") {
  CHECK(to_string(amount_of(newton_metres(884.19)), UnitStyle::metric) == "884 N·m");
  CHECK(to_string(amount_of(newton_metres(884.19)), UnitStyle::us) == "652 lbf·ft");
  CHECK(to_string(amount_of(degrees(12.34)), UnitStyle::us) == "12.3°");
  CHECK(to_string(amount_of(rpm(540)), UnitStyle::metric) == "540 r/min");
  CHECK(to_string(amount_of(inches(14)), UnitStyle::us) == "14.00 in");
  CHECK(to_string(amount_of(metres(91.4)), UnitStyle::metric) == "91.4 m");
  CHECK(to_string(Amount{-0.0001, Kind::angle}, UnitStyle::metric) == "0.0°");
  CHECK(to_string(Amount{std::nan(""), Kind::power}, UnitStyle::metric) == "not a number");
  CHECK(to_string(kilowatts(1.5), unit::watt, 0) == "1500 W");
  CHECK(to_string(Amount{1.8519, Kind::number}, UnitStyle::metric) == "1.85");
  CHECK(to_string(Amount{18.0, Kind::number}, UnitStyle::metric) == "18");
  CHECK(to_string(Amount{-343.4, Kind::number}, UnitStyle::us) == "-343");
  CHECK(to_string(Amount{0.0, Kind::number}, UnitStyle::us) == "0");
}

TEST_CASE("the decimal point does not follow the locale") {
  const std::string before = std::setlocale(LC_NUMERIC, nullptr); // NOLINT(concurrency-mt-unsafe): one thread
  const char* comma = std::setlocale(LC_NUMERIC, "de_DE.UTF-8");  // NOLINT(concurrency-mt-unsafe): one thread
  CHECK(si_of("1.5 m", Kind::length) == 1.5);                     // with or without that locale on the machine
  if (comma != nullptr) CHECK(to_string(kilowatts(1.5), unit::kilowatt, 1) == "1.5 kW");
  std::setlocale(LC_NUMERIC, before.c_str()); // NOLINT(concurrency-mt-unsafe): one thread
}

TEST_CASE("every spelling of a unit reads back, and none stands twice for one kind") {
  std::set<std::pair<Kind, std::string_view>> seen;
  for (const UnitSpelling& unit : detail::unit_spellings) {
    CAPTURE(std::string(unit.spelling));
    CHECK(seen.insert({unit.kind, unit.spelling}).second);
    CHECK(si_of("2 " + std::string(unit.spelling), unit.kind) == 2.0 * unit.factor);
  }
}

TEST_CASE("every kind has a name, and a print unit that its own text reads") {
  for (int i = 0; i <= static_cast<int>(Kind::bending_stiffness); ++i) {
    const auto kind = static_cast<Kind>(i);
    CAPTURE(i);
    CHECK(std::strcmp(kind_name(kind), "a quantity") != 0);
    for (const UnitStyle style : {UnitStyle::metric, UnitStyle::us}) {
      const double si = 12.0 * print_unit(kind, style, 0.0).factor;
      const std::string text = to_string(Amount{si, kind}, style);
      if (kind != Kind::number) CHECK_CLOSE(si_of(text, kind), si, 1e-9);
    }
  }
}

TEST_CASE("random text never crashes the parser and never gives a number that is not finite") {
  const unsigned seed = 540U;
  CAPTURE(seed);
  std::mt19937 random(seed);
  const std::string alphabet = "0123456789 .-+/±eE%mkWhpNrinlbft·²\"^*()xinfa\xc2\xff";
  for (int i = 0; i < 200000; ++i) {
    std::string text;
    const std::size_t size = random() % 12;
    for (std::size_t k = 0; k < size; ++k) text += alphabet[random() % alphabet.size()];
    const auto kind = static_cast<Kind>(random() % (static_cast<unsigned>(Kind::bending_stiffness) + 1));
    const ParsedAmount parsed = try_parse(text, kind);
    REQUIRE(parsed.amount.has_value() == parsed.problem.empty());
    if (parsed.amount) REQUIRE((is_finite(parsed.amount->value.si) && is_finite(parsed.amount->tolerance)));
  }
}
