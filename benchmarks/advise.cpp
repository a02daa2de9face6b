// Searching for remedies of every example case: milliseconds of the processor a case, most of it the geometry of
// changed cases. None should take more than two seconds.

#include <fieldshaft/fieldshaft.hpp>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

using namespace fieldshaft;

namespace {

Case case_in(const std::filesystem::path& path) {
  std::ifstream file(path);
  if (!file) throw std::runtime_error("no example " + path.string());
  std::stringstream text;
  text << file.rdbuf();
  return read_case(text.str());
}

void find_remedies(benchmark::State& state, const std::filesystem::path& path) {
  const Case value = case_in(path);
  Remedies found;
  for (auto _ : state) benchmark::DoNotOptimize(found = remedies(value));
  state.counters["cases"] = found.search.cases;
  state.counters["ranges"] = found.search.ranges;
  state.counters["sets"] = static_cast<double>(found.sets.size());
}

/// One benchmark for each file of the examples, so that a new example is measured too.
[[maybe_unused]] const bool registered = [] {
  std::vector<std::filesystem::path> paths;
  for (const auto& entry : std::filesystem::directory_iterator(FIELDSHAFT_CASES_DIR)) paths.push_back(entry.path());
  std::sort(paths.begin(), paths.end());
  for (const auto& path : paths) {
    benchmark::RegisterBenchmark(("find_remedies/" + path.stem().string()).c_str(), [path](benchmark::State& state) {
      find_remedies(state, path);
    })->Unit(benchmark::kMillisecond);
  }
  return true;
}();

} // namespace
