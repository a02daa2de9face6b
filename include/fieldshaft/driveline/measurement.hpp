#pragma once
// What is measured on a driveline, within which tolerance, and how far the joint centres may stand elsewhere.

#include <fieldshaft/driveline/state.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {

/// What a tape and a level measure for a trailed driveline.
enum class Measurement {
  front_joint,     ///< PTO shaft end to front joint centre
  pin_distance,    ///< PTO shaft end to pin
  pin_lateral,     ///< pin left of the PTO axis
  pin_drop,        ///< pin below the PTO axis
  rear_joint,      ///< input shaft end to rear joint centre
  input_behind,    ///< pin to input shaft end, rearwards
  input_left,      ///< input shaft end left of the pin
  input_up,        ///< input shaft end above the pin
  input_direction, ///< where the input shaft points
};
inline constexpr std::size_t measurement_count = 9;

/// How far the true value of each measurement may lie from the stated one, to either side.
struct DrivelineTolerance {
  Length front_joint{};
  Length pin_distance{};
  Length pin_lateral{};
  Length pin_drop{};
  Length rear_joint{};
  Length input_behind{};
  Length input_left{};
  Length input_up{};
  Angle input_direction{}; ///< the shaft points anywhere in a cone of this half angle
};

namespace check {
inline void tolerance(const DrivelineTolerance& t, const char* function) {
  const Length lengths[] = {t.front_joint, t.pin_distance, t.pin_lateral, t.pin_drop,
                            t.rear_joint,  t.input_behind, t.input_left,  t.input_up};
  const char* const names[] = {"tolerance.front_joint", "tolerance.pin_distance", "tolerance.pin_lateral",
                               "tolerance.pin_drop",    "tolerance.rear_joint",   "tolerance.input_behind",
                               "tolerance.input_left",  "tolerance.input_up"};
  for (std::size_t i = 0; i < 8; ++i) not_negative(lengths[i].value(), {function, names[i], "m"});
  within(t.input_direction.value(), 0.0, 0.5, {function, "tolerance.input_direction", "rad"});
}
} // namespace check

} // namespace v0
} // namespace fieldshaft
