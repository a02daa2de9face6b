#include "advise/farm_plan.hpp"

#include <algorithm>
#include <map>
#include <numeric>

namespace fieldshaft {
inline namespace v0 {

Backup backup_of(const VerdictMatrix& matrix) {
  Backup backup;
  std::map<std::vector<std::size_t>, std::vector<std::size_t>> still;
  backup.runners.resize(matrix.implements());
  for (std::size_t i = 0; i < matrix.implements(); ++i) {
    std::vector<std::size_t> first;
    for (std::size_t t = 0; t < matrix.tractors(); ++t) {
      if (!matrix.row(t)[i].runs()) continue;
      ++backup.runners[i];
      if (first.size() < 3) first.push_back(t);
    }
    if (first.empty()) backup.never.push_back(i);
    if (first.size() == 1 || first.size() == 2) still[first].push_back(i);
  }
  for (auto& [tractors, implements] : still) {
    auto& list = tractors.size() == 1 ? backup.singles : backup.pairs;
    list.push_back({tractors, std::move(implements)});
  }
  return backup;
}

namespace advising {
namespace {

constexpr std::size_t wanted_runners = 2;
/// Beyond this many options the sets of them are too many to look at each.
constexpr std::size_t most_options_for_proof = 14;
constexpr std::size_t most_pairs_for_proof = 4000;

/// How far a farm is from full backup with some options taken, and the remedies that fill what they can.
struct Attempt {
  std::vector<std::size_t> options;
  std::vector<PairPlace> remedies;
  std::size_t lacking = 0; ///< tractors that are still missing, over all implements
  std::vector<std::size_t> without;

  std::size_t changes() const { return options.size() + remedies.size(); }
};

/// Better: fewer tractors lacking, then fewer changes.
bool better(const Attempt& a, const Attempt& b) {
  if (a.lacking != b.lacking) return a.lacking < b.lacking;
  return a.changes() < b.changes();
}

std::size_t place_of(const std::vector<FarmImplement>& implements, const std::string& name) {
  const auto found = std::find_if(implements.begin(), implements.end(),
                                  [&](const FarmImplement& i) { return i.machine.name == name; });
  return static_cast<std::size_t>(found - implements.begin());
}

/// Fills an implement's need from remedies of pairs that do not work yet.
std::size_t fill_from_remedies(const JudgedFarm& judged, std::size_t implement, std::size_t place_in_base,
                               std::size_t need, const std::vector<PairPlace>& remedies, Attempt& attempt) {
  for (const PairPlace& remedy : remedies) {
    if (need == 0) break;
    if (remedy.implement != place_in_base || judged.matrix.row(remedy.tractor)[implement].runs()) continue;
    attempt.remedies.push_back(remedy);
    --need;
  }
  return need;
}

Attempt attempt_with(FarmJudge& judge, std::vector<std::size_t> options, const std::vector<PairPlace>& remedies) {
  const JudgedFarm judged = judge.with(options);
  const std::vector<std::size_t> runners = backup_of(judged.matrix).runners;
  Attempt attempt;
  attempt.options = std::move(options);
  for (std::size_t i = 0; i < runners.size(); ++i) {
    if (runners[i] >= wanted_runners) continue;
    const std::size_t in_base = place_of(judge.base().implements, judged.farm.implements[i].machine.name);
    const std::size_t need = fill_from_remedies(judged, i, in_base, wanted_runners - runners[i], remedies, attempt);
    attempt.lacking += need;
    if (need > 0 && in_base < judge.base().implements.size()) attempt.without.push_back(in_base);
  }
  return attempt;
}

/// Looks at every set of a size, as long as it could still be better than the best known.
void try_sets(FarmJudge& judge, const std::vector<PairPlace>& remedies, std::size_t size,
              std::vector<std::size_t>& chosen, std::size_t next, Attempt& best) {
  if (chosen.size() == size) {
    Attempt attempt = attempt_with(judge, chosen, remedies);
    if (better(attempt, best)) best = std::move(attempt);
    return;
  }
  const std::size_t count = judge.base().options.size();
  for (std::size_t option = next; option + (size - chosen.size()) <= count; ++option) {
    chosen.push_back(option);
    try_sets(judge, remedies, size, chosen, option + 1, best);
    chosen.pop_back();
  }
}

/// Takes the option that helps most, again and again.
Attempt greedy(FarmJudge& judge, const std::vector<PairPlace>& remedies, Attempt best) {
  for (bool improved = true; improved;) {
    improved = false;
    const std::vector<std::size_t> taken = best.options;
    for (std::size_t option = 0; option < judge.base().options.size(); ++option) {
      if (std::find(taken.begin(), taken.end(), option) != taken.end()) continue;
      std::vector<std::size_t> more = taken;
      more.insert(std::lower_bound(more.begin(), more.end(), option), option);
      Attempt attempt = attempt_with(judge, std::move(more), remedies);
      if (!better(attempt, best)) continue;
      best = std::move(attempt);
      improved = true;
    }
  }
  return best;
}

/// The most that one option can do for the backup: the tractors that it may bring to implements which lack one.
std::size_t most_gain(const FarmOption& option, const Farm& farm, const std::vector<std::size_t>& runners) {
  std::size_t gain = 0;
  for (std::size_t i = 0; i < runners.size(); ++i) {
    if (runners[i] >= wanted_runners) continue;
    const std::size_t need = wanted_runners - runners[i];
    const std::string& name = farm.implements[i].machine.name;
    if (option.replaces == name) {
      gain += need;
      continue;
    }
    const bool served = std::any_of(option.drivelines.begin(), option.drivelines.end(), [&](const FarmDriveline& d) {
      return std::find(d.serves.begin(), d.serves.end(), name) != d.serves.end();
    });
    const std::size_t tractors = option.tractors.size() + (option.tractor ? 1 : 0);
    gain += served ? need : std::min(need, tractors);
  }
  return gain;
}

/// No plan that brings `gained` more tractors to implements has fewer changes than this.
std::size_t fewest_for(const Farm& farm, const std::vector<std::size_t>& runners, std::size_t gained, bool remedies) {
  std::vector<std::size_t> gains;
  for (const FarmOption& option : farm.options) gains.push_back(most_gain(option, farm, runners));
  std::sort(gains.rbegin(), gains.rend());
  std::size_t changes = 0;
  std::size_t sum = 0;
  for (; sum < gained && changes < gains.size() && gains[changes] > 0; ++changes) sum += gains[changes];
  if (sum < gained && remedies) changes += gained - sum; // each remedy brings one tractor to one implement
  return changes;
}

} // namespace

BackupPlan backup_plan(FarmJudge& judge, const std::vector<PairPlace>& remedies) {
  const Farm& farm = judge.base();
  const Attempt nothing_done = attempt_with(judge, {}, {});
  Attempt best = attempt_with(judge, {}, remedies);
  const bool provable = farm.options.size() <= most_options_for_proof &&
                        farm.tractors.size() * farm.implements.size() <= most_pairs_for_proof;
  if (provable) {
    for (std::size_t size = 1; size <= farm.options.size(); ++size) {
      if (best.lacking == 0 && best.changes() <= size) break; // larger sets cannot be better
      std::vector<std::size_t> chosen;
      try_sets(judge, remedies, size, chosen, 0, best);
    }
  } else {
    best = greedy(judge, remedies, best);
  }
  BackupPlan plan;
  plan.options = best.options;
  plan.remedies = best.remedies;
  plan.without = best.without;
  plan.exact = provable;
  const std::vector<std::size_t> runners = backup_of(judge.with({}).matrix).runners;
  plan.at_least = provable
                      ? plan.changes()
                      : fewest_for(farm, runners, nothing_done.lacking - std::min(nothing_done.lacking, best.lacking),
                                   !remedies.empty());
  return plan;
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
