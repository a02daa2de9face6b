#include "assess/high_idle.hpp"

#include "assess/torsion.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

Finding high_idle_unknown(Check check, const Case& value) {
  return not_known(check, "high_idle.unstated", high_idle_missing(value));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
