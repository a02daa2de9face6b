#pragma once
// Where a value comes from and how sure it is. Every datum and every limit of the library carries one.

#include <fieldshaft/core/config.hpp>

namespace fieldshaft {
inline namespace v0 {

/// How sure a datum is, from the firmest to the weakest.
enum class Standing {
  exact,           ///< a definition or pure mathematics
  given,           ///< stated by the user: a measurement, a plate, a manual
  published,       ///< read in the named source
  textbook,        ///< solved example or formula of the named book
  quoted,          ///< published, read where another text quotes it
  common_practice, ///< common practice, no source
  from_memory,     ///< remembered; to be checked against the named source
};

/// A pass that rests on one of these says so in its first line.
constexpr bool is_remembered(Standing standing) noexcept { return standing == Standing::from_memory; }

constexpr const char* standing_name(Standing standing) noexcept {
  switch (standing) {
  case Standing::exact: return "exact";
  case Standing::given: return "given";
  case Standing::published: return "published";
  case Standing::textbook: return "textbook example";
  case Standing::quoted: return "published (quoted elsewhere)";
  case Standing::common_practice: return "common practice, no source";
  case Standing::from_memory: return "from memory, verify";
  }
  return "unknown";
}

/// A source: what to look up, and how sure the value is. The text lives as long as the program (a literal).
struct Source {
  const char* text;
  Standing standing;
};

/// A value that knows where it comes from.
template <class T> struct Sourced {
  T value;
  Source source;
};

} // namespace v0
} // namespace fieldshaft
