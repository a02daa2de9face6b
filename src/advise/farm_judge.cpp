#include "advise/farm_judge.hpp"

#include "advise/farm_screening.hpp"
#include "advise/farm_set_up.hpp"
#include "assess/interface.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

bool holds(const std::vector<std::size_t>& list, std::size_t value) {
  return std::find(list.begin(), list.end(), value) != list.end();
}

std::string stub_name(const Case& value) {
  const assessing::ResolvedInterface stub = assessing::resolve(value.tractor.pto.stub);
  return stub.type == nullptr ? std::string() : stub.type->name;
}

PairDetail detail_of(const PairSetUp& set_up, const Assessment& assessment, VerdictCode code) {
  PairDetail detail;
  detail.set_up = set_up;
  for (const Finding& finding : assessment.findings) {
    detail.stops += finding.status == Status::stop;
    detail.unknowns += finding.status == Status::not_known;
    detail.cautions += finding.status == Status::caution;
    const bool governs = !detail.governing && code.governing() == finding.check && finding.status == code.status();
    if (governs) detail.governing = finding;
  }
  return detail;
}

/// Assesses a pair in every set-up that may be the best, and in every gear that may work.
PairRecord record_of(const Farm& farm, PairPlace pair) {
  PairRecord record;
  std::optional<VerdictCode> best;
  for (const ScreenedSetUp& candidate : screened_set_ups(farm, pair.tractor, pair.implement)) {
    const bool may_be_best = !best || candidate.bound < *best;
    const bool may_add_gear = candidate.bound.runs() && !holds(record.gears, candidate.set_up.gear);
    if (!may_be_best && !may_add_gear) continue;
    const Case value = case_of(farm, pair.tractor, pair.implement, candidate.set_up);
    const Assessment assessment = assess(value);
    const VerdictCode code = verdict_code(assessment);
    if (code.runs() && may_add_gear) record.gears.push_back(candidate.set_up.gear);
    if (best && !(code < *best)) continue;
    best = code;
    record.code = code;
    record.detail = detail_of(candidate.set_up, assessment, code);
    record.detail.gear = value.tractor.pto.selected.value_or("");
    record.detail.stub = stub_name(value);
    const FarmDriveline* driveline = driveline_at(farm, candidate.set_up.driveline);
    record.detail.driveline = driveline == nullptr ? std::string() : driveline->name;
  }
  return record;
}

} // namespace

std::vector<std::size_t> screened_gears(const Farm& farm, PairPlace pair) {
  std::vector<std::size_t> gears;
  for (const ScreenedSetUp& candidate : screened_set_ups(farm, pair.tractor, pair.implement)) {
    if (candidate.bound.runs() && !holds(gears, candidate.set_up.gear)) gears.push_back(candidate.set_up.gear);
  }
  return gears;
}

FarmJudge::FarmJudge(const Farm& farm, StudyDepth depth, Executor executor)
    : farm_(farm), depth_(depth), executor_(std::move(executor)) {}

bool FarmJudge::touches(const FarmOption& option, const std::string& tractor, const std::string& implement) const {
  const auto named = [](const auto& machines, const std::string& name) {
    return std::any_of(machines.begin(), machines.end(), [&](const auto& m) { return m.machine.name == name; });
  };
  if (option.tractor == tractor || named(option.tractors, tractor) || named(option.implements, implement)) return true;
  return std::any_of(option.drivelines.begin(), option.drivelines.end(), [&](const FarmDriveline& driveline) {
    return std::find(driveline.serves.begin(), driveline.serves.end(), implement) != driveline.serves.end();
  });
}

std::string FarmJudge::key_of(const Farm& farm, const Changes& changes, PairPlace pair) const {
  const std::string& tractor = farm.tractors[pair.tractor].machine.name;
  const std::string& implement = farm.implements[pair.implement].machine.name;
  std::string key = tractor + '\0' + implement;
  for (const std::size_t option : changes.options) {
    if (touches(farm_.options[option], tractor, implement)) key += '\0' + std::to_string(option);
  }
  for (const std::size_t remedy : changes.remedies) {
    if (advising::touches(remedies_[remedy], farm, pair)) key += '\0' + ("r" + std::to_string(remedy));
  }
  return key;
}

/// A pair that has a remedy of its own works if it does so in one of the usual set-ups or as the remedy sets it up.
PairRecord FarmJudge::record_with(const Farm& farm, const Changes& changes, PairPlace pair) const {
  PairRecord record = record_of(farm, pair);
  for (const std::size_t remedy : changes.remedies) {
    const std::optional<PairPlace> own = place_of(remedies_[remedy], farm);
    if (!own || own->tractor != pair.tractor || own->implement != pair.implement) continue;
    record.code = std::min(record.code, verdict_code(assess(own_case(remedies_[remedy], farm))));
  }
  return record;
}

void FarmJudge::assess_pairs(const JudgedFarm& judged, const Changes& changes) {
  struct Missing {
    std::string key;
    PairPlace pair;
    PairRecord record;
  };
  std::vector<Missing> missing;
  for (std::size_t t = 0; t < judged.farm.tractors.size(); ++t) {
    for (std::size_t i = 0; i < judged.farm.implements.size(); ++i) {
      std::string key = key_of(judged.farm, changes, {t, i});
      if (known_.count(key) == 0) missing.push_back({std::move(key), {t, i}, {}});
    }
  }
  executor_(missing.size(),
            [&](std::size_t n) { missing[n].record = record_with(judged.farm, changes, missing[n].pair); });
  for (Missing& entry : missing) known_.emplace(std::move(entry.key), std::move(entry.record));
}

JudgedFarm FarmJudge::with(const std::vector<std::size_t>& options, const std::vector<std::size_t>& remedies) {
  JudgedFarm judged{with_options(farm_, options), {}};
  if (depth_ == StudyDepth::screening) {
    if (options.empty() && !screened_base_) screened_base_ = screened_matrix(farm_, executor_);
    judged.matrix = options.empty() ? *screened_base_ : screened_matrix(judged.farm, executor_);
    return judged;
  }
  const Changes changes{options, remedies};
  for (const std::size_t remedy : remedies) {
    if (place_of(remedies_[remedy], judged.farm)) carry_out(remedies_[remedy], judged.farm);
  }
  assess_pairs(judged, changes);
  judged.matrix = VerdictMatrix(judged.farm.tractors.size(), judged.farm.implements.size());
  for (std::size_t t = 0; t < judged.farm.tractors.size(); ++t) {
    for (std::size_t i = 0; i < judged.farm.implements.size(); ++i) {
      judged.matrix.row(t)[i] = known_.at(key_of(judged.farm, changes, {t, i})).code;
    }
  }
  return judged;
}

PairRecord FarmJudge::record(const JudgedFarm& judged, const std::vector<std::size_t>& options, PairPlace pair) {
  if (depth_ == StudyDepth::certified) return known_.at(key_of(judged.farm, {options, {}}, pair));
  PairRecord record;
  record.code = judged.matrix.at(pair.tractor, pair.implement);
  record.gears = screened_gears(judged.farm, pair);
  return record;
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
