// A sweep over 256 x 256 x 256 attitudes against the plain call at every point, for each kernel that the machine has,
// and over two threads. Every figure stands beside its peer of the same run: `times_faster` than driveline_at.

#include <fieldshaft/core/threads.hpp>
#include <fieldshaft/driveline/sweep.hpp>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>

namespace {

using namespace fieldshaft;

constexpr int points_a_side = 256;

std::vector<Angle> evenly(Angle most) {
  std::vector<Angle> angles;
  angles.reserve(points_a_side);
  for (int i = 0; i < points_a_side; ++i) angles.push_back((2.0 * i / (points_a_side - 1) - 1.0) * most);
  return angles;
}

struct Layout {
  Driveline driveline;
  Position pin{metres(-0.4), metres(0.02), metres(-0.25)};
  AttitudeGrid grid{evenly(degrees(60)), evenly(degrees(12)), evenly(degrees(10))};

  Layout() {
    driveline.front_joint = metres(0.08);
    driveline.rear_joint = metres(0.09);
    driveline.input = Position(metres(-0.9), metres(-0.05), metres(0.3));
  }
};

constexpr double points = 1.0 * points_a_side * points_a_side * points_a_side;

double seconds(const std::chrono::steady_clock::time_point& since) {
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - since).count();
}

/// Seconds of one plain call with all that it gives, the best of five rounds.
double seconds_of_plain_call(const Layout& s) {
  double best = 1e9;
  for (int round = 0; round < 5; ++round) {
    Angle worst{};
    const auto start = std::chrono::steady_clock::now();
    for (int i = 0; i < points_a_side; ++i) {
      for (const Angle& roll : s.grid.roll) {
        const Attitude at{s.grid.yaw[static_cast<std::size_t>(i)], s.grid.pitch[100], roll};
        worst = std::max(worst, driveline_at(s.driveline, {s.pin, at}).front_angle);
      }
    }
    benchmark::DoNotOptimize(worst);
    best = std::min(best, seconds(start) / (1.0 * points_a_side * points_a_side));
  }
  return best;
}

void sweep(benchmark::State& state, ProcessorKernel kernel, unsigned threads) {
  if (!kernel_is_available(kernel)) {
    state.SkipWithError("this machine lacks the kernel");
    return;
  }
  const Layout s;
  const Executor executor = threads == 1 ? Executor(run_in_turn) : thread_executor(threads);
  const double plain = seconds_of_plain_call(s);
  double best = 1e9;
  for (auto _ : state) {
    const auto start = std::chrono::steady_clock::now();
    benchmark::DoNotOptimize(driveline_sweep(s.driveline, s.pin, s.grid, executor, kernel));
    best = std::min(best, seconds(start));
  }
  state.counters["ns_a_pose"] = best / points * 1e9;
  state.counters["plain_ns"] = plain * 1e9;
  state.counters["times_faster"] = plain * points / best;
}
BENCHMARK_CAPTURE(sweep, portable, ProcessorKernel::portable, 1)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(sweep, avx2, ProcessorKernel::avx2, 1)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(sweep, avx512, ProcessorKernel::avx512, 1)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(sweep, automatic_two_threads, ProcessorKernel::automatic, 2)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime();

} // namespace
