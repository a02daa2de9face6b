#pragma once
// Thin closed profiles: tubes of any outline, as telescoping members are made of.

#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/shaft/section.hpp>

#include <vector>

namespace fieldshaft {
inline namespace v0 {

namespace text {
template <class A, class L> constexpr auto profile_torsion_modulus(A enclosed_area, L thinnest_wall) noexcept {
  return 2.0 * enclosed_area * thinnest_wall;
}
/// `slenderness` is the integral of ds/t round the middle line.
template <class A, class R> constexpr auto profile_torsion_constant(A enclosed_area, R slenderness) noexcept {
  return 4.0 * enclosed_area * enclosed_area / slenderness;
}
} // namespace text

/// The wall over 4 A_m / U (the mean diameter of a round tube) up to which the formula of thin profiles was checked.
///
/// There, on a round tube, it gives the fully plastic torque 0.3 % and the stiffness 1.0 % low (safe), and the greatest
/// stress 8.2 % low (not safe), because it is the mean through the wall: the surface is above it by about t / D_m.
/// Source: the exact round tube at t / D_m = 0.1 (computed; Boresi & Schmidt, Ex. 6.9, prints 1 % for the stiffness).
inline constexpr double thin_wall_ratio = 0.1;

/// A thin closed profile of any outline, one wall thickness all round (Bredt and Batho).
///
/// The stress is taken as even through the wall, T/(2 A_m t), J = 4 A_m^2 t/U; a profile that yields anywhere then
/// yields everywhere, so that its plastic torque is its yield torque. How far that holds: thin_wall_ratio. An inner
/// corner raises the stress: see corner_concentration. Source: Hibbeler, section 5.7; Boresi & Schmidt, section 6.7.
class ProfileSection : public Section {
public:
  ///   enclosed_area  A_m  inside the middle line of the wall [m2], above 0
  ///   perimeter      U    of the middle line [m]; no line can enclose the area with less than 2 sqrt(pi A_m)
  ///   wall           t    [m], above 0; no profile has room for more than 4 A_m / U, the diameter of a circle
  ProfileSection(Area enclosed_area, Length perimeter, Length wall)
      : Section(checked_modulus(enclosed_area, perimeter, wall), text::profile_torsion_modulus(enclosed_area, wall),
                text::profile_torsion_constant(enclosed_area, static_cast<double>(perimeter / wall)), perimeter * wall),
        enclosed_area_(enclosed_area), perimeter_(perimeter), wall_(wall) {}

  constexpr Area enclosed_area() const noexcept { return enclosed_area_; }
  constexpr Length perimeter() const noexcept { return perimeter_; }
  constexpr Length wall() const noexcept { return wall_; }

private:
  static Volume checked_modulus(Area enclosed_area, Length perimeter, Length wall) {
    constexpr const char* function = "ProfileSection";
    check::positive(enclosed_area.value(), {function, "enclosed_area", "m²"});
    // The circle is the shortest line round an area; 1e-9 leaves room for rounded inputs.
    const Length shortest = math::sqrt(4.0 * pi * enclosed_area);
    check::at_least(perimeter.value(), shortest.value() * (1.0 - 1e-9), {function, "perimeter", "m"});
    check::positive(wall.value(), {function, "wall", "m"});
    check::within(wall.value(), 0.0, (4.0 * enclosed_area / perimeter).value(), {function, "wall", "m"});
    return text::profile_torsion_modulus(enclosed_area, wall);
  }

  Area enclosed_area_;
  Length perimeter_;
  Length wall_;
};

/// The section as it is, and whether its wall is thin enough for the formula of thin profiles.
///
/// Outside: a wall above a tenth of 4 A_m / U; see thin_wall_ratio for what is off there. Example: square tube of 40 mm
/// outside with a wall of 4 mm: outside (4 over 36).
inline Validated<ProfileSection> thin_profile(const ProfileSection& section) {
  const Length mean = 4.0 * section.enclosed_area() / section.perimeter();
  const bool thin = section.wall() <= thin_wall_ratio * mean * (1.0 + 1e-12);
  return {section, thin ? nullptr : "the wall is thicker than a tenth of the mean diameter"};
}

/// One wall of a closed profile, or one strip of an open one.
struct Wall {
  Length width; ///< along the middle line
  Length thickness;
};

namespace detail {
inline void check_walls(const std::vector<Wall>& walls, const char* function) {
  if (walls.empty()) fail_input(function, "walls", "none", "at least one");
  for (const Wall& wall : walls) {
    check::positive(wall.width.value(), {function, "walls.width", "m"});
    check::positive(wall.thickness.value(), {function, "walls.thickness", "m"});
  }
}
inline Length thinnest(const std::vector<Wall>& walls) noexcept {
  Length least = walls.front().thickness;
  for (const Wall& wall : walls) least = wall.thickness < least ? wall.thickness : least;
  return least;
}
inline Length thickest(const std::vector<Wall>& walls) noexcept {
  Length most = walls.front().thickness;
  for (const Wall& wall : walls) most = wall.thickness > most ? wall.thickness : most;
  return most;
}
template <class F> auto wall_sum(const std::vector<Wall>& walls, F of_wall) {
  decltype(of_wall(walls.front())) sum{};
  for (const Wall& wall : walls) sum += of_wall(wall);
  return sum;
}
} // namespace detail

/// A thin closed profile whose walls differ in thickness; the thinnest one is the most stressed.
class UnevenProfileSection : public Section {
public:
  ///   enclosed_area  A_m  inside the middle line [m2], above 0, no more than walls of this length can enclose
  ///   walls          at least one; width and thickness above 0
  UnevenProfileSection(Area enclosed_area, const std::vector<Wall>& walls)
      : UnevenProfileSection(walls, checked(enclosed_area, walls)) {}

  constexpr Area enclosed_area() const noexcept { return enclosed_area_; }

private:
  // The walls are checked before anything is worked out from them.
  static Area checked(Area enclosed_area, const std::vector<Wall>& walls) {
    constexpr const char* function = "UnevenProfileSection";
    detail::check_walls(walls, function);
    const Length perimeter = detail::wall_sum(walls, [](const Wall& w) { return w.width; });
    check::positive(enclosed_area.value(), {function, "enclosed_area", "m²"});
    check::within(enclosed_area.value(), 0.0, (perimeter * perimeter / (4.0 * pi)).value() * (1.0 + 1e-9),
                  {function, "enclosed_area", "m²"});
    return enclosed_area;
  }
  UnevenProfileSection(const std::vector<Wall>& walls, Area enclosed_area)
      : Section(text::profile_torsion_modulus(enclosed_area, detail::thinnest(walls)),
                text::profile_torsion_modulus(enclosed_area, detail::thinnest(walls)),
                text::profile_torsion_constant(
                    enclosed_area,
                    detail::wall_sum(walls, [](const Wall& w) { return static_cast<double>(w.width / w.thickness); })),
                detail::wall_sum(walls, [](const Wall& w) { return Area(w.width * w.thickness); })),
        enclosed_area_(enclosed_area) {}

  Area enclosed_area_;
};

/// Shear stress in a wall of a closed profile [Pa].
///
/// t = T / (2 A_m t)
///   enclosed_area  A_m  inside the middle line [m2], above 0
///   torque         T    [N·m], at least 0
///   wall           t    thickness at the place [m], above 0
/// Source: Hibbeler, section 5.7. Example: 57 x 35 mm, 35 N·m: 2.924 MPa where the wall is 3 mm, 1.754 MPa at 5 mm.
constexpr Stress wall_stress(Area enclosed_area, Torque torque, Length wall) {
  check::positive(enclosed_area.value(), {"wall_stress", "enclosed_area", "m²"});
  check::not_negative(torque.value(), {"wall_stress", "torque", "N·m"});
  check::positive(wall.value(), {"wall_stress", "wall", "m"});
  return without_radian(torque) / text::profile_torsion_modulus(enclosed_area, wall);
}

} // namespace v0
} // namespace fieldshaft
