#pragma once
// The power that an implement needs at its PTO, and the largest implement or feed that a power carries.

#include <fieldshaft/power/machine.hpp>

namespace fieldshaft {
inline namespace v0 {

/// A power need with the spread of design, adjustment and crop.
struct ImplementPower {
  Power low;
  Power mean;
  Power high;
};

namespace text {
template <class P, class B, class W, class C, class F>
constexpr auto implement_power(P constant, B per_width, W width, C per_mass, F feed_rate) noexcept {
  return constant + per_width * width + per_mass * feed_rate;
}
} // namespace text

namespace detail {
inline bool uses_width(const Machine& machine) noexcept { return machine.per_width.value() > 0.0; }
inline bool uses_feed(const Machine& machine) noexcept { return machine.per_mass.value() > 0.0; }

/// A width or a feed rate that the need goes with must be stated: nothing is no zero.
inline void check_width(const Machine& machine, Length width, const char* function) {
  check::not_negative(width.value(), {function, "width", "m"});
  if (uses_width(machine)) check::positive(width.value(), {function, "width", "m"});
}
inline void check_feed(const Machine& machine, FeedRate feed_rate, const char* function) {
  check::not_negative(feed_rate.rate.value(), {function, "feed_rate", "kg/s"});
  if (!uses_feed(machine)) return;
  check::positive(feed_rate.rate.value(), {function, "feed_rate", "kg/s"});
  if (feed_rate.basis != machine.basis) {
    fail_input(function, "feed_rate", feed_basis_name(feed_rate.basis),
               std::string(feed_basis_name(machine.basis)) + ", which the coefficient of \"" +
                   std::string(machine.name) + "\" goes with");
  }
}
} // namespace detail

/// Power that an implement needs at its PTO [W].
///
/// P = a + b w + c F; low and high are P less and plus the machine's range
///   machine    of the table (machine_named) or the user's own (make_machine)
///   width      w, working width [m], above 0 if b is; else at least 0
///   feed_rate  F, with what it weighs, above 0 if c is and then on the basis that the machine's c goes with
/// Average rotary power: no draft, slope, hydraulics, peaks or reserve. What rules of thumb call the smallest tractor
/// for a machine is another and larger number. Source: ASAE EP496, cl. 4 (form published by the University of Arizona
/// Cooperative Extension); coefficients D497, table 2, from memory. Example: disk mower-conditioner, 3 m: 16.8, 24.0
/// and 31.2 kW.
inline ImplementPower implement_power(const Machine& machine, Length width, FeedRate feed_rate = {}) {
  detail::check_width(machine, width, "implement_power");
  detail::check_feed(machine, feed_rate, "implement_power");
  const Power mean =
      text::implement_power(machine.constant, machine.per_width, width, machine.per_mass, feed_rate.rate);
  return {(1.0 - machine.range) * mean, mean, (1.0 + machine.range) * mean};
}

/// A limit with the spread of the need: `safe` keeps to the power at the high need, `optimistic` at the low one.
template <class Q> struct ImplementLimit {
  Q safe;
  Q mean;
  Q optimistic;
};

namespace detail {
/// The part of a power that is left for what grows, at one end of the range; nothing if the rest takes it all.
inline Power left_over(Power usable, double need_factor, Power fixed) {
  const Power left = usable / need_factor - fixed;
  return left > Power{} ? left : Power{};
}
inline void check_power_and_reserve(Power power, double reserve, const char* function) {
  check::positive(power.value(), {function, "power", "W"});
  check::from_below(reserve, 0.0, 1.0, {function, "reserve", ""});
}
template <class Q, class B> ImplementLimit<Q> limit_of(const Machine& machine, Power usable, Power fixed, B per_unit) {
  return {left_over(usable, 1.0 + machine.range, fixed) / per_unit, left_over(usable, 1.0, fixed) / per_unit,
          left_over(usable, 1.0 - machine.range, fixed) / per_unit};
}
} // namespace detail

/// The widest implement of a kind that a PTO power drives with a reserve [m].
///
/// w = ((1 - reserve) P / (1 ± range) - a - c F) / b, not below 0
///   machine    whose need goes with its width; else InputError
///   power      P, at the PTO [W], above 0
///   reserve    of the power, to be kept free, from 0, below 1
///   feed_rate  as for implement_power
/// Use `safe`. Source and what is left out: implement_power.
/// Example: disk mower-conditioner, 60 kW, reserve 0.2: 4.615 m safe, 6.0 m at the mean need.
inline ImplementLimit<Length> widest_implement(const Machine& machine, Power power, double reserve,
                                               FeedRate feed_rate = {}) {
  constexpr const char* function = "widest_implement";
  detail::check_power_and_reserve(power, reserve, function);
  detail::check_feed(machine, feed_rate, function);
  if (!detail::uses_width(machine)) {
    fail_input(function, "machine", std::string(machine.name), "a machine whose need goes with its width");
  }
  const Power fixed = machine.constant + machine.per_mass * feed_rate.rate;
  return detail::limit_of<Length>(machine, (1.0 - reserve) * power, fixed, machine.per_width);
}

/// The greatest feed rate that a PTO power drives with a reserve [kg/s], on the machine's own basis.
///
/// F = ((1 - reserve) P / (1 ± range) - a - b w) / c, not below 0
///   machine         whose need goes with its feed; else InputError
///   power, reserve  as above
///   width           as for implement_power
/// Use `safe`. Source and what is left out: implement_power.
/// Example: large rectangular baler, 60 kW, reserve 0.2: 24.3 t/h safe, 33.8 t/h at the mean need.
inline ImplementLimit<MassRate> greatest_feed(const Machine& machine, Power power, double reserve, Length width = {}) {
  constexpr const char* function = "greatest_feed";
  detail::check_power_and_reserve(power, reserve, function);
  detail::check_width(machine, width, function);
  if (!detail::uses_feed(machine)) {
    fail_input(function, "machine", std::string(machine.name), "a machine whose need goes with its feed");
  }
  const Power fixed = machine.constant + machine.per_width * width;
  return detail::limit_of<MassRate>(machine, (1.0 - reserve) * power, fixed, machine.per_mass);
}

/// The smallest tractor that drives an implement with a reserve, by its PTO power [W].
///
/// P = (a + b w + c F) (1 ± range) / (1 - reserve)
///   machine, width, feed_rate  as for implement_power
///   reserve                    of the power, to be kept free, from 0, below 1
/// Use `safe`: it carries the high need. Source and what is left out: implement_power.
/// Example: disk mower-conditioner, 3 m, reserve 0.2: 39.0 kW safe, 30.0 kW at the mean need.
inline ImplementLimit<Power> smallest_tractor(const Machine& machine, Length width, double reserve,
                                              FeedRate feed_rate = {}) {
  check::from_below(reserve, 0.0, 1.0, {"smallest_tractor", "reserve", ""});
  const ImplementPower need = implement_power(machine, width, feed_rate);
  return {need.high / (1.0 - reserve), need.mean / (1.0 - reserve), need.low / (1.0 - reserve)};
}

/// The fastest work that a PTO power drives with a reserve [m/s], where the need goes with the feed.
///
/// v = speed F_greatest / feed_rate: in the same crop at the same width the feed goes with the ground speed
///   machine, power, reserve, width  as for greatest_feed
///   speed                           ground speed at which the feed rate was found [m/s], above 0
///   feed_rate                       found at that speed, above 0, on the machine's basis
/// Use `safe`. Whether ground, crop and machine bear that speed is another question. Source: greatest_feed; definition
/// of the feed rate. Example: large rectangular baler, 60 kW, reserve 0.2, 20 t/h at 8 km/h: 9.72 km/h safe.
inline ImplementLimit<Speed> fastest_work(const Machine& machine, Power power, double reserve, Speed speed,
                                          FeedRate feed_rate, Length width = {}) {
  constexpr const char* function = "fastest_work";
  check::positive(speed.value(), {function, "speed", "m/s"});
  detail::check_feed(machine, feed_rate, function);
  const ImplementLimit<MassRate> feed = greatest_feed(machine, power, reserve, width);
  const auto at = [&](MassRate greatest) { return speed * (greatest / feed_rate.rate); };
  return {at(feed.safe), at(feed.mean), at(feed.optimistic)};
}

} // namespace v0
} // namespace fieldshaft
