#pragma once
// The matrices of a train in terms of the angle of each inertia at its own speed.

#include <fieldshaft/dynamics/train.hpp>

#include <Eigen/Core>

namespace fieldshaft {
inline namespace v0 {
namespace torsion {

/// Adds k t t' where t is 1 at `from` and -1/ratio at `to`.
template <class Matrix> void add_shaft(Matrix& matrix, const TrainShaft& shaft, typename Matrix::Scalar k) {
  const auto from = static_cast<Eigen::Index>(shaft.from);
  const auto to = static_cast<Eigen::Index>(shaft.to);
  const double back = 1.0 / shaft.ratio;
  matrix(from, from) += k;
  matrix(to, to) += k * (back * back);
  matrix(from, to) -= k * back;
  matrix(to, from) -= k * back;
}

/// Twist of a shaft, at the speed of its `from`, when the inertias stand at these angles.
template <class Angles> auto twist(const TrainShaft& shaft, const Angles& angles) {
  return angles[static_cast<Eigen::Index>(shaft.from)] - angles[static_cast<Eigen::Index>(shaft.to)] / shaft.ratio;
}

} // namespace torsion
} // namespace v0
} // namespace fieldshaft
