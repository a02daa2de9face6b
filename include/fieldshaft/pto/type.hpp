#pragma once
// The rear PTO types: what each one is called, how it is made, and at which speeds it is known to be driven.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/pto/list.hpp>
#include <fieldshaft/pto/profile.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {

/// A PTO type. Where two sources state the profile of type 1 differently both are kept.
struct PtoType {
  int number = 0; ///< 1 to 4; 0 is the shaft from before the standards, 1 1/8 in
  const char* name = "";
  AngularSpeed nominal_speed{};
  Length nominal_diameter{}; ///< over the splines, exact
  Length named_diameter{};   ///< the rounded size by which tables call it
  int spline_count = 0;
  SplineForm form = SplineForm::straight;
  Source identity{"", Standing::from_memory};       ///< of number, speed, diameter, count and form
  FixedList<Sourced<AngularSpeed>, 3> known_speeds; ///< at which this shaft is known to be driven, nominal first
  Datum<StraightProfile> straight_rule;             ///< general rule for six straight teeth
  Datum<StraightProfile> straight_standard;         ///< as the PTO standard is remembered to state it
  Datum<InvoluteProfile> involute;
  Datum<Length> useful_spline_length;  ///< least
  Datum<LengthLimits> groove_diameter; ///< of the retaining groove
  Datum<LengthLimits> groove_radius;   ///< of the retaining groove
  Datum<Length> end_to_groove;         ///< shaft end to the middle of the groove
  Datum<LengthLimits> cross_hole;      ///< the hole that the shaft may have
  Datum<LengthLimits> shield_overlap;  ///< master shield beyond the shaft end
  Datum<LengthRange> height;           ///< of the shaft above the ground
};

namespace detail {
inline constexpr Source type_table{
    "encyclopedia table of the types, after ISO 500-1:2014; DIN 9611:1974 has types 1 to 3", Standing::published};
inline constexpr Source type_practice{"tables of the trade", Standing::common_practice};
inline constexpr Source lever_practice{
    "operator's manuals: on some tractors the lever sets the speed and the stub only "
    "the spline",
    Standing::common_practice};
inline constexpr Source alternative_speed{"ISO 500-1:2004 and 2014, alternative speed of the type",
                                          Standing::from_memory};
inline constexpr Source shaft_standard{"ISO 500 and DIN 9611, shaft dimensions (of type 1 only the greatest tooth "
                                       "width, 8.60 mm, was read: DIN 9611:1974)",
                                       Standing::from_memory};
inline constexpr Source module_remembered{"ISO 500 and ANSI B92.1, spline of the PTO shaft", Standing::from_memory};
inline constexpr Source flat_root_rule{"formulas of ANSI B92.1-1970 (R1993) for 30°, applied to module and teeth; "
                                       "fillet root (N - 1.8)/P",
                                       Standing::published};
inline constexpr Source fine_fillet_rule{"formulas of ANSI B92.1-1970 (R1993) for 30°; fillet root of 16/32 and finer, "
                                         "(N - 2)/P, from memory because the printed row is garbled",
                                         Standing::from_memory};
inline constexpr Source metric_rule{"metric spline formulas, general design help page: m (Z - 1.5) flat, m (Z - 1.8) "
                                    "fillet",
                                    Standing::published};
inline constexpr Source shield_practice{"operator's manual that reproduces a table of ISO 500-1",
                                        Standing::common_practice};
inline constexpr Source height_remembered{"ISO 500:1991", Standing::from_memory};
inline constexpr Source hole_published{"IS 4931:1995 (ISO 500:1991), amendment 1", Standing::published};
inline constexpr Source length_remembered{"ISO 500, least useful spline length", Standing::from_memory};

constexpr Datum<LengthRange> height_mm(double low, double high) noexcept {
  return {{millimetres(low), millimetres(high)}, height_remembered};
}

/// What every standard type has: its identity, and its nominal speed as the first of the known ones.
constexpr PtoType standard_type(int number, const char* name, double nominal_rpm, Length diameter, Length named,
                                int splines, SplineForm form) {
  PtoType type;
  type.number = number;
  type.name = name;
  type.nominal_speed = rpm(nominal_rpm);
  type.nominal_diameter = diameter;
  type.named_diameter = named;
  type.spline_count = splines;
  type.form = form;
  type.identity = type_table;
  type.known_speeds.push_back({type.nominal_speed, type_table});
  return type;
}

constexpr void set_groove(PtoType& type, double diameter_mm, double radius_mm, double end_to_groove_mm) {
  type.groove_diameter = {limits_mm(diameter_mm, -0.1, 0.1), shaft_standard};
  type.groove_radius = {limits_mm(radius_mm, -0.25, 0.25), shaft_standard};
  type.end_to_groove = {millimetres(end_to_groove_mm), shaft_standard};
}

constexpr PtoType six_spline() {
  PtoType type =
      standard_type(1, "type 1, 1 3/8 in, 6 splines", 540, inches(1.375), millimetres(35), 6, SplineForm::straight);
  type.known_speeds.push_back({rpm(1000), lever_practice});
  type.straight_rule = straight_profile_by_rule(type.nominal_diameter);
  type.straight_standard = {
      {limits_mm(34.79, -0.06, 0.06), limits_mm(28.91, -0.05, 0.05), limits_mm(8.69, -0.16, -0.09)}, shaft_standard};
  type.useful_spline_length = {millimetres(76), length_remembered};
  set_groove(type, 29.4, 6.8, 38);
  type.cross_hole = {limits_mm(8.3, -0.1, 0.1), hole_published};
  type.shield_overlap = {limits_mm(85, -5, 5), shield_practice};
  type.height = height_mm(450, 675);
  return type;
}

constexpr PtoType twenty_one_spline() {
  PtoType type =
      standard_type(2, "type 2, 1 3/8 in, 21 splines", 1000, inches(1.375), millimetres(35), 21, SplineForm::involute);
  type.known_speeds.push_back({rpm(540), alternative_speed});
  type.involute = involute_profile(21, inches(1.0 / 16.0), 1.35, 2.0, module_remembered, fine_fillet_rule);
  type.useful_spline_length = {millimetres(64), length_remembered};
  set_groove(type, 29.4, 6.8, 25.5);
  type.shield_overlap = {limits_mm(85, -5, 5), shield_practice};
  type.height = height_mm(550, 775);
  return type;
}

constexpr PtoType twenty_spline() {
  PtoType type =
      standard_type(3, "type 3, 1 3/4 in, 20 splines", 1000, inches(1.75), millimetres(45), 20, SplineForm::involute);
  type.known_speeds.push_back({rpm(540), alternative_speed});
  type.involute = involute_profile(20, inches(1.0 / 12.0), 1.35, 1.8, module_remembered, flat_root_rule);
  // IS 4931:1995, amendment 1, corrects a column of its Table 6 to "89"; that the column is this length is inferred.
  type.useful_spline_length = {millimetres(89), length_remembered};
  set_groove(type, 37.25, 8.4, 38);
  type.shield_overlap = {limits_mm(100, -5, 5), shield_practice};
  type.height = height_mm(650, 875);
  return type;
}

constexpr PtoType twenty_two_spline() {
  PtoType type = standard_type(4, "type 4, 57.5 mm, 22 splines", 1300, millimetres(57.5), millimetres(57.5), 22,
                               SplineForm::involute);
  type.identity = {"encyclopedia table of the types, after ISO 500-1:2014 (its \"57.5 cm\" is a misprint of mm)",
                   Standing::published};
  type.known_speeds.push_back({rpm(1000), alternative_speed});
  type.involute = involute_profile(22, millimetres(2.5), 1.5, 1.8, module_remembered, metric_rule);
  type.shield_overlap = {limits_mm(100, -5, 5), shield_practice};
  return type;
}

constexpr PtoType pre_standard() {
  PtoType type;
  type.name = "before the standards, 1 1/8 in, 6 splines";
  type.nominal_speed = rpm(540);
  type.nominal_diameter = inches(1.125);
  type.named_diameter = millimetres(28.6);
  type.spline_count = 6;
  type.identity = type_practice;
  type.known_speeds.push_back({type.nominal_speed, type_practice});
  return type;
}

inline constexpr std::array all_pto_types = {six_spline(), twenty_one_spline(), twenty_spline(), twenty_two_spline(),
                                             pre_standard()};
} // namespace detail

/// Every type: 1 to 4, then the shaft from before the standards.
constexpr const auto& pto_types() noexcept { return detail::all_pto_types; }

/// The shaft from before the standards, 1 1/8 in with six splines. Its profile and power are not known here.
constexpr const PtoType& pre_standard_pto_type() noexcept { return detail::all_pto_types.back(); }

/// The PTO type of a number: 1 to 4 as in ISO 500-1:2014, 0 for the shaft from before the standards.
/// Example: pto_type(3) has 20 involute splines on 44.45 mm and a nominal speed of 1000 r/min.
constexpr const PtoType& pto_type(int number) {
  for (const PtoType& type : detail::all_pto_types) {
    if (type.number == number) return type;
  }
  fail_input("pto_type", "number", std::to_string(number), "1, 2, 3, 4, or 0 for the pre-standard 1 1/8 in shaft");
}

} // namespace v0
} // namespace fieldshaft
