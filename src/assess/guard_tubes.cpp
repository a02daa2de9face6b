#include "assess/guard_tubes.hpp"

#include "assess/checks.hpp"
#include "assess/coupling_yokes.hpp"
#include "assess/limits.hpp"

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// A guard has to cover the shaft all the way: no overlap left is bare shaft.
LimitBand guard_overlap_band() {
  return {
      amount_of(guard_overlap_to_keep),
      amount_of(Length{}),
      LimitSense::at_least,
      {{"the guard covers the shaft all the way; 50 mm of overlap left is a rule of thumb and default of this library",
        Standing::common_practice},
       rigid_model}};
}

/// What the guard tubes have left as they stand.
struct Left {
  Length overlap{}; ///< at the longest position
  Length room{};    ///< at the shortest
};

Left left_of(const Case& value, const Reach& reach) {
  const Length closed = value.driveline.guard_closed_length->value;
  return {value.driveline.guard_closed_overlap->value - (reach.longest - closed), reach.shortest - closed};
}

Length whole_up(Length length) { return millimetres(std::ceil(in(length, unit::millimetre) - 1e-6)); }
Length whole_down(Length length) { return millimetres(std::floor(in(length, unit::millimetre) + 1e-6)); }

/// Cuts in whole millimetres that leave an overlap and a room; empty, the low end above the high one, where none does.
Interval<Length> cuts_leaving(const Left& left, Amount overlap, Amount room) {
  const Length high = whole_down(0.5 * (left.overlap - metres(overlap.si)));
  return {std::max(Length{}, whole_up(metres(room.si) - left.room)), high};
}

Finding guard_finding(Amount amount, const LimitBand& band, const char* reason, MachineState state,
                      const PoseAt& pose) {
  Finding finding = compare(Check::guard_tubes, amount, band, reason);
  finding.state = state;
  finding.pose = pose;
  return finding;
}

const char* advice_of(const GuardPlan& plan) {
  const bool can_be = plan.suitable_overlap < plan.suitable_closed;
  if (plan.fit == GuardFit::every_rule) return "guard_tubes.cut";
  if (plan.fit == GuardFit::looser_rules && plan.cut > Length{}) return "guard_tubes.cut_by_looser_rules";
  return can_be ? "guard_tubes.others" : "guard_tubes.longer";
}

} // namespace

Reach reach_of(const DrivelineOverRange& range, MeasuredLength closed, MeasuredLength overlap) {
  return {range.longest()->longest.value + closed.tolerance + overlap.tolerance,
          range.shortest()->shortest.value - closed.tolerance};
}

bool guard_tubes_stated(const DrivelineCase& line) { return line.guard_closed_length && line.guard_closed_overlap; }

GuardPlan guard_plan(const Case& value, const DrivelineOverRange& range, Length wanted) {
  const Reach reach = reach_of(range, *value.driveline.guard_closed_length, *value.driveline.guard_closed_overlap);
  const Left left = left_of(value, reach);
  const LimitBand overlap = guard_overlap_band();
  const LimitBand room = clearance_band(value);
  const Interval<Length> every = cuts_leaving(left, overlap.strictest, room.strictest);
  const Interval<Length> looser = cuts_leaving(left, overlap.loosest, room.loosest);
  GuardPlan plan;
  if (every.low <= every.high) {
    plan.fit = GuardFit::every_rule;
    plan.cut = std::clamp(wanted, every.low, every.high);
  } else if (looser.low <= looser.high) {
    plan.fit = GuardFit::looser_rules;
    plan.cut = std::clamp(every.high, looser.low, looser.high);
  }
  plan.overlap_after = left.overlap - 2.0 * plan.cut;
  plan.room_after = left.room + plan.cut;
  plan.suitable_closed = whole_down(reach.shortest - metres(room.strictest.si));
  plan.suitable_overlap = whole_up(reach.longest + metres(overlap.strictest.si) - plan.suitable_closed);
  return plan;
}

std::vector<Fact> facts_of(const GuardPlan& plan) {
  return {fact("guard_cut", plan.cut), fact("guard_overlap_after", plan.overlap_after),
          fact("guard_room_after", plan.room_after), fact("guard_closed", plan.suitable_closed),
          fact("guard_overlap", plan.suitable_overlap)};
}

void check_guard_tubes(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  const auto& closed = value.driveline.guard_closed_length;
  const auto& overlap = value.driveline.guard_closed_overlap;
  if (!closed && !overlap) {
    findings.not_examined(Check::guard_tubes, {"driveline.guard_closed_length", "driveline.guard_closed_overlap"});
    return;
  }
  std::vector<std::string> missing = range.missing_for_all();
  for (auto& path : unstated({{closed.has_value(), "driveline.guard_closed_length"},
                              {overlap.has_value(), "driveline.guard_closed_overlap"}})) {
    missing.push_back(std::move(path));
  }
  for (std::string& path : yokes_missing(value.driveline, "driveline")) missing.push_back(std::move(path));
  if (!missing.empty()) {
    findings.add(not_known(Check::guard_tubes, "guard_tubes.unstated", missing));
    return;
  }
  const Left left = left_of(value, reach_of(range, *closed, *overlap));
  Finding bare = guard_finding(amount_of(left.overlap), guard_overlap_band(), "guard_tubes.overlap",
                               range.longest()->state, range.longest()->longest.pose);
  Finding bottoms = guard_finding(amount_of(left.room), clearance_band(value), "guard_tubes.room",
                                  range.shortest()->state, range.shortest()->shortest.pose);
  const bool overlap_decides =
      bare.status > bottoms.status || (bare.status == bottoms.status && left.overlap < left.room);
  Finding& finding = overlap_decides ? bare : bottoms;
  const GuardPlan plan = guard_plan(value, range, Length{});
  finding.facts = facts_of(plan);
  finding.facts.push_back(fact("overlap", left.overlap));
  finding.facts.push_back(fact("room", left.room));
  if (finding.status != Status::ok) finding.advice = {advice_of(plan)};
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
