#pragma once
// What a mean stress does to the stress amplitude that a part endures.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/source.hpp>
#include <fieldshaft/units.hpp>

#include <limits>

namespace fieldshaft {
inline namespace v0 {

/// How amplitude and mean are weighed against each other. a is the amplitude over the endurance limit.
enum class MeanStressRule {
  goodman,       ///< a + m / S_ut = 1: a straight line, on the safe side of most tests of steel
  gerber,        ///< a + (m / S_ut)^2 = 1: a parabola through the middle of the tests
  soderberg,     ///< a + m / S_y = 1: safest, and guards against yielding too
  asme_elliptic, ///< a^2 + (m / S_y)^2 = 1: an ellipse; ASME B106.1M used it for shafts (withdrawn)
};

/// The strengths of a part against which its stresses are judged.
struct FatigueStrength {
  Stress endurance; ///< endurance limit of the part (with its surface, size, ... : see endurance_limit)
  Stress ultimate;  ///< tensile strength
  Stress yield;     ///< tensile yield strength
};

/// Source of the four rules and of their use for shafts.
inline constexpr Source mean_stress_source{"Shigley, Mechanical Engineering Design, 8th ed., chapters 6 and 7",
                                           Standing::textbook};

/// True if the rule weighs the mean stress against the yield strength, not the tensile strength.
constexpr bool uses_yield(MeanStressRule rule) noexcept {
  return rule == MeanStressRule::soderberg || rule == MeanStressRule::asme_elliptic;
}

namespace text {
/// The strength against which a rule weighs the mean stress.
template <class S> constexpr S mean_limit(S ultimate, S yield, MeanStressRule rule) noexcept {
  return uses_yield(rule) ? yield : ultimate;
}
/// One over the safety factor, from a = amplitude / endurance and m = mean / mean_limit. The sum scales with its
/// terms, so that it also holds for loads over strengths: the needed section then comes out without iteration.
template <class R> R mean_stress_sum(R a, R m, MeanStressRule rule) noexcept {
  switch (rule) {
  case MeanStressRule::gerber: return 0.5 * (a + math::sqrt(a * a + 4.0 * m * m));
  case MeanStressRule::asme_elliptic: return math::sqrt(a * a + m * m);
  case MeanStressRule::goodman:
  case MeanStressRule::soderberg: break;
  }
  return a + m;
}
} // namespace text

namespace detail {
constexpr void check_strength(const char* function, const FatigueStrength& strength) {
  check::positive(strength.endurance.value(), {function, "strength.endurance", "Pa"});
  check::positive(strength.yield.value(), {function, "strength.yield", "Pa"});
  check::at_least(strength.ultimate.value(), strength.yield.value(), {function, "strength.ultimate", "Pa"});
  check::at_least(strength.ultimate.value(), strength.endurance.value(), {function, "strength.ultimate", "Pa"});
}
constexpr void check_rule(const char* function, MeanStressRule rule) {
  const int value = static_cast<int>(rule);
  check::within(value, 0, static_cast<int>(MeanStressRule::asme_elliptic), {function, "rule", ""});
}
/// One over a utilization; without any load there is no limit.
inline double safety_factor(double utilization) noexcept {
  return utilization > 0.0 ? 1.0 / utilization : std::numeric_limits<double>::infinity();
}
} // namespace detail

/// Safety factor against fatigue of a stress that swings about a mean (both grow together until failure).
///
/// Goodman 1/n = a/S_e + m/S_ut; Soderberg 1/n = a/S_e + m/S_y; Gerber n a/S_e + (n m/S_ut)^2 = 1;
/// ASME elliptic 1/n^2 = (a/S_e)^2 + (m/S_y)^2
///   amplitude  a    half of the range, with the notch factor in it [Pa], at least 0
///   mean       m    [Pa], any sign; a compressive mean (below 0) counts as none, which is on the safe side
///   strength   S_e, S_ut, S_y  of the part [Pa], above 0, S_ut the largest
///   rule       which of the four
/// For long life of ductile steel. Gerber, Goodman and the ellipse do not guard against yielding on the first swing:
/// check the yield strength as well. Without any stress the factor is infinite. Source: Shigley, 8th ed., chapter 6.
/// Example: 40 MPa about 60 MPa, S_e 75, S_ut 500, S_y 300 MPa: Goodman 1.531, Gerber 1.789, Soderberg 1.364,
/// elliptic 1.756.
inline double fatigue_safety_factor(Stress amplitude, Stress mean, const FatigueStrength& strength,
                                    MeanStressRule rule) {
  constexpr const char* function = "fatigue_safety_factor";
  check::not_negative(amplitude.value(), {function, "amplitude", "Pa"});
  check::finite(mean.value(), {function, "mean", "Pa"});
  detail::check_strength(function, strength);
  detail::check_rule(function, rule);
  const double a = amplitude / strength.endurance;
  const double m = mean / text::mean_limit(strength.ultimate, strength.yield, rule);
  return detail::safety_factor(text::mean_stress_sum(a, m > 0.0 ? m : 0.0, rule));
}

} // namespace v0
} // namespace fieldshaft
