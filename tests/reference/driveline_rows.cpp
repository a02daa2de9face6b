#include <fieldshaft/driveline.hpp>

#include "rows.hpp"

using namespace fieldshaft;
using rows::Row;

TEST_CASE("reference rows of driveline") {
  const auto ahead = [](const Row& row) { return row.get<Length>("ahead"); };
  const auto behind = [](const Row& row) { return row.get<Length>("behind"); };
  const auto turn = [](const Row& row) { return row.get<Angle>("turn"); };
  rows::run(
      "driveline",
      {
          {"planar_centre_distance",
           [&](const Row& row) { row.expect("value", planar_centre_distance(ahead(row), behind(row), turn(row))); }},
          {"planar_joint_angles",
           [&](const Row& row) {
             const PlanarJointAngles angles = planar_joint_angles(ahead(row), behind(row), turn(row));
             row.expect("front", angles.front);
             row.expect("rear", angles.rear);
           }},
          {"wide_angle_far_angle",
           [&](const Row& row) {
             row.expect("value", wide_angle_far_angle(row.get<Length>("offset"), behind(row), turn(row)));
           }},
          {"wide_angle_centre_shift",
           [&](const Row& row) {
             row.expect("value", wide_angle_centre_shift(row.get<Length>("yoke_length"), row.get<Angle>("angle")));
           }},
          {"wide_angle_shortening",
           [&](const Row& row) {
             row.expect("value", wide_angle_shortening(row.get<Length>("yoke_length"), row.get<Angle>("angle")));
           }},
      });
}
