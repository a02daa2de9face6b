#include <fieldshaft/joint.hpp>

#include "close.hpp"

#include <limits>

using namespace fieldshaft;

namespace {
constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();
const AngularSpeed unit_speed = radians_per_second(1.0);

double peak(Angle angle) { return joint_peak_acceleration(angle, unit_speed).value(); }
} // namespace

TEST_CASE("a straight joint changes nothing, exactly") {
  for (const double turn : {0.0, 30.0, 45.0, 90.0, 271.5}) {
    CHECK(joint_speed_ratio(degrees(0), degrees(turn)) == doctest::Approx(1.0).epsilon(1e-15));
    CHECK(joint_displacement(degrees(0), degrees(turn)) == degrees(0));
    CHECK(joint_output_rotation(degrees(0), degrees(turn)) == degrees(turn));
    CHECK(joint_acceleration(degrees(0), degrees(turn), rpm(1000)).value() == 0.0);
  }
  CHECK(joint_speed_variation(degrees(0)) == 0.0);
  CHECK(joint_angle_for_variation(0.0) == degrees(0));
  CHECK(joint_peak_acceleration(degrees(0), rpm(1000)).value() == 0.0);
  CHECK(joint_peak_displacement(degrees(0)) == degrees(0));
  CHECK_CLOSE(in(joint_peak_acceleration_rotation(degrees(0)), unit::degree), 45.0, 1e-15);
  CHECK(equivalent_joint_angle(degrees(0), degrees(0), degrees(30)) == degrees(0));
}

TEST_CASE("no digits are lost at small angles") {
  for (const double b : {1e-3, 1e-6, 1e-9}) {
    CAPTURE(b);
    CHECK_CLOSE(joint_speed_variation(radians(b)), b * b * (1.0 + b * b / 6.0), 1e-12);
    CHECK_CLOSE(joint_angle_for_variation(joint_speed_variation(radians(b))).value(), b, 1e-14);
    CHECK_CLOSE(peak(radians(b)), b * b * (1.0 + b * b / 6.0), 1e-11);
    CHECK_CLOSE(joint_peak_displacement(radians(b)).value(), b * b / 4.0, b * b);
    CHECK_CLOSE(equivalent_joint_angle(radians(b), radians(0), degrees(17)).value(), b, 1e-14);
  }
}

TEST_CASE("the place of the peak is the root that the textbook form writes with a cancelling difference") {
  for (const double b : {5.0, 15.0, 30.0, 45.0, 60.0, 80.0, 89.0}) {
    CAPTURE(b);
    const double s = std::sin(degrees(b).value()) * std::sin(degrees(b).value());
    const double cosine = (-(2 - s) + std::sqrt((2 - s) * (2 - s) + 8 * s * s)) / (2 * s);
    CHECK(std::cos(2 * joint_peak_acceleration_rotation(degrees(b)).value()) == doctest::Approx(cosine).epsilon(1e-10));
    const Angle at = joint_peak_acceleration_rotation(degrees(b));
    CHECK_CLOSE(-joint_acceleration(degrees(b), at, unit_speed).value(), peak(degrees(b)), 1e-12);
    CHECK_CLOSE(joint_acceleration(degrees(b), degrees(180) - at, unit_speed).value(), peak(degrees(b)), 1e-12);
  }
}

TEST_CASE("the driven shaft follows over many turns and is fastest with the driving yoke in the plane of the shafts") {
  CHECK_CLOSE(joint_output_rotation(degrees(30), degrees(720)).value(), degrees(720).value(), 1e-15);
  CHECK_CLOSE(joint_output_rotation(degrees(30), degrees(90)).value(), degrees(90).value(), 1e-15);
  CHECK_CLOSE(joint_output_rotation(degrees(30), degrees(-450)).value(), degrees(-450).value(), 1e-15);
  CHECK_CLOSE(joint_speed_ratio(degrees(60), degrees(0)), 2.0, 1e-15);
  CHECK_CLOSE(joint_speed_ratio(degrees(60), degrees(90)), 0.5, 1e-15);
  CHECK(joint_displacement(degrees(30), degrees(45)) > degrees(0));
  CHECK(joint_displacement(degrees(30), degrees(135)) < degrees(0));
}

TEST_CASE("the angle that a limit of acceleration allows keeps the limit, to the last digit") {
  const AngularAcceleration limit = radians_per_second_squared(400.0);
  for (const double n : {540.0, 1000.0, 1300.0}) {
    const Angle allowed = joint_angle_for_acceleration(limit, rpm(n));
    CHECK(joint_peak_acceleration(allowed, rpm(n)) <= limit);
    CHECK(joint_peak_acceleration(allowed * (1.0 + 1e-14), rpm(n)) > limit);
  }
  CHECK(joint_angle_for_acceleration(radians_per_second_squared(0.0), rpm(540)) < radians(1e-150));
}

TEST_CASE("two equal joints in phase cancel; turned by a right angle they add up") {
  for (const double b : {1e-6, 5.0, 25.0, 45.0, 80.0}) {
    CAPTURE(b);
    CHECK(equivalent_joint_angle(degrees(b), degrees(b), degrees(0)) == degrees(0));
    const double c = std::cos(degrees(b).value());
    const double turned = b < 1 ? std::sqrt(2.0) * degrees(b).value() : std::acos(c * c);
    CHECK_CLOSE(equivalent_joint_angle(degrees(b), degrees(b), degrees(90)).value(), turned, 1e-12);
    for (const double turn : {0.0, 37.0, 100.0, 200.0}) {
      CHECK_CLOSE(joint_pair_speed_ratio(degrees(b), degrees(b), degrees(0), degrees(turn)), 1.0, 1e-13);
    }
  }
}

TEST_CASE("the sign and whole half turns of the phase do not matter") {
  const Angle once = equivalent_joint_angle(degrees(18), degrees(11), degrees(25));
  CHECK_CLOSE(equivalent_joint_angle(degrees(18), degrees(11), degrees(-25)).value(), once.value(), 1e-14);
  CHECK_CLOSE(equivalent_joint_angle(degrees(18), degrees(11), degrees(205)).value(), once.value(), 1e-14);
  CHECK_CLOSE(equivalent_joint_angle(degrees(11), degrees(18), degrees(25)).value(), once.value(), 1e-14);
}

TEST_CASE("a joint at or past 90° and numbers that are none are refused") {
  CHECK_THROWS_WITH_AS(joint_speed_ratio(degrees(90), degrees(0)),
                       "joint_speed_ratio: angle = 1.57079633 rad; allowed: from 0 rad to 1.57079633 rad, upper end "
                       "excluded",
                       InputError);
  for (const double bad : {-1.0, 90.0, 120.0, not_a_number, infinite}) {
    CAPTURE(bad);
    const Angle b = degrees(bad);
    CHECK_THROWS_AS(joint_speed_ratio(b, degrees(0)), InputError);
    CHECK_THROWS_AS(joint_speed_variation(b), InputError);
    CHECK_THROWS_AS(joint_output_rotation(b, degrees(0)), InputError);
    CHECK_THROWS_AS(joint_displacement(b, degrees(0)), InputError);
    CHECK_THROWS_AS(joint_peak_displacement(b), InputError);
    CHECK_THROWS_AS(joint_equal_speed_rotation(b), InputError);
    CHECK_THROWS_AS(joint_acceleration(b, degrees(0), rpm(540)), InputError);
    CHECK_THROWS_AS(joint_peak_acceleration(b, rpm(540)), InputError);
    CHECK_THROWS_AS(joint_peak_acceleration_rotation(b), InputError);
    CHECK_THROWS_AS(equivalent_joint_angle(b, degrees(0), degrees(0)), InputError);
    CHECK_THROWS_AS(equivalent_joint_angle(degrees(0), b, degrees(0)), InputError);
    CHECK_THROWS_AS(equivalent_joint_angle_small(b, degrees(0), degrees(0)), InputError);
    CHECK_THROWS_AS(equivalent_joint_angle_small(degrees(0), b, degrees(0)), InputError);
    CHECK_THROWS_AS(joint_pair_speed_ratio(b, degrees(0), degrees(0), degrees(0)), InputError);
    CHECK_THROWS_AS(joint_pair_speed_ratio(degrees(0), b, degrees(0), degrees(0)), InputError);
    CHECK_THROWS_AS(joint_pair_acceleration(b, degrees(0), degrees(0), degrees(0), rpm(540)), InputError);
    CHECK_THROWS_AS(joint_pair_acceleration(degrees(0), b, degrees(0), degrees(0), rpm(540)), InputError);
  }
  for (const double bad : {not_a_number, infinite}) {
    CHECK_THROWS_AS(joint_speed_ratio(degrees(1), degrees(bad)), InputError);
    CHECK_THROWS_AS(joint_output_rotation(degrees(1), degrees(bad)), InputError);
    CHECK_THROWS_AS(joint_displacement(degrees(1), degrees(bad)), InputError);
    CHECK_THROWS_AS(joint_acceleration(degrees(1), degrees(bad), rpm(540)), InputError);
    CHECK_THROWS_AS(equivalent_joint_angle(degrees(1), degrees(1), degrees(bad)), InputError);
    CHECK_THROWS_AS(equivalent_joint_angle_small(degrees(1), degrees(1), degrees(bad)), InputError);
    CHECK_THROWS_AS(joint_pair_speed_ratio(degrees(1), degrees(1), degrees(bad), degrees(0)), InputError);
    CHECK_THROWS_AS(joint_pair_speed_ratio(degrees(1), degrees(1), degrees(0), degrees(bad)), InputError);
    CHECK_THROWS_AS(joint_pair_acceleration(degrees(1), degrees(1), degrees(bad), degrees(0), rpm(540)), InputError);
    CHECK_THROWS_AS(joint_pair_acceleration(degrees(1), degrees(1), degrees(0), degrees(bad), rpm(540)), InputError);
  }
  for (const double bad : {-1.0, not_a_number, infinite}) {
    CHECK_THROWS_AS(joint_angle_for_variation(bad), InputError);
    CHECK_THROWS_AS(joint_peak_acceleration(degrees(1), rpm(bad)), InputError);
    CHECK_THROWS_AS(joint_acceleration(degrees(1), degrees(0), rpm(bad)), InputError);
    CHECK_THROWS_AS(joint_pair_acceleration(degrees(1), degrees(1), degrees(0), degrees(0), rpm(bad)), InputError);
    CHECK_THROWS_AS(joint_angle_for_acceleration(radians_per_second_squared(bad), rpm(540)), InputError);
    CHECK_THROWS_AS(joint_angle_for_acceleration(radians_per_second_squared(1), rpm(bad)), InputError);
  }
  CHECK_THROWS_AS(joint_angle_for_acceleration(radians_per_second_squared(1), rpm(0)), InputError);
}
