// Setting a line up for the simulation, and its equations of motion.

#include "dynamics/simulation_machine.hpp"

#include <fieldshaft/joint/pair.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace fieldshaft {
inline namespace v0 {
namespace simulating {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

/// Speeds and torques below this share of the natural ones are taken for none: far below the error of a step.
constexpr double small_share = 1e-9;

double greatest_torque(const EngineDrive& engine) { return engine.line.peak().torque.value() / engine.ratio; }

double greatest_friction(const LineBody& body) {
  double friction = body.load.friction.value();
  for (const LineBrake& brake : body.brakes) friction += brake.torque.value();
  return friction;
}

} // namespace

Machine::Machine(const PtoLine& line) : line_(line) {
  for (const LineBody& body : line.bodies) add_body(body);
  for (const LineLink& link : line.links) add_link(link);
  lay_out();
  collect_set_times();
  choose_scales();
  let_overruns_slip();
}

void Machine::add_body(const LineBody& body) {
  Body out;
  out.inertia = body.inertia.value();
  out.friction = body.load.friction.value();
  out.viscous = body.load.viscous.value();
  const double windage_speed = body.load.windage_speed.value();
  if (windage_speed > 0.0) out.windage = body.load.windage.value() / (windage_speed * windage_speed);
  out.rubs = greatest_friction(body) > 0.0;
  out.held_speed = std::holds_alternative<HeldSpeed>(body.drive);
  out.engine = std::get_if<EngineDrive>(&body.drive);
  bodies_.push_back(out);
}

void Machine::add_link(const LineLink& link) {
  Link out;
  if (const auto* shaft = std::get_if<LineShaft>(&link)) {
    out.shaft = true;
    out.stiffness = shaft->stiffness.value();
    out.damping = shaft->damping.value();
    out.half_play = 0.5 * shaft->backlash.value();
    out.ratio = shaft->ratio;
    out.contact = out.half_play > 0.0 ? 0 : 1;
    out.jointed = shaft->joints.has_value();
    if (out.jointed) {
      out.front = shaft->joints->front.value();
      out.rear = shaft->joints->rear.value();
      out.phase = shaft->joints->phase.value();
    }
  } else if (const auto* clutch = std::get_if<LineClutch>(&link)) {
    out.break_away = clutch->break_away;
    out.open = true; // until its time, which may be the start
  }
  links_.push_back(out);
  if (!out.shaft) set_capacity(links_.size() - 1, 0.0);
}

/// The state: speeds of the bodies, twists and joint positions of the shafts, heats of the links, works of the bodies.
void Machine::lay_out() {
  std::size_t next = bodies_.size();
  for (Link& link : links_) {
    if (!link.shaft) continue;
    link.twist = next++;
    if (link.jointed) link.angle = next++;
  }
  heat_ = next;
  drive_work_ = heat_ + links_.size();
  load_work_ = drive_work_ + bodies_.size();
  size_ = load_work_ + bodies_.size();
}

void Machine::collect_set_times() {
  set_times_.push_back(0.0);
  for (const LineBody& body : line_.bodies) {
    for (const LineBrake& brake : body.brakes) set_times_.push_back(brake.from.value());
    if (body.blocked_at) set_times_.push_back(body.blocked_at->value());
  }
  for (const LineLink& link : line_.links) {
    const auto* clutch = std::get_if<LineClutch>(&link);
    if (clutch == nullptr) continue;
    set_times_.push_back(clutch->engage_at.value());
    set_times_.push_back((clutch->engage_at + clutch->ramp).value());
    if (clutch->release_at) set_times_.push_back(clutch->release_at->value());
  }
  std::sort(set_times_.begin(), set_times_.end());
  set_times_.erase(std::unique(set_times_.begin(), set_times_.end()), set_times_.end());
}

void Machine::choose_scales() {
  double speed = 0.0;
  double torque = 0.0;
  for (const LineBody& body : line_.bodies) {
    speed = std::max(speed, std::abs(body.speed.value()));
    torque = std::max(torque, greatest_friction(body));
    if (const auto* engine = std::get_if<EngineDrive>(&body.drive)) {
      speed = std::max(speed, engine->line.high_idle().value() * engine->ratio);
      torque = std::max(torque, greatest_torque(*engine));
    }
  }
  if (speed > 0.0) speed_scale_ = speed;
  for (std::size_t i = 0; i < links_.size(); ++i) {
    if (const auto* clutch = std::get_if<LineClutch>(&line_.links[i]))
      torque = std::max(torque, clutch->torque.value());
    if (const auto* bolt = std::get_if<LineShearBolt>(&line_.links[i])) torque = std::max(torque, bolt->torque.value());
    if (const auto* cut_out = std::get_if<LineCutOut>(&line_.links[i]))
      torque = std::max(torque, cut_out->torque.value());
    const double inertia = std::min(bodies_[i].inertia, bodies_[i + 1].inertia);
    if (links_[i].shaft && torque == 0.0) torque = speed_scale_ * std::sqrt(links_[i].stiffness * inertia);
  }
  torque_scale_ = torque > 0.0 ? torque : bodies_.front().inertia * speed_scale_;
  small_speed_ = small_share * speed_scale_;
  small_torque_ = small_share * torque_scale_;
}

/// A body may run ahead of its overrunning clutch from the start.
void Machine::let_overruns_slip() {
  for (std::size_t i = 0; i < links_.size(); ++i) {
    const double ahead = (line_.bodies[i + 1].speed - line_.bodies[i].speed).value();
    if (!std::holds_alternative<LineOverrun>(line_.links[i]) || std::abs(ahead) <= small_speed_) continue;
    links_[i].slip = ahead > 0.0 ? -1 : 1;
  }
}

State Machine::scales() const {
  State scale(size_, 1.0);
  double energy = 0.0;
  for (std::size_t i = 0; i < bodies_.size(); ++i) {
    scale[i] = speed_scale_;
    energy += 0.5 * bodies_[i].inertia * speed_scale_ * speed_scale_;
  }
  for (std::size_t i = 0; i < links_.size(); ++i) {
    if (!links_[i].shaft) continue;
    // The twist of a blow at full speed, or that of the greatest torque, whichever is smaller.
    const double inertia = std::min(bodies_[i].inertia, bodies_[i + 1].inertia);
    const double blow = speed_scale_ * std::sqrt(inertia / links_[i].stiffness);
    scale[links_[i].twist] = std::min(blow, torque_scale_ / links_[i].stiffness);
  }
  std::fill(scale.begin() + static_cast<std::ptrdiff_t>(heat_), scale.end(), energy);
  return scale;
}

State Machine::initial_state() const {
  State x(size_, 0.0);
  for (std::size_t i = 0; i < bodies_.size(); ++i) x[i] = line_.bodies[i].speed.value();
  for (std::size_t i = 0; i < links_.size(); ++i) {
    if (links_[i].jointed) x[links_[i].angle] = std::get<LineShaft>(line_.links[i]).joints->rotation.value();
  }
  return x;
}

Moment Machine::make_moment() const {
  const std::vector<double> bodies(bodies_.size(), 0.0);
  return {std::vector<double>(links_.size(), 0.0),
          std::vector<double>(links_.size(), 1.0),
          bodies,
          bodies,
          bodies,
          bodies,
          bodies,
          bodies};
}

double Machine::kinetic_energy(const State& x) const {
  double energy = 0.0;
  for (std::size_t i = 0; i < bodies_.size(); ++i) energy += 0.5 * bodies_[i].inertia * x[i] * x[i];
  return energy;
}

double Machine::twist_energy(const State& x) const {
  double energy = 0.0;
  for (const Link& link : links_) {
    if (!link.shaft || link.contact == 0) continue;
    const double twist = link.sprung(x[link.twist]);
    energy += 0.5 * link.stiffness * twist * twist;
  }
  return energy;
}

bool Machine::stands(const State& x) const {
  const auto end = x.begin() + static_cast<std::ptrdiff_t>(bodies_.size());
  return std::all_of(x.begin(), end, [this](double speed) { return std::abs(speed) <= small_speed_; });
}

double Machine::next_set_time() const { return next_set_ < set_times_.size() ? set_times_[next_set_] : infinity; }

void Machine::evaluate(double time, const State& x, Moment& now) const {
  link_torques(time, x, now);
  body_torques(x, now);
  for (std::size_t first = 0; first < bodies_.size();) {
    const std::size_t last = group_end(first);
    balance_group(first, last, now);
    first = last + 1;
  }
}

/// Torques of shafts and of links that slip; those of links that hold follow from the balance of their group.
void Machine::link_torques(double time, const State& x, Moment& now) const {
  for (std::size_t i = 0; i < links_.size(); ++i) {
    const Link& link = links_[i];
    if (link.shaft) {
      if (link.jointed) {
        now.lever[i] = text::joint_pair_speed_ratio(link.front, link.rear, link.phase, x[link.angle]);
      }
      const bool carries = link.contact != 0 && !link.parted;
      now.torque[i] = carries ? link.spring_torque(x[link.twist], twist_rate(i, x, now)) : 0.0;
    } else if (link.slips()) {
      now.torque[i] = link.slip > 0 ? link.capacity.forward(time) : -link.capacity.backward(time);
    } else {
      now.torque[i] = 0.0;
    }
  }
}

void Machine::body_torques(const State& x, Moment& now) const {
  for (std::size_t i = 0; i < bodies_.size(); ++i) {
    const Body& body = bodies_[i];
    now.drive[i] = 0.0;
    if (body.engine != nullptr && !body.stalled) {
      const double engine_speed = std::max(0.0, x[i] / body.engine->ratio);
      now.drive[i] =
          body.engine->line.torque_at(AngularSpeed::from_value(engine_speed)).value.value() / body.engine->ratio;
    }
    now.load[i] = body.sense * body.friction + x[i] * (body.viscous + body.windage * std::abs(x[i]));
    double sum = now.drive[i] - now.load[i];
    if (i > 0) sum += now.torque[i - 1] / (links_[i - 1].shaft ? links_[i - 1].ratio : 1.0);
    if (i < links_.size()) sum -= now.lever[i] * now.torque[i];
    now.external[i] = sum;
  }
}

std::size_t Machine::group_end(std::size_t first) const noexcept {
  std::size_t last = first;
  while (last < links_.size() && links_[last].holds_stiffly()) ++last;
  return last;
}

/// The body of a group whose speed is given; one past the last if there is none.
std::size_t Machine::holder(std::size_t first, std::size_t last) const noexcept {
  std::size_t i = first;
  while (i <= last && !bodies_[i].holds()) ++i;
  return i;
}

/// Acceleration of a group and the torques in the stiff links that hold it together.
void Machine::balance_group(std::size_t first, std::size_t last, Moment& now) const {
  double inertia = 0.0;
  double net = 0.0;
  double grip = 0.0;
  for (std::size_t i = first; i <= last; ++i) {
    inertia += bodies_[i].inertia;
    net += now.external[i];
    grip += bodies_[i].friction;
  }
  double acceleration = 0.0;
  const std::size_t held = holder(first, last);
  if (held <= last) {
    now.external[held] -= net; // the drive, or what blocks the body, gives what is missing
    if (bodies_[held].held_speed) now.drive[held] -= net;
  } else if (bodies_[first].free || bodies_[first].sense != 0) {
    acceleration = net / inertia;
  } else if (grip > 0.0) {
    const double share = std::clamp(net / grip, -1.0, 1.0); // every friction bears the same share of its own
    for (std::size_t i = first; i <= last; ++i) now.external[i] -= share * bodies_[i].friction;
  }
  now.net[first] = net;
  now.grip[first] = grip;
  double carried = 0.0;
  for (std::size_t i = first; i <= last; ++i) {
    now.acceleration[i] = acceleration;
    carried += now.external[i] - bodies_[i].inertia * acceleration;
    if (i < last) now.torque[i] = carried;
  }
}

void Machine::derivative(const State& x, const Moment& now, State& dxdt) const {
  for (std::size_t i = 0; i < bodies_.size(); ++i) {
    dxdt[i] = now.acceleration[i];
    dxdt[drive_work_ + i] = now.drive[i] * x[i];
    dxdt[load_work_ + i] = now.load[i] * x[i];
  }
  for (std::size_t i = 0; i < links_.size(); ++i) {
    const Link& link = links_[i];
    if (link.shaft) {
      const double rate = twist_rate(i, x, now);
      const double elastic = link.contact == 0 ? 0.0 : link.stiffness * link.sprung(x[link.twist]);
      dxdt[link.twist] = rate;
      if (link.jointed) dxdt[link.angle] = x[i];
      dxdt[heat_ + i] = (now.torque[i] - elastic) * rate;
    } else {
      dxdt[heat_ + i] = link.slips() ? now.torque[i] * difference(i, x) : 0.0;
    }
  }
}

} // namespace simulating
} // namespace v0
} // namespace fieldshaft
