#pragma once
// Which PTO speeds count as an implement's own.

#include <fieldshaft/pto.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// How far a PTO speed may lie from the implement's and still be the same speed; with its source.
PtoSpeedTolerance tolerance_for(AngularSpeed implement_speed);

/// The same with the rounding that a comparison needs: 530 r/min is within 10 r/min of 540.
AngularSpeed speed_tolerance(AngularSpeed implement_speed);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
