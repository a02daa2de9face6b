#pragma once
// How far a damped train swings under pulses of one frequency, and what torque that puts into each shaft.

#include <fieldshaft/dynamics/modes.hpp>

namespace fieldshaft {
inline namespace v0 {

/// A quantity that swings evenly: amplitude × cos(2 pi f t + phase).
template <class Q> struct Swing {
  Q amplitude{};
  Angle phase{};
};

/// A torque that swings on an inertia, as crop and blades do.
struct TorqueExcitation {
  std::size_t inertia; ///< index
  Swing<Torque> torque;
};

/// A lead that swings in a shaft, as a joint in it does: `from` seems that far ahead of where it is. See joint_pulse.
struct TwistExcitation {
  std::size_t shaft; ///< index
  Swing<Angle> lead; ///< at the speed of the shaft's `from`
};

/// Everything that pulses at one frequency.
struct TorsionalExcitation {
  Frequency frequency; ///< above 0
  std::vector<TorqueExcitation> torques;
  std::vector<TwistExcitation> leads;
};

/// How a train answers. All swing at the frequency of the excitation.
struct ForcedResponse {
  std::vector<Swing<Angle>> swings;   ///< of each inertia about its even turning, at its own speed
  std::vector<Swing<Torque>> torques; ///< of each shaft about its mean torque, at the speed of its `from`
};

inline constexpr const char* outside_undamped =
    "at a natural frequency of a train without damping there, the swing has no end";

/// The steady swing of a train under an excitation.
///
/// (K + i w C - w² M) x = F, w = 2 pi f, solved in complex amplitudes
///   train       as check_train demands
///   excitation  amplitudes at least 0, any phases
///   steady      mean torque of each shaft [N·m], in the order of train.shafts; may be left out if no shaft has play
/// After what the start left behind has died away; linear, joints at small angles or as their pulse. Outside: a train
/// without damping at its natural frequency, where every swing is given as infinite; a shaft with play in which the
/// torque swings as far as its mean, or whose mean is not given. Source: any text on vibrations, such as Rao,
/// Mechanical Vibrations, ch. 6. Example: 2 kg·m² held by 5000 N·m/rad and 10 N·m·s/rad, 100 N·m at 5 Hz: 0.03287 rad.
Validated<ForcedResponse> forced_response(const TorsionalTrain& train, const TorsionalExcitation& excitation,
                                          const std::vector<Torque>& steady = {});

/// Damping of a shaft that turns a given share of its strain energy into heat [N·m·s/rad].
///
/// c = n k/(2 pi f)
///   stiffness    k  [N·m/rad], above 0
///   loss_factor  n  energy lost in a swing over 2 pi times the greatest strain energy, above 0, below 1
///   frequency    f  at which it is to hold [Hz], above 0
/// The same loss at every frequency is no viscous damper: the equivalence holds near f. Source: Rao, section 2.8.
/// Example: 5000 N·m/rad, 0.02, 10 Hz: 1.592 N·m·s/rad.
TorsionalDamping shaft_damping(TorsionalStiffness stiffness, double loss_factor, Frequency frequency);

/// Torque swing that an uneven joint puts into a driveline between a steady drive and an inertia [N·m].
///
/// T = k e w²/|w² - k/I|, w = 2 W, e = tan²(b/2), the joint's first pulse
///   stiffness  k  of the driveline [N·m/rad], above 0
///   inertia    I  behind it, at its speed (see referred_inertia) [kg·m²], above 0
///   angle      b  of the joint, or the pair's equivalent angle [rad], from 0, below 90°
///   speed      W  of the drive [rad/s], above 0
/// Undamped; the drive keeps its speed and the joint's higher pulses are left out. A heavy rotor hardly follows: the
/// driveline then twists by the whole lead, T = k e. Outside: w within a tenth of the natural frequency sqrt(k/I),
/// where damping decides. Source: forced_response with one inertia held at its speed. Example: 9000 N·m/rad, 10 kg·m²,
/// 14°, 540 r/min: 146.0 N·m.
Validated<Torque> joint_torque_swing(TorsionalStiffness stiffness, MomentOfInertia inertia, Angle angle,
                                     AngularSpeed speed);

} // namespace v0
} // namespace fieldshaft
