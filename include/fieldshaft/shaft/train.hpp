#pragma once
// A shaft of several steps: its twist, its stiffness, and the step that yields first.

#include <fieldshaft/shaft/torsion.hpp>

#include <cstddef>
#include <limits>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// One step of a shaft: any section, of one steel.
struct ShaftStep {
  Section section;
  Length length;
  Torque torque; ///< that this step carries
  Stress shear_yield;
  Stress shear_modulus;
};

/// A stepped shaft under its torques.
struct SteppedShaft {
  Angle twist;          ///< between its ends
  std::size_t weakest;  ///< index of the step nearest to yielding
  Stress stress;        ///< greatest shear stress in that step
  double safety_factor; ///< shear yield strength over that stress; infinite without torque
};

namespace detail {
inline void check_steps(const std::vector<ShaftStep>& steps, const char* function) {
  if (steps.empty()) fail_input(function, "steps", "none", "at least one");
  for (const ShaftStep& step : steps) {
    check::positive(step.length.value(), {function, "steps.length", "m"});
    check::not_negative(step.torque.value(), {function, "steps.torque", "N·m"});
    check::positive(step.shear_yield.value(), {function, "steps.shear_yield", "Pa"});
    check::positive(step.shear_modulus.value(), {function, "steps.shear_modulus", "Pa"});
  }
}
} // namespace detail

/// Twist of a stepped shaft, and the step that yields first.
///
/// twist = sum T L / (G J); weakest: least S_sy W / T
///   steps  at least one; each with its own torque, steel and section
/// All torques in the same sense; away from the notches at the steps. Source: Gere, ch. 3.
/// Example: rectangular tube, 60 N·m over 0.5 m and 35 N·m over 1.5 m: 0.00629129 rad (Hibbeler, Ex. 5.12).
inline SteppedShaft stepped_shaft(const std::vector<ShaftStep>& steps) {
  detail::check_steps(steps, "stepped_shaft");
  SteppedShaft result{Angle{}, 0, Stress{}, std::numeric_limits<double>::infinity()};
  for (std::size_t i = 0; i < steps.size(); ++i) {
    const ShaftStep& step = steps[i];
    result.twist += twist(step.section, step.torque, step.shear_modulus, step.length);
    const Stress stress = torsion_stress(step.section, step.torque);
    if (!(stress.value() > 0.0)) continue;
    const double safety = step.shear_yield / stress;
    if (safety < result.safety_factor) {
      result.weakest = i;
      result.stress = stress;
      result.safety_factor = safety;
    }
  }
  return result;
}

/// Torque through a whole stepped shaft at which its weakest step begins to yield [N·m].
///
/// least S_sy W of the steps, whose own torques are not used. Source: Gere, ch. 3.
///   steps  at least one
/// Example: 30 mm and 25 mm solid of one steel: the yield torque of the 25 mm step.
inline Torque stepped_yield_torque(const std::vector<ShaftStep>& steps) {
  detail::check_steps(steps, "stepped_yield_torque");
  Torque least = yield_torque(steps.front().section, steps.front().shear_yield);
  for (const ShaftStep& step : steps) {
    const Torque torque = yield_torque(step.section, step.shear_yield);
    if (torque < least) least = torque;
  }
  return least;
}

/// Torsional stiffness of a stepped shaft between its ends [N·m/rad].
///
/// 1/k = sum L / (G J); the steps' torques are not used
///   steps  at least one
/// Source: Bevan, Theory of Machines, torsionally equivalent shaft.
/// Example: 1 m of 30 mm solid, 79.3 GPa: 6306 N·m/rad; twice the length: half.
inline TorsionalStiffness stepped_stiffness(const std::vector<ShaftStep>& steps) {
  detail::check_steps(steps, "stepped_stiffness");
  double compliance = 0.0;
  for (const ShaftStep& step : steps) {
    compliance += twist(step.section, newton_metres(1.0), step.shear_modulus, step.length).value();
  }
  return TorsionalStiffness::from_value(1.0 / compliance);
}

} // namespace v0
} // namespace fieldshaft
