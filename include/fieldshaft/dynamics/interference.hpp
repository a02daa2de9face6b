#pragma once
// What pulses how often in a turn, and at which speeds that meets a natural frequency.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/dynamics/modes.hpp>

namespace fieldshaft {
inline namespace v0 {

/// Something that pulses in step with one shaft: two in a turn for a joint, one for each blade that meets the crop, one
/// for each stroke of a plunger.
struct ExcitationOrder {
  double per_turn;         ///< pulses per turn of that inertia, above 0; half a pulse: one in two turns
  std::size_t inertia = 0; ///< with which it turns
};

/// Pulses of a Cardan joint per turn of its driving shaft. Its higher ones, four and more, are far weaker: see
/// joint_pulse.
inline constexpr double joint_pulses_per_turn = 2.0;

/// Amplitude of a joint's n-th pulse, 2 n to a turn: by how much it turns the driven shaft forth and back [rad].
///
/// The driven shaft's lead is sum (e^n/n) sin(2 n t), e = tan²(b/2); the n-th amplitude is e^n/n
///   angle  b  joint angle [rad], from 0, below 90°; a pair's equivalent angle, where the shaft between has little
///   inertia pulse  n  1 to 20
/// Exact for an ideal joint. Source: tan t2 = tan t/cos b as a Fourier series (any table of series). Example: 20°, n =
/// 1: 0.03109 rad; n = 2: 0.000483 rad.
Angle joint_pulse(Angle angle, int pulse = 1);

/// A range of speeds of the first inertia.
struct SpeedRange {
  AngularSpeed low;  ///< at least 0
  AngularSpeed high; ///< at least `low`, above 0
};

/// One order against one natural frequency.
struct Interference {
  std::size_t mode;            ///< index in torsional_modes
  std::size_t order;           ///< index in the orders given
  Frequency natural;           ///< of the mode
  AngularSpeed critical_speed; ///< of the first inertia at which the order meets the mode
  AngularSpeed nearest;        ///< speed of the range at which they come nearest
  double separation;           ///< least |pulses per second/natural frequency - 1| over the range; 0 if they meet in it
  double swing;                ///< of the order's inertia in the mode, from 0 to 1: near 0 the order hardly excites it
};

/// Share by which excitation and natural frequency should differ.
inline constexpr Sourced<double> wide_separation{0.20, {"20 % apart from resonance", Standing::common_practice}};
inline constexpr Sourced<double> least_separation{
    0.10, {"10 % apart from resonance: API 671, Special-Purpose Couplings, and API 617", Standing::from_memory}};

/// The table of every order against every natural frequency above 0, over a range of speeds.
///
/// critical speed = 2 pi f/(p s), f the natural frequency, p the pulses per turn, s the speed of the order's inertia
/// over that of the first
///   train   as check_train demands
///   orders  at least one
///   speeds  of the first inertia
/// Linear as torsional_modes; whether a meeting does harm is the business of forced_response. A separation of 0 is a
/// critical speed within the range. Source: interference (Campbell) diagram, any text on rotors.
/// Example: 2 and 3 kg·m² joined by 5000 N·m/rad, two pulses in a turn, 500 to 600 r/min: critical at 308.2 r/min,
/// separation 0.622.
std::vector<Interference> interference_table(const TorsionalTrain& train, const std::vector<ExcitationOrder>& orders,
                                             const SpeedRange& speeds);

} // namespace v0
} // namespace fieldshaft
