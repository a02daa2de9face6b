#pragma once
// A farm as a whole: what runs with what, what stands still when a tractor is down, what to change, and what pays.

#include <fieldshaft/advise/changeover.hpp>
#include <fieldshaft/advise/farm_backup.hpp>
#include <fieldshaft/advise/farm_matrix.hpp>
#include <fieldshaft/advise/farm_pair.hpp>
#include <fieldshaft/advise/farm_pay.hpp>
#include <fieldshaft/advise/remedies.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The best set-up of a pair and the finding that governs its verdict.
struct PairDetail {
  PairSetUp set_up;
  std::string gear; ///< names of the same, for people; empty where there is none
  std::string stub;
  std::string driveline;
  std::optional<Finding> governing; ///< none where there is no objection and no caution
  std::size_t stops = 0;
  std::size_t unknowns = 0;
  std::size_t cautions = 0;
};

/// A pair that does not work as it is, and what was found to bring it there.
struct PairRemedies {
  PairPlace pair;
  Remedies remedies;
  std::vector<PairPlace> spoils; ///< pairs that work today and would no longer, with the first set that heals the pair
};

/// What has to be done to a tractor before it can run some implements, from one set-up that is in use to another:
/// another stub, another speed of it. The way back is one of its own.
struct FarmChangeover {
  std::size_t tractor = 0;
  std::vector<std::size_t> implements;
  Changeover changeover;
};

/// Whether a farm needs a PTO speed.
enum class SpeedNeed {
  not_needed,   ///< no implement is made for it
  covered,      ///< every implement that is made for it has two tractors
  for_backup,   ///< some implement that is made for it has only one tractor
  to_run_at_all ///< some implement that is made for it has no tractor
};

/// The answer to "do I need 1000 as well?", for one nominal speed.
struct SpeedAnswer {
  AngularSpeed speed{};
  SpeedNeed need = SpeedNeed::not_needed;
  std::vector<std::size_t> tractors;   ///< that have a gear of this speed
  std::vector<std::size_t> implements; ///< that are made for it
  std::vector<std::size_t> not_run;    ///< of these: no tractor runs them
  std::vector<std::size_t> single;     ///< of these: one tractor runs them
  std::vector<std::size_t> overloaded; ///< made for 540 r/min, with more power than a stub is recommended for there
  std::vector<std::size_t> options;    ///< of the farm that bring this speed to a tractor or an implement
};

/// How a farm is studied.
struct FarmStudySettings {
  StudyDepth depth = StudyDepth::certified;
  Executor executor = run_in_turn;
  bool remedies = false;          ///< search remedies for every pair that does not work; certified studies only
  RemedyOptions remedy_options{}; ///< of that search
};

struct FarmStudy {
  std::string title;
  std::string note;
  StudyDepth depth = StudyDepth::certified;
  std::vector<std::string> tractors; ///< names, in the order of the farm
  std::vector<std::string> implements;
  std::vector<std::string> options;
  VerdictMatrix verdicts;
  std::vector<PairDetail> details; ///< row by row; of certified studies only, see study_pair
  Backup backup;
  BackupPlan plan;
  std::vector<SpeedAnswer> speeds;
  std::vector<PayOff> pay_offs;
  std::vector<PairRemedies> remedies;
  std::vector<FarmChangeover> changeovers; ///< for pairs that work; of certified studies only

  const PairDetail* detail(std::size_t tractor, std::size_t implement) const noexcept {
    return details.empty() ? nullptr : &details[tractor * implements.size() + implement];
  }
};

/// Studies a farm. The order of machines and options does not change an answer, nor does the executor.
///
/// A screening looks at every pair through `screened_checks` only and says so; its memory is two bytes for each pair.
/// Throws CaseError for a farm built in code whose entries contradict each other, InputError for numbers that cannot
/// be.
FarmStudy study_farm(const Farm& farm, const FarmStudySettings& settings = {});

/// The same for machines that are no farm yet.
FarmStudy study_farm(std::vector<FarmTractor> tractors, std::vector<FarmImplement> implements,
                     std::vector<FarmDriveline> drivelines, std::vector<FarmOption> options = {},
                     const FarmStudySettings& settings = {});

} // namespace v0
} // namespace fieldshaft
