#pragma once
// Tables of the factors of a spline's service. Between entries they are read on logarithmic scales, which is the safe
// side of reading them on plain ones.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/spline/factors.hpp>
#include <fieldshaft/units.hpp>

#include <cstddef>

namespace fieldshaft {
inline namespace v0 {

/// How evenly the drive turns.
enum class DriveShock {
  uniform, ///< electric motor, turbine
  light,   ///< hydraulic motor
  medium,  ///< piston engine: every tractor
};

/// How evenly the load takes it.
enum class LoadShock {
  uniform,      ///< generator, fan
  light,        ///< oscillating pump
  intermittent, ///< actuating pump
  heavy,        ///< punch, shear
};

/// Whether the torque of a spline changes its sense.
enum class TorqueCycle { unidirectional, reversed };

inline constexpr Source application_source{"Dudley's table of application factors, as public pages reproduce it",
                                           Standing::quoted};
inline constexpr Source distribution_source{"Dudley's table of load distribution factors, as public pages reproduce it",
                                            Standing::quoted};
inline constexpr Source fatigue_life_source{"Machinery's Handbook, 27th ed., involute splines, Table 9",
                                            Standing::published};
inline constexpr Source wear_life_source{"Machinery's Handbook, 27th ed., involute splines, Table 10",
                                         Standing::published};

/// Application factor Ka.
///
///   drive  of the tractor: medium, a piston engine
///   load   of the implement
/// 1 to 2.8. Source: Dudley's table (quoted on public pages). Example: medium drive, heavy shocks of load: 2.8.
constexpr Sourced<double> application_factor(DriveShock drive, LoadShock load) {
  constexpr double table[3][4] = {{1.0, 1.2, 1.5, 1.8}, {1.2, 1.3, 1.8, 2.1}, {2.0, 2.2, 2.4, 2.8}};
  check::within(static_cast<int>(drive), 0.0, 2.0, {"application_factor", "drive", ""});
  check::within(static_cast<int>(load), 0.0, 3.0, {"application_factor", "load", ""});
  return {table[static_cast<int>(drive)][static_cast<int>(load)], application_source};
}

namespace detail {

/// Where a value lies between the entries of a table: the lower entry and the way to the next on a logarithmic scale.
struct TablePlace {
  int entry;
  double way;
};

/// `low` is the first entry, each next one `step` times the one before, `count` of them. Held at both ends.
inline TablePlace table_place(double value, double low, double step, int count) noexcept {
  const double at = value > low ? std::log(value / low) / std::log(step) : 0.0;
  const int entry = at >= count - 1 ? count - 2 : static_cast<int>(at);
  return {entry, at >= count - 1 ? 1.0 : at - entry};
}
inline double between(double a, double b, double way) noexcept { return a + way * (b - a); }

/// A life factor between entries a decade apart, straight on scales that are both logarithmic.
template <std::size_t N> double life_factor(const double (&table)[N], double cycles, double first) noexcept {
  const TablePlace place = table_place(cycles, first, 10.0, static_cast<int>(N));
  return std::exp(between(std::log(table[place.entry]), std::log(table[place.entry + 1]), place.way));
}

} // namespace detail

/// Load distribution factor Km: what a hub that is not in line does to the ends of its teeth.
///
/// Table over misalignment 0.001, 0.002, 0.004, 0.008 (length over length) and face width 0.5, 1, 2, 4 in; between
/// entries in proportion to the logarithm of both
///   misalignment  of hub to shaft [-], at least 0 (0.001 is 0.06°); below 0.001 the factor is that of 0.001
///   face_width    over which the teeth touch [m], above 0; below 0.5 in as at 0.5 in
/// Outside: more than 0.008 or 4 in; the factor of the end is given and said to be so.
/// Source: Dudley's table (quoted on public pages). Example: 0.004 over 1 in: 1.5.
inline Validated<double> load_distribution_factor(double misalignment, Length face_width) {
  constexpr const char* function = "load_distribution_factor";
  constexpr double table[4][4] = {
      {1.0, 1.0, 1.0, 1.5}, {1.0, 1.0, 1.5, 2.0}, {1.0, 1.5, 2.0, 2.5}, {1.5, 2.0, 2.5, 3.0}};
  check::not_negative(misalignment, {function, "misalignment", ""});
  check::positive(face_width.value(), {function, "face_width", "m"});
  const double inch = in(face_width, unit::inch);
  const auto row = detail::table_place(misalignment, 0.001, 2.0, 4);
  const auto column = detail::table_place(inch, 0.5, 2.0, 4);
  const auto along = [&](int entry) {
    return detail::between(table[entry][column.entry], table[entry][column.entry + 1], column.way);
  };
  const double factor = detail::between(along(row.entry), along(row.entry + 1), row.way);
  if (misalignment > 0.008 * (1.0 + 1e-12)) return {factor, "the misalignment is above 0.008, where the table ends"};
  if (inch > 4.0 * (1.0 + 1e-12)) return {factor, "the face width is above 4 in, where the table ends"};
  return {factor};
}

/// Fatigue-life factor Kf, by starts and stops of the torque.
///
/// Table at 10^3 to 10^7 cycles: 1.8, 1.0, 0.5, 0.4, 0.3 from one side; 1.8, 1.0, 0.4, 0.3, 0.2 reversed; between
/// entries straight on logarithmic scales
///   cycles  of torque [-], above 0; one is a start and a stop, never a turn of the shaft; below 10^3 as at 10^3
///   cycle   from one side, or reversed
/// Outside: more than 10^7; the last factor is given and said to be so. Source: Machinery's Handbook, Table 9.
/// Example: 10^5 from one side: 0.5.
inline Validated<double> fatigue_life_factor(double cycles, TorqueCycle cycle = TorqueCycle::unidirectional) {
  check::positive(cycles, {"fatigue_life_factor", "cycles", ""});
  constexpr double one_sided[] = {1.8, 1.0, 0.5, 0.4, 0.3};
  constexpr double reversed[] = {1.8, 1.0, 0.4, 0.3, 0.2};
  const double factor = detail::life_factor(cycle == TorqueCycle::reversed ? reversed : one_sided, cycles, 1e3);
  return {factor, cycles <= 1e7 ? nullptr : "more than 10^7 torque cycles, where the table ends"};
}

/// Wear-life factor Kw, by turns of a spline that rocks or slides.
///
/// Table at 10^4 to 10^10 turns: 4.0, 2.8, 2.0, 1.4, 1.0, 0.7, 0.5; between entries straight on logarithmic scales
///   turns  of the shaft [-], above 0; 540 r/min make 10^8 in 3086 hours; below 10^4 as at 10^4
/// Outside: more than 10^10; the last factor is given and said to be so. Source: Machinery's Handbook, Table 10.
/// Example: 10^6 turns: 2.0.
inline Validated<double> wear_life_factor(double turns) {
  check::positive(turns, {"wear_life_factor", "turns", ""});
  constexpr double table[] = {4.0, 2.8, 2.0, 1.4, 1.0, 0.7, 0.5};
  return {detail::life_factor(table, turns, 1e4),
          turns <= 1e10 ? nullptr : "more than 10^10 turns, where the table ends"};
}

} // namespace v0
} // namespace fieldshaft
