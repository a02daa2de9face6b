#pragma once
// What may be cut from the guard tubes: they neither bottom nor leave the shaft bare.

#include "assess/geometry.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Overlap that is to be left between the guard tubes at the longest; its source stands in the band.
inline constexpr Length guard_overlap_to_keep = millimetres(50.0);

/// The extremes of all states, moved to the unfavourable ends of the tolerances of closed length and overlap: then the
/// tubes may be reckoned with as stated.
struct Reach {
  Length longest{};
  Length shortest{};
};

Reach reach_of(const DrivelineOverRange& range, MeasuredLength closed, MeasuredLength overlap);

/// By which rules a cut of the guard tubes suits all positions.
enum class GuardFit { every_rule, looser_rules, no_rule };

/// The cut of each guard tube that comes nearest to a wanted one, in whole millimetres where there is room for that.
struct GuardPlan {
  GuardFit fit = GuardFit::no_rule;
  Length cut{};
  Length overlap_after{}; ///< at the longest position
  Length room_after{};    ///< at the shortest
  /// Guard tubes that would suit by every rule, and as much overlap of theirs: rounded inward to whole millimetres.
  Length suitable_closed{};
  Length suitable_overlap{};
};

/// Whether both entries are stated that say how long the guard tubes are.
bool guard_tubes_stated(const DrivelineCase& line);

/// A cut takes once from the closed length and twice from the overlap at the longest position, so that it is at least
/// what the room at the shortest lacks and at most half of what the overlap has to spare. Where no cut suits by every
/// rule, the shaft is covered first and the room left to the looser rule. Wants `guard_tubes_stated` and some state.
GuardPlan guard_plan(const Case& value, const DrivelineOverRange& range, Length wanted);

/// The plan as facts of a finding: guard_cut, guard_overlap_after, guard_room_after, guard_closed, guard_overlap.
std::vector<Fact> facts_of(const GuardPlan& plan);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
