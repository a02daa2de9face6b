#pragma once
// Fouling of a mounted implement: the guarded driveline against the lower links, which move with the lift, against
// parts of tractor and implement, and tyres against parts of the implement.

#include <fieldshaft/driveline/clearance.hpp>
#include <fieldshaft/driveline/mounted.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The two lower links as straight rods from their front pivots to the lower hitch points.
struct LowerLinkRods {
  Length pivot_span{}; ///< middle to middle of the front pivots, at least 0
  Length hitch_span{}; ///< middle to middle of the lower hitch points, at least 0
  Length radius{};     ///< of a cylinder that holds a link, at least 0
};

/// What may foul a mounted implement's driveline. What is not stated is not there.
struct MountedSurroundings {
  Surroundings fixed; ///< on the tractor, on the implement, tyres; may be empty where there are links
  std::optional<LowerLinkRods> links;
};

/// The least clearance, and where the linkage stands then.
struct MountedClearance {
  Extreme<Length> least;
  LinkagePosition at;
};

namespace detail {

/// A point that moves with the implement, or one that is fixed to the tractor.
struct MovingPoint {
  Eigen::Vector3d place; ///< in the frame of its part
  bool on_implement;

  Eigen::Vector3d at(const Eigen::Vector3d& pin, const Eigen::Matrix3d& turn) const {
    return on_implement ? Eigen::Vector3d(pin + turn * place) : place;
  }
  /// By how much it moves at most over a cell: no point moves by more than its pin and its arm times the turn.
  double reach(const LinkageCell& cell) const noexcept {
    return on_implement ? cell.slack.pin.norm() + place.norm() * size(cell.half) : 0.0;
  }
};

struct MovingRod {
  MovingPoint from, to;
  double radius;

  Segment at(const Eigen::Vector3d& pin, const Eigen::Matrix3d& turn) const {
    return {from.at(pin, turn), to.at(pin, turn)};
  }
  double reach(const LinkageCell& cell) const noexcept { return std::max(from.reach(cell), to.reach(cell)); }
  bool rides() const noexcept { return from.on_implement && to.on_implement; }
};

/// A rod against another one or against a tyre.
struct MountedPair {
  MovingRod rod;
  std::optional<MovingRod> other;
  std::optional<Tyre> tyre;

  double clearance(const LinkageCell& cell) const {
    const Eigen::Matrix3d turn = text::rotation(cell.attitude[0], cell.attitude[1], cell.attitude[2]);
    const Segment own = rod.at(cell.pin.metres(), turn);
    if (tyre) return tyre_distance(*tyre, own) - rod.radius;
    return segment_distance(own, other->at(cell.pin.metres(), turn)) - rod.radius - other->radius;
  }
  /// Where the centre lines meet the clearance cannot get less.
  double least() const noexcept { return -rod.radius - (other ? other->radius : 0.0); }

  /// By how much the clearance changes at most over a cell. Against a rod that rides on the implement it is the other
  /// rod's tractor end that moves, seen from there.
  double change(const LinkageCell& cell) const noexcept {
    constexpr double rounding = 1e-9; // the search along a tyre ends within 1e-10
    if (tyre) return rod.reach(cell) + rounding;
    if (!other->rides()) return rod.reach(cell) + other->reach(cell) + rounding;
    double most = 0.0;
    for (const MovingPoint* point : {&rod.from, &rod.to}) {
      if (point->on_implement) continue;
      const double arm = (point->place - cell.pin.metres()).norm() + cell.slack.pin.norm();
      most = std::max(most, cell.slack.pin.norm() + arm * size(cell.half));
    }
    return most + rounding;
  }
};

/// Best first over raise, turn and roll: minus the clearance, so that its greatest is looked for.
class MountedClearanceSearch {
public:
  MountedClearanceSearch(const LinkageMotion& motion, const MountedPair& pair, double gap, int budget)
      : motion_(motion), pair_(pair), gap_(gap), budget_(budget) {}

  /// Looks for more than `best`; what stays below it is not followed.
  SearchResult run(double best) {
    best_ = best;
    Box root;
    root.low = motion_.low;
    root.high = motion_.high;
    take(root);
    while (!heap_.empty() && heap_.front().upper > best_ + gap_ && result_.boxes < budget_) {
      std::pop_heap(heap_.begin(), heap_.end(), lower_first);
      const Box box = heap_.back();
      heap_.pop_back();
      split(box);
    }
    if (!heap_.empty()) settled_ = std::max(settled_, heap_.front().upper);
    result_.upper = std::max(settled_, best_);
    return result_;
  }

  /// The worst that was attained, all tolerances of the linkage against it; no less than what was known before.
  double best() const noexcept { return best_; }

private:
  static bool lower_first(const Box& a, const Box& b) noexcept { return a.upper < b.upper; }

  void take(Box box) {
    ++result_.boxes;
    const Triple at = middle(box);
    offer(at);
    offer(box.low);
    offer(box.high);
    const LinkageCell cell = linkage_cell(motion_, at, half_widths(box));
    const double change = pair_.change(cell);
    const double bound = is_finite(change) ? -pair_.clearance(cell) + change : -pair_.least();
    box.upper = std::min({box.upper, bound, -pair_.least()});
    if (!(box.upper > best_ + gap_)) {
      settled_ = std::max(settled_, box.upper);
      return;
    }
    heap_.push_back(box);
    std::push_heap(heap_.begin(), heap_.end(), lower_first);
  }

  void offer(const Triple& at) {
    const LinkageCell cell = linkage_cell(motion_, at, {});
    const double found = -pair_.clearance(cell);
    best_ = std::max(best_, std::min(found + pair_.change(cell), -pair_.least()));
    if (result_.found && found <= result_.value) return;
    result_.at = at;
    result_.value = found;
    result_.found = true;
  }

  void split(const Box& box) {
    const Triple half = half_widths(box);
    const auto axis = static_cast<std::size_t>(std::max_element(half.begin(), half.end()) - half.begin());
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

  const LinkageMotion& motion_;
  const MountedPair& pair_;
  double gap_;
  int budget_;
  double best_ = 0.0;
  double settled_ = -std::numeric_limits<double>::infinity();
  SearchResult result_;
  std::vector<Box> heap_;
};

/// Every pair of parts that may foul.
inline std::vector<MountedPair> mounted_pairs(const Driveline& driveline, const ThreePointLinkage& linkage,
                                              const MountedSurroundings& around) {
  const Eigen::Vector3d coupler(-linkage.coupler_depth.value(), 0.0, linkage.coupler_rise.value());
  const MovingRod shaft{{front_joint_position(driveline).metres(), false},
                        {rear_joint_position(coupled(driveline, linkage)).metres(), true},
                        around.fixed.guard_radius.value()};
  std::vector<MountedPair> pairs;
  std::vector<MovingRod> riding;
  for (const Rod& rod : around.fixed.on_implement) {
    riding.push_back({{coupler + rod.from.metres(), true}, {coupler + rod.to.metres(), true}, rod.radius.value()});
    pairs.push_back({shaft, riding.back(), {}});
  }
  for (const Rod& rod : around.fixed.on_tractor) {
    pairs.push_back({shaft, MovingRod{{rod.from.metres(), false}, {rod.to.metres(), false}, rod.radius.value()}, {}});
  }
  for (const Tyre& tyre : around.fixed.tyres) {
    pairs.push_back({shaft, {}, tyre});
    for (const MovingRod& rod : riding) pairs.push_back({rod, {}, tyre});
  }
  if (!around.links) return pairs;
  for (const double side : {0.5, -0.5}) {
    const Eigen::Vector3d pivot(-linkage.lower_pivot_behind.value(), side * around.links->pivot_span.value(),
                                -linkage.lower_pivot_below.value());
    const Eigen::Vector3d hitch(0.0, side * around.links->hitch_span.value(), 0.0);
    pairs.push_back({shaft, MovingRod{{pivot, false}, {hitch, true}, around.links->radius.value()}, {}});
  }
  return pairs;
}

} // namespace detail

namespace check {
inline void mounted_surroundings(const MountedSurroundings& around, const char* function) {
  const Surroundings& fixed = around.fixed;
  const bool bare = fixed.on_tractor.empty() && fixed.on_implement.empty() && fixed.tyres.empty();
  if (!bare || !around.links) surroundings(fixed, function);
  not_negative(fixed.guard_radius.value(), {function, "guard_radius", "m"});
  if (!around.links) return;
  not_negative(around.links->pivot_span.value(), {function, "links.pivot_span", "m"});
  not_negative(around.links->hitch_span.value(), {function, "links.hitch_span", "m"});
  not_negative(around.links->radius.value(), {function, "links.radius", "m"});
}
} // namespace check

/// The least clearance of a mounted implement over lift, turn and roll: driveline guard to lower links, rods and tyres,
/// and the implement's rods to tyres.
///
///   driveline, linkage, tolerance, range  as for the envelope; of the tolerance those of joints and input are not used
///   around                                the parts; radii and spans at least 0
///   gap                                   wanted gap of the clearance, above 0
///   budget                                boxes for each pair of parts
/// Below 0: the parts foul. The bounds hold over the whole range for straight rods and cylinders, and for every linkage
/// within the tolerances. The lower links run from their pivots to the lower hitch points of the turned implement.
/// Source: branch and bound over the cells of linkage_motion.hpp; no point moves by more than its hitch point does and
/// its distance from it times the turn.
/// Example: a driveline that runs between two level links 0.6 m apart, guard of 100 mm, links of 60 mm: 220 mm.
inline MountedClearance least_clearance(const Driveline& driveline, const ThreePointLinkage& linkage,
                                        const MountedTolerance& tolerance, const MountedRange& range,
                                        const MountedSurroundings& around, Length gap = millimetres(10),
                                        int budget = 200000) {
  constexpr const char* name = "least_clearance";
  detail::check_mounted(driveline, linkage, range, tolerance, {});
  check::mounted_surroundings(around, name);
  check::positive(gap.value(), {name, "gap", "m"});
  check::at_least(budget, 1.0, {name, "budget", "boxes"});
  if (range.pivot)
    fail_input(name, "range.pivot", "a steering pivot", "none: what a steered machine fouls is not followed");
  MountedTolerance of_linkage = tolerance;
  of_linkage.driveline = {};
  const detail::LinkageMotion motion(linkage, range, of_linkage);
  detail::SearchResult worst;
  double upper = -std::numeric_limits<double>::infinity();
  double best = upper;
  for (const detail::MountedPair& pair : detail::mounted_pairs(driveline, linkage, around)) {
    detail::MountedClearanceSearch search(motion, pair, 0.98 * gap.value(), budget);
    const detail::SearchResult r = search.run(best);
    best = search.best();
    upper = std::max(upper, r.upper);
    if (!worst.found || r.value > worst.value) worst = r;
  }
  const detail::Triple attitude = detail::linkage_cell(motion, worst.at, {}).attitude;
  return {detail::extreme<Length>(-worst.value, -upper, -worst.value, attitude, gap.value()),
          motion.position(worst.at)};
}

/// The same for the linkage as stated.
inline MountedClearance least_clearance(const Driveline& driveline, const ThreePointLinkage& linkage,
                                        const MountedRange& range, const MountedSurroundings& around,
                                        Length gap = millimetres(10), int budget = 200000) {
  return least_clearance(driveline, linkage, MountedTolerance{}, range, around, gap, budget);
}

} // namespace v0
} // namespace fieldshaft
