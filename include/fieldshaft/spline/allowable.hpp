#pragma once
// Stresses that the steels of splines are allowed, by Dudley's table.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/datum.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

/// A steel by how hard it is, as Dudley's table groups them.
enum class SplineSteel {
  brinell_160_200,
  brinell_230_260,
  brinell_302_351, ///< Rockwell C 33 to 38
  surface_hardened_c48_53,
  case_hardened_c58_63,
  through_hardened_c42_46, ///< aircraft quality
};

/// The stresses that the three stresses of a spline are compared with.
struct SplineLimits {
  Stress root_torsion{};
  Stress tooth_shear{};
  Stress flank_pressure{};
};

/// A line of Dudley's table.
struct SplineAllowables {
  Sourced<Stress> shear;
  Datum<Stress> flank_straight; ///< teeth of even thickness
  Datum<Stress> flank_crowned;  ///< teeth thinned towards their ends, for misalignment
  Sourced<Stress> tensile;      ///< of the sleeve
};

inline constexpr Source allowable_source{
    "D. W. Dudley, When Splines Need Stress Control (1957), tables of allowable stresses, as public pages restate them",
    Standing::quoted};
inline constexpr Source allowable_tensile_source{
    "the lower of two restatements of Dudley's table, which exchange 45 and 50 ksi between these two steels",
    Standing::quoted};

/// The allowable stresses of a steel [Pa].
///
/// 160-200 HB: shear 20 ksi, flank 1.5 straight / 6 crowned, tensile 22; 230-260 HB: 30, 2/8, 32; 302-351 HB: 40, 3/12,
/// 45; surface-hardened: 40, 4/16, 45; case-hardened: 50, 5/20, 55; through-hardened: 45, not known, 45 ksi
///   steel  as Dudley groups them
/// They go with Dudley's stresses, factors included, and hold a reserve: they are far below yield. For the tensile
/// stress of surface-hardened and through-hardened steel one restatement has 50 and 45 ksi, another 45 and 50: the
/// lower one is given for both. No hardness of a PTO stub was found in any source; do not assume one. Source: Dudley's
/// tables (published, quoted elsewhere; two restatements agree on all the rest).
constexpr SplineAllowables spline_allowables(SplineSteel steel) {
  constexpr double ksi_table[6][4] = {{20, 1.5, 6, 22}, {30, 2, 8, 32},  {40, 3, 12, 45},
                                      {40, 4, 16, 45},  {50, 5, 20, 55}, {45, 0, 0, 45}};
  const int line = static_cast<int>(steel);
  check::within(line, 0.0, 5.0, {"spline_allowables", "steel", ""});
  const auto& row = ksi_table[line];
  const auto known = [](double value) {
    return value > 0.0 ? Datum<Stress>{ksi(value), allowable_source} : Datum<Stress>{};
  };
  const bool disputed = steel == SplineSteel::surface_hardened_c48_53 || steel == SplineSteel::through_hardened_c42_46;
  return {{ksi(row[0]), allowable_source},
          known(row[1]),
          known(row[2]),
          {ksi(row[3]), disputed ? allowable_tensile_source : allowable_source}};
}

/// The limits of a steel for the stresses of a spline, or that they are not known (no flank pressure is stated for
/// through-hardened steel).
///
///   steel    as Dudley groups them
///   crowned  whether the teeth are crowned
/// Source: as spline_allowables. Example: 302-351 HB, straight teeth: 40, 40 and 3 ksi.
constexpr Datum<SplineLimits> spline_limits(SplineSteel steel, bool crowned = false) {
  const SplineAllowables allowed = spline_allowables(steel);
  const Datum<Stress>& flank = crowned ? allowed.flank_crowned : allowed.flank_straight;
  if (!flank.known()) return {};
  return {{allowed.shear.value, allowed.shear.value, flank.value()}, allowable_source};
}

} // namespace v0
} // namespace fieldshaft
