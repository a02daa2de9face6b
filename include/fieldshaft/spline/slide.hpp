#pragma once
// Splines that slide: the force it takes under torque, where it goes, and over what length teeth really touch.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/spline/spline.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
template <class T, class L, class R> constexpr auto slide_force(T torque, L diameter, R friction, R cosine) noexcept {
  return 2.0 * friction * without_radian(torque) / (diameter * cosine);
}
} // namespace text

/// Force that it takes to slide a splined joint along under torque [N].
///
/// F = mu T / (r cos f): friction of the force on the flanks at their mean radius r = D/2
///   torque            T   [N·m], at least 0
///   bearing_diameter  D   mean or pitch diameter [m], above 0
///   friction          mu  from 0 to 1
///   flank_angle       f   between flank and radius [rad], from 0, below 90°; books leave it out for straight teeth
/// Friction is the uncertain part: a greased telescope has 0.05 to 0.1, a dry or rusty one several times that (common
/// practice, no source). Source: Bhandari, Design of Machine Elements, spline example (f = 0).
/// Example: 636.620 N·m on 56 mm, 0.06: 1364.19 N.
inline Force slide_force(Torque torque, Length bearing_diameter, double friction, Angle flank_angle = {}) {
  constexpr const char* function = "slide_force";
  check::not_negative(torque.value(), {function, "torque", "N·m"});
  check::positive(bearing_diameter.value(), {function, "bearing_diameter", "m"});
  check::within(friction, 0.0, 1.0, {function, "friction", ""});
  check::from_below(flank_angle.value(), 0.0, pi / 2.0, {function, "flank_angle", "rad"});
  return text::slide_force(torque, bearing_diameter, friction, math::cos(flank_angle));
}
/// The same for a spline, with the angle of its flanks.
inline Force slide_force(const Spline& spline, Torque torque, double friction) {
  return slide_force(torque, spline.bearing_diameter(), friction, spline.flank_angle());
}

/// The forces of a telescope that slides under torque on the two shafts it joins.
struct TelescopeThrust {
  Force front_axial; ///< along the PTO shaft: on the tractor's bearing
  Force front_side;  ///< across it, in the plane of the joint: bends the stub over its overhang
  Force rear_axial;  ///< along the implement's input shaft
  Force rear_side;
};

/// Where the force of a sliding telescope goes [N].
///
/// F cos b along each shaft, F sin b across it
///   force                    F  that it takes to slide, see slide_force [N], at least 0
///   front_angle, rear_angle  b  of the two joints [rad], from 0, below 90°
/// The force pushes both shafts apart while the driveline shortens and pulls them together while it lengthens.
/// Source: balance of forces. Example: 5000 N at 20°: 4698 N along and 1710 N across.
inline TelescopeThrust telescope_thrust(Force force, Angle front_angle, Angle rear_angle) {
  constexpr const char* function = "telescope_thrust";
  check::not_negative(force.value(), {function, "force", "N"});
  check::from_below(front_angle.value(), 0.0, pi / 2.0, {function, "front_angle", "rad"});
  check::from_below(rear_angle.value(), 0.0, pi / 2.0, {function, "rear_angle", "rad"});
  return {force * math::cos(front_angle), force * math::sin(front_angle), force * math::cos(rear_angle),
          force * math::sin(rear_angle)};
}

/// Misalignment of hub to shaft that straight teeth bear, and crowned ones; beyond, wear becomes a serious problem.
inline constexpr Sourced<Angle> straight_tooth_misalignment{
    degrees(1.0), {"Machinery's Handbook, 27th ed., involute splines: less than 1°", Standing::published}};
inline constexpr Sourced<Angle> crowned_tooth_misalignment{
    degrees(5.0), {"Machinery's Handbook, 27th ed., involute splines: up to about 5°", Standing::published}};

/// Width of a round groove at the surface of the teeth [m].
///
/// 2 sqrt(r^2 - (r - h)^2), h = (D - d)/2; 2 r once the groove is deeper than its radius
///   major_diameter   D  over the teeth [m], above d
///   groove_diameter  d  at its bottom [m], above 0
///   groove_radius    r  [m], above 0
/// Source: geometry. Example: 34.79 mm, 29.4 mm, radius 6.8 mm: 10.84 mm.
inline Length groove_width(Length major_diameter, Length groove_diameter, Length groove_radius) {
  constexpr const char* function = "groove_width";
  check::positive(major_diameter.value(), {function, "major_diameter", "m"});
  check::between(groove_diameter.value(), 0.0, major_diameter.value(), {function, "groove_diameter", "m"});
  check::positive(groove_radius.value(), {function, "groove_radius", "m"});
  const Length depth = 0.5 * (major_diameter - groove_diameter);
  if (depth >= groove_radius) return 2.0 * groove_radius;
  return 2.0 * math::sqrt(depth * (2.0 * groove_radius - depth));
}

/// Length over which the teeth of hub and shaft touch [m].
///
/// The lesser of the hub's splined length and the shaft's useful one, less the width of a groove inside them
///   hub_length     splined length of the hub [m], above 0
///   useful_length  of the shaft's spline that the hub can cover [m], above 0
///   groove_width   of the retaining groove, 0 if it lies outside [m], below both
/// Source: geometry. Example: hub 70 mm, shaft 76 mm, groove 10.84 mm: 59.16 mm.
constexpr Length engaged_length(Length hub_length, Length useful_length, Length groove_width = {}) {
  constexpr const char* function = "engaged_length";
  check::positive(hub_length.value(), {function, "hub_length", "m"});
  check::positive(useful_length.value(), {function, "useful_length", "m"});
  const Length covered = hub_length < useful_length ? hub_length : useful_length;
  check::from_below(groove_width.value(), 0.0, covered.value(), {function, "groove_width", "m"});
  return covered - groove_width;
}

} // namespace v0
} // namespace fieldshaft
