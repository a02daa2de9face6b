#pragma once
// Energy of a rotor and of a blade that it loses, and what overspeed does to both.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/rotor/blade.hpp>

namespace fieldshaft {
inline namespace v0 {

/// What a change of speed does to a rotor, as ratios to its state at the rated speed.
struct OverspeedRatios {
  double speed;                      ///< n
  double energy;                     ///< n^2: also pull of the blades and stress by turning
  double air_power;                  ///< n^3: fan and windage power
  double torque_for_same_power;      ///< 1/n
  double gearing_for_same_tip_speed; ///< 1/n: change of the gear ratio that would keep the rotor's speed
};

namespace text {
template <class I, class W> constexpr auto rotor_energy(I inertia, W speed) noexcept {
  return 0.5 * inertia * speed * speed;
}
template <class M, class L, class W, class I>
constexpr auto lost_blade_energy(M mass, L radius, W speed, I inertia) noexcept {
  return object_energy(mass, tip_speed(speed, radius)) + rotor_energy(inertia, speed);
}
template <class R> constexpr OverspeedRatios overspeed_ratios(R n) noexcept {
  return {n, n * n, n * n * n, 1.0 / n, 1.0 / n};
}
} // namespace text

/// Energy stored in a turning rotor [J].
///
/// E = I w^2 / 2
///   inertia  I  about the axis [kg·m²], at least 0
///   speed    w  [rad/s], at least 0
/// Exact. Source: kinetic energy. Example: 4 kg·m² at 540 r/min store 6395.5 J.
constexpr Energy rotor_energy(MomentOfInertia inertia, AngularSpeed speed) {
  check::not_negative(inertia.value(), {"rotor_energy", "inertia", "kg·m²"});
  check::not_negative(speed.value(), {"rotor_energy", "speed", "rad/s"});
  return text::rotor_energy(inertia, speed);
}

/// Energy that a blade carries away when it comes off [J].
///
/// E = m (w r)^2 / 2 + I w^2 / 2
///   mass     m  of the blade [kg], at least 0
///   radius   r  from the rotor's axis to the blade's centre of mass [m], at least 0
///   speed    w  of the rotor [rad/s], at least 0
///   inertia  I  of the blade about its own centre of mass [kg·m²], at least 0; zero leaves its spin out
/// Exact at the moment of loss; the blade goes on turning as fast as the rotor did. Source: kinetic energy.
/// Example: 2 kg at 0.4 m and 1000 r/min: 1754.6 J without its spin.
constexpr Energy lost_blade_energy(Mass mass, Length radius, AngularSpeed speed,
                                   MomentOfInertia inertia = kilogram_square_metres(0)) {
  check::not_negative(mass.value(), {"lost_blade_energy", "mass", "kg"});
  check::not_negative(radius.value(), {"lost_blade_energy", "radius", "m"});
  check::not_negative(speed.value(), {"lost_blade_energy", "speed", "rad/s"});
  check::not_negative(inertia.value(), {"lost_blade_energy", "inertia", "kg·m²"});
  return text::lost_blade_energy(mass, radius, speed, inertia);
}

/// What happens to an implement at another speed than its rated one.
///
/// n = w / w_rated; energy and pull n^2, fan power n^3, torque for the same power 1/n
///   rated_speed  w_rated  [rad/s], above 0
///   speed        w        [rad/s], above 0
/// Energy and pull are exact; fan power follows the fan laws (same air, same ducts). Never run an implement above its
/// rated speed. Source: kinetic energy, centripetal force, fan laws.
/// Example: a 540 r/min implement at 1000 r/min: 1.85 times the speed, 3.43 times the pull, 6.35 times the fan power.
constexpr OverspeedRatios overspeed_ratios(AngularSpeed rated_speed, AngularSpeed speed) {
  check::positive(rated_speed.value(), {"overspeed_ratios", "rated_speed", "rad/s"});
  check::positive(speed.value(), {"overspeed_ratios", "speed", "rad/s"});
  return text::overspeed_ratios(static_cast<double>(speed / rated_speed));
}

} // namespace v0
} // namespace fieldshaft
