// How far one may turn a trailed or steered machine before a limit of its driveline is broken or something fouls.

#include "assess/checks.hpp"
#include "assess/coupling_yokes.hpp"
#include "assess/fouling.hpp"
#include "assess/geometry.hpp"
#include "assess/layout.hpp"
#include "assess/limits.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

constexpr MachineState turning = MachineState::turning;
constexpr Angle fineness = degrees(0.05);

/// What nobody turns beyond: the trade's machines jack-knife before.
constexpr Angle farthest_turn = degrees(90.0);

/// How far the turn is asked to both sides.
struct Farthest {
  Angle left = farthest_turn;
  Angle right = farthest_turn;
};

struct Question {
  Driveline driveline;
  Position pin;
  DrivelineTolerance tolerance;
  AttitudeRange attitudes; ///< pitch and roll as stated, yaw as far as it is asked
  CouplingYokes yokes;
};

/// Asked up to a right angle or less; where roll and turn depend on each other, as far as the case states them.
Question question(const Case& value, const Farthest& farthest) {
  Question q{driveline_of(value), pin_of(value), trailed_tolerance(value), attitudes_of(value, turning),
             yokes_of(value.driveline)};
  AngleRange& yaw = q.attitudes.yaw;
  const Farthest most = q.attitudes.couplings.empty() ? farthest : Farthest{Angle{}, Angle{}};
  yaw = {std::min({yaw.low, Angle{}, -most.left}), std::max({yaw.high, Angle{}, most.right})};
  return q;
}

void take_smaller(TurnLimit& own, const TurnLimit& other) {
  if (!other.straight_ahead || (own.straight_ahead && other.allowed < own.allowed)) own = other;
}

TurnLimits limits_within(const Question& q, const DrivelineLimits& limits, const FoulingData& fouling, Amount room) {
  const EnvelopeOptions options = options_within(limits, q.yokes);
  const auto envelope = [&](const AttitudeRange& part) {
    DrivelineEnvelope e = driveline_envelope(q.driveline, q.pin, q.tolerance, part, options).envelope;
    allow_for_crosses(e, q.yokes);
    return e;
  };
  TurnLimits turns = detail::turn_to_both_sides(q.attitudes, limits, envelope, fineness);
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
  if (!fouling.followed) return "turn.fouling.not_followed";
  return fouling.stated ? "turn.fouling.partly" : "turn.fouling.unstated";
}

/// Beyond a turn at which no rule ended the search, nothing was looked at.
const char* limit_phrase(const TurnLimit& left, const TurnLimit& right) {
  const bool left_open = left.kind == LimitKind::none;
  const bool right_open = right.kind == LimitKind::none;
  if (left_open && right_open) return "turn.limit.open";
  if (left_open) return "turn.limit.left_open";
  return right_open ? "turn.limit.right_open" : "turn.limit";
}

Finding finding_of(const Side& left, const Side& right, const FoulingData& fouling) {
  const Finding on_left = judged(left);
  const Finding on_right = judged(right);
  const bool left_decides = on_left.status != on_right.status
                                ? on_left.status > on_right.status
                                : left.strictest.allowed - left.stated < right.strictest.allowed - right.stated;
  Finding finding = left_decides ? on_left : on_right;
  if (std::string_view(finding.reason) == "turn.limit") finding.reason = limit_phrase(left.loosest, right.loosest);
  finding.facts = {fact("left", shown(left.strictest, left.stated)),
                   fact("right", shown(right.strictest, right.stated)),
                   fact("left_most", shown(left.loosest, left.stated)),
                   fact("right_most", shown(right.loosest, right.stated)),
                   fact("left_stop", PhraseId{what_stops(left.strictest)}),
                   fact("right_stop", PhraseId{what_stops(right.strictest)}),
                   fact("others", PhraseId{"turn.others.none"}),
                   fact("fouling", PhraseId{fouling_phrase(fouling)})};
  const bool some_turn = left.strictest.straight_ahead && right.strictest.straight_ahead;
  if (finding.status != Status::ok) finding.advice = {some_turn ? "turn.no_further" : "turn.mend_first"};
  if (fouling.in_part()) {
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

Finding turn_trailed(const Case& value, bool driven, const FoulingData& fouling, const Farthest& farthest) {
  const Question q = question(value, farthest);
  const StateLimits limits = state_limits(value, turning, driven);
  const LimitBand room = fouling_band(value);
  return turn_finding(value, limits_within(q, limits.strictest, fouling, room.strictest),
                      limits_within(q, limits.loosest, fouling, room.loosest), limits, fouling);
}

/// One side of a steered machine's turn, over the whole lift and roll of the state.
MountedRange steered_to(const Case& value, double side, Angle turn) {
  MountedRange part = positions_of(value, turning);
  part.yaw = side < 0.0 ? AngleRange{-turn, Angle{}} : AngleRange{Angle{}, turn};
  return part;
}

/// About the steering pivot. What fouls a steered machine is not followed.
TurnLimits steered_within(const Case& value, const DrivelineLimits& limits, const Farthest& farthest) {
  const MountedTolerance tolerance = mounted_tolerance(value);
  const Positions stated = positions_in(value, turning);
  const CouplingYokes yokes = yokes_of(value.driveline);
  EnvelopeOptions options = options_within(limits, yokes);
  options.budget = budget_of_steered;
  const auto up_to = [&](double side) {
    return [&, side](Angle turn) {
      DrivelineEnvelope e =
          mounted_envelope(value, tolerance, steered_to(value, side, turn), stated.slack, options).envelope;
      allow_for_crosses(e, yokes);
      return check_limits(e, limits);
    };
  };
  constexpr Angle fine = degrees(0.2);
  return {detail::turn_to_one_side(up_to(-1.0), std::max(-stated.yaw.low, farthest.left), fine),
          detail::turn_to_one_side(up_to(1.0), std::max(stated.yaw.high, farthest.right), fine)};
}

Finding turn_steered(const Case& value, bool driven, const FoulingData& fouling, const Farthest& farthest) {
  const StateLimits limits = state_limits(value, turning, driven);
  return turn_finding(value, steered_within(value, limits.strictest, farthest),
                      steered_within(value, limits.loosest, farthest), limits, fouling);
}

/// The shortest distance alone, for machines whose joint centres meet somewhere.
EnvelopeOptions shortest_alone() {
  EnvelopeOptions options;
  options.with_speed_variation = false;
  options.limits = DrivelineLimits{};
  return options;
}

/// A steered machine at the corners of lift and roll, within its tolerances; an InputError where it cannot stand there.
void stand_at_corners(const Case& value, Angle yaw) {
  const MountedRange positions = positions_of(value, turning);
  const MountedTolerance tolerance = mounted_tolerance(value);
  const bool slack = positions_in(value, turning).slack;
  for (const Length& lift : {positions.lift.low, positions.lift.high}) {
    for (const Angle& roll : {positions.roll.low, positions.roll.high}) {
      MountedRange corner = positions;
      corner.yaw = {yaw, yaw};
      corner.lift = {lift, lift};
      corner.roll = {roll, roll};
      mounted_envelope(value, tolerance, corner, slack, shortest_alone());
    }
  }
}

/// Whether a machine can be turned so far to one side at all: joint centres do not meet, and its wheels reach the
/// ground.
bool can_turn(const Case& value, double side, Angle turn) {
  try {
    if (is_semi_mounted(value)) {
      stand_at_corners(value, side * turn);
      return true;
    }
    const Question q = question(value, side < 0.0 ? Farthest{turn, Angle{}} : Farthest{Angle{}, turn});
    driveline_envelope(q.driveline, q.pin, q.tolerance, q.attitudes, shortest_alone());
    return true;
  } catch (const InputError&) {
    return false;
  }
}

/// The farthest turn to one side that the machine can be asked about, by halving between the stated one and the
/// farthest at all.
Angle farthest_to(const Case& value, double side, Angle stated) {
  if (can_turn(value, side, farthest_turn)) return farthest_turn;
  Angle can = stated;
  Angle cannot = farthest_turn;
  while (cannot - can > degrees(0.5)) {
    const Angle turn = 0.5 * (can + cannot);
    (can_turn(value, side, turn) ? can : cannot) = turn;
  }
  return can;
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
    Question q = question(value, {});
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
  const auto up_to = [&](const Farthest& farthest) {
    return is_semi_mounted(value) ? turn_steered(value, state->driven, fouling, farthest)
                                  : turn_trailed(value, state->driven, fouling, farthest);
  };
  const AngleRange yaw = positions_in(value, turning).yaw;
  const Farthest stated{std::max(Angle{}, -yaw.low), std::max(Angle{}, yaw.high)};
  const Farthest most{farthest_to(value, -1.0, stated.left), farthest_to(value, 1.0, stated.right)};
  for (const double share : {1.0, 0.8, 0.5}) { // between the corners that were tried it may not stand
    const auto part = [share](Angle from, Angle to) { return from + share * (to - from); };
    try {
      findings.add(up_to({part(stated.left, most.left), part(stated.right, most.right)}));
      return;
    } catch (const InputError&) {
      continue;
    }
  }
  findings.add(up_to({Angle{}, Angle{}})); // as stated it was examined
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
