#pragma once
// Advice of one finding that another one answers better gives way: a person who follows a list from top to bottom must
// not meet the same order twice, nor one that forbids another.

#include <fieldshaft/assess/finding.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Overlap and clearance give way to the one answer of the cut list, guard tubes to an order that tells what to do with
/// them as well.
void settle_lengths(Assessment& assessment);

/// What objects within the turn as stated, beside the limits that the turn's own answer goes by, is said there as well:
/// "no rule objects" must not be read as more than it says.
void settle_turn(Assessment& assessment);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
