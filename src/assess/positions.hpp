#pragma once
// The positions of each state: as the case states them, or from what was measured in the field.

#include "assess/context.hpp"

#include <fieldshaft/driveline.hpp>

#include <array>
#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// The states of a machine that have positions of their own, in the order of the report.
constexpr std::array<MachineState, 3> states_with_positions{MachineState::working, MachineState::turning,
                                                            MachineState::transport};

/// The positions of a state as the case has them; empty where it says nothing.
const Stated<StateRange>& range_of(const Case& value, MachineState state);

/// The path of those positions in the case document: "range.working".
std::string range_path(MachineState state);

bool is_trailed(const Case& value);

/// Whether a machine on the lower links steers about a pivot behind them.
bool is_semi_mounted(const Case& value);

/// Entries without which the positions of one state are not known.
std::vector<std::string> positions_missing(const Case& value, MachineState state);

/// What the implement does in a state. Ranges that were measured hold every measurement within its tolerance.
struct Positions {
  AngleRange yaw{};
  AngleRange pitch{}; ///< trailed
  AngleRange roll{};
  LengthRange lift{};                    ///< mounted
  double roll_at_full_turn = 1.0;        ///< trailed: share of the roll that is left there
  std::optional<LengthRange> sway;       ///< mounted: what the yaw follows from
  std::optional<LengthRange> difference; ///< mounted: what the roll follows from
  bool slack = false;                    ///< mounted: the top link is, and the implement stands on its wheels
};

/// Entries without which an implement does not stand on its own wheels.
std::vector<std::string> wheels_missing(const Case& value);

/// Whether a mounted implement has wheels of its own, so that each position must say what its top link does.
bool has_support_wheels(const Case& value);

/// Wants `positions_missing` to be empty. An InputError where measurements cannot be together, such as a turn tighter
/// than the tongue allows.
Positions positions_in(const Case& value, MachineState state);

/// What of a state follows from measurements, and from which.
std::vector<RangeOrigin> range_origins(const Case& value, MachineState state);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
