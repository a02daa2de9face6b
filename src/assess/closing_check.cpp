// The model against lengths measured by hand.

#include "assess/checks.hpp"
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

AngleRange around(const Measured<Angle>& angle) {
  return {angle.value - angle.tolerance, angle.value + angle.tolerance};
}

LengthRange around(const MeasuredLength& length) {
  return {length.value - length.tolerance, length.value + length.tolerance};
}

/// Pose and envelope of the lengths that pose and measurements within their tolerances allow.
struct Reckoned {
  Pose pose;
  DrivelineEnvelope envelope;
};

Reckoned reckoned(const Case& value, const HandCheck& check) {
  EnvelopeOptions options;
  options.with_speed_variation = false;
  Reckoned r;
  r.pose.attitude = {check.yaw->value, {}, check.roll->value};
  if (is_trailed(value)) {
    r.pose.pin = pin_of(value);
    r.pose.attitude.pitch = check.pitch->value;
    const AttitudeRange range{around(*check.yaw), around(*check.pitch), around(*check.roll), {}};
    r.envelope = driveline_envelope(driveline_of(value), r.pose.pin, trailed_tolerance(value), range, options).envelope;
    return r;
  }
  const bool slack = check.top_link == TopLink::slack;
  r.pose = pose_on_links(value, {check.lift->value, {}, {}}, check.yaw->value, check.roll->value, slack);
  MountedRange range{around(*check.lift), {}, {}, around(*check.yaw), around(*check.roll), {}};
  if (is_semi_mounted(value)) range.pivot = steering_pivot_of(value);
  r.envelope = mounted_envelope(value, mounted_tolerance(value), range, slack, options).envelope;
  return r;
}

struct HandCheckResult {
  LengthCheck lengths;
  PoseAt pose;
};

HandCheckResult compared(const Case& value, const HandCheck& check) {
  const Reckoned r = reckoned(value, check);
  const Driveline driveline = driveline_of(value);
  const Length model = driveline_at(driveline, r.pose).length;
  const Length spread = std::max(r.envelope.longest.upper - model, model - r.envelope.shortest.lower);
  const Attitude& at = r.pose.attitude;
  HandCheckResult result{check_length(driveline, r.pose, check.length->value, check.length->tolerance, spread),
                         {at.yaw, at.pitch, at.roll, std::nullopt}};
  if (check.lift) result.pose.lift = check.lift->value;
  return result;
}

/// The comparison that is nearest to its tolerance, or farthest beyond it.
bool worse_match(const LengthCheck& a, const LengthCheck& b) {
  return math::abs(a.measured - a.model) - a.allowed > math::abs(b.measured - b.model) - b.allowed;
}

Finding finding_of(const std::vector<HandCheckResult>& results) {
  const HandCheckResult* worst = &results.front();
  bool agree = true;
  for (const HandCheckResult& result : results) {
    agree = agree && result.lengths.agrees;
    if (worse_match(result.lengths, worst->lengths)) worst = &result;
  }
  Status status = results.size() < 2 ? Status::caution : Status::ok;
  const char* reason = results.size() < 2 ? "hand.one_pose" : "hand.agrees";
  if (!agree) {
    status = Status::not_known;
    reason = "hand.disagrees";
  }
  Finding finding = make_finding(Check::hand_check, status, reason);
  finding.value = amount_of(math::abs(worst->lengths.measured - worst->lengths.model));
  finding.limit = amount_of(worst->lengths.allowed);
  finding.sense = LimitSense::at_most;
  finding.basis = {by_hand, rigid_model};
  finding.facts = {fact("measured", worst->lengths.measured),
                   fact("model", worst->lengths.model),
                   fact("at", PoseIn{MachineState::any, worst->pose}),
                   {"poses", Amount{static_cast<double>(results.size()), Kind::number}}};
  if (!agree) finding.advice = {"hand.measure_again"};
  if (agree && results.size() < 2) finding.advice = {"hand.second_pose"};
  return finding;
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
