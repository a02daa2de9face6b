#include <fieldshaft/fatigue.hpp>

#include "close.hpp"

#include <limits>

using namespace fieldshaft;

static_assert(text::specimen_endurance(600.0, 0.5, 700.0) == 300.0);
static_assert(specimen_endurance(megapascals(630)) == megapascals(315));
static_assert(specimen_endurance(megapascals(1800)) == megapascals(700), "the limit stops growing at 1400 MPa");
static_assert(text::notch_factor(3.0, 0.5) == 2.0);
static_assert(notch_factor(2.0) == 2.0, "full sensitivity unless stated");
static_assert(text::strength_fraction(60.0) == 0.9);
static_assert(text::round_stress(pi, 2.0, 0.0) == 2.0);
static_assert(life_class(hours(9.99)) == LifeClass::under_10_h);
static_assert(life_class(hours(10)) == LifeClass::from_10_to_100_h);
static_assert(life_class(hours(100)) == LifeClass::from_100_to_1000_h);
static_assert(life_class(hours(1000)) == LifeClass::from_1000_to_10000_h);
static_assert(life_class(hours(10000)) == LifeClass::beyond_10000_h);
static_assert(life_class(seconds(0)) == LifeClass::under_10_h);
static_assert(life_class(seconds(std::numeric_limits<double>::infinity())) == LifeClass::beyond_10000_h);

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr FatigueStrength steel{megapascals(75), megapascals(500), megapascals(300)};

SnLine<Stress> worksheet_line() { return sn_line({ksi(22), ksi(105), ksi(80)}, 0.84); }

} // namespace

TEST_CASE("the four rules at one point, by hand") {
  const auto factor = [](MeanStressRule rule) {
    return fatigue_safety_factor(megapascals(40), megapascals(60), steel, rule);
  };
  CHECK_CLOSE(factor(MeanStressRule::goodman), 1.0 / (40.0 / 75 + 60.0 / 500), 1e-14);
  CHECK_CLOSE(factor(MeanStressRule::soderberg), 1.0 / (40.0 / 75 + 60.0 / 300), 1e-14);
  CHECK_CLOSE(factor(MeanStressRule::asme_elliptic), 1.0 / std::hypot(40.0 / 75, 60.0 / 300), 1e-14);
  const double n = factor(MeanStressRule::gerber);
  CHECK_CLOSE(n * 40.0 / 75 + n * n * 60.0 * 60.0 / (500.0 * 500.0), 1.0, 1e-14);
}

TEST_CASE("only the amplitude, only the mean, and nothing at all") {
  for (const auto rule :
       {MeanStressRule::goodman, MeanStressRule::gerber, MeanStressRule::soderberg, MeanStressRule::asme_elliptic}) {
    CHECK_CLOSE(fatigue_safety_factor(megapascals(25), pascals(0), steel, rule), 3.0, 1e-14);
    const double limit = uses_yield(rule) ? 300.0 : 500.0;
    CHECK_CLOSE(fatigue_safety_factor(pascals(0), megapascals(100), steel, rule), limit / 100.0, 1e-14);
    CHECK(fatigue_safety_factor(pascals(0), pascals(0), steel, rule) == infinity);
    CHECK_CLOSE(fatigue_safety_factor(megapascals(25), megapascals(-400), steel, rule), 3.0, 1e-14);
  }
}

TEST_CASE("impossible strengths and loads are refused by name") {
  CHECK_THROWS_WITH_AS(fatigue_safety_factor(pascals(-1), pascals(0), steel, MeanStressRule::goodman),
                       "fatigue_safety_factor: amplitude = -1 Pa; allowed: a finite number, at least 0 Pa", InputError);
  CHECK_THROWS_AS(fatigue_safety_factor(pascals(1), pascals(not_a_number), steel, MeanStressRule::goodman), InputError);
  const FatigueStrength endless{megapascals(600), megapascals(500), megapascals(300)};
  CHECK_THROWS_AS(fatigue_safety_factor(pascals(1), pascals(0), endless, MeanStressRule::goodman), InputError);
  const FatigueStrength upside_down{megapascals(75), megapascals(200), megapascals(300)};
  CHECK_THROWS_AS(fatigue_safety_factor(pascals(1), pascals(0), upside_down, MeanStressRule::goodman), InputError);
  CHECK_THROWS_AS(fatigue_safety_factor(pascals(1), pascals(0), steel, static_cast<MeanStressRule>(9)), InputError);
  ShaftLoad load;
  load.torque_amplitude = newton_metres(-1);
  CHECK_THROWS_AS(shaft_stresses(load, millimetres(30)), InputError);
  load.torque_amplitude = newton_metres(1);
  CHECK_THROWS_AS(shaft_stresses(load, millimetres(0)), InputError);
  CHECK_THROWS_AS(shaft_stresses(load, millimetres(30), {0.9, 1.0}), InputError);
  CHECK_THROWS_AS(shaft_stresses(load, millimetres(30), {}, 1.0), InputError);
  CHECK_THROWS_AS(fatigue_diameter(load, steel, MeanStressRule::gerber, 0.0), InputError);
  CHECK_THROWS_AS(shaft_yield_safety_factor(load, millimetres(30), pascals(0)), InputError);
}

TEST_CASE("Gerber with no bending swing: the printed form divides by zero, the answer is that of the mean alone") {
  ShaftLoad load;
  load.torque_mean = newton_metres(100);
  const Length d = fatigue_diameter(load, steel, MeanStressRule::gerber, 2.0);
  const double cube = 16.0 * 2.0 * std::sqrt(3.0) * 100.0 / (pi * 500e6);
  CHECK_CLOSE(d.value(), std::cbrt(cube), 1e-14);
}

TEST_CASE("a bore weakens a shaft by 1 - k^4") {
  ShaftLoad load;
  load.bending_amplitude = newton_metres(300);
  load.torque_mean = newton_metres(500);
  const ShaftStresses solid = shaft_stresses(load, millimetres(40));
  const ShaftStresses tube = shaft_stresses(load, millimetres(40), {}, 0.8);
  CHECK_CLOSE(solid.peak / tube.peak, 1.0 - 0.4096, 1e-14);
  const Length d = fatigue_diameter(load, steel, MeanStressRule::asme_elliptic, 1.5, {1.4, 1.2}, 0.8);
  CHECK_CLOSE(shaft_fatigue_safety_factor(load, d, steel, MeanStressRule::asme_elliptic, {1.4, 1.2}, 0.8), 1.5, 1e-13);
}

TEST_CASE("torque alone: the schools agree without a mean, differ with one of either sign") {
  const auto factor = [](double mean, TorsionSchool school) {
    return torsion_fatigue_safety_factor(newton_metres(350), newton_metres(mean), millimetres(34.35), megapascals(88),
                                         megapascals(335), school);
  };
  CHECK(factor(0, TorsionSchool::mean_ignored) == factor(0, TorsionSchool::goodman_in_shear));
  CHECK(factor(150, TorsionSchool::mean_ignored) == factor(0, TorsionSchool::mean_ignored));
  CHECK(factor(150, TorsionSchool::goodman_in_shear) < factor(0, TorsionSchool::goodman_in_shear));
  CHECK(factor(150, TorsionSchool::goodman_in_shear) == factor(-150, TorsionSchool::goodman_in_shear));
  CHECK_THROWS_AS(torsion_fatigue_diameter(newton_metres(1), newton_metres(0), megapascals(88), megapascals(80),
                                           TorsionSchool::mean_ignored, 1.0),
                  InputError);
}

TEST_CASE("endurance factors: ranges, and what is said outside") {
  CHECK(size_factor(millimetres(30)).valid());
  CHECK(!size_factor(millimetres(2)).valid());
  CHECK(!size_factor(millimetres(300)).valid());
  CHECK_CLOSE(size_factor(millimetres(300)).value, size_factor(millimetres(254)).value, 1e-15);
  CHECK_CLOSE(size_factor(millimetres(51)).value, size_factor(millimetres(51.001)).value, 3e-3);
  CHECK(surface_factor(SurfaceFinish::forged, megapascals(200)) == 1.0);
  CHECK(surface_factor(SurfaceFinish::ground, megapascals(900)) >
        surface_factor(SurfaceFinish::machined, megapascals(900)));
  CHECK(surface_factor(SurfaceFinish::machined, megapascals(900)) >
        surface_factor(SurfaceFinish::hot_rolled, megapascals(900)));
  CHECK(surface_factor(SurfaceFinish::hot_rolled, megapascals(900)) >
        surface_factor(SurfaceFinish::forged, megapascals(900)));
  CHECK(!temperature_factor(kelvins(-10)).valid());
  CHECK(!temperature_factor(kelvins(600)).valid());
  CHECK(temperature_factor(kelvins(400)).value < 0.91);
  CHECK_THROWS_AS(temperature_factor(kelvins(-300)), InputError);
  CHECK(reliability_factor(0.5) == 1.0);
  CHECK_THROWS_AS(reliability_factor(0.4), InputError);
  CHECK_THROWS_AS(reliability_factor(1.0), InputError);
  const Validated<EnduranceFactors> factors =
      endurance_factors(megapascals(630), {SurfaceFinish::machined, millimetres(35)});
  CHECK(factors.valid());
  CHECK_CLOSE(factors.value.product(),
              surface_factor(SurfaceFinish::machined, megapascals(630)) * size_factor(millimetres(35)).value *
                  temperature_factor(kelvins(20)).value * reliability_factor(0.99),
              1e-14);
  CHECK(!endurance_factors(megapascals(630), {SurfaceFinish::machined, millimetres(300)}).valid());
  const EnduranceConditions rod{SurfaceFinish::ground, millimetres(300), LoadKind::axial};
  CHECK(endurance_factors(megapascals(630), rod).valid());
  CHECK(endurance_factors(megapascals(630), rod).value.size == 1.0);
  CHECK(endurance_factors(megapascals(630), rod).value.load == 0.85);
  CHECK_THROWS_AS(endurance_limit(megapascals(500), {0.0, 1, 1, 1, 1}), InputError);
  CHECK_THROWS_AS(shear_endurance(megapascals(500), 1.2), InputError);
}

TEST_CASE("data that are not published say so") {
  CHECK(load_factor(LoadKind::torsion).value == 0.59);
  CHECK(shear_endurance_ratio.value == 0.577);
  CHECK(surface_constants(SurfaceFinish::machined).source.standing == Standing::published);
  CHECK(miner_source.standing == Standing::published);
}

TEST_CASE("notch sensitivity: sharper and softer means less, outside its range the safe value") {
  const auto q = [](double strength, double radius, NotchLoad load) {
    return notch_sensitivity(ksi(strength), millimetres(radius), load);
  };
  CHECK(q(90, 0.5, NotchLoad::bending).value < q(90, 2, NotchLoad::bending).value);
  CHECK(q(90, 1, NotchLoad::bending).value < q(150, 1, NotchLoad::bending).value);
  CHECK(q(90, 1, NotchLoad::bending).value < q(90, 1, NotchLoad::torsion).value);
  CHECK(!q(230, 1, NotchLoad::torsion).valid()); // the polynomial turns negative soon after
  CHECK(q(230, 1, NotchLoad::torsion).value == 1.0);
  CHECK(q(230, 1, NotchLoad::bending).valid());
  CHECK(!q(40, 1, NotchLoad::bending).valid());
  CHECK_THROWS_AS(q(90, 0, NotchLoad::bending), InputError);
  CHECK_THROWS_AS(notch_factor(0.9), InputError);
  CHECK_THROWS_AS(notch_factor(2.0, 1.1), InputError);
}

TEST_CASE("an S-N line passes through both of its ends, and ends there") {
  const SnLine<Stress> line = worksheet_line();
  CHECK_CLOSE(cycles_to_failure(ksi(0.84 * 105 * (1 - 1e-12)), line).value, 1e3, 1e-9);
  CHECK(cycles_to_failure(ksi(22), line).value == infinity);
  CHECK_CLOSE(cycles_to_failure(ksi(22.000001), line).value, 1e6, 1e-6);
  CHECK(!cycles_to_failure(ksi(100), line).valid());
  CHECK_THROWS_AS(sn_line(steel, 0.15), InputError);
  CHECK_THROWS_AS(sn_line(steel, 0.1), InputError);
  CHECK_THROWS_AS(sn_line(steel, 1.1), InputError);
  CHECK_THROWS_AS(sn_line_through(ksi(40), 1e3, ksi(60), 1e6, ksi(90), ksi(70)), InputError);
  CHECK_THROWS_AS(sn_line_through(ksi(60), 1e6, ksi(40), 1e3, ksi(90), ksi(70)), InputError);
  CHECK(!finite_life_strength(megapascals(100), 500).valid());
  CHECK(finite_life_strength(megapascals(100), 1e7).value == megapascals(100));
  CHECK(strength_fraction(ksi(60)).value == 0.9);
  CHECK(!strength_fraction(ksi(240)).valid());
}

TEST_CASE("a mean that reaches the strength is not hidden in a number") {
  const SnLine<Stress> line = worksheet_line();
  const Validated<Stress> broken = equivalent_reversed(ksi(1), ksi(105), line, MeanStressRule::goodman);
  CHECK(!broken.valid());
  CHECK(broken.value.value() == infinity);
  const std::vector<Cycle<Stress>> cycles = {{ksi(2), ksi(110), 1.0}};
  const Validated<double> damage = miner_damage(cycles, line, MeanStressRule::goodman);
  CHECK(!damage.valid());
  CHECK(damage.value == infinity);
  CHECK(damage_life(damage.value, seconds(6)) == seconds(0));
  CHECK(equivalent_reversed(ksi(30), ksi(-50), line, MeanStressRule::goodman).value == ksi(30));
}

TEST_CASE("an overload lowers the endurance limit, used up, nothing is left") {
  const auto line = sn_line_through(ksi(60), 8520.0, ksi(40), 1e6, ksi(90), ksi(70));
  CHECK_CLOSE(damaged_endurance(line, ksi(60), 0, DamageMethod::miner).value.value(), ksi(40).value(), 1e-14);
  CHECK_CLOSE(damaged_endurance(line, ksi(60), 0, DamageMethod::manson).value.value(), ksi(40).value(), 1e-12);
  const Stress miner = damaged_endurance(line, ksi(60), 3000, DamageMethod::miner).value;
  CHECK(damaged_endurance(line, ksi(60), 3000, DamageMethod::manson).value < miner);
  CHECK(!damaged_endurance(line, ksi(60), 8000, DamageMethod::manson).valid());
  CHECK_THROWS_AS(damaged_endurance(line, ksi(60), 8521, DamageMethod::miner), InputError);
  CHECK_THROWS_AS(damaged_endurance(line, ksi(30), 1, DamageMethod::miner), InputError);
}

TEST_CASE("cycles below the limit: nothing, less, or all along the line") {
  const SnLine<Stress> line = worksheet_line();
  const std::vector<Cycle<Stress>> small = {{ksi(40), ksi(0), 1.0}};
  const auto damage = [&](SmallCycles kind) { return miner_damage(small, line, MeanStressRule::goodman, kind).value; };
  CHECK(damage(SmallCycles::harmless) == 0.0);
  CHECK(damage(SmallCycles::reduced_line) > 0.0);
  CHECK(damage(SmallCycles::same_line) > damage(SmallCycles::reduced_line));
  const double k = -1.0 / line.exponent;
  CHECK_CLOSE(damage(SmallCycles::same_line), std::pow(20.0 / 22.0, k) / 1e6, 1e-12);
  CHECK_CLOSE(damage(SmallCycles::reduced_line), std::pow(20.0 / 22.0, 2 * k - 1) / 1e6, 1e-12);
}

TEST_CASE("rows that cannot be are refused by index, very large ones are said to be outside") {
  const SnLine<Stress> line = worksheet_line();
  std::vector<Cycle<Stress>> cycles = {{ksi(60), ksi(0), 1.0}, {ksi(60), ksi(0), -1.0}};
  CHECK_THROWS_WITH_AS(miner_damage(cycles, line, MeanStressRule::goodman),
                       doctest::Contains("miner_damage: cycles[1] = range"), InputError);
  cycles[1] = {ksi(not_a_number), ksi(0), 1.0};
  CHECK_THROWS_AS(miner_damage(cycles, line, MeanStressRule::goodman), InputError);
  cycles[1] = {ksi(2 * 95), ksi(0), 1.0};
  CHECK(!miner_damage(cycles, line, MeanStressRule::goodman).valid());
  cycles.pop_back();
  CHECK(miner_damage(cycles, line, MeanStressRule::goodman).valid());
  CHECK(miner_damage(std::vector<Cycle<Stress>>{}, line, MeanStressRule::goodman).value == 0.0);
}

TEST_CASE("a torque line carries the shaft's section, and a mean of either sign harms it") {
  const SnLine<Torque> line =
      torque_sn_line(sn_line({megapascals(150), megapascals(600), megapascals(400)}, 0.9), millimetres(35));
  CHECK_CLOSE(line.endurance.value(), pi * 35e-3 * 35e-3 * 35e-3 * 150e6 / (16 * std::sqrt(3.0)), 1e-14);
  const auto reversed = [&](double mean) {
    return equivalent_reversed(newton_metres(800), newton_metres(mean), line, MeanStressRule::goodman).value;
  };
  CHECK(reversed(-300) == reversed(300));
  CHECK(reversed(300) > reversed(0));
  CHECK_CLOSE(torque_sn_line(worksheet_line(), millimetres(35), 2.0).endurance /
                  torque_sn_line(worksheet_line(), millimetres(35)).endurance,
              0.5, 1e-14);
  CHECK_THROWS_AS(torque_sn_line(worksheet_line(), millimetres(35), 0.5), InputError);
}

TEST_CASE("a year of duties") {
  const SnLine<Torque> line{newton_metres(729.1 * std::pow(1e6, 0.1)),
                            -0.1,
                            newton_metres(729.1),
                            newton_metres(4000),
                            newton_metres(3000),
                            true};
  const std::vector<Duty<Torque>> mowing = {{newton_metres(800), newton_metres(0), hertz(2), hours(100)}};
  const Validated<DutyLife> life = duty_life(mowing, line, MeanStressRule::goodman);
  CHECK(life.valid());
  CHECK_CLOSE(life.value.damage_per_year, 7.2e5 * std::pow(800 / 729.1, 10) / 1e6, 1e-12);
  CHECK_CLOSE(in(life.value.working_time, unit::hour), 100.0 * life.value.years, 1e-14);
  CHECK(life_class(life.value.working_time) == LifeClass::from_10_to_100_h);
  std::vector<Duty<Torque>> longer = mowing;
  longer.push_back({newton_metres(500), newton_metres(200), hertz(5), hours(300)}); // below the limit: harmless
  const DutyLife both = duty_life(longer, line, MeanStressRule::goodman).value;
  CHECK(both.damage_per_year == life.value.damage_per_year);
  CHECK_CLOSE(both.working_time / life.value.working_time, 4.0, 1e-13);
  CHECK(duty_life(std::vector<Duty<Torque>>{}, line, MeanStressRule::goodman).value.years == infinity);
  longer[0].frequency = hertz(-1);
  CHECK_THROWS_AS(duty_life(longer, line, MeanStressRule::goodman), InputError);
}

TEST_CASE("a life is printed as a class, endless and broken at once are classes too") {
  CHECK(life_class(damage_life(0.0, seconds(6))) == LifeClass::beyond_10000_h);
  CHECK(life_class(damage_life(infinity, seconds(6))) == LifeClass::under_10_h);
  CHECK_THROWS_AS(life_class(seconds(not_a_number)), InputError);
  CHECK_THROWS_AS(life_class(seconds(-1)), InputError);
  CHECK_THROWS_AS(life_class(seconds(-infinity)), InputError);
  CHECK_THROWS_AS(damage_life(not_a_number, seconds(6)), InputError);
  CHECK_THROWS_AS(damage_life(1.0, seconds(0)), InputError);
}

namespace {

/// The function and parameter that an error names.
template <class F> std::string refused(F call) {
  try {
    call();
  } catch (const InputError& error) {
    return error.function() + ": " + error.parameter();
  }
  return "nothing";
}

} // namespace

TEST_CASE("each part of a strength, a load, a notch, a line, a factor and a duty is refused by its own name") {
  const auto strength = [](Stress FatigueStrength::*part) {
    FatigueStrength bad = steel;
    bad.*part = Stress{};
    return refused([&] { fatigue_safety_factor(pascals(1), pascals(0), bad, MeanStressRule::goodman); });
  };
  CHECK(strength(&FatigueStrength::endurance) == "fatigue_safety_factor: strength.endurance");
  CHECK(strength(&FatigueStrength::yield) == "fatigue_safety_factor: strength.yield");
  const auto load = [](Torque ShaftLoad::*part, double value) {
    ShaftLoad bad;
    bad.*part = newton_metres(value);
    return refused([&] { shaft_stresses(bad, millimetres(30)); });
  };
  CHECK(load(&ShaftLoad::bending_amplitude, -1) == "shaft_stresses: load.bending_amplitude");
  CHECK(load(&ShaftLoad::bending_mean, not_a_number) == "shaft_stresses: load.bending_mean");
  CHECK(load(&ShaftLoad::torque_mean, infinity) == "shaft_stresses: load.torque_mean");
  const NotchFactors weak_notch{1.0, 0.9};
  CHECK(refused([&] { shaft_stresses({}, millimetres(30), weak_notch); }) == "shaft_stresses: notch.torsion");
  CHECK(refused([] { fatigue_diameter({}, steel, MeanStressRule::gerber, 1.0, {}, 1.0); }) ==
        "fatigue_diameter: bore_ratio");
  const auto line = [](double SnLine<Stress>::*number, Stress SnLine<Stress>::*stress) {
    SnLine<Stress> bad = worksheet_line();
    if (number != nullptr) bad.*number = 0.0;
    if (stress != nullptr) bad.*stress = Stress{};
    return refused([&] { torque_sn_line(bad, millimetres(35)); });
  };
  CHECK(line(nullptr, &SnLine<Stress>::endurance) == "torque_sn_line: line.endurance");
  CHECK(line(nullptr, &SnLine<Stress>::coefficient) == "torque_sn_line: line.coefficient");
  CHECK(line(&SnLine<Stress>::exponent, nullptr) == "torque_sn_line: line.exponent");
  CHECK(refused([] { torque_sn_line(worksheet_line(), millimetres(35), 1.0, 1.0); }) == "torque_sn_line: bore_ratio");
  const auto factors = [](double EnduranceFactors::*part) {
    EnduranceFactors bad{1, 1, 1, 1, 1};
    bad.*part = 0.0;
    return refused([&] { endurance_limit(megapascals(500), bad); });
  };
  CHECK(factors(&EnduranceFactors::size) == "endurance_limit: factors.size");
  CHECK(factors(&EnduranceFactors::load) == "endurance_limit: factors.load");
  CHECK(factors(&EnduranceFactors::temperature) == "endurance_limit: factors.temperature");
  CHECK(factors(&EnduranceFactors::reliability) == "endurance_limit: factors.reliability");
  const std::vector<Duty<Stress>> backwards = {{megapascals(40), Stress{}, hertz(2), hours(-1)}};
  CHECK(refused([&] { duty_life(backwards, worksheet_line(), MeanStressRule::goodman); }) ==
        "duty_life: duties.per_year");
}
