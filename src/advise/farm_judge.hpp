#pragma once
// Verdicts of a farm with any of its options, each pair assessed once for each set of options
// and remedies that touches it.

#include "advise/farm_remedy.hpp"

#include <fieldshaft/advise/farm.hpp>

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace advising {

/// What is kept of a pair.
struct PairRecord {
  VerdictCode code;
  PairDetail detail;
  std::vector<std::size_t> gears; ///< in which the pair works
};

/// A farm after some options and remedies with the verdicts of all its pairs.
struct JudgedFarm {
  Farm farm;
  VerdictMatrix matrix;
};

class FarmJudge {
public:
  FarmJudge(const Farm& farm, StudyDepth depth, Executor executor);

  const Farm& base() const noexcept { return farm_; }
  StudyDepth depth() const noexcept { return depth_; }
  /// Remedies that may be taken too, by their places in this list.
  void offer(std::vector<FarmRemedy> remedies) { remedies_ = std::move(remedies); }
  const std::vector<FarmRemedy>& remedies() const noexcept { return remedies_; }

  /// The farm after some options, and after some remedies of pairs that it still has.
  JudgedFarm with(const std::vector<std::size_t>& options, const std::vector<std::size_t>& remedies = {});
  /// What is known of a pair of a farm that `with` gave for the same options.
  PairRecord record(const JudgedFarm& judged, const std::vector<std::size_t>& options, PairPlace pair);

private:
  struct Changes {
    const std::vector<std::size_t>& options;
    const std::vector<std::size_t>& remedies;
  };
  std::string key_of(const Farm& farm, const Changes& changes, PairPlace pair) const;
  bool touches(const FarmOption& option, const std::string& tractor, const std::string& implement) const;
  PairRecord record_with(const Farm& farm, const Changes& changes, PairPlace pair) const;
  void assess_pairs(const JudgedFarm& judged, const Changes& changes);

  const Farm& farm_;
  StudyDepth depth_;
  Executor executor_;
  std::vector<FarmRemedy> remedies_;
  std::unordered_map<std::string, PairRecord> known_; ///< of certified studies
  std::optional<VerdictMatrix> screened_base_;        ///< of screenings: asked for again and again
};

/// The gears in which a pair works, by screening.
std::vector<std::size_t> screened_gears(const Farm& farm, PairPlace pair);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
