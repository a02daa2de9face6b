#include <fieldshaft/overload.hpp>

#include "close.hpp"
#include "random.hpp"

#include <vector>

using namespace fieldshaft;

namespace {

struct Clutch {
  Length outer;
  Length inner;
  double friction;
  int surfaces;
  ClutchContact contact;
};

Clutch random_clutch(RandomInputs& random) {
  const double outer = random.between(50, 200);
  return {millimetres(outer), millimetres(outer * random.between(0.1, 0.95)), random.between(0.05, 0.6),
          random.whole(1, 8), static_cast<ClutchContact>(random.whole(0, 1))};
}

/// Friction integrated over the faces, ring by ring, with pressure proportional to 1/r (wear) or constant.
double integrated_torque(const Clutch& c, double force) {
  const int rings = 20000;
  const double from = c.inner.value();
  const double width = (c.outer.value() - from) / rings;
  double pressure_sum = 0.0;
  double moment_sum = 0.0;
  for (int i = 0; i < rings; ++i) {
    const double r = from + (i + 0.5) * width;
    const double p = c.contact == ClutchContact::uniform_wear ? 1.0 / r : 1.0;
    pressure_sum += p * 2.0 * pi * r * width;
    moment_sum += p * 2.0 * pi * r * r * width;
  }
  return c.surfaces * c.friction * force * moment_sum / pressure_sum;
}

} // namespace

TEST_CASE("the torque of a disc clutch is the friction integrated over its faces") {
  RandomInputs random;
  for (int i = 0; i < 100; ++i) {
    const Clutch c = random_clutch(random);
    const double force = random.across(10, 1e5);
    const Torque torque = disc_clutch_torque(c.outer, c.inner, newtons(force), c.friction, c.surfaces, c.contact);
    CHECK_CLOSE(torque.value(), integrated_torque(c, force), 1e-7);
  }
}

TEST_CASE("force, torque and pressure invert one another") {
  RandomInputs random;
  for (int i = 0; i < 2000; ++i) {
    const Clutch c = random_clutch(random);
    const Force force = newtons(random.across(10, 1e5));
    const Torque torque = disc_clutch_torque(c.outer, c.inner, force, c.friction, c.surfaces, c.contact);
    CHECK_CLOSE(disc_clutch_force(c.outer, c.inner, torque, c.friction, c.surfaces, c.contact).value(), force.value(),
                1e-13);
    const Stress pressure = disc_clutch_pressure(c.outer, c.inner, force, c.contact);
    CHECK_CLOSE(disc_clutch_force_at_pressure(c.outer, c.inner, pressure, c.contact).value(), force.value(), 1e-13);
    const ForcePerLength rate = newtons_per_millimetre(random.across(5, 500));
    const int springs = random.whole(1, 12);
    const Length x = spring_compression(force, springs, rate, metres(1e9)).value;
    CHECK_CLOSE(spring_force(springs, rate, x).value(), force.value(), 1e-13);
  }
}

TEST_CASE("run-in discs: the lower torque and the higher pressure") {
  RandomInputs random;
  for (int i = 0; i < 1000; ++i) {
    const Clutch c = random_clutch(random);
    const auto torque = [&](ClutchContact contact) {
      return disc_clutch_torque(c.outer, c.inner, newtons(1000), c.friction, c.surfaces, contact);
    };
    CHECK(torque(ClutchContact::uniform_wear) <= torque(ClutchContact::uniform_pressure));
    CHECK(disc_clutch_pressure(c.outer, c.inner, newtons(1000), ClutchContact::uniform_wear) >=
          disc_clutch_pressure(c.outer, c.inner, newtons(1000), ClutchContact::uniform_pressure));
  }
}

TEST_CASE("energy: what the drive gives is what the machine, its load and the clutch take") {
  RandomInputs random;
  for (int i = 0; i < 2000; ++i) {
    const MomentOfInertia inertia = kilogram_square_metres(random.across(0.01, 100));
    const AngularSpeed speed = rpm(random.between(100, 1100));
    const Torque load = newton_metres(random.between(0, 900));
    const Torque clutch = load + newton_metres(random.across(1, 900));
    const ClutchEngagement e = clutch_engagement(inertia, speed, clutch, load);
    const double turned = 0.5 * speed.value() * e.time.value();
    const double given = clutch.value() * speed.value() * e.time.value();
    const double stored = 0.5 * inertia.value() * speed.value() * speed.value();
    CHECK_CLOSE(given, stored + load.value() * turned + e.heat.value(), 1e-12);
  }
}

TEST_CASE("two free masses: momentum and energy balance, and a heavy drive is one that holds its speed") {
  RandomInputs random;
  for (int i = 0; i < 2000; ++i) {
    const double i1 = random.across(0.05, 50);
    const double i2 = random.across(0.05, 50);
    const double w1 = random.between(20, 120);
    const double w2 = random.between(0, 20);
    const auto engage = [&](double driving) {
      return free_clutch_engagement(kilogram_square_metres(driving), radians_per_second(w1), kilogram_square_metres(i2),
                                    radians_per_second(w2), newton_metres(300));
    };
    const ClutchEngagement e = engage(i1);
    CHECK_CLOSE(e.speed.value(), (i1 * w1 + i2 * w2) / (i1 + i2), 1e-13);
    const double before = 0.5 * i1 * w1 * w1 + 0.5 * i2 * w2 * w2;
    const double after = 0.5 * (i1 + i2) * e.speed.value() * e.speed.value();
    CHECK_CLOSE(before, after + e.heat.value(), 1e-13);
    if (w2 < 0.001) continue;
    const ClutchEngagement heavy = engage(1e12);
    const ClutchEngagement held = clutch_engagement(kilogram_square_metres(i2), radians_per_second(w1 - w2),
                                                    newton_metres(300), newton_metres(0));
    CHECK_CLOSE(heavy.time.value(), held.time.value(), 1e-9);
    CHECK_CLOSE(heavy.heat.value(), held.heat.value(), 1e-9);
  }
}

TEST_CASE("two free masses against a step-by-step integration, with outer torques") {
  RandomInputs random;
  for (int i = 0; i < 20; ++i) {
    const double i1 = random.between(1, 20);
    const double i2 = random.between(1, 20);
    const double clutch = random.between(200, 500);
    const double drive = random.between(-100, 100);
    const double load = random.between(0, 100);
    double w1 = 100;
    double w2 = 10;
    double heat = 0.0;
    double time = 0.0;
    for (const double step = 1e-5; w1 > w2; time += step) {
      const double slip = w1 - w2;
      w1 += (drive - clutch) / i1 * step;
      w2 += (clutch - load) / i2 * step;
      heat += clutch * 0.5 * (slip + w1 - w2) * step;
    }
    const ClutchEngagement e = free_clutch_engagement(kilogram_square_metres(i1), radians_per_second(100),
                                                      kilogram_square_metres(i2), radians_per_second(10),
                                                      newton_metres(clutch), newton_metres(drive), newton_metres(load));
    CHECK_CLOSE(e.time.value(), time, 1e-4);
    CHECK_CLOSE(e.heat.value(), heat, 1e-4);
    CHECK_CLOSE(e.speed.value(), w2, 1e-4);
  }
}

TEST_CASE("the needed bolt goes at the wanted torque") {
  RandomInputs random;
  for (int i = 0; i < 2000; ++i) {
    const Torque torque = newton_metres(random.across(10, 1e4));
    const Length arm = millimetres(random.between(10, 200));
    const Stress strength = megapascals(random.between(200, 1000));
    const int bolts = random.whole(1, 4);
    const int planes = random.whole(1, 2);
    const Length d = shear_bolt_diameter(torque, arm, strength, bolts, planes);
    CHECK_CLOSE(shear_bolt_torque(d, arm, strength, bolts, planes).value(), torque.value(), 1e-13);
  }
}

TEST_CASE("every setting in an open window holds at work and lets go before any part yields, none in a closed one") {
  RandomInputs random;
  int open = 0;
  for (int i = 0; i < 5000; ++i) {
    std::vector<ChainPart> parts;
    const int count = random.whole(1, 6);
    parts.reserve(static_cast<std::size_t>(count));
    for (int k = 0; k < count; ++k) {
      parts.push_back({"part", newton_metres(random.across(300, 9000)), random.across(0.3, 3), random.between(0.9, 1)});
    }
    const Torque peak = newton_metres(random.across(50, 2000));
    const double scatter = random.between(0, 0.4);
    const double work = random.between(1, 1.5);
    const double strength = random.between(1, 1.5);
    const DeviceWindow window = device_window(peak, parts, scatter, work, strength);
    CHECK(window.open() == (window.lowest <= window.highest));
    const double share = random.between(0, 1);
    const TorqueBand band = torque_band(window.lowest + share * (window.highest - window.lowest), scatter);
    bool holds = band.low.value() >= peak.value() * work * (1 - 1e-12);
    for (const ChainPart& part : parts) {
      const double at_part = band.high.value() / (part.speed_ratio * part.efficiency);
      holds = holds && at_part * strength <= part.yield_torque.value() * (1 + 1e-12);
    }
    CHECK(holds == window.open());
    open += window.open() ? 1 : 0;
  }
  CHECK(open > 500);
  CHECK(open < 4500);
}

TEST_CASE("more work, scatter or margin never opens a window") {
  RandomInputs random;
  for (int i = 0; i < 2000; ++i) {
    const std::vector<ChainPart> parts = {{"part", newton_metres(random.across(300, 3000)), 1.0}};
    const double peak = random.across(100, 2000);
    const double scatter = random.between(0, 0.4);
    const double margin = random.between(1, 1.4);
    const bool before = device_window(newton_metres(peak), parts, scatter, margin, margin).open();
    const double more = random.between(1, 1.2);
    if (before) continue;
    CHECK(!device_window(newton_metres(peak * more), parts, scatter, margin, margin).open());
    CHECK(!device_window(newton_metres(peak), parts, scatter * more, margin, margin).open());
    CHECK(!device_window(newton_metres(peak), parts, scatter, margin * more, margin * more).open());
  }
}
