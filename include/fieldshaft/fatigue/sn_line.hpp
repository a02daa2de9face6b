#pragma once
// The S-N line: how many cycles of a reversed load a part bears between 1000 cycles and its endurance limit.

#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/fatigue/cycle.hpp>
#include <fieldshaft/fatigue/mean_stress.hpp>

#include <limits>

namespace fieldshaft {
inline namespace v0 {

/// A straight line in logarithms, S = a N^b, that ends at the endurance limit. Q is a stress, or the torque or force
/// for which a part was tested.
template <class Q = Stress> struct SnLine {
  Q coefficient;            ///< a
  double exponent;          ///< b, below 0
  Q endurance;              ///< reversed amplitude below which the life is endless
  Q ultimate;               ///< against which Goodman and Gerber weigh a mean
  Q yield;                  ///< against which Soderberg and the ellipse weigh it
  bool either_sign = false; ///< a mean of either sign does harm (torsion); otherwise only one above 0
};

/// The usual ends of the line, and the exponent of Wentzell's short form.
inline constexpr double sn_first_cycles = 1e3;
inline constexpr double sn_knee_cycles = 1e6;
inline constexpr Sourced<double> finite_life_exponent{0.09, {"Wentzell, ex. 5.6", Standing::textbook}};

namespace text {
template <class S> auto sn_coefficient(S at_first, S endurance) noexcept { return at_first * (at_first / endurance); }
template <class S> auto sn_exponent(S first, S second, double first_cycles, double second_cycles) noexcept {
  return math::log(second / first) / math::log(second_cycles / first_cycles);
}
template <class R> auto sn_cycles(R amplitude_over_coefficient, double exponent) noexcept {
  return math::pow(amplitude_over_coefficient, 1.0 / exponent);
}
/// By how much the mean, m = mean / limit below 1, raises the amplitude that counts.
template <class R> R mean_growth(R m, MeanStressRule rule) noexcept {
  switch (rule) {
  case MeanStressRule::gerber: return 1.0 / (1.0 - m * m);
  case MeanStressRule::asme_elliptic: return 1.0 / math::sqrt(1.0 - m * m);
  case MeanStressRule::goodman:
  case MeanStressRule::soderberg: break;
  }
  return 1.0 / (1.0 - m);
}
template <class R> constexpr R strength_fraction(R ksi) noexcept {
  return ksi < 70.0 ? R(0.9) : 1.06 + ksi * (-2.8e-3 + ksi * 6.9e-6);
}
} // namespace text

namespace detail {
template <class Q> void check_line(const char* function, const SnLine<Q>& line) {
  check::positive(number_of(line.endurance), {function, "line.endurance", si_unit<Q>()});
  check::at_least(number_of(line.coefficient), number_of(line.endurance), {function, "line.coefficient", si_unit<Q>()});
  check::positive(number_of(line.ultimate), {function, "line.ultimate", si_unit<Q>()});
  check::positive(number_of(line.yield), {function, "line.yield", si_unit<Q>()});
  check::below(line.exponent, 0.0, {function, "line.exponent", ""});
}
/// Mean over its limit, as far as it does harm.
template <class Q> double harmful_mean(double mean, const SnLine<Q>& line, MeanStressRule rule) noexcept {
  const double m = mean / number_of(text::mean_limit(line.ultimate, line.yield, rule));
  return line.either_sign ? math::abs(m) : (m > 0.0 ? m : 0.0);
}
inline constexpr const char* mean_breaks = "the mean alone reaches the strength";
inline constexpr const char* too_few_cycles =
    "the S-N line begins at 1000 cycles: below, the part yields at every cycle and breaks within minutes";
} // namespace detail

/// Share of the tensile strength that a steel bears for 1000 reversed cycles [-].
///
/// f = 0.9 below 70 ksi, 1.06 - 2.8e-3 S + 6.9e-6 S^2 (S in ksi) from there to 200 ksi (483 to 1379 MPa)
///   ultimate  tensile strength [Pa], above 0
/// Above 200 ksi the value at 200 ksi is given and said to be outside. Source: Shigley, Fig. 6-18 and the line fitted
/// to it (from memory). Example: 105 ksi give 0.842.
inline Validated<double> strength_fraction(Stress ultimate) {
  check::positive(ultimate.value(), {"strength_fraction", "ultimate", "Pa"});
  const double strength = in(ultimate, unit::ksi);
  if (strength > 200.0) return {text::strength_fraction(200.0), "the fraction is stated up to 200 ksi (1379 MPa)"};
  return {text::strength_fraction(strength)};
}

/// S-N line of a steel part.
///
/// a = (f S_ut)^2 / S_e, b = -log10(f S_ut / S_e) / 3: through f S_ut at 10^3 and S_e at 10^6 cycles
///   strength  S_e, S_ut, S_y  of the part [Pa], above 0
///   fraction  f  of S_ut that is borne for 1000 cycles, above S_e / S_ut, at most 1 (see strength_fraction)
/// Steel, constant amplitude. Source: Shigley, Eqs. 6-14, 6-15.
/// Example: S_ut 105, S_e 22 ksi, f 0.84: a = 353.60 ksi, b = -0.20101.
inline SnLine<Stress> sn_line(const FatigueStrength& strength, double fraction) {
  constexpr const char* function = "sn_line";
  detail::check_strength(function, strength);
  const double least = strength.endurance / strength.ultimate;
  if (!(fraction > least)) check::fail_bound({function, "fraction", ""}, fraction, "above ", least);
  check::within(fraction, 0.0, 1.0, {function, "fraction", ""});
  const Stress first = fraction * strength.ultimate;
  return {text::sn_coefficient(first, strength.endurance),
          text::sn_exponent(first, strength.endurance, sn_first_cycles, sn_knee_cycles), strength.endurance,
          strength.ultimate, strength.yield};
}

/// S-N line through two tested points of a part, for instance torques.
///
/// b = log(S_2 / S_1) / log(N_2 / N_1), a = S_1 / N_1^b; the second point is taken as the endurance limit
///   first, second                S  reversed amplitudes, second above 0 and below first
///   first_cycles, second_cycles  N  above 0, second above first
///   ultimate, yield              static strengths in the same unit, above 0
/// Holds between the points. Source: definition of the line.
/// Example: 60 ksi for 8520, 40 ksi for 10^6 cycles: b = -0.085086.
template <class Q>
SnLine<Q> sn_line_through(Q first, double first_cycles, Q second, double second_cycles, Q ultimate, Q yield) {
  constexpr const char* function = "sn_line_through";
  check::positive(detail::number_of(first), {function, "first", detail::si_unit<Q>()});
  check::between(detail::number_of(second), 0.0, detail::number_of(first), {function, "second", detail::si_unit<Q>()});
  check::positive(first_cycles, {function, "first_cycles", ""});
  check::finite(second_cycles, {function, "second_cycles", ""});
  if (!(second_cycles > first_cycles))
    check::fail_bound({function, "second_cycles", ""}, second_cycles, "above ", first_cycles);
  const double exponent = text::sn_exponent(first, second, first_cycles, second_cycles);
  SnLine<Q> line{first * math::pow(first_cycles, -exponent), exponent, second, ultimate, yield};
  detail::check_line(function, line);
  return line;
}

/// The amplitude that, fully reversed, does the same harm as an amplitude about a mean.
///
/// Goodman a / (1 - m/S_ut), Soderberg a / (1 - m/S_y), Gerber a / (1 - (m/S_ut)^2), elliptic a / sqrt(1 - (m/S_y)^2)
///   amplitude  a  in the unit of the line, at least 0
///   mean       m  any sign; below 0 it counts as none, except on a line for torsion, where its size counts
///   line, rule    strengths and rule
/// Where the mean alone reaches the strength the amplitude is endless and said to be outside.
/// Source: Shigley, Eqs. 6-58, 6-59 and their like. Example: 30 ksi about 10 ksi, S_ut 105 ksi, Goodman: 33.158 ksi.
template <class Q> Validated<Q> equivalent_reversed(Q amplitude, Q mean, const SnLine<Q>& line, MeanStressRule rule) {
  constexpr const char* function = "equivalent_reversed";
  check::not_negative(detail::number_of(amplitude), {function, "amplitude", detail::si_unit<Q>()});
  check::finite(detail::number_of(mean), {function, "mean", detail::si_unit<Q>()});
  detail::check_line(function, line);
  detail::check_rule(function, rule);
  const double m = detail::harmful_mean(detail::number_of(mean), line, rule);
  if (m >= 1.0) return {std::numeric_limits<double>::infinity() * line.endurance, detail::mean_breaks};
  return {amplitude * text::mean_growth(m, rule)};
}

/// Cycles of a fully reversed amplitude until failure [-]; infinite at and below the endurance limit.
///
/// N = (S / a)^(1/b)
///   amplitude  S  in the unit of the line, at least 0
///   line       a, b, endurance limit
/// Valid from 10^3 cycles on; fewer are given and said to be outside. Single parts differ from it by a factor of three
/// and more either way. Source: Shigley, Eq. 6-16.
/// Example: 60 ksi with a 353.60 ksi, b -0.20101: 6798 cycles.
template <class Q> Validated<double> cycles_to_failure(Q amplitude, const SnLine<Q>& line) {
  constexpr const char* function = "cycles_to_failure";
  check::not_negative(detail::number_of(amplitude), {function, "amplitude", detail::si_unit<Q>()});
  detail::check_line(function, line);
  if (amplitude <= line.endurance) return {std::numeric_limits<double>::infinity()};
  const double ratio = amplitude / line.coefficient;
  const double cycles = text::sn_cycles(ratio, line.exponent);
  return {cycles, cycles < sn_first_cycles ? detail::too_few_cycles : nullptr};
}

/// Reversed amplitude that is borne for a number of cycles below 10^6 [Pa].
///
/// S(N) = S_e (10^6 / N)^0.09, a short form of the S-N line
///   endurance  S_e  of the part [Pa], above 0
///   cycles     N    above 0
/// Valid from 10^3 to 10^6 cycles; above, S_e holds; below, the value is said to be outside.
/// Source: Wentzell, ex. 5.6. Example: 100 MPa, 10^5 cycles: 123.0 MPa.
inline Validated<Stress> finite_life_strength(Stress endurance, double cycles,
                                              double exponent = finite_life_exponent.value) {
  constexpr const char* function = "finite_life_strength";
  check::positive(endurance.value(), {function, "endurance", "Pa"});
  check::positive(cycles, {function, "cycles", ""});
  check::positive(exponent, {function, "exponent", ""});
  if (cycles >= sn_knee_cycles) return {endurance};
  return {endurance * math::pow(sn_knee_cycles / cycles, exponent),
          cycles < sn_first_cycles ? detail::too_few_cycles : nullptr};
}

/// How an overload lowers the endurance limit.
enum class DamageMethod {
  miner,  ///< the line moves down in parallel
  manson, ///< the line turns about its point at 1000 cycles; tests agree better with it
};

/// Endurance limit that is left after some cycles of an overload.
///
/// Miner: S_e (1 - n/N)^-b. Manson: the line through (10^3, a 10^(3b)) and (N - n, S) taken to the cycles of the knee
///   line       a, b, endurance limit
///   amplitude  S  reversed, above the endurance limit
///   used       n  cycles that it has run, from 0, below its cycles to failure N
///   method     which of the two; Manson needs more than 1000 cycles to be left and is said to be outside otherwise
/// Source: Shigley, section 6-15. Example: 60 ksi for 3000 of 8520 cycles, 40 ksi at 10^6: 38.55 ksi by Miner.
template <class Q>
Validated<Q> damaged_endurance(const SnLine<Q>& line, Q amplitude, double used, DamageMethod method) {
  constexpr const char* function = "damaged_endurance";
  detail::check_line(function, line);
  check::at_least(detail::number_of(amplitude), detail::number_of(line.endurance),
                  {function, "amplitude", detail::si_unit<Q>()});
  const double life = text::sn_cycles(static_cast<double>(amplitude / line.coefficient), line.exponent);
  check::from_below(used, 0.0, life, {function, "used", ""});
  const double left = life - used;
  if (method == DamageMethod::miner) return {line.endurance * math::pow(left / life, -line.exponent)};
  if (left <= sn_first_cycles) return {line.endurance * 0.0, detail::too_few_cycles};
  const double knee = text::sn_cycles(static_cast<double>(line.endurance / line.coefficient), line.exponent);
  const Q first = line.coefficient * math::pow(sn_first_cycles, line.exponent);
  const double exponent = text::sn_exponent(first, amplitude, sn_first_cycles, left);
  return {amplitude * math::pow(knee / left, exponent)};
}

} // namespace v0
} // namespace fieldshaft
