// Laws of shafts, and second methods: fields solved on grids, sums over fibres, outlines walked point by point.

#include <fieldshaft/joint.hpp>
#include <fieldshaft/shaft.hpp>

#include "close.hpp"
#include "random.hpp"

#include <array>
#include <functional>
#include <vector>

using namespace fieldshaft;

namespace {

constexpr Stress steel_g = gigapascals(79.3);

struct AnyTube {
  Length outer, inner;
  AnyTube(RandomInputs& random)
      : outer(millimetres(random.across(5, 300))), inner(outer * random.between(0.02, 0.995)) {}
  TubeSection section() const { return {outer, inner}; }
};

/// Midpoint sum of a function over an interval.
double sum_over(double low, double high, int steps, const std::function<double(double)>& f) {
  double sum = 0.0;
  for (int i = 0; i < steps; ++i) sum += f(low + (high - low) * (i + 0.5) / steps);
  return sum * (high - low) / steps;
}

/// Prandtl's stress function of a rectangle b x 1 on a grid, by over-relaxation: twist 1, modulus 1.
struct Membrane {
  double constant;      ///< torsion constant
  double edge_stress;   ///< in the middle of the long side
  double corner_excess; ///< greatest stress anywhere else on the boundary over that one

  explicit Membrane(double b, int cells = 60) {
    const double h = 1.0 / cells;
    const int columns = static_cast<int>(std::lround(b * cells));
    std::vector<std::vector<double>> f(static_cast<std::size_t>(columns + 1),
                                       std::vector<double>(static_cast<std::size_t>(cells + 1), 0.0));
    const auto at = [&f](int i, int j) -> double& {
      return f[static_cast<std::size_t>(i)][static_cast<std::size_t>(j)];
    };
    const double relaxation = 2.0 / (1.0 + std::sin(pi / cells));
    for (int sweep = 0; sweep < 6 * cells; ++sweep) {
      for (int i = 1; i < columns; ++i) {
        for (int j = 1; j < cells; ++j) {
          const double mean = 0.25 * (at(i - 1, j) + at(i + 1, j) + at(i, j - 1) + at(i, j + 1) + 2.0 * h * h);
          at(i, j) += relaxation * (mean - at(i, j));
        }
      }
    }
    constant = 0.0;
    for (int i = 1; i < columns; ++i) {
      for (int j = 1; j < cells; ++j) constant += 2.0 * at(i, j) * h * h;
    }
    const auto slope = [&](int i) { return (4.0 * at(i, 1) - at(i, 2)) / (2.0 * h); };
    edge_stress = slope(columns / 2);
    corner_excess = 0.0;
    for (int i = 1; i < columns; ++i) corner_excess = std::fmax(corner_excess, slope(i) / edge_stress);
    for (int j = 1; j < cells; ++j) {
      corner_excess = std::fmax(corner_excess, (4.0 * at(1, j) - at(2, j)) / (2.0 * h) / edge_stress);
    }
  }
};

/// Torsion of a grooved shaft: the rotation of each ring of a half shaft, solved on a grid that follows the groove.
/// Rings next to each other are joined by shear; the unknown of a node is its rotation.
class GroovedShaft {
public:
  GroovedShaft(double outer, double groove, double radius) : groove_(0.5 * groove) {
    const double depth = 0.5 * (outer - groove);
    const double half_width = std::sqrt(depth * (2.0 * radius - depth));
    for (int i = 0; i <= columns; ++i) {
      // Two fifths of the columns across the groove, the rest ever wider along the shaft beside it.
      const double way = static_cast<double>(i) / columns;
      z_[at(i)] = way <= 0.4 ? half_width * way / 0.4 : half_width + (1.5 * outer) * std::pow((way - 0.4) / 0.6, 1.8);
      const double z = std::fmin(z_[at(i)], half_width);
      surface_[at(i)] = groove_ + radius - std::sqrt(radius * radius - z * z);
    }
    assemble();
    solve();
  }

  double concentration() const {
    const double h1 = z_[1];
    const double h2 = z_[2];
    // Rotation is odd in z: fit a z + b z^3 through the first two nodes.
    const double f1 = rotation_[node(1, rows)];
    const double f2 = rotation_[node(2, rows)];
    const double slope = (f1 * h2 * h2 * h2 - f2 * h1 * h1 * h1) / (h1 * h2 * (h2 * h2 - h1 * h1));
    return groove_ * slope * pi * std::pow(2.0 * groove_, 3) / (16.0 * torque());
  }

private:
  static constexpr int columns = 80;
  static constexpr int rows = 40;
  static constexpr std::size_t at(int i) { return static_cast<std::size_t>(i); }
  static constexpr std::size_t node(int i, int j) { return at(i) * (rows + 1) + at(j); }
  double radius_of(int i, int j) const {
    const double left = 1.0 - static_cast<double>(j) / rows;
    return surface_[at(i)] * (1.0 - left * left); // finer towards the surface
  }

  /// Energy of two triangles for each cell: constant gradient, weight r^3 at the middle.
  void assemble() {
    for (int i = 0; i < columns; ++i) {
      for (int j = 0; j < rows; ++j) {
        const std::array<std::array<int, 2>, 4> corner{{{i, j}, {i + 1, j}, {i + 1, j + 1}, {i, j + 1}}};
        add_triangle(corner[0], corner[1], corner[2]);
        add_triangle(corner[0], corner[2], corner[3]);
        add_triangle(corner[0], corner[1], corner[3]);
        add_triangle(corner[1], corner[2], corner[3]);
      }
    }
  }
  void add_triangle(const std::array<int, 2>& a, const std::array<int, 2>& b, const std::array<int, 2>& c) {
    const std::array<std::array<int, 2>, 3> corners{a, b, c};
    std::array<double, 3> x{};
    std::array<double, 3> y{};
    for (std::size_t k = 0; k < 3; ++k) {
      x[k] = z_[at(corners[k][0])];
      y[k] = radius_of(corners[k][0], corners[k][1]);
    }
    const double doubled = (x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0]);
    const double mean = (y[0] + y[1] + y[2]) / 3.0;
    const double weight = 0.5 * mean * mean * mean / (2.0 * doubled); // two coverings of the cell share it
    Element element{};
    for (std::size_t k = 0; k < 3; ++k) {
      const std::size_t next = (k + 1) % 3;
      const std::size_t last = (k + 2) % 3;
      element.node[k] = node(corners[k][0], corners[k][1]);
      element.b[k] = (y[next] - y[last]);
      element.c[k] = (x[last] - x[next]);
    }
    element.weight = weight;
    elements_.push_back(element);
  }

  struct Element {
    std::array<std::size_t, 3> node;
    std::array<double, 3> b, c;
    double weight;
  };

  std::vector<double> times(const std::vector<double>& u) const {
    std::vector<double> result(u.size(), 0.0);
    for (const Element& e : elements_) {
      double gb = 0.0;
      double gc = 0.0;
      for (std::size_t k = 0; k < 3; ++k) {
        gb += e.b[k] * u[e.node[k]];
        gc += e.c[k] * u[e.node[k]];
      }
      for (std::size_t k = 0; k < 3; ++k) result[e.node[k]] += e.weight * (e.b[k] * gb + e.c[k] * gc);
    }
    return result;
  }

  /// Conjugate gradients with the diagonal; the middle of the groove stands still, the far end turns by 1.
  void solve() {
    const std::size_t n = node(columns, rows) + 1;
    rotation_.assign(n, 0.0);
    std::vector<double> diagonal(n, 0.0);
    for (const Element& e : elements_) {
      for (std::size_t k = 0; k < 3; ++k) diagonal[e.node[k]] += e.weight * (e.b[k] * e.b[k] + e.c[k] * e.c[k]);
    }
    std::vector<bool> held(n, false);
    for (int j = 0; j <= rows; ++j) {
      held[node(0, j)] = held[node(columns, j)] = true;
      rotation_[node(columns, j)] = 1.0;
    }
    const auto free_part = [&held](std::vector<double> v) {
      for (std::size_t k = 0; k < v.size(); ++k) v[k] = held[k] ? 0.0 : v[k];
      return v;
    };
    std::vector<double> residual = free_part(times(rotation_));
    for (double& r : residual) r = -r;
    std::vector<double> direction(n, 0.0);
    double last = 1.0;
    for (int step = 0; step < 3000; ++step) {
      double product = 0.0;
      for (std::size_t k = 0; k < n; ++k) product += residual[k] * residual[k] / diagonal[k];
      if (product < 1e-24) break;
      for (std::size_t k = 0; k < n; ++k) {
        direction[k] = residual[k] / diagonal[k] + (step == 0 ? 0.0 : product / last * direction[k]);
      }
      last = product;
      const std::vector<double> image = free_part(times(direction));
      double energy = 0.0;
      for (std::size_t k = 0; k < n; ++k) energy += direction[k] * image[k];
      for (std::size_t k = 0; k < n; ++k) {
        rotation_[k] += product / energy * direction[k];
        residual[k] -= product / energy * image[k];
      }
    }
  }

  double torque() const {
    const std::vector<double> reaction = times(rotation_);
    double sum = 0.0;
    for (int j = 0; j <= rows; ++j) sum += reaction[node(columns, j)];
    return 2.0 * pi * sum;
  }

  double groove_;
  std::array<double, columns + 1> z_{};
  std::array<double, columns + 1> surface_{};
  std::vector<Element> elements_;
  std::vector<double> rotation_;
};

/// A lobed outline by another way: the circle that joins two tips found by halving, then walked point by point.
struct WalkedOutline {
  double area = 0.0, length = 0.0, least_moment = 0.0;

  WalkedOutline(int lobes, double over, double between, double tip) {
    const double half = pi / lobes;
    const double centre = over - tip;
    // Curvature of the flank: its circle passes the middle between the tips; its centre lies on the line from the axis
    // to there; it touches the tip's circle where the distance of the centres is the difference of the radii.
    const auto gap = [&](double curvature) {
      const double x = centre - (between - 1.0 / curvature) * std::cos(half);
      const double y = -(between - 1.0 / curvature) * std::sin(half);
      return std::hypot(x, y) - std::abs(1.0 / curvature - tip);
    };
    // A straight flank stands off the tip's circle by this; its sign says which way the flank bends.
    const double standing_off = between - tip - centre * std::cos(half);
    const double sense = standing_off > 0.0 ? 1.0 : -1.0;
    double low = 1e-9 * sense;
    double high = (sense > 0.0 ? 0.999999 : -20.0) / tip; // a hollow flank may be sharper than the tip
    for (int i = 0; i < 200; ++i) {
      const double middle = 0.5 * (low + high);
      ((gap(middle) > 0.0) == (gap(low) > 0.0) ? low : high) = middle;
    }
    const double radius = 1.0 / (0.5 * (low + high));
    const double flank_x = (between - radius) * std::cos(half);
    const double flank_y = (between - radius) * std::sin(half);
    const double touching = std::atan2(-flank_y * sense, (centre - flank_x) * sense);
    std::vector<std::array<double, 2>> points;
    constexpr int steps = 4000;
    for (int i = 0; i <= steps; ++i) {
      const double a = touching * i / steps;
      points.push_back({centre + tip * std::cos(a), tip * std::sin(a)});
    }
    for (int i = 1; i <= steps; ++i) {
      const double a = touching + (half - touching) * i / steps;
      points.push_back({flank_x + radius * std::cos(a), flank_y + radius * std::sin(a)});
    }
    double xx = 0.0;
    double yy = 0.0;
    for (std::size_t k = 1; k < points.size(); ++k) {
      const auto& p = points[k - 1];
      const auto& q = points[k];
      const double ds = std::hypot(q[0] - p[0], q[1] - p[1]);
      area += 0.5 * (p[0] * q[1] - p[1] * q[0]);
      length += ds;
      xx += ds * 0.25 * (p[0] + q[0]) * (p[0] + q[0]);
      yy += ds * 0.25 * (p[1] + q[1]) * (p[1] + q[1]);
    }
    area *= 2.0 * lobes;
    length *= 2.0 * lobes;
    least_moment = 2.0 * lobes * (lobes == 2 ? std::fmin(xx, yy) : 0.5 * (xx + yy));
  }
};

} // namespace

TEST_CASE("stress, torque and twist undo each other for every section") {
  RandomInputs random;
  for (int i = 0; i < 500; ++i) {
    const AnyTube tube(random);
    const Torque torque = newton_metres(random.across(1, 1e5));
    const std::array<Section, 4> sections{Section(SolidSection(tube.outer)), Section(tube.section()),
                                          Section(RectangleSection(tube.outer, tube.inner)),
                                          Section(TriangleSection(tube.outer))};
    for (const Section& section : sections) {
      CHECK_CLOSE(yield_torque(section, torsion_stress(section, torque)).value(), torque.value(), 1e-14);
      CHECK_CLOSE(torque_for_twist(section, twist_rate(section, torque, steel_g), steel_g).value(), torque.value(),
                  1e-14);
      // Every fibre at yield holds more than the most stressed one alone, and not twice as much.
      const double reserve = static_cast<double>(section.plastic_modulus() / section.torsion_modulus());
      CHECK(reserve > 1.0);
      CHECK(reserve < 1.70); // the most is that of a rectangle of about 2 x 1
    }
    const double bore_ratio = static_cast<double>(tube.inner / tube.outer);
    const Stress allowed = torsion_stress(tube.section(), torque);
    CHECK_CLOSE(diameter_for_torque(torque, allowed, bore_ratio).value(), tube.outer.value(), 1e-12);
    const TwistRate rate = twist_rate(tube.section(), torque, steel_g);
    CHECK_CLOSE(diameter_for_twist(torque, rate, steel_g, bore_ratio).value(), tube.outer.value(), 1e-12);
  }
}

TEST_CASE("a round section is the sum of its rings") {
  RandomInputs random;
  for (int i = 0; i < 50; ++i) {
    const AnyTube tube(random);
    const double r = 0.5 * tube.inner.value();
    const double c = 0.5 * tube.outer.value();
    const TubeSection section = tube.section();
    CHECK_CLOSE(section.torsion_constant().value(), sum_over(r, c, 4000, [](double x) { return 2 * pi * x * x * x; }),
                1e-6);
    CHECK_CLOSE(section.plastic_modulus().value(), sum_over(r, c, 4000, [](double x) { return 2 * pi * x * x; }), 1e-6);
    CHECK_CLOSE(section.torsion_modulus().value() * c, section.torsion_constant().value(), 1e-14);
    CHECK_CLOSE(section.bending_modulus().value() * c, section.second_moment().value(), 1e-14);
    // A tube and the bar that fills its bore make the solid shaft.
    const SolidSection whole(tube.outer);
    const SolidSection core(tube.inner);
    CHECK_CLOSE((section.torsion_constant() + core.torsion_constant()).value(), whole.torsion_constant().value(),
                1e-13);
    CHECK_CLOSE((section.plastic_modulus() + core.plastic_modulus()).value(), whole.plastic_modulus().value(), 1e-13);
    CHECK_CLOSE((section.area() + core.area()).value(), whole.area().value(), 1e-13);
  }
}

TEST_CASE("beyond yield: the torque is the sum over the fibres, and what remains after unloading balances") {
  RandomInputs random;
  for (int i = 0; i < 100; ++i) {
    const AnyTube tube(random);
    const bool bored = i % 2 == 0;
    const SolidSection solid(tube.outer);
    const TubeSection hollow = tube.section();
    const RoundSection& section = bored ? static_cast<const RoundSection&>(hollow) : solid;
    const Stress yield = megapascals(random.between(100, 600));
    const Torque first = yield_torque(section, yield);
    const Torque full = plastic_torque(section, yield);
    const Torque torque = first + random.between(0.01, 0.99) * (full - first);
    const Overload result = overload(section, torque, yield, steel_g);
    const double inner = 0.5 * section.inner_diameter().value();
    const double outer = 0.5 * section.outer_diameter().value();
    const double core = 0.5 * result.core_diameter.value();
    CHECK(core > inner);
    CHECK(core < outer);
    const auto moment = [](const std::function<double(double)>& stress) {
      return [stress](double r) { return 2 * pi * r * r * stress(r); };
    };
    const double y = yield.value();
    const double held = sum_over(inner, core, 4000, moment([&](double r) { return y * r / core; })) +
                        sum_over(core, outer, 4000, moment([&](double) { return y; }));
    CHECK_CLOSE(held, torque.value(), 1e-6);
    CHECK_CLOSE(partly_plastic_torque(section, result.twist_rate, yield, steel_g).value(), torque.value(), 1e-9);
    // Residual stress: straight from the bore to the core, straight on to the surface; no torque in all.
    const double slope = torque.value() / section.torsion_constant().value();
    const double left = sum_over(inner, core, 4000, moment([&](double r) { return y * r / core - slope * r; })) +
                        sum_over(core, outer, 4000, moment([&](double r) { return y - slope * r; }));
    CHECK(std::abs(left) < 1e-5 * torque.value());
    CHECK_CLOSE(result.residual_surface.value(), slope * outer - y, 1e-9);
    CHECK(result.residual_core.value() == doctest::Approx(y - slope * core).epsilon(1e-9));
    CHECK(result.permanent_twist > TwistRate{});
    CHECK(result.permanent_twist < result.twist_rate);
  }
}

TEST_CASE("a rectangle's factors against its stress function on a grid") {
  for (const double b : {1.0, 1.5, 2.0, 3.0}) {
    const Membrane grid(b);
    const auto k = text::rectangle_factors(b);
    CAPTURE(b);
    CHECK_CLOSE(k.k1 * b, grid.constant, 1e-3);
    CHECK_CLOSE(k.k1 / k.k2, grid.edge_stress, 2e-3);
    CHECK(grid.corner_excess < 1.0 + 1e-9); // nowhere on the boundary is more stress than there
  }
}

TEST_CASE("a triangle's factors against the sum over its exact stress function") {
  // f = (x - h/3) ((x + 2h/3)^2 - 3 y^2) / (2 h) vanishes on the three sides and has the Laplacian -2 (twist, G = 1)
  // with the sign turned; J = 2 sum f.
  const double side = 1.0;
  const double h = side * std::sqrt(3.0) / 2.0;
  const auto f = [h](double x, double y) {
    return -(x - h / 3.0) * (math::power<2>(x + 2.0 * h / 3.0) - 3.0 * y * y) / (2.0 * h);
  };
  constexpr int steps = 1500;
  double sum = 0.0;
  for (int i = 0; i < steps; ++i) {
    const double x = -2.0 * h / 3.0 + h * (i + 0.5) / steps;
    const double half = (x + 2.0 * h / 3.0) / std::sqrt(3.0);
    for (int j = 0; j < steps; ++j) {
      sum += f(x, half * (2.0 * (j + 0.5) / steps - 1.0)) * (h / steps) * (2.0 * half / steps);
    }
  }
  const TriangleSection bar(metres(1));
  CHECK_CLOSE(bar.torsion_constant().value(), 2.0 * sum, 1e-5);
  const double step = 1e-6;
  const double edge = (f(h / 3.0 - step, 0.0) - f(h / 3.0, 0.0)) / step;
  CHECK_CLOSE(static_cast<double>(bar.torsion_constant() / bar.torsion_modulus() / metres(1)), edge, 1e-5);
}

TEST_CASE("lobed outlines walked point by point have the same area, length and moment") {
  RandomInputs random;
  int hollow = 0;
  for (int i = 0; i < 200; ++i) {
    const int lobes = random.whole(2, 6);
    const double wall = random.between(0.5, 2.0);
    const double over = random.between(20.0, 40.0);
    const double between = over * random.between(0.55, 0.99);
    const double tip = over * random.between(0.1, 0.3);
    const double centre = over - tip;
    const double half = pi / lobes;
    const double standing_off = between - tip - centre * std::cos(half);
    if (std::abs(standing_off) < 0.05) continue;        // nearly straight flanks: the other method loses its digits
    if (centre * std::sin(half) < 1.05 * tip) continue; // tips that touch each other
    if (std::hypot(between - centre * std::cos(half), centre * std::sin(half)) < 1.05 * tip) continue;
    hollow += standing_off < 0.0 ? 1 : 0;
    CAPTURE(lobes);
    CAPTURE(over);
    CAPTURE(between);
    CAPTURE(tip);
    const ShapedProfile profile = lobed_profile(lobes, millimetres(2 * over + wall), millimetres(2 * between + wall),
                                                millimetres(tip + wall / 2), millimetres(wall));
    const WalkedOutline walked(lobes, over, between, tip);
    CHECK_CLOSE(profile.enclosed_area().value() * 1e6, walked.area, 1e-6);
    CHECK_CLOSE(profile.perimeter().value() * 1e3, walked.length, 1e-6);
    CHECK_CLOSE(profile.second_moment().value() * 1e12, walked.least_moment * wall, 1e-6);
  }
  CHECK(hollow > 10); // both kinds of flank were met
}

TEST_CASE("the concentration of a groove against the torsion field of the grooved shaft") {
  struct Case {
    double outer, groove, radius;
  };
  for (const Case& c : {Case{34.79, 29.4, 6.8}, Case{44.45, 37.25, 8.4}, Case{34.79, 29.4, 3.0}, Case{60, 30, 15},
                        Case{40, 36, 2.0}, Case{40, 39, 5.0}}) {
    const double field = GroovedShaft(c.outer, c.groove, c.radius).concentration();
    const double formula =
        groove_concentration(millimetres(c.outer), millimetres(c.groove), millimetres(c.radius), NotchLoad::torsion);
    MESSAGE(c.outer << "/" << c.groove << " r " << c.radius << ": field " << field << ", formula " << formula);
    CHECK_CLOSE(formula, field, 0.03);
  }
}

TEST_CASE("critical speed: a beam of short pieces, and the bounds of Rayleigh and Dunkerley") {
  RandomInputs random;
  for (int i = 0; i < 20; ++i) {
    const AnyTube tube(random);
    const TubeSection section = tube.section();
    const double length = random.between(0.3, 3.0);
    const double e = 207e9;
    const double rho = 7850.0;
    // Masses on a light pinned beam by its influence coefficients; many of them make the even beam.
    constexpr std::size_t n = 60;
    const double stiffness = e * section.second_moment().value();
    const double mass = rho * section.area().value() * length / (n + 1);
    std::vector<std::vector<double>> sag(n, std::vector<double>(n));
    for (std::size_t p = 0; p < n; ++p) {
      for (std::size_t q = p; q < n; ++q) {
        const double b = length * (1.0 - static_cast<double>(q + 1) / (n + 1));
        const double x = length * static_cast<double>(p + 1) / (n + 1);
        sag[p][q] = sag[q][p] = b * x * (length * length - b * b - x * x) / (6.0 * stiffness * length);
      }
    }
    std::vector<double> shape(n, 1.0);
    double square = 0.0;
    for (int turn = 0; turn < 30; ++turn) {
      std::vector<double> next(n, 0.0);
      for (std::size_t p = 0; p < n; ++p) {
        for (std::size_t q = 0; q < n; ++q) next[p] += sag[p][q] * mass * shape[q];
      }
      square = shape[n / 2] / next[n / 2];
      for (double& value : next) value *= square;
      shape = next;
    }
    const double piecewise = std::sqrt(square);
    const AngularSpeed even = critical_speed(section, metres(length), gigapascals(207), kilograms_per_cubic_metre(rho));
    CHECK_CLOSE(even.value(), piecewise, 1e-3);

    std::vector<SaggingWeight> weights;
    std::vector<AngularSpeed> alone;
    for (std::size_t p = 0; p < n; ++p) {
      double y = 0.0;
      for (std::size_t q = 0; q < n; ++q) y += sag[p][q] * mass * unit::gravity_m_s2;
      weights.push_back({newtons(mass * unit::gravity_m_s2), metres(y)});
      alone.push_back(radians_per_second(1.0 / std::sqrt(sag[p][p] * mass)));
    }
    const double rayleigh = rayleigh_critical_speed(weights).value();
    const double dunkerley = dunkerley_critical_speed(alone).value();
    CHECK(dunkerley <= piecewise);
    CHECK(piecewise <= rayleigh * (1.0 + 1e-12));
    CHECK_CLOSE(rayleigh, piecewise, 3e-3);
    // One of the masses alone in the middle of the shaft.
    const AngularSpeed lumped = lumped_critical_speed(section, metres(length), gigapascals(207), kilograms(mass));
    const double middle = length * length * length / (48.0 * stiffness);
    CHECK_CLOSE(lumped.value(), 1.0 / std::sqrt(middle * mass), 1e-13);
    CHECK_CLOSE(critical_length(section, even, gigapascals(207), kilograms_per_cubic_metre(rho)).value(), length,
                1e-13);
  }
}

TEST_CASE("a stub's bending is the couple of its joint, and turns over once in each turn of the steel") {
  RandomInputs random;
  for (int i = 0; i < 300; ++i) {
    const Torque torque = newton_metres(random.across(1, 5000));
    const Angle angle = degrees(random.between(0, 80));
    const StubLoad load{torque, {}, angle};
    const Torque bending = stub_shaft_load(load).bending_amplitude;
    CHECK_CLOSE(bending.value(), joint_peak_couples(torque, angle).driving.value(), 1e-13);
    // The cross carries a moment at right angles to both pins. In axes that turn with the driving shaft (x along it, y
    // along its yoke's pins) it has no part along y, and along z a part that changes its sign every half turn.
    const double t = random.between(0.0, 2.0 * pi);
    const double c = std::cos(angle.value());
    const double s = std::sin(angle.value());
    // The driven shaft seen from the turned yoke, and its pins: at right angles to it and to y.
    const double driven_y = s * std::cos(t);
    const double driven_z = -s * std::sin(t);
    const double pin_x = -driven_z; // the pins of the driven yoke are the cross product of the driven shaft and y
    const double pin_z = c;
    CHECK(std::abs(driven_y) <= 1.0);
    // Moment along the cross product of y and that pin; scaled to the torque along x.
    const double moment_x = pin_z;
    const double moment_z = -pin_x;
    const double felt = torque.value() * moment_z / moment_x;
    CHECK(std::abs(felt) <= bending.value() * (1.0 + 1e-12));
    CHECK(felt == doctest::Approx(-bending.value() * std::sin(t)).epsilon(1e-9));
    CHECK(std::abs(felt) == doctest::Approx(joint_couples(torque, angle, radians(t)).driving.value()).epsilon(1e-9));
  }
}

TEST_CASE("more of any load never makes a stub safer, and its angle limit is where the factor is reached") {
  RandomInputs random;
  for (int i = 0; i < 100; ++i) {
    const StubShaft stub{{millimetres(random.between(25, 60)), {random.between(1, 3), random.between(1, 3)}},
                         {millimetres(random.between(25, 60)), {random.between(1, 2), random.between(1, 2)}},
                         millimetres(random.between(0, 10))};
    const Stress ultimate = megapascals(random.between(450, 1200));
    const FatigueStrength strength{0.3 * ultimate, ultimate, 0.75 * ultimate};
    const auto rule = static_cast<MeanStressRule>(random.whole(0, 3));
    StubLoad load{newton_metres(random.between(50, 1500)), newton_metres(random.between(0, 200)),
                  degrees(random.between(0, 40)), newtons(random.between(0, 3000)),
                  millimetres(random.between(0, 200))};
    const auto factors = [&](const StubLoad& l) {
      return std::array<double, 2>{stub_yield_safety_factor(stub, l, strength.yield).factor,
                                   stub_fatigue_safety_factor(stub, l, strength, rule).factor};
    };
    const auto before = factors(load);
    for (int which = 0; which < 5; ++which) {
      StubLoad more = load;
      if (which == 0) more.torque *= 1.1;
      if (which == 1) more.torque_amplitude += newton_metres(10);
      if (which == 2) more.joint_angle += degrees(1);
      if (which == 3) more.side_force *= 1.1;
      if (which == 4) more.overhang *= 1.1;
      const auto after = factors(more);
      CHECK(after[0] <= before[0] * (1.0 + 1e-14));
      CHECK(after[1] <= before[1] * (1.0 + 1e-14));
    }
    const double wanted = random.between(0.5, 2.0);
    const auto limit = stub_angle_limit(stub, load, strength, rule, wanted);
    load.joint_angle = limit.value;
    const auto there = factors(load);
    const double least = std::fmin(there[0], there[1]);
    if (limit.valid()) {
      CHECK_CLOSE(least, wanted, 1e-9);
    } else {
      CHECK(least < wanted);
    }
  }
}

TEST_CASE("catching more energy, or on a shorter shaft, is never gentler") {
  RandomInputs random;
  for (int i = 0; i < 300; ++i) {
    const SolidSection section(millimetres(random.across(10, 100)));
    const Length length = metres(random.between(0.2, 3.0));
    const Energy energy = joules(random.across(1, 1e5));
    const TorsionImpact blow = torsion_impact(section, length, steel_g, energy);
    CHECK(torsion_impact(section, length, steel_g, 1.01 * energy).stress > blow.stress);
    CHECK(torsion_impact(section, 0.99 * length, steel_g, energy).stress > blow.stress);
    CHECK_CLOSE(impact_diameter(energy, length, steel_g, blow.stress).value(), section.diameter().value(), 1e-12);
    CHECK_CLOSE(0.5 * blow.torque.value() * blow.twist.value(), energy.value(), 1e-13);
  }
}
