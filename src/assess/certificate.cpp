#include "assess/certificate.hpp"

#include "assess/coupling_yokes.hpp"
#include "assess/influence.hpp"
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
  return {amount_of(worst.value),
          amount_of(worst.attained),
          amount_of(math::abs(worst.value - worst.attained)),
          worst.pose,
          worst.proved,
          {}};
}

template <class Range> AmountRange amounts_of(const Range& range) {
  return {amount_of(range.low), amount_of(range.high)};
}

/// The length of a top link that was not measured, and what it follows from.
RangeOrigin top_link_origin(const Case& value) {
  const Hitch& hitch = value.tractor.hitch;
  const MeasuredLength length = top_link_of(value);
  RangeOrigin origin{
      "top_link", {amount_of(length.value - length.tolerance), amount_of(length.value + length.tolerance)}, {}};
  const std::pair<const char*, const Stated<MeasuredLength>&> entries[] = {
      {"tractor.hitch.level_at", hitch.level_at},
      {"tractor.hitch.lower_pivot_behind", hitch.lower_pivot_behind},
      {"tractor.hitch.lower_pivot_below", hitch.lower_pivot_below},
      {"tractor.hitch.lower_link", hitch.lower_link},
      {"tractor.hitch.top_pivot_behind", hitch.top_pivot_behind},
      {"tractor.hitch.top_pivot_below", hitch.top_pivot_below},
      {"implement.mast_height", value.implement.mast_height},
      {"implement.mast_forward", value.implement.mast_forward}};
  for (const auto& [entry, length_of] : entries) {
    if (length_of) origin.from.push_back({entry, amount_of(length_of->value), amount_of(length_of->tolerance)});
  }
  return origin;
}

void set_positions(StateEnvelope& envelope, const Case& value) {
  const Positions positions = positions_in(value, envelope.state);
  envelope.yaw = amounts_of(positions.yaw);
  envelope.roll = amounts_of(positions.roll);
  if (positions.roll_at_full_turn < 1.0) envelope.roll_at_full_turn = Amount{positions.roll_at_full_turn, Kind::share};
  envelope.steers_about_pivot = is_semi_mounted(value);
  if (is_trailed(value)) envelope.pitch = amounts_of(positions.pitch);
  if (!is_trailed(value)) envelope.lift = amounts_of(positions.lift);
  envelope.origins = range_origins(value, envelope.state);
  envelope.slack_top_link = positions.slack;
  if (value.tractor.hitch.level_at && !positions.slack) envelope.origins.push_back(top_link_origin(value));
}

/// Which measurement moves each extreme most, the position staying where it is within its ranges.
void set_what_matters(StateEnvelope& envelope, const Case& value) {
  const MeasurementInfluence influence(value, envelope.state);
  const auto angle = [](Angle DrivelineState::*end) {
    return [end](const DrivelineState& s) { return (s.*end).value(); };
  };
  const auto longer = [](double sign) { return [sign](const DrivelineState& s) { return sign * s.length.value(); }; };
  envelope.front_angle.most = influence.on(envelope.front_angle.pose, angle(&DrivelineState::front_angle), Kind::angle);
  envelope.rear_angle.most = influence.on(envelope.rear_angle.pose, angle(&DrivelineState::rear_angle), Kind::angle);
  envelope.longest.most = influence.on(envelope.longest.pose, longer(1.0), Kind::length);
  envelope.shortest.most = influence.on(envelope.shortest.pose, longer(-1.0), Kind::length);
}

} // namespace

BranchEnvelopeOfCase branch_envelope_of(const std::string& name, bool driven, AmountRange fold,
                                        const StateExtremes& extremes) {
  return {name,
          driven,
          fold,
          extreme_of(extremes.front),
          extreme_of(extremes.rear),
          extreme_of(extremes.longest),
          extreme_of(extremes.shortest)};
}

WideAngleJoints wide_angle_joints_of(const Case& value) {
  const CouplingYokes yokes = yokes_of(value.driveline);
  const auto stated = [](Length yoke) {
    return yoke > Length{} ? std::optional<Amount>(amount_of(yoke)) : std::optional<Amount>();
  };
  return {stated(yokes.front), stated(yokes.rear), yokes_missing(value.driveline, "driveline").empty()};
}

std::vector<StateEnvelope> envelopes_of(const Case& value, const DrivelineOverRange& range, bool what_matters) {
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
    if (what_matters) set_what_matters(envelope, value);
    envelopes.push_back(std::move(envelope));
  }
  return envelopes;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
