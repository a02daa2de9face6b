// Typed formulas against bare doubles in the same run: text against twin should cost the same, the checked front a
// little more.

#include <fieldshaft/joint.hpp>
#include <fieldshaft/power.hpp>
#include <fieldshaft/shaft.hpp>

#include <benchmark/benchmark.h>

#include <cmath>
#include <vector>

using namespace fieldshaft;

namespace {

constexpr std::size_t count = 4096;

std::vector<double> numbers(double low, double high) {
  std::vector<double> values(count);
  for (std::size_t i = 0; i < count; ++i) values[i] = low + (high - low) * static_cast<double>(i) / count;
  return values;
}

/// Runs f over pairs of numbers and stores what it gives.
template <class F> void over_pairs(benchmark::State& state, F f) {
  const std::vector<double> a = numbers(1e3, 1e5);
  const std::vector<double> b = numbers(50.0, 150.0);
  std::vector<double> out(count);
  for (auto _ : state) {
    for (std::size_t i = 0; i < count; ++i) out[i] = f(a[i], b[i]);
    benchmark::DoNotOptimize(out.data());
    benchmark::ClobberMemory();
  }
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(count));
}

void torque_bare_double(benchmark::State& state) {
  over_pairs(state, [](double power, double speed) { return power / speed; });
}

void torque_text(benchmark::State& state) {
  over_pairs(state, [](double power, double speed) {
    return text::shaft_torque(Power::from_value(power), AngularSpeed::from_value(speed)).value();
  });
}

void torque_checked_front(benchmark::State& state) {
  over_pairs(state, [](double power, double speed) {
    return shaft_torque(Power::from_value(power), AngularSpeed::from_value(speed)).value();
  });
}

/// The same joint twice: by hand, and by the checked formula.
void joint_ratio_bare_double(benchmark::State& state) {
  over_pairs(state, [](double a, double b) {
    const double angle = 1e-6 * a;
    const double sine = std::sin(angle);
    const double cosine = std::cos(b);
    return std::cos(angle) / (1.0 - sine * sine * cosine * cosine);
  });
}

void joint_ratio_checked_front(benchmark::State& state) {
  over_pairs(state, [](double a, double b) { return joint_speed_ratio(radians(1e-6 * a), radians(b)); });
}

BENCHMARK(torque_bare_double);
BENCHMARK(torque_text);
BENCHMARK(torque_checked_front);
BENCHMARK(joint_ratio_bare_double);
BENCHMARK(joint_ratio_checked_front);

} // namespace
