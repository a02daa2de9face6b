#pragma once
// The limits of joint angles and telescope: what schools allow, and what the case states instead.

#include "assess/context.hpp"

#include <fieldshaft/driveline.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

constexpr Source rigid_model{"geometry of a rigid machine on the stated measurements", Standing::exact};

constexpr Source lock_as_stated{"angle at which the joint's yokes touch, as the case states it", Standing::given};

/// A limit that the case states replaces the practice where it is stricter. Where it is laxer than every school, what
/// lies between the loosest school and it is a caution: the owner may know the manual, the practice does not agree.
LimitBand with_stated(LimitBand practice, Amount stated, const char* name);

/// The angle that a state allows a joint of a kind: driven states by the practice for a turning shaft.
LimitBand angle_band(const Case& value, MachineState state, bool driven, JointKind kind);

/// No rule allows a joint to bend past the angle at which its yokes touch.
LimitBand up_to_lock(LimitBand band, const Stated<Angle>& lock);

/// One slide of the telescope as the case states it.
struct CaseSlide {
  MeasuredLength overlap;
  Stated<Length> travel;
  const char* name; ///< phrase
};

/// The one slide of two members, or both of three; their entries have to be stated.
std::vector<CaseSlide> slides_of(const Case& value);

/// The telescope; each measurement at the end of its tolerance that leaves less overlap, or as stated.
Telescope telescope_of(const Case& value, bool worst);

/// Entries of the telescope that are not stated.
std::vector<std::string> telescope_entries_missing(const DrivelineCase& driveline);

/// Rules in use for the overlap at the longest position; the greatest is ok, below the smallest nobody allows.
LimitBand overlap_band(const Case& value, Length closed_overlap);

/// Rules in use for the room that is left at the shortest position.
LimitBand clearance_band(const Case& value);

/// How unevenly the implement's shaft may turn: the guide values for its angular acceleration, of passenger-car
/// practice, over the square of the PTO speed.
LimitBand variation_band(AngularSpeed speed);

/// Peak acceleration of the shaft between the joints.
LimitBand inertia_band();

/// All limits of a driveline in one state: where the first rule objects, and where the last one does. Each measurement
/// of the telescope stands at the end of its tolerance that makes the answer worse.
struct StateLimits {
  DrivelineLimits strictest;
  DrivelineLimits loosest;
  std::vector<Source> basis;
};

/// Entries without which a driveline has no such limits.
std::vector<std::string> limits_missing(const Case& value);

StateLimits state_limits(const Case& value, MachineState state, bool driven);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
