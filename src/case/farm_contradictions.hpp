#pragma once
// Entries of a farm that cannot be right together.

#include <fieldshaft/case/farm.hpp>

#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {

void find_contradictions(const Farm& farm, std::vector<CaseProblem>& problems);

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
