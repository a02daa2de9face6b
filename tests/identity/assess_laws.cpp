// Laws of an assessment, over the example cases and random changes of them.

#include <fieldshaft/fieldshaft.hpp>

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <sstream>

using namespace fieldshaft;
using Json = nlohmann::ordered_json;
namespace fs = std::filesystem;

namespace {

std::string file_text(const fs::path& path) {
  std::ifstream file(path);
  std::stringstream text;
  text << file.rdbuf();
  return text.str();
}

std::vector<Json> example_documents() {
  std::vector<Json> documents;
  for (const auto& entry : fs::directory_iterator(fs::path(FIELDSHAFT_SOURCE_DIR) / "docs/examples/cases")) {
    if (entry.path().extension() == ".json") documents.push_back(Json::parse(file_text(entry.path())));
  }
  REQUIRE(documents.size() >= 7);
  return documents;
}

Assessment assessed(const Json& document) { return assess(read_case(document.dump())); }

/// Status by check. A check that is not examined is absent.
std::map<Check, Status> statuses(const Assessment& assessment) {
  std::map<Check, Status> found;
  for (const Finding& finding : assessment.findings) {
    const auto [at, fresh] = found.insert({finding.check, finding.status});
    if (!fresh) at->second = worse(at->second, finding.status);
  }
  return found;
}

/// Pointers to every entry of a document that holds a value.
void collect_leaves(const Json& value, const std::string& at, std::vector<std::string>& leaves) {
  if (value.is_object()) {
    for (const auto& item : value.items()) collect_leaves(item.value(), at + "/" + item.key(), leaves);
  } else if (value.is_array() && !value.empty() && value.front().is_object()) {
    for (std::size_t i = 0; i < value.size(); ++i) collect_leaves(value[i], at + "/" + std::to_string(i), leaves);
  } else {
    leaves.push_back(at);
  }
}

void erase(Json& document, const std::string& leaf) {
  const Json::json_pointer pointer(leaf);
  document[pointer.parent_pointer()].erase(pointer.back());
}

} // namespace

namespace {

/// Entries that replace a default or a weaker limit may be left out without harm: what follows is the default.
bool replaces_a_default(const std::string& leaf) {
  for (const char* entry :
       {"/limits/", "highest_tip_speed", "/stub_steel/", "/mast_forward", "/input/yaw", "/input/pitch"}) {
    if (leaf.find(entry) != std::string::npos) return true;
  }
  return false;
}

/// No finding is ok that was not ok before; how many were compared.
std::size_t check_none_improved(const std::map<Check, Status>& before, const Assessment& lacking) {
  const auto after = statuses(lacking);
  for (const auto& entry : after) {
    if (entry.second != Status::ok) continue;
    CAPTURE(std::string(check_id(entry.first)));
    const auto known = before.find(entry.first);
    CHECK((known == before.end() || known->second == Status::ok));
  }
  return after.size();
}

/// No entry is named as missing that is stated; how many are, other than the engaged gear. Lists and whole objects are
/// named where one of their entries is missing, so only plain entries can be judged.
std::size_t check_named_are_missing(const Json& document, const Assessment& assessment) {
  std::size_t judged = 0;
  for (const Finding& finding : assessment.findings) {
    for (std::string path : finding.missing) {
      std::replace(path.begin(), path.end(), '.', '/');
      if (path.find('[') != std::string::npos) continue;
      const Json::json_pointer at("/" + path);
      if (!document.contains(at) || document[at].is_structured()) continue;
      ++judged;
      CAPTURE(path);
      CAPTURE(std::string(check_id(finding.check)));
      CHECK_MESSAGE(path == "tractor/pto/selected", "named as missing although it is stated");
    }
  }
  return judged;
}

} // namespace

TEST_CASE("leaving out an entry never turns a finding into ok, and only what is not stated is named as missing") {
  std::size_t compared = 0;
  std::size_t judged = 0;
  for (const Json& document : example_documents()) {
    const auto before = statuses(assessed(document));
    std::vector<std::string> leaves;
    collect_leaves(document, "", leaves);
    for (const std::string& leaf : leaves) {
      Json lacking = document;
      erase(lacking, leaf);
      const CaseReading reading = try_read_case(lacking.dump());
      if (!reading.result) continue; // the entry is required, or others refer to it
      CAPTURE(leaf);
      const Assessment assessment = assess(*reading.result);
      if (!replaces_a_default(leaf)) compared += check_none_improved(before, assessment);
      judged += check_named_are_missing(lacking, assessment);
    }
  }
  CHECK(compared > 5000);
  CHECK(judged < 200);
}

TEST_CASE("more power need never improves a finding of power or strength") {
  for (Json document : example_documents()) {
    if (!document["implement"].contains("power_need")) continue;
    std::map<Check, Status> before;
    for (const char* need : {"10 kW", "30 kW", "50 kW", "80 kW", "120 kW", "200 kW", "400 kW"}) {
      document["implement"]["power_need"] = need;
      const auto after = statuses(assessed(document));
      for (const auto& entry : before) {
        const Check check = entry.first; // copies: a structured binding cannot be captured in C++17
        const Status status = entry.second;
        if (after.count(check) == 0) continue;
        if (check == Check::joint_torque_swing) continue; // judged as a share of the mean torque, which grows
        CAPTURE(std::string(check_id(check)));
        CAPTURE(std::string(need));
        CHECK(!(after.at(check) < status));
      }
      before = after;
    }
  }
}

TEST_CASE("units of the input never change a finding") {
  for (const Json& document : example_documents()) {
    const Case metric = read_case(document.dump());
    // Written in SI units and read back: other units, the same case but for the last digits.
    const auto once = statuses(assess(metric));
    const auto twice = statuses(assess(read_case(write_case(metric))));
    for (const auto& entry : once) {
      const Check check = entry.first; // copies: a structured binding cannot be captured in C++17
      const Status status = entry.second;
      CAPTURE(std::string(check_id(check)));
      CAPTURE(document.value("title", ""));
      CHECK(static_cast<int>(twice.at(check)) == static_cast<int>(status));
    }
  }
}

TEST_CASE("the order of keys never changes the report") {
  for (const Json& document : example_documents()) {
    const nlohmann::json sorted = nlohmann::json::parse(document.dump());
    CHECK(to_text(assessed(document)) == to_text(assess(read_case(sorted.dump()))));
  }
}

TEST_CASE("a wider range never improves a finding of the driveline") {
  for (Json document : example_documents()) {
    if (!document.contains("range") || document["tractor"]["hitch"].value("kind", "") != "drawbar") continue;
    if (!document["range"].contains("turning")) continue;
    document["range"]["turning"].erase("left_turn_radius"); // an angle has one origin
    document["range"]["turning"].erase("right_turn_radius");
    std::map<Check, Status> before;
    for (const int yaw : {5, 15, 25, 40, 55, 70}) {
      const std::string text = std::to_string(yaw) + " deg";
      document["range"]["turning"]["yaw"] = {"-" + text, text};
      const auto after = statuses(assessed(document));
      for (const auto& entry : before) {
        const Check check = entry.first; // copies: a structured binding cannot be captured in C++17
        const Status status = entry.second;
        if (after.count(check) == 0) continue;
        CAPTURE(std::string(check_id(check)));
        CAPTURE(yaw);
        CHECK(!(after.at(check) < status));
      }
      before = after;
    }
  }
}

namespace {

std::string flipped(const std::string& text) { return text[0] == '-' ? text.substr(1) : "-" + text; }

void flip(Json& object, const char* key) {
  if (object.contains(key)) object[key] = flipped(object[key]);
}

/// What is stated of left and right changes places; one that is not stated stays so.
void exchange(Json& object, const char* left, const char* right) {
  const Json was = object;
  object.erase(left);
  object.erase(right);
  if (was.contains(left)) object[right] = was[left];
  if (was.contains(right)) object[left] = was[right];
}

Json mirrored(Json document) {
  flip(document["implement"]["input"], "lateral");
  flip(document["implement"]["input"], "yaw");
  flip(document["tractor"]["hitch"], "lateral");
  for (auto& item : document["range"].items()) {
    Json& state = item.value();
    if (!state.is_object()) continue;
    for (const char* range : {"yaw", "roll", "sway", "lower_link_difference"}) {
      if (!state.contains(range)) continue;
      const Json was = state[range];
      state[range] = {flipped(was[1]), flipped(was[0])};
    }
    exchange(state, "left_turn_radius", "right_turn_radius");
    if (!state.contains("wheel_drop")) continue;
    exchange(state["wheel_drop"], "tractor_left", "tractor_right");
    exchange(state["wheel_drop"], "implement_left", "implement_right");
  }
  if (!document["implement"].contains("branches")) return document;
  for (Json& branch : document["implement"]["branches"]) {
    const std::string side = branch.value("side", "");
    if (side == "left" || side == "right") branch["side"] = side == "left" ? "right" : "left";
    for (const char* place : {"output", "hinge", "input"}) {
      if (branch.contains(place)) flip(branch[place], "left");
    }
  }
  return document;
}

} // namespace

TEST_CASE("mirroring a case left to right mirrors it and changes no finding") {
  for (Json document : example_documents()) {
    if (!document.contains("range")) continue;
    document["implement"]["input"]["lateral"] = "30 mm";
    CAPTURE(document.value("title", ""));
    CHECK(statuses(assessed(document)) == statuses(assessed(mirrored(document))));
  }
}

namespace {

double si_of(const Finding& finding, const std::string& name) {
  for (const Fact& fact : finding.facts) {
    if (name != fact.name) continue;
    if (const auto* amount = std::get_if<Amount>(&fact.value)) return amount->si;
  }
  FAIL("no fact " << name);
  return 0.0;
}

void shorten(Stated<MeasuredLength>& length, double by) {
  if (length) length->value -= metres(by);
}

/// Does what one piece of advice says; nothing for advice without a number, or that says that it breaks something.
bool follow(const std::string& advice, const Finding& finding, Case& value) {
  Hitch& hitch = value.tractor.hitch;
  InputConnection& input = value.implement.input;
  if (advice.rfind("difference.other_hole", 0) == 0) {
    hitch.distance->value = metres(si_of(finding, "hole"));
  } else if (advice.rfind("difference.place_of_input", 0) == 0) {
    input.behind->value = metres(si_of(finding, "equal_behind"));
  } else if (advice == "difference.into_line") {
    hitch.lateral->value = Length{};
    input.lateral->value = Length{};
  } else if (advice == "cut.by_this_much" || advice == "cut.members" || advice == "cut.by_looser_rules") {
    const double cut = si_of(finding, advice == "cut.by_looser_rules" ? "least_cut" : "cut");
    shorten(value.driveline.closed_length, cut);
    shorten(value.driveline.closed_overlap, cut);
    if (value.driveline.guard_closed_length && value.driveline.guard_closed_overlap) {
      shorten(value.driveline.guard_closed_length, si_of(finding, "guard_cut"));
      shorten(value.driveline.guard_closed_overlap, si_of(finding, "guard_cut"));
    }
  } else if (advice == "guard_tubes.cut" && value.driveline.hand_checks.empty()) {
    shorten(value.driveline.guard_closed_length, si_of(finding, "guard_cut"));
    shorten(value.driveline.guard_closed_overlap, si_of(finding, "guard_cut"));
  } else if (advice == "turn.no_further" && value.range.turning->yaw) {
    value.range.turning->yaw = Interval<Angle>{radians(-si_of(finding, "left")), radians(si_of(finding, "right"))};
  } else if (advice == "lift.no_higher") {
    value.range.turning->lift->high = metres(si_of(finding, "lift"));
  } else {
    return false;
  }
  return true;
}

/// Worse by its status, or by more of a stop.
bool is_worse(const Finding& after, const Assessment& before) {
  const Finding* base = before.find(after.check, after.part);
  if (base == nullptr) return after.status > Status::caution;
  if (after.status != base->status) return after.status > base->status;
  return after.status == Status::stop && after.margin && base->margin && *after.margin < *base->margin - 1e-9;
}

/// Cases in which the numbers of the advice differ much: joints far from equal, members of any length.
std::vector<Json> troubled_documents() {
  std::vector<Json> documents = example_documents();
  const std::size_t examples = documents.size();
  for (std::size_t i = 0; i < examples; ++i) {
    if (documents[i]["tractor"]["hitch"]["kind"] != "drawbar" || !documents[i]["driveline"].contains("closed_length"))
      continue;
    for (const char* behind : {"300 mm", "600 mm", "750 mm"}) {
      documents.push_back(documents[i]);
      documents.back()["implement"]["input"]["behind"] = behind;
    }
    documents.push_back(documents[i]);
    documents.back()["tractor"]["hitch"]["lateral"] = "40 mm ± 2 mm";
    documents.push_back(documents[i]);
    documents.back()["driveline"]["closed_length"] = "640 mm ± 3 mm";
    documents.back()["driveline"]["closed_overlap"] = "480 mm ± 3 mm";
  }
  return documents;
}

} // namespace

TEST_CASE("whoever follows one piece of advice that carries a number makes nothing worse") {
  std::map<std::string, int> followed;
  for (const Json& document : troubled_documents()) {
    const Case stated = read_case(document.dump());
    const Assessment before = assess(stated);
    for (const Finding& finding : before.findings) {
      for (const char* advice : finding.advice) {
        Case changed = stated;
        if (!follow(advice, finding, changed)) continue;
        changed.driveline.hand_checks.clear(); // measured at the old place
        ++followed[advice];
        const Assessment after = assess(changed);
        for (const Finding& one : after.findings) {
          INFO(before.title, ": ", std::string(advice), ": ", std::string(check_id(one.check)));
          // The looser rules trade overlap for clearance: that stays a caution, as the advice says.
          const bool traded = std::string(advice) == "cut.by_looser_rules" && one.check == Check::overlap;
          CHECK((traded ? one.status <= Status::caution : !is_worse(one, before)));
        }
      }
    }
  }
  for (const char* advice : {"cut.by_this_much", "difference.into_line"}) {
    INFO(advice);
    CHECK(followed[advice] > 0);
  }
}

TEST_CASE("one order about the tubes: no report tells to cut and not to cut, nor to cut and to fit longer members") {
  int judged = 0;
  for (const Json& document : troubled_documents()) {
    const Assessment assessment = assessed(document);
    std::vector<std::string> orders;
    for (const Finding& finding : assessment.findings) {
      for (const std::string advice : finding.advice) {
        for (const char* order : {"telescope.", "cut.by_", "cut.members", "cut.breaks", "cut.longer", "cut.open"}) {
          if (advice.rfind(order, 0) == 0) orders.push_back(advice);
        }
      }
    }
    INFO(assessment.title);
    CHECK(orders.size() <= 1);
    const Finding* clearance = assessment.find(Check::clearance);
    const Finding* overlap = assessment.find(Check::overlap);
    for (const Finding* finding : {clearance, overlap}) {
      if (finding == nullptr || (finding->status != Status::stop && finding->status != Status::caution)) continue;
      if (assessment.find(Check::cut_list)->status == Status::not_known) continue;
      CHECK(orders.size() == 1); // what bottoms or comes apart always has an answer
      ++judged;
    }
  }
  CHECK(judged > 5);
}
