#pragma once
// A slipping clutch: how long it slips, the heat it makes, and how warm its plates become.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/source.hpp>
#include <fieldshaft/units.hpp>

#include <limits>

namespace fieldshaft {
inline namespace v0 {

/// A clutch that slips until both of its sides turn alike. Where they never do, time and heat are infinite.
struct ClutchEngagement {
  Time time;          ///< of slip
  Energy heat;        ///< made in the clutch
  AngularSpeed speed; ///< of both sides at the end; that of the driving side at the start if they never meet
  bool locks;         ///< false: the clutch slips until something stops it or it burns
};

/// Specific heat of clutch steel.
inline constexpr Sourced<HeatCapacity> clutch_steel_heat{joules_per_kilogram_kelvin(460),
                                                         {"usual figure for steel", Standing::from_memory}};

namespace text {
template <class I, class W, class T> constexpr auto slip_time(I inertia, W speed, T clutch_torque, T load) noexcept {
  return inertia * speed / (clutch_torque - load);
}
/// Heat of a slip whose speed falls evenly to nothing.
template <class T, class W, class S> constexpr auto slip_heat(T clutch_torque, W slip_speed, S time) noexcept {
  return 0.5 * clutch_torque * slip_speed * time;
}
/// By how much the slip speed falls a second.
template <class I, class T> constexpr auto slip_deceleration(I driving, I driven, T clutch, T drive, T load) noexcept {
  return (clutch - drive) / driving + (clutch - load) / driven;
}
template <class E, class M, class C> constexpr auto temperature_rise(E heat, M mass, C specific_heat) noexcept {
  return heat / (mass * specific_heat);
}
} // namespace text

namespace detail {
inline ClutchEngagement endless_slip(AngularSpeed speed) noexcept {
  const double infinity = std::numeric_limits<double>::infinity();
  return {seconds(infinity), joules(infinity), speed, false};
}
} // namespace detail

/// A machine at rest started through a clutch from a drive that holds its speed.
///
/// t = I w / (T_c - T_L), heat = T_c w t / 2; without load torque the heat equals the energy of the started machine
///   inertia        I    of all that is started, at the clutch [kg·m²], at least 0
///   speed          w    at which the drive turns and goes on turning [rad/s], at least 0
///   clutch_torque  T_c  at which the clutch slips [N·m], above 0
///   load_torque    T_L  of the machine while it starts [N·m], at least 0
/// Constant torques. A clutch that does not exceed the load slips without end: time and heat are infinite.
/// A drive that loses speed makes less heat (see free_clutch_engagement). Source: Khurmi & Gupta; Shigley, ch. 16.
/// Example: 4 kg·m², 540 r/min, 600 and 250 N·m: 0.6463 s, 10 964 J.
inline ClutchEngagement clutch_engagement(MomentOfInertia inertia, AngularSpeed speed, Torque clutch_torque,
                                          Torque load_torque) {
  constexpr const char* function = "clutch_engagement";
  check::not_negative(inertia.value(), {function, "inertia", "kg·m²"});
  check::not_negative(speed.value(), {function, "speed", "rad/s"});
  check::positive(clutch_torque.value(), {function, "clutch_torque", "N·m"});
  check::not_negative(load_torque.value(), {function, "load_torque", "N·m"});
  if (clutch_torque <= load_torque && speed.value() > 0.0) return detail::endless_slip(speed);
  if (speed.value() == 0.0) return {seconds(0), joules(0), speed, true};
  const Time time = text::slip_time(inertia, speed, clutch_torque, load_torque);
  return {time, text::slip_heat(clutch_torque, speed, time), speed, true};
}

/// Two turning masses joined by a clutch, both free to change speed.
///
/// t = dw / ((T_c - T_1)/I_1 + (T_c - T_2)/I_2), heat = T_c dw t / 2, w = w_2 + (T_c - T_2) t / I_2;
/// without outer torques t = I_1 I_2 dw / (T_c (I_1 + I_2)), heat = I_1 I_2 dw^2 / (2 (I_1 + I_2))
///   driving_inertia  I_1  of the faster side [kg·m²], above 0
///   driving_speed    w_1  [rad/s], at least the driven speed
///   driven_inertia   I_2  [kg·m²], above 0
///   driven_speed     w_2  [rad/s], at least 0
///   clutch_torque    T_c  [N·m], above 0
///   drive_torque     T_1  of the drive on the faster side [N·m]; below 0 it holds back
///   load_torque      T_2  that the slower side resists with [N·m], at least 0
/// Constant torques, both sides turning the same way until they meet. If the slip does not fall, it is endless.
/// Source: Khurmi & Gupta, ex. 10.27 and 3.12.
/// Example: 32 and 42.12 kg·m², 1250 r/min and rest, 37.905 N·m: 62.8 s, 155.8 kJ, 56.5 rad/s; with 60 N·m holding
/// back the faster side 33.06 s, driving it 625 s.
inline ClutchEngagement free_clutch_engagement(MomentOfInertia driving_inertia, AngularSpeed driving_speed,
                                               MomentOfInertia driven_inertia, AngularSpeed driven_speed,
                                               Torque clutch_torque, Torque drive_torque = newton_metres(0),
                                               Torque load_torque = newton_metres(0)) {
  constexpr const char* function = "free_clutch_engagement";
  check::positive(driving_inertia.value(), {function, "driving_inertia", "kg·m²"});
  check::positive(driven_inertia.value(), {function, "driven_inertia", "kg·m²"});
  check::not_negative(driven_speed.value(), {function, "driven_speed", "rad/s"});
  check::at_least(driving_speed.value(), driven_speed.value(), {function, "driving_speed", "rad/s"});
  check::positive(clutch_torque.value(), {function, "clutch_torque", "N·m"});
  check::finite(drive_torque.value(), {function, "drive_torque", "N·m"});
  check::not_negative(load_torque.value(), {function, "load_torque", "N·m"});
  const AngularSpeed slip = driving_speed - driven_speed;
  if (slip.value() == 0.0) return {seconds(0), joules(0), driving_speed, true};
  const auto fall = text::slip_deceleration(driving_inertia, driven_inertia, clutch_torque, drive_torque, load_torque);
  if (!(fall.value() > 0.0)) return detail::endless_slip(driving_speed);
  const Time time = seconds(slip.value() / fall.value());
  const AngularSpeed gain =
      radians_per_second((clutch_torque - load_torque).value() * time.value() / driven_inertia.value());
  return {time, text::slip_heat(clutch_torque, slip, time), driven_speed + gain, true};
}

/// Power that a slipping clutch turns into heat [W].
///
/// P = T_c w
///   clutch_torque  T_c  [N·m], at least 0
///   slip_speed     w    of its two sides against each other [rad/s], at least 0
/// Exact. Example: 600 N·m at 540 r/min against a blocked machine: 33.9 kW.
constexpr Power slip_power(Torque clutch_torque, AngularSpeed slip_speed) {
  check::not_negative(clutch_torque.value(), {"slip_power", "clutch_torque", "N·m"});
  check::not_negative(slip_speed.value(), {"slip_power", "slip_speed", "rad/s"});
  return clutch_torque * slip_speed;
}

/// Rise of the plates' mean temperature [K].
///
/// dT = Q / (m c)
///   heat           Q  of one engagement, or of several in quick succession [J], at least 0
///   mass           m  of the plates that take it up [kg], above 0
///   specific_heat  c  [J/(kg·K)], above 0; that of steel by default
/// No cooling, evenly warm: the faces are hotter for a moment. Source: heat balance.
/// Example: 10 964 J into 5 kg of steel: 4.767 K.
constexpr TemperatureDifference clutch_temperature_rise(Energy heat, Mass mass,
                                                        HeatCapacity specific_heat = clutch_steel_heat.value) {
  constexpr const char* function = "clutch_temperature_rise";
  check::not_negative(heat.value(), {function, "heat", "J"});
  check::positive(mass.value(), {function, "mass", "kg"});
  check::positive(specific_heat.value(), {function, "specific_heat", "J/(kg·K)"});
  return text::temperature_rise(heat, mass, specific_heat);
}

/// How long a clutch may slip against a blocked machine before its plates are warmer by a stated amount [s].
///
/// t = m c dT / (T_c w); infinite if nothing slips
///   clutch_torque, slip_speed  as for slip_power
///   mass, specific_heat        as for clutch_temperature_rise
///   rise  dT  that the lining bears above its temperature before [K], above 0
/// No cooling, evenly warm: an upper bound, not a permission. Source: heat balance.
/// Example: 600 N·m, 540 r/min, 5 kg, 150 K: 10.2 s.
inline Time slip_time_for_rise(Torque clutch_torque, AngularSpeed slip_speed, Mass mass, TemperatureDifference rise,
                               HeatCapacity specific_heat = clutch_steel_heat.value) {
  constexpr const char* function = "slip_time_for_rise";
  check::positive(mass.value(), {function, "mass", "kg"});
  check::positive(rise.value(), {function, "rise", "K"});
  check::positive(specific_heat.value(), {function, "specific_heat", "J/(kg·K)"});
  const Power power = slip_power(clutch_torque, slip_speed);
  if (power.value() == 0.0) return seconds(std::numeric_limits<double>::infinity());
  return mass * specific_heat * rise / power;
}

} // namespace v0
} // namespace fieldshaft
