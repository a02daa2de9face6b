#pragma once
// Points, directions and matrices.

#include <fieldshaft/geometry.hpp>

#include <variant>
#include <vector>

namespace fieldshaft_python {

/// A point or a direction of the implement, in the tractor frame.
using Placed = std::variant<fieldshaft::Position, fieldshaft::Direction>;
template <class T> Placed in_tractor_of(const fieldshaft::Pose& pose, const T& in_implement) {
  return fieldshaft::in_tractor(pose, in_implement);
}

using Rows = std::vector<std::vector<double>>;
inline Rows rows_of(const Eigen::Matrix3d& matrix) {
  Rows rows;
  for (int i = 0; i < 3; ++i) rows.push_back({matrix(i, 0), matrix(i, 1), matrix(i, 2)});
  return rows;
}
inline Eigen::Matrix3d matrix_of(const Rows& rows, const char* function) {
  Eigen::Matrix3d matrix;
  for (std::size_t i = 0; i < 3; ++i) {
    if (rows.size() != 3 || rows[i].size() != 3) {
      fieldshaft::fail_input(function, "matrix", "of another size", "three rows of three numbers");
    }
    for (std::size_t k = 0; k < 3; ++k) {
      fieldshaft::check::within(rows[i][k], -1.0, 1.0, {function, "matrix", ""});
      matrix(static_cast<Eigen::Index>(i), static_cast<Eigen::Index>(k)) = rows[i][k];
    }
  }
  return matrix;
}

} // namespace fieldshaft_python
