#pragma once
// Sections that are not round: solid rectangular and triangular bars, and thin open profiles.

#include <fieldshaft/shaft/profile.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
/// What torsion needs of a rectangle b x h, b >= h: J = k1 b h^3 and torque over greatest stress k2 b h^2.
template <class R> struct RectangleFactors {
  R k1;
  R k2;
};
/// Saint-Venant's series. The sixth term is below 1e-9 of the first already at a square.
template <class R> RectangleFactors<R> rectangle_factors(R slenderness) noexcept {
  using std::cosh;
  using std::tanh;
  R constant = 0.0;
  R edge = 0.0;
  for (int n = 1; n <= 199; n += 2) {
    const double m = n;
    const R argument = 0.5 * pi * m * slenderness;
    constant += tanh(argument) / (m * m * m * m * m);
    if (argument < 700.0) edge += 1.0 / (m * m * cosh(argument)); // beyond, the term has no digit left
  }
  const R k1 = (1.0 - 192.0 / math::power<5>(pi) * constant / slenderness) / 3.0;
  return {k1, k1 / (1.0 - 8.0 / (pi * pi) * edge)};
}
} // namespace text

/// A solid rectangular bar; the greatest stress is in the middle of the long sides.
///
/// T/stress = k2 b h^2, J = k1 b h^3, b the longer side: square k1 0.1406, k2 0.2082; 3 x 2 0.196, 0.231; plastic
/// h^2 (3 b - h)/6 (sand heap). Source: Saint-Venant's series; Timoshenko; Boresi & Schmidt, Table 6.1 (three figures).
class RectangleSection : public Section {
public:
  ///   width, height  sides [m], above 0, either may be the longer one
  RectangleSection(Length width, Length height)
      : RectangleSection(checked(width, "width"), checked(height, "height"), width >= height) {}

  /// About the axis for which it is smaller: b h^3/12 [m4].
  SecondMomentOfArea second_moment() const noexcept { return second_moment_; }

private:
  static Length checked(Length side, const char* name) {
    check::positive(side.value(), {"RectangleSection", name, "m"});
    return side;
  }
  RectangleSection(Length width, Length height, bool wide)
      : RectangleSection(wide ? width : height, wide ? height : width,
                         text::rectangle_factors(static_cast<double>(wide ? width / height : height / width))) {}
  RectangleSection(Length b, Length h, const text::RectangleFactors<double>& k)
      : Section(k.k2 * b * h * h, h * h * (3.0 * b - h) / 6.0, k.k1 * (b * h) * (h * h), b * h),
        second_moment_(b * h * (h * h) / 12.0) {}

  SecondMomentOfArea second_moment_;
};

/// A solid bar whose section is an equilateral triangle; the greatest stress is in the middle of the sides.
///
/// T/stress = a^3/20, J = sqrt(3) a^4/80, plastic a^3/12 (sand heap). Hibbeler, Table 5-1, rounds 80/sqrt(3) = 46.19 to
/// 46, which makes the bar 0.4 % stiffer than it is. Source: Timoshenko & Goodier, Theory of Elasticity (exact).
class TriangleSection : public Section {
public:
  ///   side  a  [m], above 0
  explicit TriangleSection(Length side) : TriangleSection(checked(side), math::power<2>(side)) {}

private:
  static constexpr double root3 = 1.73205080756887729; ///< exact to the last digit of a double
  static Length checked(Length side) {
    check::positive(side.value(), {"TriangleSection", "side", "m"});
    return side;
  }
  TriangleSection(Length side, Area square)
      : Section(square * side / 20.0, square * side / 12.0, root3 / 80.0 * (square * square), root3 / 4.0 * square) {}
};

/// A thin profile that is not closed (channel, slit tube): weak in torsion.
///
/// J = sum b t^3/3, greatest stress T t/J in the thickest strip; plastic sum b t^2/2. Valid for strips much wider than
/// thick (at b/t = 10 a strip is 6 % weaker); inner corners: see corner_concentration.
/// Source: Boresi & Schmidt, section 6.7.
class OpenSection : public Section {
public:
  ///   walls  the strips, at least one; width and thickness above 0, no strip thicker than wide
  explicit OpenSection(const std::vector<Wall>& walls) : OpenSection(walls, constant(walls)) {}

private:
  static SecondMomentOfArea constant(const std::vector<Wall>& walls) {
    detail::check_walls(walls, "OpenSection");
    for (const Wall& wall : walls) {
      check::within(wall.thickness.value(), 0.0, wall.width.value(), {"OpenSection", "walls.thickness", "m"});
    }
    return detail::wall_sum(walls, [](const Wall& w) {
      return SecondMomentOfArea(w.width * w.thickness * (w.thickness * w.thickness) / 3.0);
    });
  }
  OpenSection(const std::vector<Wall>& walls, SecondMomentOfArea j)
      : Section(
            j / detail::thickest(walls),
            detail::wall_sum(walls, [](const Wall& w) { return Volume(0.5 * w.width * w.thickness * w.thickness); }), j,
            detail::wall_sum(walls, [](const Wall& w) { return Area(w.width * w.thickness); })) {}
};

} // namespace v0
} // namespace fieldshaft
