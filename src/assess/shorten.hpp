#pragma once
// What a cut does to a driveline.

#include <fieldshaft/case/case.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Every member shorter by one cut and both guard tubes by another, or longer by negative ones; the travel to a stop
/// goes with the members.
void shorten(DrivelineCase& line, Length members, Length guard_tubes);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
