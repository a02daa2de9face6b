#pragma once
// The certificate of a driveline in sentences.

#include <fieldshaft/assess/finding.hpp>
#include <fieldshaft/units/table.hpp>

#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace rendering {

/// Bounds rounded outward, so that what is printed is as true as what was proved.
std::string rounded_up(Amount amount, UnitStyle style);
std::string rounded_down(Amount amount, UnitStyle style);

/// "Over all positions ... no joint angle above 33.7°, no length outside 555 to 755 mm ...": one sentence over all
/// states, then where each extreme occurs in each state and which measurement matters most. Empty where nothing was
/// proved.
std::vector<std::string> certificate(const Assessment& assessment, UnitStyle style);

} // namespace rendering
} // namespace v0
} // namespace fieldshaft
