#include "report/page.hpp"

#include "report/catalogue.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace pages {
namespace {

/// Bytes of the UTF-8 character at the start of a text; 0 where it is broken or is no character of a text.
std::size_t character_length(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned lead = byte(0);
  const std::size_t length = lead < 0x80U ? 1 : lead < 0xC2U ? 0 : lead < 0xE0U ? 2 : lead < 0xF0U ? 3 : 4;
  if (length == 0 || lead > 0xF4U || length > text.size()) return 0;
  unsigned point = length == 1 ? lead : lead & (0xFFU >> (length + 1));
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(i) & 0xC0U) != 0x80U) return 0;
    point = point << 6U | (byte(i) & 0x3FU);
  }
  const bool overlong = (length == 3 && point < 0x800U) || (length == 4 && point < 0x10000U);
  const bool surrogate = point >= 0xD800U && point <= 0xDFFFU;
  const bool noncharacter = (point & 0xFFFEU) == 0xFFFEU || (point >= 0xFDD0U && point <= 0xFDEFU);
  return overlong || surrogate || noncharacter || point > 0x10FFFFU ? 0 : length;
}

/// Control characters of ASCII and of Latin-1 (C2 80 to C2 9F), and the separators of lines and paragraphs.
bool is_space(std::string_view character) {
  if (character.size() == 1) return static_cast<unsigned char>(character[0]) <= 0x20U || character[0] == 0x7F;
  if (character == "\xE2\x80\xA8" || character == "\xE2\x80\xA9") return true;
  return character.size() == 2 && character[0] == '\xC2' && static_cast<unsigned char>(character[1]) < 0xA0U;
}

} // namespace

std::size_t Page::note(const std::string& text) {
  const auto found = std::find(notes.begin(), notes.end(), text);
  const auto index = static_cast<std::size_t>(found - notes.begin());
  if (found == notes.end()) notes.push_back(text);
  return index + 1;
}

std::string status_word(Status status) {
  const auto word = [&] {
    switch (status) {
    case Status::ok: return report_texts::phrase("word.ok");
    case Status::caution: return report_texts::phrase("word.caution");
    case Status::not_known: return report_texts::phrase("word.not_known");
    case Status::stop: return report_texts::phrase("word.stop");
    }
    return report_texts::phrase("word.stop");
  };
  return std::string(word());
}

std::string one_line(std::string_view text) {
  std::string line;
  while (!text.empty()) {
    const std::size_t length = character_length(text);
    const std::string_view character = text.substr(0, std::max<std::size_t>(length, 1));
    text.remove_prefix(character.size());
    if (length == 0) {
      line += "\xEF\xBF\xBD";
    } else if (!is_space(character)) {
      line += character;
    } else if (!line.empty() && line.back() != ' ') {
      line += ' ';
    }
  }
  if (!line.empty() && line.back() == ' ') line.pop_back();
  return line;
}

std::size_t width_of(std::string_view text) {
  std::size_t width = 0;
  for (const char c : text) width += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
  return width;
}

std::string note_marks(const std::vector<std::size_t>& notes) {
  std::string marks;
  for (const std::size_t note : notes) marks += (marks.empty() ? " [" : ", ") + std::to_string(note);
  return marks.empty() ? marks : marks + "]";
}

} // namespace pages
} // namespace v0
} // namespace fieldshaft
