#include "advise/farm_plan.hpp"

#include "advise/farm_set_up.hpp"

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
/// Verdicts of pairs that a search for the plan may ask for: some seconds of a screening.
constexpr std::size_t most_verdicts = 4'000'000;
/// Sets of changes that are looked at one by one. Where remedies are among them each is a farm to be changed and
/// judged.
constexpr std::size_t most_sets = 16384;
constexpr std::size_t most_sets_with_remedies = 2000;

/// Some changes, and how far the farm is from full backup after them.
struct Attempt {
  std::vector<std::size_t> options;
  std::vector<std::size_t> remedies;
  std::size_t lacking = 0; ///< tractors that are still missing, over all implements
  std::vector<std::size_t> without;
  std::vector<PairPlace> lost;

  std::size_t changes() const { return options.size() + remedies.size(); }
};

/// Better: fewer tractors lacking, then fewer changes, then fewer pairs that worked before.
bool better(const Attempt& a, const Attempt& b) {
  if (a.lacking != b.lacking) return a.lacking < b.lacking;
  if (a.changes() != b.changes()) return a.changes() < b.changes();
  return a.lost.size() < b.lost.size();
}

template <class List> std::size_t place_named(const List& machines, const std::string& name) {
  const auto found =
      std::find_if(machines.begin(), machines.end(), [&](const auto& m) { return m.machine.name == name; });
  return static_cast<std::size_t>(found - machines.begin());
}

/// What works with implements that are still there, and no longer with their tractors.
std::vector<PairPlace> lost_pairs(const JudgedFarm& before, const JudgedFarm& after) {
  std::vector<PairPlace> lost;
  for (std::size_t i = 0; i < before.farm.implements.size(); ++i) {
    const std::size_t now = place_named(after.farm.implements, before.farm.implements[i].machine.name);
    if (now == after.farm.implements.size()) continue;              // given up, not spoilt
    for (std::size_t t = 0; t < before.farm.tractors.size(); ++t) { // options only add tractors
      if (before.matrix.runs(t, i) && !after.matrix.runs(t, now)) lost.push_back({t, i});
    }
  }
  return lost;
}

/// The sets of changes of a farm: its options, then the remedies that were offered.
class Changes {
public:
  explicit Changes(FarmJudge& judge) : judge_(judge), before_(judge.with({})) {}

  std::size_t count() const { return judge_.base().options.size() + judge_.remedies().size(); }

  /// The farm judged after some changes, by their places in ascending order; nothing where they exclude each other.
  std::optional<Attempt> attempt(const std::vector<std::size_t>& changes) const {
    Attempt attempt;
    for (const std::size_t change : changes) {
      const std::size_t options = judge_.base().options.size();
      if (change < options) attempt.options.push_back(change);
      if (change >= options) attempt.remedies.push_back(change - options);
    }
    if (!can_be_done(attempt)) return std::nullopt;
    const JudgedFarm after = judge_.with(attempt.options, attempt.remedies);
    count_lacking(after, attempt);
    attempt.lost = lost_pairs(before_, after);
    return attempt;
  }

private:
  bool can_be_done(const Attempt& attempt) const {
    const auto& options = judge_.base().options;
    for (std::size_t n = 0; n < attempt.options.size(); ++n) {
      for (std::size_t m = 0; m < n; ++m) {
        if (exclude_each_other(options[attempt.options[m]], options[attempt.options[n]])) return false;
      }
    }
    for (std::size_t n = 0; n < attempt.remedies.size(); ++n) {
      const FarmRemedy& remedy = judge_.remedies()[attempt.remedies[n]];
      for (std::size_t m = 0; m < n; ++m) { // one way for a pair is enough
        const PairPlace& other = judge_.remedies()[attempt.remedies[m]].pair;
        if (other.tractor == remedy.pair.tractor && other.implement == remedy.pair.implement) return false;
      }
      for (const std::size_t option : attempt.options) {
        if (options[option].replaces == remedy.implement) return false;
      }
    }
    return true;
  }

  /// The implement of today whose work one of the farm after some options does; none for one that is new.
  std::size_t place_today(const std::vector<std::size_t>& options, const std::string& name) const {
    const Farm& farm = judge_.base();
    for (const std::size_t option : options) {
      const FarmOption& taken = farm.options[option];
      const bool adds = place_named(taken.implements, name) < taken.implements.size();
      if (adds && taken.replaces) return place_named(farm.implements, *taken.replaces);
    }
    return place_named(farm.implements, name);
  }

  void lack(std::size_t place_today, std::size_t need, Attempt& attempt) const {
    if (need == 0) return;
    attempt.lacking += need;
    auto& without = attempt.without;
    const bool noted = std::find(without.begin(), without.end(), place_today) != without.end();
    if (place_today < judge_.base().implements.size() && !noted) without.push_back(place_today);
  }

  /// An implement that is sold without another in its place is as far from backup as one can be.
  void count_lacking(const JudgedFarm& after, Attempt& attempt) const {
    const std::vector<std::size_t> runners = backup_of(after.matrix).runners;
    for (std::size_t i = 0; i < runners.size(); ++i) {
      const std::size_t need = wanted_runners - std::min(wanted_runners, runners[i]);
      lack(place_today(attempt.options, after.farm.implements[i].machine.name), need, attempt);
    }
    for (const std::size_t option : attempt.options) {
      const FarmOption& taken = judge_.base().options[option];
      if (taken.replaces && taken.implements.empty()) {
        lack(place_named(judge_.base().implements, *taken.replaces), wanted_runners, attempt);
      }
    }
    std::sort(attempt.without.begin(), attempt.without.end());
  }

  FarmJudge& judge_;
  JudgedFarm before_;
};

/// Looks at every set of a size.
void try_sets(const Changes& changes, std::size_t size, std::vector<std::size_t>& chosen, std::size_t next,
              Attempt& best) {
  if (chosen.size() == size) {
    std::optional<Attempt> attempt = changes.attempt(chosen);
    if (attempt && better(*attempt, best)) best = *std::move(attempt);
    return;
  }
  for (std::size_t change = next; change + (size - chosen.size()) <= changes.count(); ++change) {
    chosen.push_back(change);
    try_sets(changes, size, chosen, change + 1, best);
    chosen.pop_back();
  }
}

/// How many sets of a size there are, or more than `most`.
std::size_t sets_of(std::size_t count, std::size_t size, std::size_t most) {
  std::size_t sets = 1;
  for (std::size_t k = 0; k < size && sets <= most; ++k) sets = sets * (count - k) / (k + 1);
  return sets;
}

/// Looks at sets in the order of their size, as long as a larger one could be better and there are not too many;
/// the size up to which all were looked at, and whether a larger one could still be better.
struct Looked {
  std::size_t size = 0;
  bool all = true;
};
Looked look_at_sets(const Changes& changes, std::size_t most, Attempt& best) {
  Looked looked;
  std::size_t left = most;
  for (std::size_t size = 1; size <= changes.count(); ++size) {
    if (best.lacking == 0 && best.changes() < size) return looked; // larger sets cannot be better
    const std::size_t sets = sets_of(changes.count(), size, left);
    if (sets > left) {
      looked.all = false;
      return looked;
    }
    std::vector<std::size_t> chosen;
    try_sets(changes, size, chosen, 0, best);
    left -= sets;
    looked.size = size;
  }
  return looked;
}

/// The changes of an attempt with more of them.
std::vector<std::size_t> with_more(const Attempt& attempt, std::size_t options, std::vector<std::size_t> more) {
  more.insert(more.end(), attempt.options.begin(), attempt.options.end());
  for (const std::size_t remedy : attempt.remedies) more.push_back(options + remedy);
  std::sort(more.begin(), more.end());
  more.erase(std::unique(more.begin(), more.end()), more.end());
  return more;
}

/// Takes the change that helps most, again and again; two at once where none helps alone and there are not too many.
Attempt step_by_step(const Changes& changes, std::size_t options, std::size_t most, Attempt best) {
  const auto improve = [&](std::vector<std::size_t> more, Attempt& found) {
    std::optional<Attempt> attempt = changes.attempt(with_more(best, options, std::move(more)));
    if (attempt && better(*attempt, found)) found = *std::move(attempt);
  };
  for (;;) {
    Attempt found = best;
    for (std::size_t one = 0; one < changes.count(); ++one) improve({one}, found);
    if (!better(found, best) && sets_of(changes.count(), 2, most) <= most) {
      for (std::size_t one = 0; one < changes.count(); ++one) {
        for (std::size_t other = one + 1; other < changes.count(); ++other) improve({one, other}, found);
      }
    }
    if (!better(found, best)) return best;
    best = std::move(found);
  }
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

/// No plan that brings `gained` more tractors to implements has fewer changes than this. A remedy changes what several
/// pairs share: one may bring all of them.
std::size_t fewest_for(const Farm& farm, const std::vector<std::size_t>& runners, std::size_t gained, bool remedies) {
  if (gained == 0) return 0;
  if (remedies) return 1;
  std::vector<std::size_t> gains;
  for (const FarmOption& option : farm.options) gains.push_back(most_gain(option, farm, runners));
  std::sort(gains.rbegin(), gains.rend());
  std::size_t changes = 0;
  for (std::size_t sum = 0; sum < gained && changes < gains.size() && gains[changes] > 0; ++changes) {
    sum += gains[changes];
  }
  return changes;
}

} // namespace

BackupPlan backup_plan(FarmJudge& judge) {
  const Farm& farm = judge.base();
  const Changes changes(judge);
  const Attempt nothing_done = *changes.attempt({});
  Attempt best = nothing_done;
  const std::size_t pairs = std::max<std::size_t>(farm.tractors.size() * farm.implements.size(), 1);
  const std::size_t most =
      std::min(judge.remedies().empty() ? most_sets : most_sets_with_remedies, most_verdicts / pairs);
  const Looked looked = look_at_sets(changes, most, best);
  if (!looked.all) best = step_by_step(changes, farm.options.size(), most, std::move(best));
  BackupPlan plan;
  plan.options = best.options;
  for (const std::size_t remedy : best.remedies) {
    plan.remedies.push_back({judge.remedies()[remedy].pair, judge.remedies()[remedy].set});
  }
  plan.without = best.without;
  plan.lost = best.lost;
  plan.exact = looked.all || (best.lacking == 0 && best.changes() <= looked.size + 1);
  const std::vector<std::size_t> runners = backup_of(judge.with({}).matrix).runners;
  const std::size_t bound = fewest_for(farm, runners, nothing_done.lacking - best.lacking, !judge.remedies().empty());
  plan.at_least = plan.exact ? plan.changes() : std::max(bound, std::min(looked.size + 1, plan.changes()));
  return plan;
}

std::vector<PairPlace> spoilt_by(FarmJudge& judge, std::size_t remedy) {
  return lost_pairs(judge.with({}), judge.with({}, {remedy}));
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
