#pragma once
// The factors by which the nominal stresses of a spline become those of its service.

#include <fieldshaft/core/check.hpp>

namespace fieldshaft {
inline namespace v0 {

/// Factors of Dudley's method; each is one while the stress is nominal.
struct SplineFactors {
  double application = 1.0;       ///< K_a: shocks of drive and load; multiplies every stress
  double load_distribution = 1.0; ///< K_m: misalignment over the length; multiplies tooth shear and flank pressure
  double fatigue_life = 1.0;      ///< K_f: starts and stops; divides root torsion, tooth shear and fixed flank pressure
  double wear = 1.0;              ///< K_w: turns; divides the flank pressure of every seat that slips
};

/// How the hub sits on the shaft. What slips wears, and bears less.
enum class SplineSeat {
  fixed,            ///< pressed or clamped: nothing slips; pressure over 9, and no wear
  sliding_unloaded, ///< slides only while no torque is on it; pressure over 3
  flexible,         ///< rocks and slips with each turn, as a loose hub does (Dudley's flexible spline); pressure over 1
  sliding_under_load, ///< slides under torque, as a telescoping shaft does; pressure over 1
};

/// What the nominal flank pressure of a seat is divided by.
///
/// Dudley's equations 4 and 5 differ by 9: a fixed spline bears nine times what a flexible one does. The public table
/// of design factors has 1 for a fixed spline, 3 for one that slides unloaded and 9 for one that slides under load.
/// Read together, "flexible" of the one stands where "slides under load" of the other does: over 9, 3 and 1.
constexpr double seat_divisor(SplineSeat seat) {
  switch (seat) {
  case SplineSeat::fixed: return 9.0;
  case SplineSeat::sliding_unloaded: return 3.0;
  case SplineSeat::flexible:
  case SplineSeat::sliding_under_load: return 1.0;
  }
  fail_input("seat_divisor", "seat", check::text_of(static_cast<int>(seat), ""),
             "fixed, sliding_unloaded, flexible, sliding_under_load");
}

namespace check {
constexpr void spline_factors(const SplineFactors& factors, const char* function) {
  positive(factors.application, {function, "factors.application", ""});
  positive(factors.load_distribution, {function, "factors.load_distribution", ""});
  positive(factors.fatigue_life, {function, "factors.fatigue_life", ""});
  positive(factors.wear, {function, "factors.wear", ""});
}
} // namespace check

} // namespace v0
} // namespace fieldshaft
