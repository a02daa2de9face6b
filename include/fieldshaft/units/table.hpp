#pragma once
// The units that text may use: every spelling with its kind and factor, and the units that reports print.

#include <fieldshaft/units/kind.hpp>
#include <fieldshaft/units/unit.hpp>

#include <array>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {

/// A unit as text knows it: how it is written, what it measures, how many SI units it holds.
struct UnitSpelling {
  std::string_view spelling;
  Kind kind;
  double factor;
};

namespace detail {
template <class Q> constexpr UnitSpelling spell(std::string_view spelling, Unit<Q> unit) {
  return {spelling, kind_of<Q>, unit.factor};
}

// Compound units are written with '.' between their parts here; text may use '·', '*', '-' or a space.
inline constexpr auto unit_spellings = std::array{
    UnitSpelling{"%", Kind::share, 0.01},
    spell("rad", unit::radian),
    spell("deg", unit::degree),
    spell("°", unit::degree),
    spell("degree", unit::degree),
    spell("degrees", unit::degree),
    spell("r/min", unit::rpm),
    spell("rpm", unit::rpm),
    spell("RPM", unit::rpm),
    spell("rev/min", unit::rpm),
    spell("rad/s", unit::radian_per_second),
    spell("rad/s^2", unit::radian_per_second_squared),
    spell("rad/m", unit::radian_per_metre),
    spell("°/m", unit::degree_per_metre),
    spell("deg/m", unit::degree_per_metre),
    spell("m", unit::metre),
    spell("mm", unit::millimetre),
    spell("cm", unit::centimetre),
    spell("in", unit::inch),
    spell("\"", unit::inch),
    spell("inch", unit::inch),
    spell("inches", unit::inch),
    spell("″", unit::inch), // the prime of print, and the closing quote that a word processor makes of it
    spell("”", unit::inch),
    spell("ft", unit::foot),
    spell("foot", unit::foot),
    spell("feet", unit::foot),
    spell("'", unit::foot),
    spell("′", unit::foot),
    spell("’", unit::foot),
    spell("m^2", unit::square_metre),
    spell("m2", unit::square_metre),
    spell("cm2", unit::square_centimetre),
    spell("mm2", unit::square_millimetre),
    spell("in2", unit::square_inch),
    spell("cm^2", unit::square_centimetre),
    spell("mm^2", unit::square_millimetre),
    spell("in^2", unit::square_inch),
    spell("m/s", unit::metre_per_second),
    spell("km/h", unit::kilometre_per_hour),
    spell("mph", unit::mile_per_hour),
    spell("ft/min", unit::foot_per_minute),
    spell("ft/s", unit::foot_per_second),
    spell("m/s^2", unit::metre_per_second_squared),
    spell("s", unit::second),
    spell("min", unit::minute),
    spell("h", unit::hour),
    spell("Hz", unit::hertz),
    spell("kg", unit::kilogram),
    spell("g", unit::gram),
    spell("t", unit::tonne),
    spell("lb", unit::pound),
    spell("lbs", unit::pound),
    spell("kg/m^3", unit::kilogram_per_cubic_metre),
    spell("lb/in^3", unit::pound_per_cubic_inch),
    spell("kg.m^2", unit::kilogram_square_metre),
    spell("lb.ft^2", unit::pound_square_foot),
    spell("N", unit::newton),
    spell("kN", unit::kilonewton),
    spell("lbf", unit::pound_force),
    spell("N.m", unit::newton_metre),
    spell("Nm", unit::newton_metre),
    spell("kN.m", unit::kilonewton_metre),
    spell("kNm", unit::kilonewton_metre),
    spell("lbf.ft", unit::pound_foot),
    spell("ft.lbf", unit::pound_foot),
    spell("lb.ft", unit::pound_foot),
    spell("ft.lb", unit::pound_foot),
    spell("lbf.in", unit::pound_inch),
    spell("in.lbf", unit::pound_inch),
    spell("lb.in", unit::pound_inch),
    spell("in.lb", unit::pound_inch),
    spell("N.m/rad", unit::newton_metre_per_radian),
    spell("J", unit::joule),
    spell("kJ", unit::kilojoule),
    spell("ft.lbf", unit::foot_pound),
    spell("ft.lb", unit::foot_pound),
    spell("W", unit::watt),
    spell("kW", unit::kilowatt),
    spell("hp", unit::horsepower),
    spell("HP", unit::horsepower),
    spell("mechanical.hp", unit::horsepower),
    spell("metric.hp", unit::metric_horsepower),
    spell("PS", unit::metric_horsepower),
    spell("Pa", unit::pascal),
    spell("MPa", unit::megapascal),
    spell("N/mm^2", unit::megapascal),
    spell("GPa", unit::gigapascal),
    spell("psi", unit::psi),
    spell("ksi", unit::ksi),
    spell("m^3/s", unit::cubic_metre_per_second),
    spell("L/h", unit::litre_per_hour),
    spell("l/h", unit::litre_per_hour),
    spell("gal/h", unit::gallon_per_hour),
    spell("kg/s", unit::kilogram_per_second),
    spell("t/h", unit::tonne_per_hour),
    spell("ton/h", unit::short_ton_per_hour),
    spell("kW/m", unit::kilowatt_per_metre),
    UnitSpelling{"W/m", Kind::power_per_width, 1.0},
    spell("hp/ft", unit::horsepower_per_foot),
    spell("J/kg", unit::joule_per_kilogram),
    spell("kW.h/t", unit::kilowatt_hour_per_tonne),
    spell("kWh/t", unit::kilowatt_hour_per_tonne),
    spell("m^3/J", unit::cubic_metre_per_joule),
    spell("L/(kW.h)", unit::litre_per_kilowatt_hour),
    spell("L/kWh", unit::litre_per_kilowatt_hour),
    spell("gal/(hp.h)", unit::gallon_per_horsepower_hour),
    spell("kN/m", unit::kilonewton_per_metre),
    UnitSpelling{"N/m", Kind::force_per_length, 1.0},
    spell("N/mm", unit::newton_per_millimetre),
    spell("lbf/in", unit::pound_force_per_inch),
    spell("K", unit::kelvin),
    spell("J/(kg.K)", unit::joule_per_kilogram_kelvin),
    spell("N.m.s/rad", unit::newton_metre_second_per_radian),
    spell("kg/m", unit::kilogram_per_metre),
    spell("lb/ft", unit::pound_per_foot),
    spell("N.m^2", unit::newton_square_metre),
    spell("1/m", unit::per_metre),
    spell("1/in", unit::per_inch),
    spell("m^4", unit::metre_to_the_fourth),
    spell("mm^4", unit::millimetre_to_the_fourth),
    spell("cm^4", unit::centimetre_to_the_fourth),
    spell("in^4", unit::inch_to_the_fourth),
};
} // namespace detail

/// The SI unit of a kind in a spelling that the parser reads; empty for a plain number.
constexpr std::string_view si_symbol(Kind kind) noexcept {
  for (const UnitSpelling& unit : detail::unit_spellings) {
    if (unit.kind == kind && unit.factor == 1.0) return unit.spelling;
  }
  return kind == Kind::force_per_length ? "N/m" : kind == Kind::power_per_width ? "W/m" : "";
}

/// Which units a report prints.
enum class UnitStyle { metric, us };

/// A unit that a report prints: symbol, factor to SI, and the decimals that suit the trade.
struct PrintUnit {
  const char* symbol;
  double factor;
  int decimals;
};

namespace detail {
template <class Q> constexpr PrintUnit print_as(Unit<Q> unit, int decimals) {
  return {unit.symbol, unit.factor, decimals};
}
} // namespace detail

/// The unit in which an amount of this kind and size is printed.
constexpr PrintUnit print_unit(Kind kind, UnitStyle style, double si) noexcept {
  using detail::print_as;
  const bool us = style == UnitStyle::us;
  const double size = si < 0.0 ? -si : si;
  switch (kind) {
  case Kind::number: return {"", 1.0, 3};
  case Kind::share: return {"%", 0.01, 1};
  case Kind::angle: return print_as(unit::degree, 1);
  case Kind::angular_speed: return print_as(unit::rpm, 0);
  case Kind::angular_acceleration: return print_as(unit::radian_per_second_squared, 0);
  case Kind::twist_rate: return print_as(unit::degree_per_metre, 2);
  case Kind::length:
    if (us) return size >= 120.0 * unit::inch_m ? print_as(unit::foot, 1) : print_as(unit::inch, 2);
    return size >= 10.0 ? print_as(unit::metre, 1) : print_as(unit::millimetre, 0);
  case Kind::area: return us ? print_as(unit::square_inch, 3) : print_as(unit::square_millimetre, 0);
  case Kind::speed: return us ? print_as(unit::foot_per_minute, 0) : print_as(unit::metre_per_second, 1);
  case Kind::acceleration: return print_as(unit::metre_per_second_squared, 2);
  case Kind::time: return size >= 3600.0 ? print_as(unit::hour, 0) : print_as(unit::second, 1);
  case Kind::frequency: return print_as(unit::hertz, 1);
  case Kind::mass: return us ? print_as(unit::pound, 1) : print_as(unit::kilogram, 1);
  case Kind::density: return us ? print_as(unit::pound_per_cubic_inch, 4) : print_as(unit::kilogram_per_cubic_metre, 0);
  case Kind::moment_of_inertia:
    return us ? print_as(unit::pound_square_foot, 2) : print_as(unit::kilogram_square_metre, 3);
  case Kind::force: return us ? print_as(unit::pound_force, 0) : print_as(unit::newton, 0);
  case Kind::torque: return us ? print_as(unit::pound_foot, 0) : print_as(unit::newton_metre, 0);
  case Kind::torsional_stiffness: return print_as(unit::newton_metre_per_radian, 0);
  case Kind::energy: return us ? print_as(unit::foot_pound, 0) : print_as(unit::kilojoule, 1);
  case Kind::power: return us ? print_as(unit::horsepower, 1) : print_as(unit::kilowatt, 1);
  case Kind::stress: return us ? print_as(unit::psi, 0) : print_as(unit::megapascal, 1);
  case Kind::volume_rate: return us ? print_as(unit::gallon_per_hour, 2) : print_as(unit::litre_per_hour, 1);
  case Kind::mass_rate: return us ? print_as(unit::short_ton_per_hour, 1) : print_as(unit::tonne_per_hour, 1);
  case Kind::power_per_width:
    return us ? print_as(unit::horsepower_per_foot, 1) : print_as(unit::kilowatt_per_metre, 1);
  case Kind::energy_per_mass: return print_as(unit::kilowatt_hour_per_tonne, 2);
  case Kind::volume_per_energy:
    return us ? print_as(unit::gallon_per_horsepower_hour, 4) : print_as(unit::litre_per_kilowatt_hour, 3);
  case Kind::force_per_length: return print_as(unit::kilonewton_per_metre, 1);
  case Kind::temperature_difference: return print_as(unit::kelvin, 0);
  case Kind::heat_capacity: return print_as(unit::joule_per_kilogram_kelvin, 0);
  case Kind::diametral_pitch: return print_as(unit::per_inch, 2);
  case Kind::second_moment_of_area:
    return us ? print_as(unit::inch_to_the_fourth, 4) : print_as(unit::millimetre_to_the_fourth, 0);
  case Kind::torsional_damping: return print_as(unit::newton_metre_second_per_radian, 2);
  case Kind::mass_per_length: return us ? print_as(unit::pound_per_foot, 2) : print_as(unit::kilogram_per_metre, 2);
  case Kind::bending_stiffness: return print_as(unit::newton_square_metre, 0);
  }
  return {"", 1.0, 3};
}

} // namespace v0
} // namespace fieldshaft
