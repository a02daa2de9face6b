#pragma once
// Miner's sum: the share of a part's life that counted cycles use up, from rows or while a history is being counted.

#include <fieldshaft/fatigue/pieces.hpp>
#include <fieldshaft/fatigue/shaft.hpp>
#include <fieldshaft/fatigue/sn_line.hpp>

#include <string>

namespace fieldshaft {
inline namespace v0 {

/// What cycles below the endurance limit do.
enum class SmallCycles {
  harmless,     ///< nothing: Miner's original rule; too kind once larger cycles have begun a crack
  reduced_line, ///< the line goes on with the exponent 2 k - 1 in place of k = -1/b (Haibach; from memory)
  same_line,    ///< the line goes on: elementary Miner, the safest
};

/// Source of the rule that the shares add up to one at failure.
inline constexpr Source miner_source{"Palmgren-Miner rule, sum of n/N = 1", Standing::published};

namespace text {
/// One over the cycles to failure at s times the endurance limit, k being -1/b and `knee` the cycles of the limit.
template <class R> R cycle_damage(R s, double knee, double k, SmallCycles small_cycles) noexcept {
  if (s > 1.0 || small_cycles == SmallCycles::same_line) return math::pow(s, k) / knee;
  return small_cycles == SmallCycles::harmless ? R(0.0) : R(math::pow(s, 2.0 * k - 1.0) / knee);
}
} // namespace text

/// Adds up the damage of cycles one by one, in constant memory. It may be handed to a CycleCounter as its sink; plain
/// numbers are then SI numbers of the line's unit.
template <class Q = Stress> class DamageSum {
public:
  DamageSum(const SnLine<Q>& line, MeanStressRule rule, SmallCycles small_cycles = SmallCycles::harmless)
      : line_(line), rule_(rule), small_cycles_(small_cycles) {
    detail::check_line("DamageSum", line);
    detail::check_rule("DamageSum", rule);
    slope_ = -1.0 / line.exponent;
    knee_ = math::pow(static_cast<double>(line.coefficient / line.endurance), slope_);
  }

  template <class R> void operator()(const Cycle<R>& cycle) {
    static_assert(std::is_same_v<R, Q> || std::is_same_v<R, double>, "cycles in the unit of the line");
    add(0.5 * detail::number_of(cycle.range), detail::number_of(cycle.mean), cycle.count);
  }

  /// Adds what another sum for the same line and rules holds.
  void join(const DamageSum& other) noexcept { note(other.damage_, other.outside_); }

  /// The sum so far: 1 is the mean life of such parts. Outside if a cycle reached the static strength (the sum is then
  /// infinite) or was so large that fewer than 1000 of it lead to failure.
  Validated<double> damage() const noexcept { return {damage_, outside_}; }

private:
  void add(double amplitude, double mean, double count) {
    const double m = detail::harmful_mean(mean, line_, rule_);
    if (m >= 1.0) {
      if (count > 0.0) note(std::numeric_limits<double>::infinity(), detail::mean_breaks);
      return;
    }
    const double s = amplitude * text::mean_growth(m, rule_) / detail::number_of(line_.endurance);
    const double share = text::cycle_damage(s, knee_, slope_, small_cycles_);
    note(share * count, share * sn_first_cycles > 1.0 ? detail::too_few_cycles : nullptr);
  }
  void note(double damage, const char* outside) noexcept {
    damage_ += damage;
    if (outside_ == nullptr) outside_ = outside;
  }

  SnLine<Q> line_;
  MeanStressRule rule_;
  SmallCycles small_cycles_;
  double slope_ = 0.0;
  double knee_ = 0.0;
  double damage_ = 0.0;
  const char* outside_ = nullptr;
};

namespace detail {
template <class Q> void check_cycle(const char* function, const Cycle<Q>& cycle, std::size_t index) {
  const bool good = is_finite(number_of(cycle.range)) && number_of(cycle.range) >= 0.0 &&
                    is_finite(number_of(cycle.mean)) && is_finite(cycle.count) && cycle.count >= 0.0;
  if (good) return;
  fail_input(function, "cycles[" + std::to_string(index) + "]",
             "range " + check::text_of(number_of(cycle.range), "") + ", mean " +
                 check::text_of(number_of(cycle.mean), "") + ", count " + check::text_of(cycle.count, ""),
             "finite numbers, range and count at least 0");
}
} // namespace detail

/// Share of a part's life that cycles use up [-]; 1 is the mean life.
///
/// D = sum n / N, N by the S-N line for the reversed amplitude that does the harm of range and mean
///   cycles        rows of range (at least 0), mean and count n (at least 0), in the unit of the line
///   line          S-N line of the part, notch factors in it or in the cycles
///   rule          what a mean does
///   small_cycles  what cycles below the endurance limit do; by default nothing
/// The order of the cycles is ignored; tests to failure have ended at sums from about 0.3 to 3 (from memory). Outside
/// as said at DamageSum::damage. Takes no memory. Source: Palmgren-Miner. Example: S_ut 105, S_e 22 ksi, f 0.84,
/// Goodman; 3 cycles of +-60, 2 from -20 to 40, 2 of +-20 ksi: 4.5672e-4.
template <class Q>
Validated<double> miner_damage(const Cycle<Q>* cycles, std::size_t size, const SnLine<Q>& line, MeanStressRule rule,
                               SmallCycles small_cycles = SmallCycles::harmless) {
  DamageSum<Q> sum(line, rule, small_cycles);
  for (std::size_t i = 0; i < size; ++i) {
    detail::check_cycle("miner_damage", cycles[i], i);
    sum(cycles[i]);
  }
  return sum.damage();
}
template <class Q>
Validated<double> miner_damage(const std::vector<Cycle<Q>>& cycles, const SnLine<Q>& line, MeanStressRule rule,
                               SmallCycles small_cycles = SmallCycles::harmless) {
  return miner_damage(cycles.data(), cycles.size(), line, rule, small_cycles);
}

/// Share of a part's life that a recorded history uses up [-]: count_cycles and miner_damage in one pass, no rows kept.
///
///   history                   samples in the unit of the line, as for count_cycles
///   line, rule, small_cycles  as for miner_damage
///   filter                    as for count_cycles
///   executor                  runs the pieces of a long history as tasks, as an Executor does; by default in turn
/// The sum is taken over pieces of a fixed length, so that it has the same bits for any executor; it differs from that
/// over the rows of count_cycles by rounding alone.
template <class Q, class Run = detail::InTurn>
Validated<double> history_damage(const Q* history, std::size_t size, const SnLine<Q>& line, MeanStressRule rule,
                                 SmallCycles small_cycles = SmallCycles::harmless, ReversalFilter filter = {},
                                 const Run& executor = {}) {
  constexpr const char* function = "history_damage";
  const DamageSum<Q> empty(line, rule, small_cycles);
  const auto pieces = detail::count_pieces(function, history, size, filter, empty, executor);
  DamageSum<Q> sum = empty;
  for (const auto& piece : pieces) sum.join(piece.sink);
  detail::count_on(function, pieces, filter, sum);
  return sum.damage();
}
template <class Q, class Run = detail::InTurn>
Validated<double> history_damage(const std::vector<Q>& history, const SnLine<Q>& line, MeanStressRule rule,
                                 SmallCycles small_cycles = SmallCycles::harmless, ReversalFilter filter = {},
                                 const Run& executor = {}) {
  return history_damage(history.data(), history.size(), line, rule, small_cycles, filter, executor);
}

/// S-N line of a round shaft in terms of its torque.
///
/// T = S pi d^3 (1 - k^4) / (16 sqrt(3) K_fs) for every stress S of the line
///   line          of the steel part, in tension stress
///   diameter      d  [m], above 0
///   notch_factor  K_fs  in torsion, at least 1
///   bore_ratio    k  bore over diameter, from 0 to below 1
/// By distortion energy, so that the endurance limit is 0.577 of that in bending and the static strengths 0.577 of the
/// tensile ones (on the safe side for the ultimate). A mean torque of either sign does harm.
/// Source: Shigley, Eqs. 7-5, 7-6. Example: S_e 150 MPa, 35 mm: 729.1 N·m.
inline SnLine<Torque> torque_sn_line(const SnLine<Stress>& line, Length diameter, double notch_factor = 1.0,
                                     double bore_ratio = 0.0) {
  constexpr const char* function = "torque_sn_line";
  detail::check_line(function, line);
  check::positive(diameter.value(), {function, "diameter", "m"});
  check::at_least(notch_factor, 1.0, {function, "notch_factor", ""});
  check::from_below(bore_ratio, 0.0, 1.0, {function, "bore_ratio", ""});
  const double unit_torque_stress = text::round_stress(math::sqrt(3.0) * notch_factor, diameter.value(), bore_ratio);
  const auto torque = [unit_torque_stress](Stress s) { return newton_metres(s.value() / unit_torque_stress); };
  return {torque(line.coefficient), line.exponent,      torque(line.endurance),
          torque(line.ultimate),    torque(line.yield), true};
}

} // namespace v0
} // namespace fieldshaft
