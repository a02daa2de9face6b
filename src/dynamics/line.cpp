// Whether a line is whole and its numbers possible.

#include <fieldshaft/dynamics/line.hpp>

#include <fieldshaft/joint/kinematics.hpp>

#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace {

void check_load(const LineLoad& load, const char* function) {
  check::not_negative(load.friction.value(), {function, "load.friction", "N·m"});
  check::not_negative(load.viscous.value(), {function, "load.viscous", "N·m·s/rad"});
  check::not_negative(load.windage.value(), {function, "load.windage", "N·m"});
  check::not_negative(load.windage_speed.value(), {function, "load.windage_speed", "rad/s"});
  if (load.windage.value() > 0.0)
    check::positive(load.windage_speed.value(), {function, "load.windage_speed", "rad/s"});
}

void check_engine(const EngineDrive& engine, AngularSpeed speed, const char* function) {
  check::positive(engine.ratio, {function, "drive.ratio", ""});
  const double lowest = engine.line.points().front().speed.value() * engine.ratio;
  const double highest = engine.line.high_idle().value() * engine.ratio;
  check::within(speed.value(), lowest, highest * (1.0 + 1e-12), {function, "speed of a body with an engine", "rad/s"});
}

void check_body(const LineBody& body, const char* function) {
  check::positive(body.inertia.value(), {function, "inertia", "kg·m²"});
  check::finite(body.speed.value(), {function, "speed", "rad/s"});
  check_load(body.load, function);
  for (const LineBrake& brake : body.brakes) {
    check::not_negative(brake.from.value(), {function, "brakes.from", "s"});
    check::not_negative(brake.torque.value(), {function, "brakes.torque", "N·m"});
  }
  if (const auto* engine = std::get_if<EngineDrive>(&body.drive)) check_engine(*engine, body.speed, function);
  if (!body.blocked_at) return;
  check::not_negative(body.blocked_at->value(), {function, "blocked_at", "s"});
  if (!std::holds_alternative<std::monostate>(body.drive)) {
    fail_input(function, "blocked_at", "a body with a drive", "a body without a drive");
  }
}

/// A link that holds from the start joins bodies that turn alike.
void check_alike(const PtoLine& line, std::size_t i, const char* function) {
  const double before = line.bodies[i].speed.value();
  const double behind = line.bodies[i + 1].speed.value();
  if (std::abs(before - behind) <= 1e-9 * std::fmax(std::abs(before), std::abs(behind))) return;
  check::fail_bound({function, "speed of the body behind a link that holds", "rad/s"}, behind,
                    "that of the body before it, ", before);
}

void check_shaft(const LineShaft& shaft, const char* function) {
  check::positive(shaft.stiffness.value(), {function, "stiffness", "N·m/rad"});
  check::not_negative(shaft.damping.value(), {function, "damping", "N·m·s/rad"});
  check::not_negative(shaft.backlash.value(), {function, "backlash", "rad"});
  check::positive(shaft.ratio, {function, "ratio", ""});
  if (!shaft.joints) return;
  check::joint_angle(shaft.joints->front, function, "joints.front");
  check::joint_angle(shaft.joints->rear, function, "joints.rear");
  check::finite(shaft.joints->phase.value(), {function, "joints.phase", "rad"});
  check::finite(shaft.joints->rotation.value(), {function, "joints.rotation", "rad"});
}

void check_clutch(const LineClutch& clutch, const char* function) {
  check::positive(clutch.torque.value(), {function, "torque", "N·m"});
  check::not_negative(clutch.engage_at.value(), {function, "engage_at", "s"});
  check::not_negative(clutch.ramp.value(), {function, "ramp", "s"});
  check::at_least(clutch.break_away, 1.0, {function, "break_away", ""});
  if (clutch.release_at) {
    check::at_least(clutch.release_at->value(), clutch.engage_at.value(), {function, "release_at", "s"});
  }
}

void check_overrun(const PtoLine& line, std::size_t i, const char* function) {
  const auto& overrun = std::get<LineOverrun>(line.links[i]);
  check::not_negative(overrun.drag.value(), {function, "drag", "N·m"});
  for (const std::size_t body : {i, i + 1}) {
    if (line.bodies[body].blocked_at) {
      fail_input(function, "blocked_at", "a body beside an overrunning clutch", "a brake with a torque in its place");
    }
  }
  const double sense = overrun.backwards ? -1.0 : 1.0;
  const double before = sense * line.bodies[i].speed.value();
  const double behind = sense * line.bodies[i + 1].speed.value();
  if (before > behind) check_alike(line, i, function);
}

void check_link(const PtoLine& line, std::size_t i, const char* function) {
  const LineLink& link = line.links[i];
  if (const auto* shaft = std::get_if<LineShaft>(&link)) return check_shaft(*shaft, function);
  if (const auto* clutch = std::get_if<LineClutch>(&link)) return check_clutch(*clutch, function);
  if (std::holds_alternative<LineOverrun>(link)) return check_overrun(line, i, function);
  check_alike(line, i, function);
  if (const auto* bolt = std::get_if<LineShearBolt>(&link)) {
    check::positive(bolt->torque.value(), {function, "torque", "N·m"});
  } else if (const auto* cut_out = std::get_if<LineCutOut>(&link)) {
    check::positive(cut_out->torque.value(), {function, "torque", "N·m"});
    check::within(cut_out->tripped_share, 0.0, 1.0, {function, "tripped_share", ""});
  }
}

} // namespace

void check_line(const PtoLine& line, const char* function) {
  if (line.bodies.empty()) fail_input(function, "bodies", "none", "at least one");
  if (line.links.size() + 1 != line.bodies.size()) {
    fail_input(function, "links", std::to_string(line.links.size()),
               "one fewer than bodies, " + std::to_string(line.bodies.size() - 1));
  }
  for (const LineBody& body : line.bodies) check_body(body, function);
  for (std::size_t i = 0; i < line.links.size(); ++i) check_link(line, i, function);
}

} // namespace v0
} // namespace fieldshaft
