#pragma once
// How high overload devices are usually set. None of this is a standard: the driveline standards leave the settings of
// torque limiters and overrun devices out on purpose.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/source.hpp>
#include <fieldshaft/overload/band.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {

/// Devices that limit the torque.
enum class LimiterKind { slip_clutch, shear_bolt, cut_out_clutch };

/// The torque of which a practice speaks.
enum class SettingBasis {
  mean_torque,  ///< of the implement at work
  rated_torque, ///< that belongs to the nominal rating of the driveline
};

/// A usual setting as a multiple of a torque.
struct SettingPractice {
  LimiterKind limiter;
  SettingBasis basis;
  double low;
  double high;
  Source source;
};

/// Every practice known. Whatever the multiple, the window between work and strength decides (device_window).
inline constexpr std::array setting_practices = {
    SettingPractice{LimiterKind::slip_clutch,
                    SettingBasis::mean_torque,
                    1.5,
                    2.0,
                    {"friction clutch about 1.5 to 2 times the mean torque", Standing::from_memory}},
    SettingPractice{LimiterKind::slip_clutch,
                    SettingBasis::rated_torque,
                    3.0,
                    3.0,
                    {"operator manual of a tiller: slips at 3 times the nominal rating", Standing::common_practice}},
    SettingPractice{LimiterKind::shear_bolt,
                    SettingBasis::mean_torque,
                    2.0,
                    3.0,
                    {"supplier's text: 2 to 3 times the mean torque, not above the greatest torque of the driveline",
                     Standing::common_practice}},
    SettingPractice{LimiterKind::cut_out_clutch,
                    SettingBasis::mean_torque,
                    2.0,
                    2.5,
                    {"cut-out clutch about 2 to 2.5 times the mean torque", Standing::from_memory}},
};

/// Why there is no standard figure.
inline constexpr Source setting_standards{
    "EN 12965, ISO 5673-1 and ASABE S604.3 do not deal with the mechanical characteristics of torque limiters",
    Standing::published};

/// Where a limiter or overrun device belongs: at the implement end of the driveline.
inline constexpr Source implement_end_source{"trade association checklist, fuller copy in an operator manual",
                                             Standing::quoted};

/// Settings that a practice amounts to [N·m].
///
///   practice  one of setting_practices
///   torque    mean or rated, as the practice says [N·m], at least 0
/// Example: shear bolt for a mean torque of 400 N·m: 800 to 1200 N·m.
constexpr TorqueBand practice_band(const SettingPractice& practice, Torque torque) {
  check::not_negative(torque.value(), {"practice_band", "torque", "N·m"});
  return {practice.low * torque, practice.high * torque};
}

} // namespace v0
} // namespace fieldshaft
