#pragma once
// A drawbar: the implement turns, pitches and rolls about its pin.

#include <fieldshaft/geometry.hpp>

namespace fieldshaft {
inline namespace v0 {

/// A drawbar as measured from the tractor's PTO shaft.
struct DrawbarHitch {
  Length distance{}; ///< from the PTO shaft end rearwards to the centre of the pin, at least 0
  Length lateral{};  ///< pin left of the PTO axis; negative: right of it
  Length drop{};     ///< from the PTO axis down to the height at which the pin is gripped
};

/// The pin in the tractor frame.
///
/// pin = (-distance, lateral, -drop)
/// Source: definition of the frames. Example: 14 in behind and 8 in below: (-355.6, 0, -203.2) mm.
inline Position pin_position(const DrawbarHitch& hitch) {
  check::not_negative(hitch.distance.value(), {"pin_position", "distance", "m"});
  check::finite(hitch.lateral.value(), {"pin_position", "lateral", "m"});
  check::finite(hitch.drop.value(), {"pin_position", "drop", "m"});
  return {-hitch.distance, hitch.lateral, -hitch.drop};
}

/// The pose of a trailed implement.
inline Pose trailed_pose(const DrawbarHitch& hitch, const Attitude& attitude) {
  return {pin_position(hitch), attitude};
}

} // namespace v0
} // namespace fieldshaft
