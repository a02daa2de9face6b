#pragma once
// Findings: what was checked, the value, the limit, the margin, what the limit rests on, and the status.
//
// Ids and numbers only. The words for people stand in `report`, in one catalogue.

#include <fieldshaft/assess/envelope.hpp>
#include <fieldshaft/assess/gears.hpp>
#include <fieldshaft/assess/status.hpp>
#include <fieldshaft/core/source.hpp>
#include <fieldshaft/units/kind.hpp>

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// Everything that an assessment looks at, in the order of the report.
enum class Check {
  pto_speed,
  stub_and_lever,
  spline_fit,
  adaptor,
  pto_rotation,
  pto_place,
  power_need,
  interface_power,
  tractor_power_through_interface,
  power_reserve,
  permitted_power,
  whole_load,
  root_torsion,
  root_torsion_at_angle,
  tooth_shear,
  flank_pressure,
  tube_torsion,
  joint_rating,
  overload_window,
  start_up,
  simulated_start,
  clutch_heat,
  simulated_blockage,
  braked_stop,
  pulsing_torque,
  joint_bearing_life,
  fatigue_life,
  drawbar_distance,
  linkage,
  working_angle,
  turning_angle,
  transport_angle,
  joint_lock,
  wide_angle_centre,
  angle_difference,
  speed_variation,
  inertia_excitation,
  chain_variation,
  yoke_phase,
  joint_torque_swing,
  overlap,
  clearance,
  whirling,
  cut_list,
  guard_tubes,
  turn_limit,
  lift_limit,
  fouling,
  hand_check,
  resonance,
  fixed_section,
  branch_angle,
  branch_variation,
  branch_telescope,
  branch_strength,
  tip_speed,
  overspeed_at_high_idle,
  overspeed_in_other_gears,
  run_down,
  master_shield,
  driveline_guard,
  input_guard,
};

/// How many there are: one more than the last.
inline constexpr int check_count = static_cast<int>(Check::input_guard) + 1;

/// Stable id of a check, as it stands in JSON: "pto.speed".
const char* check_id(Check check) noexcept;

/// Which side of the limit is the good one.
enum class LimitSense { none, at_most, at_least, equal };

/// A text of the report's catalogue, by its id.
struct PhraseId {
  const char* id;
};

/// A named number, name, text or position that the explanation of a finding needs.
struct Fact {
  const char* name;
  std::variant<Amount, std::string, PhraseId, PoseIn> value;
};

/// Where schools or editions differ: beyond the first of them a caution, beyond all of them a stop.
struct TwoLimits {
  Amount caution;
  Amount stop;
};

/// The result of one check.
struct Finding {
  Check check = Check::pto_speed;
  std::string part; ///< name of the branch that it is about; empty for the whole
  Status status = Status::not_known;
  std::optional<Amount> value;
  std::optional<Amount> limit; ///< the one that the status and the margin go by
  LimitSense sense = LimitSense::none;
  std::optional<TwoLimits> limits; ///< both, where there are two
  /// Room between value and limit as a share of the limit: positive on the good side, negative beyond.
  std::optional<double> margin;
  std::vector<Source> basis;
  MachineState state = MachineState::any;
  std::optional<PoseAt> pose;
  const char* reason = "";          ///< id of the explanation
  std::vector<const char*> advice;  ///< ids of what to change
  std::vector<Fact> facts;          ///< what explanation and advice mention
  std::vector<std::string> missing; ///< paths of the case document that would have to be stated
  bool at_high_need = false;        ///< a stop at the high end of the table's need, a caution because its mean passes
};

/// A check that was not examined because the case says nothing of its subject, and what would have to be stated.
struct Unasked {
  Check check;
  std::vector<std::string> entries;
};

/// The findings of a case, in the order of the checks.
struct Assessment {
  std::string title;
  std::string note;
  std::string tractor;
  std::string implement;
  std::vector<Finding> findings;
  std::vector<Check> not_examined;      ///< checks that do not apply to this case, or of whose subject it says nothing
  std::vector<Unasked> unasked;         ///< of those, the ones that the case could ask for
  std::vector<GearUse> gears;           ///< what each position of the speed lever means for the implement
  std::optional<EconomyAnswer> economy; ///< where the tractor has an economy gear for it
  std::vector<TurnAtPitch> turn_curve;  ///< while turning, over the pitch as stated; trailed machines only
  WideAngleJoints wide_angle_joints;    ///< how the envelopes take them
  std::vector<StateEnvelope> envelopes; ///< what is proved of the driveline over each state that is fully stated
  std::vector<BranchEnvelopeOfCase> branches; ///< the same of each branch that is fully stated

  Status verdict() const noexcept;
  std::size_t count(Status status) const noexcept;
  /// The first finding of a check.
  const Finding* find(Check check) const noexcept;
  /// The finding of a check about one part: a branch by its name, or the whole by an empty one.
  const Finding* find(Check check, const std::string& part) const noexcept;
  /// Whether a check that passes rests on a limit that is remembered and not yet verified.
  bool rests_on_memory() const noexcept;
};

} // namespace v0
} // namespace fieldshaft
