#pragma once
// Columns of numbers that leave as arrays.

#include "python.hpp"

namespace fieldshaft_python {

/// Numbers of one quantity: one for each row, or a row of several.
template <class Q> struct Table {
  std::vector<double> numbers;
  std::size_t rows = 0;
  std::size_t columns = 0; ///< 0: one number a row, and the array has one axis

  void add(Q value) { numbers.push_back(value.value()); }
};

namespace detail {
template <class Q> struct IsTable<Table<Q>> : std::true_type {};
} // namespace detail

} // namespace fieldshaft_python
