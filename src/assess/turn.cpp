// How far one may turn a trailed or steered machine before a limit of its driveline is broken or something fouls.

#include "assess/checks.hpp"
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

constexpr MachineState turning = MachineState::turning;
constexpr Angle fineness = degrees(0.05);

/// What nobody turns beyond: the trade's machines jack-knife before.
constexpr Angle farthest_turn = degrees(90.0);

struct Question {
  Driveline driveline;
  Position pin;
  DrivelineTolerance tolerance;
  AttitudeRange attitudes; ///< pitch and roll as stated, yaw as far as it is asked
};

/// Asked up to a right angle; where roll and turn depend on each other, as far as the case states them.
Question question(const Case& value, Angle farthest) {
  Question q{driveline_of(value), pin_of(value), trailed_tolerance(value), attitudes_of(value, turning)};
  AngleRange& yaw = q.attitudes.yaw;
  const Angle most = q.attitudes.couplings.empty() ? farthest : Angle{};
  yaw = {std::min({yaw.low, Angle{}, -most}), std::max({yaw.high, Angle{}, most})};
  return q;
}

void take_smaller(TurnLimit& own, const TurnLimit& other) {
  if (!other.straight_ahead || (own.straight_ahead && other.allowed < own.allowed)) own = other;
}

TurnLimits limits_within(const Question& q, const DrivelineLimits& limits, const FoulingData& fouling, Amount room) {
  TurnLimits turns = turn_limit(q.driveline, q.pin, q.tolerance, q.attitudes, limits, fineness);
  if (!fouling.complete()) return turns;
  const TurnLimits clear = turn_limit(q.driveline, q.pin, q.attitudes, fouling.around.fixed,
                                      metres(room.si) + fouling.tolerance, degrees(0.1));
  take_smaller(turns.left, clear.left);
  take_smaller(turns.right, clear.right);
  return turns;
}

/// One side: the turn as stated, up to where no rule objects, and up to where every rule does.
struct Side {
  Angle stated{};
  TurnLimit strictest;
  TurnLimit loosest;
};

/// Rounded inward to a tenth of a degree for people; the turn that the case states stays where it is proved.
Angle shown(const TurnLimit& limit, Angle stated) {
  const Angle tenth = degrees(std::floor(10.0 * in(limit.allowed, unit::degree) + 1e-9) / 10.0);
  return limit.allowed >= stated ? std::max(tenth, stated) : tenth;
}

Finding judged(const Side& side) {
  LimitBand band{amount_of(shown(side.strictest, side.stated)),
                 amount_of(shown(side.loosest, side.stated)),
                 LimitSense::at_most,
                 {rigid_model}};
  Finding finding = compare(Check::turn_limit, amount_of(side.stated), band, "turn.limit");
  const auto at_least = [&](Status status, const TurnLimit& limit) {
    finding.status = worse(finding.status, status);
    finding.limit = amount_of(limit.allowed);
    finding.reason = "turn.not_even_straight";
  };
  if (!side.strictest.straight_ahead) at_least(Status::caution, side.strictest);
  if (!side.loosest.straight_ahead) at_least(Status::stop, side.loosest);
  finding.state = turning;
  const Attitude& at = finding.status == Status::stop ? side.loosest.at : side.strictest.at;
  finding.pose = PoseAt{at.yaw, at.pitch, at.roll, std::nullopt};
  return finding;
}

const char* what_stops(const TurnLimit& limit) {
  switch (limit.kind) {
  case LimitKind::none: return "turn.stop.nothing";
  case LimitKind::front_angle: return "turn.stop.front";
  case LimitKind::rear_angle: return "turn.stop.rear";
  case LimitKind::difference: return "turn.stop.difference";
  case LimitKind::longest: return "turn.stop.longest";
  case LimitKind::shortest: return "turn.stop.shortest";
  case LimitKind::clearance: return "turn.stop.fouling";
  }
  return "turn.stop.nothing";
}

const char* fouling_phrase(const FoulingData& fouling) {
  if (fouling.complete()) return "turn.fouling.considered";
  return fouling.stated ? "turn.fouling.partly" : "turn.fouling.unstated";
}

Finding finding_of(const Side& left, const Side& right, const FoulingData& fouling) {
  const Finding on_left = judged(left);
  const Finding on_right = judged(right);
  const bool left_decides = on_left.status != on_right.status
                                ? on_left.status > on_right.status
                                : left.strictest.allowed - left.stated < right.strictest.allowed - right.stated;
  Finding finding = left_decides ? on_left : on_right;
  finding.facts = {fact("left", shown(left.strictest, left.stated)),
                   fact("right", shown(right.strictest, right.stated)),
                   fact("left_most", shown(left.loosest, left.stated)),
                   fact("right_most", shown(right.loosest, right.stated)),
                   fact("left_stop", PhraseId{what_stops(left.strictest)}),
                   fact("right_stop", PhraseId{what_stops(right.strictest)}),
                   fact("fouling", PhraseId{fouling_phrase(fouling)})};
  const bool some_turn = left.strictest.straight_ahead && right.strictest.straight_ahead;
  if (finding.status != Status::ok) finding.advice = {some_turn ? "turn.no_further" : "turn.mend_first"};
  if (fouling.stated && !fouling.complete()) {
    finding.missing = fouling.missing;
    finding.status = worse(finding.status, Status::not_known);
  }
  return finding;
}

/// The limits of both sides as a finding.
Finding turn_finding(const Case& value, const TurnLimits& strictest, const TurnLimits& loosest,
                     const StateLimits& limits, const FoulingData& fouling) {
  const AngleRange stated = positions_in(value, turning).yaw;
  Finding finding = finding_of({std::max(Angle{}, -stated.low), strictest.left, loosest.left},
                               {std::max(Angle{}, stated.high), strictest.right, loosest.right}, fouling);
  finding.basis = limits.basis;
  if (fouling.complete()) finding.basis.push_back(fouling_band(value).basis.front());
  return finding;
}

Finding turn_trailed(const Case& value, bool driven, const FoulingData& fouling, Angle farthest) {
  const Question q = question(value, farthest);
  const StateLimits limits = state_limits(value, turning, driven);
  const LimitBand room = fouling_band(value);
  return turn_finding(value, limits_within(q, limits.strictest, fouling, room.strictest),
                      limits_within(q, limits.loosest, fouling, room.loosest), limits, fouling);
}

/// About the steering pivot, over the whole lift and roll of the state. What fouls a steered machine is not followed.
TurnLimits steered_within(const Case& value, const DrivelineLimits& limits, Angle farthest) {
  const MountedTolerance tolerance = mounted_tolerance(value);
  const MountedRange positions = positions_of(value, turning);
  const bool slack = positions_in(value, turning).slack;
  EnvelopeOptions options;
  options.with_speed_variation = false;
  options.limits = limits;
  options.budget = budget_of_steered;
  const auto up_to = [&](double side) {
    return [&, side](Angle turn) {
      MountedRange part = positions;
      part.yaw = side < 0.0 ? AngleRange{-turn, Angle{}} : AngleRange{Angle{}, turn};
      return check_limits(mounted_envelope(value, tolerance, part, slack, options).envelope, limits);
    };
  };
  const auto one_side = [&](double side, Angle most) {
    constexpr Angle fine = degrees(0.2);
    return detail::turn_to_one_side(up_to(side), std::max(most, farthest), fine);
  };
  return {one_side(-1.0, -positions.yaw.low), one_side(1.0, positions.yaw.high)};
}

Finding turn_steered(const Case& value, bool driven, const FoulingData& fouling, Angle farthest) {
  const StateLimits limits = state_limits(value, turning, driven);
  return turn_finding(value, steered_within(value, limits.strictest, farthest),
                      steered_within(value, limits.loosest, farthest), limits, fouling);
}

} // namespace

std::vector<TurnAtPitch> turn_curve(const Case& value, const DrivelineOverRange& range) {
  const StateExtremes* state = range.find(turning);
  if (!is_trailed(value) || state == nullptr || !limits_missing(value).empty()) return {};
  constexpr int points = 9;
  const FoulingData fouling = fouling_data(value);
  const DrivelineLimits limits = state_limits(value, turning, state->driven).strictest;
  const AngleRange pitch = attitudes_of(value, turning).pitch;
  std::vector<TurnAtPitch> curve;
  for (int i = 0; i < points; ++i) {
    const double share = static_cast<double>(i) / (points - 1);
    Question q = question(value, farthest_turn);
    const Angle at = (1.0 - share) * pitch.low + share * pitch.high;
    q.attitudes.pitch = {at, at};
    try {
      const TurnLimits turns = limits_within(q, limits, fouling, fouling_band(value).strictest);
      curve.push_back({at, turns.left.allowed, turns.right.allowed});
    } catch (const InputError&) { // the joint centres meet somewhere up to a right angle: no curve
      return {};
    }
  }
  return curve;
}

void check_turn_limit(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  if (value.tractor.hitch.kind == HitchKind::three_point && !is_semi_mounted(value)) {
    findings.not_examined(Check::turn_limit);
    return;
  }
  std::vector<std::string> missing = range.missing_for(turning);
  for (std::string& path : limits_missing(value)) missing.push_back(std::move(path));
  const StateExtremes* state = range.find(turning);
  if (state == nullptr || !missing.empty()) {
    findings.add(not_known(Check::turn_limit, "turn.unstated", missing));
    return;
  }
  const FoulingData fouling = fouling_data(value);
  const auto up_to = [&](Angle farthest) {
    return is_semi_mounted(value) ? turn_steered(value, state->driven, fouling, farthest)
                                  : turn_trailed(value, state->driven, fouling, farthest);
  };
  try {
    findings.add(up_to(farthest_turn));
  } catch (const InputError&) { // far beyond what is stated joint centres may meet, or a wheel hang in the air
    findings.add(up_to(Angle{}));
  }
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
