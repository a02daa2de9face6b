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

/// A document larger than this is no case; it is refused before it is read.
inline constexpr std::size_t largest_document = 4U << 20U;

/// Objects and lists within each other: a case needs 5.
inline constexpr int deepest_document = 32;

/// The document as a value; problems of its form are appended. Empty when it is no JSON at all.
std::optional<Json> parse_document(std::string_view text, std::vector<CaseProblem>& problems);

/// A value in a few words for a message: text in quotes, numbers as written, "an object", "a list".
std::string shown(const Json& value);

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
