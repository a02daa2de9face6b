#pragma once
// The catalogue of shaft steels. Strengths are those the named source states; none is a promise about a bar in hand.

#include <fieldshaft/materials/material.hpp>

#include <array>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {

namespace detail {
inline constexpr Source rolled_drawn_source{
    "Shigley, Table A-20 (SAE Handbook 1986): estimated ASTM minimum values, 18 to 32 mm", Standing::published};
inline constexpr Source heat_treated_source{"Shigley, Table A-21", Standing::published};
inline constexpr Source heat_treated_remembered{"Shigley, Table A-21", Standing::from_memory};
inline constexpr Source data_page_4140{"AISI 4140 page of a public engineering data site; equals Shigley, Table A-21, "
                                       "where quenched and tempered",
                                       Standing::published};
inline constexpr Source data_sheet_4340{"ASM data sheet of AISI 4340, the section named in the condition",
                                        Standing::published};
inline constexpr Source metals_book{"ASM Metals Reference Book", Standing::from_memory};
inline constexpr Source hardness_source{"the table that states the strengths", Standing::from_memory};

/// One line of the catalogue; a hardness or a section of zero is not stated.
constexpr Material catalogue_steel(const char* name, const char* condition, double ultimate_mpa, double yield_mpa,
                                   double brinell, Source source, double section_min_mm = 0.0,
                                   double section_max_mm = 0.0) {
  return {name,
          condition,
          megapascals(ultimate_mpa),
          megapascals(yield_mpa),
          millimetres(section_min_mm),
          millimetres(section_max_mm),
          source,
          brinell > 0.0 ? Datum<double>{brinell, hardness_source} : Datum<double>{}};
}

constexpr Material rolled_or_drawn(const char* name, const char* condition, double ultimate_mpa, double yield_mpa,
                                   double brinell) {
  return catalogue_steel(name, condition, ultimate_mpa, yield_mpa, brinell, rolled_drawn_source, 18.0, 32.0);
}

inline constexpr std::array catalogue = {
    rolled_or_drawn("1018", "hot rolled", 400, 220, 116),
    rolled_or_drawn("1018", "cold drawn", 440, 370, 126),
    rolled_or_drawn("1020", "hot rolled", 380, 210, 111),
    rolled_or_drawn("1020", "cold drawn", 470, 390, 131),
    rolled_or_drawn("1035", "hot rolled", 500, 270, 143),
    rolled_or_drawn("1035", "cold drawn", 550, 460, 163),
    rolled_or_drawn("1040", "hot rolled", 520, 290, 149),
    rolled_or_drawn("1040", "cold drawn", 590, 490, 170),
    rolled_or_drawn("1045", "hot rolled", 570, 310, 163),
    rolled_or_drawn("1045", "cold drawn", 630, 530, 179),
    rolled_or_drawn("1050", "hot rolled", 620, 340, 179),
    rolled_or_drawn("1050", "cold drawn", 690, 580, 197),
    // The table's hardness of this line (495) does not belong to its strength and is left out.
    catalogue_steel("1030", "quenched, tempered 205 °C", 848, 648, 0, heat_treated_source),
    catalogue_steel("4140", "annealed", 655, 417, 197, data_page_4140),
    catalogue_steel("4140", "normalized", 1020, 655, 302, data_page_4140),
    catalogue_steel("4140", "oil quenched, tempered 205 °C", 1772, 1641, 510, data_page_4140),
    catalogue_steel("4140", "oil quenched, tempered 315 °C", 1551, 1434, 445, data_page_4140),
    catalogue_steel("4140", "oil quenched, tempered 425 °C", 1248, 1138, 370, data_page_4140),
    catalogue_steel("4140", "oil quenched, tempered 540 °C", 951, 834, 285, data_page_4140),
    catalogue_steel("4140", "oil quenched, tempered 650 °C", 758, 655, 230, data_page_4140),
    catalogue_steel("4340", "normalized, 100 mm round", 1110, 710, 0, data_sheet_4340, 100.0, 100.0),
    catalogue_steel("4340", "oil quenched, tempered 650 °C, 50 mm round", 931, 834, 0, data_sheet_4340, 50.0, 50.0),
    catalogue_steel("4340", "oil quenched, tempered 315 °C", 1720, 1590, 486, heat_treated_remembered),
    catalogue_steel("4340", "oil quenched, tempered 425 °C", 1470, 1360, 430, heat_treated_remembered),
    catalogue_steel("4340", "oil quenched, tempered 540 °C", 1170, 1080, 360, heat_treated_remembered),
    catalogue_steel("4340", "oil quenched, tempered 650 °C", 965, 855, 280, heat_treated_remembered),
    catalogue_steel("4340", "annealed", 745, 472, 217, metals_book, 25.0, 25.0),
    catalogue_steel("4340", "normalized", 1279, 862, 363, metals_book, 25.0, 25.0),
    // Where an 8620 shaft is case-carburized the strength of its core depends on the section.
    catalogue_steel("8620", "annealed", 536, 385, 149, metals_book, 25.0, 25.0),
    catalogue_steel("8620", "normalized", 633, 357, 183, metals_book, 25.0, 25.0),
    catalogue_steel("1144", "as rolled", 703, 421, 212, metals_book),
    catalogue_steel("1144", "normalized", 667, 400, 197, metals_book),
    catalogue_steel("1144", "annealed", 585, 347, 167, metals_book),
    catalogue_steel("1144", "oil quenched, tempered 205 °C", 876, 627, 277, metals_book),
    catalogue_steel("1144", "oil quenched, tempered 425 °C", 848, 607, 248, metals_book),
    catalogue_steel("1144", "oil quenched, tempered 540 °C", 807, 572, 235, metals_book),
    catalogue_steel("1144", "oil quenched, tempered 650 °C", 724, 503, 217, metals_book),
};
} // namespace detail

/// Every steel of the catalogue, to go through: for (const Material& steel : materials()).
constexpr const auto& materials() noexcept { return detail::catalogue; }

/// The steel of the catalogue with this name and condition, spelt as materials() spells them; null if there is none.
constexpr const Material* find_material(std::string_view name, std::string_view condition) noexcept {
  for (const Material& steel : detail::catalogue) {
    if (name == steel.name && condition == steel.condition) return &steel;
  }
  return nullptr;
}

} // namespace v0
} // namespace fieldshaft
