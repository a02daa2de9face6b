#pragma once
// Cases as arguments, and answers whose zeros stand for what is not known.

#include <fieldshaft/assess.hpp>

#include <optional>

namespace fieldshaft_python {

/// The case behind a Python object that read_case made; see documents.cpp.
template <> fieldshaft::Case read<fieldshaft::Case>(PyObject* value, Place place);

template <class T> std::optional<T> unless_zero(const T& value) {
  return value == T{} ? std::nullopt : std::optional<T>(value);
}
/// A season of no hours saves nothing; without a figure for the hour nothing is known.
inline std::optional<double> litres_of(const fieldshaft::EconomyAnswer& answer) {
  return answer.saved == fieldshaft::VolumeRate{} ? std::nullopt : std::optional(answer.litres_a_season);
}

} // namespace fieldshaft_python
