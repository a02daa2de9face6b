// The limits that the wide loops are held against: division with root, and multiply-add, in the lanes of the sweep's
// kernels. Seconds of the processor, the best round.

#include <fieldshaft/driveline/sweep.hpp>

#include "peaks.hpp"

#include <benchmark/benchmark.h>

#include <vector>

namespace {

using fieldshaft::ProcessorKernel;

bool lacks(benchmark::State& state, ProcessorKernel kernel) {
  const bool lacking = !fieldshaft::kernel_is_available(kernel);
  if (lacking) state.SkipWithError("this machine lacks the instructions");
  return lacking;
}

/// In the first cache, as the sines and cosines of a sweep's rolls are.
void divisions_and_roots(benchmark::State& state, ProcessorKernel kernel, const peaks::Loops& loops) {
  if (lacks(state, kernel)) return;
  std::vector<double> numbers(1024);
  for (std::size_t i = 0; i < numbers.size(); ++i) numbers[i] = 1.0 + static_cast<double>(i) / 1024.0;
  for (auto _ : state) {
    benchmark::DoNotOptimize(loops.divisions_and_roots(numbers.data(), static_cast<long>(numbers.size())));
  }
  state.SetItemsProcessed(static_cast<std::int64_t>(numbers.size()) * state.iterations());
}

void multiply_adds(benchmark::State& state, ProcessorKernel kernel, const peaks::Loops& loops) {
  if (lacks(state, kernel)) return;
  constexpr long steps = 10000;
  for (auto _ : state) benchmark::DoNotOptimize(loops.multiply_adds(steps));
  state.SetItemsProcessed(steps * peaks::chains * loops.lanes * state.iterations());
}

BENCHMARK_CAPTURE(divisions_and_roots, avx2, ProcessorKernel::avx2, peaks::avx2);
BENCHMARK_CAPTURE(divisions_and_roots, avx512, ProcessorKernel::avx512, peaks::avx512);
BENCHMARK_CAPTURE(multiply_adds, avx2, ProcessorKernel::avx2, peaks::avx2);
BENCHMARK_CAPTURE(multiply_adds, avx512, ProcessorKernel::avx512, peaks::avx512);

} // namespace
