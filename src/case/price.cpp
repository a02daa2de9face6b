#include "case/price.hpp"

#include <fieldshaft/units/text.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {
namespace {

bool is_code(std::string_view code) {
  for (const char c : code) {
    if (c < 'A' || c > 'Z') return false;
  }
  return code.size() == 3;
}

ParsedPrice no_price(std::string problem) { return {std::nullopt, std::move(problem)}; }

/// How many of what the price is for one unit of the text holds; nothing for a unit that is none.
std::optional<double> size_of_unit(std::string_view unit, PricePer per) {
  switch (per) {
  case PricePer::thing: return unit.empty() ? std::optional<double>(1.0) : std::nullopt;
  case PricePer::litre:
    if (unit == "/L" || unit == "/l") return 1.0;
    if (unit == "/gal") return 1000.0 * unit::us_gallon_m3;
    return std::nullopt;
  case PricePer::hour: return unit == "/h" ? std::optional<double>(1.0) : std::nullopt;
  }
  return std::nullopt;
}

} // namespace

ParsedPrice parse_price(std::string_view text, PricePer per) {
  text = detail::trimmed(text);
  const auto number = detail::take_decimal(text);
  if (!number) return no_price("no number at the start");
  if (!text.empty() && text.front() == ',') {
    return no_price("a comma in a number may mean thousands or decimals; write 30000 or 1.5");
  }
  if (*number < 0.0) return no_price("below nothing");
  text = detail::trimmed(text);
  const std::string_view code = text.substr(0, 3);
  if (!is_code(code)) return no_price("three capital letters of a currency are missing");
  const auto size = size_of_unit(detail::trimmed(text.substr(3)), per);
  if (!size) {
    return no_price(per == PricePer::thing ? "more than a currency after the number"
                                           : "what the price is for is missing or unknown");
  }
  return {Money{*number / *size, Currency(code)}, {}};
}

const char* suffix_of(PricePer per) noexcept {
  switch (per) {
  case PricePer::thing: return "";
  case PricePer::litre: return "/L";
  case PricePer::hour: return "/h";
  }
  return "";
}

std::string example_of(PricePer per) {
  switch (per) {
  case PricePer::thing: return "\"2400 EUR\"";
  case PricePer::litre: return "\"1.20 EUR/L\" or \"4.50 USD/gal\"";
  case PricePer::hour: return "\"65 EUR/h\"";
  }
  return "";
}

std::string price_pattern(PricePer per) {
  const std::string unit = per == PricePer::thing ? "" : per == PricePer::litre ? "\\s*/(L|l|gal)" : "\\s*/h";
  return "^\\s*\\+?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][+-]?[0-9]+)?\\s*[A-Z]{3}" + unit + "\\s*$";
}

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
