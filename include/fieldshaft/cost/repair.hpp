#pragma once
// Repair and maintenance: what has gone into a machine by the hours that it has run.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/cost/money.hpp>
#include <fieldshaft/power/by_name.hpp>
#include <fieldshaft/units.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {

/// Repair factors of a kind of machine.
struct RepairClass {
  std::string_view name;
  Time life;          ///< estimated
  double total_share; ///< repair over its life, of the list price, as the table prints it
  double factor;      ///< RF1
  double exponent;    ///< RF2
  Source source;
};

namespace detail {
inline constexpr Source repair_table{"ASABE D497, table 3", Standing::from_memory};
constexpr RepairClass repair_row(std::string_view name, double life, double percent, double factor, double exponent) {
  return {name, hours(life), 0.01 * percent, factor, exponent, repair_table};
}
inline constexpr std::array repair_catalogue = {
    repair_row("tractor, two-wheel drive and stationary", 12000, 100, 0.007, 2.0),
    repair_row("tractor, four-wheel drive and crawler", 16000, 80, 0.003, 2.0),
    repair_row("rotary tiller", 1500, 80, 0.36, 2.0),
    repair_row("combine, pulled", 2000, 60, 0.12, 2.3),
    repair_row("combine, self-propelled", 3000, 40, 0.04, 2.1),
    repair_row("mower, cutterbar", 2000, 150, 0.46, 1.7),
    repair_row("mower, rotary", 2000, 175, 0.44, 2.0),
    repair_row("mower-conditioner, cutterbar", 2500, 80, 0.18, 1.6),
    repair_row("mower-conditioner, rotary", 2500, 100, 0.16, 2.0),
    repair_row("windrower, self-propelled", 3000, 55, 0.06, 2.0),
    repair_row("rake, side delivery", 2500, 60, 0.17, 1.4),
    repair_row("baler, rectangular", 2000, 80, 0.23, 1.8),
    repair_row("baler, large rectangular", 3000, 75, 0.10, 1.8),
    repair_row("baler, large round", 1500, 90, 0.43, 1.8),
    repair_row("forage harvester, pulled", 2500, 65, 0.15, 1.6),
    repair_row("forage harvester, self-propelled", 4000, 50, 0.03, 2.0),
    repair_row("sugar beet harvester", 1500, 100, 0.59, 1.3),
    repair_row("potato harvester", 2500, 70, 0.19, 1.4),
    repair_row("fertilizer spreader", 1200, 80, 0.63, 1.3),
    repair_row("boom sprayer", 1500, 70, 0.41, 1.3),
    repair_row("air-carrier sprayer", 2000, 60, 0.20, 1.6),
    repair_row("beet topper and stalk chopper", 1200, 35, 0.28, 1.4),
    repair_row("forage blower", 1500, 45, 0.22, 1.8),
    repair_row("forage wagon", 2000, 50, 0.16, 1.6),
    repair_row("wagon", 3000, 80, 0.19, 1.3),
};
} // namespace detail

/// Every kind of machine, to go through. All factors are from memory; each one reproduces the table's own total over
/// the life within its rounding, which checks the memory against itself.
constexpr const auto& repair_classes() noexcept { return detail::repair_catalogue; }

/// The kind of that name; InputError with the nearest names if there is none.
inline const RepairClass& repair_class_named(std::string_view name) {
  return detail::by_name(repair_classes(), name, "repair_class_named");
}

/// Factors of tractors by an older edition, as a Texas crop-budget report prints them.
inline constexpr RepairClass older_tractor_repair{
    "tractor, older edition", hours(12000.0), 1.2055, 0.029, 1.5, {"Texas crop-budget report", Standing::published}};

/// Repair and maintenance so far, as a share of the current list price [-].
///
/// R = RF1 (h/1000)^RF2
///   repair_class  RF1, RF2
///   use           h, accumulated hours of use [s; hours(6000)], at least 0
/// An average; one machine may cost half or twice. Outside: more hours than the estimated life.
/// Source: ASABE D497, cl. 5 (from memory). Example: tractor after 6000 h: 25.2 %.
inline Validated<double> accumulated_repair(const RepairClass& repair_class, Time use) {
  check::not_negative(use.value(), {"accumulated_repair", "use", "s"});
  const double share = repair_class.factor * std::pow(in(use, unit::hour) / 1000.0, repair_class.exponent);
  return {share, use > repair_class.life ? "more hours than the estimated life" : nullptr};
}

/// Repair and maintenance between two counts of hours.
///
///   list_price    of the machine today, at least 0
///   repair_class  of the table
///   from, to      accumulated hours at the start and at the end [s], in order
/// Outside: `to` beyond the estimated life. Source: difference of accumulated_repair.
/// Example: 150 000, tractor, 5600 to 6000 h: 4872.
inline Validated<Money> repair_cost(const Money& list_price, const RepairClass& repair_class, Time from, Time to) {
  detail::check_price(list_price, {"repair_cost", "list_price", ""});
  check::not_negative(from.value(), {"repair_cost", "from", "s"});
  check::at_least(to.value(), from.value(), {"repair_cost", "to", "s"});
  const Validated<double> end = accumulated_repair(repair_class, to);
  return {(end.value - accumulated_repair(repair_class, from).value) * list_price, end.outside};
}

} // namespace v0
} // namespace fieldshaft
