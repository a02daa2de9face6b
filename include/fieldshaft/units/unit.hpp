#pragma once
// Named units: one constant each, with its symbol and exact factor to SI, and the constructors made from them.
//
// Factors are exact by definition (NIST SP 811, appendix B): inch 25.4 mm, pound 0.45359237 kg, standard gravity
// 9.80665 m/s2, US gallon 231 cubic inches. The mechanical horsepower is 550 ft lbf/s, the metric one 75 kgf m/s.

#include <fieldshaft/units/quantity.hpp>
#include <fieldshaft/units/radian.hpp>

namespace fieldshaft {
inline namespace v0 {

/// A unit of the quantity Q: its symbol and how many SI units it holds.
template <class Q> struct Unit {
  const char* symbol;
  double factor;
};

/// The number of `unit`s in a quantity: in(newton_metres(50), unit::kilonewton_metre) is 0.05.
template <class Q> constexpr double in(Q quantity, Unit<Q> unit) noexcept { return quantity.value() / unit.factor; }

/// A quantity from a number and its unit.
template <class Q> constexpr Q of(double number, Unit<Q> unit) noexcept { return Q::from_value(number * unit.factor); }

namespace unit {
inline constexpr double inch_m = 0.0254;
inline constexpr double foot_m = 0.3048;
inline constexpr double pound_kg = 0.45359237;
inline constexpr double gravity_m_s2 = 9.80665;
inline constexpr double pound_force_n = pound_kg * gravity_m_s2;
inline constexpr double horsepower_w = 550.0 * foot_m * pound_force_n;
inline constexpr double short_ton_kg = 2000.0 * pound_kg;
inline constexpr double us_gallon_m3 = 231.0 * inch_m * inch_m * inch_m;
inline constexpr double hour_s = 3600.0;

inline constexpr Unit<Angle> radian{"rad", 1.0};
inline constexpr Unit<Angle> degree{"°", pi / 180.0};
inline constexpr Unit<AngularSpeed> radian_per_second{"rad/s", 1.0};
inline constexpr Unit<AngularSpeed> rpm{"r/min", 2.0 * pi / 60.0};
inline constexpr Unit<AngularAcceleration> radian_per_second_squared{"rad/s²", 1.0};
inline constexpr Unit<TwistRate> radian_per_metre{"rad/m", 1.0};
inline constexpr Unit<TwistRate> degree_per_metre{"°/m", pi / 180.0};
inline constexpr Unit<Length> metre{"m", 1.0};
inline constexpr Unit<Length> millimetre{"mm", 1e-3};
inline constexpr Unit<Length> centimetre{"cm", 1e-2};
inline constexpr Unit<Length> inch{"in", inch_m};
inline constexpr Unit<Length> foot{"ft", foot_m};
inline constexpr Unit<Area> square_metre{"m²", 1.0};
inline constexpr Unit<Area> square_millimetre{"mm²", 1e-6};
inline constexpr Unit<Area> square_centimetre{"cm²", 1e-4};
inline constexpr Unit<Area> square_inch{"in²", inch_m* inch_m};
inline constexpr Unit<Speed> metre_per_second{"m/s", 1.0};
inline constexpr Unit<Speed> kilometre_per_hour{"km/h", 1.0 / 3.6};
inline constexpr Unit<Speed> mile_per_hour{"mph", 5280.0 * foot_m / hour_s};
inline constexpr Unit<Speed> foot_per_minute{"ft/min", foot_m / 60.0};
inline constexpr Unit<Speed> foot_per_second{"ft/s", foot_m};
inline constexpr Unit<Acceleration> metre_per_second_squared{"m/s²", 1.0};
inline constexpr Unit<Time> second{"s", 1.0};
inline constexpr Unit<Time> minute{"min", 60.0};
inline constexpr Unit<Time> hour{"h", hour_s};
inline constexpr Unit<Frequency> hertz{"Hz", 1.0};
inline constexpr Unit<Mass> kilogram{"kg", 1.0};
inline constexpr Unit<Mass> gram{"g", 1e-3};
inline constexpr Unit<Mass> tonne{"t", 1000.0};
inline constexpr Unit<Mass> pound{"lb", pound_kg};
inline constexpr Unit<Density> kilogram_per_cubic_metre{"kg/m³", 1.0};
inline constexpr Unit<Density> pound_per_cubic_inch{"lb/in³", pound_kg / (inch_m * inch_m * inch_m)};
inline constexpr Unit<MomentOfInertia> kilogram_square_metre{"kg·m²", 1.0};
inline constexpr Unit<MomentOfInertia> pound_square_foot{"lb·ft²", pound_kg* foot_m* foot_m};
inline constexpr Unit<Force> newton{"N", 1.0};
inline constexpr Unit<Force> kilonewton{"kN", 1000.0};
inline constexpr Unit<Force> pound_force{"lbf", pound_force_n};
inline constexpr Unit<Torque> newton_metre{"N·m", 1.0};
inline constexpr Unit<Torque> kilonewton_metre{"kN·m", 1000.0};
inline constexpr Unit<Torque> pound_foot{"lbf·ft", pound_force_n* foot_m};
inline constexpr Unit<Torque> pound_inch{"lbf·in", pound_force_n* inch_m};
inline constexpr Unit<TorsionalStiffness> newton_metre_per_radian{"N·m/rad", 1.0};
inline constexpr Unit<Energy> joule{"J", 1.0};
inline constexpr Unit<Energy> kilojoule{"kJ", 1000.0};
inline constexpr Unit<Energy> foot_pound{"ft·lbf", foot_m* pound_force_n};
inline constexpr Unit<Power> watt{"W", 1.0};
inline constexpr Unit<Power> kilowatt{"kW", 1000.0};
inline constexpr Unit<Power> horsepower{"hp", horsepower_w};
inline constexpr Unit<Power> metric_horsepower{"metric hp", 75.0 * gravity_m_s2};
inline constexpr Unit<Stress> pascal{"Pa", 1.0};
inline constexpr Unit<Stress> megapascal{"MPa", 1e6};
inline constexpr Unit<Stress> gigapascal{"GPa", 1e9};
inline constexpr Unit<Stress> psi{"psi", pound_force_n / (inch_m * inch_m)};
inline constexpr Unit<Stress> ksi{"ksi", 1000.0 * pound_force_n / (inch_m * inch_m)};
inline constexpr Unit<VolumeRate> cubic_metre_per_second{"m³/s", 1.0};
inline constexpr Unit<VolumeRate> litre_per_hour{"L/h", 1e-3 / hour_s};
inline constexpr Unit<VolumeRate> gallon_per_hour{"gal/h", us_gallon_m3 / hour_s};
inline constexpr Unit<MassRate> kilogram_per_second{"kg/s", 1.0};
inline constexpr Unit<MassRate> tonne_per_hour{"t/h", 1000.0 / hour_s};
inline constexpr Unit<MassRate> short_ton_per_hour{"ton/h", short_ton_kg / hour_s};
inline constexpr Unit<PowerPerWidth> kilowatt_per_metre{"kW/m", 1000.0};
inline constexpr Unit<PowerPerWidth> horsepower_per_foot{"hp/ft", horsepower_w / foot_m};
inline constexpr Unit<EnergyPerMass> joule_per_kilogram{"J/kg", 1.0};
inline constexpr Unit<EnergyPerMass> kilowatt_hour_per_tonne{"kW·h/t", 3600.0};
inline constexpr Unit<VolumePerEnergy> cubic_metre_per_joule{"m³/J", 1.0};
inline constexpr Unit<VolumePerEnergy> litre_per_kilowatt_hour{"L/(kW·h)", 1e-3 / (1000.0 * hour_s)};
inline constexpr Unit<VolumePerEnergy> gallon_per_horsepower_hour{"gal/(hp·h)", us_gallon_m3 / (horsepower_w * hour_s)};
inline constexpr Unit<ForcePerLength> kilonewton_per_metre{"kN/m", 1000.0};
inline constexpr Unit<ForcePerLength> newton_per_millimetre{"N/mm", 1000.0};
inline constexpr Unit<ForcePerLength> pound_force_per_inch{"lbf/in", pound_force_n / inch_m};
inline constexpr Unit<TemperatureDifference> kelvin{"K", 1.0};
inline constexpr Unit<HeatCapacity> joule_per_kilogram_kelvin{"J/(kg·K)", 1.0};
inline constexpr Unit<SecondMomentOfArea> metre_to_the_fourth{"m⁴", 1.0};
inline constexpr Unit<SecondMomentOfArea> millimetre_to_the_fourth{"mm⁴", 1e-12};
inline constexpr Unit<SecondMomentOfArea> centimetre_to_the_fourth{"cm⁴", 1e-8};
inline constexpr Unit<SecondMomentOfArea> inch_to_the_fourth{"in⁴", inch_m* inch_m* inch_m* inch_m};
inline constexpr Unit<TorsionalDamping> newton_metre_second_per_radian{"N·m·s/rad", 1.0};
inline constexpr Unit<MassPerLength> kilogram_per_metre{"kg/m", 1.0};
inline constexpr Unit<MassPerLength> pound_per_foot{"lb/ft", pound_kg / foot_m};
inline constexpr Unit<BendingStiffness> newton_square_metre{"N·m²", 1.0};
inline constexpr Unit<DiametralPitch> per_metre{"1/m", 1.0};
inline constexpr Unit<DiametralPitch> per_inch{"1/in", 1.0 / inch_m};
} // namespace unit

// Constructors: a number becomes a quantity only by naming its unit. ----------------------------------------
constexpr Angle radians(double n) noexcept { return of(n, unit::radian); }
constexpr Angle degrees(double n) noexcept { return of(n, unit::degree); }
constexpr AngularSpeed radians_per_second(double n) noexcept { return of(n, unit::radian_per_second); }
constexpr AngularSpeed rpm(double n) noexcept { return of(n, unit::rpm); }
constexpr AngularAcceleration radians_per_second_squared(double n) noexcept {
  return of(n, unit::radian_per_second_squared);
}
constexpr TwistRate radians_per_metre(double n) noexcept { return of(n, unit::radian_per_metre); }
constexpr TwistRate degrees_per_metre(double n) noexcept { return of(n, unit::degree_per_metre); }
constexpr Length metres(double n) noexcept { return of(n, unit::metre); }
constexpr Length millimetres(double n) noexcept { return of(n, unit::millimetre); }
constexpr Length inches(double n) noexcept { return of(n, unit::inch); }
constexpr Length feet(double n) noexcept { return of(n, unit::foot); }
constexpr Area square_metres(double n) noexcept { return of(n, unit::square_metre); }
constexpr Area square_millimetres(double n) noexcept { return of(n, unit::square_millimetre); }
constexpr Speed metres_per_second(double n) noexcept { return of(n, unit::metre_per_second); }
constexpr Speed kilometres_per_hour(double n) noexcept { return of(n, unit::kilometre_per_hour); }
constexpr Speed miles_per_hour(double n) noexcept { return of(n, unit::mile_per_hour); }
constexpr Speed feet_per_minute(double n) noexcept { return of(n, unit::foot_per_minute); }
constexpr Acceleration metres_per_second_squared(double n) noexcept { return of(n, unit::metre_per_second_squared); }
constexpr Time seconds(double n) noexcept { return of(n, unit::second); }
constexpr Time minutes(double n) noexcept { return of(n, unit::minute); }
constexpr Time hours(double n) noexcept { return of(n, unit::hour); }
constexpr Frequency hertz(double n) noexcept { return of(n, unit::hertz); }
constexpr Mass kilograms(double n) noexcept { return of(n, unit::kilogram); }
constexpr Mass pounds(double n) noexcept { return of(n, unit::pound); }
constexpr Density kilograms_per_cubic_metre(double n) noexcept { return of(n, unit::kilogram_per_cubic_metre); }
constexpr MomentOfInertia kilogram_square_metres(double n) noexcept { return of(n, unit::kilogram_square_metre); }
constexpr Force newtons(double n) noexcept { return of(n, unit::newton); }
constexpr Force kilonewtons(double n) noexcept { return of(n, unit::kilonewton); }
constexpr Force pounds_force(double n) noexcept { return of(n, unit::pound_force); }
constexpr Torque newton_metres(double n) noexcept { return of(n, unit::newton_metre); }
constexpr Torque pound_feet(double n) noexcept { return of(n, unit::pound_foot); }
constexpr Torque pound_inches(double n) noexcept { return of(n, unit::pound_inch); }
constexpr TorsionalStiffness newton_metres_per_radian(double n) noexcept {
  return of(n, unit::newton_metre_per_radian);
}
constexpr TorsionalDamping newton_metre_seconds_per_radian(double n) noexcept {
  return of(n, unit::newton_metre_second_per_radian);
}
constexpr MassPerLength kilograms_per_metre(double n) noexcept { return of(n, unit::kilogram_per_metre); }
constexpr BendingStiffness newton_square_metres(double n) noexcept { return of(n, unit::newton_square_metre); }
constexpr Energy joules(double n) noexcept { return of(n, unit::joule); }
constexpr Power watts(double n) noexcept { return of(n, unit::watt); }
constexpr Power kilowatts(double n) noexcept { return of(n, unit::kilowatt); }
/// Mechanical horsepower, 550 ft lbf/s = 745.69987158227022 W.
constexpr Power horsepower(double n) noexcept { return of(n, unit::horsepower); }
/// Metric horsepower, 75 kgf m/s = 735.49875 W.
constexpr Power metric_horsepower(double n) noexcept { return of(n, unit::metric_horsepower); }
constexpr Stress pascals(double n) noexcept { return of(n, unit::pascal); }
constexpr Stress megapascals(double n) noexcept { return of(n, unit::megapascal); }
constexpr Stress gigapascals(double n) noexcept { return of(n, unit::gigapascal); }
constexpr Stress psi(double n) noexcept { return of(n, unit::psi); }
constexpr Stress ksi(double n) noexcept { return of(n, unit::ksi); }
constexpr VolumeRate litres_per_hour(double n) noexcept { return of(n, unit::litre_per_hour); }
constexpr MassRate tonnes_per_hour(double n) noexcept { return of(n, unit::tonne_per_hour); }
constexpr PowerPerWidth kilowatts_per_metre(double n) noexcept { return of(n, unit::kilowatt_per_metre); }
constexpr EnergyPerMass kilowatt_hours_per_tonne(double n) noexcept { return of(n, unit::kilowatt_hour_per_tonne); }
constexpr VolumePerEnergy litres_per_kilowatt_hour(double n) noexcept { return of(n, unit::litre_per_kilowatt_hour); }
constexpr ForcePerLength newtons_per_millimetre(double n) noexcept { return of(n, unit::newton_per_millimetre); }
constexpr TemperatureDifference kelvins(double n) noexcept { return of(n, unit::kelvin); }
constexpr HeatCapacity joules_per_kilogram_kelvin(double n) noexcept { return of(n, unit::joule_per_kilogram_kelvin); }
/// Teeth per inch of pitch diameter: a 16/32 spline has per_inch(16).
constexpr DiametralPitch per_inch(double n) noexcept { return of(n, unit::per_inch); }

} // namespace v0
} // namespace fieldshaft
