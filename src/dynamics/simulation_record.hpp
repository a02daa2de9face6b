#pragma once
// What a simulation keeps: peaks, slip times, events and the trace.

#include "dynamics/simulation_machine.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace simulating {

class Recorder {
public:
  Recorder(const Machine& machine, const SimulationSettings& settings);

  /// The torques at one time.
  void torques(double time, const Moment& now);
  /// Whether the torques of three times suggest a higher peak between them; its time is written to `at`.
  bool peak_between(const double (&time)[3], const Moment& first, const Moment& middle, const Moment& last,
                    double& at) const;
  /// A stretch of time without change of modes.
  void passed(double duration);
  /// The time of the next sample of the trace; infinity without a trace.
  double next_sample() const noexcept { return next_sample_; }
  void sample(double time, const State& x, const Moment& now);
  std::vector<LineEvent>& events() noexcept { return result_.events; }
  /// Takes note of the events that were added since the last call.
  void take_events();

  SimulationResult finish(double time, const State& start, const State& x, SimulationEnd end, std::size_t steps);

private:
  void energies(const State& start, const State& x);

  const Machine& machine_;
  SimulationResult result_;
  std::size_t seen_events_ = 0;
  double sample_every_ = 0.0;
  double next_sample_;
  std::size_t samples_ = 0;
};

} // namespace simulating
} // namespace v0
} // namespace fieldshaft
