#pragma once
// Start of the rotor, blockage and run-down, by simulation in time.

#include "assess/context.hpp"
#include "assess/geometry.hpp"
#include "assess/overload.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Peak torques of a start and of a blocked rotor against the weakest part, and the heat of the PTO clutch.
void check_start(const Case& value, const Chain& chain, const DrivelineOverRange& range, Findings& findings);

/// How long the rotor runs on after the drive is cut.
void check_run_down(const Case& value, Findings& findings);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
