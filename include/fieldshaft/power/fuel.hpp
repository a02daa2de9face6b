#pragma once
// Diesel fuel from PTO power, load and engine speed.
//
// Every formula starts from the rated PTO power. It takes a plain Power, for everyday use, or a PtoPower; an engine
// power must first be turned into a PTO power, and does not compile here.

#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/power/basis.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
/// Partial-throttle multiplier.
constexpr double throttle_multiplier(double load_fraction, double speed_fraction) noexcept {
  return 1.0 - (speed_fraction - 1.0) * (0.45 * load_fraction - 0.877);
}
/// Fuel per rated power, in litres per kilowatt hour.
constexpr double fuel_per_rated_power(double load_fraction, double speed_fraction) noexcept {
  return (0.22 * load_fraction + 0.096) * throttle_multiplier(load_fraction, speed_fraction);
}
/// `litre` is one litre per kilowatt hour in the units of the caller.
template <class P, class V>
constexpr auto fuel_rate(P rated_power, double load_fraction, double speed_fraction, V litre) noexcept {
  return rated_power * litre * fuel_per_rated_power(load_fraction, speed_fraction);
}
} // namespace text

namespace detail {
inline constexpr VolumePerEnergy litre_per_kwh = litres_per_kilowatt_hour(1.0);
constexpr void check_fuel(Power rated_power, double load_fraction, double speed_fraction, const char* function) {
  check::positive(rated_power.value(), {function, "rated_power", "W"});
  check::not_negative(load_fraction, {function, "load_fraction", ""});
  check::positive(speed_fraction, {function, "speed_fraction", ""});
  check::within(speed_fraction, 0.0, 1.0, {function, "speed_fraction", ""});
}
} // namespace detail

/// Diesel fuel use [m³/s].
///
/// Q = (0.22 X + 0.096) PTM P litres an hour, P in kW; PTM = 1 - (N - 1) (0.45 X - 0.877)
///   rated_power     P  rated PTO power [W], above 0
///   load_fraction   X  equivalent PTO power over rated PTO power, at least 0
///   speed_fraction  N  engine speed over its full-throttle speed, above 0, at most 1
/// The average of many tractors; one tractor may differ by 15 % and more. Meant for loads from 20 % to 100 %: outside
/// the number is still given, see fuel_rate_checked. At a standard PTO speed the PTO gear sets N; it is not free.
/// Source: ASABE D497.7, cl. 3.3.3 (from memory); form published by Grisso, Predicting Diesel Fuel Consumption. The
/// form with the speed reduction in per cent (Grisso, Kocher & Vaughan 2004) is the same number. Example: 100 kW, X =
/// 0.5: 20.6 L/h at full throttle, 17.9138 L/h at N = 0.8.
constexpr VolumeRate fuel_rate(Power rated_power, double load_fraction, double speed_fraction = 1.0) {
  detail::check_fuel(rated_power, load_fraction, speed_fraction, "fuel_rate");
  return text::fuel_rate(rated_power, load_fraction, speed_fraction, detail::litre_per_kwh);
}
constexpr VolumeRate fuel_rate(PtoPower rated_power, double load_fraction, double speed_fraction = 1.0) {
  return fuel_rate(rated_power.power, load_fraction, speed_fraction);
}

/// The load below which the fuel equations are not meant.
inline constexpr Sourced<double> least_fuel_load{0.20, {"ASABE D497.4, cl. 3.3", Standing::from_memory}};

/// The same, and whether the equations are meant for that load [m³/s].
///
/// Arguments as fuel_rate. Outside: a load below 20 % or above 100 % of rated PTO power.
constexpr Validated<VolumeRate> fuel_rate_checked(Power rated_power, double load_fraction,
                                                  double speed_fraction = 1.0) {
  const VolumeRate rate = fuel_rate(rated_power, load_fraction, speed_fraction);
  if (load_fraction < least_fuel_load.value) return {rate, "a load below 20 % of rated PTO power"};
  if (load_fraction > 1.0) return {rate, "a load above rated PTO power"};
  return {rate};
}

/// Fuel per energy delivered [m³/J].
///
/// SFC = (0.22 + 0.096/X) PTM litres per kilowatt hour
///   load_fraction   X  above 0
///   speed_fraction  N  above 0, at most 1
/// Source and validity as fuel_rate. Example: X = 0.75: 0.348 L/(kW·h).
constexpr VolumePerEnergy specific_fuel(double load_fraction, double speed_fraction = 1.0) {
  check::positive(load_fraction, {"specific_fuel", "load_fraction", ""});
  check::positive(speed_fraction, {"specific_fuel", "speed_fraction", ""});
  check::within(speed_fraction, 0.0, 1.0, {"specific_fuel", "speed_fraction", ""});
  return detail::litre_per_kwh * (text::fuel_per_rated_power(load_fraction, speed_fraction) / load_fraction);
}

/// Fuel use from a specific use that was measured on the tractor, which is better than every average [m³/s].
///
/// Q = P v
///   power         P  delivered at the PTO [W], at least 0
///   specific_use  v  fuel per energy at that load and speed [m³/J], above 0; a test report's 17 hp·h/gal is 1/17
///                    gal/(hp·h)
/// Source: definition. Example: 200 hp at 17 hp·h/gal: 11.76 gal/h.
constexpr VolumeRate measured_fuel_rate(Power power, VolumePerEnergy specific_use) {
  check::not_negative(power.value(), {"measured_fuel_rate", "power", "W"});
  check::positive(specific_use.value(), {"measured_fuel_rate", "specific_use", "m³/J"});
  return power * specific_use;
}

/// Average fuel use of a tractor over a year of mixed work [m³/s].
///
/// Q = 0.223 P litres an hour, P the rated PTO power in kW (0.044 gal/(hp·h))
///   rated_power  [W], above 0
/// It weighs the varying-load points of a tractor test evenly; its own author calls it conservative and an
/// underestimate. Source: ASAE EP496.3, cl. 6.3.2.1, as quoted by Grisso (published).
/// Example: 100 kW: 22.3 L/h.
constexpr VolumeRate average_fuel_rate(Power rated_power) {
  check::positive(rated_power.value(), {"average_fuel_rate", "rated_power", "W"});
  return rated_power * (0.223 * detail::litre_per_kwh);
}

/// Diesel fuel use by the older equation of the standard, full throttle [m³/s].
///
/// Q = (2.64 X + 3.91 - 0.203 sqrt(738 X + 173)) X P litres an hour, P in kW
///   rated_power    P  rated PTO power [W], above 0
///   load_fraction  X  at least 0
/// It lies 15 % above typical test results on purpose, for field conditions. Kept to follow older calculations.
/// Source: ASAE D497.4 and D497.5, cl. 3.3 (from memory). Outside: below 20 % or above 100 % load.
/// Example: 100 kW, X = 1: 42.29 L/h.
inline Validated<VolumeRate> older_fuel_rate(Power rated_power, double load_fraction) {
  check::positive(rated_power.value(), {"older_fuel_rate", "rated_power", "W"});
  check::not_negative(load_fraction, {"older_fuel_rate", "load_fraction", ""});
  const double specific = 2.64 * load_fraction + 3.91 - 0.203 * std::sqrt(738.0 * load_fraction + 173.0);
  const VolumeRate rate = rated_power * detail::litre_per_kwh * (specific * load_fraction);
  return {rate, fuel_rate_checked(rated_power, load_fraction).outside};
}

/// Engine oil that a diesel tractor uses, changes included [m³/s].
///
/// Q = 0.00059 P + 0.02169 litres an hour, P the rated engine power in kW
///   rated_engine_power  [W], above 0
/// Source: ASABE D497, cl. 3.4 (from memory). Example: 100 kW: 0.0807 L/h.
constexpr VolumeRate engine_oil_rate(Power rated_engine_power) {
  check::positive(rated_engine_power.value(), {"engine_oil_rate", "rated_engine_power", "W"});
  return litres_per_hour(0.00059 * in(rated_engine_power, unit::kilowatt) + 0.02169);
}

} // namespace v0
} // namespace fieldshaft
