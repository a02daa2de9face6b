#pragma once
// The verdicts of all pairs of a farm.

#include <fieldshaft/advise/verdict_code.hpp>
#include <fieldshaft/case/farm.hpp>
#include <fieldshaft/core/executor.hpp>

#include <array>
#include <cstddef>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// Verdict and governing check of every pair, two bytes each, one row for each tractor.
class VerdictMatrix {
public:
  VerdictMatrix() = default;
  VerdictMatrix(std::size_t tractors, std::size_t implements)
      : tractors_(tractors), implements_(implements), codes_(tractors * implements) {}

  std::size_t tractors() const noexcept { return tractors_; }
  std::size_t implements() const noexcept { return implements_; }
  VerdictCode at(std::size_t tractor, std::size_t implement) const { return codes_.at(index(tractor, implement)); }
  VerdictCode* row(std::size_t tractor) noexcept { return codes_.data() + tractor * implements_; }
  const VerdictCode* row(std::size_t tractor) const noexcept { return codes_.data() + tractor * implements_; }
  bool runs(std::size_t tractor, std::size_t implement) const { return at(tractor, implement).runs(); }

private:
  std::size_t index(std::size_t tractor, std::size_t implement) const noexcept {
    return implement < implements_ ? tractor * implements_ + implement : codes_.size();
  }

  std::size_t tractors_ = 0;
  std::size_t implements_ = 0;
  std::vector<VerdictCode> codes_;
};

/// How deep a study looks at each pair.
enum class StudyDepth {
  certified, ///< a whole assessment of each set-up, with the proved geometry
  screening  ///< the checks of `screened_checks` alone
};

/// What a screening looks at: everything that needs no geometry of the driveline and no strength of its parts.
inline constexpr std::array screened_checks = {
    Check::pto_speed,       Check::stub_and_lever,  Check::spline_fit,       Check::adaptor,
    Check::pto_rotation,    Check::pto_place,       Check::interface_power,  Check::tractor_power_through_interface,
    Check::power_reserve,   Check::permitted_power, Check::drawbar_distance, Check::master_shield,
    Check::driveline_guard, Check::input_guard,
};

/// The verdict of every pair in its best set-up.
///
///   depth     a screening says the same as a whole assessment on the checks that it looks at, and so never worse; it
///   may
///             say better, since it looks at no more than these
///   executor  runs the rows; the result is the same bits for every executor
/// Throws InputError for machines built in code with numbers that cannot be.
VerdictMatrix verdict_matrix(const Farm& farm, StudyDepth depth = StudyDepth::certified,
                             const Executor& executor = run_in_turn);

} // namespace v0
} // namespace fieldshaft
