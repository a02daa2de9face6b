#pragma once
// Prices in a document: text with a currency, such as "2400 EUR" or "1.20 EUR/L".

#include <fieldshaft/cost/money.hpp>

#include <optional>
#include <string>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {

/// What a price buys: a thing, a litre, or an hour.
enum class PricePer { thing, litre, hour };

/// A price, or why the text is none. Exactly one of the two is there.
struct ParsedPrice {
  std::optional<Money> price;
  std::string problem;
};

/// A price of at least nothing. A price of a US gallon ("/gal") becomes that of a litre.
ParsedPrice parse_price(std::string_view text, PricePer per);

/// What follows the currency: nothing, "/L" or "/h".
const char* suffix_of(PricePer per) noexcept;
std::string example_of(PricePer per);

/// A regular expression for the texts that parse_price takes.
std::string price_pattern(PricePer per);

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
