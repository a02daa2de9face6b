#include "assess/certificate.hpp"

#include "assess/layout.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

StateExtreme extreme_of(const WorstCase<double>& worst) {
  return {{worst.value, Kind::share},
          {worst.attained, Kind::share},
          {worst.value - worst.attained, Kind::share},
          worst.pose,
          worst.proved,
          {}};
}

template <class Q> StateExtreme extreme_of(const WorstCase<Q>& worst) {
  StateExtreme extreme{amount_of(worst.value),
                       amount_of(worst.attained),
                       amount_of(math::abs(worst.value - worst.attained)),
                       worst.pose,
                       worst.proved,
                       {}};
  if (worst.most) extreme.most = MattersMost{entry_of(*worst.most), amount_of(worst.amount)};
  return extreme;
}

template <class Range> AmountRange amounts_of(const Range& range) {
  return {amount_of(range.low), amount_of(range.high)};
}

void set_positions(StateEnvelope& envelope, const Case& value) {
  const Positions positions = positions_in(value, envelope.state);
  envelope.yaw = amounts_of(positions.yaw);
  envelope.roll = amounts_of(positions.roll);
  if (is_trailed(value)) envelope.pitch = amounts_of(positions.pitch);
  if (!is_trailed(value)) envelope.lift = amounts_of(positions.lift);
  envelope.origins = range_origins(value, envelope.state);
}

} // namespace

const char* entry_of(Measurement measurement) {
  switch (measurement) {
  case Measurement::front_joint: return "driveline.front_joint";
  case Measurement::pin_distance: return "tractor.hitch.distance";
  case Measurement::pin_lateral: return "tractor.hitch.lateral";
  case Measurement::pin_drop: return "tractor.hitch.drop";
  case Measurement::rear_joint: return "driveline.rear_joint";
  case Measurement::input_behind: return "implement.input.behind";
  case Measurement::input_left: return "implement.input.lateral";
  case Measurement::input_up: return "implement.input.above";
  case Measurement::input_direction: break;
  }
  return "implement.input";
}

std::vector<StateEnvelope> envelopes_of(const Case& value, const DrivelineOverRange& range) {
  std::vector<StateEnvelope> envelopes;
  for (const StateExtremes& state : range.states) {
    StateEnvelope envelope;
    envelope.state = state.state;
    envelope.driven = state.driven;
    set_positions(envelope, value);
    envelope.front_angle = extreme_of(state.front);
    envelope.rear_angle = extreme_of(state.rear);
    envelope.difference = extreme_of(state.difference);
    envelope.longest = extreme_of(state.longest);
    envelope.shortest = extreme_of(state.shortest);
    if (state.variation.value > 0.0) envelope.speed_variation = extreme_of(state.variation);
    envelopes.push_back(std::move(envelope));
  }
  return envelopes;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
