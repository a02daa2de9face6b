#pragma once
// Why a text is no JSON document, in the words of somebody who wrote it by hand.

#include <string>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {

/// "line 3, column 14" of a byte of the text, counted from 1.
std::string line_and_column(std::string_view text, std::size_t byte);

/// The slip that most likely keeps the text from being JSON: "a comma before the closing } at line 4, column 1".
/// `byte` is where the parser stopped: the number of bytes that it had read.
std::string form_problem(std::string_view text, std::size_t byte);

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
