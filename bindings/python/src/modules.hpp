#pragma once
// What the generated files give to the module.

#include "python.hpp"

#include <fieldshaft/units/kind.hpp>

#include <map>
#include <string>

namespace fieldshaft_python {

void add_modules(PyObject* module);
void add_cycles(PyObject* module);    ///< functions of whole histories, cycles.cpp
void add_documents(PyObject* module); ///< cases, farms and reports, documents.cpp
/// Every kind of quantity by its name.
std::map<std::string, fieldshaft::Kind, std::less<>> kind_table();

} // namespace fieldshaft_python
