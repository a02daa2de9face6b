#include <fieldshaft/driveline.hpp>
#include <fieldshaft/hitch.hpp>

#include "close.hpp"

#include <limits>

using namespace fieldshaft;

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();

Driveline level(Length rear_behind_pin) {
  Driveline driveline;
  driveline.front_joint = millimetres(100);
  driveline.rear_joint = millimetres(100);
  driveline.input = Position(-(rear_behind_pin + millimetres(100)), Length{}, Length{});
  return driveline;
}

Position pin_behind_joint(Length distance) { return {-(millimetres(100) + distance), Length{}, Length{}}; }

AttitudeRange flat(Angle turn) { return {either_side(turn), {}, {}, {}}; }

} // namespace

TEST_CASE("a wide-angle joint over the pivot lets the far joint run straight, and off the pivot it does not") {
  CHECK(wide_angle_far_angle(Length{}, metres(0.9), degrees(70)) == Angle{});
  CHECK_CLOSE(in(wide_angle_far_angle(metres(0.1), metres(0.9), degrees(60)), unit::degree), 5.20871910285511, 1e-13);
  // The same through the geometry: front joint 100 mm ahead of and 100 mm behind the pivot.
  for (const double offset : {0.1, -0.05}) {
    Driveline d = level(metres(0.9));
    d.wide_angle_front = true;
    const DrivelineState s = driveline_at(d, {pin_behind_joint(metres(offset)), {degrees(60), {}, {}}});
    CHECK_CLOSE(s.rear_angle.value(), wide_angle_far_angle(metres(offset), metres(0.9), degrees(60)).value(), 1e-12);
  }
  CHECK_THROWS_AS(wide_angle_far_angle(metres(1), metres(0.9), degrees(60)), InputError);
  CHECK_THROWS_AS(wide_angle_far_angle(metres(0.1), metres(0), degrees(60)), InputError);
  CHECK_THROWS_AS(wide_angle_far_angle(metres(not_a_number), metres(0.9), degrees(60)), InputError);
  CHECK_THROWS_AS(wide_angle_far_angle(metres(0.1), metres(0.9), degrees(180)), InputError);
}

TEST_CASE("two crosses in a coupling yoke: their meeting point wanders, unequal halves leave unevenness") {
  CHECK_CLOSE(wide_angle_centre_shift(millimetres(100), degrees(70)).value(), 0.011038729438072803, 1e-12);
  CHECK(wide_angle_centre_shift(millimetres(100), Angle{}) == Length{});
  CHECK_CLOSE(in(wide_angle_shortening(millimetres(100), degrees(120)), unit::millimetre), 25.0, 1e-12); // a quarter
  CHECK(wide_angle_shortening(millimetres(100), degrees(119)) < millimetres(25));
  CHECK(wide_angle_shortening(millimetres(100), degrees(121)) < millimetres(25));
  CHECK(wide_angle_shortening(millimetres(100), Angle{}) == Length{});
  CHECK_CLOSE(in(wide_angle_residual(degrees(60), degrees(2)), unit::degree), 16.162953643461567, 1e-12);
  CHECK(wide_angle_residual(degrees(60), Angle{}) == Angle{});
  CHECK_THROWS_AS(wide_angle_centre_shift(Length{}, degrees(70)), InputError);
  CHECK_THROWS_AS(wide_angle_centre_shift(millimetres(100), degrees(180)), InputError);
  CHECK_THROWS_AS(wide_angle_shortening(Length{}, degrees(70)), InputError);
  CHECK_THROWS_AS(wide_angle_shortening(millimetres(100), degrees(-1)), InputError);
  CHECK_THROWS_AS(wide_angle_residual(degrees(60), degrees(31)), InputError);
  CHECK_THROWS_AS(wide_angle_residual(degrees(not_a_number), Angle{}), InputError);
}

TEST_CASE("an adaptor on the stub moves the joint back, bends it more and shortens the driveline") {
  const EnvelopeChange change =
      adaptor_effect(level(metres(0.5)), millimetres(100), pin_behind_joint(metres(0.5)), flat(degrees(50)));
  CHECK(change.after.front_angle.lower > change.before.front_angle.upper);
  CHECK(change.after.longest.upper < change.before.longest.lower);
  CHECK(change.after.speed_variation->lower > change.before.speed_variation->upper); // the pair was even before
  CHECK_CLOSE(with_adaptor(level(metres(0.5)), millimetres(100)).front_joint.value(), 0.2, 1e-15);
  CHECK_THROWS_AS(with_adaptor(level(metres(0.5)), Length{}), InputError);
  CHECK_THROWS_AS(with_adaptor(level(metres(0.5)), metres(not_a_number)), InputError);
}

TEST_CASE("an intermediate bearing: a straight second part adds nothing") {
  const Driveline first = level(metres(0.8));
  const Pose pose{pin_behind_joint(metres(0.5)), {degrees(30), {}, {}}};
  Driveline second;
  second.output = first.input + Position(metres(-0.3), Length{}, Length{});
  second.front_joint = second.rear_joint = millimetres(80);
  second.input = first.input + Position(metres(-1.5), Length{}, Length{});
  const ChainState chain = chain_at(first, second, Angle{}, pose);
  CHECK(chain.second.front_angle == Angle{});
  CHECK_CLOSE(chain.speed_variation, chain.first.speed_variation, 1e-9);
  Driveline wide = first;
  wide.wide_angle_front = true;
  CHECK_CLOSE(chain_at(wide, second, Angle{}, pose).speed_variation, driveline_at(wide, pose).speed_variation, 1e-6);
  CHECK_THROWS_AS(chain_at(first, second, degrees(not_a_number), pose), InputError);
  second.output_direction = Direction(-1, 0.1, 0);
  CHECK_THROWS_AS(chain_at(first, second, Angle{}, pose), InputError);
  second.output_direction = Direction(-1, 0, 0);
  const Pose locked{pin_behind_joint(metres(0.1)), {degrees(130), {}, {}}};
  CHECK(std::isinf(chain_at(first, second, Angle{}, locked).speed_variation));
}

TEST_CASE("joint angles by use: bands in order, each with its basis") {
  for (const UseAngleLimits& limits : {plain_use_limits, wide_angle_use_limits}) {
    for (const DrivelineUse use : {DrivelineUse::working, DrivelineUse::turning_driven, DrivelineUse::lifted_driven,
                                   DrivelineUse::not_turning}) {
      CHECK(limits.at(use).low.value <= limits.at(use).high.value);
      CHECK(limits.at(use).low.source.text[0] != '\0');
    }
    CHECK(limits.working.high.value <= limits.turning_driven.high.value);
    CHECK(limits.turning_driven.high.value <= limits.not_turning.high.value);
  }
  CHECK(plain_use_limits.at(DrivelineUse::lifted_driven).high.value == degrees(30));
}

TEST_CASE("branches: a wing folds about its hinge, and the torque shares add up") {
  Branch left;
  left.driveline.output = Position(metres(-0.5), metres(0.4), metres(0.3)); // splitter, pointing to the left
  left.driveline.output_direction = Direction(0, 1, 0);
  left.driveline.front_joint = left.driveline.rear_joint = millimetres(80);
  left.driveline.input = Position(metres(-0.5), metres(0.7), metres(0.1));
  left.driveline.input_direction = Direction(0, -1, 0);
  left.hinge = Position(Length{}, metres(1), metres(0.2));
  left.folding = {{}, {}, {degrees(-10), degrees(25)}, {}};
  left.torque_share = 0.5;
  Branch right = left;
  right.driveline = mirrored(left.driveline);
  right.hinge = mirrored(left.hinge);
  right.folding = mirrored(left.folding);
  const auto wings = branch_envelopes({left, right}, newton_metres(600));
  REQUIRE(wings.size() == 2);
  CHECK(wings[0].torque == newton_metres(300));
  CHECK(wings[0].envelope.front_angle.value == wings[1].envelope.front_angle.value);
  CHECK(wings[0].envelope.longest.upper == wings[1].envelope.longest.upper);
  CHECK(wings[0].envelope.rear_angle.upper > degrees(10));
  right.torque_share = 0.4;
  CHECK_THROWS_AS(branch_envelopes({left, right}, newton_metres(600)), InputError);
  right.torque_share = 0.0;
  CHECK_THROWS_AS(branch_envelopes({left, right}, newton_metres(600)), InputError);
  CHECK_THROWS_AS(branch_envelopes({}, newton_metres(600)), InputError);
  CHECK_THROWS_AS(branch_envelopes({left}, newton_metres(-1)), InputError);
}

TEST_CASE("seen from a part that stands at a pose, the driveline is the same") {
  const Driveline d = level(metres(0.6));
  const Pose part{Position(metres(-0.4), metres(0.1), metres(-0.2)), {degrees(10), degrees(-5), degrees(3)}};
  const Driveline other = seen_from(part, d);
  const DrivelineState a = driveline_at(d, part);
  const DrivelineState b = driveline_at(other, Pose{});
  CHECK_CLOSE(a.front_angle.value(), b.front_angle.value(), 1e-12);
  CHECK_CLOSE(a.rear_angle.value(), b.rear_angle.value(), 1e-12);
  CHECK_CLOSE(a.length.value(), b.length.value(), 1e-13);
}

TEST_CASE("clearance: a rod beside the straight driveline, and refused surroundings") {
  const Driveline d = level(metres(0.5));
  Surroundings around;
  around.guard_radius = millimetres(75);
  around.on_tractor = {
      {Position(metres(-0.1), metres(0.3), Length{}), Position(metres(-0.4), metres(0.3), Length{}), millimetres(25)}};
  const Extreme<Length> clear = least_clearance(d, pin_behind_joint(metres(0.5)), flat(Angle{}), around);
  CHECK_CLOSE(clear.value.value(), 0.2, 1e-12);
  CHECK(clear.proved);
  const auto refused = [&](Surroundings s) {
    CHECK_THROWS_AS(least_clearance(d, pin_behind_joint(metres(0.5)), flat(Angle{}), s), InputError);
  };
  refused({});
  Surroundings bad = around;
  bad.guard_radius = millimetres(-1);
  refused(bad);
  bad = around;
  bad.on_tractor[0].radius = millimetres(not_a_number);
  refused(bad);
  bad = around;
  bad.tyres = {{Position(), Length{}, metres(0.4)}};
  refused(bad);
  bad.tyres = {{Position(), metres(0.8), Length{}}};
  refused(bad);
  DrivelineLimits limits;
  limits.front_angle = degrees(30);
  CHECK_THROWS_AS(turn_limit(d, pin_behind_joint(metres(0.5)), flat(degrees(60)), limits, std::nullopt, metres(-1)),
                  InputError);
}

TEST_CASE("turn limit by what fouls: a tyre beside the tongue") {
  const Driveline d = level(metres(0.5));
  Surroundings around;
  const Length below = metres(-0.3); // tongue and axle of the tyre, so that the driveline itself keeps clear
  around.on_implement = {{Position(Length{}, Length{}, below), Position(metres(-1.0), Length{}, below), Length{}}};
  // A tyre's corner 600 mm to the left of the axis, its rear 400 mm behind the pin; the tongue swings about the pin.
  const Position pin = pin_behind_joint(metres(0.5));
  const Position centre(pin.forward() - metres(0.4) + metres(0.8), metres(0.8), below);
  around.tyres = {{centre, metres(0.8), metres(0.4)}};
  around.guard_radius = millimetres(1);
  const AttitudeRange range = flat(degrees(90));
  const TurnLimits turns = turn_limit(d, pin, range, around, Length{}, degrees(0.01));
  // The tongue touches the rear inner edge (0.4 m behind the pin, 0.6 m aside) at atan(0.6/0.4) = 56.3°.
  const Angle touches = radians(std::atan2(0.6, 0.4));
  CHECK(turns.left.kind != turns.right.kind);
  const TurnLimit& to_the_tyre = turns.left.kind == LimitKind::clearance ? turns.left : turns.right;
  const TurnLimit& away = turns.left.kind == LimitKind::clearance ? turns.right : turns.left;
  CHECK(to_the_tyre.allowed <= touches);
  CHECK(to_the_tyre.allowed >= touches - degrees(1.5)); // the clearance is known to 10 mm
  CHECK(away.allowed == degrees(90));
  CHECK_THROWS_AS(turn_limit(d, pin, range, around, metres(-1)), InputError);
  CHECK_THROWS_AS(turn_limit(d, pin, range, around, Length{}, Angle{}), InputError);
  CHECK_THROWS_AS(turn_limit(d, pin, range, Surroundings{}, Length{}), InputError);
}
