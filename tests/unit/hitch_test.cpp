#include <fieldshaft/hitch.hpp>

#include "close.hpp"

#include <limits>

using namespace fieldshaft;

namespace {
constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
}

TEST_CASE("the pin of a drawbar lies behind and below the shaft end") {
  const Position pin = pin_position({inches(14), millimetres(20), inches(8)});
  CHECK(pin.forward() == -inches(14));
  CHECK(pin.left() == millimetres(20));
  CHECK(pin.up() == -inches(8));
  const Pose pose = trailed_pose({inches(14), Length{}, inches(8)}, {degrees(10), {}, {}});
  CHECK(pose.pin.forward() == -inches(14));
  CHECK(pose.attitude.yaw == degrees(10));
  CHECK_THROWS_AS(pin_position({-inches(14), Length{}, inches(8)}), InputError);
  CHECK_THROWS_AS(pin_position({metres(not_a_number), Length{}, inches(8)}), InputError);
  CHECK_THROWS_AS(pin_position({inches(14), metres(not_a_number), inches(8)}), InputError);
  CHECK_THROWS_AS(pin_position({inches(14), Length{}, metres(not_a_number)}), InputError);
}
