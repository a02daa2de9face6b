#pragma once
// The study of a farm as a page.

#include "report/page.hpp"

#include <fieldshaft/advise/farm.hpp>
#include <fieldshaft/units/table.hpp>

#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace pages {

Page page_of(const FarmStudy& study, UnitStyle style);

std::vector<std::string> names_of_pairs(const std::vector<PairNames>& pairs);

} // namespace pages
} // namespace v0
} // namespace fieldshaft
