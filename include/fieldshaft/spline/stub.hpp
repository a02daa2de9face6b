#pragma once
// The spline of a PTO stub from the data of its type, on the safe side where those differ.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/pto/type.hpp>
#include <fieldshaft/spline/slide.hpp>
#include <fieldshaft/spline/spline.hpp>

#include <optional>

namespace fieldshaft {
inline namespace v0 {

inline constexpr Source stub_spline_source{"least favourable of the sizes that the PTO type's sources state",
                                           Standing::from_memory};

namespace detail {

constexpr Length lesser(Length a, Length b) noexcept { return b < a ? b : a; }
constexpr Length greater(Length a, Length b) noexcept { return b > a ? b : a; }

/// The PTO standard, as remembered, has a minor diameter of 28.91 mm, the general rule (fit B) 29.69 mm. The smaller
/// one is weaker in torsion, the larger one leaves less height of tooth: each stress takes the one that is worse for
/// it.
inline Spline straight_stub(const StraightProfile& rule, const StraightProfile& standard, int teeth, Length length) {
  const Length major = lesser(rule.major_diameter.nominal, standard.major_diameter.smallest);
  const Length outer = greater(rule.major_diameter.nominal, standard.major_diameter.largest);
  const Length root = lesser(rule.minor_diameter.nominal, standard.minor_diameter.smallest);
  const Length floor = greater(rule.minor_diameter.nominal, standard.minor_diameter.largest);
  const Length width = lesser(rule.tooth_width.nominal, standard.tooth_width.smallest);
  const Length mean = 0.5 * (major + root);
  const Length widest = greater(rule.tooth_width.nominal, standard.tooth_width.largest);
  return Spline({teeth, major, root, mean, width, 0.5 * (major - floor), length, outer,
                 angle_from_ratio(std::asin(static_cast<double>(widest / mean)))});
}

/// Whether the root of a stub is flat or a fillet is not known: torsion takes the deeper fillet, the flanks the height
/// of the flat root (0.9 modules).
inline Spline involute_stub(const InvoluteProfile& p, Length length) {
  const Length root = lesser(p.minor_diameter_flat, p.minor_diameter_fillet);
  return Spline({p.teeth, p.major_diameter, root, p.pitch_diameter, p.tooth_thickness, 0.9 * p.module, length,
                 p.pitch_diameter + (p.pitch_diameter - root), p.pressure_angle});
}

} // namespace detail

/// The spline of a PTO type with a hub that touches it over a length; nothing where the profile is not known.
///
///   type    see pto_type
///   length  over which hub and shaft touch [m], above 0; see engaged_length
/// Every size is the least favourable one: type 1 by two sources that differ, types 2 to 4 with either root. Sources as
/// the type's data; module and angle of types 2 to 4 and the standard's sizes of type 1 are from memory.
/// Example: type 1: root 28.86 mm, mean diameter 31.80 mm, height 2.52 mm.
inline std::optional<Sourced<Spline>> stub_spline(const PtoType& type, Length length) {
  check::positive(length.value(), {"stub_spline", "length", "m"});
  if (type.straight_rule.known() && type.straight_standard.known()) {
    return Sourced<Spline>{
        detail::straight_stub(type.straight_rule.value(), type.straight_standard.value(), type.spline_count, length),
        stub_spline_source};
  }
  if (type.involute.known()) {
    return Sourced<Spline>{detail::involute_stub(type.involute.value(), length), stub_spline_source};
  }
  return std::nullopt;
}

/// The same with a hub that covers the least useful length of the type, less its groove; nothing where a size that this
/// needs is not known (type 4, and the shaft from before the standards).
///
///   type  see pto_type
/// Example: type 1: 76 mm less a groove of 11.27 mm.
inline std::optional<Sourced<Spline>> stub_spline(const PtoType& type) {
  if (!type.useful_spline_length.known() || !type.groove_diameter.known() || !type.groove_radius.known()) {
    return std::nullopt;
  }
  const Length groove =
      groove_width(type.nominal_diameter, type.groove_diameter.value().smallest, type.groove_radius.value().largest);
  const Length useful = type.useful_spline_length.value();
  return stub_spline(type, engaged_length(useful, useful, groove));
}

} // namespace v0
} // namespace fieldshaft
