#pragma once
// The fewest changes for full backup.

#include "advise/farm_judge.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace advising {

/// Options of the farm, and the remedies that the judge was offered, so that two tractors run each implement. Sets of
/// them are judged in the order of their size, each on the farm as it leaves it, as long as a larger one could be
/// better and there are not too many; then the plan is proved. Beyond that it is found step by step and has a bound.
BackupPlan backup_plan(FarmJudge& judge);

/// Pairs that work today and would no longer with one of the offered remedies carried out.
std::vector<PairPlace> spoilt_by(FarmJudge& judge, std::size_t remedy);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
