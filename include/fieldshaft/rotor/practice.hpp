#pragma once
// Figures for rotors and thrown objects as the texts state them: lines to compare with, not limits of the library.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/units.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {

/// The machines of which the texts speak.
enum class RotorMachine {
  lawn_or_turf_mower,
  rotary_cutter,      ///< PTO-driven, shreds residue, grass and brush
  farm_mower,         ///< unspecified agricultural mower
  disc_or_drum_mower, ///< for forage
  flail_mower,
  mulcher, ///< PTO-driven, vertical rotors
};

/// A tip speed that some text draws as a line, and the machines for which it draws it.
struct TipSpeedLine {
  RotorMachine scope;
  Speed speed;
  const char* remark;
  Source source;
};

/// Every line known. All of them are for lawn and turf mowers. No text was found that limits the tip speed of a
/// PTO-driven farm cutter (the farm standards test thrown objects and strength instead), so that none of these is a
/// legal limit there. A PTO mulcher has been run, in a published test, above the first of them.
inline constexpr std::array tip_speed_lines = {
    TipSpeedLine{RotorMachine::lawn_or_turf_mower,
                 feet_per_minute(19000),
                 "in force since 1968-08-01",
                 {"ANSI B71.1, powered lawn mowers", Standing::quoted}},
    TipSpeedLine{RotorMachine::lawn_or_turf_mower,
                 feet_per_minute(19000),
                 "walk-behind mowers used by employees",
                 {"29 CFR 1910.243(e)(3)(vi)", Standing::from_memory}},
    TipSpeedLine{RotorMachine::lawn_or_turf_mower,
                 metres_per_second(96.5),
                 "remembered, unsure",
                 {"ISO 5395:1990, lawn mowers", Standing::from_memory}},
    TipSpeedLine{RotorMachine::lawn_or_turf_mower,
                 feet_per_minute(21000),
                 "before 1968-08-01; conflicts with 23,000",
                 {"earlier ANSI B71.1", Standing::quoted}},
    TipSpeedLine{RotorMachine::lawn_or_turf_mower,
                 feet_per_minute(23000),
                 "earlier figure of another text; conflicts with 21,000",
                 {"earlier ANSI B71.1", Standing::quoted}},
};

/// The line that is quoted most, 19,000 ft/min = 96.52 m/s: lawn and turf mowers only.
constexpr const TipSpeedLine& turf_tip_speed_line() noexcept { return tip_speed_lines[0]; }

/// Tip speeds that a text calls usual, or has measured.
struct TipSpeedRange {
  RotorMachine machine;
  Speed low;
  Speed high;
  Source source;
};

/// "More than 150 mph" and "as fast as 200 mph" are single figures: low and high are equal.
inline constexpr std::array usual_tip_speeds = {
    TipSpeedRange{RotorMachine::rotary_cutter,
                  miles_per_hour(150),
                  miles_per_hour(150),
                  {"LSU AgCenter: may be more than 150 mph", Standing::published}},
    TipSpeedRange{RotorMachine::farm_mower,
                  miles_per_hour(200),
                  miles_per_hour(200),
                  {"safety text: as fast as 200 mph", Standing::published}},
    TipSpeedRange{RotorMachine::lawn_or_turf_mower,
                  miles_per_hour(100),
                  miles_per_hour(200),
                  {"Virginia Tech BSE-42: tip or debris speed", Standing::published}},
    TipSpeedRange{RotorMachine::mulcher,
                  metres_per_second(79),
                  metres_per_second(105),
                  {"Cedik, Pexa, Prazan: test of a PTO mulcher at 79, 89 and 105 m/s", Standing::published}},
    TipSpeedRange{RotorMachine::disc_or_drum_mower,
                  metres_per_second(70),
                  metres_per_second(74.7),
                  {"trade press: 1.4 m per turn at 3000 to 3200 r/min, over 160 mph", Standing::published}},
    TipSpeedRange{RotorMachine::disc_or_drum_mower,
                  metres_per_second(71),
                  metres_per_second(84),
                  {"textbook range, unsure", Standing::from_memory}},
    TipSpeedRange{RotorMachine::flail_mower,
                  metres_per_second(46),
                  metres_per_second(54),
                  {"textbook range, unsure", Standing::from_memory}},
    TipSpeedRange{RotorMachine::rotary_cutter,
                  metres_per_second(50),
                  metres_per_second(75),
                  {"textbook range, unsure", Standing::from_memory}},
};

/// A band of blade speeds below which grass is no longer cut cleanly by impact.
struct CuttingSpeed {
  Speed low;
  Speed high;
  const char* meaning;
  Source source;
};

inline constexpr std::array cutting_speeds = {
    CuttingSpeed{metres_per_second(20),
                 metres_per_second(40),
                 "energy to cut pasture stalk is least between them and rises below and above",
                 {"Banno and Ogawa, J. JSAM 40(4), 1979, 517-525", Standing::published}},
    CuttingSpeed{metres_per_second(15),
                 metres_per_second(30),
                 "critical speed for free-standing grass stems",
                 {"O'Dogherty and Gale, J. agric. Engng Res., 1986 and 1991", Standing::from_memory}},
};

/// How far objects are thrown, or bystanders are told to keep away. The texts conflict; the machine's own manual comes
/// before them, and the published distance is an "at least".
inline constexpr Sourced<Length> published_throwing_distance{
    feet(300), {"LSU AgCenter: thrown more than 300 feet and still able to injure", Standing::published}};
inline constexpr Sourced<Length> shortest_printed_exclusion{
    metres(15), {"one operator's manual; less than objects are known to fly", Standing::common_practice}};

/// The fastest object a text reports: nearly 400 ft/s from a blade of about 200 mph (faster than the blade).
inline constexpr Sourced<Speed> published_object_speed{of(400.0, unit::foot_per_second),
                                                       {"safety text on mowers", Standing::published}};

// For the flight of an object. ---------------------------------------------------------------------------------
inline constexpr Sourced<double> ball_drag{
    0.47, {"smooth ball, Re 1e3 to 2e5, fluid mechanics texts", Standing::from_memory}};
inline constexpr Sourced<double> tumbling_stone_drag_low{0.8, {"Hoerner, fluid-dynamic drag", Standing::from_memory}};
inline constexpr Sourced<double> tumbling_stone_drag_high{1.2, {"Hoerner, fluid-dynamic drag", Standing::from_memory}};
inline constexpr Sourced<Density> sea_level_air{kilograms_per_cubic_metre(1.225),
                                                {"standard atmosphere", Standing::from_memory}};
inline constexpr Sourced<Density> stone_density{kilograms_per_cubic_metre(2650),
                                                {"quartz stone", Standing::from_memory}};

/// An energy at which explosives safety calls a fragment hazardous: serious injury; an eye needs far less.
inline constexpr Sourced<Energy> hazardous_fragment_energy{
    joules(79), {"US DDESB TP-12 (58 ft·lbf), explosives safety", Standing::quoted}};

/// How long a person takes to react. Texts say 0.75 to 1 s.
inline constexpr Sourced<Time> reaction_time{seconds(0.75),
                                             {"Schwab, Miller, Shouse, Iowa State: 3/4 to 1 s", Standing::published}};

} // namespace v0
} // namespace fieldshaft
