// Cases, assessments and reports. The objects stay in C++; Python wraps them.

#include "arrays.hpp"
#include "modules.hpp"

#include <fieldshaft/fieldshaft.hpp>

#include <pybind11/pybind11.h>

namespace py = pybind11;

namespace fieldshaft_python {

namespace {

PyObject* case_error = nullptr;

fieldshaft::UnitStyle style_of(const std::string& units) {
  if (units == "metric") return fieldshaft::UnitStyle::metric;
  if (units == "us") return fieldshaft::UnitStyle::us;
  fieldshaft::fail_input("report", "units", "\"" + units + "\"", "metric, us");
}

/// Turns the exceptions of the library into Python's.
template <class Code> auto translated(Code&& code) {
  try {
    return code();
  } catch (...) {
    translate_exception();
    throw py::error_already_set();
  }
}

fieldshaft::Case read_case(const std::string& text) {
  fieldshaft::CaseReading reading = fieldshaft::try_read_case(text);
  if (reading.result) return std::move(*reading.result);
  py::list problems;
  for (const fieldshaft::CaseProblem& problem : reading.problems) {
    problems.append(py::make_tuple(problem.path, problem.value, problem.expected));
  }
  const py::object error = py::reinterpret_borrow<py::object>(case_error)(problems);
  PyErr_SetObject(case_error, error.ptr());
  throw py::error_already_set();
}

fieldshaft::Assessment assess(const fieldshaft::Case& value) {
  return translated([&] {
    const py::gil_scoped_release released;
    return fieldshaft::assess(value);
  });
}

/// The reports that the library writes, by their names in Python.
template <class Writer> void add_report(py::module_& module, const char* name, Writer writer) {
  module.def(name, [writer](const fieldshaft::Assessment& assessment, const std::string& units) {
    return translated([&] { return writer(assessment, style_of(units)); });
  });
}

} // namespace

void add_assess(PyObject* object) {
  auto module = py::reinterpret_borrow<py::module_>(object);
  py::class_<fieldshaft::Case>(module, "Case");
  py::class_<fieldshaft::Assessment>(module, "Assessment");
  module.def("register_case_error", [](const py::object& error) { case_error = Py_NewRef(error.ptr()); });
  module.def("read_case", &read_case);
  module.def("write_case", [](const fieldshaft::Case& value) { return fieldshaft::write_case(value); });
  module.def("case_json_schema", [] { return fieldshaft::case_json_schema(); });
  module.def("assess", &assess);
  using fieldshaft::Assessment;
  using fieldshaft::UnitStyle;
  add_report(module, "to_text", [](const Assessment& a, UnitStyle style) { return fieldshaft::to_text(a, style); });
  add_report(module, "to_json", [](const Assessment& a, UnitStyle style) { return fieldshaft::to_json(a, style); });
}

} // namespace fieldshaft_python
