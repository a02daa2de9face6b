#pragma once
// Which PTO type a counted and measured shaft is, and at which speeds such a shaft is known to be driven.

#include <fieldshaft/pto/type.hpp>

namespace fieldshaft {
inline namespace v0 {

/// A type compared with a count and a measured diameter.
struct PtoMatch {
  const PtoType* type = nullptr;
  Length diameter_difference{}; ///< measured minus nominal diameter
  int count_difference = 0;     ///< counted minus the type's splines
};

/// The types that fit, and those that one slip of counting or measuring would explain.
/// The speeds at which a profile is known to be driven are in match.type->known_speeds.
struct PtoIdentification {
  FixedList<PtoMatch, 5> candidates;
  FixedList<PtoMatch, 5> near_misses;

  constexpr bool found() const noexcept { return candidates.size() == 1; }
  constexpr bool ambiguous() const noexcept { return candidates.size() > 1; }
  /// Never: the same spline is driven at different speeds, on some tractors by a lever that the stub does not heed.
  static constexpr bool speed_is_proved() noexcept { return false; }
};

/// How far a measured diameter may lie from the type's. A tape reads to a millimetre; the nearest sizes lie 6 mm
/// apart. Common sense, not a source.
inline constexpr Length pto_measuring_tolerance = millimetres(1.0);

/// A count that is wrong by up to so many splines is taken for a slip of counting. Common sense, not a source.
inline constexpr int spline_miscount = 2;

namespace detail {
/// A diameter fits if it lies within the tolerance of the exact size, of the size by which tables call the type (45 mm
/// for 44.45 mm), or between the two.
constexpr bool diameter_fits(const PtoType& type, Length diameter, Length tolerance) noexcept {
  const bool named_larger = type.named_diameter > type.nominal_diameter;
  const Length low = named_larger ? type.nominal_diameter : type.named_diameter;
  const Length high = named_larger ? type.named_diameter : type.nominal_diameter;
  constexpr Length rounding = metres(1e-12); // so that a reading exactly at the tolerance fits
  return diameter >= low - tolerance - rounding && diameter <= high + tolerance + rounding;
}
} // namespace detail

/// The PTO types that a spline count and a diameter over the splines may be.
///
///   spline_count         counted on the shaft, at least 1
///   diameter             measured over the splines [m], above 0
///   measuring_tolerance  [m], at least 0; 1 mm by default
/// A type is a candidate if its count is the same and its diameter within the tolerance. A near miss has the right
/// count and another diameter, or the right diameter and a count up to two off. No match is an answer, not an error.
/// A spline count never proves a speed: ask the lever, the manual, or a tachometer.
/// Source: sizes of the types (see PtoType). Example: 20 splines on 35 mm fit nothing; near misses are type 2 (one
/// spline miscounted) and type 3 (9.45 mm too small).
constexpr PtoIdentification identify_pto(int spline_count, Length diameter, Length measuring_tolerance) {
  if (spline_count < 1) {
    fail_input("identify_pto", "spline_count", std::to_string(spline_count), "a count of at least 1");
  }
  check::positive(diameter.value(), {"identify_pto", "diameter", "m"});
  check::not_negative(measuring_tolerance.value(), {"identify_pto", "measuring_tolerance", "m"});
  PtoIdentification result;
  for (const PtoType& type : pto_types()) {
    const PtoMatch match{&type, diameter - type.nominal_diameter, spline_count - type.spline_count};
    const bool fits = detail::diameter_fits(type, diameter, measuring_tolerance);
    const bool slip = match.count_difference >= -spline_miscount && match.count_difference <= spline_miscount;
    if (match.count_difference == 0 && fits) {
      result.candidates.push_back(match);
    } else if (match.count_difference == 0 || (fits && slip)) {
      result.near_misses.push_back(match);
    }
  }
  return result;
}

constexpr PtoIdentification identify_pto(int spline_count, Length diameter) {
  return identify_pto(spline_count, diameter, pto_measuring_tolerance);
}

} // namespace v0
} // namespace fieldshaft
