// A whole start of a machine in time: the simulation with located changes and bounded error, beside the loop that a
// person would write by hand, with a fixed step of 10 µs and friction smoothed over 0.05 rad/s.

#include <fieldshaft/dynamics.hpp>
#include <fieldshaft/joint.hpp>

#include <benchmark/benchmark.h>

#include <array>
#include <cmath>

using namespace fieldshaft;

namespace {

// Invented rotary cutter: engine held at 540 r/min at the PTO, tractor's side of the clutch, hub, rotor at the input's
// speed. The clutch closes from 0.1 s over 0.8 s; the slip clutch behind the hub lets go on the way.
constexpr std::array<double, 4> inertia = {3.0, 0.1, 0.05, 6.0};
constexpr double speed = rpm(540).value();
constexpr double clutch_torque = 1500.0, clutch_from = 0.1, clutch_ramp = 0.8, device_torque = 900.0;
constexpr double stiffness = 12000.0, damping = 5.0, friction = 30.0, windage = 60.0;

PtoLine four_inertias(Angle front, Angle rear) {
  const auto body = [](const char* name, std::size_t i) { return LineBody{name, kilogram_square_metres(inertia[i])}; };
  PtoLine line{{body("engine", 0), body("tractor's side", 1), body("hub", 2), body("rotor", 3)},
               {LineClutch{newton_metres(clutch_torque), seconds(clutch_from), seconds(clutch_ramp)},
                LineShaft{newton_metres_per_radian(stiffness), newton_metre_seconds_per_radian(damping)},
                LineClutch{newton_metres(device_torque)}}};
  line.bodies[0].speed = radians_per_second(speed);
  line.bodies[0].drive = HeldSpeed{};
  line.bodies[3].load.friction = newton_metres(friction);
  line.bodies[3].load.windage = newton_metres(windage);
  line.bodies[3].load.windage_speed = radians_per_second(speed);
  std::get<LineShaft>(line.links[1]).joints = LineJoints{front, rear};
  return line;
}

void start_up(benchmark::State& state, Angle front, Angle rear) {
  const PtoLine line = four_inertias(front, rear);
  SimulationResult result;
  for (auto _ : state) {
    result = simulate(line); // 10 s at a relative tolerance of 1e-6
    benchmark::DoNotOptimize(result.energy.error);
  }
  if (!result.complete) state.SkipWithError(simulation_end_text(result.end));
  state.counters["steps"] = static_cast<double>(result.steps);
  state.counters["energy_error"] = result.energy.error;
}

void start_up_10s_equal_joints(benchmark::State& state) { start_up(state, degrees(15), degrees(15)); }
void start_up_10s_unequal_joints(benchmark::State& state) { start_up(state, degrees(20), degrees(10)); }

double smooth_sign(double slip) { return std::tanh(slip / 0.05); }

void start_up_10s_by_hand(benchmark::State& state) {
  constexpr double step = 1e-5;
  double heat = 0.0;
  for (auto _ : state) {
    double w1 = 0.0, w2 = 0.0, w3 = 0.0, twist = 0.0, rotation = 0.0;
    heat = 0.0;
    for (int i = 0; i < 1000000; ++i) {
      const double time = i * step;
      const double capacity = clutch_torque * std::fmin(1.0, std::fmax(0.0, (time - clutch_from) / clutch_ramp));
      const double clutch = capacity * smooth_sign(speed - w1);
      const double ratio = text::joint_pair_speed_ratio(degrees(20).value(), degrees(10).value(), 0.0, rotation);
      const double rate = ratio * w1 - w2;
      const double shaft = stiffness * twist + damping * rate;
      const double device = device_torque * smooth_sign(w2 - w3);
      const double load = friction * smooth_sign(w3) + windage * w3 * std::abs(w3) / (speed * speed);
      heat += step * clutch * (speed - w1);
      w1 += step * (clutch - ratio * shaft) / inertia[1];
      w2 += step * (shaft - device) / inertia[2];
      w3 += step * (device - load) / inertia[3];
      twist += step * rate;
      rotation += step * w1;
    }
    benchmark::DoNotOptimize(heat);
  }
  state.counters["heat"] = heat;
}

} // namespace

BENCHMARK(start_up_10s_equal_joints)->Unit(benchmark::kMillisecond);
BENCHMARK(start_up_10s_unequal_joints)->Unit(benchmark::kMillisecond);
BENCHMARK(start_up_10s_by_hand)->Unit(benchmark::kMillisecond);
