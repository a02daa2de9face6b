#pragma once
// Remedies in words for people and as JSON for programs.

#include <fieldshaft/advise/remedies.hpp>
#include <fieldshaft/units/table.hpp>

#include <string>

namespace fieldshaft {
inline namespace v0 {

/// Version of the JSON of remedies: the value of its "schema" entry.
inline constexpr const char* remedies_schema_version = "fieldshaft-remedies/1";

/// The sets of changes, cheapest first where they have prices, with what each heals and leaves; what heals each finding
/// by itself; what to state first; what was searched; the cautions.
std::string to_text(const Remedies& remedies, UnitStyle style = UnitStyle::metric);
std::string to_markdown(const Remedies& remedies, UnitStyle style = UnitStyle::metric);
std::string to_html(const Remedies& remedies, UnitStyle style = UnitStyle::metric);

/// The same content as one JSON document; every change with its entries in the case document, from and to.
std::string to_json(const Remedies& remedies, UnitStyle style = UnitStyle::metric);

} // namespace v0
} // namespace fieldshaft
