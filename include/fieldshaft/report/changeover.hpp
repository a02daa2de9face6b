#pragma once
// A changeover in words for people and as JSON for programs.

#include <fieldshaft/advise/changeover.hpp>
#include <fieldshaft/units/table.hpp>

#include <string>

namespace fieldshaft {
inline namespace v0 {

/// Version of the JSON of a changeover: the value of its "schema" entry.
inline constexpr const char* changeover_schema_version = "fieldshaft-changeover/1";

/// The steps in their order, to be ticked off on paper; what can go wrong, with where that is known from; the cautions.
std::string to_text(const Changeover& changeover, UnitStyle style = UnitStyle::metric);
std::string to_markdown(const Changeover& changeover, UnitStyle style = UnitStyle::metric);
std::string to_html(const Changeover& changeover, UnitStyle style = UnitStyle::metric);
std::string to_json(const Changeover& changeover, UnitStyle style = UnitStyle::metric);

} // namespace v0
} // namespace fieldshaft
