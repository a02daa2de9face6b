#pragma once
// Torque from power and speed, and through a gear train.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
template <class P, class W> constexpr auto shaft_torque(P power, W speed) noexcept { return power / speed; }
template <class T, class W> constexpr auto shaft_power(T torque, W speed) noexcept { return torque * speed; }
template <class W, class R> constexpr auto geared_speed(W speed, R ratio) noexcept { return speed * ratio; }
template <class T, class R> constexpr auto geared_torque(T torque, R ratio, R efficiency) noexcept {
  return torque * efficiency / ratio;
}
} // namespace text

/// Torque of a turning shaft that carries a power [N·m].
///
/// T = P / w
///   power  P  carried power [W], at least 0
///   speed  w  shaft speed [rad/s], above 0
/// Exact for steady running; a fluctuating load has a higher peak (see the implement's peak factor).
/// Source: definition of power; T[N·m] = 9549.2966 P[kW] / n[r/min].
/// Example: 50 kW at 540 r/min give 884.19 N·m, at 1000 r/min 477.46 N·m.
constexpr Torque shaft_torque(Power power, AngularSpeed speed) {
  check::not_negative(power.value(), {"shaft_torque", "power", "W"});
  check::positive(speed.value(), {"shaft_torque", "speed", "rad/s"});
  return text::shaft_torque(power, speed);
}

/// Power that a turning shaft carries [W].
///
/// P = T w
///   torque  T  [N·m], at least 0
///   speed   w  [rad/s], at least 0
/// Exact for steady running. Source: definition of power.
/// Example: 900 N·m at 540 r/min carry 50.9 kW.
constexpr Power shaft_power(Torque torque, AngularSpeed speed) {
  check::not_negative(torque.value(), {"shaft_power", "torque", "N·m"});
  check::not_negative(speed.value(), {"shaft_power", "speed", "rad/s"});
  return text::shaft_power(torque, speed);
}

/// Output speed of a gear train [rad/s].
///
/// w2 = w1 g
///   speed  w1  input speed [rad/s], at least 0
///   ratio  g   output speed over input speed, above 0 (a step-up is above one)
/// Exact. Source: definition of the ratio. Example: 540 r/min with ratio 1.47 give 793.8 r/min.
constexpr AngularSpeed geared_speed(AngularSpeed speed, double ratio) {
  check::not_negative(speed.value(), {"geared_speed", "speed", "rad/s"});
  check::positive(ratio, {"geared_speed", "ratio", ""});
  return text::geared_speed(speed, ratio);
}

/// Output torque of a gear train [N·m].
///
/// T2 = T1 eta / g
///   torque      T1   input torque [N·m], at least 0
///   ratio       g    output speed over input speed, above 0
///   efficiency  eta  above 0, at most 1
/// Steady running, power flowing from input to output. Source: power balance.
/// Example: 884 N·m through a step-up of 1.47 without loss give 601.4 N·m.
constexpr Torque geared_torque(Torque torque, double ratio, double efficiency = 1.0) {
  check::not_negative(torque.value(), {"geared_torque", "torque", "N·m"});
  check::positive(ratio, {"geared_torque", "ratio", ""});
  check::positive(efficiency, {"geared_torque", "efficiency", ""});
  check::within(efficiency, 0.0, 1.0, {"geared_torque", "efficiency", ""});
  return text::geared_torque(torque, ratio, efficiency);
}

/// The ratio that turns one speed into another (output over input).
///
/// g = w2 / w1; both speeds above 0. Source: definition. Example: 540 r/min in, 1040 r/min out: 1.926.
constexpr double gear_ratio(AngularSpeed input, AngularSpeed output) {
  check::positive(input.value(), {"gear_ratio", "input", "rad/s"});
  check::positive(output.value(), {"gear_ratio", "output", "rad/s"});
  return output / input;
}

} // namespace v0
} // namespace fieldshaft
