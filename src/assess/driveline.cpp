// Joint angles and the telescope over all positions of the machine.

#include "assess/checks.hpp"
#include "assess/geometry.hpp"

#include <fieldshaft/joint.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

constexpr Source rigid_model{"geometry of a rigid machine on the stated measurements", Standing::exact};

LimitBand angle_band(const JointAngleBand& practice, const Stated<Angle>& stated) {
  if (stated) {
    return {amount_of(*stated),
            amount_of(*stated),
            LimitSense::at_most,
            {{"joint angle limit as the case states it", Standing::given}, rigid_model}};
  }
  LimitBand band{amount_of(practice.low.value),
                 amount_of(practice.high.value),
                 LimitSense::at_most,
                 {practice.low.source, practice.high.source, rigid_model}};
  return band;
}

void place(Finding& finding, MachineState state, const PoseAt& pose) {
  finding.state = state;
  finding.pose = pose;
}

struct AngleCheck {
  Check check;
  MachineState state;
};

/// The angle that a state allows: driven states by the practice for a turning shaft, others by that for one at rest.
LimitBand allowed_angle(const Case& value, const StateExtremes& extremes) {
  const bool wide = value.driveline.joints == JointKind::wide_angle;
  const JointAnglePractice& practice = wide ? wide_angle_joint_practice : plain_joint_practice;
  if (!extremes.driven) return angle_band(practice.at_rest, value.limits.transport_angle);
  if (extremes.state == MachineState::working) return angle_band(practice.working, value.limits.working_angle);
  return angle_band(practice.turning, value.limits.turning_angle);
}

void check_angle(const Case& value, const DrivelineOverRange& range, const AngleCheck& what, Findings& findings) {
  const StateExtremes* extremes = range.find(what.state);
  std::vector<std::string> missing = range.missing_for(what.state);
  if (!value.driveline.joints) missing.emplace_back("driveline.joints");
  if (extremes == nullptr || !missing.empty()) {
    findings.add(not_known(what.check, "angle.unstated", missing));
    return;
  }
  Finding finding = compare(what.check, amount_of(extremes->angle.value), allowed_angle(value, *extremes),
                            extremes->driven ? "angle.driven" : "angle.at_rest");
  place(finding, extremes->state, extremes->angle.pose);
  if (finding.status != Status::ok)
    finding.advice = {extremes->driven ? "angle.reduce_driven" : "angle.reduce_at_rest"};
  findings.add(std::move(finding));
}

/// How far the two joint angles may differ in work: a rule of thumb of this library, where no text states one.
constexpr Sourced<Interval<Angle>> usual_difference{
    {degrees(5.0), degrees(15.0)},
    {"joints should bend equally; 5° and 15° are rules of thumb and defaults of this library",
     Standing::common_practice}};

void check_difference(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  const StateExtremes* extremes = range.find(MachineState::working);
  if (extremes == nullptr) {
    findings.add(not_known(Check::angle_difference, "difference.unstated", range.missing_for(MachineState::working)));
    return;
  }
  if (value.driveline.joints == JointKind::wide_angle) {
    findings.not_examined(Check::angle_difference);
    return;
  }
  LimitBand band{amount_of(usual_difference.value.low),
                 amount_of(usual_difference.value.high),
                 LimitSense::at_most,
                 {usual_difference.source, rigid_model}};
  if (value.limits.angle_difference) {
    const Amount limit = amount_of(*value.limits.angle_difference);
    band = {limit, limit, LimitSense::at_most, {{"difference as the case states it", Standing::given}, rigid_model}};
  }
  Finding finding = compare(Check::angle_difference, amount_of(extremes->difference.value), band, "difference.in_work");
  place(finding, MachineState::working, extremes->difference.pose);
  if (finding.status != Status::ok) finding.advice = {"difference.equalise"};
  findings.add(std::move(finding));
}

/// The state in which a length is the most extreme.
const StateExtremes* extreme_state(const DrivelineOverRange& range, bool longest) {
  const auto shorter = [&](const StateExtremes& a, const StateExtremes& b) {
    return longest ? a.longest.value < b.longest.value : a.shortest.value < b.shortest.value;
  };
  if (range.states.empty()) return nullptr;
  return longest ? &*std::max_element(range.states.begin(), range.states.end(), shorter)
                 : &*std::min_element(range.states.begin(), range.states.end(), shorter);
}

/// Rules in use for the overlap at the longest position; the greatest is ok, below the smallest nobody allows.
LimitBand overlap_band(const Case& value) {
  if (value.limits.minimum_overlap) {
    const Amount limit = amount_of(*value.limits.minimum_overlap);
    return {limit, limit, LimitSense::at_least, {{"overlap as the case states it", Standing::given}, rigid_model}};
  }
  const Length third = (1.0 / 3.0) * value.driveline.closed_overlap->value;
  return {amount_of(std::max(third, millimetres(150.0))),
          amount_of(millimetres(110.0)),
          LimitSense::at_least,
          {{"one third of the tube, and 150 mm (6 in): the greatest of the rules in use", Standing::common_practice},
           {"5-1/2 in (140 mm) in the housing, University of Missouri wording", Standing::quoted},
           {"110 mm: the smallest of the rules in use", Standing::common_practice},
           rigid_model}};
}

LimitBand clearance_band(const Case& value) {
  if (value.limits.minimum_clearance) {
    const Amount limit = amount_of(*value.limits.minimum_clearance);
    return {limit, limit, LimitSense::at_least, {{"clearance as the case states it", Standing::given}, rigid_model}};
  }
  return {amount_of(millimetres(50.0)),
          amount_of(millimetres(25.0)),
          LimitSense::at_least,
          {{"50 mm (2 in) and 25 mm (1 in) before the members touch: both in use", Standing::common_practice},
           rigid_model}};
}

/// The telescope is judged over all states: leaving one out could hide the worst position.
std::vector<std::string> telescope_missing(const Case& value, const DrivelineOverRange& range) {
  std::vector<std::string> missing = range.missing;
  for (const auto& [state, path] : range.missing_of_state) missing.push_back(path);
  for (auto& path : unstated({{value.driveline.closed_length.has_value(), "driveline.closed_length"},
                              {value.driveline.closed_overlap.has_value(), "driveline.closed_overlap"}})) {
    missing.push_back(std::move(path));
  }
  return missing;
}

void check_telescope(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  const std::vector<std::string> missing = telescope_missing(value, range);
  const StateExtremes* longest = extreme_state(range, true);
  const StateExtremes* shortest = extreme_state(range, false);
  if (longest == nullptr || shortest == nullptr || !missing.empty()) {
    findings.add(not_known(Check::overlap, "telescope.unstated", missing));
    findings.add(not_known(Check::clearance, "telescope.unstated", missing));
    return;
  }
  const MeasuredLength closed = *value.driveline.closed_length;
  const MeasuredLength overlap = *value.driveline.closed_overlap;
  // Each measurement at the end of its tolerance that makes the answer worse.
  const Length left = overlap.value - overlap.tolerance - (longest->longest.value - (closed.value - closed.tolerance));
  Finding finding = compare(Check::overlap, amount_of(left), overlap_band(value),
                            left < Length{} ? "telescope.apart" : "telescope.overlap");
  place(finding, longest->state, longest->longest.pose);
  finding.facts = {fact("length", longest->longest.value)};
  if (finding.status != Status::ok) finding.advice = {"telescope.longer"};
  findings.add(std::move(finding));

  const Length room = shortest->shortest.value - (closed.value + closed.tolerance);
  finding = compare(Check::clearance, amount_of(room), clearance_band(value),
                    room < Length{} ? "telescope.bottoms" : "telescope.clearance");
  place(finding, shortest->state, shortest->shortest.pose);
  finding.facts = {fact("length", shortest->shortest.value)};
  if (finding.status != Status::ok) finding.advice = {"telescope.shorter"};
  findings.add(std::move(finding));
}

} // namespace

void check_driveline(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  check_angle(value, range, {Check::working_angle, MachineState::working}, findings);
  check_angle(value, range, {Check::turning_angle, MachineState::turning}, findings);
  check_angle(value, range, {Check::transport_angle, MachineState::transport}, findings);
  check_difference(value, range, findings);
  check_telescope(value, range, findings);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
