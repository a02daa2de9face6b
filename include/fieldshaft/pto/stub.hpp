#pragma once
// How a tractor offers its PTO speeds: the stub arrangements, what in each can disagree, and what can go wrong.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/pto/list.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {

enum class StubArrangement {
  fixed,                      ///< one stub, one speed
  two_stubs_out,              ///< a stub for each speed stands out of the case
  exchanged_from_carrier,     ///< stubs are pulled and pushed in, held by a ring or a carrier
  bolted_with_separate_lever, ///< a flanged stub is bolted on; a lever sets the speed
  reversible,                 ///< one stub, turned end for end
  lever_only,                 ///< one stub for good; a lever sets the speed
};

inline constexpr std::array stub_arrangements = {
    StubArrangement::fixed,
    StubArrangement::two_stubs_out,
    StubArrangement::exchanged_from_carrier,
    StubArrangement::bolted_with_separate_lever,
    StubArrangement::reversible,
    StubArrangement::lever_only,
};

/// Whether the spline of the stub can be changed without the speed, or the speed without the spline.
///
/// Of the reversible and the exchanged stub two kinds exist: in one the stub itself selects the speed, in the other a
/// lever does and the stub changes only the spline. Unless the tractor's manual says which, the second is assumed.
/// Source: operator's manuals (common practice, no source).
constexpr bool lever_can_disagree(StubArrangement arrangement) noexcept {
  switch (arrangement) {
  case StubArrangement::fixed:
  case StubArrangement::two_stubs_out: return false;
  case StubArrangement::exchanged_from_carrier:
  case StubArrangement::bolted_with_separate_lever:
  case StubArrangement::reversible:
  case StubArrangement::lever_only: return true;
  }
  return true;
}

/// What can go wrong with a stub, or at a change of speed.
enum class StubHazard {
  spline_at_other_speed,   ///< the spline says 540 while the lever says 1000, or the other way round
  shifted_while_turning,   ///< speed shifted with the PTO clutch engaged or the shaft turning
  hot_stub,                ///< the stub burns the hand after work
  oil_lost,                ///< the stub or its flange sits below the oil level
  dirt_in_bore,            ///< dirt in the bore keeps the stub from seating
  ring_not_seated,         ///< the retaining ring or carrier does not hold the stub
  bolts_not_tightened,     ///< the flange bolts are not at their torque
  other_stub_turns,        ///< the stub that is not used turns as well, or is uncovered
  drawbar_not_reset,       ///< the distance from shaft end to hitch pin belongs to the other type
  driveline_not_rechecked, ///< length, overlap and clearance of the driveline were not checked again
  shield_left_off,         ///< the master shield was not put back
  adaptor_fitted,          ///< an adaptor defeats shield, geometry and the difference between the splines
};

using StubHazards = FixedList<Sourced<StubHazard>, 12>;

/// Where a hazard is reported.
constexpr Source stub_hazard_source(StubHazard hazard) noexcept {
  constexpr Source manuals{"operator's manuals", Standing::common_practice};
  switch (hazard) {
  case StubHazard::oil_lost:
  case StubHazard::bolts_not_tightened:
  case StubHazard::other_stub_turns: return {"known to mechanics", Standing::from_memory};
  case StubHazard::drawbar_not_reset:
    return {"farm press column: 14 in at 540, 16 in at 1000 r/min", Standing::published};
  case StubHazard::adaptor_fitted:
    return {"design guide of a driveline trade association: no device between PTO shaft and driveline",
            Standing::published};
  default: return manuals;
  }
}

/// Whether a hazard belongs to an arrangement.
constexpr bool has_hazard(StubArrangement arrangement, StubHazard hazard) noexcept {
  const bool moved = arrangement == StubArrangement::exchanged_from_carrier ||
                     arrangement == StubArrangement::bolted_with_separate_lever ||
                     arrangement == StubArrangement::reversible;
  const bool two_stubs = arrangement == StubArrangement::two_stubs_out;
  const bool bolted = arrangement == StubArrangement::bolted_with_separate_lever;
  switch (hazard) {
  case StubHazard::spline_at_other_speed: return lever_can_disagree(arrangement);
  case StubHazard::shifted_while_turning:
  case StubHazard::drawbar_not_reset:
  case StubHazard::driveline_not_rechecked: return arrangement != StubArrangement::fixed;
  case StubHazard::hot_stub:
  case StubHazard::oil_lost: return moved;
  case StubHazard::dirt_in_bore:
  case StubHazard::ring_not_seated: return moved && !bolted;
  case StubHazard::bolts_not_tightened: return bolted;
  case StubHazard::other_stub_turns: return two_stubs;
  case StubHazard::shield_left_off: return moved || two_stubs;
  case StubHazard::adaptor_fitted: return true;
  }
  return true;
}

/// The hazards of an arrangement with their sources, the disagreement of stub and lever first.
constexpr StubHazards stub_hazards(StubArrangement arrangement) {
  StubHazards found;
  for (int i = 0; i <= static_cast<int>(StubHazard::adaptor_fitted); ++i) {
    const auto hazard = static_cast<StubHazard>(i);
    if (has_hazard(arrangement, hazard)) found.push_back({hazard, stub_hazard_source(hazard)});
  }
  return found;
}

} // namespace v0
} // namespace fieldshaft
