// Which closed lengths suit the range, and what to cut from the members.

#include "assess/checks.hpp"
#include "assess/coupling_yokes.hpp"
#include "assess/geometry.hpp"
#include "assess/guard_tubes.hpp"
#include "assess/limits.hpp"

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// Rules that every school accepts, and those that none allows to break.
struct RulesInUse {
  TubeRules strictest;
  TubeRules loosest;
};

/// A limit that the case states replaces the rules of practice, the share of the tube included.
RulesInUse rules_in_use(const Case& value, const LimitBand& overlap, const LimitBand& clearance) {
  const auto metres_of = [](Amount amount) { return metres(amount.si); };
  RulesInUse rules;
  if (value.limits.minimum_overlap) {
    rules.strictest.minimum_overlap = {metres_of(overlap.strictest), overlap.basis.front()};
    rules.strictest.overlap_share.value = 0.0;
  }
  rules.loosest.overlap_share.value = 0.0;
  rules.loosest.minimum_overlap = {metres_of(overlap.loosest), overlap.basis.back()};
  rules.strictest.clearance = {metres_of(clearance.strictest), clearance.basis.front()};
  rules.loosest.clearance = {metres_of(clearance.loosest), clearance.basis.front()};
  return rules;
}

const char* overlap_rule(const Case& value, const TubeRules& rules, Length closed_overlap) {
  if (value.limits.minimum_overlap) return "cut.rule.stated";
  const bool share = rules.overlap_share.value * closed_overlap > rules.minimum_overlap.value;
  return share ? "cut.rule.third" : "cut.rule.least";
}

struct CutAnswer {
  Telescope telescope;
  TubeLengths strictest;
  TubeLengths loosest;
  std::optional<Interval<Length>> by_looser; ///< cuts that only the looser rules accept
  const char* rule = "";
};

Length up_to(Length length, Length step) { return std::ceil(length / step - 1e-6) * step; }
Length down_to(Length length, Length step) { return std::floor(length / step + 1e-6) * step; }

/// Cut in whole millimetres, as a person marks it, where the interval leaves room for that.
TubeLengths in_whole_millimetres(TubeLengths tubes, const Telescope& telescope, const Reach& reach) {
  const Length whole = up_to(tubes.cut, millimetres(1.0));
  if (telescope.closed_length - whole < tubes.least_closed) return tubes;
  detail::set_cut(tubes, telescope, reach.longest, reach.shortest, whole);
  return tubes;
}

/// Cuts into an interval of closed lengths, in whole millimetres within it; none where it is empty or needs no cut.
std::optional<Interval<Length>> cuts_into(const TubeLengths& tubes, Length closed) {
  const Interval<Length> cuts{up_to(closed - tubes.greatest_closed, millimetres(1.0)),
                              down_to(closed - tubes.least_closed, millimetres(1.0))};
  if (!(cuts.low > Length{}) || cuts.high < cuts.low) return std::nullopt;
  return cuts;
}

CutAnswer answer_of(const Case& value, const DrivelineOverRange& range, const RulesInUse& rules) {
  const MeasuredLength closed = *value.driveline.closed_length;
  MeasuredLength overlap = *value.driveline.closed_overlap;
  for (const CaseSlide& slide : slides_of(value))
    overlap.tolerance = std::max(overlap.tolerance, slide.overlap.tolerance);
  const Reach reach = reach_of(range, closed, overlap);
  CutAnswer answer;
  answer.telescope = telescope_of(value, false);
  answer.strictest = in_whole_millimetres(
      tube_lengths(answer.telescope, reach.longest, reach.shortest, rules.strictest), answer.telescope, reach);
  answer.loosest = tube_lengths(answer.telescope, reach.longest, reach.shortest, rules.loosest);
  answer.by_looser = cuts_into(answer.loosest, answer.telescope.closed_length);
  answer.rule = overlap_rule(value, rules.strictest, overlap.value - answer.strictest.cut);
  return answer;
}

/// Where the closed length lies: within what all rules, within what some rules, or what no rule allows.
Status status_of(const CutAnswer& answer) {
  const auto within = [&](const TubeLengths& tubes) {
    const Length closed = answer.telescope.closed_length;
    return closed >= tubes.least_closed && closed <= tubes.greatest_closed;
  };
  if (within(answer.strictest)) return Status::ok;
  return within(answer.loosest) ? Status::caution : Status::stop;
}

const char* reason_of(const CutAnswer& answer, Status status) {
  const TubeLengths& tubes = answer.strictest;
  if (tubes.too_long > Length{}) return status == Status::caution ? "cut.conflict_of_rules" : "cut.conflict";
  if (tubes.missing_tube > Length{}) return "cut.too_short";
  return tubes.cut > Length{} ? "cut.needed" : "cut.none_needed";
}

/// The cut of each member that is advised; none where no cut is.
std::optional<Length> advised_cut(const CutAnswer& answer) {
  const TubeLengths& tubes = answer.strictest;
  if (tubes.too_long > Length{}) return answer.by_looser ? std::optional<Length>(answer.by_looser->low) : std::nullopt;
  return tubes.cut > Length{} ? std::optional<Length>(tubes.cut) : std::nullopt;
}

/// What is done to the guard tubes beside a cut of the members.
const char* guard_advice(const GuardPlan& plan) {
  switch (plan.fit) {
  case GuardFit::every_rule: return plan.cut > Length{} ? "cut.guards_own" : "cut.guards_stay";
  case GuardFit::looser_rules: return "cut.guards_by_looser_rules";
  case GuardFit::no_rule: break;
  }
  return "cut.guards_others";
}

/// One order: to cut, by how much and by which rules, or not to cut. Guard tubes have limits of their own.
std::vector<const char*> advice_of(const Case& value, const CutAnswer& answer, const std::optional<GuardPlan>& guards) {
  const TubeLengths& tubes = answer.strictest;
  const std::optional<Length> cut = advised_cut(answer);
  const char* order = "cut.members";
  if (tubes.too_long > Length{}) {
    order = cut ? "cut.by_looser_rules" : "cut.open_interval";
  } else if (tubes.missing_tube > Length{}) {
    order = "cut.longer_tubes";
  } else if (guards && guards->fit == GuardFit::every_rule && guards->cut == tubes.cut) {
    return {"cut.by_this_much", "cut.check_by_hand"};
  }
  if (!cut) return {order, "cut.check_by_hand"};
  if (guards) return {order, guard_advice(*guards), "cut.check_by_hand"};
  const bool guarded = value.driveline.guard != GuardState::absent;
  if (guarded) return {order, "cut.guards_unstated", "cut.check_by_hand"};
  return {order, "cut.check_by_hand"};
}

/// Both ends of an interval of closed lengths for people: rounded inward to whole millimetres, but never past the
/// length that is there where that lies within, and not where the interval holds no whole millimetre.
Interval<Length> shown(const TubeLengths& tubes, Length closed) {
  Length least = millimetres(std::ceil(in(tubes.least_closed, unit::millimetre) - 1e-6));
  Length greatest = millimetres(std::floor(in(tubes.greatest_closed, unit::millimetre) + 1e-6));
  if (closed >= tubes.least_closed) least = std::min(least, closed);
  if (closed <= tubes.greatest_closed) greatest = std::max(greatest, closed);
  if (least > greatest) return {tubes.least_closed, tubes.greatest_closed};
  return {least, greatest};
}

std::vector<Fact> facts_of(const CutAnswer& answer, const DrivelineOverRange& range, const RulesInUse& rules) {
  const TubeLengths& tubes = answer.strictest;
  const Interval<Length> all_rules = shown(tubes, answer.telescope.closed_length);
  const Interval<Length> any_rule = shown(answer.loosest, answer.telescope.closed_length);
  const StateExtremes& longest = *range.longest();
  const StateExtremes& shortest = *range.shortest();
  std::vector<Fact> facts = {fact("closed", answer.telescope.closed_length),
                             fact("guards_keep", guard_overlap_to_keep),
                             fact("least_closed", all_rules.low),
                             fact("greatest_closed", all_rules.high),
                             fact("cut", tubes.cut),
                             fact("closed_after", tubes.closed_after),
                             fact("overlap_after", tubes.overlap_at_longest),
                             fact("clearance_after", tubes.clearance_at_shortest),
                             fact("longest", longest.longest.value),
                             fact("longest_at", PoseIn{longest.state, longest.longest.pose}),
                             fact("shortest", shortest.shortest.value),
                             fact("shortest_at", PoseIn{shortest.state, shortest.shortest.pose}),
                             fact("too_long", tubes.too_long),
                             fact("twice_too_long", 2.0 * tubes.too_long),
                             fact("missing_tube", tubes.missing_tube),
                             fact("least_by_any_rule", any_rule.low),
                             fact("greatest_by_any_rule", any_rule.high),
                             fact("least_overlap", rules.strictest.minimum_overlap.value),
                             fact("looser_overlap", rules.loosest.minimum_overlap.value),
                             fact("looser_clearance", rules.loosest.clearance.value),
                             fact("rule", PhraseId{answer.rule})};
  if (answer.by_looser) {
    facts.push_back(fact("least_cut", answer.by_looser->low));
    facts.push_back(fact("greatest_cut", answer.by_looser->high));
  }
  return facts;
}

/// The closed length against the end of the interval that it breaks, or to which it is nearer.
void set_limit(Finding& finding, const CutAnswer& answer) {
  const TubeLengths& tubes = answer.strictest;
  const Length closed = answer.telescope.closed_length;
  const bool upper = tubes.too_long > Length{} ? closed > tubes.greatest_closed
                                               : closed - tubes.least_closed >= tubes.greatest_closed - closed;
  const Interval<Length> ends = shown(tubes, closed);
  const Length limit = upper ? ends.high : ends.low;
  finding.value = amount_of(closed);
  finding.limit = amount_of(limit);
  finding.sense = upper ? LimitSense::at_most : LimitSense::at_least;
  if (limit > Length{}) finding.margin = (upper ? limit - closed : closed - limit) / limit;
}

} // namespace

void check_cut_list(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  const std::vector<std::string> missing = telescope_missing(value, range);
  const std::vector<std::string> yokes = yokes_missing(value.driveline, "driveline");
  if (!missing.empty() || !yokes.empty()) {
    findings.add(missing.empty() ? not_known(Check::cut_list, "telescope.yokes_unstated", yokes)
                                 : not_known(Check::cut_list, "telescope.unstated", missing));
    return;
  }
  const LimitBand overlap = overlap_band(value, value.driveline.closed_overlap->value);
  const LimitBand clearance = clearance_band(value);
  const RulesInUse rules = rules_in_use(value, overlap, clearance);
  const CutAnswer answer = answer_of(value, range, rules);
  const Status status = status_of(answer);
  Finding finding = make_finding(Check::cut_list, status, reason_of(answer, status));
  set_limit(finding, answer);
  finding.facts = facts_of(answer, range, rules);
  finding.basis = overlap.basis;
  for (const Source& source : clearance.basis) {
    if (source.text != rigid_model.text) finding.basis.push_back(source);
  }
  const bool upper = finding.sense == LimitSense::at_most;
  const StateExtremes& state = upper ? *range.shortest() : *range.longest();
  finding.state = state.state;
  finding.pose = upper ? state.shortest.pose : state.longest.pose;
  std::optional<GuardPlan> guards;
  if (const auto cut = advised_cut(answer); cut && guard_tubes_stated(value.driveline)) {
    guards = guard_plan(value, range, *cut);
    for (Fact& one : facts_of(*guards)) finding.facts.push_back(std::move(one));
  }
  if (finding.status != Status::ok) finding.advice = advice_of(value, answer, guards);
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
