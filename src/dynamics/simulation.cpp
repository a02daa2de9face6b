// Steps a line through time and finds the changes of its modes.

#include <fieldshaft/dynamics/simulation.hpp>

#include "dynamics/simulation_machine.hpp"
#include "dynamics/simulation_record.hpp"

#include <boost/numeric/odeint/stepper/controlled_runge_kutta.hpp>
#include <boost/numeric/odeint/stepper/dense_output_runge_kutta.hpp>
#include <boost/numeric/odeint/stepper/runge_kutta_dopri5.hpp>

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace simulating {
namespace {

namespace odeint = boost::numeric::odeint;

/// Error of a step as a share of what is allowed: each entry against its own natural size.
class ErrorAgainstScale {
public:
  ErrorAgainstScale(double relative, State scale) : relative_(relative), scale_(std::move(scale)) {}

  template <class Algebra, class Derivative, class Time>
  double error(Algebra&, const State& x, const Derivative&, State& error, Time) const {
    double worst = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
      worst = std::max(worst, std::abs(error[i]) / (relative_ * (scale_[i] + std::abs(x[i]))));
    }
    return worst;
  }

private:
  double relative_;
  State scale_;
};

using Pair = odeint::runge_kutta_dopri5<State>;
using Controlled = odeint::controlled_runge_kutta<Pair, ErrorAgainstScale>;
using Stepper = odeint::dense_output_runge_kutta<Controlled>;
using Adjuster = odeint::default_step_adjuster<double, double>;

/// Errors of the steps add up: each may have this share of the tolerance.
constexpr double share_of_tolerance = 0.01;
/// No step is longer than this share of the duration, nor shorter than that: below it time hardly adds up.
constexpr double longest_step = 0.01;
constexpr double shortest_step = 1e-14;

class Simulation {
public:
  Simulation(const PtoLine& line, const SimulationSettings& settings)
      : settings_(settings), machine_(line), recorder_(machine_, settings), start_(machine_.initial_state()),
        x_(start_), between_(start_), first_(machine_.make_moment()), middle_(first_), last_(first_), peak_(first_),
        duration_(settings.duration.value()), dt_(1e-4 * duration_),
        stepper_(Controlled(ErrorAgainstScale(share_of_tolerance * settings.relative_tolerance, machine_.scales()),
                            Adjuster(longest_step * duration_))) {}

  SimulationResult run() {
    SimulationEnd end = SimulationEnd::duration;
    begin_stretch();
    while (!ended(end) && run_stretch(end)) begin_stretch();
    return recorder_.finish(time_, start_, x_, end, steps_);
  }

private:
  /// Whether the simulation is over, and how.
  bool ended(SimulationEnd& end) const {
    if (time_ >= duration_) {
      end = SimulationEnd::duration;
      return true;
    }
    if (has_run_down()) {
      end = SimulationEnd::standstill;
      return true;
    }
    return false;
  }

  bool has_run_down() const {
    return settings_.until_standstill && machine_.next_set_time() > duration_ && machine_.stands(x_);
  }

  /// Brings the modes up to date and starts the stepper anew.
  void begin_stretch() {
    machine_.change(time_, x_, recorder_.events());
    recorder_.take_events();
    machine_.evaluate(time_, x_, first_);
    recorder_.torques(time_, first_);
    sample_until(time_);
    stretch_end_ = std::min(duration_, machine_.next_set_time());
    dt_ = std::min({dt_, longest_step * duration_, stretch_end_ - time_});
    stepper_.initialize(x_, time_, dt_);
  }

  /// Steps while the modes apply. Returns false if the simulation cannot go on.
  bool run_stretch(SimulationEnd& end) {
    while (time_ < stretch_end_) {
      if (!step(end)) return false;
      if (look_for_change() || has_run_down()) return true;
    }
    return true;
  }

  bool step(SimulationEnd& end) {
    if (steps_ >= settings_.max_steps) return fail(SimulationEnd::too_many_steps, end);
    if (recorder_.events().size() >= settings_.max_events || changes_ >= settings_.max_events) {
      return fail(SimulationEnd::too_many_events, end);
    }
    try {
      stepper_.do_step([this](const State& x, State& dxdt, double time) {
        machine_.evaluate(time, x, last_);
        machine_.derivative(x, last_, dxdt);
      });
    } catch (const odeint::step_adjustment_error&) {
      return fail(SimulationEnd::step_too_small, end);
    }
    ++steps_;
    dt_ = stepper_.current_time_step();
    const State& reached = stepper_.current_state();
    if (!std::all_of(reached.begin(), reached.end(), is_finite)) return fail(SimulationEnd::not_finite, end);
    if (stepper_.current_time() - time_ < shortest_step * duration_) return fail(SimulationEnd::step_too_small, end);
    return true;
  }

  static bool fail(SimulationEnd reason, SimulationEnd& end) {
    end = reason;
    return false;
  }

  /// The state at a time within the last step, and what follows from it.
  void look_at(double time, Moment& now) {
    stepper_.calc_state(time, between_);
    machine_.evaluate(time, between_, now);
  }

  bool still_holds(double time, Moment& now) {
    look_at(time, now);
    return machine_.holds(time, between_, now);
  }

  /// Goes to the end of the step, or to the first change of modes that its middle, its end or a peak within shows.
  bool look_for_change() {
    const double begin = time_;
    const double end = std::min(stepper_.current_time(), stretch_end_);
    const double middle = 0.5 * (begin + end);
    double at = 0.0;
    if (!still_holds(middle, middle_)) return go_to(locate(begin, middle), true);
    if (!still_holds(end, last_)) return go_to(locate(middle, end), true);
    if (!recorder_.peak_between({begin, middle, end}, first_, middle_, last_, at)) return go_to(end, false);
    if (still_holds(at, peak_)) {
      recorder_.torques(at, peak_);
      return go_to(end, false);
    }
    return go_to(locate(at < middle ? begin : middle, at), true);
  }

  /// Goes on to a time within the step.
  bool go_to(double time, bool changed) {
    sample_until(time);
    const double middle = 0.5 * (time_ + time);
    look_at(middle, middle_);
    recorder_.torques(middle, middle_);
    look_at(time, last_);
    recorder_.torques(time, last_);
    recorder_.passed(time - time_);
    x_ = between_;
    time_ = time;
    std::swap(first_, last_);
    changes_ += changed ? 1 : 0;
    return changed;
  }

  /// The time of a change between one at which the modes hold and one at which they do not.
  double locate(double holding, double changed) {
    const double tolerance = std::max(settings_.event_tolerance.value(), 1e-15 * duration_);
    while (changed - holding > tolerance) {
      const double half = 0.5 * (holding + changed);
      (still_holds(half, peak_) ? holding : changed) = half;
    }
    return changed;
  }

  void sample_until(double time) {
    while (recorder_.next_sample() <= time) {
      const double at = recorder_.next_sample();
      if (at == time_) {
        recorder_.sample(at, x_, first_);
      } else {
        look_at(at, last_);
        recorder_.sample(at, between_, last_);
      }
    }
  }

  const SimulationSettings& settings_;
  Machine machine_;
  Recorder recorder_;
  State start_, x_, between_;
  Moment first_, middle_, last_, peak_;
  double duration_;
  double time_ = 0.0;
  double stretch_end_ = 0.0;
  double dt_;
  std::size_t steps_ = 0;
  std::size_t changes_ = 0;
  Stepper stepper_;
};

/// A trace for plotting needs no more, and memory has an end.
constexpr double most_samples = 1e6;

void check_settings(const SimulationSettings& settings) {
  constexpr const char* function = "simulate";
  check::positive(settings.duration.value(), {function, "duration", "s"});
  check::within(settings.relative_tolerance, 1e-12, 1e-2, {function, "relative_tolerance", ""});
  check::positive(settings.event_tolerance.value(), {function, "event_tolerance", "s"});
  check::not_negative(settings.sample_every.value(), {function, "sample_every", "s"});
  if (settings.sample_every.value() > 0.0) {
    check::at_least(settings.sample_every.value(), settings.duration.value() / most_samples,
                    {function, "sample_every", "s"});
  }
  check::at_least(static_cast<double>(settings.max_steps), 1.0, {function, "max_steps", ""});
  check::at_least(static_cast<double>(settings.max_events), 1.0, {function, "max_events", ""});
}

} // namespace
} // namespace simulating

SimulationResult simulate(const PtoLine& line, const SimulationSettings& settings) {
  check_line(line, "simulate");
  simulating::check_settings(settings);
  return simulating::Simulation(line, settings).run();
}

const char* simulation_end_text(SimulationEnd end) noexcept {
  switch (end) {
  case SimulationEnd::duration: return "the wanted time is reached";
  case SimulationEnd::standstill: return "nothing turns any more";
  case SimulationEnd::too_many_steps:
    return "the line is too stiff, or the time too long, for the allowed number of steps";
  case SimulationEnd::too_many_events: return "clutches stick and slip, or flanks touch and part, too often";
  case SimulationEnd::step_too_small: return "no step is short enough for the tolerance";
  case SimulationEnd::not_finite: return "the numbers left the range of the machine";
  }
  return "";
}

} // namespace v0
} // namespace fieldshaft
