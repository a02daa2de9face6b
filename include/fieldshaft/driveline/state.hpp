#pragma once
// The driveline at one pose: joint angles, their planes and phase, and its length.

#include <fieldshaft/driveline/driveline.hpp>
#include <fieldshaft/joint.hpp>

#include <Eigen/Geometry>

#include <limits>

namespace fieldshaft {
inline namespace v0 {

struct DrivelineState {
  Angle front_angle{};           ///< between the PTO shaft and the intermediate shaft
  Angle rear_angle{};            ///< between the intermediate shaft and the implement's input shaft
  Angle difference{};            ///< front less rear angle
  Length length{};               ///< joint centre to joint centre
  Angle plane_angle{};           ///< plane of the rear joint's shafts turned against the front joint's, about the shaft
  Angle phase{};                 ///< yoke phase less plane angle, within -90° to 90°; at 0 equal angles cancel
  double speed_variation{};      ///< greatest less least speed of the input shaft, over the PTO speed
  std::optional<Length> overlap; ///< least overlap of the members, where the telescope is known
};

namespace detail {

/// The lines that decide everything, in metres: the driving shaft's direction and the way from the front joint to the
/// pin in the tractor frame, the way from the pin to the rear joint and the input shaft's direction in the implement
/// frame.
struct Lines {
  Eigen::Vector3d output;
  Eigen::Vector3d to_pin;
  Eigen::Vector3d to_joint;
  Eigen::Vector3d input;
};

inline Lines lines(const Driveline& driveline, const Position& pin) noexcept {
  return {driveline.output_direction.unit(), pin.metres() - front_joint_position(driveline).metres(),
          rear_joint_position(driveline).metres(), driveline.input_direction.unit()};
}

/// Cosines of both joints and the parts of the angle between their planes, sin sin cos and sin sin sin.
struct JointCosines {
  double front, rear;
  double plane_cosine, plane_sine;
};

/// k + 1/k - 2 of the pair, k its greatest speed ratio: a sum of squares, exact near a smooth pair.
inline double pair_unevenness(const JointCosines& c, double yoke_cosine, double yoke_sine) noexcept {
  const double product = c.front * c.rear;
  const double size = std::hypot(c.plane_cosine, c.plane_sine);
  const double cosine = size > 0.0 ? c.plane_cosine / size : 1.0;
  const double sine = size > 0.0 ? c.plane_sine / size : 0.0;
  const double in_phase = (yoke_cosine * cosine + yoke_sine * sine) * (c.front - c.rear);
  const double across = (yoke_sine * cosine - yoke_cosine * sine) * (1.0 - product);
  return (in_phase * in_phase + across * across) / product;
}

/// k - 1/k from k + 1/k - 2.
inline double variation_from(double unevenness) noexcept { return std::sqrt(unevenness * (unevenness + 4.0)); }

/// Speed variation behind both joints; a wide-angle joint adds none. Infinite where a joint stands at 90° or more.
inline double speed_variation(const Driveline& driveline, const JointCosines& c) noexcept {
  if (!(c.front > 0.0 && c.rear > 0.0)) return std::numeric_limits<double>::infinity();
  const bool front = !driveline.wide_angle_front;
  const bool rear = !driveline.wide_angle_rear;
  if (front && rear) {
    const double phase = driveline.yoke_phase.value();
    const bool in_line = phase == 0.0;
    return variation_from(pair_unevenness(c, in_line ? 1.0 : std::cos(phase), in_line ? 0.0 : std::sin(phase)));
  }
  if (!front && !rear) return 0.0;
  const double cosine = front ? c.front : c.rear;
  return 1.0 / cosine - cosine;
}

inline Angle wrapped_phase(double phase) noexcept {
  const double rest = std::remainder(phase, pi);
  return Angle::from_value(rest <= -0.5 * pi ? rest + pi : rest);
}

/// The state, unchecked.
inline DrivelineState state(const Driveline& driveline, const Lines& lines, const Eigen::Matrix3d& turn) noexcept {
  const Eigen::Vector3d shaft = lines.to_pin + turn * lines.to_joint; // front to rear joint
  const Eigen::Vector3d last = -(turn * lines.input);                 // rearwards along the input shaft
  const double length = shaft.norm();
  const Eigen::Vector3d first_normal = lines.output.cross(shaft);
  const Eigen::Vector3d last_normal = shaft.cross(last);
  const double along_first = lines.output.dot(shaft);
  const double along_last = shaft.dot(last);
  DrivelineState state;
  state.front_angle = Angle::from_value(std::atan2(first_normal.norm(), along_first));
  state.rear_angle = Angle::from_value(std::atan2(last_normal.norm(), along_last));
  state.difference = state.front_angle - state.rear_angle;
  state.length = Length::from_value(length);
  const JointCosines cosines{along_first / length, along_last / length,
                             first_normal.dot(last_normal) / (length * length), lines.output.dot(last_normal) / length};
  state.plane_angle = Angle::from_value(std::atan2(cosines.plane_sine, cosines.plane_cosine));
  state.phase = wrapped_phase((driveline.yoke_phase - state.plane_angle).value());
  state.speed_variation = speed_variation(driveline, cosines);
  return state;
}

} // namespace detail

/// The driveline at one pose of the implement.
///
/// With F the front joint centre, R the rear one in the tractor frame and n the direction from F to R:
///   front angle  between the PTO shaft (rearwards) and n; rear angle between n and the input shaft (rearwards) [rad]
///   length       |R - F| [m]
///   plane angle  from the normal (PTO shaft x n) to the normal (n x input shaft), about n [rad]; 0 where a joint is
///                straight and has no plane
///   driveline    joint distances at least 0; telescope, where stated, longer than its overlaps
///   pose         of the implement, any
/// Exact for rigid parts without play. Joints at 90° or more do not turn: the speed variation is infinite there.
/// The joint centres must not coincide. Source: definition of the angles; k + 1/k of a pair (module joint).
/// Example: pin 0.5 m behind the front joint, 0.5 m ahead of the rear one, 40° of turn: 20°, 20°, 939.7 mm, variation
/// 0.
inline DrivelineState driveline_at(const Driveline& driveline, const Pose& pose) {
  check::driveline(driveline, "driveline_at");
  DrivelineState state = detail::state(driveline, detail::lines(driveline, pose.pin), rotation(pose.attitude));
  check::positive(state.length.value(), {"driveline_at", "joint centre distance", "m"});
  if (driveline.telescope) state.overlap = overlap_at(*driveline.telescope, state.length);
  return state;
}

} // namespace v0
} // namespace fieldshaft
