// Counting cycles against what the memory allows: a sum in eight lanes over the same samples, and against a counter
// written as the standard words it. `times_the_sum` is the time over that of the sum, both of the processor and
// measured in the same run.

#include <fieldshaft/core/threads.hpp>
#include <fieldshaft/fatigue.hpp>

#include "textbook_rainflow.hpp"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdint>
#include <ctime>
#include <functional>
#include <vector>

namespace {

using fieldshaft::Cycle;

constexpr std::size_t sample_count = 100'000'000;
/// The plain counter needs several times the memory of the history, so that it gets a part of it.
constexpr std::size_t plain_count = sample_count / 10;

enum class Signal { smooth, noisy, repeated };

/// The repeated noise comes back after so many samples, so that the processor learns where its branches go: what noisy
/// costs more is what mispredicted branches cost.
constexpr std::size_t repeat_after = 200;

/// About a thousand samples to a turn, even noise, or the same short noise over and over. One at a time is held: each
/// fills 0.8 GB.
const std::vector<double>& history(Signal signal) {
  static std::vector<double> samples;
  static Signal held = Signal::noisy;
  if (!samples.empty() && held == signal) return samples;
  samples.resize(sample_count);
  std::uint64_t state = 1;
  for (std::size_t i = 0; i < samples.size(); ++i) {
    if (signal == Signal::repeated && i % repeat_after == 0) state = 1;
    state = state * 6364136223846793005ULL + 1442695040888963407ULL;
    samples[i] = signal == Signal::smooth ? std::sin(static_cast<double>(i) * 6.2831853e-3)
                                          : static_cast<double>(state >> 11) * 0x1p-53;
  }
  held = signal;
  return samples;
}

double sum_in_eight_lanes(const double* samples, std::size_t size) {
  double lanes[8] = {};
  for (std::size_t i = 0; i + 8 <= size; i += 8) {
    for (std::size_t lane = 0; lane < 8; ++lane) lanes[lane] += samples[i + lane];
  }
  return ((lanes[0] + lanes[1]) + (lanes[2] + lanes[3])) + ((lanes[4] + lanes[5]) + (lanes[6] + lanes[7]));
}

/// Seconds of processor time since `begin`: other programs on the machine do not count.
double since(std::clock_t begin) { return static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC; }

/// Seconds a sample of the sum, the measure of all others: the best of five rounds, measured once a signal.
double seconds_of_sum(Signal signal) {
  static double best[3] = {0.0, 0.0, 0.0};
  double& seconds = best[static_cast<int>(signal)];
  for (int round = 0; round < 5 && (round > 0 || seconds == 0.0); ++round) {
    const auto begin = std::clock();
    benchmark::DoNotOptimize(sum_in_eight_lanes(history(signal).data(), sample_count));
    const double this_round = since(begin) / static_cast<double>(sample_count);
    seconds = seconds == 0.0 ? this_round : std::min(seconds, this_round);
  }
  return seconds;
}

/// Runs `work` on `size` samples, and reports samples per second and the ratio to the sum.
template <class Work> void measure(benchmark::State& state, Signal signal, std::size_t size, Work work) {
  const std::vector<double>& samples = history(signal);
  const double sum = seconds_of_sum(signal);
  const auto begin = std::clock();
  for (auto _ : state) work(samples);
  const double seconds = since(begin);
  const double samples_done = static_cast<double>(state.iterations()) * static_cast<double>(size);
  state.counters["samples_per_second"] = benchmark::Counter(samples_done / seconds);
  state.counters["times_the_sum"] = benchmark::Counter(seconds / samples_done / sum);
}

void sum_of_samples(benchmark::State& state, Signal signal) {
  measure(state, signal, sample_count, [](const std::vector<double>& samples) {
    benchmark::DoNotOptimize(sum_in_eight_lanes(samples.data(), samples.size()));
  });
}

void count_cycles_to_rows(benchmark::State& state, Signal signal) {
  measure(state, signal, sample_count, [](const std::vector<double>& samples) {
    benchmark::DoNotOptimize(fieldshaft::count_cycles(samples).size());
  });
}

void count_cycles_in_pieces(benchmark::State& state, Signal signal) {
  measure(state, signal, sample_count, [](const std::vector<double>& samples) {
    double sum = 0.0;
    fieldshaft::CycleCounter counter([&sum](const Cycle<>& cycle) { sum += cycle.count * cycle.range; });
    for (std::size_t i = 0; i < samples.size(); i += 4000) counter.feed(samples.data() + i, 4000);
    counter.finish();
    benchmark::DoNotOptimize(sum);
  });
}

void history_damage_in_one_pass(benchmark::State& state, Signal signal) {
  const fieldshaft::SnLine<double> line{1.0, -0.2, 0.01, 100.0, 100.0};
  measure(state, signal, sample_count, [&line](const std::vector<double>& samples) {
    benchmark::DoNotOptimize(fieldshaft::history_damage(samples, line, fieldshaft::MeanStressRule::goodman).value);
  });
}

double seconds_by_clock(const std::function<void()>& work) {
  const auto begin = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

/// By the clock: `times_one_thread` is the best time over that of the same work in turn, measured before it.
void measure_on_two_threads(benchmark::State& state, const std::function<void(const fieldshaft::Executor&)>& work) {
  double alone = seconds_by_clock([&work] { work(fieldshaft::run_in_turn); });
  for (int round = 0; round < 4; ++round)
    alone = std::min(alone, seconds_by_clock([&work] { work(fieldshaft::run_in_turn); }));
  const fieldshaft::Executor two = fieldshaft::thread_executor(2);
  double best = alone * 1e3;
  for (auto _ : state) best = std::min(best, seconds_by_clock([&] { work(two); }));
  state.counters["times_one_thread"] = best / alone;
  state.counters["bytes_per_second"] = static_cast<double>(sample_count * sizeof(double)) / best;
}

void history_damage_on_two_threads(benchmark::State& state, Signal signal) {
  const fieldshaft::SnLine<double> line{1.0, -0.2, 0.01, 100.0, 100.0};
  const std::vector<double>& samples = history(signal);
  measure_on_two_threads(state, [&](const fieldshaft::Executor& executor) {
    benchmark::DoNotOptimize(fieldshaft::history_damage(samples, line, fieldshaft::MeanStressRule::goodman,
                                                        fieldshaft::SmallCycles::harmless, {}, executor)
                                 .value);
  });
}

/// What two threads get out of the memory: the sum over the same pieces.
void sum_on_two_threads(benchmark::State& state, Signal signal) {
  const std::vector<double>& samples = history(signal);
  measure_on_two_threads(state, [&](const fieldshaft::Executor& executor) {
    constexpr std::size_t pieces = 400;
    executor(pieces, [&](std::size_t piece) {
      const double* const from = samples.data() + piece * (sample_count / pieces);
      benchmark::DoNotOptimize(sum_in_eight_lanes(from, sample_count / pieces));
    });
  });
}

void plain_textbook_count(benchmark::State& state, Signal signal) {
  const std::vector<double> part(history(signal).begin(), history(signal).begin() + plain_count);
  measure(state, signal, plain_count,
          [&part](const std::vector<double>&) { benchmark::DoNotOptimize(textbook::rainflow(part).size()); });
}

} // namespace

#define FIELDSHAFT_COUNT_BENCHMARK(name, signal)                                                                       \
  BENCHMARK_CAPTURE(name, signal, Signal::signal)->Unit(benchmark::kMillisecond)
FIELDSHAFT_COUNT_BENCHMARK(sum_of_samples, smooth);
FIELDSHAFT_COUNT_BENCHMARK(sum_on_two_threads, smooth)->UseRealTime();
FIELDSHAFT_COUNT_BENCHMARK(count_cycles_to_rows, smooth);
FIELDSHAFT_COUNT_BENCHMARK(count_cycles_in_pieces, smooth);
FIELDSHAFT_COUNT_BENCHMARK(history_damage_in_one_pass, smooth);
FIELDSHAFT_COUNT_BENCHMARK(history_damage_on_two_threads, smooth)->UseRealTime();
FIELDSHAFT_COUNT_BENCHMARK(plain_textbook_count, smooth);
FIELDSHAFT_COUNT_BENCHMARK(sum_of_samples, noisy);
FIELDSHAFT_COUNT_BENCHMARK(count_cycles_to_rows, noisy);
FIELDSHAFT_COUNT_BENCHMARK(count_cycles_in_pieces, noisy);
FIELDSHAFT_COUNT_BENCHMARK(history_damage_in_one_pass, noisy);
FIELDSHAFT_COUNT_BENCHMARK(history_damage_on_two_threads, noisy)->UseRealTime();
FIELDSHAFT_COUNT_BENCHMARK(plain_textbook_count, noisy);
FIELDSHAFT_COUNT_BENCHMARK(count_cycles_in_pieces, repeated);
