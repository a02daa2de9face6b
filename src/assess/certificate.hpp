#pragma once
// What was proved of the driveline, as an assessment carries it.

#include "assess/geometry.hpp"

#include <fieldshaft/assess/envelope.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// The entry of the case document that holds a measurement of a trailed driveline.
const char* entry_of(Measurement measurement);

std::vector<StateEnvelope> envelopes_of(const Case& value, const DrivelineOverRange& range);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
