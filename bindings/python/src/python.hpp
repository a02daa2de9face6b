#pragma once
// Python objects from C++ and back, one rule for each type. Uses the plain C interface of Python, so that the generated
// files compile fast; arrays are handled in arrays.cpp alone.

#include <Python.h>

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/datum.hpp>
#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/pto/list.hpp>
#include <fieldshaft/units.hpp>

#include <array>
#include <cstdint>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace fieldshaft_python {

/// A Python exception is set and travels on.
struct PythonError {};

/// An owned reference.
class Object {
public:
  Object() = default;
  explicit Object(PyObject* owned) : object_(owned) {
    if (owned == nullptr) throw PythonError{};
  }
  Object(Object&& other) noexcept : object_(std::exchange(other.object_, nullptr)) {}
  Object& operator=(Object&& other) noexcept {
    std::swap(object_, other.object_);
    return *this;
  }
  ~Object() { Py_XDECREF(object_); }

  PyObject* get() const noexcept { return object_; }
  PyObject* release() noexcept { return std::exchange(object_, nullptr); }

private:
  PyObject* object_ = nullptr;
};

/// Where a value came in, for messages.
struct Place {
  const char* function;
  const char* parameter;
  const char* unit;
};

[[noreturn]] void fail_type(Place place, PyObject* value, const std::string& expected);
[[noreturn]] void fail_value(Place place, PyObject* value, const std::string& allowed);

/// The number that an object is: a float, an integer, or a NumPy scalar of these; nothing else.
double read_number(PyObject* value, Place place);
int read_count(PyObject* value, Place place);
bool read_flag(PyObject* value, Place place);
std::string read_text(PyObject* value, Place place);
/// The characters of a text, which live as long as the Python object.
const char* read_literal(PyObject* value, Place place);
/// The index of an enumerator by its name; spaces and hyphens count as underscores.
std::size_t read_name(PyObject* value, Place place, const char* const* names, std::size_t count);

/// The Python class of a record or enumeration, set once by _core.register.
struct PythonClass {
  PyObject* type = nullptr;
  std::vector<PyObject*> names;   ///< of a record: its fields
  std::vector<PyObject*> members; ///< of an enumeration
};
PyObject* new_record(const PythonClass& record, PyObject** values);
void announce(const char* name, PythonClass& slot, const char* const* names, std::size_t count, bool enumeration);

/// What the generated files say about a struct: `name`, `names`, `each` (visits the fields in order) and, where Python
/// hands it in, `make` (reads the fields in order).
template <class T> struct Record { static constexpr bool known = false; };
/// What the generated files say about an enumeration: `names` in the order of the enumerators from 0.
template <class T> struct Enumeration;

template <class T> inline PythonClass record_class;
template <class T> inline PythonClass enumeration_class;

namespace detail {
template <class T> struct IsQuantity : std::false_type {};
template <class U> struct IsQuantity<boost::units::quantity<U, double>> : std::true_type {};
template <class T> struct IsSourced : std::false_type {};
template <class T> struct IsSourced<fieldshaft::Sourced<T>> : std::true_type {};
template <class T> struct IsDatum : std::false_type {};
template <class T> struct IsDatum<fieldshaft::Datum<T>> : std::true_type {};
template <class T> struct IsValidated : std::false_type {};
template <class T> struct IsValidated<fieldshaft::Validated<T>> : std::true_type {};
template <class T> struct IsOptional : std::false_type {};
template <class T> struct IsOptional<std::optional<T>> : std::true_type {};
template <class T> struct IsList : std::false_type {};
template <class T> struct IsList<std::vector<T>> : std::true_type {};
template <class T, std::size_t N> struct IsList<std::array<T, N>> : std::true_type {};
template <class T, std::size_t N> struct IsList<fieldshaft::FixedList<T, N>> : std::true_type {};
template <class T> struct ListEntry;
template <class T> struct ListEntry<std::vector<T>> { using type = T; };
template <class T, std::size_t N> struct ListEntry<fieldshaft::FixedList<T, N>> { using type = T; };
template <class T> struct IsTable : std::false_type {}; // see tables.hpp
template <class T> struct IsVariant : std::false_type {};
template <class... T> struct IsVariant<std::variant<T...>> : std::true_type {};
} // namespace detail

namespace detail {
/// A record that its number stands for, such as a PTO type.
template <class T, class = void> struct TakesNumber : std::false_type {};
template <class T> struct TakesNumber<T, std::void_t<decltype(&Record<T>::from_number)>> : std::true_type {};
template <class T> std::string name_of() {
  return std::string("a ") + Record<T>::name + (TakesNumber<T>::value ? " or its number" : "");
}
} // namespace detail

// The wrappers of core are records of their own in Python.
struct SourcedTag;
struct ValidatedTag;

template <class T> Object to_python(const T& value);

/// A new NumPy array with these numbers; one axis where `columns` is 0.
Object array_of(const std::vector<double>& numbers, std::size_t rows, std::size_t columns);

/// A record from its fields, which are taken over.
template <std::size_t N> Object record_of(const PythonClass& record, std::array<Object, N> fields) {
  PyObject* values[N];
  for (std::size_t i = 0; i < N; ++i) values[i] = fields[i].get();
  return Object(new_record(record, values));
}

template <class List> Object tuple_of(const List& list) {
  Object tuple(PyTuple_New(static_cast<Py_ssize_t>(list.size())));
  Py_ssize_t i = 0;
  for (const auto& entry : list) PyTuple_SET_ITEM(tuple.get(), i++, to_python(entry).release());
  return tuple;
}

template <class T> Object record_to_python(const T& value) {
  std::array<Object, Record<T>::count> fields;
  std::size_t i = 0;
  Record<T>::each(value, [&](const auto& field) { fields[i++] = to_python(field); });
  return record_of(record_class<T>, std::move(fields));
}

inline Object none() { return Object(Py_NewRef(Py_None)); }
inline Object text_to_python(std::string_view text) {
  return Object(PyUnicode_FromStringAndSize(text.data(), static_cast<Py_ssize_t>(text.size())));
}

template <class T> Object to_python(const T& value) {
  if constexpr (std::is_same_v<T, bool>) {
    return Object(PyBool_FromLong(value));
  } else if constexpr (std::is_integral_v<T>) {
    return Object(PyLong_FromLongLong(static_cast<long long>(value)));
  } else if constexpr (std::is_same_v<T, double>) {
    return Object(PyFloat_FromDouble(value));
  } else if constexpr (detail::IsQuantity<T>::value) {
    return Object(PyFloat_FromDouble(value.value()));
  } else if constexpr (std::is_convertible_v<T, std::string_view>) {
    if constexpr (std::is_pointer_v<T>) {
      if (value == nullptr) return none();
    }
    return text_to_python(std::string_view(value));
  } else if constexpr (std::is_enum_v<T>) {
    return Object(Py_NewRef(enumeration_class<T>.members.at(static_cast<std::size_t>(value))));
  } else if constexpr (std::is_pointer_v<T>) {
    return value == nullptr ? none() : to_python(*value);
  } else if constexpr (detail::IsOptional<T>::value) {
    return value ? to_python(*value) : none();
  } else if constexpr (detail::IsDatum<T>::value) {
    return value.known() ? to_python(value.stated()) : none();
  } else if constexpr (detail::IsSourced<T>::value) {
    return record_of<2>(record_class<SourcedTag>, {to_python(value.value), to_python(value.source)});
  } else if constexpr (detail::IsValidated<T>::value) {
    return record_of<2>(record_class<ValidatedTag>, {to_python(value.value), to_python(value.outside)});
  } else if constexpr (detail::IsList<T>::value) {
    return tuple_of(value);
  } else if constexpr (detail::IsTable<T>::value) {
    return array_of(value.numbers, value.rows, value.columns);
  } else if constexpr (std::is_same_v<T, std::monostate>) {
    return none();
  } else if constexpr (detail::IsVariant<T>::value) {
    return std::visit([](const auto& one) { return to_python(one); }, value);
  } else {
    return record_to_python(value);
  }
}

template <class T> T read(PyObject* value, Place place);

/// What a record keeps of a value that was read: numbers and names in one form, lists as tuples, objects as they are.
template <class T> Object as_kept(const T& value, PyObject* given) {
  if constexpr (detail::IsList<T>::value) {
    return Object(PySequence_Tuple(given));
  } else if constexpr (std::is_arithmetic_v<T> || std::is_enum_v<T> || detail::IsQuantity<T>::value ||
                       detail::IsSourced<T>::value || detail::IsDatum<T>::value) {
    return to_python(value);
  } else {
    return Object(Py_NewRef(given));
  }
}

/// Hands out the fields of a record object in order.
class Fields {
public:
  Fields(PyObject* record, const PythonClass& type, const char* function)
      : record_(record), type_(&type), function_(function) {}
  /// Fields as a user gives them; what is read from them goes into the list `read`.
  Fields(PyObject* const* values, const char* function, std::vector<Object>& read)
      : values_(values), function_(function), read_(&read) {}

  template <class T> T next(const char* name, const char* unit) {
    const Place place{function_, name, unit};
    if (values_ != nullptr) {
      PyObject* const given = values_[index_++];
      const T value = read<T>(given, place);
      read_->push_back(as_kept(value, given));
      return value;
    }
    const Object field(PyObject_GetAttr(record_, type_->names.at(index_++)));
    return read<T>(field.get(), place);
  }

private:
  PyObject* record_ = nullptr;
  const PythonClass* type_ = nullptr;
  PyObject* const* values_ = nullptr;
  const char* function_;
  std::vector<Object>* read_ = nullptr;
  std::size_t index_ = 0;
};

template <class T> bool is_record(PyObject* value) {
  return record_class<T>.type != nullptr &&
         PyObject_TypeCheck(value, reinterpret_cast<PyTypeObject*>(record_class<T>.type));
}

template <class T> T read_list(PyObject* value, Place place) {
  if (PyUnicode_Check(value) || PyBytes_Check(value)) fail_type(place, value, "a list");
  PyObject* items = PySequence_Fast(value, "");
  if (items == nullptr) {
    PyErr_Clear();
    fail_type(place, value, "a list");
  }
  const Object sequence(items);
  T list;
  for (Py_ssize_t i = 0; i < PySequence_Fast_GET_SIZE(items); ++i) {
    const std::string parameter = std::string(place.parameter) + "[" + std::to_string(i) + "]";
    list.push_back(read<typename detail::ListEntry<T>::type>(PySequence_Fast_GET_ITEM(items, i),
                                                             {place.function, parameter.c_str(), place.unit}));
  }
  return list;
}

template <class V, std::size_t I = 0> V read_variant(PyObject* value, Place place, const std::string& expected = {}) {
  if constexpr (I == std::variant_size_v<V>) {
    fail_type(place, value, expected);
  } else {
    using T = std::variant_alternative_t<I, V>;
    bool fits = false;
    const char* name = "a number";
    if constexpr (std::is_enum_v<T>) {
      fits = PyUnicode_Check(value);
      name = Enumeration<T>::name;
    } else if constexpr (std::is_same_v<T, std::monostate>) {
      fits = value == Py_None;
      name = "None";
    } else if constexpr (std::is_same_v<T, double>) {
      fits = !PyUnicode_Check(value);
    } else if constexpr (std::is_same_v<T, std::string>) {
      fits = PyUnicode_Check(value);
      name = "a name";
    } else {
      fits = is_record<T>(value);
      name = Record<T>::name;
    }
    if (fits) return V(read<T>(value, place));
    return read_variant<V, I + 1>(value, place, expected.empty() ? name : expected + " or " + name);
  }
}

/// One of several classes as their common base.
template <class B, class V> B as_base(const V& one_of) {
  return std::visit([](const auto& one) -> B { return one; }, one_of);
}

template <class T> T read(PyObject* value, Place place) {
  if constexpr (std::is_same_v<T, bool>) {
    return read_flag(value, place);
  } else if constexpr (std::is_unsigned_v<T>) {
    const int count = read_count(value, place);
    fieldshaft::check::not_negative(count, {place.function, place.parameter, ""});
    return static_cast<T>(count);
  } else if constexpr (std::is_integral_v<T>) {
    return static_cast<T>(read_count(value, place));
  } else if constexpr (std::is_same_v<T, std::monostate>) {
    return {};
  } else if constexpr (std::is_same_v<T, double>) {
    return read_number(value, place);
  } else if constexpr (detail::IsQuantity<T>::value) {
    return T::from_value(read_number(value, place));
  } else if constexpr (std::is_same_v<T, std::string>) {
    return read_text(value, place);
  } else if constexpr (std::is_same_v<T, const char*>) {
    return read_literal(value, place);
  } else if constexpr (detail::IsSourced<T>::value) {
    if (!is_record<SourcedTag>(value)) {
      return T{read<decltype(T::value)>(value, place), {"given by the user", fieldshaft::Standing::given}};
    }
    Fields fields(value, record_class<SourcedTag>, place.function);
    return T{fields.next<decltype(T::value)>(place.parameter, place.unit),
             fields.next<fieldshaft::Source>("source", "")};
  } else if constexpr (detail::IsDatum<T>::value) {
    if (value == Py_None) return T{};
    const auto stated = read<std::decay_t<decltype(std::declval<T>().stated())>>(value, place);
    return T(stated.value, stated.source);
  } else if constexpr (std::is_enum_v<T>) {
    return static_cast<T>(read_name(value, place, Enumeration<T>::names, std::size(Enumeration<T>::names)));
  } else if constexpr (detail::IsOptional<T>::value) {
    if (value == Py_None) return std::nullopt;
    return read<typename T::value_type>(value, place);
  } else if constexpr (detail::IsList<T>::value) {
    return read_list<T>(value, place);
  } else if constexpr (detail::IsVariant<T>::value) {
    return read_variant<T>(value, place);
  } else {
    if constexpr (detail::TakesNumber<T>::value) {
      if (PyLong_Check(value) && !PyBool_Check(value)) return Record<T>::from_number(read_count(value, place));
    }
    if (!is_record<T>(value)) fail_type(place, value, detail::name_of<T>());
    Fields fields(value, record_class<T>, place.function);
    return Record<T>::make(fields);
  }
}

} // namespace fieldshaft_python
