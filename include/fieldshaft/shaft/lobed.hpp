#pragma once
// Profiles of telescoping tubes by their measures: square, rectangular, and with two, three or more lobes.

#include <fieldshaft/shaft/profile.hpp>

#include <algorithm>
#include <array>

namespace fieldshaft {
inline namespace v0 {

/// A thin closed profile whose shape is known, so that its stiffness in bending is known too.
class ShapedProfile : public ProfileSection {
public:
  ///   second_moment  about the axis for which it is least [m4], above 0
  ///   others         as for ProfileSection
  ShapedProfile(Area enclosed_area, Length perimeter, Length wall, SecondMomentOfArea second_moment)
      : ProfileSection(enclosed_area, perimeter, wall), second_moment_(second_moment) {
    check::positive(second_moment.value(), {"ShapedProfile", "second_moment", "m⁴"});
  }
  constexpr SecondMomentOfArea second_moment() const noexcept { return second_moment_; }

private:
  SecondMomentOfArea second_moment_;
};

namespace detail {

/// sin(x)/x, also at 0.
inline double sinc(double x) noexcept { return std::abs(x) < 1e-4 ? 1.0 - x * x / 6.0 : std::sin(x) / x; }

/// A piece of an outline: a circular arc that starts at (x, y) with its outward normal at an angle.
/// Curvature above 0 bends inwards (convex), 0 is straight, below 0 is hollow. It runs against the clock.
struct Arc {
  double x, y, normal, curvature, length;
};

/// Area, length and second moments of a closed line about its centre, per metre of wall.
struct OutlineSums {
  double area = 0.0, length = 0.0, xx = 0.0, yy = 0.0;
};

/// Adds an arc by Gauss's rule of eight points, which misses less than 1e-9 of an arc of half a turn.
inline void add_arc(OutlineSums& sums, const Arc& arc) noexcept {
  constexpr std::array<double, 4> at{0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363};
  constexpr std::array<double, 4> weight{0.3626837833783620, 0.3137066458778873, 0.2223810344533745,
                                         0.1012285362903763};
  for (std::size_t i = 0; i < at.size(); ++i) {
    for (const double side : {-1.0, 1.0}) {
      const double s = 0.5 * arc.length * (1.0 + side * at[i]);
      const double turn = arc.curvature * s;
      const double chord = s * sinc(0.5 * turn); // straight from the start to the point
      const double way = arc.normal + 0.5 * (pi + turn);
      const double x = arc.x + chord * std::cos(way);
      const double y = arc.y + chord * std::sin(way);
      const double normal = arc.normal + turn;
      const double w = 0.5 * arc.length * weight[i];
      sums.area += 0.5 * w * (x * std::cos(normal) + y * std::sin(normal));
      sums.length += w;
      sums.xx += w * x * x;
      sums.yy += w * y * y;
    }
  }
}

/// The two arcs of half a lobe of the middle line, from the tip of the lobe to the middle of the flank.
struct HalfLobe {
  Arc tip, flank;
};

/// `half` is pi over the lobes; radii of the middle line: over the lobes, between them, and of the tip.
inline HalfLobe half_lobe(double half, double over, double between, double tip) noexcept {
  const double centre = over - tip;
  // The flank touches the tip's circle and passes the middle between lobes at right angles: its curvature follows.
  const double curvature = 2.0 * (between - tip - centre * std::cos(half)) /
                           (centre * centre + between * between - 2.0 * centre * between * std::cos(half) - tip * tip);
  const double flat = 1.0 - curvature * between;
  const double normal = std::atan2(flat * std::sin(half), curvature * centre + flat * std::cos(half));
  // From the middle of the flank the touching point lies this far along the tangent there.
  const double along = centre * std::sin(half) + tip * std::sin(half - normal);
  return {{over, 0.0, 0.0, 1.0 / tip, tip * normal},
          {centre + tip * std::cos(normal), tip * std::sin(normal), normal, curvature, along / sinc(half - normal)}};
}

/// The sums of the whole outline of `lobes` lobes.
inline OutlineSums lobed_sums(int lobes, const HalfLobe& half) noexcept {
  OutlineSums sums;
  add_arc(sums, half.tip);
  add_arc(sums, half.flank);
  const double parts = 2.0 * lobes;
  // With three lobes or more every axis is alike; with two the long one keeps its parts apart.
  const double mean = 0.5 * (sums.xx + sums.yy);
  return {parts * sums.area, parts * sums.length, parts * (lobes > 2 ? mean : sums.xx),
          parts * (lobes > 2 ? mean : sums.yy)};
}

} // namespace detail

/// A tube with lobes (lemon, three-lobed, star, bowed square): equal tips joined by arcs that touch them.
///
/// Tips of one radius lie on a circle; between two tips one arc (convex, straight or hollow) touches both and passes at
/// the inscribed circle. Area, perimeter and second moment follow from the arcs without further approximation:
/// with R, r half the circumscribed and inscribed diameter and q the tip radius, all less half the wall, c = R - q and
/// a = pi/lobes, the arc has the curvature 2 (r - q - c cos a)/(c^2 + r^2 - 2 c r cos a - q^2).
///   lobes                   2 or more (12 at most)
///   circumscribed_diameter  over the lobes, outside [m], above the inscribed one
///   inscribed_diameter      between the lobes, outside [m], above 0; with an odd count no calliper measures it: take
///                           twice the least distance from the axis
///   tip_radius              outside [m], above half of the wall, below half of the circumscribed diameter
///   wall                    [m], above 0
/// Accuracy: exact for such an outline with a thin wall; a drawn tube differs from it. A tip radius that is wrong by a
/// fifth changes the yield torque by 0.6 % (2 lobes, 40 and 32 mm) or 3 % (3 lobes, 54 and 36 mm, hollow flanks).
/// Source: geometry (handbook). Example: 2 lobes, 40 and 32 mm, tip 8 mm, wall 3 mm: A_m 807.7 mm2, U 101.99 mm.
inline ShapedProfile lobed_profile(int lobes, Length circumscribed_diameter, Length inscribed_diameter,
                                   Length tip_radius, Length wall) {
  constexpr const char* function = "lobed_profile";
  check::within(lobes, 2.0, 12.0, {function, "lobes", ""});
  check::positive(wall.value(), {function, "wall", "m"});
  check::positive(inscribed_diameter.value(), {function, "inscribed_diameter", "m"});
  check::positive(circumscribed_diameter.value(), {function, "circumscribed_diameter", "m"});
  check::between(inscribed_diameter.value(), wall.value(), circumscribed_diameter.value(),
                 {function, "inscribed_diameter", "m"});
  check::between(tip_radius.value(), 0.5 * wall.value(), 0.5 * circumscribed_diameter.value(),
                 {function, "tip_radius", "m"});
  const double half_wall = 0.5 * wall.value();
  const double half = pi / lobes;
  const double over = 0.5 * circumscribed_diameter.value() - half_wall;
  const double between = 0.5 * inscribed_diameter.value() - half_wall;
  const double tip = tip_radius.value() - half_wall;
  // The middle between two tips must lie outside both of their circles, with a flank left on either side of it.
  const double centre = over - tip;
  const double reach = centre * centre + between * between - 2.0 * centre * between * std::cos(half) - tip * tip;
  const detail::HalfLobe outline = detail::half_lobe(half, over, between, tip);
  if (!(reach > 0.0 && outline.flank.length > 0.0)) {
    fail_input(function, "tip_radius", check::text_of(tip_radius.value(), "m"),
               "small enough that neighbouring tips leave a flank between them");
  }
  const detail::OutlineSums sums = detail::lobed_sums(lobes, outline);
  return {Area::from_value(sums.area), Length::from_value(sums.length), wall,
          SecondMomentOfArea::from_value(wall.value() * std::min(sums.xx, sums.yy))};
}

namespace text {
/// Second moment of a square with rounded corners about an axis through its middle, parallel to a side.
template <class L> constexpr auto rounded_square_second_moment(L side, L radius) noexcept {
  // Less, at each corner, what the quarter circle leaves of its square; d to its centre of area.
  const auto square = radius * radius;
  const auto left = (1.0 - pi / 4.0) * square;
  const auto own = (1.0 / 3.0 - pi / 16.0) * (square * square); // about an axis along the two centres of the corners
  const auto first = (1.0 / 6.0) * square * radius;             // first moment of the left piece about that axis
  const auto lever = 0.5 * side - radius;
  return side * side * (side * side) / 12.0 - 4.0 * (own + 2.0 * lever * first + lever * lever * left);
}
} // namespace text

/// A square tube, with rounded corners if they are stated.
///
/// Middle line: side s = width - t, corner radius q = corner_radius - t/2; A_m = s^2 - (4 - pi) q^2,
/// U = 4 s - (8 - 2 pi) q; second moment exact for the material between outside and inside
///   width          across flats, outside [m], above 0
///   wall           t  [m], above 0, below width/2
///   corner_radius  outside [m], 0 for sharp corners inside and outside, else from t/2 to width/2
/// Accuracy: a thin wall; at t = s/10 see thin_wall_ratio. Source: geometry. Example: 40 mm, wall 4 mm, sharp: A_m 1296
/// mm2, U 144 mm.
inline ShapedProfile square_profile(Length width, Length wall, Length corner_radius = {}) {
  constexpr const char* function = "square_profile";
  check::positive(width.value(), {function, "width", "m"});
  check::between(wall.value(), 0.0, 0.5 * width.value(), {function, "wall", "m"});
  const bool sharp = corner_radius.value() == 0.0;
  if (!sharp) {
    check::within(corner_radius.value(), 0.5 * wall.value(), 0.5 * width.value(), {function, "corner_radius", "m"});
  }
  const Length side = width - wall;
  const Length corner = sharp ? Length{} : corner_radius - 0.5 * wall;
  const Length inside = width - 2.0 * wall;
  const Length inner_corner = corner_radius > wall ? corner_radius - wall : Length{};
  return {side * side - (4.0 - pi) * (corner * corner), 4.0 * side - (8.0 - 2.0 * pi) * corner, wall,
          text::rounded_square_second_moment(width, corner_radius) -
              text::rounded_square_second_moment(inside, inner_corner)};
}

} // namespace v0
} // namespace fieldshaft
