#pragma once
// A formula as Python calls it: scalars straight through, arrays broadcast and looped over without the interpreter.

#include "python.hpp"

#include <algorithm>
#include <cstring>
#include <tuple>

namespace fieldshaft_python {

/// A number and a count broadcast, an object stays the same for all elements.
enum class Role : std::uint8_t { number, count, object };

struct Parameter {
  const char* name;
  const char* unit;
  Role role;
};

/// A value of a result as it leaves the loop: always eight bytes.
enum class Channel : std::uint8_t { number, count, flag, text };

union Slot {
  double number;
  std::int64_t count;
  std::int64_t flag;
  const char* text;
};

namespace detail {

template <class T> constexpr std::size_t channel_count() {
  if constexpr (IsValidated<T>::value) {
    return channel_count<decltype(T::value)>() + 1;
  } else if constexpr (Record<T>::known) {
    std::size_t sum = 0;
    Record<T>::each_type([&](auto type) { sum += channel_count<typename decltype(type)::type>(); });
    return sum;
  } else {
    return 1;
  }
}

template <class T> void list_channels(Channel*& channel) {
  if constexpr (IsValidated<T>::value) {
    list_channels<decltype(T::value)>(channel);
    *channel++ = Channel::text;
  } else if constexpr (Record<T>::known) {
    Record<T>::each_type([&](auto type) { list_channels<typename decltype(type)::type>(channel); });
  } else {
    *channel++ = std::is_same_v<T, bool>          ? Channel::flag
                 : std::is_integral_v<T>          ? Channel::count
                 : std::is_same_v<T, const char*> ? Channel::text
                                                  : Channel::number;
  }
}

template <class T> void store(const T& value, Slot*& slot) {
  if constexpr (std::is_same_v<T, bool>) {
    (slot++)->flag = value ? 1 : 0;
  } else if constexpr (std::is_integral_v<T>) {
    (slot++)->count = value;
  } else if constexpr (std::is_same_v<T, double>) {
    (slot++)->number = value;
  } else if constexpr (IsQuantity<T>::value) {
    (slot++)->number = value.value();
  } else if constexpr (std::is_same_v<T, const char*>) {
    (slot++)->text = value;
  } else if constexpr (IsValidated<T>::value) {
    store(value.value, slot);
    store(value.outside, slot);
  } else {
    Record<T>::each(value, [&](const auto& field) { store(field, slot); });
  }
}

/// The Python result from one Python value for each channel, which are borrowed.
template <class T> Object pack(PyObject**& values) {
  if constexpr (IsValidated<T>::value) {
    Object value = pack<decltype(T::value)>(values);
    Object outside(Py_NewRef(*values++));
    std::array<Object, 2> fields;
    fields[0] = std::move(value);
    fields[1] = std::move(outside);
    return record_of(record_class<ValidatedTag>, std::move(fields));
  } else if constexpr (Record<T>::known) {
    std::array<Object, Record<T>::count> fields;
    std::size_t i = 0;
    Record<T>::each_type([&](auto type) { fields[i++] = pack<typename decltype(type)::type>(values); });
    return record_of(record_class<T>, std::move(fields));
  } else {
    return Object(Py_NewRef(*values++));
  }
}

inline double load(const char* from) noexcept {
  double value;
  std::memcpy(&value, from, sizeof value);
  return value;
}

} // namespace detail

/// Carries a type to `each_type`.
template <class T> struct Type { using type = T; };

/// A whole number for a parameter that counts; InputError otherwise.
int checked_count(double value, const char* function, const char* parameter);

/// A quantity for a formula of C++ that only puts data together and leaves their check to those who use them.
template <class Q> Q finite(Q value, const char* function, const char* parameter, const char* unit) {
  fieldshaft::check::finite(value.value(), {function, parameter, unit});
  return value;
}
template <class Q> Q positive(Q value, const char* function, const char* parameter, const char* unit) {
  fieldshaft::check::positive(value.value(), {function, parameter, unit});
  return value;
}

/// What the loop of a formula works on: for each number parameter where it starts and how far apart its elements lie.
struct Run {
  const char* const* inputs;
  const Py_ssize_t* strides;
  Slot* const* outputs;
  std::size_t size;
  std::size_t at = 0; ///< the element that is being worked on; of use after an exception
};

/// A formula with its types erased.
struct Formula {
  const char* name;
  const Parameter* parameters;
  std::size_t parameter_count;
  std::size_t number_count;
  std::size_t channel_count;
  PyObject* (*scalar)(const double* numbers, PyObject* const* arguments);
  void (*prepare)(PyObject* const* arguments, void* storage);
  void (*run)(const void* storage, Run& run);
  void (*discard)(void* storage);
  void (*list_channels)(Channel* channels);
  PyObject* (*pack)(PyObject** values);
  std::size_t storage;
};

template <class F, class = void> struct HasLoop : std::false_type {};
template <class F> struct HasLoop<F, std::void_t<decltype(F::loop(std::declval<const Run&>()))>> : std::true_type {};

/// F is generated: `name`, `parameters`, `numbers`, `Objects` (a tuple), `objects(arguments)`, `call(objects,
/// values)`; and `loop(run)` where the library has one of its own, which says whether it did the run.
template <class F> struct Erased {
  using Result = std::decay_t<decltype(F::call(std::declval<const typename F::Objects&>(), nullptr))>;
  static constexpr std::size_t channels = detail::channel_count<Result>();

  static PyObject* scalar(const double* numbers, PyObject* const* arguments) {
    return to_python(F::call(F::objects(arguments), numbers)).release();
  }
  static void prepare(PyObject* const* arguments, void* storage) {
    new (storage) typename F::Objects(F::objects(arguments));
  }
  static void discard(void* storage) {
    using Objects = typename F::Objects;
    static_cast<Objects*>(storage)->~Objects();
  }
  static void list_channels(Channel* channels_out) { detail::list_channels<Result>(channels_out); }
  static PyObject* pack(PyObject** values) { return detail::pack<Result>(values).release(); }

  static void run(const void* storage, Run& run) {
    using Objects = typename F::Objects;
    const Objects& objects = *static_cast<const Objects*>(storage);
    if constexpr (HasLoop<F>::value) {
      if (F::loop(run)) return;
    }
    const char* inputs[F::numbers]; // copies: what the loop stores could otherwise change where it loads from
    Py_ssize_t strides[F::numbers];
    Slot* outputs[channels];
    std::copy_n(run.inputs, F::numbers, inputs);
    std::copy_n(run.strides, F::numbers, strides);
    std::copy_n(run.outputs, channels, outputs);
    const std::size_t size = run.size;
    std::size_t i = 0;
    try {
      for (; i < size; ++i) {
        double numbers[F::numbers];
        for (std::size_t k = 0; k < F::numbers; ++k) {
          numbers[k] = detail::load(inputs[k] + static_cast<Py_ssize_t>(i) * strides[k]);
        }
        Slot slots[channels];
        Slot* slot = slots;
        detail::store(F::call(objects, numbers), slot);
        for (std::size_t k = 0; k < channels; ++k) outputs[k][i] = slots[k];
      }
    } catch (...) {
      run.at = i;
      throw;
    }
  }

  static inline const Formula formula{F::name,        F::parameters, std::size(F::parameters),
                                      F::numbers,     channels,      &scalar,
                                      &prepare,       &run,          &discard,
                                      &list_channels, &pack,         sizeof(typename F::Objects)};
};

/// Runs without the interpreter's lock.
class Released {
public:
  Released() : state_(PyEval_SaveThread()) {}
  Released(const Released&) = delete;
  Released& operator=(const Released&) = delete;
  ~Released() { PyEval_RestoreThread(state_); }

private:
  PyThreadState* state_;
};

template <class Code> auto unlocked(Code&& code) {
  const Released released;
  return code();
}

/// The entries of a generated file in the module: elementwise formulas, and functions of whole objects.
using Single = PyObject* (*)(PyObject* const* arguments);
void add_formula(PyObject* module, const Formula& formula);
void add_single(PyObject* module, const char* name, std::size_t parameter_count, Single function);

template <class F> void add(PyObject* module) { add_formula(module, Erased<F>::formula); }

/// A record that Python hands in, read and handed back as a tuple: checks and unifies what a user wrote.
template <class T> PyObject* checked_fields(PyObject* const* arguments) {
  std::vector<Object> read;
  Fields fields(arguments, Record<T>::name, read);
  static_cast<void>(Record<T>::make(fields));
  Object tuple(PyTuple_New(static_cast<Py_ssize_t>(read.size())));
  for (std::size_t i = 0; i < read.size(); ++i) {
    PyTuple_SET_ITEM(tuple.get(), static_cast<Py_ssize_t>(i), read[i].release());
  }
  return tuple.release();
}

template <class T> void announce_record() {
  announce(Record<T>::name, record_class<T>, Record<T>::names, Record<T>::count, false);
}
template <class T> void announce_enumeration() {
  announce(Enumeration<T>::name, enumeration_class<T>, Enumeration<T>::names, std::size(Enumeration<T>::names), true);
}

} // namespace fieldshaft_python
