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

void allow_for_crosses(DrivelineEnvelope& envelope, const CouplingYokes& yokes) {
  if (!any(yokes)) return;
  const Bent bent = with_crosses(envelope.shortest.lower, envelope.front_angle.upper, envelope.rear_angle.upper, yokes);
  envelope.front_angle.upper = bent.front;
  envelope.rear_angle.upper = bent.rear;
  envelope.shortest.lower = bent.distance;
}

EnvelopeOptions options_within(const DrivelineLimits& limits, const CouplingYokes& yokes) {
  EnvelopeOptions options;
  options.with_speed_variation = false;
  if (!any(yokes)) {
    options.limits = limits;
    return options;
  }
  options.wanted = detail::WantedExtremes::all_but_difference;
  options.angle_gap = degrees(0.05);
  options.length_gap = millimetres(0.5);
  return options;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
