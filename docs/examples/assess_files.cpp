// Assesses case files and prints their reports: the main job, from a program that links the library.

#include <fieldshaft/fieldshaft.hpp>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

namespace {

const char* const usage =
    "usage: assess_files [--text | --markdown | --html | --json] [--units metric | us] [--remedies] FILE...\n";

const char* const help =
    "\n"
    "Assesses case files (JSON) and prints their reports.\n"
    "\n"
    "  --text           plain text, 100 characters wide (the default)\n"
    "  --markdown       Markdown\n"
    "  --html           one HTML document for each case, to be shown or printed\n"
    "  --json           one JSON document for each case\n"
    "  --units metric   millimetres, newton metres, kilowatts (the default)\n"
    "  --units us       inches, pound-feet, horsepower\n"
    "  --remedies       after each case with a stop: what changes heal it, and the steps of a changeover\n"
    "  --help           this text\n"
    "\n"
    "Exit status: 0 when no case has a stop or an unknown, 1 when one has, 2 when a file cannot be\n"
    "read or an option is wrong.\n";

struct Options {
  std::string form = "--text";
  fieldshaft::UnitStyle units = fieldshaft::UnitStyle::metric;
  std::vector<std::string> files;
  bool remedies = false;
  bool help = false;
};

/// The options, or nothing after a message.
std::optional<Options> options_of(const std::vector<std::string>& arguments) {
  Options options;
  for (std::size_t i = 0; i < arguments.size(); ++i) {
    const std::string& argument = arguments[i];
    if (argument == "--help" || argument == "-h") {
      options.help = true;
    } else if (argument == "--remedies") {
      options.remedies = true;
    } else if (argument == "--text" || argument == "--markdown" || argument == "--html" || argument == "--json") {
      options.form = argument;
    } else if (argument == "--units" && i + 1 < arguments.size() &&
               (arguments[i + 1] == "us" || arguments[i + 1] == "metric")) {
      options.units = arguments[++i] == "us" ? fieldshaft::UnitStyle::us : fieldshaft::UnitStyle::metric;
    } else if (argument.rfind("--", 0) == 0) {
      std::fprintf(stderr, "%s: no such option, or what it needs is missing\n", argument.c_str());
      return std::nullopt;
    } else {
      options.files.push_back(argument);
    }
  }
  if (options.files.empty() && !options.help) return std::nullopt;
  return options;
}

/// The text of a file, or nothing after a message.
std::optional<std::string> text_of(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  const char* problem = nullptr;
  if (std::filesystem::is_directory(path)) {
    problem = "is a folder, not a case file";
  } else if (!file) {
    problem = "cannot be opened";
  }
  if (problem != nullptr) {
    std::fprintf(stderr, "%s: %s\n", path.c_str(), problem);
    return std::nullopt;
  }
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

/// A result in the form that was asked for.
template <class Result> std::string report_of(const Result& result, const Options& options) {
  if (options.form == "--markdown") return fieldshaft::to_markdown(result, options.units);
  if (options.form == "--html") return fieldshaft::to_html(result, options.units);
  if (options.form == "--json") return fieldshaft::to_json(result, options.units);
  return fieldshaft::to_text(result, options.units);
}

/// Verified remedies, and the steps of the changeover that the first of them asks for.
void print_remedies(const fieldshaft::Case& value, const Options& options) {
  const fieldshaft::Remedies remedies = fieldshaft::remedies(value);
  std::printf("\n%s", report_of(remedies, options).c_str());
  if (remedies.sets.empty()) return;
  const auto steps = fieldshaft::changeover_between(value, remedies.sets.front().changed);
  if (steps) std::printf("\n%s", report_of(*steps, options).c_str());
}

int assess_file(const std::string& path, const Options& options) {
  const std::optional<std::string> text = text_of(path);
  if (!text) return 2;
  const fieldshaft::CaseReading reading = fieldshaft::try_read_case(*text);
  if (!reading.result) {
    for (const auto& problem : reading.problems)
      std::fprintf(stderr, "%s: %s\n", path.c_str(), problem.message().c_str());
    return 2;
  }
  const fieldshaft::Assessment assessment = fieldshaft::assess(*reading.result);
  std::printf("%s", report_of(assessment, options).c_str());
  const fieldshaft::Status verdict = assessment.verdict();
  if (options.remedies && verdict == fieldshaft::Status::stop) print_remedies(*reading.result, options);
  return verdict == fieldshaft::Status::ok || verdict == fieldshaft::Status::caution ? 0 : 1;
}

} // namespace

int main(int argc, char** argv) {
  const std::optional<Options> options = options_of({argv + 1, argv + argc});
  if (!options || options->help) {
    std::fprintf(options ? stdout : stderr, "%s%s", usage, options ? help : "       assess_files --help\n");
    return options ? 0 : 2;
  }
  int worst = 0;
  for (std::size_t i = 0; i < options->files.size(); ++i) {
    if (i > 0 && options->form == "--text") std::printf("\n%s\n\n", std::string(100, '=').c_str());
    worst = std::max(worst, assess_file(options->files[i], *options));
  }
  return worst;
}
