#pragma once
// Whether a changed case has become worse than the one that it comes from.

#include <fieldshaft/assess/finding.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Whether a finding is worse than the one of the same check and part in the base: by its status, by more of a stop, by
/// clearly more uneven running, or because data are missing that were not. A check that did not apply before may now
/// caution; it may not stop or be unknown.
bool is_worse(const Finding& after, const Assessment& base);

/// The first finding that is worse than in the base: a stop before others; none where nothing is.
const Finding* worsened(const Assessment& after, const Assessment& base);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
