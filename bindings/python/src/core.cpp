// The private module of the package: errors, classes, calls, and text of quantities.

#include "arrays.hpp"
#include "formula.hpp"
#include "modules.hpp"

#include <fieldshaft/units/text.hpp>

#include <pybind11/pybind11.h>

#include <cmath>
#include <map>

namespace fieldshaft_python {

namespace {

PyObject* input_error = nullptr;

struct Announced {
  PythonClass* slot;
  const char* const* names;
  std::size_t count;
  bool enumeration;
};
std::map<std::string, Announced>& announced() {
  static std::map<std::string, Announced> classes;
  return classes;
}

std::string repr_of(PyObject* value) {
  const Object text(PyObject_Repr(value));
  const char* characters = PyUnicode_AsUTF8(text.get());
  if (characters == nullptr) throw PythonError{};
  return characters;
}

/// " = value (type)", or only the type where the value is long.
std::string given(PyObject* value) {
  const std::string text = repr_of(value);
  const std::string kind = Py_TYPE(value)->tp_name;
  const std::string name = kind.substr(kind.rfind('.') + 1);
  std::string words = text.size() <= 80 ? " = " + text + " (" + name + ")" : " is a " + name;
  if (is_record<SourcedTag>(value) || is_record<ValidatedTag>(value)) words += "; pass its .value";
  return words;
}

bool is_numpy_number(PyObject* value) {
  // A NumPy scalar or an array without axes: both have dtype and an empty shape.
  PyObject* shape = PyObject_GetAttrString(value, "shape");
  PyObject* dtype = PyObject_GetAttrString(value, "dtype");
  bool number = false;
  if (shape != nullptr && dtype != nullptr && PyTuple_Check(shape) && PyTuple_GET_SIZE(shape) == 0) {
    PyObject* kind = PyObject_GetAttrString(dtype, "kind");
    const char* letter = kind != nullptr ? PyUnicode_AsUTF8(kind) : nullptr;
    number = letter != nullptr && std::string_view("fiu").find(letter[0]) != std::string_view::npos;
    Py_XDECREF(kind);
  }
  Py_XDECREF(shape);
  Py_XDECREF(dtype);
  PyErr_Clear();
  return number;
}

std::string wanted_number(Place place) {
  std::string text = "a number";
  if (*place.unit != '\0') text += std::string(" in ") + place.unit;
  return text;
}

} // namespace

bool is_quantity(PyObject* value) {
  if (PyFloat_CheckExact(value) || PyLong_CheckExact(value) || PyUnicode_CheckExact(value)) return false;
  return PyObject_HasAttrString(value, "_REGISTRY") != 0;
}

void fail_type(Place place, PyObject* value, const std::string& expected) {
  std::string text = std::string(place.function) + ": " + place.parameter;
  if (is_quantity(value)) {
    text += " is a quantity; fieldshaft.si takes plain numbers";
    if (*place.unit != '\0') text += std::string(" in ") + place.unit;
    text += ", the functions of fieldshaft itself take quantities";
  } else {
    text += given(value) + "; expected " + expected;
  }
  PyErr_SetString(PyExc_TypeError, text.c_str());
  throw PythonError{};
}

void fail_value(Place place, PyObject* value, const std::string& allowed) {
  const std::string text = repr_of(value);
  fieldshaft::fail_input(place.function, place.parameter, text.size() <= 80 ? text : text.substr(0, 77) + "...",
                         allowed);
}

double read_number(PyObject* value, Place place) {
  if (PyFloat_Check(value)) return PyFloat_AS_DOUBLE(value);
  if ((PyLong_Check(value) && !PyBool_Check(value)) || is_numpy_number(value)) {
    const double number = PyFloat_AsDouble(value);
    if (number == -1.0 && PyErr_Occurred() != nullptr) {
      PyErr_Clear();
      fail_value(place, value, "a number that a double can hold");
    }
    return number;
  }
  fail_type(place, value, wanted_number(place));
}

int read_count(PyObject* value, Place place) {
  if (PyBool_Check(value) || PyUnicode_Check(value)) fail_type(place, value, "a whole number");
  return checked_count(read_number(value, place), place.function, place.parameter);
}

int checked_count(double value, const char* function, const char* parameter) {
  if (!(std::abs(value) <= 2147483647.0 && value == std::floor(value))) {
    fieldshaft::fail_input(function, parameter, fieldshaft::check::text_of(value, ""), "a whole number");
  }
  return static_cast<int>(value);
}

bool read_flag(PyObject* value, Place place) {
  if (!PyBool_Check(value)) fail_type(place, value, "True or False");
  return value == Py_True;
}

std::string read_text(PyObject* value, Place place) {
  if (!PyUnicode_Check(value)) fail_type(place, value, "a text");
  Py_ssize_t size = 0;
  const char* characters = PyUnicode_AsUTF8AndSize(value, &size);
  if (characters == nullptr) throw PythonError{};
  return {characters, static_cast<std::size_t>(size)};
}

const char* read_literal(PyObject* value, Place place) {
  if (!PyUnicode_Check(value)) fail_type(place, value, "a text");
  const char* characters = PyUnicode_AsUTF8(value);
  if (characters == nullptr) throw PythonError{};
  return characters;
}

std::size_t read_name(PyObject* value, Place place, const char* const* names, std::size_t count) {
  std::string allowed;
  for (std::size_t i = 0; i < count; ++i) allowed += (i > 0 ? ", " : "") + std::string(names[i]);
  if (!PyUnicode_Check(value)) fail_type(place, value, "one of: " + allowed);
  std::string name = read_text(value, place);
  for (char& c : name) {
    if (c == ' ' || c == '-') c = '_';
  }
  for (std::size_t i = 0; i < count; ++i) {
    if (name == names[i]) return i;
  }
  fail_value(place, value, "one of: " + allowed);
}

PyObject* new_record(const PythonClass& record, PyObject** values) {
  if (record.type == nullptr) throw std::logic_error("a class is not registered");
  static PyObject* const nothing = PyTuple_New(0);
  auto* type = reinterpret_cast<PyTypeObject*>(record.type);
  Object object(type->tp_new(type, nothing, nullptr));
  for (std::size_t i = 0; i < record.names.size(); ++i) {
    if (PyObject_GenericSetAttr(object.get(), record.names[i], values[i]) != 0) throw PythonError{};
  }
  return object.release();
}

void announce(const char* name, PythonClass& slot, const char* const* names, std::size_t count, bool enumeration) {
  announced().insert_or_assign(name, Announced{&slot, names, count, enumeration});
}

/// Sets the Python exception that belongs to the C++ exception in flight.
PyObject* translate_exception() noexcept {
  try {
    throw;
  } catch (const PythonError&) {
  } catch (const fieldshaft::InputError& error) {
    PyObject* instance = PyObject_CallFunction(input_error, "ssss", error.function().c_str(), error.parameter().c_str(),
                                               error.value().c_str(), error.allowed().c_str());
    if (instance != nullptr) {
      PyErr_SetObject(input_error, instance);
      Py_DECREF(instance);
    }
  } catch (const std::invalid_argument& error) {
    PyErr_SetString(PyExc_ValueError, error.what());
  } catch (const std::bad_alloc&) {
    PyErr_NoMemory();
  } catch (const std::exception& error) {
    PyErr_SetString(PyExc_RuntimeError, error.what());
  }
  return nullptr;
}

namespace {

constexpr std::size_t most_numbers = 32;

PyObject* wrong_count(const char* name, std::size_t expected, Py_ssize_t given) {
  PyErr_Format(PyExc_TypeError, "%s takes %zu arguments, %zd given", name, expected, given);
  return nullptr;
}

PyObject* call_formula(PyObject* self, PyObject* const* arguments, Py_ssize_t count) {
  const auto& formula = *static_cast<const Formula*>(PyCapsule_GetPointer(self, nullptr));
  if (count != static_cast<Py_ssize_t>(formula.parameter_count)) {
    return wrong_count(formula.name, formula.parameter_count, count);
  }
  try {
    double numbers[most_numbers];
    std::size_t k = 0;
    for (std::size_t i = 0; i < formula.parameter_count; ++i) {
      const Parameter& parameter = formula.parameters[i];
      if (parameter.role == Role::object) continue;
      PyObject* const argument = arguments[i];
      if (PyFloat_Check(argument)) {
        numbers[k++] = PyFloat_AS_DOUBLE(argument);
      } else if (PyLong_CheckExact(argument)) {
        numbers[k++] = read_number(argument, {formula.name, parameter.name, parameter.unit});
      } else {
        return call_with_arrays(formula, arguments);
      }
    }
    return formula.scalar(numbers, arguments);
  } catch (...) {
    return translate_exception();
  }
}

struct SingleEntry {
  std::string name;
  std::size_t parameter_count;
  Single function;
};

PyObject* call_single(PyObject* self, PyObject* const* arguments, Py_ssize_t count) {
  const auto& entry = *static_cast<const SingleEntry*>(PyCapsule_GetPointer(self, nullptr));
  if (count != static_cast<Py_ssize_t>(entry.parameter_count)) {
    return wrong_count(entry.name.c_str(), entry.parameter_count, count);
  }
  try {
    return entry.function(arguments);
  } catch (...) {
    return translate_exception();
  }
}

using FastCall = PyObject* (*)(PyObject*, PyObject* const*, Py_ssize_t);

void add_function(PyObject* module, const char* name, FastCall call, const void* entry) {
  // Method definitions must outlive the module, which is never unloaded.
  auto* definition =
      new PyMethodDef{name, reinterpret_cast<PyCFunction>(reinterpret_cast<void (*)()>(call)), METH_FASTCALL, nullptr};
  const Object capsule(PyCapsule_New(const_cast<void*>(entry), nullptr, nullptr));
  Object function(PyCFunction_NewEx(definition, capsule.get(), nullptr));
  if (PyModule_AddObjectRef(module, name, function.get()) != 0) throw PythonError{};
}

// Functions of the module itself. -----------------------------------------------------------------------------

/// register(class): the Python class of a record or enumeration, by its name; a decorator.
PyObject* register_class(PyObject* const* arguments) {
  PyObject* const type = arguments[0];
  const Object name(PyObject_GetAttrString(type, "__name__"));
  const auto found = announced().find(read_text(name.get(), {"register", "class", ""}));
  if (found == announced().end()) throw std::logic_error("no struct or enumeration of that name is described");
  const Announced& entry = found->second;
  PythonClass fresh;
  for (std::size_t i = 0; i < entry.count; ++i) {
    Object text(PyUnicode_InternFromString(entry.names[i]));
    if (entry.enumeration) {
      fresh.members.push_back(Object(PyObject_CallOneArg(type, text.get())).release());
    } else {
      fresh.names.push_back(text.release());
    }
  }
  fresh.type = Py_NewRef(type);
  *entry.slot = std::move(fresh);
  return Py_NewRef(type);
}

PyObject* register_error(PyObject* const* arguments) {
  input_error = Py_NewRef(arguments[0]);
  return Py_NewRef(Py_None);
}

const std::map<std::string, fieldshaft::Kind, std::less<>>& kinds() {
  static const auto table = kind_table();
  return table;
}

/// parse(text, kind, function, parameter): the SI number of a text. A wrong unit is a TypeError, a wrong number an
/// InputError.
PyObject* parse(PyObject* const* arguments) {
  const std::string text = read_text(arguments[0], {"parse", "text", ""});
  const fieldshaft::Kind kind = kinds().at(read_text(arguments[1], {"parse", "kind", ""}));
  const std::string function = read_text(arguments[2], {"parse", "function", ""});
  const std::string parameter = read_text(arguments[3], {"parse", "parameter", ""});
  const fieldshaft::ParsedAmount parsed = fieldshaft::try_parse(text, kind);
  if (parsed.amount && parsed.amount->tolerance == 0.0) return PyFloat_FromDouble(parsed.amount->value.si);
  if (parsed.amount) fieldshaft::fail_input(function, parameter, "\"" + text + "\"", "a value without a tolerance");
  for (const auto& [name, other] : kinds()) {
    if (fieldshaft::try_parse(text, other).amount) {
      std::string message = function;
      message.append(": ").append(parameter).append(" = \"").append(text).append("\": ").append(parsed.problem);
      PyErr_SetString(PyExc_TypeError, message.c_str());
      throw PythonError{};
    }
  }
  fieldshaft::fail_text(function, parameter, text, parsed.problem, kind);
}

} // namespace

void add_formula(PyObject* module, const Formula& formula) {
  if (formula.number_count > most_numbers) throw std::logic_error("too many parameters");
  add_function(module, formula.name, &call_formula, &formula);
}

void add_single(PyObject* module, const char* name, std::size_t parameter_count, Single function) {
  auto* entry = new SingleEntry{name, parameter_count, function};
  add_function(module, entry->name.c_str(), &call_single, entry);
}

namespace {

constexpr const char* sourced_fields[] = {"value", "source"};
constexpr const char* validated_fields[] = {"value", "outside"};

void fill(PyObject* module) {
  announce("Sourced", record_class<SourcedTag>, sourced_fields, 2, false);
  announce("Validated", record_class<ValidatedTag>, validated_fields, 2, false);
  add_single(module, "register", 1, &register_class);
  add_single(module, "register_error", 1, &register_error);
  add_single(module, "parse", 4, &parse);
  add_modules(module);
  add_cycles(module);
  add_documents(module);
}

} // namespace
} // namespace fieldshaft_python

PYBIND11_MODULE(_core, module) {
  try {
    fieldshaft_python::fill(module.ptr());
  } catch (const fieldshaft_python::PythonError&) {
    throw pybind11::error_already_set();
  }
}
