#pragma once
// Loops by hand for formulas of joints that the library computes for many numbers at once.

#include <fieldshaft/dynamics/pair_ratios.hpp>

#include <cstdint>

namespace fieldshaft_python {

/// One pair of joints at many rotations in a row: true if that is what the run is, and it is done. False, with nothing
/// of use written, for every other run and for numbers that the formula's own loop is to name.
inline bool pair_speed_ratios(const Run& run) {
  enum { front, rear, phase, rotation };
  const auto aligned = [](const char* data) { return reinterpret_cast<std::uintptr_t>(data) % alignof(double) == 0; };
  const bool one_pair = run.strides[front] == 0 && run.strides[rear] == 0 && run.strides[phase] == 0;
  if (!one_pair || run.strides[rotation] != Py_ssize_t{sizeof(double)} || !aligned(run.inputs[rotation])) return false;
  static_assert(sizeof(Slot) == sizeof(double));
  const auto angle = [&](int input) { return fieldshaft::radians(detail::load(run.inputs[input])); };
  try {
    fieldshaft::joint_pair_speed_ratios(angle(front), angle(rear), angle(phase),
                                        reinterpret_cast<const double*>(run.inputs[rotation]), &run.outputs[0]->number,
                                        run.size);
  } catch (const fieldshaft::InputError&) {
    return false;
  }
  return true;
}

} // namespace fieldshaft_python
