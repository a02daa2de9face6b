#include "report/say.hpp"

#include "report/catalogue.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {

std::string say(std::string_view id, const ValueOf& value_of) {
  const std::string_view text = phrase(id);
  if (text.empty()) return "[" + std::string(id) + "]";
  std::string result;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t open = text.find('{', at);
    const std::size_t close = open == std::string_view::npos ? open : text.find('}', open);
    if (close == std::string_view::npos) return result.append(text.substr(at));
    const std::string_view name = text.substr(open + 1, close - open - 1);
    const std::optional<std::string> value = value_of(name);
    result += text.substr(at, open - at);
    result += value ? *value : "{" + std::string(name) + "}";
    at = close + 1;
  }
  return result;
}

std::string say(std::string_view id, std::initializer_list<std::pair<std::string_view, std::string>> values) {
  return say(id, [&](std::string_view wanted) -> std::optional<std::string> {
    for (const auto& [name, value] : values) {
      if (name == wanted) return value;
    }
    return std::nullopt;
  });
}

std::string say_count(std::size_t n, std::string_view one, std::string_view many) {
  return say(n == 1 ? one : many, {{"n", std::to_string(n)}});
}

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
