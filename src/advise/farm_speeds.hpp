#pragma once
// "Do I need 1000 as well?"

#include <fieldshaft/advise/farm.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace advising {

/// One answer for each nominal PTO speed that an implement is made for, or that a tractor or an option has.
std::vector<SpeedAnswer> speed_answers(const Farm& farm, const FarmStudy& study);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
