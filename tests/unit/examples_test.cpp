// Every example case gives exactly the report that is stored beside it.

#include <fieldshaft/fieldshaft.hpp>

#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <set>
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

TEST_CASE("each example case gives its stored reports") {
  // With FIELDSHAFT_WRITE_REPORTS set the stored reports are written anew, to be read before they are committed.
  const bool write = std::getenv("FIELDSHAFT_WRITE_REPORTS") != nullptr;
  const std::set<std::string> in_every_form = {"cutter-with-lever-at-1000", "used-implement-without-papers",
                                               "trailed-cutter-that-fits"};
  std::size_t seen = 0;
  std::size_t seen_in_every_form = 0;
  const auto compare = [write](const fs::path& stored, const std::string& report) {
    CAPTURE(stored.string());
    if (write) std::ofstream(stored) << report;
    CHECK(report == file_text(stored));
  };
  for (const auto& entry : fs::directory_iterator(examples / "cases")) {
    if (entry.path().extension() != ".json") continue;
    ++seen;
    const std::string name = entry.path().stem().string();
    const Assessment assessment = assess(read_case(file_text(entry.path())));
    compare(examples / "reports" / (name + ".txt"), to_text(assessment));
    if (in_every_form.count(name) == 0) continue;
    ++seen_in_every_form;
    compare(examples / "reports" / (name + ".md"), to_markdown(assessment));
    compare(examples / "reports" / (name + ".html"), to_html(assessment));
  }
  CHECK(seen >= 7);
  CHECK(seen_in_every_form == in_every_form.size());
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
