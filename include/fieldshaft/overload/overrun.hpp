#pragma once
// Overrunning and cut-out clutches: what the rotor does to the tractor without one, how it runs on with one, and what
// a tripped cut-out clutch still carries.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/overload/band.hpp>
#include <fieldshaft/rotor/energy.hpp>
#include <fieldshaft/rotor/run_down.hpp>

namespace fieldshaft {
inline namespace v0 {

/// A rotor that runs on behind an overrunning clutch until it stands.
struct OverrunCoast {
  Time time;
  Angle angle;   ///< 2 pi of it are a turn
  Energy energy; ///< that friction and air take out of it
};

/// Shares of the trip torque that a cut-out clutch still carries when it has tripped, until the PTO is stopped.
inline constexpr Source cut_out_source{"cut-out clutches drop to about 10 to 20 % when tripped", Standing::from_memory};
inline constexpr Sourced<double> least_cut_out_share{0.10, cut_out_source};
inline constexpr Sourced<double> greatest_cut_out_share{0.20, cut_out_source};

namespace text {
template <class I, class R> constexpr I referred_inertia(I inertia, R ratio) noexcept {
  return inertia * ratio * ratio;
}
} // namespace text

/// Inertia as it is felt at the input of a gear train [kg·m²].
///
/// I_1 = I_2 g^2
///   inertia  I_2  at the output [kg·m²], at least 0
///   ratio    g    output speed over input speed, above 0
/// Exact for stiff gears; their own inertia left out. Source: kinetic energy.
/// Example: 4 kg·m² behind a step-up of 1.926: 14.84 kg·m².
constexpr MomentOfInertia referred_inertia(MomentOfInertia inertia, double ratio) {
  check::not_negative(inertia.value(), {"referred_inertia", "inertia", "kg·m²"});
  check::positive(ratio, {"referred_inertia", "ratio", ""});
  return text::referred_inertia(inertia, ratio);
}

/// Mean torque with which an implement without overrunning clutch drives the tractor while the PTO slows down [N·m].
///
/// T = I w / t - T_f; 0 if friction alone is faster
///   inertia          I    at the PTO (see referred_inertia) [kg·m²], at least 0
///   speed            w    of the PTO when the drive is cut [rad/s], at least 0
///   stopping_time    t    in which the tractor brings the PTO to rest [s], above 0
///   friction_torque  T_f  of the implement at the PTO [N·m], at least 0
/// Even deceleration; peaks are higher. This torque pushes a tractor whose transmission is still joined to its PTO, and
/// turns the driveline's load round. Source: I dw/dt. Example: 15 kg·m² at 540 r/min in 2 s, 20 N·m: 404 N·m.
constexpr Torque overrun_torque(MomentOfInertia inertia, AngularSpeed speed, Time stopping_time,
                                Torque friction_torque) {
  constexpr const char* function = "overrun_torque";
  check::not_negative(inertia.value(), {function, "inertia", "kg·m²"});
  check::not_negative(speed.value(), {function, "speed", "rad/s"});
  check::positive(stopping_time.value(), {function, "stopping_time", "s"});
  check::not_negative(friction_torque.value(), {function, "friction_torque", "N·m"});
  const Torque braking = inertia * speed / stopping_time;
  return braking > friction_torque ? Torque(braking - friction_torque) : newton_metres(0);
}

/// How a rotor runs on behind an overrunning clutch once the PTO stands [s, rad, J].
///
/// run_down_time and run_down_angle of the rotor with the clutch's drag added to its friction
///   inertia, speed, friction_torque, windage_torque  of the rotor, as for run_down_time; all at the same shaft
///   clutch_drag  of the overrunning clutch [N·m], at least 0
/// An estimate, never a waiting time: the driveline stands while the blades still turn. Wait until everything stands
/// still. Source: see run_down_time. Example: 4 kg·m² at 1040 r/min, 5 N·m and 1 N·m of drag: 72.6 s.
inline OverrunCoast overrun_coast(MomentOfInertia inertia, AngularSpeed speed, Torque friction_torque,
                                  Torque windage_torque = newton_metres(0), Torque clutch_drag = newton_metres(0)) {
  check::not_negative(clutch_drag.value(), {"overrun_coast", "clutch_drag", "N·m"});
  const Torque friction = friction_torque + clutch_drag;
  return {run_down_time(inertia, speed, friction, windage_torque),
          run_down_angle(inertia, speed, friction, windage_torque), rotor_energy(inertia, speed)};
}

/// Torque that a cut-out clutch still carries when it has tripped [N·m].
///
///   trip_torque  [N·m], at least 0
///   least_share, greatest_share  of it, from 0 to 1, in order; by default 10 and 20 % (from memory)
/// It goes on carrying this, and heating, until the PTO is stopped; only then does it engage again.
/// Example: 1500 N·m: 150 to 300 N·m.
constexpr TorqueBand cut_out_torque(Torque trip_torque, double least_share = least_cut_out_share.value,
                                    double greatest_share = greatest_cut_out_share.value) {
  constexpr const char* function = "cut_out_torque";
  check::not_negative(trip_torque.value(), {function, "trip_torque", "N·m"});
  check::within(least_share, 0.0, 1.0, {function, "least_share", ""});
  check::within(greatest_share, least_share, 1.0, {function, "greatest_share", ""});
  return {least_share * trip_torque, greatest_share * trip_torque};
}

} // namespace v0
} // namespace fieldshaft
