// Less work where the power is too much.

#include "advise/proposals.hpp"

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

/// The power need with which a finding would be met, in whole half kilowatts; nothing where that is no work any more.
void propose_need(const Situation& now, Power need, Proposals& proposals) {
  const Power half = kilowatts(0.5);
  const Power rounded = half * std::floor(need / half);
  const Power stated = *now.value.implement.power_need;
  if (!(rounded < stated) || rounded < now.options.least_need * stated) return;
  add(proposals, {ChangeKind::less_power,
                  "",
                  {assessing::fact("need", rounded),
                   assessing::fact("own_need", stated),
                   {"share", Amount{100.0 * (rounded / stated), Kind::number}}},
                  [rounded](Case& c) { c.implement.power_need = rounded; }});
}

/// The need that keeps the reserve in the engaged gear.
std::optional<double> need_with_reserve(const Finding& finding) {
  const auto available = amount_fact(finding, "available_low");
  const auto reserve = amount_fact(finding, "reserve");
  if (!available || !reserve) return std::nullopt;
  return *available * (1.0 - *reserve / 100.0);
}

/// The need at which the window of the overload device opens: its lower end goes with the work.
std::optional<double> need_for_window(const Case& value, const Finding& finding) {
  const auto lowest = amount_fact(finding, "lowest");
  const auto highest = amount_fact(finding, "highest");
  if (!lowest || !highest || *lowest <= *highest) return std::nullopt;
  return value.implement.power_need->value() * (*highest / *lowest);
}

std::optional<double> need_within_limit(const Case& value, const Finding& finding) {
  if (!finding.value || !finding.limit || !(finding.value->si > finding.limit->si)) return std::nullopt;
  return value.implement.power_need->value() * (finding.limit->si / finding.value->si);
}

} // namespace

void propose_power(const Situation& now, const Finding& finding, Proposals& proposals) {
  if (!now.value.implement.power_need) return;
  std::optional<double> need;
  switch (finding.check) {
  case Check::power_reserve: need = need_with_reserve(finding); break;
  case Check::overload_window: need = need_for_window(now.value, finding); break;
  case Check::interface_power:
  case Check::flank_pressure:
  case Check::fatigue_life: need = need_within_limit(now.value, finding); break;
  default: break;
  }
  if (need) propose_need(now, Power::from_value(*need), proposals);
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
