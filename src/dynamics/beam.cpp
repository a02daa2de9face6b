#include <fieldshaft/dynamics/beam.hpp>

#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>
#include <string>

namespace fieldshaft {
inline namespace v0 {
namespace {

constexpr const char* name = "beam_critical_speeds";

double length_of(const BeamLine& line) {
  double length = 0.0;
  for (const BeamSegment& segment : line.segments) length += segment.length.value();
  return length;
}

void check_segments(const BeamLine& line) {
  if (line.segments.empty()) fail_input(name, "line.segments", "none", "at least one");
  for (const BeamSegment& segment : line.segments) {
    check::positive(segment.length.value(), {name, "line.segments.length", "m"});
    check::positive(segment.stiffness.value(), {name, "line.segments.stiffness", "N·m²"});
    check::positive(segment.mass.value(), {name, "line.segments.mass", "kg/m"});
  }
}

void check_fittings(const BeamLine& line, double length) {
  for (const BeamMass& mass : line.masses) {
    check::within(mass.at.value(), 0.0, length, {name, "line.masses.at", "m"});
    check::not_negative(mass.mass.value(), {name, "line.masses.mass", "kg"});
  }
  bool held = false;
  for (const BeamSupport& support : line.supports) {
    check::within(support.at.value(), 0.0, length, {name, "line.supports.at", "m"});
    if (support.kind == SupportKind::spring) {
      check::positive(support.stiffness.value(), {name, "line.supports.stiffness", "N/m"});
    }
    held = held || support.kind == SupportKind::clamped || support.at != line.supports.front().at;
  }
  if (!held) fail_input(name, "line.supports", "too few", "a clamp, or two supports at different places");
}

/// Places closer than this share of the line's length are one node.
constexpr double same_place = 1e-9;

/// Ends of segments, masses and supports, in order, each once.
std::vector<double> fixed_places(const BeamLine& line, double length) {
  std::vector<double> places{0.0, length};
  double at = 0.0;
  for (const BeamSegment& segment : line.segments) places.push_back(at += segment.length.value());
  for (const BeamMass& mass : line.masses) places.push_back(mass.at.value());
  for (const BeamSupport& support : line.supports) places.push_back(support.at.value());
  std::sort(places.begin(), places.end());
  const auto same = [length](double a, double b) { return b - a <= same_place * length; };
  places.erase(std::unique(places.begin(), places.end(), same), places.end());
  return places;
}

std::vector<double> node_places(const BeamLine& line, double length, int elements) {
  const std::vector<double> places = fixed_places(line, length);
  std::vector<double> nodes{places.front()};
  for (std::size_t i = 0; i + 1 < places.size(); ++i) {
    const double piece = places[i + 1] - places[i];
    const int parts = std::max(1, static_cast<int>(std::ceil(elements * piece / length)));
    for (int part = 1; part <= parts; ++part) nodes.push_back(places[i] + piece * part / parts);
  }
  return nodes;
}

/// Stiffness and mass of the line; at node i the unknowns are 2 i, sideways, and 2 i + 1, tilt.
struct Assembly {
  Eigen::MatrixXd stiffness;
  Eigen::MatrixXd mass;
};

void add_element(Assembly& all, Eigen::Index first, double l, const BeamSegment& segment) {
  Eigen::Matrix4d k;
  Eigen::Matrix4d m;
  k << 12.0, 6.0 * l, -12.0, 6.0 * l, 6.0 * l, 4.0 * l * l, -6.0 * l, 2.0 * l * l, //
      -12.0, -6.0 * l, 12.0, -6.0 * l, 6.0 * l, 2.0 * l * l, -6.0 * l, 4.0 * l * l;
  m << 156.0, 22.0 * l, 54.0, -13.0 * l, 22.0 * l, 4.0 * l * l, 13.0 * l, -3.0 * l * l, //
      54.0, 13.0 * l, 156.0, -22.0 * l, -13.0 * l, -3.0 * l * l, -22.0 * l, 4.0 * l * l;
  all.stiffness.block<4, 4>(first, first) += segment.stiffness.value() / (l * l * l) * k;
  all.mass.block<4, 4>(first, first) += segment.mass.value() * l / 420.0 * m;
}

Eigen::Index node_at(const std::vector<double>& nodes, double at) {
  const auto nearer = [at](double a, double b) { return std::abs(a - at) < std::abs(b - at); };
  return std::min_element(nodes.begin(), nodes.end(), nearer) - nodes.begin();
}

Assembly assemble(const BeamLine& line, const std::vector<double>& nodes) {
  const auto unknowns = static_cast<Eigen::Index>(2 * nodes.size());
  Assembly all{Eigen::MatrixXd::Zero(unknowns, unknowns), Eigen::MatrixXd::Zero(unknowns, unknowns)};
  std::size_t segment = 0;
  double end = line.segments.front().length.value();
  for (std::size_t i = 0; i + 1 < nodes.size(); ++i) {
    const double middle = 0.5 * (nodes[i] + nodes[i + 1]);
    while (middle > end && segment + 1 < line.segments.size()) end += line.segments[++segment].length.value();
    add_element(all, static_cast<Eigen::Index>(2 * i), nodes[i + 1] - nodes[i], line.segments[segment]);
  }
  for (const BeamMass& mass : line.masses) {
    const Eigen::Index i = 2 * node_at(nodes, mass.at.value());
    all.mass(i, i) += mass.mass.value();
  }
  return all;
}

/// Adds the springs and tells which unknowns stay free.
std::vector<Eigen::Index> supported(Assembly& all, const BeamLine& line, const std::vector<double>& nodes) {
  std::vector<bool> free(2 * nodes.size(), true);
  for (const BeamSupport& support : line.supports) {
    const Eigen::Index i = 2 * node_at(nodes, support.at.value());
    if (support.kind == SupportKind::spring) {
      all.stiffness(i, i) += support.stiffness.value();
      continue;
    }
    free[static_cast<std::size_t>(i)] = false;
    if (support.kind == SupportKind::clamped) free[static_cast<std::size_t>(i) + 1] = false;
  }
  std::vector<Eigen::Index> kept;
  for (std::size_t i = 0; i < free.size(); ++i) {
    if (free[i]) kept.push_back(static_cast<Eigen::Index>(i));
  }
  return kept;
}

BeamSegment segment_of(SecondMomentOfArea second_moment, Area area, Length length, Stress youngs_modulus,
                       Density density) {
  constexpr const char* function = "beam_segment";
  check::positive(length.value(), {function, "length", "m"});
  check::positive(youngs_modulus.value(), {function, "youngs_modulus", "Pa"});
  check::positive(density.value(), {function, "density", "kg/m³"});
  return {length, youngs_modulus * second_moment, density * area};
}

} // namespace

BeamSegment beam_segment(const RoundSection& section, Length length, Stress youngs_modulus, Density density) {
  return segment_of(section.second_moment(), section.area(), length, youngs_modulus, density);
}
BeamSegment beam_segment(const ShapedProfile& section, Length length, Stress youngs_modulus, Density density) {
  return segment_of(section.second_moment(), section.area(), length, youngs_modulus, density);
}

std::vector<AngularSpeed> beam_critical_speeds(const BeamLine& line, int count, int elements) {
  check::within(count, 1.0, 20.0, {name, "count", ""});
  check::within(elements, 8.0, 200.0, {name, "elements", ""});
  check_segments(line);
  const double length = length_of(line);
  check_fittings(line, length);
  const std::vector<double> nodes = node_places(line, length, std::max(elements, count + 4));
  Assembly all = assemble(line, nodes);
  const std::vector<Eigen::Index> kept = supported(all, line, nodes);
  const Eigen::MatrixXd mass = all.mass(kept, kept);
  const Eigen::MatrixXd stiffness = all.stiffness(kept, kept);
  const Eigen::GeneralizedSelfAdjointEigenSolver<Eigen::MatrixXd> solver(mass, stiffness, Eigen::EigenvaluesOnly);
  const bool solved = solver.info() == Eigen::Success && is_finite(solver.eigenvalues().sum());
  if (!solved || !(solver.eigenvalues()(solver.eigenvalues().size() - count) > 0.0)) {
    fail_input(name, "line", "stiffnesses or masses too far apart to be told from rounding", "parts of like size");
  }
  const Eigen::VectorXd& inverse_squares = solver.eigenvalues(); // in rising order: the lowest speed comes last
  std::vector<AngularSpeed> speeds;
  speeds.reserve(static_cast<std::size_t>(count));
  for (Eigen::Index i = 1; i <= count; ++i) {
    speeds.push_back(radians_per_second(1.0 / std::sqrt(inverse_squares(inverse_squares.size() - i))));
  }
  return speeds;
}

Validated<double> slender_tube_excess(const RoundSection& section, Length length) {
  check::positive(length.value(), {"slender_tube_excess", "length", "m"});
  const double outer = section.outer_diameter().value();
  const double inner = section.inner_diameter().value();
  // Cowper's shear coefficient of a circular section with a bore, for Poisson's ratio 0.3.
  constexpr double nu = 0.3;
  const double m = inner / outer;
  const double square = (1.0 + m * m) * (1.0 + m * m);
  const double shear = 6.0 * (1.0 + nu) * square / ((7.0 + 6.0 * nu) * square + (20.0 + 12.0 * nu) * m * m);
  const double gyration = (outer * outer + inner * inner) / 16.0;
  const double excess = 0.5 * pi * pi * gyration / (length.value() * length.value()) * (2.0 * (1.0 + nu) / shear - 1.0);
  // A stout shaft: the second order is about the square of the first, so that here it is a quarter of a per cent.
  return {excess, excess > 0.05 ? "a member too stout for the theory of slender beams" : nullptr};
}

} // namespace v0
} // namespace fieldshaft
