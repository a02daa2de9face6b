#pragma once
// Machines and what they need at the PTO: the coefficients of P = a + b w + c F.
//
// The feed rate says what is weighed. EP496 defines it as wet material, but the forage harvester's coefficient is per
// dry matter and the combine's per grain or per the rest: mixing them is an error, not a small difference.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/source.hpp>
#include <fieldshaft/power/by_name.hpp>
#include <fieldshaft/units.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {

/// What a feed rate weighs.
enum class FeedBasis { wet, dry, grain, other_than_grain };

constexpr const char* feed_basis_name(FeedBasis basis) noexcept {
  switch (basis) {
  case FeedBasis::wet: return "wet material";
  case FeedBasis::dry: return "dry matter";
  case FeedBasis::grain: return "grain";
  case FeedBasis::other_than_grain: return "material other than grain";
  }
  return "unknown";
}

/// A feed rate with what it weighs.
struct FeedRate {
  MassRate rate{};
  FeedBasis basis = FeedBasis::wet;
};

constexpr FeedRate wet_feed(MassRate rate) noexcept { return {rate, FeedBasis::wet}; }
constexpr FeedRate dry_feed(MassRate rate) noexcept { return {rate, FeedBasis::dry}; }

/// Dry matter in a feed of wet material [kg/s].
///
/// dry = wet (1 - moisture)
///   feed      of wet material; any other basis is an InputError
///   moisture  mass of water over mass of wet material, from 0, below 1
/// Exact. Source: definition. Example: 60 t/h at 65 % moisture: 21 t/h of dry matter.
inline FeedRate dry_matter(FeedRate feed, double moisture) {
  check::not_negative(feed.rate.value(), {"dry_matter", "feed", "kg/s"});
  check::from_below(moisture, 0.0, 1.0, {"dry_matter", "moisture", ""});
  if (feed.basis != FeedBasis::wet) {
    fail_input("dry_matter", "feed", feed_basis_name(feed.basis), feed_basis_name(FeedBasis::wet));
  }
  return dry_feed((1.0 - moisture) * feed.rate);
}

/// A machine by its coefficients. A user's own machine is made with make_machine.
struct Machine {
  std::string_view name;
  Power constant;          ///< a
  PowerPerWidth per_width; ///< b
  EnergyPerMass per_mass;  ///< c
  FeedBasis basis;         ///< of the feed rate that c multiplies
  double range;            ///< plus and minus, by design, adjustment and crop
  std::string_view note;
  Source source;
};

/// A machine from measured or stated coefficients.
///
///   name        not empty; the text must live as long as the machine (a literal does)
///   constant    a [W], at least 0
///   per_width   b [W/m], at least 0
///   per_mass    c [J/kg], at least 0; not all three 0
///   basis       what the feed rate weighs
///   range       plus and minus as a share, from 0, below 1
inline Machine make_machine(std::string_view name, Power constant, PowerPerWidth per_width, EnergyPerMass per_mass,
                            FeedBasis basis, double range, Source source = {"given by the user", Standing::given}) {
  constexpr const char* function = "make_machine";
  if (name.empty()) fail_input(function, "name", "nothing", "a name");
  check::not_negative(constant.value(), {function, "constant", "W"});
  check::not_negative(per_width.value(), {function, "per_width", "W/m"});
  check::not_negative(per_mass.value(), {function, "per_mass", "J/kg"});
  check::from_below(range, 0.0, 1.0, {function, "range", ""});
  if (constant.value() == 0.0 && per_width.value() == 0.0 && per_mass.value() == 0.0) {
    fail_input(function, "constant, per_width, per_mass", "0", "at least one of them above 0");
  }
  return {name, constant, per_width, per_mass, basis, range, "", source};
}

namespace detail {
inline constexpr Source machine_table{"ASABE D497, table 2", Standing::from_memory};

/// a in kW, b in kW/m, c in kWh/t.
constexpr Machine table_machine(std::string_view name, double a, double b, double c, double range,
                                FeedBasis basis = FeedBasis::wet, std::string_view note = "") {
  return {name,         kilowatts(a), kilowatts_per_metre(b), kilowatt_hours_per_tonne(c), basis,
          0.01 * range, note,         machine_table};
}

inline constexpr std::string_view straw_note = "straw needs 20 % more";
inline constexpr std::string_view chop_note = "9 mm length of cut; half of it, or a recutter screen, needs 25 % more";
inline constexpr std::string_view potato_note = "a draft of 11.6 kN/m (plus or minus 40 %) comes on top";
inline constexpr std::string_view beet_note = "a draft of 5.6 kN/m (plus or minus 40 %) comes on top";
inline constexpr std::string_view pulled_note = "a pulled, PTO-driven combine needs 10 kW less";

inline constexpr std::array machine_catalogue = {
    table_machine("baler, small rectangular", 2.0, 0, 1.0, 35, FeedBasis::wet, straw_note),
    table_machine("baler, large rectangular", 4.0, 0, 1.3, 35),
    table_machine("baler, large round, variable chamber", 4.0, 0, 1.1, 50),
    table_machine("baler, large round, fixed chamber", 2.5, 0, 1.8, 50),
    table_machine("beet harvester", 0, 4.2, 0, 50, FeedBasis::wet, beet_note),
    table_machine("beet topper", 0, 7.3, 0, 30),
    table_machine("combine, small grains", 20.0, 0, 3.6, 50, FeedBasis::other_than_grain, pulled_note),
    table_machine("combine, corn", 35.0, 0, 1.6, 30, FeedBasis::grain, pulled_note),
    table_machine("cotton picker", 0, 9.3, 0, 20),
    table_machine("cotton stripper", 0, 1.9, 0, 20),
    table_machine("feed mixer", 0, 0, 2.3, 50),
    table_machine("forage blower", 0, 0, 0.9, 20),
    table_machine("flail harvester, direct-cut", 10.0, 0, 1.1, 40),
    table_machine("forage harvester, corn silage", 6.0, 0, 3.3, 40, FeedBasis::dry, chop_note),
    table_machine("forage harvester, wilted alfalfa", 6.0, 0, 4.0, 40, FeedBasis::dry, chop_note),
    table_machine("forage harvester, direct-cut", 6.0, 0, 5.7, 40, FeedBasis::dry, chop_note),
    table_machine("forage wagon", 0, 0, 0.3, 40),
    table_machine("grinder mixer", 0, 0, 4.0, 50),
    table_machine("manure spreader", 0, 0, 0.2, 50),
    table_machine("mower, cutterbar", 0, 1.2, 0, 25),
    table_machine("mower, disk", 0, 5.0, 0, 30),
    table_machine("mower, flail", 0, 10.0, 0, 40),
    table_machine("mower-conditioner, cutterbar", 0, 4.5, 0, 30),
    table_machine("mower-conditioner, disk", 0, 8.0, 0, 30),
    table_machine("potato harvester", 0, 10.7, 0, 30, FeedBasis::wet, potato_note),
    table_machine("potato windrower", 0, 5.1, 0, 30),
    table_machine("rake, side delivery", 0, 0.4, 0, 50),
    table_machine("rake, rotary", 0, 2.0, 0, 50),
    table_machine("tedder", 0, 1.5, 0, 50),
    table_machine("tub grinder, straw", 5.0, 0, 8.4, 50),
    table_machine("tub grinder, alfalfa hay", 5.0, 0, 3.8, 50),
    table_machine("windrower, small grain", 0, 1.3, 0, 40),
};
} // namespace detail

/// Every machine of the table. There is none for tillage, chipping, augers or generators. Every row is from memory: to
/// be checked against a copy of the standard.
constexpr const auto& machines() noexcept { return detail::machine_catalogue; }

/// What the notes of the table add or take off.
inline constexpr Sourced<double> straw_factor{1.20, {"ASABE D497, table 2, note on straw", Standing::from_memory}};
inline constexpr Sourced<double> short_chop_factor{
    1.25, {"ASABE D497, table 2, note on length of cut", Standing::from_memory}};
inline constexpr Sourced<Power> pulled_combine_saving{kilowatts(10.0),
                                                      {"ASABE D497, table 2, note on combines", Standing::from_memory}};

/// What the note of a row multiplies the need by, where what it names is so [-]; 1 for a row without such a note.
///
///   machine  of the table; of a user's own machine, which has no note, 1
/// Straw: 1.20 (small rectangular baler). Half of the 9 mm length of cut, or a recutter screen: 1.25 (forage
/// harvesters). Source: D497, table 2, notes, from memory. Example: "baler, small rectangular": 1.20.
constexpr double note_factor(const Machine& machine) noexcept {
  if (machine.note == detail::straw_note) return straw_factor.value;
  return machine.note == detail::chop_note ? short_chop_factor.value : 1.0;
}

/// The machine of that name; null if the table has none. Large and small letters are the same.
inline const Machine* find_machine(std::string_view name) noexcept { return detail::find_by_name(machines(), name); }

/// The names of machines nearest to a text: those that hold all its words, else the one that is spelt most like it.
/// Example: "round balers" gives both large round balers.
inline std::vector<std::string_view> nearest_machines(std::string_view name) {
  return detail::nearest_names(machines(), name);
}

/// The machine of that name; InputError with the nearest names if the table has none.
inline const Machine& machine_named(std::string_view name) {
  return detail::by_name(machines(), name, "machine_named");
}

} // namespace v0
} // namespace fieldshaft
