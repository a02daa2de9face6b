#pragma once
// Remedies: the smallest sets of changes with which a case fits, each verified by assessing the changed case.

#include <fieldshaft/advise/change.hpp>
#include <fieldshaft/assess/assess.hpp>

namespace fieldshaft {
inline namespace v0 {

/// How far to search.
struct RemedyOptions {
  Status accept = Status::caution; ///< worst status that a finding may keep; `ok` heals cautions too
  int most_changes = 5;            ///< in one set
  int beyond_smallest = 0;         ///< how many changes more than the smallest set a set may have
  int most_sets = 8;               ///< reported
  int most_cases = 500;            ///< changed cases to assess before the search is cut off
  int most_ranges = 250;           ///< states of the machine to examine anew, the costly part, before it is cut off
  double least_need = 0.5;         ///< share of the power need below which less work is no remedy
};

/// A set of changes that was verified: assessed together, they heal what they claim and make nothing worse.
struct Remedy {
  std::vector<Change> changes;
  std::optional<Money> price; ///< of all changes, where each has one
  Case changed;
  Assessment after;
  std::vector<Check> healed;       ///< that stood in the way and are gone
  std::vector<Check> left;         ///< that still stand in the way; empty for a remedy of the whole case
  std::vector<Check> new_cautions; ///< checks that did not apply before, or were not judged, and are now a caution
};

/// What heals one finding alone, with a single change that makes nothing else worse.
struct SingleRemedies {
  Check check = Check::pto_speed;
  Status status = Status::stop;
  std::vector<Change> changes; ///< any one of them
};

/// What was searched, so that a reader knows what the answer is worth.
struct RemedySearch {
  int cases = 0;         ///< changed cases that were assessed
  int ranges = 0;        ///< states of the machine that were examined for them
  int complete_size = 0; ///< every set of up to this many proposed changes was looked at
  bool cut_off = false;  ///< the search ended at one of its bounds
};

struct Remedies {
  Assessment before;
  std::vector<Remedy> sets; ///< cheapest first where priced, else smallest; none where nothing is in the way
  std::vector<SingleRemedies> by_finding; ///< for every stop and caution that one change heals
  std::vector<Check> without_remedy;      ///< stops for which no change is known here
  std::vector<std::string> state_first;   ///< entries that the case does not state: to be stated, not remedied
  RemedySearch search;
};

/// Searches for the smallest sets of changes with which the case has no finding worse than `accept`.
///
/// A changed case counts only if it was assessed, nothing stands in the way any more, and no finding has become worse.
/// The search goes breadth first through changes that the findings of each changed case call for, so that of all sets
/// of proposed changes the smallest are found; sets that hold a smaller one are left out. Amounts (a cut, a setting, a
/// turn) are chosen for the case as changed so far and verified like the rest. Findings that are not known for want of
/// data are not remedied: `state_first` lists the entries. Throws as assess does.
Remedies remedies(const Case& value, const RemedyOptions& options = {});

} // namespace v0
} // namespace fieldshaft
