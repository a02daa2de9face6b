#pragma once
// The search over positions of a three-point linkage.
//
// The linkage makes pin and attitude move together. A cell of lift and sway encloses both: the pin in a box about its
// place at the middle, the pitch in an interval whose width rests on a bound of the four-bar's transmission. Over such
// a cell the expansions of objective.hpp and the allowances of tolerance_objective.hpp hold, and cells are halved as
// boxes are.

#include <fieldshaft/driveline/tolerance_objective.hpp>
#include <fieldshaft/hitch/linkage.hpp>

namespace fieldshaft {
inline namespace v0 {

/// What the linkage may do; an interval of zero width where it does not move.
struct MountedRange {
  LengthRange lift{};       ///< lower hitch points above their pivots
  LengthRange sway{};       ///< to the left
  LengthRange difference{}; ///< left lower hitch point above the right one
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
  for (const bool high : {false, true}) {
    const auto end = [high](const LengthRange& r) { return high ? r.high : r.low; };
    linkage_position(l, {end(range.lift), end(range.sway), end(range.difference)}, function);
  }
}
} // namespace check

namespace detail {

/// Raise of the lower links, swing and roll of the implement [rad]: what a cell is made of.
struct LinkageMotion {
  ThreePointLinkage linkage;
  SideView side;
  Triple low{}, high{};

  LinkageMotion(const ThreePointLinkage& l, const MountedRange& range) : linkage(l), side(l) {
    const auto angle = [](Length part, Length whole) { return part == Length{} ? 0.0 : std::asin(part / whole); };
    low = {angle(range.lift.low, l.lower_link), -angle(range.sway.high, l.convergence),
           angle(range.difference.low, l.span)};
    high = {angle(range.lift.high, l.lower_link), -angle(range.sway.low, l.convergence),
            angle(range.difference.high, l.span)};
  }

  LinkagePosition position(const Triple& at) const noexcept {
    return {linkage.lower_link * std::sin(at[0]), -linkage.convergence * std::sin(at[1]),
            linkage.span * std::sin(at[2])};
  }
};

/// A cell's middle and what it encloses.
struct LinkageCell {
  Position pin;
  Triple attitude; ///< yaw, pitch, roll
  Triple half;     ///< of the attitude
  Slack slack;     ///< of the pin
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

inline LinkageCell linkage_cell(const LinkageMotion& motion, const Triple& at, const Triple& half) {
  const SideView& v = motion.side;
  const SideView::Level level = v.at(at[0]);
  if (!level.closes)
    check::fail({"driveline_envelope", "lift", "m"}, motion.position(at).lift.value(),
                "a height at which the linkage closes");
  const double far = motion.linkage.convergence.value();
  const double tilt = half[0] > 0.0 ? pitch_rate(v, level, at[0], half[0]) * half[0] : 0.0;
  const auto moved = [](double arm, double rate, double by) { return arm * (std::abs(rate) * by + 0.5 * by * by); };
  const Eigen::Vector3d slack(moved(v.link, std::sin(at[0]), half[0]) + moved(far, std::sin(at[1]), half[1]),
                              moved(far, std::cos(at[1]), half[1]), moved(v.link, std::cos(at[0]), half[0]));
  const double swung = far * 2.0 * math::power<2>(std::sin(0.5 * at[1]));
  return {Position::from_metres({level.x + swung, -far * std::sin(at[1]), level.z}),
          {at[1], level.pitch, at[2]},
          {half[1], tilt, half[2]},
          {slack, Eigen::Vector3d::Zero(), Eigen::Vector3d::UnitX(), 0.0, 0.0, 0.0}};
}

enum class MountedGoal { front_angle, rear_angle, difference, longest, shortest };

/// The greatest of one goal over the cells, its upper bound in the goal's own quantity (minus the length for shortest).
class MountedSearch {
public:
  MountedSearch(const Driveline& driveline, const LinkageMotion& motion, MountedGoal goal, double gap, int budget)
      : driveline_(driveline), motion_(motion), goal_(goal), gap_(gap), budget_(budget) {}

  SearchResult run() {
    Box root;
    root.low = motion_.low;
    root.high = motion_.high;
    take(root);
    while (!heap_.empty() && heap_.front().upper > result_.value + gap_ && result_.boxes < budget_) {
      std::pop_heap(heap_.begin(), heap_.end(), lower_bound_first);
      const Box box = heap_.back();
      heap_.pop_back();
      split(box);
    }
    if (!heap_.empty()) settled_ = std::max(settled_, heap_.front().upper);
    result_.upper = std::max(settled_, result_.value);
    return result_;
  }

  double value(const Triple& at) const {
    const LinkageCell cell = linkage_cell(motion_, at, {});
    const DrivelineState s = state(driveline_, lines(driveline_, cell.pin),
                                   text::rotation(cell.attitude[0], cell.attitude[1], cell.attitude[2]));
    switch (goal_) {
    case MountedGoal::front_angle: return s.front_angle.value();
    case MountedGoal::rear_angle: return s.rear_angle.value();
    case MountedGoal::difference: return std::abs(s.difference.value());
    case MountedGoal::longest: return s.length.value();
    case MountedGoal::shortest: break;
    }
    return -s.length.value();
  }

private:
  static bool lower_bound_first(const Box& a, const Box& b) noexcept { return a.upper < b.upper; }

  void take(Box box) {
    ++result_.boxes;
    const Triple at = middle(box);
    const double found = value(at);
    if (found > result_.value) {
      result_.value = found;
      result_.at = at;
      result_.found = true;
    }
    offer_end(box);
    box.upper = std::min(box.upper, bound(at, half_widths(box)));
    if (box.upper > result_.value + gap_) {
      heap_.push_back(box);
      std::push_heap(heap_.begin(), heap_.end(), lower_bound_first);
    } else {
      settled_ = std::max(settled_, box.upper);
    }
  }

  /// The corners of a cell often hold the extreme: the ends of the intervals lie there.
  void offer_end(const Box& box) {
    for (const bool high : {false, true}) {
      const Triple& at = high ? box.high : box.low;
      const double found = value(at);
      if (found > result_.value) {
        result_.value = found;
        result_.at = at;
      }
    }
  }

  void split(const Box& box) {
    const Triple half = half_widths(box);
    const double arm = (rear_joint_position(driveline_).metres()).norm();
    const double far = motion_.linkage.convergence.value();
    const Triple weight = {half[0] * (motion_.side.link + arm), half[1] * (far + arm), half[2] * arm};
    const auto axis = static_cast<std::size_t>(std::max_element(weight.begin(), weight.end()) - weight.begin());
    if (!(half[axis] > 1e-9)) {
      settled_ = std::max(settled_, box.upper);
      return;
    }
    Box lower = box;
    Box upper = box;
    lower.high[axis] = upper.low[axis] = 0.5 * (box.low[axis] + box.high[axis]);
    take(lower);
    take(upper);
  }

  double bound(const Triple& at, const Triple& half) const {
    const LinkageCell cell = linkage_cell(motion_, at, half);
    if (!is_finite(cell.half[1])) return std::numeric_limits<double>::infinity();
    const Shafts shafts(lines(driveline_, cell.pin));
    const double length = std::sqrt(shafts.square(Turn(cell.attitude)).value);
    const double least = shafts.least_length(length, size(cell.half)) - cell.slack.size();
    if (!(least > 1e-6)) return std::numeric_limits<double>::infinity();
    switch (goal_) {
    case MountedGoal::longest: {
      const TolerantSquare objective(shafts, 1.0, gap_);
      return objective.length(top(objective, shafts, cell));
    }
    case MountedGoal::shortest: {
      const TolerantSquare objective(shafts, -1.0, gap_);
      return -objective.length(top(objective, shafts, cell));
    }
    case MountedGoal::difference: return difference_bound(shafts, cell, least);
    default: break;
    }
    const TolerantAngle objective(shafts, goal_ == MountedGoal::front_angle ? End::front : End::rear, gap_, least);
    return objective.angle(top(objective, shafts, cell));
  }

  template <class Objective>
  static double top(const Objective& objective, const Shafts& shafts, const LinkageCell& cell) {
    const Tolerant<Objective> tolerant(objective, shafts, cell.slack);
    return expansion_top(tolerant.expand(cell.attitude, size(cell.half)), cell.half);
  }

  /// Both angles turn with the centre line by no more than the pin's slack turns it.
  static double difference_bound(const Shafts& shafts, const LinkageCell& cell, double least) {
    const double turn = 2.0 * std::asin(std::min(1.0, cell.slack.size() / (least + cell.slack.size())));
    double most = 0.0;
    for (const double sign : {1.0, -1.0}) {
      const DifferenceObjective objective(shafts, sign, 0.0, least);
      const double bound = expansion_top(objective.expand(cell.attitude, size(cell.half)), cell.half);
      most = std::max(most, objective.angle(bound));
    }
    return most + turn;
  }

  const Driveline& driveline_;
  const LinkageMotion& motion_;
  MountedGoal goal_;
  double gap_;
  int budget_;
  double settled_ = -std::numeric_limits<double>::infinity();
  SearchResult result_;
  std::vector<Box> heap_;
};

} // namespace detail
} // namespace v0
} // namespace fieldshaft
