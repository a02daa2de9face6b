#pragma once
// The needle bearings of a joint's cross: their load, and their life under steady or varying duty.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/joint/kinematics.hpp>

#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// Exponent of the life of roller bearings. Source: ISO 281 (line contact), 10/3.
inline constexpr double roller_life_exponent = 10.0 / 3.0;

namespace text {
template <class R, class T> constexpr auto joint_bearing_force(R arm, T torque) noexcept {
  return without_radian(torque) / (2.0 * arm);
}
/// 1e6 turns of an ordinary bearing, at w b / 90° instead of w: 1e6 (2 pi) (pi/2) / (w b) = 1e6 pi² / (w b).
template <class C, class R, class T, class W, class B>
auto joint_bearing_life(C load_rating, R arm, T torque, W speed, B angle) noexcept {
  const auto life_at_rating = 1e6 * pi * pi / (without_radian(speed) * without_radian(angle));
  return life_at_rating * math::pow(load_rating / joint_bearing_force(arm, torque), roller_life_exponent);
}
} // namespace text

/// Force on each bearing of the driving yoke, mean over the turn [N].
///
/// P = T / (2 R)
///   arm     R  centre of the cross to the middle of a bearing [m], above 0
///   torque  T  on the driving shaft [N·m], at least 0
/// Straight joint, or the usual mean for an angled one. Source: balance of moments.
/// Example: 400 N·m, 40 mm: 5000 N.
constexpr Force joint_bearing_force(Length arm, Torque torque) {
  check::positive(arm.value(), {"joint_bearing_force", "arm", "m"});
  check::not_negative(torque.value(), {"joint_bearing_force", "torque", "N·m"});
  return text::joint_bearing_force(arm, torque);
}

/// Greatest force on a bearing over the turn [N].
///
/// P = T / (2 R cos b), when the driving yoke stands at right angles to the plane of the shafts
/// Symbols as above; angle b from 0, below 90°. Source: balance of moments (handbook).
/// Example: 400 N·m, 40 mm, 15°: 5176 N.
inline Force joint_peak_bearing_force(Length arm, Torque torque, Angle angle) {
  check::positive(arm.value(), {"joint_peak_bearing_force", "arm", "m"});
  check::not_negative(torque.value(), {"joint_peak_bearing_force", "torque", "N·m"});
  check::joint_angle(angle, "joint_peak_bearing_force", "angle");
  return text::joint_bearing_force(arm, torque) / math::cos(angle);
}

/// Life that nine bearings of ten reach, L10h, of the cross of a joint [s].
///
/// L = 10⁶ pi² / (w b) (C / P)^(10/3), P = T / (2 R), which is (1.5·10⁶ / (n b°)) (C / P)^(10/3) hours
///   load_rating  C  dynamic load rating of one bearing [N], above 0
///   arm          R  centre of the cross to the middle of a bearing [m], above 0
///   torque       T  on the driving shaft, steady [N·m], above 0
///   speed        w  of the driving shaft [rad/s], above 0
///   angle        b  joint angle [rad], above 0, below 90°
/// A bearing swings through 4 b in each turn of the shaft and so counts as one turning at n b / 90°. The exponent 10/3
/// is that of roller bearings (ISO 281); some books round it to 3. A straight joint does not swing: the formula has no
/// answer there and asks for an angle above 0. Where the formula is unproven see joint_bearing_life_checked. Source:
/// ISO 281 with the swing (computed); Seherr-Thoss, Schmelz & Aucktor print 1.5·10⁷ (C R / T)^(10/3) / (n b°), which is
/// 0.8 % lower because 1.5·10⁶·2^(10/3) is 1.512·10⁷ (from memory). Example: 20 kN, 40 mm, 400 N·m, 540 r/min, 15°: 18
/// 813.6 h.
inline Time joint_bearing_life(Force load_rating, Length arm, Torque torque, AngularSpeed speed, Angle angle) {
  constexpr const char* function = "joint_bearing_life";
  check::positive(load_rating.value(), {function, "load_rating", "N"});
  check::positive(arm.value(), {function, "arm", "m"});
  check::positive(torque.value(), {function, "torque", "N·m"});
  check::positive(speed.value(), {function, "speed", "rad/s"});
  check::between(angle.value(), 0.0, pi / 2.0, {function, "angle", "rad"});
  return text::joint_bearing_life(load_rating, arm, torque, speed, angle);
}

/// Below this angle needles hardly roll over each other's tracks: they mark the pin before they tire (false
/// brinelling), and a longer computed life is no gain.
inline constexpr Sourced<Angle> least_rolling_angle{
    degrees(3.0), {"practice of shaft builders: some angle, 1° to 3°, keeps needles rolling", Standing::from_memory}};

/// The load on a bearing over its rating up to which the life formula is meant.
inline constexpr Sourced<double> greatest_load_share{
    0.5, {"ISO 281:2007, scope of the basic rating life: load at most half the rating", Standing::from_memory}};

/// The same life, and whether the formula is meant for such a load and angle [s].
///
/// Arguments as joint_bearing_life. Outside: a load above half the rating; an angle below 3°.
/// Source: the two limits above. Example: 20 kN, 40 mm, 400 N·m, 540 r/min, 1°: outside.
inline Validated<Time> joint_bearing_life_checked(Force load_rating, Length arm, Torque torque, AngularSpeed speed,
                                                  Angle angle) {
  const Time life = joint_bearing_life(load_rating, arm, torque, speed, angle);
  if (text::joint_bearing_force(arm, torque) > greatest_load_share.value * load_rating) {
    return {life, "the load on a bearing is above half its rating"};
  }
  if (angle < least_rolling_angle.value) return {life, "the joint angle is too small for the needles to roll"};
  return {life};
}

// Varying duty. ---------------------------------------------------------------------------------------------

/// One part of a joint's working time.
struct JointDuty {
  double share; ///< of the working time, above 0; all shares together make 1
  Torque torque;
  AngularSpeed speed;
  Angle angle;
};

namespace detail {
inline void check_duties(const std::vector<JointDuty>& duties, const char* function) {
  double total = 0.0;
  for (const JointDuty& duty : duties) {
    check::positive(duty.share, {function, "duties.share", ""});
    check::positive(duty.torque.value(), {function, "duties.torque", "N·m"});
    check::positive(duty.speed.value(), {function, "duties.speed", "rad/s"});
    check::between(duty.angle.value(), 0.0, pi / 2.0, {function, "duties.angle", "rad"});
    total += duty.share;
  }
  // Shares written with four decimals may miss 1 by this much.
  check::within(total, 0.999, 1.001, {function, "duties.share (sum)", ""});
}
} // namespace detail

/// The steady duty that wears a joint's bearings as fast as a list of duties does.
///
/// w = sum q w; b = sum q w b / w; T = [sum q w b T^(10/3) / sum q w b]^(3/10), q the shares over their sum
///   duties  at least one; shares above 0 that add up to 1, everything else above 0, angles below 90°
/// Its life equals the sum of the shares of life that each duty takes (Palmgren and Miner), exactly.
/// Source: Seherr-Thoss, Schmelz & Aucktor, section 4.7 (published excerpt: mean torque by the exponent of life).
/// Example: half the time 400 N·m, half 200 N·m, both at 540 r/min and 15°: 334.25 N·m.
inline JointDuty joint_mean_duty(const std::vector<JointDuty>& duties) {
  detail::check_duties(duties, "joint_mean_duty");
  double total = 0.0;
  AngularSpeed speed{};
  double swing = 0.0;
  double damage = 0.0;
  for (const JointDuty& duty : duties) {
    const double part = duty.share * (duty.speed * duty.angle).value();
    total += duty.share;
    speed += duty.share * duty.speed;
    swing += part;
    damage += part * math::pow(duty.torque / duties.front().torque, roller_life_exponent);
  }
  return {1.0, duties.front().torque * math::pow(damage / swing, 1.0 / roller_life_exponent), speed / total,
          radians(swing / speed.value())};
}

/// Life L10h of the cross under varying duty [s].
///
/// 1/L = sum q_i / L_i (Palmgren and Miner), L_i the life under duty i alone
///   load_rating, arm  as for steady duty
///   duties            as for joint_mean_duty
/// Source and accuracy as joint_mean_duty. Example: as there with 20 kN and 40 mm: 34 231 h.
inline Time joint_bearing_life(Force load_rating, Length arm, const std::vector<JointDuty>& duties) {
  detail::check_duties(duties, "joint_bearing_life");
  double total = 0.0;
  Frequency wear{};
  for (const JointDuty& duty : duties) {
    total += duty.share;
    wear += duty.share / joint_bearing_life(load_rating, arm, duty.torque, duty.speed, duty.angle);
  }
  return total / wear;
}

} // namespace v0
} // namespace fieldshaft
