// Answers requests until the input ends: what the back end of a farm program would link and run beside itself.
//
// Each line of the standard input is a JSON object, each line of the standard output its answer, in the same order:
//
//   {"id": 7, "case": {...}}                   the case document; "units": "us" for inches, pound-feet, horsepower
//   {"id": 7, "verdict": "stop", "headline": "...", "findings": [{"check": "...", "status": "...", "text": "..."}]}
//   {"id": 7, "problems": [{"path": "...", "value": "...", "expected": "..."}]}
//
// A line that cannot be answered gets problems, never silence, and the next line is answered all the same. Exit status
// 0 at the end of the input. An answer could carry the whole of to_json(assessment); here it is the short form.

#include <fieldshaft/fieldshaft.hpp>

#include <nlohmann/json.hpp>

#include <exception>
#include <iostream>
#include <set>
#include <string>
#include <vector>

namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t longest_line = 1 << 20; // bytes: a case takes a few thousand
constexpr int deepest_line = 32;              // a case nests six deep

Json problem(const std::string& path, const std::string& value, const std::string& expected) {
  return {{"path", path}, {"value", value}, {"expected", expected}};
}

/// What keeps a line from being answered.
struct BadLine {
  Json problem;
};

/// A line as JSON. A parser alone would let the last of two equal keys win in silence, and follow any depth.
Json parsed(const std::string& line) {
  std::vector<std::set<std::string>> keys;
  const auto watch = [&keys](int depth, Json::parse_event_t event, Json& value) {
    if (depth > deepest_line) throw BadLine{problem("", "deeper than 32 levels", "a request")};
    if (event == Json::parse_event_t::object_start) keys.emplace_back();
    if (event == Json::parse_event_t::object_end) keys.pop_back();
    if (event == Json::parse_event_t::key && !keys.back().insert(value.get<std::string>()).second)
      throw BadLine{problem(value.get<std::string>(), "stands twice in one object", "each key once")};
    return true;
  };
  return Json::parse(line, watch);
}

/// The units of the answer, after a look at every entry of the request.
fieldshaft::UnitStyle units_of(const Json& request) {
  for (const auto& [key, value] : request.items()) {
    if (key != "id" && key != "case" && key != "units")
      throw BadLine{problem(key, "unknown key", "one of: id, case, units")};
  }
  if (!request.contains("case")) throw BadLine{problem("case", "missing", "a case document")};
  const Json units = request.value("units", Json("metric"));
  if (units != "metric" && units != "us") throw BadLine{problem("units", units.dump(), "\"metric\" or \"us\"")};
  return units == "us" ? fieldshaft::UnitStyle::us : fieldshaft::UnitStyle::metric;
}

Json answer_of(const fieldshaft::Assessment& assessment, fieldshaft::UnitStyle units) {
  const Json report = Json::parse(fieldshaft::to_json(assessment, units));
  Json findings = Json::array();
  for (const Json& finding : report["findings"])
    findings.push_back({{"check", finding["id"]}, {"status", finding["status"]}, {"text", finding["text"]}});
  return {{"verdict", report["verdict"]}, {"headline", report["headline"]}, {"findings", findings}};
}

Json answer_of(const Json& request) {
  const fieldshaft::UnitStyle units = units_of(request);
  const fieldshaft::CaseReading reading = fieldshaft::try_read_case(request["case"].dump());
  if (reading.result) return answer_of(fieldshaft::assess(*reading.result), units);
  Json problems = Json::array();
  for (const fieldshaft::CaseProblem& p : reading.problems)
    problems.push_back(problem(p.path.empty() ? "case" : "case." + p.path, p.value, p.expected));
  return {{"problems", problems}};
}

/// The answer to a line, whatever the line holds.
Json answer_to(const std::string& line) {
  Json answer = {{"id", nullptr}};
  try {
    const Json request = parsed(line);
    if (!request.is_object()) throw BadLine{problem("", "not a JSON object", "a request")};
    answer["id"] = request.value("id", Json(nullptr));
    answer.update(answer_of(request));
  } catch (const BadLine& bad) {
    answer["problems"] = Json::array({bad.problem});
  } catch (const Json::parse_error& error) {
    answer["problems"] = Json::array({problem("", "no JSON at byte " + std::to_string(error.byte), "a request")});
  } catch (const std::exception& error) {
    answer["problems"] = Json::array({problem("", error.what(), "a request that can be answered")});
  }
  return answer;
}

/// Reads a line of bounded length; false at the end of the input. What is beyond the bound is skipped.
bool read_line(std::istream& in, std::string& line, bool& too_long) {
  line.clear();
  too_long = false;
  for (int c = in.get(); c != std::istream::traits_type::eof(); c = in.get()) {
    if (c == '\n') return true;
    too_long = too_long || line.size() == longest_line;
    if (!too_long) line.push_back(static_cast<char>(c));
  }
  return !line.empty();
}

} // namespace

int main() {
  std::ios::sync_with_stdio(false);
  std::string line;
  bool too_long = false;
  while (read_line(std::cin, line, too_long)) {
    Json answer = {{"id", nullptr}, {"problems", Json::array({problem("", "longer than a mebibyte", "a request")})}};
    if (!too_long) answer = answer_to(line);
    // Texts of the request come back in the answer; what is no UTF-8 in them is replaced.
    std::cout << answer.dump(-1, ' ', false, Json::error_handler_t::replace) << std::endl;
  }
  return 0;
}
