#pragma once
// Setting the yokes of the intermediate shaft: which position makes a pair smooth, and what a wrong one leaves.

#include <fieldshaft/joint/pair.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The relative phase of a pair, brought into -90° (excluded) to 90° (included) [rad].
///
/// phase = yoke phase - plane angle, whole half turns dropped
///   yoke_phase   rear yoke of the intermediate shaft turned against its front yoke [rad], any
///   plane_angle  plane of the rear joint's shafts turned against the plane of the front joint's [rad], any
/// Both are counted about the intermediate shaft in the same sense. A Z or W arrangement in one plane has plane angle 0
/// (or 180°, the same) and wants the yokes in line. Source: the relative phase angle of Fischer & Paul, J. Mech. Des.
/// 113 (1991) 263. Example: yokes in line, planes 30° apart: -30°.
inline Angle relative_phase(Angle yoke_phase, Angle plane_angle) {
  check::finite(yoke_phase.value(), {"relative_phase", "yoke_phase", "rad"});
  check::finite(plane_angle.value(), {"relative_phase", "plane_angle", "rad"});
  const double half_turns = std::remainder((yoke_phase - plane_angle).value(), pi);
  return radians(half_turns <= -0.5 * pi ? half_turns + pi : half_turns);
}

/// Turn from one position of a telescope to the next [rad].
///
/// step = 360° / positions
///   positions  in which the members can be pushed together in one turn, 1 to 1000
/// Exact. Source: definition. Example: six splines: 60°; a profile that fits in one way only: 360°.
inline Angle spline_step(int positions) {
  check::within(positions, 1.0, 1000.0, {"spline_step", "positions", ""});
  return degrees(360.0) / static_cast<double>(positions);
}

/// A pair of joints whose telescope was pushed together in one of its positions.
struct SplinePosition {
  int steps;              ///< from the position with both yokes in line
  Angle yoke_phase;       ///< steps times the step
  Angle phase;            ///< relative phase that this gives
  Angle equivalent_angle; ///< of the single joint that is as uneven
};

/// What a pair is like in one position of its telescope.
///
///   front, rear  joint angles [rad], from 0, below 90°
///   plane_angle  plane of the rear joint's shafts turned against that of the front joint's [rad], any
///   positions    of the telescope in one turn, 1 to 1000
///   steps        from the position with both yokes in line, any whole number
/// Exact. Source: equivalent_joint_angle. Example: 15°, 15°, one plane, six splines put together one position wrong:
/// the equivalent joint has 19.7°, where in line it has 0.
inline SplinePosition spline_position(Angle front, Angle rear, Angle plane_angle, int positions, int steps) {
  const Angle yoke_phase = static_cast<double>(steps) * spline_step(positions);
  const Angle phase = relative_phase(yoke_phase, plane_angle);
  return {steps, yoke_phase, phase, equivalent_joint_angle(front, rear, phase)};
}

/// The smoothest position that a telescope allows.
///
/// The position whose relative phase is nearest to 0; unevenness grows steadily from phase 0 to 90°. It is perfect only
/// for equal angles and a plane angle that the positions meet. Of equally good positions the first is given.
///   front, rear, plane_angle, positions  as for spline_position
/// Exact. Source: equivalent_joint_angle. Example: 15°, 15°, planes 40° apart, six splines: one step, phase 20°,
/// equivalent joint 12.4°; no step would leave 17.0°.
inline SplinePosition best_spline_position(Angle front, Angle rear, Angle plane_angle, int positions) {
  SplinePosition best = spline_position(front, rear, plane_angle, positions, 0);
  for (int steps = 1; steps < positions; ++steps) {
    const SplinePosition next = spline_position(front, rear, plane_angle, positions, steps);
    // Positions half a turn apart differ by rounding only: a lead below this is none.
    constexpr double rounding = 1e-12;
    if (math::abs(next.phase) + radians(rounding) < math::abs(best.phase)) best = next;
  }
  return best;
}

} // namespace v0
} // namespace fieldshaft
