#pragma once
// What the stresses of a splined shaft end depend on, whatever the form of its teeth.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The sizes of a splined shaft and the engaged length of its hub, from which every stress follows.
struct SplineSizes {
  int teeth;
  Length major_diameter;   ///< over the teeth
  Length root_diameter;    ///< between the teeth: the section that carries the torsion
  Length bearing_diameter; ///< at which the teeth are taken to carry: pitch diameter, or mean of straight teeth
  Length tooth_thickness;  ///< at the bearing diameter, along the arc
  Length engaged_height;   ///< radial height over which the flanks touch
  Length length;           ///< over which the flanks touch, along the shaft
  Length sleeve_root;      ///< largest diameter of the spaces in the hub
  Angle flank_angle{};     ///< between flank and radius at the bearing diameter: what spreads the hub
};

/// A splined shaft end with its hub. Every form of spline is one of these, so that each formula stands once.
class Spline {
public:
  /// A spline of any form by its sizes, for a profile that is measured rather than named.
  ///
  /// teeth at least 3; diameters in the order root < bearing <= major <= sleeve root; tooth and space fit the
  /// circumference; engaged height at most (major - root)/2; length above 0; flank angle from 0 to below 90°.
  constexpr explicit Spline(const SplineSizes& sizes) : sizes_(checked(sizes, "Spline")) {}

  constexpr const SplineSizes& sizes() const noexcept { return sizes_; }
  constexpr int teeth() const noexcept { return sizes_.teeth; }
  constexpr Length major_diameter() const noexcept { return sizes_.major_diameter; }
  constexpr Length root_diameter() const noexcept { return sizes_.root_diameter; }
  constexpr Length bearing_diameter() const noexcept { return sizes_.bearing_diameter; }
  constexpr Length tooth_thickness() const noexcept { return sizes_.tooth_thickness; }
  constexpr Length engaged_height() const noexcept { return sizes_.engaged_height; }
  constexpr Length length() const noexcept { return sizes_.length; }
  constexpr Length sleeve_root() const noexcept { return sizes_.sleeve_root; }
  constexpr Angle flank_angle() const noexcept { return sizes_.flank_angle; }

protected:
  constexpr Spline(const SplineSizes& sizes, const char* maker) : sizes_(checked(sizes, maker)) {}

private:
  static constexpr SplineSizes checked(const SplineSizes& s, const char* maker) {
    check::at_least(s.teeth, 3.0, {maker, "teeth", ""});
    check::positive(s.major_diameter.value(), {maker, "major_diameter", "m"});
    check::between(s.root_diameter.value(), 0.0, s.major_diameter.value(), {maker, "root_diameter", "m"});
    check::within(s.bearing_diameter.value(), s.root_diameter.value(), s.major_diameter.value(),
                  {maker, "bearing_diameter", "m"});
    check::between(s.tooth_thickness.value(), 0.0, pi * s.bearing_diameter.value() / s.teeth,
                   {maker, "tooth_thickness", "m"});
    check::positive(s.engaged_height.value(), {maker, "engaged_height", "m"});
    // The height is often half of the same difference: leave room for its last digits.
    check::within(s.engaged_height.value(), 0.0, 0.5 * (s.major_diameter - s.root_diameter).value() * (1.0 + 1e-12),
                  {maker, "engaged_height", "m"});
    check::positive(s.length.value(), {maker, "length", "m"});
    check::at_least(s.sleeve_root.value(), s.major_diameter.value(), {maker, "sleeve_root", "m"});
    check::from_below(s.flank_angle.value(), 0.0, pi / 2.0, {maker, "flank_angle", "rad"});
    return s;
  }

  SplineSizes sizes_;
};

} // namespace v0
} // namespace fieldshaft
