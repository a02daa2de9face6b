#pragma once
// A strict reader of the HTML that reports write: well-formed as XML, and back to the text that a person reads.

#include <cctype>
#include <map>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace markup {

struct Element {
  std::string tag;
  std::map<std::string, std::string> attributes;
};

struct Document {
  std::vector<Element> elements; ///< in the order of their start tags
  std::string text;              ///< without the content of `style`; elements are apart by spaces
};

class Reader {
public:
  explicit Reader(std::string_view source) : source_(source) {}

  Document read() {
    take("<!DOCTYPE html>");
    while (at_ < source_.size()) {
      if (source_[at_] == '<') {
        source_.substr(at_, 2) == "</" ? end_tag() : start_tag();
      } else {
        character();
      }
    }
    if (!open_.empty()) fail("not closed: " + open_.back());
    return document_;
  }

private:
  [[noreturn]] void fail(const std::string& what) const {
    throw std::runtime_error(what + " before: " + std::string(source_.substr(at_, 60)));
  }
  void take(std::string_view expected) {
    if (source_.substr(at_, expected.size()) != expected) fail("expected " + std::string(expected));
    at_ += expected.size();
  }
  std::string name() {
    std::string text;
    while (at_ < source_.size() && (std::isalnum(static_cast<unsigned char>(source_[at_])) || source_[at_] == '-'))
      text += source_[at_++];
    if (text.empty()) fail("expected a name");
    return text;
  }
  void spaces() {
    while (at_ < source_.size() && std::isspace(static_cast<unsigned char>(source_[at_]))) ++at_;
  }
  void start_tag() {
    take("<");
    Element element{name(), {}};
    for (spaces(); at_ < source_.size() && source_[at_] != '>' && source_[at_] != '/'; spaces()) {
      const std::string key = name();
      take("=\"");
      std::string value;
      while (at_ < source_.size() && source_[at_] != '"') value += content();
      take("\"");
      if (!element.attributes.emplace(key, value).second) fail("an attribute twice");
    }
    const bool closed = at_ < source_.size() && source_[at_] == '/';
    take(closed ? "/>" : ">");
    if (!closed) open_.push_back(element.tag);
    if (open_.empty()) fail("nothing may stand around the root");
    document_.text += ' ';
    document_.elements.push_back(std::move(element));
  }
  void end_tag() {
    take("</");
    const std::string tag = name();
    take(">");
    if (open_.empty() || open_.back() != tag) fail("closes " + tag + " out of order");
    open_.pop_back();
    document_.text += ' ';
  }
  void character() {
    if (open_.empty() && !std::isspace(static_cast<unsigned char>(source_[at_]))) fail("text outside the root");
    const std::string text = content();
    if (open_.empty() || open_.back() != "style") document_.text += text;
  }
  /// One character, or what a reference stands for.
  std::string content() {
    const char c = source_[at_];
    if (c == '<') fail("a bare <");
    const auto code = static_cast<unsigned char>(c);
    if (code < 0x20U && c != '\n') fail("a control character");
    if (c != '&') {
      ++at_;
      return std::string(1, c);
    }
    static const std::map<std::string, std::string> references = {
        {"&amp;", "&"}, {"&lt;", "<"}, {"&gt;", ">"}, {"&quot;", "\""}, {"&#39;", "'"}};
    for (const auto& [reference, text] : references) {
      if (source_.substr(at_, reference.size()) != reference) continue;
      at_ += reference.size();
      return text;
    }
    fail("a bare &");
  }

  std::string_view source_;
  std::size_t at_ = 0;
  std::vector<std::string> open_;
  Document document_;
};

inline Document read(std::string_view source) { return Reader(source).read(); }

/// Runs of spaces and line ends become one space, so that texts of differently broken forms can be compared.
inline std::string squeezed(std::string_view text) {
  std::string out;
  for (const char c : text) {
    if (!std::isspace(static_cast<unsigned char>(c))) {
      out += c;
    } else if (!out.empty() && out.back() != ' ') {
      out += ' ';
    }
  }
  return out;
}

} // namespace markup
