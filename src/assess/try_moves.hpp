#pragma once
// Advice to move pin or input shaft, or to cut, tried over the whole range before it is given.

#include "assess/geometry.hpp"

#include <fieldshaft/assess/finding.hpp>
#include <fieldshaft/case/case.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Leaves one way to make unequal joint angles more equal: of those that make no finding worse the one that leaves the
/// least difference, for two together may undo each other. A pin or input shaft beside the line of the stub is tried
/// too. A pin outside its holes comes first. Where what helps breaks something else, that is said instead.
void try_moves(const Case& value, Assessment& assessment);

/// Assesses the case after the cut that is advised. Where that makes a finding worse no cut is ordered, and the finding
/// is named. Lengths alone change, so that the driveline over its range is the one that was examined.
void try_cut(const Case& value, const DrivelineOverRange& range, Assessment& assessment);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
