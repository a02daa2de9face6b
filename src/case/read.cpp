#include <fieldshaft/case/read.hpp>

#include "case/contradictions.hpp"
#include "case/reader.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace {

using case_document::Json;

std::string joined(const std::vector<CaseProblem>& problems, const std::string& document) {
  std::string text =
      std::to_string(problems.size()) + (problems.size() == 1 ? " problem" : " problems") + " in the " + document;
  for (const CaseProblem& problem : problems) text += "\n  " + problem.message();
  return text;
}

} // namespace

CaseError::CaseError(std::vector<CaseProblem> problems, const char* document)
    : std::invalid_argument(joined(problems, document)), problems_(std::move(problems)) {}

CaseReading try_read_case(std::string_view text) {
  CaseReading reading;
  std::optional<Json> document =
      case_document::parse_document(text, case_document::case_document_kind, reading.problems);
  if (!document) return reading;
  const bool version_known = case_document::has_version(*document, case_schema_version, reading.problems);
  if (!version_known && document->contains("schema")) return reading;
  document->erase("schema");
  Case value;
  case_document::Reader reader(*document, "", reading.problems);
  case_document::fields(reader, value);
  reader.refuse_unknown_keys();
  const std::size_t found_by_reading = reading.problems.size();
  case_document::find_contradictions(value, reading.problems);
  case_document::quote_as_written(*document, reading.problems, found_by_reading);
  if (reading.problems.empty()) reading.result = std::move(value);
  return reading;
}

Case read_case(std::string_view text) {
  CaseReading reading = try_read_case(text);
  if (!reading.result) throw CaseError(std::move(reading.problems));
  return *std::move(reading.result);
}

} // namespace v0
} // namespace fieldshaft
