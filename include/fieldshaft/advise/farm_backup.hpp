#pragma once
// Which implement stands still when tractors are out of service, and the fewest changes that give each one a backup.

#include <fieldshaft/advise/farm_matrix.hpp>

#include <cstddef>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// A tractor and an implement by their places in the farm's lists.
struct PairPlace {
  std::size_t tractor = 0;
  std::size_t implement = 0;
};

/// Implements that stand still while these tractors are down together, and not already while fewer of them are.
struct Standstill {
  std::vector<std::size_t> tractors; ///< one or two
  std::vector<std::size_t> implements;
};

/// What the farm does without one or two of its tractors.
struct Backup {
  std::vector<std::size_t> never;   ///< implements that no tractor runs
  std::vector<Standstill> singles;  ///< every tractor without which something stands still
  std::vector<Standstill> pairs;    ///< every two tractors without which something more stands still
  std::vector<std::size_t> runners; ///< for each implement, how many tractors run it
};

/// Reads the backup off the verdicts. Whether a tractor has the time to stand in is not looked at.
Backup backup_of(const VerdictMatrix& matrix);

/// A pair that is brought to work by one of the sets of changes that were found for it.
struct PlannedRemedy : PairPlace {
  std::size_t set = 0; ///< place in the sets of the pair's remedies
};

/// The fewest changes after which at least two tractors run every implement that can be brought there. Every plan was
/// judged on the farm as it leaves it: what a remedy does to an implement, a driveline, its device or a guard holds for
/// every pair that uses them.
struct BackupPlan {
  std::vector<std::size_t> options;    ///< places in the farm's list of options, to be taken
  std::vector<PlannedRemedy> remedies; ///< pairs that are brought to work by their own verified remedy
  std::vector<std::size_t> without;    ///< implements that stay with fewer than two
  std::vector<PairPlace> lost;         ///< pairs that work today and no longer after the plan
  std::size_t at_least = 0;            ///< no plan that does as much has fewer changes
  bool exact = false; ///< every set that could be better was judged; else a better plan than this may exist

  std::size_t changes() const noexcept { return options.size() + remedies.size(); }
};

} // namespace v0
} // namespace fieldshaft
