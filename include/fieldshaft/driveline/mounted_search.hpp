#pragma once
// The search over positions of a three-point linkage.
//
// Over the cells of linkage_motion.hpp the expansions of objective.hpp and the allowances of tolerance_objective.hpp
// hold, and cells are halved as boxes are.

#include <fieldshaft/driveline/chain_row.hpp>
#include <fieldshaft/driveline/envelope.hpp>
#include <fieldshaft/driveline/linkage_motion.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace detail {

enum class MountedGoal { front_angle, rear_angle, difference, longest, shortest, speed_variation, chain };

/// A goal at one position, minus the length for shortest; not of a chain.
inline double goal_value(MountedGoal goal, const DrivelineState& s) noexcept {
  switch (goal) {
  case MountedGoal::front_angle: return s.front_angle.value();
  case MountedGoal::rear_angle: return s.rear_angle.value();
  case MountedGoal::difference: return std::abs(s.difference.value());
  case MountedGoal::longest: return s.length.value();
  case MountedGoal::chain:
  case MountedGoal::speed_variation: return s.speed_variation;
  case MountedGoal::shortest: break;
  }
  return -s.length.value();
}

/// The greatest of one goal over the cells, its upper bound in the goal's own quantity (minus the length for shortest).
/// The bound holds for every measurement within the tolerances, the value for the stated ones.
class MountedSearch {
public:
  MountedSearch(const Driveline& driveline, const LinkageMotion& motion, MountedGoal goal, double gap, int budget,
                const ChainRow* row = nullptr)
      : driveline_(driveline), motion_(motion), goal_(goal), gap_(gap), budget_(budget), row_(row),
        tolerant_(linkage_cell(motion, middle({motion.low, motion.high}), {}).is_wide()) {}

  SearchResult run(const SearchQuestion& asked = {}) {
    known_ = asked.known;
    Box root;
    root.low = motion_.low;
    root.high = motion_.high;
    offer(root.low);
    take(root, root.high);
    while (!heap_.empty() && heap_.front().upper > target() && best_ <= asked.enough && result_.boxes < budget_) {
      std::pop_heap(heap_.begin(), heap_.end(), lower_bound_first);
      const Box box = heap_.back();
      heap_.pop_back();
      split(box);
    }
    if (!heap_.empty()) settled_ = std::max(settled_, heap_.front().upper);
    result_.upper = std::max({settled_, best_, result_.value});
    return result_;
  }

  double value(const Triple& at) const {
    const LinkageCell cell = linkage_cell(motion_, at, {});
    const DrivelineState s = state(driveline_, lines(driveline_, cell.pin),
                                   text::rotation(cell.attitude[0], cell.attitude[1], cell.attitude[2]));
    if (goal_ == MountedGoal::chain) return row_->variation({cell.pin, detail::attitude(cell.attitude)});
    return goal_value(goal_, s);
  }

private:
  static bool lower_bound_first(const Box& a, const Box& b) noexcept { return a.upper < b.upper; }

  /// A bound this low ends the search.
  double target() const noexcept { return std::max(best_, known_) + gap_; }

  /// Bounds a box, and looks at its middle and its new end unless it is set aside at once.
  void take(Box box, const Triple& end) {
    ++result_.boxes;
    const Triple at = middle(box);
    box.upper = std::min(box.upper, bound(at, half_widths(box)));
    if (box.upper > target()) {
      offer(at);
      offer(end); // the ends of the intervals often hold the extreme
    }
    if (box.upper > target()) {
      heap_.push_back(box);
      std::push_heap(heap_.begin(), heap_.end(), lower_bound_first);
    } else {
      settled_ = std::max(settled_, box.upper);
    }
  }

  /// Takes a position as the worst so far if it is, with all tolerances against it.
  void offer(const Triple& at) {
    const double found = tolerant_ ? bound(at, {}) : value(at);
    if (!result_.found || found > best_) {
      best_ = found;
      result_.at = at;
      result_.value = tolerant_ ? value(at) : found;
      result_.found = true;
    }
  }

  void split(const Box& box) {
    const Triple half = half_widths(box);
    const double arm = (rear_joint_position(driveline_).metres()).norm();
    const double far = motion_.far;
    const Triple weight = {half[0] * (motion_.side.link + arm), half[1] * (far + arm), half[2] * arm};
    const auto axis = static_cast<std::size_t>(std::max_element(weight.begin(), weight.end()) - weight.begin());
    if (!(half[axis] > 1e-9)) {
      settled_ = std::max(settled_, box.upper);
      return;
    }
    Box lower = box;
    Box upper = box;
    lower.high[axis] = upper.low[axis] = 0.5 * (box.low[axis] + box.high[axis]);
    take(lower, lower.high);
    take(upper, upper.low);
  }

  double bound(const Triple& at, const Triple& half) const {
    const LinkageCell cell = linkage_cell(motion_, at, half);
    if (!is_finite(size(cell.half) + cell.slack.size())) return std::numeric_limits<double>::infinity();
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
    case MountedGoal::speed_variation: return variation_bound(shafts, cell, least);
    case MountedGoal::chain: return chain_bound(shafts, cell, least);
    case MountedGoal::front_angle: return angle_bound(End::front, shafts, cell, least);
    case MountedGoal::rear_angle: break;
    }
    return angle_bound(End::rear, shafts, cell, least);
  }

  double angle_bound(End end, const Shafts& shafts, const LinkageCell& cell, double least) const {
    const TolerantAngle objective(shafts, end, gap_, least);
    return objective.angle(top(objective, shafts, cell));
  }

  template <class Objective>
  static double top(const Objective& objective, const Shafts& shafts, const LinkageCell& cell) {
    const Tolerant<Objective> tolerant(objective, shafts, cell.slack);
    return expansion_top(tolerant.expand(cell.attitude, size(cell.half)), cell.half);
  }

  /// Greatest turn of the centre line by the slack.
  static double line_turn(const LinkageCell& cell, double least) noexcept {
    return std::asin(std::min(1.0, cell.slack.size() / (least + cell.slack.size())));
  }

  /// The unevenness about the middle, and what the turn of centre line and input shaft adds to it.
  double variation_bound(const Shafts& shafts, const LinkageCell& cell, double least) const {
    const double front = angle_bound(End::front, shafts, cell, least);
    const double rear = angle_bound(End::rear, shafts, cell, least);
    const UnevennessObjective objective(shafts, driveline_.yoke_phase.value(), gap_, least);
    const double at_pin = expansion_top(objective.expand(cell.attitude, size(cell.half)), cell.half);
    const double cosine = shafts.shafts_cosine(Turn(cell.attitude)).value;
    const double bend = std::acos(std::clamp(cosine, -1.0, 1.0)) + size(cell.half) + cell.slack.turn + 1e-7;
    const double change = unevenness_change(at_pin, front, rear, bend, line_turn(cell, least), cell.slack.turn,
                                            driveline_.yoke_phase == Angle{});
    return objective.variation(at_pin + change);
  }

  /// All joints of both sections at the middle, and what the turns of centre line and implement change.
  double chain_bound(const Shafts& shafts, const LinkageCell& cell, double least) const {
    const double middle = row_->unevenness({cell.pin, attitude(cell.attitude)});
    const ChainTurns turns = chain_turns(shafts, size(cell.half), cell.slack.size(), least);
    return variation_of_unevenness(middle + row_->change(shafts, Turn(cell.attitude), turns));
  }

  /// Both angles turn with the centre line by no more than the pin's slack turns it.
  static double difference_bound(const Shafts& shafts, const LinkageCell& cell, double least) {
    const double turn = 2.0 * line_turn(cell, least) + cell.slack.turn;
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
  const ChainRow* row_; ///< for the goal chain
  bool tolerant_;
  double known_ = -std::numeric_limits<double>::infinity();
  double best_ = -std::numeric_limits<double>::infinity(); ///< bound at the worst position, tolerances included
  double settled_ = -std::numeric_limits<double>::infinity();
  SearchResult result_;
  std::vector<Box> heap_;
};

} // namespace detail
} // namespace v0
} // namespace fieldshaft
