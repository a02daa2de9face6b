// How the yokes stand against each other: what that makes of the pair of joints, and which phase runs smoother.

#include "assess/phase.hpp"
#include "assess/layout.hpp"

#include <fieldshaft/joint.hpp>

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// The joints at one position of a driven state.
struct JointsAt {
  Angle front;
  Angle rear;
  Angle plane_angle;
  PoseIn where;
};

/// So many shares of an interval, both ends included; one of an interval that is a point.
template <class Range> std::vector<double> shares(const Range& range, int count) {
  if (range.low == range.high) return {0.0};
  std::vector<double> shares;
  shares.reserve(static_cast<std::size_t>(count));
  for (int i = 0; i < count; ++i) shares.push_back(static_cast<double>(i) / (count - 1));
  return shares;
}

void add_joints(const Driveline& driveline, const Pose& pose, const PoseIn& where, std::vector<JointsAt>& all) {
  const DrivelineState at = driveline_at(driveline, pose);
  all.push_back({at.front_angle, at.rear_angle, at.plane_angle, where});
}

/// Five turns by three pitches (or five lifts) by three rolls of a state.
void add_positions(const Case& value, MachineState state, std::vector<JointsAt>& all) {
  const Positions positions = positions_in(value, state);
  const Driveline driveline = driveline_of(value);
  const std::vector<double> tilts = is_trailed(value) ? shares(positions.pitch, 3) : shares(positions.lift, 5);
  for (const double turn : shares(positions.yaw, 5)) {
    for (const double roll : shares(positions.roll, 3)) {
      for (const double tilt : tilts) {
        const Placed placed = placed_at(value, positions, {turn, tilt, roll});
        add_joints(driveline, placed.pose, {state, placed.at}, all);
      }
    }
  }
}

/// One phase of the yokes at the position where it is worst.
struct PhaseResult {
  Angle yoke_phase{};
  Angle equivalent{};
  const JointsAt* worst = nullptr;
  double variation() const { return joint_speed_variation(equivalent); }
};

PhaseResult phase_result(const std::vector<JointsAt>& joints, Angle yoke_phase) {
  PhaseResult result{yoke_phase, {}, &joints.front()};
  for (const JointsAt& at : joints) {
    const Angle equivalent = equivalent_joint_angle(at.front, at.rear, yoke_phase - at.plane_angle);
    if (equivalent <= result.equivalent) continue;
    result.equivalent = equivalent;
    result.worst = &at;
  }
  return result;
}

/// Turn of one position of the telescope; without a stated number of them the yokes may stand at any whole 5°.
Angle position_step(const Case& value) {
  const Stated<double>& positions = value.driveline.telescope_positions;
  return positions ? spline_step(static_cast<int>(*positions)) : degrees(5.0);
}

/// The smoothest phase that can be reached from the stated one, the stated one itself where none is clearly smoother.
PhaseResult best_phase(const Case& value, const std::vector<JointsAt>& joints, const PhaseResult& stated) {
  const Angle step = position_step(value);
  const int positions = static_cast<int>(std::round(static_cast<double>(degrees(360.0) / step)));
  // Half a turn changes nothing: of two such positions the nearer counts, and a gain of less than a hundredth is none.
  constexpr double clear_gain = 0.99;
  PhaseResult best = stated;
  for (int i = 1; i < positions; ++i) {
    const int steps = i % 2 == 1 ? (i + 1) / 2 : -i / 2; // 1, -1, 2, -2, ...
    const PhaseResult next = phase_result(joints, stated.yoke_phase + static_cast<double>(steps) * step);
    if (next.equivalent < clear_gain * best.equivalent) best = next;
  }
  return best;
}

bool may_turn(const std::vector<JointsAt>& joints) {
  return std::all_of(joints.begin(), joints.end(),
                     [](const JointsAt& at) { return at.front < degrees(90.0) && at.rear < degrees(90.0); });
}

/// Entries without which the phase says nothing.
std::vector<std::string> phase_missing(const Case& value, const DrivelineOverRange& range) {
  const PtoGear* gear = selected_gear(value);
  std::vector<std::string> missing =
      unstated({{value.driveline.yoke_phase.has_value(), "driveline.yoke_phase"},
                {value.driveline.front_joint_kind.has_value(), "driveline.front_joint_kind"},
                {value.driveline.rear_joint_kind.has_value(), "driveline.rear_joint_kind"},
                {gear != nullptr && gear->pto_speed, "tractor.pto.selected"}});
  for (std::string& path : range.missing_for_all()) missing.push_back(std::move(path));
  return missing;
}

/// A wide-angle joint runs evenly by itself, whatever the phase.
bool has_wide_angle(const DrivelineCase& driveline) {
  return driveline.front_joint_kind == JointKind::wide_angle || driveline.rear_joint_kind == JointKind::wide_angle;
}

/// The joints of all positions looked at; empty where one of them is at a right angle, whose own finding stops.
std::vector<JointsAt> joints_of(const Case& value, const DrivelineOverRange& range) {
  std::vector<JointsAt> joints;
  for (const StateExtremes& state : range.states) {
    if (state.driven) add_positions(value, state.state, joints);
  }
  if (!may_turn(joints)) joints.clear();
  return joints;
}

constexpr Source positions_looked_at{"pair of joints as one, exact, at the corners and middles of each driven state",
                                     Standing::exact};

void add_better(const PhaseResult& stated, const PhaseResult& best, Finding& finding) {
  finding.facts.push_back(fact("best_phase", relative_phase(best.yoke_phase, Angle{})));
  finding.facts.push_back({"best_variation", Amount{best.variation(), Kind::share}});
  finding.facts.push_back(fact("turn", best.yoke_phase - stated.yoke_phase));
  finding.advice = {"phase.set"};
}

/// What the telescope would be like put together one position wrong.
void add_one_wrong(const Case& value, const std::vector<JointsAt>& joints, const PhaseResult& stated,
                   Finding& finding) {
  const Angle step = position_step(value);
  const PhaseResult left = phase_result(joints, stated.yoke_phase - step);
  const PhaseResult right = phase_result(joints, stated.yoke_phase + step);
  const PhaseResult& wrong = left.equivalent > right.equivalent ? left : right;
  finding.facts.push_back(fact("step", step));
  finding.facts.push_back({"wrong_variation", Amount{wrong.variation(), Kind::share}});
  finding.facts.push_back(fact("wrong_equivalent", wrong.equivalent));
}

} // namespace

std::optional<UnevenRunning> uneven_running(const Case& value, const DrivelineOverRange& range) {
  const DrivelineCase& line = value.driveline;
  const bool plain = line.front_joint_kind == JointKind::plain && line.rear_joint_kind == JointKind::plain;
  if (!line.yoke_phase || !plain || !range.missing_for_all().empty()) return std::nullopt;
  const std::vector<JointsAt> joints = joints_of(value, range);
  if (joints.empty()) return std::nullopt;
  const PhaseResult stated = phase_result(joints, *line.yoke_phase);
  const PhaseResult best = best_phase(value, joints, stated);
  return UnevenRunning{stated.variation(), relative_phase(best.yoke_phase, Angle{}), best.variation()};
}

void check_phase(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  if (has_wide_angle(value.driveline)) {
    findings.not_examined(Check::yoke_phase);
    return;
  }
  std::vector<std::string> missing = phase_missing(value, range);
  if (!missing.empty()) {
    findings.not_examined(Check::yoke_phase, std::move(missing));
    return;
  }
  const std::vector<JointsAt> joints = joints_of(value, range);
  if (joints.empty()) {
    findings.not_examined(Check::yoke_phase);
    return;
  }
  const PhaseResult stated = phase_result(joints, *value.driveline.yoke_phase);
  const PhaseResult best = best_phase(value, joints, stated);
  const bool better = best.yoke_phase != stated.yoke_phase;
  const bool stepped = value.driveline.telescope_positions.value_or(0.0) > 2.0;
  const double pto_speed = selected_gear(value)->pto_speed->value();
  const bool beyond_guide = stated.variation() * pto_speed * pto_speed > torsional_excitation_guide.value.value();
  const char* reason = better ? "phase.better" : stepped ? "phase.best_of_positions" : "phase.best";
  // How uneven the best phase is, is the matter of joint.speed_variation.
  Finding finding = make_finding(Check::yoke_phase, better && beyond_guide ? Status::caution : Status::ok, reason);
  finding.value = Amount{stated.variation(), Kind::share};
  finding.basis = {positions_looked_at, torsional_excitation_guide.source};
  finding.state = stated.worst->where.state;
  finding.pose = stated.worst->where.pose;
  finding.facts = {fact("phase", stated.yoke_phase), fact("front", stated.worst->front),
                   fact("rear", stated.worst->rear), fact("equivalent", stated.equivalent)};
  if (better) add_better(stated, best, finding);
  if (!better && stepped) add_one_wrong(value, joints, stated, finding);
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
