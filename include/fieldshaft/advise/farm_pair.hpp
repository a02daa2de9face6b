#pragma once
// One tractor with one implement of a farm: the ways to set the tractor up for it, and the best of them.

#include <fieldshaft/advise/verdict_code.hpp>
#include <fieldshaft/assess/assess.hpp>
#include <fieldshaft/case/farm.hpp>

#include <cstddef>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// How a tractor is set up for an implement: places in the lists of the farm.
struct PairSetUp {
  static constexpr std::size_t none = static_cast<std::size_t>(-1);

  std::size_t gear = none;      ///< in the tractor's gears; none where it lists none
  std::size_t stub = 0;         ///< 0: the stub that is out; n: the n-th of its other stubs
  std::size_t hitch = none;     ///< 0: the tractor's first hitch; n: the n-th other; none: no hitch of the kind needed
  std::size_t driveline = none; ///< in the farm's drivelines; none where no driveline serves the implement
};

/// Every way to set the tractor up: each gear with each stub, each hitch of the implement's kind and each driveline
/// that serves the implement. There is always at least one; what is lacking stays unstated in its case.
std::vector<PairSetUp> pair_set_ups(const Farm& farm, std::size_t tractor, std::size_t implement);

/// The case of a pair in one set-up. Throws InputError for places that the farm does not have.
Case case_of(const Farm& farm, std::size_t tractor, std::size_t implement, const PairSetUp& set_up);

/// The best set-up of a pair and its assessment.
struct PairStudy {
  PairSetUp set_up;
  Assessment assessment;
};

/// Assesses the set-ups of a pair and returns the best one: the one with the best verdict; of those, the one whose
/// first objection comes latest in the order of the checks, so that a tractor that is too weak in the right gear is not
/// blamed for the wrong gear.
PairStudy study_pair(const Farm& farm, std::size_t tractor, std::size_t implement);

/// The farm after some of its options (places in its list), in their order. An implement that is given up leaves the
/// drivelines that served it, and a driveline that serves nothing any more goes with it. The options that are left stay
/// in the list unless one that is taken excludes them: two that replace the same implement, or add machines,
/// drivelines or gears of one tractor under the same name.
/// Throws InputError for an option whose tractor or implement the farm does not have, and for options that exclude each
/// other.
Farm with_options(const Farm& farm, const std::vector<std::size_t>& options);

} // namespace v0
} // namespace fieldshaft
