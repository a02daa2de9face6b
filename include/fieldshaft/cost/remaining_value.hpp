#pragma once
// What a machine is still worth: the form with two square roots, and the older one by years alone.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/cost/money.hpp>
#include <fieldshaft/power/by_name.hpp>
#include <fieldshaft/units.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {

/// Coefficients of the remaining value of a class of machines.
struct ValueClass {
  std::string_view name;
  double c1;
  double c2; ///< per square root of the age in years
  double c3; ///< per square root of the hours in a year; 0 where use does not count
  Source source;
};

namespace detail {
inline constexpr Source value_source{"Lazarus & Selley, Univ. of Minnesota Staff Paper P02-16 (2002), after Cross & "
                                     "Perry; ASABE D497, cl. 6",
                                     Standing::from_memory};
inline constexpr std::array value_catalogue = {
    ValueClass{"tractor below 60 kW", 0.9809, 0.0934, 0.0058, value_source},
    ValueClass{"tractor 60 to 112 kW", 0.9421, 0.0997, 0.0008, value_source},
    ValueClass{"tractor above 112 kW", 0.9756, 0.1187, 0.0019, value_source},
    ValueClass{"combine", 1.1318, 0.1654, 0.0079, value_source},
    ValueClass{"mower", 0.7557, 0.0672, 0.0, value_source},
    ValueClass{"baler", 0.8521, 0.1014, 0.0, value_source},
    ValueClass{"swather and other harvest machines", 0.7911, 0.0913, 0.0, value_source},
    ValueClass{"plough", 0.7382, 0.0510, 0.0, value_source},
    ValueClass{"disk and other tillage machines", 0.8906, 0.1095, 0.0, value_source},
    ValueClass{"planter", 0.8829, 0.0787, 0.0, value_source},
    ValueClass{"manure spreader and other machines", 0.9427, 0.1111, 0.0, value_source},
    ValueClass{"skid-steer and other vehicles", 0.7861, 0.0627, 0.0033, value_source},
};
} // namespace detail

/// Every class, to go through. All coefficients are from memory.
constexpr const auto& value_classes() noexcept { return detail::value_catalogue; }

/// The class of that name; InputError with the nearest names if there is none.
inline const ValueClass& value_class_named(std::string_view name) {
  return detail::by_name(value_classes(), name, "value_class_named");
}

/// The class of a tractor by its PTO power [W], above 0: below 60 kW, to 112 kW, and above.
inline const ValueClass& tractor_value_class(Power pto_power) {
  check::positive(pto_power.value(), {"tractor_value_class", "pto_power", "W"});
  const std::size_t index = pto_power < kilowatts(60.0) ? 0 : pto_power <= kilowatts(112.0) ? 1 : 2;
  return value_classes()[index];
}

/// Remaining value as a share of the current list price [-].
///
/// S = (C1 - C2 sqrt(n) - C3 sqrt(h))²
///   value_class  C1, C2, C3
///   years        n, age, at least 0
///   annual_use   h, mean use in a year [s; hours(400) for 400 h], at least 0
/// An average of sales; condition and market move it. Outside: an age or use so large that the bracket is below zero,
/// where its square would rise again; the value is then 0.
/// Source: Cross & Perry, AJAE 77 (1995) 194-204; coefficients from memory. The exponent of h is 0.5; 0.2, which is
/// also met, does not give the published share of the example (26 %). Example: tractor of 180 hp, 15 years, 400 h a
/// year: 22.84 % (Iowa State University Extension prints 23 %).
inline Validated<double> remaining_value(const ValueClass& value_class, double years, Time annual_use) {
  check::not_negative(years, {"remaining_value", "years", ""});
  check::not_negative(annual_use.value(), {"remaining_value", "annual_use", "s"});
  const double root =
      value_class.c1 - value_class.c2 * std::sqrt(years) - value_class.c3 * std::sqrt(in(annual_use, unit::hour));
  if (root < 0.0) return {0.0, "older or more used than the formula knows"};
  return {root * root};
}

/// Coefficients of the older remaining value.
struct OlderValueClass {
  std::string_view name;
  double first_year;
  double each_year;
  Source source;
};

inline constexpr std::array older_value_classes = {
    OlderValueClass{"tractor", 0.68, 0.920, {"Texas crop-budget report, after ASAE D230", Standing::published}},
    OlderValueClass{"combine", 0.64, 0.885, {"ASAE D230", Standing::from_memory}},
    OlderValueClass{"baler, forage harvester, blower", 0.56, 0.885, {"ASAE D230", Standing::from_memory}},
    OlderValueClass{"other", 0.60, 0.885, {"ASAE D230", Standing::from_memory}},
};

/// The older class of that name; InputError with the nearest names if there is none.
inline const OlderValueClass& older_value_class_named(std::string_view name) {
  return detail::by_name(older_value_classes, name, "older_value_class_named");
}

/// Remaining value by years alone, as a share of the current list price [-].
///
/// S = d1 d2^n
///   value_class  d1, d2
///   years        n, age, above 0 (the first sale costs d1 at once)
/// Kept to follow older calculations. Source: ASAE D230. Example: tractor of 7 years: 37.93 % (a Texas crop-budget
/// report prints 38 %).
inline double older_remaining_value(const OlderValueClass& value_class, double years) {
  check::positive(years, {"older_remaining_value", "years", ""});
  return value_class.first_year * std::pow(value_class.each_year, years);
}

} // namespace v0
} // namespace fieldshaft
