#pragma once
// How far a thrown object flies through still air.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/rotor/flight.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

/// Standard gravity (exact by definition).
inline constexpr Acceleration standard_gravity = metres_per_second_squared(unit::gravity_m_s2);

/// The flight of an object down to level ground.
struct Flight {
  Length distance;     ///< over the ground, to where it first touches
  Time time;           ///< in the air
  Length top;          ///< greatest height above the ground
  Speed landing_speed; ///< along the path
  Angle landing_angle; ///< below the horizontal
};

/// The launch angle that carries an object farthest, and that flight.
struct FarthestFlight {
  Angle launch_angle;
  Flight flight;
};

namespace text {
template <class M, class D> auto round_body_area(M mass, D density) noexcept {
  const auto radius = math::cbrt(3.0 * mass / (4.0 * pi * density));
  return pi * radius * radius;
}
template <class M, class A, class D>
constexpr auto drag_per_length(M mass, A area, double coefficient, D air) noexcept {
  return 0.5 * coefficient * area * air / mass;
}
} // namespace text

namespace detail {
/// Checks the inputs of a throw and returns k = rho C_d A / (2 m) [1/m].
inline double checked_drag(const char* function, Speed launch_speed, Length launch_height, Mass mass, Area area,
                           double drag_coefficient, Density air_density, Acceleration gravity) {
  check::within(launch_speed.value(), 1e-3, 1e4, {function, "launch_speed", "m/s"});
  check::within(launch_height.value(), 0.0, 1e5, {function, "launch_height", "m"});
  check::positive(mass.value(), {function, "mass", "kg"});
  check::not_negative(area.value(), {function, "area", "m²"});
  check::not_negative(drag_coefficient, {function, "drag_coefficient", ""});
  check::not_negative(air_density.value(), {function, "air_density", "kg/m³"});
  check::within(gravity.value(), 0.1, 100.0, {function, "gravity", "m/s²"});
  const double drag = text::drag_per_length(mass.value(), area.value(), drag_coefficient, air_density.value());
  const double weights = drag * launch_speed.value() * launch_speed.value() / gravity.value();
  if (!(is_finite(weights) && weights <= 1e9)) {
    check::fail({function, "mass", "kg"}, mass.value(), "so heavy that drag at launch is at most 1e9 times the weight");
  }
  return drag;
}

inline Flight to_flight(const Landing& landing) noexcept {
  return {metres(landing.x), seconds(landing.t), metres(landing.top), metres_per_second(landing.speed),
          radians(std::atan(-std::sinh(landing.slope)))};
}

/// The angle of the longest flight, from a scan and a golden section around its best point.
inline double farthest_angle(Launch launch) noexcept {
  constexpr int steps = 18;
  constexpr double step = 0.5 * pi / steps;
  const auto distance = [&launch](double angle) {
    launch.angle = angle;
    return fly(launch).x;
  };
  int best = 0;
  double best_distance = distance(0.0);
  for (int i = 1; i <= steps; ++i) {
    const double tried = distance(i * step);
    if (tried > best_distance) {
      best = i;
      best_distance = tried;
    }
  }
  constexpr double golden = 0.6180339887498949;
  double low = std::fmax(0.0, (best - 1) * step);
  double high = std::fmin(0.5 * pi, (best + 1) * step);
  double left = high - golden * (high - low);
  double right = low + golden * (high - low);
  double at_left = distance(left);
  double at_right = distance(right);
  while (high - low > 1e-7) {
    if (at_left > at_right) {
      high = right;
      right = left;
      at_right = at_left;
      left = high - golden * (high - low);
      at_left = distance(left);
    } else {
      low = left;
      left = right;
      at_left = at_right;
      right = low + golden * (high - low);
      at_right = distance(right);
    }
  }
  return 0.5 * (low + high);
}
} // namespace detail

/// Frontal area of a body of the same mass as a ball [m²].
///
/// A = pi (3 m / (4 pi rho))^(2/3)
///   mass     m    [kg], above 0
///   density  rho  of the body [kg/m³], above 0; stone about 2650
/// Exact for a ball, the least area a body of that mass can show on average: an irregular stone has more, which
/// shortens its flight. Source: geometry. Example: a stone of 50 g and 2650 kg/m³: 857 mm².
inline Area round_body_area(Mass mass, Density density) {
  check::positive(mass.value(), {"round_body_area", "mass", "kg"});
  check::positive(density.value(), {"round_body_area", "density", "kg/m³"});
  return text::round_body_area(mass, density);
}

/// The flight of a thrown object over level ground.
///
/// m dv/dt = -m g - rho C_d A v^2 / 2, against the motion; integrated along the slope (see flight.hpp)
///   launch_speed      [m/s], 0.001 to 10 000
///   launch_angle      above the horizontal [rad], -90° to 90°
///   launch_height     above the ground [m], 0 to 100 000
///   mass              [kg], above 0
///   area              frontal [m²], at least 0
///   drag_coefficient  C_d, at least 0; smooth ball 0.47, tumbling stone 0.8 to 1.2 (both from memory)
///   air_density       [kg/m³], at least 0; 1.225 at sea level
///   gravity           [m/s²], 0.1 to 100
/// Result within 1e-9 of the equation's. The equation itself is a point mass in still air: no wind, no lift of a
/// spinning or flat piece (which may carry it farther), no bounce and no rolling. Above about 240 m/s real drag is
/// larger, so that the answer errs on the far side. Source: quadratic drag, any mechanics text.
/// Example: 60 m/s at 45°, k = rho C_d A / (2 m) = 0.0025 /m, g = 9.8 m/s²: 223.27 m, 7.453 s, 68.5 m high.
inline Flight throw_flight(Speed launch_speed, Angle launch_angle, Length launch_height, Mass mass, Area area,
                           double drag_coefficient, Density air_density, Acceleration gravity = standard_gravity) {
  constexpr const char* function = "throw_flight";
  const double drag =
      detail::checked_drag(function, launch_speed, launch_height, mass, area, drag_coefficient, air_density, gravity);
  check::within(launch_angle.value(), -0.5 * pi, 0.5 * pi, {function, "launch_angle", "rad"});
  return detail::to_flight(
      detail::fly({launch_speed.value(), launch_angle.value(), launch_height.value(), drag, gravity.value()}));
}

/// Distance at which a thrown object first touches level ground [m]; everything as for throw_flight.
///
/// This is no safe distance: objects bounce, roll and are thrown at angles nobody chose. Rotary cutters are published
/// to throw farther than 300 ft. Example: see throw_flight.
inline Length throw_distance(Speed launch_speed, Angle launch_angle, Length launch_height, Mass mass, Area area,
                             double drag_coefficient, Density air_density, Acceleration gravity = standard_gravity) {
  return throw_flight(launch_speed, launch_angle, launch_height, mass, area, drag_coefficient, air_density, gravity)
      .distance;
}

/// The launch angle between 0 and 90° that carries an object farthest, and its flight; inputs as for throw_flight.
///
/// Found by a scan of 19 angles and a golden section to 1e-7 rad, at which the distance has its last digit.
/// Example: a stone of 50 g (2650 kg/m³, C_d 0.47) at 67 m/s from 0.1 m: about 190 m.
inline FarthestFlight farthest_throw(Speed launch_speed, Length launch_height, Mass mass, Area area,
                                     double drag_coefficient, Density air_density,
                                     Acceleration gravity = standard_gravity) {
  const double drag = detail::checked_drag("farthest_throw", launch_speed, launch_height, mass, area, drag_coefficient,
                                           air_density, gravity);
  detail::Launch launch{launch_speed.value(), 0.0, launch_height.value(), drag, gravity.value()};
  launch.angle = detail::farthest_angle(launch);
  return {radians(launch.angle), detail::to_flight(detail::fly(launch))};
}

} // namespace v0
} // namespace fieldshaft
