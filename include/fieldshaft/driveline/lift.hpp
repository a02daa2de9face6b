#pragma once
// How high a mounted implement may be lifted, proved.

#include <fieldshaft/driveline/mounted.hpp>
#include <fieldshaft/driveline/turn.hpp>

namespace fieldshaft {
inline namespace v0 {

/// How high one may lift.
struct LiftLimit {
  Length allowed{};                 ///< proved: from the low end of the range up to this lift every limit holds
  Length broken{};                  ///< at this lift a limit is broken or not proved to hold
  LimitKind kind = LimitKind::none; ///< which limit; none: all hold up to the high end
  Attitude at;                      ///< where it is broken
  bool low_end = false;             ///< false: a limit is broken, or not proved, at the low end already
};

namespace detail {

/// By halving over what holds from the low end of an interval of lifts up to a height.
template <class Judge> LiftLimit highest_lift(const LengthRange& lift, const Judge& judge, Length fine) {
  const auto check_up_to = [&](Length high) { return judge(LengthRange{lift.low, high}); };
  LiftLimit limit;
  const auto note = [&limit](const LimitCheck& c, Length high) {
    limit.broken = high;
    limit.kind = c.broken != LimitKind::none ? c.broken : c.open;
    limit.at = c.at;
  };
  const LimitCheck whole = check_up_to(lift.high);
  if (whole.holds) return {lift.high, lift.high, LimitKind::none, {}, true};
  note(whole, lift.high);
  limit.allowed = lift.low;
  const LimitCheck low = check_up_to(lift.low);
  if (!low.holds) {
    note(low, lift.low);
    return limit;
  }
  limit.low_end = true;
  while (limit.broken - limit.allowed > fine) {
    const Length high = 0.5 * (limit.allowed + limit.broken);
    const LimitCheck check = check_up_to(high);
    if (check.holds) {
      limit.allowed = high;
    } else {
      note(check, high);
    }
  }
  return limit;
}

} // namespace detail

/// How high a mounted implement may be lifted before a limit of its driveline is broken.
///
/// Halving over the envelope from the low end of the lift to a height; sway and difference as in the range.
///   limits  at least one; others as for the envelope
/// `allowed` is proved. Only the driveline's own limits are looked at.
inline LiftLimit lift_limit(const Driveline& driveline, const ThreePointLinkage& linkage, const MountedRange& range,
                            const DrivelineLimits& limits, const EnvelopeOptions& options = {}) {
  EnvelopeOptions few = options;
  few.with_speed_variation = false;
  few.limits = limits;
  check::driveline_limits(limits, "lift_limit");
  const auto judge = [&](const LengthRange& lift) {
    MountedRange part = range;
    part.lift = lift;
    return check_limits(driveline_envelope(driveline, linkage, part, few).envelope, limits);
  };
  return detail::highest_lift(range.lift, judge, millimetres(0.1));
}

} // namespace v0
} // namespace fieldshaft
