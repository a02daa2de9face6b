#pragma once
// The three stresses of a splined shaft under torque, by Dudley's method.

#include <fieldshaft/fatigue/shaft.hpp>
#include <fieldshaft/spline/factors.hpp>
#include <fieldshaft/spline/spline.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The stresses of a splined shaft; nominal while every factor is one.
struct SplineStress {
  Stress root_torsion;   ///< shear in the section between the teeth
  Stress tooth_shear;    ///< across the teeth at the bearing diameter; half of the teeth carry
  Stress flank_pressure; ///< on the flanks; all teeth carry
};

namespace text {
/// Half of the teeth carry the force 2T/D across the thickness t.
template <class T, class L>
constexpr auto tooth_shear(T torque, L diameter, double teeth, L length, L thickness) noexcept {
  return 4.0 * without_radian(torque) / (teeth * (diameter * length * thickness));
}
/// All teeth carry the force 2T/D on the height h.
template <class T, class L>
constexpr auto flank_pressure(T torque, L diameter, double teeth, L length, L height) noexcept {
  return 2.0 * without_radian(torque) / (teeth * (diameter * length * height));
}
} // namespace text

/// Stresses of a splined shaft under torque [Pa].
///
/// root torsion   16 T Ka / (pi d^3 Kf) on the root diameter; with a bore b: 16 T d Ka / (pi (d^4 - b^4) Kf)
/// tooth shear    4 T Ka Km / (D N L t Kf): half of the teeth carry the force 2T/D
/// flank pressure 2 T Ka Km / (D N L h K), all teeth carry; K = Kw flexible or sliding under load, 3 Kw sliding
/// unloaded,
///                9 Kf fixed. Of straight teeth it is T Ka Km / (N r_m h L K), r_m the mean radius
///   spline         any form
///   torque         T   [N·m], at least 0
///   factors        Ka, Km, Kf, Kw: all one for the nominal stresses
///   seat           how the hub sits; see seat_divisor
///   bore_diameter  b   of the shaft [m], from 0 to below the root diameter
/// Dudley judges new, well aligned teeth; first contact is on few teeth, so that "half of the teeth" is for splines
/// made to a class of the standard. Source: Dudley, Product Engineering 28 (1957), as restated in Machinery's Handbook,
/// 27th ed., pp. 2171-2175, Eqs. 1, 2 (published), 3 to 5 (quoted elsewhere). Example: 21 teeth, 16/32, 30° flat, 2 in,
/// 5000 lbf·in, Ka 1.2, Kf 0.5: 32 993, 8869 and 3870 psi.
constexpr SplineStress spline_stress(const Spline& spline, Torque torque, const SplineFactors& factors = {},
                                     SplineSeat seat = SplineSeat::flexible, Length bore_diameter = {}) {
  constexpr const char* function = "spline_stress";
  check::not_negative(torque.value(), {function, "torque", "N·m"});
  check::spline_factors(factors, function);
  check::from_below(bore_diameter.value(), 0.0, spline.root_diameter().value(), {function, "bore_diameter", "m"});
  const SplineSizes& s = spline.sizes();
  const double load = factors.application;
  const double teeth_load = factors.application * factors.load_distribution;
  const double life = seat == SplineSeat::fixed ? factors.fatigue_life : factors.wear;
  const double bore_ratio = bore_diameter / s.root_diameter;
  return {text::round_stress(torque, s.root_diameter, bore_ratio) * (load / factors.fatigue_life),
          text::tooth_shear(torque, s.bearing_diameter, s.teeth, s.length, s.tooth_thickness) *
              (teeth_load / factors.fatigue_life),
          text::flank_pressure(torque, s.bearing_diameter, s.teeth, s.length, s.engaged_height) *
              (teeth_load / (seat_divisor(seat) * life))};
}

} // namespace v0
} // namespace fieldshaft
