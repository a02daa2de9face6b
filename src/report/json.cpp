// The report as a JSON document.

#include <fieldshaft/core/config.hpp>
#include <fieldshaft/report/report.hpp>

#include "report/assessment_page.hpp"
#include "report/catalogue.hpp"
#include "report/certificate.hpp"
#include "report/gears_page.hpp"
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

Json pose_json(const PoseAt& pose) {
  Json json = {{"yaw", pose.yaw.value()}, {"pitch", pose.pitch.value()}, {"roll", pose.roll.value()}};
  if (pose.lift) json["lift"] = pose.lift->value();
  return json;
}

Json extreme_json(const StateExtreme& extreme, UnitStyle style) {
  Json json = {{"bound", amount_json(extreme.bound, style)},
               {"attained", amount_json(extreme.attained, style)},
               {"gap", amount_json(extreme.gap, style)},
               {"within_gap", extreme.within_gap},
               {"pose", pose_json(extreme.pose)}};
  if (extreme.most) {
    json["matters_most"] = {{"entry", extreme.most->entry}, {"moves", amount_json(extreme.most->moves, style)}};
  }
  return json;
}

Json range_json(const AmountRange& range) { return Json::array({range.low.si, range.high.si}); }

Json origin_json(const RangeOrigin& origin, UnitStyle style) {
  Json from = Json::array();
  for (const MeasuredEntry& entry : origin.from) {
    from.push_back({{"entry", entry.entry},
                    {"value", amount_json(entry.value, style)},
                    {"tolerance", amount_json(entry.tolerance, style)}});
  }
  return {{"of", origin.of}, {"range", range_json(origin.range)}, {"from", std::move(from)}};
}

Json envelope_json(const StateEnvelope& envelope, UnitStyle style) {
  Json json = {{"state", state_name(envelope.state)}, {"driven", envelope.driven}, {"yaw", range_json(envelope.yaw)}};
  if (envelope.pitch) json["pitch"] = range_json(*envelope.pitch);
  json["roll"] = range_json(envelope.roll);
  if (envelope.lift) json["lift"] = range_json(*envelope.lift);
  if (envelope.slack_top_link) json["top_link"] = "slack";
  if (envelope.roll_at_full_turn) json["roll_at_full_turn"] = envelope.roll_at_full_turn->si;
  if (envelope.steers_about_pivot) json["yaw_about"] = "steering pivot";
  json["measured"] = Json::array();
  for (const RangeOrigin& origin : envelope.origins) json["measured"].push_back(origin_json(origin, style));
  json["front_angle"] = extreme_json(envelope.front_angle, style);
  json["rear_angle"] = extreme_json(envelope.rear_angle, style);
  json["difference"] = extreme_json(envelope.difference, style);
  json["longest"] = extreme_json(envelope.longest, style);
  json["shortest"] = extreme_json(envelope.shortest, style);
  if (envelope.speed_variation) json["speed_variation"] = extreme_json(*envelope.speed_variation, style);
  return json;
}

/// What is proved of the driveline in each state, ready for a picture.
Json geometry_json(const Assessment& assessment, UnitStyle style) {
  Json states = Json::array();
  for (const StateEnvelope& envelope : assessment.envelopes) states.push_back(envelope_json(envelope, style));
  Json branches = Json::array();
  for (const BranchEnvelopeOfCase& branch : assessment.branches) {
    branches.push_back({{"name", branch.name},
                        {"driven", branch.driven},
                        {"fold", range_json(branch.fold)},
                        {"front_angle", extreme_json(branch.front_angle, style)},
                        {"rear_angle", extreme_json(branch.rear_angle, style)},
                        {"longest", extreme_json(branch.longest, style)},
                        {"shortest", extreme_json(branch.shortest, style)}});
  }
  Json curve = Json::array();
  for (const TurnAtPitch& point : assessment.turn_curve) {
    curve.push_back({{"pitch", point.pitch.value()}, {"left", point.left.value()}, {"right", point.right.value()}});
  }
  return {{"certificate", certificate(assessment, style)},
          {"states", std::move(states)},
          {"branches", std::move(branches)},
          {"turn_limit_over_pitch", std::move(curve)}};
}

template <class Q> void put(Json& json, const char* key, const std::optional<Q>& quantity, UnitStyle style) {
  json[key] = nullptr;
  if (quantity) json[key] = amount_json(amount_of(*quantity), style);
}

Json gear_json(const GearUse& gear, UnitStyle style) {
  Json json = {{"gear", gear.gear}, {"suits", nullptr}};
  if (gear.suits) json["suits"] = *gear.suits;
  put(json, "pto_speed", gear.pto_speed, style);
  put(json, "set", gear.set, style);
  put(json, "never_pass", gear.never_pass, style);
  json["out_of_reach"] = gear.out_of_reach;
  put(json, "pto_at_high_idle", gear.pto_at_high_idle, style);
  put(json, "available_low", gear.available ? std::optional<Power>(gear.available->low) : std::nullopt, style);
  put(json, "available_high", gear.available ? std::optional<Power>(gear.available->high) : std::nullopt, style);
  put(json, "widest", gear.widest, style);
  put(json, "greatest_feed", gear.greatest_feed, style);
  put(json, "fastest", gear.fastest, style);
  json["missing"] = gear.missing;
  return json;
}

Json money_json(const std::optional<Money>& money) {
  if (!money) return nullptr;
  return {{"amount", money->amount}, {"currency", std::string(money->currency.code())}};
}

Json economy_json(const EconomyAnswer& answer, UnitStyle style) {
  Json json = {{"plain", answer.plain},
               {"economy", answer.economy},
               {"fits", status_name(answer.fits)},
               {"saving", nullptr},
               {"litres_a_season", nullptr},
               {"money_an_hour", money_json(answer.money_an_hour)},
               {"money_a_season", money_json(answer.money_a_season)},
               {"outside", nullptr}};
  if (answer.saving) json["saving"] = *answer.saving;
  if (answer.litres_a_season) json["litres_a_season"] = *answer.litres_a_season;
  if (answer.outside != nullptr) json["outside"] = answer.outside;
  put(json, "plain_engine", answer.plain_engine, style);
  put(json, "economy_engine", answer.economy_engine, style);
  put(json, "saved", answer.saved, style);
  put(json, "pto_at_plain_engine", answer.pto_at_plain_engine, style);
  put(json, "pto_at_rated", answer.pto_at_rated, style);
  put(json, "pto_at_high_idle", answer.pto_at_high_idle, style);
  put(json, "never_pass", answer.never_pass, style);
  json["missing"] = answer.missing;
  json["text"] = pages::economy_sentences(answer, style);
  return json;
}

Json fact_json(const Fact& fact, UnitStyle style) {
  if (const auto* amount = std::get_if<Amount>(&fact.value)) return amount_json(*amount, style);
  const auto* at = std::get_if<PoseIn>(&fact.value);
  if (at == nullptr) return fact_text(fact, style);
  return {{"state", state_name(at->state)}, {"pose", pose_json(at->pose)}, {"text", fact_text(fact, style)}};
}

std::string title_of(const Finding& finding) {
  const std::string title(report_texts::title_of(finding.check));
  return finding.part.empty() ? title : title + " (" + finding.part + ")";
}

Json finding_json(const Finding& finding, UnitStyle style) {
  Json json = {{"id", check_id(finding.check)},
               {"title", title_of(finding)},
               {"status", status_name(finding.status)},
               {"reason", finding.reason},
               {"text", sentence(finding.reason, finding, style)}};
  if (!finding.part.empty()) json["part"] = finding.part;
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
  if (finding.pose) json["pose"] = pose_json(*finding.pose);
  json["facts"] = Json::object();
  for (const Fact& fact : finding.facts) {
    const auto* phrase = std::get_if<PhraseId>(&fact.value); // may mention other facts
    json["facts"][fact.name] = phrase != nullptr ? Json(sentence(phrase->id, finding, style)) : fact_json(fact, style);
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
    for (const Unasked& unasked : assessment.unasked) {
      if (unasked.check == check) json["not_examined"].back()["state"] = unasked.entries;
    }
  }
  json["gears"] = Json::array();
  for (const GearUse& gear : assessment.gears) json["gears"].push_back(gear_json(gear, style));
  if (assessment.economy) json["economy"] = economy_json(*assessment.economy, style);
  json["geometry"] = geometry_json(assessment, style);
  json["cautions"] = cautions();
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace v0
} // namespace fieldshaft
