// Fouling: distances against a dense search, and the least clearance against random attitudes.

#include <fieldshaft/driveline.hpp>

#include "close.hpp"
#include "random.hpp"

using namespace fieldshaft;

namespace {

using Vector = Eigen::Vector3d;

Vector any_point(RandomInputs& random) { return {random.between(-1, 1), random.between(-1, 1), random.between(-1, 1)}; }

/// Least distance over a grid of points of both segments: never below the true one, above it by at most the step.
double dense_distance(const detail::Segment& a, const detail::Segment& b, int steps) {
  double least = 1e9;
  for (int i = 0; i <= steps; ++i) {
    for (int j = 0; j <= steps; ++j) {
      const Vector p = a.from + (double(i) / steps) * (a.to - a.from);
      const Vector q = b.from + (double(j) / steps) * (b.to - b.from);
      least = std::min(least, (p - q).norm());
    }
  }
  return least;
}

struct Yard {
  Driveline driveline;
  Position pin;
  AttitudeRange range;
  Surroundings around;
};

Yard any_yard(RandomInputs& random) {
  Yard y;
  y.driveline.front_joint = metres(0.1);
  y.driveline.rear_joint = metres(0.1);
  y.driveline.input =
      Position(metres(-random.between(0.6, 1.0)), metres(random.between(-0.1, 0.1)), metres(random.between(0.2, 0.5)));
  y.pin = Position(metres(-random.between(0.35, 0.5)), metres(random.between(-0.05, 0.05)),
                   metres(-random.between(0.2, 0.4)));
  y.range = {either_side(degrees(random.between(10, 60))),
             either_side(degrees(random.between(2, 10))),
             either_side(degrees(random.between(2, 8))),
             {}};
  y.around.guard_radius = millimetres(80);
  y.around.on_tractor = {{Position(metres(0.3), Length{}, y.pin.up()), y.pin, millimetres(25)}};
  y.around.on_implement = {{Position(), Position(metres(-2), metres(0.4), metres(0.05)), millimetres(40)},
                           {Position(), Position(metres(-2), metres(-0.4), metres(0.05)), millimetres(40)}};
  for (const double side : {1.0, -1.0})
    y.around.tyres.push_back(
        {Position(metres(0.4), side * metres(random.between(0.7, 1.0)), metres(0.1)), metres(0.8), metres(0.45)});
  return y;
}

double clearance_at(const Yard& y, const Attitude& a) {
  const Pose pose{y.pin, a};
  const detail::Segment shaft{front_joint_position(y.driveline).metres(),
                              in_tractor(pose, rear_joint_position(y.driveline)).metres()};
  const double guard = y.around.guard_radius.value();
  double least = 1e9;
  for (const Rod& rod : y.around.on_tractor)
    least = std::min(least, detail::segment_distance(shaft, {rod.from.metres(), rod.to.metres()}) - guard -
                                rod.radius.value());
  for (const Tyre& tyre : y.around.tyres) least = std::min(least, detail::tyre_distance(tyre, shaft) - guard);
  for (const Rod& rod : y.around.on_implement) {
    const detail::Segment beam{in_tractor(pose, rod.from).metres(), in_tractor(pose, rod.to).metres()};
    least = std::min(least, detail::segment_distance(shaft, beam) - guard - rod.radius.value());
    for (const Tyre& tyre : y.around.tyres)
      least = std::min(least, detail::tyre_distance(tyre, beam) - rod.radius.value());
  }
  return least;
}

} // namespace

TEST_CASE("distance of segments: never above a dense search, never below it by more than its step") {
  RandomInputs random;
  for (int i = 0; i < 400; ++i) {
    detail::Segment a{any_point(random), any_point(random)};
    detail::Segment b{any_point(random), any_point(random)};
    if (i % 4 == 0) b.to = b.from + random.between(-2, 2) * (a.to - a.from); // parallel
    if (i % 7 == 0) a.to = a.from;                                           // a point
    constexpr int steps = 60;
    const double dense = dense_distance(a, b, steps);
    const double step = ((a.to - a.from).norm() + (b.to - b.from).norm()) / steps;
    const double found = detail::segment_distance(a, b);
    CHECK(found <= dense + 1e-12);
    CHECK(found >= dense - step);
  }
}

TEST_CASE("least clearance: no attitude has less") {
  RandomInputs random;
  int escapes = 0;
  int open = 0;
  for (int i = 0; i < 10; ++i) {
    const Yard y = any_yard(random);
    const Extreme<Length> least = least_clearance(y.driveline, y.pin, y.range, y.around, millimetres(10), 50000);
    CHECK(least.lower <= least.value);
    CHECK(std::abs(clearance_at(y, least.at) - least.value.value()) < 1e-8);
    open += least.proved ? 0 : 1;
    for (int j = 0; j < 4000; ++j) {
      const auto pick = [&random](const AngleRange& r) { return r.low + random.between(0, 1) * (r.high - r.low); };
      escapes += clearance_at(y, {pick(y.range.yaw), pick(y.range.pitch), pick(y.range.roll)}) < least.lower.value();
    }
  }
  CHECK(escapes == 0);
  MESSAGE("searches that ended before their gap: " << open << " of 10");
  CHECK(open <= 5); // a bound by slopes alone is slow where the least lies inside the range
}

TEST_CASE("turn limit with surroundings: no attitude up to it has less clearance") {
  RandomInputs random;
  int fouled = 0;
  for (int i = 0; i < 3; ++i) {
    Yard y = any_yard(random);
    y.range.yaw = either_side(degrees(80));
    DrivelineLimits limits;
    limits.front_angle = degrees(80);
    const auto turns =
        turn_limit(y.driveline, y.pin, y.range, limits, std::optional<Surroundings>(y.around), millimetres(20));
    CHECK(turns.valid());
    const auto unknown = turn_limit(y.driveline, y.pin, y.range, limits, std::nullopt, millimetres(20));
    CHECK(unknown.outside == outside_unknown_surroundings);
    CHECK(turns.value.left.allowed <= unknown.value.left.allowed);
    fouled += turns.value.left.kind == LimitKind::clearance ? 1 : 0;
    if (!turns.value.left.straight_ahead) continue;
    for (int j = 0; j < 3000; ++j) {
      const auto pick = [&random](const AngleRange& r) { return r.low + random.between(0, 1) * (r.high - r.low); };
      const Attitude a{-random.between(0, 1) * turns.value.left.allowed, pick(y.range.pitch), pick(y.range.roll)};
      CHECK(clearance_at(y, a) >= 0.02 - 1e-8);
    }
  }
  CHECK(fouled > 0);
}

TEST_CASE("no position of a linkage brings driveline and links nearer than the least clearance says") {
  RandomInputs random;
  for (int i = 0; i < 12; ++i) {
    ThreePointLinkage linkage;
    linkage.lower_pivot_behind = metres(random.between(-0.3, -0.1));
    linkage.lower_pivot_below = metres(random.between(0.1, 0.3));
    linkage.lower_link = metres(random.between(0.8, 1.0));
    linkage.top_pivot_behind = metres(random.between(-0.2, -0.1));
    linkage.top_pivot_below = metres(random.between(-0.4, -0.2));
    linkage.top_link = metres(random.between(0.65, 0.8));
    linkage.mast_height = metres(random.between(0.5, 0.7));
    Driveline driveline;
    driveline.front_joint = driveline.rear_joint = metres(0.06);
    driveline.input = Position(metres(-random.between(0.3, 0.6)), metres(random.between(-0.1, 0.1)), metres(0.25));
    MountedRange range;
    range.lift = {metres(-0.3), metres(random.between(0.0, 0.3))};
    range.yaw = either_side(degrees(random.between(0.0, 3.0)));
    range.roll = either_side(degrees(random.between(0.0, 3.0)));
    const MountedSurroundings around{{millimetres(80), {}, {}, {}},
                                     LowerLinkRods{metres(0.45), metres(0.8), millimetres(35)}};
    const Extreme<Length> least = least_clearance(driveline, linkage, {}, range, around).least;
    double nearest = 1e9;
    for (int j = 0; j < 200; ++j) {
      Pose pose =
          mounted_pose(linkage, {metres(random.between(range.lift.low.value(), range.lift.high.value())), {}, {}});
      pose.attitude.yaw = radians(random.between(range.yaw.low.value(), range.yaw.high.value()));
      pose.attitude.roll = radians(random.between(range.roll.low.value(), range.roll.high.value()));
      const detail::Segment shaft{front_joint_position(driveline).metres(),
                                  in_tractor(pose, rear_joint_position(driveline)).metres()};
      for (const double side : {0.5, -0.5}) {
        const Position pivot(-linkage.lower_pivot_behind, side * around.links->pivot_span, -linkage.lower_pivot_below);
        const Position hitch = in_tractor(pose, Position(Length{}, side * around.links->hitch_span, Length{}));
        nearest = std::min(nearest, dense_distance(shaft, {pivot.metres(), hitch.metres()}, 40) - 0.115);
      }
    }
    CHECK(least.lower.value() <= nearest + 1e-9);
    CHECK(least.value.value() <= nearest + 0.012); // found to within the wanted gap of 10 mm
  }
}
