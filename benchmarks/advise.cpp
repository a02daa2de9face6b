// Searching for remedies of the example cases: milliseconds a case, most of it the geometry of changed cases.

#include <fieldshaft/fieldshaft.hpp>

#include <benchmark/benchmark.h>

#include <fstream>
#include <sstream>
#include <stdexcept>

using namespace fieldshaft;

namespace {

Case example_case(const char* name) {
  std::ifstream file(std::string(FIELDSHAFT_CASES_DIR "/") + name + ".json");
  if (!file) throw std::runtime_error(std::string("no example ") + name);
  std::stringstream text;
  text << file.rdbuf();
  return read_case(text.str());
}

void find_remedies(benchmark::State& state, const char* name) {
  const Case value = example_case(name);
  Remedies found;
  for (auto _ : state) benchmark::DoNotOptimize(found = remedies(value));
  state.counters["cases"] = found.search.cases;
  state.counters["ranges"] = found.search.ranges;
  state.counters["sets"] = static_cast<double>(found.sets.size());
}

BENCHMARK_CAPTURE(find_remedies, lever_at_1000, "cutter-with-lever-at-1000")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(find_remedies, drawbar, "drawbar-left-in-the-540-hole")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(find_remedies, mounted, "mounted-mower-lifted-for-transport")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(find_remedies, strong_tractor, "strong-tractor-at-540")->Unit(benchmark::kMillisecond);

} // namespace
