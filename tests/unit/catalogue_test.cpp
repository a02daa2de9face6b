// The catalogue holds every phrase that the library names, and no phrase that nothing names.

#include "../../src/report/catalogue.hpp"

#include <fieldshaft/assess.hpp>

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>
#include <vector>

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

/// The texts of three words and more in a statement.
std::vector<std::string> sentences_in(const std::string& statement) {
  static const std::regex literal(R"re("((?:[^"\\\n]|\\.)*)")re");
  static const std::regex word("[A-Za-z]{2,}");
  std::vector<std::string> found;
  for (auto it = std::sregex_iterator(statement.begin(), statement.end(), literal); it != std::sregex_iterator();
       ++it) {
    const std::string text = (*it)[1];
    const auto words = std::distance(std::sregex_iterator(text.begin(), text.end(), word), std::sregex_iterator());
    if (words >= 3 && text.find(' ') != std::string::npos) found.push_back(text);
  }
  return found;
}

/// Whether a statement may hold a sentence: it names a source, refuses an input, or writes markup.
bool may_speak(const std::string& statement) {
  for (const char* sign : {"Standing::", "Source", "with_stated", "fail_input", "=\\\""}) {
    if (statement.find(sign) != std::string::npos) return true;
  }
  return false;
}

} // namespace

TEST_CASE("words for people stand in the catalogue alone") {
  static const std::regex comment("//[^\n]*");
  int read = 0;
  for (const char* folder : {"assess", "advise", "report"}) {
    for (const auto& entry : fs::directory_iterator(sources / folder)) {
      if (!entry.is_regular_file()) continue;
      std::istringstream text(std::regex_replace(file_text(entry.path()), comment, ""));
      for (std::string statement; std::getline(text, statement, ';'); ++read) {
        if (may_speak(statement)) continue;
        for (const std::string& sentence : sentences_in(statement))
          FAIL_CHECK(entry.path().filename() << ": " << sentence);
      }
    }
  }
  CHECK(read > 1000);
  CHECK(sentences_in("return \"Stop the engine first\"").size() == 1); // the search itself finds one
  CHECK(!may_speak("return \"Stop the engine first\""));
}

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
