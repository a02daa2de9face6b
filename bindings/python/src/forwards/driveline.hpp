#pragma once
// Mirror images.

#include <fieldshaft/driveline.hpp>

#include <variant>

namespace fieldshaft_python {

/// Anything that lies to one side, as a mirror in the tractor's middle plane shows it.
using Mirrored = std::variant<fieldshaft::Position, fieldshaft::Direction, fieldshaft::Attitude, fieldshaft::Pose,
                              fieldshaft::AttitudeRange, fieldshaft::Driveline>;
template <class T> Mirrored mirrored_of(const T& item) { return fieldshaft::mirrored(item); }

} // namespace fieldshaft_python
