#include <fieldshaft/power.hpp>

#include "close.hpp"

#include <limits>

using namespace fieldshaft;

static_assert(text::shaft_torque(1000.0, 10.0) == 100.0);
static_assert(shaft_torque(kilowatts(50), rpm(540)) > newton_metres(884.19));
static_assert(shaft_torque(kilowatts(50), rpm(540)) < newton_metres(884.20));

TEST_CASE("half the torque at nearly twice the speed") {
  const double ratio = shaft_torque(horsepower(90), rpm(1000)) / shaft_torque(horsepower(90), rpm(540));
  CHECK_CLOSE(ratio, 0.54, 1e-12);
}

TEST_CASE("a bad input names function, parameter, value and allowed range") {
  CHECK_THROWS_WITH_AS(shaft_torque(kilowatts(50), rpm(0)),
                       "shaft_torque: speed = 0 rad/s; allowed: a finite number above 0 rad/s", InputError);
  CHECK_THROWS_AS(shaft_torque(kilowatts(-1), rpm(540)), InputError);
  CHECK_THROWS_AS(shaft_torque(kilowatts(std::numeric_limits<double>::quiet_NaN()), rpm(540)), InputError);
  CHECK_THROWS_AS(shaft_torque(kilowatts(1), rpm(std::numeric_limits<double>::infinity())), InputError);
  CHECK_THROWS_AS(geared_torque(newton_metres(1), 0.0), InputError);
  CHECK_THROWS_AS(geared_torque(newton_metres(1), 1.0, 1.1), InputError);
}
