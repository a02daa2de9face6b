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
