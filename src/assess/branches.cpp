// Drivelines behind a splitter gearbox, such as those to folding wings: each judged by itself, with its share of the
// torque.

#include "assess/certificate.hpp"
#include "assess/checks.hpp"
#include "assess/geometry.hpp"
#include "assess/layout.hpp"
#include "assess/limits.hpp"
#include "assess/loads.hpp"
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
  std::vector<std::string> missing; ///< without which its geometry is not known
  std::string impossible;           ///< why a geometry that is fully stated cannot be
  std::optional<StateExtremes> extremes;
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
AttitudeRange folding_of(const BranchCase& branch) {
  const AngleRange up{branch.fold->low, branch.fold->high};
  if (*branch.side == BranchSide::left) return {{}, {}, up, {}};
  if (*branch.side == BranchSide::right) return {{}, {}, {-up.high, -up.low}, {}};
  return {{}, up, {}, {}};
}

Angle fold_at(const BranchCase& branch, const PoseAt& pose) {
  if (*branch.side == BranchSide::left) return pose.roll;
  return *branch.side == BranchSide::right ? -pose.roll : pose.pitch;
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
  Branching found{branch, "implement.branches[" + std::to_string(number) + "]", {}, {}, {}};
  found.missing = geometry_missing(branch, found.path);
  if (!found.missing.empty()) return found;
  try {
    found.extremes = extremes_at(driveline_of(branch), position_of(branch.hinge), folding_of(branch),
                                 tolerance_of(branch), branch.yoke_phase.has_value());
  } catch (const InputError& error) { // joint centres that meet
    found.missing = {found.path};
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

Finding angle_finding(const Case& value, const Branching& of) {
  if (!of.extremes) return unknown(Check::branch_angle, of, {});
  const auto judge = [&](const WorstCase<Angle>& angle, JointKind kind, const char* end) {
    Finding finding = compare(Check::branch_angle, amount_of(angle.value),
                              angle_band(value, MachineState::working, true, kind), "branch.angle");
    finding.facts = {fact("end", PhraseId{end}), fact("fold", fold_at(of.branch, angle.pose))};
    return finding;
  };
  Finding finding = worse_of(judge(of.extremes->front, *of.branch.front_joint_kind, "branch.front"),
                             judge(of.extremes->rear, *of.branch.rear_joint_kind, "branch.rear"));
  if (finding.status != Status::ok) finding.advice = {"branch.less_fold"};
  return finding;
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
  const WorstCase<Length>& longest = of.extremes->longest;
  const WorstCase<Length>& shortest = of.extremes->shortest;
  const Length left = overlap.value - overlap.tolerance - (longest.value - (closed.value - closed.tolerance));
  const Length room = shortest.value - (closed.value + closed.tolerance);
  Finding drawn = compare(Check::branch_telescope, amount_of(left), overlap_band(value, overlap.value),
                          left < Length{} ? "branch.apart" : "branch.overlap");
  drawn.facts = {fact("length", longest.value), fact("fold", fold_at(branch, longest.pose))};
  Finding pushed = compare(Check::branch_telescope, amount_of(room), clearance_band(value),
                           room < Length{} ? "branch.bottoms" : "branch.room");
  pushed.facts = {fact("length", shortest.value), fact("fold", fold_at(branch, shortest.pose))};
  Finding finding = worse_of(drawn, pushed);
  if (finding.status != Status::ok) finding.advice = {"branch.other_length"};
  return finding;
}

/// Its share of the largest torque that arrives at the stub, at its own speed, raised by its first joint; no losses.
struct BranchPeak {
  Stated<Torque> torque;
  PeakOrigin origin = PeakOrigin::device;
  std::vector<std::string> missing;
};

BranchPeak peak_of(const Case& value, const Branching& of) {
  const PeakLoad peak = peak_load(value);
  BranchPeak found{{}, peak.origin, peak.missing};
  found.missing.insert(found.missing.end(), of.missing.begin(), of.missing.end());
  if (!of.branch.torque_share) found.missing.push_back(of.path + ".torque_share");
  if (!of.branch.speed) found.missing.push_back(of.path + ".speed");
  if (!value.implement.input_speed) found.missing.emplace_back("implement.input_speed");
  if (!found.missing.empty() || !peak.torque || !of.extremes) return found;
  const bool wide = *of.branch.front_joint_kind == JointKind::wide_angle;
  const Angle angle = wide ? 0.5 * of.extremes->front.value : of.extremes->front.value;
  if (angle >= degrees(90.0)) {
    found.missing.push_back(of.path + ".fold");
    return found;
  }
  const double slower = static_cast<double>(*value.implement.input_speed / *of.branch.speed);
  found.torque = joint_peak_couples(*of.branch.torque_share * slower * *peak.torque, angle).output;
  return found;
}

Finding strength_finding(const Case& value, const Branching& of) {
  const BranchPeak peak = peak_of(value, of);
  const TubeOfCase tube = resolve_tube(of.branch.tube, of.branch.tube_steel, of.path + ".");
  std::vector<std::string> missing = peak.missing;
  missing.insert(missing.end(), tube.missing.begin(), tube.missing.end());
  if (!of.branch.joint_rating) missing.push_back(of.path + ".joint_rating");
  const auto add_facts = [&](Finding& finding) {
    finding.facts = {fact("torque", *peak.torque),
                     fact("origin", PhraseId{peak_phrase(peak.origin)}),
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
    envelopes.push_back(
        branch_envelope_of(branch.name, {amount_of(branch.fold->low), amount_of(branch.fold->high)}, *of.extremes));
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
