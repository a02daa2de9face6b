// The study of a farm: a thousand tractors with a thousand implements, how time grows with their number, and threads.

#include <fieldshaft/core/threads.hpp>
#include <fieldshaft/fieldshaft.hpp>

#include "farms.hpp"

#include <benchmark/benchmark.h>

#include <cmath>
#include <map>
#include <random>

using namespace fieldshaft;

namespace {

/// The same numbers in every run.
class FixedNumbers {
public:
  double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(engine_); }
  double across(double low, double high) { return std::exp(between(std::log(low), std::log(high))); }
  int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(engine_); }

private:
  std::mt19937 engine_{20240131U};
};

/// Machines that all differ, so that none is compared only once for many.
const Farm& farm_of_size(int side) {
  static std::map<int, Farm> farms;
  const auto known = farms.find(side);
  if (known != farms.end()) return known->second;
  FixedNumbers random;
  return farms.emplace(side, random_farms::farm_of(random, side, side)).first->second;
}

void report_pairs(benchmark::State& state) {
  const double pairs = static_cast<double>(state.range(0)) * static_cast<double>(state.range(0));
  state.SetItemsProcessed(static_cast<std::int64_t>(pairs) * state.iterations());
  state.counters["bytes_per_pair"] = sizeof(VerdictCode);
  state.SetComplexityN(state.range(0));
}

/// The matrix alone.
void screen(benchmark::State& state) {
  const Farm& farm = farm_of_size(static_cast<int>(state.range(0)));
  for (auto _ : state) benchmark::DoNotOptimize(verdict_matrix(farm, StudyDepth::screening));
  report_pairs(state);
}

void screen_on_threads(benchmark::State& state) {
  const Farm& farm = farm_of_size(static_cast<int>(state.range(0)));
  const Executor executor = thread_executor(2);
  for (auto _ : state) benchmark::DoNotOptimize(verdict_matrix(farm, StudyDepth::screening, executor));
  report_pairs(state);
}

/// The whole study: matrix, backup, standstills of every tractor and every two, plan, speeds.
void study(benchmark::State& state) {
  const Farm& farm = farm_of_size(static_cast<int>(state.range(0)));
  FarmStudySettings settings;
  settings.depth = StudyDepth::screening;
  for (auto _ : state) benchmark::DoNotOptimize(study_farm(farm, settings));
  report_pairs(state);
}

BENCHMARK(study)->RangeMultiplier(10)->Range(100, 10000)->Unit(benchmark::kMillisecond);
BENCHMARK(screen)->RangeMultiplier(10)->Range(100, 10000)->Unit(benchmark::kMillisecond)->Complexity();
BENCHMARK(screen_on_threads)->Arg(1000)->Unit(benchmark::kMillisecond)->UseRealTime();

} // namespace
