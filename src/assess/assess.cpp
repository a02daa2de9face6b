#include "assess/bearing.hpp"
#include "assess/certificate.hpp"
#include "assess/checks.hpp"
#include "assess/headstock.hpp"
#include "assess/need.hpp"
#include "assess/placement.hpp"
#include "assess/settle.hpp"
#include "assess/try_moves.hpp"

#include <fieldshaft/core/error.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {

const char* check_id(Check check) noexcept {
  switch (check) {
  case Check::pto_speed: return "pto.speed";
  case Check::stub_and_lever: return "pto.stub_and_lever";
  case Check::spline_fit: return "pto.spline_fit";
  case Check::adaptor: return "pto.adaptor";
  case Check::pto_rotation: return "pto.rotation";
  case Check::pto_place: return "pto.place";
  case Check::power_need: return "power.need";
  case Check::interface_power: return "power.interface";
  case Check::tractor_power_through_interface: return "power.tractor_through_interface";
  case Check::power_reserve: return "power.reserve";
  case Check::permitted_power: return "power.permitted";
  case Check::whole_load: return "power.whole_load";
  case Check::root_torsion: return "strength.root_torsion";
  case Check::root_torsion_at_angle: return "strength.root_at_joint_angle";
  case Check::tooth_shear: return "strength.tooth_shear";
  case Check::flank_pressure: return "strength.flank_pressure";
  case Check::tube_torsion: return "strength.tube_torsion";
  case Check::joint_rating: return "strength.joint_rating";
  case Check::overload_window: return "strength.overload_window";
  case Check::start_up: return "strength.start_up";
  case Check::simulated_start: return "start.simulated_peak";
  case Check::clutch_heat: return "start.clutch_heat";
  case Check::simulated_blockage: return "start.blocked_rotor";
  case Check::braked_stop: return "start.braked_stop";
  case Check::pulsing_torque: return "strength.pulsing_torque";
  case Check::joint_bearing_life: return "strength.joint_bearing_life";
  case Check::fatigue_life: return "strength.fatigue_life";
  case Check::drawbar_distance: return "hitch.drawbar_distance";
  case Check::linkage: return "hitch.linkage";
  case Check::working_angle: return "joint.working_angle";
  case Check::turning_angle: return "joint.turning_angle";
  case Check::transport_angle: return "joint.transport_angle";
  case Check::joint_lock: return "joint.lock";
  case Check::wide_angle_centre: return "joint.wide_angle_centre";
  case Check::angle_difference: return "joint.angle_difference";
  case Check::speed_variation: return "joint.speed_variation";
  case Check::inertia_excitation: return "joint.inertia_excitation";
  case Check::chain_variation: return "joint.chain_variation";
  case Check::yoke_phase: return "joint.yoke_phase";
  case Check::joint_torque_swing: return "joint.torque_swing";
  case Check::overlap: return "telescope.overlap";
  case Check::clearance: return "telescope.clearance";
  case Check::whirling: return "driveline.whirling";
  case Check::cut_list: return "telescope.cut_list";
  case Check::guard_tubes: return "telescope.guard_tubes";
  case Check::turn_limit: return "turn.limit";
  case Check::lift_limit: return "lift.limit";
  case Check::fouling: return "driveline.fouling";
  case Check::hand_check: return "driveline.hand_check";
  case Check::resonance: return "driveline.resonance";
  case Check::fixed_section: return "joint.fixed_section";
  case Check::branch_angle: return "branch.joint_angle";
  case Check::branch_variation: return "branch.speed_variation";
  case Check::branch_telescope: return "branch.telescope";
  case Check::branch_strength: return "branch.strength";
  case Check::tip_speed: return "rotor.tip_speed";
  case Check::overspeed_at_high_idle: return "rotor.overspeed_at_high_idle";
  case Check::overspeed_in_other_gears: return "rotor.overspeed_in_other_gears";
  case Check::run_down: return "rotor.run_down";
  case Check::master_shield: return "guard.master_shield";
  case Check::driveline_guard: return "guard.driveline";
  case Check::input_guard: return "guard.input_connection";
  }
  return "unknown";
}

Status Assessment::verdict() const noexcept {
  // An assessment without a finding has examined nothing, and that is no pass.
  Status verdict = findings.empty() ? Status::not_known : Status::ok;
  for (const Finding& finding : findings) verdict = worse(verdict, finding.status);
  return verdict;
}

std::size_t Assessment::count(Status status) const noexcept {
  return static_cast<std::size_t>(
      std::count_if(findings.begin(), findings.end(), [&](const Finding& f) { return f.status == status; }));
}

const Finding* Assessment::find(Check check) const noexcept {
  const auto found = std::find_if(findings.begin(), findings.end(), [&](const Finding& f) { return f.check == check; });
  return found == findings.end() ? nullptr : &*found;
}

const Finding* Assessment::find(Check check, const std::string& part) const noexcept {
  const auto found = std::find_if(findings.begin(), findings.end(),
                                  [&](const Finding& f) { return f.check == check && f.part == part; });
  return found == findings.end() ? nullptr : &*found;
}

bool Assessment::rests_on_memory() const noexcept {
  return std::any_of(findings.begin(), findings.end(), [](const Finding& finding) {
    const bool passes = finding.status == Status::ok || finding.status == Status::caution;
    return passes && std::any_of(finding.basis.begin(), finding.basis.end(),
                                 [](const Source& source) { return is_remembered(source.standing); });
  });
}

namespace {

/// Findings of some checks become not known, unless a stop stands already.
template <class Depends> void doubt(Assessment& assessment, const char* reason, Depends depends) {
  for (Finding& finding : assessment.findings) {
    if (!depends(finding.check) || finding.status >= Status::not_known) continue;
    finding.status = Status::not_known;
    finding.reason = reason;
    finding.advice.clear();
  }
}

bool between(Check check, Check first, Check last) { return check >= first && check <= last; }

/// Whether a finding before the geometry goes by the joint angles of the positions. The bearings' life does not where
/// the case states the angles of its duties.
bool rests_on_joint_angles(const Case& value, Check check) {
  switch (check) {
  case Check::root_torsion_at_angle:
  case Check::tube_torsion: // the front joint raises the torque behind it
  case Check::joint_rating:
  case Check::simulated_start: // with the pair of joints
  case Check::clutch_heat:
  case Check::simulated_blockage:
  case Check::braked_stop:
  case Check::pulsing_torque:
  case Check::fatigue_life: return true;
  case Check::joint_bearing_life: return assessing::life_goes_by_positions(value);
  case Check::root_torsion: // uneven joints raise what a device behind them lets through
  case Check::tooth_shear:
  case Check::overload_window:
  case Check::start_up: return value.overload && value.overload->item.place == DevicePlace::implement_end;
  default: return false;
  }
}

/// Unless the engaged gear is known to be right, need, torque and life may be those of another speed: a pass on them
/// means nothing.
void doubt_at_wrong_speed(Assessment& assessment) {
  const Finding* speed = assessment.find(Check::pto_speed);
  if (speed == nullptr || speed->status == Status::ok) return;
  doubt(assessment, "speed.judge_later", [](Check check) {
    return (between(check, Check::interface_power, Check::fatigue_life) && check != Check::permitted_power) ||
           check == Check::branch_strength;
  });
}

/// The geometry, and what the editions recommend, are those of a rear PTO.
void doubt_where_not_rear(const Case& value, Assessment& assessment) {
  if (value.tractor.pto.place.value_or(PtoPlace::rear) == PtoPlace::rear) return;
  doubt(assessment, "place.judge_later", [&value](Check check) {
    return between(check, Check::drawbar_distance, Check::hand_check) || check == Check::interface_power ||
           check == Check::tractor_power_through_interface || rests_on_joint_angles(value, check);
  });
}

/// A PTO that the wheels turn has no speed of its own: nothing that goes by the gear's speed is known.
void doubt_where_ground_driven(const Case& value, Assessment& assessment) {
  if (value.tractor.pto.drive.value_or(PtoDrive::engine) == PtoDrive::engine) return;
  doubt(assessment, "drive.judge_later", [](Check check) {
    return check == Check::pto_speed || check == Check::stub_and_lever || check == Check::whirling ||
           check == Check::speed_variation || check == Check::inertia_excitation ||
           between(check, Check::interface_power, Check::fatigue_life) || check == Check::branch_strength ||
           between(check, Check::resonance, Check::run_down);
  });
}

/// Where a length measured by hand disagrees with the model, or its pose is not stated, something is measured wrong: no
/// pass that rests on the geometry stands, and no cut list is known.
void doubt_where_the_hand_disagrees(const Case& value, Assessment& assessment) {
  const Finding* hand = assessment.find(Check::hand_check);
  if (hand == nullptr || hand->status < Status::not_known) return;
  for (Finding& finding : assessment.findings) {
    const bool depends =
        between(finding.check, Check::drawbar_distance, Check::fouling) || rests_on_joint_angles(value, finding.check);
    if (finding.check == Check::guard_tubes) finding.advice.clear(); // no cut on doubtful measurements
    if (!depends || (finding.status >= Status::not_known && finding.check != Check::cut_list)) continue;
    finding.status = Status::not_known;
    finding.reason = "hand.judge_later";
    finding.advice.clear();
  }
}

/// An input shaft ahead of the steering pivot is one on the headstock: nothing of the driveline is followed then, and
/// no entry of the case changes that.
void name_input_on_headstock(const Case& value, Assessment& assessment) {
  if (!assessing::input_on_headstock(value)) return;
  for (Finding& finding : assessment.findings) {
    if (finding.missing != std::vector<std::string>{assessing::input_on_headstock_path}) continue;
    finding.missing.clear();
    finding.reason = "pivot.input_ahead";
    finding.advice.clear();
  }
}

} // namespace

namespace {

/// Power and strength: of a need from the table no objection holds at the high end, a stop at the mean one.
void check_loads(const Case& value, const assessing::Need& need, const assessing::DrivelineOverRange& range,
                 Assessment& assessment) {
  assessing::Findings findings(assessment);
  assessing::check_need(value, need, findings);
  const std::size_t first = assessment.findings.size();
  assessing::check_power(value, findings);
  assessing::check_strength(value, range, findings);
  const bool stopped =
      std::any_of(assessment.findings.begin() + static_cast<std::ptrdiff_t>(first), assessment.findings.end(),
                  [](const Finding& f) { return f.status == Status::stop; });
  if (need.machine == nullptr || !need.power || !stopped) return;
  const Case usual = assessing::with_need(value, need.power->mean);
  Assessment at_mean;
  assessing::Findings findings_at_mean(at_mean);
  assessing::check_power(usual, findings_at_mean);
  assessing::check_strength(usual, range, findings_at_mean);
  assessing::soften_where_mean_need_passes(assessment, at_mean);
}

std::optional<EconomyAnswer> economy_of(const Case& value) {
  EconomyAnswer answer = economy_answer(value, {value.season.hours.value_or(Time{}), value.season.fuel_price});
  if (!value.season.hours) answer.litres_a_season.reset();
  if (!value.season.hours) answer.money_a_season.reset();
  return answer.economy.empty() ? std::nullopt : std::optional<EconomyAnswer>(std::move(answer));
}

} // namespace

Assessment assessing::assess_over(const Case& stated, const DrivelineOverRange& range, Depth depth) {
  const Need need = need_of(stated.implement);
  const Case value =
      need.machine == nullptr ? stated : with_need(stated, need.power ? Stated<Power>(need.power->high) : std::nullopt);
  Assessment assessment;
  assessment.title = value.title;
  assessment.note = value.note;
  assessment.tractor = value.tractor.name;
  assessment.implement = value.implement.name;
  assessment.wide_angle_joints = assessing::wide_angle_joints_of(value);
  assessment.envelopes = assessing::envelopes_of(value, range, depth == Depth::whole);
  assessing::Findings findings(assessment);
  assessing::check_speed(value, findings);
  assessing::check_fit(value, findings);
  if (depth == Depth::whole) {
    assessing::check_adaptor_over(value, range, findings);
  } else {
    assessing::check_adaptor(value, findings);
  }
  assessing::check_place(value, findings);
  check_loads(value, need, range, assessment);
  assessing::check_drawbar(value, findings);
  assessing::check_linkage(value, findings);
  assessing::check_driveline(value, range, findings);
  if (depth == Depth::whole) assessing::advise_placement(value, range, assessment);
  assessing::check_vibration(value, range, findings);
  assessing::check_fixed_section(value, range, findings);
  assessment.branches = assessing::check_branches(value, findings);
  assessing::check_cut_list(value, range, findings);
  assessing::check_guard_tubes(value, range, findings);
  if (depth == Depth::whole) {
    assessing::check_turn_limit(value, range, findings);
    assessment.turn_curve = assessing::turn_curve(value, range);
    assessing::check_lift_limit(value, range, findings);
    assessing::check_fouling(value, range, findings);
    assessment.gears = gear_uses(stated);
    assessment.economy = economy_of(stated);
  }
  assessing::check_by_hand(value, findings);
  assessing::check_rotor(value, findings);
  assessing::check_guards(value, findings);
  name_missing_of_row(need, assessment);
  name_input_on_headstock(value, assessment);
  doubt_at_wrong_speed(assessment);
  doubt_where_not_rear(value, assessment);
  doubt_where_ground_driven(value, assessment);
  doubt_where_the_hand_disagrees(value, assessment);
  return assessment;
}

Assessment assess(const Case& value) {
  const assessing::DrivelineOverRange range = assessing::driveline_over_range(value);
  Assessment assessment = assessing::assess_over(value, range, assessing::Depth::whole);
  assessing::try_moves(value, assessment);
  assessing::try_cut(value, range, assessment);
  assessing::settle_lengths(assessment);
  assessing::settle_turn(assessment);
  return assessment;
}

AssessmentResult try_assess(const Case& value) {
  try {
    return {assess(value), {}};
  } catch (const InputError& error) {
    return {std::nullopt, error.what()};
  }
}

} // namespace v0
} // namespace fieldshaft
