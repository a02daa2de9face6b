#include <fieldshaft/overload.hpp>

#include "close.hpp"

#include <limits>
#include <string>

using namespace fieldshaft;

static_assert(text::friction_radius(3.0, 1.0, ClutchContact::uniform_wear) == 2.0);
static_assert(text::disc_clutch_torque(3.0, 1.0, 10.0, 0.5, 2.0, ClutchContact::uniform_wear) == 20.0);
static_assert(text::slip_time(2.0, 10.0, 6.0, 1.0) == 4.0);
static_assert(text::slip_heat(6.0, 10.0, 4.0) == 120.0);
static_assert(text::slip_deceleration(2.0, 4.0, 8.0, 2.0, 4.0) == 4.0);
static_assert(spring_force(2, newtons_per_millimetre(10), millimetres(5)) == newtons(100));
static_assert(torque_band(newton_metres(100), 0.25).low == newton_metres(75));
static_assert(device_setting(newton_metres(75), newton_metres(125)).scatter == 0.25);
static_assert(referred_yield(newton_metres(100), 2.0) == newton_metres(200));
static_assert(referred_inertia(kilogram_square_metres(1), 2.0) == kilogram_square_metres(4));
static_assert(overrun_torque(kilogram_square_metres(2), radians_per_second(10), seconds(4), newton_metres(1)) ==
              newton_metres(4));
static_assert(overrun_torque(kilogram_square_metres(2), radians_per_second(10), seconds(4), newton_metres(9)) ==
                  newton_metres(0),
              "friction alone stops it sooner: nothing comes back");

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr ClutchContact wear = ClutchContact::uniform_wear;
constexpr ClutchContact pressure = ClutchContact::uniform_pressure;

Torque clutch(double outer, double inner, int surfaces, ClutchContact contact) {
  return disc_clutch_torque(millimetres(outer), millimetres(inner), newtons(1000), 0.3, surfaces, contact);
}

} // namespace

TEST_CASE("new discs carry more than run-in ones, up to a third more without a hole") {
  CHECK(clutch(100, 60, 2, pressure) > clutch(100, 60, 2, wear));
  CHECK_CLOSE(clutch(100, 0, 2, pressure) / clutch(100, 0, 2, wear), 4.0 / 3.0, 1e-14);
  CHECK_CLOSE(clutch(100, 99.999, 2, pressure) / clutch(100, 99.999, 2, wear), 1.0, 1e-9);
  const double cubes = 2.0 / 3.0 * (1e-3 - 0.216e-3) / (1e-2 - 0.36e-2);
  CHECK_CLOSE(clutch(100, 60, 2, pressure).value(), 2 * 0.3 * 1000 * cubes, 1e-14);
}

TEST_CASE("counting one surface for two is a factor of two") {
  // Jindal, ex. 22-1, prints 44.33 N·m for a plate that is gripped from both sides: it is 88.67.
  CHECK(clutch(110, 70, 2, wear) == 2.0 * clutch(110, 70, 1, wear));
}

TEST_CASE("impossible clutches are refused by name") {
  CHECK_THROWS_WITH_AS(clutch(60, 100, 2, wear),
                       "disc_clutch_torque: inner_radius = 0.1 m; allowed: from 0 m to 0.06 m, upper end excluded",
                       InputError);
  CHECK_THROWS_AS(clutch(60, 60, 2, wear), InputError);
  CHECK_THROWS_AS(clutch(100, 60, 0, wear), InputError);
  CHECK_THROWS_AS(clutch(100, -1, 2, wear), InputError);
  CHECK_THROWS_AS(clutch(100, 60, 2, static_cast<ClutchContact>(2)), InputError);
  CHECK_THROWS_AS(disc_clutch_torque(millimetres(100), millimetres(60), newtons(not_a_number), 0.3, 2, wear),
                  InputError);
  CHECK_THROWS_AS(disc_clutch_torque(millimetres(100), millimetres(60), newtons(1), 0.0, 2, wear), InputError);
  CHECK_THROWS_AS(disc_clutch_pressure(millimetres(100), millimetres(0), newtons(1), wear), InputError);
  CHECK(disc_clutch_pressure(millimetres(100), millimetres(0), newtons(1), pressure).value() > 0.0);
  CHECK_THROWS_AS(spring_force(0, newtons_per_millimetre(10), millimetres(5)), InputError);
  CHECK_THROWS_AS(spring_force(2, newtons_per_millimetre(10), millimetres(-5)), InputError);
}

TEST_CASE("a setting at which the springs bind is said to be outside") {
  const auto at = [](double newtons_wanted) {
    return spring_compression(newtons(newtons_wanted), 8, newtons_per_millimetre(60), millimetres(5));
  };
  CHECK(at(2399).valid());
  CHECK(!at(2400).valid());
  CHECK(!at(3000).valid());
  CHECK_CLOSE(at(3000).value.value(), 6.25e-3, 1e-14);
}

TEST_CASE("without a load torque the heat is the energy of the started machine") {
  const ClutchEngagement start =
      clutch_engagement(kilogram_square_metres(4), rpm(540), newton_metres(600), newton_metres(0));
  CHECK_CLOSE(start.heat.value(), 0.5 * 4 * rpm(540).value() * rpm(540).value(), 1e-14);
  CHECK(start.speed == rpm(540));
  CHECK(start.locks);
}

TEST_CASE("a clutch that does not exceed the load slips without end") {
  for (const double load : {600.0, 700.0}) {
    const ClutchEngagement slip =
        clutch_engagement(kilogram_square_metres(4), rpm(540), newton_metres(600), newton_metres(load));
    CHECK(!slip.locks);
    CHECK(slip.time.value() == infinity);
    CHECK(slip.heat.value() == infinity);
  }
  const ClutchEngagement driven = free_clutch_engagement(kilogram_square_metres(4), rpm(540), kilogram_square_metres(4),
                                                         rpm(0), newton_metres(100), newton_metres(300));
  CHECK(!driven.locks);
  CHECK(clutch_engagement(kilogram_square_metres(4), rpm(0), newton_metres(600), newton_metres(700)).time ==
        seconds(0));
  CHECK(clutch_engagement(kilogram_square_metres(0), rpm(540), newton_metres(600), newton_metres(0)).heat == joules(0));
}

TEST_CASE("impossible engagements are refused") {
  CHECK_THROWS_AS(clutch_engagement(kilogram_square_metres(-1), rpm(540), newton_metres(600), newton_metres(0)),
                  InputError);
  CHECK_THROWS_AS(clutch_engagement(kilogram_square_metres(1), rpm(540), newton_metres(0), newton_metres(0)),
                  InputError);
  CHECK_THROWS_AS(clutch_engagement(kilogram_square_metres(1), rpm(540), newton_metres(1), newton_metres(not_a_number)),
                  InputError);
  CHECK_THROWS_AS(free_clutch_engagement(kilogram_square_metres(1), rpm(100), kilogram_square_metres(1), rpm(200),
                                         newton_metres(1)),
                  InputError);
  CHECK_THROWS_AS(clutch_temperature_rise(joules(1), kilograms(0)), InputError);
  CHECK_THROWS_AS(clutch_temperature_rise(joules(infinity), kilograms(5)), InputError);
  CHECK(slip_time_for_rise(newton_metres(600), rpm(0), kilograms(5), kelvins(150)).value() == infinity);
}

TEST_CASE("a shear bolt of a grade goes over a wide band of torque") {
  const BoltGrade* grade = find_bolt_grade("8.8", millimetres(8));
  REQUIRE(grade != nullptr);
  const TorqueBand band = shear_bolt_band(millimetres(8), millimetres(75), *grade, 1, 1);
  CHECK_CLOSE(band.low.value(), 0.577 * 800e6 * pi / 4 * 64e-6 * 0.075, 1e-14);
  CHECK_CLOSE(band.high.value(), 0.8 * 1030e6 * pi / 4 * 64e-6 * 0.075, 1e-14);
  CHECK(band.high > 1.7 * band.low);
  CHECK_THROWS_AS(shear_bolt_band(millimetres(8), millimetres(75), megapascals(900), megapascals(800), 1, 1),
                  InputError);
  CHECK_THROWS_AS(shear_bolt_band(millimetres(8), millimetres(75), megapascals(700), megapascals(800), 1, 1, 0.8, 0.6),
                  InputError);
  CHECK_THROWS_AS(shear_bolt_torque(millimetres(8), millimetres(75), megapascals(480), 0, 1), InputError);
  CHECK_THROWS_AS(shear_bolt_torque(millimetres(8), millimetres(75), megapascals(480), 1, 0), InputError);
  CHECK_THROWS_AS(shear_bolt_torque(millimetres(8), millimetres(0), megapascals(480), 1, 1), InputError);
}

TEST_CASE("a harder bolt of the same size is no replacement") {
  const BoltGrade* soft = find_bolt_grade("8.8", millimetres(8));
  const BoltGrade* hard = find_bolt_grade("12.9", millimetres(8));
  REQUIRE((soft != nullptr && hard != nullptr));
  const Torque soft_low = shear_bolt_band(millimetres(8), millimetres(75), *soft, 1, 1).low;
  CHECK(shear_bolt_band(millimetres(8), millimetres(75), *hard, 1, 1).low > 1.5 * soft_low);
}

TEST_CASE("the thread in the shear plane lowers the torque by a quarter") {
  const Length pitch = coarse_pitch(ThreadSystem::iso_metric, millimetres(8)).value();
  CHECK(pitch == millimetres(1.25));
  const Length core = thread_stress_diameter(millimetres(8), pitch);
  const auto torque = [](Length d) { return shear_bolt_torque(d, millimetres(75), megapascals(480), 1, 1); };
  CHECK_CLOSE(torque(core) / torque(millimetres(8)), 36.608 / 50.265, 1e-4);
  CHECK(!coarse_pitch(ThreadSystem::iso_metric, millimetres(9)).known());
  CHECK(!coarse_pitch(ThreadSystem::unified_inch, millimetres(8)).known());
  CHECK(coarse_pitch(ThreadSystem::unified_inch, inches(0.5)).value() == inches(1.0 / 13.0));
  CHECK(coarse_pitch(ThreadSystem::iso_metric, millimetres(16)).source().standing == Standing::from_memory);
  for (const CoarsePitch& row : coarse_pitches()) {
    CHECK(thread_stress_diameter(row.diameter, row.pitch, row.system) > 0.75 * row.diameter);
  }
  CHECK_THROWS_AS(thread_stress_diameter(millimetres(8), millimetres(0)), InputError);
  CHECK_THROWS_AS(thread_stress_diameter(millimetres(8), millimetres(5)), InputError);
}

TEST_CASE("the window between work and the weakest part, referred through the gears") {
  const std::vector<ChainPart> parts = {{"PTO shaft", newton_metres(2560), 1.0},
                                        {"gearbox input", newton_metres(2000), 1.0, 0.95},
                                        {"blade shaft", newton_metres(900), 1.926}};
  const DeviceWindow window = device_window(newton_metres(600), parts, 0.15, 1.2, 1.25);
  CHECK(window.open());
  CHECK(window.weakest == 2);
  CHECK(window.weakest_name == "blade shaft");
  CHECK_CLOSE(window.weakest_torque.value(), 900 * 1.926, 1e-14);
  CHECK_CLOSE(window.lowest.value(), 600 * 1.2 / 0.85, 1e-14);
  CHECK_CLOSE(window.highest.value(), 900 * 1.926 / (1.25 * 1.15), 1e-14);
  CHECK(window.holds(newton_metres(1000)));
  CHECK(!window.holds(newton_metres(800)));
  CHECK(!window.holds(newton_metres(1300)));
  CHECK(!window.holds(newton_metres(not_a_number)));
  CHECK(torque_band(window.lowest, 0.15).low >= newton_metres(600 * 1.2 * (1 - 1e-14)));
}

TEST_CASE("a closed window says what closes it") {
  const auto state = [](double peak, double scatter, double margin) {
    const std::vector<ChainPart> parts = {{"PTO shaft", newton_metres(1000), 1.0}};
    return device_window(newton_metres(peak), parts, scatter, margin, margin).state;
  };
  CHECK(state(500, 0.1, 1.2) == WindowState::open);
  CHECK(state(700, 0.1, 1.2) == WindowState::closed_by_margins);
  CHECK(state(850, 0.1, 1.2) == WindowState::closed_by_scatter);
  CHECK(state(1001, 0.1, 1.2) == WindowState::closed_by_part);
  CHECK(state(1001, 0.0, 1.0) == WindowState::closed_by_part);
  CHECK(state(1000, 0.0, 1.0) == WindowState::open);
}

TEST_CASE("a shear bolt in the window: its band must fit between work and the weakest part") {
  const TorqueBand bolt =
      shear_bolt_band(millimetres(6), millimetres(75), *find_bolt_grade("8.8", millimetres(6)), 1, 1);
  const DeviceSetting setting = device_setting(bolt.low, bolt.high);
  const auto window = [&](double weakest) {
    const std::vector<ChainPart> parts = {{"yoke", newton_metres(weakest), 1.0}};
    return device_window(0.9 * bolt.low, parts, setting.scatter, 1.0, 1.0);
  };
  CHECK(window(1.01 * bolt.high.value()).holds(setting.nominal));
  CHECK(!window(0.99 * bolt.high.value()).holds(setting.nominal));
}

TEST_CASE("impossible windows are refused") {
  const std::vector<ChainPart> parts = {{"PTO shaft", newton_metres(1000), 1.0}};
  CHECK_THROWS_WITH_AS(device_window(newton_metres(100), std::vector<ChainPart>{}, 0.1, 1.0, 1.0),
                       "device_window: parts = none; allowed: at least one part", InputError);
  CHECK_THROWS_AS(device_window(newton_metres(100), parts, 1.0, 1.0, 1.0), InputError);
  CHECK_THROWS_AS(device_window(newton_metres(100), parts, -0.1, 1.0, 1.0), InputError);
  CHECK_THROWS_AS(device_window(newton_metres(100), parts, 0.1, 0.9, 1.0), InputError);
  CHECK_THROWS_AS(device_window(newton_metres(100), parts, 0.1, 1.0, not_a_number), InputError);
  CHECK_THROWS_AS(device_window(newton_metres(-1), parts, 0.1, 1.0, 1.0), InputError);
  CHECK_THROWS_AS(device_window(newton_metres(1), {{"unknown", newton_metres(not_a_number), 1.0}}, 0.1, 1.0, 1.0),
                  InputError);
  CHECK_THROWS_AS(device_window(newton_metres(1), {{"a", newton_metres(1), 0.0}}, 0.1, 1.0, 1.0), InputError);
  CHECK_THROWS_AS(device_window(newton_metres(1), {{"a", newton_metres(1), 1.0, 1.1}}, 0.1, 1.0, 1.0), InputError);
  CHECK_THROWS_AS(device_setting(newton_metres(2), newton_metres(1)), InputError);
  CHECK_THROWS_AS(device_setting(newton_metres(0), newton_metres(0)), InputError);
}

TEST_CASE("behind an overrunning clutch the rotor runs on, drag shortens it") {
  const auto coast = [](double drag) {
    return overrun_coast(kilogram_square_metres(4), rpm(1040), newton_metres(5), newton_metres(20),
                         newton_metres(drag));
  };
  CHECK(coast(0).time == run_down_time(kilogram_square_metres(4), rpm(1040), newton_metres(5), newton_metres(20)));
  CHECK(coast(2).time < coast(0).time);
  CHECK(coast(2).energy == coast(0).energy);
  CHECK_THROWS_AS(coast(-1), InputError);
}

TEST_CASE("settings in practice are never called a standard") {
  for (const SettingPractice& practice : setting_practices) {
    const bool weak =
        practice.source.standing == Standing::common_practice || practice.source.standing == Standing::from_memory;
    CHECK(weak);
    CHECK(practice.low <= practice.high);
    CHECK(practice.low > 1.0);
    const TorqueBand band = practice_band(practice, newton_metres(400));
    CHECK(band.low == practice.low * newton_metres(400));
    CHECK(band.high == practice.high * newton_metres(400));
  }
  CHECK(least_cut_out_share.source.standing == Standing::from_memory);
  CHECK(setting_standards.standing == Standing::published);
  CHECK_THROWS_AS(practice_band(setting_practices[0], newton_metres(-1)), InputError);
  CHECK_THROWS_AS(cut_out_torque(newton_metres(100), 0.3, 0.2), InputError);
}
