#pragma once
// Limits that tighten with the speed, looked at with the engine at high idle too.

#include "assess/context.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// What passes so fast passes at every high idle, be it that of an engine in an economy gear.
inline constexpr Sourced<double> fastest_idle_share{
    2.0,
    {"no high idle turns a PTO at twice the speed of its gear: a rule of thumb of this library",
     Standing::common_practice}};

/// Not known, for the case does not tell how fast the PTO turns with the engine at high idle.
Finding high_idle_unknown(Check check, const Case& value);

/// What holds at a nominal speed need not hold with the engine at high idle, where the same unevenness shakes more.
/// `judge(speed, is_high_idle)` makes the finding at a speed; what passes at the nominal one alone is a caution, and
/// not known where the case does not tell the speed at high idle, unless it passes at any.
template <class Judge>
Finding at_both_speeds(const Case& value, AngularSpeed nominal, Stated<AngularSpeed> high_idle, const Judge& judge) {
  Finding finding = judge(nominal, false);
  if (finding.status != Status::ok) return finding;
  if (!high_idle) {
    if (judge(fastest_idle_share.value * nominal, true).status != Status::ok) {
      return high_idle_unknown(finding.check, value);
    }
    finding.basis.push_back(fastest_idle_share.source);
    return finding;
  }
  if (*high_idle <= nominal) return finding;
  Finding faster = judge(*high_idle, true);
  if (faster.status == Status::ok) return finding;
  faster.status = Status::caution;
  faster.facts.push_back(fact("nominal", nominal));
  return faster;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
