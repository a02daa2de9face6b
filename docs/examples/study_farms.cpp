// Studies farm files and prints their pages: what runs with what, what stands still when a tractor is down, what pays,
// and a verified remedy for each pair that does not work.
//
//   study_farms FILE...
//
// Exit status: 0 when every implement has a tractor, 1 when one has none, 2 when a file cannot be read.

#include <fieldshaft/core/threads.hpp>
#include <fieldshaft/fieldshaft.hpp>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <sstream>
#include <string>

namespace {

int study_file(const std::string& path) {
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
  std::printf("%s", fieldshaft::to_text(study).c_str());
  return study.backup.never.empty() ? 0 : 1;
}

} // namespace

int main(int argc, char** argv) {
  if (argc < 2) {
    std::fprintf(stderr, "usage: study_farms FILE...\n");
    return 2;
  }
  int worst = 0;
  for (int i = 1; i < argc; ++i) worst = std::max(worst, study_file(argv[i]));
  return worst;
}
