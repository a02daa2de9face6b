#include "case/reader.hpp"

#include <cmath>
#include <cstdio>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {
namespace {

/// A unit as somebody wrote it.
struct WrittenUnit {
  std::string text;
  double factor = 1.0;
};

/// The unit of a text such as "14 in" or "600 mm ± 10 mm", so that an answer speaks in it.
std::optional<WrittenUnit> unit_of(std::string_view text, Kind kind) {
  const std::size_t tolerance = std::min(text.find("±"), text.find("+/-"));
  std::string_view rest = detail::trimmed(text.substr(0, tolerance));
  if (!detail::take_number(rest)) return std::nullopt;
  const UnitSpelling* unit = detail::find_unit(detail::normal_unit(rest), kind);
  if (unit == nullptr) return std::nullopt;
  return WrittenUnit{std::string(detail::trimmed(rest)), unit->factor};
}

std::string amount_text(double si, Kind kind, const std::optional<WrittenUnit>& written) {
  if (kind == Kind::number) return check::text_of(si, "");
  char number[32];
  if (written) {
    std::snprintf(number, sizeof number, "%.6g ", si / written->factor);
    return number + written->text;
  }
  const PrintUnit unit = print_unit(kind, UnitStyle::metric, si);
  return check::text_of(si / unit.factor, unit.symbol);
}

std::string text_of_bounds(Bounds bounds, Kind kind, const std::optional<WrittenUnit>& written) {
  std::string text;
  if (is_finite(bounds.low)) {
    text += (bounds.low_open ? "above " : "at least ") + amount_text(bounds.low, kind, written);
  }
  if (is_finite(bounds.high)) {
    text += text.empty() ? "" : " and ";
    text += (bounds.high_open ? "below " : "at most ") + amount_text(bounds.high, kind, written);
  }
  return text;
}

} // namespace

bool inside(double value, Bounds bounds) noexcept {
  const bool low = bounds.low_open ? value > bounds.low : value >= bounds.low;
  const bool high = bounds.high_open ? value < bounds.high : value <= bounds.high;
  return low && high;
}

std::string bounds_text(Bounds bounds, Kind kind) { return text_of_bounds(bounds, kind, std::nullopt); }

const Json* Reader::find(const char* key) {
  known_.emplace_back(key);
  const auto entry = object_.find(key);
  return entry == object_.end() ? nullptr : &*entry;
}

void Reader::problem(const std::string& key, std::string value, std::string expected) {
  problems_.push_back({at(key), std::move(value), std::move(expected)});
}

void Reader::text(const char* key, std::string& target, Need need, const char* meaning) {
  const Json* value = find(key);
  if (value == nullptr) {
    if (need == Need::required) problem(key, "missing", std::string("a text: ") + meaning);
    return;
  }
  if (value->is_string() && !(need == Need::required && value->get_ref<const std::string&>().empty())) {
    target = value->get<std::string>();
  } else {
    problem(key, shown(*value), std::string("a text: ") + meaning);
  }
}

void Reader::text(const char* key, Stated<std::string>& target, const char* meaning) {
  std::string found;
  const std::size_t problems_before = problems_.size();
  const bool there = object_.contains(key);
  text(key, found, Need::optional, meaning);
  if (there && problems_.size() == problems_before) target = found;
}

void Reader::field(const char* key, Stated<double>& target, Bounds bounds, const char*) {
  if (const auto amount = amount_at(key, Kind::number, bounds, false)) target = amount->value.si;
}

std::optional<MeasuredAmount> Reader::amount_at(const char* key, Kind kind, Bounds bounds, bool measured) {
  const Json* value = find(key);
  if (value == nullptr) return std::nullopt;
  return amount_of(*value, key, kind, bounds, measured);
}

std::optional<MeasuredAmount> Reader::amount_of(const Json& value, const std::string& key, Kind kind, Bounds bounds,
                                                bool measured) {
  std::string wanted = std::string(kind_name(kind)) + " such as " + detail::example_of(kind);
  const auto written = value.is_string() ? unit_of(value.get_ref<const std::string&>(), kind) : std::nullopt;
  const std::string range = text_of_bounds(bounds, kind, written);
  if (!range.empty()) wanted += ", " + range;

  std::optional<MeasuredAmount> amount;
  if (value.is_number() && kind == Kind::number) {
    amount = MeasuredAmount{{value.get<double>(), kind}, 0.0};
  } else if (value.is_string()) {
    const ParsedAmount parsed = try_parse(value.get_ref<const std::string&>(), kind);
    if (!parsed.amount) {
      problem(key, shown(value), wanted + " (" + parsed.problem + ")");
      return std::nullopt;
    }
    amount = parsed.amount;
  } else {
    const bool bare = value.is_number();
    problem(key, shown(value), wanted + (bare ? " (a bare number has no unit; write it as text with its unit)" : ""));
    return std::nullopt;
  }
  if (amount->tolerance > 0.0 && !measured) {
    problem(key, shown(value), wanted + " without a tolerance");
    return std::nullopt;
  }
  const bool fits = is_finite(amount->value.si) && inside(amount->value.si - amount->tolerance, bounds) &&
                    inside(amount->value.si + amount->tolerance, bounds);
  if (!fits) {
    problem(key, shown(value), wanted);
    return std::nullopt;
  }
  return amount;
}

void Reader::price(const char* key, Stated<Money>& target, PricePer per, const char*) {
  const Json* value = find(key);
  if (value == nullptr) return;
  const std::string wanted = "a price with its currency such as " + example_of(per);
  if (!value->is_string()) {
    problem(key, shown(*value), wanted + (value->is_number() ? " (a bare number has no currency)" : ""));
    return;
  }
  const ParsedPrice parsed = parse_price(value->get_ref<const std::string&>(), per);
  if (parsed.price) {
    target = *parsed.price;
  } else {
    problem(key, shown(*value), wanted + " (" + parsed.problem + ")");
  }
}

void Reader::names(const char* key, std::vector<std::string>& target, const char* meaning) {
  const Json* value = find(key);
  if (value == nullptr) return;
  if (!value->is_array()) {
    problem(key, shown(*value), std::string("a list of texts: ") + meaning);
    return;
  }
  for (std::size_t i = 0; i < value->size(); ++i) {
    const Json& entry = (*value)[i];
    if (entry.is_string() && !entry.get_ref<const std::string&>().empty()) {
      target.push_back(entry.get<std::string>());
    } else {
      problem(std::string(key) + "[" + std::to_string(i) + "]", shown(entry), std::string("a text: ") + meaning);
    }
  }
}

void Reader::refuse_unknown_keys() {
  for (const auto& entry : object_.items()) {
    const std::string& key = entry.key();
    if (std::find(known_.begin(), known_.end(), key) != known_.end()) continue;
    const auto distance = [&key](const std::string& name) { return detail::edit_distance(name, key); };
    const auto nearest =
        std::min_element(known_.begin(), known_.end(),
                         [&](const std::string& a, const std::string& b) { return distance(a) < distance(b); });
    const bool near = nearest != known_.end() && distance(*nearest) <= std::max<std::size_t>(2, key.size() / 3);
    std::string all;
    for (const std::string& name : known_) all += (all.empty() ? "" : ", ") + name;
    problem(key, "unknown key", near ? "\"" + *nearest + "\"" : "one of: " + all);
  }
}

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
