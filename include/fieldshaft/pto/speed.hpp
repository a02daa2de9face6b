#pragma once
// PTO speeds: nominal ones, how far they may stray under load, where over-speed guards act, and the sense of turning.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/source.hpp>
#include <fieldshaft/units.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {

/// The nominal speeds in use today. Until 1958 the first was 536 r/min (published, a teaching site).
inline constexpr std::array nominal_pto_speeds = {
    Sourced<AngularSpeed>{rpm(540), {"ISO 500-1, types of PTO", Standing::published}},
    Sourced<AngularSpeed>{rpm(1000), {"ISO 500-1, types of PTO", Standing::published}},
    Sourced<AngularSpeed>{rpm(1300), {"ISO 500-1:2014, type 4", Standing::published}},
};

/// How far a PTO may stray from its nominal speed under load.
struct PtoSpeedTolerance {
  AngularSpeed nominal;
  AngularSpeed tolerance;
  Source source;
};

inline constexpr Source tractor_code_speeds{"ILO code of practice on tractors, cl. 8.2.2", Standing::published};
inline constexpr std::array pto_speed_tolerances = {
    PtoSpeedTolerance{rpm(540), rpm(10), tractor_code_speeds},
    PtoSpeedTolerance{rpm(1000), rpm(25), tractor_code_speeds},
};

/// Where a guard against over-speed acts, as a text states it.
struct OverspeedGuard {
  AngularSpeed nominal;     ///< the PTO speed that is meant
  AngularSpeed printed_for; ///< the speed for which the text prints it
  AngularSpeed guard;
  Source source;
};

/// Every statement known. The published text prints design speeds (600, 1100) that are no PTO speeds: misprints,
/// most likely, of 540 and 1000. An implement's own manual comes before all of these.
inline constexpr std::array pto_overspeed_guards = {
    OverspeedGuard{rpm(540), rpm(600), rpm(630), tractor_code_speeds},
    OverspeedGuard{rpm(1000), rpm(1100), rpm(1150), tractor_code_speeds},
    OverspeedGuard{rpm(540), rpm(540), rpm(630), {"ANSI/ASABE AD500-1 and ASAE S203", Standing::from_memory}},
    OverspeedGuard{rpm(1000), rpm(1000), rpm(1170), {"ANSI/ASABE AD500-1 and ASAE S203", Standing::from_memory}},
    OverspeedGuard{rpm(540), rpm(540), rpm(630), {"operator's manuals of one maker", Standing::common_practice}},
    OverspeedGuard{rpm(1000), rpm(1000), rpm(1170), {"operator's manuals of one maker", Standing::common_practice}},
};

/// A PTO in the economy gear is allowed up to this speed by the same manuals: 27 % above 540.
inline constexpr Sourced<AngularSpeed> economy_overspeed_guard{
    rpm(687), {"operator's manuals of one maker", Standing::common_practice}};

/// The share of the rated engine speed at which the PTO has its standard speed, as one older standard states it.
inline constexpr Sourced<double> standard_speed_engine_share{
    0.8, {"DIN 9611, February 1974 (scan, read by machine)", Standing::published}};

enum class Rotation { clockwise, counter_clockwise };

/// Seen from behind the tractor. A ground-driven PTO turns the other way in reverse.
inline constexpr Sourced<Rotation> pto_rotation_from_behind{Rotation::clockwise,
                                                            {"ISO 500-1:2014, cl. 4.2", Standing::published}};

/// The widest of the published tolerances as a fraction: 25 of 1000 r/min. It decides here whether a speed counts as a
/// nominal one; for 1300 r/min, whose tolerance is not known, and for 540 that is common sense, not a source.
inline constexpr double nominal_speed_band = 0.025;

/// Whether a speed is a nominal speed, within the band above. Both above 0.
constexpr bool is_nominal_speed(AngularSpeed speed, AngularSpeed nominal) {
  check::positive(speed.value(), {"is_nominal_speed", "speed", "rad/s"});
  check::positive(nominal.value(), {"is_nominal_speed", "nominal", "rad/s"});
  constexpr double rounding = 1e-12; // so that the ends of the band belong to it
  const double off = static_cast<double>(speed / nominal) - 1.0;
  return off >= -nominal_speed_band - rounding && off <= nominal_speed_band + rounding;
}

} // namespace v0
} // namespace fieldshaft
