#pragma once
// Lateral critical speeds of a line of beams: steps, point masses and supports, by finite elements.

#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/shaft/lobed.hpp>
#include <fieldshaft/shaft/section.hpp>

#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// A piece of the line that is even along its length.
struct BeamSegment {
  Length length;              ///< above 0
  BendingStiffness stiffness; ///< E I about the weaker axis, above 0
  MassPerLength mass;         ///< rho A and whatever turns with it, above 0
};

/// The segment of a section and a steel.
///
///   length          [m], above 0
///   youngs_modulus  [Pa], above 0
///   density         [kg/m³], above 0
BeamSegment beam_segment(const RoundSection& section, Length length, Stress youngs_modulus, Density density);
BeamSegment beam_segment(const ShapedProfile& section, Length length, Stress youngs_modulus, Density density);

/// A joint, yoke or other mass without extent.
struct BeamMass {
  Length at; ///< from the front end of the line, within it
  Mass mass; ///< at least 0
};

enum class SupportKind {
  simple,  ///< holds the axis in its place and lets it tilt: a joint between stiff bearings
  clamped, ///< holds the tilt too
  spring,  ///< yields sideways: bearings on a gearbox that gives way
};

struct BeamSupport {
  Length at; ///< from the front end of the line, within it
  SupportKind kind = SupportKind::simple;
  ForcePerLength stiffness{}; ///< of a spring [N/m], above 0; of no meaning otherwise
};

/// The line, from its front end to its rear end.
struct BeamLine {
  std::vector<BeamSegment> segments;
  std::vector<BeamMass> masses;
  std::vector<BeamSupport> supports;
};

/// The lowest critical speeds of a line, in rising order [rad/s].
///
/// K x = w² M x with beam elements of third order (Euler-Bernoulli), consistent mass and point masses; solved as
/// M x = K x/w², in which the lowest speeds are the most exact. Every segment, and every piece of it between masses and
/// supports, is divided evenly.
///   line      segments at least one; supports a clamp, or two at different places
///   count     how many, from 1 to 20
///   elements  about how many along the whole line, from 8 to 200
/// Accuracy: the elements make the lowest speed too high by about 0.07/elements⁴ of itself (3e-6 with 12), the n-th by
/// n⁴ times that. Slender lines (length above ten diameters): shear and the turning inertia of the sections
/// are left out, which makes the speed of a tube of ten diameters 2 % too high, of twenty 0.5 % (slender_tube_excess).
/// Damping, unbalance, the play of joints and the gyroscopic effect of wide discs are left out too. Throws InputError
/// where nothing holds the line or a place lies outside of it.
/// Source: any text on finite elements, such as Rao, Mechanical Vibrations, ch. 12.
/// Example: steel tube of 60/52 mm, 1.2 m on two simple supports: 6671.25 r/min, as critical_speed.
std::vector<AngularSpeed> beam_critical_speeds(const BeamLine& line, int count = 1, int elements = 12);

/// By what share a slender-beam speed is too high for a tube, to first order [-].
///
/// e = ½ (pi r/L)² (E/(k G) - 1), r² = (D² + d²)/16; E/(kG) = 2 (1 + nu)/k = 4.9 for a thin steel tube, k = 0.53
///   section  solid or tube, on two simple supports; for a solid shaft k is 0.89 and E/(kG) 2.9
///   length   L  [m], above 0
/// Shear lowers the speed; the turning inertia of the sections raises that of forward whirl, as a disc's does. k by
/// Cowper for nu = 0.3. Outside: e above 0.05, where the first order no longer serves. Source: Timoshenko's beam to
/// first order (Rao, Mechanical Vibrations, section 8.5); Cowper, J. Appl. Mech. 33 (1966) 335, from memory.
/// Example: 60/52 mm, 1.2 m: 0.0052.
Validated<double> slender_tube_excess(const RoundSection& section, Length length);

} // namespace v0
} // namespace fieldshaft
