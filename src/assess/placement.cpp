#include "assess/placement.hpp"

#include "assess/interface.hpp"
#include "assess/layout.hpp"
#include "assess/phase.hpp"

#include <fieldshaft/driveline/placement.hpp>

#include <algorithm>
#include <array>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

constexpr PlacementGoal goal = PlacementGoal::least_angle_difference;

/// What is not better by more than this is not worth the work.
constexpr Angle worth_moving = degrees(0.5);

struct Hole {
  const DrawbarDistance* distance = nullptr;
  Angle difference{};
};

/// The best hole for PTO work of the stub's type; none for a stub without known holes.
Hole best_hole(const Case& value, const DrawbarDistances& distances, const DrawbarHitch& hitch) {
  Hole best;
  const AttitudeRange range = attitudes_of(value, MachineState::working);
  for (const DrawbarDistance& entry : distances) {
    if (!usable_for_pto_work(entry.position).value) continue;
    const Placement there =
        placement(driveline_of(value), hitch, range, PlacementParameter::pin_distance, entry.distance.value, goal);
    if (best.distance == nullptr || there.worst < best.difference) best = {&entry, there.worst};
  }
  return best;
}

std::optional<UnevenRunning> running_of(const Case& value, const DrivelineOverRange& range) {
  try {
    return uneven_running(value, range);
  } catch (const InputError&) { // at some position the joint centres would meet
    return std::nullopt;
  }
}

/// How evenly the shaft of a changed case would turn, with the phase of the yokes that suits it best; says whether that
/// is known, and how evenly it turns now.
bool add_running(const Case& changed, const DrivelineOverRange& range, std::array<const char*, 2> names,
                 Finding& finding) {
  const auto running = running_of(changed, range);
  const bool now_known = std::any_of(finding.facts.begin(), finding.facts.end(),
                                     [](const Fact& fact) { return std::string_view(fact.name) == "variation"; });
  if (!running || !now_known) return false;
  finding.facts.push_back({names[0], Amount{running->best, Kind::share}});
  finding.facts.push_back(fact(names[1], running->best_phase));
  return true;
}

void advise_hole(const Case& value, const DrivelineOverRange& range, const ResolvedInterface& stub,
                 const DrawbarHitch& hitch, Finding& finding) {
  const DrawbarDistances distances = drawbar_distances(*stub.type);
  const Hole best = best_hole(value, distances, hitch);
  if (best.distance == nullptr || radians(finding.value->si) - best.difference < worth_moving) return;
  finding.facts.push_back(fact("hole", best.distance->distance.value));
  finding.facts.push_back(fact("hole_position", PhraseId{position_phrase(best.distance->position)}));
  finding.facts.push_back(fact("hole_difference", best.difference));
  finding.facts.push_back(interface_fact("stub", stub));
  finding.basis.push_back(best.distance->distance.source);
  Case changed = value;
  changed.tractor.hitch.distance->value = best.distance->distance.value;
  const bool known = add_running(changed, range, {"hole_variation", "hole_phase"}, finding);
  finding.advice.push_back(known ? "difference.other_hole_runs" : "difference.other_hole");
}

/// Whether the pin stands in a hole for PTO work of the stub's type.
bool stands_in_hole(const PtoType& type, Length distance) {
  const DrawbarDistances distances = drawbar_distances(type);
  return std::any_of(distances.begin(), distances.end(), [&](const DrawbarDistance& entry) {
    return usable_for_pto_work(entry.position).value && math::abs(entry.distance.value - distance) <= hole_tolerance;
  });
}

/// The place of the input shaft with both joints equally far from the pin.
struct EqualPlace {
  Length behind{};
  Angle difference{}; ///< what heights, sides and rolling leave of it
};

/// Nothing where it would not be worth the work: then the pin is not what makes the angles differ.
std::optional<EqualPlace> equal_place(const Case& value, const DrawbarHitch& hitch, const Finding& finding) {
  const Driveline driveline = driveline_of(value);
  if (!(hitch.distance > driveline.front_joint)) return std::nullopt;
  const Length behind = equal_angle_rear_joint(driveline, hitch) + driveline.rear_joint;
  try {
    const AttitudeRange range = attitudes_of(value, MachineState::working);
    const Placement there = placement(driveline, hitch, range, PlacementParameter::input_behind, behind, goal);
    if (radians(finding.value->si) - there.worst < worth_moving) return std::nullopt;
    return EqualPlace{behind, there.worst};
  } catch (const InputError&) { // at some position the joint centres would meet there
    return std::nullopt;
  }
}

/// Both joints equally far from the pin: the input shaft moved along the machine, the pin left where it is.
void advise_input(const Case& value, const DrivelineOverRange& range, const EqualPlace& place, Finding& finding) {
  finding.facts.push_back(fact("input_behind", value.implement.input.behind->value));
  finding.facts.push_back(fact("equal_behind", place.behind));
  finding.facts.push_back(fact("equal_difference", place.difference));
  Case changed = value;
  changed.implement.input.behind->value = place.behind;
  const bool known = add_running(changed, range, {"equal_variation", "equal_phase"}, finding);
  finding.advice.push_back(known ? "difference.place_of_input_runs" : "difference.place_of_input");
}

/// Why the joints bend unequally: the pin is no midpoint between them.
void explain_by_pin(const Case& value, const DrawbarHitch& hitch, Finding& finding) {
  const Driveline driveline = driveline_of(value);
  finding.reason = "difference.by_pin";
  finding.facts.push_back(fact("front_arm", hitch.distance - driveline.front_joint));
  finding.facts.push_back(fact("rear_arm", value.implement.input.behind->value - driveline.rear_joint));
}

} // namespace

void advise_placement(const Case& value, const DrivelineOverRange& range, Assessment& assessment) {
  const auto found = std::find_if(assessment.findings.begin(), assessment.findings.end(),
                                  [](const Finding& f) { return f.check == Check::angle_difference; });
  if (found == assessment.findings.end() || !is_trailed(value)) return;
  Finding& finding = *found;
  if (finding.status == Status::ok || finding.status == Status::not_known) return;
  const Hitch& hitch = value.tractor.hitch;
  const DrawbarHitch drawbar{hitch.distance->value, hitch.lateral->value, hitch.drop->value};
  const std::optional<EqualPlace> equal = equal_place(value, drawbar, finding);
  const bool by_tolerances = std::string_view(finding.reason) == "difference.loose"; // then not by the pin alone
  if (equal && !by_tolerances) explain_by_pin(value, drawbar, finding);
  if (const auto running = running_of(value, range)) {
    finding.facts.push_back({"variation", Amount{running->stated, Kind::share}});
  }
  const ResolvedInterface stub = resolve(value.tractor.pto.stub);
  if (stub.type == nullptr) return;
  try {
    advise_hole(value, range, stub, drawbar, finding);
  } catch (const InputError&) { // with the pin in some hole the joint centres would meet: nothing to advise
  }
  if (equal && stands_in_hole(*stub.type, drawbar.distance)) advise_input(value, range, *equal, finding);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
