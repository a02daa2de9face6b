// Laws of the simulation over random lines, and its closed forms as second methods.

#include <fieldshaft/dynamics.hpp>
#include <fieldshaft/joint.hpp>
#include <fieldshaft/overload.hpp>

#include "close.hpp"
#include "random.hpp"

#include <algorithm>

using namespace fieldshaft;

namespace {

LineBody body(double inertia, double speed = 0.0, double friction = 0.0) {
  LineBody body{"body", kilogram_square_metres(inertia), radians_per_second(speed)};
  body.load.friction = newton_metres(friction);
  return body;
}

LineBody held(double speed) {
  LineBody drive = body(1.0, speed);
  drive.drive = HeldSpeed{};
  return drive;
}

LineShaft shaft(double stiffness, double damping = 0.0) {
  return {newton_metres_per_radian(stiffness), newton_metre_seconds_per_radian(damping)};
}

SimulationSettings lasting(double time) {
  SimulationSettings settings;
  settings.duration = seconds(time);
  return settings;
}

LineJoints random_joints(RandomInputs& random) {
  return {radians(random.between(0.0, 0.6)), radians(random.between(0.0, 0.6)), radians(random.between(0.0, 3.0)),
          radians(random.between(0.0, 3.0))};
}

/// Engine, clutch with ramp, joints and shaft, hub, slip clutch, rotor, as a machine of the trade may have them.
PtoLine random_line(RandomInputs& random) {
  LineBody drive = body(random.between(1.0, 5.0), random.between(40.0, 110.0));
  if (random.whole(0, 1) == 0) drive.drive = HeldSpeed{};
  LineBody rotor = body(random.across(0.5, 10.0), 0.0, random.between(1.0, 60.0));
  rotor.load.windage = newton_metres(random.between(0.0, 50.0));
  rotor.load.windage_speed = rpm(540);
  LineShaft elastic = shaft(random.across(3000.0, 30000.0), random.between(0.0, 10.0));
  elastic.joints = random_joints(random);
  elastic.ratio = random.between(0.5, 3.0);
  if (random.whole(0, 1) == 0) elastic.backlash = radians(random.between(0.0, 0.05));
  const LineClutch clutch{newton_metres(random.between(500.0, 3000.0)), seconds(random.between(0.0, 0.3)),
                          seconds(random.between(0.0, 1.0))};
  const LineClutch device{newton_metres(random.between(300.0, 1500.0))};
  return {{drive, body(random.between(0.05, 0.3)), body(random.between(0.03, 0.2)), rotor}, {clutch, elastic, device}};
}

PtoLine mirrored(PtoLine line) {
  for (LineBody& body : line.bodies) body.speed = -body.speed;
  for (LineLink& link : line.links) {
    if (auto* elastic = std::get_if<LineShaft>(&link)) {
      if (!elastic->joints) continue;
      elastic->joints->rotation = -elastic->joints->rotation;
      elastic->joints->phase = -elastic->joints->phase;
    }
    if (auto* overrun = std::get_if<LineOverrun>(&link)) overrun->backwards = !overrun->backwards;
  }
  return line;
}

} // namespace

TEST_CASE("without losses energy is conserved to 1e-5 over hundreds of oscillations") {
  RandomInputs random;
  for (int n = 0; n < 20; ++n) {
    PtoLine line{{body(random.between(0.1, 3.0), random.between(-50.0, 50.0))}, {}};
    const int links = random.whole(1, 4);
    for (int i = 0; i < links; ++i) {
      line.bodies.push_back(body(random.between(0.1, 3.0), random.between(-50.0, 50.0)));
      LineShaft elastic = shaft(random.across(1000.0, 20000.0));
      elastic.ratio = random.between(0.5, 2.0);
      if (random.whole(0, 2) == 0) elastic.backlash = radians(random.between(0.0, 0.1));
      if (random.whole(0, 2) == 0) elastic.joints = random_joints(random);
      line.links.emplace_back(elastic);
    }
    const SimulationResult result = simulate(line, lasting(3.0));
    REQUIRE(result.complete);
    const EnergyBalance& energy = result.energy;
    CHECK(std::abs(energy.heat.value()) <= 1e-12 * energy.at_start.value()); // rounding
    CHECK(energy.drive.value() == 0.0);
    CHECK(energy.error < 1e-5);
    CHECK_CLOSE((energy.motion + energy.twist).value(), energy.at_start.value(), 1e-5);
  }
}

TEST_CASE("a finer tolerance conserves energy better") {
  double last = 1.0;
  for (const double tolerance : {1e-4, 1e-6, 1e-8}) {
    SimulationSettings settings = lasting(10.0);
    settings.relative_tolerance = tolerance;
    const SimulationResult result = simulate({{body(1.0, 1.0), body(2.0)}, {shaft(1000.0)}}, settings);
    CHECK(result.energy.error < 0.1 * last);
    last = result.energy.error;
  }
  CHECK(last < 1e-7);
}

TEST_CASE("energy balances in machines that slip, jam and rub") {
  RandomInputs random;
  int slipped = 0;
  for (int n = 0; n < 40; ++n) {
    PtoLine line = random_line(random);
    if (n % 2 == 0) line.bodies[3].blocked_at = seconds(2.0);
    const SimulationResult result = simulate(line, lasting(3.0));
    REQUIRE(result.complete);
    CHECK(result.energy.error < 1e-6);
    for (const LinkResult& link : result.links) CHECK(link.heat.value() >= 0.0);
    slipped += result.links[2].heat.value() > 1.0;
  }
  CHECK(slipped > 10);
}

TEST_CASE("engagement takes the time and makes the heat of the closed form") {
  RandomInputs random;
  for (int n = 0; n < 50; ++n) {
    const MomentOfInertia inertia = kilogram_square_metres(random.across(0.1, 50.0));
    const double speed = random.between(20.0, 120.0);
    const Torque load = newton_metres(random.between(0.0, 500.0));
    const Torque torque = load + newton_metres(random.across(10.0, 2000.0));
    const ClutchEngagement expected = clutch_engagement(inertia, radians_per_second(speed), torque, load);
    const PtoLine line{{held(speed), body(inertia.value(), 0.0, load.value())}, {LineClutch{torque}}};
    const SimulationResult result = simulate(line, lasting(1.2 * expected.time.value()));
    REQUIRE(result.links[0].locked_at);
    CHECK(std::abs(result.links[0].locked_at->value() - expected.time.value()) < 1e-7 * expected.time.value() + 3e-9);
    CHECK(result.links[0].slip_time == *result.links[0].locked_at);
    CHECK_CLOSE(result.links[0].heat.value(), expected.heat.value(), 1e-6);
  }
}

TEST_CASE("two free masses meet as in the closed form") {
  RandomInputs random;
  for (int n = 0; n < 50; ++n) {
    const double driving = random.across(0.5, 50.0);
    const double driven = random.across(0.5, 50.0);
    const double fast = random.between(50.0, 120.0);
    const double slow = random.between(0.0, 40.0);
    const Torque torque = newton_metres(random.across(100.0, 2000.0));
    const Torque load = newton_metres(random.between(0.0, 80.0));
    const ClutchEngagement expected = free_clutch_engagement(kilogram_square_metres(driving), radians_per_second(fast),
                                                             kilogram_square_metres(driven), radians_per_second(slow),
                                                             torque, newton_metres(0), load);
    const PtoLine line{{body(driving, fast), body(driven, slow, load.value())}, {LineClutch{torque}}};
    const SimulationResult result = simulate(line, lasting(expected.time.value() * 1.0001));
    REQUIRE(result.links[0].locked_at);
    CHECK_CLOSE(result.links[0].locked_at->value(), expected.time.value(), 1e-6);
    CHECK_CLOSE(result.links[0].heat.value(), expected.heat.value(), 1e-6);
    CHECK_CLOSE(result.bodies[1].speed.value(), expected.speed.value(), 1e-3);
  }
}

TEST_CASE("two inertias swing with the closed form's frequency and peak") {
  RandomInputs random;
  for (int n = 0; n < 30; ++n) {
    const double first = random.across(0.05, 5.0);
    const double second = random.across(0.05, 5.0);
    const double stiffness = random.across(500.0, 50000.0);
    const double ratio = random.between(0.3, 3.0);
    const double referred = second * ratio * ratio; // at the speed of the first
    const double frequency = std::sqrt(stiffness * (1.0 / first + 1.0 / referred));
    const double speed = random.between(0.5, 20.0);
    LineShaft elastic = shaft(stiffness);
    elastic.ratio = ratio;
    const SimulationResult result =
        simulate({{body(first, speed), body(second)}, {elastic}}, lasting(10.0 * 2.0 * pi / frequency));
    // After ten whole periods everything is as at the start; at a quarter the twist is the greatest.
    CHECK_CLOSE(result.bodies[0].speed.value(), speed, 1e-5);
    CHECK(std::abs(result.bodies[1].speed.value()) < 1e-5 * speed * std::max(1.0, first / second));
    CHECK_CLOSE(std::abs(result.links[0].peak.torque.value()), stiffness * speed / frequency, 2e-5);
  }
}

TEST_CASE("a shaft between two held speeds twists by what its joints run ahead") {
  RandomInputs random;
  for (int n = 0; n < 20; ++n) {
    const LineJoints joints{radians(random.between(0.1, 0.7)), {}, {}, radians(random.between(0.0, 3.0))};
    LineShaft elastic = shaft(1000.0);
    elastic.joints = joints;
    SimulationSettings settings = lasting(0.5);
    settings.sample_every = seconds(0.01);
    const SimulationResult result = simulate({{held(50.0), held(50.0)}, {elastic}}, settings);
    const Angle start = joint_displacement(joints.front, joints.rotation);
    double greatest = 0.0;
    for (const TraceSample& sample : result.trace) {
      const Angle now = joint_displacement(joints.front, joints.rotation + radians(50.0 * sample.time.value()));
      CHECK(std::abs(sample.torques[0].value() - 1000.0 * (now - start).value()) < 3e-4);
      greatest = std::max(greatest, std::abs(sample.torques[0].value()));
    }
    // Over whole turns the peak is lead and lag of the joint, counted from the start.
    const double peak = 1000.0 * (joint_peak_displacement(joints.front) + math::abs(start)).value();
    CHECK_CLOSE(std::abs(result.links[0].peak.torque.value()), peak, 1e-5);
    CHECK(greatest <= peak * (1.0 + 1e-6));
  }
}

TEST_CASE("equal joints in phase run as a shaft without joints") {
  RandomInputs random;
  for (int n = 0; n < 5; ++n) {
    PtoLine plain = random_line(random);
    auto& elastic = std::get<LineShaft>(plain.links[1]);
    const Angle angle = radians(random.between(0.0, 0.8));
    PtoLine jointed = plain;
    elastic.joints.reset();
    std::get<LineShaft>(jointed.links[1]).joints = LineJoints{angle, angle, {}, radians(random.between(0.0, 3.0))};
    const SimulationResult a = simulate(plain, lasting(2.0));
    const SimulationResult b = simulate(jointed, lasting(2.0));
    CHECK_CLOSE(a.links[1].peak.torque.value(), b.links[1].peak.torque.value(), 1e-4);
    CHECK_CLOSE(a.links[0].heat.value(), b.links[0].heat.value(), 1e-5);
  }
}

TEST_CASE("a rotor runs down as in the closed form") {
  RandomInputs random;
  for (int n = 0; n < 50; ++n) {
    LineBody rotor = body(random.across(0.2, 20.0), random.between(20.0, 200.0), random.across(1.0, 50.0));
    rotor.load.windage = newton_metres(random.between(0.0, 60.0));
    rotor.load.windage_speed = rotor.speed;
    const Time expected = run_down_time(rotor.inertia, rotor.speed, rotor.load.friction, rotor.load.windage);
    SimulationSettings settings = lasting(1.5 * expected.value());
    settings.until_standstill = true;
    const SimulationResult result = simulate({{rotor}, {}}, settings);
    CHECK(result.end == SimulationEnd::standstill);
    REQUIRE(result.bodies[0].standstill);
    CHECK_CLOSE(result.bodies[0].standstill->value(), expected.value(), 5e-6);
    CHECK(result.bodies[0].speed.value() == 0.0);
  }
}

TEST_CASE("a line that turns the other way does the same, mirrored") {
  RandomInputs random;
  for (int n = 0; n < 10; ++n) {
    PtoLine line = random_line(random);
    line.bodies.push_back(body(2.0, 0.0, 3.0));
    line.links.emplace_back(LineOverrun{newton_metres(2.0)});
    line.bodies[2].brakes = {{seconds(1.5), newton_metres(200)}};
    const SimulationResult a = simulate(line, lasting(2.0));
    const SimulationResult b = simulate(mirrored(line), lasting(2.0));
    REQUIRE(a.events.size() == b.events.size());
    for (std::size_t i = 0; i < a.links.size(); ++i) {
      CHECK_CLOSE(a.links[i].peak.torque.value(), -b.links[i].peak.torque.value(), 1e-6);
      CHECK(std::abs(a.links[i].heat.value() - b.links[i].heat.value()) <
            1e-6 * (a.energy.at_start + a.energy.drive).value());
    }
    for (std::size_t i = 0; i < a.bodies.size(); ++i) {
      CHECK(std::abs((a.bodies[i].speed + b.bodies[i].speed).value()) < 1e-4);
    }
  }
}

TEST_CASE("no clutch passes more than it holds, and behind a blockage the shaft swings to twice that at most") {
  RandomInputs random;
  for (int n = 0; n < 40; ++n) {
    PtoLine line = random_line(random);
    line.bodies[3].blocked_at = seconds(1.0);
    const SimulationResult result = simulate(line, lasting(2.0));
    for (const std::size_t i : {std::size_t{0}, std::size_t{2}}) {
      const double holds = std::get<LineClutch>(line.links[i]).torque.value();
      CHECK(std::abs(result.links[i].peak.torque.value()) <= holds * (1.0 + 1e-6));
    }
    // A hub on a shaft whose other end keeps its speed, against the step of a slip clutch.
    const double slip = random.between(300.0, 1500.0);
    const double hub = random.between(0.03, 0.2);
    const double stiffness = random.across(3000.0, 30000.0);
    PtoLine step{{held(56.5), body(hub, 56.5), body(5.0, 56.5)}, {shaft(stiffness), LineClutch{newton_metres(slip)}}};
    step.bodies[2].blocked_at = seconds(0.0);
    const SimulationResult blow = simulate(step, lasting(5.0 * 2.0 * pi * std::sqrt(hub / stiffness)));
    const double sticks = 56.5 * std::sqrt(hub * stiffness); // the hub would stop in the first swing below this
    if (slip < 0.9 * sticks) CHECK_CLOSE(blow.links[0].peak.torque.value(), 2.0 * slip, 1e-4);
    CHECK(blow.links[0].peak.torque.value() <= 2.0 * slip * (1.0 + 1e-6));
  }
}

TEST_CASE("momentum is kept where only links act") {
  RandomInputs random;
  for (int n = 0; n < 20; ++n) {
    PtoLine line{{body(random.between(0.5, 5.0), random.between(0.0, 80.0)), body(random.between(0.1, 2.0)),
                  body(random.between(0.5, 5.0), random.between(-20.0, 20.0))},
                 {LineClutch{newton_metres(random.between(50.0, 900.0))}, shaft(random.across(1000.0, 20000.0), 2.0)}};
    const auto momentum = [&](auto speed) {
      double sum = 0.0;
      for (std::size_t i = 0; i < 3; ++i) sum += line.bodies[i].inertia.value() * speed(i).value();
      return sum;
    };
    const SimulationResult result = simulate(line, lasting(3.0));
    const double before = momentum([&](std::size_t i) { return line.bodies[i].speed; });
    const double after = momentum([&](std::size_t i) { return result.bodies[i].speed; });
    CHECK(std::abs(after - before) < 1e-6 * 80.0 * 12.0);
  }
}
