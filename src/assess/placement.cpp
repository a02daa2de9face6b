#include "assess/placement.hpp"

#include "assess/interface.hpp"
#include "assess/layout.hpp"

#include <fieldshaft/driveline/placement.hpp>

#include <algorithm>

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

void advise_hole(const Case& value, const ResolvedInterface& stub, const DrawbarHitch& hitch, Finding& finding) {
  const DrawbarDistances distances = drawbar_distances(*stub.type);
  const Hole best = best_hole(value, distances, hitch);
  if (best.distance == nullptr || radians(finding.value->si) - best.difference < worth_moving) return;
  finding.facts.push_back(fact("hole", best.distance->distance.value));
  finding.facts.push_back(fact("hole_position", PhraseId{position_phrase(best.distance->position)}));
  finding.facts.push_back(fact("hole_difference", best.difference));
  finding.facts.push_back(interface_fact("stub", stub));
  finding.basis.push_back(best.distance->distance.source);
  finding.advice.push_back("difference.other_hole");
}

/// Whether the pin stands in a hole for PTO work of the stub's type.
bool stands_in_hole(const PtoType& type, Length distance) {
  const DrawbarDistances distances = drawbar_distances(type);
  return std::any_of(distances.begin(), distances.end(), [&](const DrawbarDistance& entry) {
    return usable_for_pto_work(entry.position).value && math::abs(entry.distance.value - distance) <= hole_tolerance;
  });
}

/// Both joints equally far from the pin: the input shaft moved along the machine, the pin left where it is.
void advise_input(const Case& value, const DrawbarHitch& hitch, Finding& finding) {
  const Driveline driveline = driveline_of(value);
  if (!(hitch.distance > driveline.front_joint)) return;
  const Length behind = equal_angle_rear_joint(driveline, hitch) + driveline.rear_joint;
  finding.facts.push_back(fact("input_behind", value.implement.input.behind->value));
  finding.facts.push_back(fact("equal_behind", behind));
  finding.advice.push_back("difference.place_of_input");
}

} // namespace

void advise_placement(const Case& value, Finding& finding) {
  const Hitch& hitch = value.tractor.hitch;
  const DrawbarHitch drawbar{hitch.distance->value, hitch.lateral->value, hitch.drop->value};
  const ResolvedInterface stub = resolve(value.tractor.pto.stub);
  if (stub.type == nullptr) return;
  try {
    advise_hole(value, stub, drawbar, finding);
  } catch (const InputError&) { // with the pin in some hole the joint centres would meet: nothing to advise
  }
  if (stands_in_hole(*stub.type, drawbar.distance)) advise_input(value, drawbar, finding);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
