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

/// Where a mounted implement stands, on its top link or on its own wheels.
Pose mounted_pose_of(const Case& value, const LinkagePosition& position, bool slack);

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
