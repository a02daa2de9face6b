#include <fieldshaft/advise/farm_pair.hpp>

#include "advise/farm_screening.hpp"
#include "advise/farm_set_up.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

/// The place must be one of the list, or the one that stands for nothing.
void check_place(std::size_t place, std::size_t size, const char* name) {
  if (place == PairSetUp::none || place < size) return;
  fail_input("case_of", name, std::to_string(place), "a place below " + std::to_string(size));
}

} // namespace

void set_up_tractor(const FarmTractor& tractor, const PairSetUp& set_up, Stated<HitchKind> hitch, Case& value) {
  check_place(set_up.gear, tractor.machine.pto.gears.size(), "gear");
  check_place(set_up.stub, tractor.machine.pto.other_stubs.size() + 1, "stub");
  check_place(set_up.hitch, tractor.other_hitches.size() + 1, "hitch");
  value.tractor = tractor.machine;
  TractorPto& pto = value.tractor.pto;
  pto.selected = set_up.gear == PairSetUp::none ? Stated<std::string>() : pto.gears[set_up.gear].name;
  if (set_up.stub > 0) {
    OtherStub& other = pto.other_stubs[set_up.stub - 1];
    std::swap(pto.stub, other.interface);
    std::swap(pto.stub_steel, other.steel);
  }
  if (set_up.hitch == PairSetUp::none) {
    value.tractor.hitch = Hitch{};
    value.tractor.hitch.kind = hitch;
  } else if (set_up.hitch > 0) {
    value.tractor.hitch = tractor.other_hitches[set_up.hitch - 1];
  }
  value.fouling.tractor = tractor.bars;
  value.fouling.tyres = tractor.tyres;
}

void set_up_implement(const FarmImplement& implement, const FarmDriveline* driveline, Case& value) {
  value.implement = implement.machine;
  value.range = implement.range;
  value.limits = implement.limits;
  value.fouling.implement = implement.bars;
  if (driveline == nullptr) return;
  value.driveline = driveline->driveline;
  value.overload = driveline->overload;
}

std::vector<std::size_t> hitches_of_kind(const FarmTractor& tractor, Stated<HitchKind> kind) {
  std::vector<std::size_t> hitches;
  if (kind) {
    if (tractor.machine.hitch.kind == kind) hitches.push_back(0);
    for (std::size_t i = 0; i < tractor.other_hitches.size(); ++i) {
      if (tractor.other_hitches[i].kind == kind) hitches.push_back(i + 1);
    }
  }
  if (hitches.empty()) hitches.push_back(PairSetUp::none);
  return hitches;
}

std::vector<PairSetUp> tractor_set_ups(const FarmTractor& tractor, Stated<HitchKind> kind) {
  std::vector<PairSetUp> set_ups;
  const std::vector<std::size_t> hitches = hitches_of_kind(tractor, kind);
  const std::size_t gears = tractor.machine.pto.gears.size();
  for (std::size_t gear = 0; gear < std::max<std::size_t>(gears, 1); ++gear) {
    for (std::size_t stub = 0; stub <= tractor.machine.pto.other_stubs.size(); ++stub) {
      for (const std::size_t hitch : hitches) {
        set_ups.push_back({gears == 0 ? PairSetUp::none : gear, stub, hitch, PairSetUp::none});
      }
    }
  }
  return set_ups;
}

DrivelinesOfImplements::DrivelinesOfImplements(const Farm& farm) : farm_(farm) {
  for (std::size_t i = 0; i < farm.drivelines.size(); ++i) {
    for (const std::string& name : farm.drivelines[i].serves) places_[name].push_back(i);
  }
}

std::vector<std::size_t> DrivelinesOfImplements::of(std::size_t implement) const {
  const auto found = places_.find(farm_.implements.at(implement).machine.name);
  return found == places_.end() ? std::vector<std::size_t>{PairSetUp::none} : found->second;
}

const FarmDriveline* driveline_at(const Farm& farm, std::size_t place) {
  return place == PairSetUp::none ? nullptr : &farm.drivelines.at(place);
}

std::vector<ScreenedSetUp> screened_set_ups(const Farm& farm, std::size_t tractor, std::size_t implement) {
  std::vector<ScreenedSetUp> list;
  const FarmImplement& machine = farm.implements[implement];
  for (const PairSetUp& set_up : pair_set_ups(farm, tractor, implement)) {
    const TractorSide front = tractor_side(farm.tractors[tractor], set_up, machine.hitch);
    const ImplementSide rear = implement_side(machine, driveline_at(farm, set_up.driveline));
    list.push_back({screened(front, rear), set_up});
  }
  std::stable_sort(list.begin(), list.end(),
                   [](const ScreenedSetUp& a, const ScreenedSetUp& b) { return a.bound < b.bound; });
  return list;
}

} // namespace advising

std::vector<PairSetUp> pair_set_ups(const Farm& farm, std::size_t tractor, std::size_t implement) {
  const Stated<HitchKind> kind = farm.implements.at(implement).hitch;
  const std::vector<std::size_t> drivelines = advising::DrivelinesOfImplements(farm).of(implement);
  std::vector<PairSetUp> set_ups;
  for (const PairSetUp& front : advising::tractor_set_ups(farm.tractors.at(tractor), kind)) {
    for (const std::size_t driveline : drivelines) {
      set_ups.push_back(front);
      set_ups.back().driveline = driveline;
    }
  }
  return set_ups;
}

Case case_of(const Farm& farm, std::size_t tractor, std::size_t implement, const PairSetUp& set_up) {
  if (tractor >= farm.tractors.size() || implement >= farm.implements.size()) {
    fail_input("case_of", tractor >= farm.tractors.size() ? "tractor" : "implement",
               std::to_string(tractor >= farm.tractors.size() ? tractor : implement), "a place in the farm's list");
  }
  advising::check_place(set_up.driveline, farm.drivelines.size(), "driveline");
  Case value;
  advising::set_up_tractor(farm.tractors[tractor], set_up, farm.implements[implement].hitch, value);
  advising::set_up_implement(farm.implements[implement], advising::driveline_at(farm, set_up.driveline), value);
  value.title = value.tractor.name + " with " + value.implement.name;
  value.note = farm.note;
  value.prices = farm.prices;
  return value;
}

PairStudy study_pair(const Farm& farm, std::size_t tractor, std::size_t implement) {
  PairStudy best;
  std::optional<VerdictCode> best_code;
  for (const advising::ScreenedSetUp& candidate : advising::screened_set_ups(farm, tractor, implement)) {
    if (best_code && !(candidate.bound < *best_code)) break;
    Assessment assessment = assess(case_of(farm, tractor, implement, candidate.set_up));
    const VerdictCode code = verdict_code(assessment);
    if (best_code && !(code < *best_code)) continue;
    best_code = code;
    best = {candidate.set_up, std::move(assessment)};
  }
  return best;
}

} // namespace v0
} // namespace fieldshaft
