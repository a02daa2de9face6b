#pragma once
// The cross-sections of shafts: what torsion and bending need to know of a shape, and the round ones.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
/// J = pi (D^4 - d^4) / 32, factored so that a thin tube keeps its digits.
template <class L> constexpr auto round_torsion_constant(L outer, L inner) noexcept {
  return pi / 32.0 * ((outer - inner) * (outer + inner)) * (outer * outer + inner * inner);
}
template <class L> constexpr auto round_torsion_modulus(L outer, L inner) noexcept {
  return 2.0 * round_torsion_constant(outer, inner) / outer;
}
/// Every fibre at the yield strength: (2 pi / 3) (ro^3 - ri^3).
template <class L> constexpr auto round_plastic_modulus(L outer, L inner) noexcept {
  return pi / 12.0 * ((outer - inner) * (outer * outer + outer * inner + inner * inner));
}
template <class L> constexpr auto round_area(L outer, L inner) noexcept {
  return pi / 4.0 * ((outer - inner) * (outer + inner));
}
} // namespace text

/// What torsion needs to know of a cross-section. Every shape below is one of these, so that each formula stands once.
class Section {
public:
  /// Torque over the greatest shear stress while all is elastic [m3].
  constexpr Volume torsion_modulus() const noexcept { return torsion_modulus_; }
  /// Torque over the shear yield strength when every fibre yields [m3].
  constexpr Volume plastic_modulus() const noexcept { return plastic_modulus_; }
  /// Torque over twist per length and shear modulus [m4]; the polar moment of area only of a round section.
  constexpr SecondMomentOfArea torsion_constant() const noexcept { return torsion_constant_; }
  /// Of the material [m2].
  constexpr Area area() const noexcept { return area_; }

protected:
  constexpr Section(Volume torsion_modulus, Volume plastic_modulus, SecondMomentOfArea torsion_constant,
                    Area area) noexcept
      : torsion_modulus_(torsion_modulus), plastic_modulus_(plastic_modulus), torsion_constant_(torsion_constant),
        area_(area) {}

private:
  Volume torsion_modulus_;
  Volume plastic_modulus_;
  SecondMomentOfArea torsion_constant_;
  Area area_;
};

/// A round section, solid or bored.
class RoundSection : public Section {
public:
  constexpr Length outer_diameter() const noexcept { return outer_; }
  /// Zero where the section is solid.
  constexpr Length inner_diameter() const noexcept { return inner_; }
  /// Second moment of area about any diameter [m4]; half of the torsion constant.
  constexpr SecondMomentOfArea second_moment() const noexcept { return 0.5 * torsion_constant(); }
  /// Bending moment over the greatest bending stress [m3].
  constexpr Volume bending_modulus() const noexcept { return 0.5 * torsion_modulus(); }

protected:
  constexpr RoundSection(Length outer, Length inner) noexcept
      : Section(text::round_torsion_modulus(outer, inner), text::round_plastic_modulus(outer, inner),
                text::round_torsion_constant(outer, inner), text::round_area(outer, inner)),
        outer_(outer), inner_(inner) {}

private:
  Length outer_;
  Length inner_;
};

/// A solid round section.
class SolidSection : public RoundSection {
public:
  /// diameter above 0.
  constexpr explicit SolidSection(Length diameter) : RoundSection(checked(diameter), Length{}) {}
  constexpr Length diameter() const noexcept { return outer_diameter(); }

private:
  static constexpr Length checked(Length diameter) {
    check::positive(diameter.value(), {"SolidSection", "diameter", "m"});
    return diameter;
  }
};

/// A round tube.
class TubeSection : public RoundSection {
public:
  /// outer_diameter above 0; inner_diameter above 0 and below the outer one.
  constexpr TubeSection(Length outer_diameter, Length inner_diameter)
      : RoundSection(checked_outer(outer_diameter), checked_inner(outer_diameter, inner_diameter)) {}
  constexpr Length wall() const noexcept { return 0.5 * (outer_diameter() - inner_diameter()); }

private:
  static constexpr Length checked_outer(Length outer) {
    check::positive(outer.value(), {"TubeSection", "outer_diameter", "m"});
    return outer;
  }
  static constexpr Length checked_inner(Length outer, Length inner) {
    check::between(inner.value(), 0.0, outer.value(), {"TubeSection", "inner_diameter", "m"});
    return inner;
  }
};

} // namespace v0
} // namespace fieldshaft
