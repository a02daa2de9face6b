// The main job: reading, assessing and reporting the example cases.

#include <fieldshaft/fieldshaft.hpp>

#include <benchmark/benchmark.h>

#include <fstream>
#include <sstream>
#include <stdexcept>

using namespace fieldshaft;

namespace {

std::string example(const char* name) {
  std::ifstream file(std::string(FIELDSHAFT_CASES_DIR "/") + name + ".json");
  if (!file) throw std::runtime_error(std::string("no example ") + name);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

void read_only(benchmark::State& state, const char* name) {
  const std::string text = example(name);
  for (auto _ : state) benchmark::DoNotOptimize(read_case(text));
}

void assess_only(benchmark::State& state, const char* name) {
  const Case value = read_case(example(name));
  for (auto _ : state) benchmark::DoNotOptimize(assess(value));
}

void read_assess_json(benchmark::State& state, const char* name) {
  const std::string text = example(name);
  for (auto _ : state) benchmark::DoNotOptimize(to_json(assess(read_case(text))));
}

BENCHMARK_CAPTURE(read_only, trailed, "trailed-cutter-that-fits");
BENCHMARK_CAPTURE(assess_only, trailed, "trailed-cutter-that-fits");
BENCHMARK_CAPTURE(read_assess_json, trailed, "trailed-cutter-that-fits");
BENCHMARK_CAPTURE(assess_only, mounted, "mounted-mower-lifted-for-transport");
BENCHMARK_CAPTURE(assess_only, without_papers, "used-implement-without-papers");

} // namespace
