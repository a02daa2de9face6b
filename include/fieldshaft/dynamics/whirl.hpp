#pragma once
// Whirling of a telescoping driveline over its whole range of lengths.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/dynamics/beam.hpp>
#include <fieldshaft/shaft/critical.hpp>

#include <optional>

namespace fieldshaft {
inline namespace v0 {

/// One member of a telescope: its tube, counted from its joint centre to the end that slides in or over the other.
struct WhirlMember {
  BeamSegment tube;       ///< its length is that of the whole member
  Mass end_mass{};        ///< yoke, clutch or other mass beside the joint, at least 0
  Length end_mass_from{}; ///< joint centre to that mass, within the member
};

/// How much of the thinner member's bending stiffness counts where the members overlap.
///
/// 0: the members slide and so have play, which bends freely until it is used up; the overlap is then no stiffer than
/// its stiffer tube, while both masses count. 1: a tight fit, both bend as one. A default of this library.
inline constexpr Sourced<double> overlap_stiffness_share{
    0.0, {"a sliding fit has play: only the stiffer tube bends in the overlap", Standing::common_practice}};

/// A third member between the two. It finds its own place between the ends that its slides allow.
struct WhirlMiddle {
  BeamSegment tube;      ///< its length is that of the whole member
  Length front_closed{}; ///< overlap with the front member, fully closed
  Length front_least{};  ///< overlap that a stop keeps in there; 0: it may come apart
  Length rear_closed{};  ///< the same two with the rear member
  Length rear_least{};
};

/// Two members between two joints, or three.
struct WhirlTelescope {
  WhirlMember front;                                    ///< at the tractor
  WhirlMember rear;                                     ///< at the implement
  double overlap_share = overlap_stiffness_share.value; ///< from 0 to 1
  BeamSupport front_support{};                          ///< its place is the front joint; `at` is not used
  BeamSupport rear_support{};                           ///< its place is the rear joint; `at` is not used
  std::optional<WhirlMiddle> middle{};
};

/// The line of a telescope at one joint centre distance, one segment for each run of the same members.
///
///   length        joint centre distance [m], from the longer member's length to less than both members' lengths
///                 together; with a middle member from closed to where both of its slides give no more
///   middle_share  from 0, the middle member as far to the front as its slides let it, to 1, to the rear
/// In an overlap the masses add, and the stiffness is that of the stiffest tube plus overlap_share of the others'.
BeamLine whirl_line(const WhirlTelescope& telescope, Length length, double middle_share = 0.0);

/// Lowest critical speed of a telescope at one joint centre distance [rad/s].
///
/// beam_critical_speeds of whirl_line, of three members the least for five places of the middle one; masses, supports,
/// validity and accuracy as there. The play of the overlap lets the members tip against each other, which no beam
/// shows: a worn telescope is slower than this. Source: stepped beam (no published reduction factor for telescopes was
/// found). Example: 60/52 mm and 48/40 mm of 0.7 m each, as good as no overlap, 207 GPa, 7850 kg/m³: 4218.4 r/min.
AngularSpeed telescope_critical_speed(const WhirlTelescope& telescope, Length length);

/// Where in the range of lengths a telescope comes nearest to whirling.
struct WhirlExtreme {
  Length at{};                 ///< joint centre distance
  AngularSpeed critical_speed; ///< the lowest of the range
  double share;                ///< running speed over it
  Length longest{};            ///< the whole range's end, and
  AngularSpeed at_longest;     ///< the critical speed there: the same unless a mass makes a shorter position worse
};

/// The lowest critical speed over a range of joint centre distances.
///
///   shortest, longest  joint centre distances [m], as whirl_line allows, shortest no more than longest
///   speed              at which the driveline turns at most [rad/s], above 0
/// 33 evenly spaced lengths, then the neighbourhood of the least narrowed to a tenth of a millimetre by the golden
/// section: the critical speed is not taken to fall steadily with the length. Between the lengths it is smooth but for
/// kinks where an overlap begins or ends. Source: as telescope_critical_speed. Example: see the handbook.
WhirlExtreme least_critical_speed(const WhirlTelescope& telescope, Length shortest, Length longest, AngularSpeed speed);

} // namespace v0
} // namespace fieldshaft
