#pragma once
// JSON text to a value, with the two things the parser alone does not tell: where it failed and repeated keys.

#include <fieldshaft/case/read.hpp>

#include <nlohmann/json.hpp>

#include <optional>
#include <string_view>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {

using Json = nlohmann::ordered_json;

/// What a document is, for messages, and the size beyond which it is refused before it is read.
struct DocumentKind {
  const char* name;
  const char* holds;
  std::size_t largest_megabytes;
};
inline constexpr DocumentKind case_document_kind{"case", "tractor, implement and driveline", 4};
inline constexpr DocumentKind farm_document_kind{"farm", "tractors, implements and drivelines", 64};

/// Objects and lists within each other: a case needs 5.
inline constexpr int deepest_document = 32;

/// The document as a value; problems of its form are appended. Empty when it is no JSON at all.
std::optional<Json> parse_document(std::string_view text, const DocumentKind& kind, std::vector<CaseProblem>& problems);

/// Whether the version stands in the document; a problem is noted where it does not. A document of another version may
/// mean other things by the same keys.
bool has_version(const Json& document, const char* version, std::vector<CaseProblem>& problems);

/// A value in a few words for a message: text in quotes, numbers as written, "an object", "a list".
std::string shown(const Json& value);

/// Puts what the document says in place of the amounts that problems found later name in a unit of their own: in their
/// values, and in the entries that they compare with, "tractor.engine.high_idle (2350 r/min)".
void quote_as_written(const Json& document, std::vector<CaseProblem>& problems, std::size_t first);

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
