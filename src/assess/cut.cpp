// Which closed lengths suit the range, and what to cut from members and guard tubes.

#include "assess/checks.hpp"
#include "assess/coupling_yokes.hpp"
#include "assess/geometry.hpp"
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

/// The extremes of all states, moved to the unfavourable ends of the tolerances of closed length and overlap: then the
/// members may be reckoned with as stated.
struct Reach {
  Length longest{};
  Length shortest{};
};

Reach reach_of(const DrivelineOverRange& range, MeasuredLength closed, MeasuredLength overlap) {
  return {range.longest()->longest.value + closed.tolerance + overlap.tolerance,
          range.shortest()->shortest.value - closed.tolerance};
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

/// One order: to cut, by how much and by which rules, or not to cut.
const char* advice_of(const CutAnswer& answer) {
  const TubeLengths& tubes = answer.strictest;
  if (tubes.too_long > Length{}) return answer.by_looser ? "cut.by_looser_rules" : "cut.open_interval";
  return tubes.missing_tube > Length{} ? "cut.longer_tubes" : "cut.by_this_much";
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
  if (finding.status != Status::ok) finding.advice = {advice_of(answer), "cut.check_by_hand"};
  findings.add(std::move(finding));
}

namespace {

/// A guard has to cover the shaft all the way: no overlap left is bare shaft.
LimitBand guard_overlap_band() {
  return {
      amount_of(millimetres(50.0)),
      amount_of(Length{}),
      LimitSense::at_least,
      {{"the guard covers the shaft all the way; 50 mm of overlap left is a rule of thumb and default of this library",
        Standing::common_practice},
       rigid_model}};
}

Finding guard_finding(Amount amount, const LimitBand& band, const char* reason, MachineState state,
                      const PoseAt& pose) {
  Finding finding = compare(Check::guard_tubes, amount, band, reason);
  finding.state = state;
  finding.pose = pose;
  return finding;
}

} // namespace

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
  const Reach reach = reach_of(range, *closed, *overlap);
  const Length left = overlap->value - (reach.longest - closed->value);
  const Length room = reach.shortest - closed->value;
  const LimitBand clearance = clearance_band(value);
  Finding bare = guard_finding(amount_of(left), guard_overlap_band(), "guard_tubes.overlap", range.longest()->state,
                               range.longest()->longest.pose);
  Finding bottoms = guard_finding(amount_of(room), clearance, "guard_tubes.room", range.shortest()->state,
                                  range.shortest()->shortest.pose);
  if (bare.status != Status::ok) bare.advice = {"guard_tubes.longer"};
  if (bottoms.status != Status::ok) bottoms.advice = {"guard_tubes.cut"};
  const Length cut = std::max(Length{}, metres(clearance.strictest.si) - room);
  for (Finding* finding : {&bare, &bottoms}) {
    finding->facts = {fact("overlap", left), fact("room", room), fact("cut", cut),
                      fact("overlap_after", left - 2.0 * cut)};
  }
  const bool overlap_decides = bare.status > bottoms.status || (bare.status == bottoms.status && left < room);
  findings.add(overlap_decides ? bare : bottoms);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
