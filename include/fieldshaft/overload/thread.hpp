#pragma once
// A bolt whose thread lies in the shear plane: less area than the shank.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/datum.hpp>
#include <fieldshaft/core/source.hpp>
#include <fieldshaft/units.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {

/// The two families of 60 degree threads.
enum class ThreadSystem { iso_metric, unified_inch };

/// By how many pitches the diameter of the stress area lies below the nominal one.
constexpr Sourced<double> thread_depth_in_pitches(ThreadSystem system) noexcept {
  if (system == ThreadSystem::iso_metric) {
    return {0.9382, {"A_s = pi/4 (d - 0.9382 P)^2, ISO 898-1", Standing::from_memory}};
  }
  return {0.9743, {"A_s = pi/4 (d - 0.9743 P)^2, ASME B1.1", Standing::from_memory}};
}

/// The coarse pitch of a nominal size.
struct CoarsePitch {
  ThreadSystem system;
  Length diameter;
  Length pitch;
};

namespace detail {
constexpr CoarsePitch metric(double diameter_mm, double pitch_mm) {
  return {ThreadSystem::iso_metric, millimetres(diameter_mm), millimetres(pitch_mm)};
}
constexpr CoarsePitch unified(double diameter_in, double threads_per_inch) {
  return {ThreadSystem::unified_inch, inches(diameter_in), inches(1.0 / threads_per_inch)};
}
inline constexpr Source coarse_pitch_source{"coarse series of ISO 261 and of ASME B1.1 (UNC)", Standing::from_memory};
inline constexpr std::array coarse_pitches = {
    metric(5, 0.8),   metric(6, 1),        metric(8, 1.25),     metric(10, 1.5),    metric(12, 1.75),
    metric(14, 2),    metric(16, 2),       metric(18, 2.5),     metric(20, 2.5),    metric(22, 2.5),
    metric(24, 3),    metric(27, 3),       metric(30, 3.5),     metric(33, 3.5),    metric(36, 4),
    metric(39, 4),    unified(0.25, 20),   unified(0.3125, 18), unified(0.375, 16), unified(0.4375, 14),
    unified(0.5, 13), unified(0.5625, 12), unified(0.625, 11),  unified(0.75, 10),  unified(0.875, 9),
    unified(1.0, 8),
};
} // namespace detail

/// Every coarse pitch known here, to go through.
constexpr const auto& coarse_pitches() noexcept { return detail::coarse_pitches; }

/// The coarse pitch of a nominal size [m]; not known for a size that is not in the list.
///
///   system    metric or inch
///   diameter  nominal [m], above 0
/// Example: M8: 1.25 mm.
constexpr Datum<Length> coarse_pitch(ThreadSystem system, Length diameter) {
  check::positive(diameter.value(), {"coarse_pitch", "diameter", "m"});
  for (const CoarsePitch& row : detail::coarse_pitches) {
    const double off = row.diameter.value() - diameter.value();
    if (row.system == system && off < 1e-6 && off > -1e-6) return {row.pitch, detail::coarse_pitch_source};
  }
  return {};
}

/// Diameter of the circle with the stress area of a thread [m].
///
/// d_s = d - 0.9382 P (metric), d - 0.9743 P (inch); A_s = pi/4 d_s^2
///   diameter  d  nominal [m], above 0
///   pitch     P  [m], above 0 and small enough to leave a core
///   system    metric or inch
/// Source: ISO 898-1 (metric), ASME B1.1 (inch). Example: M8 with 1.25 mm: 6.827 mm, which is 36.6 mm².
constexpr Length thread_stress_diameter(Length diameter, Length pitch, ThreadSystem system = ThreadSystem::iso_metric) {
  constexpr const char* function = "thread_stress_diameter";
  check::positive(diameter.value(), {function, "diameter", "m"});
  check::between(pitch.value(), 0.0, 0.5 * diameter.value(), {function, "pitch", "m"});
  return diameter - thread_depth_in_pitches(system).value * pitch;
}

} // namespace v0
} // namespace fieldshaft
