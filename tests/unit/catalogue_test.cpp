// The catalogue holds every phrase that the library names, and no phrase that nothing names.

#include "../../src/report/catalogue.hpp"

#include <fieldshaft/assess.hpp>

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

namespace fs = std::filesystem;

namespace {

const fs::path sources = fs::path(FIELDSHAFT_SOURCE_DIR) / "src";

std::string file_text(const fs::path& path) {
  std::ifstream file(path);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

/// Everything between quotes that looks like an id: words and dots, at least one dot.
std::set<std::string> ids_in(const std::string& text) {
  static const std::regex id("\"([a-z_0-9]+(\\.[a-z_0-9]+)+)\"");
  std::set<std::string> ids;
  for (auto it = std::sregex_iterator(text.begin(), text.end(), id); it != std::sregex_iterator(); ++it)
    ids.insert((*it)[1]);
  return ids;
}

std::set<std::string> ids_named(const std::set<std::string>& folders) {
  std::set<std::string> ids;
  for (const std::string& folder : folders) {
    for (const auto& entry : fs::recursive_directory_iterator(sources / folder)) {
      if (entry.path().extension() != ".cpp" || entry.path().parent_path().filename() == "words") continue;
      for (const std::string& id : ids_in(file_text(entry.path()))) ids.insert(id);
    }
  }
  return ids;
}

} // namespace

TEST_CASE("every check has a title and an id of its own") {
  std::set<std::string> ids;
  std::set<std::string> titles;
  for (int i = 0; i < fieldshaft::check_count; ++i) {
    const auto check = static_cast<fieldshaft::Check>(i);
    CHECK(ids.insert(fieldshaft::check_id(check)).second);
    CHECK(!fieldshaft::report_texts::title_of(check).empty());
    CHECK(titles.insert(std::string(fieldshaft::report_texts::title_of(check))).second);
  }
}

TEST_CASE("phrases that the checks name exist, and phrases that exist are named") {
  std::set<std::string> defined;
  for (const auto& entry : fs::directory_iterator(sources / "report/words")) {
    for (const std::string& id : ids_in(file_text(entry.path()))) CHECK_MESSAGE(defined.insert(id).second, id);
  }
  const std::set<std::string> named = ids_named({"assess", "advise", "report"});
  std::set<std::string> check_ids;
  for (int i = 0; i < fieldshaft::check_count; ++i) {
    check_ids.insert(fieldshaft::check_id(static_cast<fieldshaft::Check>(i)));
  }
  const std::set<std::string> paths = {"tractor", "implement", "driveline", "overload", "range",
                                       "fouling", "limits",    "torsion",   "start"};
  for (const std::string& id : named) {
    const bool path = paths.count(id.substr(0, id.find('.'))) == 1;
    if ((path || check_ids.count(id) == 1) && defined.count(id) == 0) continue; // of the case document, or a check
    CHECK_MESSAGE(!fieldshaft::report_texts::phrase(id).empty(), "no phrase for " << id);
  }
  for (const std::string& id : defined) CHECK_MESSAGE(named.count(id) == 1, "nothing names the phrase " << id);
}
