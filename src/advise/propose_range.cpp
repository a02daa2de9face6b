// Operating rules: the PTO off in turns, a narrower turn, a lower lift.

#include "advise/proposals.hpp"
#include "advise/quick.hpp"
#include "assess/bearing.hpp"
#include "assess/layout.hpp"

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

using assessing::fact;

Stated<StateRange>& range_at(WorkingRange& range, MachineState state) {
  if (state == MachineState::working) return range.working;
  return state == MachineState::turning ? range.turning : range.transport;
}

const char* state_phrase(MachineState state) {
  if (state == MachineState::working) return "state.working";
  return state == MachineState::turning ? "state.turning" : "state.transport";
}

/// Whether the finding no longer stands in the way on account of this state.
bool met(const Situation& now, const Case& changed, const Finding& finding, MachineState state) {
  const auto after = assessed_quickly(changed, now.states);
  const Finding* found = after ? after->find(finding.check) : nullptr;
  if (found == nullptr) return false;
  return found->status <= now.options.accept || (found->state != MachineState::any && found->state != state);
}

/// The greatest whole step from `least`, below `most`, with which the finding is met; nothing if none is.
template <class Changed>
std::optional<int> greatest(const Situation& now, const Finding& finding, MachineState state, int least, int most,
                            Changed changed) {
  const auto holds = [&](int step) { return met(now, changed(step), finding, state); };
  if (most <= least || !holds(least)) return std::nullopt;
  int good = least;
  int bad = most;
  while (bad - good > 1) {
    const int middle = (good + bad) / 2;
    (holds(middle) ? good : bad) = middle;
  }
  return good;
}

/// A turn that was measured as a radius is limited as an angle, which one can see from the seat.
Case with_yaw(const Case& value, MachineState state, Angle most) {
  Case changed = value;
  const AngleRange yaw = assessing::positions_in(value, state).yaw;
  StateRange& range = *range_at(changed.range, state);
  if (range.roll_at_full_turn) {
    // At a narrower full turn more of the roll is left; the most of both sides.
    const auto taken = [most](Angle full) {
      return full > Angle{} ? std::min(1.0, static_cast<double>(most / full)) : 1.0;
    };
    const double lost = 1.0 - *range.roll_at_full_turn;
    range.roll_at_full_turn = 1.0 - lost * std::min(taken(-yaw.low), taken(yaw.high));
  }
  range.left_turn_radius.reset();
  range.right_turn_radius.reset();
  range.yaw = Interval<Angle>{std::max(yaw.low, -most), std::min(yaw.high, most)};
  return changed;
}

/// A turn of at least 5°: a machine that must go straight is no remedy.
constexpr int least_turn = 5;

/// The widest turn, in whole degrees to either side.
void propose_turn(const Situation& now, const Finding& finding, MachineState state, Proposals& proposals) {
  const bool turns = is_trailed(now.value) || assessing::is_semi_mounted(now.value);
  if (!turns || now.states.over_range(now.value).find(state) == nullptr) return;
  const AngleRange yaw_now = assessing::positions_in(now.value, state).yaw;
  const double widest = std::max(-yaw_now.low.value(), yaw_now.high.value());
  const int most = static_cast<int>(std::ceil(in(radians(widest), unit::degree) - 1e-9));
  const auto turn = greatest(now, finding, state, least_turn, most,
                             [&](int step) { return with_yaw(now.value, state, degrees(step)); });
  if (!turn) return;
  const Angle yaw = degrees(*turn);
  add(proposals, {ChangeKind::limit_turn,
                  state_phrase(state),
                  {fact("state", PhraseId{state_phrase(state)}), fact("turn", yaw), fact("own_turn", radians(widest))},
                  [state, yaw](Case& c) { c = with_yaw(c, state, yaw); }});
}

Case with_lift(const Case& value, MachineState state, Length from, double share) {
  Case changed = value;
  Interval<Length>& lift = *range_at(changed.range, state)->lift;
  (from == lift.high ? lift.high : lift.low) = from + (1.0 - share) * ((lift.low + lift.high) - from - from);
  return changed;
}

/// A lift whose bad end is brought in, in steps of a twentieth of the range.
void propose_lift(const Situation& now, const Finding& finding, MachineState state, Proposals& proposals) {
  const Stated<StateRange>& range = assessing::range_of(now.value, state);
  if (!range || !range->lift || now.value.tractor.hitch.kind != HitchKind::three_point) return;
  if (!finding.pose || !finding.pose->lift || !(range->lift->low < range->lift->high)) return;
  const Interval<Length> lift = *range->lift;
  const bool high = *finding.pose->lift - lift.low > lift.high - *finding.pose->lift;
  const Length from = high ? lift.high : lift.low;
  constexpr int steps = 20;
  const auto step = greatest(now, finding, state, 1, steps, [&](int taken) {
    return with_lift(now.value, state, from, static_cast<double>(taken) / steps);
  });
  if (!step) return;
  const double share = static_cast<double>(*step) / steps;
  const Case changed = with_lift(now.value, state, from, share);
  const Interval<Length>& left = *assessing::range_of(changed, state)->lift;
  add(proposals, {ChangeKind::limit_lift,
                  state_phrase(state),
                  {fact("state", PhraseId{state_phrase(state)}), fact("low", left.low), fact("high", left.high)},
                  [state, left](Case& c) { range_at(c.range, state)->lift = left; }});
}

/// Whether the driveline stands soon after the PTO is off: what runs on behind it does not drive it.
bool comes_to_rest(const Case& value) {
  const auto& rotor = value.implement.rotor;
  return (rotor && !rotor->present) || (value.start && value.start->overrunning_clutch == true);
}

/// The PTO off before turning, where turning is what is too much and work alone is not. A rotor that drives the line
/// through the turn would bend its joints at full speed: the lever is no standstill.
void propose_rest(const Situation& now, Proposals& proposals) {
  const auto& turning = now.value.range.turning;
  if (!turning || turning->driven != true || !comes_to_rest(now.value)) return;
  add(proposals, {ChangeKind::disengage_in_turns, "", {}, [](Case& c) { c.range.turning->driven = false; }});
}

bool of_geometry(const Case& value, Check check) {
  switch (check) {
  case Check::joint_bearing_life: return assessing::life_goes_by_positions(value);
  case Check::pulsing_torque:
  case Check::working_angle:
  case Check::turning_angle:
  case Check::transport_angle:
  case Check::joint_lock:
  case Check::angle_difference:
  case Check::speed_variation:
  case Check::inertia_excitation:
  case Check::joint_torque_swing:
  case Check::overlap:
  case Check::clearance: return true;
  default: return false;
  }
}

/// The finding of the stub at the joint's angle does not name the state; it is turning where that is driven.
MachineState state_of(const Situation& now, const Finding& finding) {
  if (finding.check != Check::root_torsion_at_angle) return finding.state;
  const auto& turning = now.value.range.turning;
  return turning && turning->driven == true ? MachineState::turning : MachineState::working;
}

} // namespace

void propose_range(const Situation& now, const Finding& finding, Proposals& proposals) {
  const MachineState state = state_of(now, finding);
  const bool bends = finding.check == Check::root_torsion_at_angle;
  if (state == MachineState::any || !(of_geometry(now.value, finding.check) || bends)) return;
  const bool only_driven = finding.check == Check::turning_angle || finding.check == Check::speed_variation ||
                           finding.check == Check::inertia_excitation || finding.check == Check::joint_torque_swing ||
                           bends;
  if (state == MachineState::turning && only_driven) propose_rest(now, proposals);
  propose_turn(now, finding, state, proposals);
  propose_lift(now, finding, state, proposals);
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
