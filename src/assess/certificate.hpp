#pragma once
// What was proved of the driveline, as an assessment carries it.

#include "assess/geometry.hpp"

#include <fieldshaft/assess/envelope.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

BranchEnvelopeOfCase branch_envelope_of(const std::string& name, bool driven, AmountRange fold,
                                        const StateExtremes& extremes);

WideAngleJoints wide_angle_joints_of(const Case& value);

/// `what_matters`: with the measurement that moves each extreme most.
std::vector<StateEnvelope> envelopes_of(const Case& value, const DrivelineOverRange& range, bool what_matters);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
