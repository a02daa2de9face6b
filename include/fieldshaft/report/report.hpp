#pragma once
// An assessment in words for people and as JSON for programs.

#include <fieldshaft/assess/finding.hpp>
#include <fieldshaft/units/table.hpp>

#include <string>

namespace fieldshaft {
inline namespace v0 {

/// Version of the JSON report: the value of its "schema" entry.
inline constexpr const char* report_schema_version = "fieldshaft-report/1";

/// A plain-text report: verdict first, then what to change, every finding with number, limit, reason and source,
/// what was not examined, and the cautions.
std::string to_text(const Assessment& assessment, UnitStyle style = UnitStyle::metric);

/// The same content as one JSON document, SI numbers and text side by side.
std::string to_json(const Assessment& assessment, UnitStyle style = UnitStyle::metric);

} // namespace v0
} // namespace fieldshaft
