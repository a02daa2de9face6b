// Places of pin, top link and input connection.

#include "advise/proposals.hpp"
#include "assess/bearing.hpp"
#include "assess/interface.hpp"
#include "assess/layout.hpp"

#include <fieldshaft/hitch/linkage.hpp>
#include <fieldshaft/pto.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

using assessing::fact;

const char* position_phrase(DrawbarPosition position) {
  switch (position) {
  case DrawbarPosition::short_: return "drawbar.position.short";
  case DrawbarPosition::regular: return "drawbar.position.regular";
  case DrawbarPosition::extended: return "drawbar.position.extended";
  case DrawbarPosition::us_practice: return "drawbar.position.us";
  }
  return "drawbar.position.regular";
}

/// The other standard positions for PTO work of the stub that is out. The short one is never among them.
void propose_positions(const Situation& now, Proposals& proposals) {
  const Hitch& hitch = now.value.tractor.hitch;
  const PtoType* type = assessing::resolve(now.value.tractor.pto.stub).type;
  if (!is_trailed(now.value) || !hitch.distance || type == nullptr) return;
  for (const DrawbarDistance& entry : drawbar_distances(*type)) {
    if (!usable_for_pto_work(entry.position).value) continue;
    const Length distance = entry.distance.value;
    if (math::abs(distance - hitch.distance->value) < millimetres(1.0)) continue;
    add(proposals, {ChangeKind::move_drawbar,
                    position_phrase(entry.position),
                    {fact("position", PhraseId{position_phrase(entry.position)}), fact("distance", distance),
                     fact("own_distance", hitch.distance->value)},
                    [distance](Case& c) { c.tractor.hitch.distance->value = distance; }});
  }
}

/// The input shaft where the pin lies midway between the joint centres, so that each joint takes half of the turn.
void propose_midway(const Situation& now, Proposals& proposals) {
  const Hitch& hitch = now.value.tractor.hitch;
  const InputConnection& input = now.value.implement.input;
  const DrivelineCase& line = now.value.driveline;
  if (!is_trailed(now.value) || !hitch.distance || !input.behind || !line.front_joint || !line.rear_joint) return;
  const Length behind = hitch.distance->value - line.front_joint->value + line.rear_joint->value;
  if (!(behind > line.rear_joint->value) || math::abs(behind - input.behind->value) < millimetres(10.0)) return;
  add(proposals, {ChangeKind::place_of_input,
                  "",
                  {fact("behind", behind), fact("own_behind", input.behind->value)},
                  [behind](Case& c) { c.implement.input.behind->value = behind; }});
}

/// The top link with which the implement's input shaft runs parallel to the stub in the middle of the working lift.
void propose_top_link(const Situation& now, Proposals& proposals) {
  const Case& value = now.value;
  if (value.tractor.hitch.kind != HitchKind::three_point || !value.range.working || !value.range.working->lift) return;
  if (!assessing::layout_missing(value).empty() || !value.tractor.hitch.top_link) return;
  const Interval<Length>& lift = *value.range.working->lift;
  const Length own = value.tractor.hitch.top_link->value;
  Length length{};
  try {
    length = top_link_for(assessing::linkage_of(value), 0.5 * (lift.low + lift.high));
  } catch (const InputError&) { // the lift is out of reach: no top link helps
    return;
  }
  const Length whole = millimetres(std::round(in(length, unit::millimetre)));
  if (whole == own || !(whole > Length{})) return;
  add(proposals, {ChangeKind::set_top_link, "", {fact("length", whole), fact("own_length", own)}, [whole](Case& c) {
                    c.tractor.hitch.top_link->value = whole;
                  }});
}

/// What shares the bend of the line equally between its joints.
void propose_equal_angles(const Situation& now, Proposals& proposals) {
  propose_positions(now, proposals);
  propose_midway(now, proposals);
  propose_top_link(now, proposals);
}

} // namespace

void propose_hitch(const Situation& now, const Finding& finding, Proposals& proposals) {
  switch (finding.check) {
  case Check::drawbar_distance: propose_positions(now, proposals); break;
  case Check::working_angle:
  case Check::turning_angle:
  case Check::angle_difference:
  case Check::speed_variation:
  case Check::inertia_excitation:
  case Check::joint_torque_swing:
  case Check::pulsing_torque: propose_equal_angles(now, proposals); break;
  case Check::joint_bearing_life:
    if (assessing::life_goes_by_positions(now.value)) propose_equal_angles(now, proposals);
    break;
  case Check::transport_angle:
  case Check::root_torsion_at_angle:
  case Check::fatigue_life:
  case Check::overlap:
  case Check::clearance: propose_positions(now, proposals); break;
  default: break;
  }
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
