#include "case/form_problem.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {
namespace {

constexpr std::string_view spaces = " \t\r\n";

bool starts_with(std::string_view text, std::string_view start) { return text.substr(0, start.size()) == start; }

std::string_view without_front_space(std::string_view text) {
  const std::size_t start = text.find_first_not_of(spaces);
  return start == std::string_view::npos ? std::string_view() : text.substr(start);
}

/// The last character before a byte that is no space; 0 where there is none.
char last_before(std::string_view text, std::size_t at) {
  const std::size_t found = at == 0 ? std::string_view::npos : text.find_last_not_of(spaces, at - 1);
  return found == std::string_view::npos ? '\0' : text[found];
}

/// TOML has no braces around the whole: it starts with a remark, with the name of a table, or with name = value.
bool looks_like_toml(std::string_view text) {
  std::string_view rest = without_front_space(text);
  while (starts_with(rest, "#")) rest = without_front_space(rest.substr(std::min(rest.find('\n'), rest.size())));
  const std::string_view line = rest.substr(0, rest.find('\n'));
  if (starts_with(line, "["))
    return line.find(']') != std::string_view::npos && line.find_first_of("\",{") > line.size();
  return !starts_with(line, "{") && !starts_with(line, "\"") && line.find('=') != std::string_view::npos;
}

/// Slips that show in the text as a whole; empty where none does.
std::string problem_of_whole(std::string_view text) {
  if (starts_with(text, "\xFF\xFE") || starts_with(text, "\xFE\xFF")) return "text in UTF-16; save it as UTF-8";
  if (starts_with(text, "\xEF\xBB\xBF")) text.remove_prefix(3);
  const std::string_view content = without_front_space(text);
  if (content.empty()) return "an empty document";
  if (looks_like_toml(text)) return "no JSON, but what looks like TOML, which Python reads from files named .toml";
  if (starts_with(content, "<")) return "no JSON, but what looks like a web page or XML";
  if (starts_with(content, "PK") || content.find('\0') != std::string_view::npos)
    return "no text: a packed or binary file";
  return "";
}

bool is_word(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '-' || c == '.';
}

/// Where the word that a byte stands in begins.
std::size_t word_start(std::string_view text, std::size_t at) {
  while (at > 0 && at < text.size() && is_word(text[at]) && is_word(text[at - 1])) --at;
  return at;
}

/// Where the text in quotes begins that ends at a byte; the byte itself where none does.
std::size_t text_start(std::string_view text, std::size_t at) {
  const std::size_t start = at == 0 ? std::string_view::npos : text.find_last_of("\"\n", at - 1);
  return start == std::string_view::npos || text[start] == '\n' ? at : start;
}

/// What is wrong with a character of JSON's own marks; empty where nothing better than the place can be said.
std::string problem_of_mark(char here, char before) {
  const bool after_value = std::string_view("\"}]0123456789").find(before) != std::string_view::npos;
  const bool closing = here == '}' || here == ']';
  const std::string mark(1, here);
  if (closing && before == ',') return "a comma before the closing " + mark;
  if (closing && before == ':') return "a value is missing before this " + mark;
  if (closing && (before == '}' || before == ']')) return "a closing " + mark + " too many, or of the wrong kind";
  if (here == ',' && before == ',') return "two commas";
  if ((here == '{' || here == '[' || here == '"') && after_value)
    return "a comma or a : is missing before this " + mark;
  return "";
}

bool is_curly_quote(std::string_view text) {
  return starts_with(text, "“") || starts_with(text, "”") || starts_with(text, "„") || starts_with(text, "«") ||
         starts_with(text, "»");
}

/// What is wrong at one byte; empty where nothing better than the place can be said.
std::string problem_at(std::string_view text, std::size_t at) {
  const char here = text[at];
  if (at > 0 && text[at - 1] == '\\') return "a \\ in a text (write \\\\ for one \\)";
  switch (here) {
  case '\n':
  case '\r': return "a line break within a text (is the closing \" missing?)";
  case '\t': return "a tab within a text";
  case '\'': return "a ' where JSON wants \"";
  case '/':
  case '#': return "a remark, which JSON does not have (the entry \"note\" holds remarks)";
  case '=': return "a = where JSON wants :";
  default: break;
  }
  if (is_curly_quote(text.substr(at))) return "a quote as word processors make it; JSON wants the straight \"";
  if (static_cast<unsigned char>(here) >= 0x80U) return "a character that is no UTF-8, or that stands outside quotes";
  if (is_word(here)) return "a word or number that stands wrong here, or is not in quotes";
  return problem_of_mark(here, last_before(text, at));
}

} // namespace

std::string line_and_column(std::string_view text, std::size_t byte) {
  const std::string_view before = text.substr(0, std::min(byte, text.size()));
  const auto line = 1 + std::count(before.begin(), before.end(), '\n');
  const std::size_t start = before.rfind('\n') == std::string_view::npos ? 0 : before.rfind('\n') + 1;
  return "line " + std::to_string(line) + ", column " + std::to_string(before.size() - start + 1);
}

std::string form_problem(std::string_view text, std::size_t byte) {
  std::string whole = problem_of_whole(text);
  if (!whole.empty()) return whole;
  if (byte > text.size()) return "the document ends too early: a closing }, ] or \" is missing";
  const std::size_t end = byte == 0 ? 0 : byte - 1;
  const std::size_t at = text[end] == '"' ? text_start(text, end) : word_start(text, end);
  const std::string problem = problem_at(text, at);
  return (problem.empty() ? "no JSON" : problem) + " at " + line_and_column(text, at);
}

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
