#pragma once
// The driveline of a mounted implement over lift, sway and height difference of the lower links, with proved bounds.

#include <fieldshaft/driveline/envelope.hpp>
#include <fieldshaft/driveline/mounted_elsewhere.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The envelope of a mounted implement, and where the linkage stands at each extreme.
struct MountedEnvelope {
  DrivelineEnvelope envelope;
  LinkagePosition front_angle_at;
  LinkagePosition rear_angle_at;
  LinkagePosition difference_at;
  LinkagePosition longest_at;
  LinkagePosition shortest_at;
  LinkagePosition speed_variation_at;
};

namespace detail {

/// The implement's frame moved to the ends of the lower links, which a quick coupler sets apart from it.
inline Driveline coupled(Driveline driveline, const ThreePointLinkage& linkage) {
  driveline.input = driveline.input + Position(-linkage.coupler_depth, Length{}, linkage.coupler_rise);
  return driveline;
}

/// The same in the frame of the motion's cells, which of a steered machine has its origin at the pivot.
inline Driveline coupled(const Driveline& driveline, const LinkageMotion& motion) {
  Driveline line = coupled(driveline, motion.linkage);
  if (motion.pivot) line.input = line.input - *motion.pivot;
  return line;
}

/// One search for each extreme.
class MountedEnveloper {
public:
  MountedEnveloper(const Driveline& driveline, const LinkageMotion& motion, const EnvelopeOptions& options)
      : line_(coupled(driveline, motion)), motion_(motion), options_(options) {
    DrivelineTolerance own = motion.tolerance.driveline;
    own.pin_distance = own.pin_lateral = own.pin_drop = Length{};
    motion_.own = slack(line_, own);
  }

  MountedEnvelope run() {
    MountedEnvelope e;
    using Limits = DrivelineLimits;
    e.envelope.front_angle = most(MountedGoal::front_angle, e.front_angle_at, options_.angle_gap, &Limits::front_angle);
    e.envelope.rear_angle = most(MountedGoal::rear_angle, e.rear_angle_at, options_.angle_gap, &Limits::rear_angle);
    e.envelope.difference = most(MountedGoal::difference, e.difference_at, options_.angle_gap, &Limits::difference);
    e.envelope.longest = most(MountedGoal::longest, e.longest_at, options_.length_gap, &Limits::longest);
    e.envelope.shortest = shortest(e.shortest_at);
    if (options_.with_speed_variation) e.envelope.speed_variation = variation(e);
    e.envelope.boxes = boxes_;
    return e;
  }

private:
  static constexpr double rounding = 1e-12; // metres and radians: the state's own rounding, generously

  SearchResult search(MountedGoal goal, double gap, LinkagePosition& position, const SearchQuestion& asked = {}) {
    SearchResult r = MountedSearch(line_, motion_, goal, 0.98 * gap, options_.budget).run(asked);
    position = motion_.position(r.at);
    // Where only limits are asked about, what is attained matters little.
    if (!options_.limits && linkage_cell(motion_, r.at, {}).is_wide())
      r.value = std::max(r.value, MountedElsewhere(line_, motion_, r.at).greatest([goal](const DrivelineState& s) {
        return goal_value(goal, s);
      }));
    boxes_ += r.boxes;
    return r;
  }

  Triple attitude_at(const SearchResult& r) const { return linkage_cell(motion_, r.at, {}).attitude; }

  /// Whether a limit is kept, `sign` -1 where it is a least one: as of an objective that is the quantity itself.
  template <class Q> SearchQuestion asked(Q gap, LimitOf<Q> of, double sign = 1.0) const {
    if (!options_.limits) return {};
    const double limit = sign * ((*options_.limits).*of)->value();
    return {limit - gap.value(), limit};
  }

  template <class Q> Extreme<Q> most(MountedGoal goal, LinkagePosition& position, Q gap, LimitOf<Q> of) {
    if (skips(options_, of)) return not_searched<Q>(0.0, std::numeric_limits<double>::infinity());
    const SearchResult r = search(goal, gap.value(), position, asked(gap, of));
    return extreme<Q>(r.value, std::max(0.0, r.value - rounding), r.upper + rounding, attitude_at(r), gap.value());
  }

  Extreme<Length> shortest(LinkagePosition& position) {
    constexpr auto of = &DrivelineLimits::shortest;
    if (skips(options_, of)) return not_searched<Length>(0.0, std::numeric_limits<double>::infinity());
    const SearchResult r =
        search(MountedGoal::shortest, options_.length_gap.value(), position, asked(options_.length_gap, of, -1.0));
    return extreme<Length>(-r.value, -r.upper - rounding, -r.value + rounding, attitude_at(r),
                           options_.length_gap.value());
  }

  Extreme<double> variation(MountedEnvelope& e) {
    if (line_.wide_angle_front && line_.wide_angle_rear) return {0.0, 0.0, 0.0, 0.0, e.envelope.front_angle.at, true};
    if (line_.wide_angle_front || line_.wide_angle_rear) {
      e.speed_variation_at = line_.wide_angle_front ? e.rear_angle_at : e.front_angle_at;
      return variation_of(line_.wide_angle_front ? e.envelope.rear_angle : e.envelope.front_angle,
                          options_.variation_gap);
    }
    constexpr double infinite = std::numeric_limits<double>::infinity();
    for (const Extreme<Angle>* angle : {&e.envelope.front_angle, &e.envelope.rear_angle}) {
      if (angle->lower >= degrees(90)) return {infinite, infinite, infinite, 0.0, angle->at, true};
    }
    const SearchResult r = search(MountedGoal::speed_variation, options_.variation_gap, e.speed_variation_at);
    const double spare = 1e-9 * (1.0 + r.value); // a root of squares of cosines, each good to many more digits
    return extreme<double>(r.value, std::max(0.0, r.value - spare), r.upper, attitude_at(r), options_.variation_gap);
  }

  Driveline line_;
  LinkageMotion motion_;
  EnvelopeOptions options_;
  int boxes_ = 0;
};

inline void check_mounted(const Driveline& driveline, const ThreePointLinkage& linkage, const MountedRange& range,
                          const MountedTolerance& tolerance, const EnvelopeOptions& options) {
  constexpr const char* name = "driveline_envelope";
  check::driveline(driveline, name);
  check::linkage(linkage, name);
  check::mounted_range(linkage, range, name);
  check::mounted_tolerance(tolerance, name);
  check::sideways_within(linkage, range, tolerance, name);
  check::envelope_options(options, name);
}

} // namespace detail

/// Worst joint angles, longest and shortest driveline of a mounted implement, with proved bounds.
///
///   driveline  as for driveline_at; its input in the implement's frame
///   linkage    as for mounted_pose
///   range      lift within the reach of the lower links; sway or yaw, difference or roll as the linkage allows; with a
///              steering pivot the yaw is the turn about it, and the driveline's input is that of the straight machine
///   options    gaps and budget as for the envelope of a trailed implement
/// Bounds hold for the rigid model of mounted_pose. A lift in the range at which the linkage cannot close is impossible
/// input. Source: branch and bound over raise, turn and roll with the bounds of linkage_motion.hpp.
inline MountedEnvelope driveline_envelope(const Driveline& driveline, const ThreePointLinkage& linkage,
                                          const MountedRange& range, const EnvelopeOptions& options = {}) {
  detail::check_mounted(driveline, linkage, range, {}, options);
  return detail::MountedEnveloper(driveline, {linkage, range}, options).run();
}

/// The same for every measurement within the tolerances at once.
///
///   tolerance  of joints, input and linkage, at least 0
/// Each bound holds for all linkages and drivelines within the tolerances at every position of the range, its lift
/// counted from the true pivots; `value` is attained by one of them at that position. Remainders of the second order
/// are bounded, not followed, and pitch and place of the hitch points are taken as free of each other within their
/// tolerances, so that bounds are wider than the wanted gap where tolerances are large. A lift at which some linkage
/// within the tolerances cannot close is impossible input. Source: as above, with the allowances of
/// tolerance_objective.hpp. Example: a driveline of 1 m in line, front joint ± 10 mm: longest 1010 mm.
inline MountedEnvelope driveline_envelope(const Driveline& driveline, const ThreePointLinkage& linkage,
                                          const MountedTolerance& tolerance, const MountedRange& range,
                                          const EnvelopeOptions& options = {}) {
  detail::check_mounted(driveline, linkage, range, tolerance, options);
  return detail::MountedEnveloper(driveline, {linkage, range, tolerance}, options).run();
}

/// The same for an implement that stands on its own wheel with the top link slack.
///
///   wheel  as for slack_pose; the linkage's own top_link is not used
/// A lift at which the wheel cannot reach the ground, within the tolerances, is impossible input.
inline MountedEnvelope driveline_envelope(const Driveline& driveline, ThreePointLinkage linkage,
                                          const SupportWheel& wheel, const MountedTolerance& tolerance,
                                          const MountedRange& range, const EnvelopeOptions& options = {}) {
  constexpr const char* name = "driveline_envelope";
  check::positive(wheel.behind.value(), {name, "wheel.behind", "m"});
  check::not_negative(wheel.below.value(), {name, "wheel.below", "m"});
  check::not_negative(wheel.ground_below_pivot.value(), {name, "wheel.ground_below_pivot", "m"});
  if (!(linkage.top_link > Length{})) linkage.top_link = metres(1.0); // any: it is slack
  detail::check_mounted(driveline, linkage, range, tolerance, options);
  detail::LinkageMotion motion(linkage, range, tolerance);
  motion.stand_on(wheel);
  return detail::MountedEnveloper(driveline, motion, options).run();
}

} // namespace v0
} // namespace fieldshaft
