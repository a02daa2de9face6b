#pragma once
// Limits that tighten with the speed, looked at with the engine at high idle too.

#include "assess/context.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// What holds at a nominal speed need not hold with the engine at high idle, where the same unevenness shakes more.
/// `judge(speed, is_high_idle)` makes the finding at a speed; what passes at the nominal one alone is a caution. An
/// idle speed that is not stated leaves the nominal one.
template <class Judge>
Finding at_both_speeds(AngularSpeed nominal, Stated<AngularSpeed> high_idle, const Judge& judge) {
  Finding finding = judge(nominal, false);
  if (finding.status != Status::ok || !high_idle || *high_idle <= nominal) return finding;
  Finding faster = judge(*high_idle, true);
  if (faster.status == Status::ok) return finding;
  faster.status = Status::caution;
  faster.facts.push_back(fact("nominal", nominal));
  return faster;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
