// The certificate of the envelope: bounds against random attitudes and a general optimiser, and the expansions and
// bounds that the proof rests on against differences.

#include <fieldshaft/driveline.hpp>
#include <fieldshaft/hitch.hpp>

#include "close.hpp"
#include "random.hpp"

#include <functional>

using namespace fieldshaft;

namespace {

struct Layout {
  Driveline driveline;
  Position pin;
  AttitudeRange range;
};

/// A trailed implement of ordinary sizes, everything off centre.
Layout ordinary(RandomInputs& random) {
  Layout s;
  s.driveline.front_joint = metres(random.between(0.05, 0.15));
  s.driveline.rear_joint = metres(random.between(0.05, 0.15));
  s.driveline.input = Position(metres(-random.between(0.5, 1.2)), metres(random.between(-0.15, 0.15)),
                               metres(random.between(-0.1, 0.4)));
  s.driveline.input_direction = Direction::ahead(degrees(random.between(-5, 5)), degrees(random.between(-8, 8)));
  s.pin = pin_position(
      {metres(random.between(0.35, 0.55)), metres(random.between(-0.1, 0.1)), metres(random.between(0.05, 0.35))});
  s.range.yaw = {degrees(-random.between(5, 70)), degrees(random.between(5, 70))};
  s.range.pitch = {degrees(-random.between(1, 15)), degrees(random.between(1, 15))};
  s.range.roll = {degrees(-random.between(1, 15)), degrees(random.between(1, 15))};
  return s;
}

/// Anything that can be built and much that cannot: short shafts, joints far from the pin, wide and narrow ranges.
Layout odd(RandomInputs& random) {
  Layout s;
  s.driveline.front_joint = metres(random.between(0.0, 0.5));
  s.driveline.rear_joint = metres(random.between(0.0, 0.3));
  s.driveline.input =
      Position(metres(random.between(-2.0, 0.2)), metres(random.between(-0.5, 0.5)), metres(random.between(-0.5, 0.8)));
  s.driveline.input_direction = Direction::ahead(degrees(random.between(-40, 40)), degrees(random.between(-40, 40)));
  s.driveline.yoke_phase = degrees(random.whole(0, 1) == 0 ? 0.0 : random.between(-90, 90));
  if (random.whole(0, 1) == 0) { // a branch whose driving shaft points anywhere rearwards
    s.driveline.output = Position(metres(random.between(-0.2, 0.2)), metres(random.between(-0.3, 0.3)), Length{});
    s.driveline.output_direction = Direction(-1.0, random.between(-0.5, 0.5), random.between(-0.5, 0.5));
  }
  s.pin =
      Position(metres(-random.between(0.1, 1.0)), metres(random.between(-0.3, 0.3)), metres(random.between(-0.6, 0.3)));
  const auto interval = [&random](double most) {
    const double a = random.between(-most, most);
    return AngleRange{degrees(a), degrees(a + random.across(0.01, most))};
  };
  s.range.yaw = interval(60);
  s.range.pitch = interval(25);
  s.range.roll = interval(25);
  return s;
}

/// The on-centre layout that books draw, where many attitudes tie.
Layout symmetric(RandomInputs& random) {
  Layout s = ordinary(random);
  s.driveline.input = Position(s.driveline.input.forward(), Length{}, s.driveline.input.up());
  s.driveline.input_direction = Direction();
  s.pin = Position(s.pin.forward(), Length{}, s.pin.up());
  s.range.yaw = either_side(s.range.yaw.high);
  s.range.roll = either_side(s.range.roll.high);
  return s;
}

Layout any_layout(RandomInputs& random) {
  switch (random.whole(0, 3)) {
  case 0: return symmetric(random);
  case 1: return odd(random);
  default: return ordinary(random);
  }
}

/// Inside, on a face, an edge or a corner.
Attitude any_attitude(RandomInputs& random, const AttitudeRange& range) {
  const auto pick = [&random](const AngleRange& r) {
    const int where = random.whole(0, 5);
    if (where == 0) return r.low;
    if (where == 1) return r.high;
    return r.low + random.between(0.0, 1.0) * (r.high - r.low);
  };
  return {pick(range.yaw), pick(range.pitch), pick(range.roll)};
}

struct Values {
  double front, rear, difference, length, variation;
};

Values values_at(const Layout& s, const Attitude& attitude) {
  const DrivelineState state = driveline_at(s.driveline, {s.pin, attitude});
  return {state.front_angle.value(), state.rear_angle.value(), math::abs(state.difference).value(),
          state.length.value(), state.speed_variation};
}

/// How many of the six statements an attitude contradicts.
int contradictions(const DrivelineEnvelope& e, const Values& v) {
  return (v.front > e.front_angle.upper.value()) + (v.rear > e.rear_angle.upper.value()) +
         (v.difference > e.difference.upper.value()) + (v.length > e.longest.upper.value()) +
         (v.length < e.shortest.lower.value()) + (v.variation > e.speed_variation->upper);
}

/// The value of every extreme must be the one at its attitude, inside the range and the bounds.
template <class Q> void check_extreme(const Extreme<Q>& extreme, const AttitudeRange& range) {
  CHECK(extreme.lower <= extreme.value);
  CHECK(extreme.value <= extreme.upper);
  CHECK(contains(range, extreme.at));
}

void check_extremes(const DrivelineEnvelope& e, const Layout& s) {
  check_extreme(e.front_angle, s.range);
  check_extreme(e.rear_angle, s.range);
  check_extreme(e.difference, s.range);
  check_extreme(e.longest, s.range);
  check_extreme(e.shortest, s.range);
  check_extreme(*e.speed_variation, s.range);
  CHECK(values_at(s, e.front_angle.at).front == e.front_angle.value.value());
  CHECK(values_at(s, e.rear_angle.at).rear == e.rear_angle.value.value());
  CHECK(values_at(s, e.difference.at).difference == e.difference.value.value());
  CHECK(values_at(s, e.longest.at).length == e.longest.value.value());
  CHECK(values_at(s, e.shortest.at).length == e.shortest.value.value());
  CHECK(values_at(s, e.speed_variation->at).variation == e.speed_variation->value);
}

/// A general-purpose global optimiser that knows nothing of drivelines: differential evolution.
double evolved_greatest(RandomInputs& random, const AttitudeRange& range,
                        const std::function<double(const Attitude&)>& f) {
  constexpr int members = 60;
  constexpr int generations = 200;
  const double low[] = {range.yaw.low.value(), range.pitch.low.value(), range.roll.low.value()};
  const double high[] = {range.yaw.high.value(), range.pitch.high.value(), range.roll.high.value()};
  using Point = std::array<double, 3>;
  const auto at = [&f](const Point& p) { return f({radians(p[0]), radians(p[1]), radians(p[2])}); };
  std::array<Point, members> points{};
  std::array<double, members> worth{};
  for (std::size_t m = 0; m < members; ++m) {
    for (std::size_t i = 0; i < 3; ++i) points[m][i] = random.between(low[i], high[i]);
    worth[m] = at(points[m]);
  }
  const auto any = [&random] { return static_cast<std::size_t>(random.whole(0, members - 1)); };
  for (int g = 0; g < generations; ++g) {
    for (std::size_t m = 0; m < members; ++m) {
      const Point& a = points[any()];
      const Point& b = points[any()];
      const Point& c = points[any()];
      Point trial = points[m];
      for (std::size_t i = 0; i < 3; ++i) {
        if (random.between(0, 1) < 0.9) trial[i] = std::clamp(a[i] + 0.7 * (b[i] - c[i]), low[i], high[i]);
      }
      const double value = at(trial);
      if (value >= worth[m]) {
        worth[m] = value;
        points[m] = trial;
      }
    }
  }
  return *std::max_element(worth.begin(), worth.end());
}

} // namespace

TEST_CASE("no attitude of ten million lies outside the envelope, and the gaps are reached") {
  RandomInputs random;
  constexpr int layouts = 200;
  constexpr int attitudes = 50000;
  long escapes = 0;
  int open = 0;
  for (int i = 0; i < layouts; ++i) {
    const Layout s = any_layout(random);
    CAPTURE(i);
    const DrivelineEnvelope e = driveline_envelope(s.driveline, s.pin, s.range);
    check_extremes(e, s);
    for (const bool proved : {e.front_angle.proved, e.rear_angle.proved, e.difference.proved, e.longest.proved,
                              e.shortest.proved, e.speed_variation->proved})
      open += proved ? 0 : 1;
    for (int j = 0; j < attitudes; ++j) escapes += contradictions(e, values_at(s, any_attitude(random, s.range)));
  }
  CHECK(escapes == 0);
  MESSAGE("searches that ended before their gap: " << open << " of " << 6 * layouts);
  CHECK(open <= 12); // of joints near their lock in odd layouts; their bounds held above
}

TEST_CASE("second method: differential evolution finds the same extremes") {
  RandomInputs random;
  int missed = 0; // by the optimiser: `lower` is attained at the attitude named, which check_extremes proves
  for (int i = 0; i < 40; ++i) {
    const Layout s = ordinary(random);
    const DrivelineEnvelope e = driveline_envelope(s.driveline, s.pin, s.range);
    constexpr double slack = 2e-6; // what the optimiser leaves
    // The optimiser may settle on a lesser peak, so it gets up to six tries to reach the extreme; it must never pass
    // it.
    const auto agrees = [&](auto member, double sign, double lower, double upper) {
      double best = -std::numeric_limits<double>::infinity();
      const double wanted = sign > 0.0 ? lower : -upper;
      for (int tries = 0; tries < 6 && best < wanted - slack; ++tries) {
        best = std::max(
            best, evolved_greatest(random, s.range, [&](const Attitude& a) { return sign * values_at(s, a).*member; }));
      }
      missed += best >= wanted - slack ? 0 : 1;
      CHECK(best <= (sign > 0.0 ? upper : -lower));
    };
    agrees(&Values::front, 1.0, e.front_angle.lower.value(), e.front_angle.upper.value());
    agrees(&Values::rear, 1.0, e.rear_angle.lower.value(), e.rear_angle.upper.value());
    agrees(&Values::difference, 1.0, e.difference.lower.value(), e.difference.upper.value());
    agrees(&Values::length, 1.0, e.longest.lower.value(), e.longest.upper.value());
    agrees(&Values::length, -1.0, e.shortest.lower.value(), e.shortest.upper.value());
    agrees(&Values::variation, 1.0, e.speed_variation->lower, e.speed_variation->upper);
  }
  CHECK(missed <= 2);
}

TEST_CASE("a grid of one degree misses the extreme that the certificate finds") {
  // The input shaft points 20° to the side; in the turn at 7.5° the front joint runs straight and the difference of the
  // angles has a tip, between the lines of the grid.
  Layout s;
  s.driveline.front_joint = millimetres(100);
  s.driveline.rear_joint = millimetres(100);
  const double turn = degrees(7.5).value();
  s.pin = Position(millimetres(-300), millimetres(800 * std::sin(turn)), Length{});
  s.driveline.input_direction = Direction::ahead(degrees(20), Angle{});
  s.driveline.input =
      along(Position(millimetres(-800), Length{}, Length{}), -s.driveline.input_direction, millimetres(100));
  s.range.yaw = {degrees(0), degrees(40)};
  s.range.pitch = either_side(degrees(3));
  s.range.roll = either_side(degrees(3));
  const DrivelineEnvelope e = driveline_envelope(s.driveline, s.pin, s.range);
  double grid = 0.0;
  for (int yaw = 0; yaw <= 40; ++yaw) {
    for (int pitch = -3; pitch <= 3; ++pitch) {
      for (int roll = -3; roll <= 3; ++roll)
        grid = std::max(grid, values_at(s, {degrees(yaw), degrees(pitch), degrees(roll)}).difference);
    }
  }
  MESSAGE("grid " << in(radians(grid), unit::degree) << "°, proved " << in(e.difference.lower, unit::degree) << "° to "
                  << in(e.difference.upper, unit::degree) << "° at yaw " << in(e.difference.at.yaw, unit::degree));
  CHECK(e.difference.proved);
  CHECK(e.difference.lower.value() > grid + degrees(0.1).value());
}

TEST_CASE("coupled ranges: bounds hold, the attitudes keep the coupling, and less range is never worse") {
  RandomInputs random;
  for (int i = 0; i < 40; ++i) {
    Layout s = ordinary(random);
    const DrivelineEnvelope whole = driveline_envelope(s.driveline, s.pin, s.range);
    s.range = with_less_roll_at_full_turn(s.range, random.between(0.0, 0.9));
    if (i % 4 == 0)
      s.range.couplings.push_back({random.between(-1, 1), random.between(-1, 1), random.between(-1, 1), degrees(5)});
    const DrivelineEnvelope e = driveline_envelope(s.driveline, s.pin, s.range);
    check_extremes(e, s);
    CHECK(
        (e.front_angle.proved && e.rear_angle.proved && e.longest.proved && e.shortest.proved && e.difference.proved));
    CHECK(e.front_angle.lower <= whole.front_angle.upper);
    CHECK(e.longest.lower <= whole.longest.upper);
    CHECK(e.shortest.upper >= whole.shortest.lower);
    long escapes = 0;
    for (int j = 0; j < 20000; ++j) {
      const Attitude a = any_attitude(random, s.range);
      if (contains(s.range, a)) escapes += contradictions(e, values_at(s, a));
    }
    CHECK(escapes == 0);
  }
}

TEST_CASE("mirrored cases mirror bit by bit") {
  RandomInputs random;
  const auto same = [](const auto& a, const auto& b) {
    CHECK(a.value == b.value);
    CHECK(a.lower == b.lower);
    CHECK(a.upper == b.upper);
    CHECK(a.at.yaw == -b.at.yaw);
    CHECK(a.at.pitch == b.at.pitch);
    CHECK(a.at.roll == -b.at.roll);
  };
  for (int i = 0; i < 60; ++i) {
    Layout s = any_layout(random);
    if (i % 3 == 0) s.range.couplings.push_back({0.2, 0.1, 1.0, degrees(12)});
    const bool on_centre =
        s.pin.left() == Length{} && s.driveline.input.left() == Length{} && s.driveline.yoke_phase == Angle{};
    const bool symmetric_layout = s.range.couplings.empty() && on_centre;
    if (symmetric_layout) continue; // it is its own mirror image: either side may be named
    const Attitude a = any_attitude(random, s.range);
    const DrivelineState one = driveline_at(s.driveline, {s.pin, a});
    const DrivelineState other = driveline_at(mirrored(s.driveline), mirrored(Pose{s.pin, a}));
    CHECK(one.front_angle == other.front_angle);
    CHECK(one.rear_angle == other.rear_angle);
    CHECK(one.length == other.length);
    CHECK(one.plane_angle == -other.plane_angle);
    CHECK(one.speed_variation == other.speed_variation);
    const auto find = [](const Layout& l) -> std::optional<DrivelineEnvelope> {
      try {
        return driveline_envelope(l.driveline, l.pin, l.range);
      } catch (const InputError&) {
        return std::nullopt; // the coupling may leave nothing
      }
    };
    const auto e = find(s);
    const auto m = find({mirrored(s.driveline), mirrored(s.pin), mirrored(s.range)});
    REQUIRE(e.has_value() == m.has_value());
    if (!e) continue;
    same(e->front_angle, m->front_angle);
    same(e->rear_angle, m->rear_angle);
    same(e->difference, m->difference);
    same(e->longest, m->longest);
    same(e->shortest, m->shortest);
    CHECK(e->speed_variation->upper == m->speed_variation->upper);
    if (on_centre || i % 5 != 0) continue;
    DrivelineTolerance t;
    t.pin_distance = t.pin_lateral = t.input_left = millimetres(3);
    t.input_direction = degrees(0.3);
    EnvelopeOptions options;
    options.budget = 2000;
    const AttitudeRange free{s.range.yaw, s.range.pitch, s.range.roll, {}};
    const auto with = driveline_envelope(s.driveline, s.pin, t, free, options);
    const auto there = driveline_envelope(mirrored(s.driveline), mirrored(s.pin), t, mirrored(free), options);
    same(with.envelope.front_angle, there.envelope.front_angle);
    same(with.envelope.rear_angle, there.envelope.rear_angle);
    same(with.envelope.difference, there.envelope.difference);
    same(with.envelope.longest, there.envelope.longest);
    same(with.envelope.shortest, there.envelope.shortest);
  }
}

TEST_CASE("a budget that runs out says so and the bounds still hold") {
  RandomInputs random;
  EnvelopeOptions options;
  long escapes = 0;
  int open = 0;
  for (int i = 0; i < 60; ++i) {
    const Layout s = any_layout(random);
    options.budget = random.whole(1, 40);
    const DrivelineEnvelope e = driveline_envelope(s.driveline, s.pin, s.range, options);
    check_extremes(e, s);
    open += e.front_angle.proved ? 0 : 1;
    CHECK(e.front_angle.proved == (e.front_angle.gap <= options.angle_gap));
    CHECK(e.longest.proved == (e.longest.gap <= options.length_gap));
    for (int j = 0; j < 20000; ++j) escapes += contradictions(e, values_at(s, any_attitude(random, s.range)));
  }
  CHECK(escapes == 0);
  CHECK(open > 5); // else this test has tested nothing
}

namespace {

/// Checks an objective's expansion and its bounds at random points of random boxes.
template <class Objective> void check_expansion(RandomInputs& random, const Objective& objective, double rounding) {
  for (int i = 0; i < 30; ++i) {
    detail::Triple c{}, half{};
    for (std::size_t k = 0; k < 3; ++k) {
      c[k] = random.between(-0.9, 0.9);
      half[k] = random.across(1e-3, 0.3);
    }
    const detail::Expansion e = objective.expand(c, detail::size(half));
    for (int j = 0; j < 20; ++j) {
      detail::Triple x = c;
      double expected = e.jet.value;
      double reach = 0.0;
      detail::Triple d{};
      for (std::size_t k = 0; k < 3; ++k) {
        d[k] = random.between(-half[k], half[k]);
        x[k] += d[k];
        reach += std::abs(d[k]);
        expected += e.jet.slope[k] * d[k];
      }
      for (std::size_t m = 0; m < 6; ++m) {
        const auto [p, q] = detail::curvature_axes[m];
        expected += (p == q ? 0.5 : 1.0) * e.jet.curvature[m] * d[p] * d[q];
      }
      const double actual = objective.value(x);
      if (std::isinf(actual)) continue;
      CHECK(std::abs(actual - expected) <= e.third * reach * reach * reach / 6.0 + e.loose + rounding);
      CHECK(actual - e.jet.value <= e.spread + rounding); // upwards only: what the bound uses
    }
  }
}

} // namespace

TEST_CASE("the expansions and their remainders hold: the ground of the proof") {
  RandomInputs random;
  for (int i = 0; i < 100; ++i) {
    const Layout s = any_layout(random);
    const detail::Shafts shafts(detail::lines(s.driveline, s.pin));
    check_expansion(random, detail::SquareObjective(shafts, 1.0, 1e-4), 1e-12);
    check_expansion(random, detail::AngleObjective(shafts, detail::End::front, 1e-4, 0.1), 1e-10);
    check_expansion(random, detail::AngleObjective(shafts, detail::End::rear, 1e-4, 0.1), 1e-10);
    check_expansion(random, detail::DifferenceObjective(shafts, 1.0, 1e-4, 0.1), 1e-7);
    check_expansion(random, detail::UnevennessObjective(shafts, s.driveline.yoke_phase.value(), 1e-3, 0.1), 1e-5);
  }
}

TEST_CASE("slopes and curvatures of every product are those of differences") {
  RandomInputs random;
  for (int i = 0; i < 200; ++i) {
    const auto vector = [&random] {
      return Eigen::Vector3d(random.between(-1, 1), random.between(-1, 1), random.between(-1, 1));
    };
    const Eigen::Vector3d left = vector();
    const Eigen::Vector3d right = vector();
    detail::Triple at{random.between(-3, 3), random.between(-3, 3), random.between(-3, 3)};
    const detail::Jet jet = detail::bilinear(left, detail::Turn(at), right);
    CHECK(jet.value == doctest::Approx(left.dot(text::rotation(at[0], at[1], at[2]) * right)).epsilon(1e-13));
    constexpr double h = 1e-4;
    for (std::size_t k = 0; k < 3; ++k) {
      const auto shifted = [&](double by) {
        detail::Triple x = at;
        x[k] += by;
        return detail::bilinear(left, detail::Turn(x), right);
      };
      CHECK(std::abs((shifted(h).value - shifted(-h).value) / (2 * h) - jet.slope[k]) < 1e-7);
      for (std::size_t m = 0; m < 6; ++m) {
        const auto [p, q] = detail::curvature_axes[m];
        if (q != k) continue;
        CHECK(std::abs((shifted(h).slope[p] - shifted(-h).slope[p]) / (2 * h) - jet.curvature[m]) < 1e-7);
      }
    }
  }
}

TEST_CASE("joint angles add up to the turn in one plane, and only equal distances share it equally") {
  RandomInputs random;
  for (int i = 0; i < 500; ++i) {
    const Length a = metres(random.between(0.1, 1.0));
    const Length b = metres(random.between(0.1, 1.0));
    const Angle turn = degrees(random.between(1, 100));
    const PlanarJointAngles angles = planar_joint_angles(a, b, turn);
    CHECK_CLOSE((angles.front + angles.rear).value(), turn.value(), 1e-14);
    CHECK((angles.front > angles.rear) == (a < b));
    CHECK_CLOSE(planar_joint_angles(a, a, turn).front.value(), 0.5 * turn.value(), 1e-14);
    CHECK(planar_centre_distance(a, b, turn) < a + b);
    const double plain = a.value() * a.value() + b.value() * b.value() + 2 * a.value() * b.value() * math::cos(turn);
    CHECK_CLOSE(planar_centre_distance(a, b, turn).value(), std::sqrt(plain), 1e-13);
  }
}

namespace {

/// Some driveline within the tolerances, now and then at their ends.
detail::Elsewhere anywhere(RandomInputs& random) {
  detail::Elsewhere where{};
  const bool corner = random.whole(0, 1) == 0;
  for (double& w : where) w = corner ? random.whole(0, 1) * 2.0 - 1.0 : random.between(-1.0, 1.0);
  const double cone = std::hypot(where[8], where[9]); // the direction stays in its cone
  if (cone > 1.0) {
    where[8] /= cone;
    where[9] /= cone;
  }
  return where;
}

DrivelineTolerance any_tolerance(RandomInputs& random) {
  const auto length = [&random] { return millimetres(random.whole(0, 3) == 0 ? 0.0 : random.across(0.5, 20.0)); };
  DrivelineTolerance t;
  t.front_joint = length();
  t.pin_distance = length();
  t.pin_lateral = length();
  t.pin_drop = length();
  t.rear_joint = length();
  t.input_behind = length();
  t.input_left = length();
  t.input_up = length();
  t.input_direction = degrees(random.whole(0, 1) == 0 ? 0.0 : random.across(0.1, 2.0));
  return t;
}

} // namespace

TEST_CASE("with tolerances: no driveline within them and no attitude lies outside the bounds") {
  RandomInputs random;
  EnvelopeOptions options;
  options.budget = 4000;
  options.angle_gap = degrees(0.05);
  options.length_gap = millimetres(1.0);
  long escapes = 0;
  std::vector<double> angle_gaps;
  std::vector<double> length_gaps;
  for (int i = 0; i < 60; ++i) {
    Layout s = i % 3 == 0 ? symmetric(random) : ordinary(random);
    const DrivelineTolerance t = any_tolerance(random);
    const TolerantEnvelope e = driveline_envelope(s.driveline, s.pin, t, s.range, options);
    const DrivelineEnvelope exact = driveline_envelope(s.driveline, s.pin, s.range, options);
    CHECK(e.envelope.front_angle.upper >= exact.front_angle.lower);
    CHECK(e.envelope.shortest.lower <= exact.shortest.upper);
    CHECK(e.envelope.longest.value >= exact.longest.value - millimetres(1.0));
    angle_gaps.push_back(e.envelope.front_angle.gap.value());
    length_gaps.push_back(e.envelope.longest.gap.value());
    for (int j = 0; j < 20000; ++j) {
      const detail::Built b = detail::built(s.driveline, s.pin, t, anywhere(random));
      escapes += contradictions(e.envelope, values_at({b.driveline, b.pin, s.range}, any_attitude(random, s.range)));
    }
  }
  CHECK(escapes == 0);
  std::sort(angle_gaps.begin(), angle_gaps.end());
  std::sort(length_gaps.begin(), length_gaps.end());
  MESSAGE("median gap with tolerances: " << in(radians(angle_gaps[30]), unit::degree) << "° and "
                                         << in(metres(length_gaps[30]), unit::millimetre) << " mm");
  CHECK(angle_gaps[30] < degrees(0.5).value());
  CHECK(length_gaps[30] < 5e-3);
}

TEST_CASE("turn limit: every attitude up to the allowed turn keeps the limits, and the broken one breaks them") {
  RandomInputs random;
  for (int i = 0; i < 40; ++i) {
    Layout s = ordinary(random);
    s.range.yaw = either_side(degrees(80));
    DrivelineLimits limits;
    limits.front_angle = degrees(random.between(25, 50));
    limits.rear_angle = degrees(random.between(25, 50));
    if (i % 2 == 0) limits.difference = degrees(random.between(15, 40));
    if (i % 3 == 0) limits.longest = driveline_at(s.driveline, {s.pin, {}}).length + millimetres(60);
    const TurnLimits turns = turn_limit(s.driveline, s.pin, s.range, limits);
    for (const TurnLimit* turn : {&turns.left, &turns.right}) {
      if (!turn->straight_ahead) continue;
      AttitudeRange part = s.range;
      part.yaw = turn == &turns.left ? AngleRange{-turn->allowed, Angle{}} : AngleRange{Angle{}, turn->allowed};
      for (int j = 0; j < 3000; ++j) {
        const Values v = values_at(s, any_attitude(random, part));
        CHECK(v.front <= limits.front_angle->value());
        CHECK(v.rear <= limits.rear_angle->value());
        if (limits.difference) CHECK(v.difference <= limits.difference->value());
        if (limits.longest) CHECK(v.length <= limits.longest->value());
      }
      CHECK(turn->broken - turn->allowed < degrees(0.1)); // a gap of 0.01° in the angles, and how fast they grow
    }
  }
}

namespace {

/// A limit about an extreme: well off it, near it, or at it.
template <class Q> Q about(RandomInputs& random, Q value) {
  const double shares[] = {0.5, 0.99, 1.0, 1.01, 1.5};
  return shares[random.whole(0, 4)] * value;
}

DrivelineLimits some_limits(RandomInputs& random, const DrivelineEnvelope& e) {
  DrivelineLimits limits;
  if (random.whole(0, 1) == 0) limits.front_angle = about(random, e.front_angle.value);
  if (random.whole(0, 1) == 0) limits.rear_angle = about(random, e.rear_angle.value);
  if (random.whole(0, 1) == 0) limits.difference = about(random, e.difference.value);
  if (random.whole(0, 1) == 0) limits.longest = about(random, e.longest.value);
  limits.shortest = about(random, e.shortest.value);
  return limits;
}

} // namespace

TEST_CASE("asked only whether limits hold, an envelope answers as the whole one does, with less work") {
  RandomInputs random;
  long boxes = 0;
  long boxes_of_whole = 0;
  for (int i = 0; i < 300; ++i) {
    const Layout s = any_layout(random);
    EnvelopeOptions options;
    options.with_speed_variation = false;
    options.budget = 20000;
    const DrivelineTolerance t = i % 2 == 0 ? DrivelineTolerance{} : any_tolerance(random);
    const TolerantEnvelope whole = driveline_envelope(s.driveline, s.pin, t, s.range, options);
    options.limits = some_limits(random, whole.envelope);
    const TolerantEnvelope asked = driveline_envelope(s.driveline, s.pin, t, s.range, options);
    const LimitCheck expected = check_limits(whole.envelope, *options.limits);
    const LimitCheck found = check_limits(asked.envelope, *options.limits);
    // Where the limit lies within the gap, the narrower question may be answered and the wider one not.
    if (expected.holds) CHECK(found.holds);
    if (expected.broken != LimitKind::none) CHECK_FALSE(found.holds);
    if (found.broken != LimitKind::none) CHECK_FALSE(expected.holds);
    boxes += asked.envelope.boxes;
    boxes_of_whole += whole.envelope.boxes;
  }
  CHECK(boxes < boxes_of_whole);
}
