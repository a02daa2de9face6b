#include <fieldshaft/power.hpp>

#include "close.hpp"

#include <limits>
#include <set>
#include <type_traits>

using namespace fieldshaft;

static_assert(text::shaft_torque(1000.0, 10.0) == 100.0);
static_assert(shaft_torque(kilowatts(50), rpm(540)) > newton_metres(884.19));
static_assert(shaft_torque(kilowatts(50), rpm(540)) < newton_metres(884.20));
static_assert(text::geared_torque(100.0, 2.0, 1.0) == 50.0);
static_assert(text::geared_speed(100.0, 2.0) == 200.0);
static_assert(text::throttle_multiplier(0.7, 1.0) == 1.0);
static_assert(text::implement_power(2.0, 3.0, 4.0, 5.0, 6.0) == 44.0);

namespace {
constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();

template <class P, class = void> struct FuelRateTakes : std::false_type {};
template <class P>
struct FuelRateTakes<P, std::void_t<decltype(fuel_rate(std::declval<P>(), 0.5))>> : std::true_type {};
} // namespace

TEST_CASE("half the torque at nearly twice the speed") {
  const double ratio = shaft_torque(horsepower(90), rpm(1000)) / shaft_torque(horsepower(90), rpm(540));
  CHECK_CLOSE(ratio, 0.54, 1e-12);
}

TEST_CASE("torque and gears: a bad input names function, parameter, value and allowed range") {
  CHECK_THROWS_WITH_AS(shaft_torque(kilowatts(50), rpm(0)),
                       "shaft_torque: speed = 0 rad/s; allowed: a finite number above 0 rad/s", InputError);
  CHECK_THROWS_AS(shaft_torque(kilowatts(-1), rpm(540)), InputError);
  CHECK_THROWS_AS(shaft_torque(kilowatts(not_a_number), rpm(540)), InputError);
  CHECK_THROWS_AS(shaft_torque(kilowatts(1), rpm(infinite)), InputError);
  CHECK_THROWS_AS(shaft_power(newton_metres(-1), rpm(540)), InputError);
  CHECK_THROWS_AS(shaft_power(newton_metres(1), rpm(-540)), InputError);
  CHECK_THROWS_AS(geared_speed(rpm(-1), 1.0), InputError);
  CHECK_THROWS_AS(geared_speed(rpm(1), 0.0), InputError);
  CHECK_THROWS_AS(geared_torque(newton_metres(-1), 1.0), InputError);
  CHECK_THROWS_AS(geared_torque(newton_metres(1), 0.0), InputError);
  CHECK_THROWS_AS(geared_torque(newton_metres(1), 1.0, 0.0), InputError);
  CHECK_THROWS_AS(geared_torque(newton_metres(1), 1.0, 1.1), InputError);
  CHECK_THROWS_AS(gear_ratio(rpm(0), rpm(1)), InputError);
  CHECK_THROWS_AS(gear_ratio(rpm(1), rpm(0)), InputError);
}

// Bases -----------------------------------------------------------------------------------------------------

TEST_CASE("one power basis never becomes another by itself") {
  CHECK_FALSE(std::is_convertible_v<GrossEnginePower, PtoPower>);
  CHECK_FALSE(std::is_convertible_v<NetEnginePower, PtoPower>);
  CHECK_FALSE(std::is_convertible_v<PtoPower, Power>);
  CHECK(FuelRateTakes<Power>::value);
  CHECK(FuelRateTakes<PtoPower>::value);
  CHECK_FALSE(FuelRateTakes<NetEnginePower>::value);
  CHECK_FALSE(FuelRateTakes<GrossEnginePower>::value);
}

TEST_CASE("an engine power gives a range of PTO powers, each share with its source") {
  const PtoPowerRange net = pto_power(NetEnginePower{kilowatts(100)});
  CHECK_CLOSE(in(net.low.power, unit::kilowatt), 86.0, 1e-14);
  CHECK_CLOSE(in(net.high.power, unit::kilowatt), 90.0, 1e-14);
  const PtoPowerRange gross = pto_power(GrossEnginePower{kilowatts(100)});
  CHECK_CLOSE(in(gross.low.power, unit::kilowatt), 80.0, 1e-14);
  CHECK_CLOSE(in(gross.usual.power, unit::kilowatt), 83.0, 1e-14);
  for (const PowerShare& share : {pto_of_net_engine, pto_of_gross_engine}) {
    CHECK(share.low.value <= share.usual.value);
    CHECK(share.usual.value <= share.high.value);
  }
  // The standard's own chain: gross to net to PTO, printed to two decimals.
  CHECK(std::abs(net_of_gross_engine.value * pto_of_net_engine.usual.value - pto_of_gross_engine.usual.value) < 0.005);
  CHECK_THROWS_AS(pto_power(NetEnginePower{kilowatts(-1)}), InputError);
  CHECK_THROWS_AS(pto_power(GrossEnginePower{kilowatts(not_a_number)}), InputError);
  CHECK_THROWS_AS(powers_by_rule_from_engine(kilowatts(-1)), InputError);
  CHECK_THROWS_AS(powers_by_rule_from_drawbar(kilowatts(infinite)), InputError);
}

TEST_CASE("drawbar power is never above PTO power, and falls from concrete to soft ground") {
  for (const Traction traction :
       {Traction::two_wheel, Traction::front_assist, Traction::four_wheel, Traction::tracks}) {
    CHECK(drawbar_of_pto(traction, Ground::concrete).value < 1.0);
    CHECK(drawbar_of_pto(traction, Ground::soft).value < drawbar_of_pto(traction, Ground::concrete).value);
  }
  CHECK(drawbar_of_pto(Traction::two_wheel, Ground::tilled).value == 0.67);
  CHECK(drawbar_of_pto(Traction::tracks, Ground::firm).value == 0.79);
}

TEST_CASE("equivalent PTO power adds what the tractor delivers at once") {
  const PtoPower power = equivalent_pto_power(kilowatts(20), 0.96, 0.72, kilowatts(30), kilowatts(2), kilowatts(1));
  CHECK_CLOSE(in(power.power, unit::kilowatt), 20.0 / (0.96 * 0.72) + 33.0, 1e-14);
  CHECK_THROWS_AS(equivalent_pto_power(kilowatts(-1), 0.96, 0.72, kilowatts(30)), InputError);
  CHECK_THROWS_AS(equivalent_pto_power(kilowatts(1), 0.0, 0.72, kilowatts(30)), InputError);
  CHECK_THROWS_AS(equivalent_pto_power(kilowatts(1), 0.96, 1.01, kilowatts(30)), InputError);
  CHECK_THROWS_AS(equivalent_pto_power(kilowatts(1), 0.96, 0.72, kilowatts(-30)), InputError);
  CHECK_THROWS_AS(equivalent_pto_power(kilowatts(1), 0.96, 0.72, kilowatts(30), kilowatts(-1)), InputError);
  CHECK_THROWS_AS(equivalent_pto_power(kilowatts(1), 0.96, 0.72, kilowatts(30), kilowatts(0), kilowatts(-1)),
                  InputError);
}

TEST_CASE("pulling power: draft on the level, weight on the climb") {
  CHECK_CLOSE(pulling_power(newtons(8000), kilograms(10000), Angle{}, metres_per_second(2)).value(), 16000.0, 1e-14);
  // At a climb of one in two the whole weight counts half: sin 30° = 1/2.
  const Power climb = pulling_power(Force{}, kilograms(10000), degrees(30), metres_per_second(2));
  CHECK_CLOSE(climb.value(), 0.5 * 10000.0 * 9.80665 * 2.0, 1e-14);
  CHECK_THROWS_AS(pulling_power(newtons(-1), kilograms(1), Angle{}, metres_per_second(1)), InputError);
  CHECK_THROWS_AS(pulling_power(newtons(1), kilograms(-1), Angle{}, metres_per_second(1)), InputError);
  CHECK_THROWS_AS(pulling_power(newtons(1), kilograms(1), degrees(90), metres_per_second(1)), InputError);
  CHECK_THROWS_AS(pulling_power(newtons(1), kilograms(1), Angle{}, metres_per_second(not_a_number)), InputError);
}

TEST_CASE("a reserve is a share of what is available, and negative where it falls short") {
  CHECK_CLOSE(power_reserve(kilowatts(60), kilowatts(45)), 0.25, 1e-14);
  CHECK_CLOSE(power_reserve(kilowatts(40), kilowatts(50)), -0.25, 1e-14);
  CHECK_THROWS_AS(power_reserve(kilowatts(0), kilowatts(1)), InputError);
  CHECK_THROWS_AS(power_reserve(kilowatts(1), kilowatts(-1)), InputError);
  CHECK_THROWS_AS(torque_reserve(newton_metres(0), newton_metres(1)), InputError);
  CHECK_THROWS_AS(torque_reserve(newton_metres(1), newton_metres(not_a_number)), InputError);
}

// Engine ----------------------------------------------------------------------------------------------------

namespace {
EngineLine a_line() { return engine_line(PtoPower{kilowatts(75)}, rpm(2200), 0.3, rpm(1400), rpm(2350)); }
Torque torque_at(double n) { return a_line().torque_at(rpm(n)).value; }
} // namespace

TEST_CASE("an engine line passes through its points and ends without torque at high idle") {
  const EngineLine line = a_line();
  CHECK_CLOSE(line.rated_power().power.value(), 75000.0, 1e-14);
  CHECK_CLOSE(torque_at(2200).value(), line.rated().torque.value(), 1e-14);
  CHECK_CLOSE(torque_at(1400) / torque_at(2200), 1.3, 1e-14);
  CHECK_CLOSE(torque_at(1800) / torque_at(2200), 1.15, 1e-14);
  CHECK_CLOSE(torque_at(2275) / torque_at(2200), 0.5, 1e-13);
  CHECK(torque_at(2350) == Torque{});
  CHECK(line.peak().speed == rpm(1400));
  CHECK_CLOSE(torque_rise(line.peak().torque, line.rated().torque), 0.3, 1e-14);
  CHECK_CLOSE(lugged_torque(line.rated().torque, 0.3).value(), line.peak().torque.value(), 1e-14);
}

TEST_CASE("an engine line says where it ends, and gives nothing there") {
  const EngineLine line = a_line();
  CHECK(line.torque_at(rpm(1400)).valid());
  CHECK(line.torque_at(rpm(2350)).valid());
  for (const double n : {0.0, 1399.0, 2351.0}) {
    CAPTURE(n);
    CHECK_FALSE(line.torque_at(rpm(n)).valid());
    CHECK(line.torque_at(rpm(n)).value == Torque{});
    CHECK_FALSE(line.power_at(rpm(n)).valid());
    CHECK(line.power_at(rpm(n)).value == Power{});
  }
  CHECK_FALSE(line.speed_under(line.peak().torque * 1.001).valid());
  CHECK(line.speed_under(line.peak().torque).valid());
  CHECK_THROWS_AS(line.torque_at(rpm(-1)), InputError);
  CHECK_THROWS_AS(line.power_at(rpm(not_a_number)), InputError);
  CHECK_THROWS_AS(line.speed_under(newton_metres(-1)), InputError);
}

TEST_CASE("under load the engine slows along the governor line, then lugs") {
  const EngineLine line = a_line();
  CHECK_CLOSE(in(line.speed_under(newton_metres(0)).value, unit::rpm), 2350.0, 1e-14);
  CHECK_CLOSE(in(line.speed_under(line.rated().torque * 0.5).value, unit::rpm), 2275.0, 1e-14);
  CHECK_CLOSE(in(line.speed_under(line.rated().torque).value, unit::rpm), 2200.0, 1e-14);
  CHECK_CLOSE(in(line.speed_under(line.rated().torque * 1.15).value, unit::rpm), 1800.0, 1e-13);
  CHECK_THROWS_WITH_AS(line.speed_under(newton_metres(-1)), doctest::Contains("EngineLine::speed_under: load = -1 N·m"),
                       InputError);
  CHECK_THROWS_WITH_AS(line.torque_at(rpm(not_a_number)), doctest::Contains("EngineLine::torque_at: speed = nan rad/s"),
                       InputError);
}

TEST_CASE("a governor line of several points is kept, and the rated point is then not the last") {
  const std::vector<EnginePoint> points = {{rpm(1400), newton_metres(400)},
                                           {rpm(2200), newton_metres(300)},
                                           {rpm(2260), newton_metres(240)},
                                           {rpm(2300), newton_metres(80)}};
  const EngineLine line(points, rpm(2350), rpm(2200));
  CHECK(line.rated_speed() == rpm(2200));
  CHECK_CLOSE(line.rated_power().power.value(), shaft_power(newton_metres(300), rpm(2200)).value(), 1e-14);
  CHECK(line.peak().torque == newton_metres(400));
  // Half way between its points, where one straight line to high idle would give 140 N·m at 2280 r/min.
  CHECK_CLOSE(line.torque_at(rpm(2230)).value.value(), 270.0, 1e-12);
  CHECK_CLOSE(line.torque_at(rpm(2280)).value.value(), 160.0, 1e-12);
  CHECK_CLOSE(line.torque_at(rpm(2325)).value.value(), 40.0, 1e-12);
  for (const double n : {1500.0, 2210.0, 2270.0, 2340.0}) { // the speed under what it gives at a speed is that speed
    CHECK_CLOSE(in(line.speed_under(line.torque_at(rpm(n)).value).value, unit::rpm), n, 1e-12);
  }
  CHECK(EngineLine(points, rpm(2350)).rated_speed() == rpm(2300)); // unstated: the last point
  CHECK_THROWS_WITH_AS(EngineLine(points, rpm(2350), rpm(2250)),
                       doctest::Contains("EngineLine: rated_speed = 235.619449 rad/s; allowed: the speed of one of"),
                       InputError);
  CHECK_THROWS_WITH_AS(
      EngineLine({{rpm(2200), newton_metres(300)}, {rpm(2300), newton_metres(300)}}, rpm(2350), rpm(2200)),
      doctest::Contains("on the governor line, below the one before"), InputError);
  CHECK_THROWS_AS(EngineLine(points, rpm(2300), rpm(2200)), InputError);
}

TEST_CASE("the greatest power may lie below rated speed") {
  // Torque falls from 1.5 to 1 between half and full speed: T n = (2 - n) n rises up to n = 1.
  const EngineLine at_rated({{rpm(1000), newton_metres(300)}, {rpm(2000), newton_metres(200)}}, rpm(2100));
  CHECK_CLOSE(in(at_rated.greatest_power().speed, unit::rpm), 2000.0, 1e-14);
  // Torque falls from 2 to 1: T n = (3 - 2 n) n is greatest at n = 3/4.
  const EngineLine below({{rpm(1000), newton_metres(400)}, {rpm(2000), newton_metres(200)}}, rpm(2100));
  CHECK_CLOSE(in(below.greatest_power().speed, unit::rpm), 1500.0, 1e-14);
  CHECK_CLOSE(below.greatest_power().power.power.value(), shaft_power(newton_metres(300), rpm(1500)).value(), 1e-14);
  // A very long governor line: T n is greatest on it.
  const EngineLine long_idle({{rpm(1000), newton_metres(100)}}, rpm(3000));
  CHECK_CLOSE(in(long_idle.greatest_power().speed, unit::rpm), 1500.0, 1e-14);
}

TEST_CASE("a curve that is no function, or none at all, is refused") {
  CHECK_THROWS_AS(EngineLine({}, rpm(2300)), InputError);
  CHECK_THROWS_AS(EngineLine({{rpm(2000), newton_metres(1)}, {rpm(2000), newton_metres(2)}}, rpm(2300)), InputError);
  CHECK_THROWS_AS(EngineLine({{rpm(2000), newton_metres(1)}, {rpm(1900), newton_metres(2)}}, rpm(2300)), InputError);
  CHECK_THROWS_AS(EngineLine({{rpm(0), newton_metres(1)}}, rpm(2300)), InputError);
  CHECK_THROWS_AS(EngineLine({{rpm(2000), newton_metres(0)}}, rpm(2300)), InputError);
  CHECK_THROWS_AS(EngineLine({{rpm(not_a_number), newton_metres(1)}}, rpm(2300)), InputError);
  CHECK_THROWS_AS(EngineLine({{rpm(2000), newton_metres(infinite)}}, rpm(2300)), InputError);
  CHECK_THROWS_AS(EngineLine({{rpm(2000), newton_metres(1)}}, rpm(2000)), InputError);
  CHECK_THROWS_AS(EngineLine({{rpm(2000), newton_metres(1)}}, rpm(infinite)), InputError);
  CHECK_THROWS_AS(engine_line(PtoPower{kilowatts(0)}, rpm(2200), rpm(2300)), InputError);
  CHECK_THROWS_AS(engine_line(PtoPower{kilowatts(1)}, rpm(0), rpm(2300)), InputError);
  CHECK_THROWS_AS(engine_line(PtoPower{kilowatts(1)}, rpm(2200), -0.1, rpm(1400), rpm(2300)), InputError);
  CHECK_THROWS_AS(engine_line(PtoPower{kilowatts(1)}, rpm(2200), 0.1, rpm(2200), rpm(2300)), InputError);
  CHECK_THROWS_AS(torque_rise(newton_metres(1), newton_metres(2)), InputError);
  CHECK_THROWS_AS(torque_rise(newton_metres(1), newton_metres(0)), InputError);
  CHECK_THROWS_AS(lugged_torque(newton_metres(0), 0.1), InputError);
  CHECK_THROWS_AS(lugged_torque(newton_metres(1), -0.1), InputError);
  CHECK_THROWS_AS(governor_regulation(rpm(2000), rpm(2100)), InputError);
  CHECK_THROWS_AS(governor_regulation(rpm(2000), rpm(0)), InputError);
}

TEST_CASE("the governor's regulation is the droop over the mean of both speeds") {
  CHECK_CLOSE(governor_regulation(rpm(2350), rpm(2200)), 150.0 / 2275.0, 1e-14);
  CHECK(governor_regulation(rpm(2200), rpm(2200)) == 0.0);
  CHECK(least_idle_rise.value < greatest_idle_rise.value);
}

// PTO options -----------------------------------------------------------------------------------------------

TEST_CASE("an option from its ratio is the same as from its engine speed") {
  const PtoOption by_speed = pto_option("540", rpm(540), rpm(2100));
  const PtoOption by_ratio = pto_option_by_ratio("540", rpm(540), 540.0 / 2100.0);
  CHECK_CLOSE(by_speed.ratio(), by_ratio.ratio(), 1e-15);
  CHECK_CLOSE(by_ratio.engine_speed.value(), by_speed.engine_speed.value(), 1e-15);
  CHECK_NOTHROW(pto_option("540", rpm(540), rpm(2100), 0.257));
  CHECK_THROWS_AS(pto_option("540", rpm(540), rpm(2100), 0.3), InputError);
  CHECK_THROWS_AS(pto_option("540", rpm(540), rpm(2100), 0.0), InputError);
}

TEST_CASE("a name that states a speed must agree with it") {
  CHECK_NOTHROW(pto_option("540", rpm(536), rpm(2100)));
  CHECK_NOTHROW(pto_option("ground speed", rpm(400), rpm(2100)));
  CHECK_THROWS_WITH_AS(
      pto_option("540E", rpm(1000), rpm(1700)),
      "pto_option: nominal_speed = 1000 r/min; allowed: the speed that the name \"540E\" states, within "
      "2.5 %",
      InputError);
  CHECK_THROWS_AS(pto_option("1000", rpm(540), rpm(1700)), InputError);
  CHECK_THROWS_AS(pto_option("", rpm(540), rpm(1700)), InputError);
  CHECK_THROWS_AS(pto_option("540", rpm(0), rpm(1700)), InputError);
  CHECK_THROWS_AS(pto_option("540", rpm(540), rpm(infinite)), InputError);
  CHECK_THROWS_AS(pto_option_by_ratio("540", rpm(540), 0.0), InputError);
  CHECK_THROWS_AS(pto_speed(PtoOption{}, rpm(1000)), InputError);
  CHECK_THROWS_AS(pto_speed(pto_option("540", rpm(540), rpm(2100)), rpm(-1)), InputError);
  CHECK_THROWS_AS(engine_speed_at(PtoOption{}, rpm(1000)), InputError);
  CHECK_THROWS_AS(engine_speed_at(pto_option("540", rpm(540), rpm(2100)), rpm(not_a_number)), InputError);
}

TEST_CASE("the options of a tractor: found by name, free of contradictions") {
  const PtoOptions options({pto_option("540", rpm(540), rpm(2100)), pto_option("540E", rpm(540), rpm(1600)),
                            pto_option("1000", rpm(1000), rpm(2150)), pto_option("1300", rpm(1300), rpm(2000))});
  REQUIRE(options.find("540E") != nullptr);
  CHECK(options.find("540E")->engine_speed == rpm(1600));
  CHECK(options.find("1000E") == nullptr);
  CHECK(options.economy_of("540") == options.find("540E"));
  CHECK(options.economy_of("1000") == nullptr);
  CHECK(options.economy_of("540E") == nullptr);
  CHECK(options.economy_of("ground speed") == nullptr);
  CHECK(options.all().size() == 4);
  CHECK(least_plain_engine_share.value < greatest_plain_engine_share.value);
  CHECK_THROWS_AS(PtoOptions({}), InputError);
  CHECK_THROWS_AS(PtoOptions({pto_option("540", rpm(540), rpm(2100)), pto_option("540", rpm(540), rpm(2000))}),
                  InputError);
  CHECK_THROWS_AS(PtoOptions({pto_option("540", rpm(540), rpm(2100)), pto_option("540E", rpm(540), rpm(2100))}),
                  InputError);
  CHECK_THROWS_AS(PtoOptions({pto_option("540E", rpm(540), rpm(2200)), pto_option("540", rpm(540), rpm(2100))}),
                  InputError);
  CHECK_THROWS_AS(PtoOptions({PtoOption{}}), InputError);
}

TEST_CASE("the economy gear overspeeds at the engine speed of the plain one") {
  const PtoOption economy = pto_option("540E", rpm(540), rpm(1700));
  CHECK_CLOSE(in(pto_speed(economy, rpm(1700)), unit::rpm), 540.0, 1e-14);
  CHECK(pto_speed(economy, rpm(2400)) > rpm(687)); // the highest speed that manuals allow in that gear
  const AngularSpeed ceiling_at = engine_speed_at(economy, rpm(630));
  CHECK_CLOSE(in(ceiling_at, unit::rpm), 1700.0 * 630.0 / 540.0, 1e-14);
  CHECK_CLOSE(in(pto_speed(economy, ceiling_at), unit::rpm), 630.0, 1e-14);
}

TEST_CASE("the PTO hands on the engine's power at another speed") {
  const EngineLine line = a_line();
  const PtoOption option = pto_option("540", rpm(540), rpm(2100));
  const Validated<PtoOutput> out = pto_output(option, line, rpm(2100));
  REQUIRE(out.valid());
  CHECK_CLOSE(in(out.value.speed, unit::rpm), 540.0, 1e-14);
  CHECK_CLOSE(shaft_power(out.value.torque, out.value.speed).value(), out.value.power.value(), 1e-14);
  CHECK_CLOSE(out.value.power.value(), line.power_at(rpm(2100)).value.value(), 1e-14);
  CHECK_FALSE(pto_output(option, line, rpm(1000)).valid());
  const Validated<AngularSpeed> idle = pto_speed_under(option, line, newton_metres(0));
  CHECK_CLOSE(in(idle.value, unit::rpm), 540.0 * 2350.0 / 2100.0, 1e-14);
  const Validated<AngularSpeed> same = pto_speed_under(option, line, out.value.torque);
  CHECK_CLOSE(in(same.value, unit::rpm), 540.0, 1e-12);
  CHECK_FALSE(pto_speed_under(option, line, newton_metres(1e6)).valid());
  CHECK_THROWS_AS(pto_speed_under(option, line, newton_metres(-1)), InputError);
  CHECK_THROWS_AS(pto_speed_under(PtoOption{}, line, newton_metres(1)), InputError);
}

// Fuel ------------------------------------------------------------------------------------------------------

TEST_CASE("fuel: the form with the speed reduction in per cent is the same number") {
  for (const double load : {0.2, 0.5, 0.75, 1.0}) {
    for (const double speed : {0.5, 0.8, 0.95, 1.0}) {
      const double reduction = 100.0 * (1.0 - speed);
      const double by_reduction =
          (0.22 * load + 0.096) * (1.0 - (-0.0045 * load * reduction + 0.00877 * reduction)) * 100.0;
      CHECK_CLOSE(in(fuel_rate(kilowatts(100), load, speed), unit::litre_per_hour), by_reduction, 1e-12);
    }
  }
}

TEST_CASE("fuel: the customary-unit forms agree with the metric ones to their printed digits") {
  for (const double load : {0.25, 0.5, 1.0}) {
    CHECK_CLOSE(in(specific_fuel(load), unit::gallon_per_horsepower_hour), 0.0434 + 0.019 / load, 5e-3);
    const double older = 0.52 * load + 0.77 - 0.04 * std::sqrt(738.0 * load + 173.0);
    CHECK_CLOSE(in(older_fuel_rate(horsepower(100), load).value, unit::gallon_per_hour), older * load * 100.0, 2e-2);
  }
  CHECK_CLOSE(0.305 * 0.73, 0.223,
              2e-3); // petrol figure times the share of diesel: where the annual average comes from
}

TEST_CASE("fuel: an idle engine still burns some, and the twin says where the equations are not meant") {
  CHECK_CLOSE(in(fuel_rate(kilowatts(100), 0.0), unit::litre_per_hour), 9.6, 1e-14);
  CHECK(fuel_rate(PtoPower{kilowatts(100)}, 0.5) == fuel_rate(kilowatts(100), 0.5));
  CHECK(fuel_rate_checked(kilowatts(100), 0.2).valid());
  CHECK(fuel_rate_checked(kilowatts(100), 1.0).valid());
  CHECK_FALSE(fuel_rate_checked(kilowatts(100), 0.19).valid());
  CHECK_FALSE(fuel_rate_checked(kilowatts(100), 1.01).valid());
  CHECK(fuel_rate_checked(kilowatts(100), 0.1, 0.7).value == fuel_rate(kilowatts(100), 0.1, 0.7));
  CHECK(older_fuel_rate(kilowatts(100), 0.5).valid());
  CHECK_FALSE(older_fuel_rate(kilowatts(100), 0.1).valid());
}

TEST_CASE("fuel: what cannot be is refused") {
  for (const double bad : {0.0, -1.0, not_a_number, infinite}) {
    CAPTURE(bad);
    CHECK_THROWS_AS(fuel_rate(kilowatts(bad), 0.5), InputError);
    CHECK_THROWS_AS(fuel_rate(kilowatts(100), 0.5, bad), InputError);
    CHECK_THROWS_AS(specific_fuel(bad), InputError);
    CHECK_THROWS_AS(specific_fuel(0.5, bad), InputError);
    CHECK_THROWS_AS(average_fuel_rate(kilowatts(bad)), InputError);
    CHECK_THROWS_AS(measured_fuel_rate(kilowatts(1), litres_per_kilowatt_hour(bad)), InputError);
    CHECK_THROWS_AS(older_fuel_rate(kilowatts(bad), 0.5), InputError);
    CHECK_THROWS_AS(engine_oil_rate(kilowatts(bad)), InputError);
  }
  CHECK_THROWS_AS(fuel_rate(kilowatts(100), -0.1), InputError);
  CHECK_THROWS_AS(fuel_rate(kilowatts(100), 0.5, 1.01), InputError);
  CHECK_THROWS_AS(specific_fuel(0.5, 1.01), InputError);
  CHECK_THROWS_AS(measured_fuel_rate(kilowatts(-1), litres_per_kilowatt_hour(0.3)), InputError);
  CHECK_THROWS_AS(older_fuel_rate(kilowatts(100), -0.1), InputError);
}

TEST_CASE("economy gear: less fuel at the same work, and a saving that falls with the load") {
  const auto saving = [](double kilowatt) {
    return economy_saving(kilowatts(60), kilowatts(kilowatt), rpm(2100), rpm(1600), rpm(2200));
  };
  CHECK(saving(24).value.saving > 0.0);
  CHECK(saving(24).value.saving > saving(50).value.saving);
  CHECK(saving(24).valid());
  CHECK_FALSE(saving(6).valid());
  CHECK_CLOSE(saving(24).value.economy / saving(24).value.plain, 1.0 - saving(24).value.saving, 1e-14);
  CHECK(economy_saving(kilowatts(60), kilowatts(24), rpm(2100), rpm(2100), rpm(2200)).value.saving == 0.0);
  // Within what was measured on three tractors and three machines.
  const EconomyMeasurement& field = economy_measurements.back();
  CHECK(saving(24).value.saving > field.low);
  CHECK(saving(24).value.saving < field.high);
  CHECK(economy_load_low.value < economy_load_high.value);
}

TEST_CASE("economy gear: what cannot be is refused") {
  const Power p = kilowatts(60);
  CHECK_THROWS_AS(economy_saving(kilowatts(0), p, rpm(2100), rpm(1600), rpm(2200)), InputError);
  CHECK_THROWS_AS(economy_saving(p, kilowatts(-1), rpm(2100), rpm(1600), rpm(2200)), InputError);
  CHECK_THROWS_AS(economy_saving(p, p, rpm(2300), rpm(1600), rpm(2200)), InputError);
  CHECK_THROWS_AS(economy_saving(p, p, rpm(1500), rpm(1600), rpm(2200)), InputError);
  CHECK_THROWS_AS(economy_saving(p, p, rpm(0), rpm(0), rpm(2200)), InputError);
  CHECK_THROWS_AS(economy_saving(p, p, rpm(2100), rpm(0), rpm(2200)), InputError);
  CHECK_THROWS_AS(economy_saving(p, p, rpm(2100), rpm(1600), rpm(not_a_number)), InputError);
}

// Implements ------------------------------------------------------------------------------------------------

TEST_CASE("the table of machines: names stand once, every row says that it is remembered") {
  std::set<std::string_view> names;
  for (const Machine& machine : machines()) {
    CAPTURE(std::string(machine.name));
    CHECK(names.insert(machine.name).second);
    CHECK(is_remembered(machine.source.standing));
    CHECK((machine.range >= 0.2 && machine.range <= 0.5));
    CHECK(machine.constant.value() + machine.per_width.value() + machine.per_mass.value() > 0.0);
    CHECK(find_machine(machine.name) == &machine);
    CHECK(nearest_machines(machine.name).front() == machine.name);
  }
  CHECK(names.size() == 32);
}

TEST_CASE("a machine is found whatever the case, and a wrong name is answered with the nearest") {
  CHECK(find_machine("Mower-Conditioner, Disk") == find_machine("mower-conditioner, disk"));
  CHECK(find_machine("mower, disc") == nullptr);
  CHECK(find_machine("") == nullptr);
  CHECK(nearest_machines("round balers").size() == 2);
  CHECK(nearest_machines("mower, disc").front() == "mower, disk");
  CHECK(nearest_machines("teder").front() == "tedder");
  CHECK_THROWS_WITH_AS(
      machine_named("rond baler"),
      doctest::Contains("machine_named: name = \"rond baler\"; allowed: a name of the table; nearest:"), InputError);
  CHECK_THROWS_WITH_AS(machine_named("round baler"),
                       "machine_named: name = \"round baler\"; allowed: a name of the table; nearest: \"baler, large "
                       "round, variable chamber\" \"baler, large round, fixed chamber\"",
                       InputError);
}

TEST_CASE("a feed rate on another basis is an error, not a small difference") {
  const Machine& forage = machine_named("forage harvester, corn silage");
  CHECK_CLOSE(in(implement_power(forage, metres(0), dry_feed(tonnes_per_hour(30))).mean, unit::kilowatt), 105.0, 1e-13);
  CHECK_THROWS_WITH_AS(
      implement_power(forage, metres(0), wet_feed(tonnes_per_hour(30))),
      "implement_power: feed_rate = wet material; allowed: dry matter, which the coefficient of \"forage "
      "harvester, corn silage\" goes with",
      InputError);
  CHECK_THROWS_AS(implement_power(machine_named("combine, corn"), metres(0), wet_feed(tonnes_per_hour(30))),
                  InputError);
  const FeedRate grain{tonnes_per_hour(20), FeedBasis::grain};
  CHECK_CLOSE(in(implement_power(machine_named("combine, corn"), metres(0), grain).mean, unit::kilowatt), 67.0, 1e-13);
  const FeedRate dry = dry_matter(wet_feed(tonnes_per_hour(60)), 0.65);
  CHECK(dry.basis == FeedBasis::dry);
  CHECK_CLOSE(in(dry.rate, unit::tonne_per_hour), 21.0, 1e-14);
  CHECK_THROWS_AS(dry_matter(dry, 0.1), InputError);
  CHECK_THROWS_AS(dry_matter(wet_feed(tonnes_per_hour(60)), 1.0), InputError);
  CHECK_THROWS_AS(dry_matter(wet_feed(tonnes_per_hour(-1)), 0.5), InputError);
}

TEST_CASE("a width or feed that the need goes with must be stated") {
  const Machine& mower = machine_named("mower, disk");
  const Machine& baler = machine_named("baler, large rectangular");
  CHECK_THROWS_AS(implement_power(mower, metres(0)), InputError);
  CHECK_THROWS_AS(implement_power(baler, metres(2)), InputError);
  for (const double bad : {-1.0, not_a_number, infinite}) {
    CHECK_THROWS_AS(implement_power(mower, metres(bad)), InputError);
    CHECK_THROWS_AS(implement_power(baler, metres(bad), wet_feed(tonnes_per_hour(20))), InputError);
    CHECK_THROWS_AS(implement_power(baler, metres(0), wet_feed(tonnes_per_hour(bad))), InputError);
    CHECK_THROWS_AS(implement_power(mower, metres(2), wet_feed(tonnes_per_hour(bad))), InputError);
  }
}

TEST_CASE("a note multiplies the need of the rows that have one") {
  CHECK(note_factor(machine_named("baler, small rectangular")) == 1.20);
  CHECK(note_factor(machine_named("forage harvester, corn silage")) == 1.25);
  CHECK(note_factor(machine_named("combine, corn")) == 1.0); // a note that takes off
  CHECK(note_factor(machine_named("potato harvester")) == 1.0);
  const auto multiplied =
      std::count_if(machines().begin(), machines().end(), [](const Machine& m) { return note_factor(m) > 1.0; });
  CHECK(multiplied == 4);
}

TEST_CASE("a user's own machine") {
  const Machine mine = make_machine("my chipper", kilowatts(3), kilowatts_per_metre(0), kilowatt_hours_per_tonne(8),
                                    FeedBasis::wet, 0.2);
  CHECK(mine.source.standing == Standing::given);
  CHECK_CLOSE(in(implement_power(mine, metres(0), wet_feed(tonnes_per_hour(2))).high, unit::kilowatt), 1.2 * 19.0,
              1e-14);
  const auto make = [](const char* name, double a, double b, double c, double range) {
    return make_machine(name, kilowatts(a), kilowatts_per_metre(b), kilowatt_hours_per_tonne(c), FeedBasis::wet, range);
  };
  CHECK_THROWS_AS(make("", 1, 1, 1, 0.1), InputError);
  CHECK_THROWS_AS(make("x", 0, 0, 0, 0.1), InputError);
  CHECK_THROWS_AS(make("x", -1, 1, 1, 0.1), InputError);
  CHECK_THROWS_AS(make("x", 1, -1, 1, 0.1), InputError);
  CHECK_THROWS_AS(make("x", 1, 1, not_a_number, 0.1), InputError);
  CHECK_THROWS_AS(make("x", 1, 1, 1, 1.0), InputError);
}

TEST_CASE("inverse answers keep the reserve at the high need") {
  const Machine& conditioner = machine_named("mower-conditioner, disk");
  const ImplementLimit<Length> width = widest_implement(conditioner, kilowatts(60), 0.2);
  CHECK_CLOSE(in(implement_power(conditioner, width.safe).high, unit::kilowatt), 48.0, 1e-14);
  CHECK_CLOSE(in(implement_power(conditioner, width.mean).mean, unit::kilowatt), 48.0, 1e-14);
  CHECK_CLOSE(in(implement_power(conditioner, width.optimistic).low, unit::kilowatt), 48.0, 1e-14);
  const Machine& baler = machine_named("baler, large round, fixed chamber");
  const ImplementLimit<MassRate> feed = greatest_feed(baler, kilowatts(60), 0.2);
  CHECK_CLOSE(in(implement_power(baler, metres(0), wet_feed(feed.safe)).high, unit::kilowatt), 48.0, 1e-14);
  CHECK(greatest_feed(baler, kilowatts(1), 0.0).safe == MassRate{});
  CHECK_THROWS_AS(widest_implement(baler, kilowatts(60), 0.2, wet_feed(tonnes_per_hour(1))), InputError);
  CHECK_THROWS_AS(greatest_feed(conditioner, kilowatts(60), 0.2, metres(3)), InputError);
  CHECK_THROWS_AS(widest_implement(conditioner, kilowatts(0), 0.2), InputError);
  CHECK_THROWS_AS(widest_implement(conditioner, kilowatts(60), 1.0), InputError);
  CHECK_THROWS_AS(greatest_feed(baler, kilowatts(not_a_number), 0.2), InputError);
  CHECK_THROWS_AS(greatest_feed(baler, kilowatts(60), -0.2), InputError);
  CHECK_THROWS_AS(greatest_feed(baler, kilowatts(60), 0.2, metres(-1)), InputError);
}

TEST_CASE("customary units of the coefficients: the handbook's factors") {
  CHECK_CLOSE(in(kilowatts(1), unit::horsepower), 1.341, 1e-4);
  CHECK_CLOSE(in(kilowatts_per_metre(1), unit::horsepower_per_foot), 0.4087, 1.3e-4);
  const double hp_hours_per_ton =
      in(kilowatt_hours_per_tonne(1), unit::joule_per_kilogram) * unit::short_ton_kg / (unit::horsepower_w * 3600.0);
  CHECK_CLOSE(hp_hours_per_ton, 1.2166, 1e-4);
}

TEST_CASE("measured needs and peaks are in order, and none of them is a bare number") {
  for (const auto& need : measured_per_width) CHECK((need.low <= need.high && need.source.text != nullptr));
  for (const auto& need : measured_per_mass) CHECK((need.low <= need.high && need.source.text != nullptr));
  for (const auto& need : measured_power) CHECK((need.low <= need.high && need.source.text != nullptr));
  for (const auto& peak : peak_ratios) CHECK((peak.low <= peak.high && peak.source.text != nullptr));
  // The harrow's band is 80 to 620 N·m at 1000 r/min.
  CHECK_CLOSE(measured_power[0].low.value(), shaft_power(newton_metres(80), rpm(1000)).value(), 5e-3);
  CHECK_CLOSE(measured_power[0].high.value(), shaft_power(newton_metres(620), rpm(1000)).value(), 5e-3);
  // The spread of rotary tillage: mean and standard deviation of PTO torque at three ground speeds, N·m.
  const double mean[] = {910.79, 987.47, 1145.83};
  const double deviation[] = {204.54, 363.10, 394.52};
  for (int i = 0; i < 3; ++i) {
    CHECK((1 + 2 * deviation[i] / mean[i] > peak_ratios[1].low - 0.005 &&
           1 + 2 * deviation[i] / mean[i] < peak_ratios[1].high + 0.005));
    CHECK((1 + 3 * deviation[i] / mean[i] > peak_ratios[2].low - 0.005 &&
           1 + 3 * deviation[i] / mean[i] < peak_ratios[2].high + 0.005));
  }
}
