#pragma once
// Friction (slip) clutch with flat discs: torque, the force and spring setting it needs, and the pressure on its faces.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

/// How the force spreads over the faces.
enum class ClutchContact {
  uniform_wear,     ///< run-in discs: pressure times radius is the same everywhere; the lower torque
  uniform_pressure, ///< new, flat discs; 0 to 33 % more torque from the same force
};

namespace text {
/// The radius at which all of the friction could be thought to act.
template <class L> constexpr L friction_radius(L outer, L inner, ClutchContact contact) noexcept {
  if (contact == ClutchContact::uniform_wear) return 0.5 * (outer + inner);
  return (2.0 / 3.0) * (outer * outer + outer * inner + inner * inner) / (outer + inner);
}
template <class L, class F, class R>
constexpr auto disc_clutch_torque(L outer, L inner, F axial_force, R friction, R surfaces,
                                  ClutchContact contact) noexcept {
  return as_torque(surfaces * friction * axial_force * friction_radius(outer, inner, contact));
}
/// Area by which the force is divided to give the highest pressure (at the inner edge of run-in discs).
template <class L> constexpr auto pressure_area(L outer, L inner, ClutchContact contact) noexcept {
  return contact == ClutchContact::uniform_wear ? 2.0 * pi * inner * (outer - inner)
                                                : pi * (outer - inner) * (outer + inner);
}
} // namespace text

namespace detail {
constexpr void check_discs(const char* function, Length outer_radius, Length inner_radius, ClutchContact contact) {
  check::positive(outer_radius.value(), {function, "outer_radius", "m"});
  check::from_below(inner_radius.value(), 0.0, outer_radius.value(), {function, "inner_radius", "m"});
  check::within(static_cast<int>(contact), 0, 1, {function, "contact", ""});
}
constexpr void check_friction(const char* function, double friction, int surfaces) {
  check::positive(friction, {function, "friction", ""});
  check::at_least(surfaces, 1, {function, "surfaces", ""});
}
} // namespace detail

/// Torque at which a disc clutch slips [N·m].
///
/// T = n mu W r_m; r_m = (r_o + r_i) / 2 by uniform wear, 2/3 (r_o^3 - r_i^3) / (r_o^2 - r_i^2) by uniform pressure
///   outer_radius  r_o  of the faces [m], above 0
///   inner_radius  r_i  [m], from 0 to below the outer one
///   axial_force   W    of all springs together [N], at least 0
///   friction      mu   of the pair of materials, above 0
///   surfaces      n    pairs of rubbing faces (a disc gripped from both sides has two), at least 1
///   contact       uniform wear for discs that have run in
/// Clean, dry discs that are free to move: stuck ones hold several times as much, oily ones a fraction. The friction
/// coefficient is hardly known to a fifth, and so is the torque. Source: Khurmi & Gupta; Bhandari.
/// Example: 120 and 60 mm, 1403.48 N, 0.3, 4 surfaces, uniform wear: 151.58 N·m.
constexpr Torque disc_clutch_torque(Length outer_radius, Length inner_radius, Force axial_force, double friction,
                                    int surfaces, ClutchContact contact) {
  constexpr const char* function = "disc_clutch_torque";
  detail::check_discs(function, outer_radius, inner_radius, contact);
  check::not_negative(axial_force.value(), {function, "axial_force", "N"});
  detail::check_friction(function, friction, surfaces);
  return text::disc_clutch_torque(outer_radius, inner_radius, axial_force, friction, static_cast<double>(surfaces),
                                  contact);
}

/// Axial force that a disc clutch needs for a torque [N].
///
/// W = T / (n mu r_m)
///   torque  T  at which it shall slip [N·m], at least 0
///   others, validity and source as for disc_clutch_torque
/// Example: 151.576 N·m with the clutch above: 1403.48 N.
constexpr Force disc_clutch_force(Length outer_radius, Length inner_radius, Torque torque, double friction,
                                  int surfaces, ClutchContact contact) {
  constexpr const char* function = "disc_clutch_force";
  detail::check_discs(function, outer_radius, inner_radius, contact);
  check::not_negative(torque.value(), {function, "torque", "N·m"});
  detail::check_friction(function, friction, surfaces);
  return without_radian(torque) /
         (static_cast<double>(surfaces) * friction * text::friction_radius(outer_radius, inner_radius, contact));
}

/// Highest pressure on the faces of a disc clutch [Pa].
///
/// Uniform wear p = W / (2 pi r_i (r_o - r_i)), at the inner edge; uniform pressure p = W / (pi (r_o^2 - r_i^2))
///   axial_force  W  on one pair of faces, which is that of all springs [N], at least 0
///   others as for disc_clutch_torque; inner radius above 0 with uniform wear
/// Compare it with what the lining's maker states. Source: Khurmi & Gupta.
/// Example: 120 and 60 mm, 1403.48 N, uniform wear: 62 048 Pa.
constexpr Stress disc_clutch_pressure(Length outer_radius, Length inner_radius, Force axial_force,
                                      ClutchContact contact) {
  constexpr const char* function = "disc_clutch_pressure";
  detail::check_discs(function, outer_radius, inner_radius, contact);
  if (contact == ClutchContact::uniform_wear) {
    check::positive(inner_radius.value(), {function, "inner_radius", "m"});
  }
  check::not_negative(axial_force.value(), {function, "axial_force", "N"});
  return axial_force / text::pressure_area(outer_radius, inner_radius, contact);
}

/// Axial force that brings the faces of a disc clutch to a pressure [N]; the inverse of disc_clutch_pressure.
///
///   pressure  highest on the faces [Pa], at least 0
/// Example: 125 and 75 mm, 0.127 MPa, uniform wear: 2992.4 N.
constexpr Force disc_clutch_force_at_pressure(Length outer_radius, Length inner_radius, Stress pressure,
                                              ClutchContact contact) {
  constexpr const char* function = "disc_clutch_force_at_pressure";
  detail::check_discs(function, outer_radius, inner_radius, contact);
  check::not_negative(pressure.value(), {function, "pressure", "Pa"});
  return pressure * text::pressure_area(outer_radius, inner_radius, contact);
}

/// Force of equal springs that are compressed alike [N].
///
/// W = n k x
///   springs      n  at least 1
///   rate         k  of one spring [N/m], above 0
///   compression  x  from free length, all alike [m], at least 0
/// Measure the length of every spring: unequal ones tilt the plate and spread the torque. Source: linear spring.
/// Example: 8 springs of 60 N/mm compressed by 4 mm: 1920 N.
constexpr Force spring_force(int springs, ForcePerLength rate, Length compression) {
  constexpr const char* function = "spring_force";
  check::at_least(springs, 1, {function, "springs", ""});
  check::positive(rate.value(), {function, "rate", "N/m"});
  check::not_negative(compression.value(), {function, "compression", "m"});
  return static_cast<double>(springs) * rate * compression;
}

/// Compression from free length at which equal springs give a force [m], and whether they reach it.
///
/// x = W / (n k)
///   force               W  of all springs together [N], at least 0
///   springs, rate       as for spring_force
///   compression_at_bind    at which the coils touch [m], above 0: a spring that is bound cannot let the discs slip
/// At or beyond coil-bind the result is said to be outside.
/// Example: 1920 N with 8 springs of 60 N/mm: 4 mm.
constexpr Validated<Length> spring_compression(Force force, int springs, ForcePerLength rate,
                                               Length compression_at_bind) {
  constexpr const char* function = "spring_compression";
  check::not_negative(force.value(), {function, "force", "N"});
  check::at_least(springs, 1, {function, "springs", ""});
  check::positive(rate.value(), {function, "rate", "N/m"});
  check::positive(compression_at_bind.value(), {function, "compression_at_bind", "m"});
  const Length compression = force / (static_cast<double>(springs) * rate);
  return {compression, compression < compression_at_bind ? nullptr : "the springs bind, and the clutch cannot slip"};
}

} // namespace v0
} // namespace fieldshaft
