// Prints what the formulas give for the same inputs as hexadecimal numbers, one a line: "name value". compare.py builds
// this with two compilers at several levels of optimisation and counts by how many last digits they differ.

#include <fieldshaft/driveline.hpp>
#include <fieldshaft/fatigue.hpp>
#include <fieldshaft/joint.hpp>
#include <fieldshaft/overload.hpp>
#include <fieldshaft/power.hpp>
#include <fieldshaft/rotor.hpp>
#include <fieldshaft/shaft.hpp>
#include <fieldshaft/spline.hpp>

#include <cstdint>
#include <cstdio>

using namespace fieldshaft;

namespace {

/// A generator whose numbers are the same everywhere: the top 53 bits of Knuth's MMIX congruential generator.
class Numbers {
public:
  double between(double low, double high) {
    state_ = state_ * 6364136223846793005ULL + 1442695040888963407ULL;
    return low + (high - low) * (static_cast<double>(state_ >> 11U) * 0x1p-53);
  }

private:
  std::uint64_t state_ = 1;
};

void print(const char* name, double value) { std::printf("%s %a\n", name, value); }
template <class Q> void print(const char* name, Q value) { print(name, value.value()); }

void shafts(Numbers& n) {
  const Torque torque = newton_metres(n.between(1, 5000));
  const double outer = n.between(0.03, 0.1);
  const TubeSection tube(metres(outer), metres(outer * n.between(0.2, 0.9)));
  print("torsion_stress", torsion_stress(tube, torque));
  print("yield_torque", yield_torque(tube, megapascals(300)));
  print("plastic_torque", plastic_torque(tube, megapascals(300)));
  print("twist_rate", twist_rate(tube, torque, gigapascals(79)));
  const Length length = metres(n.between(0.4, 2));
  print("critical_speed", critical_speed(tube, length, gigapascals(207), kilograms_per_cubic_metre(7850)));
  const StraightSpline spline(6, millimetres(34.8), millimetres(28.9), millimetres(8.6), metres(n.between(0.03, 0.1)));
  const SplineStress stress = spline_stress(spline, torque);
  print("spline_root_torsion", stress.root_torsion);
  print("spline_tooth_shear", stress.tooth_shear);
  print("spline_flank_pressure", stress.flank_pressure);
}

void joints(Numbers& n) {
  const Angle front = degrees(n.between(0, 60));
  const Angle rear = degrees(n.between(0, 60));
  const Angle phase = degrees(n.between(-90, 90));
  const Angle rotation = degrees(n.between(0, 360));
  const AngularSpeed speed = rpm(n.between(100, 1300));
  print("joint_speed_ratio", joint_speed_ratio(front, rotation));
  print("joint_speed_variation", joint_speed_variation(front));
  print("joint_angle_for_variation", joint_angle_for_variation(n.between(0.01, 2)));
  print("joint_peak_acceleration", joint_peak_acceleration(front, speed));
  print("equivalent_joint_angle", equivalent_joint_angle(front, rear, phase));
  print("joint_pair_speed_ratio", joint_pair_speed_ratio(front, rear, phase, rotation));
  print("joint_bearing_life",
        joint_bearing_life(kilonewtons(20), millimetres(35), newton_metres(n.between(50, 2000)), speed, degrees(12)));
}

// Each random number is a statement of its own: the order in which arguments are made is the compiler's.
void machines_and_devices(Numbers& n) {
  const AngularSpeed speed = rpm(n.between(100, 3000));
  const Length radius = metres(n.between(0.1, 1.5));
  const Power power = kilowatts(n.between(5, 200));
  const double load = n.between(0.2, 1);
  const double throttle = n.between(0.6, 1);
  print("shaft_torque", shaft_torque(power, speed));
  print("fuel_rate", fuel_rate(power, load, throttle));
  print("tip_speed", tip_speed(speed, radius));
  print("blade_pull", blade_pull(kilograms(3), radius, speed));
  print("disc_hoop_stress", disc_hoop_stress(0.1 * radius, radius, speed, kilograms_per_cubic_metre(7850), 0.3));
  const Force force = newtons(n.between(1e3, 1e4));
  print("disc_clutch_torque",
        disc_clutch_torque(radius, 0.6 * radius, force, 0.35, 4, ClutchContact::uniform_pressure));
  print("shear_bolt_torque", shear_bolt_torque(millimetres(n.between(4, 16)), radius, megapascals(400), 1, 2));
  const MomentOfInertia inertia = kilogram_square_metres(n.between(0.5, 20));
  const ClutchEngagement slip = clutch_engagement(inertia, speed, newton_metres(900), newton_metres(n.between(0, 500)));
  print("clutch_engagement_time", slip.time);
  print("clutch_engagement_heat", slip.heat);
  const Speed launch = metres_per_second(n.between(10, 90));
  print("throw_distance", throw_distance(launch, degrees(n.between(5, 60)), metres(0.5), kilograms(0.1),
                                         square_metres(2e-3), 0.9, kilograms_per_cubic_metre(1.225)));
}

Position any_position(Numbers& n, double behind, double above) {
  const double x = -behind * n.between(0.7, 1.5);
  const double y = n.between(-0.2, 0.2);
  return Position(metres(x), metres(y), metres(above));
}

void drivelines(Numbers& n) {
  Driveline d;
  d.front_joint = metres(n.between(0.05, 0.2));
  d.rear_joint = metres(n.between(0.05, 0.2));
  d.input = any_position(n, 0.7, 0.2);
  d.yoke_phase = degrees(n.between(-30, 30));
  const Position pin = any_position(n, 0.4, -0.25);
  Attitude at;
  at.yaw = degrees(n.between(-50, 50));
  at.pitch = degrees(n.between(-10, 10));
  at.roll = degrees(n.between(-10, 10));
  const DrivelineState s = driveline_at(d, {pin, at});
  print("driveline_front_angle", s.front_angle);
  print("driveline_rear_angle", s.rear_angle);
  print("driveline_length", s.length);
  print("driveline_speed_variation", s.speed_variation);
}

/// Zeros of both signs, the smallest and largest numbers, no angle, the ends of what is allowed.
void limits() {
  print("zero", shaft_torque(watts(0.0), rpm(540)));
  print("minus_zero", joint_speed_ratio(degrees(-0.0), degrees(-0.0)));
  print("smallest_length", tip_speed(rpm(540), metres(4.9e-324)));
  print("largest_power", shaft_power(newton_metres(1e300), radians_per_second(1.0)));
  print("straight_joint", joint_speed_variation(Angle{}));
  print("nearly_a_right_angle", joint_speed_variation(degrees(89.999999)));
  print("quarter_turn", joint_speed_ratio(degrees(30), degrees(90)));
}

} // namespace

int main() {
  Numbers n;
  for (int i = 0; i < 2000; ++i) {
    shafts(n);
    joints(n);
    machines_and_devices(n);
    drivelines(n);
  }
  limits();
  return 0;
}
