#pragma once
// The parts of a pair's set-up, each side by itself.

#include <fieldshaft/advise/farm_pair.hpp>

#include <string>
#include <unordered_map>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace advising {

/// Fills the tractor's part of a case. `hitch` is the kind that the implement hangs on.
void set_up_tractor(const FarmTractor& tractor, const PairSetUp& set_up, Stated<HitchKind> hitch, Case& value);
/// Fills the implement's and the driveline's part; without a driveline that part stays unstated.
void set_up_implement(const FarmImplement& implement, const FarmDriveline* driveline, Case& value);

/// Every gear, stub and hitch of a kind; the driveline is left open.
std::vector<PairSetUp> tractor_set_ups(const FarmTractor& tractor, Stated<HitchKind> kind);

/// Which drivelines serve which implement.
class DrivelinesOfImplements {
public:
  explicit DrivelinesOfImplements(const Farm& farm);
  /// Places in the farm's list, in its order; one `none` where no driveline serves the implement.
  std::vector<std::size_t> of(std::size_t implement) const;

private:
  const Farm& farm_;
  std::unordered_map<std::string, std::vector<std::size_t>> places_;
};

const FarmDriveline* driveline_at(const Farm& farm, std::size_t place);

/// Whether a farm can take one of two options only: both replace the same implement, or add things of one name.
bool exclude_each_other(const FarmOption& a, const FarmOption& b);

/// A set-up of a pair with its screened verdict; no whole assessment of it is better.
struct ScreenedSetUp {
  VerdictCode bound;
  PairSetUp set_up;
};

/// The set-ups of a pair, the most promising first.
std::vector<ScreenedSetUp> screened_set_ups(const Farm& farm, std::size_t tractor, std::size_t implement);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
