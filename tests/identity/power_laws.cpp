// Laws of power: bases, engine line, PTO options, fuel and needs, over random inputs.

#include <fieldshaft/power.hpp>

#include "close.hpp"
#include "random.hpp"

using namespace fieldshaft;

namespace {

/// A curve of one to six points and its high idle.
EngineLine any_line(RandomInputs& random) {
  std::vector<EnginePoint> points;
  const int count = random.whole(1, 6);
  points.reserve(static_cast<std::size_t>(count));
  AngularSpeed speed = rpm(random.between(800.0, 1200.0));
  for (int i = 0; i < count; ++i) {
    points.push_back({speed, newton_metres(random.between(100.0, 900.0))});
    speed += rpm(random.between(20.0, 400.0));
  }
  return EngineLine(points, speed);
}

} // namespace

TEST_CASE("power is torque times speed, and a gear train without loss keeps it") {
  RandomInputs random;
  for (int i = 0; i < 1000; ++i) {
    const Power power = kilowatts(random.across(0.1, 500.0));
    const AngularSpeed speed = rpm(random.across(100.0, 2500.0));
    const Torque torque = shaft_torque(power, speed);
    CHECK_CLOSE(shaft_power(torque, speed).value(), power.value(), 1e-14);
    const double ratio = random.across(0.1, 10.0);
    const double efficiency = random.between(0.5, 1.0);
    const Power behind = shaft_power(geared_torque(torque, ratio, efficiency), geared_speed(speed, ratio));
    CHECK_CLOSE(behind.value(), efficiency * power.value(), 1e-14);
    CHECK_CLOSE(gear_ratio(speed, geared_speed(speed, ratio)), ratio, 1e-14);
  }
}

TEST_CASE("the 86 % rule leads back to where it started") {
  RandomInputs random;
  for (int i = 0; i < 200; ++i) {
    const RulePowers there = powers_by_rule_from_engine(kilowatts(random.across(5.0, 500.0)));
    const RulePowers back = powers_by_rule_from_drawbar(there.drawbar);
    CHECK_CLOSE(back.engine.value(), there.engine.value(), 1e-14);
    CHECK_CLOSE(back.pto.value(), there.pto.value(), 1e-14);
  }
}

TEST_CASE("any engine line: what the engine holds at a speed holds it there") {
  RandomInputs random;
  for (int i = 0; i < 500; ++i) {
    const EngineLine line = any_line(random);
    for (const EnginePoint& point : line.points()) {
      CHECK_CLOSE(line.torque_at(point.speed).value.value(), point.torque.value(), 1e-13);
      CHECK(point.torque <= line.peak().torque);
    }
    const Torque load = random.between(0.0, 1.0) * line.peak().torque;
    const Validated<AngularSpeed> speed = line.speed_under(load);
    REQUIRE(speed.valid());
    CHECK(std::abs((line.torque_at(speed.value).value - load).value()) < 1e-9);
    // From high idle down to that speed the engine always has more than the load asks for... until there.
    for (int k = 1; k < 20; ++k) {
      const AngularSpeed faster = speed.value + (line.high_idle() - speed.value) * (k / 20.0);
      CHECK(line.torque_at(faster).value.value() <= load.value() + 1e-9);
    }
    // More load never makes it faster.
    CHECK(line.speed_under(load * 0.9).value >= speed.value * (1.0 - 1e-12));
    // No speed gives more than the greatest power.
    const double part = random.between(0.0, 1.0);
    const AngularSpeed lowest = line.points().front().speed;
    const AngularSpeed any = lowest + part * (line.high_idle() - lowest);
    CHECK(line.power_at(any).value <= line.greatest_power().power.power * (1.0 + 1e-12));
  }
}

TEST_CASE("the PTO gives the engine's power whatever the gear") {
  RandomInputs random;
  for (int i = 0; i < 500; ++i) {
    const EngineLine line = any_line(random);
    const PtoOption option =
        pto_option("lever", rpm(random.between(300.0, 1400.0)), rpm(random.between(1000.0, 2600.0)));
    const AngularSpeed engine = random.between(0.0, 1.1) * line.high_idle();
    const Validated<PtoOutput> out = pto_output(option, line, engine);
    CHECK(out.valid() == line.torque_at(engine).valid());
    CHECK_CLOSE(out.value.power.value(), line.power_at(engine).value.value(), 1e-14);
    CHECK_CLOSE(out.value.power.value(), (out.value.torque * out.value.speed).value(), 1e-13);
    CHECK_CLOSE(engine_speed_at(option, out.value.speed).value(), engine.value(), 1e-13);
  }
}

TEST_CASE("fuel grows with load and with engine speed, and the specific use falls with load") {
  RandomInputs random;
  for (int i = 0; i < 1000; ++i) {
    const Power rated = kilowatts(random.across(10.0, 300.0));
    const double load = random.between(0.2, 0.95);
    const double speed = random.between(0.5, 0.99);
    CHECK(fuel_rate(rated, load + 0.05, speed) > fuel_rate(rated, load, speed));
    CHECK(fuel_rate(rated, load, speed + 0.01) > fuel_rate(rated, load, speed));
    CHECK(specific_fuel(load + 0.05, speed) < specific_fuel(load, speed));
    CHECK_CLOSE((specific_fuel(load, speed) * (load * rated)).value(), fuel_rate(rated, load, speed).value(), 1e-14);
    CHECK(older_fuel_rate(rated, load).value > fuel_rate(rated, load));
  }
}

TEST_CASE("needs: more width or feed never needs less, and the inverse answers fit what was given") {
  RandomInputs random;
  for (const Machine& machine : machines()) {
    CAPTURE(std::string(machine.name));
    for (int i = 0; i < 50; ++i) {
      const Length width = metres(random.between(0.5, 12.0));
      const FeedRate feed{tonnes_per_hour(random.between(1.0, 60.0)), machine.basis};
      const FeedRate more{feed.rate * 1.1, machine.basis};
      const ImplementPower need = implement_power(machine, width, feed);
      CHECK(need.low <= need.mean);
      CHECK(need.mean <= need.high);
      CHECK(implement_power(machine, width * 1.1, more).mean >= need.mean);
      const double reserve = random.between(0.0, 0.5);
      const Power available = need.high / (1.0 - reserve);
      if (machine.per_width.value() > 0.0) {
        const ImplementLimit<Length> widest = widest_implement(machine, available, reserve, feed);
        CHECK_CLOSE(widest.safe.value(), width.value(), 1e-10);
        CHECK(widest.safe <= widest.mean);
        CHECK(widest.mean <= widest.optimistic);
      }
      if (machine.per_mass.value() > 0.0) {
        CHECK_CLOSE(greatest_feed(machine, available, reserve, width).safe.value(), feed.rate.value(), 1e-10);
      }
    }
  }
}
