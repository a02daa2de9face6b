#pragma once
// Estimates of a critical speed by hand: masses on a light shaft, Rayleigh, Dunkerley, and the sag of a shaft.

#include <fieldshaft/shaft/section.hpp>

#include <vector>

namespace fieldshaft {
inline namespace v0 {

namespace text {
template <class E, class I, class M, class L>
auto lumped_critical_speed(E youngs_modulus, I second_moment, M mass, L length) noexcept {
  return as_angular_speed(math::sqrt(48.0 * youngs_modulus * second_moment / (mass * (length * length * length))));
}
} // namespace text

/// Critical speed of a light pinned shaft with one mass in the middle [rad/s].
///
/// w = sqrt(48 E I / (m L^3))
///   section         solid or tube, of which I counts and the mass does not
///   length          L  [m], above 0
///   youngs_modulus  E  [Pa], above 0
///   mass            m  [kg], above 0
/// With the shaft's own mass lumped in the middle the result is 30 % low (6.93 against pi^2 = 9.87): a shaft of even
/// mass is the business of critical_speed. Some teaching texts print this reading as the answer. Source: Shigley, ch. 7
/// (influence coefficient). Example: steel tube of 3 in, wall 0.125 in, 48 in, own mass lumped: 5799.9 r/min, where the
/// even shaft has 8262.3.
inline AngularSpeed lumped_critical_speed(const RoundSection& section, Length length, Stress youngs_modulus,
                                          Mass mass) {
  constexpr const char* function = "lumped_critical_speed";
  check::positive(length.value(), {function, "length", "m"});
  check::positive(youngs_modulus.value(), {function, "youngs_modulus", "Pa"});
  check::positive(mass.value(), {function, "mass", "kg"});
  return text::lumped_critical_speed(youngs_modulus, section.second_moment(), mass, length);
}

/// A weight on a shaft and how far the shaft sags under it, all weights being on.
struct SaggingWeight {
  Force weight;
  Length sag;
};

/// Critical speed by Rayleigh's method [rad/s]; never below the true one.
///
/// w = sqrt(g sum(W y) / sum(W y^2)); one weight: sqrt(g/y)
///   weights  at least one; weight and sag above 0
/// An upper bound, close if the sag line resembles the first mode. Source: Shigley, Eq. 7-23 (8th ed.).
/// g is the standard 9.80665 m/s2.
/// Example: one weight that sags 0.078125 mm: 3383.3 r/min.
inline AngularSpeed rayleigh_critical_speed(const std::vector<SaggingWeight>& weights) {
  constexpr const char* function = "rayleigh_critical_speed";
  if (weights.empty()) fail_input(function, "weights", "none", "at least one");
  double first = 0.0;
  double second = 0.0;
  for (const SaggingWeight& w : weights) {
    check::positive(w.weight.value(), {function, "weights.weight", "N"});
    check::positive(w.sag.value(), {function, "weights.sag", "m"});
    first += w.weight.value() * w.sag.value();
    second += w.weight.value() * w.sag.value() * w.sag.value();
  }
  return radians_per_second(std::sqrt(unit::gravity_m_s2 * first / second));
}

/// Critical speed by Dunkerley's method from the speeds of each part alone [rad/s]; never above the true one.
///
/// 1/w^2 = sum 1/w_i^2
///   speeds  of the bare shaft and of each mass on the light shaft [rad/s], at least one, above 0
/// A lower bound. Source: S. Dunkerley, Phil. Trans. (1894). Example: 300 and 400 rad/s: 240 rad/s.
inline AngularSpeed dunkerley_critical_speed(const std::vector<AngularSpeed>& speeds) {
  constexpr const char* function = "dunkerley_critical_speed";
  if (speeds.empty()) fail_input(function, "speeds", "none", "at least one");
  double sum = 0.0;
  for (const AngularSpeed& speed : speeds) {
    check::positive(speed.value(), {function, "speeds", "rad/s"});
    sum += 1.0 / (speed.value() * speed.value());
  }
  return radians_per_second(1.0 / std::sqrt(sum));
}

/// Critical speed from the sag under loads and under the shaft's own weight [rad/s].
///
/// f = 0.4985 / sqrt(y + y_s/1.27) turns per second, sags in metres
///   load_sag   y    sum of the sags at each load, each load alone [m], at least 0
///   shaft_sag  y_s  greatest sag under the shaft's own weight [m], at least 0; not both zero
/// Dunkerley's method with rounded constants (exact 0.4984 with g = 9.807; 1.27 is 1.268 for pinned ends): within 0.1 %
/// of it. Source: Khurmi & Gupta, Theory of Machines, ch. 23. Example: 28.104 and 132.435 um: 43.326 turns per second.
inline AngularSpeed sag_critical_speed(Length load_sag, Length shaft_sag) {
  constexpr const char* function = "sag_critical_speed";
  check::not_negative(load_sag.value(), {function, "load_sag", "m"});
  check::not_negative(shaft_sag.value(), {function, "shaft_sag", "m"});
  const double sag = load_sag.value() + shaft_sag.value() / 1.27;
  check::positive(sag, {function, "load_sag + shaft_sag/1.27", "m"});
  return radians_per_second(2.0 * pi * 0.4985 / std::sqrt(sag));
}

} // namespace v0
} // namespace fieldshaft
