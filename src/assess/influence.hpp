#pragma once
// Which measurement of a case matters most for an extreme of its driveline.

#include "assess/layout.hpp"

#include <functional>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Moves each measurement alone to the ends of its tolerance: those of driveline, hitch and implement, and those from
/// which the ranges of the state follow. The implement stays at its place within those ranges.
class MeasurementInfluence {
public:
  /// Wants the positions of the state to be stated.
  MeasurementInfluence(const Case& value, MachineState state);

  /// The measurement that raises `of` most at a position of the state, and by how much; nothing where none does.
  std::optional<MattersMost> on(const PoseAt& pose, const std::function<double(const DrivelineState&)>& of,
                                Kind kind) const;

private:
  Case stated_; ///< what the geometry rests on, without tolerances
  MachineState state_;
  std::vector<double> tolerances_; ///< in the order of the measurements, in SI units
  Positions positions_;
};

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
