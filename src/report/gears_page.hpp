#pragma once
// The gears of the tractor and its economy gear as a part of a page.

#include "report/page.hpp"

#include <fieldshaft/units/table.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace pages {

/// Which engine speed to set in each gear and which never to pass, and what economy PTO brings; nothing where the case
/// says nothing that any gear could be told of.
void add_gears(Page& page, const Assessment& assessment, UnitStyle style);

/// What the economy gear brings, and what a run-up in it does: one sentence each.
std::vector<std::string> economy_sentences(const EconomyAnswer& answer, UnitStyle style);

} // namespace pages
} // namespace v0
} // namespace fieldshaft
