#pragma once
// Quantities from text and to text: "85 hp", "1 3/8 in", "7 ft 1 in", "540 r/min", "600 mm ± 10 mm".
//
// Not part of the units umbrella, because it brings in <string>; include it where text enters or leaves.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units/table.hpp>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// An amount as measured: the value and how far the true value may lie from it, on either side.
struct MeasuredAmount {
  Amount value;
  double tolerance = 0.0; ///< in SI units, at least 0
};

template <class Q> struct Measured {
  Q value{};
  Q tolerance{};
};

/// What a text says, or why it says nothing.
struct ParsedAmount {
  std::optional<MeasuredAmount> amount;
  std::string problem; ///< empty when the amount is there
};

namespace detail {

inline void replace_all(std::string& text, std::string_view from, std::string_view to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) {
    text.replace(at, from.size(), to);
  }
}

inline bool is_space(char c) noexcept { return c == ' ' || c == '\t'; }
inline bool is_digit(char c) noexcept { return c >= '0' && c <= '9'; }

inline std::string_view trimmed(std::string_view text) noexcept {
  while (!text.empty() && is_space(text.front())) text.remove_prefix(1);
  while (!text.empty() && is_space(text.back())) text.remove_suffix(1);
  return text;
}

/// Fractions of one character as people type them: "14½" becomes "14 1/2".
inline std::string without_fraction_signs(std::string_view given) {
  std::string text(given);
  replace_all(text, "½", " 1/2");
  replace_all(text, "¼", " 1/4");
  replace_all(text, "¾", " 3/4");
  replace_all(text, "⅛", " 1/8");
  replace_all(text, "⅜", " 3/8");
  replace_all(text, "⅝", " 5/8");
  replace_all(text, "⅞", " 7/8");
  return text;
}

/// One spelling for all ways to join and raise units: "lb-ft", "lb ft" and "lb·ft" become "lb.ft"; "in." is "in".
inline std::string normal_unit(std::string_view text) {
  std::string unit(trimmed(text));
  replace_all(unit, "²", "^2");
  replace_all(unit, "³", "^3");
  replace_all(unit, "⁴", "^4");
  for (const char* joint : {"·", "⋅", "*", "-", " "}) replace_all(unit, joint, ".");
  while (unit.find("..") != std::string::npos) replace_all(unit, "..", ".");
  replace_all(unit, "./", "/");
  replace_all(unit, "/.", "/");
  if (!unit.empty() && unit.back() == '.') unit.pop_back();
  return unit;
}

/// Whether two texts have the same letters, great or small: "KW" and "kW".
inline bool same_letters(std::string_view a, std::string_view b) noexcept {
  const auto small = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [&](char x, char y) { return small(x) == small(y); });
}

/// Number of single-character edits between two short texts.
inline std::size_t edit_distance(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  for (std::size_t j = 0; j <= b.size(); ++j) row[j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t diagonal = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t above = row[j];
      row[j] = std::min({above + 1, row[j - 1] + 1, diagonal + (a[i - 1] == b[j - 1] ? 0U : 1U)});
      diagonal = above;
    }
  }
  return row.back();
}

/// A plain decimal number at the front of the text; the rest stays in `text`.
inline std::optional<double> take_decimal(std::string_view& text) {
  const bool plus = !text.empty() && text.front() == '+';
  const std::string_view digits = plus ? text.substr(1) : text;
  const std::size_t sign = !plus && !digits.empty() && digits.front() == '-' ? 1 : 0;
  if (digits.size() <= sign || !(is_digit(digits[sign]) || digits[sign] == '.')) return std::nullopt;
  double value = 0.0;
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
  if (error != std::errc{} || !is_finite(value)) return std::nullopt;
  text = std::string_view(end, static_cast<std::size_t>(digits.data() + digits.size() - end));
  return value;
}

/// A number at the front of the text: "1 3/8", "1-3/8", "3/8", "34.9", "1e3".
inline std::optional<double> take_number(std::string_view& text) {
  const bool negative = !text.empty() && text.front() == '-';
  std::optional<double> whole = take_decimal(text);
  if (!whole) return std::nullopt;
  std::string_view rest = text;
  double numerator = std::abs(*whole);
  double base = 0.0;
  if (rest.empty() || rest.front() != '/' || rest.size() < 2 || !is_digit(rest[1])) {
    if (rest.empty() || !(is_space(rest.front()) || rest.front() == '-')) return whole;
    rest = rest.front() == '-' ? rest.substr(1) : trimmed(rest);
    if (rest.empty() || !is_digit(rest.front())) return whole;
    const auto second = take_decimal(rest);
    if (!second || rest.size() < 2 || rest.front() != '/' || !is_digit(rest[1])) return whole;
    base = std::abs(*whole);
    numerator = *second;
  }
  rest.remove_prefix(1);
  const auto denominator = take_decimal(rest);
  if (!denominator || *denominator == 0.0) return std::nullopt;
  text = rest;
  const double value = base + numerator / *denominator;
  return negative ? -value : value;
}

inline const char* example_of(Kind kind) noexcept {
  switch (kind) {
  case Kind::angle: return "\"15 deg\"";
  case Kind::angular_speed: return "\"540 r/min\"";
  case Kind::length: return "\"356 mm\" or \"14 in\"";
  case Kind::speed: return "\"80 m/s\" or \"16000 ft/min\"";
  case Kind::mass: return "\"2 kg\" or \"4.5 lb\"";
  case Kind::force: return "\"500 N\" or \"110 lbf\"";
  case Kind::torque: return "\"900 N·m\" or \"660 lbf·ft\"";
  case Kind::power: return "\"60 kW\" or \"80 hp\"";
  case Kind::stress: return "\"530 MPa\" or \"77 ksi\"";
  case Kind::time: return "\"500 h\" or \"3 s\"";
  case Kind::moment_of_inertia: return "\"4 kg·m²\"";
  case Kind::mass_rate: return "\"20 t/h\"";
  case Kind::number: return "1.5";
  default: return "a number and its unit";
  }
}

/// What a kind is called, with an example of how it is written.
inline std::string wanted_text(Kind kind) { return std::string(kind_name(kind)) + " such as " + example_of(kind); }

/// The spelling that was probably meant; empty where none is near. Great and small letters come first, because what is
/// one edit away may be a thousand times as large: "KW" is "kW", not "W".
inline std::string_view nearest_unit(std::string_view unit, Kind kind) {
  std::string_view nearest;
  std::size_t best = 3;
  for (const UnitSpelling& known : unit_spellings) {
    if (known.kind != kind) continue;
    if (same_letters(known.spelling, unit)) return known.spelling;
    const std::size_t distance = edit_distance(known.spelling, unit);
    if (distance < std::min(best, std::max(known.spelling.size(), unit.size()))) {
      best = distance;
      nearest = known.spelling;
    }
  }
  return nearest;
}

/// Why a unit is no unit of the wanted kind, with what to write instead.
inline std::string unit_problem(const std::string& unit, Kind kind) {
  const std::string wanted = wanted_text(kind);
  if (unit.empty()) return "a unit is missing; expected " + wanted;
  if (kind == Kind::angular_speed &&
      (unit == "Hz" || unit == "1/s" || unit == "s^.1" || unit == "1/min" || unit == "min^.1")) {
    return "\"" + unit + "\" is a frequency, not a shaft speed (it does not say turns or radians); expected " + wanted;
  }
  if (unit == "cv" || unit == "ch" || unit == "CV" || unit == "pk") {
    return "\"" + unit + "\" is not used here; write \"metric hp\" (735.5 W) or \"hp\" (745.7 W)";
  }
  const UnitSpelling* other = nullptr;
  for (const UnitSpelling& known : unit_spellings) {
    if (known.spelling == unit && (other == nullptr || other->kind != kind)) other = &known;
  }
  if (other != nullptr) return "\"" + unit + "\" measures " + kind_name(other->kind) + "; expected " + wanted;
  const std::string_view nearest = nearest_unit(unit, kind);
  std::string text = "unknown unit \"" + unit + "\"";
  if (!nearest.empty()) text += " (did you mean \"" + std::string(nearest) + "\"?)";
  return text + "; expected " + wanted;
}

inline const UnitSpelling* find_unit(std::string_view spelling, Kind kind) noexcept {
  for (const UnitSpelling& known : unit_spellings) {
    if (known.kind == kind && known.spelling == spelling) return &known;
  }
  return nullptr;
}

/// One number with its unit, no tolerance. `inherited` serves "600 ± 10 mm".
inline ParsedAmount parse_part(std::string_view text, Kind kind, const UnitSpelling* inherited) {
  text = trimmed(text);
  const auto number = take_number(text);
  if (!number) return {std::nullopt, "no finite number at the start; expected " + wanted_text(kind)};
  if (!text.empty() && text.front() == ',')
    return {std::nullopt, "a comma in a number may mean thousands or decimals; write 30000 or 1.5"};
  if (kind == Kind::number) {
    text = trimmed(text);
    if (text == "%") return {MeasuredAmount{{*number / 100.0, kind}, 0.0}, {}};
    if (!text.empty())
      return {std::nullopt, "\"" + std::string(text) + "\" after a plain number; expected a number or a percentage"};
    return {MeasuredAmount{{*number, kind}, 0.0}, {}};
  }
  const std::string spelling = normal_unit(text);
  const UnitSpelling* unit = spelling.empty() ? inherited : find_unit(spelling, kind);
  if (unit == nullptr) return {std::nullopt, unit_problem(spelling, kind)};
  const double si = *number * unit->factor;
  if (!is_finite(si)) return {std::nullopt, "the number is too large"};
  return {MeasuredAmount{{si, kind}, 0.0}, {}};
}

/// Where the second number of "7 ft 1 in" begins; npos where the text holds one number alone.
inline std::size_t second_part(std::string_view text) {
  std::string_view rest = trimmed(text);
  if (!take_number(rest)) return std::string_view::npos;
  const auto start = static_cast<std::size_t>(rest.data() - text.data());
  for (std::size_t at = start + 1; at < text.size(); ++at) {
    const bool apart = std::string_view(" \t-'\"").find(text[at - 1]) != std::string_view::npos ||
                       static_cast<unsigned char>(text[at - 1]) >= 0x80U;
    if (is_digit(text[at]) && apart && !trimmed(text.substr(start, at - start)).empty()) return at;
  }
  return std::string_view::npos;
}

/// A length in one part or in two, as a tape is read: "7 ft 1 1/2 in", "1 m 20 cm".
inline ParsedAmount parse_length(std::string_view text, const UnitSpelling* inherited) {
  const std::size_t at = second_part(text);
  if (at == std::string_view::npos) return parse_part(text, Kind::length, inherited);
  std::string_view first = trimmed(text.substr(0, at));
  const bool negative = !first.empty() && first.front() == '-';
  const std::optional<double> number = take_number(first);
  const UnitSpelling* unit = find_unit(normal_unit(first), Kind::length);
  if (!number || unit == nullptr) return parse_part(text, Kind::length, inherited);
  ParsedAmount second = parse_part(text.substr(at), Kind::length, inherited);
  if (!second.amount) return second;
  const double rest = second.amount->value.si;
  const double least_whole = (1.0 - 1e-12) * unit->factor; // twelve inches are a foot, whatever rounding says
  if (*number != std::floor(*number) || rest < 0.0 || rest >= least_whole)
    return {std::nullopt, "of two parts the first is a whole number and the second less than one of its unit, such as "
                          "\"7 ft 1 1/2 in\" or \"1 m 20 cm\""};
  const double si = *number * unit->factor + (negative ? -rest : rest);
  if (!is_finite(si)) return {std::nullopt, "the number is too large"};
  second.amount->value.si = si;
  return second;
}

inline ParsedAmount parse_single(std::string_view text, Kind kind, const UnitSpelling* inherited) {
  return kind == Kind::length ? parse_length(text, inherited) : parse_part(text, kind, inherited);
}

/// The unit at the end of a text such as "10 mm".
inline const UnitSpelling* unit_at_end(std::string_view text, Kind kind) {
  text = trimmed(text);
  if (!take_number(text)) return nullptr;
  return find_unit(normal_unit(text), kind);
}

} // namespace detail

/// An amount of the wanted kind from text, with an optional tolerance ("600 mm ± 10 mm", "600 +/- 10 mm").
/// Never throws for bad text: the problem is returned in words.
inline ParsedAmount try_parse(std::string_view given, Kind kind) {
  const std::string plain = detail::without_fraction_signs(given);
  const std::string_view text = plain;
  for (const std::string_view sign : {std::string_view("±"), std::string_view("+/-"), std::string_view("+-")}) {
    const std::size_t at = text.find(sign);
    if (at == std::string_view::npos) continue;
    const std::string_view tolerance_text = text.substr(at + sign.size());
    const ParsedAmount tolerance = detail::parse_single(tolerance_text, kind, nullptr);
    if (!tolerance.amount) return {std::nullopt, "in the tolerance: " + tolerance.problem};
    if (tolerance.amount->value.si < 0.0) return {std::nullopt, "a tolerance cannot be negative"};
    ParsedAmount value = detail::parse_single(text.substr(0, at), kind, detail::unit_at_end(tolerance_text, kind));
    if (value.amount) value.amount->tolerance = tolerance.amount->value.si;
    return value;
  }
  return detail::parse_single(text, kind, nullptr);
}

/// Throws InputError for a text that says nothing: why stands beside the text, what is expected by itself.
[[noreturn]] inline void fail_text(const std::string& function, const std::string& parameter, std::string_view text,
                                   const std::string& problem, Kind kind) {
  const std::size_t cut = problem.find("; expected ");
  const std::string expected = cut == std::string::npos ? detail::wanted_text(kind) : problem.substr(cut + 11);
  fail_input(function, parameter, "\"" + std::string(text) + "\" (" + problem.substr(0, cut) + ")", expected);
}

/// A quantity from text: parse<Power>("85 hp"). Throws InputError with what was expected.
template <class Q> Q parse(std::string_view text) {
  const ParsedAmount parsed = try_parse(text, kind_of<Q>);
  if (!parsed.amount) fail_text("parse", "text", text, parsed.problem, kind_of<Q>);
  if (parsed.amount->tolerance != 0.0)
    fail_input("parse", "text", "\"" + std::string(text) + "\"", "a value without a tolerance");
  if constexpr (kind_of<Q> == Kind::number) {
    return parsed.amount->value.si;
  } else {
    return Q::from_value(parsed.amount->value.si);
  }
}

/// A measured quantity from text: parse_measured<Length>("600 mm ± 10 mm"). Throws InputError.
template <class Q> Measured<Q> parse_measured(std::string_view text) {
  const ParsedAmount parsed = try_parse(text, kind_of<Q>);
  if (!parsed.amount) fail_text("parse_measured", "text", text, parsed.problem, kind_of<Q>);
  return {Q::from_value(parsed.amount->value.si), Q::from_value(parsed.amount->tolerance)};
}

/// A number with a fixed count of decimals, whatever the locale; minus zero is printed as zero.
inline std::string format_number(double value, int decimals) {
  char buffer[400];
  const auto end = std::to_chars(buffer, buffer + sizeof buffer, value, std::chars_format::fixed, decimals).ptr;
  std::string text(buffer, end);
  if (text.find_first_not_of("-0.") == std::string::npos && text.front() == '-') text.erase(0, 1);
  return text;
}

/// A plain number to three figures without trailing zeros: 1.85, 18, 343.
inline std::string format_plain(double value) {
  const double size = std::abs(value);
  std::string text = format_number(value, size < 10.0 ? 2 : size < 100.0 ? 1 : 0);
  if (text.find('.') == std::string::npos) return text;
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

/// An amount in the units of a style: "884 N·m" or "652 lbf·ft".
inline std::string to_string(Amount amount, UnitStyle style) {
  if (!is_finite(amount.si)) return "not a number";
  if (amount.kind == Kind::number) return format_plain(amount.si);
  const PrintUnit unit = print_unit(amount.kind, style, amount.si);
  std::string number = format_number(amount.si / unit.factor, unit.decimals);
  return number + (std::string_view(unit.symbol) == "°" ? "" : " ") + unit.symbol;
}

/// A quantity in a named unit: to_string(torque, unit::kilonewton_metre, 2) is "0.88 kN·m".
template <class Q> std::string to_string(Q quantity, Unit<Q> unit, int decimals) {
  return format_number(in(quantity, unit), decimals) + " " + unit.symbol;
}

} // namespace v0
} // namespace fieldshaft
