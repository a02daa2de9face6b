#include <fieldshaft/driveline.hpp>
#include <fieldshaft/hitch.hpp>

#include <cstdio>

// Both joints half a metre from the pin: they share a turn of 40° equally.
int main() {
  using namespace fieldshaft;
  Driveline driveline;
  driveline.front_joint = millimetres(0);
  driveline.rear_joint = millimetres(0);
  driveline.input = {millimetres(-500), millimetres(0), millimetres(0)};
  const DrawbarHitch hitch{millimetres(500), millimetres(0), millimetres(0)};
  const DrivelineState state = driveline_at(driveline, trailed_pose(hitch, {degrees(40), degrees(0), degrees(0)}));
  std::printf("%.3f° %.3f°\n", in(state.front_angle, unit::degree), in(state.rear_angle, unit::degree));
  const double off = in(state.front_angle, unit::degree) - 20.0;
  return off < 1e-9 && off > -1e-9 ? 0 : 1;
}
