// Studies farm files and prints their pages: what runs with what, what stands still when a tractor is down, what pays,
// and a verified remedy for each pair that does not work.
//
//   study_farms [--units metric | us] FILE...
//
// Exit status: 0 when every implement has a tractor, 1 when one has none, 2 when a file cannot be read.

#include <fieldshaft/core/threads.hpp>
#include <fieldshaft/fieldshaft.hpp>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace {

int study_file(const std::string& path, fieldshaft::UnitStyle units) {
  std::ifstream file(path);
  if (!file) {
    std::fprintf(stderr, "%s: cannot be opened\n", path.c_str());
    return 2;
  }
  std::stringstream text;
  text << file.rdbuf();
  const fieldshaft::FarmReading reading = fieldshaft::try_read_farm(text.str());
  for (const auto& problem : reading.problems) {
    std::fprintf(stderr, "%s: %s\n", path.c_str(), problem.message().c_str());
  }
  if (!reading.result) return 2;
  fieldshaft::FarmStudySettings settings;
  settings.executor = fieldshaft::thread_executor();
  settings.remedies = true;
  settings.remedy_options.most_sets = 1;
  const fieldshaft::FarmStudy study = fieldshaft::study_farm(*reading.result, settings);
  std::printf("%s", fieldshaft::to_text(study, units).c_str());
  return study.backup.never.empty() ? 0 : 1;
}

} // namespace

int main(int argc, char** argv) {
  std::vector<std::string> arguments(argv + 1, argv + argc);
  auto units = fieldshaft::UnitStyle::metric;
  if (arguments.size() > 1 && arguments[0] == "--units" && (arguments[1] == "metric" || arguments[1] == "us")) {
    if (arguments[1] == "us") units = fieldshaft::UnitStyle::us;
    arguments.erase(arguments.begin(), arguments.begin() + 2);
  }
  if (arguments.empty() || arguments[0].rfind("--", 0) == 0) {
    std::fprintf(stderr, "usage: study_farms [--units metric | us] FILE...\n");
    return 2;
  }
  int worst = 0;
  for (const std::string& path : arguments) worst = std::max(worst, study_file(path, units));
  return worst;
}
