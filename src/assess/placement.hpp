#pragma once
// Where pin or input shaft would have to stand so that the joints bend more equally.

#include "assess/context.hpp"
#include "assess/geometry.hpp"

#include <fieldshaft/pto.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Prints of one and the same hole differ by up to 8 mm (350, 356 and 358 mm for 14 in), so a hole counts as met
/// within a little more than that.
constexpr Length hole_tolerance = millimetres(10.0);

/// The words for a position of the drawbar.
const char* position_phrase(DrawbarPosition position);

/// Adds reason, numbers and advice to a finding on unequal joint angles in work of a trailed machine: where the pin
/// lies between the joints; the hole for PTO work, if another one of the stub's type is better, and the place of the
/// input shaft behind the pin as it stands, each with how evenly the shaft would turn there. Never a hole that is not
/// for PTO work, nor one of another type. Nothing where no such finding was made.
void advise_placement(const Case& value, const DrivelineOverRange& range, Assessment& assessment);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
