// Natural frequencies of twelve inertias, critical speeds of a telescope, and the exact kinematics of a pair of joints
// against a plain expression of the same formula.

#include <fieldshaft/dynamics.hpp>
#include <fieldshaft/joint.hpp>

#include <benchmark/benchmark.h>

#include <cmath>
#include <vector>

using namespace fieldshaft;

namespace {

/// Twelve inertias in a row, as a whole line of engine, gears, driveline and rotors has at most.
TorsionalTrain twelve() {
  std::vector<MomentOfInertia> inertias;
  std::vector<TorsionalStiffness> stiffnesses;
  for (int i = 0; i < 12; ++i) {
    inertias.push_back(kilogram_square_metres(0.01 * (1 + i % 5)));
    if (i > 0) stiffnesses.push_back(newton_metres_per_radian(2000.0 * (1 + i % 3)));
  }
  return plain_train(inertias, stiffnesses);
}

void modes_of_twelve_inertias(benchmark::State& state) {
  const TorsionalTrain train = twelve();
  for (auto _ : state) benchmark::DoNotOptimize(torsional_modes(train));
}

void response_of_twelve_inertias(benchmark::State& state) {
  const TorsionalTrain train = twelve();
  const TorsionalExcitation excitation{hertz(18.0), {{0, {newton_metres(100.0), {}}}}, {}};
  for (auto _ : state) benchmark::DoNotOptimize(forced_response(train, excitation));
}

WhirlTelescope telescope() {
  const auto member = [](double outer, double inner) {
    const TubeSection tube(millimetres(outer), millimetres(inner));
    return WhirlMember{beam_segment(tube, metres(0.8), gigapascals(207), kilograms_per_cubic_metre(7850)), {}, {}};
  };
  return {member(60, 52), member(48, 40)};
}

void critical_speed_of_a_telescope(benchmark::State& state) {
  const WhirlTelescope made = telescope();
  for (auto _ : state) benchmark::DoNotOptimize(telescope_critical_speed(made, metres(1.3)));
}

void critical_speed_over_all_lengths(benchmark::State& state) {
  const WhirlTelescope made = telescope();
  for (auto _ : state) benchmark::DoNotOptimize(least_critical_speed(made, metres(0.9), metres(1.4), rpm(600)));
}

constexpr std::size_t angles = 1000000;

std::vector<double> turns() {
  std::vector<double> values(angles);
  for (std::size_t i = 0; i < angles; ++i) values[i] = 2.0 * pi * static_cast<double>(i) / angles;
  return values;
}

/// The same chain by hand: tan t2 = tan t / cos b at each joint.
void pair_of_a_million_angles_bare_double(benchmark::State& state) {
  const std::vector<double> t = turns();
  std::vector<double> out(angles);
  const double front = degrees(20.0).value();
  const double rear = degrees(10.0).value();
  const double c1 = std::cos(front), s1 = std::sin(front), c2 = std::cos(rear), s2 = std::sin(rear);
  for (auto _ : state) {
    for (std::size_t i = 0; i < angles; ++i) {
      const double cosine = std::cos(t[i]);
      const double behind = std::atan2(std::sin(t[i]), c1 * cosine) + 0.5 * pi;
      const double second = std::cos(behind);
      out[i] = c1 / (1.0 - s1 * s1 * cosine * cosine) * (c2 / (1.0 - s2 * s2 * second * second));
    }
    benchmark::DoNotOptimize(out.data());
    benchmark::ClobberMemory();
  }
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(angles));
}

void pair_of_a_million_angles(benchmark::State& state) {
  const std::vector<double> t = turns();
  std::vector<double> out(angles);
  const Angle front = degrees(20.0);
  const Angle rear = degrees(10.0);
  for (auto _ : state) {
    for (std::size_t i = 0; i < angles; ++i) out[i] = joint_pair_speed_ratio(front, rear, Angle{}, radians(t[i]));
    benchmark::DoNotOptimize(out.data());
    benchmark::ClobberMemory();
  }
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(angles));
}

void pair_of_a_million_angles_at_once(benchmark::State& state) {
  const std::vector<double> t = turns();
  std::vector<double> out(angles);
  for (auto _ : state) {
    joint_pair_speed_ratios(degrees(20.0), degrees(10.0), Angle{}, t.data(), out.data(), angles);
    benchmark::DoNotOptimize(out.data());
    benchmark::ClobberMemory();
  }
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(angles));
}

} // namespace

BENCHMARK(modes_of_twelve_inertias);
BENCHMARK(response_of_twelve_inertias);
BENCHMARK(critical_speed_of_a_telescope);
BENCHMARK(critical_speed_over_all_lengths);
BENCHMARK(pair_of_a_million_angles_bare_double)->Unit(benchmark::kMillisecond);
BENCHMARK(pair_of_a_million_angles)->Unit(benchmark::kMillisecond);
BENCHMARK(pair_of_a_million_angles_at_once)->Unit(benchmark::kMillisecond);
