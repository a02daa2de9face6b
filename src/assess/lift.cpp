// How high one may lift a mounted machine while its PTO turns, before a limit of its driveline is broken.

#include "assess/checks.hpp"
#include "assess/coupling_yokes.hpp"
#include "assess/fouling.hpp"
#include "assess/geometry.hpp"
#include "assess/layout.hpp"
#include "assess/limits.hpp"

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

constexpr Length fineness = millimetres(1.0);

/// The highest lift that any state reaches.
Length highest_stated(const Case& value) {
  Length highest = range_of(value, MachineState::turning)->lift->high;
  for (const MachineState state : states_with_positions) {
    const Stated<StateRange>& range = range_of(value, state);
    if (range && range->lift) highest = std::max(highest, range->lift->high);
  }
  return highest;
}

/// Where what may foul is stated, with the room that is to be left.
LiftLimit limit_within(const Case& value, const MountedRange& positions, bool slack, const DrivelineLimits& limits,
                       const FoulingData& fouling, Amount room) {
  const CouplingYokes yokes = yokes_of(value.driveline);
  EnvelopeOptions options = options_within(limits, yokes);
  if (positions.pivot) options.budget = budget_of_steered;
  const MountedTolerance tolerance = mounted_tolerance(value);
  const auto judge = [&](const LengthRange& lift) {
    MountedRange part = positions;
    part.lift = lift;
    DrivelineEnvelope envelope = mounted_envelope(value, tolerance, part, slack, options).envelope;
    allow_for_crosses(envelope, yokes);
    LimitCheck check = check_limits(envelope, limits);
    if (!check.holds || !fouling.complete()) return check;
    const MountedClearance clear = mounted_clearance(value, part, fouling);
    detail::check_limit(check, clear.least, std::optional<Length>(metres(room.si) + fouling.tolerance),
                        LimitKind::clearance, false);
    return check;
  };
  return detail::highest_lift(positions.lift, judge, fineness);
}

/// Rounded inward to whole millimetres; the lift that the case states stays where it is proved.
Length shown(const LiftLimit& limit, Length stated) {
  const Length whole = millimetres(std::floor(in(limit.allowed, unit::millimetre) + 1e-9));
  return limit.allowed >= stated ? std::max(whole, stated) : whole;
}

const char* what_stops(const LiftLimit& limit) {
  switch (limit.kind) {
  case LimitKind::front_angle: return "turn.stop.front";
  case LimitKind::rear_angle: return "turn.stop.rear";
  case LimitKind::difference: return "turn.stop.difference";
  case LimitKind::longest: return "turn.stop.longest";
  case LimitKind::shortest: return "turn.stop.shortest";
  case LimitKind::clearance: return "turn.stop.fouling";
  case LimitKind::none: break;
  }
  return "turn.stop.nothing";
}

const char* lift_fouling_phrase(const FoulingData& fouling) {
  if (fouling.complete()) return "lift.fouling.considered";
  if (!fouling.followed) return "lift.fouling.not_followed";
  return fouling.stated ? "lift.fouling.partly" : "lift.fouling.unstated";
}

Finding lift_finding(const Case& value, MachineState state, bool driven, Length highest, const FoulingData& fouling) {
  MountedRange positions = positions_of(value, state);
  positions.lift.high = highest;
  const bool slack = positions_in(value, state).slack;
  const StateLimits limits = state_limits(value, state, driven);
  const Length stated = range_of(value, state)->lift->high;
  const LimitBand room = fouling_band(value);
  const LiftLimit strictest = limit_within(value, positions, slack, limits.strictest, fouling, room.strictest);
  const LiftLimit loosest = limit_within(value, positions, slack, limits.loosest, fouling, room.loosest);
  const bool breaks_low = !strictest.low_end;
  const char* as_far = loosest.kind == LimitKind::none ? "lift.limit.open" : "lift.limit";
  Finding finding = make_finding(Check::lift_limit, Status::ok, breaks_low ? "lift.not_even_low" : as_far);
  if (breaks_low || stated > strictest.allowed) finding.status = Status::caution;
  if (!loosest.low_end || stated > loosest.allowed) finding.status = Status::stop;
  const LiftLimit& decides = finding.status == Status::stop ? loosest : strictest;
  finding.value = amount_of(stated);
  finding.limit = amount_of(shown(decides, stated));
  finding.sense = LimitSense::at_most;
  finding.state = state;
  finding.pose = PoseAt{decides.at.yaw, decides.at.pitch, decides.at.roll, decides.broken};
  finding.basis = limits.basis;
  finding.facts = {fact("lift", shown(strictest, stated)), fact("lift_most", shown(loosest, stated)),
                   fact("stop", PhraseId{what_stops(strictest)}), fact("from", positions.lift.low),
                   fact("fouling", PhraseId{lift_fouling_phrase(fouling)})};
  if (fouling.complete()) finding.basis.push_back(room.basis.front());
  // Where even the lowest lift breaks a limit, no height is to be named.
  if (finding.status != Status::ok) finding.advice = {breaks_low ? "lift.mend_first" : "lift.no_higher"};
  if (fouling.in_part()) {
    finding.missing = fouling.missing;
    finding.status = worse(finding.status, Status::not_known);
  }
  return finding;
}

} // namespace

void check_lift_limit(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  if (value.tractor.hitch.kind != HitchKind::three_point) {
    findings.not_examined(Check::lift_limit);
    return;
  }
  constexpr MachineState lifted = MachineState::turning; // raised at the headland
  const StateExtremes* state = range.find(lifted);
  std::vector<std::string> missing = range.missing_for(lifted);
  for (std::string& path : limits_missing(value)) missing.push_back(std::move(path));
  if (state == nullptr || !missing.empty()) {
    findings.add(not_known(Check::lift_limit, "lift.unstated", missing));
    return;
  }
  const FoulingData fouling = fouling_data(value);
  try {
    findings.add(lift_finding(value, lifted, state->driven, highest_stated(value), fouling));
  } catch (const InputError&) { // another state's lift is out of reach; this one's was examined
    findings.add(lift_finding(value, lifted, state->driven, range_of(value, lifted)->lift->high, fouling));
  }
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
