#pragma once
// Reading a case from its JSON document, and the document's JSON Schema.

#include <fieldshaft/case/case.hpp>

#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// Version of the case document that this library reads and writes: the value of its "schema" entry.
inline constexpr const char* case_schema_version = "fieldshaft-case/1";

/// One wrong entry of a document: where it stands, what stands there, what was expected.
struct CaseProblem {
  std::string path;     ///< such as tractor.pto.gears[1].pto_speed; empty for the document itself
  std::string value;    ///< as written; "missing" where nothing stands
  std::string expected; ///< in words, with the unit and the allowed range

  std::string message() const { return (path.empty() ? "document" : path) + ": " + value + "; expected " + expected; }
};

/// Every wrong entry of a document at once.
class CaseError : public std::invalid_argument {
public:
  explicit CaseError(std::vector<CaseProblem> problems, const char* document = "case");
  const std::vector<CaseProblem>& problems() const noexcept { return problems_; }

private:
  std::vector<CaseProblem> problems_;
};

/// A case, or the problems that kept it from being read. Exactly one of the two is there.
struct CaseReading {
  std::optional<Case> result;
  std::vector<CaseProblem> problems;
};

/// Reads a case; never throws for a bad document.
CaseReading try_read_case(std::string_view text);

/// Reads a case, or throws CaseError with every problem of the document.
Case read_case(std::string_view text);

/// A case as a document that reads back to the same case. Quantities are written in SI units to the last digit.
std::string write_case(const Case& value);

/// The JSON Schema (draft 2020-12) of the case document.
std::string case_json_schema();

} // namespace v0
} // namespace fieldshaft
