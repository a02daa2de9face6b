#include "assess/interface.hpp"

#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

ResolvedInterface resolve(const Interface& interface) {
  ResolvedInterface resolved;
  if (interface.type) {
    resolved.stated = true;
    resolved.type = &pto_type(static_cast<int>(std::lround(*interface.type)));
    return resolved;
  }
  if (!interface.spline_count || !interface.diameter) return resolved;
  resolved.stated = true;
  const Length tolerance =
      interface.diameter->tolerance.value() > 0.0 ? interface.diameter->tolerance : pto_measuring_tolerance;
  const PtoIdentification found =
      identify_pto(static_cast<int>(std::lround(*interface.spline_count)), interface.diameter->value, tolerance);
  if (found.found()) resolved.type = found.candidates[0].type;
  resolved.ambiguous = found.ambiguous();
  if (found.candidates.empty() && !found.near_misses.empty()) resolved.near = found.near_misses[0].type;
  return resolved;
}

Fact interface_fact(const char* name, const ResolvedInterface& interface) {
  if (interface.type != nullptr) return fact(name, std::string(interface.type->name));
  return fact(name, PhraseId{interface.ambiguous ? "interface.ambiguous" : "interface.unknown"});
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
