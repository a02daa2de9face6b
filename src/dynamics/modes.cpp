#include <fieldshaft/dynamics/modes.hpp>

#include "dynamics/matrices.hpp"

#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>
#include <string>

namespace fieldshaft {
inline namespace v0 {
namespace {

/// The stiffness matrix in the angles times the roots of the inertias.
Eigen::MatrixXd scaled_stiffness(const TorsionalTrain& train) {
  const auto count = static_cast<Eigen::Index>(train.inertias.size());
  Eigen::MatrixXd k = Eigen::MatrixXd::Zero(count, count);
  for (const TrainShaft& shaft : train.shafts) torsion::add_shaft(k, shaft, shaft.stiffness.value());
  for (const TrainAnchor& anchor : train.anchors) {
    const auto at = static_cast<Eigen::Index>(anchor.inertia);
    k(at, at) += anchor.stiffness.value();
  }
  for (Eigen::Index i = 0; i < count; ++i) {
    const double root = 1.0 / std::sqrt(train.inertias[static_cast<std::size_t>(i)].inertia.value());
    k.row(i) *= root;
    k.col(i) *= root;
  }
  return k;
}

TorsionalMode scaled_mode(double frequency, std::vector<double> amplitudes) {
  double greatest = 0.0;
  for (const double a : amplitudes) {
    // A hair more than the greatest so far: of equal swings the first is the positive one, whatever the rounding.
    if (std::abs(a) > std::abs(greatest) * (1.0 + 1e-9)) greatest = a;
  }
  for (double& a : amplitudes) a /= greatest;
  return {hertz(frequency), std::move(amplitudes)};
}

/// Squares of frequencies further apart than this leave the lowest less than four true digits.
constexpr double widest_spread = 1e-12;

} // namespace

std::vector<TorsionalMode> torsional_modes(const TorsionalTrain& train) {
  check_train(train, "torsional_modes");
  const std::size_t count = train.inertias.size();
  const Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd> solver(scaled_stiffness(train));
  const Eigen::Index first_elastic = train.anchors.empty() ? 1 : 0;
  const Eigen::Index last = solver.eigenvalues().size() - 1;
  const bool apart = solver.info() == Eigen::Success && first_elastic <= last &&
                     !(solver.eigenvalues()(first_elastic) > widest_spread * solver.eigenvalues()(last));
  if (solver.info() != Eigen::Success || apart) {
    fail_input("torsional_modes", "train", "stiffnesses or inertias too far apart to be told from rounding",
               "squares of the frequencies within 1e12 of each other");
  }
  std::vector<TorsionalMode> modes;
  modes.reserve(count);
  for (std::size_t mode = 0; mode < count; ++mode) {
    if (mode == 0 && train.anchors.empty()) {
      modes.push_back(scaled_mode(0.0, train_speed_ratios(train)));
      continue;
    }
    const auto column = static_cast<Eigen::Index>(mode);
    std::vector<double> amplitudes(count);
    for (std::size_t i = 0; i < count; ++i) {
      amplitudes[i] =
          solver.eigenvectors()(static_cast<Eigen::Index>(i), column) / std::sqrt(train.inertias[i].inertia.value());
    }
    const double square = std::max(0.0, solver.eigenvalues()(column));
    modes.push_back(scaled_mode(std::sqrt(square) / (2.0 * pi), std::move(amplitudes)));
  }
  return modes;
}

std::vector<ModeNode> mode_nodes(const TorsionalTrain& train, const TorsionalMode& mode) {
  constexpr const char* function = "mode_nodes";
  check_train(train, function);
  if (mode.amplitudes.size() != train.inertias.size()) {
    fail_input(function, "mode.amplitudes", std::to_string(mode.amplitudes.size()) + " of them",
               "as many as the " + std::to_string(train.inertias.size()) + " inertias of the train");
  }
  std::vector<ModeNode> nodes;
  for (std::size_t i = 0; i < train.shafts.size(); ++i) {
    const TrainShaft& shaft = train.shafts[i];
    const double from = mode.amplitudes[shaft.from];
    const double to = mode.amplitudes[shaft.to] / shaft.ratio;
    if (from * to < 0.0) nodes.push_back({i, from / (from - to)});
  }
  return nodes;
}

const char* torque_keeps_its_sense(const TorsionalTrain& train, const std::vector<Torque>& steady,
                                   const std::vector<Torque>& swing) {
  constexpr const char* function = "torque_keeps_its_sense";
  check_train(train, function);
  const std::string wanted = "as many as the " + std::to_string(train.shafts.size()) + " shafts of the train";
  if (steady.size() != train.shafts.size()) {
    fail_input(function, "steady", std::to_string(steady.size()) + " of them", wanted);
  }
  if (swing.size() != train.shafts.size()) {
    fail_input(function, "swing", std::to_string(swing.size()) + " of them", wanted);
  }
  bool keeps = true;
  for (std::size_t i = 0; i < train.shafts.size(); ++i) {
    check::finite(steady[i].value(), {function, "steady", "N·m"});
    check::not_negative(swing[i].value(), {function, "swing", "N·m"});
    if (train.shafts[i].backlash.value() > 0.0 && !(swing[i] < math::abs(steady[i]))) keeps = false;
  }
  return keeps ? nullptr : outside_backlash;
}

Frequency two_inertia_frequency(MomentOfInertia first, MomentOfInertia second, TorsionalStiffness stiffness) {
  constexpr const char* function = "two_inertia_frequency";
  check::positive(first.value(), {function, "first", "kg·m²"});
  check::positive(second.value(), {function, "second", "kg·m²"});
  check::positive(stiffness.value(), {function, "stiffness", "N·m/rad"});
  return hertz(std::sqrt(stiffness.value() * (1.0 / first.value() + 1.0 / second.value())) / (2.0 * pi));
}

Length equivalent_shaft_length(const std::vector<StepLength>& steps, const Section& section) {
  constexpr const char* function = "equivalent_shaft_length";
  if (steps.empty()) fail_input(function, "steps", "none", "at least one");
  Length sum{};
  for (const StepLength& step : steps) {
    check::positive(step.length.value(), {function, "steps.length", "m"});
    sum += step.length * static_cast<double>(section.torsion_constant() / step.section.torsion_constant());
  }
  return sum;
}

} // namespace v0
} // namespace fieldshaft
