// Cases and farms, what the library finds about them, and its reports. The objects stay in C++; Python wraps them.

#include "arrays.hpp"
#include "forwards/assess.hpp"
#include "modules.hpp"

#include <fieldshaft/core/threads.hpp>
#include <fieldshaft/fieldshaft.hpp>

#include <pybind11/pybind11.h>

namespace py = pybind11;

namespace fieldshaft_python {

namespace {

PyObject* case_error = nullptr;

/// Makes a type known to Python that only its wrapper there looks into.
template <class Known> void known(py::module_& module, const char* name) { const py::class_<Known> type(module, name); }

fieldshaft::UnitStyle style_of(const std::string& units) {
  return units == "us" ? fieldshaft::UnitStyle::us : fieldshaft::UnitStyle::metric;
}

[[noreturn]] void fail_reading(const std::vector<fieldshaft::CaseProblem>& found) {
  py::list problems;
  for (const fieldshaft::CaseProblem& problem : found) {
    problems.append(py::make_tuple(problem.path, problem.value, problem.expected));
  }
  const py::object error = py::reinterpret_borrow<py::object>(case_error)(problems);
  PyErr_SetObject(case_error, error.ptr());
  throw py::error_already_set();
}

/// Turns the exceptions of the library into Python's.
template <class Code> auto translated(Code&& code) {
  try {
    return code();
  } catch (const fieldshaft::CaseError& error) {
    fail_reading(error.problems());
  } catch (const py::error_already_set&) {
    throw;
  } catch (...) {
    translate_exception();
    throw py::error_already_set();
  }
}

/// Arguments are read by the same rules as everywhere; a Python error that is set travels on.
template <class Code> auto with_python(Code&& code) {
  try {
    return code();
  } catch (const PythonError&) {
    throw py::error_already_set();
  } catch (...) {
    translate_exception();
    throw py::error_already_set();
  }
}

/// The same without the interpreter's lock.
template <class Code> auto worked(Code&& code) {
  return translated([&] {
    const py::gil_scoped_release released;
    return code();
  });
}

/// What was read, or CaseError with every problem.
template <class Reading> auto read(Reading reading) {
  if (!reading.result) fail_reading(reading.problems);
  return std::move(*reading.result);
}

/// The reports of a result, each under the name that it has in C++.
template <class T> void add_reports(py::module_& module) {
  const auto add = [&module](const char* name, auto writer) {
    module.def(name, [writer](const T& result, const std::string& units) {
      return translated([&] { return writer(result, style_of(units)); });
    });
  };
  using fieldshaft::UnitStyle;
  add("to_text", [](const T& result, UnitStyle style) { return fieldshaft::to_text(result, style); });
  add("to_markdown", [](const T& result, UnitStyle style) { return fieldshaft::to_markdown(result, style); });
  add("to_html", [](const T& result, UnitStyle style) { return fieldshaft::to_html(result, style); });
  add("to_json", [](const T& result, UnitStyle style) { return fieldshaft::to_json(result, style); });
}

/// How far a search goes, as Python gives it: a status, then numbers in the order of RemedyOptions.
fieldshaft::RemedyOptions options_of(int accept, const py::sequence& bounds) {
  const auto whole = [&bounds](std::size_t i, const char* name) {
    const double value = read_number(bounds[i].ptr(), {"remedies", name, ""});
    return checked_count(value, "remedies", name);
  };
  return {static_cast<fieldshaft::Status>(accept),
          whole(0, "most_changes"),
          whole(1, "beyond_smallest"),
          whole(2, "most_sets"),
          whole(3, "most_cases"),
          whole(4, "most_ranges"),
          read_number(bounds[5].ptr(), {"remedies", "least_need", ""})};
}

void add_remedies(py::module_& module) {
  using fieldshaft::Remedies;
  known<Remedies>(module, "Remedies");
  module.def("remedies", [](const fieldshaft::Case& value, int accept, const py::sequence& bounds) {
    const auto options = with_python([&] { return options_of(accept, bounds); });
    return worked([&] { return fieldshaft::remedies(value, options); });
  });
  module.def("changed_case", [](const Remedies& found, std::size_t set) { return found.sets.at(set).changed; });
  add_reports<Remedies>(module);
}

/// The steps from one case to another, or None where there are none.
py::object changeover_between(const fieldshaft::Case& before, const fieldshaft::Case& after) {
  auto found = worked([&] { return fieldshaft::changeover_between(before, after); });
  return found ? py::cast(std::move(*found)) : py::none();
}

void add_changeover(py::module_& module) {
  using fieldshaft::AngularSpeed;
  using fieldshaft::Changeover;
  known<Changeover>(module, "Changeover");
  module.def("changeover", [](int arrangement, int from, double from_speed, int to, double to_speed, bool mounted) {
    return translated([&] {
      return fieldshaft::changeover(static_cast<fieldshaft::StubArrangement>(arrangement),
                                    {from, AngularSpeed::from_value(from_speed)},
                                    {to, AngularSpeed::from_value(to_speed)},
                                    mounted ? fieldshaft::HitchKind::three_point : fieldshaft::HitchKind::drawbar);
    });
  });
  module.def("changeover_between", &changeover_between);
  add_reports<Changeover>(module);
}

void add_farm(py::module_& module) {
  using fieldshaft::Farm;
  using fieldshaft::FarmStudy;
  known<Farm>(module, "Farm");
  known<FarmStudy>(module, "FarmStudy");
  module.def("read_farm", [](const std::string& text) { return read(fieldshaft::try_read_farm(text)); });
  module.def("write_farm", [](const Farm& value) { return fieldshaft::write_farm(value); });
  module.def("farm_json_schema", [] { return fieldshaft::farm_json_schema(); });
  module.def("screened_checks", [] {
    py::list ids;
    for (const fieldshaft::Check check : fieldshaft::screened_checks) ids.append(fieldshaft::check_id(check));
    return ids;
  });
  module.def("study_farm",
             [](const Farm& farm, bool screening, int threads, bool remedies, int accept, const py::sequence& bounds) {
               const auto options = with_python([&] { return options_of(accept, bounds); });
               return worked([&] {
                 fieldshaft::check::within(threads, 0.0, 1024.0, {"study_farm", "threads", ""});
                 fieldshaft::FarmStudySettings settings;
                 settings.depth = screening ? fieldshaft::StudyDepth::screening : fieldshaft::StudyDepth::certified;
                 settings.remedies = remedies;
                 settings.remedy_options = options;
                 if (threads != 1) settings.executor = fieldshaft::thread_executor(static_cast<unsigned>(threads));
                 return fieldshaft::study_farm(farm, settings);
               });
             });
  module.def("best_case", [](const Farm& farm, std::size_t tractor, std::size_t implement) {
    return worked([&] {
      const auto best = fieldshaft::study_pair(farm, tractor, implement);
      return fieldshaft::case_of(farm, tractor, implement, best.set_up);
    });
  });
  module.def("with_options", [](const Farm& farm, const py::sequence& options) {
    std::vector<std::size_t> places;
    for (const py::handle place : options) places.push_back(place.cast<std::size_t>());
    return translated([&] { return fieldshaft::with_options(farm, places); });
  });
  add_reports<FarmStudy>(module);
}

} // namespace

template <> fieldshaft::Case read<fieldshaft::Case>(PyObject* value, Place place) {
  const auto handle = py::getattr(py::handle(value), "_handle", py::none());
  if (!py::isinstance<fieldshaft::Case>(handle)) fail_type(place, value, "a Case, see read_case");
  return handle.cast<fieldshaft::Case>();
}

void add_documents(PyObject* object) {
  auto module = py::reinterpret_borrow<py::module_>(object);
  using fieldshaft::Assessment;
  using fieldshaft::Case;
  known<Case>(module, "Case");
  known<Assessment>(module, "Assessment");
  module.def("register_case_error", [](const py::object& error) { case_error = Py_NewRef(error.ptr()); });

  module.def("read_case", [](const std::string& text) { return read(fieldshaft::try_read_case(text)); });
  module.def("write_case", [](const Case& value) { return fieldshaft::write_case(value); });
  module.def("case_json_schema", [] { return fieldshaft::case_json_schema(); });
  module.def("assess", [](const Case& value) { return worked([&] { return fieldshaft::assess(value); }); });
  add_reports<Assessment>(module);

  add_remedies(module);
  add_changeover(module);
  add_farm(module);
}

} // namespace fieldshaft_python
