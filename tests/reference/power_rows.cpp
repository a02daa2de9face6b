#include <fieldshaft/power.hpp>

#include "rows.hpp"

using namespace fieldshaft;

TEST_CASE("reference rows of power") {
  rows::run("power", {
                         {"shaft_torque",
                          [](const rows::Row& row) {
                            row.expect("value", shaft_torque(row.get<Power>("power"), row.get<AngularSpeed>("speed")));
                          }},
                         {"shaft_power",
                          [](const rows::Row& row) {
                            row.expect("value", shaft_power(row.get<Torque>("torque"), row.get<AngularSpeed>("speed")));
                          }},
                         {"geared_speed",
                          [](const rows::Row& row) {
                            row.expect("value", geared_speed(row.get<AngularSpeed>("speed"), row.get<double>("ratio")));
                          }},
                     });
}
