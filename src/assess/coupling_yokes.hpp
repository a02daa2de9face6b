#pragma once
// Wide-angle joints as two crosses with a coupling yoke between them: what that changes against joints that bend in one
// point, as the envelope takes them.

#include "assess/geometry.hpp"

#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Lengths of the coupling yokes at the upper end of their tolerances; nothing for a plain joint or an unstated one.
struct CouplingYokes {
  Length front{};
  Length rear{};
};

/// Of anything that states joints as a driveline does.
template <class Stating> CouplingYokes yokes_of(const Stating& line) {
  const auto longest = [](const Stated<JointKind>& kind, const Stated<MeasuredLength>& yoke) {
    return kind == JointKind::wide_angle && yoke ? yoke->value + yoke->tolerance : Length{};
  };
  return {longest(line.front_joint_kind, line.front_coupling_yoke),
          longest(line.rear_joint_kind, line.rear_coupling_yoke)};
}

/// Coupling yokes of wide-angle joints that are not stated.
template <class Stating> std::vector<std::string> yokes_missing(const Stating& line, const std::string& path) {
  std::vector<std::string> missing;
  const auto want = [&](const Stated<JointKind>& kind, const Stated<MeasuredLength>& yoke, const char* entry) {
    if (kind == JointKind::wide_angle && !yoke) missing.push_back(path + entry);
  };
  want(line.front_joint_kind, line.front_coupling_yoke, ".front_coupling_yoke");
  want(line.rear_joint_kind, line.rear_coupling_yoke, ".rear_coupling_yoke");
  return missing;
}

/// The distance of the joint centres with crosses, from that of joints in one point and the angles there: exact for one
/// such joint, and no more than what two of them leave.
Length length_with_crosses(Length distance, Angle front, Angle rear, const CouplingYokes& yokes);

/// Bounds that hold for crosses: the telescope is shorter and the joints bend further than in one point. What was
/// attained in one point stays: with crosses that place comes nearer to the bound.
void allow_for_crosses(StateExtremes& extremes, const CouplingYokes& yokes);

/// The same for an envelope that is held against limits.
void allow_for_crosses(DrivelineEnvelope& envelope, const CouplingYokes& yokes);

/// Whether some joint has two crosses.
inline bool any(const CouplingYokes& yokes) { return yokes.front > Length{} || yokes.rear > Length{}; }

/// What an envelope is asked that is held against limits. By how much crosses shorten the driveline goes by how far its
/// joints bend: with them bounds are wanted, coarse ones, rather than whether limits hold.
EnvelopeOptions options_within(const DrivelineLimits& limits, const CouplingYokes& yokes);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
