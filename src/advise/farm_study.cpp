#include <fieldshaft/advise/farm.hpp>

#include "advise/farm_changeovers.hpp"
#include "advise/farm_judge.hpp"
#include "advise/farm_pay.hpp"
#include "advise/farm_plan.hpp"
#include "advise/farm_speeds.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace {

using namespace advising;

/// The list of remedies is long work: done by the executor, one pair a task, for pairs whose data are all there.
std::vector<PairRemedies> remedies_of(const Farm& farm, const FarmStudy& study, const FarmStudySettings& settings) {
  std::vector<PairRemedies> found;
  for (std::size_t t = 0; t < study.tractors.size(); ++t) {
    for (std::size_t i = 0; i < study.implements.size(); ++i) {
      if (!study.verdicts.runs(t, i)) found.push_back({{t, i}, {}, {}});
    }
  }
  settings.executor(found.size(), [&](std::size_t n) {
    const PairPlace pair = found[n].pair;
    const PairSetUp& set_up = study.detail(pair.tractor, pair.implement)->set_up;
    found[n].remedies = remedies(case_of(farm, pair.tractor, pair.implement, set_up), settings.remedy_options);
  });
  return found;
}

/// What the first set that heals a pair does to the others.
void note_what_is_spoilt(FarmJudge& judge, FarmStudy& study) {
  const auto of_pair = [](const FarmRemedy& remedy, PairPlace pair) {
    return remedy.pair.tractor == pair.tractor && remedy.pair.implement == pair.implement;
  };
  const std::vector<FarmRemedy>& all = judge.remedies();
  for (PairRemedies& entry : study.remedies) {
    const auto first =
        std::find_if(all.begin(), all.end(), [&](const FarmRemedy& remedy) { return of_pair(remedy, entry.pair); });
    if (first != all.end()) entry.spoils = spoilt_by(judge, static_cast<std::size_t>(first - all.begin()));
  }
}

void name_machines(const Farm& farm, FarmStudy& study) {
  study.title = farm.title;
  study.note = farm.note;
  for (const FarmTractor& tractor : farm.tractors) study.tractors.push_back(tractor.machine.name);
  for (const FarmImplement& implement : farm.implements) study.implements.push_back(implement.machine.name);
  for (const FarmOption& option : farm.options) study.options.push_back(option.name);
}

void add_details(FarmJudge& judge, const JudgedFarm& judged, FarmStudy& study) {
  for (std::size_t t = 0; t < study.tractors.size(); ++t) {
    for (std::size_t i = 0; i < study.implements.size(); ++i) {
      study.details.push_back(judge.record(judged, {}, {t, i}).detail);
    }
  }
}

} // namespace

FarmStudy study_farm(const Farm& farm, const FarmStudySettings& settings) {
  std::vector<CaseProblem> problems = farm_contradictions(farm);
  if (!problems.empty()) throw CaseError(std::move(problems), "farm");
  FarmStudy study;
  study.depth = settings.depth;
  name_machines(farm, study);
  FarmJudge judge(farm, settings.depth, settings.executor);
  JudgedFarm judged = judge.with({});
  const bool certified = settings.depth == StudyDepth::certified;
  study.verdicts = judged.matrix;
  if (certified) add_details(judge, judged, study);
  study.backup = backup_of(study.verdicts);
  if (certified && settings.remedies) study.remedies = remedies_of(farm, study, settings);
  if (certified) study.changeovers = changeovers_of(farm, study);
  judge.offer(farm_remedies(farm, study));
  note_what_is_spoilt(judge, study);
  study.plan = backup_plan(judge);
  study.speeds = speed_answers(farm, study);
  for (std::size_t option = 0; option < farm.options.size(); ++option) study.pay_offs.push_back(pay_off(judge, option));
  return study;
}

FarmStudy study_farm(std::vector<FarmTractor> tractors, std::vector<FarmImplement> implements,
                     std::vector<FarmDriveline> drivelines, std::vector<FarmOption> options,
                     const FarmStudySettings& settings) {
  Farm farm;
  farm.tractors = std::move(tractors);
  farm.implements = std::move(implements);
  farm.drivelines = std::move(drivelines);
  farm.options = std::move(options);
  return study_farm(farm, settings);
}

} // namespace v0
} // namespace fieldshaft
