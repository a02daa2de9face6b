#pragma once
// The torque to which an overload device must be set: above all that the work needs, below what the weakest part bears.

#include <fieldshaft/overload/band.hpp>

#include <cstddef>
#include <string_view>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// A part of the chain from the engine to the tool, as the device has to protect it.
struct ChainPart {
  std::string_view name; ///< lives as long as the result that names it
  Torque yield_torque;   ///< at the part's own shaft
  double speed_ratio;    ///< speed of the part over that of the device's place
  /// Part of the torque that the gears between leave: below one only for a part ahead of the device, which then carries
  /// more than the ratio says. A part behind the device carries less; one is on the safe side there.
  double efficiency = 1.0;
};

/// What becomes of the window.
enum class WindowState {
  open,
  closed_by_margins, ///< scatter alone would leave room; the wanted margins do not
  closed_by_scatter, ///< a device without scatter would fit; this one does not
  closed_by_part,    ///< the weakest part yields at a torque that the work itself needs: no device can help
};

/// Lowest and highest nominal setting at the device's place. Closed, the lowest lies above the highest.
struct DeviceWindow {
  Torque lowest;
  Torque highest;
  WindowState state;
  std::size_t weakest;           ///< index of the part that yields first
  std::string_view weakest_name; ///< its name
  Torque weakest_torque;         ///< at which it yields, referred to the device's place

  constexpr bool open() const noexcept { return state == WindowState::open; }
  /// True if a nominal setting lies within an open window.
  constexpr bool holds(Torque nominal) const noexcept { return open() && nominal >= lowest && nominal <= highest; }
};

namespace text {
/// Torque at the device's place when the part carries `torque`.
template <class T, class R> constexpr T referred_torque(T torque, R speed_ratio, R efficiency) noexcept {
  return torque * speed_ratio * efficiency;
}
template <class T, class R> constexpr T lowest_setting(T peak, R margin, R scatter) noexcept {
  return peak * margin / (1.0 - scatter);
}
template <class T, class R> constexpr T highest_setting(T weakest, R margin, R scatter) noexcept {
  return weakest / (margin * (1.0 + scatter));
}
} // namespace text

/// Torque at the device's place at which a part yields [N·m].
///
/// T = T_y g eta
///   yield_torque  T_y  of the part [N·m], above 0
///   speed_ratio   g    part's speed over that at the device's place, above 0
///   efficiency    eta  above 0, at most 1 (see ChainPart)
/// Example: a blade shaft that yields at 900 N·m and turns 1.926 times as fast as the device: 1733 N·m.
constexpr Torque referred_yield(Torque yield_torque, double speed_ratio, double efficiency = 1.0) {
  constexpr const char* function = "referred_yield";
  check::positive(yield_torque.value(), {function, "yield_torque", "N·m"});
  check::positive(speed_ratio, {function, "speed_ratio", ""});
  check::positive(efficiency, {function, "efficiency", ""});
  check::within(efficiency, 0.0, 1.0, {function, "efficiency", ""});
  return text::referred_torque(yield_torque, speed_ratio, efficiency);
}

namespace detail {
constexpr WindowState window_state(Torque peak, Torque weakest, double scatter, double work_margin,
                                   double strength_margin) noexcept {
  const auto closed = [&](double work, double strength, double s) {
    return text::lowest_setting(peak, work, s) > text::highest_setting(weakest, strength, s);
  };
  if (!closed(work_margin, strength_margin, scatter)) return WindowState::open;
  if (closed(1.0, 1.0, 0.0)) return WindowState::closed_by_part;
  return closed(1.0, 1.0, scatter) ? WindowState::closed_by_scatter : WindowState::closed_by_margins;
}
} // namespace detail

/// Settings of an overload device that hold while the work goes on and let go before any part yields [N·m].
///
/// lowest = m_w T_peak / (1 - s), highest = T_weakest / (m_y (1 + s)), T_weakest the least of referred_yield
///   peak_working_torque  T_peak  at the device's place, starting and lumps included [N·m], at least 0
///   parts                of the chain, at least one; every part that the torque passes, on both sides of the device
///   scatter          s    of the device, plus and minus, from 0 to below 1
///   work_margin      m_w  at least 1
///   strength_margin  m_y  at least 1
/// Static: behind a device at the implement end the inertia ahead of it can add to what the driveline feels, and a part
/// must be judged in fatigue too. A closed window is an answer: state says what closes it. A part that is left out is
/// not protected, so that the caller says which parts are unknown. Source: definition.
/// Example: 600 N·m of work; PTO shaft 2560 N·m at ratio 1, blade shaft 900 N·m at 1.926; scatter 15 %, margins 1.2
/// and 1.25: 847 to 1206 N·m, the blade shaft being the weakest.
constexpr DeviceWindow device_window(Torque peak_working_torque, const ChainPart* parts, std::size_t size,
                                     double scatter, double work_margin, double strength_margin) {
  constexpr const char* function = "device_window";
  check::not_negative(peak_working_torque.value(), {function, "peak_working_torque", "N·m"});
  if (size == 0) fail_input(function, "parts", "none", "at least one part");
  check::from_below(scatter, 0.0, 1.0, {function, "scatter", ""});
  check::at_least(work_margin, 1.0, {function, "work_margin", ""});
  check::at_least(strength_margin, 1.0, {function, "strength_margin", ""});
  std::size_t weakest = 0;
  Torque least{};
  for (std::size_t i = 0; i < size; ++i) {
    const Torque yield = referred_yield(parts[i].yield_torque, parts[i].speed_ratio, parts[i].efficiency);
    if (i > 0 && yield >= least) continue;
    weakest = i;
    least = yield;
  }
  return {text::lowest_setting(peak_working_torque, work_margin, scatter),
          text::highest_setting(least, strength_margin, scatter),
          detail::window_state(peak_working_torque, least, scatter, work_margin, strength_margin),
          weakest,
          parts[weakest].name,
          least};
}
inline DeviceWindow device_window(Torque peak_working_torque, const std::vector<ChainPart>& parts, double scatter,
                                  double work_margin, double strength_margin) {
  return device_window(peak_working_torque, parts.data(), parts.size(), scatter, work_margin, strength_margin);
}

} // namespace v0
} // namespace fieldshaft
