#pragma once
// Advice of one finding that another one answers better gives way: a person who follows a list from top to bottom must
// not meet the same order twice, nor one that forbids another.

#include <fieldshaft/assess/finding.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Overlap and clearance give way to the one answer of the cut list, guard tubes to a cut that takes enough from them.
void settle_lengths(Assessment& assessment);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
