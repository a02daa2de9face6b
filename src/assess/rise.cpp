#include "assess/rise.hpp"

#include <fieldshaft/joint.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// The greatest angle that bends one cross of the rear joint while the shaft turns.
Angle driven_rear_angle(const Case& value, const DrivelineOverRange& range) {
  Angle angle{};
  for (const StateExtremes& state : range.states) {
    if (state.driven) angle = std::max(angle, state.rear.value);
  }
  return value.driveline.rear_joint_kind == JointKind::wide_angle ? 0.5 * angle : angle;
}

/// How unevenly the pair runs at worst while the shaft turns, by measurements within their tolerances.
double driven_variation(const DrivelineOverRange& range) {
  double variation = 0.0;
  for (const StateExtremes& state : range.states) {
    if (state.driven) variation = std::max({variation, state.variation.value, state.variation.loose});
  }
  return variation;
}

/// At which ends of the driveline the peak torque is what it is said to be: where the device sits, else where implement
/// or engine bring it. Without a device both ends count.
struct PeakEnds {
  bool tractor;
  bool implement;
};

PeakEnds ends_of(const Case& value, const PeakLoad& peak) {
  if (peak.origin != PeakOrigin::device) return {true, true};
  const bool at_tractor = value.overload->item.place == DevicePlace::tractor_end;
  return {at_tractor, !at_tractor};
}

} // namespace

PeakLoad raised(PeakLoad peak, Angle angle, const std::string& path) {
  if (angle >= degrees(90)) {
    peak.missing.push_back(path);
    peak.torque.reset();
    return peak;
  }
  const Torque straight = *peak.torque;
  peak.torque = joint_peak_couples(straight, angle).output;
  if (straight > Torque{}) peak.rise = *peak.torque / straight;
  return peak;
}

std::vector<std::string> missing_angles(const Case& value, const DrivelineOverRange& range) {
  std::vector<std::string> missing = range.missing;
  for (const auto& [state, path] : range.missing_of_state) missing.push_back(path);
  if (!value.driveline.front_joint_kind) missing.emplace_back("driveline.front_joint_kind");
  return missing;
}

Angle driven_front_angle(const DrivelineOverRange& range) {
  Angle angle{};
  for (const StateExtremes& state : range.states) {
    if (state.driven) angle = std::max(angle, state.front.value);
  }
  return angle;
}

Angle front_cross_angle(const Case& value, Angle joint_angle) {
  return value.driveline.front_joint_kind == JointKind::wide_angle ? 0.5 * joint_angle : joint_angle;
}

PeakLoad peak_at_stub(const Case& value, PeakLoad peak, const DrivelineOverRange& range) {
  if (!peak.missing.empty() || !peak.torque) return peak;
  if (!ends_of(value, peak).implement) return peak;
  peak.rise_missing = missing_angles(value, range);
  for (auto& path : unstated({{value.driveline.rear_joint_kind.has_value(), "driveline.rear_joint_kind"},
                              {value.driveline.yoke_phase.has_value(), "driveline.yoke_phase"}})) {
    peak.rise_missing.push_back(std::move(path));
  }
  const double variation = driven_variation(range);
  // A pair of joints acts as one joint at an equivalent angle; at a right angle it has no finite variation.
  const Angle equivalent = is_finite(variation) ? joint_angle_for_variation(variation) : degrees(90);
  if (peak.origin != PeakOrigin::engine) return raised(std::move(peak), equivalent, "range.turning");
  // The engine's torque arrives at the stub as it is; the implement's lesser peak may be raised above it.
  PeakLoad implement = peak;
  implement.torque = *mean_load(value).torque * *value.implement.peak_factor;
  implement.origin = PeakOrigin::implement;
  implement = raised(std::move(implement), equivalent, "range.turning");
  return !implement.torque || *implement.torque > *peak.torque ? implement : peak;
}

void doubt_unless_rise_known(const std::vector<std::string>& rise_missing, Finding& finding) {
  if (rise_missing.empty() || finding.status >= Status::not_known) return;
  const std::vector<Fact> facts = std::move(finding.facts);
  finding = not_known(finding.check, "rise.unstated", rise_missing);
  finding.facts = facts;
}

PeakLoad peak_between_joints(const Case& value, PeakLoad peak, const DrivelineOverRange& range) {
  peak.rise_missing = missing_angles(value, range);
  if (!value.driveline.rear_joint_kind) peak.rise_missing.emplace_back("driveline.rear_joint_kind");
  peak.missing.insert(peak.missing.end(), peak.rise_missing.begin(), peak.rise_missing.end());
  if (!peak.missing.empty() || !peak.torque) return peak;
  const PeakEnds ends = ends_of(value, peak);
  Angle angle{};
  if (ends.tractor) angle = std::max(angle, front_cross_angle(value, driven_front_angle(range)));
  if (ends.implement) angle = std::max(angle, driven_rear_angle(value, range));
  return raised(std::move(peak), angle, "range.turning");
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
