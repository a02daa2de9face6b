#pragma once
// The study of a farm in words for people and as JSON for programs.

#include <fieldshaft/advise/farm.hpp>
#include <fieldshaft/units/table.hpp>

#include <string>

namespace fieldshaft {
inline namespace v0 {

/// Version of the JSON of a farm study: the value of its "schema" entry.
inline constexpr const char* farm_report_schema_version = "fieldshaft-farm-report/1";

/// One page to print: what runs with what, what stands still when a tractor is down, the fewest changes for full
/// backup, whether 1000 is needed as well, what pays, and the cautions.
std::string to_text(const FarmStudy& study, UnitStyle style = UnitStyle::metric);
std::string to_markdown(const FarmStudy& study, UnitStyle style = UnitStyle::metric);
std::string to_html(const FarmStudy& study, UnitStyle style = UnitStyle::metric);

/// The same content as one JSON document.
std::string to_json(const FarmStudy& study, UnitStyle style = UnitStyle::metric);

} // namespace v0
} // namespace fieldshaft
