// Wide-angle joints and yokes in line.

#include "advise/proposals.hpp"
#include "assess/bearing.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

/// The largest coupling yoke that the offered joint may have, so that its telescope can be judged before it is bought.
constexpr Length offered_yoke = millimetres(120.0);

void propose_wide_angle(const Situation& now, bool front, bool rear, Proposals& proposals) {
  const DrivelineCase& line = now.value.driveline;
  std::vector<Fact> facts;
  if (!line.joint_rating) return; // a joint of unknown strength cannot be ordered
  facts.push_back(assessing::fact("rating", *line.joint_rating));
  if (line.bearing_rating && line.bearing_arm) { // its bearings are judged like those of the plain joint
    facts.push_back(assessing::fact("bearings", *line.bearing_rating));
    facts.push_back(assessing::fact("arm", *line.bearing_arm));
  }
  facts.push_back(assessing::fact("yoke", offered_yoke));
  if (front && line.front_joint_kind == JointKind::plain) {
    add(proposals, {ChangeKind::wide_angle_front, "", facts, [](Case& c) {
                      c.driveline.front_joint_kind = JointKind::wide_angle;
                      c.driveline.front_coupling_yoke = MeasuredLength{offered_yoke, {}};
                      c.driveline.front_joint_lock.reset(); // another joint
                    }});
  }
  if (rear && line.rear_joint_kind == JointKind::plain) {
    add(proposals, {ChangeKind::wide_angle_rear, "", facts, [](Case& c) {
                      c.driveline.rear_joint_kind = JointKind::wide_angle;
                      c.driveline.rear_coupling_yoke = MeasuredLength{offered_yoke, {}};
                      c.driveline.rear_joint_lock.reset();
                    }});
  }
}

void propose_yokes_in_line(const Situation& now, Proposals& proposals) {
  const auto& phase = now.value.driveline.yoke_phase;
  if (!phase || *phase == Angle{}) return;
  add(proposals, {ChangeKind::align_yokes, "", {assessing::fact("phase", *phase)}, [](Case& c) {
                    c.driveline.yoke_phase = Angle{};
                  }});
}

} // namespace

void propose_joints(const Situation& now, const Finding& finding, Proposals& proposals) {
  switch (finding.check) {
  case Check::working_angle:
  case Check::turning_angle:
  case Check::transport_angle: propose_wide_angle(now, true, true, proposals); break;
  case Check::yoke_phase: propose_yokes_in_line(now, proposals); break;
  case Check::angle_difference:
  case Check::speed_variation:
  case Check::joint_torque_swing:
  case Check::pulsing_torque:
    propose_yokes_in_line(now, proposals);
    propose_wide_angle(now, true, true, proposals);
    break;
  case Check::inertia_excitation:
  case Check::root_torsion_at_angle:
  case Check::fatigue_life:
  case Check::tube_torsion:
  case Check::joint_rating: propose_wide_angle(now, true, false, proposals); break;
  case Check::joint_bearing_life:
    if (assessing::life_goes_by_positions(now.value)) propose_wide_angle(now, true, true, proposals);
    break;
  default: break;
  }
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
