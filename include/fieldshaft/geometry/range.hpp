#pragma once
// A range of attitudes: an interval of each angle, narrowed where the angles depend on each other.

#include <fieldshaft/geometry/attitude.hpp>

#include <vector>

namespace fieldshaft {
inline namespace v0 {

struct AngleRange {
  Angle low{};
  Angle high{};
};

/// The same to both sides of straight.
constexpr AngleRange either_side(Angle angle) noexcept { return {-angle, angle}; }

/// A joint limit of the three angles: yaw_share * yaw + pitch_share * pitch + roll_share * roll <= limit.
struct AngleCoupling {
  double yaw_share = 0.0;
  double pitch_share = 0.0;
  double roll_share = 0.0;
  Angle limit{};
};

/// Every attitude whose angles lie in their intervals and keep every coupling.
struct AttitudeRange {
  AngleRange yaw;
  AngleRange pitch;
  AngleRange roll;
  std::vector<AngleCoupling> couplings;
};

namespace check {

inline void angle_range(const AngleRange& range, const char* function, const char* parameter) {
  finite(range.low.value(), {function, parameter, "rad"});
  at_least(range.high.value(), range.low.value(), {function, parameter, "rad"});
}

/// Each interval ordered and within half a turn to either side; shares and limits finite.
inline void attitude_range(const AttitudeRange& range, const char* function) {
  const AngleRange* const ranges[] = {&range.yaw, &range.pitch, &range.roll};
  const char* const names[] = {"yaw", "pitch", "roll"};
  for (int i = 0; i < 3; ++i) {
    angle_range(*ranges[i], function, names[i]);
    within(ranges[i]->low.value(), -pi, pi, {function, names[i], "rad"});
    within(ranges[i]->high.value(), -pi, pi, {function, names[i], "rad"});
  }
  for (const AngleCoupling& coupling : range.couplings) {
    finite(coupling.yaw_share, {function, "coupling.yaw_share", ""});
    finite(coupling.pitch_share, {function, "coupling.pitch_share", ""});
    finite(coupling.roll_share, {function, "coupling.roll_share", ""});
    finite(coupling.limit.value(), {function, "coupling.limit", "rad"});
  }
}

} // namespace check

/// By how much a coupling is broken, 0 or less where it is kept [rad].
inline Angle excess(const AngleCoupling& coupling, const Attitude& attitude) noexcept {
  return coupling.yaw_share * attitude.yaw + coupling.pitch_share * attitude.pitch +
         coupling.roll_share * attitude.roll - coupling.limit;
}

/// True for an attitude of the range.
inline bool contains(const AttitudeRange& range, const Attitude& attitude) noexcept {
  const auto inside = [](const AngleRange& r, Angle a) { return a >= r.low && a <= r.high; };
  if (!inside(range.yaw, attitude.yaw) || !inside(range.pitch, attitude.pitch) || !inside(range.roll, attitude.roll))
    return false;
  for (const AngleCoupling& coupling : range.couplings) {
    if (excess(coupling, attitude) > Angle{}) return false;
  }
  return true;
}

/// The range with less roll in a turn: the whole roll interval straight ahead, `share` of it at full turn, evenly less
/// in between.
///
///   range  yaw from 0 or below to 0 or above, roll likewise
///   share  of the roll that is left at the ends of the yaw interval, from 0 to 1
/// Each end of roll R and each end of yaw Y gives the straight limit roll/R <= 1 - (1 - share) yaw/Y.
/// Source: definition. Example: yaw ±60°, roll ±10°, share 0.5: at 60° of yaw, and at -60°, ±5° of roll.
inline AttitudeRange with_less_roll_at_full_turn(AttitudeRange range, double share) {
  constexpr const char* name = "with_less_roll_at_full_turn";
  check::attitude_range(range, name);
  check::within(0.0, range.yaw.low.value(), range.yaw.high.value(), {name, "yaw", "rad"});
  check::within(0.0, range.roll.low.value(), range.roll.high.value(), {name, "roll", "rad"});
  check::within(share, 0.0, 1.0, {name, "share", ""});
  for (const Angle& yaw : {range.yaw.low, range.yaw.high}) {
    if (yaw == Angle{}) continue;
    for (const Angle& roll : {range.roll.low, range.roll.high}) {
      const double side = roll < Angle{} ? -1.0 : 1.0;
      const double slope = (1.0 - share) * math::abs(roll).value() / yaw.value();
      range.couplings.push_back({slope, 0.0, side, math::abs(roll)});
    }
  }
  return range;
}

/// The range as a mirror in the tractor's middle plane shows it, exactly.
inline AttitudeRange mirrored(AttitudeRange range) {
  range.yaw = {-range.yaw.high, -range.yaw.low};
  range.roll = {-range.roll.high, -range.roll.low};
  for (AngleCoupling& coupling : range.couplings) {
    coupling.yaw_share = -coupling.yaw_share;
    coupling.roll_share = -coupling.roll_share;
  }
  return range;
}

} // namespace v0
} // namespace fieldshaft
