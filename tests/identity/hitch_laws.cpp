// Laws of the hitch: bars keep their lengths, and a second way to each closed form.

#include <fieldshaft/hitch.hpp>

#include "close.hpp"
#include "random.hpp"

#include <functional>

using namespace fieldshaft;

namespace {

/// Root of a function that changes its sign once between low and high, by halving.
double root(const std::function<double(double)>& f, double low, double high) {
  const bool rising = f(high) > 0.0;
  for (int i = 0; i < 200; ++i) {
    const double middle = 0.5 * (low + high);
    ((f(middle) > 0.0) == rising ? high : low) = middle;
  }
  return 0.5 * (low + high);
}

} // namespace

TEST_CASE("four bars: the loop closes on both branches") {
  RandomInputs random;
  int closed = 0;
  for (int i = 0; i < 4000; ++i) {
    const double a = random.between(0.1, 2), b = random.between(0.1, 2), c = random.between(0.1, 2),
                 d = random.between(0.1, 2), t = random.between(-3.1, 3.1);
    const double base = std::hypot(d - a * std::cos(t), a * std::sin(t));
    if (base > 0.999 * (b + c) || base < 1.001 * std::abs(b - c)) continue; // near the ends the digits halve
    ++closed;
    for (const FourBarBranch branch : {FourBarBranch::open, FourBarBranch::crossed}) {
      const FourBarAngles x = four_bar_angles(metres(a), metres(b), metres(c), metres(d), radians(t), branch);
      const double ex = a * std::cos(t) + b * math::cos(x.coupler) - d - c * math::cos(x.rocker);
      const double ey = a * std::sin(t) + b * math::sin(x.coupler) - c * math::sin(x.rocker);
      CHECK(std::hypot(ex, ey) < 1e-13);
    }
  }
  CHECK(closed > 500);
}

TEST_CASE("a linkage followed step by step from level gives the same pitch: the branch never jumps") {
  RandomInputs random;
  for (int i = 0; i < 50; ++i) {
    ThreePointLinkage l;
    l.lower_pivot_behind = millimetres(-random.between(100, 300));
    l.lower_pivot_below = millimetres(random.between(50, 250));
    l.lower_link = millimetres(random.between(750, 1000));
    l.top_pivot_behind = millimetres(-random.between(50, 250));
    l.top_pivot_below = millimetres(-random.between(250, 450));
    l.mast_height = millimetres(random.between(450, 700));
    l.mast_forward = millimetres(random.between(-80, 80));
    l.top_link = top_link_for(l, millimetres(random.between(-150, 100)));
    const double px = -l.top_pivot_behind.value(), pz = -l.top_pivot_below.value();
    double pitch = mounted_pose(l, {}).attitude.pitch.value();
    for (int step = 0; step <= 90; ++step) {
      const double lift = 0.005 * step;
      const double raised = std::asin(lift / l.lower_link.value());
      const double hx = -l.lower_pivot_behind.value() - l.lower_link.value() * std::cos(raised);
      const double hz = -l.lower_pivot_below.value() + lift;
      const auto miss = [&](double t) {
        const double mx = l.mast_forward.value(), mz = l.mast_height.value();
        return std::hypot(hx + std::cos(t) * mx + std::sin(t) * mz - px,
                          hz - std::sin(t) * mx + std::cos(t) * mz - pz) -
               l.top_link.value();
      };
      pitch = root(miss, pitch - 0.05, pitch + 0.05);
      CHECK(std::abs(mounted_pose(l, {metres(lift), {}, {}}).attitude.pitch.value() - pitch) < 1e-9);
    }
  }
}

TEST_CASE("hollow and crest: the wheel's foot stands on the arc, found by a search too") {
  RandomInputs random;
  for (int i = 0; i < 300; ++i) {
    const WheelPlaces w{metres(random.between(1.8, 3.2)), metres(random.between(0.5, 1.2)),
                        metres(random.between(1.0, 5.0)), metres(random.between(0.2, 0.8))};
    const double radius = random.between(12, 200);
    const double half = 0.5 * w.wheelbase.value();
    for (const double side : {1.0, -1.0}) {
      const Angle pitch = side > 0 ? hollow_pitch(w, metres(radius)) : crest_pitch(w, metres(radius));
      const double centre = side * std::sqrt(radius * radius - half * half);
      const auto off_arc = [&](double t) { // foot of the implement's wheel, axes at the tractor's rear wheel foot
        const double x = -w.overhang.value() - w.tongue.value() * std::cos(t) - w.pin_height.value() * std::sin(t);
        const double z = w.pin_height.value() + w.tongue.value() * std::sin(t) - w.pin_height.value() * std::cos(t);
        return std::hypot(x - half, z - centre) - radius;
      };
      CHECK(std::abs(off_arc(pitch.value())) < 1e-11);
      CHECK(std::abs(root(off_arc, -0.7, 0.7) - pitch.value()) < 1e-11);
      CHECK((pitch > Angle{}) == (side > 0));
    }
  }
}

TEST_CASE("a steady turn: tractor and implement turn about one point") {
  RandomInputs random;
  for (int i = 0; i < 300; ++i) {
    const double radius = random.between(3, 15), overhang = random.between(0, 1.2), tongue = random.between(0.5, 2.9);
    const double angle = steady_turn_angle(metres(radius), metres(overhang), metres(tongue)).value();
    // Left turn: centre to the left of the rear axle. The implement's axle line must pass through it.
    const double x = -overhang - tongue * std::cos(-angle), y = -tongue * std::sin(-angle); // axle, from the rear axle
    const double along = (0 - x) * std::cos(-angle) + (radius - y) * std::sin(-angle);
    CHECK(std::abs(along) < 1e-12 * radius);
  }
}
