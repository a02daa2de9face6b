#pragma once
// What running a machine costs: fuel, lubricants, and the whole of a year.

#include <fieldshaft/cost/ownership.hpp>
#include <fieldshaft/cost/repair.hpp>

namespace fieldshaft {
inline namespace v0 {

/// Cost of fuel.
///
/// C = Q t p
///   rate             Q [m³/s], at least 0
///   time             t [s], at least 0
///   price_per_litre  p, at least 0
/// Source: definition. Example: 20.6 L/h for 500 h at 1.50 a litre: 15 450.
inline Money fuel_cost(VolumeRate rate, Time time, const Money& price_per_litre) {
  check::not_negative(rate.value(), {"fuel_cost", "rate", "m³/s"});
  check::not_negative(time.value(), {"fuel_cost", "time", "s"});
  detail::check_price(price_per_litre, {"fuel_cost", "price_per_litre", ""});
  return in(rate, unit::litre_per_hour) * in(time, unit::hour) * price_per_litre;
}

/// Lubricants over fuel, in money.
inline constexpr Sourced<double> lubricant_share_low{0.10,
                                                     {"Iowa State University Extension PM 710", Standing::from_memory}};
inline constexpr Sourced<double> lubricant_share_high{
    0.15, {"lecture notes after ASAE Standards 2000: 15 % of fuel", Standing::published}};

/// One machine over a year of use.
struct YearOfUse {
  Money price;      ///< paid
  Money list_price; ///< of the same machine new, today
  Money salvage;    ///< value at the end of ownership
  double interest;  ///< a year
  double years;     ///< of ownership
  Time annual_use;  ///< mean hours in a year
};

/// Cost of owning and repairing for one hour of use, mean over the time of ownership.
///
/// (ownership of a year + repair over all years / years) / hours in a year
///   year          as described; annual_use above 0, prices in one currency
///   repair_class  of the table
/// Fuel, labour and lubricants come on top. Outside: more hours than the estimated life.
/// Source: the formulas of ownership_cost and accumulated_repair. Example: 130 000 paid, 150 000 list, 34 500, 8 %,
/// 15 years, 400 h, tractor: 43.15 an hour.
inline Validated<Money> hourly_cost(const YearOfUse& year, const RepairClass& repair_class) {
  check::positive(year.annual_use.value(), {"hourly_cost", "annual_use", "s"});
  const OwnershipCost own = ownership_cost(year.price, year.salvage, year.interest, year.years);
  const Validated<Money> repair = repair_cost(year.list_price, repair_class, Time{}, year.years * year.annual_use);
  return {(own.total + repair.value / year.years) / in(year.annual_use, unit::hour), repair.outside};
}

} // namespace v0
} // namespace fieldshaft
