#pragma once
// Steels of a user checked when made.

#include <fieldshaft/materials.hpp>

namespace fieldshaft_python {

inline fieldshaft::Material checked_material(const fieldshaft::Material& material) {
  fieldshaft::check_material(material);
  return material;
}

} // namespace fieldshaft_python
