// Quantities from text: any text is read or refused with words, and what was read is a number that reads back.

#include "input.hpp"

#include <fieldshaft/units/text.hpp>

using namespace fieldshaft;

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  fuzzing::Bytes bytes(data, size);
  const auto kind = static_cast<Kind>(bytes.choice(static_cast<std::size_t>(Kind::share) + 1));
  const ParsedAmount parsed = try_parse(bytes.rest(), kind);
  fuzzing::require(parsed.amount.has_value() == parsed.problem.empty(), "a value or a problem, one of the two");
  if (!parsed.amount) return 0;
  fuzzing::require(is_finite(parsed.amount->value.si), "a value that was read is finite");
  fuzzing::require(parsed.amount->tolerance >= 0.0 && is_finite(parsed.amount->tolerance), "a tolerance is at least 0");
  fuzzing::require(!to_string(parsed.amount->value, UnitStyle::metric).empty(), "a value can be written");
  fuzzing::require(!to_string(parsed.amount->value, UnitStyle::us).empty(), "a value can be written in US units");
  return 0;
}
