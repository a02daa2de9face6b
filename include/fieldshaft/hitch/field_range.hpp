#pragma once
// Ranges of the attitude from what can be measured in the field: turning radius, crest or hollow, and side slope.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

#include <cmath>

namespace fieldshaft {
inline namespace v0 {

/// Angle between tractor and trailed implement in a steady turn [rad].
///
/// angle = atan(h/R) + atan(t/sqrt(R² + h² - t²))
///   radius    R  turning radius of the middle of the tractor's rear axle [m], above 0
///   overhang  h  rear axle to pin, rearwards [m], at least 0
///   tongue    t  pin to the implement's axle [m], above 0 and at most sqrt(R² + h²)
/// Steady: entered and held long enough; wheels do not slip sideways. Turning in or backing up can bend further. The
/// yaw is minus this angle in a left turn. A tongue longer than the pin's radius never settles and is impossible input.
/// Source: all axles point to the centre of the turn. Example: 5 m, 0.9 m, 3 m: 46.4°.
inline Angle steady_turn_angle(Length radius, Length overhang, Length tongue) {
  constexpr const char* name = "steady_turn_angle";
  check::positive(radius.value(), {name, "radius", "m"});
  check::not_negative(overhang.value(), {name, "overhang", "m"});
  const double pin_radius = std::hypot(radius.value(), overhang.value());
  check::positive(tongue.value(), {name, "tongue", "m"});
  check::within(tongue.value(), 0.0, pin_radius, {name, "tongue", "m"});
  return radians(std::atan2(overhang.value(), radius.value()) + std::asin(tongue.value() / pin_radius));
}

/// Wheels of tractor and implement along the machine.
struct WheelPlaces {
  Length wheelbase{};  ///< tractor's front to rear axle
  Length overhang{};   ///< rear axle to pin, rearwards
  Length tongue{};     ///< pin to the implement's axle
  Length pin_height{}; ///< pin above the ground, both machines level
};

namespace detail {

/// Pitch on a ground that is an arc of a circle, its centre above (side +1) or below (-1).
inline double arc_pitch(const WheelPlaces& w, double radius, double side, const char* name) {
  check::positive(w.wheelbase.value(), {name, "wheelbase", "m"});
  check::not_negative(w.overhang.value(), {name, "overhang", "m"});
  check::positive(w.tongue.value(), {name, "tongue", "m"});
  check::not_negative(w.pin_height.value(), {name, "pin_height", "m"});
  check::at_least(radius, 0.5 * w.wheelbase.value(), {name, "radius", "m"});
  const double half = 0.5 * w.wheelbase.value();
  // From the arc's centre to the pin, seen from the rear wheel's foot; and from the pin to the implement's wheel foot.
  const double x = -w.overhang.value() - half;
  const double z = w.pin_height.value() - side * std::sqrt((radius - half) * (radius + half));
  const double reach = std::hypot(x, z);
  const double arm = std::hypot(w.tongue.value(), w.pin_height.value());
  const double cosine = (radius * radius - reach * reach - arm * arm) / (2.0 * reach * arm);
  check::within(cosine, -1.0, 1.0, {name, "cosine of the triangle of pin, wheel and centre", ""});
  const double base = std::atan2(-w.pin_height.value(), -w.tongue.value()) - std::atan2(z, x);
  const double one = std::remainder(base - std::acos(cosine), 2.0 * pi);
  const double other = std::remainder(base + std::acos(cosine), 2.0 * pi);
  return std::abs(one) < std::abs(other) ? one : other;
}

} // namespace detail

/// Pitch of a trailed implement in a hollow [rad], above 0.
///
/// The feet of the tractor's two axles and of the implement's axle stand on an arc of the radius; triangle of pin, foot
/// and centre
///   wheels  wheelbase and tongue above 0, overhang and pin height at least 0
///   radius  of the hollow along the driving direction [m], at least half the wheelbase
/// Wheels touch straight below their axles, which is exact for wheels that are small against the radius.
/// Source: geometry; compared with a search in the tests. Example: 2.5, 0.9, 3, 0.5 m on 20 m: 12.20° (crest: -11.60°).
inline Angle hollow_pitch(const WheelPlaces& wheels, Length radius) {
  return radians(detail::arc_pitch(wheels, radius.value(), 1.0, "hollow_pitch"));
}

/// Pitch of a trailed implement on a crest [rad], below 0. Symbols as for hollow_pitch.
inline Angle crest_pitch(const WheelPlaces& wheels, Length radius) {
  return radians(detail::arc_pitch(wheels, radius.value(), -1.0, "crest_pitch"));
}

/// Roll between tractor and implement where one of them has a wheel lower, as in a furrow [rad].
///
/// roll = asin(drop/track)
///   drop   of one wheel below the other [m], at least 0
///   track  between the wheels [m], above 0, at least the drop
/// Exact for narrow wheels. Source: geometry. Example: 250 mm on 1.8 m: 7.98°.
inline Angle wheel_drop_roll(Length drop, Length track) {
  check::positive(track.value(), {"wheel_drop_roll", "track", "m"});
  check::within(drop.value(), 0.0, track.value(), {"wheel_drop_roll", "drop", "m"});
  return radians(std::asin(drop / track));
}

/// Roll between a tractor and an implement that stand on different side slopes [rad].
///
/// roll = atan(implement_slope) - atan(tractor_slope)
///   tractor_slope, implement_slope  rise to the left over distance [-], any
/// On one even slope both lean alike and the roll is 0. Source: definition. Example: level tractor, implement on 20
/// %: 11.3°.
inline Angle side_slope_roll(double tractor_slope, double implement_slope) {
  check::finite(tractor_slope, {"side_slope_roll", "tractor_slope", ""});
  check::finite(implement_slope, {"side_slope_roll", "implement_slope", ""});
  return radians(std::atan(implement_slope) - std::atan(tractor_slope));
}

} // namespace v0
} // namespace fieldshaft
