#pragma once
// Torque of the driveline under everything that pulses, at all working speeds.

#include "assess/context.hpp"
#include "assess/geometry.hpp"
#include "assess/overload.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Mean torque and the swings of all pulses together against the joints' rating and the yield of the weakest part.
void check_pulsing_torque(const Case& value, const Chain& chain, const MeanLoad& mean, const DrivelineOverRange& range,
                          Findings& findings);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
