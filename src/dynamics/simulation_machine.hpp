#pragma once
// The equations of motion of a line for one set of modes, and how the modes change.
//
// A mode says, for every link, whether it holds, slips or is open, and for every body which way it turns or whether it
// rests. While the modes stay, the right-hand side is smooth; `holds` tells whether they still apply. Bodies that stiff
// links hold together are a group and move as one.

#include <fieldshaft/dynamics/simulation.hpp>

#include <cstddef>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace simulating {

using State = std::vector<double>;

/// What a stiff link carries while it slips, in either sense: straight lines over time, since ramps are straight.
struct Capacity {
  double forward_at = 0.0; ///< at the time `since`
  double backward_at = 0.0;
  double slope = 0.0; ///< per second
  double since = 0.0;

  double forward(double time) const noexcept { return forward_at + slope * (time - since); }
  double backward(double time) const noexcept { return backward_at + slope * (time - since); }
};

/// A link as plain numbers, with its mode.
struct Link {
  bool shaft = false;
  // A shaft.
  double stiffness = 0.0, damping = 0.0, half_play = 0.0, ratio = 1.0;
  bool jointed = false;
  double front = 0.0, rear = 0.0, phase = 0.0;
  std::size_t twist = 0, angle = 0; ///< places in the state
  int contact = 1;                  ///< flank that touches: 1 driving, -1 driven, 0 between; always 1 without play
  bool parted = false;              ///< the flank has been pulled off faster than it springs back
  // A stiff link.
  Capacity capacity;
  double break_away = 1.0;
  int slip = 0; ///< 0 holds, 1 the body before it is faster, -1 the body behind it is faster
  bool open = false, broken = false, tripped = false;

  /// Twist of the spring, beyond the play.
  double sprung(double angle_of_twist) const noexcept { return angle_of_twist - contact * half_play; }
  /// Torque while the flank touches.
  double spring_torque(double angle_of_twist, double rate) const noexcept {
    return stiffness * sprung(angle_of_twist) + damping * rate;
  }
  bool holds_stiffly() const noexcept { return !shaft && !open && slip == 0; }
  bool slips() const noexcept { return !shaft && !open && slip != 0; }
};

/// A body as plain numbers, with its mode.
struct Body {
  double inertia = 0.0;
  double friction = 0.0; ///< of load and brakes now
  double viscous = 0.0;
  double windage = 0.0; ///< per squared speed
  bool rubs = false;    ///< has friction at some time
  bool held_speed = false, blocked = false, stalled = false;
  const EngineDrive* engine = nullptr;
  bool free = false; ///< nothing rubs in its group, so that its sense has no meaning
  int sense = 0;     ///< 1, -1, or 0 at rest

  bool holds() const noexcept { return held_speed || blocked; }
  bool rests() const noexcept { return blocked || (!free && !held_speed && sense == 0); }
};

/// Everything at one moment, worked out from time and state.
struct Moment {
  std::vector<double> torque;       ///< of each link; of a shaft between its joints and its gear
  std::vector<double> lever;        ///< of each link: torque at its driving end over its torque
  std::vector<double> drive;        ///< of each body
  std::vector<double> load;         ///< of each body, against its motion
  std::vector<double> external;     ///< on each body but for links that hold stiffly
  std::vector<double> acceleration; ///< of each body
  std::vector<double> net;          ///< at the first body of a group: on the group but for friction at rest
  std::vector<double> grip;         ///< there: friction that holds it at rest
};

class Machine {
public:
  explicit Machine(const PtoLine& line);

  State initial_state() const;
  Moment make_moment() const;
  /// Natural sizes of the entries of the state, against which errors count.
  State scales() const;

  std::size_t body_count() const noexcept { return bodies_.size(); }
  std::size_t link_count() const noexcept { return links_.size(); }
  const Body& body(std::size_t i) const noexcept { return bodies_[i]; }
  const Link& link(std::size_t i) const noexcept { return links_[i]; }
  std::size_t heat_at(std::size_t link) const noexcept { return heat_ + link; }
  std::size_t drive_work_at(std::size_t body) const noexcept { return drive_work_ + body; }
  std::size_t load_work_at(std::size_t body) const noexcept { return load_work_ + body; }
  double kinetic_energy(const State& x) const;
  double twist_energy(const State& x) const;
  double impact_loss() const noexcept { return impact_; }
  bool stands(const State& x) const;
  /// The next time for which something is set, such as an engagement; infinity after the last.
  double next_set_time() const;

  void evaluate(double time, const State& x, Moment& now) const;
  void derivative(const State& x, const Moment& now, State& dxdt) const;
  /// Whether the modes still apply.
  bool holds(double time, const State& x, const Moment& now) const;
  /// Takes over what is set for this time, changes every mode that no longer applies, and notes what has changed.
  void change(double time, State& x, std::vector<LineEvent>& events);

private:
  // Setting up.
  void add_body(const LineBody& body);
  void add_link(const LineLink& link);
  void lay_out();
  void collect_set_times();
  void choose_scales();
  void let_overruns_slip();

  // The equations.
  void link_torques(double time, const State& x, Moment& now) const;
  void body_torques(const State& x, Moment& now) const;
  std::size_t group_end(std::size_t first) const noexcept;
  std::size_t holder(std::size_t first, std::size_t last) const noexcept;
  void balance_group(std::size_t first, std::size_t last, Moment& now) const;

  // The modes.
  bool shaft_applies(const Link& link, std::size_t i, const State& x, const Moment& now) const;
  void change_contact(Link& link, std::size_t i, const State& x, const Moment& now) const;
  bool link_applies(std::size_t i, double time, const State& x, const Moment& now) const;
  bool body_applies(std::size_t i, const State& x, const Moment& now) const;
  int beyond_capacity(std::size_t i, double time, const Moment& now) const;
  double difference(std::size_t link, const State& x) const noexcept { return x[link] - x[link + 1]; }
  double twist_rate(std::size_t i, const State& x, const Moment& now) const noexcept {
    return now.lever[i] * x[i] - x[i + 1] / links_[i].ratio;
  }
  void set_capacity(std::size_t i, double time);
  void set_friction(std::size_t i, double time);
  void take_over_set_times(double time, State& x);
  void engage_or_release(std::size_t i, double time, State& x);
  void block(std::size_t i, double time, State& x);
  void let_go(std::size_t i, int sense, double time);
  void lock(std::size_t i, State& x);
  void change_links(double time, State& x, const Moment& now);
  void change_bodies(State& x);
  void set_senses(State& x);
  void start_groups(const Moment& now);
  bool release_links(double time, const Moment& now);
  void reset_cut_outs(double time, const State& x);
  void note(const std::vector<Link>& links, const std::vector<Body>& bodies, double time,
            std::vector<LineEvent>& events) const;

  const PtoLine& line_;
  std::vector<Body> bodies_;
  std::vector<Link> links_;
  std::vector<double> set_times_;
  std::size_t next_set_ = 0;
  std::size_t size_ = 0, heat_ = 0, drive_work_ = 0, load_work_ = 0;
  double speed_scale_ = 1.0, torque_scale_ = 1.0;
  double small_speed_ = 0.0, small_torque_ = 0.0;
  double impact_ = 0.0;
};

} // namespace simulating
} // namespace v0
} // namespace fieldshaft
