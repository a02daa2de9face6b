// Drivelines behind a splitter gearbox, such as those to folding wings: each judged by itself, with all the torque that
// arrives where it jams.

#include "assess/certificate.hpp"
#include "assess/checks.hpp"
#include "assess/coupling_yokes.hpp"
#include "assess/geometry.hpp"
#include "assess/high_idle.hpp"
#include "assess/layout.hpp"
#include "assess/limits.hpp"
#include "assess/loads.hpp"
#include "assess/rise.hpp"
#include "assess/torsion.hpp"
#include "assess/tube.hpp"

#include <fieldshaft/joint.hpp>

#include <algorithm>
#include <optional>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// One branch, its path in the document, and what is known of it over its folding.
struct Branching {
  const BranchCase& branch;
  std::string path;
  std::vector<std::string> missing;         ///< without which its geometry is not known
  std::vector<std::string> missing_at_rest; ///< and without which that of the folding for transport is not
  std::string impossible;                   ///< why a geometry that is fully stated cannot be
  std::optional<StateExtremes> extremes;    ///< while it turns
  std::optional<StateExtremes> at_rest;     ///< over all that it folds with its driveline on

  bool is_taken_off() const { return branch.coupled_at_rest == false; }
};

std::vector<std::string> geometry_missing(const BranchCase& branch, const std::string& path) {
  std::vector<std::string> missing;
  const auto want = [&](bool stated, const char* entry) {
    if (!stated) missing.push_back(path + entry);
  };
  want(branch.side.has_value(), ".side");
  want(branch.fold.has_value(), ".fold");
  want(branch.front_joint_kind.has_value(), ".front_joint_kind");
  want(branch.rear_joint_kind.has_value(), ".rear_joint_kind");
  want(branch.front_joint.has_value(), ".front_joint");
  want(branch.rear_joint.has_value(), ".rear_joint");
  const std::pair<const Place*, const char*> places[] = {
      {&branch.output, ".output"}, {&branch.hinge, ".hinge"}, {&branch.input, ".input"}};
  for (const auto& place : places) {
    for (std::string& entry : place_missing(*place.first, path + place.second)) missing.push_back(std::move(entry));
  }
  return missing;
}

/// The direction in which the splitter's shaft points.
Direction direction_of(BranchSide side) {
  if (side == BranchSide::left) return Direction::from_unit({0.0, 1.0, 0.0});
  if (side == BranchSide::right) return Direction::from_unit({0.0, -1.0, 0.0});
  return Direction::from_unit({-1.0, 0.0, 0.0});
}

Driveline driveline_of(const BranchCase& branch) {
  Driveline driveline = joints_of(branch);
  driveline.output = position_of(branch.output);
  driveline.output_direction = direction_of(*branch.side);
  driveline.input = position_of(branch.input) - position_of(branch.hinge);
  driveline.input_direction = -driveline.output_direction;
  return driveline;
}

/// Folding up: a left part rolls its left side up, a right one its right side, a rear one pitches its rear end up.
AttitudeRange folding_of(const BranchCase& branch, const Interval<Angle>& fold) {
  const AngleRange up{fold.low, fold.high};
  if (*branch.side == BranchSide::left) return {{}, {}, up, {}};
  if (*branch.side == BranchSide::right) return {{}, {}, {-up.high, -up.low}, {}};
  return {{}, up, {}, {}};
}

Angle fold_at(const BranchCase& branch, const PoseAt& pose) {
  if (*branch.side == BranchSide::left) return pose.roll;
  return *branch.side == BranchSide::right ? -pose.roll : pose.pitch;
}

/// On its way to transport the part passes every fold between that at work and that at rest.
Interval<Angle> whole_fold(const BranchCase& branch) {
  return {std::min(branch.fold->low, branch.fold_at_rest->low), std::max(branch.fold->high, branch.fold_at_rest->high)};
}

/// The hinge moves the whole part, and the splitter's shaft stands for the pin's other end.
DrivelineTolerance tolerance_of(const BranchCase& branch) {
  DrivelineTolerance tolerance;
  tolerance.front_joint = branch.front_joint->tolerance;
  tolerance.rear_joint = branch.rear_joint->tolerance;
  tolerance.pin_distance = branch.hinge.behind->tolerance + branch.output.behind->tolerance;
  tolerance.pin_lateral = branch.hinge.left->tolerance + branch.output.left->tolerance;
  tolerance.pin_drop = branch.hinge.above->tolerance + branch.output.above->tolerance;
  tolerance.input_behind = branch.hinge.behind->tolerance + branch.input.behind->tolerance;
  tolerance.input_left = branch.hinge.left->tolerance + branch.input.left->tolerance;
  tolerance.input_up = branch.hinge.above->tolerance + branch.input.above->tolerance;
  return tolerance;
}

Branching over_folding(const BranchCase& branch, std::size_t number) {
  Branching found{branch, "implement.branches[" + std::to_string(number) + "]", {}, {}, {}, {}, {}};
  found.missing = geometry_missing(branch, found.path);
  if (!branch.fold_at_rest && !found.is_taken_off()) found.missing_at_rest = {found.path + ".fold_at_rest"};
  if (!found.missing.empty()) return found;
  const auto over = [&](const Interval<Angle>& fold, bool with_variation) {
    StateExtremes extremes = extremes_at(driveline_of(branch), position_of(branch.hinge), folding_of(branch, fold),
                                         tolerance_of(branch), with_variation);
    allow_for_crosses(extremes, yokes_of(branch));
    return extremes;
  };
  std::string entry = found.path;
  try {
    found.extremes = over(*branch.fold, branch.yoke_phase.has_value());
    entry += ".fold_at_rest";
    if (branch.fold_at_rest) found.at_rest = over(whole_fold(branch), false);
  } catch (const InputError& error) { // joint centres that meet
    (found.extremes ? found.missing_at_rest : found.missing) = {entry};
    found.impossible = error.what();
  }
  return found;
}

Finding unknown(Check check, const Branching& of, std::vector<std::string> missing) {
  missing.insert(missing.end(), of.missing.begin(), of.missing.end());
  Finding finding = not_known(check, of.impossible.empty() ? "branch.unstated" : "branch.impossible", missing);
  if (!of.impossible.empty()) finding.facts = {fact("why", of.impossible)};
  return finding;
}

/// What the case says of the folding for transport.
Fact rest_fact(const Branching& of) {
  const char* known = of.at_rest ? "branch.rest.coupled" : "branch.rest.unstated";
  return fact("rest", PhraseId{of.is_taken_off() ? "branch.rest.taken_off" : known});
}

/// A finding that counts only what is known: an objection stands, no pass does where something is missing.
Finding unless_missing(Finding finding, const Branching& of, const std::vector<std::string>& missing) {
  return missing.empty() || finding.status == Status::stop ? finding : unknown(finding.check, of, missing);
}

/// The joint that fares worse over one folding, while the branch turns or at rest.
Finding worse_joint(const Case& value, const Branching& of, const StateExtremes& over, bool driven) {
  const BranchCase& branch = of.branch;
  const MachineState state = driven ? MachineState::working : MachineState::transport;
  const auto judge = [&](const WorstCase<Angle>& angle, JointKind kind, const Stated<Angle>& lock, const char* end) {
    const LimitBand band = up_to_lock(angle_band(value, state, driven, kind), lock);
    Finding finding =
        compare(Check::branch_angle, amount_of(angle.value), band, driven ? "branch.angle" : "branch.angle_at_rest");
    finding.facts = {fact("end", PhraseId{end}), fact("fold", fold_at(branch, angle.pose)), rest_fact(of)};
    if (finding.status != Status::ok) finding.advice = {driven ? "branch.less_fold" : "branch.take_off"};
    return finding;
  };
  return worse_of(judge(over.front, *branch.front_joint_kind, branch.front_joint_lock, "branch.front"),
                  judge(over.rear, *branch.rear_joint_kind, branch.rear_joint_lock, "branch.rear"));
}

Finding angle_finding(const Case& value, const Branching& of) {
  if (!of.extremes) return unknown(Check::branch_angle, of, {});
  Finding finding = worse_joint(value, of, *of.extremes, true);
  if (of.at_rest) finding = worse_of(finding, worse_joint(value, of, *of.at_rest, false));
  return unless_missing(std::move(finding), of, of.missing_at_rest);
}

/// Speed of the branch with the engine at high idle; empty where the case does not say.
Stated<AngularSpeed> speed_at_high_idle(const Case& value, const BranchCase& branch) {
  const Stated<AngularSpeed> pto = pto_speed_at_high_idle(value);
  if (!pto || !value.implement.input_speed) return {};
  return static_cast<double>(*pto / *value.implement.input_speed) * *branch.speed;
}

Finding variation_finding(const Case& value, const Branching& of) {
  std::vector<std::string> missing;
  if (!of.branch.speed) missing.push_back(of.path + ".speed");
  if (!of.branch.yoke_phase) missing.push_back(of.path + ".yoke_phase");
  if (!missing.empty() || !of.extremes) return unknown(Check::branch_variation, of, missing);
  const WorstCase<double>& worst = of.extremes->variation;
  Finding finding = at_both_speeds(
      value, *of.branch.speed, speed_at_high_idle(value, of.branch), [&](AngularSpeed speed, bool high_idle) {
        Finding judged = compare(Check::branch_variation, {worst.value, Kind::share}, variation_band(speed),
                                 high_idle ? "branch.uneven_at_high_idle" : "branch.uneven");
        judged.facts = {fact("speed", speed), fact("fold", fold_at(of.branch, worst.pose))};
        return judged;
      });
  if (finding.status == Status::not_known && !value.implement.input_speed) {
    finding.missing.emplace_back("implement.input_speed");
  }
  if (!is_finite(worst.value)) finding = make_finding(Check::branch_variation, Status::stop, "variation.endless");
  if (finding.status != Status::ok) finding.advice = {"branch.equalise"};
  return finding;
}

Finding telescope_finding(const Case& value, const Branching& of) {
  const BranchCase& branch = of.branch;
  std::vector<std::string> missing;
  if (!branch.closed_length) missing.push_back(of.path + ".closed_length");
  if (!branch.closed_overlap) missing.push_back(of.path + ".closed_overlap");
  if (!missing.empty() || !of.extremes) return unknown(Check::branch_telescope, of, missing);
  const MeasuredLength closed = *branch.closed_length;
  const MeasuredLength overlap = *branch.closed_overlap;
  const StateExtremes& over = of.at_rest ? *of.at_rest : *of.extremes;
  const WorstCase<Length>& longest = over.longest;
  const WorstCase<Length>& shortest = over.shortest;
  const Length left = overlap.value - overlap.tolerance - (longest.value - (closed.value - closed.tolerance));
  const Length room = shortest.value - (closed.value + closed.tolerance);
  const auto at = [&](Finding finding, const WorstCase<Length>& worst) {
    const Angle fold = fold_at(branch, worst.pose);
    const bool in_work = fold >= branch.fold->low && fold <= branch.fold->high;
    finding.facts = {fact("length", worst.value), fact("fold", fold), rest_fact(of)};
    if (finding.status != Status::ok) finding.advice = {in_work ? "branch.other_length" : "branch.take_off_or_fit"};
    return finding;
  };
  const Finding drawn = at(compare(Check::branch_telescope, amount_of(left), overlap_band(value, overlap.value),
                                   left < Length{} ? "branch.apart" : "branch.overlap"),
                           longest);
  const Finding pushed = at(compare(Check::branch_telescope, amount_of(room), clearance_band(value),
                                    room < Length{} ? "branch.bottoms" : "branch.room"),
                            shortest);
  std::vector<std::string> unsure = of.missing_at_rest;
  for (std::string& entry : yokes_missing(branch, of.path)) unsure.push_back(std::move(entry));
  return unless_missing(worse_of(drawn, pushed), of, unsure);
}

/// The largest torque that arrives in a branch, at its own speed.
struct BranchPeak {
  PeakLoad peak;
  bool own = false;     ///< its own device bounds it
  bool bounded = false; ///< some device does; else the torque is what arrives at least
};

/// Angle of the cross that bends one end of the branch.
Angle cross_angle(JointKind kind, Angle angle) { return kind == JointKind::wide_angle ? 0.5 * angle : angle; }

/// What a device of its own lets through, raised by the joint at which it sits. A setting holds at its own place.
PeakLoad peak_of_own(const Branching& of) {
  const BranchCase& branch = of.branch;
  const OverloadDevice& device = branch.overload->item;
  PeakLoad peak;
  peak.missing = of.missing;
  const auto want = [&](bool stated, const char* entry) {
    if (!stated) peak.missing.push_back(of.path + ".overload" + entry);
  };
  want(device.kind.has_value(), ".kind");
  want(device.place.has_value(), ".place");
  want(device.setting.has_value(), ".setting");
  want(device.scatter.has_value(), ".scatter");
  if (!peak.missing.empty() || !of.extremes) return peak;
  peak.torque = *device.setting * (1.0 + *device.scatter);
  const Angle angle = *device.place == DevicePlace::tractor_end
                          ? cross_angle(*branch.front_joint_kind, of.extremes->front.value)
                          : cross_angle(*branch.rear_joint_kind, of.extremes->rear.value);
  return raised(std::move(peak), angle, of.path + ".fold");
}

/// A part that jams alone stops its own branch: all that the device ahead of the splitter lets through arrives there,
/// whatever its share of the work, raised by its first joint; no losses.
PeakLoad peak_of_whole(const Case& value, const Branching& of) {
  PeakLoad peak = peak_load(value);
  peak.missing.insert(peak.missing.end(), of.missing.begin(), of.missing.end());
  if (!of.branch.speed) peak.missing.push_back(of.path + ".speed");
  if (!value.implement.input_speed) peak.missing.emplace_back("implement.input_speed");
  if (!peak.missing.empty() || !of.extremes) peak.torque.reset();
  if (!peak.torque) return peak;
  const double slower = static_cast<double>(*value.implement.input_speed / *of.branch.speed);
  peak.torque = slower * *peak.torque;
  return raised(std::move(peak), cross_angle(*of.branch.front_joint_kind, of.extremes->front.value), of.path + ".fold");
}

BranchPeak peak_of(const Case& value, const Branching& of) {
  const bool own = of.branch.overload && of.branch.overload->present;
  const bool whole = value.overload && value.overload->present;
  BranchPeak found{peak_of_whole(value, of), false, whole};
  if (!own) return found;
  const PeakLoad held = peak_of_own(of);
  const bool whole_is_less = whole && found.peak.torque && held.torque && *found.peak.torque < *held.torque;
  return whole_is_less ? found : BranchPeak{held, true, true};
}

/// What the branch carries at its own speed when the work peaks, by its share; empty where that is not known.
Stated<Torque> working_peak_of(const Case& value, const BranchCase& branch) {
  const MeanLoad mean = mean_load(value);
  const bool known = mean.torque && value.implement.peak_factor && value.implement.input_speed && branch.speed;
  if (!known || !branch.torque_share) return {};
  const double slower = static_cast<double>(*value.implement.input_speed / *branch.speed);
  return *branch.torque_share * slower * *value.implement.peak_factor * *mean.torque;
}

/// A device that may let go below the peaks of the work does so in work.
void judge_own_device(const Case& value, const Branching& of, Finding& finding) {
  const OverloadDevice& device = of.branch.overload->item;
  const Stated<Torque> work = working_peak_of(value, of.branch);
  const Torque least = *device.setting * (1.0 - *device.scatter);
  if (!work || least >= *work) return;
  finding.status = worse(finding.status, Status::caution);
  finding.facts.push_back(fact("least", least));
  finding.facts.push_back(fact("work", *work));
  finding.advice.emplace_back("branch.raise_device");
}

/// The part that fares worst under the torque: joints or tube; nothing where neither is stated.
std::optional<Finding> worst_part(const Case& value, const Branching& of, const TubeOfCase& tube,
                                  const BranchPeak& load) {
  const Torque torque = *load.peak.torque;
  const auto add_facts = [&](Finding& finding) {
    finding.facts = {fact("torque", torque),
                     fact("origin", PhraseId{peak_phrase(load.peak)}),
                     {"share", Amount{*of.branch.torque_share, Kind::share}}};
    if (finding.status != Status::ok) finding.advice = {"branch.stronger"};
  };
  std::optional<Finding> worst;
  if (of.branch.joint_rating) {
    const Amount limit = amount_of(*of.branch.joint_rating);
    worst =
        compare(Check::branch_strength, amount_of(torque),
                {limit, limit, LimitSense::at_most, {{"rating of the joints as the case states it", Standing::given}}},
                load.own ? "branch.joints_behind_own" : "branch.joints");
    add_facts(*worst);
  }
  if (tube.section && tube.missing.empty()) {
    LimitBand band = shear_yield_band(tube.steel, yield_margin(value));
    band.basis.push_back(yield_margin_source(value));
    Finding finding = compare(Check::branch_strength, amount_of(torsion_stress(*tube.section, torque)), band,
                              load.own ? "branch.tube_behind_own" : "branch.tube");
    doubt_strength(finding, tube.steel);
    add_facts(finding);
    worst = worst ? worse_of(*worst, finding) : finding;
  }
  return worst;
}

Finding strength_finding(const Case& value, const Branching& of) {
  const BranchPeak load = peak_of(value, of);
  const TubeOfCase tube = resolve_tube(of.branch.tube, of.branch.tube_steel, of.path + ".");
  std::vector<std::string> missing = load.peak.missing;
  missing.insert(missing.end(), tube.missing.begin(), tube.missing.end());
  if (!of.branch.joint_rating) missing.push_back(of.path + ".joint_rating");
  if (!of.branch.torque_share) missing.push_back(of.path + ".torque_share");
  std::optional<Finding> worst;
  if (load.peak.torque && of.branch.torque_share) worst = worst_part(value, of, tube, load);
  if (worst && worst->status == Status::stop) return *worst;
  if (!missing.empty() || !worst) return unknown(Check::branch_strength, of, missing);
  if (!load.bounded) {
    Finding finding = not_known(Check::branch_strength, "branch.unbounded", {});
    if (!of.branch.overload) finding.missing = {of.path + ".overload"};
    finding.facts = worst->facts;
    finding.advice = {"branch.fit_device"};
    return finding;
  }
  if (load.own) judge_own_device(value, of, *worst);
  return *worst;
}

} // namespace

std::vector<BranchEnvelopeOfCase> check_branches(const Case& value, Findings& findings) {
  std::vector<BranchEnvelopeOfCase> envelopes;
  bool any = false;
  const auto add = [&](Finding finding, const std::string& name) {
    finding.part = name;
    findings.add(std::move(finding));
  };
  for (std::size_t i = 0; i < value.implement.branches.size(); ++i) {
    const BranchCase& branch = value.implement.branches[i];
    if (branch.side == BranchSide::direct) continue; // no driveline to judge
    any = true;
    const Branching of = over_folding(branch, i);
    add(angle_finding(value, of), branch.name);
    add(variation_finding(value, of), branch.name);
    add(telescope_finding(value, of), branch.name);
    add(strength_finding(value, of), branch.name);
    if (!of.extremes) continue;
    const auto push = [&](bool driven, const Interval<Angle>& fold, const StateExtremes& over) {
      envelopes.push_back(branch_envelope_of(branch.name, driven, {amount_of(fold.low), amount_of(fold.high)}, over));
    };
    push(true, *branch.fold, *of.extremes);
    if (of.at_rest) push(false, whole_fold(branch), *of.at_rest);
  }
  if (any) return envelopes;
  for (const Check check :
       {Check::branch_angle, Check::branch_variation, Check::branch_telescope, Check::branch_strength}) {
    findings.not_examined(check);
  }
  return envelopes;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
