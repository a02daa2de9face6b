#pragma once
// Calls of a formula with arrays.

#include "formula.hpp"

namespace fieldshaft_python {

bool is_quantity(PyObject* value);
PyObject* translate_exception() noexcept;

/// The numbers of an array, one after the other, with what keeps them alive.
struct Series {
  Object owner;
  const double* data = nullptr;
  std::vector<Py_ssize_t> shape;

  std::size_t size() const noexcept;
};

/// Reads an array of numbers; `axes` is how many it must have.
Series read_series(PyObject* value, Place place, std::size_t axes);

/// A new array of that shape; `data` points to its numbers.
Object new_array(const std::vector<Py_ssize_t>& shape, double*& data);

/// Broadcasts the numbers among the arguments as NumPy does and loops over them without the interpreter's lock.
PyObject* call_with_arrays(const Formula& formula, PyObject* const* arguments);

} // namespace fieldshaft_python
