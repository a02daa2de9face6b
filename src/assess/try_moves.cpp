#include "assess/try_moves.hpp"

#include "assess/checks.hpp"
#include "assess/layout.hpp"
#include "assess/shorten.hpp"
#include "assess/worse.hpp"

#include <algorithm>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// What is not better by more than this is not worth the work.
constexpr Angle worth_moving = degrees(0.5);

Finding* found(Assessment& assessment, Check check) {
  const auto at = std::find_if(assessment.findings.begin(), assessment.findings.end(),
                               [&](const Finding& finding) { return finding.check == check; });
  return at == assessment.findings.end() ? nullptr : &*at;
}

bool objects(const Finding* finding) {
  return finding != nullptr && (finding->status == Status::stop || finding->status == Status::caution);
}

Length length_in(const Finding& finding, std::string_view name) {
  for (const Fact& fact : finding.facts) {
    if (name == fact.name) return metres(std::get<Amount>(fact.value).si);
  }
  return {};
}

bool begins(std::string_view text, std::string_view with) { return text.substr(0, with.size()) == with; }

/// The case after a move; lengths measured by hand were measured at the old place and say nothing of the new one.
Case moved(const Case& value, const Finding& difference, std::string_view advice) {
  Case changed = value;
  changed.driveline.hand_checks.clear();
  if (begins(advice, "difference.other_hole")) {
    changed.tractor.hitch.distance->value = length_in(difference, "hole");
  } else if (begins(advice, "difference.place_of_input")) {
    changed.implement.input.behind->value = length_in(difference, "equal_behind");
  } else { // into the line of the stub
    changed.tractor.hitch.lateral->value = Length{};
    changed.implement.input.lateral->value = Length{};
  }
  return changed;
}

/// What one move leads to.
struct Tried {
  Angle difference{};
  bool breaks = false;
};

std::optional<Tried> tried(const Case& changed, const Assessment& base) {
  try {
    const DrivelineOverRange range = driveline_over_range(changed);
    const StateExtremes* work = range.find(MachineState::working);
    if (work == nullptr) return std::nullopt;
    return Tried{work->difference.value, worsened(assess_over(changed, range, Depth::whole), base) != nullptr};
  } catch (const InputError&) { // the joint centres would meet
    return std::nullopt;
  }
}

/// The ways that the finding names, and the one into line where pin or input shaft stand beside it.
std::vector<const char*> ways_of(const Case& value, Finding& difference) {
  std::vector<const char*> ways;
  const Length pin = value.tractor.hitch.lateral->value;
  const Length input = value.implement.input.lateral->value;
  if (pin != Length{} || input != Length{}) {
    difference.facts.push_back(fact("pin_beside", math::abs(pin)));
    difference.facts.push_back(fact("input_beside", math::abs(input)));
    ways.push_back("difference.into_line");
  }
  for (const char* advice : difference.advice) {
    if (begins(advice, "difference.other_hole") || begins(advice, "difference.place_of_input")) ways.push_back(advice);
  }
  return ways;
}

void choose_way(const Case& value, const Assessment& base, Finding& difference) {
  const std::vector<const char*> ways = ways_of(value, difference);
  Angle least = radians(difference.value->si) - worth_moving;
  const char* best = nullptr;
  bool breaks = false;
  for (const char* way : ways) {
    const std::optional<Tried> there = tried(moved(value, difference, way), base);
    if (!there || there->difference > least) continue;
    breaks = breaks || there->breaks;
    if (there->breaks) continue;
    best = way;
    least = there->difference;
  }
  if (best != nullptr) {
    difference.facts.push_back(fact("difference_there", least));
    difference.advice = {best};
  } else if (breaks) {
    difference.advice = {"difference.other_driveline"};
  } else {
    difference.advice = {"difference.equalise"};
  }
}

/// Uneven running has the same cause; advice in general beside a tried answer says the same twice, or worse.
void settle_uneven_running(Assessment& assessment) {
  Finding* variation = found(assessment, Check::speed_variation);
  if (variation == nullptr) return;
  const auto general = [](const char* id) { return std::string_view(id) == "difference.equalise"; };
  std::vector<const char*>& advice = variation->advice;
  advice.erase(std::remove_if(advice.begin(), advice.end(), general), advice.end());
}

} // namespace

void try_moves(const Case& value, Assessment& assessment) {
  Finding* difference = found(assessment, Check::angle_difference);
  if (!is_trailed(value) || !layout_missing(value).empty() || !objects(difference)) return;
  if (objects(assessment.find(Check::drawbar_distance))) {
    difference->advice = {"difference.pin_first"};
  } else {
    choose_way(value, assessment, *difference);
  }
  const bool general =
      difference->advice.size() == 1 && std::string_view(difference->advice.front()) == "difference.equalise";
  if (!general) settle_uneven_running(assessment);
}

namespace {

/// The looser rules give overlap away for clearance: up to a caution that is what they say.
bool is_traded(const Finding& after, bool looser) {
  return looser && after.check == Check::overlap && after.status <= Status::caution;
}

/// What a cut makes worse.
const Finding* worse_after_cut(const Case& value, const DrivelineOverRange& range, const Assessment& base,
                               const Finding& cut, bool looser) {
  Case changed = value;
  changed.driveline.hand_checks.clear(); // they were made with the tubes as they are
  shorten(changed.driveline, length_in(cut, looser ? "least_cut" : "cut"), length_in(cut, "guard_cut"));
  const Assessment after = assess_over(changed, range, Depth::for_search);
  for (const Finding& finding : after.findings) {
    const Finding* before = base.find(finding.check, finding.part);
    if (is_worse(finding, base) && !is_traded(finding, looser)) return before;
  }
  return nullptr;
}

} // namespace

void try_cut(const Case& value, const DrivelineOverRange& range, Assessment& assessment) {
  Finding* cut = found(assessment, Check::cut_list);
  if (cut == nullptr || cut->advice.empty()) return;
  const std::string_view order = cut->advice.front();
  const bool looser = order == "cut.by_looser_rules";
  if (!looser && order != "cut.by_this_much" && order != "cut.members") return;
  const Finding* worse = worse_after_cut(value, range, assessment, *cut, looser);
  if (worse == nullptr) return;
  cut->facts.push_back(fact("worse", std::string(check_id(worse->check))));
  cut->advice = {"cut.breaks_else"};
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
