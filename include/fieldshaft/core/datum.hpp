#pragma once
// A datum that may be unknown. Unknown is never zero, and asking for its value is an error.

#include <fieldshaft/core/error.hpp>
#include <fieldshaft/core/source.hpp>

namespace fieldshaft {
inline namespace v0 {

/// A sourced value, or the fact that none is known. Usable at compile time for quantities too.
template <class T> class Datum {
public:
  constexpr Datum() = default;
  constexpr Datum(const T& value, Source source) : stated_{value, source}, known_(true) {}

  constexpr bool known() const noexcept { return known_; }
  /// The value and its source; InputError if nothing is known.
  constexpr const T& value() const { return stated().value; }
  constexpr const Source& source() const { return stated().source; }
  constexpr const Sourced<T>& stated() const {
    if (!known_) fail_input("Datum", "value", "not known", "asked for only where known() is true");
    return stated_;
  }

private:
  Sourced<T> stated_{};
  bool known_ = false;
};

} // namespace v0
} // namespace fieldshaft
