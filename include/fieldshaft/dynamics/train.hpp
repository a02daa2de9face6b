#pragma once
// A torsional train: the turning masses of a line from tractor to rotor, the shafts between them with their gears,
// dampers and play, and what holds it. Branches are allowed.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

#include <cstddef>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// A turning mass, at its own speed.
struct TrainInertia {
  MomentOfInertia inertia; ///< above 0
  TorsionalDamping drag{}; ///< torque per speed against the frame (bearings, air, crop), at least 0
};

/// A shaft between two inertias. A gear, if there is one, sits at its far end, so that stiffness, damping, play and the
/// shaft's torque are those at the speed of `from`.
struct TrainShaft {
  std::size_t from;             ///< index of an inertia
  std::size_t to;               ///< index of another inertia
  TorsionalStiffness stiffness; ///< above 0
  double ratio = 1.0;           ///< speed of `to` over speed of `from`, above 0; the sense of turning does not count
  TorsionalDamping damping{};   ///< torque per speed of twisting, at least 0
  Angle backlash{};             ///< whole play between both flanks, at least 0; see torque_keeps_its_sense
};

/// A shaft whose other end is held fast, as by a brake.
struct TrainAnchor {
  std::size_t inertia;          ///< index of the inertia that it holds
  TorsionalStiffness stiffness; ///< above 0
  TorsionalDamping damping{};   ///< at least 0
};

/// The line, or a part of it. Inertias are named by their index.
struct TorsionalTrain {
  std::vector<TrainInertia> inertias;
  std::vector<TrainShaft> shafts;
  std::vector<TrainAnchor> anchors;
};

/// An unbranched train without gears.
///
///   inertias     from one end to the other [kg·m²], at least one, each above 0
///   stiffnesses  of the shafts between neighbours [N·m/rad], one fewer, each above 0
/// Throws InputError where the counts do not match.
TorsionalTrain plain_train(const std::vector<MomentOfInertia>& inertias,
                           const std::vector<TorsionalStiffness>& stiffnesses);

/// Throws InputError, naming `function`, unless the train is whole: at least one inertia, every index there, no shaft
/// from an inertia to itself, every number in its range, every inertia joined to the first, and the ratios round every
/// closed loop giving 1 (to 1e-9), since gears that contradict each other cannot turn.
void check_train(const TorsionalTrain& train, const char* function);

/// Speed of each inertia over the speed of the first, from the gear ratios [-].
///
///   train  as check_train demands
/// Example: 540 to 1800 r/min by one gear: 1 and 3.333.
std::vector<double> train_speed_ratios(const TorsionalTrain& train);

} // namespace v0
} // namespace fieldshaft
