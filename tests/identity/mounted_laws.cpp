// The certificate for mounted implements: bounds against random positions of random linkages.

#include <fieldshaft/driveline.hpp>

#include "close.hpp"
#include "random.hpp"

#include <algorithm>
#include <chrono>

using namespace fieldshaft;

namespace {

struct Mounted {
  Driveline driveline;
  ThreePointLinkage linkage;
  MountedRange range;
};

Mounted some_mounted(RandomInputs& random, bool moves_sideways) {
  Mounted m;
  ThreePointLinkage& l = m.linkage;
  l.lower_pivot_behind = millimetres(-random.between(100, 300));
  l.lower_pivot_below = millimetres(random.between(50, 250));
  l.lower_link = millimetres(random.between(750, 1000));
  l.top_pivot_behind = millimetres(-random.between(50, 250));
  l.top_pivot_below = millimetres(-random.between(250, 450));
  l.mast_height = millimetres(random.between(450, 700));
  l.mast_forward = millimetres(random.between(-80, 80));
  l.span = millimetres(825);
  l.convergence = millimetres(random.between(1800, 2400));
  l.top_link = top_link_for(l, millimetres(random.between(-150, 100)));
  if (random.whole(0, 2) == 0) l.coupler_depth = millimetres(100);
  m.driveline.front_joint = millimetres(random.between(60, 120));
  m.driveline.rear_joint = millimetres(random.between(60, 120));
  m.driveline.input = Position(-millimetres(random.between(600, 1200)), millimetres(random.between(-100, 100)),
                               millimetres(random.between(100, 500)));
  m.driveline.input_direction = Direction::ahead(Angle{}, degrees(random.between(-5, 5)));
  m.range.lift = {millimetres(random.between(-350, -50)), millimetres(random.between(0, 450))};
  if (moves_sideways) {
    m.range.sway = {millimetres(-random.between(0, 100)), millimetres(random.between(0, 100))};
    m.range.difference = {millimetres(-random.between(0, 60)), millimetres(random.between(0, 60))};
  }
  return m;
}

/// Some of the linkages drawn cannot close over their whole lift; those are drawn again.
Mounted any_mounted(RandomInputs& random, bool moves_sideways) {
  for (;;) {
    Mounted m = some_mounted(random, moves_sideways);
    const detail::SideView side(m.linkage);
    const detail::LinkageMotion motion(m.linkage, m.range);
    bool closes = true;
    for (int i = 0; i <= 40; ++i)
      closes = closes && side.at(motion.low[0] + i * (motion.high[0] - motion.low[0]) / 40).closes;
    if (closes) return m;
  }
}

Length any_length(RandomInputs& random, const LengthRange& range) {
  const int where = random.whole(0, 5);
  if (where == 0) return range.low;
  if (where == 1) return range.high;
  return range.low + random.between(0, 1) * (range.high - range.low);
}

int escapes_of(RandomInputs& random, const Mounted& m, const DrivelineEnvelope& e, int positions) {
  int escapes = 0;
  for (int i = 0; i < positions; ++i) {
    const LinkagePosition position{any_length(random, m.range.lift), any_length(random, m.range.sway),
                                   any_length(random, m.range.difference)};
    const DrivelineState s = driveline_at(m.driveline, mounted_pose(m.linkage, position));
    escapes += (s.front_angle > e.front_angle.upper) + (s.rear_angle > e.rear_angle.upper) +
               (math::abs(s.difference) > e.difference.upper) + (s.length > e.longest.upper) +
               (s.length < e.shortest.lower);
  }
  return escapes;
}

} // namespace

TEST_CASE("no position of a linkage lies outside its envelope") {
  RandomInputs random;
  int escapes = 0;
  int open = 0;
  double slowest = 0.0;
  for (int i = 0; i < 60; ++i) {
    const Mounted m = any_mounted(random, i % 2 == 0);
    EnvelopeOptions options;
    if (i % 2 == 0) { // three motions at once: a coarser gap, and a budget that may run out
      options.angle_gap = degrees(0.1);
      options.length_gap = millimetres(1.0);
      options.budget = 20000;
    }
    const auto start = std::chrono::steady_clock::now();
    const MountedEnvelope e = driveline_envelope(m.driveline, m.linkage, m.range, options);
    slowest = std::max(slowest, std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
    for (const bool proved : {e.envelope.front_angle.proved, e.envelope.rear_angle.proved, e.envelope.difference.proved,
                              e.envelope.longest.proved, e.envelope.shortest.proved})
      open += proved ? 0 : 1;
    escapes += escapes_of(random, m, e.envelope, 5000);
    const auto at = [&m](const LinkagePosition& p) { return driveline_at(m.driveline, mounted_pose(m.linkage, p)); };
    CHECK_CLOSE(at(e.longest_at).length.value(), e.envelope.longest.value.value(), 1e-12);
    CHECK_CLOSE(at(e.shortest_at).length.value(), e.envelope.shortest.value.value(), 1e-12);
    CHECK_CLOSE(at(e.front_angle_at).front_angle.value(), e.envelope.front_angle.value.value(), 1e-10);
    CHECK_CLOSE(at(e.rear_angle_at).rear_angle.value(), e.envelope.rear_angle.value.value(), 1e-10);
  }
  CHECK(escapes == 0);
  MESSAGE("searches that ended before their gap: " << open << " of 300; slowest " << slowest << " s");
  CHECK(open <= 30);
}

namespace {

MountedTolerance any_tolerance(RandomInputs& random) {
  const auto some = [&random] { return millimetres(random.whole(0, 2) == 0 ? 0.0 : random.between(0, 12)); };
  MountedTolerance t;
  t.driveline.front_joint = some();
  t.driveline.rear_joint = some();
  t.driveline.input_behind = some();
  t.driveline.input_left = some();
  t.driveline.input_up = some();
  for (Length* l : {&t.lower_pivot_behind, &t.lower_pivot_below, &t.lower_link, &t.top_pivot_behind, &t.top_pivot_below,
                    &t.top_link, &t.mast, &t.span, &t.wheel, &t.ground})
    *l = some();
  t.convergence = 10.0 * some(); // nobody measures it well
  return t;
}

/// A measurement somewhere within its tolerance, often at an end.
Length within(RandomInputs& random, Length stated, Length tolerance) {
  const int where = random.whole(0, 3);
  if (where == 0) return stated + tolerance;
  if (where == 1) return stated - tolerance;
  return stated + random.between(-1, 1) * tolerance;
}

Mounted true_mounted(RandomInputs& random, Mounted m, const MountedTolerance& t) {
  ThreePointLinkage& l = m.linkage;
  l.lower_pivot_behind = within(random, l.lower_pivot_behind, t.lower_pivot_behind);
  l.lower_pivot_below = within(random, l.lower_pivot_below, t.lower_pivot_below);
  l.lower_link = within(random, l.lower_link, t.lower_link);
  l.top_pivot_behind = within(random, l.top_pivot_behind, t.top_pivot_behind);
  l.top_pivot_below = within(random, l.top_pivot_below, t.top_pivot_below);
  l.top_link = within(random, l.top_link, t.top_link);
  l.span = within(random, l.span, t.span);
  l.convergence = within(random, l.convergence, t.convergence);
  const double side = random.between(0, 2.0 * pi);
  l.mast_height += std::sin(side) * t.mast;
  l.mast_forward += std::cos(side) * t.mast;
  Driveline& d = m.driveline;
  d.front_joint = within(random, d.front_joint, t.driveline.front_joint);
  d.rear_joint = within(random, d.rear_joint, t.driveline.rear_joint);
  d.input = Position(within(random, d.input.forward(), t.driveline.input_behind),
                     within(random, d.input.left(), t.driveline.input_left),
                     within(random, d.input.up(), t.driveline.input_up));
  return m;
}

int escapes_at(const DrivelineState& s, const DrivelineEnvelope& e) {
  return (s.front_angle > e.front_angle.upper) + (s.rear_angle > e.rear_angle.upper) +
         (math::abs(s.difference) > e.difference.upper) + (s.length > e.longest.upper) + (s.length < e.shortest.lower) +
         (s.speed_variation > e.speed_variation->upper);
}

EnvelopeOptions coarse() {
  EnvelopeOptions options;
  options.angle_gap = degrees(0.2);
  options.length_gap = millimetres(2.0);
  options.variation_gap = 0.005;
  options.budget = 5000;
  return options;
}

} // namespace

TEST_CASE("no linkage and driveline within the tolerances lies outside the tolerant envelope") {
  RandomInputs random;
  int escapes = 0;
  int closed = 0;
  double widest = 0.0;
  for (int i = 0; i < 60; ++i) {
    const bool sways = i % 2 == 1; // otherwise it turns and rolls upon the hitch points
    Mounted m = any_mounted(random, sways);
    if (!sways) {
      m.range.yaw = {degrees(-random.between(0, 3)), degrees(random.between(0, 3))};
      m.range.roll = {degrees(-random.between(0, 4)), degrees(random.between(0, 4))};
    }
    if (i % 3 == 0) m.driveline.yoke_phase = degrees(random.between(-20, 20));
    const MountedTolerance t = any_tolerance(random);
    MountedEnvelope e;
    try {
      e = driveline_envelope(m.driveline, m.linkage, t, m.range, coarse());
    } catch (const InputError&) {
      continue; // some linkage within the tolerances cannot close
    }
    ++closed;
    const MountedEnvelope stated = driveline_envelope(m.driveline, m.linkage, m.range, coarse());
    CHECK(e.envelope.front_angle.upper > stated.envelope.front_angle.lower);
    CHECK(e.envelope.longest.upper > stated.envelope.longest.lower);
    widest = std::max(widest, (e.envelope.longest.upper - stated.envelope.longest.upper).value());
    for (int j = 0; j < 4000; ++j) {
      const Mounted real = j % 5 == 0 ? m : true_mounted(random, m, t);
      const LinkagePosition position{any_length(random, m.range.lift), any_length(random, m.range.sway),
                                     any_length(random, m.range.difference)};
      Pose pose = mounted_pose(real.linkage, position);
      if (!sways) {
        pose.attitude.yaw = random.between(0, 1) * (m.range.yaw.high - m.range.yaw.low) + m.range.yaw.low;
        pose.attitude.roll = random.between(0, 1) * (m.range.roll.high - m.range.roll.low) + m.range.roll.low;
      }
      ThreePointLinkage ends = real.linkage; // pose of the link ends, with the coupler's offset in the implement
      ends.coupler_depth = ends.coupler_rise = Length{};
      pose.pin = mounted_pose(ends, position).pin;
      escapes += escapes_at(driveline_at(detail::coupled(real.driveline, real.linkage), pose), e.envelope);
    }
  }
  MESSAGE("tolerant envelopes: " << closed << ", the longest driveline by at most " << widest * 1e3 << " mm more");
  CHECK(escapes == 0);
  CHECK(closed > 40);
  CHECK(widest < 0.1);
}

TEST_CASE("a top link that was set at a lift: no machine within the tolerances escapes, and the bounds are nearer") {
  RandomInputs random;
  int escapes = 0;
  int seen = 0;
  double nearer = 0.0;
  for (int i = 0; i < 40; ++i) {
    Mounted m = any_mounted(random, false);
    MountedTolerance t = any_tolerance(random);
    t.convergence = t.span = Length{};
    const LevelLift level{millimetres(random.between(-200, 100)), millimetres(random.between(0, 10)), true};
    m.linkage.top_link = top_link_for(m.linkage, level.lift);
    t.top_link = 1.1 * (t.lower_pivot_behind + t.top_pivot_behind + t.lower_pivot_below + t.top_pivot_below +
                        1.2 * t.lower_link + t.mast + 1.2 * level.tolerance);
    MountedEnvelope loose;
    MountedEnvelope e;
    try {
      loose = driveline_envelope(m.driveline, m.linkage, t, m.range, coarse());
      t.level = level;
      e = driveline_envelope(m.driveline, m.linkage, t, m.range, coarse());
    } catch (const InputError&) {
      continue; // some linkage within the tolerances cannot close
    }
    ++seen;
    CHECK(e.envelope.longest.upper <= loose.envelope.longest.upper + millimetres(2.0)); // the wanted gap
    const Length own = e.envelope.longest.gap;
    nearer = std::max(nearer, static_cast<double>(loose.envelope.longest.gap / own));
    for (int j = 0; j < 3000; ++j) {
      Mounted real = true_mounted(random, m, t);
      real.linkage.top_link = top_link_for(real.linkage, within(random, level.lift, level.tolerance));
      const Pose pose = mounted_pose(real.linkage, {any_length(random, m.range.lift), {}, {}});
      escapes += escapes_at(driveline_at(real.driveline, pose), e.envelope);
    }
  }
  MESSAGE("top links set at a lift: " << seen << ", the gap of the longest up to " << nearer << " times nearer");
  CHECK(escapes == 0);
  CHECK(seen > 20);
  CHECK(nearer > 1.5);
}

TEST_CASE("what is said to be attained within the tolerances lies between the stated machine and the bound") {
  RandomInputs random;
  int further = 0;
  for (int i = 0; i < 30; ++i) {
    const Mounted m = any_mounted(random, i % 2 == 0);
    const MountedTolerance t = any_tolerance(random);
    try {
      const DrivelineEnvelope e = driveline_envelope(m.driveline, m.linkage, t, m.range, coarse()).envelope;
      const DrivelineEnvelope stated = driveline_envelope(m.driveline, m.linkage, m.range, coarse()).envelope;
      CHECK(e.longest.value <= e.longest.upper);
      CHECK(e.longest.value >= stated.longest.lower - millimetres(2.0)); // the gap within which they were looked for
      CHECK(e.shortest.value >= e.shortest.lower);
      CHECK(e.front_angle.value <= e.front_angle.upper);
      further += e.longest.value > stated.longest.upper ? 1 : 0;
    } catch (const InputError&) {
      continue; // some linkage within the tolerances cannot close
    }
  }
  CHECK(further > 10);
}

TEST_CASE("a machine on its wheel with the top link slack lies within its envelope, tolerances included") {
  RandomInputs random;
  int escapes = 0;
  int seen = 0;
  for (int i = 0; i < 40; ++i) {
    const Mounted m = any_mounted(random, false);
    const MountedTolerance t = any_tolerance(random);
    const SupportWheel wheel{millimetres(random.between(1500, 4000)), millimetres(random.between(200, 600)),
                             millimetres(random.between(400, 700))};
    MountedEnvelope e;
    try {
      e = driveline_envelope(m.driveline, m.linkage, wheel, t, m.range, coarse());
    } catch (const InputError&) {
      continue;
    }
    ++seen;
    for (int j = 0; j < 3000; ++j) {
      const Mounted real = true_mounted(random, m, t);
      const double side = random.between(0, 2.0 * pi);
      SupportWheel there = wheel;
      there.behind += std::cos(side) * t.wheel;
      there.below += std::sin(side) * t.wheel;
      there.ground_below_pivot = within(random, there.ground_below_pivot, t.ground);
      const SlackPose pose = slack_pose(real.linkage, there, any_length(random, m.range.lift));
      escapes += escapes_at(driveline_at(real.driveline, pose.pose), e.envelope);
    }
  }
  CHECK(escapes == 0);
  CHECK(seen > 20);
}

TEST_CASE("a semi-mounted machine lies within its envelope at every lift, roll and turn about its pivot") {
  RandomInputs random;
  int escapes = 0;
  int seen = 0;
  double loosest = 0.0;
  for (int i = 0; i < 40; ++i) {
    Mounted m = any_mounted(random, false);
    const bool on_wheel = i % 2 == 0;
    const bool exact = i % 4 < 2;
    m.range.yaw = {degrees(-random.between(0, 50)), degrees(random.between(0, 50))};
    m.range.roll = {degrees(-random.between(0, 6)), degrees(random.between(0, 6))};
    const Position pivot(-millimetres(random.between(100, 500)), millimetres(random.between(-50, 50)), Length{});
    m.range.pivot = pivot;
    MountedTolerance t = exact ? MountedTolerance{} : any_tolerance(random);
    t.pivot = exact ? Length{} : millimetres(random.between(0, 10));
    const SupportWheel wheel{millimetres(random.between(2000, 4000)), millimetres(random.between(300, 600)),
                             millimetres(random.between(400, 700))};
    MountedEnvelope e;
    try {
      e = on_wheel ? driveline_envelope(m.driveline, m.linkage, wheel, t, m.range, coarse())
                   : driveline_envelope(m.driveline, m.linkage, t, m.range, coarse());
    } catch (const InputError&) {
      continue; // some linkage within the tolerances cannot close, or a turned wheel does not reach the ground
    }
    ++seen;
    if (exact) loosest = std::max(loosest, e.envelope.longest.gap.value());
    for (int j = 0; j < 2000; ++j) {
      const Mounted real = exact ? m : true_mounted(random, m, t);
      const double side = random.between(0, 2.0 * pi);
      const Position there = pivot + Position(std::cos(side) * t.pivot, std::sin(side) * t.pivot, Length{});
      const Angle steer = random.between(0, 1) * (m.range.yaw.high - m.range.yaw.low) + m.range.yaw.low;
      const Angle roll = random.between(0, 1) * (m.range.roll.high - m.range.roll.low) + m.range.roll.low;
      const Length lift = any_length(random, m.range.lift);
      const Position coupler(-real.linkage.coupler_depth, Length{}, real.linkage.coupler_rise);
      Pose headstock = on_wheel
                           ? slack_pose(real.linkage, steered_wheel(wheel, there + coupler, steer, roll), lift).pose
                           : mounted_pose(real.linkage, {lift, {}, {}});
      ThreePointLinkage ends = real.linkage;
      ends.coupler_depth = ends.coupler_rise = Length{};
      headstock.pin = mounted_pose(ends, {lift, {}, {}}).pin;
      headstock.attitude.roll = roll;
      Driveline about_pivot = real.driveline;
      about_pivot.input = about_pivot.input - there;
      escapes += escapes_at(driveline_at(about_pivot, steered_pose(headstock, there + coupler, steer)), e.envelope);
    }
  }
  MESSAGE("semi-mounted machines: " << seen << ", the longest within " << loosest * 1e3 << " mm");
  CHECK(escapes == 0);
  CHECK(seen > 25);
  CHECK(loosest < 0.03);
}

TEST_CASE("lift limit: every position up to the allowed lift keeps the limits") {
  RandomInputs random;
  int limited = 0;
  for (int i = 0; i < 20; ++i) {
    Mounted m = any_mounted(random, false);
    DrivelineLimits limits;
    limits.front_angle = degrees(random.between(10, 25));
    const LiftLimit limit = lift_limit(m.driveline, m.linkage, m.range, limits);
    if (!limit.low_end) continue;
    if (limit.kind != LimitKind::none) {
      ++limited;
      CHECK(limit.broken - limit.allowed < millimetres(2.0));
    }
    m.range.lift.high = limit.allowed;
    for (int j = 0; j < 2000; ++j) {
      const Pose pose = mounted_pose(m.linkage, {any_length(random, m.range.lift), {}, {}});
      CHECK(driveline_at(m.driveline, pose).front_angle <= *limits.front_angle);
    }
  }
  CHECK(limited > 3);
}

TEST_CASE("where the shortest position lies depends on the linkage: folk rules disagree because geometries do") {
  RandomInputs random;
  int top = 0;
  int bottom = 0;
  for (int i = 0; i < 60; ++i) {
    const Mounted m = any_mounted(random, false);
    const Length lift = driveline_envelope(m.driveline, m.linkage, m.range).shortest_at.lift;
    top += math::abs(lift - m.range.lift.high) < millimetres(1) ? 1 : 0;
    bottom += math::abs(lift - m.range.lift.low) < millimetres(1) ? 1 : 0;
  }
  MESSAGE("of 60 linkages the driveline is shortest at the top for " << top << " and at the bottom for " << bottom);
  CHECK(top > 0);
  CHECK(bottom > 0);
}

TEST_CASE("the pitch stays within the interval that the proof gives it") {
  RandomInputs random;
  for (int i = 0; i < 300; ++i) {
    const Mounted m = any_mounted(random, false);
    const detail::SideView side(m.linkage);
    const double middle = random.between(-0.4, 0.5);
    const double half = random.across(1e-5, 0.1);
    const detail::SideView::Level level = side.at(middle);
    const double rate = detail::pitch_rate(side, level, middle, half);
    for (int j = 0; j < 20; ++j) {
      const double by = random.between(-half, half);
      CHECK(std::abs(side.at(middle + by).pitch - level.pitch) <= rate * std::abs(by) + 1e-14);
    }
  }
}

TEST_CASE("impossible mounted ranges are refused") {
  RandomInputs random;
  Mounted m = any_mounted(random, false);
  const auto envelope = [&m](const MountedRange& range) { return driveline_envelope(m.driveline, m.linkage, range); };
  CHECK_THROWS_AS(envelope({{metres(0.1), metres(0.0)}, {}, {}}), InputError);
  CHECK_THROWS_AS(envelope({{metres(-2), metres(0.0)}, {}, {}}), InputError);
  CHECK_THROWS_AS(envelope({{metres(0), metres(0.1)}, {metres(0), metres(3)}, {}}), InputError);
  const auto tolerant = [&m](const MountedTolerance& t) {
    return driveline_envelope(m.driveline, m.linkage, t, m.range);
  };
  MountedTolerance tolerance;
  tolerance.top_link = metres(2); // some linkage within it cannot close
  CHECK_THROWS_AS(tolerant(tolerance), InputError);
  tolerance.top_link = metres(-1);
  CHECK_THROWS_AS(tolerant(tolerance), InputError);
  MountedRange both = m.range;
  both.sway = {metres(0), metres(0.1)};
  both.yaw = {Angle{}, degrees(1)};
  CHECK_THROWS_AS(envelope(both), InputError);
  both.yaw = {};
  both.pivot = Position(metres(-0.3), Length{}, Length{}); // the links sway, or the machine steers
  CHECK_THROWS_AS(envelope(both), InputError);
  tolerance = {};
  tolerance.pivot = metres(-0.01);
  CHECK_THROWS_AS(tolerant(tolerance), InputError);
  MountedSurroundings around;
  around.links = LowerLinkRods{metres(0.6), metres(0.6), metres(0.03)};
  both.sway = {};
  CHECK_THROWS_AS(least_clearance(m.driveline, m.linkage, both, around), InputError); // not followed
  m.linkage.top_link = metres(2);
  CHECK_THROWS_AS(envelope({{metres(0), metres(0.1)}, {}, {}}), InputError);
  CHECK_THROWS_AS(lift_limit(m.driveline, m.linkage, m.range, {}), InputError);
}
