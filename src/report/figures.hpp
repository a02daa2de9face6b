#pragma once
// The figures of a finding in words: value, limit, room between them.

#include <fieldshaft/assess/finding.hpp>
#include <fieldshaft/units/table.hpp>

#include <string>

namespace fieldshaft {
inline namespace v0 {
namespace rendering {

/// "884 N·m"; empty for a finding without a number. Printed to more places where it would be rounded onto its limit.
std::string value_text(const Finding& finding, UnitStyle style);

/// "at most 25.0°", or both limits where schools or editions differ: "caution above 15.0°, stop above 25.0°".
std::string limit_text(const Finding& finding, UnitStyle style);

/// "17 % in hand" or "3.1 % beyond"; empty where there is no measure of it.
std::string room_text(const Finding& finding);

/// All three: "884 N·m (limit: at most 1061 N·m; 17 % in hand)".
std::string figures_text(const Finding& finding, UnitStyle style);

/// "Metric units".
std::string units_text(UnitStyle style);

/// "ISO 6489-3, drawbar positions [from memory, verify]".
std::string source_text(const Source& source);

} // namespace rendering
} // namespace v0
} // namespace fieldshaft
