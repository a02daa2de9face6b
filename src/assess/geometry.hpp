#pragma once
// The driveline of a case over the positions of each state of the machine.

#include "assess/context.hpp"

#include <fieldshaft/driveline.hpp>

#include <utility>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// How much of a case is assessed.
enum class Depth {
  whole,
  for_search, ///< without the costly answers that change no verdict of the rest: turn, lift, fouling, and uneven
              ///< running where the PTO rests
};

/// Boxes for each extreme of a steered machine. Its three motions depend on each other and bring the bounds near
/// slowly: so many take some tenths of a second, and the gap that was reached is reported.
constexpr int budget_of_steered = 20000;

/// An extreme of a state.
template <class Q> struct WorstCase {
  Q value{};           ///< proved: no position of the state is worse
  PoseAt pose;         ///< where `attained` occurs
  Q attained{};        ///< by a driveline within the tolerances
  bool proved = false; ///< value and attained lie within the wanted gap of each other
  Q loose{};           ///< of difference and uneven running: what measurements within their tolerances were found to
                       ///< make of it at that pose
};

/// Extremes over one state. Wide-angle joints are two crosses each where their coupling yokes are stated.
struct StateExtremes {
  MachineState state = MachineState::any;
  bool driven = false;
  WorstCase<Angle> front;      ///< at the stub
  WorstCase<Angle> rear;       ///< at the implement
  WorstCase<double> variation; ///< greatest less least speed of the implement's shaft, over the PTO speed
  WorstCase<Angle> difference; ///< size of front less rear
  WorstCase<Length> longest;
  WorstCase<Length> shortest;
};

/// The states that could be examined, and the entries without which the others could not.
struct DrivelineOverRange {
  std::vector<StateExtremes> states;
  std::vector<std::string> missing; ///< without which no state can be examined
  std::vector<std::pair<MachineState, std::string>> missing_of_state;
  std::vector<std::string> impossible; ///< why a state that is fully stated cannot be

  const StateExtremes* find(MachineState state) const;
  std::vector<std::string> missing_for(MachineState state) const;
  /// Without which not all states can be examined.
  std::vector<std::string> missing_for_all() const;
  /// The state in which the driveline is the longest, or the shortest; none where no state could be examined.
  const StateExtremes* longest() const;
  const StateExtremes* shortest() const;
};

/// The driveline at one place of the pin over a range of attitudes. Every extreme is taken at its proved bound, so that
/// no attitude of the range is worse. Angles and lengths hold for all measurements within their tolerances. Difference
/// and uneven running, whose bounds over tolerances are wide, are proved for the measurements as stated; beside them
/// stands what measurements within the tolerances were found to make of them.
StateExtremes extremes_at(const Driveline& driveline, const Position& pin, const AttitudeRange& attitudes,
                          const DrivelineTolerance& tolerance, bool with_variation);

DrivelineOverRange driveline_over_range(const Case& value, Depth depth = Depth::whole);

/// Without which the telescope cannot be judged. It is judged over all states: one left out could hide the worst pose.
std::vector<std::string> telescope_missing(const Case& value, const DrivelineOverRange& range);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
