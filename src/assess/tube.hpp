#pragma once
// The section and steel of a telescoping member.

#include "assess/steel.hpp"

#include <fieldshaft/shaft.hpp>

#include <optional>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// The section of the telescoping member, or the entry that is missing.
struct TubeOfCase {
  std::optional<Section> section;
  ResolvedSteel steel;
  std::vector<std::string> missing;
};

/// The member whose entries are `tube` and `tube_steel` below a path that ends with a dot.
TubeOfCase resolve_tube(const TubeProfile& tube, const SteelChoice& steel, const std::string& path);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
