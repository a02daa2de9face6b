// Less work where the power is too much.

#include "advise/proposals.hpp"
#include "assess/bearing.hpp"
#include "assess/need.hpp"

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

/// Feed or width with which a need from the table falls to a wanted one at its high end: what the row goes with most
/// directly is made smaller, feed in steps of 0.1 t/h, width in centimetres. Nothing where the rest takes it all.
std::optional<Implement> smaller(Implement implement, const assessing::Need& own, Power wanted) {
  const Machine& machine = *own.machine;
  const bool by_feed = detail::uses_feed(machine);
  const Power fixed = machine.constant + (by_feed ? machine.per_width * implement.width.value_or(Length{}) : Power{});
  const Power mean = own.power->high / own.high_factor; // of the row without its note
  const double share = (wanted / own.high_factor - fixed) / (mean - fixed);
  if (!(share > 0.0)) return std::nullopt;
  if (by_feed) {
    const MassRate step = tonnes_per_hour(0.1);
    implement.feed_rate = step * std::floor(share * (*implement.feed_rate / step));
  } else {
    const Length step = millimetres(10.0);
    implement.width = step * std::floor(share * (*implement.width / step));
  }
  return implement;
}

/// The power need with which a finding would be met, in whole half kilowatts; nothing where that is no work any more.
void propose_need(const Situation& now, const assessing::Need& own, Power need, Proposals& proposals) {
  const Power half = kilowatts(0.5);
  const Power rounded = half * std::floor(need / half);
  const Power stated = own.power->high;
  if (!(rounded < stated) || rounded < now.options.least_need * stated) return;
  Implement changed = now.value.implement;
  if (own.row) {
    const auto less = smaller(changed, own, rounded);
    if (!less) return;
    changed = *less;
  }
  if (own.stated) changed.power_need = rounded;
  add(proposals, {ChangeKind::less_power,
                  "",
                  {assessing::fact("need", rounded),
                   assessing::fact("own_need", stated),
                   {"share", Amount{100.0 * (rounded / stated), Kind::number}}},
                  [need = changed.power_need, width = changed.width, feed = changed.feed_rate](Case& c) {
                    c.implement.power_need = need;
                    c.implement.width = width;
                    c.implement.feed_rate = feed;
                  }});
}

/// The need that keeps the reserve in the engaged gear.
std::optional<double> need_with_reserve(const Finding& finding) {
  const auto available = amount_fact(finding, "available_low");
  const auto reserve = amount_fact(finding, "reserve");
  if (!available || !reserve) return std::nullopt;
  return *available * (1.0 - *reserve / 100.0);
}

/// The need at which the window of the overload device opens: its lower end goes with the work.
std::optional<double> need_for_window(Power own, const Finding& finding) {
  const auto lowest = amount_fact(finding, "lowest");
  const auto highest = amount_fact(finding, "highest");
  if (!lowest || !highest || *lowest <= *highest) return std::nullopt;
  return own.value() * (*highest / *lowest);
}

std::optional<double> need_within_limit(Power own, const Finding& finding) {
  if (!finding.value || !finding.limit || !(finding.value->si > finding.limit->si)) return std::nullopt;
  return own.value() * (finding.limit->si / finding.value->si);
}

/// The need whose mean torque leaves room for the swings, below the limit and below the torque at which a device lets
/// go.
std::optional<double> need_beside_swings(Power own, const Finding& finding) {
  const auto mean = amount_fact(finding, "mean");
  const auto swing = amount_fact(finding, "swing");
  if (!mean || !swing || !finding.limit) return std::nullopt;
  const double bearable = std::min(finding.limit->si, amount_fact(finding, "device").value_or(finding.limit->si));
  if (!(bearable > *swing)) return std::nullopt;
  return own.value() * (bearable - *swing) / *mean;
}

/// The need with which the bearings live as long as wanted: their life falls with its power of 10/3.
std::optional<double> need_for_life(const Case& value, Power own, const Finding& finding) {
  if (!assessing::life_goes_by_positions(value) || !finding.value || !finding.limit) return std::nullopt;
  return own.value() * std::pow(finding.value->si / finding.limit->si, 0.3);
}

/// What the whole load is too much by, taken off the PTO's part of it.
std::optional<double> need_under_load(Power own, const Finding& finding) {
  if (!finding.value || !finding.limit) return std::nullopt;
  return own.value() - (finding.value->si - finding.limit->si);
}

/// What it is too much by, taken off pull and climb, which go with the ground speed; in steps of 0.1 km/h.
void propose_slower(const Situation& now, const Finding& finding, Proposals& proposals) {
  const auto pull = amount_fact(finding, "pull");
  const auto share = amount_fact(finding, "share");
  const Stated<Speed>& own = now.value.range.ground_speed;
  if (!own || !pull || !share || !finding.value || !finding.limit || !(*pull > 0.0)) return;
  const double kept = 1.0 - (finding.value->si - finding.limit->si) * 0.01 * *share / *pull;
  const Speed step = kilometres_per_hour(0.1);
  const Speed speed = step * std::floor(kept * (*own / step));
  if (!(speed < *own) || speed < now.options.least_need * *own) return;
  add(proposals, {ChangeKind::drive_slower,
                  "",
                  {assessing::fact("speed", speed), assessing::fact("own_speed", *own)},
                  [speed](Case& c) {
                    if (c.implement.feed_rate)
                      *c.implement.feed_rate *= static_cast<double>(speed / *c.range.ground_speed);
                    c.range.ground_speed = speed;
                  }});
}

} // namespace

void propose_power(const Situation& now, const Finding& finding, Proposals& proposals) {
  const assessing::Need own = assessing::need_of(now.value.implement);
  if (!own.power) return;
  std::optional<double> need;
  switch (finding.check) {
  case Check::power_reserve: need = need_with_reserve(finding); break;
  case Check::whole_load:
    need = need_under_load(own.power->high, finding);
    propose_slower(now, finding, proposals);
    break;
  case Check::pulsing_torque: need = need_beside_swings(own.power->high, finding); break;
  case Check::joint_bearing_life: need = need_for_life(now.value, own.power->high, finding); break;
  case Check::overload_window: need = need_for_window(own.power->high, finding); break;
  case Check::interface_power:
  case Check::flank_pressure:
  case Check::fatigue_life: need = need_within_limit(own.power->high, finding); break;
  default: break;
  }
  if (need) propose_need(now, own, Power::from_value(*need), proposals);
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
