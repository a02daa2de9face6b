// Writes joint angles and telescoping length over turn and hollow as CSV, for a table or a picture.
//
//   sweep_to_csv > sweep.csv
//
// The driveline and the machines are invented. Angles: yaw below zero turns the tractor left, pitch above zero is a
// hollow. Each row is one pose; what holds between the rows is proved by driveline_envelope, whose extremes over the
// same range are printed last, as comments.

#include <fieldshaft/driveline.hpp>
#include <fieldshaft/hitch.hpp>

#include <cstdio>

namespace {

using namespace fieldshaft;

/// Two plain joints; the input shaft of the implement ends 420 mm behind the pin and 250 mm above it.
Driveline invented_driveline() {
  Driveline driveline;
  driveline.front_joint = millimetres(60);
  driveline.rear_joint = millimetres(60);
  driveline.input = {millimetres(-420), millimetres(0), millimetres(250)};
  driveline.telescope = Telescope{millimetres(500), {millimetres(420), {}}, {}};
  return driveline;
}

void print_row(const Driveline& driveline, const DrawbarHitch& hitch, double yaw, double pitch) {
  const DrivelineState state = driveline_at(driveline, trailed_pose(hitch, {degrees(yaw), degrees(pitch), degrees(0)}));
  std::printf("%.0f,%.0f,%.3f,%.3f,%.2f,%.2f\n", yaw, pitch, in(state.front_angle, unit::degree),
              in(state.rear_angle, unit::degree), in(state.length, unit::millimetre),
              in(state.overlap.value(), unit::millimetre));
}

} // namespace

int main() {
  const Driveline driveline = invented_driveline();
  const DrawbarHitch hitch{millimetres(400), millimetres(0), millimetres(250)}; // distance, to the left, drop
  std::printf("yaw_deg,pitch_deg,front_angle_deg,rear_angle_deg,length_mm,overlap_mm\n");
  for (int yaw = -50; yaw <= 50; yaw += 10) {
    for (int pitch = -8; pitch <= 8; pitch += 4) print_row(driveline, hitch, yaw, pitch);
  }
  const AttitudeRange range{{degrees(-50), degrees(50)}, {degrees(-8), degrees(8)}, {degrees(0), degrees(0)}, {}};
  const DrivelineEnvelope proved = driveline_envelope(driveline, pin_position(hitch), range);
  std::printf("# front angle at most %.3f deg, rear angle at most %.3f deg\n",
              in(proved.front_angle.upper, unit::degree), in(proved.rear_angle.upper, unit::degree));
  std::printf("# length from %.2f mm to %.2f mm\n", in(proved.shortest.lower, unit::millimetre),
              in(proved.longest.upper, unit::millimetre));
  return 0;
}
