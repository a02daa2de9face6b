#pragma once
// Cases as arguments.

#include <fieldshaft/assess.hpp>

namespace fieldshaft_python {

/// The case behind a Python object that read_case made; see documents.cpp.
template <> fieldshaft::Case read<fieldshaft::Case>(PyObject* value, Place place);

} // namespace fieldshaft_python
