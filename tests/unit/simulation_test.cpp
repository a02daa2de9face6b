// The simulation of a line in time: what it refuses, its events, and what each kind of link does.

#include <fieldshaft/dynamics.hpp>

#include "close.hpp"

#include <fieldshaft/materials.hpp>
#include <fieldshaft/overload.hpp>
#include <fieldshaft/pto.hpp>
#include <fieldshaft/shaft.hpp>
#include <fieldshaft/spline.hpp>

#include <limits>

using namespace fieldshaft;

namespace {

const double not_a_number = std::numeric_limits<double>::quiet_NaN();
const double endless = std::numeric_limits<double>::infinity();

LineBody body(double inertia, AngularSpeed speed = {}, double friction = 0.0) {
  LineBody body{"body", kilogram_square_metres(inertia), speed};
  body.load.friction = newton_metres(friction);
  return body;
}

LineBody held(AngularSpeed speed) {
  LineBody drive = body(1.0, speed);
  drive.drive = HeldSpeed{};
  return drive;
}

/// A drive held at 540 r/min, a link, and a body at rest behind it.
PtoLine started_by(const LineLink& link, double inertia = 4.0, double load = 250.0) {
  return {{held(rpm(540)), body(inertia, {}, load)}, {link}};
}

LineShaft shaft(double stiffness, double damping = 0.0) {
  return {newton_metres_per_radian(stiffness), newton_metre_seconds_per_radian(damping)};
}

/// A line that turns at 540 r/min: held drive, shaft, hub, device, rotor. The rotor is blocked after a tenth of a
/// second.
PtoLine blocked_behind(const LineLink& device) {
  PtoLine line{{held(rpm(540)), body(0.05, rpm(540)), body(4.0, rpm(540), 30.0)}, {shaft(10000.0, 5.0), device}};
  line.bodies[2].blocked_at = seconds(0.1);
  return line;
}

SimulationSettings lasting(double time) {
  SimulationSettings settings;
  settings.duration = seconds(time);
  return settings;
}

const LineEvent* find(const SimulationResult& result, LineEventKind kind, std::size_t index) {
  for (const LineEvent& event : result.events) {
    if (event.kind == kind && event.index == index) return &event;
  }
  return nullptr;
}

/// The message of the error that a line raises.
std::string refusal(const PtoLine& line, const SimulationSettings& settings = {}) {
  try {
    simulate(line, settings);
  } catch (const InputError& error) {
    return error.what();
  }
  return "";
}

template <class Change> std::string refused_body(Change change) {
  PtoLine line = started_by(LineClutch{newton_metres(600)});
  change(line.bodies[1]);
  return refusal(line);
}

template <class Change> std::string refused_shaft(Change change) {
  LineShaft link = shaft(1000.0);
  link.joints = LineJoints{};
  change(link);
  return refusal(started_by(link));
}

template <class Change> std::string refused_clutch(Change change) {
  LineClutch link{newton_metres(600)};
  change(link);
  return refusal(started_by(link));
}

bool names(const std::string& message, const std::string& part) { return message.find(part) != std::string::npos; }

} // namespace

TEST_CASE("a line without bodies, or with the wrong number of links, is refused") {
  CHECK(refusal({}) == "simulate: bodies = none; allowed: at least one");
  PtoLine line = started_by(LineClutch{newton_metres(600)});
  line.links.clear();
  CHECK(refusal(line) == "simulate: links = 0; allowed: one fewer than bodies, 1");
}

TEST_CASE("bodies that cannot be are refused") {
  for (const double bad : {0.0, -1.0, not_a_number, endless}) {
    CHECK(names(refused_body([&](LineBody& b) { b.inertia = kilogram_square_metres(bad); }), "inertia"));
  }
  for (const double bad : {not_a_number, endless}) {
    CHECK(names(refused_body([&](LineBody& b) { b.speed = radians_per_second(bad); }), "speed"));
  }
  for (const double bad : {-1.0, not_a_number, endless}) {
    CHECK(names(refused_body([&](LineBody& b) { b.load.friction = newton_metres(bad); }), "load.friction"));
    CHECK(names(refused_body([&](LineBody& b) { b.load.windage = newton_metres(bad); }), "load.windage"));
    CHECK(names(refused_body([&](LineBody& b) { b.load.windage_speed = rpm(bad); }), "load.windage_speed"));
    CHECK(names(refused_body([&](LineBody& b) { b.load.viscous = newton_metre_seconds_per_radian(bad); }), "viscous"));
    CHECK(names(refused_body([&](LineBody& b) { b.brakes = {{seconds(bad), newton_metres(1)}}; }), "brakes.from"));
    CHECK(names(refused_body([&](LineBody& b) { b.brakes = {{seconds(1), newton_metres(bad)}}; }), "brakes.torque"));
    CHECK(names(refused_body([&](LineBody& b) { b.blocked_at = seconds(bad); }), "blocked_at"));
  }
  CHECK(names(refused_body([](LineBody& b) { b.load.windage = newton_metres(1); }), "load.windage_speed = 0 rad/s"));
  CHECK(names(refused_body([](LineBody& b) {
                b.drive = HeldSpeed{};
                b.blocked_at = seconds(1);
              }),
              "a body without a drive"));
}

TEST_CASE("an engine outside its line is refused") {
  const EngineLine engine({{rpm(1000), newton_metres(300)}, {rpm(2000), newton_metres(250)}}, rpm(2200));
  PtoLine line{{body(2.0, rpm(540))}, {}};
  line.bodies[0].drive = EngineDrive{engine, 0.0};
  CHECK(names(refusal(line), "drive.ratio"));
  line.bodies[0].drive = EngineDrive{engine, 0.27};
  CHECK(refusal(line).empty());
  line.bodies[0].speed = rpm(0.27 * 999);
  CHECK(names(refusal(line), "speed of a body with an engine"));
  line.bodies[0].speed = rpm(0.27 * 2201);
  CHECK(names(refusal(line), "speed of a body with an engine"));
}

TEST_CASE("links that cannot be are refused") {
  for (const double bad : {0.0, -1.0, not_a_number, endless}) {
    CHECK(names(refused_shaft([&](LineShaft& s) { s.stiffness = newton_metres_per_radian(bad); }), "stiffness"));
    CHECK(names(refused_shaft([&](LineShaft& s) { s.ratio = bad; }), "ratio"));
    CHECK(names(refused_clutch([&](LineClutch& c) { c.torque = newton_metres(bad); }), "torque"));
    PtoLine line = blocked_behind(LineShearBolt{newton_metres(bad)});
    CHECK(names(refusal(line), "torque"));
    line = blocked_behind(LineCutOut{newton_metres(bad)});
    CHECK(names(refusal(line), "torque"));
  }
  for (const double bad : {-1.0, not_a_number, endless}) {
    CHECK(names(refused_shaft([&](LineShaft& s) { s.damping = newton_metre_seconds_per_radian(bad); }), "damping"));
    CHECK(names(refused_shaft([&](LineShaft& s) { s.backlash = radians(bad); }), "backlash"));
    CHECK(names(refused_clutch([&](LineClutch& c) { c.engage_at = seconds(bad); }), "engage_at"));
    CHECK(names(refused_clutch([&](LineClutch& c) { c.ramp = seconds(bad); }), "ramp"));
    CHECK(names(refused_clutch([&](LineClutch& c) { c.release_at = seconds(bad); }), "release_at"));
    CHECK(names(refusal(started_by(LineOverrun{newton_metres(bad)})), "drag"));
    CHECK(names(refusal(blocked_behind(LineCutOut{newton_metres(900), bad})), "tripped_share"));
  }
  CHECK(names(refused_clutch([](LineClutch& c) { c.break_away = 0.99; }), "break_away"));
  CHECK(names(refused_clutch([](LineClutch& c) {
                c.engage_at = seconds(2);
                c.release_at = seconds(1);
              }),
              "release_at"));
}

TEST_CASE("joints at and past 90° are refused") {
  for (const double bad : {90.0, 91.0, -1.0, not_a_number}) {
    CHECK(names(refused_shaft([&](LineShaft& s) { s.joints->front = degrees(bad); }), "joints.front"));
    CHECK(names(refused_shaft([&](LineShaft& s) { s.joints->rear = degrees(bad); }), "joints.rear"));
  }
  CHECK(names(refused_shaft([](LineShaft& s) { s.joints->phase = radians(not_a_number); }), "joints.phase"));
  CHECK(names(refused_shaft([](LineShaft& s) { s.joints->rotation = radians(endless); }), "joints.rotation"));
}

TEST_CASE("what holds from the start joins bodies that turn alike") {
  CHECK(names(refusal(started_by(LineShearBolt{newton_metres(900)})), "behind a link that holds"));
  CHECK(names(refusal(started_by(LineCutOut{newton_metres(900)})), "behind a link that holds"));
  CHECK(names(refusal(started_by(LineOverrun{})), "behind a link that holds"));
  PtoLine ahead{{body(1.0), body(4.0, rpm(540), 5.0)}, {LineOverrun{}}};
  CHECK(refusal(ahead).empty());
  ahead.bodies[1].blocked_at = seconds(1);
  CHECK(names(refusal(ahead), "a brake with a torque in its place"));
}

TEST_CASE("settings that cannot be are refused") {
  const PtoLine line = started_by(LineClutch{newton_metres(600)});
  const auto refused = [&](auto change) {
    SimulationSettings settings;
    change(settings);
    return refusal(line, settings);
  };
  for (const double bad : {0.0, -1.0, not_a_number, endless}) {
    CHECK(names(refused([&](SimulationSettings& s) { s.duration = seconds(bad); }), "duration"));
    CHECK(names(refused([&](SimulationSettings& s) { s.event_tolerance = seconds(bad); }), "event_tolerance"));
    CHECK(names(refused([&](SimulationSettings& s) { s.relative_tolerance = bad; }), "relative_tolerance"));
  }
  CHECK(names(refused([&](SimulationSettings& s) { s.relative_tolerance = 0.02; }), "relative_tolerance"));
  CHECK(names(refused([&](SimulationSettings& s) { s.sample_every = seconds(-1); }), "sample_every"));
  CHECK(names(refused([&](SimulationSettings& s) { s.sample_every = seconds(1e-6); }), "sample_every"));
  CHECK(names(refused([&](SimulationSettings& s) { s.max_steps = 0; }), "max_steps"));
  CHECK(names(refused([&](SimulationSettings& s) { s.max_events = 0; }), "max_events"));
}

TEST_CASE("a clutch that does not exceed the load slips to the end, and the rotor stays at rest") {
  const SimulationResult result = simulate(started_by(LineClutch{newton_metres(200)}), lasting(3.0));
  CHECK(result.complete);
  CHECK(!result.links[0].locked_at);
  CHECK(result.bodies[1].speed.value() == 0.0);
  CHECK_CLOSE(result.links[0].slip_time.value(), 3.0, 1e-12);
  CHECK_CLOSE(result.links[0].heat.value(), 200.0 * rpm(540).value() * 3.0, 1e-9);
}

TEST_CASE("a ramp engages evenly: the rotor starts when the clutch exceeds its friction") {
  const LineClutch clutch{newton_metres(600), seconds(0.5), seconds(1.2)};
  const SimulationResult result = simulate(started_by(clutch), lasting(5.0));
  REQUIRE(find(result, LineEventKind::starts, 1) != nullptr);
  CHECK_CLOSE(find(result, LineEventKind::starts, 1)->time.value(), 0.5 + 1.2 * 250.0 / 600.0, 1e-8);
  // From there I w = a t²/2 with a = 500 N·m/s over the rest of the ramp, then evenly: 4 kg·m², 350 N·m at its end.
  const double rest = 1.2 * 350.0 / 600.0;
  const double reached = 0.5 * 500.0 * rest * rest / 4.0;
  const double locked = 0.5 + 1.2 + (rpm(540).value() - reached) * 4.0 / 350.0;
  REQUIRE(result.links[0].locked_at);
  CHECK_CLOSE(result.links[0].locked_at->value(), locked, 1e-7);
  CHECK_CLOSE(result.links[0].peak.torque.value(), 600.0, 1e-9);
}

TEST_CASE("a clutch that is let go carries nothing, and the rotor runs down") {
  LineClutch clutch{newton_metres(600)};
  clutch.release_at = seconds(1.0);
  PtoLine line = started_by(clutch);
  line.bodies[0].drive = {};
  line.bodies[0].load.friction = newton_metres(20);
  line.bodies[0].inertia = kilogram_square_metres(1e6); // hardly slowed by the start
  const SimulationResult result = simulate(line, lasting(20.0));
  REQUIRE(result.bodies[1].standstill);
  CHECK_CLOSE(result.bodies[1].standstill->value(), 1.0 + 4.0 * rpm(540).value() / 250.0, 1e-5);
  CHECK(find(result, LineEventKind::releases, 0)->time.value() == 1.0);
  CHECK(result.bodies[1].speed.value() == 0.0);
}

TEST_CASE("a harder break-away lets more through before it slips") {
  for (const double factor : {1.0, 1.3}) {
    LineClutch clutch{newton_metres(900)};
    clutch.break_away = factor;
    PtoLine line = blocked_behind(clutch);
    line.bodies[2].blocked_at.reset();
    line.bodies[2].brakes = {{seconds(0.1), newton_metres(4000)}};
    const SimulationResult result = simulate(line, lasting(0.5));
    CHECK_CLOSE(result.links[1].peak.torque.value(), 900.0 * factor, 2e-4);
    CHECK(find(result, LineEventKind::slips, 1) != nullptr);
  }
}

TEST_CASE("a shear bolt breaks once and carries nothing afterwards") {
  const SimulationResult result = simulate(blocked_behind(LineShearBolt{newton_metres(900)}), lasting(3.0));
  CHECK(result.links[1].broken);
  CHECK(find(result, LineEventKind::breaks, 1)->time.value() == 0.1);
  CHECK(result.links[1].heat.value() == 0.0);
  CHECK_CLOSE(result.bodies[1].speed.value(), rpm(540).value(), 1e-6); // runs free
  CHECK(result.bodies[2].standstill->value() == 0.1);
}

TEST_CASE("a shear bolt that bears the start does not break") {
  PtoLine line = blocked_behind(LineShearBolt{newton_metres(900)});
  line.bodies[2].blocked_at.reset();
  const SimulationResult result = simulate(line, lasting(1.0));
  CHECK(!result.links[1].broken);
  CHECK(result.links[1].peak.torque.value() < 900.0);
}

TEST_CASE("a cut-out clutch stays out at its share until both sides stand, and then holds again") {
  PtoLine line = blocked_behind(LineCutOut{newton_metres(900), 0.15});
  const SimulationResult out = simulate(line, lasting(2.0));
  CHECK(out.links[1].tripped);
  CHECK(find(out, LineEventKind::trips, 1)->time.value() == 0.1);
  // It drags at its share while the driveline turns on.
  CHECK_CLOSE(out.links[1].heat.value(), 0.15 * 900.0 * rpm(540).value() * 1.9, 0.01);

  line.bodies.insert(line.bodies.begin() + 1, body(0.1, rpm(540)));
  LineClutch clutch{newton_metres(2000)};
  clutch.release_at = seconds(1.0);
  line.links.insert(line.links.begin(), clutch);
  line.bodies[1].brakes = {{seconds(1.0), newton_metres(50)}};
  const SimulationResult reset = simulate(line, lasting(10.0));
  CHECK(!reset.links[2].tripped);
  REQUIRE(find(reset, LineEventKind::resets, 2) != nullptr);
  CHECK(find(reset, LineEventKind::resets, 2)->time > seconds(1.0));
}

TEST_CASE("a rotor that is blocked while it runs ahead of its slipping clutch does not stop what drives it") {
  PtoLine line{{body(0.1, radians_per_second(30)), body(4.0, radians_per_second(50))}, {LineClutch{newton_metres(20)}}};
  line.bodies[1].blocked_at = seconds(0.01);
  const SimulationResult result = simulate(line, lasting(0.02));
  CHECK_CLOSE(result.bodies[0].speed.value(), 30.0, 1e-9); // a hundredth of a second driven on, as long held back
  CHECK(result.energy.error < 1e-9);
}

TEST_CASE("an overrunning clutch lets the rotor run on behind a stopped driveline") {
  PtoLine line{{body(0.2, rpm(540), 0.0), body(4.0, rpm(540), 5.0)}, {LineOverrun{newton_metres(1)}}};
  line.bodies[0].brakes = {{seconds(0.5), newton_metres(100)}};
  SimulationSettings settings = lasting(100.0);
  settings.until_standstill = true;
  const SimulationResult result = simulate(line, settings);
  CHECK(result.end == SimulationEnd::standstill);
  CHECK(find(result, LineEventKind::overruns, 0) != nullptr);
  REQUIRE(result.bodies[0].standstill);
  REQUIRE(result.bodies[1].standstill);
  CHECK(result.bodies[0].standstill->value() < 0.8);
  // Half a second coupled, then alone against friction and drag.
  const AngularSpeed left = rpm(540) - radians_per_second(0.5 * 5.0 / 4.2);
  const OverrunCoast coast =
      overrun_coast(kilogram_square_metres(4), left, newton_metres(5), newton_metres(0), newton_metres(1));
  CHECK_CLOSE(result.bodies[1].standstill->value(), 0.5 + coast.time.value(), 1e-4);
  CHECK_CLOSE(result.links[0].peak.torque.value(), -1.0, 1e-9); // the drag; before, 0.24 N·m from the drive's side
}

TEST_CASE("without an overrunning clutch the rotor drives the tractor on") {
  PtoLine line{{body(0.2, rpm(540), 0.0), body(4.0, rpm(540), 5.0)}, {LineClutch{newton_metres(1000)}}};
  line.bodies[0].brakes = {{seconds(0.5), newton_metres(100)}};
  const SimulationResult result = simulate(line, lasting(5.0));
  const AngularSpeed left = rpm(540) - radians_per_second(0.5 * 5.0 / 4.2);
  CHECK_CLOSE(result.bodies[0].standstill->value(), 0.5 + 4.2 * left.value() / 105.0, 1e-6);
  CHECK_CLOSE(result.links[0].peak.torque.value(), 5.0 - 4.0 * 105.0 / 4.2, 1e-9);
}

TEST_CASE("a body at rest stays there until its friction is exceeded") {
  PtoLine line{{body(1.0), body(1.0, {}, 50.0)}, {shaft(1000.0)}};
  line.bodies[0].speed = radians_per_second(1.0); // peak of the shaft 1·sqrt(1000) = 31.6 N·m below the friction
  const SimulationResult result = simulate(line, lasting(1.0));
  CHECK(result.bodies[1].speed.value() == 0.0);
  CHECK(result.events.empty());
  CHECK_CLOSE(result.links[0].peak.torque.value(), std::sqrt(1000.0), 1e-5);
}

TEST_CASE("flanks with play between them carry nothing until they touch") {
  LineShaft loose = shaft(1000.0);
  loose.backlash = radians(0.2);
  PtoLine line{{body(1.0, radians_per_second(1.0)), body(1e9)}, {loose}};
  SimulationSettings settings = lasting(0.09);
  CHECK(simulate(line, settings).links[0].peak.torque.value() == 0.0);
  settings.duration = seconds(2.0);
  const SimulationResult result = simulate(line, settings);
  CHECK_CLOSE(std::abs(result.links[0].peak.torque.value()), std::sqrt(1000.0), 1e-5);
  CHECK(result.energy.error < 1e-6);
  // There and back: half an oscillation on each flank and the whole play between, twice.
  const double period = 2.0 * (pi / std::sqrt(1000.0) + 0.2);
  settings.duration = seconds(period);
  CHECK_CLOSE(simulate(line, settings).bodies[0].speed.value(), 1.0, 1e-5);
}

TEST_CASE("damped flanks push and never pull, and what they lose is heat") {
  LineShaft loose = shaft(1000.0, 20.0);
  loose.backlash = radians(0.02);
  const PtoLine line{{body(1.0, radians_per_second(1.0)), body(2.0)}, {loose}};
  SimulationSettings settings = lasting(3.0);
  settings.sample_every = seconds(0.001);
  const SimulationResult result = simulate(line, settings);
  CHECK(result.links[0].heat.value() > 0.1);
  CHECK(result.energy.error < 1e-6);
  double twist = 0.0;
  for (std::size_t i = 1; i < result.trace.size(); ++i) {
    const TraceSample& sample = result.trace[i];
    twist += (sample.speeds[0] - sample.speeds[1]).value() * 0.001;
    if (std::abs(twist) > 0.012) CHECK(twist * sample.torques[0].value() >= 0.0);
  }
}

TEST_CASE("an engine with a torque line slows down under load, and stalls below it") {
  const EngineLine engine({{rpm(1000), newton_metres(300)}, {rpm(2000), newton_metres(250)}}, rpm(2200));
  PtoLine line{{body(2.0, rpm(540)), body(4.0, {}, 100.0)}, {LineClutch{newton_metres(1500), {}, seconds(1)}}};
  line.bodies[0].drive = EngineDrive{engine, 0.27}; // 2000 r/min at 540 r/min: 926 N·m at the PTO
  const SimulationResult runs = simulate(line, lasting(10.0));
  CHECK(find(runs, LineEventKind::stalls, 0) == nullptr);
  REQUIRE(runs.links[0].locked_at);
  // Balance on the governor line: 250 N·m (2200 - n)/200 / 0.27 = 100 N·m.
  CHECK_CLOSE(in(runs.bodies[0].speed, unit::rpm), 0.27 * (2200.0 - 200.0 * 27.0 / 250.0), 1e-6);

  line.bodies[1].load.friction = newton_metres(1400);
  const SimulationResult stalls = simulate(line, lasting(10.0));
  CHECK(find(stalls, LineEventKind::stalls, 0) != nullptr);
  CHECK(stalls.bodies[0].speed.value() == 0.0);
}

TEST_CASE("too stiff, too long or too busy: the result says so and how far it came") {
  PtoLine stiff{{body(1.0, rpm(540)), body(1e-6)}, {shaft(1e9)}};
  SimulationSettings settings = lasting(100.0);
  settings.max_steps = 5000;
  const SimulationResult result = simulate(stiff, settings);
  CHECK(!result.complete);
  CHECK(result.end == SimulationEnd::too_many_steps);
  CHECK(result.steps == 5000);
  CHECK(result.reached > seconds(0));
  CHECK(result.reached < seconds(100));
  CHECK(names(simulation_end_text(result.end), "too stiff"));

  LineShaft loose = shaft(1e5);
  loose.backlash = radians(1e-3);
  settings.max_steps = 1000000;
  settings.max_events = 50;
  const SimulationResult busy = simulate({{body(1.0, radians_per_second(1.0)), body(1.0)}, {loose}}, settings);
  CHECK(busy.end == SimulationEnd::too_many_events);
  CHECK(!busy.complete);
}

TEST_CASE("numbers beyond the machine end with a reason, never with a hang") {
  const SimulationResult huge = simulate({{body(1e-300, rpm(540)), body(1.0)}, {shaft(1e300)}}, lasting(1.0));
  CHECK(!huge.complete);
  CHECK(!std::string(simulation_end_text(huge.end)).empty());
  for (const SimulationEnd end :
       {SimulationEnd::duration, SimulationEnd::standstill, SimulationEnd::too_many_steps,
        SimulationEnd::too_many_events, SimulationEnd::step_too_small, SimulationEnd::not_finite}) {
    CHECK(!std::string(simulation_end_text(end)).empty());
  }
}

TEST_CASE("the trace has a sample at every wanted time and costs nothing when it is not wanted") {
  SimulationSettings settings = lasting(1.0);
  const PtoLine line = started_by(LineClutch{newton_metres(600)});
  CHECK(simulate(line, settings).trace.empty());
  settings.sample_every = seconds(0.125);
  const SimulationResult result = simulate(line, settings);
  REQUIRE(result.trace.size() == 9);
  for (std::size_t i = 0; i < result.trace.size(); ++i) {
    const TraceSample& sample = result.trace[i];
    CHECK(sample.time.value() == 0.125 * static_cast<double>(i));
    const double expected = std::fmin(350.0 / 4.0 * sample.time.value(), rpm(540).value());
    CHECK(std::abs(sample.speeds[1].value() - expected) < 1e-6);
  }
  CHECK_CLOSE(result.trace[2].torques[0].value(), 600.0, 1e-12);
  CHECK_CLOSE(result.trace[8].torques[0].value(), 250.0, 1e-9);
}

TEST_CASE("a slip clutch protects six splines from a blocked cutter") {
  // An invented rotary cutter at 540 r/min behind a type 1 stub; a stump stops the rotor at once.
  const Material* steel = find_material("4140", "oil quenched, tempered 540 °C");
  REQUIRE(steel != nullptr);
  const Length between_teeth = stub_spline(pto_type(1), millimetres(76))->value.root_diameter();
  const Torque stub = yield_torque(SolidSection(between_teeth), shear_yield(steel->yield, ShearRatio::maximum_shear));
  const auto cutter_behind = [](const LineLink& device) {
    PtoLine line{{body(3.0, rpm(540)), body(0.1, rpm(540)), body(0.06, rpm(540)), body(5.0, rpm(540), 40.0)},
                 {LineClutch{newton_metres(3000)}, shaft(9000.0, 3.0), device}};
    const EngineLine engine({{rpm(1000), newton_metres(330)}, {rpm(2000), newton_metres(290)}}, rpm(2200));
    line.bodies[0].drive = EngineDrive{engine, 0.27};
    std::get<LineShaft>(line.links[1]).joints = LineJoints{degrees(12), degrees(10)};
    line.bodies[3].blocked_at = seconds(0.5);
    return line;
  };
  // A device that never lets go: the yield of the stub is passed many times over.
  const SimulationResult without = simulate(cutter_behind(LineClutch{newton_metres(1e6)}), lasting(1.0));
  const SimulationResult with = simulate(cutter_behind(LineClutch{newton_metres(1000)}), lasting(1.0));
  CHECK(without.links[1].peak_driving.torque > stub);
  CHECK(with.links[1].peak_driving.torque < stub);
  MESSAGE("yield of the stub " << stub.value() << " N·m; peak without " << without.links[1].peak_driving.torque.value()
                               << ", with " << with.links[1].peak_driving.torque.value());
}
