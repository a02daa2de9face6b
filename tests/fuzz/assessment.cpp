// Assessments of example cases with entries left out, moved and exchanged: none crashes, none passes on a number that
// is none, and leaving entries out alone never gives a pass that was none before. Proofs over a range take a thousand
// times as long as all the rest, and reports ten times: a few inputs get them, by a hash that a fuzzer cannot steer.

#include "input.hpp"

#include <fieldshaft/fieldshaft.hpp>

#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>
#include <vector>

using namespace fieldshaft;
using Json = nlohmann::ordered_json;

namespace {

const std::vector<Json>& examples() {
  static const std::vector<Json> all = [] {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::directory_iterator(FIELDSHAFT_CASES_DIR)) paths.push_back(entry.path());
    std::sort(paths.begin(), paths.end());
    std::vector<Json> documents;
    for (const auto& path : paths) {
      std::ifstream file(path);
      std::stringstream text;
      text << file.rdbuf();
      documents.push_back(Json::parse(text.str()));
    }
    return documents;
  }();
  return all;
}

/// An entry of the document, chosen by walking down.
Json* entry(Json& document, fuzzing::Bytes& bytes, Json** parent, std::string& key) {
  Json* at = &document;
  while (at->is_object() && !at->empty()) {
    auto item = at->begin();
    std::advance(item, static_cast<std::ptrdiff_t>(bytes.choice(at->size())));
    *parent = at;
    key = item.key();
    at = &item.value();
  }
  return at;
}

constexpr const char* exchanged[] = {
    "0 mm",     "1 mm",  "540 r/min", "1000 r/min", "1e6 r/min", "0 r/min", "1e300 m", "-500 mm",  "89.9 deg",
    "-180 deg", "5 kW",  "900 hp",    "1 N·m",      "9e6 N·m",   "99 %",    "1 MPa",   "2000 MPa", "600 mm ± 590 mm",
    "700 mm",   "1.2 m", "plain",     "wide-angle", "none",      "yes",     "no",      "drawbar",  "three-point"};

/// The same number in the same unit, times a factor.
void scale(Json& value, double factor) {
  if (!value.is_string()) return;
  const std::string text = value.get<std::string>();
  char* end = nullptr;
  const double number = std::strtod(text.c_str(), &end);
  if (end == text.c_str()) return;
  std::ostringstream scaled;
  scaled << number * factor << end;
  value = scaled.str();
}

void check_findings(const Assessment& assessment) {
  for (const Finding& finding : assessment.findings) {
    const bool passes = finding.status == Status::ok || finding.status == Status::caution;
    if (!passes) continue;
    fuzzing::require(!finding.value || is_finite(finding.value->si), "no pass on a value that is none");
    fuzzing::require(!finding.margin || is_finite(*finding.margin), "no pass on a margin that is none");
    fuzzing::require(finding.status != Status::ok || finding.missing.empty(), "no pass while data are missing");
  }
  if (assessment.verdict() == Status::ok) fuzzing::require(!assessment.findings.empty(), "no pass of nothing");
}

std::map<Check, Status> statuses(const Assessment& assessment) {
  std::map<Check, Status> worst;
  for (const Finding& finding : assessment.findings) {
    const auto [at, fresh] = worst.insert({finding.check, finding.status});
    if (!fresh) at->second = worse(at->second, finding.status);
  }
  return worst;
}

} // namespace

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::uint64_t lot = fuzzing::hash(data, size);
  fuzzing::Bytes bytes(data, size);
  Json document = examples()[bytes.choice(examples().size())];
  if (lot % 128 != 0) document.erase("range");
  for (int i = 0; i < 12 && !bytes.empty(); ++i) {
    Json* parent = nullptr;
    std::string key;
    Json* const at = entry(document, bytes, &parent, key);
    if (parent == nullptr) break;
    switch (bytes.choice(4)) {
    case 0: parent->erase(key); break;
    case 1: *at = exchanged[bytes.choice(std::size(exchanged))]; break;
    case 2: scale(*at, std::exp2(bytes.between(-8, 8))); break;
    default: scale(*at, bytes.between(0.9, 1.1)); break;
    }
  }
  const CaseReading reading = try_read_case(document.dump());
  if (!reading.result) return 0;
  const AssessmentResult assessed = try_assess(*reading.result);
  fuzzing::require(assessed.result.has_value() != !assessed.problem.empty(), "findings or a problem, one of the two");
  if (!assessed.result) return 0;
  check_findings(*assessed.result);
  if (lot % 16 == 0) {
    fuzzing::require(!to_text(*assessed.result).empty() && !to_json(*assessed.result, UnitStyle::us).empty(),
                     "every assessment can be reported");
  }

  // The same case without its driveline's measurements must not have passed more checks.
  Json lacking = document;
  if (lacking.contains("driveline")) lacking["driveline"].erase("closed_length");
  const CaseReading less = try_read_case(lacking.dump());
  if (!less.result) return 0;
  const auto before = statuses(*assessed.result);
  for (const auto& [check, status] : statuses(assess(*less.result))) {
    const auto found = before.find(check);
    fuzzing::require(status != Status::ok || (found != before.end() && found->second == Status::ok),
                     "a measurement less gives no pass more");
  }
  return 0;
}
