#pragma once
// Entries that are each right and cannot be right together.

#include <fieldshaft/case/read.hpp>

#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {

void find_contradictions(const Case& value, std::vector<CaseProblem>& problems);

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
