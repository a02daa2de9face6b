#include <fieldshaft/shaft.hpp>

#include "close.hpp"

#include <array>
#include <limits>

using namespace fieldshaft;

namespace {
constexpr double nan_value = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr SolidSection solid_50(millimetres(50));
constexpr TubeSection tube_60(millimetres(60), millimetres(40));
constexpr Stress steel_g = gigapascals(79.3);
constexpr Stress steel_e = gigapascals(207);
constexpr Density steel_density = kilograms_per_cubic_metre(7850);
} // namespace

// Sections and torsion at compile time: numbers that come out even.
static_assert(text::round_torsion_constant(2.0, 0.0) == pi / 2.0);
static_assert(text::round_torsion_modulus(2.0, 0.0) == pi / 2.0);
static_assert(text::round_torsion_constant(4.0, 2.0) == pi / 32.0 * 240.0);
static_assert(text::round_plastic_modulus(2.0, 0.0) * 1.5 == pi);
static_assert(text::round_area(4.0, 2.0) == 3.0 * pi);
static_assert(text::torsion_stress(10.0, 4.0) == 2.5);
static_assert(text::torsion_torque(2.5, 4.0) == 10.0);
static_assert(text::twist_rate(12.0, 2.0, 3.0) == 2.0);
static_assert(text::torque_for_twist(2.0, 2.0, 3.0) == 12.0);
static_assert(text::profile_torsion_modulus(3.0, 0.5) == 3.0);
static_assert(text::profile_torsion_constant(3.0, 4.0) == 9.0);
static_assert(text::partly_plastic_torque(3.0, 1.0, 0.0, 1.0) * 2.0 == 3.0 * pi);
static_assert(torsion_stress(solid_50, newton_metres(0)).value() == 0.0);
static_assert(yield_torque(tube_60, megapascals(120)) > newton_metres(4084.06));
static_assert(yield_torque(tube_60, megapascals(120)) < newton_metres(4084.08));
static_assert(tube_60.wall() > millimetres(9.999) && tube_60.wall() < millimetres(10.001));
static_assert(solid_50.inner_diameter() == Length{});

TEST_CASE("a section that cannot be is refused when it is made") {
  CHECK_THROWS_WITH_AS(SolidSection(millimetres(0)), "SolidSection: diameter = 0 m; allowed: a finite number above 0 m",
                       InputError);
  CHECK_THROWS_AS(SolidSection(millimetres(nan_value)), InputError);
  CHECK_THROWS_AS(SolidSection(millimetres(-3)), InputError);
  CHECK_THROWS_AS(TubeSection(millimetres(50), millimetres(50)), InputError);
  CHECK_THROWS_AS(TubeSection(millimetres(50), millimetres(60)), InputError);
  CHECK_THROWS_AS(TubeSection(millimetres(50), millimetres(0)), InputError);
  CHECK_THROWS_AS(TubeSection(millimetres(infinite), millimetres(10)), InputError);
  CHECK_THROWS_AS(TubeSection(millimetres(50), millimetres(nan_value)), InputError);
  CHECK_THROWS_AS(RectangleSection(millimetres(0), millimetres(1)), InputError);
  CHECK_THROWS_AS(RectangleSection(millimetres(1), millimetres(nan_value)), InputError);
  CHECK_THROWS_AS(TriangleSection(millimetres(-1)), InputError);
  CHECK_THROWS_AS(OpenSection(std::vector<Wall>{}), InputError);
  CHECK_THROWS_AS(OpenSection(std::vector<Wall>{{millimetres(2), millimetres(3)}}), InputError);
}

TEST_CASE("a profile must be able to enclose its area and to hold its wall") {
  const Area area = square_millimetres(1296);
  CHECK_NOTHROW(ProfileSection(area, millimetres(144), millimetres(4)));
  CHECK_THROWS_AS(ProfileSection(area, millimetres(127), millimetres(4)), InputError); // a circle needs 127.6 mm
  CHECK_THROWS_AS(ProfileSection(area, millimetres(144), millimetres(-4)), InputError);
  CHECK_THROWS_AS(ProfileSection(area, millimetres(144), millimetres(0)), InputError);
  CHECK_THROWS_AS(ProfileSection(area, millimetres(144), millimetres(36.1)), InputError);
  CHECK_THROWS_AS(ProfileSection(square_millimetres(0), millimetres(144), millimetres(4)), InputError);
  CHECK_THROWS_AS(ProfileSection(area, millimetres(nan_value), millimetres(4)), InputError);
  CHECK_THROWS_AS(UnevenProfileSection(area, {}), InputError);
  CHECK_THROWS_AS(UnevenProfileSection(area, {{millimetres(60), millimetres(4)}, {millimetres(60), millimetres(4)}}),
                  InputError);
  CHECK_THROWS_AS(wall_stress(area, newton_metres(1), millimetres(0)), InputError);
}

TEST_CASE("torsion refuses what cannot be") {
  CHECK_THROWS_WITH_AS(torsion_stress(solid_50, newton_metres(-1)),
                       "torsion_stress: torque = -1 N·m; allowed: a finite number, at least 0 N·m", InputError);
  CHECK_THROWS_AS(torsion_stress(solid_50, newton_metres(nan_value)), InputError);
  CHECK_THROWS_AS(yield_torque(solid_50, megapascals(0)), InputError);
  CHECK_THROWS_AS(plastic_torque(solid_50, megapascals(-1)), InputError);
  CHECK_THROWS_AS(twist_rate(solid_50, newton_metres(1), gigapascals(0)), InputError);
  CHECK_THROWS_AS(twist_rate(solid_50, newton_metres(infinite), steel_g), InputError);
  CHECK_THROWS_AS(twist(solid_50, newton_metres(1), steel_g, metres(-1)), InputError);
  CHECK_THROWS_AS(torque_for_twist(solid_50, radians_per_metre(-1), steel_g), InputError);
  CHECK_THROWS_AS(torsion_stress_at(tube_60, newton_metres(1), millimetres(19)), InputError);
  CHECK_THROWS_AS(torsion_stress_at(tube_60, newton_metres(1), millimetres(31)), InputError);
  CHECK_THROWS_AS(diameter_for_torque(newton_metres(0), megapascals(1)), InputError);
  CHECK_THROWS_AS(diameter_for_torque(newton_metres(1), megapascals(1), 1.0), InputError);
  CHECK_THROWS_AS(diameter_for_twist(newton_metres(1), radians_per_metre(0), steel_g), InputError);
  CHECK_THROWS_AS(diameter_for_twist(newton_metres(1), radians_per_metre(1), steel_g, -0.1), InputError);
}

// Gere, Mechanics of Materials, Ex. 3.2, p. 197: hollow against solid, 1.14 times the diameter, 0.47 of the weight.
TEST_CASE("a hollow shaft for the same twist is a little thicker and half as heavy") {
  const TwistRate allowed = degrees_per_metre(0.75);
  const Length solid = diameter_for_twist(newton_metres(1200), allowed, gigapascals(78));
  const Length hollow = diameter_for_twist(newton_metres(1200), allowed, gigapascals(78), 0.8);
  CHECK_CLOSE(static_cast<double>(hollow / solid), 1.14, 1e-3);
  CHECK_CLOSE(static_cast<double>(TubeSection(hollow, 0.8 * hollow).area() / SolidSection(solid).area()), 0.47, 5e-3);
}

// Boresi & Schmidt, Ex. 6.8, p. 227. The book's table has k2 = 0.223 for b/h = 4/3, the series 0.22473: the printed
// 49.826 MPa are the table's. The printed twist is wrong; J = k1 b h^3 over 3 and 1.5 m, 77.5 GPa, gives 0.09942 rad.
TEST_CASE("rectangular bars: the series, and the three figures of a printed table") {
  const RectangleSection wide(millimetres(60), millimetres(40));
  const RectangleSection narrow(millimetres(30), millimetres(40)); // either side may come first
  CHECK_CLOSE(in(torsion_stress(wide, newton_metres(1150)), unit::megapascal), 51.858, 2e-4);
  CHECK_CLOSE(400.0 / (0.223 * 0.04 * 0.03 * 0.03) * 1e-6, 49.826, 1e-5);
  CHECK_CLOSE(in(torsion_stress(narrow, newton_metres(400)), unit::megapascal), 49.826, 8e-3);
  CHECK(torsion_stress(narrow, newton_metres(400)) < megapascals(49.45));
  const Stress g = gigapascals(77.5);
  CHECK_CLOSE(1150.0 * 3.0 / (77.5e9 * 0.196 * 0.06 * 0.000064) + 400.0 * 1.5 / (77.5e9 * 0.178 * 0.04 * 0.000027),
              0.09942, 1e-4);
  const SteppedShaft both = stepped_shaft({{wide, metres(3), newton_metres(1150), megapascals(1), g},
                                           {narrow, metres(1.5), newton_metres(400), megapascals(1), g}});
  CHECK_CLOSE(both.twist.value(), 0.09942, 5e-3);
  CHECK(both.weakest == 0);
  // Timoshenko's square: 4.81 T/a^3 and 7.10 T L/(a^4 G); long strip: one third.
  const RectangleSection square(metres(1), metres(1));
  CHECK_CLOSE(1.0 / square.torsion_modulus().value(), 4.81, 2e-3);
  CHECK_CLOSE(1.0 / square.torsion_constant().value(), 7.10, 2e-3);
  CHECK_CLOSE(square.plastic_modulus().value(), 1.0 / 3.0, 1e-15);
  CHECK_CLOSE(text::rectangle_factors(1e6).k1, 1.0 / 3.0, 1e-6);
  CHECK_CLOSE(text::rectangle_factors(1e6).k2, 1.0 / 3.0, 1e-6);
}

// Hibbeler, Ex. 5.10, p. 223. The printed 170 lbf·in rest on 46 T L/(a^4 G); the exact 80/sqrt(3) = 46.19 gives 169.0.
TEST_CASE("a triangular bar: exact, and the rounded constant of a printed table") {
  const TriangleSection bar(inches(1.5));
  CHECK_CLOSE(in(yield_torque(bar, ksi(8)), unit::pound_inch), 1350.0, 1e-12);
  CHECK_CLOSE(0.02 * 5.0625 * 3.7e6 / (46.0 * 48.0), 169.67, 3e-5);
  const TwistRate rate = as_twist_rate(0.02 / inches(48));
  CHECK_CLOSE(in(torque_for_twist(bar, rate, psi(3.7e6)), unit::pound_inch), 169.67, 5e-3);
  CHECK_CLOSE(in(torque_for_twist(bar, rate, psi(3.7e6)), unit::pound_inch), 168.98, 1e-4);
  CHECK_CLOSE(static_cast<double>(bar.plastic_modulus() / bar.torsion_modulus()), 5.0 / 3.0, 1e-15);
}

// Hibbeler, Ex. 5.12, p. 228: 60 x 40 mm outside. The printed 57 x 35 mm belong to 3 mm walls at the ends of the 60 mm
// and 5 mm walls along them; the other way round the middle line would be 55 x 37 mm.
TEST_CASE("a rectangular tube with two wall thicknesses") {
  const UnevenProfileSection tube(square_millimetres(57.0 * 35.0), {{millimetres(57), millimetres(5)},
                                                                    {millimetres(35), millimetres(3)},
                                                                    {millimetres(57), millimetres(5)},
                                                                    {millimetres(35), millimetres(3)}});
  const Stress g = gigapascals(38);
  CHECK_CLOSE(in(torsion_stress(tube, newton_metres(35)), unit::megapascal), 2.92398, 2e-6);
  const SteppedShaft shaft = stepped_shaft({{tube, metres(0.5), newton_metres(60), megapascals(90), g},
                                            {tube, metres(1.5), newton_metres(35), megapascals(90), g}});
  CHECK_CLOSE(shaft.twist.value(), 0.00629129, 1e-6);
  CHECK(shaft.weakest == 0);
  CHECK_CLOSE(shaft.safety_factor, 90.0 / (2.92398 * 60.0 / 35.0), 1e-5);
  CHECK(tube.plastic_modulus() == tube.torsion_modulus());
  CHECK_CLOSE(tube.area().value() * 1e6, 2.0 * (57 * 5 + 35 * 3), 1e-12);
}

// Boresi & Schmidt, Ex. 6.9 and section 6.7: what the formula of thin walls is off at a tenth of the mean diameter.
TEST_CASE("a thin round profile against the exact tube") {
  const TubeSection exact(millimetres(55), millimetres(45));
  const ProfileSection thin(Area::from_value(pi / 4.0 * 0.05 * 0.05), Length::from_value(pi * 0.05), millimetres(5));
  CHECK_CLOSE(static_cast<double>(thin.torsion_constant() / exact.torsion_constant()), 1.0 - 0.0099, 1e-4);
  CHECK_CLOSE(static_cast<double>(thin.plastic_modulus() / exact.plastic_modulus()), 1.0 - 0.0033, 1e-4);
  CHECK_CLOSE(static_cast<double>(exact.torsion_modulus() / thin.torsion_modulus()), 1.0 - 0.0818, 1e-4);
  CHECK_CLOSE(static_cast<double>(thin.area() / exact.area()), 1.0, 1e-14);
  CHECK(thin_profile(thin).valid());
  CHECK_FALSE(thin_profile(ProfileSection(thin.enclosed_area(), thin.perimeter(), millimetres(5.01))).valid());
  CHECK_FALSE(thin_profile(square_profile(millimetres(40), millimetres(4))).valid());
  // The same tube slit along its length keeps a fraction of its stiffness: 3 (D_m/t)^2/4... here 1 of 75.
  const OpenSection slit({{thin.perimeter(), millimetres(5)}});
  CHECK_CLOSE(static_cast<double>(thin.torsion_constant() / slit.torsion_constant()), 75.0, 1e-12);
  CHECK_CLOSE(static_cast<double>(thin.torsion_modulus() / slit.torsion_modulus()), 15.0, 1e-12);
}

TEST_CASE("square, stadium and rounded profiles have the area and perimeter of geometry") {
  const ShapedProfile sharp = square_profile(millimetres(40), millimetres(4));
  CHECK_CLOSE(sharp.enclosed_area().value() * 1e6, 1296.0, 1e-12);
  CHECK_CLOSE(sharp.perimeter().value() * 1e3, 144.0, 1e-12);
  CHECK_CLOSE(sharp.second_moment().value() * 1e12, (40.0 * 40 * 40 * 40 - 32.0 * 32 * 32 * 32) / 12.0, 1e-12);
  // Corners as round as they can be: a round tube.
  const ShapedProfile round = square_profile(millimetres(40), millimetres(2), millimetres(20));
  CHECK_CLOSE(round.enclosed_area().value() * 1e6, pi * 19 * 19, 1e-12);
  CHECK_CLOSE(round.perimeter().value() * 1e3, 2 * pi * 19, 1e-12);
  const TubeSection tube(millimetres(40), millimetres(36));
  CHECK_CLOSE(round.second_moment().value(), tube.second_moment().value(), 1e-12);
  // Two lobes of the radius of the inscribed circle: straight flanks.
  const ShapedProfile stadium =
      lobed_profile(2, millimetres(31), millimetres(11), millimetres(5.5), millimetres(1)); // middle line 5 and 10 mm
  CHECK_CLOSE(stadium.enclosed_area().value() * 1e6, pi * 25 + 20 * 10, 1e-9);
  CHECK_CLOSE(stadium.perimeter().value() * 1e3, 10 * pi + 40, 1e-9);
  CHECK_CLOSE(stadium.second_moment().value() * 1e12, pi * 125 + 40 * 25, 1e-9);
  // Four lobes whose flanks come out straight: the square with rounded corners.
  const double over = std::sqrt(2.0) * (19.0 - 5.0) + 5.0;
  const ShapedProfile four =
      lobed_profile(4, millimetres(2 * over + 2), millimetres(40), millimetres(6), millimetres(2));
  const ShapedProfile square = square_profile(millimetres(40), millimetres(2), millimetres(6));
  CHECK_CLOSE(four.enclosed_area().value(), square.enclosed_area().value(), 1e-12);
  CHECK_CLOSE(four.perimeter().value(), square.perimeter().value(), 1e-12);
  CHECK_CLOSE(four.second_moment().value(), square.second_moment().value(), 3e-3); // a line against a wall of 2 mm
}

TEST_CASE("the examples of profiles, and how much a wrong tip radius matters") {
  const auto two = [](double tip) {
    return lobed_profile(2, millimetres(40), millimetres(32), millimetres(tip), millimetres(3));
  };
  CHECK_CLOSE(two(8).enclosed_area().value() * 1e6, 807.712, 1e-6);
  CHECK_CLOSE(two(8).perimeter().value() * 1e3, 101.993, 5e-6);
  CHECK_CLOSE(static_cast<double>(two(9.6).torsion_modulus() / two(8).torsion_modulus()), 1.0064, 1e-4);
  const auto three = [](double tip) {
    return lobed_profile(3, millimetres(54), millimetres(36), millimetres(tip), millimetres(4));
  };
  CHECK_CLOSE(static_cast<double>(three(9.6).torsion_modulus() / three(8).torsion_modulus()), 1.0301, 1e-4);
}

TEST_CASE("profiles that cannot be drawn are refused") {
  CHECK_THROWS_AS(lobed_profile(1, millimetres(54), millimetres(36), millimetres(8), millimetres(4)), InputError);
  CHECK_THROWS_AS(lobed_profile(13, millimetres(54), millimetres(36), millimetres(8), millimetres(4)), InputError);
  CHECK_THROWS_AS(lobed_profile(3, millimetres(36), millimetres(36), millimetres(8), millimetres(4)), InputError);
  CHECK_THROWS_AS(lobed_profile(3, millimetres(54), millimetres(4), millimetres(8), millimetres(4)), InputError);
  CHECK_THROWS_AS(lobed_profile(3, millimetres(54), millimetres(36), millimetres(2), millimetres(4)), InputError);
  CHECK_THROWS_AS(lobed_profile(3, millimetres(54), millimetres(36), millimetres(27), millimetres(4)), InputError);
  // Twelve tips of this radius would overlap.
  CHECK_THROWS_AS(lobed_profile(12, millimetres(54), millimetres(36), millimetres(9), millimetres(2)), InputError);
  CHECK_THROWS_AS(lobed_profile(3, millimetres(54), millimetres(36), millimetres(8), millimetres(nan_value)),
                  InputError);
  CHECK_THROWS_AS(square_profile(millimetres(40), millimetres(20)), InputError);
  CHECK_THROWS_AS(square_profile(millimetres(40), millimetres(4), millimetres(1)), InputError);
  CHECK_THROWS_AS(square_profile(millimetres(40), millimetres(4), millimetres(21)), InputError);
  CHECK_THROWS_AS(ShapedProfile(square_millimetres(1296), millimetres(144), millimetres(4), SecondMomentOfArea{}),
                  InputError);
}

TEST_CASE("an overload leaves nothing behind below yield, and has no answer at the plastic torque") {
  const Stress yield = megapascals(150);
  const Overload below = overload(solid_50, newton_metres(3000), yield, gigapascals(77));
  CHECK(below.core_diameter == solid_50.diameter());
  CHECK(below.permanent_twist == TwistRate{});
  CHECK(below.residual_surface == Stress{});
  CHECK(below.twist_rate == twist_rate(solid_50, newton_metres(3000), gigapascals(77)));
  CHECK_THROWS_AS(overload(solid_50, plastic_torque(solid_50, yield), yield, gigapascals(77)), InputError);
  CHECK_THROWS_AS(overload(solid_50, newton_metres(nan_value), yield, gigapascals(77)), InputError);
  CHECK_THROWS_AS(overload(solid_50, newton_metres(1), yield, gigapascals(0)), InputError);
  CHECK_THROWS_AS(overload(solid_50, newton_metres(1), megapascals(0), gigapascals(77)), InputError);
  CHECK_THROWS_AS(partly_plastic_torque(solid_50, radians_per_metre(0), yield, gigapascals(77)), InputError);
  // A tube twisted far beyond yield holds its plastic torque, a little twisted one its elastic torque.
  CHECK(partly_plastic_torque(tube_60, radians_per_metre(5), yield, steel_g) == plastic_torque(tube_60, yield));
  CHECK(partly_plastic_torque(tube_60, radians_per_metre(0.01), yield, steel_g) ==
        torque_for_twist(tube_60, radians_per_metre(0.01), steel_g));
}

TEST_CASE("a stepped shaft is as strong as its weakest step, and soft in a row") {
  const Stress soft = megapascals(180);
  const Stress hard = megapascals(400);
  const std::vector<ShaftStep> steps = {{SolidSection(millimetres(30)), metres(1), newton_metres(500), soft, steel_g},
                                        {SolidSection(millimetres(25)), metres(1), newton_metres(500), hard, steel_g}};
  const SteppedShaft shaft = stepped_shaft(steps);
  CHECK(shaft.weakest == 0); // thicker, but of the softer steel
  CHECK(stepped_yield_torque(steps) == yield_torque(SolidSection(millimetres(30)), soft));
  CHECK_CLOSE(shaft.safety_factor, static_cast<double>(stepped_yield_torque(steps) / newton_metres(500)), 1e-14);
  CHECK_CLOSE(stepped_stiffness(steps).value(), 500.0 / shaft.twist.value(), 1e-14);
  CHECK_CLOSE(stepped_stiffness({steps[0]}).value(), 6306.0, 1e-4);
  CHECK(stepped_shaft({{solid_50, metres(1), newton_metres(0), soft, steel_g}}).safety_factor == infinite);
  CHECK_THROWS_AS(stepped_shaft({}), InputError);
  CHECK_THROWS_AS(stepped_yield_torque({}), InputError);
  CHECK_THROWS_AS(stepped_stiffness({}), InputError);
  CHECK_THROWS_AS(stepped_shaft({{solid_50, metres(0), newton_metres(1), soft, steel_g}}), InputError);
  CHECK_THROWS_AS(stepped_shaft({{solid_50, metres(1), newton_metres(nan_value), soft, steel_g}}), InputError);
  CHECK_THROWS_AS(stepped_shaft({{solid_50, metres(1), newton_metres(1), Stress{}, steel_g}}), InputError);
  CHECK_THROWS_WITH_AS(stepped_shaft({{solid_50, metres(1), newton_metres(1), soft, Stress{}}}),
                       doctest::Contains("stepped_shaft: steps.shear_modulus = 0 Pa"), InputError);
}

TEST_CASE("a blow: the strain energy is the kinetic energy") {
  const Energy energy = joules(240);
  const TorsionImpact blow = torsion_impact(solid_50, metres(1.2), steel_g, energy);
  CHECK_CLOSE(0.5 * blow.torque.value() * blow.twist.value(), energy.value(), 1e-14);
  CHECK(torsion_impact(solid_50, metres(1.2), steel_g, joules(0)).torque == Torque{});
  const Length needed = impact_diameter(energy, metres(1.2), steel_g, megapascals(200));
  CHECK_CLOSE(torsion_impact(SolidSection(needed), metres(1.2), steel_g, energy).stress.value(), 200e6, 1e-14);
  CHECK(impact_diameter(energy, metres(2.4), steel_g, megapascals(200)) < needed);
  CHECK_THROWS_AS(torsion_impact(solid_50, metres(0), steel_g, energy), InputError);
  CHECK_THROWS_AS(torsion_impact(solid_50, metres(1), steel_g, joules(-1)), InputError);
  CHECK_THROWS_AS(impact_diameter(joules(0), metres(1), steel_g, megapascals(200)), InputError);
  CHECK_THROWS_AS(impact_diameter(energy, metres(1), steel_g, megapascals(nan_value)), InputError);
}

// A textbook exercise prints 5800 r/min for a steel driveshaft of 3 in with a wall of 0.125 in and 48 in.
TEST_CASE("three readings of one driveshaft: only the lumped one gives the printed answer") {
  const TubeSection tube(inches(3), inches(2.75));
  const Density density = kilograms_per_cubic_metre(7863.773702); // 0.00883 slug/in^3
  const Mass mass = Mass(density * tube.area() * inches(48));
  CHECK_CLOSE(in(lumped_critical_speed(tube, inches(48), psi(29e6), mass), unit::rpm), 5800.0, 2e-5);
  CHECK_CLOSE(in(critical_speed(tube, inches(48), psi(29e6), density), unit::rpm), 8262.3, 1e-6);
  const Force weight = newtons(mass.value() * unit::gravity_m_s2);
  const double sag = 5.0 / 384.0 * weight.value() * std::pow(inches(48).value(), 3) /
                     (psi(29e6).value() * tube.second_moment().value());
  CHECK_CLOSE(in(rayleigh_critical_speed({{weight, metres(sag)}}), unit::rpm), 7336.4, 1e-5);
}

TEST_CASE("critical speed: profiles and bars too, a length for a speed, and what is refused") {
  const ShapedProfile square = square_profile(millimetres(40), millimetres(4));
  const AngularSpeed speed = critical_speed(square, metres(1), steel_e, steel_density);
  CHECK_CLOSE(speed.value(), pi * pi * std::sqrt(207e9 * square.second_moment().value() / (7850 * 576e-6)), 1e-13);
  // A flat bar whirls about its weaker axis.
  const RectangleSection flat(millimetres(60), millimetres(20));
  CHECK_CLOSE(critical_speed(flat, metres(1), steel_e, steel_density).value(),
              pi * pi * 0.02 * std::sqrt(207e9 / 7850 / 12.0), 1e-13);
  const Length length = critical_length(tube_60, rpm(4000), steel_e, steel_density);
  CHECK_CLOSE(in(critical_speed(tube_60, length, steel_e, steel_density), unit::rpm), 4000.0, 1e-13);
  CHECK(working_speed_share.low.value < working_speed_share.high.value);
  CHECK(is_remembered(working_speed_share.low.source.standing));
  CHECK_THROWS_AS(critical_speed(tube_60, metres(0), steel_e, steel_density), InputError);
  CHECK_THROWS_AS(critical_speed(tube_60, metres(1), gigapascals(nan_value), steel_density), InputError);
  CHECK_THROWS_AS(critical_speed(tube_60, metres(1), steel_e, kilograms_per_cubic_metre(0)), InputError);
  CHECK_THROWS_AS(critical_length(tube_60, rpm(0), steel_e, steel_density), InputError);
  CHECK_THROWS_AS(lumped_critical_speed(tube_60, metres(1), steel_e, kilograms(0)), InputError);
  CHECK_THROWS_AS(rayleigh_critical_speed({}), InputError);
  CHECK_THROWS_AS(rayleigh_critical_speed({{newtons(0), metres(1)}}), InputError);
  CHECK_THROWS_WITH_AS(rayleigh_critical_speed({{newtons(1), metres(0)}}),
                       doctest::Contains("rayleigh_critical_speed: weights.sag = 0 m"), InputError);
  CHECK_THROWS_AS(dunkerley_critical_speed({}), InputError);
  CHECK_THROWS_AS(dunkerley_critical_speed({rpm(-1)}), InputError);
  CHECK_CLOSE(dunkerley_critical_speed({radians_per_second(300), radians_per_second(400)}).value(), 240.0, 1e-14);
  CHECK_THROWS_AS(sag_critical_speed(metres(0), metres(0)), InputError);
  CHECK_THROWS_AS(sag_critical_speed(metres(-1), metres(2)), InputError);
}

// Sarkar, A Textbook of Mechanics of Machines, Ill. 6, p. 294, and Ill. 11, p. 297. For the first the companion takes
// 2000 N twice where the third load is 1000 N, and prints 4.080; for the second it calls 1962 N/m "N".
TEST_CASE("sags of several loads on one shaft, and a slip that gives a printed answer") {
  const auto sag = [](double load, double at, double length, double e, double diameter) {
    const double rest = length - at;
    return load * at * at * rest * rest / (3.0 * e * pi / 64.0 * std::pow(diameter, 4) * length);
  };
  const auto turns = [](double load_sag, double shaft_sag) {
    return sag_critical_speed(metres(load_sag), metres(shaft_sag)).value() / (2.0 * pi);
  };
  const auto of = [&](double load, double at) { return sag(load, at, 3.0, 200e9, 0.060); };
  CHECK_CLOSE(turns(of(1500, 1) + of(2000, 2) + of(1000, 2.5), 0.0), 4.2761131, 1e-7);
  CHECK_CLOSE(turns(of(1500, 1) + of(2000, 2) + of(2000, 2.5), 0.0), 4.0763698, 1e-7);
  const auto big = [&](double mass, double at) { return sag(mass * 9.81, at, 2.5, 210e9, 0.180); };
  const double own = 5.0 / 384.0 * 1962.0 * std::pow(2.5, 4) / (210e9 * pi / 64.0 * std::pow(0.180, 4));
  CHECK_CLOSE(60.0 * turns(big(25, 0.6) + big(50, 1.5) + big(20, 2.0), own), 3108.9547, 1e-7);
}
