#pragma once
// What is proved of a driveline over the positions of each state: the certificate of an assessment, as numbers.

#include <fieldshaft/assess/pose.hpp>
#include <fieldshaft/units/kind.hpp>

#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// The measurement whose tolerance moves an extreme most.
struct MattersMost {
  std::string entry; ///< path of the case document
  Amount moves;      ///< by how much its tolerance alone moves the extreme
};

/// An extreme of the driveline over the positions of a state.
struct StateExtreme {
  Amount bound;                    ///< proved for the rigid model: no position of the state is worse
  Amount attained;                 ///< by a driveline within the tolerances, at `pose`
  Amount gap;                      ///< between the two
  PoseAt pose;                     ///< where it is attained
  bool within_gap = false;         ///< the search ended because the wanted gap was reached
  std::optional<MattersMost> most; ///< empty where no tolerance moves it, or where it is not followed
};

/// The lowest and highest value of one of the things that a state moves.
struct AmountRange {
  Amount low;
  Amount high;
};

/// A measurement of the case as it went into a range.
struct MeasuredEntry {
  std::string entry; ///< path of the case document
  Amount value;
  Amount tolerance;
};

/// What was not stated but follows from what was measured, every tolerance included.
struct RangeOrigin {
  std::string of; ///< "yaw", "pitch", "roll" or "top_link"
  AmountRange range;
  std::vector<MeasuredEntry> from;
};

/// How the envelopes take wide-angle joints: as two crosses each, or, where a coupling yoke is not stated, as bending
/// in one point.
struct WideAngleJoints {
  std::optional<Amount> front_yoke; ///< its upper end within the tolerance; empty: a plain joint, or not stated
  std::optional<Amount> rear_yoke;
  bool all_stated = true;
};

/// The driveline over one state. Front and rear angle, longest and shortest hold for every measurement within its
/// tolerance at once; difference and speed variation as noted in the handbook.
struct StateEnvelope {
  MachineState state = MachineState::any;
  bool driven = false; ///< the PTO turns
  AmountRange yaw;
  std::optional<AmountRange> pitch; ///< trailed
  AmountRange roll;
  std::optional<Amount> roll_at_full_turn; ///< share of the roll that is left there, where it is less
  std::optional<AmountRange> lift;         ///< mounted
  bool slack_top_link = false;             ///< mounted, on its own wheels
  bool steers_about_pivot = false;         ///< semi-mounted: the yaw is the turn about its pivot
  std::vector<RangeOrigin> origins;        ///< of what follows from measurements
  StateExtreme front_angle;
  StateExtreme rear_angle;
  StateExtreme difference;
  StateExtreme longest;
  StateExtreme shortest;
  std::optional<StateExtreme> speed_variation;
};

/// A branch over its folding, while it turns or with the PTO at rest; its poses are those of the folding part about
/// its hinge.
struct BranchEnvelopeOfCase {
  std::string name;
  bool driven = true;
  AmountRange fold;
  StateExtreme front_angle;
  StateExtreme rear_angle;
  StateExtreme longest;
  StateExtreme shortest;
};

/// How far one may turn at one pitch before the first rule objects, over the whole roll of the state and every
/// measurement within its tolerance; proved for that pitch.
struct TurnAtPitch {
  Angle pitch{};
  Angle left{};
  Angle right{};
};

} // namespace v0
} // namespace fieldshaft
