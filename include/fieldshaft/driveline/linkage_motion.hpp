#pragma once
// How a mounted implement moves with its linkage: cells of raise, turn and roll, and what they enclose.
//
// The linkage makes pin and attitude move together. A cell encloses both: the pin in a box about its place at the
// middle, the pitch in an interval whose width rests on a bound of the linkage's transmission. Tolerances of the
// linkage's own measurements widen both.

#include <fieldshaft/driveline/tolerance_objective.hpp>
#include <fieldshaft/hitch/linkage.hpp>

#include <optional>

namespace fieldshaft {
inline namespace v0 {

/// What the linkage may do; an interval of zero width where it does not move. The turn is given by the sway or as an
/// angle upon the hitch points, the roll by the height difference or as an angle; never by both.
struct MountedRange {
  LengthRange lift{};       ///< lower hitch points above their pivots
  LengthRange sway{};       ///< to the left
  LengthRange difference{}; ///< left lower hitch point above the right one
  AngleRange yaw{};         ///< instead of a sway
  AngleRange roll{};        ///< instead of a height difference
};

/// How far the true measurements may lie from the stated ones, to either side.
struct MountedTolerance {
  DrivelineTolerance driveline; ///< of joints and input; those of a pin are not used
  Length lower_pivot_behind{};
  Length lower_pivot_below{};
  Length lower_link{};
  Length top_pivot_behind{};
  Length top_pivot_below{};
  Length top_link{};
  Length mast{};        ///< place of the upper hitch point on the implement
  Length span{};        ///< between the lower hitch points; a height difference asks for it
  Length convergence{}; ///< where the lower links meet; a sway asks for it
  Length wheel{};       ///< slack top link: place of the wheel's lowest point on the implement
  Length ground{};      ///< slack top link: height of the ground
};

namespace check {

inline void mounted_range(const ThreePointLinkage& l, const MountedRange& range, const char* function) {
  const auto ordered = [function](const LengthRange& r, const char* name) {
    finite(r.low.value(), {function, name, "m"});
    at_least(r.high.value(), r.low.value(), {function, name, "m"});
  };
  ordered(range.lift, "range.lift");
  ordered(range.sway, "range.sway");
  ordered(range.difference, "range.difference");
  attitude_range({range.yaw, {}, range.roll, {}}, function);
  for (const bool high : {false, true}) {
    const auto end = [high](const LengthRange& r) { return high ? r.high : r.low; };
    linkage_position(l, {end(range.lift), end(range.sway), end(range.difference)}, function);
  }
  const auto given = [](const auto& r) { return r.low.value() != 0.0 || r.high.value() != 0.0; };
  if (given(range.sway) && given(range.yaw)) fail_input(function, "range.yaw", "beside a sway", "one of the two");
  if (given(range.difference) && given(range.roll))
    fail_input(function, "range.roll", "beside a height difference", "one of the two");
}

inline void mounted_tolerance(const MountedTolerance& t, const char* function) {
  tolerance(t.driveline, function);
  const Length lengths[] = {t.lower_pivot_behind,
                            t.lower_pivot_below,
                            t.lower_link,
                            t.top_pivot_behind,
                            t.top_pivot_below,
                            t.top_link,
                            t.mast,
                            t.span,
                            t.convergence,
                            t.wheel,
                            t.ground};
  for (const Length& length : lengths) not_negative(length.value(), {function, "tolerance", "m"});
}

/// The shortest span and convergence within the tolerances still reach as far as the range.
inline void sideways_within(const ThreePointLinkage& l, const MountedRange& range, const MountedTolerance& t,
                            const char* function) {
  const auto reached = [function](const LengthRange& r, Length whole, Length tolerance, const char* name) {
    const Length most = std::max(math::abs(r.low), math::abs(r.high));
    if (most > Length{}) below(most.value(), (whole - tolerance).value(), {function, name, "m"});
  };
  reached(range.sway, l.convergence, t.convergence, "range.sway");
  reached(range.difference, l.span, t.span, "range.difference");
}

} // namespace check

namespace detail {

/// A cell's middle and what it encloses.
struct LinkageCell {
  Position pin;
  Triple attitude; ///< yaw, pitch, roll
  Triple half;     ///< of the attitude
  Slack slack;     ///< of the joint centres

  bool is_wide() const noexcept { return size(half) > 0.0 || slack.size() > 0.0 || slack.turn > 0.0; }
};

/// Bound of the pitch's change with the raise, over a cell of half width `half`.
///
/// The top link cannot lengthen: pitch' = -(t · h')/(t · j), t its direction, h' the velocity of the lower points, j
/// that of the mast's top for a unit of pitch. The divisor is mast sin(angle between mast and top link), and that angle
/// follows from the distance between lower points and top pivot, which changes by no more than the lower points move.
inline double pitch_rate(const SideView& v, const SideView::Level& level, double raised, double half) noexcept {
  const double mast_elevation = v.mast_rise - level.pitch;
  const double top_x = v.pivot_x + v.ground * std::cos(v.ground_rise) - level.x - v.mast * std::cos(mast_elevation);
  const double top_z = v.pivot_z + v.ground * std::sin(v.ground_rise) - level.z - v.mast * std::sin(mast_elevation);
  const double base = std::hypot(top_x + v.mast * std::cos(mast_elevation), top_z + v.mast * std::sin(mast_elevation));
  const auto cosine = [&v](double d) {
    return (v.mast * v.mast + v.top_link * v.top_link - d * d) / (2.0 * v.mast * v.top_link);
  };
  const double reach = v.link * half;
  const double worst = std::max(std::abs(cosine(std::max(0.0, base - reach))), std::abs(cosine(base + reach)));
  if (!(worst < 1.0)) return std::numeric_limits<double>::infinity();
  const double divisor = v.mast * std::sqrt((1.0 - worst) * (1.0 + worst));
  const double crude = v.link / divisor;
  const double along = std::abs(top_x * std::sin(raised) + top_z * std::cos(raised)) / v.top_link * v.link;
  const double turning = (v.link + v.mast * crude) / v.top_link;
  return std::min(crude, (along + v.link * (turning + 1.0) * half) / divisor) * (1.0 + 1e-12);
}

/// Change of the lower hitch points' reach at one and the same lift, by the tolerance of the lower links; infinite
/// where the shorter link does not come as far.
inline double reach_change(const SideView& v, double lift, double link_tolerance) noexcept {
  if (!(link_tolerance > 0.0)) return 0.0;
  const double shorter = v.link - link_tolerance;
  const double level = (shorter - lift) * (shorter + lift);
  if (!(shorter > 0.0 && level > 0.0)) return std::numeric_limits<double>::infinity();
  return link_tolerance * shorter / std::sqrt(level) * (1.0 + 1e-12);
}

/// Bound of the pitch's change by the tolerances, at every raise of a cell.
///
/// As in pitch_rate: the change is (t · displacement of hitch points, mast's top and pivots, and what the top link is
/// longer) over mast sin(angle). The cosine of that angle, (M² + T² - D²)/(2 M T), is largest in size at a corner of
/// the intervals of M, T and D.
inline double pitch_slack(const SideView& v, const SideView::Level& level, double half, double reach,
                          const MountedTolerance& t) noexcept {
  const double across = (t.lower_pivot_behind + t.top_pivot_behind).value() + reach;
  const double up = (t.lower_pivot_below + t.top_pivot_below).value();
  const double moved = std::hypot(across, up);
  const double mast = t.mast.value();
  const double link = t.top_link.value();
  if (moved == 0.0 && mast == 0.0 && link == 0.0) return 0.0;
  const double base = std::hypot(v.pivot_x + v.ground * std::cos(v.ground_rise) - level.x,
                                 v.pivot_z + v.ground * std::sin(v.ground_rise) - level.z);
  double worst = 0.0;
  for (const double m : {v.mast - mast, v.mast + mast}) {
    for (const double l : {v.top_link - link, v.top_link + link}) {
      for (const double side : {-1.0, 1.0}) {
        const double d = std::max(0.0, base + side * (v.link * half + moved));
        worst = std::max(worst, m > 0.0 && l > 0.0 ? std::abs((m * m + l * l - d * d) / (2.0 * m * l)) : 2.0);
      }
    }
  }
  if (!(worst < 1.0)) return std::numeric_limits<double>::infinity();
  return (moved + mast + link) / ((v.mast - mast) * std::sqrt((1.0 - worst) * (1.0 + worst))) * (1.0 + 1e-12);
}

/// What the tolerance of a whole adds to asin(part/whole), and to whole - sqrt(whole² - part²), the advance by the
/// swing. Both grow with the part and as the whole gets shorter.
struct Sideways {
  double turn = 0.0, advance = 0.0;
};

inline Sideways sideways_change(double part, double whole, double tolerance) noexcept {
  if (!(tolerance > 0.0) || part == 0.0) return {};
  constexpr double infinite = std::numeric_limits<double>::infinity();
  const double shorter = whole - tolerance;
  if (!(part < shorter)) return {infinite, infinite};
  const auto advance = [part](double w) { return part * part / (w + std::sqrt((w - part) * (w + part))); };
  constexpr double outward = 1.0 + 1e-12;
  return {(std::asin(part / shorter) - std::asin(part / whole)) * outward + 1e-15,
          (advance(shorter) - advance(whole)) * outward + 1e-15};
}

/// Pitch of an implement on its own wheel, as slack_pose has it, with the bound of its change over a cell and by the
/// tolerances.
struct WheelStand {
  double arm, rise, ground;

  explicit WheelStand(const SupportWheel& wheel)
      : arm(std::hypot(wheel.behind.value(), wheel.below.value())),
        rise(std::atan2(wheel.below.value(), wheel.behind.value())), ground(wheel.ground_below_pivot.value()) {}

  bool reaches(double lift) const noexcept { return std::abs(ground + lift) < arm; }
  double pitch(double lift) const noexcept { return rise - std::asin((ground + lift) / arm); }

  /// Pitch changes by the change of height over the level way from hitch points to wheel.
  double tilt(double lift, double lift_change, double wheel, double height) const noexcept {
    const double shorter = arm - wheel;
    const double highest = std::abs(ground + lift) + lift_change + height;
    if (!(highest < shorter)) return std::numeric_limits<double>::infinity();
    return (lift_change + height + wheel) / std::sqrt((shorter - highest) * (shorter + highest)) * (1.0 + 1e-12);
  }
};

/// Raise of the lower links, turn and roll of the implement [rad]: what a cell is made of.
struct LinkageMotion {
  ThreePointLinkage linkage;
  SideView side;
  MountedTolerance tolerance;
  std::optional<WheelStand> wheel; ///< slack top link
  double far = 0.0;                ///< where the implement turns, ahead of the hitch points
  bool rolls_by_links = false;
  Slack own{Eigen::Vector3d::Zero(), Eigen::Vector3d::Zero(), Eigen::Vector3d::UnitX(), 0.0, 0.0, 0.0};
  Triple low{}, high{};

  LinkageMotion(const ThreePointLinkage& l, const MountedRange& range, const MountedTolerance& t = {})
      : linkage(l), side(l), tolerance(t) {
    const auto angle = [](Length part, Length whole) { return part == Length{} ? 0.0 : std::asin(part / whole); };
    const bool sways = range.sway.low != Length{} || range.sway.high != Length{};
    rolls_by_links = range.difference.low != Length{} || range.difference.high != Length{};
    if (sways) far = l.convergence.value();
    low = {angle(range.lift.low, l.lower_link), range.yaw.low.value(), range.roll.low.value()};
    high = {angle(range.lift.high, l.lower_link), range.yaw.high.value(), range.roll.high.value()};
    if (sways) low[1] = -angle(range.sway.high, l.convergence);
    if (sways) high[1] = -angle(range.sway.low, l.convergence);
    if (rolls_by_links) low[2] = angle(range.difference.low, l.span);
    if (rolls_by_links) high[2] = angle(range.difference.high, l.span);
  }

  LinkagePosition position(const Triple& at) const noexcept {
    return {linkage.lower_link * std::sin(at[0]), -metres(far) * std::sin(at[1]),
            rolls_by_links ? linkage.span * std::sin(at[2]) : Length{}};
  }

  /// The side view at a raise; an InputError where there is none.
  SideView::Level level(double raised) const {
    SideView::Level at = side.at(raised);
    const double lift = side.link * std::sin(raised);
    if (wheel) {
      at.closes = wheel->reaches(lift);
      if (at.closes) at.pitch = wheel->pitch(lift);
    }
    if (!at.closes)
      check::fail({"driveline_envelope", "lift", "m"}, lift,
                  wheel ? "a height at which the wheel reaches the ground" : "a height at which the linkage closes");
    return at;
  }

  /// Bound of the pitch's change over a cell and by the tolerances, and the change of the hitch points' reach.
  std::pair<double, double> tilt_and_reach(const SideView::Level& at, double raised, double half) const noexcept {
    const double lift = side.link * std::sin(raised);
    const double climb = side.link * half;
    const double reach = reach_change(side, std::min(side.link, std::abs(lift) + climb), tolerance.lower_link.value());
    if (wheel) return {wheel->tilt(lift, climb, tolerance.wheel.value(), tolerance.ground.value()), reach};
    const double by_cell = half > 0.0 ? pitch_rate(side, at, raised, half) * half : 0.0;
    return {by_cell + pitch_slack(side, at, half, reach, tolerance), reach};
  }
};

inline LinkageCell linkage_cell(const LinkageMotion& motion, const Triple& at, const Triple& half) {
  const SideView& v = motion.side;
  const SideView::Level level = motion.level(at[0]);
  const auto [tilt, reach] = motion.tilt_and_reach(level, at[0], half[0]);
  if (half[0] == 0.0 && !is_finite(tilt + reach))
    check::fail({"driveline_envelope", "lift", "m"}, motion.position(at).lift.value(),
                "a height at which the linkage closes within all tolerances");
  const double far = motion.far;
  const double span = motion.rolls_by_links ? motion.linkage.span.value() : 0.0;
  const auto part = [&](double whole, std::size_t i) {
    return whole * std::min(1.0, std::abs(std::sin(at[i])) + half[i]);
  };
  const Sideways sway = sideways_change(part(far, 1), far, motion.tolerance.convergence.value());
  const Sideways lean = sideways_change(part(span, 2), span, motion.tolerance.span.value());
  const auto moved = [](double arm, double rate, double by) { return arm * (std::abs(rate) * by + 0.5 * by * by); };
  Slack slack = motion.own;
  slack.pin += Eigen::Vector3d(moved(v.link, std::sin(at[0]), half[0]) + moved(far, std::sin(at[1]), half[1]) + reach +
                                   sway.advance + motion.tolerance.lower_pivot_behind.value(),
                               moved(far, std::cos(at[1]), half[1]),
                               moved(v.link, std::cos(at[0]), half[0]) + motion.tolerance.lower_pivot_below.value());
  const double swung = far * 2.0 * math::power<2>(std::sin(0.5 * at[1]));
  return {Position::from_metres({level.x + swung, -far * std::sin(at[1]), level.z}),
          {at[1], level.pitch, at[2]},
          {half[1] + sway.turn, tilt, half[2] + lean.turn},
          slack};
}

} // namespace detail
} // namespace v0
} // namespace fieldshaft
