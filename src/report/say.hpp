#pragma once
// Phrases of the catalogue with their placeholders filled.

#include <functional>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {

/// What stands for a placeholder, by its name; nothing for a name that is not known.
using ValueOf = std::function<std::optional<std::string>(std::string_view)>;

/// A phrase of the catalogue. A placeholder without a value, or an unknown id, is left visible; tests look for both.
std::string say(std::string_view id, const ValueOf& value_of);
std::string say(std::string_view id, std::initializer_list<std::pair<std::string_view, std::string>> values = {});

/// "1 check" or "3 checks": the one phrase or the other with {n} filled.
std::string say_count(std::size_t n, std::string_view one, std::string_view many);

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
