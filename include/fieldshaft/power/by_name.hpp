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

/// Whether every word of `wanted` (both in small letters) stands in `name`; a plural s does not matter.
inline bool holds_words(std::string_view name, std::string_view wanted) {
  bool any = false;
  while (!wanted.empty()) {
    const std::size_t end = wanted.find_first_of(" ,-");
    std::string_view word = wanted.substr(0, end);
    wanted = end == std::string_view::npos ? std::string_view{} : wanted.substr(end + 1);
    if (word.size() > 3 && word.back() == 's') word.remove_suffix(1);
    if (word.empty()) continue;
    any = true;
    if (name.find(word) == std::string_view::npos) return false;
  }
  return any;
}

/// The names that hold all words of a text, else the one that is spelt most like it.
template <class Table> std::vector<std::string_view> nearest_names(const Table& table, std::string_view name) {
  const std::string wanted = lower_case(name);
  std::vector<std::string_view> nearest;
  std::string_view closest;
  std::size_t fewest = 0;
  for (const auto& entry : table) {
    const std::string known = lower_case(entry.name);
    if (holds_words(known, wanted)) nearest.push_back(entry.name);
    const std::size_t edits = edit_distance(known, wanted);
    if (closest.empty() || edits < fewest) {
      closest = entry.name;
      fewest = edits;
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
