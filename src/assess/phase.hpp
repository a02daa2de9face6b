#pragma once
// How the yokes of the intermediate shaft stand against each other.

#include "assess/context.hpp"
#include "assess/geometry.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Whether another phase of the yokes, or another position of the telescope, would run smoother.
void check_phase(const Case& value, const DrivelineOverRange& range, Findings& findings);

/// How unevenly the implement's shaft turns at the worst of the positions looked at, as a share of the PTO speed: with
/// the yokes as they stand, and as they would best stand.
struct UnevenRunning {
  double stated;
  Angle best_phase;
  double best;
};

/// Of two plain joints; nothing where their phase or kind is not stated, or where a joint passes a right angle.
std::optional<UnevenRunning> uneven_running(const Case& value, const DrivelineOverRange& range);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
