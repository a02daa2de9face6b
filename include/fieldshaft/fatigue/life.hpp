#pragma once
// Life from damage: for a block that repeats, for a list of duties over a year, and the class in which it is printed.

#include <fieldshaft/fatigue/damage.hpp>

namespace fieldshaft {
inline namespace v0 {

/// A life is known to a factor of several: it is printed as one of these and never in three figures.
enum class LifeClass {
  under_10_h,
  from_10_to_100_h,
  from_100_to_1000_h,
  from_1000_to_10000_h,
  beyond_10000_h, ///< also endless
};

/// A part of the year's work: how the load swings, how often, and for how long.
template <class Q = Torque> struct Duty {
  Q amplitude;         ///< half of the swing, at least 0
  Q mean;              ///< midway
  Frequency frequency; ///< of the swings, at least 0
  Time per_year;       ///< at least 0
};

struct DutyLife {
  double damage_per_year;
  Time working_time; ///< hours at work until the damage is 1; infinite if there is none
  double years;      ///< the same in years of this list
};

/// Time until the damage of a block that repeats adds up to one [s]; infinite without damage.
///
/// t = T / D
///   damage    D  of one block (a value of miner_damage or history_damage), at least 0; infinite is allowed
///   duration  T  of the block [s], above 0
/// Print life_class of it. Source: Palmgren-Miner. Example: 4.56721e-4 in 6 s: 3.649 h.
inline Time damage_life(double damage, Time duration) {
  check::positive(duration.value(), {"damage_life", "duration", "s"});
  constexpr double infinity = std::numeric_limits<double>::infinity();
  if (detail::bits_of(damage) == detail::bits_of(infinity)) return seconds(0);
  check::not_negative(damage, {"damage_life", "damage", ""});
  return seconds(damage > 0.0 ? duration.value() / damage : infinity);
}

/// The class in which a life is printed.
///
/// Under 10 h, 10 to 100, 100 to 1000, 1000 to 10 000, beyond; the lower end belongs to a class
///   life  [s], at least 0; infinite is allowed
/// Miner's sum and S-N lines are known to a factor of about three each, so that a finer statement would be false.
/// Example: 3.649 h are under 10 h.
constexpr LifeClass life_class(Time life) {
  if (detail::bits_of(life.value()) == detail::bits_of(std::numeric_limits<double>::infinity())) {
    return LifeClass::beyond_10000_h;
  }
  check::not_negative(life.value(), {"life_class", "life", "s"});
  const double h = in(life, unit::hour);
  if (h < 10.0) return LifeClass::under_10_h;
  if (h < 100.0) return LifeClass::from_10_to_100_h;
  if (h < 1000.0) return LifeClass::from_100_to_1000_h;
  return h < 10000.0 ? LifeClass::from_1000_to_10000_h : LifeClass::beyond_10000_h;
}

/// Damage and life of a part under a list of duties.
///
/// D = sum f t / N per year, f t being the swings of a duty in a year; working time = sum t / D
///   duties        amplitude, mean, frequency and time a year of each
///   line, rule, small_cycles  as for miner_damage
/// A start under load is a duty too: mean and amplitude of half the torque, at its own frequency. A torque that stands
/// still does no damage. Outside as for miner_damage. Source: Palmgren-Miner.
/// Example: S_e 729.1, a line of b = -0.1 (a 2902.6), S_ut 4000 N·m; 800 N·m reversed at 2 Hz for 100 h a year: 10^6
/// cycles at 729.1 are 3.955e5 at 800, so that the damage is 1.821 a year and the life 54.9 h.
template <class Q>
Validated<DutyLife> duty_life(const Duty<Q>* duties, std::size_t size, const SnLine<Q>& line, MeanStressRule rule,
                              SmallCycles small_cycles = SmallCycles::harmless) {
  constexpr const char* function = "duty_life";
  DamageSum<Q> sum(line, rule, small_cycles);
  Time work{};
  for (std::size_t i = 0; i < size; ++i) {
    const Duty<Q>& duty = duties[i];
    check::not_negative(duty.frequency.value(), {function, "duties.frequency", "Hz"});
    check::not_negative(duty.per_year.value(), {function, "duties.per_year", "s"});
    const Cycle<Q> swings{2.0 * duty.amplitude, duty.mean, duty.frequency * duty.per_year};
    detail::check_cycle(function, swings, i);
    sum(swings);
    work += duty.per_year;
  }
  const Validated<double> damage = sum.damage();
  const double infinity = std::numeric_limits<double>::infinity();
  const Time life = work.value() > 0.0 ? damage_life(damage.value, work) : seconds(infinity);
  const double years = work.value() > 0.0 ? static_cast<double>(life / work) : infinity;
  return {{damage.value, life, years}, damage.outside};
}
template <class Q>
Validated<DutyLife> duty_life(const std::vector<Duty<Q>>& duties, const SnLine<Q>& line, MeanStressRule rule,
                              SmallCycles small_cycles = SmallCycles::harmless) {
  return duty_life(duties.data(), duties.size(), line, rule, small_cycles);
}

} // namespace v0
} // namespace fieldshaft
