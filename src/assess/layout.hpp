#pragma once
// What a case says of the places of stub, hitch, input connection and joints, and of the positions in each state, as
// the geometry takes it.
//
// Everything here but the lists of missing entries wants the entries to be stated: ask `layout_missing` and
// `positions_missing` first.

#include "assess/positions.hpp"

#include <fieldshaft/driveline.hpp>
#include <fieldshaft/hitch.hpp>
#include <fieldshaft/hitch/linkage.hpp>

#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Entries without which no position of the driveline can be found.
std::vector<std::string> layout_missing(const Case& value);

/// From the ends of the links, which carry the frame of the implement, to its own hitch points.
Position coupler_offset(const Case& value);

Driveline driveline_of(const Case& value);

/// By how much the input shaft may lean out of the direction that the case states, within the tolerances.
Angle input_lean(const InputConnection& input);

/// Entries of a place that are not stated.
std::vector<std::string> place_missing(const Place& place, const std::string& path);

Position position_of(const Place& place);

/// Kinds, places and phase of the joints of anything that states them as a driveline does.
template <class Stating> Driveline joints_of(const Stating& line) {
  Driveline driveline;
  driveline.wide_angle_front = line.front_joint_kind == JointKind::wide_angle;
  driveline.wide_angle_rear = line.rear_joint_kind == JointKind::wide_angle;
  driveline.yoke_phase = line.yoke_phase.value_or(Angle{});
  driveline.front_joint = line.front_joint->value;
  driveline.rear_joint = line.rear_joint->value;
  return driveline;
}

/// The driveline behind an intermediate bearing, in the implement frame; its entries have to be stated. The bearing's
/// shaft is straight: it leaves rearwards in the line in which implement.input says that it points forward.
Driveline fixed_section_of(const Case& value, const FixedSection& section);

/// Place of the pin of a drawbar.
Position pin_of(const Case& value);

/// Tolerances of a trailed driveline: its own, those of the input connection and of the pin.
DrivelineTolerance trailed_tolerance(const Case& value);

/// The top link as stated, or with the length that makes the implement stand level at the stated lift.
MeasuredLength top_link_of(const Case& value);

/// A quick coupler is reckoned with the input connection: the implement's frame stands at the ends of the links.
ThreePointLinkage linkage_of(const Case& value);

/// The wheels that carry a machine while its top link is slack; their entries have to be stated.
SupportWheel support_wheel_of(const Case& value);

/// Of steering, from the ends of the links; its entries have to be stated.
Position steering_pivot_of(const Case& value);

/// Where a machine on the links stands: at a position of theirs, turned and rolled besides, on its top link or on its
/// own wheels. Its frame has its origin over the lower hitch points while it is straight.
Pose pose_on_links(const Case& value, const LinkagePosition& position, Stated<Angle> yaw, Stated<Angle> roll,
                   bool slack);

/// Tolerances of a mounted driveline and of its linkage.
MountedTolerance mounted_tolerance(const Case& value);

/// The proved envelope of a mounted implement over some of its positions, within tolerances all at once.
MountedEnvelope mounted_envelope(const Case& value, const MountedTolerance& tolerance, const MountedRange& positions,
                                 bool slack, const EnvelopeOptions& options);

/// A place within the positions of a state: of each of its intervals a share from 0, the low end, to 1.
struct Shares {
  double turn = 0.5; ///< yaw or sway
  double tilt = 0.5; ///< pitch or lift
  double roll = 0.5; ///< roll or height difference
};

/// Where the implement stands there, and how a report calls it.
struct Placed {
  Pose pose;
  PoseAt at;
};

Placed placed_at(const Case& value, const Positions& positions, const Shares& shares);

/// The positions of a mounted implement in a state.
MountedRange positions_of(const Case& value, MachineState state);

/// The attitudes of a trailed implement in a state.
AttitudeRange attitudes_of(const Case& value, MachineState state);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
