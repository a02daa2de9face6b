// The modes of a line: when they no longer apply, and which follow.

#include "dynamics/simulation_machine.hpp"

#include <cmath>
#include <limits>

namespace fieldshaft {
inline namespace v0 {
namespace simulating {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

/// Flanks touch and part with this much between, so that they cannot do both at once [rad].
constexpr double small_angle = 1e-10;

int sign_of(double value) noexcept { return (value > 0.0) - (value < 0.0); }

/// The torque of a clutch at a time and how it goes on from there.
Capacity capacity_of(const LineClutch& clutch, double time) {
  const double full = clutch.torque.value();
  const double ramp = clutch.ramp.value();
  const double since = clutch.engage_at.value();
  if (ramp > 0.0 && time < since + ramp) return {0.0, 0.0, full / ramp, since};
  return {full, full, 0.0, since};
}

Capacity steady(double forward, double backward) { return {forward, backward, 0.0, 0.0}; }

} // namespace

bool Machine::holds(double time, const State& x, const Moment& now) const {
  for (std::size_t i = 0; i < links_.size(); ++i) {
    if (!link_applies(i, time, x, now)) return false;
  }
  for (std::size_t i = 0; i < bodies_.size(); ++i) {
    if (!body_applies(i, x, now)) return false;
  }
  return true;
}

bool Machine::link_applies(std::size_t i, double time, const State& x, const Moment& now) const {
  const Link& link = links_[i];
  if (link.shaft) return link.half_play == 0.0 || shaft_applies(link, i, x, now);
  if (link.open) return true;
  if (link.slip == 0) return beyond_capacity(i, time, now) == 0;
  return link.slip * difference(i, x) >= -small_speed_;
}

/// Flanks with play between them push and never pull.
bool Machine::shaft_applies(const Link& link, std::size_t i, const State& x, const Moment& now) const {
  const double twist = x[link.twist];
  if (link.contact == 0) return std::abs(twist) <= link.half_play + small_angle;
  if (link.contact * twist < link.half_play - small_angle) return false;
  const double push = link.contact * link.spring_torque(twist, twist_rate(i, x, now));
  return link.parted ? push <= small_torque_ : push >= -small_torque_;
}

void Machine::change_contact(Link& link, std::size_t i, const State& x, const Moment& now) const {
  const double twist = x[link.twist];
  const double edge = link.half_play + (link.contact == 0 ? small_angle : -small_angle);
  const int contact = std::abs(twist) <= edge ? 0 : sign_of(twist);
  const double before = link.contact == contact && link.parted ? small_torque_ : -small_torque_;
  link.contact = contact;
  link.parted = contact != 0 && contact * link.spring_torque(twist, twist_rate(i, x, now)) < before;
}

bool Machine::body_applies(std::size_t i, const State& x, const Moment& now) const {
  const Body& body = bodies_[i];
  if (body.engine != nullptr && !body.stalled &&
      x[i] < body.engine->line.points().front().speed.value() * body.engine->ratio) {
    return false;
  }
  if (body.free || body.holds()) return true;
  if (body.sense != 0) return body.sense * x[i] >= -small_speed_;
  const bool first_of_group = i == 0 || !links_[i - 1].holds_stiffly();
  return !first_of_group || holder(i, group_end(i)) <= group_end(i) ||
         std::abs(now.net[i]) <= now.grip[i] + small_torque_;
}

/// The sense in which a link that holds has to let go; 0 while it carries its torque.
int Machine::beyond_capacity(std::size_t i, double time, const Moment& now) const {
  const Link& link = links_[i];
  if (now.torque[i] > link.break_away * link.capacity.forward(time) + small_torque_) return 1;
  if (now.torque[i] < -link.break_away * link.capacity.backward(time) - small_torque_) return -1;
  return 0;
}

void Machine::set_capacity(std::size_t i, double time) {
  Link& link = links_[i];
  const LineLink& kind = line_.links[i];
  if (const auto* clutch = std::get_if<LineClutch>(&kind)) {
    link.capacity = capacity_of(*clutch, time);
  } else if (const auto* bolt = std::get_if<LineShearBolt>(&kind)) {
    link.capacity = steady(bolt->torque.value(), bolt->torque.value());
  } else if (const auto* cut_out = std::get_if<LineCutOut>(&kind)) {
    const double torque = cut_out->torque.value() * (link.tripped ? cut_out->tripped_share : 1.0);
    link.capacity = steady(torque, torque);
  } else if (const auto* overrun = std::get_if<LineOverrun>(&kind)) {
    const double drag = overrun->drag.value();
    link.capacity = overrun->backwards ? steady(drag, infinity) : steady(infinity, drag);
  }
}

void Machine::set_friction(std::size_t i, double time) {
  const LineBody& body = line_.bodies[i];
  double friction = body.load.friction.value();
  for (const LineBrake& brake : body.brakes) {
    if (brake.from.value() <= time) friction += brake.torque.value();
  }
  bodies_[i].friction = friction;
}

void Machine::take_over_set_times(double time, State& x) {
  while (next_set_ < set_times_.size() && set_times_[next_set_] <= time) ++next_set_;
  for (std::size_t i = 0; i < bodies_.size(); ++i) {
    set_friction(i, time);
    const auto& blocked_at = line_.bodies[i].blocked_at;
    if (blocked_at && blocked_at->value() <= time && !bodies_[i].blocked) block(i, time, x);
  }
  for (std::size_t i = 0; i < links_.size(); ++i) {
    if (std::holds_alternative<LineClutch>(line_.links[i])) engage_or_release(i, time, x);
  }
}

void Machine::engage_or_release(std::size_t i, double time, State& x) {
  const auto& clutch = std::get<LineClutch>(line_.links[i]);
  Link& link = links_[i];
  const bool released = clutch.release_at && clutch.release_at->value() <= time;
  const bool engaged = clutch.engage_at.value() <= time && !released;
  set_capacity(i, time);
  if (engaged && link.open) {
    link.open = false;
    link.slip = sign_of(difference(i, x));
    if (std::abs(difference(i, x)) <= small_speed_) lock(i, x);
  }
  if (!engaged) link.open = true;
}

/// Stops a body at once. The links beside it slip from now on, since nothing else stops its neighbours.
void Machine::block(std::size_t i, double time, State& x) {
  Body& body = bodies_[i];
  body.blocked = true;
  impact_ += 0.5 * body.inertia * x[i] * x[i];
  x[i] = 0.0;
  for (std::size_t link = i == 0 ? 0 : i - 1; link <= i && link < links_.size(); ++link) {
    const int sense = std::abs(difference(link, x)) <= small_speed_ ? 0 : sign_of(difference(link, x));
    if (links_[link].holds_stiffly() && sense != 0) let_go(link, sense, time);
    if (links_[link].slips()) links_[link].slip = sense;
  }
}

void Machine::let_go(std::size_t i, int sense, double time) {
  Link& link = links_[i];
  link.slip = sense;
  if (std::holds_alternative<LineShearBolt>(line_.links[i])) {
    link.broken = true;
    link.open = true;
  } else if (std::holds_alternative<LineCutOut>(line_.links[i])) {
    link.tripped = true;
    set_capacity(i, time);
  }
}

/// Both sides of a link turn alike from now on, at a speed that keeps their momentum.
void Machine::lock(std::size_t i, State& x) {
  links_[i].slip = 0;
  std::size_t first = i;
  while (first > 0 && links_[first - 1].holds_stiffly()) --first;
  const std::size_t last = group_end(i);
  double momentum = 0.0;
  double inertia = 0.0;
  for (std::size_t k = first; k <= last; ++k) {
    momentum += bodies_[k].inertia * x[k];
    inertia += bodies_[k].inertia;
  }
  const std::size_t held = holder(first, last);
  const double common = held <= last ? x[held] : momentum / inertia;
  for (std::size_t k = first; k <= last; ++k) x[k] = common;
}

void Machine::change_links(double time, State& x, const Moment& now) {
  for (std::size_t i = 0; i < links_.size(); ++i) {
    Link& link = links_[i];
    if (link.shaft && link.half_play > 0.0) change_contact(link, i, x, now);
    if (!link.slips() || link.slip * difference(i, x) > small_speed_) continue;
    if (link.capacity.forward(time) + link.capacity.backward(time) > 0.0) lock(i, x);
  }
}

/// What has turned the other way has come to rest on the way; an engine below its line stalls.
void Machine::change_bodies(State& x) {
  for (std::size_t i = 0; i < bodies_.size(); ++i) {
    Body& body = bodies_[i];
    if (!body.free && !body.holds() && body.sense * x[i] < 0.0) x[i] = 0.0;
    if (body.engine == nullptr) continue;
    if (x[i] < body.engine->line.points().front().speed.value() * body.engine->ratio) body.stalled = true;
  }
}

/// The sense of every group from its speed. One that hardly turns rests, unless start_groups finds that nothing holds
/// it.
void Machine::set_senses(State& x) {
  for (std::size_t first = 0; first < bodies_.size();) {
    const std::size_t last = group_end(first);
    bool rubs = false;
    for (std::size_t i = first; i <= last; ++i) rubs = rubs || bodies_[i].rubs;
    const bool held = holder(first, last) <= last;
    const int sense = std::abs(x[first]) <= small_speed_ ? 0 : sign_of(x[first]);
    for (std::size_t i = first; i <= last; ++i) {
      bodies_[i].free = !rubs && !held;
      bodies_[i].sense = sense;
    }
    first = last + 1;
  }
}

void Machine::start_groups(const Moment& now) {
  for (std::size_t first = 0; first < bodies_.size();) {
    const std::size_t last = group_end(first);
    const Body& body = bodies_[first];
    const bool resting = !body.free && body.sense == 0 && holder(first, last) > last;
    if (resting && std::abs(now.net[first]) > now.grip[first] + small_torque_) {
      for (std::size_t i = first; i <= last; ++i) bodies_[i].sense = sign_of(now.net[first]);
    }
    first = last + 1;
  }
}

bool Machine::release_links(double time, const Moment& now) {
  for (std::size_t i = 0; i < links_.size(); ++i) {
    if (!links_[i].holds_stiffly()) continue;
    const int sense = beyond_capacity(i, time, now);
    if (sense == 0) continue;
    let_go(i, sense, time);
    return true; // one at a time: the others may hold once this one slips
  }
  return false;
}

void Machine::reset_cut_outs(double time, const State& x) {
  for (std::size_t i = 0; i < links_.size(); ++i) {
    if (!links_[i].tripped) continue;
    if (std::abs(x[i]) > small_speed_ || std::abs(x[i + 1]) > small_speed_) continue;
    if (!bodies_[i].rests()) continue;
    links_[i].tripped = false;
    links_[i].slip = 0;
    set_capacity(i, time);
  }
}

void Machine::change(double time, State& x, std::vector<LineEvent>& events) {
  const std::vector<Link> links = links_;
  const std::vector<Body> bodies = bodies_;
  if (next_set_time() <= time) take_over_set_times(time, x);
  Moment now = make_moment();
  evaluate(time, x, now);
  change_links(time, x, now);
  change_bodies(x);
  for (bool changed = true; changed;) { // ends: every round lets one more link go
    set_senses(x);
    evaluate(time, x, now);
    start_groups(now);
    evaluate(time, x, now);
    changed = release_links(time, now);
  }
  for (std::size_t i = 0; i < bodies_.size(); ++i) {
    if (bodies_[i].rests()) x[i] = 0.0;
  }
  reset_cut_outs(time, x);
  note(links, bodies, time, events);
}

void Machine::note(const std::vector<Link>& links, const std::vector<Body>& bodies, double time,
                   std::vector<LineEvent>& events) const {
  const auto add = [&](LineEventKind kind, std::size_t index) { events.push_back({seconds(time), kind, index}); };
  for (std::size_t i = 0; i < links_.size(); ++i) {
    const Link& was = links[i];
    const Link& is = links_[i];
    if (is.broken && !was.broken) add(LineEventKind::breaks, i);
    if (is.tripped && !was.tripped) add(LineEventKind::trips, i);
    if (was.tripped && !is.tripped) add(LineEventKind::resets, i);
    if (is.shaft || is.broken || is.tripped != was.tripped) continue;
    if (was.open != is.open) add(is.open ? LineEventKind::releases : LineEventKind::engages, i);
    if (was.slips() && is.holds_stiffly()) add(LineEventKind::locks, i);
    const bool overrunning = std::holds_alternative<LineOverrun>(line_.links[i]);
    if (is.slips() && !was.open && was.slip != is.slip) {
      add(overrunning ? LineEventKind::overruns : LineEventKind::slips, i);
    }
  }
  for (std::size_t i = 0; i < bodies_.size(); ++i) {
    if (bodies_[i].blocked && !bodies[i].blocked) add(LineEventKind::is_blocked, i);
    if (bodies_[i].stalled && !bodies[i].stalled) add(LineEventKind::stalls, i);
    if (time == 0.0 || bodies_[i].blocked) continue;
    if (bodies_[i].rests() && !bodies[i].rests()) add(LineEventKind::stops, i);
    if (!bodies_[i].rests() && bodies[i].rests()) add(LineEventKind::starts, i);
  }
}

} // namespace simulating
} // namespace v0
} // namespace fieldshaft
