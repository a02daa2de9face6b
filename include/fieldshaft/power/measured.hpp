#pragma once
// Measurements that the literature states: power needs apart from the table, and peaks over the mean.

#include <fieldshaft/core/source.hpp>
#include <fieldshaft/units.hpp>

#include <array>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {

/// A measured or advised need: lowest and highest.
template <class Q> struct MeasuredNeed {
  const char* machine;
  Q low;
  Q high;
  Source source;
};

namespace detail {
inline constexpr Source silage_book{"Mickan & Piltz, Successful Silage, ch. 6", Standing::quoted};
inline constexpr Source belly_mower{"Jun, Choi, Lee & Kang, Eng. Agric. Environ. Food 1(1) (2008) 39-44",
                                    Standing::published};
inline constexpr Source dense_baler{"Energies 11(4):780 (2018), doi 10.3390/en11040780", Standing::published};
inline constexpr Source silage_harvester{"Zhang, Sword, Buckmaster & Cauffman, Trans. ASAE (abstract)",
                                         Standing::published};
inline constexpr Source harrow_paper{"Performance analysis of a tractor - power harrow system under different working "
                                     "conditions",
                                     Standing::published};
inline constexpr Source chipper_paper{"Performance evaluation of a small chipper using an innovative cutting system",
                                      Standing::published};
} // namespace detail

/// Power at the PTO per metre of working width.
inline constexpr std::array measured_per_width = {
    MeasuredNeed<PowerPerWidth>{"finger-bar mower, 3 to 8 km/h", kilowatts_per_metre(1.5), kilowatts_per_metre(1.5),
                                detail::silage_book},
    MeasuredNeed<PowerPerWidth>{"drum mower", kilowatts_per_metre(7.0), kilowatts_per_metre(15.0), detail::silage_book},
    MeasuredNeed<PowerPerWidth>{"mid-mounted rotary mower, 1.8 m, 7 km/h: 8 to 10 kW", kilowatts_per_metre(8.0 / 1.8),
                                kilowatts_per_metre(10.0 / 1.8), detail::belly_mower},
};

/// Energy per mass of material.
inline constexpr std::array measured_per_mass = {
    MeasuredNeed<EnergyPerMass>{"large rectangular baler at its highest density, dry matter: 3 to 4 times the table",
                                kilowatt_hours_per_tonne(4.0), kilowatt_hours_per_tonne(5.0), detail::dense_baler},
    MeasuredNeed<EnergyPerMass>{"tub grinder on bales", kilowatt_hours_per_tonne(13.0), kilowatt_hours_per_tonne(32.0),
                                detail::dense_baler},
    MeasuredNeed<EnergyPerMass>{"corn-silage harvester with shredding rolls, dry matter", kilowatt_hours_per_tonne(4.5),
                                kilowatt_hours_per_tonne(10.6), detail::silage_harvester},
};

namespace detail {
/// A measurement that passes the upper end of a row. That of the baler counts dry matter, the row wet material.
struct MeasuredAgainstRow {
  std::string_view row;
  const MeasuredNeed<EnergyPerMass>* measured;
};

inline constexpr std::array measured_against_rows = {
    MeasuredAgainstRow{"baler, large rectangular", &measured_per_mass[0]},
    MeasuredAgainstRow{"tub grinder, straw", &measured_per_mass[1]},
    MeasuredAgainstRow{"tub grinder, alfalfa hay", &measured_per_mass[1]},
};
} // namespace detail

/// Average power at the PTO of machines that the table does not hold.
inline constexpr std::array measured_power = {
    MeasuredNeed<Power>{"power harrow, 1000 r/min, 3 to 12 km/h, 6 to 15 cm deep", kilowatts(8.4), kilowatts(64.9),
                        detail::harrow_paper},
    MeasuredNeed<Power>{"small disc chipper, logs of 7 to 12 cm: poplar to chestnut", kilowatts(12.2), kilowatts(15.4),
                        detail::chipper_paper},
};

/// A peak over a mean torque, or what comes closest to it.
struct PeakRatio {
  const char* machine;
  double low;
  double high;
  Source source;
};

/// No published peak over mean is known for balers, forage harvesters, mowers or chippers. A case must state its own;
/// these bands show only how far it can go.
inline constexpr std::array peak_ratios = {
    PeakRatio{"rotary tillage, greatest torque at the PTO input over 9 gears, presumably over rated engine torque",
              0.8,
              2.5,
              {"Kim et al., Soil & Tillage Res. 134 (2013) 90-96", Standing::published}},
    PeakRatio{"rotary tillage, mean and two standard deviations over mean, at 2.1 to 5.3 km/h",
              1.45,
              1.74,
              {"web summary of a field study, ratios computed for a normal spread", Standing::quoted}},
    PeakRatio{"rotary tillage, mean and three standard deviations over mean, at 2.1 to 5.3 km/h",
              1.67,
              2.10,
              {"web summary of a field study, ratios computed for a normal spread", Standing::quoted}},
    PeakRatio{
        "service factor of shafts, continuous load", 1.2, 1.5, {"machine-design practice", Standing::from_memory}},
    PeakRatio{"service factor of shafts, light shocks", 1.5, 2.0, {"machine-design practice", Standing::from_memory}},
    PeakRatio{"service factor of shafts, medium shocks", 2.0, 3.0, {"machine-design practice", Standing::from_memory}},
    PeakRatio{"service factor of shafts, heavy shocks", 3.0, 5.0, {"machine-design practice", Standing::from_memory}},
};

} // namespace v0
} // namespace fieldshaft
