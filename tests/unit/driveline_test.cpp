#include <fieldshaft/driveline.hpp>
#include <fieldshaft/hitch.hpp>

#include "close.hpp"

#include <limits>

using namespace fieldshaft;

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();

/// The rear joint a given distance behind the pin, everything in one level plane.
Driveline level(Length rear_behind_pin) {
  Driveline driveline;
  driveline.front_joint = millimetres(100);
  driveline.rear_joint = millimetres(100);
  driveline.input = Position(-(rear_behind_pin + millimetres(100)), Length{}, Length{});
  return driveline;
}

Position pin_behind_joint(Length distance) { return {-(millimetres(100) + distance), Length{}, Length{}}; }

Telescope telescope() { return {millimetres(900), {millimetres(500), {}}, {}}; }

} // namespace

TEST_CASE("closed forms in one plane") {
  CHECK_CLOSE(planar_centre_distance(metres(0.3), metres(0.7), degrees(60)).value(), 0.8888194417315589, 1e-15);
  const PlanarJointAngles angles = planar_joint_angles(metres(0.3), metres(0.7), degrees(60));
  CHECK_CLOSE(angles.front.value(), degrees(43.00391194282281).value(), 1e-14);
  CHECK_CLOSE(angles.rear.value(), degrees(16.996088057177182).value(), 1e-14);
  CHECK(planar_centre_distance(metres(0.5), metres(0.5), degrees(180)).value() < 1e-15);
  CHECK_THROWS_AS(planar_centre_distance(metres(0), metres(0.5), degrees(10)), InputError);
  CHECK_THROWS_AS(planar_centre_distance(metres(0.5), metres(-0.5), degrees(10)), InputError);
  CHECK_THROWS_AS(planar_centre_distance(metres(0.5), metres(0.5), degrees(not_a_number)), InputError);
  CHECK_THROWS_AS(planar_joint_angles(metres(0.5), metres(0.5), degrees(180)), InputError);
  CHECK_THROWS_AS(planar_joint_angles(metres(not_a_number), metres(0.5), degrees(10)), InputError);
  CHECK_THROWS_AS(planar_joint_angles(metres(0.5), metres(0), degrees(10)), InputError);
}

TEST_CASE("a turn in one plane: the state is that of the closed forms, to both sides") {
  for (const double b : {0.5, 0.8}) {
    for (const double turn : {-60.0, -20.0, 10.0, 45.0}) {
      const DrivelineState s = driveline_at(level(metres(b)), {pin_behind_joint(metres(0.5)), {degrees(turn), {}, {}}});
      const PlanarJointAngles expected = planar_joint_angles(metres(0.5), metres(b), math::abs(degrees(turn)));
      CHECK_CLOSE(s.front_angle.value(), expected.front.value(), 1e-14);
      CHECK_CLOSE(s.rear_angle.value(), expected.rear.value(), 1e-14);
      CHECK_CLOSE(s.length.value(), planar_centre_distance(metres(0.5), metres(b), degrees(turn)).value(), 1e-14);
      CHECK(s.plane_angle.value() == doctest::Approx(0.0)); // a turn: both planes are the same one
      const auto pair = joint_pair_extremes(s.front_angle, s.rear_angle, Angle{}, radians_per_second(1));
      CHECK(s.speed_variation == doctest::Approx(pair.largest_ratio - pair.least_ratio).epsilon(1e-9));
    }
  }
}

TEST_CASE("equal distances from the pin: equal angles, a smooth pair at any turn") {
  for (const double turn : {5.0, 40.0, 80.0}) {
    const DrivelineState s = driveline_at(level(metres(0.5)), {pin_behind_joint(metres(0.5)), {degrees(turn), {}, {}}});
    CHECK_CLOSE(s.front_angle.value(), degrees(0.5 * turn).value(), 1e-14);
    CHECK(math::abs(s.difference).value() < 1e-14);
    CHECK(s.speed_variation < 1e-14);
  }
}

TEST_CASE("a raised implement input: a Z, planes half a turn apart, smooth for parallel shafts") {
  Driveline d = level(metres(0.5));
  d.input = Position(metres(-0.6), metres(0.1), metres(0.3));
  const DrivelineState s = driveline_at(d, {pin_behind_joint(metres(0.5)), {}});
  CHECK(math::abs(s.plane_angle).value() == doctest::Approx(pi));
  CHECK(math::abs(s.phase).value() < 1e-15);
  CHECK_CLOSE(s.front_angle.value(), std::atan2(std::hypot(0.1, 0.3), 1.0), 1e-15);
  CHECK_CLOSE(s.front_angle.value(), s.rear_angle.value(), 1e-14);
  CHECK(s.speed_variation < 1e-13);
}

TEST_CASE("planes and phase out of one plane agree with the joint module") {
  Driveline d = level(metres(0.7));
  d.input = Position(metres(-0.8), metres(0.05), metres(0.25));
  d.input_direction = Direction::ahead(degrees(3), degrees(-5));
  d.yoke_phase = degrees(17);
  const DrivelineState s = driveline_at(d, {pin_behind_joint(metres(0.5)), {degrees(35), degrees(6), degrees(-8)}});
  CHECK_CLOSE(s.phase.value(), relative_phase(d.yoke_phase, s.plane_angle).value(), 1e-13);
  const auto pair = joint_pair_extremes(s.front_angle, s.rear_angle, s.phase, radians_per_second(1));
  CHECK_CLOSE(s.speed_variation, pair.largest_ratio - pair.least_ratio, 1e-12);
}

TEST_CASE("a wide-angle joint adds no speed variation of its own") {
  Driveline d = level(metres(0.9));
  const Pose pose{pin_behind_joint(metres(0.3)), {degrees(40), {}, {}}};
  d.wide_angle_front = true;
  const DrivelineState s = driveline_at(d, pose);
  CHECK_CLOSE(s.speed_variation, joint_speed_variation(s.rear_angle), 1e-12);
  d.wide_angle_front = false;
  d.wide_angle_rear = true;
  CHECK_CLOSE(driveline_at(d, pose).speed_variation, joint_speed_variation(s.front_angle), 1e-12);
  d.wide_angle_front = true;
  CHECK(driveline_at(d, pose).speed_variation == 0.0);
}

TEST_CASE("a joint at 90° or more varies without limit and never passes for a number") {
  const Pose pose{pin_behind_joint(metres(0.1)), {degrees(120), {}, {}}};
  const DrivelineState s = driveline_at(level(metres(0.9)), pose);
  CHECK(s.front_angle > degrees(90));
  CHECK(std::isinf(s.speed_variation));
}

TEST_CASE("overlap of two and of three members") {
  CHECK_CLOSE(overlap_at(telescope(), millimetres(1100)).value(), 0.3, 1e-14);
  CHECK_CLOSE(overlap_at(telescope(), millimetres(1450)).value(), -0.05, 1e-13);
  Telescope three = telescope();
  three.second_slide = Slide{millimetres(350), millimetres(200)};
  // 200 mm further out: the short slide may give it all, down to 150 mm.
  CHECK_CLOSE(overlap_at(three, millimetres(1100)).value(), 0.15, 1e-13);
  // 400 mm further out: its stop holds it at 150 mm, the first one may have given 400 mm.
  CHECK_CLOSE(overlap_at(three, millimetres(1300)).value(), 0.1, 1e-13);
  Driveline d = level(metres(0.5));
  CHECK_FALSE(driveline_at(d, {pin_behind_joint(metres(0.5)), {}}).overlap.has_value());
  d.telescope = telescope();
  CHECK_CLOSE(driveline_at(d, {pin_behind_joint(metres(0.5)), {}}).overlap.value().value(), 0.4, 1e-13);
}

TEST_CASE("impossible drivelines are refused") {
  const Pose pose{pin_behind_joint(metres(0.5)), {}};
  const Driveline good = level(metres(0.5));
  const auto broken = [&good](auto change) {
    Driveline d = good;
    change(d);
    return d;
  };
  CHECK_THROWS_WITH_AS(driveline_at(broken([](Driveline& d) { d.front_joint = metres(-0.1); }), pose),
                       "driveline_at: front_joint = -0.1 m; allowed: a finite number, at least 0 m", InputError);
  CHECK_THROWS_AS(driveline_at(broken([](Driveline& d) { d.rear_joint = metres(not_a_number); }), pose), InputError);
  CHECK_THROWS_AS(driveline_at(broken([](Driveline& d) { d.yoke_phase = degrees(not_a_number); }), pose), InputError);
  CHECK_THROWS_AS(driveline_at(good, {pose.pin, {degrees(not_a_number), {}, {}}}), InputError);
  const auto with = [&](Telescope t) { return broken([t](Driveline& d) { d.telescope = t; }); };
  CHECK_THROWS_AS(driveline_at(with({metres(0), {metres(0.1), {}}, {}}), pose), InputError);
  CHECK_THROWS_AS(driveline_at(with({metres(0.5), {metres(0.6), {}}, {}}), pose),
                  InputError); // members longer than all
  CHECK_THROWS_AS(driveline_at(with({metres(0.5), {metres(0), {}}, {}}), pose), InputError);
  CHECK_THROWS_AS(driveline_at(with({metres(0.5), {metres(0.2), metres(-1)}, {}}), pose), InputError);
  CHECK_THROWS_AS(driveline_at(with({metres(0.5), {metres(0.2), {}}, Slide{metres(not_a_number), {}}}), pose),
                  InputError);
  CHECK_THROWS_AS(overlap_at(telescope(), metres(0)), InputError);
  Driveline folded = level(metres(0.5));
  CHECK_THROWS_AS(driveline_at(folded, {Position(metres(0.4), Length{}, Length{}), {}}), InputError); // centres meet
}

namespace {

AttitudeRange flat(Angle turn) { return {either_side(turn), {}, {}, {}}; }

Position pin_half_metre() { return pin_behind_joint(metres(0.5)); }

} // namespace

TEST_CASE("envelope of the drawing-board case: closed forms") {
  const DrivelineEnvelope e = driveline_envelope(level(metres(0.5)), pin_half_metre(), flat(degrees(60)));
  const double gap = degrees(0.01).value();
  CHECK(e.front_angle.lower <= degrees(30));
  CHECK(e.front_angle.upper >= degrees(30));
  CHECK(e.rear_angle.gap.value() <= gap * 1.0001);
  CHECK(e.longest.lower <= metres(1));
  CHECK(e.longest.upper >= metres(1));
  CHECK_CLOSE(e.shortest.value.value(), std::cos(pi / 6), 1e-4);
  CHECK(e.difference.upper.value() <= gap * 1.0001); // equal angles throughout
  CHECK(e.speed_variation->upper <= 5.01e-4);
  for (const bool proved : {e.front_angle.proved, e.rear_angle.proved, e.difference.proved, e.longest.proved,
                            e.shortest.proved, e.speed_variation->proved})
    CHECK(proved);
}

TEST_CASE("a range of one attitude is that attitude") {
  const Attitude a{degrees(20), degrees(5), degrees(-3)};
  const AttitudeRange one{{a.yaw, a.yaw}, {a.pitch, a.pitch}, {a.roll, a.roll}, {}};
  const DrivelineEnvelope e = driveline_envelope(level(metres(0.7)), pin_half_metre(), one);
  const DrivelineState s = driveline_at(level(metres(0.7)), {pin_half_metre(), a});
  CHECK(e.front_angle.value == s.front_angle);
  CHECK(e.longest.value == s.length);
  CHECK(e.shortest.value == s.length);
  CHECK(e.front_angle.gap < degrees(1e-4));
}

TEST_CASE("joints past their lock: the speed variation has no bound and never passes") {
  Driveline d = level(metres(0.9));
  const DrivelineEnvelope e = driveline_envelope(d, pin_behind_joint(metres(0.1)), flat(degrees(120)));
  CHECK(e.front_angle.upper > degrees(90));
  CHECK(std::isinf(e.speed_variation->upper));
  d.wide_angle_front = true;
  const DrivelineEnvelope w = driveline_envelope(d, pin_behind_joint(metres(0.1)), flat(degrees(40)));
  CHECK_CLOSE(w.speed_variation->value, joint_speed_variation(w.rear_angle.value), 1e-13);
  d.wide_angle_rear = true;
  CHECK(driveline_envelope(d, pin_half_metre(), flat(degrees(40))).speed_variation->upper == 0.0);
}

TEST_CASE("impossible ranges and options are refused") {
  const Driveline d = level(metres(0.5));
  const auto envelope = [&d](const AttitudeRange& range, const EnvelopeOptions& options = {}) {
    return driveline_envelope(d, pin_half_metre(), range, options);
  };
  CHECK_THROWS_AS(envelope({{degrees(1), degrees(-1)}, {}, {}, {}}), InputError);
  CHECK_THROWS_AS(envelope({either_side(degrees(not_a_number)), {}, {}, {}}), InputError);
  AttitudeRange empty = flat(degrees(10));
  empty.couplings.push_back({1.0, 0.0, 0.0, degrees(-20)});
  CHECK_THROWS_WITH_AS(
      envelope(empty),
      "driveline_envelope: range = no attitude keeps all couplings; allowed: a range that is not empty", InputError);
  EnvelopeOptions options;
  options.angle_gap = Angle{};
  CHECK_THROWS_AS(envelope(flat(degrees(10)), options), InputError);
  options = {};
  options.length_gap = metres(not_a_number);
  CHECK_THROWS_AS(envelope(flat(degrees(10)), options), InputError);
  options = {};
  options.variation_gap = -1.0;
  CHECK_THROWS_AS(envelope(flat(degrees(10)), options), InputError);
  options = {};
  options.budget = 0;
  CHECK_THROWS_AS(envelope(flat(degrees(10)), options), InputError);
  // Folded up by half a turn the joint centres meet.
  CHECK_THROWS_AS(envelope(flat(degrees(180))), InputError);
}

TEST_CASE("distances of 14, 16 and 20 in from shaft end to pin: the joint nearer to the pin bends more") {
  // Front joint 4 in behind the shaft end, rear joint 20 in behind the pin, 50° of turn.
  Driveline d = level(inches(20));
  d.front_joint = inches(4);
  double last_front = 90.0;
  for (const double distance : {14.0, 16.0, 20.0}) {
    const Position pin = pin_position({inches(distance), Length{}, Length{}});
    const DrivelineEnvelope e = driveline_envelope(d, pin, flat(degrees(50)));
    const PlanarJointAngles expected = planar_joint_angles(inches(distance - 4), inches(20), degrees(50));
    CHECK(e.front_angle.lower <= expected.front * (1 + 1e-12));
    CHECK(e.front_angle.upper >= expected.front * (1 - 1e-12));
    CHECK(e.front_angle.lower > e.rear_angle.upper);
    CHECK(in(e.front_angle.value, unit::degree) < last_front); // a longer drawbar eases the front joint
    last_front = in(e.front_angle.value, unit::degree);
  }
  CHECK_CLOSE(equal_angle_pin_distance(d).value(), inches(24).value(), 1e-15);
}

TEST_CASE("tolerances: one measurement in line moves the length by itself and is named") {
  DrivelineTolerance t;
  t.pin_distance = millimetres(10);
  t.input_left = millimetres(1);
  const TolerantEnvelope e = driveline_envelope(level(metres(0.5)), pin_half_metre(), t, flat(degrees(40)));
  CHECK(e.longest.measurement == Measurement::pin_distance);
  CHECK_CLOSE(e.longest.amount.value(), 0.01, 1e-9);
  CHECK(e.envelope.longest.value >= metres(1.01) * (1 - 1e-12));
  CHECK(e.envelope.longest.upper <= metres(1.0113));
  CHECK(e.envelope.shortest.lower <= metres(std::cos(degrees(20).value()) - 0.009));
  t.pin_distance = millimetres(-1);
  CHECK_THROWS_AS(driveline_envelope(level(metres(0.5)), pin_half_metre(), t, flat(degrees(40))), InputError);
  t.pin_distance = millimetres(990);
  CHECK_THROWS_AS(driveline_envelope(level(metres(0.5)), pin_half_metre(), t, flat(degrees(40))), InputError);
  t = {};
  t.input_direction = degrees(60);
  CHECK_THROWS_AS(driveline_envelope(level(metres(0.5)), pin_half_metre(), t, flat(degrees(40))), InputError);
}

TEST_CASE("tolerances: the difference of the angles is greatest where they act, not where it was without them") {
  // Input shaft 3° to the left of the implement's axis, joint centres 490 mm and 510 mm from the pin: at a turn t to
  // the right the front joint bends by a = atan2(510 sin t, 490 + 510 cos t), the rear one by t + 3° - a. As measured
  // the difference is 3° straight on and 2.2° at 40°; with the pin 30 mm further back it is 3.4° there.
  const Angle lean = degrees(3);
  Driveline d = level(metres(0.51));
  d.input_direction = Direction::ahead(lean, Angle{});
  d.input = Position(-(metres(0.51) + millimetres(100) * math::cos(lean)), -(millimetres(100) * math::sin(lean)), {});
  const AttitudeRange turn{{Angle{}, degrees(40)}, {}, {}, {}};
  const Position pin = pin_behind_joint(metres(0.49));
  const auto difference = [&](double ahead, double degrees_turned) {
    const double t = degrees(degrees_turned).value();
    return std::abs(2.0 * std::atan2(0.51 * std::sin(t), ahead + 0.51 * std::cos(t)) - t - lean.value());
  };
  const DrivelineEnvelope stated = driveline_envelope(d, pin, turn);
  CHECK_CLOSE(stated.difference.value.value(), difference(0.49, 0.0), 1e-3);
  CHECK(stated.difference.upper.value() < difference(0.52, 40.0));
  DrivelineTolerance t;
  t.pin_distance = millimetres(30);
  const Extreme<Angle> loose = driveline_envelope(d, pin, t, turn).envelope.difference;
  CHECK(loose.upper.value() >= difference(0.52, 40.0));
  // Not wider than the centre line can turn at either end: 30 mm across at least 900 mm.
  CHECK(loose.upper.value() <= difference(0.49, 0.0) + 2.0 * std::asin(0.03 / 0.90));
}

TEST_CASE("tube lengths: interval, smallest cut, and the conflict that leaves none") {
  const Telescope t{millimetres(1000), {millimetres(600), {}}, {}};
  const TubeLengths cut = tube_lengths(t, millimetres(1150), millimetres(950));
  // Dead length 400: (1150 + 150 + 400)/2 = 850; by a third: (1150 + 2/3 400)/(5/3) = 850.
  CHECK_CLOSE(cut.least_closed.value(), 0.85, 1e-14);
  CHECK_CLOSE(cut.greatest_closed.value(), 0.9, 1e-14);
  CHECK(cut.suits);
  CHECK_CLOSE(cut.cut.value(), 0.1, 1e-12);
  CHECK_CLOSE(cut.overlap_at_longest.value(), 0.25, 1e-12);
  CHECK_CLOSE(cut.clearance_at_shortest.value(), 0.05, 1e-12);
  const TubeLengths none = tube_lengths(t, millimetres(1250), millimetres(1100));
  CHECK(none.cut == Length{});
  CHECK(none.suits);
  CHECK_CLOSE(none.overlap_at_longest.value(), 0.35, 1e-12);
  const TubeLengths conflict = tube_lengths(t, millimetres(1500), millimetres(950));
  CHECK_FALSE(conflict.suits);
  CHECK(conflict.too_long > Length{});
  // A longest position shorter by twice the shortfall opens it, by the absolute rule alone.
  TubeRules absolute;
  absolute.overlap_share.value = 0.0;
  const TubeLengths closed = tube_lengths(t, millimetres(1500), millimetres(950), absolute);
  CHECK(
      tube_lengths(t, millimetres(1500) - 2.0 * closed.too_long - millimetres(1e-6), millimetres(950), absolute).suits);
  const TubeLengths short_tubes = tube_lengths(t, millimetres(1600), millimetres(1500));
  CHECK_FALSE(short_tubes.suits);
  CHECK(short_tubes.missing_tube > Length{});
  CHECK_THROWS_AS(tube_lengths(t, millimetres(900), millimetres(950)), InputError);
  CHECK_THROWS_AS(tube_lengths(t, millimetres(not_a_number), millimetres(950)), InputError);
  CHECK_THROWS_AS(tube_lengths(t, millimetres(950), millimetres(0)), InputError);
  TubeRules bad;
  bad.overlap_share.value = 1.0;
  CHECK_THROWS_AS(tube_lengths(t, millimetres(950), millimetres(950), bad), InputError);
  bad = {};
  bad.clearance.value = millimetres(-1);
  CHECK_THROWS_AS(tube_lengths(t, millimetres(950), millimetres(950), bad), InputError);
  bad = {};
  bad.minimum_overlap.value = millimetres(not_a_number);
  CHECK_THROWS_AS(tube_lengths(t, millimetres(950), millimetres(950), bad), InputError);
}

TEST_CASE("tube lengths of three members: either slide may give all, a stop holds it early, and stops end the whole") {
  Telescope t{millimetres(1000), {millimetres(600), {}}, Slide{millimetres(500), {}}};
  const TubeLengths loose = tube_lengths(t, millimetres(1150), millimetres(950));
  // Dead lengths 400 and 500: the second one decides, (1150 + 150 + 500)/2.
  CHECK_CLOSE(loose.least_closed.value(), 0.9, 1e-14);
  CHECK_CLOSE(loose.cut.value(), 0.1, 1e-12);
  CHECK_CLOSE(loose.overlap_at_longest.value(), 0.15, 1e-12); // 500 - 100 cut - 250 out
  CHECK_FALSE(greatest_length(t).has_value());
  t.second_slide->greatest_travel = millimetres(300); // keeps 200 in: more than 150, more than a third
  const TubeLengths held = tube_lengths(t, millimetres(1150), millimetres(950));
  CHECK_CLOSE(held.least_closed.value(), 0.85, 1e-14);
  CHECK_CLOSE(held.overlap_at_longest.value(), 0.2, 1e-12);
  t.slide.greatest_travel = millimetres(390);
  CHECK_CLOSE(greatest_length(t).value().value(), 1.69, 1e-14);
  const TubeLengths both = tube_lengths(t, millimetres(1150), millimetres(950));
  // A cut x leaves 1000 - x closed and travels of 390 - x and 300 - x: 1690 - 3x = 1150.
  CHECK_CLOSE(both.least_closed.value(), 0.82, 1e-12);
  // Two members with a stop come out to 1000 - x + 400 - x.
  const Telescope two{millimetres(1000), {millimetres(600), millimetres(400)}, {}};
  CHECK_CLOSE(tube_lengths(two, millimetres(1390), millimetres(1100)).least_closed.value(), 0.995, 1e-12);
}

namespace {

/// Links and top link of one length and one direction: the implement stays level at every lift.
ThreePointLinkage parallel_linkage() {
  ThreePointLinkage linkage;
  linkage.lower_link = metres(0.9);
  linkage.top_pivot_below = metres(-0.5);
  linkage.top_link = metres(0.9);
  linkage.mast_height = metres(0.5);
  return linkage;
}

Driveline between_links() {
  Driveline driveline;
  driveline.front_joint = millimetres(60);
  driveline.rear_joint = millimetres(60);
  driveline.input = Position(metres(-0.3), Length{}, Length{});
  return driveline;
}

MountedRange lifts(double low, double high) {
  MountedRange range;
  range.lift = {metres(low), metres(high)};
  return range;
}

MountedSurroundings two_links() {
  return {{millimetres(50), {}, {}, {}}, LowerLinkRods{metres(0.6), metres(0.6), millimetres(30)}};
}

} // namespace

TEST_CASE("lower links move with the lift: the clearance of a driveline between them has a closed form") {
  const auto clear = [](double low, double high, const MountedTolerance& tolerance = {}) {
    return least_clearance(between_links(), parallel_linkage(), tolerance, lifts(low, high), two_links(),
                           millimetres(0.1));
  };
  CHECK_CLOSE(clear(0.0, 0.0).least.value.value(), 0.22, 1e-9);
  const MountedClearance through = clear(-0.3, 0.3);
  CHECK(through.least.lower <= metres(0.22));
  CHECK(through.least.lower.value() > 0.22 - 2e-4);
  // In the side view the joint at the stub is nearest to a raised link: 60 mm times the sine of its rise.
  const double apart = 0.06 * 0.2 / 0.9;
  const MountedClearance raised = clear(0.2, 0.4);
  CHECK_CLOSE(raised.least.value.value(), std::sqrt(0.09 + apart * apart) - 0.08, 1e-4);
  CHECK_CLOSE(raised.at.lift.value(), 0.2, 1e-3);
  MountedTolerance tolerance;
  tolerance.lower_pivot_below = millimetres(10);
  CHECK(clear(0.2, 0.4, tolerance).least.lower < raised.least.lower);
  // Links that meet the driveline foul by both radii and no more.
  MountedSurroundings crossing = two_links();
  crossing.links->pivot_span = crossing.links->hitch_span = Length{};
  const Extreme<Length> touching =
      least_clearance(between_links(), parallel_linkage(), {}, lifts(0.0, 0.0), crossing).least;
  CHECK_CLOSE(touching.value.value(), -0.08, 1e-9);
}

TEST_CASE("surroundings of a mounted machine: nothing stated, negative radii and lifts out of reach are refused") {
  MountedSurroundings nothing;
  const auto ask = [](const MountedSurroundings& around, const MountedRange& range) {
    return least_clearance(between_links(), parallel_linkage(), {}, range, around);
  };
  CHECK_THROWS_AS(ask(nothing, lifts(0.0, 0.1)), InputError);
  MountedSurroundings bad = two_links();
  bad.links->radius = millimetres(-1);
  CHECK_THROWS_AS(ask(bad, lifts(0.0, 0.1)), InputError);
  bad = two_links();
  bad.links->hitch_span = metres(not_a_number);
  CHECK_THROWS_AS(ask(bad, lifts(0.0, 0.1)), InputError);
  CHECK_THROWS_AS(ask(two_links(), lifts(0.0, 1.0)), InputError);
  MountedRange twice = lifts(0.0, 0.1);
  twice.sway = {metres(-0.05), metres(0.05)};
  twice.yaw = either_side(degrees(3));
  ThreePointLinkage swaying = parallel_linkage();
  swaying.convergence = metres(2);
  swaying.span = metres(0.8);
  const auto both_ways = [&swaying](const MountedRange& range) {
    return driveline_envelope(between_links(), swaying, {}, range);
  };
  CHECK_THROWS_WITH_AS(both_ways(twice), doctest::Contains("range.yaw = beside a sway"), InputError);
  twice.sway = {};
  twice.difference = {metres(-0.05), metres(0.05)};
  twice.roll = either_side(degrees(3));
  CHECK_THROWS_WITH_AS(both_ways(twice), doctest::Contains("range.roll = beside a height difference"), InputError);
}

TEST_CASE("tolerances of a linkage that cannot be, or within which it may not close, are refused") {
  MountedTolerance tolerance;
  const auto envelope = [&tolerance] {
    return driveline_envelope(between_links(), parallel_linkage(), tolerance, lifts(0.0, 0.1));
  };
  tolerance.mast = millimetres(-1);
  CHECK_THROWS_WITH_AS(envelope(), doctest::Contains("driveline_envelope: tolerance = -0.001 m"), InputError);
  tolerance = {};
  tolerance.top_link = metres(0.8);
  CHECK_THROWS_WITH_AS(envelope(), doctest::Contains("a height at which the linkage closes within all tolerances"),
                       InputError);
  MountedSurroundings bad = two_links();
  bad.links->pivot_span = millimetres(-1);
  CHECK_THROWS_WITH_AS(least_clearance(between_links(), parallel_linkage(), {}, lifts(0.0, 0.1), bad),
                       doctest::Contains("links.pivot_span = -0.001 m"), InputError);
}

TEST_CASE("a support wheel that cannot be, or does not reach the ground, is refused") {
  const auto envelope = [](const SupportWheel& wheel, double lift) {
    return driveline_envelope(between_links(), parallel_linkage(), wheel, {}, lifts(lift, lift));
  };
  CHECK(envelope({metres(2), metres(0.45), metres(0.45)}, 0.0).envelope.longest.value > Length{});
  const auto refused = [&envelope](const SupportWheel& wheel, double lift) {
    CHECK_THROWS_AS(envelope(wheel, lift), InputError);
    try {
      envelope(wheel, lift);
    } catch (const InputError& error) {
      return error.parameter() + ": " + error.allowed();
    }
    return std::string("nothing");
  };
  CHECK(refused({Length{}, metres(0.45), metres(0.45)}, 0.0) == "wheel.behind: a finite number above 0 m");
  CHECK(refused({metres(2), metres(-1), metres(0.45)}, 0.0) == "wheel.below: a finite number, at least 0 m");
  CHECK(refused({metres(2), metres(0.45), metres(not_a_number)}, 0.0) ==
        "wheel.ground_below_pivot: a finite number, at least 0 m");
  CHECK(refused({metres(0.3), metres(0.1), metres(2)}, 0.0) == "lift: a height at which the wheel reaches the ground");
}

TEST_CASE("a budget of nothing and a range of nothing have no clearance") {
  const Driveline d = level(metres(0.5));
  const Surroundings around{millimetres(50),
                            {{Position(metres(-0.3), metres(0.4), Length{}),
                              Position(metres(-0.3), metres(0.4), metres(0.1)), millimetres(20)}},
                            {},
                            {}};
  const auto clear = [&](const AttitudeRange& range, int budget) {
    return least_clearance(d, pin_half_metre(), range, around, millimetres(10), budget);
  };
  CHECK(clear(flat(degrees(5)), 1000).value > Length{});
  CHECK_THROWS_WITH_AS(clear(flat(degrees(5)), 0), doctest::Contains("least_clearance: budget = 0"), InputError);
  AttitudeRange empty = flat(degrees(10));
  empty.couplings.push_back({1.0, 0.0, 0.0, degrees(-20)});
  CHECK_THROWS_WITH_AS(clear(empty, 1000), doctest::Contains("least_clearance: range = no attitude"), InputError);
  CHECK_THROWS_WITH_AS(detail::chain_over(d, d, Angle{}, pin_half_metre(), empty, {}),
                       doctest::Contains("chain_envelope: range = no attitude"), InputError);
  CHECK_THROWS_WITH_AS(
      least_clearance(between_links(), parallel_linkage(), {}, lifts(0.0, 0.1), two_links(), millimetres(10), 0),
      doctest::Contains("least_clearance: budget = 0"), InputError);
}

TEST_CASE("a cut list is given only where two lengths measured by hand agree with the model") {
  const Driveline d = level(metres(0.5));
  const Telescope t{millimetres(900), {millimetres(600), {}}, {}};
  const DrivelineEnvelope e = driveline_envelope(d, pin_half_metre(), flat(degrees(60)));
  const auto measured = [&](Angle turn, Length length) {
    return check_length(d, {pin_half_metre(), {turn, {}, {}}}, length, millimetres(5), millimetres(5));
  };
  const LengthCheck straight = measured(Angle{}, millimetres(1008));
  const LengthCheck turned = measured(degrees(60), millimetres(866));
  CHECK(straight.agrees);
  CHECK(turned.agrees);
  const auto good = checked_tube_lengths(t, e.longest, e.shortest, {straight, turned});
  CHECK(good.valid());
  CHECK(good.value.tubes.suits);
  CHECK(good.value.tubes.cut > millimetres(83.9)); // 900 - (866.0 - 50)
  CHECK(good.value.tubes.cut < millimetres(84.1));
  CHECK(math::abs(good.value.shortest_at.yaw) == degrees(60));
  CHECK(checked_tube_lengths(t, e.longest, e.shortest, {straight}).outside == outside_unchecked_lengths);
  const auto bad = checked_tube_lengths(t, e.longest, e.shortest, {straight, measured(degrees(60), millimetres(890))});
  CHECK(bad.outside == outside_measured_lengths);
  CHECK_THROWS_AS(measured(Angle{}, Length{}), InputError);
  CHECK_THROWS_AS(check_length(d, {pin_half_metre(), {}}, metres(1), metres(-1), Length{}), InputError);
  CHECK_THROWS_AS(check_length(d, {pin_half_metre(), {}}, metres(1), Length{}, metres(not_a_number)), InputError);
}

TEST_CASE("turn limit: half of the turn goes to each joint, and to each side alike") {
  const Driveline d = level(metres(0.5));
  DrivelineLimits limits;
  limits.front_angle = degrees(35);
  limits.rear_angle = degrees(35);
  const TurnLimits turn = turn_limit(d, pin_half_metre(), flat(degrees(90)), limits);
  for (const TurnLimit& side : {turn.left, turn.right}) {
    CHECK(side.straight_ahead);
    CHECK(side.allowed <= degrees(70));
    CHECK(side.allowed >= degrees(69.97));
    CHECK(side.broken >= side.allowed);
    CHECK(side.broken <= degrees(70.01));
    CHECK((side.kind == LimitKind::front_angle || side.kind == LimitKind::rear_angle));
  }
  CHECK(turn.left.at.yaw < Angle{});
  CHECK(turn.right.at.yaw > Angle{});
  limits = {};
  limits.shortest = millimetres(900); // cos(turn/2) = 0.9
  CHECK_CLOSE(turn_limit(d, pin_half_metre(), flat(degrees(90)), limits).left.allowed.value(), 2 * std::acos(0.9),
              1e-3);
  limits.shortest = millimetres(1100);
  const TurnLimits never = turn_limit(d, pin_half_metre(), flat(degrees(90)), limits);
  CHECK_FALSE(never.left.straight_ahead);
  CHECK(never.left.kind == LimitKind::shortest);
  limits = {};
  limits.longest = metres(2);
  const TurnLimits always = turn_limit(d, pin_half_metre(), flat(degrees(90)), limits);
  CHECK(always.right.allowed == degrees(90));
  CHECK(always.right.kind == LimitKind::none);
  CHECK_THROWS_AS(turn_limit(d, pin_half_metre(), flat(degrees(90)), {}), InputError);
  limits.front_angle = degrees(-1);
  CHECK_THROWS_AS(turn_limit(d, pin_half_metre(), flat(degrees(90)), limits), InputError);
  limits.front_angle = degrees(30);
  CHECK_THROWS_AS(turn_limit(d, pin_half_metre(), {{degrees(10), degrees(20)}, {}, {}, {}}, limits), InputError);
}

TEST_CASE("turn limit with tolerances: the worst machine within them, by the closed form") {
  const Driveline d = level(metres(0.5));
  DrivelineLimits limits;
  limits.front_angle = degrees(35);
  limits.rear_angle = degrees(35);
  DrivelineTolerance tolerance;
  tolerance.pin_distance = millimetres(10);
  const TurnLimit left = turn_limit(d, pin_half_metre(), tolerance, flat(degrees(90)), limits).left;
  // The joint nearer to the pin bends more: 490 mm ahead, 500 mm behind.
  const auto nearer = [](Angle turn) { return planar_joint_angles(metres(0.49), metres(0.5), turn).front; };
  CHECK(nearer(left.allowed) <= degrees(35));
  CHECK(nearer(left.allowed + degrees(0.1)) > degrees(35));
  CHECK(turn_limit(d, pin_half_metre(), {}, flat(degrees(90)), limits).left.allowed >= degrees(69.97));
  const TurnLimit coarse = turn_limit(d, pin_half_metre(), tolerance, flat(degrees(90)), limits, degrees(1)).left;
  CHECK(coarse.allowed <= left.allowed + degrees(0.02));
  CHECK(coarse.broken - coarse.allowed <= degrees(1));
  CHECK_THROWS_AS(turn_limit(d, pin_half_metre(), tolerance, flat(degrees(90)), limits, Angle{}), InputError);
  CHECK_THROWS_AS(turn_limit(d, pin_half_metre(), tolerance, flat(degrees(90)), {}), InputError);
  tolerance.pin_drop = metres(-1);
  CHECK_THROWS_AS(turn_limit(d, pin_half_metre(), tolerance, flat(degrees(90)), limits), InputError);
}

TEST_CASE("turn limit over pitch: a curve whose points are proved one by one") {
  Driveline d = level(metres(0.6));
  d.input = Position(metres(-0.7), Length{}, metres(0.2));
  DrivelineLimits limits;
  limits.front_angle = degrees(30);
  AttitudeRange range = flat(degrees(90));
  range.pitch = {degrees(-10), degrees(10)};
  range.roll = either_side(degrees(4));
  const auto curve = turn_limit_over_pitch(d, pin_half_metre(), range, limits, 5);
  REQUIRE(curve.size() == 5);
  CHECK(curve.front().pitch == degrees(-10));
  CHECK(curve.back().pitch == degrees(10));
  const Angle whole = turn_limit(d, pin_half_metre(), range, limits).left.allowed;
  for (const TurnLimitAtPitch& point : curve) CHECK(whole <= point.limits.left.allowed + degrees(0.05));
  CHECK_THROWS_AS(turn_limit_over_pitch(d, pin_half_metre(), range, limits, 1), InputError);
}

TEST_CASE("placement: the pin midway in one plane, and the search finds it too") {
  const Driveline d = level(metres(0.45));
  CHECK_CLOSE(equal_angle_pin_distance(d).value(), 0.55, 1e-14);
  CHECK_CLOSE(equal_angle_rear_joint(d, {metres(0.55), Length{}, Length{}}).value(), 0.45, 1e-14);
  const DrawbarHitch hitch{inches(14), Length{}, Length{}};
  for (const PlacementGoal goal : {PlacementGoal::least_worst_angle, PlacementGoal::least_angle_difference}) {
    const Placement best =
        best_placement(d, hitch, flat(degrees(50)), PlacementParameter::pin_distance, metres(0.3), metres(0.7), goal);
    if (goal == PlacementGoal::least_angle_difference) {
      CHECK_CLOSE(best.place.value(), 0.55, 2e-3);
      CHECK(best.worst < degrees(0.05));
    } else {
      CHECK(best.worst <= degrees(25.02)); // 25° at each joint is the least that two joints can share
    }
  }
  const Placement hole = best_placement(d, hitch, flat(degrees(50)), PlacementParameter::pin_distance,
                                        {inches(14), inches(16), inches(20)}, PlacementGoal::least_worst_angle);
  CHECK(hole.place == inches(20));
  const Placement height =
      best_placement(d, {metres(0.55), Length{}, metres(0.2)}, flat(degrees(50)), PlacementParameter::input_up,
                     metres(-0.2), metres(0.6), PlacementGoal::least_worst_angle);
  CHECK_CLOSE(height.place.value(), 0.2, 0.02); // level with the PTO again
  const Placement behind =
      best_placement(d, {metres(0.55), Length{}, Length{}}, flat(degrees(50)), PlacementParameter::input_behind,
                     metres(0.3), metres(0.9), PlacementGoal::least_angle_difference);
  CHECK_CLOSE(behind.place.value(), 0.55, 2e-3);
  const Placement drop = placement(d, hitch, flat(degrees(50)), PlacementParameter::pin_drop, metres(0.1),
                                   PlacementGoal::least_worst_angle);
  CHECK(drop.place == metres(0.1));
  CHECK_THROWS_AS(best_placement(d, hitch, flat(degrees(50)), PlacementParameter::pin_distance, {},
                                 PlacementGoal::least_worst_angle),
                  InputError);
  CHECK_THROWS_AS(best_placement(d, hitch, flat(degrees(50)), PlacementParameter::pin_distance, metres(0.7),
                                 metres(0.3), PlacementGoal::least_worst_angle),
                  InputError);
  Driveline ahead = d;
  ahead.input = Position(metres(0.5), Length{}, Length{});
  CHECK_THROWS_AS(equal_angle_pin_distance(ahead), InputError);
  CHECK_THROWS_AS(equal_angle_rear_joint(d, {metres(0.05), Length{}, Length{}}), InputError);
}

TEST_CASE("a table for a picture: every row lies within the envelope, and the corners hold it up") {
  Driveline d = level(metres(0.6));
  d.input = Position(metres(-0.7), millimetres(40), metres(0.2));
  const AttitudeRange range{either_side(degrees(40)), {degrees(-8), degrees(6)}, either_side(degrees(5)), {}};
  const auto table = envelope_table(d, pin_half_metre(), range, 9, 5);
  REQUIRE(table.size() == 45);
  CHECK(table.front().yaw == degrees(-40));
  CHECK(table[1].yaw == degrees(-40));
  CHECK(table[1].pitch > table[0].pitch);
  CHECK(table.back().pitch == degrees(6));
  const DrivelineEnvelope e = driveline_envelope(d, pin_half_metre(), range);
  Angle worst{};
  Length shortest = metres(10);
  for (const EnvelopeTableRow& row : table) {
    worst = std::max(worst, row.front_angle);
    shortest = std::min(shortest, row.shortest);
    CHECK(row.shortest <= row.longest);
  }
  CHECK(worst <= e.front_angle.upper + degrees(0.01)); // rows are upper bounds with a gap of their own
  CHECK(worst >= e.front_angle.lower);                 // this layout has its worst angle at a corner
  CHECK(shortest >= e.shortest.lower - millimetres(0.1));
  CHECK_THROWS_AS(envelope_table(d, pin_half_metre(), range, 1, 5), InputError);
  CHECK_THROWS_AS(envelope_table(d, pin_half_metre(), range, 5, 1), InputError);
  CHECK_THROWS_AS(envelope_table(d, pin_half_metre(), with_less_roll_at_full_turn(range, 0.5), 5, 5), InputError);
}
