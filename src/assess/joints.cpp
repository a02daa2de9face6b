// Yokes that touch, and a wide-angle joint whose centre is not over the hitch pin.

#include "assess/checks.hpp"
#include "assess/geometry.hpp"
#include "assess/layout.hpp"
#include "assess/limits.hpp"

#include <fieldshaft/driveline/wide_angle.hpp>

#include <algorithm>
#include <limits>
#include <optional>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// The angle of a joint over one state against its lock.
Finding against_lock(const StateExtremes& extremes, const WorstCase<Angle>& angle, Angle lock, const char* end) {
  const LimitBand band{amount_of(lock), amount_of(lock), LimitSense::at_most, {lock_as_stated, rigid_model}};
  Finding finding = compare(Check::joint_lock, amount_of(angle.value), band, "lock.within");
  if (finding.status != Status::ok) {
    finding.reason = "lock.reached";
    finding.advice = {"lock.keep_off"};
  }
  finding.state = extremes.state;
  finding.pose = angle.pose;
  finding.facts = {fact("end", PhraseId{end})};
  return finding;
}

/// The joint and state that come nearest to a lock; at rest too, for yokes break then as well.
std::optional<Finding> nearest_lock(const DrivelineCase& line, const DrivelineOverRange& range) {
  std::optional<Finding> nearest;
  const auto take = [&nearest](Finding finding) {
    if (!nearest || finding.margin < nearest->margin) nearest = std::move(finding);
  };
  for (const StateExtremes& state : range.states) {
    if (line.front_joint_lock) take(against_lock(state, state.front, *line.front_joint_lock, "joint.front"));
    if (line.rear_joint_lock) take(against_lock(state, state.rear, *line.rear_joint_lock, "joint.rear"));
  }
  return nearest;
}

void check_lock(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  const DrivelineCase& line = value.driveline;
  const std::vector<std::string> locks = unstated({{line.front_joint_lock.has_value(), "driveline.front_joint_lock"},
                                                   {line.rear_joint_lock.has_value(), "driveline.rear_joint_lock"}});
  if (locks.size() == 2) {
    findings.not_examined(Check::joint_lock, locks);
    return;
  }
  std::optional<Finding> nearest = nearest_lock(line, range);
  std::vector<std::string> missing = range.missing_for_all();
  missing.insert(missing.end(), locks.begin(), locks.end());
  if (!missing.empty() && (!nearest || nearest->status != Status::stop)) {
    findings.add(not_known(Check::joint_lock, "lock.unstated", missing));
    return;
  }
  findings.add(std::move(*nearest));
}

/// Where the wide-angle joint and the other one stand from the pin, seen from above with the machine straight.
struct Centre {
  const char* end = "";
  Length beyond{}; ///< of the wide-angle joint past the pin, away from the other one
  Length aside{};
  Length other{}; ///< pin to the other joint

  bool is_ahead() const { return (beyond > Length{}) == (std::string_view(end) == in_front); }
  static constexpr const char* in_front = "joint.front";
};

Length distance_of(const Centre& centre) {
  return math::sqrt(centre.beyond * centre.beyond + centre.aside * centre.aside);
}

/// What a machine turns about: its pin, or its steering pivot in the middle of the lift of a state.
struct TurnsAbout {
  Position in_tractor;
  Position in_implement;
};

TurnsAbout turns_about(const Case& value, MachineState state) {
  if (is_trailed(value)) return {pin_of(value), Position()};
  const Pose pose = placed_at(value, positions_in(value, state), {0.5, 0.5, 0.5}).pose;
  const Position pivot = steering_pivot_of(value);
  return {in_tractor(pose, pivot), pivot};
}

/// The wide-angle joint of the two, or the one whose centre is nearer to the pin.
std::optional<Centre> centre_of(const Case& value, MachineState state) {
  const Driveline line = driveline_of(value);
  const TurnsAbout about = turns_about(value, state);
  const Position front = front_joint_position(line) - about.in_tractor; // straight: both frames have one direction
  const Position rear = rear_joint_position(line) - about.in_implement;
  const Centre at_front{Centre::in_front, front.forward(), math::abs(front.left()), -rear.forward()};
  const Centre at_rear{"joint.rear", -rear.forward(), math::abs(rear.left()), front.forward()};
  if (line.wide_angle_front && line.wide_angle_rear) {
    return distance_of(at_front) <= distance_of(at_rear) ? at_front : at_rear;
  }
  if (line.wide_angle_front) return at_front;
  if (line.wide_angle_rear) return at_rear;
  return std::nullopt;
}

/// Off by this much the far joint of a common trailed machine bends by two or three degrees in its sharpest turn.
constexpr Sourced<Length> usual_offset{
    millimetres(50.0),
    {"centre over the pin; 50 mm is a rule of thumb and default of this library", Standing::common_practice}};

LimitBand centre_band(const Case& value) {
  const LimitBand band{amount_of(usual_offset.value),
                       {std::numeric_limits<double>::infinity(), Kind::length},
                       LimitSense::at_most,
                       {usual_offset.source, rigid_model}};
  if (!value.limits.wide_angle_centre) return band;
  return with_stated(band, amount_of(*value.limits.wide_angle_centre), "distance as the case states it");
}

Angle greatest_turn(const Case& value, const DrivelineOverRange& range) {
  Angle greatest{};
  for (const StateExtremes& state : range.states) {
    const AngleRange yaw = positions_in(value, state.state).yaw;
    greatest = std::max({greatest, -yaw.low, yaw.high});
  }
  return greatest;
}

Finding centre_finding(const Case& value, const Centre& centre, Angle turn) {
  const Length off = distance_of(centre);
  if (!(off < centre.other)) return not_known(Check::wide_angle_centre, "centre.beyond", {});
  const Length signed_off = centre.beyond < Length{} ? -off : off;
  Finding finding = compare(Check::wide_angle_centre, amount_of(off), centre_band(value), "centre.off");
  if (!is_finite(finding.limits ? finding.limits->stop.si : 0.0)) finding.limits.reset(); // never a stop of its own
  finding.facts = {fact("end", PhraseId{centre.end}),
                   fact("along", math::abs(centre.beyond)),
                   fact("side", PhraseId{centre.is_ahead() ? "centre.ahead" : "centre.behind"}),
                   fact("aside", centre.aside),
                   fact("about", PhraseId{is_semi_mounted(value) ? "centre.pivot" : "centre.pin"}),
                   fact("turn", turn),
                   fact("far", wide_angle_far_angle(signed_off, centre.other, turn))};
  if (finding.status != Status::ok) finding.advice = {"centre.move"};
  return finding;
}

void check_centre(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  const DrivelineCase& line = value.driveline;
  const bool one_wide = line.front_joint_kind == JointKind::wide_angle || line.rear_joint_kind == JointKind::wide_angle;
  const bool both_known = line.front_joint_kind && line.rear_joint_kind;
  const bool turns = value.tractor.hitch.kind != HitchKind::three_point || is_semi_mounted(value);
  if (!turns || (both_known && !one_wide)) {
    findings.not_examined(Check::wide_angle_centre);
    return;
  }
  std::vector<std::string> missing = range.states.empty() ? range.missing_for(MachineState::turning) : range.missing;
  for (auto& path : unstated({{line.front_joint_kind.has_value(), "driveline.front_joint_kind"},
                              {line.rear_joint_kind.has_value(), "driveline.rear_joint_kind"}})) {
    missing.push_back(std::move(path));
  }
  const std::optional<Centre> centre =
      missing.empty() && !range.states.empty() ? centre_of(value, range.states.front().state) : std::nullopt;
  findings.add(centre ? centre_finding(value, *centre, std::min(greatest_turn(value, range), degrees(179.0)))
                      : not_known(Check::wide_angle_centre, "centre.unstated", missing));
}

} // namespace

void check_joints(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  check_lock(value, range, findings);
  check_centre(value, range, findings);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
