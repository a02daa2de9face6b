#pragma once
// The driveline of a mounted implement over lift, sway and height difference of the lower links, with proved bounds.

#include <fieldshaft/driveline/envelope.hpp>
#include <fieldshaft/driveline/mounted_search.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The envelope of a mounted implement, and where the linkage stands at each extreme.
struct MountedEnvelope {
  DrivelineEnvelope envelope; ///< without speed variation
  LinkagePosition front_angle_at;
  LinkagePosition rear_angle_at;
  LinkagePosition difference_at;
  LinkagePosition longest_at;
  LinkagePosition shortest_at;
};

namespace detail {

/// The implement's frame moved to the ends of the lower links, which a quick coupler sets apart from it.
inline Driveline coupled(Driveline driveline, const ThreePointLinkage& linkage) {
  driveline.input = driveline.input + Position(-linkage.coupler_depth, Length{}, linkage.coupler_rise);
  return driveline;
}

} // namespace detail

/// Worst joint angles, longest and shortest driveline of a mounted implement, with proved bounds.
///
///   driveline  as for driveline_at; its input in the implement's frame
///   linkage    as for mounted_pose
///   range      lift within the reach of the lower links; sway and difference as the linkage allows
///   options    gaps and budget as for the envelope of a trailed implement
/// Bounds hold for the rigid model of mounted_pose. A lift in the range at which the linkage cannot close is impossible
/// input. The speed variation is not part of it: see driveline_at at the poses that matter.
/// Source: branch and bound over raise, swing and roll with the bounds of this header.
inline MountedEnvelope driveline_envelope(const Driveline& driveline, const ThreePointLinkage& linkage,
                                          const MountedRange& range, const EnvelopeOptions& options = {}) {
  constexpr const char* name = "driveline_envelope";
  check::driveline(driveline, name);
  check::linkage(linkage, name);
  check::mounted_range(linkage, range, name);
  check::envelope_options(options, name);
  const Driveline line = detail::coupled(driveline, linkage);
  const detail::LinkageMotion motion(linkage, range);
  MountedEnvelope e;
  const auto find = [&](detail::MountedGoal goal, auto& extreme, LinkagePosition& position, auto gap) {
    using Q = decltype(gap);
    const detail::SearchResult r = detail::MountedSearch(line, motion, goal, 0.98 * gap.value(), options.budget).run();
    const bool least = goal == detail::MountedGoal::shortest;
    constexpr double rounding = 1e-12; // metres and radians: the state's own rounding, generously
    extreme =
        least ? detail::extreme<Q>(-r.value, -r.upper - rounding, -r.value + rounding, r.at, gap.value())
              : detail::extreme<Q>(r.value, std::max(0.0, r.value - rounding), r.upper + rounding, r.at, gap.value());
    position = motion.position(r.at);
    extreme.at = mounted_pose(linkage, position).attitude;
    e.envelope.boxes += r.boxes;
  };
  find(detail::MountedGoal::front_angle, e.envelope.front_angle, e.front_angle_at, options.angle_gap);
  find(detail::MountedGoal::rear_angle, e.envelope.rear_angle, e.rear_angle_at, options.angle_gap);
  find(detail::MountedGoal::difference, e.envelope.difference, e.difference_at, options.angle_gap);
  find(detail::MountedGoal::longest, e.envelope.longest, e.longest_at, options.length_gap);
  find(detail::MountedGoal::shortest, e.envelope.shortest, e.shortest_at, options.length_gap);
  return e;
}

} // namespace v0
} // namespace fieldshaft
