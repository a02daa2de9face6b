#pragma once
// Reference rows: checks against the outside, kept as data. The same files are run through the Python package.
//
// A file tests/reference/<module>.json holds a list of rows, one row a line:
//   {"id": "T10", "formula": "torsion_stress", "given": {"section": {"tube": ["50 mm", "44 mm"]}, "torque": "500 N·m"},
//    "expect": {"value": "50.8908 MPa"}, "tolerance": 1e-6, "source": "...", "status": "textbook example"}
// Quantities are text with units; the expected ones too. `tolerance` is relative. `status` is one of the standings
// of core/source.hpp or "computed" (arithmetic from the stated formula; never this library's own output).

#include "close.hpp"

#include <fieldshaft/units/text.hpp>

#include <nlohmann/json.hpp>

#include <fstream>
#include <functional>
#include <map>
#include <set>
#include <string>

namespace rows {

using Json = nlohmann::json;

/// A quantity from a row: text with a unit, or a plain number where Q is double.
template <class Q> Q read(const Json& value) {
  if constexpr (std::is_same_v<Q, double>) {
    if (value.is_number()) return value.get<double>();
  }
  return fieldshaft::parse<Q>(value.get<std::string>());
}

class Row {
public:
  explicit Row(const Json& row) : row_(row) {}

  const Json& given(const std::string& name) const { return row_.at("given").at(name); }
  bool has(const std::string& name) const { return row_.at("given").contains(name); }
  template <class Q> Q get(const std::string& name) const { return read<Q>(given(name)); }
  template <class Q> Q get_or(const std::string& name, Q otherwise) const {
    return has(name) ? get<Q>(name) : otherwise;
  }

  /// Compares one expected value (by name) with what the formula gave, if the row expects it.
  template <class Q> void expect(const std::string& name, Q actual) const {
    const Json& expected = row_.at("expect");
    if (!expected.contains(name)) return;
    seen_.insert(name);
    double actual_si{};
    double expected_si{};
    if constexpr (std::is_same_v<Q, double>) {
      actual_si = actual;
      expected_si = read<double>(expected.at(name));
    } else {
      actual_si = actual.value();
      expected_si = read<Q>(expected.at(name)).value();
    }
    INFO(row_.at("id").get<std::string>(), ": ", name);
    CHECK_CLOSE(actual_si, expected_si, row_.at("tolerance").get<double>());
  }

  /// Every expected value must have been compared: a row that checks nothing is a defect.
  void all_compared() const {
    for (const auto& entry : row_.at("expect").items()) {
      const std::string& name = entry.key();
      CHECK_MESSAGE(seen_.count(name) == 1, row_.at("id").get<std::string>()
                                                << ": \"" << name << "\" was not compared");
    }
  }

private:
  const Json& row_;
  mutable std::set<std::string> seen_;
};

using Runner = std::function<void(const Row&)>;

/// Runs every row of a file through the runner of its formula. A formula without a runner, a row without a source or
/// status, and a runner without a row fail.
inline void run(const std::string& module, const std::map<std::string, Runner>& runners) {
  std::ifstream file(std::string(FIELDSHAFT_ROWS_DIR) + "/" + module + ".json");
  REQUIRE_MESSAGE(file.good(), "tests/reference/" << module << ".json is missing");
  const Json table = Json::parse(file);
  const std::set<std::string> statuses = {
      "exact",    "published",           "textbook example",          "published (quoted elsewhere)",
      "computed", "from memory, verify", "common practice, no source"};
  std::set<std::string> used;
  std::set<std::string> ids;
  for (const Json& row : table) {
    const std::string id = row.at("id");
    CAPTURE(id);
    CHECK_MESSAGE(ids.insert(id).second, "the id stands twice");
    CHECK(!row.at("source").get<std::string>().empty());
    CHECK_MESSAGE(statuses.count(row.at("status").get<std::string>()) == 1, "unknown status");
    const double tolerance = row.at("tolerance");
    CHECK_MESSAGE((tolerance >= 0.0 && tolerance <= 0.05), "a tolerance above 5 % checks nothing");
    const std::string formula = row.at("formula");
    const auto runner = runners.find(formula);
    REQUIRE_MESSAGE(runner != runners.end(), "no runner for formula " << formula);
    used.insert(formula);
    const Row checked(row);
    runner->second(checked);
    checked.all_compared();
  }
  for (const auto& runner : runners) CHECK_MESSAGE(used.count(runner.first) == 1, "no row for " << runner.first);
}

} // namespace rows
