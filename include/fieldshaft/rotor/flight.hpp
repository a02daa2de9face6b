#pragma once
// The path of a point mass through still air, by quadrature along its slope. Bare SI numbers; fronts: throw.hpp.
//
// With drag against the motion and in proportion to v^2, let s be the hyperbolic angle of the slope, dy/dx = sinh s.
// Gravity turns the path steadily downwards: s = s0 - q falls as the turn q grows from 0 without limit, and the
// horizontal speed u follows in closed form from the turn alone (the hodograph; any text on exterior ballistics):
//   (u0/u)^2 = D = 1 + (k u0^2 / g) (cosh(2 s0 - q) sinh q + q),   k = rho C_d A / (2 m)
//   dx/dq = (u0^2/g) cosh s / D,   dy/dq = (u0^2/g) sinh s cosh s / D,   dt/dq = (u0/g) cosh s / sqrt D
// The integrands are smooth, and D never falls below one. Each panel is at most half as wide as the turn in which D
// would change by its own size, which keeps their poles at least several half-widths away from the panel's middle:
// Gauss' rule of eight points then errs by less than 1e-12 of the panel (tested over 17 decades of drag).

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

/// Where and how the body comes down; `slope` is s there.
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
        start_(std::asinh(std::tan(launch.angle))), drag_(launch.drag * speed_ * speed_ / launch.gravity) {}

  /// s at a turn; at a turn of slope(0) the path is level.
  double slope(double turn) const noexcept { return start_ - turn; }

  /// Speed along the path.
  double speed(double turn) const noexcept { return speed_ * std::cosh(slope(turn)) / std::sqrt(slowing(turn)); }

  /// dy/dq.
  double climb(double turn) const noexcept { return point(turn, 1.0).y; }

  /// Width of a panel that starts at a turn.
  double width(double turn) const noexcept {
    constexpr double widest = 0.5;
    const double cosh = std::cosh(slope(turn));
    const double change = 2.0 * drag_ * cosh * cosh; // dD/dq
    const double size = slowing(turn);
    return change * widest > 0.5 * size ? 0.5 * size / change : widest;
  }

  /// The path from one turn to a later one, as one panel.
  PathStep panel(double from, double to) const noexcept {
    constexpr std::array<double, 4> nodes = {0.1834346424956498, 0.5255324099163290, 0.7966664774136267,
                                             0.9602898564975363};
    constexpr std::array<double, 4> weights = {0.3626837833783620, 0.3137066458778873, 0.2223810344533745,
                                               0.1012285362903763};
    const double middle = 0.5 * (from + to);
    const double half = 0.5 * (to - from);
    PathStep sum;
    for (std::size_t i = 0; i < nodes.size(); ++i) {
      sum += point(middle - half * nodes[i], half * weights[i]);
      sum += point(middle + half * nodes[i], half * weights[i]);
    }
    return sum;
  }

private:
  /// D, in the form that keeps its digits at small turns.
  double slowing(double turn) const noexcept {
    return 1.0 + drag_ * (std::cosh(2.0 * start_ - turn) * std::sinh(turn) + turn);
  }

  PathStep point(double turn, double weight) const noexcept {
    const double s = slope(turn);
    const double cosh = std::cosh(s);
    const double size = slowing(turn);
    const double dx = weight * speed_ * speed_ / gravity_ * cosh / size;
    return {dx, dx * std::sinh(s), weight * speed_ / gravity_ * cosh / std::sqrt(size)};
  }

  double gravity_;
  double speed_; ///< horizontal, at launch
  double start_;
  double drag_;
};

/// The turn between `above` and `below` at which the body, `height` above the ground at `above`, reaches the ground.
/// It falls all the way between them. Newton's steps, kept inside the bracket by halving.
inline double turn_at_ground(const SlopePath& path, double above, double below, double height) noexcept {
  const double from = above;
  double turn = 0.5 * (above + below);
  for (int i = 0; i < 60; ++i) {
    const double y = height + path.panel(from, turn).y;
    (y > 0.0 ? above : below) = turn;
    const double newton = turn - y / path.climb(turn);
    const double next = newton > above && newton < below ? newton : 0.5 * (above + below);
    if (std::abs(next - turn) <= 1e-15 * below) return next;
    turn = next;
  }
  return turn;
}

/// Follows the path to the ground.
inline Landing fly(const Launch& launch) noexcept {
  const SlopePath path(launch);
  constexpr double plumb = -300.0; // slope; little beyond it cosh overflows, and the body long falls at terminal speed
  const double level = path.slope(0.0);
  double turn = 0.0;
  PathStep now{0.0, launch.height, 0.0};
  double top = launch.height;
  while (turn < level || now.y > 0.0) {
    if (path.slope(turn) < plumb) {
      const double terminal = std::sqrt(launch.gravity / launch.drag);
      return {now.x, now.t + now.y / terminal, top, terminal, path.slope(turn)};
    }
    double next = turn + path.width(turn);
    if (turn < level && next > level) next = level; // the highest point ends a panel
    PathStep step = path.panel(turn, next);
    if (next > level && now.y + step.y <= 0.0) {
      next = turn_at_ground(path, turn, next, now.y);
      step = path.panel(turn, next);
      return {now.x + step.x, now.t + step.t, top, path.speed(next), path.slope(next)};
    }
    now += step;
    top = std::fmax(top, now.y);
    turn = next;
  }
  return {now.x, now.t, top, path.speed(turn), path.slope(turn)};
}

} // namespace detail
} // namespace v0
} // namespace fieldshaft
