#pragma once
// A driveline in two parts with a bearing in between that the implement carries.

#include <fieldshaft/driveline/state.hpp>

#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// Both parts at one pose, and how unevenly the last shaft turns behind all of their joints.
struct ChainState {
  DrivelineState first;     ///< tractor to bearing: it moves with the pose
  DrivelineState second;    ///< bearing to machine: fixed within the implement
  Angle bearing_phase{};    ///< relative phase between the two joints that the bearing's shaft connects
  Angle equivalent_angle{}; ///< of the single joint that is as uneven as all of them
  double speed_variation{}; ///< greatest less least speed of the last shaft, over the PTO speed; infinite past 90°
};

namespace detail {

/// Rearward direction of a driveline's intermediate shaft.
inline Eigen::Vector3d shaft_direction(const Lines& lines, const Eigen::Matrix3d& turn) noexcept {
  return (lines.to_pin + turn * lines.to_joint).normalized();
}

inline void add_joint(std::vector<JointInRow>& row, Angle angle, Angle phase, bool wide_angle) {
  const Angle own = row.empty() ? Angle{} : phase;
  if (!wide_angle) {
    row.push_back({angle, own});
    return;
  }
  row.push_back({0.5 * angle, own});
  row.push_back({0.5 * angle, {}});
}

} // namespace detail

/// A driveline with an intermediate bearing at one pose.
///
///   first    tractor to bearing; its input is the bearing shaft's front end, in the implement frame
///   second   bearing to machine; its output is the bearing shaft's rear end and points the way the first input shaft
///   comes
///            from, both its ends in the implement frame
///   between  yoke phase of the bearing shaft: its rear yoke turned against its front yoke [rad]
/// Four joints (a wide-angle one counts as two of half its angle) as one row; the plane angles come from the geometry.
/// Exact for rigid parts. Source: equivalent_joint_angle of a row.
/// Example: a second part that runs straight: the variation of the first part alone.
inline ChainState chain_at(const Driveline& first, const Driveline& second, Angle between, const Pose& pose) {
  constexpr const char* name = "chain_at";
  check::finite(between.value(), {name, "between", "rad"});
  const double bend = angle_between(-first.input_direction, second.output_direction).value();
  check::within(bend, 0.0, 1e-6, {name, "angle between the ends of the bearing shaft", "rad"});
  ChainState chain;
  chain.first = driveline_at(first, pose);
  chain.second = driveline_at(second, Pose{});
  const Eigen::Matrix3d turn = rotation(pose.attitude);
  const Eigen::Vector3d before = detail::shaft_direction(detail::lines(first, pose.pin), turn);
  const Eigen::Vector3d bearing = turn * second.output_direction.unit();
  const Eigen::Vector3d after =
      turn * detail::shaft_direction(detail::lines(second, Position()), Eigen::Matrix3d::Identity());
  const Eigen::Vector3d rear_normal = before.cross(bearing);
  const Eigen::Vector3d front_normal = bearing.cross(after);
  const double plane = std::atan2(bearing.dot(rear_normal.cross(front_normal)), rear_normal.dot(front_normal));
  chain.bearing_phase = relative_phase(between, radians(plane));
  const DrivelineState* const states[] = {&chain.first, &chain.second};
  for (const DrivelineState* s : states) {
    if (s->front_angle >= degrees(90) || s->rear_angle >= degrees(90)) {
      chain.equivalent_angle = degrees(90);
      chain.speed_variation = std::numeric_limits<double>::infinity();
      return chain;
    }
  }
  std::vector<JointInRow> row;
  detail::add_joint(row, chain.first.front_angle, Angle{}, first.wide_angle_front);
  detail::add_joint(row, chain.first.rear_angle, chain.first.phase, first.wide_angle_rear);
  detail::add_joint(row, chain.second.front_angle, chain.bearing_phase, second.wide_angle_front);
  detail::add_joint(row, chain.second.rear_angle, chain.second.phase, second.wide_angle_rear);
  chain.equivalent_angle = equivalent_joint_angle(row);
  chain.speed_variation = joint_speed_variation(chain.equivalent_angle);
  return chain;
}

} // namespace v0
} // namespace fieldshaft
