#include <fieldshaft/power.hpp>

#include <cstdio>

int main() {
  using namespace fieldshaft;
  const Torque torque = shaft_torque(kilowatts(50), rpm(540));
  std::printf("%.2f N·m\n", in(torque, unit::newton_metre));
  return torque > newton_metres(884.1) && torque < newton_metres(884.3) ? 0 : 1;
}
