#pragma once
// The fewest changes for full backup.

#include "advise/farm_judge.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace advising {

/// Options of the farm, and remedies of single pairs, so that two tractors run each implement. Small farms: every set
/// of options that could be better is looked at, and the plan is proved. Large ones: greedy, with a bound.
BackupPlan backup_plan(FarmJudge& judge, const std::vector<PairPlace>& remedies);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
