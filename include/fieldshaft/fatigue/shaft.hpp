#pragma once
// A round shaft under bending and torque that swing about a mean: safety factor and needed diameter.

#include <fieldshaft/fatigue/mean_stress.hpp>

namespace fieldshaft {
inline namespace v0 {

/// Bending moment and torque at a section. For a shaft that turns under a steady load from one side the bending is
/// all amplitude and no mean.
struct ShaftLoad {
  Torque bending_amplitude{}; ///< half of the range, at least 0
  Torque bending_mean{};      ///< any sign
  Torque torque_amplitude{};  ///< half of the range, at least 0
  Torque torque_mean{};       ///< any sign
};

/// By how much a shoulder, groove or spline end raises the stress (see notch_factor); one for a smooth shaft.
struct NotchFactors {
  double bending = 1.0; ///< K_f, at least 1
  double torsion = 1.0; ///< K_fs, at least 1
};

/// The distortion-energy stresses at the surface of a shaft, notch factors included.
struct ShaftStresses {
  Stress amplitude;
  Stress mean;
  Stress peak; ///< of the greatest bending and the greatest torque together
};

/// The two ways in which books judge a shaft under torque alone.
enum class TorsionSchool {
  mean_ignored,     ///< Sines: a mean torque does not shorten life while the peak stays below yield
  goodman_in_shear, ///< amplitude over endurance plus mean over ultimate, both in shear; asks for a larger shaft
};

namespace text {
/// The moment whose stress 16 A / (pi d^3) is the distortion-energy stress of bending and torque together.
template <class T, class R> auto combined_moment(T bending, R bending_factor, T torque, R torsion_factor) noexcept {
  const auto m = bending_factor * bending;
  const auto t = torsion_factor * torque;
  return math::sqrt(4.0 * m * m + 3.0 * t * t);
}
/// 16 A / (pi d^3 (1 - k^4)); of a torque alone it is the shear stress.
template <class T, class L, class R> constexpr auto round_stress(T moment, L diameter, R bore_ratio) noexcept {
  return 16.0 * without_radian(moment) / (pi * math::power<3>(diameter) * (1.0 - math::power<4>(bore_ratio)));
}
/// The diameter at which round_stress is `1 / moment_over_strength` of the strength.
template <class V, class R> auto round_diameter(V moment_over_strength, R bore_ratio) noexcept {
  return math::cbrt(16.0 * moment_over_strength / (pi * (1.0 - math::power<4>(bore_ratio))));
}
} // namespace text

namespace detail {
constexpr void check_shaft(const char* function, const ShaftLoad& load, const NotchFactors& notch) {
  check::not_negative(load.bending_amplitude.value(), {function, "load.bending_amplitude", "N·m"});
  check::finite(load.bending_mean.value(), {function, "load.bending_mean", "N·m"});
  check::not_negative(load.torque_amplitude.value(), {function, "load.torque_amplitude", "N·m"});
  check::finite(load.torque_mean.value(), {function, "load.torque_mean", "N·m"});
  check::at_least(notch.bending, 1.0, {function, "notch.bending", ""});
  check::at_least(notch.torsion, 1.0, {function, "notch.torsion", ""});
}
inline Torque amplitude_moment(const ShaftLoad& load, const NotchFactors& notch) noexcept {
  return text::combined_moment(load.bending_amplitude, notch.bending, load.torque_amplitude, notch.torsion);
}
inline Torque mean_moment(const ShaftLoad& load, const NotchFactors& notch) noexcept {
  return text::combined_moment(load.bending_mean, notch.bending, load.torque_mean, notch.torsion);
}
inline Torque peak_moment(const ShaftLoad& load, const NotchFactors& notch) noexcept {
  return text::combined_moment(load.bending_amplitude + math::abs(load.bending_mean), notch.bending,
                               load.torque_amplitude + math::abs(load.torque_mean), notch.torsion);
}
} // namespace detail

/// Distortion-energy stresses of a round shaft under bending and torque [Pa].
///
/// s = 16 / (pi d^3 (1 - k^4)) sqrt(4 (K_f M)^2 + 3 (K_fs T)^2), for amplitude, mean and peak
///   load        M, T       [N·m]
///   diameter    d          [m], above 0
///   notch       K_f, K_fs  at least 1; also on the mean, which is on the safe side for ductile steel
///   bore_ratio  k          bore over diameter, from 0 to below 1
/// Peaks of bending and torque are taken as falling together. Source: Shigley, 8th ed., Eqs. 7-5, 7-6, 7-15.
/// Example: 32 N·m of bending amplitude on 20 mm: 40.744 MPa.
inline ShaftStresses shaft_stresses(const ShaftLoad& load, Length diameter, const NotchFactors& notch = {},
                                    double bore_ratio = 0.0) {
  constexpr const char* function = "shaft_stresses";
  detail::check_shaft(function, load, notch);
  check::positive(diameter.value(), {function, "diameter", "m"});
  check::from_below(bore_ratio, 0.0, 1.0, {function, "bore_ratio", ""});
  return {text::round_stress(detail::amplitude_moment(load, notch), diameter, bore_ratio),
          text::round_stress(detail::mean_moment(load, notch), diameter, bore_ratio),
          text::round_stress(detail::peak_moment(load, notch), diameter, bore_ratio)};
}

/// Safety factor against fatigue of a round shaft under bending and torque.
///
/// The rule of fatigue_safety_factor on the stresses of shaft_stresses.
///   load, diameter, notch, bore_ratio  as for shaft_stresses
///   strength, rule                     as for fatigue_safety_factor
/// Validity as there: also ask shaft_yield_safety_factor. Source: Shigley, 8th ed., Eqs. 7-7 to 7-14.
/// Example: the example of fatigue_diameter at its answer gives back 2.
inline double shaft_fatigue_safety_factor(const ShaftLoad& load, Length diameter, const FatigueStrength& strength,
                                          MeanStressRule rule, const NotchFactors& notch = {},
                                          double bore_ratio = 0.0) {
  const ShaftStresses stresses = shaft_stresses(load, diameter, notch, bore_ratio);
  return fatigue_safety_factor(stresses.amplitude, stresses.mean, strength, rule);
}

/// Safety factor of a round shaft against yielding at its peak load.
///
/// n = S_y / s_peak, with the peak of shaft_stresses
///   load, diameter, notch, bore_ratio  as for shaft_stresses
///   yield  S_y  tensile yield strength [Pa], above 0
/// The notch factors are left in, which is on the safe side. Source: Shigley, 8th ed., Eq. 7-16.
/// Example: 32 N·m of bending amplitude, 47 N·m of mean torque on 20 mm, 300 MPa: 4.551.
inline double shaft_yield_safety_factor(const ShaftLoad& load, Length diameter, Stress yield,
                                        const NotchFactors& notch = {}, double bore_ratio = 0.0) {
  check::positive(yield.value(), {"shaft_yield_safety_factor", "yield", "Pa"});
  return detail::safety_factor(shaft_stresses(load, diameter, notch, bore_ratio).peak / yield);
}

/// Diameter that a round shaft needs under bending and torque [m].
///
/// A = sqrt(4 (K_f M_a)^2 + 3 (K_fs T_a)^2), B the same of the mean;
/// Goodman d^3 = (16 n / pi) (A/S_e + B/S_ut); Soderberg with S_y for S_ut;
/// ASME elliptic d^3 = (16 n / pi) sqrt((A/S_e)^2 + (B/S_y)^2);
/// Gerber d^3 = (8 n A / (pi S_e)) (1 + sqrt(1 + (2 B S_e / (A S_ut))^2))
///   load, notch, bore_ratio  as for shaft_stresses (a bore divides d^3 by 1 - k^4)
///   strength, rule           as for fatigue_safety_factor
///   safety_factor  n         above 0
/// S_e depends on the size itself: repeat with the size factor of the answer. Validity as for fatigue_safety_factor.
/// Source: Shigley, 8th ed., Eqs. 7-8 to 7-14.
/// Example: M 600 and 500, T 400 and 300 lbf·in (amplitude and mean), K_f 2.2, K_fs 1.8, S_e 30, S_ut 100, S_y 80 ksi,
/// n = 2: Gerber 1.0157, elliptic 1.0122, Soderberg 1.0902, Goodman 1.0728 in.
inline Length fatigue_diameter(const ShaftLoad& load, const FatigueStrength& strength, MeanStressRule rule,
                               double safety_factor, const NotchFactors& notch = {}, double bore_ratio = 0.0) {
  constexpr const char* function = "fatigue_diameter";
  detail::check_shaft(function, load, notch);
  detail::check_strength(function, strength);
  detail::check_rule(function, rule);
  check::positive(safety_factor, {function, "safety_factor", ""});
  check::from_below(bore_ratio, 0.0, 1.0, {function, "bore_ratio", ""});
  const Volume a = without_radian(detail::amplitude_moment(load, notch)) / strength.endurance;
  const Volume m =
      without_radian(detail::mean_moment(load, notch)) / text::mean_limit(strength.ultimate, strength.yield, rule);
  const Volume sum = text::mean_stress_sum(a, m, rule);
  return text::round_diameter(safety_factor * sum, bore_ratio);
}

/// Safety factor against fatigue of a round shaft under torque alone.
///
/// Mean ignored: n = S_se / t_a; Goodman in shear: 1/n = t_a/S_se + t_m/S_su; t = 16 K_fs T / (pi d^3 (1 - k^4))
///   torque_amplitude  half of the range [N·m], at least 0
///   torque_mean       [N·m], any sign
///   diameter   d      [m], above 0
///   shear_endurance  S_se  of the part [Pa], above 0
///   shear_ultimate   S_su  [Pa], above 0
///   school     which of the two; books disagree, so that a doubtful case is judged by both
///   notch_factor  K_fs  at least 1
///   bore_ratio    k     bore over diameter, from 0 to below 1
/// Ignoring the mean is meant for smooth ductile shafts whose peak stays below yield; a notched shaft feels it.
/// Source: Bhandari and Sadhu Singh (mean ignored); Shigley, 8th ed., section 6-14 (Goodman in shear).
/// Example: 350 N·m about 150 N·m on 34.347 mm, S_se 87.987 MPa: 2 with the mean ignored.
inline double torsion_fatigue_safety_factor(Torque torque_amplitude, Torque torque_mean, Length diameter,
                                            Stress shear_endurance, Stress shear_ultimate, TorsionSchool school,
                                            double notch_factor = 1.0, double bore_ratio = 0.0) {
  constexpr const char* function = "torsion_fatigue_safety_factor";
  check::not_negative(torque_amplitude.value(), {function, "torque_amplitude", "N·m"});
  check::finite(torque_mean.value(), {function, "torque_mean", "N·m"});
  check::positive(diameter.value(), {function, "diameter", "m"});
  check::positive(shear_endurance.value(), {function, "shear_endurance", "Pa"});
  check::at_least(shear_ultimate.value(), shear_endurance.value(), {function, "shear_ultimate", "Pa"});
  check::at_least(notch_factor, 1.0, {function, "notch_factor", ""});
  check::from_below(bore_ratio, 0.0, 1.0, {function, "bore_ratio", ""});
  const double a = text::round_stress(notch_factor * torque_amplitude, diameter, bore_ratio) / shear_endurance;
  if (school == TorsionSchool::mean_ignored) return detail::safety_factor(a);
  const double m = text::round_stress(notch_factor * math::abs(torque_mean), diameter, bore_ratio) / shear_ultimate;
  return detail::safety_factor(text::mean_stress_sum(a, m, MeanStressRule::goodman));
}

/// Diameter that a round shaft needs under torque alone [m].
///
/// Mean ignored: d^3 = 16 n K_fs T_a / (pi S_se); Goodman in shear: d^3 = (16 n K_fs / pi) (T_a/S_se + T_m/S_su)
///   parameters, validity and source as for torsion_fatigue_safety_factor
///   safety_factor  n  above 0
/// Example: 350 N·m about 150 N·m, S_se 87.987 MPa, n = 2: 34.347 mm with the mean ignored; 35.590 mm by Goodman in
/// shear with S_su 335 MPa.
inline Length torsion_fatigue_diameter(Torque torque_amplitude, Torque torque_mean, Stress shear_endurance,
                                       Stress shear_ultimate, TorsionSchool school, double safety_factor,
                                       double notch_factor = 1.0, double bore_ratio = 0.0) {
  constexpr const char* function = "torsion_fatigue_diameter";
  check::not_negative(torque_amplitude.value(), {function, "torque_amplitude", "N·m"});
  check::finite(torque_mean.value(), {function, "torque_mean", "N·m"});
  check::positive(shear_endurance.value(), {function, "shear_endurance", "Pa"});
  check::at_least(shear_ultimate.value(), shear_endurance.value(), {function, "shear_ultimate", "Pa"});
  check::positive(safety_factor, {function, "safety_factor", ""});
  check::at_least(notch_factor, 1.0, {function, "notch_factor", ""});
  check::from_below(bore_ratio, 0.0, 1.0, {function, "bore_ratio", ""});
  Volume sum = without_radian(torque_amplitude) / shear_endurance;
  if (school == TorsionSchool::goodman_in_shear) {
    sum += Volume(without_radian(math::abs(torque_mean)) / shear_ultimate);
  }
  return text::round_diameter(safety_factor * notch_factor * sum, bore_ratio);
}

} // namespace v0
} // namespace fieldshaft
