#pragma once
// Changes, facts and prices in words.

#include <fieldshaft/advise/change.hpp>
#include <fieldshaft/units/table.hpp>

#include <string>

namespace fieldshaft {
inline namespace v0 {
namespace rendering {

/// A phrase with its placeholders filled from facts.
std::string say_facts(std::string_view id, const std::vector<Fact>& facts, UnitStyle style);

/// A change as a sentence that tells what to do.
std::string change_text(const Change& change, UnitStyle style);

/// An entry of a case document as a person reads it: "0.4 m ± 0.005 m" becomes "400 mm ± 5 mm".
std::string entry_text(const std::string& text, UnitStyle style);

/// "80 EUR", with two decimals where it has any.
std::string price_text(const Money& price);

} // namespace rendering
} // namespace v0
} // namespace fieldshaft
