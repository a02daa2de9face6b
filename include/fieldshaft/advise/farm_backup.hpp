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

/// The fewest changes after which at least two tractors run every implement that can be brought there.
struct BackupPlan {
  std::vector<std::size_t> options; ///< places in the farm's list of options, to be taken
  std::vector<PairPlace> remedies;  ///< pairs that are brought to work by their own verified remedy
  std::vector<std::size_t> without; ///< implements that stay with fewer than two, whatever is changed
  std::size_t at_least = 0;         ///< no plan that does as much has fewer changes
  bool exact = false;               ///< proved to be the fewest; else the plan may have more than `at_least`

  std::size_t changes() const noexcept { return options.size() + remedies.size(); }
};

} // namespace v0
} // namespace fieldshaft
