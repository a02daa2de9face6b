#pragma once
// Telescoping members: which closed length suits a range of poses, and how much to cut from the tubes.

#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/driveline/envelope.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The rules of overlap and clearance. No standard text with a number was found: the defaults are practice, and the
/// manual of the driveline comes before them.
struct TubeRules {
  Sourced<Length> minimum_overlap{millimetres(150), {"6 in at the longest position", Standing::common_practice}};
  /// Least overlap as a share of the closed overlap, which is about the length of the tubes; 0: no such rule.
  Sourced<double> overlap_share{1.0 / 3.0, {"one third of the tube stays in", Standing::common_practice}};
  Sourced<Length> clearance{millimetres(50),
                            {"2 in at the shortest position; schools go from 12 to 75 mm", Standing::common_practice}};
};

namespace text {
/// Closed length below which the overlap at the longest position is too small, by the absolute rule.
template <class L> constexpr L least_closed_length(L longest, L overlap, L dead) noexcept {
  return 0.5 * (longest + overlap + dead);
}
/// The same by the rule that a share of the closed overlap stays in.
template <class L> constexpr L least_closed_length_by_share(L longest, double share, L dead) noexcept {
  return (longest + (1.0 - share) * dead) / (2.0 - share);
}
} // namespace text

/// Which closed lengths suit, and the smallest cut that gets there.
struct TubeLengths {
  Length least_closed{};          ///< below it the overlap at the longest position is too small
  Length greatest_closed{};       ///< above it the clearance at the shortest position is too small
  bool suits = false;             ///< some closed length that cutting can reach suits
  Length cut{};                   ///< from each member and each guard tube; 0: nothing to cut
  Length closed_after{};          ///< closed length after the cut
  Length overlap_at_longest{};    ///< after the cut
  Length clearance_at_shortest{}; ///< after the cut; below 0: the members collide
  Length too_long{};              ///< by how much the interval fails to open: 0 or less where it is open
  Length missing_tube{};          ///< how much longer each tube would have to be; above 0: cutting cannot help
};

namespace check {
inline void tube_rules(const TubeRules& rules, const char* function) {
  not_negative(rules.minimum_overlap.value.value(), {function, "rules.minimum_overlap", "m"});
  from_below(rules.overlap_share.value, 0.0, 1.0, {function, "rules.overlap_share", ""});
  not_negative(rules.clearance.value.value(), {function, "rules.clearance", "m"});
}
} // namespace check

namespace detail {

/// Whether a stop keeps enough overlap whatever is cut: then no closed length is too small for this slide.
inline bool stop_keeps_enough(const Slide& slide, const TubeRules& rules) noexcept {
  if (!slide.greatest_travel) return false;
  const Length least = std::max(rules.minimum_overlap.value, rules.overlap_share.value * slide.closed_overlap);
  return slide.closed_overlap - *slide.greatest_travel >= least;
}

/// Below it a slide that has to give the whole extension overlaps too little.
inline Length least_closed(const Slide& slide, Length closed, Length longest, const TubeRules& rules) noexcept {
  const Length dead = closed - slide.closed_overlap;
  return std::max(text::least_closed_length(longest, rules.minimum_overlap.value, dead),
                  text::least_closed_length_by_share(longest, rules.overlap_share.value, dead));
}

inline Length least_closed(const Telescope& t, Length longest, const TubeRules& rules) {
  const Slide* const slides[] = {&t.slide, t.second_slide ? &*t.second_slide : nullptr};
  const double count = t.second_slide ? 2.0 : 1.0;
  Length least{};
  for (const Slide* slide : slides) {
    if (slide == nullptr || stop_keeps_enough(*slide, rules)) continue;
    least = std::max(least, least_closed(*slide, t.closed_length, longest, rules));
  }
  const std::optional<Length> reach = greatest_length(t);
  if (!reach) return least;
  return std::max(least, t.closed_length - (*reach - longest) / (count + 1.0)); // a cut takes from each travel too
}

/// The least overlap at the longest position after a cut, each slide giving all that its own stop lets it.
inline Length overlap_after(const Telescope& t, Length closed, Length longest) noexcept {
  const auto left = [&](const Slide& slide) {
    const Length giving_all = 2.0 * closed - (t.closed_length - slide.closed_overlap) - longest;
    if (!t.second_slide || !slide.greatest_travel) return giving_all;
    return std::max(giving_all, slide.closed_overlap - *slide.greatest_travel);
  };
  return t.second_slide ? std::min(left(t.slide), left(*t.second_slide)) : left(t.slide);
}

inline void set_cut(TubeLengths& tubes, const Telescope& t, Length longest, Length shortest, Length cut) noexcept {
  tubes.cut = cut;
  tubes.closed_after = t.closed_length - cut;
  tubes.overlap_at_longest = overlap_after(t, tubes.closed_after, longest);
  tubes.clearance_at_shortest = shortest - tubes.closed_after;
}

} // namespace detail

/// The closed lengths that suit a longest and a shortest position, and the smallest cut.
///
///   telescope  before cutting: closed length C and closed overlap O of each slide; d = C - O is yokes and ends
///   longest    greatest joint centre distance in any pose [m], its upper bound
///   shortest   least joint centre distance in any pose [m], its lower bound
///   rules      least overlap o, share s of the closed overlap, clearance c
/// A cut of the same amount from both tubes shortens the closed length by it, so that at a closed length x the overlap
/// at the longest position is 2x - d - longest. It must be at least o and at least s (x - d), and x at most shortest -
/// c:
///   least closed = max[(longest + o + d)/2, (longest + (1 - s) d)/(2 - s)],   greatest closed = shortest - c
/// The smallest cut is C - greatest closed if that is above 0. Guard tubes are cut by the same amount (common
/// practice), so that they keep their distance to the shaft tubes. Before cutting, check both extremes by hand, engine
/// off, key out. Where the interval is empty, `too_long` says by how much: a longest position shorter by twice that, a
/// shortest position longer by that, or a telescope of three members would open it. Of three members the same length is
/// cut from each, and each slide may have to give the whole extension before the other one moves: both have to satisfy
/// the rules, but one whose stop keeps enough in. A cut takes as much from the travel to a stop; with stops on all n
/// slides of travel T the line must still come out: closed >= C - (C + sum T - longest)/(n + 1). Exact for rigid parts.
/// Source: definition of overlap; rules as stated in them. Example: C 1000 mm, O 600 mm, longest 1150, shortest 950 mm,
/// defaults: 850 to 900 mm, cut 100 mm, overlap then 250 mm.
inline TubeLengths tube_lengths(const Telescope& telescope, Length longest, Length shortest,
                                const TubeRules& rules = {}) {
  constexpr const char* name = "tube_lengths";
  check::telescope(telescope, name);
  check::positive(shortest.value(), {name, "shortest", "m"});
  check::at_least(longest.value(), shortest.value(), {name, "longest", "m"});
  check::tube_rules(rules, name);
  TubeLengths t;
  t.least_closed = detail::least_closed(telescope, longest, rules);
  t.greatest_closed = shortest - rules.clearance.value;
  detail::set_cut(t, telescope, longest, shortest, std::max(Length{}, telescope.closed_length - t.greatest_closed));
  t.too_long = t.least_closed - t.greatest_closed;
  t.missing_tube = std::max(Length{}, t.least_closed - telescope.closed_length);
  t.suits = t.too_long <= Length{} && t.missing_tube <= Length{};
  return t;
}

/// Tube lengths with the two poses that ask for them: they conflict where `tubes.suits` is false.
struct TubeAdvice {
  TubeLengths tubes;
  Attitude longest_at;
  Attitude shortest_at;
};

/// The same from the proved extremes of one or several envelopes: the bounds count, so that the advice holds for the
/// true extremes.
inline TubeAdvice tube_lengths(const Telescope& telescope, const Extreme<Length>& longest,
                               const Extreme<Length>& shortest, const TubeRules& rules = {}) {
  return {tube_lengths(telescope, longest.upper, shortest.lower, rules), longest.at, shortest.at};
}

/// A joint centre distance measured by hand at one pose, engine off, against the model.
struct LengthCheck {
  Length model{};
  Length measured{};
  Length allowed{}; ///< tolerance of the measurement and of the model together
  bool agrees = false;
};

/// Compares a length measured by hand with the model at the same pose.
///
///   driveline, pose   as for driveline_at
///   measured          joint centre distance [m], above 0
///   tolerance         of that measurement [m], at least 0
///   model_tolerance   by which the model's own measurements may move the length [m], at least 0
/// Agrees if the two differ by at most both tolerances together. Exact. Source: definition.
inline LengthCheck check_length(const Driveline& driveline, const Pose& pose, Length measured, Length tolerance,
                                Length model_tolerance) {
  check::positive(measured.value(), {"check_length", "measured", "m"});
  check::not_negative(tolerance.value(), {"check_length", "tolerance", "m"});
  check::not_negative(model_tolerance.value(), {"check_length", "model_tolerance", "m"});
  const Length model = driveline_at(driveline, pose).length;
  const Length allowed = tolerance + model_tolerance;
  return {model, measured, allowed, math::abs(measured - model) <= allowed};
}

inline constexpr const char* outside_measured_lengths =
    "a length measured by hand disagrees with the model beyond the tolerances: measure again before cutting";
inline constexpr const char* outside_unchecked_lengths = "the model was not checked by hand at two poses";

/// Tube lengths that may be cut to: only where the lengths measured by hand at two poses agree with the model.
inline Validated<TubeAdvice> checked_tube_lengths(const Telescope& telescope, const Extreme<Length>& longest,
                                                  const Extreme<Length>& shortest,
                                                  const std::vector<LengthCheck>& checks, const TubeRules& rules = {}) {
  Validated<TubeAdvice> advice{tube_lengths(telescope, longest, shortest, rules)};
  if (checks.size() < 2) advice.outside = outside_unchecked_lengths;
  for (const LengthCheck& check : checks) {
    if (!check.agrees) advice.outside = outside_measured_lengths;
  }
  return advice;
}

} // namespace v0
} // namespace fieldshaft
