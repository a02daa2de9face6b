#pragma once
// Limits of a driveline that an envelope is held against.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

#include <optional>

namespace fieldshaft {
inline namespace v0 {

/// Limits of a driveline; what is not stated does not limit.
struct DrivelineLimits {
  std::optional<Angle> front_angle;
  std::optional<Angle> rear_angle;
  std::optional<Angle> difference;
  std::optional<Length> longest;  ///< greatest joint centre distance
  std::optional<Length> shortest; ///< least joint centre distance
};

namespace check {
inline void driveline_limits(const DrivelineLimits& limits, const char* function) {
  const auto angle = [function](const std::optional<Angle>& a, const char* name) {
    if (a) not_negative(a->value(), {function, name, "rad"});
  };
  angle(limits.front_angle, "limits.front_angle");
  angle(limits.rear_angle, "limits.rear_angle");
  angle(limits.difference, "limits.difference");
  if (limits.longest) positive(limits.longest->value(), {function, "limits.longest", "m"});
  if (limits.shortest) not_negative(limits.shortest->value(), {function, "limits.shortest", "m"});
  if (!limits.front_angle && !limits.rear_angle && !limits.difference && !limits.longest && !limits.shortest)
    fail_input(function, "limits", "none stated", "at least one limit");
}
} // namespace check

} // namespace v0
} // namespace fieldshaft
