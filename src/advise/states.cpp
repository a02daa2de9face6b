#include "advise/states.hpp"

#include "assess/layout.hpp"

#include <fieldshaft/case/read.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

/// The case with one state alone, and without what never enters its geometry: two cases that agree in the rest agree in
/// the state. Only entries that are known to be free of geometry are left out; a new one counts until it is named here.
Case reduced(const Case& value, MachineState state) {
  Case part = value;
  part.title.clear();
  part.note.clear();
  if (state != MachineState::working) part.range.working.reset();
  if (state != MachineState::turning) part.range.turning.reset();
  if (state != MachineState::transport) part.range.transport.reset();
  part.tractor.power.reset();
  part.tractor.power_basis.reset();
  part.tractor.mass.reset();
  part.tractor.traction.reset();
  part.tractor.engine = {};
  part.tractor.pto = {};
  part.implement.input_speed.reset();
  part.implement.power_need.reset();
  part.implement.rotation.reset();
  part.implement.machine.reset();
  part.implement.width.reset();
  part.implement.feed_rate.reset();
  part.implement.feed_basis.reset();
  part.implement.moisture.reset();
  part.implement.draft.reset();
  part.implement.hydraulic_power.reset();
  part.implement.mass.reset();
  part.implement.peak_factor.reset();
  part.implement.torque_swing.reset();
  part.implement.permitted_power.reset();
  part.implement.input.guard.reset();
  part.implement.rotor.reset();
  part.driveline.tractor_yoke = {};
  part.driveline.seat.reset();
  part.driveline.hub_length.reset();
  part.driveline.joint_rating.reset();
  part.driveline.closed_length.reset();
  part.driveline.closed_overlap.reset();
  part.driveline.greatest_travel.reset();
  part.driveline.middle_member.reset();
  part.driveline.front_joint_lock.reset();
  part.driveline.rear_joint_lock.reset();
  part.driveline.tube = {};
  part.driveline.tube_steel = {};
  part.driveline.guard.reset();
  part.overload.reset();
  part.range.ground_speed.reset();
  part.range.slope.reset();
  part.range.ground.reset();
  part.limits = {};
  part.prices = {};
  part.season = {};
  return part;
}

std::string key_of(const Case& reduced_case, MachineState state) {
  return std::to_string(static_cast<int>(state)) + write_case(reduced_case);
}

} // namespace

void States::know(const Case& value, const assessing::DrivelineOverRange& range) {
  if (!range.impossible.empty()) return; // which of the states cannot be is not told
  for (const MachineState state : assessing::states_with_positions) {
    assessing::DrivelineOverRange one;
    one.missing = range.missing;
    if (const assessing::StateExtremes* extremes = range.find(state)) one.states.push_back(*extremes);
    for (const auto& missing : range.missing_of_state) {
      if (missing.first == state) one.missing_of_state.push_back(missing);
    }
    known_.emplace(key_of(reduced(value, state), state), std::move(one));
  }
}

const assessing::DrivelineOverRange& States::one_state(const Case& value, MachineState state) {
  const Case part = reduced(value, state);
  std::string key = key_of(part, state);
  const auto found = known_.find(key);
  if (found != known_.end()) return found->second;
  assessing::DrivelineOverRange range = assessing::driveline_over_range(part, assessing::Depth::for_search);
  if (!range.states.empty()) ++examined_;
  return known_.emplace(std::move(key), std::move(range)).first->second;
}

assessing::DrivelineOverRange States::over_range(const Case& value) {
  assessing::DrivelineOverRange whole;
  for (const MachineState state : assessing::states_with_positions) {
    const assessing::DrivelineOverRange& one = one_state(value, state);
    whole.missing = one.missing;
    whole.states.insert(whole.states.end(), one.states.begin(), one.states.end());
    whole.impossible.insert(whole.impossible.end(), one.impossible.begin(), one.impossible.end());
    for (const auto& missing : one.missing_of_state) {
      if (missing.first == state) whole.missing_of_state.push_back(missing);
    }
  }
  return whole;
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
