#pragma once
// Checks of inputs. They never depend on the build type, and NaN never passes (also under -ffast-math).

#include <fieldshaft/core/config.hpp>
#include <fieldshaft/core/error.hpp>

#include <cstdint>
#include <cstdio>
#include <limits>

namespace fieldshaft {
inline namespace v0 {

/// True for every number but NaN and the infinities. A bit test: the optimiser may assume under
/// -ffast-math that std::isfinite is always true, and would let NaN pass.
constexpr bool is_finite(double value) noexcept {
  constexpr std::uint64_t exponent = 0x7ff0000000000000ULL;
  return (FIELDSHAFT_BIT_CAST(std::uint64_t, value) & exponent) != exponent;
}

namespace check {

/// Where a value came in: the public function and its parameter, with the SI unit of the number.
struct Place {
  const char* function;
  const char* parameter;
  const char* unit;
};

/// A number as the shortest text of up to nine significant digits, with its unit.
FIELDSHAFT_COLD inline std::string text_of(double value, const char* unit) {
  char buffer[64];
  std::snprintf(buffer, sizeof buffer, "%.9g", value);
  std::string text = buffer;
  if (unit != nullptr && *unit != '\0') {
    text += ' ';
    text += unit;
  }
  return text;
}

[[noreturn]] FIELDSHAFT_COLD inline void fail(Place place, double value, const char* allowed) {
  fail_input(place.function, place.parameter, text_of(value, place.unit), allowed);
}

[[noreturn]] FIELDSHAFT_COLD inline void fail_bound(Place place, double value, const char* relation, double bound) {
  fail_input(place.function, place.parameter, text_of(value, place.unit), relation + text_of(bound, place.unit));
}

[[noreturn]] FIELDSHAFT_COLD inline void fail_range(Place place, double value, double low, double high,
                                                    const char* interval) {
  fail_input(place.function, place.parameter, text_of(value, place.unit),
             std::string("from ") + text_of(low, place.unit) + " to " + text_of(high, place.unit) + interval);
}

constexpr void finite(double value, Place place) {
  if (!is_finite(value)) fail(place, value, "a finite number");
}

constexpr void positive(double value, Place place) {
  if (!(is_finite(value) && value > 0.0)) fail_bound(place, value, "a finite number above ", 0.0);
}

constexpr void not_negative(double value, Place place) {
  if (!(is_finite(value) && value >= 0.0)) fail_bound(place, value, "a finite number, at least ", 0.0);
}

/// low <= value <= high.
constexpr void within(double value, double low, double high, Place place) {
  if (!(is_finite(value) && value >= low && value <= high)) fail_range(place, value, low, high, ", both included");
}

/// low < value < high.
constexpr void between(double value, double low, double high, Place place) {
  if (!(is_finite(value) && value > low && value < high)) fail_range(place, value, low, high, ", both excluded");
}

/// low <= value < high.
constexpr void from_below(double value, double low, double high, Place place) {
  if (!(is_finite(value) && value >= low && value < high)) fail_range(place, value, low, high, ", upper end excluded");
}

constexpr void at_least(double value, double low, Place place) {
  if (!(is_finite(value) && value >= low)) fail_bound(place, value, "a finite number, at least ", low);
}

constexpr void below(double value, double high, Place place) {
  if (!(is_finite(value) && value < high)) fail_bound(place, value, "a finite number below ", high);
}

} // namespace check
} // namespace v0
} // namespace fieldshaft
