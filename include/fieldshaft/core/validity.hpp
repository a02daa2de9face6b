#pragma once
// A result of a formula that may have been used outside its validity: the fact travels with the number.

#include <fieldshaft/core/config.hpp>

namespace fieldshaft {
inline namespace v0 {

/// A result and whether the inputs lay inside the range for which its formula is meant.
/// `outside` is null inside, else a literal that says which range was left. An assessment turns it into `not_known`.
template <class T> struct Validated {
  T value;
  const char* outside = nullptr;

  constexpr bool valid() const noexcept { return outside == nullptr; }
};

} // namespace v0
} // namespace fieldshaft
