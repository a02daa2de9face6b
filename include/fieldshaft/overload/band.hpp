#pragma once
// A device never lets go at one torque: the lowest and the highest, and the nominal setting with its scatter.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The lowest and the highest torque at which a device may let go.
struct TorqueBand {
  Torque low;
  Torque high;
};

/// The same as a nominal torque and a plus and minus, as a fraction of it.
struct DeviceSetting {
  Torque nominal;
  double scatter;
};

namespace text {
template <class T, class R> constexpr T lowest_of(T nominal, R scatter) noexcept { return nominal * (1.0 - scatter); }
template <class T, class R> constexpr T highest_of(T nominal, R scatter) noexcept { return nominal * (1.0 + scatter); }
} // namespace text

/// The torques between which a device lets go [N·m].
///
/// T (1 - s) to T (1 + s)
///   nominal  T  setting [N·m], at least 0
///   scatter  s  plus and minus, from 0 to below 1
/// Example: 800 N·m with 15 %: 680 to 920 N·m.
constexpr TorqueBand torque_band(Torque nominal, double scatter) {
  check::not_negative(nominal.value(), {"torque_band", "nominal", "N·m"});
  check::from_below(scatter, 0.0, 1.0, {"torque_band", "scatter", ""});
  return {text::lowest_of(nominal, scatter), text::highest_of(nominal, scatter)};
}

/// The nominal setting and scatter of a device that lets go between two torques; the inverse of torque_band.
///
///   low, high  [N·m], low at least 0, high above 0 and at least low
/// Example: 1740 to 3106 N·m (a shear bolt of class 8.8): 2423 N·m with 28 %.
constexpr DeviceSetting device_setting(Torque low, Torque high) {
  check::not_negative(low.value(), {"device_setting", "low", "N·m"});
  check::positive(high.value(), {"device_setting", "high", "N·m"});
  check::at_least(high.value(), low.value(), {"device_setting", "high", "N·m"});
  return {0.5 * (low + high), (high - low) / (high + low)};
}

} // namespace v0
} // namespace fieldshaft
