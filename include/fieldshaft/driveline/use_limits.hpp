#pragma once
// How far a joint may bend in each use of the driveline: inputs, with defaults that say what they rest on.

#include <fieldshaft/joint.hpp>

namespace fieldshaft {
inline namespace v0 {

enum class DrivelineUse {
  working,        ///< under load for long
  turning_driven, ///< in a turn, driven, little load
  lifted_driven,  ///< raised at the headland, driven
  not_turning     ///< transport: the PTO stands still
};

/// Bands of joint angles: up to `low` all schools agree, beyond `high` none allows it.
struct UseAngleLimits {
  JointAngleBand working;
  JointAngleBand turning_driven;
  JointAngleBand lifted_driven;
  JointAngleBand not_turning;

  constexpr const JointAngleBand& at(DrivelineUse use) const noexcept {
    switch (use) {
    case DrivelineUse::working: return working;
    case DrivelineUse::turning_driven: return turning_driven;
    case DrivelineUse::lifted_driven: return lifted_driven;
    case DrivelineUse::not_turning: break;
    }
    return not_turning;
  }
};

/// Plain joints. No standard text with a number was found; the manual of the driveline comes before all of these.
inline constexpr UseAngleLimits plain_use_limits{
    plain_joint_practice.working,
    plain_joint_practice.turning,
    {{degrees(25.0), {"supplier's guide: 25° to 30° at the headland, disengage beyond", Standing::common_practice}},
     {degrees(30.0), {"supplier's guide: 25° to 30° at the headland, disengage beyond", Standing::common_practice}}},
    plain_joint_practice.at_rest};

/// Wide-angle joints. For a raised machine nothing apart from the brief angle is stated anywhere: the continuous angle
/// is the cautious end, the brief one the far end.
inline constexpr UseAngleLimits wide_angle_use_limits{
    wide_angle_joint_practice.working,
    wide_angle_joint_practice.turning,
    {wide_angle_joint_practice.working.low, wide_angle_joint_practice.turning.low},
    wide_angle_joint_practice.at_rest};

} // namespace v0
} // namespace fieldshaft
