#pragma once
// Natural frequencies and shapes of a torsional train.

#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/dynamics/train.hpp>
#include <fieldshaft/shaft/section.hpp>

namespace fieldshaft {
inline namespace v0 {

/// One natural vibration of a train.
struct TorsionalMode {
  Frequency frequency; ///< exactly 0 where the whole train turns as one
  /// Swing of each inertia, at its own speed; scaled so that the greatest size is 1, and that one positive.
  std::vector<double> amplitudes;
};

/// The natural vibrations of a train, in rising order of frequency; as many as there are inertias.
///
/// K x = w² M x with K = sum k t t' over the shafts, t the twist that the angles give a shaft (from less to/ratio), M
/// the inertias. Solved as a symmetric problem in the angles times the roots of the inertias, so that gears and
/// branches need no referring by hand; a train that no anchor holds has one frequency of 0, which is set, not computed.
///   train  as check_train demands
/// Undamped and linear: with play it holds only while the torque keeps its sense (torque_keeps_its_sense). A frequency
/// is exact to about 1e-15 of the square of the train's highest one over its own; squares further apart than 1e12 are
/// refused, because rounding hides the lowest. Source: Bevan, Theory of Machines, ch. 15;
/// eigenvalues by Eigen.
/// Example: 2 and 3 kg·m² joined by 5000 N·m/rad: 0 and 10.27 Hz, with swings 1 and -0.667.
std::vector<TorsionalMode> torsional_modes(const TorsionalTrain& train);

/// A place on a shaft that stays at rest, against the train's even turning, while a mode swings.
struct ModeNode {
  std::size_t shaft; ///< index of the shaft
  double share;      ///< of its compliance, counted from `from`: 0.4 is four tenths of an even shaft's length
};

/// The nodes of a mode that lie on shafts.
///
///   train  as check_train demands
///   mode   one of its torsional_modes
/// A node exactly at an inertia is none of a shaft. Source: Bevan, ch. 15. Example: two inertias: one node, at I2/(I1 +
/// I2) of the shaft.
std::vector<ModeNode> mode_nodes(const TorsionalTrain& train, const TorsionalMode& mode);

inline constexpr const char* outside_backlash =
    "a shaft with play in which the torque swings further than its mean: the play opens and hammers";

/// Whether the torque of every shaft with play keeps its sense, so that the linear train describes it.
///
///   train   as check_train demands
///   steady  mean torque of each shaft, at its own speed [N·m], in the order of train.shafts
///   swing   amplitude of the torque in each [N·m], at least 0
/// Null where each swing stays below the size of the mean in the shafts with play; else the reason, for a `Validated`
/// result. Source: definition. Example: mean 300, swing 350 N·m and 1° of play: the reason.
const char* torque_keeps_its_sense(const TorsionalTrain& train, const std::vector<Torque>& steady,
                                   const std::vector<Torque>& swing);

/// Natural frequency of two inertias on one shaft [Hz].
///
/// f = sqrt(k (1/I1 + 1/I2)) / (2 pi)
///   first, second  I1, I2 [kg·m²], above 0
///   stiffness      k      [N·m/rad], above 0
/// Undamped, light shaft. Source: Bevan, Theory of Machines, ch. 15. Example: 2 and 3 kg·m², 5000 N·m/rad: 10.27 Hz.
Frequency two_inertia_frequency(MomentOfInertia first, MomentOfInertia second, TorsionalStiffness stiffness);

/// Length of an even shaft that twists as much as a stepped one [m].
///
/// L_e = sum L_i J_e / J_i, which for solid steps is sum L_i (d_e/d_i)^4
///   steps    sections with their lengths, at least one
///   section  of the even shaft
/// One steel throughout. Source: Bevan, ch. 15. Example: 1 m of 50 mm and 1 m of 40 mm in terms of 50 mm: 3.441 m.
struct StepLength {
  Section section;
  Length length; ///< above 0
};
Length equivalent_shaft_length(const std::vector<StepLength>& steps, const Section& section);

} // namespace v0
} // namespace fieldshaft
