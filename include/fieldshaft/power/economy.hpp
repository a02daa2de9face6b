#pragma once
// Economy PTO: the same PTO speed at a lower engine speed. What it saves, what it can carry, and its danger: at the
// engine speed of the plain gear the PTO overspeeds.

#include <fieldshaft/power/fuel.hpp>
#include <fieldshaft/power/pto_option.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {

/// Fuel of a job in the plain and in the economy gear.
struct EconomySaving {
  VolumeRate plain;
  VolumeRate economy;
  double saving; ///< of the plain one
};

/// Fuel saved by the economy gear at the same PTO speed and power.
///
/// N = engine speed of the gear over full_throttle; both rates by fuel_rate; saving = 1 - economy / plain
///   rated_power    rated PTO power of the tractor [W], above 0
///   power          PTO power of the job [W], at least 0
///   plain          engine speed in the plain gear [rad/s], above 0, at most full_throttle
///   economy        engine speed in the economy gear [rad/s], above 0, at most plain
///   full_throttle  full-throttle engine speed that the fuel equation refers to (rated speed) [rad/s]
/// The average of many tractors. Outside: loads outside 20 to 100 %. Whether the engine carries the job at the lower
/// speed is another question (EngineLine::power_at). Source: fuel_rate. Measured means for comparison:
/// economy_measurements. Example: 60 kW rated, 24 kW, 2100 against 1600 of 2200 r/min: 16.4 %.
inline Validated<EconomySaving> economy_saving(Power rated_power, Power power, AngularSpeed plain, AngularSpeed economy,
                                               AngularSpeed full_throttle) {
  constexpr const char* function = "economy_saving";
  check::positive(rated_power.value(), {function, "rated_power", "W"});
  check::not_negative(power.value(), {function, "power", "W"});
  check::positive(full_throttle.value(), {function, "full_throttle", "rad/s"});
  check::positive(plain.value(), {function, "plain", "rad/s"});
  check::within(plain.value(), 0.0, full_throttle.value(), {function, "plain", "rad/s"});
  check::positive(economy.value(), {function, "economy", "rad/s"});
  check::within(economy.value(), 0.0, plain.value(), {function, "economy", "rad/s"});
  const double load = power / rated_power;
  const Validated<VolumeRate> before = fuel_rate_checked(rated_power, load, plain / full_throttle);
  const VolumeRate after = fuel_rate(rated_power, load, economy / full_throttle);
  return {{before.value, after, 1.0 - after / before.value}, before.outside};
}

/// Below this share of rated power the advice "gear up, throttle down" holds; sources disagree.
inline constexpr Sourced<double> economy_load_low{
    0.65, {"eXtension, tractor efficiency; Nebraska 1996", Standing::published}};
inline constexpr Sourced<double> economy_load_high{0.75,
                                                   {"Virginia Cooperative Extension 442-450", Standing::published}};

/// Fuel that the economy gear saved when it was measured: mean or range of one tractor or study.
struct EconomyMeasurement {
  const char* what;
  double low;
  double high;
  Source source;
};

namespace detail {
inline constexpr Source economy_laboratory{"Sumer, Kocabiyik, Say & Cicek, Bulg. J. Agric. Sci. 16 (2010) 526-533",
                                           Standing::published};
inline constexpr Source economy_field{"Sumer et al., J. Agric. Sci. (Ankara) 16 (2010) 37-45", Standing::published};
} // namespace detail

inline constexpr std::array economy_measurements = {
    EconomyMeasurement{"tractor A, laboratory; exhaust too hot above about 35 kW at the PTO", 0.2718, 0.2718,
                       detail::economy_laboratory},
    EconomyMeasurement{"tractor B, laboratory; exhaust too hot above about 20 kW at the PTO", 0.1862, 0.1862,
                       detail::economy_laboratory},
    EconomyMeasurement{"tractor C, laboratory; exhaust too hot above about 30 kW at the PTO", 0.1588, 0.1588,
                       detail::economy_laboratory},
    EconomyMeasurement{"three tractors, three machines, field; ground speed in the same gear 13 to 23 % lower", 0.1469,
                       0.3441, detail::economy_field},
};

} // namespace v0
} // namespace fieldshaft
