#pragma once
// A counted load cycle, and how counting passes between quantities and their SI numbers.

#include <fieldshaft/units/kind.hpp>

#include <type_traits>

namespace fieldshaft {
inline namespace v0 {

/// A counted cycle of a load: a torque, a stress, a force, or a plain number.
template <class Q = double> struct Cycle {
  Q range;      ///< highest less lowest
  Q mean;       ///< midway between them
  double count; ///< 1, or 0.5 for half a cycle
};

namespace detail {

/// The SI number of a quantity, or a plain number itself.
template <class Q> constexpr double number_of(const Q& quantity) noexcept { return amount_of(quantity).si; }
template <class Q> constexpr Q from_number(double number) noexcept {
  if constexpr (std::is_same_v<Q, double>) {
    return number;
  } else {
    return Q::from_value(number);
  }
}
/// Unit of a load's SI numbers in messages.
template <class Q> constexpr const char* si_unit() noexcept {
  if constexpr (std::is_same_v<Q, Stress>) return "Pa";
  if constexpr (std::is_same_v<Q, Torque>) return "N·m";
  if constexpr (std::is_same_v<Q, Force>) return "N";
  return "";
}

} // namespace detail
} // namespace v0
} // namespace fieldshaft
