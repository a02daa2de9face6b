#pragma once
// Life of the stub.

#include "assess/context.hpp"
#include "assess/loads.hpp"
#include "assess/stub.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// `angle` is the joint angle at the stub in work.
void check_fatigue(const Case& value, const Stub& stub, const MeanLoad& mean, const Stated<Angle>& angle,
                   Findings& findings);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
