// The certificate of the envelope under attack: layouts that are ordinary, odd and nearly degenerate, proofs made in
// every rounding mode, attitudes at random and driven to the extremes by a climber, and enclosures as a second opinion.
//
// FIELDSHAFT_ATTACK=1000 attacks a thousand layouts with 100,000 random attitudes each; the tests attack fewer.
// This file is compiled with -frounding-math, so that the rounding mode reaches the proofs.

#include <fieldshaft/driveline.hpp>
#include <fieldshaft/hitch.hpp>

#include "enclosure.hpp"
#include "random.hpp"

#include <cfenv>

using namespace fieldshaft;

namespace {

struct Layout {
  Driveline driveline;
  Position pin;
  AttitudeRange range;
};

AngleRange interval(RandomInputs& random, double most, double width) {
  const double low = random.between(-most, most);
  return {degrees(low), degrees(std::min(most, low + width))};
}

/// Sizes as on farms, off centre.
Layout ordinary(RandomInputs& random) {
  Layout s;
  s.driveline.front_joint = metres(random.between(0.03, 0.2));
  s.driveline.rear_joint = metres(random.between(0.03, 0.2));
  s.driveline.input =
      Position(metres(-random.between(0.4, 1.3)), metres(random.between(-0.2, 0.2)), metres(random.between(-0.2, 0.5)));
  s.driveline.input_direction = Direction::ahead(degrees(random.between(-15, 15)), degrees(random.between(-15, 15)));
  s.driveline.yoke_phase = degrees(random.whole(0, 1) == 0 ? 0.0 : random.between(-90, 90));
  s.pin =
      Position(metres(-random.between(0.2, 0.7)), metres(random.between(-0.2, 0.2)), metres(-random.between(0, 0.5)));
  s.range = {interval(random, 60, 80), interval(random, 15, 20), interval(random, 15, 20), {}};
  return s;
}

/// One thing that comes near a limit of what can be built or computed.
Layout nearly_degenerate(RandomInputs& random) {
  Layout s = ordinary(random);
  const double tiny = random.across(1e-12, 1e-3);
  switch (random.whole(0, 8)) {
  case 0: // ranges of no width, or hardly any
    for (AngleRange* r : {&s.range.yaw, &s.range.pitch, &s.range.roll})
      r->high = r->low + radians(random.whole(0, 1) * tiny);
    break;
  case 1: // joint centres that nearly meet somewhere in the range
    s.pin = Position(metres(-0.3), metres(0.0), metres(0.0));
    s.driveline.front_joint = metres(0.1);
    s.driveline.rear_joint = metres(0.1);
    s.driveline.input = Position(metres(0.1 - tiny), metres(tiny), metres(0.0));
    break;
  case 2: // a shaft near its lock
    s.range.yaw = {degrees(80), degrees(90)};
    break;
  case 3: // everything in one plane, exactly
    s.driveline.input = Position(s.driveline.input.forward(), Length{}, Length{});
    s.driveline.input_direction = Direction();
    s.pin = Position(s.pin.forward(), Length{}, Length{});
    break;
  case 4: // offsets below the smallest normal number
    s.driveline.input = Position(s.driveline.input.forward(), metres(4.9e-324), metres(-4.9e-324));
    s.pin = Position(s.pin.forward(), metres(-1e-310), s.pin.up());
    break;
  case 5: // joints at the shaft ends, and both on the pin
    s.driveline.front_joint = Length{};
    s.driveline.rear_joint = Length{};
    s.driveline.input = Position(metres(-1.0), Length{}, Length{});
    s.pin = Position();
    break;
  case 6: // equal distances: difference 0 all over
    s.pin = Position(metres(-0.5), Length{}, Length{});
    s.driveline.front_joint = metres(0.1);
    s.driveline.rear_joint = metres(0.1);
    s.driveline.input = Position(metres(-0.5), Length{}, Length{});
    s.driveline.input_direction = Direction();
    break;
  case 7: // the whole turn
    s.range.yaw = {degrees(-180), degrees(180)};
    s.range.roll = either_side(degrees(90));
    break;
  default: { // as large as a ship
    const double by = 1.0 / tiny;
    s.driveline.input =
        Position(by * s.driveline.input.forward(), by * s.driveline.input.left(), by * s.driveline.input.up());
    s.pin = Position(by * s.pin.forward(), by * s.pin.left(), by * s.pin.up());
  }
  }
  return s;
}

Attitude any_attitude(RandomInputs& random, const AttitudeRange& range) {
  const auto pick = [&random](const AngleRange& r) {
    switch (random.whole(0, 5)) {
    case 0: return r.low;
    case 1: return r.high;
    default: return std::min(r.high, r.low + random.between(0, 1) * (r.high - r.low));
    }
  };
  return {pick(range.yaw), pick(range.pitch), pick(range.roll)};
}

DrivelineState state_of(const Layout& s, const Attitude& at) { return driveline_at(s.driveline, {s.pin, at}); }

/// By how much each of the six bounds is passed; above 0 is an escape.
constexpr std::size_t bounds = 6;
std::array<double, bounds> excess(const DrivelineEnvelope& e, const DrivelineState& s) {
  return {(s.front_angle - e.front_angle.upper).value(),
          (s.rear_angle - e.rear_angle.upper).value(),
          (math::abs(s.difference) - e.difference.upper).value(),
          (s.length - e.longest.upper).value(),
          (e.shortest.lower - s.length).value(),
          s.speed_variation > e.speed_variation->upper ? 1.0 : s.speed_variation - e.speed_variation->upper};
}

int escapes(const DrivelineEnvelope& e, const DrivelineState& s) {
  const auto over = excess(e, s);
  return static_cast<int>(std::count_if(over.begin(), over.end(), [](double x) { return x > 0.0; }));
}

/// Climbs towards one bound from an attitude: steps along each angle that halve when none helps.
long climb(RandomInputs& random, const Layout& s, const DrivelineEnvelope& e, std::size_t bound, long& poses) {
  Attitude at = any_attitude(random, s.range);
  double best = excess(e, state_of(s, at))[bound];
  double step = 0.25;
  long found = 0;
  while (step > 1e-9) {
    bool better = false;
    for (int axis = 0; axis < 6; ++axis) {
      Attitude next = at;
      Angle* const angles[] = {&next.yaw, &next.pitch, &next.roll};
      const AngleRange* const ranges[] = {&s.range.yaw, &s.range.pitch, &s.range.roll};
      const AngleRange& r = *ranges[axis / 2];
      const double move = (axis % 2 == 0 ? step : -step) * (r.high - r.low).value();
      *angles[axis / 2] = std::clamp(*angles[axis / 2] + radians(move), r.low, r.high);
      const DrivelineState there = state_of(s, next);
      ++poses;
      found += escapes(e, there);
      const double worth = excess(e, there)[bound];
      if (!(worth > best)) continue;
      best = worth;
      at = next;
      better = true;
    }
    if (!better) step *= 0.5;
  }
  return found;
}

enclosure::Vector vector(const Eigen::Vector3d& v) {
  return {enclosure::exactly(v.x()), enclosure::exactly(v.y()), enclosure::exactly(v.z())};
}

struct Enclosed {
  enclosure::Interval front, rear, length;
};

/// Angles and length over a box of attitudes, from the definition of the frames.
Enclosed enclosed(const Layout& s, const AttitudeRange& box) {
  using namespace enclosure;
  const auto of = [](const AngleRange& r) { return Interval{r.low.value(), r.high.value()}; };
  const auto along = [](const Vector& from, const Vector& direction, double distance) {
    const Interval d = exactly(distance);
    return from + Vector{d * direction[0], d * direction[1], d * direction[2]};
  };
  const Vector out = vector(s.driveline.output_direction.unit());
  const Vector in = vector(s.driveline.input_direction.unit());
  const Turn turn = rotation(of(box.yaw), of(box.pitch), of(box.roll));
  const Vector front = along(vector(s.driveline.output.metres()), out, s.driveline.front_joint.value());
  const Vector rear =
      vector(s.pin.metres()) + turn * along(vector(s.driveline.input.metres()), in, s.driveline.rear_joint.value());
  const Vector shaft = rear - front;
  const Vector backward = turn * Vector{-in[0], -in[1], -in[2]};
  return {angle(out, shaft), angle(backward, shaft), length(shaft)};
}

/// The enclosure of one attitude lies within the bounds as far as it can be told; that of the whole range, cut into
/// pieces, holds what the proof says is attained.
void second_opinion(RandomInputs& random, const Layout& s, const DrivelineEnvelope& e) {
  for (int i = 0; i < 20; ++i) {
    const Attitude at = any_attitude(random, s.range);
    const Enclosed there = enclosed(s, {{at.yaw, at.yaw}, {at.pitch, at.pitch}, {at.roll, at.roll}, {}});
    CHECK(there.front.low <= e.front_angle.upper.value());
    CHECK(there.rear.low <= e.rear_angle.upper.value());
    CHECK(there.length.low <= e.longest.upper.value());
    CHECK(there.length.high >= e.shortest.lower.value());
  }
  constexpr int pieces = 12;
  Enclosed all{{9, -9}, {9, -9}, {1e300, -1e300}};
  const auto piece = [](const AngleRange& r, int i) {
    const Angle width = r.high - r.low;
    return AngleRange{r.low + width * (double(i) / pieces),
                      i + 1 == pieces ? r.high : r.low + width * (double(i + 1) / pieces)};
  };
  const auto join = [](enclosure::Interval& a, const enclosure::Interval& b) {
    a = {std::min(a.low, b.low), std::max(a.high, b.high)};
  };
  for (int i = 0; i < pieces * pieces * pieces; ++i) {
    const Enclosed part = enclosed(s, {piece(s.range.yaw, i % pieces),
                                       piece(s.range.pitch, i / pieces % pieces),
                                       piece(s.range.roll, i / pieces / pieces),
                                       {}});
    join(all.front, part.front);
    join(all.rear, part.rear);
    join(all.length, part.length);
  }
  CHECK(e.front_angle.lower.value() <= all.front.high);
  CHECK(e.rear_angle.lower.value() <= all.rear.high);
  CHECK(e.longest.lower.value() <= all.length.high);
  CHECK(e.shortest.upper.value() >= all.length.low);
}

/// The proof made in one rounding mode, judged in the usual one.
DrivelineEnvelope proved(const Layout& s, int mode) {
  EnvelopeOptions options;
  options.budget = 20000;
  struct Mode {
    explicit Mode(int m) { std::fesetround(m); }
    ~Mode() { std::fesetround(FE_TONEAREST); }
  } const in_mode(mode);
  return driveline_envelope(s.driveline, s.pin, s.range, options);
}

int layouts_to_attack() {
  const char* text = std::getenv("FIELDSHAFT_ATTACK");
  return text == nullptr ? 0 : std::atoi(text);
}

} // namespace

TEST_CASE("no attitude escapes an envelope: random and climbing, ordinary and degenerate, in every rounding mode") {
  RandomInputs random;
  const int layouts = layouts_to_attack() > 0 ? layouts_to_attack() : 150;
  const int attitudes = layouts_to_attack() > 0 ? 100000 : 5000;
  constexpr int modes[] = {FE_TONEAREST, FE_UPWARD, FE_DOWNWARD, FE_TOWARDZERO};
  long poses = 0;
  long escaped = 0;
  int refused = 0;
  int attacked = 0;
  for (int i = 0; attacked < layouts; ++i) {
    CAPTURE(i);
    const Layout s = i % 2 == 0 ? ordinary(random) : nearly_degenerate(random);
    DrivelineEnvelope e;
    try {
      e = proved(s, modes[i / 2 % 4]);
    } catch (const InputError&) { // joint centres that meet
      ++refused;
      continue;
    }
    ++attacked;
    const long before = escaped;
    for (int j = 0; j < attitudes; ++j) escaped += escapes(e, state_of(s, any_attitude(random, s.range)));
    poses += attitudes;
    for (int start = 0; start < 3; ++start) {
      for (std::size_t bound = 0; bound < bounds; ++bound) escaped += climb(random, s, e, bound, poses);
    }
    CHECK(escaped == before);
    second_opinion(random, s, e);
  }
  CHECK(escaped == 0);
  CHECK(refused < attacked / 2);
  MESSAGE(poses << " attitudes over " << attacked << " layouts, " << escaped << " escapes, " << refused << " refused");
}

TEST_CASE("the attack would see an escape: bounds tightened by a hundredth are passed") {
  RandomInputs random;
  int seen = 0;
  for (int i = 0; i < 10; ++i) {
    const Layout s = ordinary(random);
    DrivelineEnvelope e = proved(s, FE_TONEAREST);
    e.front_angle.upper = 0.99 * e.front_angle.lower;
    long poses = 0;
    long found = 0;
    for (int start = 0; start < 8; ++start) found += climb(random, s, e, 0, poses);
    seen += found > 0 ? 1 : 0;
  }
  CHECK(seen >= 8);
}
