// The study of a farm as a JSON document.

#include "report/catalogue.hpp"
#include "report/change_words.hpp"
#include "report/changeover_page.hpp"
#include "report/farm_page.hpp"
#include "report/render.hpp"

#include <fieldshaft/core/config.hpp>
#include <fieldshaft/report/farm.hpp>
#include <fieldshaft/units/text.hpp>

#include <nlohmann/json.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace {

using Json = nlohmann::ordered_json;
using Names = std::vector<std::string>;

Json names_at(const Names& names, const std::vector<std::size_t>& places) {
  Json list = Json::array();
  for (const std::size_t place : places) list.push_back(names.at(place));
  return list;
}

Json money_json(const Money& money) { return {{"amount", money.amount}, {"currency", money.currency.code()}}; }

Json verdict_json(const FarmStudy& study, std::size_t tractor, std::size_t implement) {
  const VerdictCode code = study.verdicts.at(tractor, implement);
  Json json = {{"status", status_name(code.status())}};
  if (code.governing()) json["governing"] = check_id(*code.governing());
  const PairDetail* detail = study.detail(tractor, implement);
  if (detail == nullptr) return json;
  json["gear"] = detail->gear;
  json["stub"] = detail->stub;
  json["driveline"] = detail->driveline;
  json["stop"] = detail->stops;
  json["not_known"] = detail->unknowns;
  json["caution"] = detail->cautions;
  if (detail->governing && detail->governing->margin) json["margin"] = *detail->governing->margin;
  return json;
}

/// One row for each tractor, in the order of `tractors`; each row in the order of `implements`.
Json matrix_json(const FarmStudy& study) {
  Json rows = Json::array();
  for (std::size_t t = 0; t < study.tractors.size(); ++t) {
    Json row = Json::array();
    for (std::size_t i = 0; i < study.implements.size(); ++i) row.push_back(verdict_json(study, t, i));
    rows.push_back(std::move(row));
  }
  return rows;
}

Json standstill_json(const FarmStudy& study, const std::vector<Standstill>& list) {
  Json json = Json::array();
  for (const Standstill& entry : list) {
    json.push_back({{"down", names_at(study.tractors, entry.tractors)},
                    {"stands_still", names_at(study.implements, entry.implements)}});
  }
  return json;
}

Json places_json(const FarmStudy& study, const std::vector<PairPlace>& pairs) {
  Json list = Json::array();
  for (const PairPlace& pair : pairs) {
    list.push_back({{"tractor", study.tractors[pair.tractor]}, {"implement", study.implements[pair.implement]}});
  }
  return list;
}

Json plan_json(const FarmStudy& study) {
  const BackupPlan& plan = study.plan;
  Json remedies = Json::array();
  for (const PlannedRemedy& pair : plan.remedies) {
    remedies.push_back({{"tractor", study.tractors[pair.tractor]},
                        {"implement", study.implements[pair.implement]},
                        {"set", pair.set}});
  }
  return {{"options", names_at(study.options, plan.options)},
          {"remedies", remedies},
          {"without_backup", names_at(study.implements, plan.without)},
          {"lost", places_json(study, plan.lost)},
          {"changes", plan.changes()},
          {"at_least", plan.at_least},
          {"exact", plan.exact}};
}

const char* need_name(SpeedNeed need) {
  switch (need) {
  case SpeedNeed::not_needed: return "not_needed";
  case SpeedNeed::covered: return "covered";
  case SpeedNeed::for_backup: return "for_backup";
  case SpeedNeed::to_run_at_all: return "to_run_at_all";
  }
  return "not_needed";
}

Json speeds_json(const FarmStudy& study) {
  Json list = Json::array();
  for (const SpeedAnswer& answer : study.speeds) {
    list.push_back({{"speed", to_string(answer.speed, unit::rpm, 0)},
                    {"need", need_name(answer.need)},
                    {"tractors", names_at(study.tractors, answer.tractors)},
                    {"implements", names_at(study.implements, answer.implements)},
                    {"not_run", names_at(study.implements, answer.not_run)},
                    {"single", names_at(study.implements, answer.single)},
                    {"overloaded_at_540", names_at(study.implements, answer.overloaded)},
                    {"options", names_at(study.options, answer.options)}});
  }
  return list;
}

const char* pays_name(Pays pays) {
  switch (pays) {
  case Pays::yes: return "yes";
  case Pays::no: return "no";
  case Pays::not_known: return "not_known";
  }
  return "not_known";
}

const char* figure_name(Sensitivity::Figure figure) {
  switch (figure) {
  case Sensitivity::Figure::price: return "price";
  case Sensitivity::Figure::hours: return "hours";
  case Sensitivity::Figure::fuel_price: return "fuel_price";
  case Sensitivity::Figure::interest: return "interest";
  }
  return "price";
}

Json pairs_json(const std::vector<PairNames>& pairs) {
  Json list = Json::array();
  for (const PairNames& pair : pairs) list.push_back({{"tractor", pair.tractor}, {"implement", pair.implement}});
  return list;
}

Json pay_off_json(const FarmStudy& study, const PayOff& pay_off) {
  Json json = {{"option", study.options[pay_off.option]},
               {"pays", pays_name(pay_off.pays)},
               {"gained", pairs_json(pay_off.gained)},
               {"lost", pairs_json(pay_off.lost)},
               {"missing", pay_off.missing},
               {"remarks", Json::array()}};
  for (const char* remark : pay_off.remarks) json["remarks"].push_back(remark);
  if (pay_off.hours_not_priced > 0.0) json["hours_not_priced"] = pay_off.hours_not_priced;
  if (!pay_off.balance) return json;
  const YearlyBalance& year = *pay_off.balance;
  json["year"] = {{"ownership", money_json(year.ownership)},
                  {"repair", money_json(year.repair)},
                  {"running", money_json(year.running)},
                  {"hire", money_json(year.hire)},
                  {"net", money_json(year.net)}};
  if (pay_off.payback && pay_off.payback->outside == nullptr) json["payback_years"] = pay_off.payback->value;
  json["sensitivity"] = Json::array();
  for (const Sensitivity& entry : pay_off.sensitivity) {
    json["sensitivity"].push_back({{"figure", figure_name(entry.figure)},
                                   {"net_at_80_percent", money_json(entry.net_low)},
                                   {"net_at_120_percent", money_json(entry.net_high)}});
  }
  return json;
}

Json remedy_json(const FarmStudy& study, const PairRemedies& entry, UnitStyle style) {
  Json sets = Json::array();
  for (const Remedy& remedy : entry.remedies.sets) {
    Json changes = Json::array();
    for (const Change& change : remedy.changes) {
      changes.push_back({{"id", change_id(change.kind)}, {"text", rendering::change_text(change, style)}});
    }
    Json set = {{"changes", changes}, {"heals_all", remedy.left.empty()}};
    if (remedy.price) set["price"] = money_json(*remedy.price);
    sets.push_back(std::move(set));
  }
  return {{"tractor", study.tractors[entry.pair.tractor]},
          {"implement", study.implements[entry.pair.implement]},
          {"sets", sets},
          {"spoils", places_json(study, entry.spoils)},
          {"state_first", entry.remedies.state_first}};
}

} // namespace

std::string to_json(const FarmStudy& study, UnitStyle style) {
  Json json = {{"schema", farm_report_schema_version},
               {"library", FIELDSHAFT_VERSION_STRING},
               {"title", study.title},
               {"note", study.note},
               {"depth", study.depth == StudyDepth::screening ? "screening" : "certified"},
               {"tractors", study.tractors},
               {"implements", study.implements},
               {"verdicts", matrix_json(study)},
               {"never_run", names_at(study.implements, study.backup.never)},
               {"one_down", standstill_json(study, study.backup.singles)},
               {"two_down", standstill_json(study, study.backup.pairs)},
               {"plan", plan_json(study)},
               {"speeds", speeds_json(study)}};
  json["options"] = Json::array();
  for (const PayOff& pay_off : study.pay_offs) json["options"].push_back(pay_off_json(study, pay_off));
  json["remedies"] = Json::array();
  for (const PairRemedies& entry : study.remedies) json["remedies"].push_back(remedy_json(study, entry, style));
  json["changeovers"] = Json::array();
  for (const FarmChangeover& entry : study.changeovers) {
    Json steps = {{"tractor", study.tractors[entry.tractor]},
                  {"implements", names_at(study.implements, entry.implements)}};
    steps.update(rendering::steps_json(entry.changeover, style));
    json["changeovers"].push_back(std::move(steps));
  }
  json["cautions"] = rendering::cautions();
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace v0
} // namespace fieldshaft
