#pragma once
// What has to be changed on a tractor from one implement to the next.

#include <fieldshaft/advise/farm.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace advising {

/// For each tractor: from the stub and speed that are out and engaged now to every other that a working pair needs, the
/// way back where something runs with what is out now, and from one of them to the next; apart for trailed and mounted
/// implements.
std::vector<FarmChangeover> changeovers_of(const Farm& farm, const FarmStudy& study);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
