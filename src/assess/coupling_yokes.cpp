#include "assess/coupling_yokes.hpp"

#include <fieldshaft/driveline/wide_angle.hpp>

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

constexpr Angle bent_most = degrees(120.0); ///< beyond it a joint shortens less again

/// Along the shaft, the most that a joint bent up to an angle shortens it.
Length along(Length yoke, Angle angle) {
  return yoke > Length{} ? wide_angle_shortening(yoke, std::min(angle, bent_most)) : Length{};
}

/// And across it.
Length across(Length yoke, Angle angle) {
  return yoke > Length{} ? yoke * (1.0 - math::cos(0.5 * angle)) * math::sin(0.5 * angle) : Length{};
}

/// By how much both crosses turn the line between the joint centres at most.
Angle turn_of(const CouplingYokes& yokes, Length distance, Angle front, Angle rear) {
  const double sine = static_cast<double>((across(yokes.front, front) + across(yokes.rear, rear)) / distance);
  return radians(std::asin(std::min(sine, 1.0)));
}

bool any(const CouplingYokes& yokes) { return yokes.front > Length{} || yokes.rear > Length{}; }

/// What joints that bend in one point become.
struct Bent {
  Length distance{};
  Angle front{};
  Angle rear{};
};

Bent with_crosses(Length distance, Angle front, Angle rear, const CouplingYokes& yokes) {
  // The line turns by what the crosses stand aside, and they stand aside the more the further the joints bend.
  const auto bent = [](Angle angle, Angle turn) { return std::min(angle + turn, degrees(180.0)); };
  Angle turn{};
  for (int round = 0; round < 100; ++round) {
    const Angle more = turn_of(yokes, distance, bent(front, turn), bent(rear, turn));
    const bool settled = more - turn < radians(1e-12);
    turn = more;
    if (settled) break;
  }
  front = bent(front, turn);
  rear = bent(rear, turn);
  return {distance * math::cos(turn) - along(yokes.front, front) - along(yokes.rear, rear), front, rear};
}

} // namespace

Length length_with_crosses(Length distance, Angle front, Angle rear, const CouplingYokes& yokes) {
  return any(yokes) ? with_crosses(distance, front, rear, yokes).distance : distance;
}

void allow_for_crosses(StateExtremes& extremes, const CouplingYokes& yokes) {
  if (!any(yokes)) return;
  const Bent bent = with_crosses(extremes.shortest.value, extremes.front.value, extremes.rear.value, yokes);
  extremes.front.value = bent.front;
  extremes.rear.value = bent.rear;
  extremes.shortest.value = bent.distance;
}

void narrow_for_crosses(DrivelineLimits& limits, const CouplingYokes& yokes) {
  if (!any(yokes)) return;
  const Angle front = *limits.front_angle;
  const Angle rear = *limits.rear_angle;
  const Angle turn = turn_of(yokes, *limits.shortest, front, rear);
  limits.front_angle = std::max(front - turn, Angle{});
  limits.rear_angle = std::max(rear - turn, Angle{});
  limits.shortest = (*limits.shortest + along(yokes.front, front) + along(yokes.rear, rear)) / math::cos(turn);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
