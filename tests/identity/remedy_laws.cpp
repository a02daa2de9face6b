// Laws of remedies: whatever is done to an example case, every set that is offered heals what it claims, makes nothing
// worse, and never holds what is never offered.

#include <fieldshaft/fieldshaft.hpp>

#include "random.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>

using namespace fieldshaft;
using Json = nlohmann::ordered_json;
namespace fs = std::filesystem;

namespace {

std::vector<Json> trailed_examples() {
  std::vector<Json> documents;
  for (const auto& entry : fs::directory_iterator(fs::path(FIELDSHAFT_SOURCE_DIR) / "docs/examples/cases")) {
    if (entry.path().extension() != ".json") continue;
    std::ifstream file(entry.path());
    Json document = Json::parse(file);
    const bool trailed = document["tractor"]["hitch"].value("kind", "") == "drawbar";
    if (trailed && document.contains("range")) documents.push_back(std::move(document));
  }
  std::sort(documents.begin(), documents.end(), [](const Json& a, const Json& b) { return a["title"] < b["title"]; });
  REQUIRE(documents.size() >= 3);
  return documents;
}

std::string amount(double value, const char* unit) {
  std::ostringstream text;
  text << value << " " << unit;
  return text.str();
}

/// Something that goes wrong on a farm.
void disturb(Json& document, RandomInputs& random) {
  Json& line = document["driveline"];
  switch (random.whole(0, 8)) {
  case 0: line["closed_length"] = amount(random.between(430, 760), "mm") + " ± 3 mm"; break;
  case 1: document["tractor"]["hitch"]["distance"] = amount(random.between(240, 620), "mm") + " ± 5 mm"; break;
  case 2: document["overload"]["setting"] = amount(random.between(400, 4000), "N·m"); break;
  case 3: line["guard"] = "absent"; break;
  case 4: line["yoke_phase"] = amount(random.between(-90, 90), "deg"); break;
  case 5: line["joint_rating"] = amount(random.between(500, 3000), "N·m"); break;
  case 6: document["implement"]["power_need"] = amount(random.between(15, 90), "kW"); break;
  case 7: line["adaptor"] = {{"length", "80 mm"}}; break;
  default: {
    const double turn = random.between(20, 70);
    document["range"]["turning"]["yaw"] = {amount(-turn, "deg"), amount(turn, "deg")};
  }
  }
}

Status status_of(const Finding* finding, Status absent) { return finding == nullptr ? absent : finding->status; }

Status status_of(const Assessment& assessment, Check check, Status absent) {
  return status_of(assessment.find(check), absent);
}

bool is_missing_guard(const Stated<GuardState>& guard) { return guard != GuardState::present; }

/// Of what is never offered: an adaptor, a guard taken off, off-speed running, a stub or a gear out of nothing, the
/// short drawbar position.
void check_never_offered(const Case& before, const Case& after) {
  if (!before.driveline.adaptor->present) CHECK(!after.driveline.adaptor->present);
  if (!is_missing_guard(before.tractor.pto.master_shield)) CHECK(!is_missing_guard(after.tractor.pto.master_shield));
  if (!is_missing_guard(before.driveline.guard)) CHECK(!is_missing_guard(after.driveline.guard));
  if (!is_missing_guard(before.implement.input.guard)) CHECK(!is_missing_guard(after.implement.input.guard));
  CHECK(after.tractor.pto.other_stubs.size() == before.tractor.pto.other_stubs.size());
  CHECK(after.tractor.pto.gears.size() == before.tractor.pto.gears.size());
  if (before.tractor.pto.other_stubs.empty()) {
    CHECK(after.tractor.pto.stub.type == before.tractor.pto.stub.type);
    CHECK(after.tractor.pto.stub.spline_count == before.tractor.pto.stub.spline_count);
  }
  const auto pin = [](const Case& value) { return value.tractor.hitch.distance->value; };
  if (pin(after) != pin(before)) {
    CHECK(pin(after) != millimetres(250));
    CHECK((pin(after) != millimetres(350) || after.tractor.pto.stub.type != 3.0));
  }
}

void check_remedy(const Case& before, const Assessment& base, const Remedy& remedy) {
  const Assessment after = assess(remedy.changed);
  CHECK(after.verdict() == remedy.after.verdict());
  const Finding* speed = after.find(Check::pto_speed);
  const bool speed_healed = speed != nullptr && speed->status == Status::ok;
  CHECK((speed_healed || std::count(remedy.left.begin(), remedy.left.end(), Check::pto_speed) == 1));
  for (const Check check : remedy.healed) {
    CAPTURE(std::string(check_id(check)));
    CHECK(status_of(after, check, Status::ok) <= Status::caution);
  }
  for (const Finding& finding : after.findings) {
    CAPTURE(std::string(check_id(finding.check)));
    CHECK(finding.status <= status_of(base.find(finding.check, finding.part), Status::caution));
    const Finding* was = base.find(finding.check, finding.part);
    const bool stops_still = finding.status == Status::stop && was != nullptr && was->status == Status::stop;
    if (stops_still && finding.margin && was->margin) CHECK(*finding.margin >= *was->margin - 1e-9);
    CHECK((finding.status != Status::stop || std::count(remedy.left.begin(), remedy.left.end(), finding.check) == 1));
  }
  check_never_offered(before, remedy.changed);
}

} // namespace

TEST_CASE("every remedy of a disturbed case heals what it claims and makes nothing worse") {
  RandomInputs random;
  const std::vector<Json> examples = trailed_examples();
  RemedyOptions options;
  options.most_cases = 60;
  options.most_ranges = 40;
  options.most_sets = 3;
  std::size_t offered = 0;
  for (int i = 0; i < 20; ++i) {
    Json document = examples[static_cast<std::size_t>(random.whole(0, static_cast<int>(examples.size()) - 1))];
    disturb(document, random);
    if (i % 2 == 1) disturb(document, random);
    const CaseReading reading = try_read_case(document.dump());
    if (!reading.result) continue; // an overlap longer than the driveline
    CAPTURE(document.dump());
    const Remedies found = remedies(*reading.result, options);
    for (const Remedy& remedy : found.sets) {
      ++offered;
      check_remedy(*reading.result, found.before, remedy);
    }
    for (std::size_t j = 1; j < found.sets.size(); ++j) {
      CHECK(found.sets[j - 1].changes.size() <= found.sets[j].changes.size());
    }
  }
  MESSAGE(offered << " sets were offered");
  CHECK(offered >= 10);
}

TEST_CASE("the entries of a change, written into the document, give the changed case") {
  std::ifstream file(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/drawbar-left-in-the-540-hole.json");
  const Case value = read_case(std::string(std::istreambuf_iterator<char>(file), {}));
  const Remedies found = remedies(value);
  REQUIRE(!found.sets.empty());
  for (const Remedy& remedy : found.sets) {
    Json document = Json::parse(write_case(value));
    for (const Change& change : remedy.changes) {
      for (const EntryChange& entry : change.entries) {
        std::string pointer = "/" + entry.path;
        std::replace(pointer.begin(), pointer.end(), '.', '/');
        std::replace(pointer.begin(), pointer.end(), '[', '/');
        pointer.erase(std::remove(pointer.begin(), pointer.end(), ']'), pointer.end());
        document[Json::json_pointer(pointer)] = entry.to;
      }
    }
    CHECK(write_case(read_case(document.dump())) == write_case(remedy.changed));
  }
}
