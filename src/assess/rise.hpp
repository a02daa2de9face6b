#pragma once
// How joints at an angle raise the peak torque on its way through the driveline.

#include "assess/geometry.hpp"
#include "assess/loads.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Entries without which it is not known how far the front joint bends while the shaft turns.
std::vector<std::string> missing_angles(const Case& value, const DrivelineOverRange& range);

/// The greatest angle of the front joint of all states in which the shaft turns.
Angle driven_front_angle(const DrivelineOverRange& range);

/// A wide-angle joint shares its angle between two crosses, and only the first bends the stub.
Angle front_cross_angle(const Case& value, Angle joint_angle);

/// A peak that is stated, as it arrives behind a joint bent so far; past a right angle the entry at `path` is missing.
PeakLoad raised(PeakLoad peak, Angle angle, const std::string& path);

/// Largest torque at the stub. What the implement or a device at its end brings is raised where the joints together run
/// unevenly: power is kept, so that torque rises as the stub turns slower than the implement's shaft. Where it is not
/// known how unevenly they run, the torque is that of straight joints, and `rise_missing` says what is not stated.
PeakLoad peak_at_stub(const Case& value, PeakLoad peak, const DrivelineOverRange& range);

/// What straight joints would pass is not known while the rise is not; an objection stays.
void doubt_unless_rise_known(const std::vector<std::string>& rise_missing, Finding& finding);

/// Largest torque between the joints: a plain joint at an angle raises the torque towards the slower of its shafts by
/// up to 1/cos, twice in every turn, seen from either end.
PeakLoad peak_between_joints(const Case& value, PeakLoad peak, const DrivelineOverRange& range);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
