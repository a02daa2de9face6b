#pragma once
// An assessment in words for people and as JSON for programs.

#include <fieldshaft/assess/finding.hpp>
#include <fieldshaft/units/table.hpp>

#include <string>

namespace fieldshaft {
inline namespace v0 {

/// Version of the JSON report: the value of its "schema" entry.
inline constexpr const char* report_schema_version = "fieldshaft-report/1";

/// A plain-text report, at most 100 characters wide: verdict first, then what to change and what to state, the
/// cautions, a table of all checks with value and limit, the reason of every finding, what was not examined, and the
/// sources as numbered notes.
std::string to_text(const Assessment& assessment, UnitStyle style = UnitStyle::metric);

/// The same page as Markdown (CommonMark with pipe tables).
std::string to_markdown(const Assessment& assessment, UnitStyle style = UnitStyle::metric);

/// The same page as one HTML document that needs nothing beside it and prints on A4 and US letter.
std::string to_html(const Assessment& assessment, UnitStyle style = UnitStyle::metric);

/// The same content as one JSON document, SI numbers and text side by side.
std::string to_json(const Assessment& assessment, UnitStyle style = UnitStyle::metric);

} // namespace v0
} // namespace fieldshaft
