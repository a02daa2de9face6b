// Remedies as a page and as JSON.

#include <fieldshaft/report/remedies.hpp>

#include "report/assessment_page.hpp"
#include "report/catalogue.hpp"
#include "report/change_words.hpp"
#include "report/page.hpp"
#include "report/render.hpp"
#include "report/say.hpp"

#include <fieldshaft/core/config.hpp>
#include <fieldshaft/units/text.hpp>

#include <nlohmann/json.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace pages {
namespace {

using rendering::change_text;
using report_texts::say;

std::string titles_of(const std::vector<Check>& checks) {
  std::string text;
  for (const Check check : checks) text += (text.empty() ? "" : "; ") + std::string(report_texts::title_of(check));
  return text;
}

bool any_in_the_way(const Remedies& remedies) {
  return remedies.before.count(Status::stop) > 0 || !remedies.sets.empty() || !remedies.without_remedy.empty();
}

const char* summary_of(const Remedies& remedies) {
  if (!any_in_the_way(remedies)) return "remedies.none_needed";
  if (remedies.sets.empty()) return "remedies.not_found";
  return remedies.sets.front().left.empty() ? "remedies.found" : "remedies.partly";
}

void add_set(Page& page, const Remedy& remedy, std::size_t number, UnitStyle style) {
  page.add(Heading{2, say("remedies.heading.set", {{"n", std::to_string(number)}})});
  List changes{ListKind::numbered, {}};
  for (const Change& change : remedy.changes) changes.items.emplace_back(change_text(change, style));
  page.add(std::move(changes));
  List facts{ListKind::bullets, {}};
  facts.items.emplace_back(say("remedies.heals", {{"checks", titles_of(remedy.healed)}}));
  if (!remedy.left.empty()) facts.items.emplace_back(say("remedies.left", {{"checks", titles_of(remedy.left)}}));
  if (!remedy.new_cautions.empty()) {
    facts.items.emplace_back(say("remedies.mind", {{"checks", titles_of(remedy.new_cautions)}}));
  }
  facts.items.emplace_back(
      say("remedies.after", {{"verdict", status_word(remedy.after.verdict()) + counts_text(remedy.after)}}));
  if (remedy.after.rests_on_memory()) facts.items.emplace_back(say("remedies.memory"));
  const bool some = std::any_of(remedy.changes.begin(), remedy.changes.end(),
                                [](const Change& change) { return change.price.has_value(); });
  if (remedy.price) {
    facts.items.emplace_back(say("remedies.price", {{"price", rendering::price_text(*remedy.price)}}));
  } else if (some) {
    facts.items.emplace_back(say("remedies.no_price"));
  }
  page.add(std::move(facts));
}

void add_by_finding(Page& page, const Remedies& remedies, UnitStyle style) {
  if (remedies.by_finding.empty()) return;
  page.add(Heading{1, say("remedies.heading.by_finding")});
  for (const SingleRemedies& single : remedies.by_finding) {
    FindingBlock block;
    block.status = single.status;
    block.title = std::string(report_texts::title_of(single.check));
    for (const Change& change : single.changes) block.lines.emplace_back(change_text(change, style));
    page.add(std::move(block));
  }
}

void add_list(Page& page, const char* heading, const std::vector<std::string>& items) {
  if (items.empty()) return;
  List list{ListKind::bullets, {}};
  for (const std::string& item : items) list.items.emplace_back(item);
  page.add(Heading{1, say(heading)});
  page.add(std::move(list));
}

const char* why_without(Check check) {
  switch (check) {
  case Check::permitted_power: return "remedies.why.permitted_power";
  case Check::pto_rotation: return "remedies.why.rotation";
  case Check::hand_check: return "remedies.why.hand_check";
  case Check::fouling: return "remedies.why.fouling";
  case Check::run_down: return "remedies.why.run_down";
  case Check::overspeed_in_other_gears: return "remedies.why.other_gears";
  case Check::tip_speed:
  case Check::overspeed_at_high_idle: return "remedies.why.tips";
  case Check::turn_limit:
  case Check::lift_limit: return "remedies.why.follows";
  default: return "remedies.why.none";
  }
}

std::vector<std::string> reasons(const std::vector<Check>& checks) {
  std::vector<std::string> texts;
  for (const Check check : checks) {
    texts.push_back(say("remedies.because",
                        {{"check", std::string(report_texts::title_of(check))}, {"why", say(why_without(check))}}));
  }
  return texts;
}

void add_search(Page& page, const RemedySearch& search) {
  page.add(Heading{1, say("remedies.heading.search")});
  List list{ListKind::bullets, {}};
  list.items.emplace_back(say("remedies.search", {{"cases", std::to_string(search.cases)},
                                                  {"ranges", std::to_string(search.ranges)},
                                                  {"size", std::to_string(search.complete_size)}}));
  if (search.cut_off) list.items.emplace_back(say("remedies.cut_off"));
  list.items.emplace_back(say("remedies.never"));
  page.add(std::move(list));
}

Page remedies_page(const Remedies& remedies, UnitStyle style) {
  Page page;
  page.title = say("remedies.title",
                   {{"title", remedies.before.title.empty() ? remedies.before.tractor + ", " + remedies.before.implement
                                                            : remedies.before.title}});
  Verdict verdict{remedies.before.verdict(), verdict_text(remedies.before), {}};
  verdict.lines.emplace_back(say(summary_of(remedies)));
  if (!remedies.state_first.empty()) verdict.lines.emplace_back(say("remedies.still_not_known"));
  page.add(std::move(verdict));
  if (!remedies.sets.empty()) page.add(Heading{1, say("remedies.heading.sets")});
  for (std::size_t i = 0; i < remedies.sets.size(); ++i) add_set(page, remedies.sets[i], i + 1, style);
  add_list(page, "remedies.heading.without", reasons(remedies.without_remedy));
  add_by_finding(page, remedies, style);
  add_list(page, "remedies.heading.state", remedies.state_first);
  add_search(page, remedies.search);
  add_cautions(page);
  page.footer = footer_text(style);
  return page;
}

} // namespace
} // namespace pages

namespace {

using Json = nlohmann::ordered_json;

Json ids_of(const std::vector<Check>& checks) {
  Json ids = Json::array();
  for (const Check check : checks) ids.push_back(check_id(check));
  return ids;
}

Json price_json(const std::optional<Money>& price) {
  if (!price) return nullptr;
  return {{"amount", price->amount}, {"currency", std::string(price->currency.code())}};
}

Json change_json(const Change& change, UnitStyle style) {
  Json json = {{"id", change_id(change.kind)}, {"text", rendering::change_text(change, style)}};
  json["facts"] = Json::object();
  for (const Fact& fact : change.facts) {
    const auto* amount = std::get_if<Amount>(&fact.value);
    json["facts"][fact.name] = rendering::fact_text(fact, style);
    if (amount != nullptr) {
      json["facts"][fact.name] = {
          {"si", amount->si}, {"unit", si_symbol(amount->kind)}, {"text", to_string(*amount, style)}};
    }
  }
  json["entries"] = Json::array();
  for (const EntryChange& entry : change.entries) {
    Json one = {{"path", entry.path}, {"from", nullptr}, {"to", nullptr}};
    if (!entry.from.empty()) one["from"] = entry.from;
    if (!entry.to.empty()) one["to"] = entry.to;
    one["text"] = report_texts::say(
        "remedies.entry",
        {{"path", entry.path},
         {"from",
          entry.from.empty() ? report_texts::say("remedies.unstated") : rendering::entry_text(entry.from, style)},
         {"to", entry.to.empty() ? report_texts::say("remedies.unstated") : rendering::entry_text(entry.to, style)}});
    json["entries"].push_back(std::move(one));
  }
  json["price"] = price_json(change.price);
  return json;
}

Json changes_json(const std::vector<Change>& changes, UnitStyle style) {
  Json json = Json::array();
  for (const Change& change : changes) json.push_back(change_json(change, style));
  return json;
}

Json remedy_json(const Remedy& remedy, UnitStyle style) {
  return {{"changes", changes_json(remedy.changes, style)},
          {"price", price_json(remedy.price)},
          {"verdict", status_name(remedy.after.verdict())},
          {"healed", ids_of(remedy.healed)},
          {"left", ids_of(remedy.left)},
          {"new_cautions", ids_of(remedy.new_cautions)}};
}

} // namespace

std::string to_text(const Remedies& remedies, UnitStyle style) {
  return pages::text_of(pages::remedies_page(remedies, style));
}
std::string to_markdown(const Remedies& remedies, UnitStyle style) {
  return pages::markdown_of(pages::remedies_page(remedies, style));
}
std::string to_html(const Remedies& remedies, UnitStyle style) {
  return pages::html_of(pages::remedies_page(remedies, style));
}

std::string to_json(const Remedies& remedies, UnitStyle style) {
  Json json = {{"schema", remedies_schema_version},
               {"library", FIELDSHAFT_VERSION_STRING},
               {"title", remedies.before.title},
               {"verdict", status_name(remedies.before.verdict())}};
  json["sets"] = Json::array();
  for (const Remedy& remedy : remedies.sets) json["sets"].push_back(remedy_json(remedy, style));
  json["by_finding"] = Json::array();
  for (const SingleRemedies& single : remedies.by_finding) {
    json["by_finding"].push_back({{"check", check_id(single.check)},
                                  {"status", status_name(single.status)},
                                  {"changes", changes_json(single.changes, style)}});
  }
  json["without_remedy"] = ids_of(remedies.without_remedy);
  json["state_first"] = remedies.state_first;
  json["search"] = {{"cases", remedies.search.cases},
                    {"ranges", remedies.search.ranges},
                    {"complete_size", remedies.search.complete_size},
                    {"cut_off", remedies.search.cut_off}};
  json["cautions"] = rendering::cautions();
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace v0
} // namespace fieldshaft
