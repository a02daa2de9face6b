#include "advise/quick.hpp"

#include "assess/checks.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace advising {

std::optional<Assessment> assessed_quickly(const Case& value, States& states) {
  try {
    return assessing::assess_over(value, states.over_range(value), assessing::Depth::for_search);
  } catch (const InputError&) { // such as a joint that a change moves past its shaft
    return std::nullopt;
  }
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
