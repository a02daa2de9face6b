#pragma once
// The stub shaft of a case as the spline and section that carry its torque.

#include "assess/context.hpp"
#include "assess/interface.hpp"
#include "assess/steel.hpp"

#include <fieldshaft/spline.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

struct Stub {
  Stated<Spline> spline; ///< with its engaged length
  Length smallest{};     ///< diameter of the smallest section, root or retaining groove
  bool groove_governs = false;
  ResolvedSteel steel;
  std::vector<Source> sources;
  std::vector<std::string> missing;
  bool unknown_geometry = false; ///< the type is known, its sizes are not
};

Stub resolve_stub(const Case& value);

/// Diameter of the smallest section of a standard stub, wherever it lies: between the teeth or in the groove.
Length smallest_section(const PtoType& type);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
