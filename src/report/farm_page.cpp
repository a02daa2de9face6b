// The study of a farm as one page.

#include "report/farm_page.hpp"

#include "report/assessment_page.hpp"
#include "report/catalogue.hpp"
#include "report/change_words.hpp"
#include "report/changeover_page.hpp"
#include "report/figures.hpp"
#include "report/render.hpp"
#include "report/say.hpp"

#include <fieldshaft/report/farm.hpp>
#include <fieldshaft/units/text.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace pages {
namespace {

using report_texts::say;

/// A page is no place for more machines than this: beyond, a matrix and a list of pairs would say nothing.
constexpr std::size_t most_columns = 6;
constexpr std::size_t most_pairs = 60;
constexpr std::size_t most_lines = 40;

std::string joined(const std::vector<std::string>& texts, const char* between = ", ") {
  std::string all;
  for (const std::string& text : texts) all += (all.empty() ? "" : between) + text;
  return all.empty() ? say("farm.nobody") : all;
}

/// The names at some places of a list; the first ones where there are too many to read.
std::string names_at(const std::vector<std::string>& names, const std::vector<std::size_t>& places) {
  std::vector<std::string> texts;
  for (const std::size_t place : places) {
    if (texts.size() == most_lines) {
      texts.emplace_back("...");
      break;
    }
    texts.push_back(names.at(place));
  }
  return joined(texts);
}

std::string whole(const Money& money) { return format_number(money.amount, 0); }

std::size_t count_of(const FarmStudy& study, Status low, Status high) {
  std::size_t count = 0;
  for (std::size_t t = 0; t < study.tractors.size(); ++t) {
    for (std::size_t i = 0; i < study.implements.size(); ++i) {
      const Status status = study.verdicts.at(t, i).status();
      count += status >= low && status <= high;
    }
  }
  return count;
}

/// The farm is as good as its worst implement with its best tractor; a missing backup is a caution.
Verdict verdict_of(const FarmStudy& study) {
  Verdict verdict;
  verdict.status = Status::ok;
  for (const std::size_t i : study.backup.never) {
    Status best = Status::stop;
    for (std::size_t t = 0; t < study.tractors.size(); ++t) best = std::min(best, study.verdicts.at(t, i).status());
    verdict.status = worse(verdict.status, best);
  }
  if (!study.backup.never.empty()) {
    verdict.text = say("farm.verdict.never", {{"implements", names_at(study.implements, study.backup.never)}});
  } else {
    verdict.status = Status::caution;
    verdict.text = say(study.backup.singles.empty() ? "farm.verdict.backed" : "farm.verdict.single");
  }
  verdict.lines.emplace_back(
      say("farm.counts", {{"runs", std::to_string(count_of(study, Status::ok, Status::caution))},
                          {"all", std::to_string(study.tractors.size() * study.implements.size())},
                          {"not_known", std::to_string(count_of(study, Status::not_known, Status::not_known))},
                          {"stop", std::to_string(count_of(study, Status::stop, Status::stop))}}));
  verdict.lines.emplace_back(say(study.depth == StudyDepth::screening ? "farm.screened" : "farm.certified"));
  return verdict;
}

void add_matrix(Page& page, const FarmStudy& study) {
  if (study.tractors.size() > most_columns || study.implements.size() > most_lines) return;
  Table table;
  table.columns.push_back({say("farm.column.implement")});
  for (const std::string& tractor : study.tractors) table.columns.push_back({tractor});
  for (std::size_t i = 0; i < study.implements.size(); ++i) {
    std::vector<Cell> row{study.implements[i]};
    for (std::size_t t = 0; t < study.tractors.size(); ++t) row.emplace_back(study.verdicts.at(t, i).status());
    table.rows.push_back(std::move(row));
  }
  page.add(Heading{1, say("farm.heading.matrix")});
  page.add(std::move(table));
}

std::string governing_text(const FarmStudy& study, std::size_t tractor, std::size_t implement, UnitStyle style) {
  const VerdictCode code = study.verdicts.at(tractor, implement);
  if (!code.governing()) return "";
  const std::string title(report_texts::title_of(*code.governing()));
  const PairDetail* detail = study.detail(tractor, implement);
  if (detail == nullptr || !detail->governing) return title;
  const std::string figures = rendering::figures_text(*detail->governing, style);
  return figures.empty() ? title : say("farm.governs", {{"check", title}, {"figures", figures}});
}

std::string set_up_text(const PairDetail& detail) {
  const auto or_none = [](const std::string& text) { return text.empty() ? say("farm.none") : text; };
  return say(
      "farm.set_up",
      {{"gear", or_none(detail.gear)}, {"stub", or_none(detail.stub)}, {"driveline", or_none(detail.driveline)}});
}

void add_pairs(Page& page, const FarmStudy& study, UnitStyle style) {
  if (study.tractors.size() * study.implements.size() > most_pairs) return;
  Table table;
  table.columns = {{say("farm.column.implement")},
                   {say("farm.column.tractor")},
                   {say("farm.column.verdict")},
                   {say("farm.column.why")}};
  if (!study.details.empty()) table.columns.push_back({say("farm.column.set_up")});
  for (std::size_t i = 0; i < study.implements.size(); ++i) {
    for (std::size_t t = 0; t < study.tractors.size(); ++t) {
      std::vector<Cell> row{study.implements[i], study.tractors[t], study.verdicts.at(t, i).status(),
                            governing_text(study, t, i, style)};
      if (const PairDetail* detail = study.detail(t, i)) row.emplace_back(set_up_text(*detail));
      table.rows.push_back(std::move(row));
    }
  }
  page.add(Heading{1, say("farm.heading.pairs")});
  page.add(std::move(table));
}

void add_runs(Page& page, const FarmStudy& study) {
  Labelled list;
  for (std::size_t t = 0; t < std::min(study.tractors.size(), most_lines); ++t) {
    std::vector<std::size_t> implements;
    for (std::size_t i = 0; i < study.implements.size(); ++i) {
      if (study.verdicts.runs(t, i)) implements.push_back(i);
    }
    list.rows.emplace_back(study.tractors[t], names_at(study.implements, implements));
  }
  page.add(Heading{1, say("farm.heading.runs")});
  page.add(std::move(list));
}

void add_standstill(const std::vector<Standstill>& list, const char* phrase, const FarmStudy& study, List& lines) {
  for (const Standstill& entry : list) {
    if (lines.items.size() >= most_lines) return;
    std::vector<std::string> tractors;
    for (const std::size_t t : entry.tractors) tractors.push_back(study.tractors[t]);
    lines.items.emplace_back(say(phrase, {{"tractors", joined(tractors, " and ")},
                                          {"implements", names_at(study.implements, entry.implements)}}));
  }
}

void add_backup(Page& page, const FarmStudy& study) {
  const Backup& backup = study.backup;
  List lines;
  add_standstill(backup.singles, "farm.down.one", study, lines);
  add_standstill(backup.pairs, "farm.down.two", study, lines);
  if (!backup.never.empty()) {
    lines.items.emplace_back(say("farm.down.never", {{"implements", names_at(study.implements, backup.never)}}));
  }
  if (lines.items.empty()) lines.items.emplace_back(say("farm.down.nothing"));
  lines.items.emplace_back(say("farm.down.scope"));
  page.add(Heading{1, say("farm.heading.down")});
  page.add(std::move(lines));
}

std::string changes_text(const Remedy& remedy, UnitStyle style) {
  std::vector<std::string> changes;
  for (const Change& change : remedy.changes) changes.push_back(rendering::change_text(change, style));
  return joined(changes, " ");
}

std::string pairs_at(const FarmStudy& study, const std::vector<PairPlace>& places) {
  std::vector<PairNames> pairs;
  for (const PairPlace& pair : places)
    pairs.push_back({study.tractors[pair.tractor], study.implements[pair.implement]});
  return joined(names_of_pairs(pairs), "; ");
}

std::string step_text(const FarmStudy& study, const PlannedRemedy& step, UnitStyle style) {
  std::string changes;
  for (const PairRemedies& entry : study.remedies) {
    if (entry.pair.tractor == step.tractor && entry.pair.implement == step.implement)
      changes = changes_text(entry.remedies.sets.at(step.set), style);
  }
  return say("farm.plan.remedy", {{"tractor", study.tractors[step.tractor]},
                                  {"implement", study.implements[step.implement]},
                                  {"changes", changes}});
}

/// What a plan is worth: proved where every set that could be better was judged, and never called so elsewhere.
void add_worth_of_plan(Page& page, const BackupPlan& plan, bool any) {
  if (plan.exact) {
    if (any) page.add(Paragraph{say("farm.plan.exact")});
    return;
  }
  page.add(Paragraph{any ? say("farm.plan.bound", {{"n", std::to_string(plan.at_least)}}) : say("farm.plan.not_all")});
}

void add_plan(Page& page, const FarmStudy& study, UnitStyle style) {
  const BackupPlan& plan = study.plan;
  List list{ListKind::numbered, {}};
  for (const std::size_t option : plan.options) {
    list.items.emplace_back(say("farm.plan.option", {{"option", study.options[option]}}));
  }
  for (const PlannedRemedy& step : plan.remedies) list.items.emplace_back(step_text(study, step, style));
  page.add(Heading{1, say(plan.exact ? "farm.heading.plan" : "farm.heading.some_plan")});
  const bool any = !list.items.empty();
  if (any) page.add(std::move(list));
  if (!any) {
    const char* nothing = plan.exact ? "farm.plan.no_way" : "farm.plan.none_found";
    page.add(Paragraph{say(plan.without.empty() ? "farm.plan.none" : nothing)});
  }
  if (!plan.without.empty()) {
    page.add(Paragraph{say(plan.exact ? "farm.plan.without" : "farm.plan.still_without",
                           {{"implements", names_at(study.implements, plan.without)}})});
  }
  if (!plan.lost.empty()) page.add(Paragraph{say("farm.plan.lost", {{"pairs", pairs_at(study, plan.lost)}})});
  if (any || !plan.without.empty()) add_worth_of_plan(page, plan, any);
}

/// Whether an option that pays no longer does with this figure a fifth off, or the other way round.
bool turns_over(Pays pays, const Sensitivity& entry) {
  const double worst = std::min(entry.net_low.amount, entry.net_high.amount);
  const double best = std::max(entry.net_low.amount, entry.net_high.amount);
  return (pays == Pays::yes && !(worst > 0.0)) || (pays == Pays::no && best > 0.0);
}

const char* answer_phrase(const PayOff& pay_off) {
  const auto turns = [&](const Sensitivity& entry) { return turns_over(pay_off.pays, entry); };
  const bool edge = std::any_of(pay_off.sensitivity.begin(), pay_off.sensitivity.end(), turns);
  switch (pay_off.pays) {
  case Pays::yes: return edge ? "farm.pay.narrowly" : "farm.pay.yes";
  case Pays::no: return edge ? "farm.pay.not_quite" : "farm.pay.no";
  case Pays::not_known: return "farm.pay.not_known";
  }
  return "farm.pay.not_known";
}

std::string need_text(const FarmStudy& study, const SpeedAnswer& answer) {
  switch (answer.need) {
  case SpeedNeed::not_needed: return say("farm.speed.not_needed");
  case SpeedNeed::covered:
    return say("farm.speed.covered", {{"implements", names_at(study.implements, answer.implements)}});
  case SpeedNeed::for_backup:
    return say("farm.speed.for_backup", {{"single", names_at(study.implements, answer.single)},
                                         {"tractors", names_at(study.tractors, answer.tractors)}});
  case SpeedNeed::to_run_at_all:
    return say("farm.speed.to_run", {{"not_run", names_at(study.implements, answer.not_run)}});
  }
  return "";
}

void add_speed(Page& page, const FarmStudy& study, const SpeedAnswer& answer) {
  page.add(Heading{1, say("farm.heading.speed", {{"speed", format_number(in(answer.speed, unit::rpm), 0)}})});
  List list;
  list.items.emplace_back(need_text(study, answer));
  list.items.emplace_back(say("farm.speed.tractors", {{"tractors", names_at(study.tractors, answer.tractors)}}));
  if (!answer.overloaded.empty()) {
    list.items.emplace_back(say("farm.speed.half", {{"implements", names_at(study.implements, answer.overloaded)}}));
  }
  for (const std::size_t option : answer.options) {
    const std::string text = say(answer_phrase(study.pay_offs.at(option)));
    list.items.emplace_back(say("farm.speed.option", {{"option", study.options[option]}, {"answer", text}}));
  }
  if (answer.speed > rpm(540)) list.items.emplace_back(say("farm.speed.never"));
  page.add(std::move(list));
}

// Money ----------------------------------------------------------------------------------------------------

std::string payback_text(const PayOff& pay_off) {
  if (!pay_off.payback || pay_off.payback->outside != nullptr) {
    return say(pay_off.pays == Pays::yes ? "farm.payback.by_sale" : "farm.payback.never");
  }
  return say("farm.payback.years", {{"years", format_number(pay_off.payback->value, 1)}});
}

std::string heading_with_currency(const char* id, const Currency& currency) {
  return say(id) + " [" + std::string(currency.code()) + "]";
}

void add_balances(Page& page, const FarmStudy& study) {
  Table table;
  for (const PayOff& pay_off : study.pay_offs) {
    if (!pay_off.balance) continue;
    const YearlyBalance& year = *pay_off.balance;
    if (table.columns.empty()) {
      table.caption = say("farm.pay.caption");
      table.columns = {{say("farm.column.option")},
                       {heading_with_currency("farm.column.ownership", year.net.currency), Align::right},
                       {say("farm.column.repair"), Align::right},
                       {say("farm.column.running"), Align::right},
                       {say("farm.column.hire"), Align::right},
                       {say("farm.column.net"), Align::right},
                       {say("farm.column.payback"), Align::right},
                       {say("farm.column.answer")}};
    }
    table.rows.push_back({study.options[pay_off.option], whole(year.ownership), whole(year.repair), whole(year.running),
                          whole(year.hire), whole(year.net), payback_text(pay_off), say(answer_phrase(pay_off))});
  }
  if (!table.rows.empty()) page.add(std::move(table));
}

const char* figure_phrase(Sensitivity::Figure figure) {
  switch (figure) {
  case Sensitivity::Figure::price: return "farm.figure.price";
  case Sensitivity::Figure::hours: return "farm.figure.hours";
  case Sensitivity::Figure::fuel_price: return "farm.figure.fuel_price";
  case Sensitivity::Figure::interest: return "farm.figure.interest";
  }
  return "farm.figure.price";
}

void add_sensitivity(Page& page, const FarmStudy& study) {
  Table table;
  table.caption = say("farm.sensitivity.caption");
  table.columns = {{say("farm.column.option")},
                   {say("farm.column.figure")},
                   {say("farm.column.low"), Align::right},
                   {say("farm.column.high"), Align::right}};
  for (const PayOff& pay_off : study.pay_offs) {
    for (const Sensitivity& entry : pay_off.sensitivity) {
      table.rows.push_back({study.options[pay_off.option], say(figure_phrase(entry.figure)), whole(entry.net_low),
                            whole(entry.net_high)});
    }
  }
  if (!table.rows.empty()) page.add(std::move(table));
}

/// The figures of which one a fifth off turns the answer over; empty where none does.
std::string turning_figures(const PayOff& pay_off) {
  std::string figures;
  for (const Sensitivity& entry : pay_off.sensitivity) {
    if (turns_over(pay_off.pays, entry)) figures += (figures.empty() ? "" : ", ") + say(figure_phrase(entry.figure));
  }
  return figures;
}

void add_remarks(const FarmStudy& study, const PayOff& pay_off, List& list) {
  const std::string& option = study.options[pay_off.option];
  if (!pay_off.missing.empty()) {
    list.items.emplace_back(say("farm.pay.missing", {{"option", option}, {"entries", joined(pay_off.missing)}}));
  }
  const auto pairs = [&](const std::vector<std::string>& names) { return joined(names, "; "); };
  if (pay_off.gained.empty()) {
    list.items.emplace_back(say("farm.pay.gained_none", {{"option", option}}));
  } else {
    list.items.emplace_back(
        say("farm.pay.gained", {{"option", option}, {"pairs", pairs(names_of_pairs(pay_off.gained))}}));
  }
  if (!pay_off.lost.empty()) {
    list.items.emplace_back(say("farm.pay.lost", {{"option", option}, {"pairs", pairs(names_of_pairs(pay_off.lost))}}));
  }
  const std::string figures = turning_figures(pay_off);
  if (!figures.empty()) list.items.emplace_back(say("farm.pay.turns", {{"option", option}, {"figures", figures}}));
  for (const char* remark : pay_off.remarks) {
    list.items.emplace_back(say(remark, {{"option", option}, {"hours", format_number(pay_off.hours_not_priced, 0)}}));
  }
}

void add_pay_offs(Page& page, const FarmStudy& study) {
  if (study.pay_offs.empty()) return;
  page.add(Heading{1, say("farm.heading.pay")});
  add_balances(page, study);
  add_sensitivity(page, study);
  List list;
  for (const PayOff& pay_off : study.pay_offs) add_remarks(study, pay_off, list);
  list.items.emplace_back(say("farm.pay.scope"));
  page.add(std::move(list));
}

// Remedies -------------------------------------------------------------------------------------------------

/// An option of the farm that brings a pair to work; the study has verified it.
std::optional<std::size_t> option_for(const FarmStudy& study, PairPlace pair) {
  for (const PayOff& pay_off : study.pay_offs) {
    for (const PairNames& gained : pay_off.gained) {
      if (gained.tractor == study.tractors[pair.tractor] && gained.implement == study.implements[pair.implement]) {
        return pay_off.option;
      }
    }
  }
  return std::nullopt;
}

/// The part of the farm to which an entry of a case belongs, by the front of its path, and the rest of the path.
std::pair<std::string, std::string> owner_of(const std::string& entry, const std::string& tractor,
                                             const std::string& implement) {
  const auto after = [&](std::string_view front) { return entry.substr(front.size()); };
  if (entry.rfind("tractor.", 0) == 0) return {tractor, after("tractor.")};
  if (entry.rfind("implement.", 0) == 0) return {implement, after("implement.")};
  if (entry.rfind("driveline.", 0) == 0) return {say("farm.its_driveline"), after("driveline.")};
  return {implement, entry}; // its range, limits
}

/// Entries to be stated, machine by machine: "of tractor C: hitch.lower_link; of flail mower: range.working".
std::string entries_by_owner(const std::vector<std::string>& entries, const std::string& tractor,
                             const std::string& implement) {
  std::vector<std::pair<std::string, std::vector<std::string>>> owners;
  for (const std::string& entry : entries) {
    auto [owner, rest] = owner_of(entry, tractor, implement);
    auto known = owners.begin();
    while (known != owners.end() && known->first != owner) ++known;
    if (known == owners.end()) known = owners.insert(owners.end(), {owner, {}});
    known->second.push_back(std::move(rest));
  }
  std::vector<std::string> texts;
  for (const auto& owner : owners) {
    texts.push_back(say("farm.remedy.entries", {{"owner", owner.first}, {"entries", joined(owner.second)}}));
  }
  return joined(texts, "; ");
}

std::string remedy_text(const FarmStudy& study, const PairRemedies& entry, UnitStyle style) {
  const std::string pair = say("farm.pair", {{"tractor", study.tractors[entry.pair.tractor]},
                                             {"implement", study.implements[entry.pair.implement]}});
  const Remedies& found = entry.remedies;
  const bool whole = !found.sets.empty() && found.sets.front().left.empty();
  if (const auto option = option_for(study, entry.pair); option && !whole) {
    return say("farm.remedy.option", {{"pair", pair}, {"option", study.options[*option]}});
  }
  if (found.sets.empty()) {
    if (found.state_first.empty()) return say("farm.remedy.none", {{"pair", pair}});
    const std::string entries =
        entries_by_owner(found.state_first, study.tractors[entry.pair.tractor], study.implements[entry.pair.implement]);
    return say("farm.remedy.state", {{"pair", pair}, {"entries", entries}});
  }
  const Remedy& first = found.sets.front();
  const std::string changes = changes_text(first, style);
  if (!whole) return say("farm.remedy.partly", {{"pair", pair}, {"changes", changes}});
  std::string text = first.price
                         ? say("farm.remedy.price",
                               {{"pair", pair}, {"changes", changes}, {"price", rendering::price_text(*first.price)}})
                         : say("farm.remedy.found", {{"pair", pair}, {"changes", changes}});
  if (!entry.spoils.empty()) text += " " + say("farm.remedy.spoils", {{"pairs", pairs_at(study, entry.spoils)}});
  return text;
}

void add_remedies(Page& page, const FarmStudy& study, UnitStyle style) {
  if (study.remedies.empty()) return;
  List list;
  for (const PairRemedies& entry : study.remedies) list.items.emplace_back(remedy_text(study, entry, style));
  page.add(Heading{1, say("farm.heading.remedies")});
  page.add(std::move(list));
  page.add(Paragraph{say("farm.remedy.scope")});
}

void add_changeovers(Page& page, const FarmStudy& study, UnitStyle style) {
  for (const FarmChangeover& entry : study.changeovers) {
    page.add(
        Heading{1, say("farm.heading.changeover", {{"tractor", study.tractors[entry.tractor]},
                                                   {"from", rendering::setup_text(entry.changeover.from, style)},
                                                   {"to", rendering::setup_text(entry.changeover.to, style)},
                                                   {"implements", names_at(study.implements, entry.implements)}})});
    List steps{entry.changeover.possible ? ListKind::steps : ListKind::bullets, {}};
    for (const ChangeoverStep& step : entry.changeover.steps) {
      steps.items.emplace_back(rendering::say_facts(step.id, step.facts, style));
    }
    page.add(std::move(steps));
  }
}

} // namespace

std::vector<std::string> names_of_pairs(const std::vector<PairNames>& pairs) {
  std::vector<std::string> names;
  for (const PairNames& pair : pairs) {
    names.push_back(say("farm.pair", {{"tractor", pair.tractor}, {"implement", pair.implement}}));
  }
  return names;
}

Page page_of(const FarmStudy& study, UnitStyle style) {
  Page page;
  page.title = study.title.empty() ? say("farm.title.unnamed") : say("farm.title", {{"farm", study.title}});
  page.add(verdict_of(study));
  if (!study.note.empty()) page.add(Labelled{{{say("farm.label.note"), study.note}}});
  add_matrix(page, study);
  add_runs(page, study);
  add_backup(page, study);
  add_plan(page, study, style);
  for (const SpeedAnswer& answer : study.speeds) {
    if (answer.speed > rpm(540) * 1.5) add_speed(page, study, answer);
  }
  add_pay_offs(page, study);
  add_remedies(page, study, style);
  add_changeovers(page, study, style);
  add_cautions(page);
  add_pairs(page, study, style);
  page.footer = footer_text(style);
  return page;
}

} // namespace pages

std::string to_text(const FarmStudy& study, UnitStyle style) { return pages::text_of(pages::page_of(study, style)); }
std::string to_markdown(const FarmStudy& study, UnitStyle style) {
  return pages::markdown_of(pages::page_of(study, style));
}
std::string to_html(const FarmStudy& study, UnitStyle style) { return pages::html_of(pages::page_of(study, style)); }

} // namespace v0
} // namespace fieldshaft
