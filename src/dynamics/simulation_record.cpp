#include "dynamics/simulation_record.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace fieldshaft {
inline namespace v0 {
namespace simulating {
namespace {

void raise(PeakTorque& peak, double torque, double time) {
  if (std::abs(torque) > std::abs(peak.torque.value())) peak = {newton_metres(torque), seconds(time)};
}

/// Where the parabola through three points has its top or bottom, if that lies between the outer ones; else NaN.
double vertex(const double (&t)[3], double y0, double y1, double y2) {
  const double left = (y1 - y0) / (t[1] - t[0]);
  const double right = (y2 - y1) / (t[2] - t[1]);
  const double bend = (right - left) / (t[2] - t[0]);
  const double at = 0.5 * (t[0] + t[1]) - 0.5 * left / bend;
  return at > t[0] && at < t[2] ? at : std::numeric_limits<double>::quiet_NaN();
}

} // namespace

Recorder::Recorder(const Machine& machine, const SimulationSettings& settings)
    : machine_(machine), sample_every_(settings.sample_every.value()),
      next_sample_(sample_every_ > 0.0 ? 0.0 : std::numeric_limits<double>::infinity()) {
  result_.bodies.resize(machine.body_count());
  result_.links.resize(machine.link_count());
}

void Recorder::torques(double time, const Moment& now) {
  for (std::size_t i = 0; i < result_.links.size(); ++i) {
    raise(result_.links[i].peak, now.torque[i], time);
    raise(result_.links[i].peak_driving, now.lever[i] * now.torque[i], time);
  }
}

bool Recorder::peak_between(const double (&time)[3], const Moment& first, const Moment& middle, const Moment& last,
                            double& at) const {
  for (std::size_t i = 0; i < result_.links.size(); ++i) {
    const double nearby = std::max(std::abs(first.torque[i]), std::abs(last.torque[i]));
    // Only a step that comes near the record can pass it.
    if (std::max(nearby, std::abs(middle.torque[i])) < 0.98 * std::abs(result_.links[i].peak.torque.value())) continue;
    at = vertex(time, first.torque[i], middle.torque[i], last.torque[i]);
    if (is_finite(at)) return true;
  }
  return false;
}

void Recorder::passed(double duration) {
  for (std::size_t i = 0; i < result_.links.size(); ++i) {
    if (machine_.link(i).slips()) result_.links[i].slip_time += seconds(duration);
  }
}

void Recorder::sample(double time, const State& x, const Moment& now) {
  TraceSample sample{seconds(time), {}, {}};
  for (std::size_t i = 0; i < result_.bodies.size(); ++i) sample.speeds.push_back(radians_per_second(x[i]));
  for (const double torque : now.torque) sample.torques.push_back(newton_metres(torque));
  result_.trace.push_back(std::move(sample));
  ++samples_;
  next_sample_ = static_cast<double>(samples_) * sample_every_;
}

void Recorder::take_events() {
  for (; seen_events_ < result_.events.size(); ++seen_events_) {
    const LineEvent& event = result_.events[seen_events_];
    switch (event.kind) {
    case LineEventKind::locks:
      if (!result_.links[event.index].locked_at) result_.links[event.index].locked_at = event.time;
      break;
    case LineEventKind::stops:
    case LineEventKind::is_blocked: result_.bodies[event.index].standstill = event.time; break;
    case LineEventKind::starts: result_.bodies[event.index].standstill.reset(); break;
    default: break;
    }
  }
}

void Recorder::energies(const State& start, const State& x) {
  EnergyBalance& energy = result_.energy;
  energy.at_start = joules(machine_.kinetic_energy(start));
  energy.motion = joules(machine_.kinetic_energy(x));
  energy.twist = joules(machine_.twist_energy(x));
  energy.impact = joules(machine_.impact_loss());
  double turnover = energy.at_start.value();
  for (std::size_t i = 0; i < result_.bodies.size(); ++i) {
    const double given = x[machine_.drive_work_at(i)];
    energy.drive += joules(given);
    energy.load += joules(x[machine_.load_work_at(i)]);
    turnover += std::abs(given);
  }
  for (const LinkResult& link : result_.links) energy.heat += link.heat;
  const double missing =
      (energy.at_start + energy.drive - energy.load - energy.heat - energy.impact - energy.motion - energy.twist)
          .value();
  energy.error = turnover > 0.0 ? std::abs(missing) / turnover : 0.0;
}

SimulationResult Recorder::finish(double time, const State& start, const State& x, SimulationEnd end,
                                  std::size_t steps) {
  result_.end = end;
  result_.complete = end == SimulationEnd::duration || end == SimulationEnd::standstill;
  result_.reached = seconds(time);
  result_.steps = steps;
  for (std::size_t i = 0; i < result_.bodies.size(); ++i) {
    BodyResult& body = result_.bodies[i];
    body.speed = radians_per_second(x[i]);
    body.drive_work = joules(x[machine_.drive_work_at(i)]);
    body.load_work = joules(x[machine_.load_work_at(i)]);
  }
  for (std::size_t i = 0; i < result_.links.size(); ++i) {
    LinkResult& link = result_.links[i];
    link.heat = joules(x[machine_.heat_at(i)]);
    link.broken = machine_.link(i).broken;
    link.tripped = machine_.link(i).tripped;
  }
  energies(start, x);
  return std::move(result_);
}

} // namespace simulating
} // namespace v0
} // namespace fieldshaft
