#pragma once
// What a record of a spline shows.

#include <fieldshaft/spline.hpp>

namespace fieldshaft_python {

/// The root with which an involute spline was made: a fillet at 30° shows in its depth, elsewhere it is the usual one.
inline fieldshaft::SplineRoot root_of(const fieldshaft::InvoluteSpline& spline) {
  const fieldshaft::InvoluteGeometry& sizes = spline.geometry();
  const bool thirty = sizes.pressure_angle < fieldshaft::degrees(31.0);
  const bool deep = sizes.shaft_minor < sizes.pitch_diameter - 1.6 * sizes.module;
  return thirty && deep ? fieldshaft::SplineRoot::fillet : fieldshaft::SplineRoot::usual;
}

} // namespace fieldshaft_python
