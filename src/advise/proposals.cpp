#include "advise/proposals.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace advising {

void add(Proposals& proposals, Proposal proposal) {
  const bool known = std::any_of(proposals.begin(), proposals.end(), [&](const Proposal& p) {
    return p.kind == proposal.kind && p.label == proposal.label;
  });
  if (!known) proposals.push_back(std::move(proposal));
}

std::optional<double> amount_fact(const Finding& finding, std::string_view name) {
  for (const Fact& fact : finding.facts) {
    if (name != fact.name) continue;
    if (const auto* amount = std::get_if<Amount>(&fact.value)) return amount->si;
  }
  return std::nullopt;
}

bool is_trailed(const Case& value) { return value.tractor.hitch.kind == HitchKind::drawbar; }

bool has_remedies(Check check) {
  switch (check) {
  case Check::pto_speed:
  case Check::stub_and_lever:
  case Check::spline_fit:
  case Check::adaptor:
  case Check::interface_power:
  case Check::tractor_power_through_interface:
  case Check::power_reserve:
  case Check::whole_load:
  case Check::simulated_start:
  case Check::clutch_heat:
  case Check::simulated_blockage:
  case Check::braked_stop:
  case Check::resonance:
  case Check::root_torsion:
  case Check::root_torsion_at_angle:
  case Check::tooth_shear:
  case Check::flank_pressure:
  case Check::tube_torsion:
  case Check::joint_rating:
  case Check::overload_window:
  case Check::start_up:
  case Check::pulsing_torque:
  case Check::joint_bearing_life:
  case Check::fatigue_life:
  case Check::drawbar_distance:
  case Check::working_angle:
  case Check::turning_angle:
  case Check::transport_angle:
  case Check::joint_lock:
  case Check::angle_difference:
  case Check::speed_variation:
  case Check::inertia_excitation:
  case Check::yoke_phase:
  case Check::joint_torque_swing:
  case Check::whirling:
  case Check::overlap:
  case Check::clearance:
  case Check::cut_list:    // follows from overlap and clearance
  case Check::guard_tubes: // cut or lengthened with the members
  case Check::tip_speed:
  case Check::overspeed_at_high_idle:
  case Check::master_shield:
  case Check::driveline_guard:
  case Check::input_guard: return true;
  default: return false;
  }
}

Proposals proposals_for(const Situation& now, const Finding& finding) {
  Proposals proposals;
  for (const auto propose : {propose_speed, propose_power, propose_strength, propose_hitch, propose_joints,
                             propose_telescope, propose_range, propose_guards, propose_dynamics}) {
    propose(now, finding, proposals);
  }
  return proposals;
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
