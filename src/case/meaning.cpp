#include "case/meaning.hpp"

#include "case/choices.hpp"
#include "case/fields.hpp"

#include <map>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {
namespace {

using Meanings = std::map<std::string, const char*, std::less<>>;

/// The visitor that gathers what the description of the document says of each entry.
class MeaningCollector {
public:
  MeaningCollector(Meanings& meanings, std::string path) : meanings_(meanings), path_(std::move(path)) {}

  template <class T> void text(const char* key, T&, Need, const char* meaning) { note(key, meaning); }
  template <class T> void text(const char* key, T&, const char* meaning) { note(key, meaning); }
  template <class T> void field(const char* key, T&, Bounds, const char* meaning) { note(key, meaning); }
  template <class T> void interval(const char* key, T&, Bounds, const char* meaning) { note(key, meaning); }
  template <class T> void choice(const char* key, T&, const char* meaning) { note(key, meaning); }
  template <class T> void names(const char* key, T&, const char* meaning) { note(key, meaning); }
  template <class T> void price(const char* key, T&, PricePer, const char* meaning) { note(key, meaning); }
  template <class T> void object(const char* key, T& value, const char* meaning) {
    note(key, meaning);
    MeaningCollector inner(meanings_, at(key));
    fields(inner, value);
  }
  template <class T> void required_object(const char* key, T& value, const char* meaning) {
    object(key, value, meaning);
  }
  template <class T> void part(const char* key, Stated<T>&, const char* meaning) { inside<T>(key, meaning); }
  template <class T> void fitted(const char* key, Stated<Fitted<T>>&, const char* meaning) { inside<T>(key, meaning); }
  template <class T> void list(const char* key, std::vector<T>&, const char* meaning) {
    note(key, meaning);
    inside<T>((std::string(key) + "[]").c_str(), meaning);
  }

private:
  std::string at(const char* key) const { return path_.empty() ? key : path_ + "." + key; }
  void note(const char* key, const char* meaning) { meanings_.emplace(at(key), meaning); }
  template <class T> void inside(const char* key, const char* meaning) {
    T value{};
    object(key, value, meaning);
  }

  Meanings& meanings_;
  std::string path_;
};

Meanings meanings_of_case() {
  Meanings meanings;
  Case value;
  MeaningCollector collector(meanings, "");
  fields(collector, value);
  return meanings;
}

} // namespace

std::string_view meaning_of_entry(std::string_view path) {
  static const Meanings meanings = meanings_of_case();
  std::string general;
  bool within = false;
  for (const char c : path) {
    if (c == ']') within = false;
    if (!within) general += c;
    if (c == '[') within = true;
  }
  const auto found = meanings.find(general);
  return found == meanings.end() ? std::string_view() : found->second;
}

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
