#pragma once
// Two joints in a row: their equivalent single joint, and the speed of the last shaft over a turn.
//
// The relative phase is the angle by which the rear yoke of the intermediate shaft is turned against the front one,
// minus the angle between the two joint planes, both about the intermediate shaft in the same sense. At phase 0 equal
// joint angles cancel exactly. The phase repeats itself after 180°.

#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/joint/acceleration.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace text {
/// k + 1/k - 2 of the pair, as a sum of squares: exact near a smooth pair, zero for a perfect one.
template <class B, class P> auto joint_pair_unevenness(B front, B rear, P phase) noexcept {
  const auto c1 = math::cos(front);
  const auto c2 = math::cos(rear);
  const auto difference = 2.0 * math::sin(0.5 * (front + rear)) * math::sin(0.5 * (rear - front)); // c1 - c2
  const auto shortfall = versine(front) + c1 * versine(rear);                                      // 1 - c1 c2
  return (math::power<2>(math::cos(phase) * difference) + math::power<2>(math::sin(phase) * shortfall)) / (c1 * c2);
}
/// The joint angle whose 1/cos b + cos b - 2 is given.
template <class U> auto joint_angle_for_unevenness(U unevenness) noexcept {
  return 2.0 * math::atan(math::sqrt(math::sqrt(unevenness / (unevenness + 4.0))));
}
template <class B, class P> auto equivalent_joint_angle(B front, B rear, P phase) noexcept {
  return joint_angle_for_unevenness(joint_pair_unevenness(front, rear, phase));
}
template <class B, class P> auto equivalent_joint_angle_small(B front, B rear, P phase) noexcept {
  const auto b1 = front * front;
  const auto b2 = rear * rear;
  return math::sqrt(math::sqrt(math::power<2>(b1 - b2) + math::power<2>(2.0 * front * rear * math::sin(phase))));
}
/// Rotation of the rear joint's driving yoke from its own plane of shafts.
template <class B, class P, class R> auto rear_joint_rotation(B front, P phase, R rotation) noexcept {
  return joint_output_rotation(front, rotation) + phase + 0.5 * pi;
}
template <class B, class P, class R> auto joint_pair_speed_ratio(B front, B rear, P phase, R rotation) noexcept {
  return joint_speed_ratio(front, rotation) * joint_speed_ratio(rear, rear_joint_rotation(front, phase, rotation));
}
template <class B, class P, class R> auto joint_pair_slope(B front, B rear, P phase, R rotation) noexcept {
  const auto behind = rear_joint_rotation(front, phase, rotation);
  const auto ratio = joint_speed_ratio(front, rotation);
  return joint_ratio_slope(rear, behind) * ratio * ratio +
         joint_speed_ratio(rear, behind) * joint_ratio_slope(front, rotation);
}
} // namespace text

/// The angle of the single joint that is as uneven as a pair of joints [rad].
///
/// k + 1/k = cos² p (c1/c2 + c2/c1) + sin² p (c1 c2 + 1/(c1 c2)), k >= 1; angle = acos(1/k); c = cos of each angle
///   front, rear  joint angles [rad], from 0, below 90°
///   phase        p, the relative phase [rad], any; 0 where equal angles cancel
/// Exact at any angle, so that the last shaft's speed lies between 1/k and k times the first one's and its peak
/// acceleration is joint_peak_acceleration(equivalent angle, speed). It is computed from k + 1/k - 2 as a sum of
/// squares, without loss of digits for a nearly smooth pair. The usual fourth root is its limit for small angles.
/// Source: a joint stretches the plane of rotation by cos b along one direction, so a row of joints is a product of
/// matrices and k the ratio of its singular values (handbook); special cases SAE AE-7, section 3.1.1.
/// Example: 20° and 10°: 17.4099° at phase 0, 22.2687° at phase 90°.
inline Angle equivalent_joint_angle(Angle front, Angle rear, Angle phase) {
  check::joint_angle(front, "equivalent_joint_angle", "front");
  check::joint_angle(rear, "equivalent_joint_angle", "rear");
  check::finite(phase.value(), {"equivalent_joint_angle", "phase", "rad"});
  return angle_from_ratio(
      text::equivalent_joint_angle(without_radian(front), without_radian(rear), without_radian(phase)));
}

/// Up to here the rule for small angles gives the peak acceleration within 4.1 % (1 - b/tan b, for nearly equal
/// angles).
inline constexpr Angle small_joint_angle = degrees(20.0);
inline constexpr const char* outside_small_joint_angle = "a joint angle above 20°, where the rule is unproven";

/// The same by the rule for small angles [rad], for comparison with hand calculation.
///
/// b = [b1⁴ + b2⁴ - 2 b1² b2² cos 2p]^(1/4), which is sqrt|b1² - b2²| at phase 0 and sqrt(b1² + b2²) at 90°
/// Symbols and domain as above. Outside: an angle above 20°. Source: SAE AE-7, section 3.1.1 (special cases).
/// Example: 10° and 6° at phase 0: 8°.
inline Validated<Angle> equivalent_joint_angle_small(Angle front, Angle rear, Angle phase) {
  check::joint_angle(front, "equivalent_joint_angle_small", "front");
  check::joint_angle(rear, "equivalent_joint_angle_small", "rear");
  check::finite(phase.value(), {"equivalent_joint_angle_small", "phase", "rad"});
  const bool small = front <= small_joint_angle && rear <= small_joint_angle;
  return {angle_from_ratio(
              text::equivalent_joint_angle_small(without_radian(front), without_radian(rear), without_radian(phase))),
          small ? nullptr : outside_small_joint_angle};
}

/// How unevenly the last shaft of a pair turns while the first turns steadily.
struct JointPairExtremes {
  Angle equivalent_angle;                ///< of the single joint that is as uneven
  double largest_ratio;                  ///< k, greatest speed over that of the first shaft
  double least_ratio;                    ///< 1/k
  AngularAcceleration peak_acceleration; ///< greatest, and greatest deceleration
};

/// The extremes of the last shaft's speed and acceleration over one turn.
///
///   front, rear, phase  as for equivalent_joint_angle
///   speed               of the first shaft [rad/s], at least 0
/// Exact. Source: the equivalent joint. Example: 20°, 10°, phase 0 at 1 rad/s: 1.048011, 0.954189, 0.0940276 rad/s².
inline JointPairExtremes joint_pair_extremes(Angle front, Angle rear, Angle phase, AngularSpeed speed) {
  check::not_negative(speed.value(), {"joint_pair_extremes", "speed", "rad/s"});
  const Angle equivalent = equivalent_joint_angle(front, rear, phase);
  const double least = math::cos(equivalent);
  return {equivalent, 1.0 / least, least, text::joint_peak_acceleration(equivalent, speed)};
}

/// Speed of the last shaft of a pair over that of the first, at one rotation [-].
///
/// The product of both joints' ratios, the rear one at the rotation that the front joint hands on plus phase plus 90°.
///   front, rear  joint angles [rad], from 0, below 90°
///   phase        relative phase [rad], any
///   rotation     of the front joint's driving yoke from the plane of its shafts [rad], any
/// Exact at any angle. Source: tan t2 = tan t / cos b at each joint. Example: 20°, 10°, phase 0, rotation 0: 1.048011.
inline double joint_pair_speed_ratio(Angle front, Angle rear, Angle phase, Angle rotation) {
  check::joint_angle(front, "joint_pair_speed_ratio", "front");
  check::joint_angle(rear, "joint_pair_speed_ratio", "rear");
  check::finite(phase.value(), {"joint_pair_speed_ratio", "phase", "rad"});
  check::finite(rotation.value(), {"joint_pair_speed_ratio", "rotation", "rad"});
  return text::joint_pair_speed_ratio(without_radian(front), without_radian(rear), without_radian(phase),
                                      without_radian(rotation));
}

/// Acceleration of the last shaft of a pair, at one rotation, while the first turns steadily [rad/s²].
///
/// Chain rule over both joints: w² (r2' r1² + r2 r1'), r the speed ratios and ' their slopes.
/// Symbols and domain as for joint_pair_speed_ratio; speed of the first shaft [rad/s], at least 0. Exact.
/// Source: derivative of the above. Example: 20°, 20°, phase 0: 0 at every rotation.
inline AngularAcceleration joint_pair_acceleration(Angle front, Angle rear, Angle phase, Angle rotation,
                                                   AngularSpeed speed) {
  check::joint_angle(front, "joint_pair_acceleration", "front");
  check::joint_angle(rear, "joint_pair_acceleration", "rear");
  check::finite(phase.value(), {"joint_pair_acceleration", "phase", "rad"});
  check::finite(rotation.value(), {"joint_pair_acceleration", "rotation", "rad"});
  check::not_negative(speed.value(), {"joint_pair_acceleration", "speed", "rad/s"});
  return text::joint_pair_slope(without_radian(front), without_radian(rear), without_radian(phase),
                                without_radian(rotation)) *
         (speed * without_radian(speed));
}

} // namespace v0
} // namespace fieldshaft
