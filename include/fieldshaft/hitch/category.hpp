#pragma once
// Categories of the rear three-point linkage, 1 to 4 and their narrow forms, each datum with where it comes from.

#include <fieldshaft/core/datum.hpp>
#include <fieldshaft/pto.hpp>

namespace fieldshaft {
inline namespace v0 {

struct HitchPowerRange {
  Power low;
  Power high;
};

/// What is known of a category. Numbers from memory are not those of the standard until checked there.
struct HitchCategory {
  int number;
  bool narrow;                  ///< N: the span of the next smaller category
  Datum<HitchPowerRange> power; ///< at the PTO
  Datum<Length> span;           ///< between the shoulders of the lower hitch pins
  Datum<Length> lower_pin;      ///< diameter
  Datum<Length> upper_pin;      ///< diameter
  Datum<Length> mast_height;
  Datum<LengthRange> convergence;    ///< lower links meet this far ahead of the lower hitch points
  Datum<Length> greatest_low_height; ///< lowest position of the lower hitch points above ground, at most
  Datum<Length> least_movement;      ///< of the lower hitch points, without load
  Datum<Length> least_transport_height;
  Datum<Length> least_levelling;          ///< height difference of the lower hitch points
  Datum<Length> least_lateral_float;      ///< to each side
  Datum<LengthRange> pto_to_lower_points; ///< PTO shaft end to lower hitch points, links level
};

namespace detail {

inline constexpr Source hitch_remembered{"ISO 730", Standing::from_memory};
inline constexpr Source hitch_manual{"a manual quoting ISO 730-1", Standing::common_practice};
inline constexpr Source hitch_span_rule{"ISO 730:2009, clause 3.1.5: N has the span of the next smaller category",
                                        Standing::published};
inline constexpr Source hitch_web_table{"published tables of hitch dimensions", Standing::published};

constexpr Datum<Length> hitch_mm(double mm, Source source) { return {millimetres(mm), source}; }
constexpr Datum<LengthRange> hitch_range(double low, double high, Source source) {
  return {LengthRange{millimetres(low), millimetres(high)}, source};
}
constexpr Datum<HitchPowerRange> hitch_power(double low, double high, Source source) {
  return {HitchPowerRange{kilowatts(low), kilowatts(high)}, source};
}

/// The wide form; `span` and power are set by the caller for N.
constexpr HitchCategory hitch_category_data(int number, bool narrow, Datum<Length> span) {
  switch (number) {
  case 1:
    return {1,
            narrow,
            hitch_power(0, 48, hitch_remembered),
            span,
            hitch_mm(22, hitch_remembered),
            hitch_mm(19, hitch_web_table),
            hitch_mm(460, hitch_remembered),
            hitch_range(1700, 2400, hitch_remembered),
            hitch_mm(200, hitch_remembered),
            hitch_mm(610, hitch_remembered),
            hitch_mm(820, hitch_remembered),
            hitch_mm(100, hitch_remembered),
            hitch_mm(100, hitch_remembered),
            hitch_range(500, 575, hitch_remembered)};
  case 2:
    return {2,
            narrow,
            hitch_power(30, 92, hitch_remembered),
            span,
            hitch_mm(28, hitch_manual),
            hitch_mm(25.5, hitch_web_table),
            hitch_mm(610, hitch_web_table),
            hitch_range(1800, 2400, hitch_manual),
            hitch_mm(200, hitch_remembered),
            hitch_mm(650, hitch_remembered),
            hitch_mm(950, hitch_remembered),
            hitch_mm(100, hitch_remembered),
            hitch_mm(125, hitch_remembered),
            hitch_range(550, 625, hitch_remembered)};
  case 3:
    return {3,
            narrow,
            hitch_power(60, 185, hitch_manual),
            span,
            hitch_mm(36.6, hitch_manual),
            hitch_mm(31.75, hitch_web_table),
            hitch_mm(685, hitch_web_table),
            hitch_range(1900, 2700, hitch_manual),
            hitch_mm(230, hitch_remembered),
            hitch_mm(735, hitch_remembered),
            hitch_mm(1065, hitch_remembered),
            hitch_mm(125, hitch_remembered),
            hitch_mm(125, hitch_remembered),
            hitch_range(575, 675, hitch_remembered)};
  default:
    return {4,
            narrow,
            hitch_power(110, 350, hitch_manual),
            span,
            hitch_mm(50.8, hitch_manual),
            hitch_mm(45, hitch_web_table),
            hitch_mm(685, hitch_remembered),
            hitch_range(1900, 2800, hitch_manual),
            hitch_mm(230, hitch_remembered),
            hitch_mm(760, hitch_remembered),
            hitch_mm(1200, hitch_remembered),
            hitch_mm(150, hitch_remembered),
            hitch_mm(130, hitch_remembered),
            hitch_range(575, 675, hitch_remembered)};
  }
}

constexpr double hitch_span_mm(int number) noexcept {
  constexpr double spans[] = {508, 683, 825, 965, 1166};
  return spans[number];
}
constexpr Source hitch_span_source(int number) noexcept {
  constexpr Source sources[] = {{"20 in, published tables of category 0", Standing::published},
                                hitch_remembered,
                                hitch_web_table,
                                hitch_web_table,
                                hitch_manual};
  return sources[number];
}

} // namespace detail

/// The category of a number, 1 to 4, narrow or not.
///
/// The span of a narrow category is that of the next smaller one: a published rule (ISO 730:2009, clause 3.1.5).
/// Popular tables of 28, 34, 40 and 48 in give another measure than the shoulder span and are not used. Older American
/// masts were 457, 483, 559 and 686 mm high (ASAE S217.11, from memory). Example: category 2: span 825 mm, mast 610 mm,
/// pins 28 and 25.5 mm; category 2N: span 683 mm.
inline HitchCategory hitch_category(int number, bool narrow = false) {
  if (number < 1 || number > 4) fail_input("hitch_category", "number", std::to_string(number), "1 to 4");
  const int span_of = narrow ? number - 1 : number;
  Source source = detail::hitch_span_source(span_of);
  if (narrow && source.standing != Standing::from_memory) source = detail::hitch_span_rule;
  return detail::hitch_category_data(number, narrow, {millimetres(detail::hitch_span_mm(span_of)), source});
}

/// Transport pitch as usually stated, 5° to 10°: the definition is published, the figures are from memory.
struct HitchAngleRange {
  Angle low;
  Angle high;
};
inline constexpr Sourced<HitchAngleRange> usual_transport_pitch{{degrees(5), degrees(10)}, detail::hitch_remembered};

} // namespace v0
} // namespace fieldshaft
