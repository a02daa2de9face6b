#include <fieldshaft/rotor.hpp>

#include "close.hpp"

#include <cstring>
#include <limits>

using namespace fieldshaft;

static_assert(text::tip_speed(100.0, 0.75) == 75.0);
static_assert(text::speed_for_tip_speed(75.0, 0.75) == 100.0);
static_assert(text::blade_pull(2.0, 0.5, 100.0) == 10000.0);
static_assert(text::rotor_energy(4.0, 10.0) == 200.0);
static_assert(text::lost_blade_energy(2.0, 0.5, 10.0, 0.0) == 25.0);
static_assert(text::ring_hoop_stress(100.0, 8000.0) == 8e7);
static_assert(text::object_speed_bound(80.0, 0.5) == 120.0);
static_assert(overspeed_ratios(rpm(540), rpm(540)).energy == 1.0);
static_assert(tip_speed_over_ground(metres_per_second(80), metres_per_second(3)) == metres_per_second(83));
static_assert(disc_radial_stress_at(millimetres(300), millimetres(0), millimetres(300), rpm(1000),
                                    kilograms_per_cubic_metre(7850), 0.3) == pascals(0));

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr Density steel_density = kilograms_per_cubic_metre(7850);

/// A flight without air.
Flight vacuum_flight(double speed, double degrees_up, double height) {
  return throw_flight(metres_per_second(speed), degrees(degrees_up), metres(height), kilograms(1), square_metres(0),
                      0.47, kilograms_per_cubic_metre(1.225));
}

Flight stone_flight(double grams, Angle angle, double height) {
  const Mass mass = kilograms(grams / 1000.0);
  return throw_flight(metres_per_second(67), angle, metres(height), mass, round_body_area(mass, stone_density.value),
                      ball_drag.value, sea_level_air.value);
}

} // namespace

TEST_CASE("a cutter rated 540 and driven at 1000 has tips of 22,000 to 30,000 ft/min") {
  // "Near 30,000 ft/min" is common practice, no source; ordinary cutters are of that order.
  struct Cutter {
    double diameter_m;
    double step_up;
  };
  for (const Cutter cutter : {Cutter{1.5, 1.47}, Cutter{1.5, 1.93}, Cutter{2.1, 1.21}}) {
    const Length radius = metres(0.5 * cutter.diameter_m);
    const Speed rated = tip_speed(rpm(540.0 * cutter.step_up), radius);
    const Speed wrong = tip_speed(rpm(1000.0 * cutter.step_up), radius);
    CHECK(rated < turf_tip_speed_line().speed);
    CHECK(wrong > feet_per_minute(22000));
    CHECK(wrong < feet_per_minute(30000));
    CHECK_CLOSE(wrong / rated, 1000.0 / 540.0, 1e-14);
  }
  CHECK_CLOSE(in(tip_speed(rpm(1930), metres(0.75)), unit::foot_per_minute), 30000.0, 0.01);
}

TEST_CASE("turns per second of a PTO: 9 at 540, 16.67 at 1000") {
  // Extension texts print 16.6 for the second (agproud; Clemson); the exact figure is 16.67.
  constexpr Unit<AngularSpeed> turn_per_second{"r/s", 2.0 * pi};
  CHECK_CLOSE(in(rpm(540), turn_per_second), 9.0, 1e-14);
  CHECK_CLOSE(in(rpm(1000), turn_per_second), 16.67, 3e-4);
  CHECK_CLOSE(in(rpm(1000), turn_per_second), 16.6, 5e-3);
}

TEST_CASE("the lines of tip speed are for lawn and turf mowers, and the conflict of the earlier ones is kept") {
  for (const TipSpeedLine& line : tip_speed_lines) {
    CHECK(line.scope == RotorMachine::lawn_or_turf_mower);
    CHECK(std::strlen(line.source.text) > 0);
  }
  CHECK(turf_tip_speed_line().speed == feet_per_minute(19000));
  CHECK_CLOSE(in(turf_tip_speed_line().speed, unit::metre_per_second), 96.52, 1e-5);
  CHECK_CLOSE(in(turf_tip_speed_line().speed, unit::mile_per_hour), 215.9, 1e-4);
  CHECK(turf_tip_speed_line().source.standing == Standing::quoted);
  CHECK(tip_speed_lines[3].speed == feet_per_minute(21000));
  CHECK(tip_speed_lines[4].speed == feet_per_minute(23000));
}

TEST_CASE("usual tip speeds are ranges with sources, and a tested mulcher lies above the turf line") {
  bool above = false;
  for (const TipSpeedRange& range : usual_tip_speeds) {
    CHECK(range.low <= range.high);
    CHECK(std::strlen(range.source.text) > 0);
    above = above || (range.machine == RotorMachine::mulcher && range.high > turf_tip_speed_line().speed);
  }
  CHECK(above);
  CHECK_CLOSE(in(usual_tip_speeds[0].low, unit::foot_per_minute), 13200.0, 1e-12);
  CHECK_CLOSE(in(usual_tip_speeds[1].high, unit::foot_per_minute), 17600.0, 1e-12);
  CHECK_CLOSE(in(metres_per_second(79), unit::foot_per_minute), 15550.0, 1e-3);
  CHECK_CLOSE(in(metres_per_second(89), unit::foot_per_minute), 17520.0, 1e-3);
  CHECK_CLOSE(in(metres_per_second(105), unit::foot_per_minute), 20670.0, 1e-3);
}

TEST_CASE("the cutting speeds, distances and reaction time are the published ones") {
  CHECK(cutting_speeds[0].low == metres_per_second(20));
  CHECK(cutting_speeds[0].high == metres_per_second(40));
  CHECK(cutting_speeds[0].source.standing == Standing::published);
  CHECK(is_remembered(cutting_speeds[1].source.standing));
  CHECK_CLOSE(published_throwing_distance.value.value(), 91.44, 1e-12);
  CHECK(shortest_printed_exclusion.value < published_throwing_distance.value);
  CHECK_CLOSE(hazardous_fragment_energy.value.value(), of(58.0, unit::foot_pound).value(), 0.01);
  CHECK(reaction_time.value == seconds(0.75));
  CHECK(tumbling_stone_drag_low.value < tumbling_stone_drag_high.value);
}

TEST_CASE("an object may leave faster than the blade, as published") {
  const Speed blade = miles_per_hour(200);
  CHECK(published_object_speed.value > blade);
  CHECK(published_object_speed.value < object_speed_bound(blade, 0.4));
  CHECK(object_speed_bound(blade, 0.0) == blade);
}

TEST_CASE("the misprinted 117 lb of the wounding paper cannot be meant") {
  // 21 lb dropped 100 ft store 2100 ft·lbf; 117 lb at 232 mph would be a hundred times that.
  const double dropped = of(2100.0, unit::foot_pound).value();
  CHECK_CLOSE(object_energy(pounds(1.17), miles_per_hour(232)).value(), dropped, 0.004);
  CHECK(object_energy(pounds(117), miles_per_hour(232)).value() > 90.0 * dropped);
}

TEST_CASE("the tip's radius instead of the blade's centre of mass would overstate the pull") {
  CHECK(blade_pull(kilograms(2), metres(0.75), rpm(1000)) > 1.8 * blade_pull(kilograms(2), metres(0.4), rpm(1000)));
}

TEST_CASE("a lost blade takes its spin along") {
  const Energy plain = lost_blade_energy(kilograms(2), metres(0.4), rpm(1000));
  const Energy spinning = lost_blade_energy(kilograms(2), metres(0.4), rpm(1000), kilogram_square_metres(0.03));
  CHECK_CLOSE(plain.value(), 1754.596, 1e-6);
  CHECK_CLOSE((spinning - plain).value(), rotor_energy(kilogram_square_metres(0.03), rpm(1000)).value(), 1e-12);
}

TEST_CASE("any hole, however small, doubles the stress of a solid disc") {
  const Stress solid = disc_hoop_stress(metres(0), metres(0.4), rpm(2000), steel_density, 0.3);
  const Stress pierced = disc_hoop_stress(metres(1e-6), metres(0.4), rpm(2000), steel_density, 0.3);
  CHECK_CLOSE(pierced / solid, 2.0, 1e-10);
}

TEST_CASE("a thin disc ring is a thin ring") {
  const Length inner = metres(0.3999);
  const Length outer = metres(0.4001);
  const Stress ring = ring_hoop_stress(tip_speed(rpm(2000), metres(0.4)), steel_density);
  CHECK_CLOSE(disc_hoop_stress(inner, outer, rpm(2000), steel_density, 0.3) / ring, 1.0, 5e-4);
  const Stress thicker = disc_hoop_stress(metres(0.38), metres(0.42), rpm(2000), steel_density, 0.3);
  CHECK_CLOSE(thicker / ring, 1.0675, 1e-4);
}

TEST_CASE("stress of the solid disc at its rim and its centre") {
  const auto at = [](double r) {
    return disc_hoop_stress_at(metres(r), metres(0), metres(0.364), rpm(250), kilograms_per_cubic_metre(7800), 0.3);
  };
  CHECK_CLOSE(in(at(0.0), unit::megapascal), 0.29219, 2e-5);
  CHECK_CLOSE(in(at(0.364), unit::megapascal), 0.123957, 5e-6);
  CHECK(disc_radial_stress_at(metres(0), metres(0), metres(0.364), rpm(250), kilograms_per_cubic_metre(7800), 0.3) ==
        at(0.0));
}

TEST_CASE("run-down with constant friction, and what windage takes off") {
  const auto time = [](double windage) {
    return run_down_time(kilogram_square_metres(4), rpm(1040), newton_metres(5), newton_metres(windage)).value();
  };
  CHECK_CLOSE(time(0.0), 87.1268363, 1e-8);
  CHECK_CLOSE(time(20.0), 48.2311825, 1e-8);
  CHECK_CLOSE(time(1e-12), time(0.0), 1e-12);
  const Angle angle = run_down_angle(kilogram_square_metres(4), rpm(1040), newton_metres(5));
  CHECK_CLOSE(angle.value() / (2.0 * pi), 755.0992, 1e-6);
  CHECK(run_down_time(kilogram_square_metres(4), rpm(0), newton_metres(5)) == seconds(0));
}

TEST_CASE("without air a flight is a parabola") {
  const Flight flight = vacuum_flight(50.0, 30.0, 2.0);
  const double g = unit::gravity_m_s2;
  const double up = 25.0;
  const double time = (up + std::sqrt(up * up + 2.0 * g * 2.0)) / g;
  CHECK_CLOSE(flight.time.value(), time, 1e-13);
  CHECK_CLOSE(flight.distance.value(), 50.0 * std::cos(pi / 6.0) * time, 1e-13);
  CHECK_CLOSE(flight.top.value(), 2.0 + up * up / (2.0 * g), 1e-13);
  CHECK_CLOSE(flight.landing_speed.value(), std::sqrt(2500.0 + 2.0 * g * 2.0), 1e-13);
  const FarthestFlight farthest = farthest_throw(metres_per_second(50), metres(2), kilograms(1), square_metres(0), 1.0,
                                                 kilograms_per_cubic_metre(1));
  CHECK_CLOSE(farthest.flight.distance.value(), 2500.0 / g * std::sqrt(1.0 + 2.0 * g * 2.0 / 2500.0), 1e-13);
  CHECK_CLOSE(std::tan(farthest.launch_angle.value()), 50.0 / std::sqrt(2500.0 + 2.0 * g * 2.0), 1e-6);
}

TEST_CASE("straight up, straight down, level and from the ground") {
  const double g = unit::gravity_m_s2;
  const Flight up = vacuum_flight(20.0, 90.0, 0.0);
  CHECK(up.distance.value() < 1e-12);
  CHECK_CLOSE(up.time.value(), 40.0 / g, 1e-13);
  CHECK_CLOSE(up.top.value(), 200.0 / g, 1e-13);
  const Flight down = vacuum_flight(20.0, -90.0, 100.0);
  CHECK(down.distance.value() < 1e-12);
  CHECK_CLOSE(down.time.value(), (std::sqrt(400.0 + 200.0 * g) - 20.0) / g, 1e-13);
  CHECK(down.top == metres(100));
  CHECK_CLOSE(in(down.landing_angle, unit::degree), 90.0, 1e-12);
  const Flight level = vacuum_flight(20.0, 0.0, 1.0);
  CHECK_CLOSE(level.distance.value(), 20.0 * std::sqrt(2.0 / g), 1e-13);
  const Flight along = vacuum_flight(20.0, 0.0, 0.0);
  CHECK(along.distance == metres(0));
  CHECK(along.time == seconds(0));
  CHECK(along.landing_speed == metres_per_second(20));
  CHECK(vacuum_flight(20.0, -10.0, 0.0).distance == metres(0));
}

TEST_CASE("straight up with drag comes back by the closed forms") {
  // H = ln(1 + k v²/g) / (2 k), landing speed v / sqrt(1 + k v²/g).
  const double k = 0.01;
  const double v = 60.0;
  const double g = unit::gravity_m_s2;
  const Flight flight = throw_flight(metres_per_second(v), degrees(90), metres(0), kilograms(1), square_metres(0.02),
                                     1.0, kilograms_per_cubic_metre(1));
  CHECK_CLOSE(flight.top.value(), std::log1p(k * v * v / g) / (2.0 * k), 1e-12);
  CHECK_CLOSE(flight.landing_speed.value(), v / std::sqrt(1.0 + k * v * v / g), 1e-11);
  const double rise = std::atan(v * std::sqrt(k / g)) / std::sqrt(k * g);
  const double fall = std::asinh(v * std::sqrt(k / g)) / std::sqrt(k * g);
  CHECK_CLOSE(flight.time.value(), rise + fall, 1e-11);
}

TEST_CASE("chaff falls plumb at its terminal speed") {
  const Flight flight = throw_flight(metres_per_second(50), degrees(30), metres(1000), kilograms(1e-3),
                                     square_metres(1), 1.0, kilograms_per_cubic_metre(1));
  const double terminal = std::sqrt(unit::gravity_m_s2 / 500.0);
  CHECK_CLOSE(flight.landing_speed.value(), terminal, 1e-12);
  CHECK_CLOSE(flight.time.value(), 1000.0 / terminal, 1e-3);
  CHECK(flight.distance < metres(0.1));
}

TEST_CASE("stones of the published size fly about as far as published") {
  CHECK(stone_flight(50, degrees(38), 0.1).distance > published_throwing_distance.value);
  CHECK(stone_flight(200, degrees(5), 0.1).distance > metres(60));
  CHECK(stone_flight(10, degrees(5), 0.1).distance < stone_flight(200, degrees(5), 0.1).distance);
}

TEST_CASE("bad inputs of the rotor formulas are refused") {
  CHECK_THROWS_WITH_AS(tip_speed(rpm(-1), metres(1)),
                       "tip_speed: speed = -0.104719755 rad/s; allowed: a finite number, at least 0 rad/s", InputError);
  CHECK_THROWS_AS(tip_speed(rpm(540), metres(not_a_number)), InputError);
  CHECK_THROWS_AS(tip_speed_over_ground(metres_per_second(-1), metres_per_second(1)), InputError);
  CHECK_THROWS_AS(tip_speed_over_ground(metres_per_second(1), metres_per_second(-1)), InputError);
  CHECK_THROWS_AS(speed_for_tip_speed(metres_per_second(1), metres(0)), InputError);
  CHECK_THROWS_AS(speed_for_tip_speed(metres_per_second(-1), metres(1)), InputError);
  CHECK_THROWS_AS(wrapped_length(rpm(-1), metres(1), seconds(1)), InputError);
  CHECK_THROWS_AS(wrapped_length(rpm(1), metres(-1), seconds(1)), InputError);
  CHECK_THROWS_AS(wrapped_length(rpm(1), metres(1), seconds(-1)), InputError);
  CHECK_THROWS_AS(blade_pull(kilograms(-1), metres(1), rpm(1)), InputError);
  CHECK_THROWS_AS(blade_pull(kilograms(1), metres(-1), rpm(1)), InputError);
  CHECK_THROWS_AS(blade_pull(kilograms(1), metres(1), rpm(not_a_number)), InputError);
  CHECK_THROWS_AS(object_energy(kilograms(-1), metres_per_second(1)), InputError);
  CHECK_THROWS_AS(object_energy(kilograms(1), metres_per_second(-1)), InputError);
  CHECK_THROWS_AS(object_speed_bound(metres_per_second(-1), 0.5), InputError);
  CHECK_THROWS_AS(object_speed_bound(metres_per_second(1), 1.1), InputError);
  CHECK_THROWS_AS(rotor_energy(kilogram_square_metres(-1), rpm(1)), InputError);
  CHECK_THROWS_AS(rotor_energy(kilogram_square_metres(1), rpm(-1)), InputError);
  CHECK_THROWS_AS(lost_blade_energy(kilograms(-1), metres(1), rpm(1)), InputError);
  CHECK_THROWS_AS(lost_blade_energy(kilograms(1), metres(-1), rpm(1)), InputError);
  CHECK_THROWS_AS(lost_blade_energy(kilograms(1), metres(1), rpm(-1)), InputError);
  CHECK_THROWS_AS(lost_blade_energy(kilograms(1), metres(1), rpm(1), kilogram_square_metres(-1)), InputError);
  CHECK_THROWS_AS(overspeed_ratios(rpm(0), rpm(1)), InputError);
  CHECK_THROWS_AS(overspeed_ratios(rpm(1), rpm(0)), InputError);
}

TEST_CASE("bad inputs of discs and run-down are refused") {
  CHECK_THROWS_AS(ring_hoop_stress(metres_per_second(-1), steel_density), InputError);
  CHECK_THROWS_AS(ring_hoop_stress(metres_per_second(1), kilograms_per_cubic_metre(0)), InputError);
  const auto disc = [](double inner, double outer, double speed, double density, double nu) {
    return disc_hoop_stress(metres(inner), metres(outer), rpm(speed), kilograms_per_cubic_metre(density), nu);
  };
  CHECK_NOTHROW(disc(0.1, 0.2, 0.0, 7850.0, 0.3));
  CHECK_THROWS_AS(disc(0.2, 0.2, 1000.0, 7850.0, 0.3), InputError);
  CHECK_THROWS_AS(disc(-0.1, 0.2, 1000.0, 7850.0, 0.3), InputError);
  CHECK_THROWS_AS(disc(0.0, 0.0, 1000.0, 7850.0, 0.3), InputError);
  CHECK_THROWS_AS(disc(0.1, 0.2, -1.0, 7850.0, 0.3), InputError);
  CHECK_THROWS_AS(disc(0.1, 0.2, 1000.0, 0.0, 0.3), InputError);
  CHECK_THROWS_AS(disc(0.1, 0.2, 1000.0, 7850.0, 0.5), InputError);
  CHECK_THROWS_AS(disc(0.1, 0.2, 1000.0, 7850.0, not_a_number), InputError);
  CHECK_THROWS_AS(disc_hoop_stress_at(metres(0.3), metres(0.1), metres(0.2), rpm(1), steel_density, 0.3), InputError);
  CHECK_THROWS_AS(disc_radial_stress_at(metres(0.05), metres(0.1), metres(0.2), rpm(1), steel_density, 0.3),
                  InputError);
  const auto run_down = [](double inertia, double speed, double friction, double windage) {
    return run_down_time(kilogram_square_metres(inertia), rpm(speed), newton_metres(friction), newton_metres(windage));
  };
  CHECK_THROWS_AS(run_down(-1, 1, 1, 0), InputError);
  CHECK_THROWS_AS(run_down(1, -1, 1, 0), InputError);
  CHECK_THROWS_WITH_AS(run_down(1, 1, 0, 5),
                       "run_down_time: friction_torque = 0 N·m; allowed: a finite number above 0 N·m", InputError);
  CHECK_THROWS_AS(run_down(1, 1, 1, -1), InputError);
  CHECK_THROWS_AS(run_down_angle(kilogram_square_metres(1), rpm(1), newton_metres(not_a_number)), InputError);
}

TEST_CASE("bad inputs of a throw are refused") {
  const auto thrown = [](double speed, double angle, double height, double mass, double area, double drag, double air,
                         double gravity) {
    return throw_distance(metres_per_second(speed), degrees(angle), metres(height), kilograms(mass),
                          square_metres(area), drag, kilograms_per_cubic_metre(air),
                          metres_per_second_squared(gravity));
  };
  CHECK_NOTHROW(thrown(60, 45, 0, 1, 0.01, 0.5, 1.2, 9.8));
  CHECK_THROWS_AS(thrown(0, 45, 0, 1, 0.01, 0.5, 1.2, 9.8), InputError);
  CHECK_THROWS_AS(thrown(2e4, 45, 0, 1, 0.01, 0.5, 1.2, 9.8), InputError);
  CHECK_THROWS_AS(thrown(60, 90.1, 0, 1, 0.01, 0.5, 1.2, 9.8), InputError);
  CHECK_THROWS_AS(thrown(60, -91, 0, 1, 0.01, 0.5, 1.2, 9.8), InputError);
  CHECK_THROWS_AS(thrown(60, not_a_number, 0, 1, 0.01, 0.5, 1.2, 9.8), InputError);
  CHECK_THROWS_AS(thrown(60, 45, -1, 1, 0.01, 0.5, 1.2, 9.8), InputError);
  CHECK_THROWS_AS(thrown(60, 45, 0, 0, 0.01, 0.5, 1.2, 9.8), InputError);
  CHECK_THROWS_AS(thrown(60, 45, 0, 1e-14, 0.01, 0.5, 1.2, 9.8), InputError);
  CHECK_THROWS_AS(thrown(60, 45, 0, 1, -0.01, 0.5, 1.2, 9.8), InputError);
  CHECK_THROWS_AS(thrown(60, 45, 0, 1, 0.01, -0.5, 1.2, 9.8), InputError);
  CHECK_THROWS_AS(thrown(60, 45, 0, 1, 0.01, 0.5, -1.2, 9.8), InputError);
  CHECK_THROWS_AS(thrown(60, 45, 0, 1, 0.01, 0.5, 1.2, 0), InputError);
  CHECK_THROWS_AS(thrown(60, 45, 0, 1, 1e200, 1e200, 1.2, 9.8), InputError);
  CHECK_THROWS_AS(farthest_throw(metres_per_second(60), metres(0), kilograms(0), square_metres(0.01), 0.5,
                                 kilograms_per_cubic_metre(1.2)),
                  InputError);
  CHECK_THROWS_AS(round_body_area(kilograms(0), stone_density.value), InputError);
  CHECK_THROWS_AS(round_body_area(kilograms(1), kilograms_per_cubic_metre(0)), InputError);
}
