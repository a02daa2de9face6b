#include <fieldshaft/joint.hpp>

#include "rows.hpp"

using namespace fieldshaft;
using rows::Row;

namespace {

Angle angle(const Row& row) { return row.get<Angle>("angle"); }
Angle front(const Row& row) { return row.get<Angle>("front"); }
Angle rear(const Row& row) { return row.get<Angle>("rear"); }
Angle phase(const Row& row) { return row.get<Angle>("phase"); }
Angle rotation(const Row& row) { return row.get<Angle>("rotation"); }
AngularSpeed speed(const Row& row) { return row.get<AngularSpeed>("speed"); }
Torque torque(const Row& row) { return row.get<Torque>("torque"); }

void expect_couples(const Row& row, const JointCouples& couples) {
  row.expect("output", couples.output);
  row.expect("driving", couples.driving);
  row.expect("driven", couples.driven);
}

void expect_extremes(const Row& row, const JointPairExtremes& pair) {
  row.expect("equivalent_angle", pair.equivalent_angle);
  row.expect("largest_ratio", pair.largest_ratio);
  row.expect("least_ratio", pair.least_ratio);
  row.expect("peak_acceleration", pair.peak_acceleration);
}

Time life(const Row& row) {
  return joint_bearing_life(row.get<Force>("load_rating"), row.get<Length>("arm"), torque(row), speed(row), angle(row));
}

} // namespace

TEST_CASE("reference rows of joint") {
  rows::run(
      "joint",
      {
          {"joint_speed_ratio",
           [](const Row& row) { row.expect("value", joint_speed_ratio(angle(row), rotation(row))); }},
          {"joint_speed_variation", [](const Row& row) { row.expect("value", joint_speed_variation(angle(row))); }},
          {"joint_angle_for_variation",
           [](const Row& row) { row.expect("value", joint_angle_for_variation(row.get<double>("variation"))); }},
          {"joint_peak_acceleration",
           [](const Row& row) { row.expect("value", joint_peak_acceleration(angle(row), speed(row))); }},
          {"joint_peak_acceleration_rotation",
           [](const Row& row) { row.expect("value", joint_peak_acceleration_rotation(angle(row))); }},
          {"joint_equal_speed_rotation",
           [](const Row& row) { row.expect("value", joint_equal_speed_rotation(angle(row))); }},
          {"joint_peak_displacement", [](const Row& row) { row.expect("value", joint_peak_displacement(angle(row))); }},
          {"joint_output_rotation",
           [](const Row& row) { row.expect("value", joint_output_rotation(angle(row), rotation(row))); }},
          {"joint_couples",
           [](const Row& row) { expect_couples(row, joint_couples(torque(row), angle(row), rotation(row))); }},
          {"joint_peak_couples",
           [](const Row& row) { expect_couples(row, joint_peak_couples(torque(row), angle(row))); }},
          {"joint_pair_extremes",
           [](const Row& row) {
             expect_extremes(row, joint_pair_extremes(front(row), rear(row), phase(row), speed(row)));
           }},
          {"joint_pair_speed_ratio",
           [](const Row& row) {
             row.expect("value", joint_pair_speed_ratio(front(row), rear(row), phase(row), rotation(row)));
           }},
          {"equivalent_joint_angle_small",
           [](const Row& row) {
             row.expect("value", equivalent_joint_angle_small(front(row), rear(row), phase(row)).value);
           }},
          {"joint_bearing_force",
           [](const Row& row) { row.expect("value", joint_bearing_force(row.get<Length>("arm"), torque(row))); }},
          {"joint_bearing_life", [](const Row& row) { row.expect("value", life(row)); }},
      });
}
