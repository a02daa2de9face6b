// A module includes only modules of lower levels, and what is heavy stays where it belongs.

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>

namespace {

namespace fs = std::filesystem;

const fs::path root = FIELDSHAFT_SOURCE_DIR;

const std::map<std::string, int> level = {
    {"core", 0},   {"units", 1},    {"materials", 2},   {"pto", 2},      {"geometry", 2}, {"power", 3},
    {"rotor", 3},  {"fatigue", 3},  {"hitch", 3},       {"joint", 4},    {"spline", 4},   {"shaft", 4},
    {"cost", 4},   {"overload", 5}, {"driveline", 5},   {"dynamics", 6}, {"case", 7},     {"assess", 8},
    {"advise", 9}, {"report", 10},  {"fieldshaft", 11},
};

const std::set<std::string> may_use_eigen = {"geometry", "hitch", "driveline", "dynamics"};
const std::set<std::string> may_hold_words = {"report"};

/// "fieldshaft/pto/type.hpp" and "fieldshaft/pto.hpp" both belong to pto.
std::string module_of(const std::string& header) {
  const std::string name = header.substr(0, header.find('/'));
  const std::size_t dot = name.find('.');
  return dot == std::string::npos ? name : name.substr(0, dot);
}

struct Include {
  std::string file;
  std::string from;
  std::string header;
};

std::vector<Include> includes_below(const fs::path& folder) {
  static const std::regex line_pattern("^\\s*#\\s*include\\s*[<\"]([^>\"]+)[>\"]");
  std::vector<Include> found;
  for (const auto& entry : fs::recursive_directory_iterator(folder)) {
    if (entry.path().extension() != ".hpp" && entry.path().extension() != ".cpp") continue;
    const std::string from = module_of(fs::relative(entry.path(), folder).generic_string());
    std::ifstream file(entry.path());
    for (std::string line; std::getline(file, line);) {
      std::smatch match;
      if (std::regex_search(line, match, line_pattern)) found.push_back({entry.path().string(), from, match[1]});
    }
  }
  return found;
}

bool starts_with(const std::string& text, const std::string& front) { return text.rfind(front, 0) == 0; }

} // namespace

TEST_CASE("a module includes only itself and modules of lower levels") {
  std::size_t checked = 0;
  for (const char* folder : {"include/fieldshaft", "src"}) {
    for (const Include& include : includes_below(root / folder)) {
      CAPTURE(include.file);
      CAPTURE(include.header);
      REQUIRE_MESSAGE(level.count(include.from) == 1, "module " << include.from << " has no level");
      std::string to;
      if (starts_with(include.header, "fieldshaft/")) to = module_of(include.header.substr(11));
      if (to.empty() && level.count(module_of(include.header)) == 1 && include.header.find('/') != std::string::npos) {
        to = module_of(include.header); // private headers of src, such as "assess/context.hpp"
      }
      if (to.empty()) continue;
      REQUIRE(level.count(to) == 1);
      const bool lower = level.at(to) < level.at(include.from);
      CHECK((to == include.from || lower));
      ++checked;
    }
  }
  CHECK(checked > 100);
}

TEST_CASE("Eigen, streams and JSON stay out of headers that do not need them") {
  for (const Include& include : includes_below(root / "include/fieldshaft")) {
    CAPTURE(include.file);
    CAPTURE(include.header);
    if (starts_with(include.header, "Eigen/")) CHECK(may_use_eigen.count(include.from) == 1);
    CHECK(include.header != "iostream");
    CHECK(include.header != "ostream");
    CHECK(!starts_with(include.header, "nlohmann/"));
    CHECK(include.header.find("io.hpp") == std::string::npos);
  }
}

TEST_CASE("compiler extensions stand in the configuration header only") {
  const std::regex extension("__attribute__|__builtin_|__extension__|typeof\\(");
  for (const char* folder : {"include/fieldshaft", "src"}) {
    for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
      if (entry.is_directory() || entry.path().filename() == "config.hpp") continue;
      if (entry.path().extension() != ".hpp" && entry.path().extension() != ".cpp") continue;
      std::ifstream file(entry.path());
      for (std::string line; std::getline(file, line);) {
        CHECK_MESSAGE(!std::regex_search(line, extension), entry.path().string() << ": " << line);
      }
    }
  }
}
