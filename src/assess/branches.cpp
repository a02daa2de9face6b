// Drivelines behind a splitter gearbox, such as those to folding wings: each judged by itself, with its share of the
// torque.

#include "assess/certificate.hpp"
#include "assess/checks.hpp"
#include "assess/coupling_yokes.hpp"
#include "assess/geometry.hpp"
#include "assess/layout.hpp"
#include "assess/limits.hpp"
#include "assess/loads.hpp"
#include "assess/rise.hpp"
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

Finding worse_of(const Finding& a, const Finding& b) {
  if (a.status != b.status) return a.status > b.status ? a : b;
  return a.margin.value_or(0.0) <= b.margin.value_or(0.0) ? a : b;
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

Finding variation_finding(const Branching& of) {
  std::vector<std::string> missing;
  if (!of.branch.speed) missing.push_back(of.path + ".speed");
  if (!of.branch.yoke_phase) missing.push_back(of.path + ".yoke_phase");
  if (!missing.empty() || !of.extremes) return unknown(Check::branch_variation, of, missing);
  const WorstCase<double>& worst = of.extremes->variation;
  Finding finding =
      compare(Check::branch_variation, {worst.value, Kind::share}, variation_band(*of.branch.speed), "branch.uneven");
  finding.facts = {fact("speed", *of.branch.speed), fact("fold", fold_at(of.branch, worst.pose))};
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

/// Its share of the largest torque that arrives at the stub, at its own speed, raised by its first joint; no losses.
PeakLoad peak_of(const Case& value, const Branching& of) {
  PeakLoad found = peak_load(value);
  found.missing.insert(found.missing.end(), of.missing.begin(), of.missing.end());
  if (!of.branch.torque_share) found.missing.push_back(of.path + ".torque_share");
  if (!of.branch.speed) found.missing.push_back(of.path + ".speed");
  if (!value.implement.input_speed) found.missing.emplace_back("implement.input_speed");
  if (!found.missing.empty() || !of.extremes) found.torque.reset();
  if (!found.torque) return found;
  const bool wide = *of.branch.front_joint_kind == JointKind::wide_angle;
  const Angle angle = wide ? 0.5 * of.extremes->front.value : of.extremes->front.value;
  const double slower = static_cast<double>(*value.implement.input_speed / *of.branch.speed);
  found.torque = *of.branch.torque_share * slower * *found.torque;
  return raised(std::move(found), angle, of.path + ".fold");
}

Finding strength_finding(const Case& value, const Branching& of) {
  const PeakLoad peak = peak_of(value, of);
  const TubeOfCase tube = resolve_tube(of.branch.tube, of.branch.tube_steel, of.path + ".");
  std::vector<std::string> missing = peak.missing;
  missing.insert(missing.end(), tube.missing.begin(), tube.missing.end());
  if (!of.branch.joint_rating) missing.push_back(of.path + ".joint_rating");
  const auto add_facts = [&](Finding& finding) {
    finding.facts = {fact("torque", *peak.torque),
                     fact("origin", PhraseId{peak_phrase(peak)}),
                     {"share", Amount{*of.branch.torque_share, Kind::share}}};
    if (finding.status != Status::ok) finding.advice = {"branch.stronger"};
  };
  std::optional<Finding> worst;
  if (peak.torque && of.branch.joint_rating) {
    const Amount limit = amount_of(*of.branch.joint_rating);
    worst =
        compare(Check::branch_strength, amount_of(*peak.torque),
                {limit, limit, LimitSense::at_most, {{"rating of the joints as the case states it", Standing::given}}},
                "branch.joints");
    add_facts(*worst);
  }
  if (peak.torque && tube.section && tube.missing.empty()) {
    LimitBand band = shear_yield_band(tube.steel, yield_margin(value));
    band.basis.push_back(yield_margin_source(value));
    Finding finding =
        compare(Check::branch_strength, amount_of(torsion_stress(*tube.section, *peak.torque)), band, "branch.tube");
    doubt_strength(finding, tube.steel);
    add_facts(finding);
    worst = worst ? worse_of(*worst, finding) : finding;
  }
  if (!missing.empty() && (!worst || worst->status != Status::stop))
    return unknown(Check::branch_strength, of, missing);
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
    add(variation_finding(of), branch.name);
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
