#include <fieldshaft/case/read.hpp>

#include "case/contradictions.hpp"
#include "case/reader.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace {

using case_document::Json;

std::string joined(const std::vector<CaseProblem>& problems) {
  std::string text =
      std::to_string(problems.size()) + (problems.size() == 1 ? " problem" : " problems") + " in the case";
  for (const CaseProblem& problem : problems) text += "\n  " + problem.message();
  return text;
}

/// The version is looked at first: a document of another version may mean other things by the same keys.
bool has_known_version(const Json& document, std::vector<CaseProblem>& problems) {
  const auto entry = document.find("schema");
  const std::string expected = "\"" + std::string(case_schema_version) + "\", the version that this library reads";
  if (entry == document.end()) {
    problems.push_back({"schema", "missing", expected});
    return false;
  }
  if (*entry == case_schema_version) return true;
  problems.push_back({"schema", case_document::shown(*entry), expected});
  return false;
}

} // namespace

CaseError::CaseError(std::vector<CaseProblem> problems)
    : std::invalid_argument(joined(problems)), problems_(std::move(problems)) {}

CaseReading try_read_case(std::string_view text) {
  CaseReading reading;
  std::optional<Json> document = case_document::parse_document(text, reading.problems);
  if (!document) return reading;
  const bool version_known = has_known_version(*document, reading.problems);
  if (!version_known && document->contains("schema")) return reading;
  document->erase("schema");
  Case value;
  case_document::Reader reader(*document, "", reading.problems);
  case_document::fields(reader, value);
  reader.refuse_unknown_keys();
  case_document::find_contradictions(value, reading.problems);
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
