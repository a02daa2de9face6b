#pragma once
// Life of the bearings in the joints' crosses.

#include "assess/context.hpp"
#include "assess/geometry.hpp"
#include "assess/loads.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Over `driveline.duties`, or where the case states none, under the mean torque of the heaviest work all the time.
void check_joint_bearings(const Case& value, const MeanLoad& mean, const DrivelineOverRange& range, Findings& findings);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
