#pragma once
// The overload device against the work and the weakest part.

#include "assess/context.hpp"
#include "assess/loads.hpp"
#include "assess/stub.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Torque at which the telescoping member yields, or the entries without which it is not known.
struct TubeYield {
  Stated<Torque> torque;
  std::vector<std::string> missing;
};

void check_overload(const Case& value, const Stub& stub, const MeanLoad& mean, const TubeYield& tube,
                    Findings& findings);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
