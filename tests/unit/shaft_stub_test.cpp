// Notches, and the PTO stub under torque, the couple of its joint, and side forces.

#include <fieldshaft/shaft.hpp>

#include "close.hpp"

#include <limits>

using namespace fieldshaft;

namespace {
constexpr double nan_value = std::numeric_limits<double>::quiet_NaN();
const FatigueStrength cold_drawn{megapascals(200), megapascals(630), megapascals(530)}; // invented endurance limit
const StubShaft six_spline{{millimetres(28.91), {1.5, 1.5}}, {millimetres(29.4), {1.3, 1.2}}};
StubLoad at_angle(double degree) { return {newton_metres(1061), {}, degrees(degree)}; }
} // namespace

TEST_CASE("a groove: shallower, rounder and bending against torsion") {
  const auto k = [](double groove, double radius, NotchLoad load) {
    return groove_concentration(millimetres(34.79), millimetres(groove), millimetres(radius), load);
  };
  CHECK_CLOSE(k(29.4, 6.8, NotchLoad::torsion), 1.2485, 1e-4);
  CHECK_CLOSE(k(29.4, 6.8, NotchLoad::bending), 1.4758, 1e-4);
  CHECK(k(29.4, 3.0, NotchLoad::torsion) > k(29.4, 6.8, NotchLoad::torsion));
  CHECK(k(34.789999999, 1e6, NotchLoad::torsion) == doctest::Approx(1.0));
  // A trace of a groove: the shallow notch alone. A deep one in a thick shaft: the deep notch alone.
  CHECK_CLOSE(groove_concentration(metres(1), metres(0.999), metres(1e-4), NotchLoad::torsion), 1.0 + std::sqrt(5.0),
              1e-2);
  CHECK_CLOSE(groove_concentration(metres(1000), metres(1), metres(0.5), NotchLoad::torsion),
              3.0 * std::pow(std::sqrt(2.0) + 1.0, 2) / (4.0 * (1.0 + 2.0 * std::sqrt(2.0))), 1e-4);
  CHECK_THROWS_AS(k(35, 6.8, NotchLoad::torsion), InputError);
  CHECK_THROWS_AS(k(29.4, 0, NotchLoad::torsion), InputError);
  CHECK_THROWS_AS(k(nan_value, 6.8, NotchLoad::bending), InputError);
}

TEST_CASE("a shoulder: inside its range, and at the end of it") {
  const auto k = [](double larger, double radius, NotchLoad load) {
    return shoulder_concentration(millimetres(larger), millimetres(30), millimetres(radius), load);
  };
  CHECK_CLOSE(k(40, 3, NotchLoad::torsion).value, 1.3893, 1e-4);
  CHECK_CLOSE(k(40, 3, NotchLoad::bending).value, 1.7024, 1e-4);
  // Solutions of the torsion problem by finite elements (computed): D/d 1.33, r/d 0.1 and 0.2; D/d 2, r/d 0.2.
  CHECK_CLOSE(k(39.9, 3, NotchLoad::torsion).value, 1.3636, 0.02);
  CHECK_CLOSE(k(39.9, 6, NotchLoad::torsion).value, 1.2170, 0.02);
  CHECK_CLOSE(k(60, 6, NotchLoad::torsion).value, 1.2298, 0.02);
  CHECK(k(40, 3, NotchLoad::torsion).valid());
  CHECK_FALSE(k(40, 1, NotchLoad::torsion).valid());
  CHECK(k(40, 1, NotchLoad::bending).valid());
  CHECK_FALSE(k(40, 0.2, NotchLoad::bending).valid());
  CHECK_FALSE(k(40, 60, NotchLoad::bending).valid());
  // The two formulas of bending meet at h/r = 2 within 2 %.
  CHECK_CLOSE(k(40, 2.5, NotchLoad::bending).value, k(40, 2.4999, NotchLoad::bending).value, 0.02);
  CHECK_THROWS_AS(k(30, 3, NotchLoad::bending), InputError);
  CHECK_THROWS_AS(k(40, 0, NotchLoad::bending), InputError);
}

TEST_CASE("spline roots and inner corners") {
  CHECK_CLOSE(spline_root_concentration(millimetres(0.6), millimetres(30)).value, 3.858, 1e-12);
  CHECK(spline_root_concentration(millimetres(0.6), millimetres(30)).valid());
  CHECK_FALSE(spline_root_concentration(millimetres(0.2), millimetres(30)).valid());
  CHECK_FALSE(spline_root_concentration(millimetres(2), millimetres(30)).valid());
  CHECK_THROWS_AS(spline_root_concentration(millimetres(0), millimetres(30)), InputError);
  CHECK(usual_spline_concentration.value == 2.8);
  CHECK(is_remembered(usual_spline_concentration.source.standing));
  CHECK_CLOSE(corner_concentration(millimetres(4), millimetres(2)).value, 2.1923, 1e-4);
  CHECK(corner_concentration(millimetres(4), millimetres(4)).valid());
  CHECK_FALSE(corner_concentration(millimetres(4), millimetres(4.1)).valid());
  CHECK(corner_concentration(millimetres(4), metres(4)).value == 1.0);
  CHECK_THROWS_AS(corner_concentration(millimetres(4), millimetres(-1)), InputError);
}

TEST_CASE("the smallest section governs wherever it lies") {
  CHECK(stub_stress(six_spline, at_angle(0)).place == StubPlace::root);
  StubShaft twenty_one{{millimetres(31.19), {}}, {millimetres(29.4), {}}};
  CHECK(stub_stress(twenty_one, at_angle(0)).place == StubPlace::groove);
  CHECK(stub_stress(twenty_one, at_angle(0)).torsion ==
        stub_stress({{millimetres(29.4), {}}, {}}, at_angle(0)).torsion);
  twenty_one.groove = {}; // no groove at all
  CHECK(stub_stress(twenty_one, at_angle(0)).place == StubPlace::root);
  // In fatigue a sharper notch may make the larger section the worse one.
  const StubShaft sharp_groove{{millimetres(29.4), {}}, {millimetres(31), {2.5, 2.0}}};
  CHECK(stub_stress(sharp_groove, at_angle(10)).place == StubPlace::root);
  CHECK(stub_fatigue_safety_factor(sharp_groove, at_angle(10), cold_drawn, MeanStressRule::goodman).place ==
        StubPlace::groove);
}

TEST_CASE("a stub that is strong enough straight and not at 20 degrees") {
  const StubStress straight = stub_stress(six_spline, at_angle(0));
  CHECK_CLOSE(in(straight.torsion, unit::megapascal), 223.636, 1e-5);
  CHECK(straight.bending == Stress{});
  CHECK_CLOSE(in(straight.equivalent, unit::megapascal), 223.636 * std::sqrt(3.0), 1e-5);
  const StubStress angled = stub_stress(six_spline, at_angle(20));
  CHECK(angled.torsion == straight.torsion);
  CHECK_CLOSE(angled.bending.value(), 2.0 * straight.torsion.value() * std::tan(degrees(20).value()), 1e-13);
  CHECK_CLOSE(angled.equivalent.value(), std::hypot(angled.bending.value(), std::sqrt(3.0) * angled.torsion.value()),
              1e-13);
  CHECK(stub_yield_safety_factor(six_spline, at_angle(0), megapascals(530)).factor > 1.3);
  CHECK(stub_yield_safety_factor(six_spline, at_angle(20), megapascals(530)).factor < 1.3);
  const auto fatigue = [](double degree) {
    return stub_fatigue_safety_factor(six_spline, at_angle(degree), cold_drawn, MeanStressRule::goodman).factor;
  };
  CHECK_CLOSE(fatigue(0), 1.0843, 1e-4);
  CHECK_CLOSE(fatigue(20), 0.46659, 1e-4);
  const auto limit = stub_angle_limit(six_spline, at_angle(0), cold_drawn, MeanStressRule::goodman, 1.0);
  REQUIRE(limit.valid());
  CHECK_CLOSE(in(limit.value, unit::degree), 1.3276, 1e-4);
  CHECK_CLOSE(fatigue(in(limit.value, unit::degree)), 1.0, 1e-12);
  CHECK_FALSE(stub_angle_limit(six_spline, at_angle(0), cold_drawn, MeanStressRule::goodman, 1.1).valid());
  const StubLoad idle{newton_metres(0)};
  CHECK_CLOSE(in(stub_angle_limit(six_spline, idle, cold_drawn, MeanStressRule::gerber, 2.0).value, unit::degree), 89.9,
              1e-12);
}

TEST_CASE("a side force bends with its overhang, a couple does not, and a swinging torque is felt as a swing") {
  StubLoad load = at_angle(0);
  load.side_force = newtons(1500);
  CHECK(stub_shaft_load(load).bending_amplitude == Torque{});
  load.overhang = millimetres(120);
  CHECK_CLOSE(stub_shaft_load(load).bending_amplitude.value(), 180.0, 1e-14);
  load.joint_angle = degrees(45);
  CHECK_CLOSE(stub_shaft_load(load).bending_amplitude.value(), 1061.0 + 180.0, 1e-14);
  load.torque_amplitude = newton_metres(200);
  const ShaftLoad felt = stub_shaft_load(load);
  CHECK(felt.torque_amplitude == newton_metres(200));
  CHECK(felt.torque_mean == newton_metres(1061));
  CHECK(felt.bending_mean == Torque{});
  CHECK_CLOSE(felt.bending_amplitude.value(), 1261.0 + 180.0, 1e-14); // the couple follows the peak torque
}

TEST_CASE("a bore weakens a stub, and what cannot be is refused") {
  StubShaft bored = six_spline;
  bored.bore_diameter = millimetres(10);
  CHECK(stub_stress(bored, at_angle(10)).equivalent > stub_stress(six_spline, at_angle(10)).equivalent);
  bored.bore_diameter = millimetres(28.91);
  CHECK_THROWS_AS(stub_stress(bored, at_angle(10)), InputError);
  CHECK_THROWS_AS(stub_stress({}, at_angle(10)), InputError);
  CHECK_THROWS_AS(stub_stress({{millimetres(30), {}}, {millimetres(-1), {}}}, at_angle(10)), InputError);
  CHECK_THROWS_AS(stub_stress(six_spline, at_angle(90)), InputError);
  CHECK_THROWS_AS(stub_stress(six_spline, at_angle(-1)), InputError);
  CHECK_THROWS_AS(stub_stress(six_spline, {newton_metres(nan_value)}), InputError);
  CHECK_THROWS_AS(stub_stress(six_spline, {newton_metres(1), newton_metres(-1)}), InputError);
  CHECK_THROWS_AS(stub_stress(six_spline, {newton_metres(1), {}, {}, newtons(-1)}), InputError);
  CHECK_THROWS_AS(stub_stress(six_spline, {newton_metres(1), {}, {}, newtons(1), metres(nan_value)}), InputError);
  CHECK_THROWS_AS(stub_yield_safety_factor(six_spline, at_angle(0), megapascals(0)), InputError);
  CHECK_THROWS_AS(stub_angle_limit(six_spline, at_angle(0), cold_drawn, MeanStressRule::goodman, 0.0), InputError);
}
