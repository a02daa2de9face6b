#pragma once
// How far one may turn: the largest yaw at which every limit holds over the whole range of pitch and roll, proved.

#include <fieldshaft/driveline/tolerance.hpp>

#include <vector>

namespace fieldshaft {
inline namespace v0 {

enum class LimitKind { none, front_angle, rear_angle, difference, longest, shortest, clearance };

/// The turn to one side.
struct TurnLimit {
  Angle allowed{};                  ///< proved: up to this turn every limit holds, at every pitch and roll of the range
  Angle broken{};                   ///< by this turn a limit is broken, at the attitude `at`; the asked turn if none is
  LimitKind kind = LimitKind::none; ///< which limit ends the turn; none: all hold up to the asked turn
  Attitude at;                      ///< where that limit is broken
  bool straight_ahead = false;      ///< false: a limit is broken, or not proved to hold, even without a turn
};

struct TurnLimits {
  TurnLimit left;  ///< yaw below 0
  TurnLimit right; ///< yaw above 0
};

/// How an envelope stands to its limits: all proved to hold, one proved broken, or open between the bounds.
struct LimitCheck {
  bool holds = true;
  LimitKind broken = LimitKind::none; ///< a limit that some attitude breaks
  LimitKind open = LimitKind::none;   ///< a limit that is not proved to hold
  Attitude at;                        ///< of the broken or else of the open limit
};

namespace detail {
template <class Q>
void check_limit(LimitCheck& check, const Extreme<Q>& extreme, const std::optional<Q>& limit, LimitKind kind,
                 bool most) {
  if (!limit) return;
  if (most ? extreme.upper <= *limit : extreme.lower >= *limit) return;
  check.holds = false;
  const bool broken = most ? extreme.value > *limit : extreme.value < *limit;
  if (broken && check.broken == LimitKind::none) {
    check.broken = kind;
    check.at = extreme.at;
  }
  if (check.open == LimitKind::none) check.open = kind;
  if (check.broken == LimitKind::none) check.at = extreme.at;
}
} // namespace detail

/// Which limits an envelope keeps.
inline LimitCheck check_limits(const DrivelineEnvelope& envelope, const DrivelineLimits& limits) {
  check::driveline_limits(limits, "check_limits");
  LimitCheck check;
  detail::check_limit(check, envelope.front_angle, limits.front_angle, LimitKind::front_angle, true);
  detail::check_limit(check, envelope.rear_angle, limits.rear_angle, LimitKind::rear_angle, true);
  detail::check_limit(check, envelope.difference, limits.difference, LimitKind::difference, true);
  detail::check_limit(check, envelope.longest, limits.longest, LimitKind::longest, true);
  detail::check_limit(check, envelope.shortest, limits.shortest, LimitKind::shortest, false);
  return check;
}

namespace detail {

/// Finer than a gap of 0.01° in the joint angles can tell apart.
inline constexpr Angle finest_turn = degrees(0.001);

/// Largest yaw on one side by halving: what is proved to hold from below, what is broken or open from above.
template <class Judge> TurnLimit turn_to_one_side(const Judge& check_up_to, Angle most, Angle fine = finest_turn) {
  TurnLimit limit;
  const LimitCheck whole = check_up_to(most);
  limit.broken = most;
  if (whole.holds) return {most, most, LimitKind::none, {}, true};
  const auto note = [&limit](const LimitCheck& c, Angle turn) {
    limit.broken = turn;
    limit.kind = c.broken != LimitKind::none ? c.broken : c.open;
    limit.at = c.at;
  };
  note(whole, most);
  const LimitCheck none = check_up_to(Angle{});
  if (!none.holds) {
    note(none, Angle{});
    return limit;
  }
  limit.straight_ahead = true;
  while (limit.broken - limit.allowed > fine) {
    const Angle turn = 0.5 * (limit.allowed + limit.broken);
    const LimitCheck check = check_up_to(turn);
    if (check.holds) {
      limit.allowed = turn;
    } else {
      note(check, turn);
    }
  }
  return limit;
}

/// Both sides by the envelopes of the parts of a range from straight ahead to a turn.
template <class Envelope>
TurnLimits turn_to_both_sides(const AttitudeRange& range, const DrivelineLimits& limits, const Envelope& envelope,
                              Angle fine = finest_turn) {
  constexpr const char* name = "turn_limit";
  check::attitude_range(range, name);
  check::within(0.0, range.yaw.low.value(), range.yaw.high.value(), {name, "straight ahead (0 of yaw)", "rad"});
  check::driveline_limits(limits, name);
  const auto up_to = [&](double side) {
    return [&, side](Angle turn) {
      AttitudeRange part = range;
      part.yaw = side < 0.0 ? AngleRange{-turn, Angle{}} : AngleRange{Angle{}, turn};
      return check_limits(envelope(part), limits);
    };
  };
  return {turn_to_one_side(up_to(-1.0), -range.yaw.low, fine), turn_to_one_side(up_to(1.0), range.yaw.high, fine)};
}

} // namespace detail

/// How far one may turn to each side, for a given range of pitch and roll.
///
///   driveline, pin, options  as for driveline_envelope
///   range    pitch and roll as they occur; yaw from 0 or below to 0 or above: the turns asked about
///   limits   at least one; the greatest allowed joint angles and difference, the longest and shortest distance
/// `allowed` is proved: every attitude between straight ahead and that turn keeps every limit. `broken` is the smallest
/// turn looked at where a limit is broken or could not be proved to hold; the two lie as close as the gaps of the
/// envelope allow. Only the limits given are looked at: whether tyre, tongue or drawbar foul the driveline is another
/// question. Source: halving over driveline_envelope. Example: both joints 0.5 m from the pin, level, at most 35° at
/// each joint: 70° to both sides.
inline TurnLimits turn_limit(const Driveline& driveline, const Position& pin, const AttitudeRange& range,
                             const DrivelineLimits& limits, const EnvelopeOptions& options = {}) {
  EnvelopeOptions few = options;
  few.with_speed_variation = false;
  few.limits = limits;
  return detail::turn_to_both_sides(
      range, limits, [&](const AttitudeRange& part) { return driveline_envelope(driveline, pin, part, few); });
}

/// The same for every driveline within the tolerances at once.
///
///   tolerance  as for driveline_envelope
///   fineness   how near `allowed` and `broken` shall come to each other, above 0
/// Example: both joints 0.5 m from the pin, level, at most 35° at each joint, pin distance ± 10 mm: 69.2°.
inline TurnLimits turn_limit(const Driveline& driveline, const Position& pin, const DrivelineTolerance& tolerance,
                             const AttitudeRange& range, const DrivelineLimits& limits, Angle fineness = degrees(0.001),
                             const EnvelopeOptions& options = {}) {
  check::positive(fineness.value(), {"turn_limit", "fineness", "rad"});
  check::tolerance(tolerance, "turn_limit");
  EnvelopeOptions few = options;
  few.with_speed_variation = false;
  few.limits = limits;
  return detail::turn_to_both_sides(
      range, limits,
      [&](const AttitudeRange& part) { return driveline_envelope(driveline, pin, tolerance, part, few).envelope; },
      fineness);
}

/// A point of the curve of turn limits over pitch.
struct TurnLimitAtPitch {
  Angle pitch{};
  TurnLimits limits;
};

/// The turn limits at single pitches, evenly over the pitch interval of the range, both ends included.
///
/// Each point is proved for its own pitch and the whole roll interval; between the points nothing is claimed.
///   points  2 to 1000; others as for turn_limit
inline std::vector<TurnLimitAtPitch> turn_limit_over_pitch(const Driveline& driveline, const Position& pin,
                                                           const AttitudeRange& range, const DrivelineLimits& limits,
                                                           int points, const EnvelopeOptions& options = {}) {
  check::within(points, 2.0, 1000.0, {"turn_limit_over_pitch", "points", ""});
  check::attitude_range(range, "turn_limit_over_pitch");
  std::vector<TurnLimitAtPitch> curve;
  for (int i = 0; i < points; ++i) {
    const double share = static_cast<double>(i) / (points - 1);
    AttitudeRange part = range;
    const Angle pitch = (1.0 - share) * range.pitch.low + share * range.pitch.high;
    part.pitch = {pitch, pitch};
    curve.push_back({pitch, turn_limit(driveline, pin, part, limits, options)});
  }
  return curve;
}

} // namespace v0
} // namespace fieldshaft
