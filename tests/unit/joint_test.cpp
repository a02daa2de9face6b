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

TEST_CASE("two equal joints in phase cancel, and turned by a right angle they add up") {
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

// Rows, phase and positions of a telescope. -----------------------------------------------------------------

TEST_CASE("a row of one is a joint, a row of two is a pair") {
  for (const double b : {0.0, 3.0, 30.0, 70.0}) {
    CHECK(equivalent_joint_angle({{degrees(b)}}).value() == doctest::Approx(degrees(b).value()).epsilon(1e-13));
    for (const double phase : {-30.0, 0.0, 10.0, 90.0}) {
      const Angle pair = equivalent_joint_angle(degrees(b), degrees(21), degrees(phase));
      CHECK_CLOSE(equivalent_joint_angle({{degrees(b)}, {degrees(21), degrees(phase)}}).value(), pair.value(), 1e-12);
    }
  }
}

TEST_CASE("a wide-angle joint as two halves leaves the plain joint behind it as it is") {
  const Angle equivalent =
      equivalent_joint_angle({{degrees(35)}, {degrees(35), degrees(0)}, {degrees(12), degrees(25)}});
  CHECK_CLOSE(equivalent.value(), degrees(12).value(), 1e-12);
}

TEST_CASE("three joints: two shafts in a row can be smooth although no pair of them is") {
  // For small angles b1² - b2² + b3² = 0 at phases 0.
  const double middle = std::sqrt(5.0 * 5.0 + 4.0 * 4.0);
  const std::vector<JointInRow> row = {{degrees(5)}, {degrees(middle), degrees(0)}, {degrees(4), degrees(0)}};
  CHECK(equivalent_joint_angle_small(row).value < degrees(1e-6));
  CHECK(equivalent_joint_angle(row) < degrees(0.4));
}

TEST_CASE("the rule for small angles says where it is unproven") {
  CHECK(equivalent_joint_angle_small(degrees(20), degrees(20), degrees(5)).valid());
  CHECK_FALSE(equivalent_joint_angle_small(degrees(20.1), degrees(5), degrees(5)).valid());
  CHECK_FALSE(equivalent_joint_angle_small(degrees(5), degrees(20.1), degrees(5)).valid());
  CHECK(equivalent_joint_angle_small({{degrees(20)}, {degrees(20), degrees(5)}}).valid());
  CHECK_FALSE(equivalent_joint_angle_small({{degrees(10)}, {degrees(21), degrees(5)}}).valid());
}

TEST_CASE("rows that cannot be are refused") {
  const std::vector<std::vector<JointInRow>> bad = {
      {},
      {{degrees(90)}},
      {{degrees(5)}, {degrees(-1), degrees(0)}},
      {{degrees(5)}, {degrees(5), degrees(not_a_number)}},
      {{degrees(5), degrees(10)}},
  };
  for (const auto& row : bad) {
    CHECK_THROWS_AS(equivalent_joint_angle(row), InputError);
    CHECK_THROWS_AS(equivalent_joint_angle_small(row), InputError);
  }
}

TEST_CASE("a relative phase lies between -90° and 90°") {
  CHECK_CLOSE(in(relative_phase(degrees(60), degrees(0)), unit::degree), 60.0, 1e-14);
  CHECK_CLOSE(in(relative_phase(degrees(120), degrees(0)), unit::degree), -60.0, 1e-14);
  CHECK_CLOSE(in(relative_phase(degrees(0), degrees(30)), unit::degree), -30.0, 1e-14);
  CHECK_CLOSE(in(relative_phase(degrees(-90), degrees(0)), unit::degree), 90.0, 1e-14);
  CHECK(relative_phase(degrees(180), degrees(0)).value() == doctest::Approx(0.0));
  CHECK_THROWS_AS(relative_phase(degrees(not_a_number), degrees(0)), InputError);
  CHECK_THROWS_AS(relative_phase(degrees(0), degrees(infinite)), InputError);
}

TEST_CASE("six splines: one position wrong is 60° out of phase, three are as good as none") {
  const SplinePosition right = spline_position(degrees(15), degrees(15), degrees(0), 6, 0);
  CHECK(right.equivalent_angle == degrees(0));
  const SplinePosition wrong = spline_position(degrees(15), degrees(15), degrees(0), 6, 1);
  CHECK_CLOSE(in(wrong.yoke_phase, unit::degree), 60.0, 1e-14);
  // cos² 60° = 1/4, sin² 60° = 3/4: k + 1/k = 1/4 * 2 + 3/4 (c² + 1/c²)
  const double c2 = std::pow(std::cos(degrees(15).value()), 2);
  const double sum = 0.5 + 0.75 * (c2 + 1.0 / c2);
  const double k = 0.5 * sum + std::sqrt(0.25 * sum * sum - 1.0);
  CHECK_CLOSE(wrong.equivalent_angle.value(), std::acos(1.0 / k), 1e-12);
  CHECK_CLOSE(spline_position(degrees(15), degrees(15), degrees(0), 6, -1).equivalent_angle.value(),
              wrong.equivalent_angle.value(), 1e-12);
  CHECK(spline_position(degrees(15), degrees(15), degrees(0), 6, 3).equivalent_angle < degrees(1e-6));
}

TEST_CASE("the best position of a telescope") {
  CHECK(best_spline_position(degrees(15), degrees(15), degrees(0), 6).steps == 0);
  CHECK(best_spline_position(degrees(15), degrees(15), degrees(180), 6).steps == 0);
  CHECK(best_spline_position(degrees(15), degrees(15), degrees(60), 6).steps == 1);
  CHECK(best_spline_position(degrees(15), degrees(15), degrees(40), 6).steps == 1);
  CHECK_CLOSE(in(best_spline_position(degrees(15), degrees(15), degrees(40), 6).phase, unit::degree), 20.0, 1e-13);
  // A profile with an odd number of positions reaches steps of half its own, because half a turn does not matter.
  const SplinePosition odd = best_spline_position(degrees(15), degrees(15), degrees(90), 3);
  CHECK_CLOSE(in(math::abs(odd.phase), unit::degree), 30.0, 1e-13);
  CHECK_CLOSE(in(best_spline_position(degrees(15), degrees(15), degrees(90), 1).phase, unit::degree), -90.0 + 180.0,
              1e-13);
  CHECK_THROWS_AS(best_spline_position(degrees(15), degrees(15), degrees(0), 0), InputError);
  CHECK_THROWS_AS(spline_step(1001), InputError);
  CHECK_THROWS_AS(spline_position(degrees(90), degrees(15), degrees(0), 6, 0), InputError);
  CHECK_THROWS_AS(spline_position(degrees(15), degrees(15), degrees(not_a_number), 6, 0), InputError);
}

// Couples and bearings. -------------------------------------------------------------------------------------

TEST_CASE("a straight joint hands the torque on and bends nothing") {
  const JointCouples couples = joint_couples(newton_metres(250), degrees(0), degrees(30));
  CHECK_CLOSE(couples.output.value(), 250.0, 1e-15);
  CHECK(couples.driving == newton_metres(0));
  CHECK(couples.driven == newton_metres(0));
}

TEST_CASE("past 45° the couple on the driven shaft is greater than the books' T sin b") {
  const auto greatest = [](Angle angle) {
    double most = 0.0;
    for (int i = 0; i <= 36000; ++i) {
      most = std::fmax(most, joint_couples(newton_metres(1), angle, degrees(0.005 * i)).driven.value());
    }
    return most;
  };
  for (const double b : {10.0, 44.0, 46.0, 60.0, 80.0}) {
    CAPTURE(b);
    CHECK_CLOSE(joint_peak_couples(newton_metres(1), degrees(b)).driven.value(), greatest(degrees(b)), 1e-7);
  }
  CHECK_CLOSE(joint_peak_couples(newton_metres(1), degrees(60)).driven.value(), 1.0, 1e-14);
  CHECK(joint_peak_couples(newton_metres(1), degrees(60)).driven.value() > std::sin(degrees(60).value()));
}

TEST_CASE("two bearings hold a couple, wherever along the shaft it acts") {
  const Force force = couple_bearing_force(newton_metres(100), millimetres(80));
  CHECK_CLOSE(force.value(), 1250.0, 1e-15);
  CHECK_CLOSE((force * millimetres(80)).value(), 100.0, 1e-15);
}

TEST_CASE("couples refuse what cannot be") {
  CHECK_THROWS_AS(joint_couples(newton_metres(-1), degrees(5), degrees(0)), InputError);
  CHECK_THROWS_AS(joint_couples(newton_metres(1), degrees(90), degrees(0)), InputError);
  CHECK_THROWS_AS(joint_couples(newton_metres(1), degrees(5), degrees(not_a_number)), InputError);
  CHECK_THROWS_AS(joint_peak_couples(newton_metres(infinite), degrees(5)), InputError);
  CHECK_THROWS_AS(joint_peak_couples(newton_metres(1), degrees(-5)), InputError);
  CHECK_THROWS_AS(couple_bearing_force(newton_metres(-1), millimetres(80)), InputError);
  CHECK_THROWS_AS(couple_bearing_force(newton_metres(1), millimetres(0)), InputError);
}

namespace {
Time life(double kilonewton, double millimetre, double torque, double n, double angle) {
  return joint_bearing_life(kilonewtons(kilonewton), millimetres(millimetre), newton_metres(torque), rpm(n),
                            degrees(angle));
}
bool life_proven(double torque, double angle) {
  return joint_bearing_life_checked(kilonewtons(20), millimetres(40), newton_metres(torque), rpm(540), degrees(angle))
      .valid();
}
} // namespace

TEST_CASE("bearing life: half the torque gives ten times the life, half the angle twice") {
  CHECK_CLOSE(life(20, 40, 200, 540, 15) / life(20, 40, 400, 540, 15), std::pow(2.0, 10.0 / 3.0), 1e-14);
  CHECK_CLOSE(life(20, 40, 400, 540, 7.5) / life(20, 40, 400, 540, 15), 2.0, 1e-14);
  CHECK_CLOSE(life(20, 40, 400, 1000, 15) / life(20, 40, 400, 540, 15), 0.54, 1e-14);
  // The book's round form with 1.5·10⁷ is 0.8 % lower.
  const double book = 1.5e7 / (540.0 * 15.0) * std::pow(20e3 * 0.04 / 400.0, 10.0 / 3.0);
  CHECK_CLOSE(book, 18665.0, 1e-4);
  CHECK_CLOSE(in(life(20, 40, 400, 540, 15), unit::hour) / book, std::pow(2.0, 10.0 / 3.0) / 10.0, 1e-12);
}

TEST_CASE("a bearing life says where its formula is unproven") {
  CHECK(life_proven(400, 15));
  CHECK(life_proven(800, 3));
  CHECK_FALSE(life_proven(801, 15));
  CHECK_FALSE(life_proven(400, 2.9));
  CHECK(joint_bearing_life_checked(kilonewtons(20), millimetres(40), newton_metres(400), rpm(540), degrees(15)).value ==
        life(20, 40, 400, 540, 15));
}

TEST_CASE("a straight joint has no bearing life by the formula, and bad numbers are refused") {
  CHECK_THROWS_WITH_AS(life(20, 40, 400, 540, 0),
                       "joint_bearing_life: angle = 0 rad; allowed: from 0 rad to 1.57079633 rad, both excluded",
                       InputError);
  CHECK_THROWS_AS(life(20, 40, 400, 540, 90), InputError);
  for (const double bad : {0.0, -1.0, not_a_number, infinite}) {
    CHECK_THROWS_AS(life(bad, 40, 400, 540, 15), InputError);
    CHECK_THROWS_AS(life(20, bad, 400, 540, 15), InputError);
    CHECK_THROWS_AS(life(20, 40, bad, 540, 15), InputError);
    CHECK_THROWS_AS(life(20, 40, 400, bad, 15), InputError);
    CHECK_THROWS_AS(joint_bearing_force(millimetres(bad), newton_metres(1)), InputError);
    CHECK_THROWS_AS(joint_peak_bearing_force(millimetres(bad), newton_metres(1), degrees(5)), InputError);
  }
  CHECK_THROWS_AS(joint_bearing_force(millimetres(40), newton_metres(-1)), InputError);
  CHECK_THROWS_AS(joint_peak_bearing_force(millimetres(40), newton_metres(-1), degrees(5)), InputError);
  CHECK_THROWS_AS(joint_peak_bearing_force(millimetres(40), newton_metres(1), degrees(90)), InputError);
}

TEST_CASE("one duty alone is steady duty, and two are added by their wear") {
  const std::vector<JointDuty> one = {{1.0, newton_metres(400), rpm(540), degrees(15)}};
  CHECK_CLOSE(joint_bearing_life(kilonewtons(20), millimetres(40), one).value(), life(20, 40, 400, 540, 15).value(),
              1e-14);
  CHECK_CLOSE(joint_mean_duty(one).torque.value(), 400.0, 1e-14);
  const std::vector<JointDuty> two = {{0.5, newton_metres(400), rpm(540), degrees(15)},
                                      {0.5, newton_metres(200), rpm(540), degrees(15)}};
  const double mean = std::pow(0.5 * (1.0 + std::pow(0.5, 10.0 / 3.0)), 0.3) * 400.0;
  CHECK_CLOSE(joint_mean_duty(two).torque.value(), mean, 1e-13);
}

TEST_CASE("duties that cannot be are refused") {
  const auto with = [](double share, double torque, double n, double angle) {
    return std::vector<JointDuty>{{0.4, newton_metres(400), rpm(540), degrees(15)},
                                  {share, newton_metres(torque), rpm(n), degrees(angle)}};
  };
  CHECK_NOTHROW(joint_mean_duty(with(0.6, 1, 1, 1)));
  for (const auto& bad :
       {with(0.5, 1, 1, 1), with(-0.6, 1, 1, 1), with(0.6, 0, 1, 1), with(0.6, 1, 0, 1), with(0.6, 1, 1, 0),
        with(0.6, 1, 1, 90), with(not_a_number, 1, 1, 1), std::vector<JointDuty>{}}) {
    CHECK_THROWS_AS(joint_mean_duty(bad), InputError);
    CHECK_THROWS_AS(joint_bearing_life(kilonewtons(20), millimetres(40), bad), InputError);
  }
}

TEST_CASE("every figure of practice says that it is one, and each band is in order") {
  for (const JointAnglePractice& practice : {plain_joint_practice, wide_angle_joint_practice}) {
    for (const JointAngleBand& band : {practice.working, practice.turning, practice.at_rest}) {
      CHECK(band.low.value <= band.high.value);
      for (const Source& source : {band.low.source, band.high.source}) {
        CHECK((source.standing == Standing::common_practice || source.standing == Standing::from_memory));
      }
    }
    CHECK(practice.working.high.value <= practice.turning.low.value);
    CHECK(practice.turning.high.value <= practice.at_rest.high.value);
  }
  CHECK(is_remembered(torsional_excitation_guide.source.standing));
  CHECK(is_remembered(inertia_excitation_guide.source.standing));
}
