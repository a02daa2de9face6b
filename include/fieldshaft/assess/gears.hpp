#pragma once
// The gears of a case's tractor for its implement: which engine speed to set, which never to pass, and whether the
// economy gear is enough.

#include <fieldshaft/assess/status.hpp>
#include <fieldshaft/case/case.hpp>
#include <fieldshaft/cost/money.hpp>
#include <fieldshaft/power/economy.hpp>
#include <fieldshaft/power/implement.hpp>

#include <optional>
#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// What one position of the speed lever means for the implement. What the case does not state stays empty.
struct GearUse {
  std::string gear;
  std::optional<AngularSpeed> pto_speed;        ///< nominal
  std::optional<bool> suits;                    ///< its PTO speed is the implement's own
  std::optional<AngularSpeed> set;              ///< engine speed for the implement's own speed; only where it suits
  std::optional<AngularSpeed> never_pass;       ///< engine speed beyond which PTO or blade tips are too fast; never of
                                                ///< a gear that does not suit: that one is not to be engaged
  bool out_of_reach = false;                    ///< never_pass lies above high idle
  std::optional<AngularSpeed> pto_at_high_idle; ///< what a slip of the hand lever can reach
  std::optional<Interval<Power>> available;     ///< PTO power at the gear's engine speed
  std::optional<Length> widest;                 ///< with the reserve, at the high need by the table; where it suits
  std::optional<MassRate> greatest_feed;        ///< the same
  std::optional<Speed> fastest;                 ///< in the same crop at the same width, the pull as stated at any speed
  std::vector<std::string> missing;             ///< entries without which something stays empty
};

/// Every gear of the tractor, in the order of the case. `never_pass` is rounded down to whole r/min. Width, feed and
/// ground speed are those of widest_implement, greatest_feed and fastest_work, where the case names a row of the table,
/// beside pull, climb and hydraulics; a need that is stated too scales the row. While an entry that they need is not
/// stated they stay empty and `missing` names it: nothing counts as nothing by itself.
std::vector<GearUse> gear_uses(const Case& value);

/// How the machine is used, for the money.
struct SeasonUse {
  Time hours{};                    ///< of such work in a season
  std::optional<Money> fuel_price; ///< of one litre
};

/// Economy PTO for the work of a case: the same PTO speed at a lower engine speed. What is not known is empty.
struct EconomyAnswer {
  std::string plain;   ///< the gear it is compared with
  std::string economy; ///< empty: the tractor has no such gear, or it is not known
  std::optional<AngularSpeed> plain_engine;
  std::optional<AngularSpeed> economy_engine;
  std::optional<Interval<Power>> available; ///< in the economy gear
  Status fits = Status::not_known;          ///< ok: the need fits with the reserve; stop: it does not
  std::optional<VolumeRate> saved;          ///< fuel an hour; not of a gear that is too weak
  std::optional<double> saving;             ///< of the plain gear's fuel
  const char* outside = nullptr;            ///< why the fuel figures may not hold
  std::optional<double> litres_a_season;
  std::optional<Money> money_an_hour;
  std::optional<Money> money_a_season;
  std::optional<AngularSpeed> pto_at_plain_engine; ///< if the engine is run up in the economy gear to plain_engine
  std::optional<AngularSpeed> pto_at_rated;        ///< in the economy gear
  std::optional<AngularSpeed> pto_at_high_idle;
  std::optional<AngularSpeed> never_pass; ///< engine speed in the economy gear
  std::vector<std::string> missing;       ///< entries without which the answer is not known
};

/// Whether the economy gear is enough for the work of a case, what it saves, and what happens if the engine is run up.
///
/// Fuel by economy_saving, for the low end of the tractor's PTO power; a tractor may differ by 15 % and more, and the
/// published savings fall as the load rises. `fits` is the finding on the reserve in that gear, at the high end and the
/// mean of a need from the table. Fuel goes by the mean, with pull, climb and hydraulics where all of them are stated;
/// none is reckoned in a gear that is too weak. A season of less than nothing is an InputError.
EconomyAnswer economy_answer(const Case& value, const SeasonUse& season);

} // namespace v0
} // namespace fieldshaft
