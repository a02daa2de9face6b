#pragma once
// What measurements within their tolerances make of a quantity over all positions of a state.

#include "assess/layout.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

enum class Uneven { difference, variation };

/// The greatest that was found, and the position.
struct Loosest {
  double value = 0.0;
  PoseAt pose;
};

/// Where measurements as stated make joint angles differ most says little about where they do within their tolerances:
/// joints that bend alike are the usual aim, and then the tolerances decide everywhere. Corners and middle of the
/// positions are looked at, and of a trailed machine the way from the worst of them, each with measurements moved one
/// after the other to the end of their tolerance that is worse. What is found is attained by a machine within the
/// tolerances; that none is worse is not said.
Loosest loosest(const Case& value, MachineState state, Uneven of);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
