#pragma once
// Looking up an entry of a table by its name, with help for a name that it does not hold. Entries have a member `name`.

#include <fieldshaft/core/error.hpp>
#include <fieldshaft/units/text.hpp>

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace detail {

constexpr char lower_letter(char c) noexcept { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

inline std::string lower_case(std::string_view text) {
  std::string lower(text);
  std::transform(lower.begin(), lower.end(), lower.begin(), lower_letter);
  return lower;
}

/// The entry of that name, large and small letters being the same; null if there is none.
template <class Table>
auto find_by_name(const Table& table, std::string_view name) noexcept -> decltype(&*table.begin()) {
  const auto same = [](char a, char b) { return lower_letter(a) == lower_letter(b); };
  for (const auto& entry : table) {
    if (std::equal(entry.name.begin(), entry.name.end(), name.begin(), name.end(), same)) return &entry;
  }
  return nullptr;
}

/// The words of a text in small letters, without a plural s.
inline std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> words;
  while (!text.empty()) {
    const std::size_t end = text.find_first_of(" ,-");
    std::string word = lower_case(text.substr(0, end));
    text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
    if (word.size() > 3 && word.back() == 's') word.pop_back();
    if (!word.empty()) words.push_back(std::move(word));
  }
  return words;
}

/// By how many hundredths of its letters a word misses the one of a name that is most like it; wholly where less than
/// half is alike.
inline std::size_t hundredths_missed(const std::string& word, const std::string& name) {
  if (name.find(word) != std::string::npos) return 0;
  std::size_t fewest = word.size();
  for (const std::string& known : words_of(name)) fewest = std::min(fewest, edit_distance(known, word));
  return 2 * fewest > word.size() ? 100 : 100 * fewest / word.size();
}

/// The names that miss the words of a text by least, in whatever order they stand; where no word is alike the one name
/// that is spelt most like the whole.
template <class Table> std::vector<std::string_view> nearest_names(const Table& table, std::string_view name) {
  const std::vector<std::string> wanted = words_of(name);
  std::size_t fewest = 100 * wanted.size();
  std::vector<std::string_view> nearest;
  std::string_view closest;
  std::size_t edits = 0;
  for (const auto& entry : table) {
    const std::string known = lower_case(entry.name);
    std::size_t missed = 0;
    for (const std::string& word : wanted) missed += hundredths_missed(word, known);
    if (missed < fewest) nearest.clear();
    if (missed < fewest || (missed == fewest && !nearest.empty())) nearest.push_back(entry.name);
    fewest = std::min(fewest, missed);
    const std::size_t apart = edit_distance(known, lower_case(name));
    if (closest.empty() || apart < edits) {
      closest = entry.name;
      edits = apart;
    }
  }
  if (nearest.empty()) nearest.push_back(closest);
  return nearest;
}

/// The entry of that name; InputError with the nearest names if there is none.
template <class Table> const auto& by_name(const Table& table, std::string_view name, const char* function) {
  const auto* entry = find_by_name(table, name);
  if (entry == nullptr) {
    std::string allowed = "a name of the table; nearest:";
    for (const std::string_view near : nearest_names(table, name)) allowed += " \"" + std::string(near) + "\"";
    fail_input(function, "name", "\"" + std::string(name) + "\"", allowed);
  }
  return *entry;
}

} // namespace detail
} // namespace v0
} // namespace fieldshaft
