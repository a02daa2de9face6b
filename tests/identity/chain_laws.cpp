// Planes, phases and speed variation of drivelines in space against a second method: the pins of every cross followed
// through a turn.

#include <fieldshaft/driveline.hpp>
#include <fieldshaft/hitch.hpp>

#include "close.hpp"
#include "random.hpp"

using namespace fieldshaft;

namespace {

using Vector = Eigen::Vector3d;

/// Speed of the last of some shafts over the first, with the first yoke at a rotation. `yoke_phases` belong to the
/// shafts between the joints.
double ratio_at(const std::vector<Vector>& shafts, const std::vector<double>& yoke_phases, double rotation) {
  Vector pin = Vector::UnitZ().cross(shafts[0]).normalized();
  pin = Eigen::AngleAxisd(rotation, shafts[0]) * pin;
  double ratio = 1.0;
  for (std::size_t joint = 0; joint + 1 < shafts.size(); ++joint) {
    const Vector driven =
        shafts[joint + 1].cross(pin).normalized(); // at right angles to the other pin and its own shaft
    const Vector normal = pin.cross(driven);
    ratio *= normal.dot(shafts[joint]) / normal.dot(shafts[joint + 1]);
    pin = driven;
    if (joint < yoke_phases.size()) pin = Eigen::AngleAxisd(yoke_phases[joint], shafts[joint + 1]) * pin;
  }
  return ratio;
}

double variation_of_turn(const std::vector<Vector>& shafts, const std::vector<double>& yoke_phases) {
  double most = 0.0, least = 1e9;
  constexpr int steps = 4000; // a peak of 2 cycles a turn is missed by at most (2 pi/4000)² of itself
  for (int i = 0; i < steps; ++i) {
    const double ratio = std::abs(ratio_at(shafts, yoke_phases, pi * i / steps));
    most = std::max(most, ratio);
    least = std::min(least, ratio);
  }
  return most - least;
}

struct Placed {
  Driveline driveline;
  Pose pose;
};

Placed any_placed(RandomInputs& random) {
  Placed p;
  p.driveline.front_joint = metres(random.between(0.05, 0.15));
  p.driveline.rear_joint = metres(random.between(0.05, 0.15));
  p.driveline.input =
      Position(metres(-random.between(0.5, 1.2)), metres(random.between(-0.2, 0.2)), metres(random.between(-0.2, 0.5)));
  p.driveline.input_direction = Direction::ahead(degrees(random.between(-15, 15)), degrees(random.between(-15, 15)));
  p.driveline.yoke_phase = degrees(random.whole(0, 1) == 0 ? 0.0 : random.between(-90, 90));
  p.pose = {Position(metres(-random.between(0.35, 0.6)), metres(random.between(-0.1, 0.1)),
                     metres(-random.between(0.0, 0.3))),
            {degrees(random.between(-40, 40)), degrees(random.between(-12, 12)), degrees(random.between(-12, 12))}};
  return p;
}

/// A section that stands still within the implement, behind a bearing whose shaft goes on from the first section's
/// input.
Driveline any_second(RandomInputs& random, const Driveline& first) {
  Driveline second;
  second.output = first.input + Position(metres(-0.4), Length{}, Length{});
  second.output_direction = -first.input_direction;
  second.front_joint = metres(0.08);
  second.rear_joint = metres(0.08);
  second.input = Position(first.input.forward() - metres(1.8), metres(random.between(-0.3, 0.3)),
                          metres(random.between(-0.2, 0.3)));
  second.input_direction = Direction::ahead(degrees(random.between(-10, 10)), degrees(random.between(-10, 10)));
  second.yoke_phase = degrees(random.between(-90, 90));
  return second;
}

Vector centre_line(const Driveline& d, const Pose& pose) {
  return (in_tractor(pose, rear_joint_position(d)).metres() - front_joint_position(d).metres()).normalized();
}

Vector last_shaft(const Driveline& d, const Pose& pose) { return -in_tractor(pose, d.input_direction).unit(); }

} // namespace

TEST_CASE("speed variation at a pose is that of the crosses in space, out of plane and with any yoke phase") {
  RandomInputs random;
  for (int i = 0; i < 150; ++i) {
    const Placed p = any_placed(random);
    const DrivelineState s = driveline_at(p.driveline, p.pose);
    const double seen =
        variation_of_turn({Vector(-1, 0, 0), centre_line(p.driveline, p.pose), last_shaft(p.driveline, p.pose)},
                          {p.driveline.yoke_phase.value()});
    CHECK(std::abs(s.speed_variation - seen) <= 1e-5 * (1.0 + seen));
    const auto pair = joint_pair_extremes(s.front_angle, s.rear_angle, s.phase, radians_per_second(1));
    CHECK(std::abs(s.speed_variation - (pair.largest_ratio - pair.least_ratio)) <= 1e-9);
  }
}

TEST_CASE("parallel outer shafts are smooth whatever the joints do, if the yokes are in line") {
  RandomInputs random;
  for (int i = 0; i < 200; ++i) {
    Placed p = any_placed(random);
    p.driveline.yoke_phase = Angle{};
    p.driveline.input_direction = Direction();
    p.pose.attitude = {{}, {}, degrees(random.between(-20, 20))}; // roll leaves the shafts parallel
    CHECK(driveline_at(p.driveline, p.pose).speed_variation < 1e-12);
  }
}

TEST_CASE("a driveline with an intermediate bearing: four crosses in space") {
  RandomInputs random;
  for (int i = 0; i < 100; ++i) {
    const Placed p = any_placed(random);
    const Driveline second = any_second(random, p.driveline);
    const Angle between = degrees(random.between(-90, 90));
    const ChainState chain = chain_at(p.driveline, second, between, p.pose);
    const Eigen::Matrix3d turn = rotation(p.pose.attitude);
    const std::vector<Vector> shafts = {Vector(-1, 0, 0), centre_line(p.driveline, p.pose),
                                        last_shaft(p.driveline, p.pose), turn * centre_line(second, Pose{}),
                                        turn * last_shaft(second, Pose{})};
    const double seen =
        variation_of_turn(shafts, {p.driveline.yoke_phase.value(), between.value(), second.yoke_phase.value()});
    CHECK(std::abs(chain.speed_variation - seen) <= 2e-5 * (1.0 + seen));
  }
}

TEST_CASE("a steered machine: the envelope about the pivot holds for every steering angle") {
  RandomInputs random;
  for (int i = 0; i < 30; ++i) {
    const Placed p = any_placed(random);
    const Pose headstock{Position(metres(-0.9), Length{}, metres(-0.3)), {{}, degrees(random.between(-6, 6)), {}}};
    const Position pivot(metres(-random.between(0.2, 0.5)), Length{}, metres(random.between(-0.1, 0.2)));
    const Driveline seen = seen_from(headstock, p.driveline);
    const DrivelineEnvelope e = driveline_envelope(seen, pivot, {either_side(degrees(50)), {}, {}, {}});
    for (int j = 0; j < 500; ++j) {
      const Angle steer = degrees(random.between(-50, 50));
      const DrivelineState s = driveline_at(p.driveline, steered_pose(headstock, pivot, steer));
      CHECK(s.front_angle <= e.front_angle.upper);
      CHECK(s.rear_angle <= e.rear_angle.upper);
      CHECK(s.length <= e.longest.upper);
      CHECK(s.length >= e.shortest.lower);
      CHECK(s.speed_variation <= e.speed_variation->upper);
    }
  }
}

TEST_CASE("the bound of a row of joints holds over a box, however wide, with any wide-angle joints") {
  RandomInputs random;
  double nearest = 1e9;
  for (int i = 0; i < 400; ++i) {
    Placed p = any_placed(random);
    p.driveline.wide_angle_front = random.whole(0, 4) == 0;
    p.driveline.wide_angle_rear = random.whole(0, 4) == 0;
    const detail::ChainRow row(p.driveline, any_second(random, p.driveline), degrees(random.between(-90, 90)));
    const detail::Shafts shafts(detail::lines(p.driveline, p.pose.pin));
    const Attitude& a = p.pose.attitude;
    const detail::Triple middle{a.yaw.value(), a.pitch.value(), a.roll.value()};
    const detail::Triple half{random.across(1e-4, 0.1), random.across(1e-4, 0.1), random.across(1e-4, 0.1)};
    const detail::ChainObjective objective(shafts, row, p.pose.pin, 1e-3);
    const detail::Expansion e = objective.expand(middle, detail::size(half));
    for (int j = 0; j < 50; ++j) {
      detail::Triple at{};
      for (std::size_t k = 0; k < 3; ++k)
        at[k] = middle[k] + half[k] * (j < 8 ? (j >> k & 1) * 2 - 1 : random.between(-1, 1));
      const double change = std::abs(objective.value(at) - e.jet.value);
      CHECK(change <= e.spread);
      if (change > 1e-6) nearest = std::min(nearest, e.spread / change);
    }
  }
  MESSAGE("the nearest bound of a row's change is " << nearest << " times what was seen");
  CHECK(nearest < 3.0);
}

TEST_CASE("behind an intermediate bearing no pose runs less evenly than is proved") {
  RandomInputs random;
  int open = 0;
  for (int i = 0; i < 30; ++i) {
    const Placed p = any_placed(random);
    const Driveline second = any_second(random, p.driveline);
    const Angle between = degrees(random.between(-90, 90));
    AttitudeRange range{
        either_side(degrees(random.between(5, 30))), either_side(degrees(8)), either_side(degrees(5)), {}};
    if (i % 3 == 0) range = with_less_roll_at_full_turn(range, 0.3);
    EnvelopeOptions options;
    options.variation_gap = 0.005;
    options.budget = 20000;
    const Extreme<double> e = chain_envelope(p.driveline, second, between, p.pose.pin, range, options);
    open += e.proved ? 0 : 1;
    CHECK_CLOSE(chain_at(p.driveline, second, between, {p.pose.pin, e.at}).speed_variation, e.value, 1e-12);
    for (int j = 0; j < 500; ++j) {
      const Attitude at{random.between(-1, 1) * range.yaw.high, random.between(-1, 1) * range.pitch.high,
                        random.between(-1, 1) * range.roll.high};
      if (contains(range, at))
        CHECK(chain_at(p.driveline, second, between, {p.pose.pin, at}).speed_variation <= e.upper);
    }
  }
  MESSAGE("searches that ended before their gap: " << open << " of 30");
  CHECK(open <= 5);
}

TEST_CASE("a second section that runs straight leaves the unevenness of the first over the whole range") {
  RandomInputs random;
  for (int i = 0; i < 10; ++i) {
    Placed p = any_placed(random);
    Driveline straight;
    straight.output =
        p.driveline.input - metres(0.4).value() * Position::from_metres(p.driveline.input_direction.unit());
    straight.output_direction = -p.driveline.input_direction;
    straight.front_joint = straight.rear_joint = metres(0.08);
    straight.input = straight.output - metres(1.2).value() * Position::from_metres(p.driveline.input_direction.unit());
    straight.input_direction = p.driveline.input_direction;
    const AttitudeRange range{either_side(degrees(20)), either_side(degrees(6)), either_side(degrees(4)), {}};
    const Extreme<double> chain = chain_envelope(p.driveline, straight, degrees(30), p.pose.pin, range);
    const Extreme<double> alone = *driveline_envelope(p.driveline, p.pose.pin, range).speed_variation;
    CHECK(chain.lower <= alone.upper);
    CHECK(chain.upper >= alone.lower);
  }
}

TEST_CASE("both sections on a linkage, over lift, turn and roll") {
  RandomInputs random;
  const ThreePointLinkage linkage{millimetres(-250), millimetres(150), millimetres(900), millimetres(-150),
                                  millimetres(-250), millimetres(700), millimetres(610), Length{},
                                  Length{},          Length{},         Length{},         Length{}};
  for (int i = 0; i < 10; ++i) {
    Driveline first;
    first.front_joint = first.rear_joint = millimetres(80);
    first.input = Position(millimetres(-random.between(400, 800)), Length{}, millimetres(random.between(150, 350)));
    Driveline second = any_second(random, first);
    const Angle between = degrees(random.between(-90, 90));
    MountedRange range;
    range.lift = {millimetres(-300), millimetres(100)};
    range.roll = either_side(degrees(3));
    EnvelopeOptions options;
    options.variation_gap = 0.005;
    options.budget = 5000;
    const MountedChainEnvelope e = chain_envelope(first, second, between, linkage, range, {}, options);
    CHECK_CLOSE(mounted_pose(linkage, e.at).attitude.pitch.value(), e.speed_variation.at.pitch.value(), 1e-12);
    for (int j = 0; j < 300; ++j) {
      Pose pose = mounted_pose(linkage, {millimetres(random.between(-300, 100)), {}, {}});
      pose.attitude.roll = degrees(random.between(-3, 3));
      const double seen = chain_at(first, second, between, pose).speed_variation;
      CHECK(seen <= e.speed_variation.upper);
    }
  }
}
