#pragma once
// The states of a machine and the positions of its implement, as findings name them.

#include <fieldshaft/units/quantity.hpp>

#include <optional>

namespace fieldshaft {
inline namespace v0 {

/// The state of the machine at which a value is the worst.
enum class MachineState { any, working, turning, transport };

/// The position of the implement at which a value is the worst.
struct PoseAt {
  Angle yaw{};
  Angle pitch{};
  Angle roll{};
  std::optional<Length> lift;
};

/// A position of the implement in a state of the machine.
struct PoseIn {
  MachineState state = MachineState::any;
  PoseAt pose;
};

} // namespace v0
} // namespace fieldshaft
