#include <fieldshaft/case/farm.hpp>

#include "case/farm_contradictions.hpp"
#include "case/farm_fields.hpp"
#include "case/reader.hpp"
#include "case/schema.hpp"
#include "case/writer.hpp"

namespace fieldshaft {
inline namespace v0 {

using case_document::Json;

std::vector<CaseProblem> farm_contradictions(const Farm& farm) {
  std::vector<CaseProblem> problems;
  case_document::find_contradictions(farm, problems);
  return problems;
}

FarmReading try_read_farm(std::string_view text) {
  FarmReading reading;
  std::optional<Json> document =
      case_document::parse_document(text, case_document::farm_document_kind, reading.problems);
  if (!document) return reading;
  const bool version_known = case_document::has_version(*document, farm_schema_version, reading.problems);
  if (!version_known && document->contains("schema")) return reading;
  document->erase("schema");
  Farm farm;
  case_document::Reader reader(*document, "", reading.problems);
  case_document::fields(reader, farm);
  reader.refuse_unknown_keys();
  const std::size_t found_by_reading = reading.problems.size();
  case_document::find_contradictions(farm, reading.problems);
  case_document::quote_as_written(*document, reading.problems, found_by_reading);
  for (std::size_t i = 0; i < farm.implements.size(); ++i) {
    if (farm.implements[i].hitch) continue;
    reading.problems.push_back(
        {"implements[" + std::to_string(i) + "].hitch", "missing", "\"drawbar\" or \"three-point\""});
  }
  if (farm.tractors.empty()) reading.problems.push_back({"tractors", "none", "at least one tractor"});
  if (farm.implements.empty()) reading.problems.push_back({"implements", "none", "at least one implement"});
  if (reading.problems.empty()) reading.result = std::move(farm);
  return reading;
}

Farm read_farm(std::string_view text) {
  FarmReading reading = try_read_farm(text);
  if (!reading.result) throw CaseError(std::move(reading.problems), "farm");
  return *std::move(reading.result);
}

std::string write_farm(const Farm& farm) {
  Farm copy = farm; // the description of the entries serves reading too and takes them by plain reference
  case_document::Writer writer;
  case_document::fields(writer, copy);
  Json document = {{"schema", farm_schema_version}};
  document.update(writer.take());
  return document.dump(2) + "\n";
}

std::string farm_json_schema() {
  case_document::SchemaWriter writer;
  writer.require("schema", {{"const", farm_schema_version}, {"description", "version of the document"}});
  Farm farm;
  case_document::fields(writer, farm);
  Json schema = {{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                 {"title", "fieldshaft farm"},
                 {"description",
                  "Tractors, PTO-driven implements and drivelines of a farm, their costs, and changes to "
                  "weigh. Every quantity is text with its unit, every price text with its currency."}};
  schema.update(writer.take());
  return schema.dump(2) + "\n";
}

} // namespace v0
} // namespace fieldshaft
