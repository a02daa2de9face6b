#pragma once
// What each side of a pair brings to the checks that need no geometry, so that a pair costs a few comparisons.

#include <fieldshaft/advise/farm_matrix.hpp>
#include <fieldshaft/advise/farm_pair.hpp>

#include <array>
#include <cstdint>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace advising {

/// A spline as its type number; below zero where there is none.
enum SplineNumber : std::int32_t { spline_unidentified = -1, spline_unstated = -2 };

/// Whether the stub's own speed and the gear's agree.
enum class LeverState : std::int32_t { agrees, disagrees, not_known };

/// A rotation; below zero where it is not known.
enum RotationNumber : std::int32_t { rotation_unknown = -1, rotation_clockwise, rotation_counter_clockwise };

/// One gear with one stub and one hitch of a tractor, in SI units. NaN: not known.
struct TractorSide {
  double pto_speed;
  double recommended_low; ///< of the stub at that speed
  double recommended_high;
  double gear_low; ///< power in the gear
  double gear_high;
  double pto_low; ///< power of the tractor at the PTO
  double pto_high;
  std::int32_t stub;
  LeverState lever;
  RotationNumber rotation;
  std::int32_t rotation_stated; ///< 1: by the farm, not by the standard
  VerdictCode own;              ///< of the checks that the implement does not touch
  VerdictCode doubted;          ///< of those that say nothing at the wrong speed
};

/// One implement with one of its drivelines.
struct ImplementSide {
  double speed;
  double speed_tolerance;
  double need_mean; ///< the need, or mean and high end of its range by the table
  double need;
  double kept_share; ///< of the power in the gear, after the reserve
  double permitted;
  std::int32_t yoke;
  RotationNumber rotation; ///< that it needs
  VerdictCode own;
};

TractorSide tractor_side(const FarmTractor& tractor, const PairSetUp& set_up, Stated<HitchKind> hitch);
ImplementSide implement_side(const FarmImplement& implement, const FarmDriveline* driveline);

/// The screened verdict of a set-up, the same as that of `assess` on the same checks.
VerdictCode screened(const TractorSide& tractor, const ImplementSide& implement) noexcept;

/// All pairs by screening. Machines that are equal in these figures are compared once.
VerdictMatrix screened_matrix(const Farm& farm, const Executor& executor);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
