#pragma once
// Involute splines: sizes by ANSI B92.1 (inch), ISO 4156 (metric) and DIN 5480.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/spline/spline.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The bottom of the spaces of the shaft. With 37.5° and 45° only the fillet root is made.
enum class SplineRoot {
  usual,  ///< flat at 30°, fillet at 37.5° and 45°
  flat,   ///< straight across between two small corner radii
  fillet, ///< one full curve: deeper, but with less stress concentration
};

/// The sizes of an involute spline and its hub by a standard, nominal (without tolerances).
struct InvoluteGeometry {
  int teeth;
  Length module; ///< pitch diameter over teeth; one over the diametral pitch
  Angle pressure_angle;
  Length pitch_diameter;
  Length base_diameter;
  Length circular_pitch;
  Length tooth_thickness; ///< of the shaft at the pitch diameter; the space of the hub there is as wide
  Length shaft_major;     ///< over the teeth of the shaft
  Length shaft_minor;     ///< at the bottom of its spaces
  Length hub_major;       ///< at the bottom of the spaces of the hub
  Length hub_minor;       ///< over the teeth of the hub
  Length engaged_height;  ///< radial height over which the flanks touch
};

namespace detail {

/// The three angles of the standards; 1e-6 rad lets a rounded one in.
enum class SplineAngle { deg30, deg37_5, deg45 };

inline SplineAngle spline_angle(Angle pressure_angle, const char* function) {
  const auto near = [pressure_angle](double degree) {
    return is_finite(pressure_angle.value()) && math::abs(pressure_angle - degrees(degree)) < radians(1e-6);
  };
  if (near(30.0)) return SplineAngle::deg30;
  if (near(37.5)) return SplineAngle::deg37_5;
  if (near(45.0)) return SplineAngle::deg45;
  fail_input(function, "pressure_angle", check::text_of(pressure_angle.value() / unit::degree.factor, "°"),
             "30°, 37.5° or 45°");
}

inline void check_involute(int teeth, Length module, const char* function) {
  check::at_least(teeth, 3.0, {function, "teeth", ""});
  check::positive(module.value(), {function, "module", "m"});
}

/// True for a fillet root; the flat one exists only at 30°.
inline bool fillet_root(SplineRoot root, SplineAngle angle, const char* function) {
  const int value = static_cast<int>(root);
  check::within(value, 0.0, static_cast<int>(SplineRoot::fillet), {function, "root", ""});
  if (angle != SplineAngle::deg30 && root == SplineRoot::flat) {
    fail_input(function, "root", "flat", "fillet (or usual) for 37.5° and 45°: the standards have no flat root there");
  }
  return root == SplineRoot::fillet || angle != SplineAngle::deg30;
}

/// By how many modules the teeth and spaces of shaft and hub lie above or below the pitch circle, as diameters.
struct InvoluteDepths {
  double shaft_major, shaft_minor, hub_major, hub_minor; ///< D = m (Z + shaft_major), m (Z - shaft_minor), ...
  double thickness;                                      ///< of a tooth, in modules
  double engaged_height;                                 ///< in modules
};

inline InvoluteGeometry involute_geometry(int teeth, Length module, Angle pressure_angle, const InvoluteDepths& d) {
  const Length pitch_diameter = module * static_cast<double>(teeth);
  return {teeth,
          module,
          pressure_angle,
          pitch_diameter,
          pitch_diameter * math::cos(pressure_angle),
          pi * module,
          d.thickness * module,
          module * (teeth + d.shaft_major),
          module * (teeth - d.shaft_minor),
          module * (teeth + d.hub_major),
          module * (teeth - d.hub_minor),
          d.engaged_height * module};
}

} // namespace detail

/// Where the sizes by ANSI B92.1 come from: the 30° rows were read, the others and the finest fillet are remembered.
inline constexpr Source ansi_b92_1_source{"ANSI B92.1-1970 (R1993), 30°, as a public table reproduces it",
                                          Standing::published};
inline constexpr Source ansi_b92_1_remembered{"ANSI B92.1-1970 (R1993), 37.5°, 45° and fillet roots of 16/32 and finer",
                                              Standing::from_memory};
inline constexpr Source iso_4156_source{"ISO 4156 and ANSI B92.2M", Standing::from_memory};
inline constexpr Source din_5480_source{"DIN 5480", Standing::from_memory};

/// Sizes of an involute spline by ANSI B92.1, side fit.
///
/// D = N/P; Db = D cos f; shaft (N + 1)/P over the teeth; with P = 1/m
///   30°:   tooth pi/2 /P, shaft minor (N - 1.35)/P flat, (N - 1.8)/P fillet up to 12/24, (N - 2)/P fillet of 16/32 and
///          finer; hub (N + 1.35)/P flat, (N + 1.8)/P fillet, minor (N - 1)/P
///   37.5°: tooth (pi/2 + 0.1)/P, shaft minor (N - 1.3)/P; hub (N + 1.6)/P, minor (N - 0.8)/P
///   45°:   tooth (pi/2 + 0.2)/P, shaft minor (N - 1)/P; hub (N + 1.4)/P, minor (N - 0.6)/P
///   teeth           N  at least 3
///   module          m  one over the diametral pitch [m], above 0
///   pressure_angle  f  30°, 37.5° or 45°
///   root            of the shaft; see SplineRoot
/// The height over which flanks touch is 0.9/P flat, 1/P fillet at 30° (Dudley), and half of shaft major minus hub
/// minor otherwise. A pitch between 12 and 16, which the standard does not have, takes the deeper fillet. Source: ANSI
/// B92.1 (30°: published table; the rest, and the 45° tooth and hub minor, from memory). Example: 21 teeth, 1/16 in,
/// 30°, flat: D 1.3125, major 1.375, minor 1.228125 in.
inline InvoluteGeometry ansi_b92_1_geometry(int teeth, Length module, Angle pressure_angle,
                                            SplineRoot root = SplineRoot::usual) {
  constexpr const char* function = "ansi_b92_1_geometry";
  detail::check_involute(teeth, module, function);
  const detail::SplineAngle angle = detail::spline_angle(pressure_angle, function);
  const bool fillet = detail::fillet_root(root, angle, function);
  switch (angle) {
  case detail::SplineAngle::deg37_5:
    return detail::involute_geometry(teeth, module, pressure_angle, {1.0, 1.3, 1.6, 0.8, pi / 2.0 + 0.1, 0.9});
  case detail::SplineAngle::deg45:
    return detail::involute_geometry(teeth, module, pressure_angle, {1.0, 1.0, 1.4, 0.6, pi / 2.0 + 0.2, 0.8});
  case detail::SplineAngle::deg30: break;
  }
  if (!fillet) {
    return detail::involute_geometry(teeth, module, pressure_angle, {1.0, 1.35, 1.35, 1.0, pi / 2.0, 0.9});
  }
  // 12/24 is the finest pitch with the shallower fillet; the last digits of 1/12 in must not decide.
  const double fillet_depth = module > inches(1.0 / 12.0) * (1.0 - 1e-9) ? 1.8 : 2.0;
  return detail::involute_geometry(teeth, module, pressure_angle, {1.0, fillet_depth, 1.8, 1.0, pi / 2.0, 1.0});
}

/// Sizes of a metric involute spline by ISO 4156 (ANSI B92.2M), fit without deviation (e_s = 0).
///
/// D = m Z; Db = D cos f; tooth pi m / 2
///   30°:   shaft m (Z + 1), minor m (Z - 1.5) flat, m (Z - 1.8) fillet; hub m (Z + 1.5) flat, m (Z + 1.8) fillet
///   37.5°: shaft m (Z + 0.9), minor m (Z - 1.4); hub m (Z + 1.4)
///   45°:   shaft m (Z + 0.8), minor m (Z - 1.2); hub m (Z + 1.2)
///   teeth, module, pressure_angle, root  as for ansi_b92_1_geometry
/// The hub's minor diameter is taken as far inside the pitch circle as the shaft's major lies outside (form clearance
/// neglected), and the flanks touch over 0.9 m with a flat root (as for inch splines), else over half of the
/// difference. Source: ISO 4156 (from memory). Example: 22 teeth, 2.5 mm, 30°, flat: 57.5 mm over the teeth,
/// minor 51.25 mm.
inline InvoluteGeometry iso_4156_geometry(int teeth, Length module, Angle pressure_angle,
                                          SplineRoot root = SplineRoot::usual) {
  constexpr const char* function = "iso_4156_geometry";
  detail::check_involute(teeth, module, function);
  const detail::SplineAngle angle = detail::spline_angle(pressure_angle, function);
  const bool fillet = detail::fillet_root(root, angle, function);
  switch (angle) {
  case detail::SplineAngle::deg37_5:
    return detail::involute_geometry(teeth, module, pressure_angle, {0.9, 1.4, 1.4, 0.9, pi / 2.0, 0.9});
  case detail::SplineAngle::deg45:
    return detail::involute_geometry(teeth, module, pressure_angle, {0.8, 1.2, 1.2, 0.8, pi / 2.0, 0.8});
  case detail::SplineAngle::deg30: break;
  }
  const double depth = fillet ? 1.8 : 1.5;
  return detail::involute_geometry(teeth, module, pressure_angle,
                                   {1.0, depth, depth, 1.0, pi / 2.0, fillet ? 1.0 : 0.9});
}

/// An involute spline.
class InvoluteSpline : public Spline {
public:
  /// By ANSI B92.1; the sizes and their rules as ansi_b92_1_geometry.
  ///   teeth           at least 3
  ///   module          pitch diameter over teeth [m], above 0; 1/16 in for a 16/32 spline
  ///   pressure_angle  30°, 37.5° or 45°
  ///   length          over which hub and shaft touch [m], above 0
  ///   root            of the shaft; see SplineRoot
  /// A metric spline is shallower in the hub and deeper in the shaft: make it with iso_4156_geometry.
  InvoluteSpline(int teeth, Length module, Angle pressure_angle, Length length, SplineRoot root = SplineRoot::usual)
      : InvoluteSpline(ansi_b92_1_geometry(teeth, module, pressure_angle, root), length) {}
  /// By the sizes of any standard.
  InvoluteSpline(const InvoluteGeometry& geometry, Length length)
      : Spline(sizes_of(geometry, length), "InvoluteSpline"), geometry_(geometry) {}

  constexpr const InvoluteGeometry& geometry() const noexcept { return geometry_; }

private:
  static SplineSizes sizes_of(const InvoluteGeometry& g, Length length) {
    check::positive(length.value(), {"InvoluteSpline", "length", "m"});
    return {g.teeth,          g.shaft_major, g.shaft_minor, g.pitch_diameter, g.tooth_thickness,
            g.engaged_height, length,        g.hub_major,   g.pressure_angle};
  }

  InvoluteGeometry geometry_;
};

/// An involute spline from its diametral pitch (16 of "16/32"), by ANSI B92.1.
///
///   teeth            at least 3
///   diametral_pitch  P  teeth per length of pitch diameter [1/m], above 0
///   others           as for InvoluteSpline
/// Example: 21 teeth, per_inch(16), 30°: 1.375 in over the teeth.
inline InvoluteSpline involute_spline(int teeth, DiametralPitch diametral_pitch, Angle pressure_angle, Length length,
                                      SplineRoot root = SplineRoot::usual) {
  check::positive(diametral_pitch.value(), {"involute_spline", "diametral_pitch", "1/m"});
  return {teeth, 1.0 / diametral_pitch, pressure_angle, length, root};
}

} // namespace v0
} // namespace fieldshaft
