#pragma once
// What torque a spline carries, which stress limits it, and the spline that a torque needs.

#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/power/torque.hpp>
#include <fieldshaft/spline/allowable.hpp>
#include <fieldshaft/spline/stress.hpp>

namespace fieldshaft {
inline namespace v0 {

/// Which of the three stresses is meant.
enum class SplineMode { root_torsion, tooth_shear, flank_pressure };

/// The torques at which each stress reaches its limit.
struct SplineCapacity {
  Torque root_torsion;
  Torque tooth_shear;
  Torque flank_pressure;
  SplineMode governing; ///< the least of them
  Torque torque;        ///< that least torque: the capacity
  double lead;          ///< of the next limit over the governing one, at least 1
};

namespace detail {

inline void check_limits(const SplineLimits& limits, const char* function) {
  check::positive(limits.root_torsion.value(), {function, "limits.root_torsion", "Pa"});
  check::positive(limits.tooth_shear.value(), {function, "limits.tooth_shear", "Pa"});
  check::positive(limits.flank_pressure.value(), {function, "limits.flank_pressure", "Pa"});
}

/// Three numbers by SplineMode.
struct ByMode {
  double values[3];
  /// The index of the greatest one.
  int greatest() const noexcept {
    int best = 0;
    for (int i = 1; i < 3; ++i) best = values[i] > values[best] ? i : best;
    return best;
  }
};

/// Each stress at a torque over its limit; above 1 it is beyond.
inline ByMode utilization(const Spline& spline, Torque torque, const SplineLimits& limits, const SplineFactors& factors,
                          SplineSeat seat, Length bore_diameter) {
  const SplineStress stress = spline_stress(spline, torque, factors, seat, bore_diameter);
  return {{stress.root_torsion / limits.root_torsion, stress.tooth_shear / limits.tooth_shear,
           stress.flank_pressure / limits.flank_pressure}};
}

} // namespace detail

/// Torque that a spline carries within its limits, and which limit governs [N·m].
///
/// limit over stress at 1 N·m, for each of the three stresses of spline_stress; the least governs
///   spline         any form
///   limits         stresses allowed [Pa], above 0
///   factors, seat, bore_diameter  as for spline_stress
/// Source: as spline_stress. Example: 6 teeth, SAE fit B, 1.375 in, 1 in long, 1000 psi on the flanks: 393.486 lbf·in.
inline SplineCapacity spline_torque_capacity(const Spline& spline, const SplineLimits& limits,
                                             const SplineFactors& factors = {}, SplineSeat seat = SplineSeat::flexible,
                                             Length bore_diameter = {}) {
  detail::check_limits(limits, "spline_torque_capacity");
  const detail::ByMode used = detail::utilization(spline, newton_metres(1.0), limits, factors, seat, bore_diameter);
  const int worst = used.greatest();
  double next = 0.0;
  for (int i = 0; i < 3; ++i) next = i != worst && used.values[i] > next ? used.values[i] : next;
  return {newton_metres(1.0 / used.values[0]),     newton_metres(1.0 / used.values[1]),
          newton_metres(1.0 / used.values[2]),     static_cast<SplineMode>(worst),
          newton_metres(1.0 / used.values[worst]), used.values[worst] / next};
}

/// Power that a spline carries at a speed within its limits [W].
///
/// The capacity of spline_torque_capacity times the speed; arguments as there, and
///   speed  [rad/s], at least 0
/// Example: the same spline at 540 r/min: 2.51 kW for each inch of length.
inline Power spline_power_capacity(const Spline& spline, const SplineLimits& limits, AngularSpeed speed,
                                   const SplineFactors& factors = {}, SplineSeat seat = SplineSeat::flexible,
                                   Length bore_diameter = {}) {
  return shaft_power(spline_torque_capacity(spline, limits, factors, seat, bore_diameter).torque, speed);
}

/// Length over which a spline has to touch to carry a torque [m].
///
/// L times the greater of tooth shear and flank pressure over their limits
///   spline   any form; its own length only sets the scale
///   torque   [N·m], above 0
///   limits, factors, seat, bore_diameter  as for spline_torque_capacity
/// Outside: the torsion of the root is beyond its limit, which no length mends. The factor Km rises with the length:
/// ask it again for the answer. Source: as spline_stress. Example: 8 x 52 x 60, 636.620 N·m, 6.5 MPa on the flanks:
/// 109.310 mm.
inline Validated<Length> spline_length_for_torque(const Spline& spline, Torque torque, const SplineLimits& limits,
                                                  const SplineFactors& factors = {},
                                                  SplineSeat seat = SplineSeat::flexible, Length bore_diameter = {}) {
  constexpr const char* function = "spline_length_for_torque";
  check::positive(torque.value(), {function, "torque", "N·m"});
  detail::check_limits(limits, function);
  const detail::ByMode used = detail::utilization(spline, torque, limits, factors, seat, bore_diameter);
  const double teeth = used.values[1] > used.values[2] ? used.values[1] : used.values[2];
  return {spline.length() * teeth,
          used.values[0] <= 1.0 ? nullptr : "the torsion of the root is beyond its limit at any length"};
}

/// A spline with every size, or every size but the length, times a number.
///
///   spline  any form
///   scale   above 0
///   scale_length  whether the length grows along
inline Spline scaled_spline(const Spline& spline, double scale, bool scale_length = false) {
  check::positive(scale, {"scaled_spline", "scale", ""});
  SplineSizes s = spline.sizes();
  s.major_diameter *= scale;
  s.root_diameter *= scale;
  s.bearing_diameter *= scale;
  s.tooth_thickness *= scale;
  s.engaged_height *= scale;
  s.sleeve_root *= scale;
  if (scale_length) s.length *= scale;
  return Spline(s);
}

/// A spline of the same shape that carries a torque, and what sets its size.
struct SplineSize {
  double scale;          ///< on the sizes of the spline that was given
  Length major_diameter; ///< needed
  SplineMode governing;
};

/// Size of a spline of the same shape and number of teeth that just carries a torque.
///
/// Torsion of the root falls with the third power of the size; the other two with the second, or the third if the
/// length grows along. The scale is the greatest of the three roots of stress over limit
///   spline         of which the shape is taken
///   torque         [N·m], above 0
///   scale_length   whether the length grows along with the diameter
///   limits, factors, seat, bore_diameter  as for spline_torque_capacity; the bore grows along
/// Source: as spline_stress. Example: twice the torque with a length that grows along: 2^(1/3) = 1.26 times the size.
inline SplineSize spline_size_for_torque(const Spline& spline, Torque torque, const SplineLimits& limits,
                                         bool scale_length = false, const SplineFactors& factors = {},
                                         SplineSeat seat = SplineSeat::flexible, Length bore_diameter = {}) {
  constexpr const char* function = "spline_size_for_torque";
  check::positive(torque.value(), {function, "torque", "N·m"});
  detail::check_limits(limits, function);
  const detail::ByMode used = detail::utilization(spline, torque, limits, factors, seat, bore_diameter);
  const auto of_teeth = [scale_length](double u) { return scale_length ? std::cbrt(u) : std::sqrt(u); };
  const detail::ByMode scale{{std::cbrt(used.values[0]), of_teeth(used.values[1]), of_teeth(used.values[2])}};
  const int worst = scale.greatest();
  return {scale.values[worst], spline.major_diameter() * scale.values[worst], static_cast<SplineMode>(worst)};
}

} // namespace v0
} // namespace fieldshaft
