#pragma once
// Any number of joints in a row: their equivalent single joint.

#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/joint/kinematics.hpp>
#include <fieldshaft/joint/pair.hpp>

#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// A joint of a row, counted from the tractor.
struct JointInRow {
  Angle angle;   ///< joint angle, from 0, below 90°
  Angle phase{}; ///< relative phase against the joint before it (0: equal angles cancel); 0 for the first joint
};

namespace detail {
inline void check_row(const std::vector<JointInRow>& row, const char* function) {
  if (row.empty()) fail_input(function, "row", "no joint", "at least one joint");
  for (const JointInRow& joint : row) {
    check::joint_angle(joint.angle, function, "row.angle");
    check::finite(joint.phase.value(), {function, "row.phase", "rad"});
  }
  if (row.front().phase.value() != 0.0) {
    fail_input(function, "row.phase", check::text_of(row.front().phase.value(), "rad"),
               "0 rad for the first joint, which has none before it");
  }
}

/// A linear map of the plane of rotation: (a b; c d).
struct Matrix2 {
  double a, b, c, d;
};
} // namespace detail

/// The angle of the single joint that is as uneven as a row of joints [rad].
///
/// A joint carries the direction (cos t, sin t) of its driving yoke to (cos b cos t, sin t), up to a common factor; a
/// phase turns it. A row is the product of these matrices, scaled to determinant 1; k is its larger singular value
/// squared, and angle = acos(1/k).
///   row  joints from the tractor on; at least one
/// Exact for any angles and number of joints, to about 1e-8 rad where joints cancel. A wide-angle joint counts as two
/// joints of half its angle each and phase 0 between them. Source: singular values (handbook).
/// Example: 20°, then 10° at phase 0: 17.40985°, as for a pair.
inline Angle equivalent_joint_angle(const std::vector<JointInRow>& row) {
  detail::check_row(row, "equivalent_joint_angle");
  detail::Matrix2 m{1.0, 0.0, 0.0, 1.0};
  bool first = true;
  for (const JointInRow& joint : row) {
    const Angle turn = first ? radians(0.0) : joint.phase + degrees(90.0);
    const double stretch = std::sqrt(math::cos(joint.angle));
    const double cosine = math::cos(turn);
    const double sine = math::sin(turn);
    m = {stretch * (cosine * m.a - sine * m.c), stretch * (cosine * m.b - sine * m.d),
         (sine * m.a + cosine * m.c) / stretch, (sine * m.b + cosine * m.d) / stretch};
    first = false;
  }
  const double unevenness = math::power<2>(m.a - m.d) + math::power<2>(m.b + m.c);
  return angle_from_ratio(text::joint_angle_for_unevenness(unevenness));
}

/// The same by the rule for small angles [rad], for comparison with hand calculation.
///
/// b² = |sum of ± b_i² exp(2 j P_i)|, signs alternating, P_i the sum of the phases up to joint i
///   row  as above
/// Outside: any joint angle above 20°, up to which the rule was compared with the exact result. Source: SAE AE-7
/// (from memory). Example: 10°, then 6° at phase 0: 8°.
inline Validated<Angle> equivalent_joint_angle_small(const std::vector<JointInRow>& row) {
  detail::check_row(row, "equivalent_joint_angle_small");
  double real = 0.0;
  double imaginary = 0.0;
  double sign = 1.0;
  Angle phase{};
  bool small = true;
  for (const JointInRow& joint : row) {
    phase += joint.phase;
    const double square = sign * math::power<2>(without_radian(joint.angle));
    real += square * math::cos(2.0 * phase);
    imaginary += square * math::sin(2.0 * phase);
    sign = -sign;
    small = small && joint.angle <= small_joint_angle;
  }
  const Angle equivalent = radians(std::sqrt(std::hypot(real, imaginary)));
  return {equivalent, small ? nullptr : outside_small_joint_angle};
}

} // namespace v0
} // namespace fieldshaft
