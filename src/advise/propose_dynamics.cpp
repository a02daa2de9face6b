// What the operator can do about a harsh or hot start, and about speeds at which the line swings.

#include "advise/proposals.hpp"
#include "advise/quick.hpp"

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

using assessing::fact;

/// The longest time over which a PTO clutch is let in here: beyond it the driver waits and the clutch heats.
constexpr Time longest_ramp = seconds(10.0);

/// The clutch let in over another time: longer for less torque, shorter for less heat. Which of them heals is found by
/// simulating the changed start.
void propose_ramps(const Situation& now, std::initializer_list<double> factors, Proposals& proposals) {
  if (!now.value.start || !now.value.start->clutch_ramp) return;
  const Time own = *now.value.start->clutch_ramp;
  for (const double factor : factors) {
    const Time ramp = seconds(0.1 * std::round(10.0 * factor * own.value()));
    if (!(ramp > Time{}) || ramp > longest_ramp || ramp == own) continue;
    add(proposals, {ChangeKind::time_engagement,
                    std::to_string(factor),
                    {fact("ramp", ramp), fact("own_ramp", own)},
                    [ramp](Case& c) { c.start->clutch_ramp = ramp; }});
  }
}

const Finding* resonance_of(const Assessment& assessment) { return assessment.find(Check::resonance); }

AngularSpeed speed_fact(const Finding& finding, const char* name) {
  return AngularSpeed::from_value(amount_fact(finding, name).value_or(0.0));
}

/// PTO speeds about the implement's own that keep apart from the speed at which pulses meet a natural frequency, in
/// steps of 5 r/min; nothing where the own speed itself lies too near.
std::optional<Interval<AngularSpeed>> speeds_apart(const Finding& resonance, AngularSpeed own, double apart) {
  const AngularSpeed step = rpm(5.0);
  const AngularSpeed critical = speed_fact(resonance, "critical");
  Interval<AngularSpeed> speeds{speed_fact(resonance, "low"), speed_fact(resonance, "high")};
  if (critical > own) {
    speeds.high = std::min(speeds.high, step * std::floor((1.0 - apart) * critical / step));
  } else {
    speeds.low = std::max(speeds.low, step * std::ceil((1.0 + apart) * critical / step));
  }
  if (speeds.low > own || speeds.high < own) return std::nullopt;
  return speeds;
}

/// Speeds that keep apart from every such speed, each found in the line as narrowed so far.
std::optional<Interval<AngularSpeed>> calm_speeds(const Situation& now, AngularSpeed own, double apart) {
  Case narrowed = now.value;
  const Finding* finding = resonance_of(now.assessment);
  std::optional<Assessment> assessed;
  constexpr int most_narrowings = 6;
  for (int i = 0; i < most_narrowings; ++i) {
    auto speeds = speeds_apart(*finding, own, apart);
    if (!speeds) return std::nullopt;
    narrowed.torsion->pto_speeds = *speeds;
    assessed = assessed_quickly(narrowed, now.states);
    finding = assessed ? resonance_of(*assessed) : nullptr;
    if (finding == nullptr || !finding->value) return std::nullopt;
    if (finding->value->si >= apart) return speeds;
  }
  return std::nullopt;
}

/// An operating rule: the PTO kept within speeds at which nothing swings. Never a speed that is not the implement's.
void propose_speeds(const Situation& now, const Finding& finding, Proposals& proposals) {
  if (!now.value.torsion || !now.value.implement.input_speed || !finding.limit || !finding.value) return;
  const AngularSpeed own = *now.value.implement.input_speed;
  const TwoLimits limits = finding.limits.value_or(TwoLimits{*finding.limit, *finding.limit});
  for (const double apart : {limits.caution.si, limits.stop.si}) {
    const auto speeds = calm_speeds(now, own, apart);
    if (!speeds) continue;
    add(proposals, {ChangeKind::keep_pto_speed,
                    apart == limits.caution.si ? "full" : "least",
                    {fact("low", speeds->low), fact("high", speeds->high)},
                    [speeds = *speeds](Case& c) { c.torsion->pto_speeds = speeds; }});
  }
}

} // namespace

void propose_dynamics(const Situation& now, const Finding& finding, Proposals& proposals) {
  switch (finding.check) {
  case Check::simulated_start: propose_ramps(now, {2.0, 4.0}, proposals); break;
  case Check::clutch_heat: propose_ramps(now, {0.5, 2.0}, proposals); break;
  case Check::resonance: propose_speeds(now, finding, proposals); break;
  case Check::pulsing_torque: // where the swing comes from a resonance within the speeds
    if (const Finding* resonance = resonance_of(now.assessment)) propose_speeds(now, *resonance, proposals);
    break;
  default: break;
  }
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
