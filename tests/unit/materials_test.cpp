#include <fieldshaft/materials.hpp>

#include "close.hpp"

#include <cstring>
#include <limits>
#include <set>
#include <string>

using namespace fieldshaft;

static_assert(text::shear_strength(500.0, 0.5) == 250.0);
static_assert(find_material("1045", "cold drawn")->yield == megapascals(530));
static_assert(find_material("1045", "cold-drawn") == nullptr);
static_assert(find_material("1046", "cold drawn") == nullptr);
static_assert(shear_yield(megapascals(100), ShearRatio::maximum_shear) == megapascals(50));
static_assert(strength_at_section(*find_material("1045", "cold drawn"), millimetres(30)).valid());
static_assert(!strength_at_section(*find_material("1045", "cold drawn"), inches(1.375)).valid());

namespace {
constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

Material sound() { return make_material("mill bar", "", megapascals(600), megapascals(400)); }
} // namespace

TEST_CASE("every steel of the catalogue is possible, named once and sourced") {
  std::set<std::string> names;
  for (const Material& steel : materials()) {
    CAPTURE(steel.name);
    CAPTURE(steel.condition);
    CHECK_NOTHROW(check_material(steel));
    CHECK(names.insert(std::string(steel.name) + "/" + steel.condition).second);
    CHECK(std::strlen(steel.source.text) > 0);
    CHECK(steel.source.standing != Standing::given);
    CHECK(find_material(steel.name, steel.condition) == &steel);
  }
  CHECK(names.size() == 37);
}

TEST_CASE("remembered strengths say so") {
  CHECK_FALSE(is_remembered(find_material("1045", "cold drawn")->source.standing));
  CHECK_FALSE(is_remembered(find_material("4340", "normalized, 100 mm round")->source.standing));
  CHECK(is_remembered(find_material("4340", "normalized")->source.standing));
  CHECK(is_remembered(find_material("1144", "as rolled")->source.standing));
  CHECK(is_remembered(steel::youngs_modulus.source.standing));
}

TEST_CASE("hardness and tensile strength of the catalogue agree") {
  // S_u[MPa] = 3.4 HB within 12 %, the rule of the textbooks for steel below about 500 HB (from memory, verify).
  int compared = 0;
  for (const Material& steel : materials()) {
    if (!steel.hardness_brinell.known()) continue;
    CAPTURE(steel.name);
    CAPTURE(steel.condition);
    CHECK_CLOSE(in(steel.ultimate, unit::megapascal), 3.4 * steel.hardness_brinell.value(), 0.12);
    ++compared;
  }
  CHECK(compared == 34);
}

TEST_CASE("an unstated hardness is unknown, not zero") {
  const Material* steel = find_material("4340", "normalized, 100 mm round");
  REQUIRE(steel != nullptr);
  CHECK_FALSE(steel->hardness_brinell.known());
  CHECK_THROWS_AS(steel->hardness_brinell.value(), InputError);
}

TEST_CASE("the printed elastic constants of steel agree with each other") {
  const Stress g = steel::youngs_modulus.value / (2.0 * (1.0 + steel::poisson_ratio.value));
  CHECK_CLOSE(in(g, unit::gigapascal), in(steel::shear_modulus.value, unit::gigapascal), 0.005);
}

TEST_CASE("tempering hotter gives a softer steel") {
  for (const char* name : {"4140", "4340", "1144"}) {
    const Material* harder = nullptr;
    for (const char* degrees : {"205", "315", "425", "540", "650"}) {
      const Material* steel = find_material(name, std::string("oil quenched, tempered ") + degrees + " °C");
      if (steel == nullptr) continue;
      if (harder != nullptr) {
        CHECK(steel->ultimate < harder->ultimate);
        CHECK(steel->yield < harder->yield);
        CHECK(steel->hardness_brinell.value() < harder->hardness_brinell.value());
      }
      harder = steel;
    }
  }
}

TEST_CASE("strength holds up to the stated section only") {
  const Material& bar = *find_material("1045", "cold drawn");
  const auto inside = strength_at_section(bar, millimetres(32));
  CHECK(inside.valid());
  CHECK(inside.value.yield == megapascals(530));
  CHECK(strength_at_section(bar, millimetres(10)).valid());
  const auto thicker = strength_at_section(bar, millimetres(32.01));
  REQUIRE_FALSE(thicker.valid());
  CHECK(std::strstr(thicker.outside, "larger") != nullptr);
  CHECK(thicker.value.ultimate == bar.ultimate);
}

TEST_CASE("the same steel is stated weaker in the thicker section") {
  const Material& thin = *find_material("4340", "normalized");
  const Material& thick = *find_material("4340", "normalized, 100 mm round");
  CHECK(in(thin.yield, unit::megapascal) == 862.0);
  CHECK(in(thick.yield, unit::megapascal) == 710.0);
  CHECK(strength_at_section(thin, millimetres(25)).valid());
  CHECK_FALSE(strength_at_section(thin, millimetres(60)).valid());
  CHECK(strength_at_section(thick, millimetres(60)).valid());
  CHECK(strength_at_section(thick, millimetres(100)).valid());
  CHECK_FALSE(strength_at_section(thick, millimetres(101)).valid());
}

TEST_CASE("an unstated section is unproven in the catalogue and the user's own part when given") {
  const auto unstated = strength_at_section(*find_material("4140", "normalized"), millimetres(25));
  REQUIRE_FALSE(unstated.valid());
  CHECK(std::strstr(unstated.outside, "no section") != nullptr);
  CHECK(strength_at_section(sound(), millimetres(90)).valid());
  Material limited = sound();
  limited.section_max = millimetres(50);
  CHECK_FALSE(strength_at_section(limited, millimetres(90)).valid());
}

TEST_CASE("a material of the user's own keeps his figures and the usual elastic constants") {
  const Material own = make_material("bar in the shop", "as bought", megapascals(600), megapascals(400),
                                     {"certificate 12", Standing::given});
  CHECK(own.ultimate == megapascals(600));
  CHECK(own.yield == megapascals(400));
  CHECK(own.source.standing == Standing::given);
  CHECK(own.youngs_modulus == gigapascals(207));
  CHECK_FALSE(own.hardness_brinell.known());
}

TEST_CASE("an impossible material is refused with name, value and range") {
  CHECK_THROWS_WITH_AS(make_material("bar", "", megapascals(300), megapascals(400)),
                       "check_material: ultimate = 300000000 Pa; allowed: a finite number, at least 400000000 Pa",
                       InputError);
  CHECK_THROWS_AS(make_material("", "", megapascals(600), megapascals(400)), InputError);
  CHECK_THROWS_AS(make_material(nullptr, "", megapascals(600), megapascals(400)), InputError);
  CHECK_THROWS_AS(make_material("bar", nullptr, megapascals(600), megapascals(400)), InputError);
  CHECK_THROWS_AS(make_material("bar", "", megapascals(600), megapascals(0)), InputError);
  CHECK_THROWS_AS(make_material("bar", "", megapascals(not_a_number), megapascals(400)), InputError);
  CHECK_THROWS_AS(make_material("bar", "", megapascals(infinity), megapascals(400)), InputError);
}

TEST_CASE("every figure of a material is checked") {
  const auto refused = [](auto change) {
    Material material = sound();
    change(material);
    CHECK_THROWS_AS(check_material(material), InputError);
  };
  CHECK_NOTHROW(check_material(sound()));
  refused([](Material& m) { m.source.text = nullptr; });
  refused([](Material& m) { m.section_min = millimetres(-1); });
  refused([](Material& m) { m.section_max = millimetres(not_a_number); });
  refused([](Material& m) {
    m.section_min = millimetres(30);
    m.section_max = millimetres(20);
  });
  refused([](Material& m) { m.hardness_brinell = {0.0, {"", Standing::given}}; });
  refused([](Material& m) { m.youngs_modulus = gigapascals(0); });
  refused([](Material& m) { m.shear_modulus = gigapascals(not_a_number); });
  refused([](Material& m) { m.density = kilograms_per_cubic_metre(-1); });
  refused([](Material& m) { m.poisson_ratio = 0.5; });
}

TEST_CASE("bad inputs of the formulas are refused") {
  CHECK_THROWS_WITH_AS(strength_at_section(sound(), millimetres(0)),
                       "strength_at_section: diameter = 0 m; allowed: a finite number above 0 m", InputError);
  CHECK_THROWS_AS(strength_at_section(sound(), millimetres(not_a_number)), InputError);
  CHECK_THROWS_WITH_AS(shear_yield(megapascals(0)), "shear_yield: yield = 0 Pa; allowed: a finite number above 0 Pa",
                       InputError);
  CHECK_THROWS_AS(shear_yield(megapascals(400), 0.0), InputError);
  CHECK_THROWS_AS(shear_yield(megapascals(400), 1.01), InputError);
  CHECK_THROWS_AS(shear_yield(megapascals(400), not_a_number), InputError);
  CHECK_THROWS_AS(shear_ultimate(megapascals(-1)), InputError);
  CHECK_THROWS_AS(shear_ultimate(megapascals(400), -0.1), InputError);
  CHECK_THROWS_AS(find_bolt_grade("8.8", millimetres(0)), InputError);
  CHECK_THROWS_AS(find_bolt_grade("8.8", millimetres(not_a_number)), InputError);
}

TEST_CASE("a material's shear strength takes the material's own figures") {
  const Material& bar = *find_material("1045", "cold drawn");
  CHECK(shear_yield(bar) == shear_yield(megapascals(530)));
  CHECK(shear_yield(bar, ShearRatio::maximum_shear) == megapascals(265));
  CHECK(shear_ultimate(bar) == shear_ultimate(megapascals(630)));
  CHECK(shear_ultimate(bar, ShearRatio::torsion_test) == shear_ultimate(megapascals(630), 0.8));
}

TEST_CASE("the schools of shear strength are in order and sourced") {
  double last = 0.0;
  for (const ShearRatio ratio : {ShearRatio::maximum_shear, ShearRatio::distortion_energy, ShearRatio::tabulated,
                                 ShearRatio::two_thirds, ShearRatio::torsion_test}) {
    CHECK(shear_ratio(ratio).value > last);
    CHECK(std::strlen(shear_ratio(ratio).source.text) > 0);
    last = shear_ratio(ratio).value;
  }
  CHECK_CLOSE(shear_ratio(ShearRatio::distortion_energy).value, 1.0 / std::sqrt(3.0), 3e-16);
}

TEST_CASE("a property class says its strengths in its name") {
  // ISO 898-1: the first figure is a hundredth of the nominal tensile strength in MPa, the second a tenth of the
  // ratio of yield to nominal strength, in percent (from memory, verify).
  int classes = 0;
  for (const BoltGrade& grade : bolt_grades()) {
    if (std::string(grade.standard) != "ISO 898-1") continue;
    const std::string name = grade.name;
    const std::size_t dot = name.find('.');
    const double first = std::stod(name.substr(0, dot));
    const double second = std::stod(name.substr(dot + 1));
    CHECK(in(grade.ultimate_nominal, unit::megapascal) == doctest::Approx(100.0 * first));
    const double nominal_yield = 10.0 * first * second;
    CHECK(in(grade.yield_min, unit::megapascal) >= nominal_yield);
    CHECK(in(grade.yield_min, unit::megapascal) <= 1.05 * nominal_yield);
    ++classes;
  }
  CHECK(classes == 6);
}

TEST_CASE("both ends of every bolt grade are in order, and all of it is remembered") {
  for (const BoltGrade& grade : bolt_grades()) {
    CAPTURE(grade.name);
    CHECK(grade.size_above < grade.size_max);
    CHECK(grade.proof < grade.yield_min);
    CHECK(grade.yield_min < grade.ultimate_min);
    CHECK(grade.ultimate_nominal <= grade.ultimate_min);
    CHECK(grade.ultimate_min < grade.ultimate_max);
    CHECK(is_remembered(grade.source.standing));
    CHECK(is_remembered(grade.ultimate_max_source.standing));
    CHECK(std::strlen(grade.hardness_max) > 0);
  }
}

TEST_CASE("a grade is looked up for a size") {
  CHECK(find_bolt_grade("8.8", millimetres(16))->ultimate_min == megapascals(800));
  CHECK(find_bolt_grade("8.8", millimetres(16.01))->ultimate_min == megapascals(830));
  CHECK(find_bolt_grade("8.8", millimetres(40)) == nullptr);
  CHECK(find_bolt_grade("grade 5", inches(1.0))->ultimate_min == ksi(120));
  CHECK(find_bolt_grade("grade 5", inches(1.25))->ultimate_min == ksi(105));
  CHECK(find_bolt_grade("9.9", millimetres(10)) == nullptr);
}
