#pragma once
// How the yokes of the intermediate shaft stand against each other.

#include "assess/context.hpp"
#include "assess/geometry.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Whether another phase of the yokes, or another position of the telescope, would run smoother.
void check_phase(const Case& value, const DrivelineOverRange& range, Findings& findings);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
