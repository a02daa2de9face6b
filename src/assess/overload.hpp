#pragma once
// The overload device against the work and the weakest part.

#include "assess/context.hpp"
#include "assess/loads.hpp"
#include "assess/stub.hpp"

#include <fieldshaft/overload.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Torque at which the telescoping member yields, or the entries without which it is not known.
struct TubeYield {
  Stated<Torque> torque;
  std::vector<std::string> missing;
};

/// The parts between tractor and implement whose yield is known, and the entries of those whose yield is not. Each
/// yields by the strictest school; the names are ids of the report's catalogue.
struct Chain {
  std::vector<ChainPart> parts;
  std::vector<std::string> missing;
  std::vector<std::string> rise_missing; ///< without which it is not known how joints raise the torque of the device
};

Chain chain_of(const Case& value, const Stub& stub, const TubeYield& tube);

/// The same chain where joints at an angle raise the device's torque on its way to the stub and to the parts between
/// the joints: each part then yields at less torque of the device.
Chain seen_from_device(Chain chain, const PeakLoad& at_stub, const PeakLoad& between);

void check_overload(const Case& value, const Stub& stub, const MeanLoad& mean, const Chain& chain, Findings& findings);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
