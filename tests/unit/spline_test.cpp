#include <fieldshaft/rotor.hpp>
#include <fieldshaft/spline.hpp>

#include "close.hpp"

#include <array>

#include <limits>

using namespace fieldshaft;

namespace {
constexpr double nan_value = std::numeric_limits<double>::quiet_NaN();
const StraightSpline eight(8, millimetres(60), millimetres(52), millimetres(10), millimetres(100));
const InvoluteSpline twenty_one(21, inches(1.0 / 16.0), degrees(30), inches(2));
constexpr SplineLimits limits_of_test{megapascals(200), megapascals(150), megapascals(20)};
constexpr SplineSizes measured_sizes{6,
                                     millimetres(35),
                                     millimetres(29),
                                     millimetres(32),
                                     millimetres(8.7),
                                     millimetres(2.5),
                                     millimetres(60),
                                     millimetres(35.2),
                                     degrees(16)};
constexpr Spline measured(measured_sizes);

template <class F> SplineSizes changed(F change) {
  SplineSizes sizes = measured_sizes;
  change(sizes);
  return sizes;
}
} // namespace

static_assert(text::tooth_shear(12.0, 2.0, 3.0, 1.0, 2.0) == 4.0);
static_assert(text::flank_pressure(12.0, 2.0, 3.0, 1.0, 2.0) == 2.0);
static_assert(text::slide_force(30.0, 2.0, 0.1, 0.5) == 6.0);
static_assert(text::din_5480_shift(120.0, 2.0, 50.0) == 8.9);
static_assert(text::sleeve_tooth_bend(6.0, 2.0, 1.0, 1.5) == 4.0);
static_assert(measured.teeth() == 6);
static_assert(spline_stress(measured, newton_metres(0)).tooth_shear == Stress{});
static_assert(seat_divisor(SplineSeat::fixed) == 9.0 && seat_divisor(SplineSeat::sliding_unloaded) == 3.0);
static_assert(seat_divisor(SplineSeat::flexible) == 1.0 && seat_divisor(SplineSeat::sliding_under_load) == 1.0);
static_assert(application_factor(DriveShock::medium, LoadShock::heavy).value == 2.8);
static_assert(!spline_limits(SplineSteel::through_hardened_c42_46).known());
static_assert(spline_limits(SplineSteel::brinell_302_351).value().flank_pressure == ksi(3));
static_assert(spline_limits(SplineSteel::brinell_302_351, true).value().flank_pressure == ksi(12));
static_assert(spline_limits(SplineSteel::brinell_302_351).source().standing == Standing::quoted);

TEST_CASE("a spline that cannot be is refused when it is made") {
  CHECK_THROWS_WITH_AS(StraightSpline(2, millimetres(60), millimetres(52), millimetres(10), millimetres(100)),
                       "StraightSpline: count = 2; allowed: a finite number, at least 3", InputError);
  CHECK_THROWS_WITH_AS(StraightSpline(8, millimetres(52), millimetres(60), millimetres(10), millimetres(100)),
                       "StraightSpline: minor_diameter = 0.06 m; allowed: from 0 m to 0.052 m, both excluded",
                       InputError);
  CHECK_THROWS_AS(StraightSpline(8, millimetres(60), millimetres(60), millimetres(10), millimetres(100)), InputError);
  CHECK_THROWS_AS(StraightSpline(8, millimetres(60), millimetres(52), millimetres(20), millimetres(100)),
                  InputError); // no space left between teeth
  CHECK_THROWS_AS(StraightSpline(8, millimetres(60), millimetres(52), millimetres(0), millimetres(100)), InputError);
  CHECK_THROWS_AS(StraightSpline(8, millimetres(60), millimetres(52), millimetres(10), millimetres(0)), InputError);
  CHECK_THROWS_AS(StraightSpline(8, millimetres(60), millimetres(52), millimetres(10), millimetres(nan_value)),
                  InputError);
  CHECK_THROWS_AS(StraightSpline(8, millimetres(nan_value), millimetres(52), millimetres(10), millimetres(100)),
                  InputError);
  CHECK_THROWS_AS(InvoluteSpline(2, millimetres(1), degrees(30), millimetres(20)), InputError);
  CHECK_THROWS_AS(InvoluteSpline(20, millimetres(0), degrees(30), millimetres(20)), InputError);
  CHECK_THROWS_AS(InvoluteSpline(20, millimetres(nan_value), degrees(30), millimetres(20)), InputError);
  CHECK_THROWS_AS(InvoluteSpline(20, millimetres(1), degrees(30), millimetres(0)), InputError);
  CHECK_THROWS_WITH_AS(InvoluteSpline(20, millimetres(1), degrees(20), millimetres(20)),
                       "ansi_b92_1_geometry: pressure_angle = 20 °; allowed: 30°, 37.5° or 45°", InputError);
  CHECK_THROWS_AS(InvoluteSpline(20, millimetres(1), degrees(nan_value), millimetres(20)), InputError);
  CHECK_THROWS_AS(InvoluteSpline(20, millimetres(1), degrees(45), millimetres(20), SplineRoot::flat), InputError);
  CHECK_THROWS_AS(involute_spline(20, per_inch(0), degrees(30), millimetres(20)), InputError);
  CHECK_THROWS_AS(sae_spline(5, SplineFit::a_permanent, millimetres(60), millimetres(20)), InputError);
  CHECK_THROWS_AS(sae_spline(4, SplineFit::c_slides_loaded, millimetres(60), millimetres(20)), InputError);
  CHECK_THROWS_AS(sae_spline(6, SplineFit::a_permanent, millimetres(nan_value), millimetres(20)), InputError);
  CHECK_THROWS_AS(din_5480_shift(millimetres(120), millimetres(3), 2), InputError);
  CHECK_THROWS_AS(din_5480_geometry(millimetres(120), millimetres(0), 38), InputError);
  CHECK_THROWS_WITH_AS(din_5480_geometry(millimetres(120), millimetres(3), 38, static_cast<SplineCutting>(4)),
                       doctest::Contains("din_5480_geometry: cutting = 4"), InputError);
}

TEST_CASE("a measured spline is checked size by size") {
  CHECK_THROWS_AS(Spline(changed([](SplineSizes& s) { s.teeth = 2; })), InputError);
  CHECK_THROWS_AS(Spline(changed([](SplineSizes& s) { s.root_diameter = millimetres(36); })), InputError);
  CHECK_THROWS_AS(Spline(changed([](SplineSizes& s) { s.bearing_diameter = millimetres(28); })), InputError);
  CHECK_THROWS_AS(Spline(changed([](SplineSizes& s) { s.tooth_thickness = millimetres(17); })), InputError);
  CHECK_THROWS_AS(Spline(changed([](SplineSizes& s) { s.engaged_height = millimetres(3.1); })), InputError);
  CHECK_THROWS_AS(Spline(changed([](SplineSizes& s) { s.length = millimetres(0); })), InputError);
  CHECK_THROWS_AS(Spline(changed([](SplineSizes& s) { s.sleeve_root = millimetres(34); })), InputError);
  CHECK_THROWS_AS(Spline(changed([](SplineSizes& s) { s.flank_angle = degrees(90); })), InputError);
}

TEST_CASE("stresses refuse what cannot be") {
  SplineFactors bad;
  bad.wear = 0.0;
  CHECK_THROWS_AS(spline_stress(eight, newton_metres(-1)), InputError);
  CHECK_THROWS_AS(spline_stress(eight, newton_metres(nan_value)), InputError);
  CHECK_THROWS_AS(spline_stress(eight, newton_metres(1), bad), InputError);
  CHECK_THROWS_AS(spline_stress(eight, newton_metres(1), {}, SplineSeat::flexible, millimetres(52)), InputError);
  CHECK_THROWS_AS(spline_stress(eight, newton_metres(1), {}, SplineSeat::flexible, millimetres(-1)), InputError);
  CHECK_THROWS_AS(seat_divisor(static_cast<SplineSeat>(7)), InputError);
  CHECK_THROWS_AS(spline_torque_capacity(eight, {}), InputError);
  CHECK_THROWS_AS(spline_length_for_torque(eight, newton_metres(0), limits_of_test), InputError);
  CHECK_THROWS_AS(spline_size_for_torque(eight, newton_metres(0), limits_of_test), InputError);
  CHECK_THROWS_AS(spline_power_capacity(eight, limits_of_test, rpm(-1)), InputError);
  CHECK_THROWS_AS(scaled_spline(eight, 0.0), InputError);
  CHECK_THROWS_AS(sleeve_stress(eight, newton_metres(1), millimetres(60)), InputError);
  CHECK_THROWS_AS(sleeve_stress(eight, newton_metres(1), millimetres(nan_value)), InputError);
  CHECK_THROWS_AS(sleeve_stress(eight, newton_metres(1), millimetres(80), rpm(-1)), InputError);
  CHECK_THROWS_AS(sleeve_stress(eight, newton_metres(1), millimetres(80), rpm(1), {}, 0.0), InputError);
  CHECK_THROWS_AS(slide_force(newton_metres(1), millimetres(56), 1.1), InputError);
  CHECK_THROWS_AS(slide_force(newton_metres(1), millimetres(0), 0.1), InputError);
  CHECK_THROWS_AS(slide_force(eight, newton_metres(nan_value), 0.1), InputError);
  CHECK_THROWS_AS(telescope_thrust(newtons(-1), degrees(1), degrees(1)), InputError);
  CHECK_THROWS_AS(telescope_thrust(newtons(1), degrees(90), degrees(1)), InputError);
  CHECK_THROWS_AS(groove_width(millimetres(30), millimetres(30), millimetres(5)), InputError);
  CHECK_THROWS_AS(engaged_length(millimetres(10), millimetres(80), millimetres(10)), InputError);
}

TEST_CASE("with every factor at one: all teeth press, half of them shear, the root twists") {
  const Torque torque = newton_metres(1000);
  const SplineStress stress = spline_stress(eight, torque);
  const double mean_radius = 0.25 * (60.0 + 52.0) * 1e-3;
  CHECK_CLOSE(stress.flank_pressure.value(), 1000.0 / (8 * mean_radius * 0.004 * 0.1), 1e-14);
  CHECK_CLOSE(stress.tooth_shear.value(), 1000.0 / (4 * mean_radius * 0.010 * 0.1), 1e-14);
  CHECK_CLOSE(stress.root_torsion.value(), 16.0 * 1000.0 / (pi * std::pow(0.052, 3)), 1e-14);
  const SplineStress bored = spline_stress(eight, torque, {}, SplineSeat::flexible, millimetres(26));
  CHECK_CLOSE(bored.root_torsion.value(), 16.0 * 1000.0 * 0.052 / (pi * (std::pow(0.052, 4) - std::pow(0.026, 4))),
              1e-13);
  CHECK(bored.flank_pressure == stress.flank_pressure);
}

TEST_CASE("each factor works on the stresses that it belongs to") {
  const Torque torque = newton_metres(1000);
  const SplineStress nominal = spline_stress(eight, torque);
  const auto ratio = [&](const SplineFactors& factors, SplineSeat seat) {
    const SplineStress s = spline_stress(eight, torque, factors, seat);
    return std::array<double, 3>{s.root_torsion / nominal.root_torsion, s.tooth_shear / nominal.tooth_shear,
                                 s.flank_pressure / nominal.flank_pressure};
  };
  const auto check = [](const std::array<double, 3>& actual, double root, double shear, double flank) {
    CHECK_CLOSE(actual[0], root, 1e-14);
    CHECK_CLOSE(actual[1], shear, 1e-14);
    CHECK_CLOSE(actual[2], flank, 1e-14);
  };
  check(ratio({2.0, 1.0, 1.0, 1.0}, SplineSeat::flexible), 2.0, 2.0, 2.0);
  check(ratio({1.0, 1.5, 1.0, 1.0}, SplineSeat::flexible), 1.0, 1.5, 1.5);
  check(ratio({1.0, 1.0, 0.5, 1.0}, SplineSeat::flexible), 2.0, 2.0, 1.0);
  check(ratio({1.0, 1.0, 1.0, 0.7}, SplineSeat::flexible), 1.0, 1.0, 1.0 / 0.7);
  check(ratio({1.0, 1.0, 1.0, 0.7}, SplineSeat::sliding_under_load), 1.0, 1.0, 1.0 / 0.7);
  check(ratio({1.0, 1.0, 1.0, 0.7}, SplineSeat::sliding_unloaded), 1.0, 1.0, 1.0 / 2.1);
  check(ratio({1.0, 1.0, 0.5, 0.7}, SplineSeat::fixed), 2.0, 2.0, 1.0 / 4.5); // a fixed flank tires, it does not wear
}

TEST_CASE("involute sizes at the other angles, and the fillet root by pitch") {
  const Length inch = inches(1);
  const InvoluteGeometry deg37 = ansi_b92_1_geometry(20, inch, degrees(37.5));
  CHECK_CLOSE(in(deg37.shaft_minor, unit::inch), 18.7, 1e-14);
  CHECK_CLOSE(in(deg37.hub_major, unit::inch), 21.6, 1e-14);
  CHECK_CLOSE(in(deg37.hub_minor, unit::inch), 19.2, 1e-14);
  CHECK_CLOSE(in(deg37.tooth_thickness, unit::inch), 0.5 * pi + 0.1, 1e-14);
  const InvoluteGeometry deg45 = ansi_b92_1_geometry(20, inch, degrees(45));
  CHECK_CLOSE(in(deg45.shaft_minor, unit::inch), 19.0, 1e-14);
  CHECK_CLOSE(in(deg45.hub_major, unit::inch), 21.4, 1e-14);
  CHECK_CLOSE(in(ansi_b92_1_geometry(20, inch, degrees(30), SplineRoot::fillet).shaft_minor, unit::inch), 18.2, 1e-14);
  const auto fillet_depth = [](double pitch) {
    const InvoluteSpline spline = involute_spline(30, per_inch(pitch), degrees(30), inches(1), SplineRoot::fillet);
    return 30.0 - in(spline.root_diameter(), unit::inch) * pitch;
  };
  CHECK_CLOSE(fillet_depth(2.5), 1.8, 1e-12);
  CHECK_CLOSE(fillet_depth(12), 1.8, 1e-12);
  CHECK_CLOSE(fillet_depth(16), 2.0, 1e-12);
  CHECK_CLOSE(fillet_depth(48), 2.0, 1e-12);
  CHECK_CLOSE(fillet_depth(14), 2.0, 1e-12); // not a pitch of the standard: the deeper root
  const auto metric = [](double angle, SplineRoot root) {
    return iso_4156_geometry(20, millimetres(1), degrees(angle), root);
  };
  CHECK_CLOSE(in(metric(37.5, SplineRoot::usual).shaft_minor, unit::millimetre), 18.6, 1e-14);
  CHECK_CLOSE(in(metric(37.5, SplineRoot::usual).shaft_major, unit::millimetre), 20.9, 1e-14);
  CHECK_CLOSE(in(metric(45, SplineRoot::fillet).shaft_minor, unit::millimetre), 18.8, 1e-14);
  CHECK_CLOSE(in(metric(45, SplineRoot::fillet).shaft_major, unit::millimetre), 20.8, 1e-14);
  CHECK_CLOSE(in(metric(30, SplineRoot::flat).engaged_height, unit::millimetre), 0.9, 1e-14);
  CHECK_CLOSE(in(metric(30, SplineRoot::fillet).engaged_height, unit::millimetre), 1.0, 1e-14);
  CHECK_THROWS_AS(metric(37.5, SplineRoot::flat), InputError);
  CHECK_THROWS_AS(metric(20, SplineRoot::flat), InputError);
  // The spline takes its sizes from the geometry.
  const InvoluteSpline din(din_5480_geometry(millimetres(120), millimetres(3), 38), millimetres(50));
  CHECK_CLOSE(in(din.root_diameter(), unit::millimetre), 113.1, 1e-12);
  CHECK_CLOSE(in(din.sleeve_root(), unit::millimetre), 120.0, 1e-12);
  CHECK_CLOSE(in(din.engaged_height(), unit::millimetre), 2.7, 1e-12);
  CHECK(din_5480_geometry(millimetres(120), millimetres(3), 38, SplineCutting::rolled).shaft_minor <
        din.geometry().shaft_minor);
}

TEST_CASE("the fractions of the SAE rule know their source") {
  CHECK(sae_fractions(6, SplineFit::a_permanent).source.standing == Standing::published);
  CHECK(is_remembered(sae_fractions(10, SplineFit::a_permanent).source.standing));
  CHECK(sae_fractions(16, SplineFit::c_slides_loaded).value.width == 0.098);
  CHECK_THROWS_AS(sae_fractions(6, static_cast<SplineFit>(3)), InputError);
  CHECK_THROWS_WITH_AS(InvoluteSpline(21, millimetres(2), degrees(30), millimetres(50), static_cast<SplineRoot>(9)),
                       doctest::Contains("root = 9"), InputError);
  CHECK_THROWS_WITH_AS(Spline(changed([](SplineSizes& s) { s.engaged_height = Length{}; })),
                       doctest::Contains("engaged_height = 0 m; allowed: a finite number above 0 m"), InputError);
}

// Rows of a public source file that restates Dudley's equations, in plain numbers: 4 is twice the force on half of the
// teeth, 2 the force on all.
TEST_CASE("the bare equations against a published restatement") {
  CHECK_CLOSE(text::round_stress(2.0, 3.0, 0.0), 0.37725616, 2e-8);
  CHECK_CLOSE(text::round_stress(2.0, 3.0, 2.0 / 3.0), 0.470119, 5e-7);
  CHECK_CLOSE(3.0 * text::tooth_shear(2.0, 5.0, 7.0, 11.0, 13.0), 0.004795205, 1e-7);
  CHECK_CLOSE(3.0 * text::flank_pressure(2.0, 5.0, 7.0, 11.0, 13.0), 0.002397602, 2e-7);
  CHECK_CLOSE(text::sleeve_radial(2.0, std::tan(3.0), 5.0, 7.0, 11.0), -2.35709e-4, 2e-6);
  CHECK_CLOSE(text::sleeve_tooth_bend(2.0, 3.0, 5.0, 7.0), 0.025396825, 2e-8);
  const Stress spin = text::sleeve_spin(detail::sleeve_spin, rpm(2), metres(3), metres(5));
  CHECK_CLOSE(spin.value(), 1012.2969, 5e-8);
}

TEST_CASE("capacity: the least of three, how far ahead it is, and what mends it") {
  const SplineCapacity capacity = spline_torque_capacity(eight, limits_of_test);
  CHECK(capacity.governing == SplineMode::flank_pressure);
  CHECK(capacity.torque == capacity.flank_pressure);
  CHECK_CLOSE(capacity.torque.value(), 20e6 * 8 * 0.028 * 0.004 * 0.1, 1e-13);
  CHECK_CLOSE(capacity.lead, std::fmin(capacity.root_torsion.value(), capacity.tooth_shear.value()) / 1792.0, 1e-13);
  CHECK(spline_torque_capacity(eight, limits_of_test, {}, SplineSeat::fixed).governing == SplineMode::root_torsion);
  const SplineLimits weak_teeth{megapascals(200), megapascals(1), megapascals(200)};
  CHECK(spline_torque_capacity(eight, weak_teeth).governing == SplineMode::tooth_shear);
  CHECK_CLOSE(spline_power_capacity(eight, limits_of_test, rpm(540)).value(), 1792.0 * rpm(540).value(), 1e-13);
  const SplineLimits no_teeth{megapascals(200), Stress{}, megapascals(20)};
  const SplineLimits no_flanks{megapascals(200), megapascals(150), pascals(nan_value)};
  CHECK_THROWS_WITH_AS(spline_torque_capacity(eight, no_teeth), doctest::Contains("limits.tooth_shear = 0 Pa"),
                       InputError);
  CHECK_THROWS_WITH_AS(spline_torque_capacity(eight, no_flanks), doctest::Contains("limits.flank_pressure = nan Pa"),
                       InputError);
  const auto longer = spline_length_for_torque(eight, newton_metres(3584), limits_of_test);
  REQUIRE(longer.valid());
  CHECK_CLOSE(in(longer.value, unit::millimetre), 200.0, 1e-12);
  CHECK_FALSE(spline_length_for_torque(eight, newton_metres(6000), limits_of_test).valid()); // the root gives way
  const SplineSize grown = spline_size_for_torque(eight, newton_metres(3584), limits_of_test, true);
  CHECK_CLOSE(grown.scale, std::cbrt(2.0), 1e-13);
  CHECK_CLOSE(in(grown.major_diameter, unit::millimetre), 60.0 * std::cbrt(2.0), 1e-12);
  CHECK_CLOSE(spline_size_for_torque(eight, newton_metres(3584), limits_of_test).scale, std::sqrt(2.0), 1e-13);
}

TEST_CASE("tables are held at their ends, which is said where it is not safe") {
  CHECK(load_distribution_factor(0.0, inches(1)).value == 1.0);
  CHECK(load_distribution_factor(0.0, inches(0.1)).valid());
  CHECK_CLOSE(load_distribution_factor(0.003, inches(1)).value, 1.0 + 0.5 * std::log2(1.5), 1e-12);
  CHECK_FALSE(load_distribution_factor(0.009, inches(1)).valid());
  CHECK(load_distribution_factor(0.009, inches(1)).value == 2.0);
  CHECK_FALSE(load_distribution_factor(0.001, inches(4.1)).valid());
  CHECK(fatigue_life_factor(10).value == 1.8);
  CHECK_CLOSE(fatigue_life_factor(std::sqrt(10.0) * 1e5).value, std::sqrt(0.5 * 0.4), 1e-12);
  CHECK_FALSE(fatigue_life_factor(1.1e7).valid());
  CHECK_CLOSE(fatigue_life_factor(1e9, TorqueCycle::reversed).value, 0.2, 1e-15);
  CHECK(wear_life_factor(1).value == 4.0);
  CHECK_FALSE(wear_life_factor(2e10).valid());
  CHECK_CLOSE(wear_life_factor(2e10).value, 0.5, 1e-15);
  CHECK_THROWS_AS(load_distribution_factor(-0.001, inches(1)), InputError);
  CHECK_THROWS_AS(load_distribution_factor(0.001, inches(0)), InputError);
  CHECK_THROWS_AS(load_distribution_factor(nan_value, inches(1)), InputError);
  CHECK_THROWS_AS(fatigue_life_factor(0), InputError);
  CHECK_THROWS_AS(wear_life_factor(nan_value), InputError);
  CHECK_THROWS_AS(application_factor(static_cast<DriveShock>(3), LoadShock::heavy), InputError);
  CHECK_THROWS_WITH_AS(application_factor(DriveShock::medium, static_cast<LoadShock>(4)),
                       doctest::Contains("application_factor: load = 4"), InputError);
  CHECK_THROWS_AS(spline_allowables(static_cast<SplineSteel>(6)), InputError);
}

TEST_CASE("the allowables say what is disputed and what is not known") {
  const SplineAllowables steel = spline_allowables(SplineSteel::surface_hardened_c48_53);
  CHECK(steel.shear.value == ksi(40));
  CHECK(steel.shear.source.standing == Standing::quoted);
  CHECK(steel.tensile.value == ksi(45));
  CHECK(steel.tensile.source.text != steel.shear.source.text); // disputed: 45 or 50 ksi
  CHECK(steel.flank_straight.value() == ksi(4));
  const SplineAllowables through = spline_allowables(SplineSteel::through_hardened_c42_46);
  CHECK_FALSE(through.flank_straight.known());
  CHECK_FALSE(through.flank_crowned.known());
  CHECK_THROWS_AS(through.flank_crowned.value(), InputError);
}

// Two methods for a turning steel ring: the constant of the sleeve, and the disc of the rotor module.
TEST_CASE("a hub that only turns has the hoop stress of a ring") {
  const SleeveStress sleeve = sleeve_stress(twenty_one, newton_metres(0), inches(2), rpm(1000));
  CHECK(sleeve.radial == Stress{});
  CHECK(sleeve.tooth_bend == Stress{});
  CHECK(sleeve.tensile == sleeve.centrifugal);
  const Stress ring =
      disc_hoop_stress(0.5 * twenty_one.sleeve_root(), inches(1), rpm(1000), kilograms_per_cubic_metre(7850), 0.3);
  CHECK_CLOSE(sleeve.centrifugal.value(), ring.value(), 4e-3);
  CHECK(sleeve.centrifugal < ring);
}

TEST_CASE("parallel flanks spread their hub by the angle they have to the radius") {
  CHECK_CLOSE(std::sin(eight.flank_angle().value()), 10.0 / 56.0, 1e-14);
  CHECK(sleeve_stress(eight, newton_metres(500), millimetres(80)).radial > Stress{});
  CHECK_CLOSE(slide_force(eight, newton_metres(500), 0.1).value(),
              0.1 * 500.0 / 0.028 / std::cos(eight.flank_angle().value()), 1e-14);
  CHECK_CLOSE(slide_force(twenty_one, newton_metres(500), 0.1) /
                  slide_force(newton_metres(500), twenty_one.bearing_diameter(), 0.1),
              2.0 / std::sqrt(3.0), 1e-14);
}

TEST_CASE("where the thrust of a telescope goes") {
  const TelescopeThrust thrust = telescope_thrust(newtons(5000), degrees(20), degrees(10));
  CHECK_CLOSE(thrust.front_axial.value(), 4698.46, 1e-6);
  CHECK_CLOSE(thrust.front_side.value(), 1710.10, 1e-6);
  CHECK_CLOSE(std::hypot(thrust.rear_axial.value(), thrust.rear_side.value()), 5000.0, 1e-14);
  CHECK(straight_tooth_misalignment.value < crowned_tooth_misalignment.value);
}

TEST_CASE("the length that touches") {
  CHECK_CLOSE(in(groove_width(millimetres(34.79), millimetres(29.4), millimetres(6.8)), unit::millimetre), 10.8423,
              1e-5);
  CHECK_CLOSE(in(groove_width(millimetres(40), millimetres(20), millimetres(5)), unit::millimetre), 10.0, 1e-14);
  CHECK_CLOSE(in(engaged_length(millimetres(70), millimetres(76), millimetres(10.84)), unit::millimetre), 59.16, 1e-13);
  CHECK(engaged_length(millimetres(90), millimetres(76)) == millimetres(76));
}

TEST_CASE("the stub of a PTO type takes the worse of its sources, and is nothing where they are silent") {
  const auto one = stub_spline(pto_type(1));
  REQUIRE(one.has_value());
  CHECK_CLOSE(in(one->value.root_diameter(), unit::millimetre), 28.86, 1e-12);
  CHECK_CLOSE(in(one->value.engaged_height(), unit::millimetre), 0.5 * (34.73 - 29.68625), 1e-12);
  CHECK_CLOSE(in(one->value.length(), unit::millimetre), 64.731, 1e-5);
  CHECK(is_remembered(one->source.standing));
  // Neither source alone is worse in any stress.
  const Torque torque = newton_metres(849);
  const SplineStress stub = spline_stress(one->value, torque);
  const StraightSpline rule = sae_spline(6, SplineFit::b_slides_unloaded, inches(1.375), one->value.length());
  const StraightSpline standard(6, millimetres(34.79), millimetres(28.91), millimetres(8.69), one->value.length());
  for (const Spline& other : {Spline(rule), Spline(standard)}) {
    const SplineStress stress = spline_stress(other, torque);
    CHECK(stub.root_torsion > stress.root_torsion);
    CHECK(stub.tooth_shear > stress.tooth_shear);
    CHECK(stub.flank_pressure > stress.flank_pressure);
  }
  const auto two = stub_spline(pto_type(2));
  REQUIRE(two.has_value());
  CHECK_CLOSE(in(two->value.root_diameter(), unit::millimetre), 30.1625, 1e-12);
  CHECK_CLOSE(in(two->value.engaged_height(), unit::millimetre), 0.9 * 1.5875, 1e-12);
  CHECK(stub_spline(pto_type(3)).has_value());
  CHECK_FALSE(stub_spline(pto_type(4)).has_value()); // its useful length is not known
  REQUIRE(stub_spline(pto_type(4), millimetres(80)).has_value());
  CHECK(stub_spline(pto_type(4), millimetres(80))->value.root_diameter() == millimetres(2.5) * (22.0 - 1.8));
  CHECK_FALSE(stub_spline(pto_type(0)).has_value());
  CHECK_FALSE(stub_spline(pto_type(0), millimetres(60)).has_value());
  CHECK_THROWS_AS(stub_spline(pto_type(1), millimetres(0)), InputError);
}
