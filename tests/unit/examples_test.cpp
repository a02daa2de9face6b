// Every example case gives exactly the report that is stored beside it.

#include <fieldshaft/fieldshaft.hpp>

#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>

using namespace fieldshaft;
namespace fs = std::filesystem;

namespace {

const fs::path examples = fs::path(FIELDSHAFT_SOURCE_DIR) / "docs/examples";

std::string file_text(const fs::path& path) {
  std::ifstream file(path);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

} // namespace

TEST_CASE("each example case gives its stored report") {
  // With FIELDSHAFT_WRITE_REPORTS set the stored reports are written anew, to be read before they are committed.
  // NOLINTNEXTLINE(concurrency-mt-unsafe): read once, before any thread
  const bool write = std::getenv("FIELDSHAFT_WRITE_REPORTS") != nullptr;
  std::size_t seen = 0;
  for (const auto& entry : fs::directory_iterator(examples / "cases")) {
    if (entry.path().extension() != ".json") continue;
    ++seen;
    CAPTURE(entry.path().string());
    const Assessment assessment = assess(read_case(file_text(entry.path())));
    const std::string report = to_text(assessment);
    const fs::path stored = examples / "reports" / (entry.path().stem().string() + ".txt");
    if (write) std::ofstream(stored) << report;
    CHECK(report == file_text(stored));
  }
  CHECK(seen >= 7);
}

TEST_CASE("a report leaves no placeholder unfilled and no phrase unknown") {
  for (const auto& entry : fs::directory_iterator(examples / "cases")) {
    const Assessment assessment = assess(read_case(file_text(entry.path())));
    for (const UnitStyle style : {UnitStyle::metric, UnitStyle::us}) {
      const std::string report = to_text(assessment, style);
      CAPTURE(report);
      CHECK(report.find('{') == std::string::npos);
      CHECK(report.find("[speed.") == std::string::npos);
      CHECK(report.find("not a number") == std::string::npos);
    }
  }
}
