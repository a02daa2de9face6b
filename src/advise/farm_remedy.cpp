#include "advise/farm_remedy.hpp"

#include "advise/change.hpp"
#include "advise/farm_set_up.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

constexpr const char* tractor_shield = "tractor.pto.master_shield";

bool begins(const std::string& text, const char* front) { return text.rfind(front, 0) == 0; }

bool of_driveline(const std::string& path) { return begins(path, "driveline") || begins(path, "overload"); }
bool of_implement(const std::string& path) { return begins(path, "implement"); }

/// Less width, feed or speed is how one job is done; the implement stays what it is for the others.
bool is_way_of_work(ChangeKind kind) { return kind == ChangeKind::less_power || kind == ChangeKind::drive_slower; }

bool is_shared(ChangeKind kind, const std::string& path) {
  if (path == tractor_shield || of_driveline(path)) return true;
  return of_implement(path) && !is_way_of_work(kind);
}

template <class List> std::optional<std::size_t> named(const List& machines, const std::string& name) {
  const auto found =
      std::find_if(machines.begin(), machines.end(), [&](const auto& m) { return m.machine.name == name; });
  if (found == machines.end()) return std::nullopt;
  return static_cast<std::size_t>(found - machines.begin());
}

std::size_t driveline_named(const Farm& farm, const std::string& name) {
  const auto found =
      std::find_if(farm.drivelines.begin(), farm.drivelines.end(), [&](const auto& d) { return d.name == name; });
  return found == farm.drivelines.end() ? PairSetUp::none : static_cast<std::size_t>(found - farm.drivelines.begin());
}

/// The pair as the remedy found it, with a farm's own machines in it.
Case pair_case(const FarmRemedy& remedy, const Farm& farm) {
  const PairPlace pair = *place_of(remedy, farm);
  PairSetUp set_up = remedy.set_up;
  set_up.driveline = driveline_named(farm, remedy.driveline);
  return case_of(farm, pair.tractor, pair.implement, set_up);
}

FarmRemedy farm_remedy(const Farm& farm, const FarmStudy& study, const PairRemedies& entry, std::size_t set) {
  const Remedy& remedy = entry.remedies.sets[set];
  FarmRemedy found;
  found.pair = entry.pair;
  found.set = set;
  found.set_up = study.detail(entry.pair.tractor, entry.pair.implement)->set_up;
  found.tractor = study.tractors[entry.pair.tractor];
  found.implement = study.implements[entry.pair.implement];
  const FarmDriveline* driveline = driveline_at(farm, found.set_up.driveline);
  if (driveline != nullptr) found.driveline = driveline->name;
  found.changed = remedy.changed;
  for (const Change& change : remedy.changes) {
    for (const EntryChange& changed : change.entries) {
      (is_shared(change.kind, changed.path) ? found.shared : found.own).push_back(changed.path);
    }
  }
  return found;
}

} // namespace

std::vector<FarmRemedy> farm_remedies(const Farm& farm, const FarmStudy& study) {
  std::vector<FarmRemedy> found;
  for (const PairRemedies& entry : study.remedies) {
    for (std::size_t set = 0; set < entry.remedies.sets.size(); ++set) {
      const Remedy& remedy = entry.remedies.sets[set];
      if (remedy.left.empty() && verdict_code(remedy.after).runs())
        found.push_back(farm_remedy(farm, study, entry, set));
    }
  }
  return found;
}

std::optional<PairPlace> place_of(const FarmRemedy& remedy, const Farm& farm) {
  const auto tractor = named(farm.tractors, remedy.tractor);
  const auto implement = named(farm.implements, remedy.implement);
  if (!tractor || !implement) return std::nullopt;
  if (!remedy.driveline.empty() && driveline_named(farm, remedy.driveline) == PairSetUp::none) return std::nullopt;
  return PairPlace{*tractor, *implement};
}

bool touches(const FarmRemedy& remedy, const Farm& farm, PairPlace pair) {
  const std::string& tractor = farm.tractors[pair.tractor].machine.name;
  const std::string& implement = farm.implements[pair.implement].machine.name;
  if (tractor == remedy.tractor && implement == remedy.implement) return true;
  return std::any_of(remedy.shared.begin(), remedy.shared.end(), [&](const std::string& path) {
    if (path == tractor_shield) return tractor == remedy.tractor;
    if (of_implement(path)) return implement == remedy.implement;
    const std::size_t place = driveline_named(farm, remedy.driveline);
    if (place == PairSetUp::none) return false;
    const std::vector<std::string>& serves = farm.drivelines[place].serves;
    return std::find(serves.begin(), serves.end(), implement) != serves.end();
  });
}

void carry_out(const FarmRemedy& remedy, Farm& farm) {
  if (remedy.shared.empty()) return;
  const PairPlace pair = *place_of(remedy, farm);
  const Case value = with_entries_of(remedy.changed, remedy.shared, pair_case(remedy, farm));
  farm.implements[pair.implement].machine = value.implement;
  farm.tractors[pair.tractor].machine.pto.master_shield = value.tractor.pto.master_shield;
  const std::size_t driveline = driveline_named(farm, remedy.driveline);
  if (driveline == PairSetUp::none) return;
  farm.drivelines[driveline].driveline = value.driveline;
  farm.drivelines[driveline].overload = value.overload;
}

Case own_case(const FarmRemedy& remedy, const Farm& farm) {
  return with_entries_of(remedy.changed, remedy.own, pair_case(remedy, farm));
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
