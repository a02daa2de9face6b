#pragma once
// The path of a point mass through still air, by quadrature along its slope. Bare SI numbers; fronts: throw.hpp.
//
// With drag against the motion and in proportion to v^2, let s be the hyperbolic angle of the slope, dy/dx = sinh s.
// Gravity turns the path steadily downwards, s falls from s0 without limit, and the horizontal speed u follows in
// closed form from the slope alone (hodograph; Chudinov, Athens J. Nat. Formal Sci., 2014, starts from it too):
//   (u0/u)^2 = D(s) = 1 + (k u0^2 / g) (F(s0) - F(s)),   F(s) = sinh s cosh s + s,   k = rho C_d A / (2 m)
//   -dx/ds = (u0^2/g) cosh s / D,   -dy/ds = (u0^2/g) sinh s cosh s / D,   -dt/ds = (u0/g) cosh s / sqrt D
// The integrands are smooth, and D never falls below one. Each panel is at most half as wide as the distance in which
// D would change by its own size, which keeps their poles at least several half-widths away from the panel's middle:
// Gauss' rule of eight points then errs by less than 1e-12 of the panel.

#include <array>
#include <cmath>
#include <cstddef>

namespace fieldshaft {
inline namespace v0 {
namespace detail {

/// How a body leaves: speed [m/s], slope angle [rad], height [m], k = rho C_d A / (2 m) [1/m], gravity [m/s²].
struct Launch {
  double speed;
  double angle;
  double height;
  double drag;
  double gravity;
};

/// What a stretch of the path adds.
struct PathStep {
  double x = 0.0;
  double y = 0.0;
  double t = 0.0;

  PathStep& operator+=(const PathStep& step) noexcept {
    x += step.x;
    y += step.y;
    t += step.t;
    return *this;
  }
};

/// Where and how the body comes down; `slope` is s at the ground.
struct Landing {
  double x = 0.0;
  double t = 0.0;
  double top = 0.0;
  double speed = 0.0;
  double slope = 0.0;
};

class SlopePath {
public:
  explicit SlopePath(const Launch& launch) noexcept
      : gravity_(launch.gravity), speed_(launch.speed * std::cos(launch.angle)),
        start_(std::asinh(std::tan(launch.angle))), shape_start_(shape(start_)),
        drag_(launch.drag * speed_ * speed_ / launch.gravity) {}

  double start() const noexcept { return start_; }

  /// Speed along the path at a slope.
  double speed(double s) const noexcept { return speed_ * std::cosh(s) / std::sqrt(slowing(s)); }

  /// -dy/ds.
  double climb(double s) const noexcept {
    return speed_ * speed_ / gravity_ * std::sinh(s) * std::cosh(s) / slowing(s);
  }

  /// Width of a panel that starts at a slope and goes down.
  double width(double s) const noexcept {
    constexpr double widest = 0.5;
    const double change = 2.0 * drag_ * std::cosh(s) * std::cosh(s);
    const double size = slowing(s);
    return change * widest > 0.5 * size ? 0.5 * size / change : widest;
  }

  /// The path from one slope down to another, as one panel.
  PathStep panel(double from, double to) const noexcept {
    constexpr std::array<double, 4> nodes = {0.1834346424956498, 0.5255324099163290, 0.7966664774136267,
                                             0.9602898564975363};
    constexpr std::array<double, 4> weights = {0.3626837833783620, 0.3137066458778873, 0.2223810344533745,
                                               0.1012285362903763};
    const double middle = 0.5 * (from + to);
    const double half = 0.5 * (from - to);
    PathStep sum;
    for (std::size_t i = 0; i < nodes.size(); ++i) {
      sum += point(middle - half * nodes[i], half * weights[i]);
      sum += point(middle + half * nodes[i], half * weights[i]);
    }
    return sum;
  }

private:
  static double shape(double s) noexcept { return std::sinh(s) * std::cosh(s) + s; }
  double slowing(double s) const noexcept { return 1.0 + drag_ * (shape_start_ - shape(s)); }

  PathStep point(double s, double weight) const noexcept {
    const double cosh = std::cosh(s);
    const double size = slowing(s);
    const double dx = weight * speed_ * speed_ / gravity_ * cosh / size;
    return {dx, dx * std::sinh(s), weight * speed_ / gravity_ * cosh / std::sqrt(size)};
  }

  double gravity_;
  double speed_; ///< horizontal, at launch
  double start_;
  double shape_start_;
  double drag_;
};

/// Slope between `from` and `to` at which the body, `height` above the ground at `from`, reaches the ground.
inline double slope_at_ground(const SlopePath& path, double from, double to, double height) noexcept {
  double above = from;
  double below = to;
  double s = 0.5 * (from + to);
  for (int i = 0; i < 60 && above - below > 1e-15 * std::fmax(1.0, std::abs(below)); ++i) {
    const double y = height + path.panel(from, s).y;
    (y > 0.0 ? above : below) = s;
    const double newton = s + y / path.climb(s); // dy/ds = -climb, and climb < 0 on the way down
    const double next = newton < above && newton > below ? newton : 0.5 * (above + below);
    if (std::abs(next - s) <= 1e-16 * std::fmax(1.0, std::abs(s))) return next;
    s = next;
  }
  return s;
}

/// Follows the path to the ground.
inline Landing fly(const Launch& launch) noexcept {
  const SlopePath path(launch);
  constexpr double vertical = -300.0; // far beyond it cosh overflows; here the body falls plumb at its terminal speed
  double s = path.start();
  PathStep now{0.0, launch.height, 0.0};
  double top = launch.height;
  while (s > 0.0 || now.y > 0.0) {
    if (s < vertical) {
      const double terminal = std::sqrt(launch.gravity / launch.drag);
      return {now.x, now.t + now.y / terminal, top, terminal, s};
    }
    double next = s - path.width(s);
    if (s > 0.0 && next < 0.0) next = 0.0; // the highest point ends a panel
    PathStep step = path.panel(s, next);
    if (next < 0.0 && now.y + step.y <= 0.0) {
      next = slope_at_ground(path, s, next, now.y);
      step = path.panel(s, next);
      return {now.x + step.x, now.t + step.t, top, path.speed(next), next};
    }
    now += step;
    top = std::fmax(top, now.y);
    s = next;
  }
  return {now.x, now.t, top, path.speed(s), s};
}

} // namespace detail
} // namespace v0
} // namespace fieldshaft
