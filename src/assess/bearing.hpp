#pragma once
// Life of the bearings in the joints' crosses.

#include "assess/context.hpp"
#include "assess/geometry.hpp"
#include "assess/loads.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Whether the life of the bearings goes by the joint angles in work: the case states no duties with angles of their
/// own.
bool life_goes_by_positions(const Case& value);

/// Over `driveline.duties`, or where the case states none, under the mean torque of the heaviest work all the time.
void check_joint_bearings(const Case& value, const MeanLoad& mean, const DrivelineOverRange& range, Findings& findings);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
