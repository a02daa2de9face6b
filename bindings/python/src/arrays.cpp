#include "arrays.hpp"

#include <pybind11/numpy.h>

#include <algorithm>
#include <memory>

namespace py = pybind11;

namespace fieldshaft_python {

namespace {

using Numbers = py::array_t<double, py::array::forcecast>;

[[noreturn]] void fail_array(Place place, const std::string& what) {
  std::string text =
      std::string(place.function) + ": " + place.parameter + " " + what + "; expected a number or an array";
  if (*place.unit != '\0') text += std::string(" in ") + place.unit;
  PyErr_SetString(PyExc_TypeError, text.c_str());
  throw PythonError{};
}

/// Objects that NumPy would strip of what they know: units, masks.
void refuse_what_would_be_lost(PyObject* value, Place place) {
  if (is_quantity(value)) fail_type(place, value, "");
  if (PyBool_Check(value) || PyUnicode_Check(value) || PyBytes_Check(value) || value == Py_None) {
    fail_type(place, value, "a number or an array");
  }
  const py::handle object(value);
  if (py::hasattr(object, "mask") && py::hasattr(object, "filled")) {
    fail_array(place, "is a masked array; fill it or leave the masked elements out");
  }
  if (py::hasattr(object, "dtype") && py::hasattr(object.attr("dtype"), "units")) {
    fail_array(place, "is a column with units; fieldshaft.si takes plain numbers");
  }
  if (PyList_Check(value) || PyTuple_Check(value)) {
    for (const py::handle item : py::reinterpret_borrow<py::sequence>(object)) {
      if (is_quantity(item.ptr())) fail_type(place, item.ptr(), "");
    }
  }
}

Numbers as_numbers(PyObject* value, Place place) {
  refuse_what_would_be_lost(value, place);
  const py::array array = py::array::ensure(py::handle(value));
  if (!array) fail_array(place, "cannot be read as an array");
  const char kind = array.dtype().kind();
  // An empty list becomes an array of floats; an empty array of another kind holds nothing that could be wrong.
  if (kind != 'f' && kind != 'i' && kind != 'u') {
    fail_array(place, std::string("holds ") + (kind == 'b'   ? "truth values"
                                               : kind == 'O' ? "objects"
                                                             : "no real numbers"));
  }
  Numbers numbers = Numbers::ensure(array);
  if (!numbers) fail_array(place, "cannot be read as numbers");
  return numbers;
}

using Shape = std::vector<py::ssize_t>;

std::string text_of(const Shape& shape) {
  std::string text = "(";
  for (std::size_t i = 0; i < shape.size(); ++i) text += (i > 0 ? ", " : "") + std::to_string(shape[i]);
  return text + (shape.size() == 1 ? ",)" : ")");
}

Shape shape_of(const py::array& array) { return {array.shape(), array.shape() + array.ndim()}; }

struct Input {
  const Parameter* parameter;
  Numbers array;
  Shape strides; ///< in the broadcast shape, in bytes
};

/// The common shape; ValueError names every parameter that is an array.
Shape common_shape(const Formula& formula, const std::vector<Input>& inputs) {
  std::size_t axes = 0;
  for (const Input& input : inputs) axes = std::max(axes, static_cast<std::size_t>(input.array.ndim()));
  Shape shape(axes, 1);
  bool fits = true;
  for (const Input& input : inputs) {
    const Shape own = shape_of(input.array);
    const std::size_t lead = axes - own.size();
    for (std::size_t i = 0; i < own.size(); ++i) {
      if (shape[lead + i] == 1) {
        shape[lead + i] = own[i];
      } else if (own[i] != 1 && own[i] != shape[lead + i]) {
        fits = false;
      }
    }
  }
  if (fits) return shape;
  std::string text = std::string(formula.name) + ": shapes do not broadcast:";
  for (const Input& input : inputs) {
    if (input.array.ndim() > 0) text += std::string(" ") + input.parameter->name + " " + text_of(shape_of(input.array));
  }
  PyErr_SetString(PyExc_ValueError, text.c_str());
  throw PythonError{};
}

void set_strides(Input& input, const Shape& shape) {
  const auto own = static_cast<std::size_t>(input.array.ndim());
  const std::size_t lead = shape.size() - own;
  input.strides.assign(shape.size(), 0);
  for (std::size_t i = 0; i < own; ++i) {
    const auto axis = static_cast<py::ssize_t>(i);
    if (input.array.shape(axis) != 1) input.strides[lead + i] = input.array.strides(axis);
  }
}

/// The axes that are run through in one go: one run where every input lies in memory as the result does or stays put.
bool runs_flat(const std::vector<Input>& inputs, const Shape& shape) {
  return std::all_of(inputs.begin(), inputs.end(), [&](const Input& input) {
    if (input.array.size() == 1) return true;
    py::ssize_t expected = sizeof(double);
    for (std::size_t i = shape.size(); i-- > 0;) {
      if (shape[i] != 1 && input.strides[i] != expected) return false;
      expected *= shape[i];
    }
    return true;
  });
}

/// The place of an element as text: [3] or [1, 2], in the shape of one input.
std::string index_text(std::size_t element, const Shape& shape, const Input* input) {
  Shape index(shape.size());
  for (std::size_t i = shape.size(); i-- > 0;) {
    const auto length = static_cast<std::size_t>(shape[i]);
    index[i] = static_cast<py::ssize_t>(element % length);
    element /= length;
  }
  std::size_t first = 0;
  if (input != nullptr) {
    first = shape.size() - static_cast<std::size_t>(input->array.ndim());
    for (std::size_t i = first; i < shape.size(); ++i) {
      if (input->array.shape(static_cast<py::ssize_t>(i - first)) == 1) index[i] = 0;
    }
  }
  std::string text = "[";
  for (std::size_t i = first; i < index.size(); ++i) text += (i > first ? ", " : "") + std::to_string(index[i]);
  return text + "]";
}

/// The same error with the index of the element.
[[noreturn]] void fail_at(const fieldshaft::InputError& error, std::size_t element, const Shape& shape,
                          const std::vector<Input>& inputs) {
  std::string parameter = error.parameter();
  const auto found = std::find_if(inputs.begin(), inputs.end(),
                                  [&](const Input& input) { return parameter == input.parameter->name; });
  if (found == inputs.end()) {
    parameter += " (element " + index_text(element, shape, nullptr) + ")";
  } else if (found->array.ndim() > 0) {
    parameter += index_text(element, shape, &*found);
  }
  throw fieldshaft::InputError(error.function(), parameter, error.value(), error.allowed());
}

/// Objects of a formula in their own storage.
class Objects {
public:
  Objects(const Formula& formula, PyObject* const* arguments)
      : formula_(formula), storage_(new std::max_align_t[formula.storage / sizeof(std::max_align_t) + 1]) {
    formula.prepare(arguments, storage_.get());
  }
  Objects(const Objects&) = delete;
  Objects& operator=(const Objects&) = delete;
  ~Objects() { formula_.discard(storage_.get()); }
  const void* get() const noexcept { return storage_.get(); }

private:
  const Formula& formula_;
  std::unique_ptr<std::max_align_t[]> storage_;
};

/// Runs over all elements; the outer axes are stepped through here, the innermost by the formula's own loop.
void run_all(const Formula& formula, const void* objects, const std::vector<Input>& inputs, const Shape& shape,
             std::vector<Slot*> outputs) {
  const std::size_t count = inputs.size();
  std::vector<const char*> starts(count);
  Shape steps(count, 0);
  std::size_t size = 1;
  for (const py::ssize_t length : shape) size *= static_cast<std::size_t>(length);
  const bool flat = runs_flat(inputs, shape);
  const std::size_t inner = flat ? size : static_cast<std::size_t>(shape.back());
  for (std::size_t k = 0; k < count; ++k) {
    starts[k] = reinterpret_cast<const char*>(inputs[k].array.data());
    if (flat) {
      steps[k] = inputs[k].array.size() == 1 ? 0 : static_cast<py::ssize_t>(sizeof(double));
    } else {
      steps[k] = inputs[k].strides.back();
    }
  }
  Run run{starts.data(), steps.data(), outputs.data(), inner};
  Shape index(shape.size(), 0);
  for (std::size_t done = 0; done < size; done += inner) {
    try {
      formula.run(objects, run);
    } catch (const fieldshaft::InputError& error) {
      fail_at(error, done + run.at, shape, inputs);
    }
    for (Slot*& output : outputs) output += inner;
    for (std::size_t axis = shape.size() - (flat ? 0 : 1); !flat && axis-- > 0;) {
      for (std::size_t k = 0; k < count; ++k) starts[k] += inputs[k].strides[axis];
      if (++index[axis] < shape[axis]) break;
      index[axis] = 0;
      for (std::size_t k = 0; k < count; ++k) starts[k] -= inputs[k].strides[axis] * shape[axis];
    }
  }
}

py::object texts_to_python(const std::vector<const char*>& texts, const Shape& shape) {
  py::array array(py::dtype("O"), shape);
  auto** objects = static_cast<PyObject**>(array.mutable_data());
  for (std::size_t i = 0; i < texts.size(); ++i) {
    Py_XDECREF(objects[i]);
    objects[i] = to_python(texts[i]).release();
  }
  return array;
}

/// One array for each channel of the result.
class Outputs {
public:
  Outputs(const Formula& formula, const Shape& shape) : shape_(shape), kinds_(formula.channel_count) {
    formula.list_channels(kinds_.data());
    for (std::size_t i = 0; i < kinds_.size(); ++i) {
      if (kinds_[i] == Channel::number) {
        arrays_.push_back(py::array_t<double>(shape));
      } else {
        arrays_.push_back(py::array_t<std::int64_t>(shape));
      }
    }
  }

  std::vector<Slot*> slots() {
    std::vector<Slot*> result;
    for (py::array& array : arrays_) result.push_back(static_cast<Slot*>(array.mutable_data()));
    return result;
  }

  py::object value(std::size_t i) {
    switch (kinds_[i]) {
    case Channel::flag: return arrays_[i].attr("astype")("bool");
    case Channel::text: {
      const auto* slots = static_cast<const Slot*>(arrays_[i].data());
      std::vector<const char*> texts;
      for (py::ssize_t k = 0; k < arrays_[i].size(); ++k) texts.push_back(slots[k].text);
      return texts_to_python(texts, shape_);
    }
    case Channel::number:
    case Channel::count: break;
    }
    return arrays_[i];
  }

private:
  const Shape& shape_;
  std::vector<Channel> kinds_;
  std::vector<py::array> arrays_;
};

PyObject* pack(const Formula& formula, Outputs& outputs) {
  std::vector<py::object> values;
  std::vector<PyObject*> pointers;
  for (std::size_t i = 0; i < formula.channel_count; ++i) {
    values.push_back(outputs.value(i));
    pointers.push_back(values.back().ptr());
  }
  return formula.pack(pointers.data());
}

std::vector<Input> read_inputs(const Formula& formula, PyObject* const* arguments) {
  std::vector<Input> inputs;
  for (std::size_t i = 0; i < formula.parameter_count; ++i) {
    const Parameter& parameter = formula.parameters[i];
    if (parameter.role == Role::object) continue;
    inputs.push_back({&parameter, as_numbers(arguments[i], {formula.name, parameter.name, parameter.unit}), {}});
  }
  return inputs;
}

PyObject* broadcast(const Formula& formula, PyObject* const* arguments) {
  std::vector<Input> inputs = read_inputs(formula, arguments);
  const Shape shape = common_shape(formula, inputs);
  if (shape.empty()) { // NumPy scalars and arrays without axes count as scalars
    std::vector<double> numbers;
    numbers.reserve(inputs.size());
    for (const Input& input : inputs) numbers.push_back(*input.array.data());
    return formula.scalar(numbers.data(), arguments);
  }
  for (Input& input : inputs) set_strides(input, shape);
  const Objects objects(formula, arguments);
  Outputs outputs(formula, shape);
  {
    const std::vector<Slot*> slots = outputs.slots();
    const Released released;
    if (std::find(shape.begin(), shape.end(), 0) == shape.end()) run_all(formula, objects.get(), inputs, shape, slots);
  }
  return pack(formula, outputs);
}

/// Runs a piece of code that speaks to NumPy; its Python errors travel on as ours.
template <class Code> auto with_numpy(Code&& code) {
  try {
    return code();
  } catch (py::error_already_set& error) {
    error.restore();
    throw PythonError{};
  }
}

} // namespace

std::size_t Series::size() const noexcept {
  std::size_t product = 1;
  for (const Py_ssize_t length : shape) product *= static_cast<std::size_t>(length);
  return product;
}

Series read_series(PyObject* value, Place place, std::size_t axes) {
  return with_numpy([&] {
    using Packed = py::array_t<double, py::array::c_style | py::array::forcecast>;
    const Packed packed = Packed::ensure(as_numbers(value, place));
    if (static_cast<std::size_t>(packed.ndim()) != axes) {
      fail_array(place, "has " + std::to_string(packed.ndim()) + " axes where " + std::to_string(axes) + " is wanted");
    }
    Series series;
    series.data = packed.data();
    series.shape = shape_of(packed);
    series.owner = Object(Py_NewRef(packed.ptr()));
    return series;
  });
}

Object new_array(const std::vector<Py_ssize_t>& shape, double*& data) {
  return with_numpy([&] {
    py::array_t<double> array(shape);
    data = array.mutable_data();
    return Object(array.release().ptr());
  });
}

Object array_of(const std::vector<double>& numbers, std::size_t rows, std::size_t columns) {
  std::vector<Py_ssize_t> shape{static_cast<Py_ssize_t>(rows)};
  if (columns > 0) shape.push_back(static_cast<Py_ssize_t>(columns));
  double* data = nullptr;
  Object array = new_array(shape, data);
  std::copy(numbers.begin(), numbers.end(), data);
  return array;
}

PyObject* call_with_arrays(const Formula& formula, PyObject* const* arguments) {
  return with_numpy([&] { return broadcast(formula, arguments); });
}

} // namespace fieldshaft_python
