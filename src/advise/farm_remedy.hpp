#pragma once
// Remedies of single pairs as changes to the farm, where machines share what is changed.

#include <fieldshaft/advise/farm.hpp>

#include <optional>
#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace advising {

/// A verified set of changes of one pair. Implement, driveline, overload device and guards are shared: what is changed
/// there holds for every pair that uses them. Gear, stub, pin, top link, range and load are chosen anew for each job.
struct FarmRemedy {
  PairPlace pair; ///< in the farm as it is
  std::size_t set = 0;
  PairSetUp set_up;
  std::string tractor; ///< names: places change with the options that are taken
  std::string implement;
  std::string driveline; ///< empty where there is none
  Case changed;
  std::vector<std::string> shared; ///< entries of the case that belong to a shared part
  std::vector<std::string> own;    ///< entries of this pair alone
};

/// The sets that heal their pairs whole.
std::vector<FarmRemedy> farm_remedies(const Farm& farm, const FarmStudy& study);

/// Whether a pair of a farm may be judged otherwise once the remedy is carried out.
bool touches(const FarmRemedy& remedy, const Farm& farm, PairPlace pair);

/// Where the remedy's own pair stands in a farm; nothing if one of its machines is gone.
std::optional<PairPlace> place_of(const FarmRemedy& remedy, const Farm& farm);

/// Changes the shared parts of a farm that still has the pair.
void carry_out(const FarmRemedy& remedy, Farm& farm);

/// The remedy's own pair in a farm whose shared parts are as they are there: the remedy's gear, pin and range on top.
Case own_case(const FarmRemedy& remedy, const Farm& farm);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
