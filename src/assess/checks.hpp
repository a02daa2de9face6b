#pragma once
// The checks of an assessment, in the order in which they run and are reported.

#include "assess/context.hpp"
#include "assess/geometry.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

void check_speed(const Case& value, Findings& findings);
void check_fit(const Case& value, Findings& findings);
void check_adaptor(const Case& value, Findings& findings);
/// The same with what the adaptor does to angles and lengths.
void check_adaptor_over(const Case& value, const DrivelineOverRange& range, Findings& findings);
/// Rotation, and place and drive of the PTO.
void check_place(const Case& value, Findings& findings);
void check_power(const Case& value, Findings& findings);
void check_strength(const Case& value, const DrivelineOverRange& range, Findings& findings);
void check_drawbar(const Case& value, Findings& findings);
/// The measurements of a three-point linkage against its category.
void check_linkage(const Case& value, Findings& findings);
void check_driveline(const Case& value, const DrivelineOverRange& range, Findings& findings);
/// Yokes that touch, and a wide-angle joint whose centre is not over the pin.
void check_joints(const Case& value, const DrivelineOverRange& range, Findings& findings);
/// Phase of the yokes, torque swing of uneven joints, whirling, and resonance of the torsional line.
void check_vibration(const Case& value, const DrivelineOverRange& range, Findings& findings);
/// The section behind an intermediate bearing, and how unevenly all joints together turn.
void check_fixed_section(const Case& value, const DrivelineOverRange& range, Findings& findings);
/// Every branch by its name; what is proved of those that are fully stated.
std::vector<BranchEnvelopeOfCase> check_branches(const Case& value, Findings& findings);
/// Lengths to cut and guard tubes.
void check_cut_list(const Case& value, const DrivelineOverRange& range, Findings& findings);
void check_guard_tubes(const Case& value, const DrivelineOverRange& range, Findings& findings);
void check_turn_limit(const Case& value, const DrivelineOverRange& range, Findings& findings);
/// The curve of that limit over the pitch, for a picture; empty where there is no limit to draw.
std::vector<TurnAtPitch> turn_curve(const Case& value, const DrivelineOverRange& range);
void check_lift_limit(const Case& value, const DrivelineOverRange& range, Findings& findings);
void check_fouling(const Case& value, const DrivelineOverRange& range, Findings& findings);
/// The model against lengths measured by hand. Where they disagree no pass of the geometry stands.
void check_by_hand(const Case& value, Findings& findings);
void check_rotor(const Case& value, Findings& findings);
void check_guards(const Case& value, Findings& findings);

/// An assessment of a case whose driveline was examined already.
Assessment assess_over(const Case& value, const DrivelineOverRange& range, Depth depth);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
