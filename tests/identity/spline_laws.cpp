// Laws of splines, and second methods: forces summed over teeth, the involute itself.

#include <fieldshaft/spline.hpp>

#include "close.hpp"
#include "random.hpp"

#include <array>

using namespace fieldshaft;

namespace {

StraightSpline any_straight(RandomInputs& random) {
  const int count = random.whole(3, 30);
  const double major = random.across(0.01, 0.2);
  const double minor = major * random.between(0.7, 0.97);
  const double width = minor * std::sin(pi / count) * random.between(0.2, 0.9);
  return {count, metres(major), metres(minor), metres(width), metres(major * random.between(0.3, 3.0))};
}

InvoluteSpline any_involute(RandomInputs& random) {
  const std::array<double, 3> angles{30.0, 37.5, 45.0};
  const Angle angle = degrees(angles[static_cast<std::size_t>(random.whole(0, 2))]);
  const int teeth = random.whole(6, 60);
  const Length module = millimetres(random.across(0.5, 10));
  const Length length = module * (teeth * random.between(0.3, 3.0));
  if (random.whole(0, 1) == 0) return {teeth, module, angle, length, SplineRoot::usual};
  return {iso_4156_geometry(teeth, module, angle, SplineRoot::fillet), length};
}

Spline any_spline(RandomInputs& random) {
  if (random.whole(0, 1) == 0) return any_straight(random);
  return any_involute(random);
}

SplineFactors any_factors(RandomInputs& random) {
  return {random.between(1.0, 2.8), random.between(1.0, 3.0), random.between(0.2, 1.8), random.between(0.5, 4.0)};
}

SplineSeat any_seat(RandomInputs& random) { return static_cast<SplineSeat>(random.whole(0, 3)); }

SplineLimits any_limits(RandomInputs& random) {
  return {megapascals(random.across(50, 400)), megapascals(random.across(50, 400)), megapascals(random.across(5, 400))};
}

double involute(double angle) { return std::tan(angle) - angle; }

/// Thickness of an involute tooth at a diameter, from that at the pitch diameter.
double thickness_at(const InvoluteGeometry& g, Length diameter) {
  const double at = std::acos(static_cast<double>(g.base_diameter / diameter));
  const double turn = involute(g.pressure_angle.value()) - involute(at);
  return diameter.value() * (static_cast<double>(g.tooth_thickness / g.pitch_diameter) + turn);
}

} // namespace

TEST_CASE("the flanks of a straight spline: force on each tooth times its radius makes the torque") {
  RandomInputs random;
  for (int i = 0; i < 1000; ++i) {
    const StraightSpline spline = any_straight(random);
    const Torque torque = newton_metres(random.across(1, 1e5));
    const SplineStress stress = spline_stress(spline, torque);
    const Length radius = 0.25 * (spline.major_diameter() + spline.minor_diameter());
    const Length height = 0.5 * (spline.major_diameter() - spline.minor_diameter());
    CHECK_CLOSE(stress.flank_pressure.value(),
                torque.value() / (spline.teeth() * (radius * height * spline.length()).value()), 1e-13);
    double moment = 0.0;
    for (int tooth = 0; tooth < spline.teeth(); ++tooth) {
      moment += (stress.flank_pressure * (height * spline.length()) * radius).value();
    }
    CHECK_CLOSE(moment, torque.value(), 1e-12);
    // Half of the teeth hold it in shear.
    moment = 0.5 * spline.teeth() * (stress.tooth_shear * (spline.tooth_width() * spline.length()) * radius).value();
    CHECK_CLOSE(moment, torque.value(), 1e-12);
  }
}

TEST_CASE("every stress goes with the torque, a bore weakens, and what slips bears less") {
  RandomInputs random;
  for (int i = 0; i < 500; ++i) {
    const Spline spline = any_spline(random);
    const SplineFactors factors = any_factors(random);
    const SplineSeat seat = any_seat(random);
    const Length bore = spline.root_diameter() * random.between(0.0, 0.9);
    const Torque torque = newton_metres(random.across(1, 1e5));
    const double more = random.between(1.0, 5.0);
    const SplineStress one = spline_stress(spline, torque, factors, seat, bore);
    const SplineStress two = spline_stress(spline, more * torque, factors, seat, bore);
    CHECK_CLOSE(two.root_torsion / one.root_torsion, more, 1e-13);
    CHECK_CLOSE(two.tooth_shear / one.tooth_shear, more, 1e-13);
    CHECK_CLOSE(two.flank_pressure / one.flank_pressure, more, 1e-13);
    CHECK(one.root_torsion >= spline_stress(spline, torque, factors, seat).root_torsion);
    // A hub that slips bears less than one that slides unloaded, and that less than one that is fixed.
    const auto pressure = [&](SplineSeat s) { return spline_stress(spline, torque, {}, s).flank_pressure; };
    CHECK(pressure(SplineSeat::fixed) < pressure(SplineSeat::sliding_unloaded));
    CHECK(pressure(SplineSeat::sliding_unloaded) < pressure(SplineSeat::flexible));
    CHECK(pressure(SplineSeat::flexible) == pressure(SplineSeat::sliding_under_load));
  }
}

TEST_CASE("at its capacity a spline is just at the limit that governs") {
  RandomInputs random;
  for (int i = 0; i < 1000; ++i) {
    const Spline spline = any_spline(random);
    const SplineFactors factors = any_factors(random);
    const SplineSeat seat = any_seat(random);
    const SplineLimits limits = any_limits(random);
    const Length bore = spline.root_diameter() * random.between(0.0, 0.9);
    const SplineCapacity capacity = spline_torque_capacity(spline, limits, factors, seat, bore);
    const SplineStress there = spline_stress(spline, capacity.torque, factors, seat, bore);
    const std::array<double, 3> used{there.root_torsion / limits.root_torsion, there.tooth_shear / limits.tooth_shear,
                                     there.flank_pressure / limits.flank_pressure};
    int at_limit = 0;
    double next = 0.0;
    for (int mode = 0; mode < 3; ++mode) {
      const double u = used[static_cast<std::size_t>(mode)];
      CHECK(u <= 1.0 + 1e-13);
      if (static_cast<SplineMode>(mode) == capacity.governing) {
        CHECK_CLOSE(u, 1.0, 1e-13);
        ++at_limit;
      } else {
        next = std::fmax(next, u);
      }
    }
    CHECK(at_limit == 1);
    CHECK_CLOSE(capacity.lead, 1.0 / next, 1e-12);

    const Torque torque = newton_metres(random.across(0.1, 10.0) * capacity.torque.value());
    const auto length = spline_length_for_torque(spline, torque, limits, factors, seat, bore);
    SplineSizes sizes = spline.sizes();
    sizes.length = length.value;
    const SplineStress cut = spline_stress(Spline(sizes), torque, factors, seat, bore);
    CHECK_CLOSE(std::fmax(cut.tooth_shear / limits.tooth_shear, cut.flank_pressure / limits.flank_pressure), 1.0,
                1e-12);
    CHECK(length.valid() == (cut.root_torsion <= limits.root_torsion));

    const bool along = random.whole(0, 1) == 1;
    const SplineSize size = spline_size_for_torque(spline, torque, limits, along, factors, seat, bore);
    const Spline grown = scaled_spline(spline, size.scale, along);
    CHECK_CLOSE(grown.major_diameter().value(), size.major_diameter.value(), 1e-13);
    const SplineCapacity new_capacity = spline_torque_capacity(grown, limits, factors, seat, size.scale * bore);
    CHECK_CLOSE(new_capacity.torque.value(), torque.value(), 1e-12);
    CHECK(new_capacity.governing == size.governing);
  }
}

TEST_CASE("involute sizes: tooth and space share the pitch, the hub clears the shaft, the tip is not cut off") {
  RandomInputs random;
  for (int i = 0; i < 1000; ++i) {
    const InvoluteSpline spline = any_involute(random);
    const InvoluteGeometry& g = spline.geometry();
    CHECK(g.hub_major > g.shaft_major);
    CHECK(g.hub_minor > g.shaft_minor);
    CHECK(g.tooth_thickness < g.circular_pitch);
    CHECK(g.engaged_height <= 0.5 * (g.shaft_major - g.hub_minor) * (1.0 + 1e-12));
    CHECK(thickness_at(g, g.pitch_diameter) == doctest::Approx(g.tooth_thickness.value()).epsilon(1e-12));
    const double tip = thickness_at(g, g.shaft_major);
    CHECK(tip > 0.0);
    CHECK(tip < g.tooth_thickness.value());
    CHECK_CLOSE(static_cast<double>(g.base_diameter / g.pitch_diameter), std::cos(g.pressure_angle.value()), 1e-14);
  }
}

TEST_CASE("DIN 5480: shaft and hub of one reference diameter mesh at every shift") {
  RandomInputs random;
  for (int i = 0; i < 500; ++i) {
    const double module = random.across(0.5, 10.0);
    const int teeth = random.whole(6, 80);
    const double x = random.between(-0.05, 0.45);
    const Length reference = millimetres(module * (teeth + 1.1 + 2.0 * x));
    CHECK(din_5480_shift(reference, millimetres(module), teeth).value() ==
          doctest::Approx(x * module * 1e-3).epsilon(1e-9));
    const InvoluteGeometry g = din_5480_geometry(reference, millimetres(module), teeth);
    CHECK_CLOSE(g.tooth_thickness.value(), (0.5 * pi + 2.0 * x / std::sqrt(3.0)) * module * 1e-3, 1e-12);
    CHECK_CLOSE(g.engaged_height.value(), 0.5 * (g.shaft_major - g.hub_minor).value(), 1e-9);
    CHECK(g.hub_minor > g.shaft_minor);
    CHECK(g.hub_major > g.shaft_major);
    const InvoluteSpline spline(g, millimetres(20));
    CHECK(spline.bearing_diameter() == g.pitch_diameter);
  }
}

TEST_CASE("worse conditions never give a kinder factor") {
  RandomInputs random;
  for (int i = 0; i < 2000; ++i) {
    const double m = random.across(1e-4, 0.02);
    const Length w = inches(random.across(0.1, 8.0));
    const double f = load_distribution_factor(m, w).value;
    CHECK(f >= 1.0);
    CHECK(load_distribution_factor(1.1 * m, w).value >= f);
    CHECK(load_distribution_factor(m, 1.1 * w).value >= f);
    const double cycles = random.across(1.0, 1e9);
    const double one_sided = fatigue_life_factor(cycles).value;
    CHECK(fatigue_life_factor(1.1 * cycles).value <= one_sided);
    CHECK(fatigue_life_factor(cycles, TorqueCycle::reversed).value <= one_sided * (1.0 + 1e-14));
    const double turns = random.across(1.0, 1e12);
    CHECK(wear_life_factor(1.1 * turns).value <= wear_life_factor(turns).value * (1.0 + 1e-14));
  }
}

TEST_CASE("a hub: a thicker wall is stressed less, more torque or speed more") {
  RandomInputs random;
  for (int i = 0; i < 500; ++i) {
    const Spline spline = any_spline(random);
    const Length outer = spline.sleeve_root() * random.between(1.05, 2.0);
    const Torque torque = newton_metres(random.across(1, 1e4));
    const AngularSpeed speed = rpm(random.between(1, 2000));
    const SplineFactors factors = any_factors(random);
    const SleeveStress hub = sleeve_stress(spline, torque, outer, speed, factors);
    CHECK(sleeve_stress(spline, torque, 1.01 * outer, speed, factors).radial < hub.radial);
    CHECK(sleeve_stress(spline, 1.01 * torque, outer, speed, factors).tensile > hub.tensile);
    CHECK(sleeve_stress(spline, torque, outer, 1.01 * speed, factors).tensile > hub.tensile);
    const double sum = factors.application * factors.load_distribution * (hub.radial + hub.tooth_bend).value() +
                       hub.centrifugal.value();
    CHECK_CLOSE(hub.tensile.value(), sum / factors.fatigue_life, 1e-13);
    // The radial part is the hoop stress of a thin ring under the pressure that the flanks make on its inside.
    const double radial_force =
        2.0 * torque.value() / spline.bearing_diameter().value() * std::tan(spline.flank_angle().value());
    const double pressure_times_radius = radial_force / (2.0 * pi * spline.length().value());
    CHECK_CLOSE(hub.radial.value(), pressure_times_radius / hub.wall.value(), 1e-12);
  }
}
