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

Driveline driveline_of(const Case& value);

/// Place of the pin of a drawbar.
Position pin_of(const Case& value);

/// Tolerances of a trailed driveline: its own, those of the input connection and of the pin.
DrivelineTolerance trailed_tolerance(const Case& value);

ThreePointLinkage linkage_of(const Case& value);

/// Tolerances of a mounted driveline and of its linkage.
MountedTolerance mounted_tolerance(const Case& value);

/// The proved envelope of a mounted implement over some of its positions, within tolerances all at once.
MountedEnvelope mounted_envelope(const Case& value, const MountedTolerance& tolerance, const MountedRange& positions,
                                 const EnvelopeOptions& options);

/// The positions of a mounted implement in a state.
MountedRange positions_of(const Case& value, MachineState state);

/// The attitudes of a trailed implement in a state.
AttitudeRange attitudes_of(const Case& value, MachineState state);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
