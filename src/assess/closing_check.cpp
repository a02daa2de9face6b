// The model against lengths measured by hand.

#include "assess/checks.hpp"
#include "assess/coupling_yokes.hpp"
#include "assess/layout.hpp"
#include "assess/limits.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

constexpr Source by_hand{"lengths measured by hand as the case states them", Standing::given};

std::vector<std::string> missing_of(const Case& value, const HandCheck& check, const std::string& path) {
  std::vector<std::string> missing;
  if (!check.length) missing.push_back(path + ".length");
  if (!check.yaw) missing.push_back(path + ".yaw");
  if (!check.roll) missing.push_back(path + ".roll");
  if (is_trailed(value) && !check.pitch) missing.push_back(path + ".pitch");
  if (is_trailed(value)) return missing;
  if (!check.lift) missing.push_back(path + ".lift");
  if (has_support_wheels(value) && !check.top_link) missing.push_back(path + ".top_link");
  if (check.top_link != TopLink::slack) return missing;
  for (std::string& entry : wheels_missing(value)) missing.push_back(std::move(entry));
  return missing;
}

AngleRange around(const Measured<Angle>& angle, double share) {
  return {angle.value - share * angle.tolerance, angle.value + share * angle.tolerance};
}

LengthRange around(const MeasuredLength& length, double share) {
  return {length.value - share * length.tolerance, length.value + share * length.tolerance};
}

Pose pose_of(const Case& value, const HandCheck& check) {
  const Angle yaw = check.yaw->value;
  const Angle roll = check.roll->value;
  if (is_trailed(value)) return {pin_of(value), {yaw, check.pitch->value, roll}};
  return pose_on_links(value, {check.lift->value, {}, {}}, yaw, roll, check.top_link == TopLink::slack);
}

/// The length at a pose, each wide-angle joint as two crosses where its coupling yoke is stated.
Length length_at(const Case& value, const Pose& pose) {
  const DrivelineState at = driveline_at(driveline_of(value), pose);
  return length_with_crosses(at.length, at.front_angle, at.rear_angle, yokes_of(value.driveline));
}

/// Lengths that the measurements of the case within their tolerances allow, at the pose as stated (`share` 0) or at any
/// within the tolerances of the pose too (1).
DrivelineEnvelope envelope_at(const Case& value, const HandCheck& check, double share) {
  EnvelopeOptions options;
  options.with_speed_variation = false;
  const AngleRange yaw = around(*check.yaw, share);
  const AngleRange roll = around(*check.roll, share);
  if (is_trailed(value)) {
    const AttitudeRange range{yaw, around(*check.pitch, share), roll, {}};
    return driveline_envelope(driveline_of(value), pin_of(value), trailed_tolerance(value), range, options).envelope;
  }
  MountedRange range{around(*check.lift, share), {}, {}, yaw, roll, {}};
  if (is_semi_mounted(value)) range.pivot = steering_pivot_of(value);
  const bool slack = check.top_link == TopLink::slack;
  return mounted_envelope(value, mounted_tolerance(value), range, slack, options).envelope;
}

Length spread_about(Length model, const DrivelineEnvelope& envelope) {
  return std::max(envelope.longest.upper - model, model - envelope.shortest.lower);
}

struct HandCheckResult {
  LengthCheck lengths;
  Length own{}; ///< tolerance of the tape and of the pose, without that of the measurements in the model
  PoseAt pose;
};

HandCheckResult compared(const Case& value, const HandCheck& check) {
  const Pose pose = pose_of(value, check);
  const Length in_one_point = driveline_at(driveline_of(value), pose).length;
  const Length spread = spread_about(in_one_point, envelope_at(value, check, 1.0));
  const Length of_model = spread_about(in_one_point, envelope_at(value, check, 0.0));
  const Length model = length_at(value, pose);
  const Length allowed = check.length->tolerance + spread;
  const Attitude& at = pose.attitude;
  HandCheckResult result{{model, check.length->value, allowed, math::abs(check.length->value - model) <= allowed},
                         check.length->tolerance + std::max(Length{}, spread - of_model),
                         {at.yaw, at.pitch, at.roll, std::nullopt}};
  if (check.lift) result.pose.lift = check.lift->value;
  return result;
}

/// A tape along a driveline is good to a few millimetres, an angle by eye to a degree or two: what is looser would pass
/// mistakes that the verdict hangs on.
constexpr Sourced<Length> finest_wanted{
    millimetres(20.0),
    {"tape and pose together within 20 mm: a rule of thumb of this library", Standing::common_practice}};

bool is_fine(const HandCheckResult& result) { return result.own <= finest_wanted.value; }

/// Two poses tell something of the turn only where the model says lengths apart by more than tapes and poses may err.
bool tell_apart(const HandCheckResult& a, const HandCheckResult& b) {
  return math::abs(a.lengths.model - b.lengths.model) > a.own + b.own;
}

bool two_poses(const std::vector<HandCheckResult>& results) {
  for (const HandCheckResult& a : results) {
    for (const HandCheckResult& b : results) {
      if (is_fine(a) && is_fine(b) && tell_apart(a, b)) return true;
    }
  }
  return false;
}

/// How far the measured length lies beyond what its tolerances allow; below 0: within.
Length beyond(const HandCheckResult& result) {
  return math::abs(result.lengths.measured - result.lengths.model) - result.lengths.allowed;
}

template <class Of> const HandCheckResult& greatest(const std::vector<HandCheckResult>& results, const Of& of) {
  return *std::max_element(results.begin(), results.end(),
                           [&](const HandCheckResult& a, const HandCheckResult& b) { return of(a) < of(b); });
}

Finding comparison(Status status, const char* reason, const HandCheckResult& worst, std::size_t poses) {
  Finding finding = make_finding(Check::hand_check, status, reason);
  finding.value = amount_of(math::abs(worst.lengths.measured - worst.lengths.model));
  finding.limit = amount_of(worst.lengths.allowed);
  finding.sense = LimitSense::at_most;
  finding.basis = {by_hand, rigid_model};
  finding.facts = {fact("measured", worst.lengths.measured),
                   fact("model", worst.lengths.model),
                   fact("at", PoseIn{MachineState::any, worst.pose}),
                   {"poses", Amount{static_cast<double>(poses), Kind::number}},
                   fact("shows_from", worst.lengths.allowed + worst.own)};
  return finding;
}

Finding too_coarse(const HandCheckResult& coarsest) {
  Finding finding = make_finding(Check::hand_check, Status::caution, "hand.too_coarse");
  finding.value = amount_of(coarsest.own);
  finding.limit = amount_of(finest_wanted.value);
  finding.sense = LimitSense::at_most;
  finding.basis = {by_hand, finest_wanted.source, rigid_model};
  finding.facts = {fact("measured", coarsest.lengths.measured), fact("model", coarsest.lengths.model),
                   fact("at", PoseIn{MachineState::any, coarsest.pose})};
  finding.advice = {"hand.finer"};
  return finding;
}

Finding finding_of(const std::vector<HandCheckResult>& results) {
  const HandCheckResult& worst = greatest(results, beyond);
  const auto compare_worst = [&](Status status, const char* reason, const char* advice) {
    Finding finding = comparison(status, reason, worst, results.size());
    if (*advice != '\0') finding.advice = {advice};
    return finding;
  };
  if (!worst.lengths.agrees) return compare_worst(Status::not_known, "hand.disagrees", "hand.measure_again");
  if (two_poses(results)) return compare_worst(Status::ok, "hand.agrees", "");
  const HandCheckResult& coarsest = greatest(results, [](const HandCheckResult& r) { return r.own; });
  if (!is_fine(coarsest)) return too_coarse(coarsest);
  return compare_worst(Status::caution, results.size() < 2 ? "hand.one_pose" : "hand.same_pose", "hand.second_pose");
}

} // namespace

void check_by_hand(const Case& value, Findings& findings) {
  const std::vector<HandCheck>& checks = value.driveline.hand_checks;
  if (checks.empty()) {
    findings.not_examined(Check::hand_check, {"driveline.hand_checks"});
    return;
  }
  std::vector<std::string> missing = layout_missing(value);
  for (std::size_t i = 0; i < checks.size(); ++i) {
    for (std::string& path : missing_of(value, checks[i], "driveline.hand_checks[" + std::to_string(i) + "]")) {
      missing.push_back(std::move(path));
    }
  }
  if (!missing.empty()) {
    findings.add(not_known(Check::hand_check, "hand.unstated", missing));
    return;
  }
  try {
    std::vector<HandCheckResult> results;
    results.reserve(checks.size());
    for (const HandCheck& check : checks) results.push_back(compared(value, check));
    findings.add(finding_of(results));
  } catch (const InputError& error) { // a lift out of reach, joint centres that meet
    Finding finding = not_known(Check::hand_check, "hand.impossible", {"driveline.hand_checks"});
    finding.facts = {fact("why", std::string(error.what()))};
    findings.add(std::move(finding));
  }
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
