#pragma once
// How far joints may be angled by the practice of the trade. No standard text states a limit: the manual of the shaft
// comes before every figure here.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

/// Where schools differ: up to `low` all agree, beyond `high` none allows it, between them they disagree.
struct JointAngleBand {
  Sourced<Angle> low;
  Sourced<Angle> high;
};

/// The angles of one kind of joint in the three states of a driveline.
struct JointAnglePractice {
  JointAngleBand working; ///< turning under load for long
  JointAngleBand turning; ///< turning briefly with little load, as on a headland; disengaged beyond
  JointAngleBand at_rest; ///< not turning
};

namespace detail {
constexpr Sourced<Angle> angle_of_practice(double degree, const char* text) {
  return {degrees(degree), {text, Standing::common_practice}};
}
} // namespace detail

/// Plain (single Cardan) joints, both at equal angles.
inline constexpr JointAnglePractice plain_joint_practice{
    {detail::angle_of_practice(15.0, "advised for smooth running and long life"),
     detail::angle_of_practice(25.0, "commonly the highest continuous angle")},
    {detail::angle_of_practice(25.0, "lifted at the headland: 25° to 30° at most, disengage beyond"),
     detail::angle_of_practice(45.0, "briefly, at reduced power; disengage beyond, or with unequal angles")},
    {detail::angle_of_practice(90.0, "not turning"), detail::angle_of_practice(90.0, "not turning")}};

/// Wide-angle (double Cardan, constant velocity) joints. How wide they go depends on the shaft.
inline constexpr JointAnglePractice wide_angle_joint_practice{
    {detail::angle_of_practice(25.0, "highest continuous angle"),
     detail::angle_of_practice(25.0, "highest continuous angle")},
    {{degrees(70.0), {"some shafts: 70° to 75° briefly", Standing::from_memory}},
     detail::angle_of_practice(80.0, "briefly")},
    {{degrees(70.0), {"some shafts: 70° to 75° at most", Standing::from_memory}},
     detail::angle_of_practice(80.0, "not turning")}};

} // namespace v0
} // namespace fieldshaft
