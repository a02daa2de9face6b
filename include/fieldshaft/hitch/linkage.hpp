#pragma once
// A rear three-point linkage: in the side view a four-bar of lower links, mast and top link; seen from above the lower
// links swing the implement about the point where they meet; a height difference of the lower links rolls it.

#include <fieldshaft/geometry.hpp>
#include <fieldshaft/hitch/four_bar.hpp>

namespace fieldshaft {
inline namespace v0 {

/// As measured on the tractor and the implement. Lengths are those of the side view. Behind and below are counted from
/// the PTO shaft end; a top pivot above the shaft has a negative `top_pivot_below`.
struct ThreePointLinkage {
  Length lower_pivot_behind{}; ///< negative: ahead of the shaft end
  Length lower_pivot_below{};
  Length lower_link{};
  Length top_pivot_behind{};
  Length top_pivot_below{};
  Length top_link{};
  Length mast_height{};   ///< upper hitch point above the lower ones
  Length mast_forward{};  ///< upper hitch point ahead of the lower ones
  Length span{};          ///< between the lower hitch points; only a height difference needs it
  Length convergence{};   ///< where the lower links meet, ahead of the lower hitch points; only sway needs it
  Length coupler_depth{}; ///< quick coupler: from the link ends rearwards to the implement's own lower hitch points
  Length coupler_rise{};  ///< and upwards
};

/// Where the linkage stands.
struct LinkagePosition {
  Length lift{};       ///< lower hitch points above the pivots of the lower links
  Length sway{};       ///< of the lower hitch points to the left
  Length difference{}; ///< left lower hitch point above the right one
};

namespace check {

inline void linkage(const ThreePointLinkage& linkage, const char* function) {
  finite(linkage.lower_pivot_behind.value(), {function, "lower_pivot_behind", "m"});
  finite(linkage.lower_pivot_below.value(), {function, "lower_pivot_below", "m"});
  positive(linkage.lower_link.value(), {function, "lower_link", "m"});
  finite(linkage.top_pivot_behind.value(), {function, "top_pivot_behind", "m"});
  finite(linkage.top_pivot_below.value(), {function, "top_pivot_below", "m"});
  positive(linkage.top_link.value(), {function, "top_link", "m"});
  positive(linkage.mast_height.value(), {function, "mast_height", "m"});
  finite(linkage.mast_forward.value(), {function, "mast_forward", "m"});
  not_negative(linkage.span.value(), {function, "span", "m"});
  not_negative(linkage.convergence.value(), {function, "convergence", "m"});
  not_negative(linkage.coupler_depth.value(), {function, "coupler_depth", "m"});
  finite(linkage.coupler_rise.value(), {function, "coupler_rise", "m"});
}

inline void linkage_position(const ThreePointLinkage& linkage, const LinkagePosition& position, const char* function) {
  within(position.lift.value(), -linkage.lower_link.value(), linkage.lower_link.value(), {function, "lift", "m"});
  finite(position.sway.value(), {function, "sway", "m"});
  finite(position.difference.value(), {function, "difference", "m"});
  if (position.sway != Length{}) {
    positive(linkage.convergence.value(), {function, "convergence", "m"});
    within(position.sway.value(), -linkage.convergence.value(), linkage.convergence.value(), {function, "sway", "m"});
  }
  if (position.difference != Length{}) {
    positive(linkage.span.value(), {function, "span", "m"});
    within(position.difference.value(), -linkage.span.value(), linkage.span.value(), {function, "difference", "m"});
  }
}

} // namespace check

namespace detail {

/// The side view: pivots and mast in metres, elevations counted from forward to up.
struct SideView {
  double pivot_x, pivot_z;    ///< of the lower links
  double ground, ground_rise; ///< to the top pivot: length and elevation
  double link, top_link;
  double mast, mast_rise; ///< lower to upper hitch point, level: length and elevation

  explicit SideView(const ThreePointLinkage& l) noexcept
      : pivot_x(-l.lower_pivot_behind.value()), pivot_z(-l.lower_pivot_below.value()),
        ground(std::hypot((l.lower_pivot_behind - l.top_pivot_behind).value(),
                          (l.lower_pivot_below - l.top_pivot_below).value())),
        ground_rise(std::atan2((l.lower_pivot_below - l.top_pivot_below).value(),
                               (l.lower_pivot_behind - l.top_pivot_behind).value())),
        link(l.lower_link.value()), top_link(l.top_link.value()),
        mast(std::hypot(l.mast_forward.value(), l.mast_height.value())),
        mast_rise(std::atan2(l.mast_height.value(), l.mast_forward.value())) {}

  struct Level {
    bool closes;
    double x, z;  ///< lower hitch points
    double pitch; ///< of the implement
  };

  /// For the lower links raised by an angle above level.
  Level at(double raised) const noexcept {
    const FourBar bars = four_bar(link, mast, top_link, ground, pi - raised - ground_rise, 1.0);
    return {bars.closes, pivot_x - link * std::cos(raised), pivot_z + link * std::sin(raised),
            std::remainder(mast_rise - (bars.coupler + ground_rise), 2.0 * pi)};
  }
};

} // namespace detail

/// The pose of a mounted implement at a position of the linkage.
///
/// In the side view crank = lower link, coupler = mast, rocker = top link, ground = from lower to top pivot; the pitch
/// is the mast's elevation when level less its elevation now. Sway turns the implement about the point where the lower
/// links meet, yaw = -asin(sway/convergence); a height difference rolls it, roll = asin(difference/span).
///   linkage   closed with its mast behind the line from lower hitch points to top pivot, as every tractor's is
///   position  lift between minus and plus the lower link's length, where the bars meet
/// Exact in the side view; sway and difference are taken not to change the side view (small: they enter by their
/// squares). A lift that is out of reach or at which the linkage cannot close is impossible input. Source:
/// four_bar_angles; ISO 730 for the terms. Example: parallel links of equal length: pitch 0 at every lift.
inline Pose mounted_pose(const ThreePointLinkage& linkage, const LinkagePosition& position) {
  constexpr const char* name = "mounted_pose";
  check::linkage(linkage, name);
  check::linkage_position(linkage, position, name);
  const detail::SideView side(linkage);
  const detail::SideView::Level level = side.at(std::asin((position.lift / linkage.lower_link)));
  if (!level.closes) check::fail({name, "lift", "m"}, position.lift.value(), "a height at which the linkage closes");
  const double yaw = position.sway == Length{} ? 0.0 : -std::asin((position.sway / linkage.convergence));
  const double roll = position.difference == Length{} ? 0.0 : std::asin((position.difference / linkage.span));
  const double swung = linkage.convergence.value() * 2.0 * math::power<2>(std::sin(0.5 * yaw)); // forwards by the swing
  Pose pose{Position::from_metres({level.x + swung, position.sway.value(), level.z}),
            {radians(yaw), radians(level.pitch), radians(roll)}};
  pose.pin = in_tractor(pose, Position(-linkage.coupler_depth, Length{}, linkage.coupler_rise));
  return pose;
}

/// Change of pitch while the linkage lifts the implement from links level to a transport height [rad].
///
/// The transport pitch of ISO 730:2009, clause 3.2.24 (published definition); usual figures of 5° to 10° are from
/// memory. Above 0: the implement's front end goes down as it is lifted. Example: parallel links of equal length: 0.
inline Angle transport_pitch(const ThreePointLinkage& linkage, Length transport_lift) {
  return mounted_pose(linkage, {transport_lift, {}, {}}).attitude.pitch - mounted_pose(linkage, {}).attitude.pitch;
}

/// The length of the top link with which the implement stands at a pitch, level by default, at a lift [m].
///
/// length = |upper hitch point - top pivot|
///   linkage   its own top_link is not used
///   lift      within the reach of the lower links
/// Exact. Source: geometry of the side view. Example: parallel links: the length of the lower links.
inline Length top_link_for(const ThreePointLinkage& linkage, Length lift, Angle pitch = {}) {
  ThreePointLinkage l = linkage;
  l.top_link = metres(1.0); // any: it is what is asked for
  check::linkage(l, "top_link_for");
  check::linkage_position(l, {lift, {}, {}}, "top_link_for");
  check::finite(pitch.value(), {"top_link_for", "pitch", "rad"});
  const double raised = std::asin((lift / l.lower_link));
  const detail::SideView side(l);
  const double rise = side.mast_rise - pitch.value();
  const double x = side.pivot_x - side.link * std::cos(raised) + side.mast * std::cos(rise);
  const double z = side.pivot_z + side.link * std::sin(raised) + side.mast * std::sin(rise);
  const Length length = metres(std::hypot(x + l.top_pivot_behind.value(), z + l.top_pivot_below.value()));
  check::positive(length.value(), {"top_link_for", "top link", "m"});
  return length;
}

/// Wheels that carry the rear of an implement whose top link is slack.
struct SupportWheel {
  Length behind{};             ///< from the lower hitch points rearwards to the wheel's lowest point
  Length below{};              ///< from the lower hitch points down to it, with the implement level
  Length ground_below_pivot{}; ///< ground below the pivots of the tractor's lower links
};

struct SlackPose {
  Pose pose;
  Length top_link{}; ///< length that the slack top link takes up; it must be able to
};

/// The pose of an implement on lower links and its own wheels, the top link slack.
///
/// The wheel stands on level ground: height of the lower hitch points + behind sin(pitch) - below cos(pitch) = 0
///   wheel  behind above 0, below at least 0
/// Exact for level ground. A lift at which the wheel cannot reach the ground is impossible input.
/// Source: geometry. Example: hitch points as high above the ground as above the wheel's lowest point: pitch 0.
inline SlackPose slack_pose(const ThreePointLinkage& linkage, const SupportWheel& wheel, Length lift) {
  constexpr const char* name = "slack_pose";
  check::positive(wheel.behind.value(), {name, "wheel.behind", "m"});
  check::not_negative(wheel.below.value(), {name, "wheel.below", "m"});
  check::not_negative(wheel.ground_below_pivot.value(), {name, "wheel.ground_below_pivot", "m"});
  const double arm = std::hypot(wheel.behind.value(), wheel.below.value());
  const double height = (wheel.ground_below_pivot + lift).value();
  check::within(height, -arm, arm, {name, "hitch points above ground", "m"});
  const Angle pitch = radians(std::atan2(wheel.below.value(), wheel.behind.value()) - std::asin(height / arm));
  ThreePointLinkage fitted = linkage;
  fitted.top_link = top_link_for(linkage, lift, pitch);
  const double raised = std::asin((lift / fitted.lower_link));
  Pose pose{Position::from_metres({-fitted.lower_pivot_behind.value() - fitted.lower_link.value() * std::cos(raised),
                                   0.0, (lift - fitted.lower_pivot_below).value()}),
            {{}, pitch, {}}};
  pose.pin = in_tractor(pose, Position(-fitted.coupler_depth, Length{}, fitted.coupler_rise));
  return {pose, fitted.top_link};
}

} // namespace v0
} // namespace fieldshaft
