#include "assess/need.hpp"

#include "assess/loads.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// A draft that belongs to the total requirement of a row, beside its PTO power: note of the table, from memory.
struct RowDraft {
  std::string_view machine;
  ForcePerLength per_width;
  double range; ///< plus and minus, as a share
};

constexpr RowDraft row_drafts[] = {{"potato harvester", of(11.6, unit::kilonewton_per_metre), 0.40},
                                   {"beet harvester", of(5.6, unit::kilonewton_per_metre), 0.40}};

const RowDraft* row_draft(const Machine& machine) noexcept {
  for (const RowDraft& draft : row_drafts) {
    if (draft.machine == machine.name) return &draft;
  }
  return nullptr;
}

/// The feed on the basis of the row; nothing while an entry is missing.
Stated<FeedRate> feed_for(const Machine& machine, const Implement& implement, std::vector<std::string>& missing) {
  if (!detail::uses_feed(machine)) return FeedRate{};
  const bool to_dry = implement.feed_basis == FeedBasis::wet && machine.basis == FeedBasis::dry;
  for (auto& path : unstated({{implement.feed_rate.has_value(), "implement.feed_rate"},
                              {implement.feed_basis.has_value(), "implement.feed_basis"},
                              {!to_dry || implement.moisture.has_value(), "implement.moisture"}})) {
    missing.push_back(std::move(path));
  }
  if (!missing.empty()) return std::nullopt;
  const FeedRate feed{*implement.feed_rate, *implement.feed_basis};
  return to_dry ? dry_matter(feed, *implement.moisture) : feed;
}

/// What the row gives, its note counted where it applies, and at the high end where nobody says whether it does.
ImplementPower noted(ImplementPower row, double factor, const Stated<bool>& applies) {
  const double known = applies == true ? factor : 1.0;
  return {known * row.low, known * row.mean, (applies ? known : factor) * row.high};
}

/// A measurement that passes the row's upper end takes its place. What is weighed wet counts as dry where its moisture
/// is not stated: too much rather than too little.
void raise_to_measured(const Implement& implement, Need& need) {
  for (const detail::MeasuredAgainstRow& entry : detail::measured_against_rows) {
    if (entry.row != need.machine->name) continue;
    const Power measured = entry.measured->high * (1.0 - implement.moisture.value_or(0.0)) * need.feed.rate;
    if (!(measured > need.power->high)) continue;
    need.power->high = measured;
    need.measured = entry.measured;
  }
}

bool depends_on_need(Check check) { return check >= Check::interface_power && check <= Check::fatigue_life; }

Status worst_of(const Assessment& assessment, Check check) {
  Status status = Status::ok;
  for (const Finding& finding : assessment.findings) {
    if (finding.check == check) status = worse(status, finding.status);
  }
  return status;
}

} // namespace

bool has_own_draft(const Machine& machine) noexcept { return row_draft(machine) != nullptr; }

Need need_of(const Implement& implement) {
  Need need;
  const Stated<Power>& own = implement.power_need;
  need.stated = own.has_value();
  if (own) need.power = ImplementPower{*own, *own, *own};
  if (!implement.machine) return need;
  need.machine = &machine_named(*implement.machine);
  const bool wide = detail::uses_width(*need.machine);
  if (wide && !implement.width) need.missing.emplace_back("implement.width");
  const Stated<FeedRate> feed = feed_for(*need.machine, implement, need.missing);
  if (!feed || !need.missing.empty()) return need;
  need.feed = *feed;
  const ImplementPower row = implement_power(*need.machine, implement.width.value_or(Length{}), *feed);
  const double factor = note_factor(*need.machine);
  need.row = noted(row, factor, implement.note_applies);
  need.note_applies = implement.note_applies;
  need.note_open = !own && factor > 1.0 && !implement.note_applies;
  need.high_factor = (own ? *own : need.row->high) / row.mean;
  if (own) return need;
  need.power = need.row;
  raise_to_measured(implement, need);
  return need;
}

Case with_row_draft(Case value) {
  const Implement& implement = value.implement;
  if (!implement.machine || implement.draft || !implement.width) return value;
  if (const RowDraft* row = row_draft(machine_named(*implement.machine)))
    value.implement.draft = (1.0 + row->range) * row->per_width * *implement.width;
  return value;
}

Case with_need(const Case& value, Stated<Power> need) {
  Case figure = with_row_draft(value);
  figure.implement.machine.reset();
  figure.implement.note_applies.reset();
  figure.implement.power_need = need;
  return figure;
}

namespace {

/// A figure below this share of the row's low end is looked at again: a slip of the unit, or the need of light work.
constexpr Sourced<double> least_of_row{
    0.5, {"half of the table's low end, a rule of thumb of this library", Standing::common_practice}};

/// A figure beside the row: whether it can be that of the heaviest work.
Finding stated_need(const Need& need) {
  const Amount least = amount_of(least_of_row.value * need.row->low);
  Finding finding = compare(Check::power_need, amount_of(need.power->mean),
                            {least, Amount{0.0, Kind::power}, LimitSense::at_least, {}}, "need.stated");
  if (finding.status != Status::ok) finding.advice = {"need.look_again"};
  finding.limits.reset(); // there is no stop below nought
  finding.basis = {need.machine->source, least_of_row.source};
  finding.facts = {fact("machine", std::string(need.machine->name)), fact("low", need.row->low),
                   fact("high", need.row->high)};
  return finding;
}

/// What the sentence on a need from the row says.
const char* row_reason(const Need& need, bool sized) {
  if (need.measured != nullptr) return "need.row_measured";
  if (!sized) return "need.row_unsized";
  if (need.note_open) return "need.row_note_open";
  return need.machine->note.empty() || need.note_applies == false ? "need.row" : "need.row_noted";
}

} // namespace

void check_need(const Case& value, const Need& need, Findings& findings) {
  if (need.machine == nullptr) {
    findings.not_examined(Check::power_need);
    return;
  }
  if (!need.row) {
    Finding finding = not_known(Check::power_need, "need.unstated", need.missing);
    finding.facts = {fact("machine", std::string(need.machine->name))};
    findings.add(std::move(finding));
    return;
  }
  if (need.stated) {
    findings.add(stated_need(need));
    return;
  }
  // A draft that the row itself demands and that cannot be reckoned yet would make the tractor too small.
  const auto beside = load_beside_pto(value);
  const bool sized = beside || !has_own_draft(*need.machine);
  const bool open = need.measured != nullptr || need.note_open;
  Finding finding = make_finding(Check::power_need, open ? Status::caution : Status::ok, row_reason(need, sized));
  if (need.note_open) finding.advice = {"need.state_note"};
  finding.value = amount_of(need.power->mean);
  finding.basis = {need.machine->source};
  if (need.measured != nullptr) finding.basis.push_back(need.measured->source);
  finding.facts = {fact("machine", std::string(need.machine->name)), fact("low", need.power->low),
                   fact("high", need.power->high)};
  const double kept = 1.0 - wanted_reserve(value);
  if (sized) finding.facts.push_back(fact("tractor", (need.power->high + beside.value_or(Power{})) / kept));
  if (!need.machine->note.empty()) finding.facts.push_back(fact("note", std::string(need.machine->note)));
  findings.add(std::move(finding));
}

void soften_where_mean_need_passes(Assessment& at_high, const Assessment& at_mean) {
  for (Finding& finding : at_high.findings) {
    if (!depends_on_need(finding.check) || finding.status != Status::stop) continue;
    if (worst_of(at_mean, finding.check) == Status::stop) continue;
    finding.status = Status::caution;
    finding.at_high_need = true;
    finding.advice.emplace_back("need.high_end");
  }
}

void name_missing_of_row(const Need& need, Assessment& assessment) {
  if (need.missing.empty()) return;
  for (Finding& finding : assessment.findings) {
    const auto figure = std::find(finding.missing.begin(), finding.missing.end(), "implement.power_need");
    if (figure == finding.missing.end()) continue;
    finding.missing.erase(figure);
    finding.missing.insert(finding.missing.end(), need.missing.begin(), need.missing.end());
    finding.missing = not_known(finding.check, finding.reason, std::move(finding.missing)).missing; // sorted, each once
  }
}

namespace {

/// The entries that the whole load needs beside power and gear. A climb weighs tractor and implement.
std::vector<std::string> missing_of_load(const Case& value) {
  const bool level = value.range.slope == Angle{};
  return unstated({{value.implement.draft.has_value(), "implement.draft"},
                   {value.implement.hydraulic_power.has_value(), "implement.hydraulic_power"},
                   {value.range.ground_speed.has_value(), "range.ground_speed"},
                   {value.range.slope.has_value(), "range.slope"},
                   {value.range.ground.has_value(), "range.ground"},
                   {value.tractor.traction.has_value(), "tractor.traction"},
                   {level || value.tractor.mass, "tractor.mass"},
                   {level || value.implement.mass, "implement.mass"}});
}

Power pull_of(const Case& value) {
  const Mass mass = value.tractor.mass.value_or(Mass{}) + value.implement.mass.value_or(Mass{});
  return pulling_power(*value.implement.draft, mass, *value.range.slope, *value.range.ground_speed);
}

bool says_nothing_of_load(const Case& value) {
  return !value.implement.draft && !value.implement.hydraulic_power && !value.range.slope;
}

} // namespace

std::vector<std::string> missing_beside_pto(const Case& value) {
  return says_nothing_of_load(value) ? std::vector<std::string>{} : missing_of_load(value);
}

Stated<Power> load_beside_pto(const Case& value) {
  if (!missing_of_load(value).empty()) return std::nullopt;
  const double share = drawbar_of_pto(*value.tractor.traction, *value.range.ground).value;
  return equivalent_pto_power(pull_of(value), share, 1.0, Power{}, *value.implement.hydraulic_power).power;
}

void check_whole_load(const Case& value, Findings& findings) {
  std::vector<std::string> missing = missing_of_load(value);
  if (says_nothing_of_load(value)) {
    findings.not_examined(Check::whole_load, std::move(missing));
    return;
  }
  const PtoGear* gear = selected_gear(value);
  if (gear == nullptr) missing.emplace_back("tractor.pto.selected");
  if (!value.implement.power_need) missing.emplace_back("implement.power_need");
  const GearPower power = gear != nullptr ? gear_power(value, *gear) : GearPower{};
  missing.insert(missing.end(), power.missing.begin(), power.missing.end());
  if (!missing.empty() || gear == nullptr) {
    findings.add(not_known(Check::whole_load, "load.unstated", missing));
    return;
  }
  const Power pull = pull_of(value);
  const Sourced<double> share = drawbar_of_pto(*value.tractor.traction, *value.range.ground);
  const Power whole =
      equivalent_pto_power(pull, share.value, 1.0, *value.implement.power_need, *value.implement.hydraulic_power).power;
  const double reserve = wanted_reserve(value);
  Finding finding = compare(Check::whole_load, amount_of(whole),
                            {amount_of(power.available->low * (1.0 - reserve)), amount_of(power.available->high),
                             LimitSense::at_most, power.basis},
                            "load.whole");
  finding.basis.push_back(share.source);
  finding.facts = {fact("gear", gear->name),
                   fact("pto", *value.implement.power_need),
                   fact("pull", pull),
                   {"share", Amount{100.0 * share.value, Kind::number}},
                   fact("hydraulic", *value.implement.hydraulic_power),
                   fact("slope", *value.range.slope),
                   {"reserve", Amount{100.0 * reserve, Kind::number}}};
  if (finding.status != Status::ok) finding.advice = {"load.lacking"};
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
