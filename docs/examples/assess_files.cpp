// Assesses case files and prints their reports: the main job, from a program that links the library.
//
//   assess_files [--us] FILE...
//
// Exit status: 0 when no case has a stop or an unknown, 1 when one has, 2 when a file cannot be read.

#include <fieldshaft/fieldshaft.hpp>

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace {

int assess_file(const std::string& path, fieldshaft::UnitStyle style) {
  std::ifstream file(path);
  if (!file) {
    std::fprintf(stderr, "%s: cannot be opened\n", path.c_str());
    return 2;
  }
  std::stringstream text;
  text << file.rdbuf();
  const fieldshaft::CaseReading reading = fieldshaft::try_read_case(text.str());
  if (!reading.result) {
    for (const auto& problem : reading.problems)
      std::fprintf(stderr, "%s: %s\n", path.c_str(), problem.message().c_str());
    return 2;
  }
  const fieldshaft::Assessment assessment = fieldshaft::assess(*reading.result);
  std::printf("%s", fieldshaft::to_text(assessment, style).c_str());
  const fieldshaft::Status verdict = assessment.verdict();
  return verdict == fieldshaft::Status::ok || verdict == fieldshaft::Status::caution ? 0 : 1;
}

} // namespace

int main(int argc, char** argv) {
  std::vector<std::string> files(argv + 1, argv + argc);
  const auto us = std::find(files.begin(), files.end(), "--us");
  const auto style = us == files.end() ? fieldshaft::UnitStyle::metric : fieldshaft::UnitStyle::us;
  if (us != files.end()) files.erase(us);
  if (files.empty()) {
    std::fprintf(stderr, "usage: assess_files [--us] FILE...\n");
    return 2;
  }
  int worst = 0;
  for (std::size_t i = 0; i < files.size(); ++i) {
    if (i > 0) std::printf("\n%s\n\n", std::string(100, '=').c_str());
    worst = std::max(worst, assess_file(files[i], style));
  }
  return worst;
}
