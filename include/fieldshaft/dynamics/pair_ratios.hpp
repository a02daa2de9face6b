#pragma once
// The exact speed ratio of a pair of joints at many rotations, at the speed of the processor.

#include <fieldshaft/units.hpp>

#include <cstddef>

namespace fieldshaft {
inline namespace v0 {

/// Speed of the last shaft of a pair over that of the first, at each of many rotations [-].
///
/// The pair is one matrix M = D2 R D1 of determinant 1 (handbook of joints), so that the ratio at a rotation t is
/// 1/|M u|², u = (cos t, sin t), which is 1/(p + q cos 2t + s sin 2t) with p, q, s computed once
///   front, rear, phase  as for joint_pair_speed_ratio
///   rotations           [rad], `count` of them, finite
///   ratios              where the results go, `count` of them; may be the same place as `rotations`
/// Exact; rounding about 1e-15 k², k the greatest ratio. The kernel is chosen by what the processor has. Throws
/// InputError naming the parameter; nothing is written then. Source: as joint_pair_speed_ratio.
/// Example: 20°, 10°, phase 0, rotation 0: 1.048011.
void joint_pair_speed_ratios(Angle front, Angle rear, Angle phase, const double* rotations, double* ratios,
                             std::size_t count);

} // namespace v0
} // namespace fieldshaft
