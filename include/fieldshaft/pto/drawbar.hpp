#pragma once
// From the PTO shaft end to the drawbar's hitch pin, and the drawbar categories.

#include <fieldshaft/pto/type.hpp>

namespace fieldshaft {
inline namespace v0 {

enum class DrawbarPosition {
  short_,      ///< the short hole of ISO 6489-3
  regular,     ///< the regular hole of ISO 6489-3
  extended,    ///< the extended hole of ISO 6489-3
  us_practice, ///< the distance usual in the United States
};

/// The short hole carries a load closer to the tractor; it is never for PTO work.
constexpr Sourced<bool> usable_for_pto_work(DrawbarPosition position) noexcept {
  return {position != DrawbarPosition::short_,
          {"operator's manuals: the short hole is never for PTO implements", Standing::common_practice}};
}

/// A distance from the end of the PTO shaft to the centre of the hitch pin, along the tractor.
struct DrawbarDistance {
  DrawbarPosition position;
  Sourced<Length> distance;
};

using DrawbarDistances = FixedList<DrawbarDistance, 4>;

namespace detail {
inline constexpr Source drawbar_remembered{"ISO 6489-3, drawbar positions", Standing::from_memory};

constexpr DrawbarDistances hole_distances(double short_mm, double regular_mm, double extended_mm,
                                          Sourced<Length> us_practice) {
  return {{DrawbarPosition::short_, {millimetres(short_mm), drawbar_remembered}},
          {DrawbarPosition::regular, {millimetres(regular_mm), drawbar_remembered}},
          {DrawbarPosition::extended, {millimetres(extended_mm), drawbar_remembered}},
          {DrawbarPosition::us_practice, us_practice}};
}
} // namespace detail

/// The distances known for a type; none is known for type 4 and for the pre-standard shaft (empty).
///
/// The US distances belong to the type's nominal speed. Metric prints of them vary: 350, 356 or 358 mm for 14 in; 400,
/// 406 or 407 mm for 16 in. The published inch figure is the one given here.
/// Example: type 1: 250, 400, 550 mm (ISO 6489-3, from memory) and 14 in (published).
constexpr DrawbarDistances drawbar_distances(const PtoType& type) {
  constexpr Source press{"farm press column, 2021", Standing::published};
  switch (type.number) {
  case 1: return detail::hole_distances(250, 400, 550, {inches(14), press});
  case 2: return detail::hole_distances(250, 400, 550, {inches(16), press});
  case 3:
    return detail::hole_distances(350, 500, 650, {inches(20), {"two operator's manuals", Standing::common_practice}});
  default: return {};
  }
}

/// A drawbar category of ISO 6489-3.
struct DrawbarCategory {
  int number;
  Datum<Power> greatest_pto_power;
  Datum<Length> pin_diameter;
  Datum<Length> hole_diameter;
};

namespace detail {
inline constexpr Source category_remembered{"ISO 6489-3, drawbar categories", Standing::from_memory};

constexpr DrawbarCategory small_category(int number, double kw) noexcept {
  return {number, Datum<Power>{kilowatts(kw), category_remembered}, {}, {}};
}
constexpr DrawbarCategory sized_category(int number, double kw, double pin_mm, double hole_mm) noexcept {
  return {number, Datum<Power>{kilowatts(kw), category_remembered},
          Datum<Length>{millimetres(pin_mm), category_remembered},
          Datum<Length>{millimetres(hole_mm), category_remembered}};
}
} // namespace detail

/// Categories 0 to 5. That they exist is published (scope of ISO 6489-3); every number is from memory.
inline constexpr std::array drawbar_categories = {
    detail::small_category(0, 28),          detail::small_category(1, 48),
    detail::sized_category(2, 115, 30, 33), detail::sized_category(3, 185, 38, 41),
    detail::sized_category(4, 300, 50, 52), detail::sized_category(5, 500, 70, 73),
};

/// The category of a number, 0 to 5.
constexpr const DrawbarCategory& drawbar_category(int number) {
  for (const DrawbarCategory& category : drawbar_categories) {
    if (category.number == number) return category;
  }
  fail_input("drawbar_category", "number", std::to_string(number), "0 to 5");
}

/// A category of the older US standard, which goes by drawbar power, not by PTO power: not to be compared with the
/// categories above.
struct DrawbarPowerClass {
  int number; ///< printed in Roman numerals
  Power low;
  Power high;
};

inline constexpr Source drawbar_power_class_source{"ASAE S482 (1994, R2004), greatest drawbar power",
                                                   Standing::published};
inline constexpr std::array drawbar_power_classes = {
    DrawbarPowerClass{1, kilowatts(15), kilowatts(35)},
    DrawbarPowerClass{2, kilowatts(30), kilowatts(100)},
    DrawbarPowerClass{3, kilowatts(60), kilowatts(170)},
    DrawbarPowerClass{4, kilowatts(135), kilowatts(300)},
};

/// Height of the drawbar's top above the ground, small categories; about 380 mm is preferred.
inline constexpr Sourced<LengthRange> drawbar_height{{millimetres(330), millimetres(430)},
                                                     {"drawbar standards, 13 to 17 in", Standing::from_memory}};

/// Height of the PTO axis above the drawbar's top; about 200 mm is preferred.
inline constexpr Sourced<LengthRange> pto_height_over_drawbar{{millimetres(150), millimetres(380)},
                                                              {"drawbar standards, 6 to 15 in", Standing::from_memory}};

} // namespace v0
} // namespace fieldshaft
