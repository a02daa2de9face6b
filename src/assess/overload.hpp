#pragma once
// The overload device against the work and the weakest part.

#include "assess/context.hpp"
#include "assess/loads.hpp"
#include "assess/stub.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// `tube_yield` is the torque at which the telescoping member yields, if it is known.
void check_overload(const Case& value, const Stub& stub, const MeanLoad& mean, const Stated<Torque>& tube_yield,
                    Findings& findings);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
