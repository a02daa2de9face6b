#pragma once
// Shear bolt: the torque at which it goes, at both ends of its strength, and the bolt that is needed.

#include <fieldshaft/materials/bolt.hpp>
#include <fieldshaft/materials/shear.hpp>
#include <fieldshaft/overload/band.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The shear strengths, as shares of the tensile strength, between which a steel bolt goes. The schools differ by a
/// third (see shear_ratio); a bolt that must go in time is judged by the highest.
inline constexpr Sourced<double> least_bolt_shear_ratio{
    0.577, {"distortion energy, the lowest ratio in use for bolts", Standing::from_memory}};
inline constexpr Sourced<double> greatest_bolt_shear_ratio{
    0.8, {"S_su = 0.8 S_u for steel (Juvinall and Marshek; Norton)", Standing::from_memory}};

namespace text {
template <class L, class S, class R>
constexpr auto shear_bolt_torque(L diameter, L arm, S shear_strength, R bolts, R planes) noexcept {
  return as_torque(bolts * planes * (pi / 4.0) * diameter * diameter * shear_strength * arm);
}
} // namespace text

namespace detail {
constexpr void check_bolts(const char* function, Length arm, int bolts, int planes) {
  check::positive(arm.value(), {function, "arm", "m"});
  check::at_least(bolts, 1, {function, "bolts", ""});
  check::at_least(planes, 1, {function, "planes", ""});
}
} // namespace detail

/// Torque at which shear bolts go [N·m].
///
/// T = n m (pi/4) d^2 tau R
///   diameter        d    in the shear plane: of the shank, or thread_stress_diameter of the thread [m], above 0
///   arm             R    from the shaft's axis to the bolt's axis [m], above 0
///   shear_strength  tau  ultimate [Pa], above 0
///   bolts           n    that share the torque evenly, at least 1
///   planes          m    shear planes of each bolt, at least 1 (a pin across a shaft has two, with R half the
///   diameter)
/// Tight joint without play: a loose bolt bends and goes earlier. One bolt is the rule, since several never share
/// evenly. Source: shear force over area. Example: M8 shank, 75 mm, 480 MPa: 1809.6 N·m.
constexpr Torque shear_bolt_torque(Length diameter, Length arm, Stress shear_strength, int bolts, int planes) {
  constexpr const char* function = "shear_bolt_torque";
  check::positive(diameter.value(), {function, "diameter", "m"});
  detail::check_bolts(function, arm, bolts, planes);
  check::positive(shear_strength.value(), {function, "shear_strength", "Pa"});
  return text::shear_bolt_torque(diameter, arm, shear_strength, static_cast<double>(bolts),
                                 static_cast<double>(planes));
}

/// Diameter in the shear plane of bolts that go at a torque [m].
///
/// d = sqrt(4 T / (pi n m tau R))
///   torque  T  at which they go [N·m], above 0
///   others, validity and source as for shear_bolt_torque
/// Take the nearest size that is made and judge it by shear_bolt_band. Example: 74.804 N·m, 25 mm, 303 MPa, two planes:
/// 2.507 mm.
inline Length shear_bolt_diameter(Torque torque, Length arm, Stress shear_strength, int bolts, int planes) {
  constexpr const char* function = "shear_bolt_diameter";
  check::positive(torque.value(), {function, "torque", "N·m"});
  detail::check_bolts(function, arm, bolts, planes);
  check::positive(shear_strength.value(), {function, "shear_strength", "Pa"});
  const Area area =
      without_radian(torque) / (static_cast<double>(bolts) * static_cast<double>(planes) * shear_strength * arm);
  return math::sqrt(Area(area * (4.0 / pi)));
}

/// Lowest and highest torque at which bolts of a strength go [N·m].
///
/// low T(r_1 S_min), high T(r_2 S_max), T by shear_bolt_torque
///   ultimate_min, ultimate_max    S    both ends of the tensile strength [Pa], above 0, in order
///   least_ratio, greatest_ratio   r    shear over tensile strength, above 0, in order, at most 1
///   others as for shear_bolt_torque
/// The lowest must exceed the peak working torque, the highest must stay below what the weakest part bears: see
/// device_window. Source: see the two default ratios.
/// Example: M8 shank, 75 mm, class 8.8 (800 to 1030 MPa): 1740 to 3106 N·m.
constexpr TorqueBand shear_bolt_band(Length diameter, Length arm, Stress ultimate_min, Stress ultimate_max, int bolts,
                                     int planes, double least_ratio = least_bolt_shear_ratio.value,
                                     double greatest_ratio = greatest_bolt_shear_ratio.value) {
  constexpr const char* function = "shear_bolt_band";
  check::positive(ultimate_min.value(), {function, "ultimate_min", "Pa"});
  check::at_least(ultimate_max.value(), ultimate_min.value(), {function, "ultimate_max", "Pa"});
  check::positive(least_ratio, {function, "least_ratio", ""});
  check::within(greatest_ratio, least_ratio, 1.0, {function, "greatest_ratio", ""});
  return {shear_bolt_torque(diameter, arm, least_ratio * ultimate_min, bolts, planes),
          shear_bolt_torque(diameter, arm, greatest_ratio * ultimate_max, bolts, planes)};
}

/// The same for a bolt grade; `diameter` is that in the shear plane.
constexpr TorqueBand shear_bolt_band(Length diameter, Length arm, const BoltGrade& grade, int bolts, int planes,
                                     double least_ratio = least_bolt_shear_ratio.value,
                                     double greatest_ratio = greatest_bolt_shear_ratio.value) {
  return shear_bolt_band(diameter, arm, grade.ultimate_min, grade.ultimate_max, bolts, planes, least_ratio,
                         greatest_ratio);
}

} // namespace v0
} // namespace fieldshaft
