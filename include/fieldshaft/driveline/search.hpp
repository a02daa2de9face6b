#pragma once
// The greatest value of a function over a range of attitudes, with a proved upper bound: branch and bound.
//
// Every box of angles gets an upper bound from the expansion about its middle (jet.hpp, box.hpp). The box with the
// highest bound is halved until the bound lies within the wanted gap of the best value found. A box is dropped where
// the function grows all the way in one angle, or is curved upwards in it, unless the box touches the end of that
// angle's interval: the maximum has no slope and no upward curvature in an angle whose interval it does not end, so a
// box that holds a maximum is never dropped. Couplings enter by a multiplier: where a x <= b, f(x) <= f(x) + multiplier
// (b - a x).

#include <fieldshaft/driveline/box.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace detail {

/// What a search found: the best attitude, its value, and the bound that no attitude of the range exceeds.
struct SearchResult {
  Triple at{};
  double value = -std::numeric_limits<double>::infinity();
  double upper = -std::numeric_limits<double>::infinity();
  int boxes = 0;
  bool found = false; ///< false: no attitude keeps all couplings
};

template <class Objective> class Search {
public:
  Search(const Objective& objective, const Domain& domain, int budget)
      : objective_(objective), domain_(domain), budget_(budget) {}

  /// `known` is a value that the caller has found elsewhere: boxes that cannot exceed it by the gap are not split.
  /// `enough`: a value above it answers the caller's question and ends the search.
  SearchResult run(double known = -std::numeric_limits<double>::infinity(),
                   double enough = std::numeric_limits<double>::infinity()) {
    goal_ = known;
    target_ = objective_.target(goal_);
    Box root;
    root.low = domain_.low;
    root.high = domain_.high;
    offer_corners(root);
    take(root);
    while (!heap_.empty() && heap_.front().upper > target_ && result_.value <= enough && result_.boxes < budget_) {
      std::pop_heap(heap_.begin(), heap_.end(), lower_bound_first);
      const Box box = heap_.back();
      heap_.pop_back();
      split(box);
    }
    if (!heap_.empty()) settled_ = std::max(settled_, heap_.front().upper);
    result_.upper = std::max(settled_, result_.value);
    return result_;
  }

private:
  enum class Reduced { no, yes, gone };

  static bool lower_bound_first(const Box& a, const Box& b) noexcept { return a.upper < b.upper; }

  void split(const Box& box) {
    const Triple half = half_widths(box);
    const std::size_t axis = static_cast<std::size_t>(std::max_element(half.begin(), half.end()) - half.begin());
    if (!(half[axis] > 1e-9)) { // finer than any measurement: what is left is rounding
      settled_ = std::max(settled_, box.upper);
      return;
    }
    Box lower = box;
    Box upper = box;
    lower.high[axis] = upper.low[axis] = 0.5 * (box.low[axis] + box.high[axis]);
    take(lower);
    take(upper);
  }

  /// Evaluates a box, drops or shrinks it where that is allowed, and keeps the rest.
  void take(Box box) {
    for (;;) {
      const double excess = greatest_least_excess(box);
      if (excess > 0.0) return;
      ++result_.boxes;
      const Triple at = middle(box);
      const Triple half = half_widths(box);
      const Expansion expansion = objective_.expand(at, size(half));
      offer(at, expansion.jet.value);
      const double bound = upper_bound(expansion, at, half);
      if (bound < box.upper) box.upper = bound;
      if (!(box.upper > target_)) {
        settled_ = std::max(settled_, box.upper);
        return;
      }
      const Reduced reduced = strictly_inside(box) ? reduce(box, expansion, half) : Reduced::no;
      if (reduced == Reduced::gone) return;
      if (reduced == Reduced::no) break;
    }
    heap_.push_back(box);
    std::push_heap(heap_.begin(), heap_.end(), lower_bound_first);
  }

  /// Shrinks a box to the face on which its maximum lies, or drops it if that face lies within the range.
  Reduced reduce(Box& box, const Expansion& e, const Triple& half) {
    if (!is_finite(e.third) || e.loose > 0.0) return Reduced::no;
    const double rest = 0.5 * e.third * size(half) * size(half) + e.wobble + objective_.slope_rounding();
    const Curvatures& h = e.jet.curvature;
    const Triple cross = {std::abs(h[3]) * half[1] + std::abs(h[4]) * half[2],
                          std::abs(h[3]) * half[0] + std::abs(h[5]) * half[2],
                          std::abs(h[4]) * half[0] + std::abs(h[5]) * half[1]};
    for (std::size_t i = 0; i < 3; ++i) {
      if (!(half[i] > 0.0)) continue;
      const double spread = std::abs(h[i]) * half[i] + cross[i] + rest;
      if (e.jet.slope[i] > spread) return to_face(box, i, true);
      if (e.jet.slope[i] < -spread) return to_face(box, i, false);
      if (e.wobble == 0.0 && h[i] > e.third * size(half) + objective_.slope_rounding()) return to_both_faces(box, i);
    }
    return Reduced::no;
  }

  Reduced to_face(Box& box, std::size_t axis, bool high) const noexcept {
    if (high ? box.high[axis] < domain_.high[axis] : box.low[axis] > domain_.low[axis]) return Reduced::gone;
    (high ? box.low : box.high)[axis] = high ? box.high[axis] : box.low[axis];
    return Reduced::yes;
  }

  Reduced to_both_faces(Box& box, std::size_t axis) {
    const bool at_low = box.low[axis] == domain_.low[axis];
    const bool at_high = box.high[axis] == domain_.high[axis];
    if (!at_low && !at_high) return Reduced::gone;
    if (at_low && at_high) {
      Box face = box;
      face.high[axis] = box.low[axis];
      take(face);
    }
    return to_face(box, axis, at_high);
  }

  double upper_bound(const Expansion& e, const Triple& at, const Triple& half) const {
    double bound = expansion_top(e, half);
    const double rest = expansion_rest(e, size(half));
    for (const HalfSpace& coupling : domain_.couplings) {
      const double coupled = e.jet.value + coupled_top(e, coupling, at, half) + rest;
      if (coupled < bound) bound = coupled;
    }
    return bound;
  }

  /// The bound with a multiplier that takes the slope out of one angle.
  double coupled_top(const Expansion& e, const HalfSpace& coupling, const Triple& at, const Triple& half) const {
    double best = std::numeric_limits<double>::infinity();
    double slack = coupling.limit;
    for (std::size_t i = 0; i < 3; ++i) slack -= coupling.share[i] * at[i];
    for (std::size_t i = 0; i < 3; ++i) {
      const double multiplier = e.jet.slope[i] / coupling.share[i];
      if (!(multiplier > 0.0) || !is_finite(multiplier)) continue;
      Triple slope = e.jet.slope;
      for (std::size_t j = 0; j < 3; ++j) slope[j] -= multiplier * coupling.share[j];
      best = std::min(best, multiplier * slack + quadratic_top(slope, e.jet.curvature, half));
    }
    return best + 1e-15 * (1.0 + std::abs(best));
  }

  /// Above 0 where one coupling is broken in the whole box.
  double greatest_least_excess(const Box& box) const noexcept {
    double greatest = -std::numeric_limits<double>::infinity();
    for (const HalfSpace& c : domain_.couplings) greatest = std::max(greatest, excess(c, box, false) - c.rounding);
    return greatest;
  }

  bool strictly_inside(const Box& box) const noexcept {
    return std::all_of(domain_.couplings.begin(), domain_.couplings.end(),
                       [&box](const HalfSpace& c) { return excess(c, box, true) < -c.rounding; });
  }

  static double excess(const HalfSpace& c, const Box& box, bool most) noexcept {
    double sum = -c.limit;
    for (std::size_t i = 0; i < 3; ++i) sum += c.share[i] * ((c.share[i] > 0.0) == most ? box.high[i] : box.low[i]);
    return sum;
  }

  void offer_corners(const Box& box) {
    for (unsigned corner = 0; corner < 8; ++corner) {
      Triple at{};
      for (std::size_t i = 0; i < 3; ++i) at[i] = (corner >> i & 1U) != 0 ? box.high[i] : box.low[i];
      offer(at, domain_.couplings.empty() ? objective_.value(at) : 0.0);
    }
  }

  /// Takes an attitude as the best so far if it is; one that breaks a coupling is first moved to keep it.
  void offer(Triple at, double value) {
    if (!domain_.couplings.empty()) {
      if (!move_inside(at)) return;
      value = objective_.value(at);
    }
    result_.found = true;
    if (value > result_.value) {
      result_.value = value;
      result_.at = at;
      if (value > goal_) target_ = objective_.target(value);
    }
  }

  bool move_inside(Triple& at) const noexcept {
    for (int round = 0; round < 8; ++round) {
      bool inside = true;
      for (const HalfSpace& c : domain_.couplings) inside = step_inside(at, c) && inside;
      if (inside) return true;
    }
    return false;
  }

  /// Moves straight towards the half space, within the intervals; true if it was inside before.
  bool step_inside(Triple& at, const HalfSpace& c) const noexcept {
    double over = -c.limit;
    double square = 0.0;
    for (std::size_t i = 0; i < 3; ++i) {
      over += c.share[i] * at[i];
      square += c.share[i] * c.share[i];
    }
    if (over <= 0.0 || !(square > 0.0)) return over <= 0.0;
    for (std::size_t i = 0; i < 3; ++i)
      at[i] = std::clamp(at[i] - c.share[i] * (over + c.rounding) / square, domain_.low[i], domain_.high[i]);
    return false;
  }

  const Objective& objective_;
  const Domain& domain_;
  int budget_;
  double goal_ = -std::numeric_limits<double>::infinity();    ///< a value known from elsewhere
  double target_ = -std::numeric_limits<double>::infinity();  ///< a bound this low ends the search
  double settled_ = -std::numeric_limits<double>::infinity(); ///< highest bound of the boxes that were set aside
  SearchResult result_;
  std::vector<Box> heap_;
};

} // namespace detail
} // namespace v0
} // namespace fieldshaft
