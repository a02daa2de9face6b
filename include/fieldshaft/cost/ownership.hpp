#pragma once
// What owning a machine costs in a year: capital recovery, taxes, insurance and housing.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/cost/money.hpp>

#include <cmath>

namespace fieldshaft {
inline namespace v0 {

namespace detail {
/// A rate of interest in a year, as a share. It may be negative (inflation above interest) but never takes everything.
constexpr void check_interest(double interest, const char* function) {
  check::between(interest, -1.0, 10.0, {function, "interest", ""});
}
} // namespace detail

/// Interest above inflation, exactly [-].
///
/// r = (1 + i) / (1 + f) - 1
///   interest   i, above -1
///   inflation  f, above -1
/// Source: definition. Example: 8 % and 3 %: 4.854 %.
constexpr double real_interest(double interest, double inflation) {
  detail::check_interest(interest, "real_interest");
  check::between(inflation, -1.0, 10.0, {"real_interest", "inflation", ""});
  return (interest - inflation) / (1.0 + inflation);
}

/// The same by plain subtraction, as extension bulletins do it [-]. Example: 8 % and 3 %: 5 %.
constexpr double real_interest_by_difference(double interest, double inflation) {
  detail::check_interest(interest, "real_interest_by_difference");
  check::between(inflation, -1.0, 10.0, {"real_interest_by_difference", "inflation", ""});
  return interest - inflation;
}

/// Capital recovery factor: the yearly payment that pays back 1 with interest [-].
///
/// CRF = i / (1 - (1 + i)^-n), which is i (1 + i)^n / ((1 + i)^n - 1); 1/n without interest
///   interest  i, a year, above -1
///   years     n, above 0
/// Exact, and without loss of digits at small rates. Source: annuity. Example: 5 %, 15 years: 0.09634.
inline double capital_recovery_factor(double interest, double years) {
  detail::check_interest(interest, "capital_recovery_factor");
  check::positive(years, {"capital_recovery_factor", "years", ""});
  if (interest == 0.0) return 1.0 / years;
  return -interest / std::expm1(-years * std::log1p(interest));
}

/// Depreciation and interest of a year, spread evenly over the time of ownership.
///
/// R = (P - S) CRF + S i
///   price     P, paid, at least 0
///   salvage   S, value at the end, at least 0, in the same currency
///   interest  i, a year, above -1
///   years     n, above 0
/// Source: Iowa State University Extension PM 710 (from memory). Example: 93 500, 25 300, 5 %, 15 years: 7836 a year.
inline Money capital_recovery(const Money& price, const Money& salvage, double interest, double years) {
  detail::check_price(price, {"capital_recovery", "price", ""});
  detail::check_price(salvage, price, {"capital_recovery", "salvage", ""});
  const double factor = capital_recovery_factor(interest, years);
  return {(price.amount - salvage.amount) * factor + salvage.amount * interest, price.currency};
}

/// Taxes, insurance and housing in a year, as a share of the mean value.
inline constexpr Sourced<double> usual_tih_rate{0.01,
                                                {"Iowa State University Extension PM 710", Standing::from_memory}};

/// Taxes, insurance and housing of a year.
///
/// TIH = rate (P + S) / 2
///   price, salvage  P and S, as for capital_recovery
///   rate            at least 0
/// Source: Iowa State University Extension PM 710 (from memory). Example: 130 000, 34 500, 1 %: 822.5 a year.
inline Money taxes_insurance_housing(const Money& price, const Money& salvage, double rate = usual_tih_rate.value) {
  detail::check_price(price, {"taxes_insurance_housing", "price", ""});
  detail::check_price(salvage, price, {"taxes_insurance_housing", "salvage", ""});
  check::not_negative(rate, {"taxes_insurance_housing", "rate", ""});
  return {rate * 0.5 * (price.amount + salvage.amount), price.currency};
}

/// What owning costs in a year.
struct OwnershipCost {
  Money capital; ///< depreciation and interest
  Money tih;     ///< taxes, insurance, housing
  Money total;
};

/// Yearly cost of owning, whatever the use. Arguments, source and example as the two above.
inline OwnershipCost ownership_cost(const Money& price, const Money& salvage, double interest, double years,
                                    double rate = usual_tih_rate.value) {
  const Money capital = capital_recovery(price, salvage, interest, years);
  const Money tih = taxes_insurance_housing(price, salvage, rate);
  return {capital, tih, capital + tih};
}

/// Taxes 1 %, insurance 0.25 % and housing 0.75 % of the price in a year.
inline constexpr Sourced<double> usual_other_ownership{0.02, {"ASAE EP496.3, cl. 6.2", Standing::from_memory}};

/// Yearly cost of owning as a share of the price, by the standard's shorter form [-].
///
/// Co = (1 - Sv)/L + (1 + Sv)/2 i + K2
///   salvage_share  Sv, value at the end over the price, from 0 to 1
///   years          L, above 0
///   interest       i, a year, above -1
///   other          K2, taxes, insurance and housing, at least 0
/// Straight-line depreciation and interest on the mean value: some per cent off capital recovery.
/// Source: ASAE EP496.3, cl. 6.2 (from memory). Example: 0.23, 15 years, 8 %: 12.05 %.
constexpr double ownership_share(double salvage_share, double years, double interest,
                                 double other = usual_other_ownership.value) {
  check::within(salvage_share, 0.0, 1.0, {"ownership_share", "salvage_share", ""});
  check::positive(years, {"ownership_share", "years", ""});
  detail::check_interest(interest, "ownership_share");
  check::not_negative(other, {"ownership_share", "other", ""});
  return (1.0 - salvage_share) / years + 0.5 * (1.0 + salvage_share) * interest + other;
}

/// Years until yearly savings have paid for a purchase with interest [-].
///
/// n = -ln(1 - P i / A) / ln(1 + i); P/A without interest
///   price     P, at least 0
///   saving    A, of each year, above 0, in the same currency
///   interest  i, a year, from 0
/// Outside: the saving does not even cover the interest, so the purchase never pays; the value is then 0.
/// Source: annuity solved for the time. Example: 1000, 300 a year, 5 %: 3.74 years.
inline Validated<double> payback_years(const Money& price, const Money& saving, double interest) {
  detail::check_price(price, {"payback_years", "price", ""});
  check::positive(saving.amount, {"payback_years", "saving", ""});
  detail::same_currency(price, saving, "payback_years");
  check::from_below(interest, 0.0, 10.0, {"payback_years", "interest", ""});
  const double ratio = price.amount / saving.amount;
  if (interest == 0.0) return {ratio};
  if (ratio * interest >= 1.0) return {0.0, "the saving does not cover the interest: it never pays"};
  return {-std::log1p(-ratio * interest) / std::log1p(interest)};
}

} // namespace v0
} // namespace fieldshaft
