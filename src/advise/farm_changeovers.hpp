#pragma once
// What has to be changed on a tractor from one implement to the next.

#include <fieldshaft/advise/farm.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace advising {

/// One for each tractor, stub and speed that a working pair needs and that is not out and engaged now.
std::vector<FarmChangeover> changeovers_of(const Farm& farm, const FarmStudy& study);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
