#pragma once
// How long and how many turns a rotor runs on after the drive is cut.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
/// atan(sqrt q) / sqrt q, the share of the frictional run-down time that windage leaves; one at q = 0.
template <class R> auto windage_time_share(R q) noexcept {
  const auto root = math::sqrt(q);
  return q > 0.0 ? math::atan(root) / root : R(1.0);
}
/// ln(1 + q) / q, the same for the turns.
template <class R> auto windage_turn_share(R q) noexcept { return q > 0.0 ? math::log1p(q) / q : R(1.0); }
template <class I, class W, class T> auto run_down_time(I inertia, W speed, T friction, T windage) noexcept {
  const auto without_windage = inertia * speed / friction;
  return without_windage * windage_time_share(windage / friction);
}
template <class I, class W, class T> auto run_down_angle(I inertia, W speed, T friction, T windage) noexcept {
  const auto without_windage = 0.5 * inertia * speed * speed / friction;
  return without_windage * windage_turn_share(windage / friction);
}
} // namespace text

namespace detail {
constexpr void check_run_down(const char* function, MomentOfInertia inertia, AngularSpeed speed, Torque friction_torque,
                              Torque windage_torque) {
  check::not_negative(inertia.value(), {function, "inertia", "kg·m²"});
  check::not_negative(speed.value(), {function, "speed", "rad/s"});
  check::positive(friction_torque.value(), {function, "friction_torque", "N·m"});
  check::not_negative(windage_torque.value(), {function, "windage_torque", "N·m"});
}
} // namespace detail

/// Time for a rotor to come to rest after the drive is cut [s].
///
/// t = I w / T_f atan(sqrt q) / sqrt q with q = T_w / T_f; without windage t = I w / T_f
///   inertia          I    of all that runs on, at the rotor [kg·m²], at least 0
///   speed            w    at which the drive is cut [rad/s], at least 0
///   friction_torque  T_f  that stays the same down to rest [N·m], above 0
///   windage_torque   T_w  of the air at that speed [N·m], at least 0; it falls with the square of the speed
/// Exact for these two torques; a real friction torque varies, so that the result is an estimate and never a waiting
/// time: wait until everything stands still. Windage alone never stops a rotor, hence T_f above 0.
/// Source: integration of I dw/dt = -T_f - T_w (w/w0)^2.
/// Example: 4 kg·m² at 1040 r/min with 5 N·m of friction: 87.1 s; with 20 N·m of windage besides: 48.2 s.
inline Time run_down_time(MomentOfInertia inertia, AngularSpeed speed, Torque friction_torque,
                          Torque windage_torque = newton_metres(0)) {
  detail::check_run_down("run_down_time", inertia, speed, friction_torque, windage_torque);
  return text::run_down_time(inertia, speed, friction_torque, windage_torque);
}

/// Angle through which a rotor turns until it is at rest [rad]; 2 pi of it are a turn.
///
/// phi = I w^2 / (2 T_f) ln(1 + q) / q with q = T_w / T_f; parameters, validity and source as for run_down_time.
/// Example: 4 kg·m² at 1040 r/min with 5 N·m of friction: 4744.4 rad = 755 turns.
inline Angle run_down_angle(MomentOfInertia inertia, AngularSpeed speed, Torque friction_torque,
                            Torque windage_torque = newton_metres(0)) {
  detail::check_run_down("run_down_angle", inertia, speed, friction_torque, windage_torque);
  return text::run_down_angle(inertia, speed, friction_torque, windage_torque);
}

} // namespace v0
} // namespace fieldshaft
