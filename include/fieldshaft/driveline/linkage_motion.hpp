#pragma once
// How a mounted implement moves with its linkage: cells of raise, turn and roll, and what they enclose.
//
// The linkage makes pin and attitude move together. A cell encloses both: the pin in a box about its place at the
// middle, the pitch in an interval whose width rests on a bound of the linkage's transmission. Tolerances of the
// linkage's own measurements widen both.

#include <fieldshaft/driveline/tolerance_objective.hpp>
#include <fieldshaft/hitch/steered.hpp>

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
  /// Semi-mounted: of steering, fixed in the headstock, from the lower hitch points. The yaw is the turn about it; the
  /// links themselves do not sway.
  std::optional<Position> pivot{};
};

/// A top link that was not measured but set: the machine stands level at this lift.
struct LevelLift {
  Length lift{};
  Length tolerance{};
  bool stated = false; ///< otherwise the top link was measured
};

/// How far the true measurements may lie from the stated ones, to either side.
struct MountedTolerance {
  DrivelineTolerance driveline; ///< of joints and input; those of a pin are not used
  Length lower_pivot_behind{};
  Length lower_pivot_below{};
  Length lower_link{};
  Length top_pivot_behind{};
  Length top_pivot_below{};
  Length top_link{}; ///< of one that was set by its lift: by how much its length may differ in all
  LevelLift level{};
  Length mast{};        ///< place of the upper hitch point on the implement
  Length span{};        ///< between the lower hitch points; a height difference asks for it
  Length convergence{}; ///< where the lower links meet; a sway asks for it
  Length wheel{};       ///< slack top link: place of the wheel's lowest point on the implement
  Length ground{};      ///< slack top link: height of the ground
  Length pivot{};       ///< semi-mounted: place of the steering pivot on the headstock
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
  if (given(range.sway) && range.pivot)
    fail_input(function, "range.sway", "beside a steering pivot", "none: the machine turns about its pivot");
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
                            t.ground,
                            t.pivot};
  for (const Length& length : lengths) not_negative(length.value(), {function, "tolerance", "m"});
  if (!t.level.stated) return;
  finite(t.level.lift.value(), {function, "tolerance.level.lift", "m"});
  not_negative(t.level.tolerance.value(), {function, "tolerance.level.tolerance", "m"});
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

/// Least product of the mast's length with the sine of its angle to the top link, over a cell and all tolerances: what
/// carries a displacement along the top link into a pitch. The cosine, (M² + T² - D²)/(2 M T), is largest in size at a
/// corner of the intervals of M, T and D. Not above 0 where some linkage may not close.
inline double least_lever(const SideView& v, const SideView::Level& level, double half, double moved,
                          const MountedTolerance& t) noexcept {
  const double mast = t.mast.value();
  const double link = t.top_link.value();
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
  return worst < 1.0 ? (v.mast - mast) * std::sqrt((1.0 - worst) * (1.0 + worst)) : 0.0;
}

/// By how much the pivots may stand elsewhere towards each other.
inline double pivots_moved(const MountedTolerance& t) noexcept {
  return std::hypot((t.lower_pivot_behind + t.top_pivot_behind).value(),
                    (t.lower_pivot_below + t.top_pivot_below).value());
}

/// Bound of the pitch's change by the tolerances, at every raise of a cell.
///
/// As in pitch_rate: the change is (t · displacement of hitch points, mast's top and pivots, and what the top link is
/// longer) over mast sin(angle).
inline double pitch_slack(const SideView& v, const SideView::Level& level, double half, double reach,
                          const MountedTolerance& t) noexcept {
  const double moved = std::hypot((t.lower_pivot_behind + t.top_pivot_behind).value() + reach,
                                  (t.lower_pivot_below + t.top_pivot_below).value());
  const double along = moved + t.mast.value() + t.top_link.value();
  if (along == 0.0) return 0.0;
  const double lever = least_lever(v, level, half, moved, t);
  return lever > 0.0 ? along / lever * (1.0 + 1e-12) : std::numeric_limits<double>::infinity();
}

/// The same where the top link was set so that the machine stands level at a lift.
///
/// With V from the top pivot to the upper hitch point at this raise and V0 at the one where it is level, |V| = |V0|.
/// What moves both ends of the top link alike at both raises leaves the pitch as it is, so that
///   T mast sin(angle) · pitch' = V0 · (hitch points' + mast') - V · (hitch points' + turned mast') + (V - V0) ·
///   pivots'
/// and each factor is bounded over the cell and all tolerances, `slack` being a bound of the pitch's change already.
inline double level_slack(const SideView& v, const SideView::Level& level, double raised, double half, double tilt,
                          double slack, const MountedTolerance& t) noexcept {
  using Plane = Eigen::Vector2d;
  const double lift = v.link * std::sin(raised);
  const double level_lift = t.level.lift.value();
  const double width = v.link * std::cos(raised);
  const double level_width = std::sqrt(std::max(0.0, (v.link - level_lift) * (v.link + level_lift)));
  const double shorter = v.link - t.lower_link.value();
  const double high = std::abs(lift) + v.link * half;
  const double level_high = std::abs(level_lift) + t.level.tolerance.value();
  if (!(shorter > high && shorter > level_high)) return slack;
  const double least_width = std::sqrt((shorter - high) * (shorter + high));
  const double least_level_width = std::sqrt((shorter - level_high) * (shorter + level_high));
  const double link = t.lower_link.value();
  const double mast = t.mast.value();
  const double set =
      t.level.tolerance.value() * v.link / least_level_width; // hitch points by the lift, reach and height
  const double reach = link * v.link / least_width;
  const double level_reach = link * v.link / least_level_width;
  const Plane hitch(-width, lift);
  const Plane level_hitch(-level_width, level_lift);
  const Plane pivot(v.ground * std::cos(v.ground_rise), v.ground * std::sin(v.ground_rise));
  const auto mast_at = [&v](double pitch) {
    return Plane(v.mast * std::cos(v.mast_rise - pitch), v.mast * std::sin(v.mast_rise - pitch));
  };
  const Plane at = hitch + mast_at(level.pitch) - pivot;
  const Plane when_level = level_hitch + mast_at(0.0) - pivot;
  const Eigen::Rotation2Dd back(level.pitch); // pitch above 0 turns the mast's top forwards
  const double by_cell = v.link * half + v.mast * tilt;
  const double chord = 2.0 * std::sin(0.5 * std::min(pi, std::abs(level.pitch) + tilt + slack));
  const double moved = pivots_moved(t);
  // Each vector at the middle, and by how much it may differ.
  const double elsewhere = reach + level_reach + set + (v.mast + mast) * slack + mast * chord;
  const double apart = (at - when_level).norm() + by_cell + elsewhere;
  const double turned = ((level_hitch - pivot) - back * (hitch - pivot)).norm() + v.link * half +
                        ((hitch - pivot).norm() + v.link * half + reach + moved) * (tilt + slack) + reach +
                        level_reach + set + moved * chord;
  const double level_off = level_reach + set + moved + mast;
  const double off = by_cell + reach + moved + mast + (v.mast + mast) * slack;
  const double by_link = std::abs(when_level.x() / level_width - at.x() / width) + level_off / least_level_width +
                         off / least_width + std::abs(when_level.x()) * (1.0 / least_level_width - 1.0 / level_width) +
                         std::abs(at.x()) * (1.0 / least_width - 1.0 / width);
  const double by_lift =
      std::abs(when_level.y() + when_level.x() * level_lift / level_width) +
      level_off * (v.link + link) / least_level_width +
      std::abs(when_level.x()) * (level_high / least_level_width - std::abs(level_lift) / level_width);
  const double along =
      apart * moved + turned * mast + by_link * (v.link + link) * link + by_lift * t.level.tolerance.value();
  const double lever = least_lever(v, level, half, moved + reach, t) * (v.top_link - t.top_link.value());
  return lever > 0.0 ? std::min(slack, along / lever * (1.0 + 1e-12)) : slack;
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
/// tolerances. A machine that steers moves the wheel along and across its headstock.
struct WheelStand {
  double behind, below, ground;
  std::optional<Position> pivot{};

  explicit WheelStand(const SupportWheel& wheel)
      : behind(wheel.behind.value()), below(wheel.below.value()), ground(wheel.ground_below_pivot.value()) {}

  SteeredWheel at(double steer, double roll) const noexcept {
    return pivot ? steered_wheel(behind, below, *pivot, steer, roll) : SteeredWheel{behind, below, 0.0};
  }
  bool reaches(const SteeredWheel& wheel, double lift) const noexcept {
    return std::abs(ground + lift) < std::hypot(wheel.behind, wheel.below);
  }
  double pitch(const SteeredWheel& wheel, double lift) const noexcept {
    return std::atan2(wheel.below, wheel.behind) - std::asin((ground + lift) / std::hypot(wheel.behind, wheel.below));
  }

  /// By how much the wheel moves at most along and under the headstock while that leans and the machine steers.
  double moved(const SteeredWheel& wheel, double steer_half, double roll_half) const noexcept {
    if (!pivot) return 0.0;
    const double arm = std::hypot(behind + pivot->metres().x(), pivot->metres().y()) * steer_half;
    return arm + std::hypot(std::abs(wheel.aside) + arm, below) * roll_half;
  }

  /// Pitch changes by the change of height over the level way from hitch points to wheel.
  double tilt(const SteeredWheel& wheel, double lift, double lift_change, double elsewhere,
              double height) const noexcept {
    const double shorter = std::hypot(wheel.behind, wheel.below) - elsewhere;
    const double highest = std::abs(ground + lift) + lift_change + height;
    if (!(highest < shorter)) return std::numeric_limits<double>::infinity();
    return (lift_change + height + elsewhere) / std::sqrt((shorter - highest) * (shorter + highest)) * (1.0 + 1e-12);
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
  std::optional<Position> pivot{}; ///< of steering; a cell's pin is then the pivot
  Slack own{Eigen::Vector3d::Zero(), Eigen::Vector3d::Zero(), Eigen::Vector3d::UnitX(), 0.0, 0.0, 0.0};
  Triple low{}, high{};

  LinkageMotion(const ThreePointLinkage& l, const MountedRange& range, const MountedTolerance& t = {})
      : linkage(l), side(l), tolerance(t) {
    const auto angle = [](Length part, Length whole) { return part == Length{} ? 0.0 : std::asin(part / whole); };
    const bool sways = range.sway.low != Length{} || range.sway.high != Length{};
    rolls_by_links = range.difference.low != Length{} || range.difference.high != Length{};
    if (range.pivot) pivot = *range.pivot + Position(-l.coupler_depth, Length{}, l.coupler_rise);
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

  /// The same for a machine on its own wheel.
  void stand_on(const SupportWheel& support) {
    wheel.emplace(support);
    wheel->pivot = pivot;
  }

  /// The side view at a place; an InputError where there is none.
  SideView::Level level(const Triple& place) const {
    SideView::Level at = side.at(place[0]);
    const double lift = side.link * std::sin(place[0]);
    if (wheel) {
      const SteeredWheel there = wheel->at(place[1], place[2]);
      at.closes = wheel->reaches(there, lift);
      if (at.closes) at.pitch = wheel->pitch(there, lift);
    }
    if (!at.closes)
      check::fail({"driveline_envelope", "lift", "m"}, lift,
                  wheel ? "a height at which the wheel reaches the ground" : "a height at which the linkage closes");
    return at;
  }

  /// How far the true pivot moves the machine elsewhere: not at all while it stands straight.
  double pivot_change(double steer, double half) const noexcept {
    return pivot ? 2.0 * std::sin(0.5 * std::min(pi, std::abs(steer) + half)) * tolerance.pivot.value() : 0.0;
  }

  /// Bound of the pitch's change over a cell and by the tolerances, and the change of the hitch points' reach.
  std::pair<double, double> tilt_and_reach(const SideView::Level& at, const Triple& place,
                                           const Triple& half) const noexcept {
    const double lift = side.link * std::sin(place[0]);
    const double climb = side.link * half[0];
    const double reach = reach_change(side, std::min(side.link, std::abs(lift) + climb), tolerance.lower_link.value());
    if (wheel) {
      const SteeredWheel there = wheel->at(place[1], place[2]);
      const double elsewhere =
          tolerance.wheel.value() + wheel->moved(there, half[1], half[2]) + pivot_change(place[1], half[1]);
      return {wheel->tilt(there, lift, climb, elsewhere, tolerance.ground.value()), reach};
    }
    const double by_cell = half[0] > 0.0 ? pitch_rate(side, at, place[0], half[0]) * half[0] : 0.0;
    double slack = pitch_slack(side, at, half[0], reach, tolerance);
    for (int round = 0; round < 2 && tolerance.level.stated && is_finite(slack + by_cell); ++round)
      slack = level_slack(side, at, place[0], half[0], by_cell, slack, tolerance);
    return {by_cell + slack, reach};
  }
};

/// How far a point on an arm moves at most along an axis, by the slope of its place there and the second order.
inline double moved_on_arm(double arm, double rate, double by) noexcept {
  return arm * (std::abs(rate) * by + 0.5 * by * by);
}

/// Turns a cell of the headstock into one of the machine that steers about its pivot: its pin is the pivot.
///
/// The headstock's pitch and roll lie anywhere within its half widths. A turn by w changes the attitude by no more than
/// pitch' = |w across|, roll' = |w across|/cos pitch, yaw' = |w upright| + tan pitch |w across|, and the machine's
/// pitch is never more than the lean of the pivot.
inline LinkageCell steered_cell(const LinkageMotion& motion, const LinkageCell& headstock, double steer,
                                double steer_half) {
  const Triple& at = headstock.attitude;
  const Triple& half = headstock.half;
  const Attitude held{Angle{}, Angle::from_value(at[1]), Angle::from_value(at[2])};
  const Pose pose = steered_pose({headstock.pin, held}, *motion.pivot, Angle::from_value(steer));
  const double lean = std::abs(at[1]) + half[1] + std::abs(at[2]) + half[2];
  if (!(lean < 0.45 * pi)) { // about 80°: no field is that steep, and the angles above lose their meaning
    constexpr double infinite = std::numeric_limits<double>::infinity();
    return {pose.pin, at, {infinite, infinite, infinite}, headstock.slack};
  }
  const double across = half[1] + half[2] + std::sin(lean) * steer_half;
  const double upright = half[2] * std::sin(std::min(0.5 * pi, std::abs(at[1]) + half[1])) + steer_half;
  LinkageCell cell{pose.pin,
                   {pose.attitude.yaw.value(), pose.attitude.pitch.value(), pose.attitude.roll.value()},
                   {upright + std::tan(lean) * across, across, across / std::cos(lean)},
                   headstock.slack};
  const Eigen::Vector3d arm = pose.pin.metres() - headstock.pin.metres();
  const Eigen::Vector3d axis(std::cos(at[1]), 0.0, -std::sin(at[1]));
  const double both = half[1] + half[2];
  cell.slack.pin += half[1] * Eigen::Vector3d(std::abs(arm.z()), 0.0, std::abs(arm.x())) +
                    half[2] * axis.cross(arm).cwiseAbs() +
                    Eigen::Vector3d::Constant(0.5 * both * both * arm.norm() + motion.pivot_change(steer, steer_half));
  return cell;
}

inline LinkageCell linkage_cell(const LinkageMotion& motion, const Triple& at, const Triple& half) {
  const SideView& v = motion.side;
  const SideView::Level level = motion.level(at);
  const auto [tilt, reach] = motion.tilt_and_reach(level, at, half);
  if (size(half) == 0.0 && !is_finite(tilt + reach))
    check::fail({"driveline_envelope", "lift", "m"}, motion.position(at).lift.value(),
                "a height at which the linkage closes within all tolerances");
  const double far = motion.far;
  const double span = motion.rolls_by_links ? motion.linkage.span.value() : 0.0;
  const auto part = [&](double whole, std::size_t i) {
    return whole * std::min(1.0, std::abs(std::sin(at[i])) + half[i]);
  };
  const Sideways sway = sideways_change(part(far, 1), far, motion.tolerance.convergence.value());
  const Sideways lean = sideways_change(part(span, 2), span, motion.tolerance.span.value());
  Slack slack = motion.own;
  slack.pin +=
      Eigen::Vector3d(moved_on_arm(v.link, std::sin(at[0]), half[0]) + moved_on_arm(far, std::sin(at[1]), half[1]) +
                          reach + sway.advance + motion.tolerance.lower_pivot_behind.value(),
                      moved_on_arm(far, std::cos(at[1]), half[1]),
                      moved_on_arm(v.link, std::cos(at[0]), half[0]) + motion.tolerance.lower_pivot_below.value());
  const double swung = far * 2.0 * math::power<2>(std::sin(0.5 * at[1]));
  const LinkageCell cell{Position::from_metres({level.x + swung, -far * std::sin(at[1]), level.z}),
                         {at[1], level.pitch, at[2]},
                         {half[1] + sway.turn, tilt, half[2] + lean.turn},
                         slack};
  return motion.pivot ? steered_cell(motion, cell, at[1], half[1]) : cell;
}

} // namespace detail
} // namespace v0
} // namespace fieldshaft
