// The report as a JSON document.

#include <fieldshaft/core/config.hpp>
#include <fieldshaft/report/report.hpp>

#include "report/assessment_page.hpp"
#include "report/catalogue.hpp"
#include "report/render.hpp"

#include <fieldshaft/units/text.hpp>

#include <nlohmann/json.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace {

using namespace rendering;
using Json = nlohmann::ordered_json;

const char* sense_name(LimitSense sense) {
  switch (sense) {
  case LimitSense::at_most: return "at most";
  case LimitSense::at_least: return "at least";
  case LimitSense::equal: return "equal";
  case LimitSense::none: return "none";
  }
  return "none";
}

const char* state_name(MachineState state) {
  switch (state) {
  case MachineState::working: return "working";
  case MachineState::turning: return "turning";
  case MachineState::transport: return "transport";
  case MachineState::any: return "any";
  }
  return "any";
}

Json amount_json(Amount amount, UnitStyle style) {
  Json json = {{"si", nullptr}, {"unit", si_symbol(amount.kind)}, {"text", to_string(amount, style)}};
  if (is_finite(amount.si)) json["si"] = amount.si;
  return json;
}

Json finding_json(const Finding& finding, UnitStyle style) {
  Json json = {{"id", check_id(finding.check)},
               {"title", report_texts::title_of(finding.check)},
               {"status", status_name(finding.status)},
               {"reason", finding.reason},
               {"text", sentence(finding.reason, finding, style)}};
  if (finding.value) json["value"] = amount_json(*finding.value, style);
  if (finding.limit) {
    json["limit"] = amount_json(*finding.limit, style);
    json["limit"]["sense"] = sense_name(finding.sense);
  }
  if (finding.limits) {
    json["limits"] = {{"caution", amount_json(finding.limits->caution, style)},
                      {"stop", amount_json(finding.limits->stop, style)}};
  }
  if (finding.margin) json["margin"] = *finding.margin;
  if (finding.state != MachineState::any) json["state"] = state_name(finding.state);
  if (finding.pose) {
    json["pose"] = {{"yaw", finding.pose->yaw.value()},
                    {"pitch", finding.pose->pitch.value()},
                    {"roll", finding.pose->roll.value()}};
    if (finding.pose->lift) json["pose"]["lift"] = finding.pose->lift->value();
  }
  json["facts"] = Json::object();
  for (const Fact& fact : finding.facts) {
    const auto* amount = std::get_if<Amount>(&fact.value);
    json["facts"][fact.name] = amount != nullptr ? amount_json(*amount, style) : Json(fact_text(fact, style));
  }
  json["advice"] = Json::array();
  for (const char* id : finding.advice) json["advice"].push_back({{"id", id}, {"text", sentence(id, finding, style)}});
  json["missing"] = finding.missing;
  json["basis"] = Json::array();
  for (const Source& source : finding.basis) {
    json["basis"].push_back({{"source", source.text}, {"standing", standing_name(source.standing)}});
  }
  return json;
}

} // namespace

std::string to_json(const Assessment& assessment, UnitStyle style) {
  Json json = {{"schema", report_schema_version},
               {"library", FIELDSHAFT_VERSION_STRING},
               {"units", style == UnitStyle::us ? "us" : "metric"},
               {"title", assessment.title},
               {"note", assessment.note},
               {"tractor", assessment.tractor},
               {"implement", assessment.implement},
               {"verdict", status_name(assessment.verdict())},
               {"headline", pages::status_word(assessment.verdict()) + pages::verdict_text(assessment)},
               {"rests_on_memory", assessment.rests_on_memory()}};
  json["counts"] = {{"stop", assessment.count(Status::stop)},
                    {"not_known", assessment.count(Status::not_known)},
                    {"caution", assessment.count(Status::caution)},
                    {"ok", assessment.count(Status::ok)}};
  json["what_to_change"] = what_to_change(assessment, style);
  json["what_to_state"] = Json::array();
  for (const pages::Entry& entry : pages::entries_to_state(assessment)) {
    json["what_to_state"].push_back({{"path", entry.path}, {"meaning", entry.meaning}, {"waiting", entry.waiting}});
  }
  json["findings"] = Json::array();
  for (const Finding& finding : assessment.findings) json["findings"].push_back(finding_json(finding, style));
  json["not_examined"] = Json::array();
  for (const Check check : assessment.not_examined) {
    json["not_examined"].push_back({{"id", check_id(check)}, {"title", report_texts::title_of(check)}});
  }
  json["cautions"] = cautions();
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace v0
} // namespace fieldshaft
