#pragma once
// What a case states of the parts that driveline and tongue may foul.

#include "assess/context.hpp"

#include <fieldshaft/driveline.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

struct FoulingData {
  bool stated = false;              ///< some part is named
  bool followed = true;             ///< false: of a machine that steers behind the links or stands on its own wheels
  std::vector<std::string> missing; ///< what would have to be stated beside
  MountedSurroundings around;       ///< of all parts, where nothing is missing; links of a mounted machine only
  Length tolerance{};               ///< by how much all measurements together may bring two parts nearer

  bool complete() const { return stated && followed && missing.empty(); }
  /// Entries are missing, not a part of the model.
  bool in_part() const { return stated && followed && !missing.empty(); }
};

FoulingData fouling_data(const Case& value);

/// The least clearance of a mounted machine over positions, the linkage within its tolerances.
MountedClearance mounted_clearance(const Case& value, const MountedRange& positions, const FoulingData& data);

/// Room to leave: a rule of this library where the case states none. Below zero the parts touch.
LimitBand fouling_band(const Case& value);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
