#pragma once
// The endurance limit of a steel part: half of the tensile strength, less what surface, size and duty take away.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/source.hpp>
#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/units.hpp>

#include <array>
#include <cstddef>

namespace fieldshaft {
inline namespace v0 {

/// How the surface was finished.
enum class SurfaceFinish { ground, machined, hot_rolled, forged };

/// How a part is loaded, for the factor that Shigley calls k_c.
enum class LoadKind {
  bending, ///< also bending with torsion, judged by the distortion-energy stress
  axial,
  torsion, ///< torque alone, judged by the shear stress
};

/// Constants a and b of k_a = a S_ut^b with S_ut in MPa.
struct SurfaceConstants {
  double coefficient;
  double exponent;
};

/// The five factors that turn the endurance limit of a polished specimen into that of a part.
struct EnduranceFactors {
  double surface = 1.0;
  double size = 1.0;
  double load = 1.0;
  double temperature = 1.0;
  double reliability = 1.0;

  constexpr double product() const noexcept { return surface * size * load * temperature * reliability; }
};

/// What is known of a part besides its strength.
struct EnduranceConditions {
  SurfaceFinish finish;
  Length diameter;
  LoadKind load = LoadKind::bending;
  TemperatureDifference above_zero_celsius = kelvins(20); ///< the part's temperature on the Celsius scale
  double reliability = 0.99;                              ///< share of such parts that reach the limit; 0.5 is the mean
};

inline constexpr Sourced<double> endurance_ratio{
    0.5, {"S_e' = 0.5 S_ut for steel (Sadhu Singh; Bhandari; Shigley, section 6-7)", Standing::textbook}};
inline constexpr Sourced<Stress> endurance_ceiling{megapascals(700),
                                                   {"S_e' at most 700 MPa (Shigley, section 6-7)", Standing::textbook}};
/// Distortion energy gives 0.5774; the books calculate with three figures.
inline constexpr Sourced<double> shear_endurance_ratio{
    0.577, {"S_se = 0.577 S_e (Sadhu Singh, ex. 4.8; Bhandari)", Standing::textbook}};

constexpr Sourced<SurfaceConstants> surface_constants(SurfaceFinish finish) noexcept {
  constexpr Source source{"Shigley, 9th ed., p. 345", Standing::published};
  switch (finish) {
  case SurfaceFinish::ground: return {{1.58, -0.085}, source};
  case SurfaceFinish::machined: return {{4.51, -0.265}, source}; // also cold drawn
  case SurfaceFinish::hot_rolled: return {{57.7, -0.718}, source};
  case SurfaceFinish::forged: break;
  }
  return {{272.0, -0.995}, source};
}

/// k_c by Shigley. For torsion the books give 0.577 or 0.59; this is the one for the shear stress of torque alone.
constexpr Sourced<double> load_factor(LoadKind load) noexcept {
  switch (load) {
  case LoadKind::axial: return {0.85, {"Shigley, 9th ed., p. 345", Standing::published}};
  case LoadKind::torsion: return {0.59, {"Shigley, 9th ed., p. 345", Standing::published}};
  case LoadKind::bending: break;
  }
  return {1.0, {"Shigley, 9th ed., p. 345", Standing::published}};
}

namespace text {
template <class S> constexpr S specimen_endurance(S ultimate, double ratio, S ceiling) noexcept {
  S limit = ratio * ultimate;
  if (!(limit < ceiling)) limit = ceiling;
  return limit;
}
template <class R> auto surface_factor(R strength_mpa, SurfaceConstants constants) noexcept {
  const R factor = constants.coefficient * math::pow(strength_mpa, constants.exponent);
  return factor < 1.0 ? factor : R(1.0);
}
template <class R> auto size_factor(R diameter_mm) noexcept {
  return diameter_mm <= 51.0 ? math::pow(diameter_mm / 7.62, -0.107) : 1.51 * math::pow(diameter_mm, -0.157);
}
/// A polynomial by its coefficients, that of the highest power first.
template <class R, std::size_t N> constexpr R polynomial(const std::array<double, N>& coefficients, R x) noexcept {
  R sum(0.0);
  for (const double coefficient : coefficients) sum = sum * x + coefficient;
  return sum;
}
/// Shigley's polynomial in degrees Fahrenheit.
template <class R> constexpr R temperature_factor(R fahrenheit) noexcept {
  return polynomial(std::array{-0.595e-12, 0.104e-8, -0.115e-5, 0.432e-3, 0.975}, fahrenheit);
}
/// The normal deviate that a share of all values, from one half on, lies above after a change of sign. Acklam's
/// rational approximation: its relative error is below 1.2e-9.
template <class R> R normal_deviate(R share) noexcept {
  constexpr std::array middle_above{-39.69683028665376, 220.9460984245205,  -275.9285104469687,
                                    138.3577518672690,  -30.66479806614716, 2.506628277459239};
  constexpr std::array middle_below{-54.47609879822406, 161.5858368580409,  -155.6989798598866,
                                    66.80131188771972,  -13.28068155288572, 1.0};
  constexpr std::array tail_above{-0.007784894002430293, -0.3223964580411365, -2.400758277161838,
                                  -2.549732539343734,    4.374664141464968,   2.938163982698783};
  constexpr std::array tail_below{0.007784695709041462, 0.3224671290700398, 2.445134137142996, 3.754408661907416, 1.0};
  if (share < 0.97575) {
    const R q = share - 0.5;
    return q * polynomial(middle_above, q * q) / polynomial(middle_below, q * q);
  }
  const R q = math::sqrt(-2.0 * math::log(1.0 - share));
  return -polynomial(tail_above, q) / polynomial(tail_below, q);
}
} // namespace text

/// Endurance limit of a polished specimen in rotating bending [Pa].
///
/// S_e' = 0.5 S_ut, at most 700 MPa
///   ultimate  S_ut  tensile strength [Pa], above 0
/// Steel only; tests scatter by about 8 %. Source: Sadhu Singh, Bhandari, Shigley section 6-7.
/// Example: 630 MPa give 315 MPa.
constexpr Stress specimen_endurance(Stress ultimate) {
  check::positive(ultimate.value(), {"specimen_endurance", "ultimate", "Pa"});
  return text::specimen_endurance(ultimate, endurance_ratio.value, endurance_ceiling.value);
}

/// Factor of the surface [-].
///
/// k_a = a S_ut^b, S_ut in MPa, at most 1: a stronger steel suffers more from a rough surface
///   finish    ground, machined (also cold drawn), hot rolled, forged
///   ultimate  S_ut  tensile strength [Pa], above 0
/// A corroded or fretted surface is worse than any of these. Source: see surface_constants.
/// Example: machined, 630 MPa: 0.817.
inline double surface_factor(SurfaceFinish finish, Stress ultimate) {
  check::positive(ultimate.value(), {"surface_factor", "ultimate", "Pa"});
  return text::surface_factor(in(ultimate, unit::megapascal), surface_constants(finish).value);
}

/// Factor of the size in bending or torsion [-]; in axial load the size does not count.
///
/// k_b = (d / 7.62 mm)^-0.107 up to 51 mm, 1.51 d^-0.157 (d in mm) above
///   diameter  d  of a turning round part [m], above 0
/// Valid from 2.79 to 254 mm; outside, the nearest end of the formula's range is used and said to be outside.
/// Source: Shigley, 9th ed., p. 345. The form 1.24 d^-0.107 printed beside it is
/// the same rounded, 0.2 % lower.
/// Example: 35 mm: 0.850.
inline Validated<double> size_factor(Length diameter) {
  check::positive(diameter.value(), {"size_factor", "diameter", "m"});
  const double mm = in(diameter, unit::millimetre);
  if (mm < 2.79) return {text::size_factor(2.79), "the size factor is stated from 2.79 mm"};
  if (mm > 254.0) return {text::size_factor(254.0), "the size factor is stated up to 254 mm; a larger part is weaker"};
  return {text::size_factor(mm)};
}

/// Factor of the temperature [-].
///
/// k_d = 0.975 + 0.432e-3 T - 0.115e-5 T^2 + 0.104e-8 T^3 - 0.595e-12 T^4, T in degrees Fahrenheit
///   above_zero_celsius  the part's temperature less 0 degrees Celsius [K], above -273.15
/// Valid from 20 to 540 degrees Celsius. Below, 1 is given and said to be outside: brittleness then decides, not
/// fatigue. Above, the value at 540 degrees is given and said to be outside: creep decides. Source: Shigley, Eq. 6-27
/// (from memory; 0.977 at 300 degrees published in a calculation sheet to ex. 6-6). Example: 20 degrees Celsius 0.999,
/// 300 degrees 0.977 (the book's table prints 0.975).
inline Validated<double> temperature_factor(TemperatureDifference above_zero_celsius) {
  check::at_least(above_zero_celsius.value(), -273.15, {"temperature_factor", "above_zero_celsius", "K"});
  const double celsius = above_zero_celsius.value();
  if (celsius < 20.0) return {1.0, "below 20 degrees Celsius brittleness decides, not fatigue"};
  if (celsius > 540.0) return {text::temperature_factor(1004.0), "above 540 degrees Celsius creep decides"};
  return {text::temperature_factor(32.0 + 1.8 * celsius)};
}

/// Factor of the reliability [-].
///
/// k_e = 1 - 0.08 z, z the normal deviate that the wanted share of parts stays above
///   reliability  share of parts that reach the limit, from 0.5, below 1
/// For a scatter of 8 % of the endurance limit. Source: Shigley, Eq. 6-29 and Table 6-5 (the table's 0.897 for 90 %,
/// 0.868 for 95 %, 0.814 for 99 % is this formula rounded; the use of 0.897 read in Sadhu Singh, ex. 4.8).
/// Example: 0.99 gives 0.8139.
inline double reliability_factor(double reliability) {
  check::from_below(reliability, 0.5, 1.0, {"reliability_factor", "reliability", ""});
  return 1.0 - 0.08 * text::normal_deviate(reliability);
}

/// The five factors for a part [-].
///
/// The factors of the functions above; the size does not count in axial load
///   ultimate    tensile strength [Pa], above 0
///   conditions  finish, diameter, kind of load, temperature, reliability
/// Outside the range of any one of them the result says so. Example: machined, 35 mm, 630 MPa, bending, 20 degrees
/// Celsius, 99 %: 0.817, 0.850, 1, 0.999, 0.814.
inline Validated<EnduranceFactors> endurance_factors(Stress ultimate, const EnduranceConditions& conditions) {
  const Validated<double> size = size_factor(conditions.diameter);
  const Validated<double> temperature = temperature_factor(conditions.above_zero_celsius);
  const bool sized = conditions.load != LoadKind::axial;
  EnduranceFactors factors;
  factors.surface = surface_factor(conditions.finish, ultimate);
  factors.size = sized ? size.value : 1.0;
  factors.load = load_factor(conditions.load).value;
  factors.temperature = temperature.value;
  factors.reliability = reliability_factor(conditions.reliability);
  return {factors, sized && !size.valid() ? size.outside : temperature.outside};
}

/// Endurance limit of a part [Pa].
///
/// S_e = k_a k_b k_c k_d k_e S_e'
///   ultimate  S_ut  tensile strength [Pa], above 0
///   factors   k     each above 0; stated ones, or those of endurance_factors
/// Steel, smooth at the place judged: a notch comes in by its own factor. Source: Shigley, Eq. 6-18.
/// Example: 500 MPa, 0.80, 0.85 and 0.897 give 152.49 MPa.
constexpr Stress endurance_limit(Stress ultimate, const EnduranceFactors& factors) {
  constexpr const char* function = "endurance_limit";
  check::positive(factors.surface, {function, "factors.surface", ""});
  check::positive(factors.size, {function, "factors.size", ""});
  check::positive(factors.load, {function, "factors.load", ""});
  check::positive(factors.temperature, {function, "factors.temperature", ""});
  check::positive(factors.reliability, {function, "factors.reliability", ""});
  return factors.product() * specimen_endurance(ultimate);
}

/// Endurance limit in shear [Pa].
///
/// S_se = r S_e
///   endurance  S_e  of the part in bending (load factor 1) [Pa], above 0
///   ratio      r    above 0, at most 1; by default 0.577
/// The other school puts 0.59 into the load factor instead: use one of them, never both.
/// Source: see shear_endurance_ratio. Example: 152.49 MPa give 87.987 MPa.
constexpr Stress shear_endurance(Stress endurance, double ratio = shear_endurance_ratio.value) {
  check::positive(endurance.value(), {"shear_endurance", "endurance", "Pa"});
  check::positive(ratio, {"shear_endurance", "ratio", ""});
  check::within(ratio, 0.0, 1.0, {"shear_endurance", "ratio", ""});
  return ratio * endurance;
}

} // namespace v0
} // namespace fieldshaft
