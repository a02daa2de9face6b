#pragma once
// The greatest power that each edition of the standards recommends for a PTO type at a speed.

#include <fieldshaft/pto/speed.hpp>
#include <fieldshaft/pto/type.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The greatest PTO power at rated engine speed that one text recommends.
struct RecommendedPower {
  const char* edition;
  Power power;
  Source source;
};

/// What every edition recommends; empty where none is known to speak of that type at that speed.
struct RecommendedPowers {
  FixedList<RecommendedPower, 4> editions;

  constexpr bool known() const noexcept { return !editions.empty(); }
  constexpr Datum<Power> lowest() const { return extreme(-1.0); }
  constexpr Datum<Power> highest() const { return extreme(1.0); }

private:
  constexpr Datum<Power> extreme(double sense) const {
    const RecommendedPower* best = nullptr;
    for (const RecommendedPower& entry : editions) {
      if (best == nullptr || sense * entry.power > sense * best->power) best = &entry;
    }
    return best == nullptr ? Datum<Power>{} : Datum<Power>{best->power, best->source};
  }
};

namespace detail {
struct PowerEntry {
  int type;
  double rpm;
  double kilowatts;
  const char* edition;
  Source source;
};

inline constexpr const char* new_iso = "ISO 500-1:2004 and 2014";
inline constexpr const char* old_iso = "ISO 500:1979 and 1991";
inline constexpr const char* old_us = "ASAE S203";
inline constexpr Source new_iso_source{"ISO 500-1:2004 and 2014, recommended power", Standing::from_memory};
inline constexpr Source old_iso_source{"ISO 500:1979 and 1991, recommended power", Standing::from_memory};

inline constexpr std::array recommended_powers = {
    PowerEntry{1, 540, 60, new_iso, new_iso_source},
    PowerEntry{1, 540, 48, old_iso, old_iso_source},
    PowerEntry{1, 540, 48, old_us, {"ASAE S203: 48 kW (65 hp)", Standing::from_memory}},
    PowerEntry{1,
               540,
               75.0 * unit::horsepower_w / 1000.0,
               "general article",
               {"general article: six splines to about 75 hp", Standing::published}},
    PowerEntry{1, 1000, 92, new_iso, new_iso_source},
    PowerEntry{2, 1000, 115, new_iso, new_iso_source},
    PowerEntry{2, 1000, 92, old_iso, old_iso_source},
    PowerEntry{2, 1000, 119, old_us, {"ASAE S203: 45 to 119 kW (60 to 160 hp)", Standing::from_memory}},
    PowerEntry{2, 540, 60, new_iso, new_iso_source},
    PowerEntry{3, 1000, 275, new_iso, new_iso_source},
    PowerEntry{3, 1000, 185, old_iso, old_iso_source},
    PowerEntry{3, 1000, 205, old_us, {"ASAE S203: 112 to 205 kW (150 to 275 hp)", Standing::from_memory}},
    PowerEntry{3, 540, 150, new_iso, new_iso_source},
    PowerEntry{4, 1300, 450, new_iso, new_iso_source},
    PowerEntry{4, 1000, 350, new_iso, new_iso_source},
};
} // namespace detail

/// The greatest power recommended for a type at a speed, by edition [W].
///
///   type   of the shaft
///   speed  of the shaft [rad/s], above 0; a nominal speed within nominal_speed_band
/// The editions disagree (type 1 at 540 r/min: 48, 56 and 60 kW): below the lowest all agree, above the highest none.
/// Any other speed, and any type of which no edition speaks, gives an empty answer, which is no permission.
/// Source: the standards named in each entry; most values are from memory.
/// Example: type 2 at 1000 r/min: 92, 115 and 119 kW.
constexpr RecommendedPowers recommended_power(const PtoType& type, AngularSpeed speed) {
  check::positive(speed.value(), {"recommended_power", "speed", "rad/s"});
  RecommendedPowers found;
  for (const detail::PowerEntry& entry : detail::recommended_powers) {
    if (entry.type == type.number && is_nominal_speed(speed, rpm(entry.rpm))) {
      found.editions.push_back({entry.edition, kilowatts(entry.kilowatts), entry.source});
    }
  }
  return found;
}

} // namespace v0
} // namespace fieldshaft
