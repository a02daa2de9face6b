#include <fieldshaft/assess/gears.hpp>

#include "assess/checks.hpp"
#include "assess/loads.hpp"
#include "assess/need.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace {

using assessing::Findings;

/// The findings of one kind of check with another gear engaged.
template <class Run> Assessment with_gear(const Case& value, const std::string& gear, Run run) {
  Case changed = value;
  changed.tractor.pto.selected = gear;
  Assessment assessment;
  Findings findings(assessment);
  run(changed, findings);
  return assessment;
}

std::optional<AngularSpeed> never_pass_in(const Case& value, const std::string& gear,
                                          std::vector<std::string>& missing) {
  const Assessment found = with_gear(value, gear, assessing::check_rotor);
  const Finding* finding = found.find(Check::overspeed_at_high_idle);
  if (finding == nullptr) return std::nullopt;
  missing.insert(missing.end(), finding->missing.begin(), finding->missing.end());
  for (const Fact& fact : finding->facts) {
    if (std::string(fact.name) == "engine_speed") return AngularSpeed::from_value(std::get<Amount>(fact.value).si);
  }
  return std::nullopt;
}

void sort_out(std::vector<std::string>& paths) {
  std::sort(paths.begin(), paths.end());
  paths.erase(std::unique(paths.begin(), paths.end()), paths.end());
}

/// What loads the engine in the work as the case states it, as PTO power, apart by what it goes with.
struct LoadParts {
  Power steady;     ///< of the row, whatever the work
  Power with_width; ///< of the row
  Power with_feed;  ///< of the row
  Power hydraulics;
  Power draft; ///< on the level
  Power climb;
};

LoadParts parts_of(const Case& value, const assessing::Need& need) {
  const Machine& machine = *need.machine;
  const double high = need.high_factor;
  LoadParts parts;
  parts.steady = high * machine.constant;
  parts.with_width = high * (machine.per_width * value.implement.width.value_or(Length{}));
  parts.with_feed = high * (machine.per_mass * need.feed.rate);
  const auto beside = assessing::load_beside_pto(value);
  if (!beside) return parts;
  parts.hydraulics = *value.implement.hydraulic_power;
  Case level = value;
  level.range.slope = Angle{};
  parts.draft = *assessing::load_beside_pto(level) - parts.hydraulics;
  parts.climb = *beside - parts.hydraulics - parts.draft;
  return parts;
}

/// How much of what the case states the power carries, where `growing` of the load goes with it and `fixed` does not.
template <class Q> Q carried(Q stated, Power usable, Power fixed, Power growing) {
  const Power left = usable - fixed;
  return left > Power{} ? stated * static_cast<double>(left / growing) : Q{};
}

/// The same of feed and ground speed where a measurement passes the row: it goes with the feed wholly.
template <class Q>
Q carried_as_measured(Q most, Q stated, Power usable, const assessing::Need& need, Power fixed, Power growing) {
  if (need.measured == nullptr) return most;
  return std::min(most, carried(stated, usable, fixed, need.power->high + growing));
}

/// What the answers from the other end wait for: an entry of which they would otherwise be a number without basis.
std::vector<std::string> missing_of_limits(const Case& value, const assessing::Need& need, const GearUse& use) {
  if (need.machine == nullptr) return {"implement.machine"};
  std::vector<std::string> missing = need.missing;
  for (std::string& path : assessing::missing_beside_pto(value)) missing.push_back(std::move(path));
  if (!use.suits) missing.emplace_back("implement.input_speed");
  return missing;
}

/// The answers from the other end, for the power that the gear surely gives.
void add_limits_of_work(const Case& stated, GearUse& use) {
  if (use.suits == false) return;
  const Case value = assessing::with_row_draft(stated);
  const assessing::Need need = assessing::need_of(value.implement);
  const std::vector<std::string> missing = missing_of_limits(value, need, use);
  use.missing.insert(use.missing.end(), missing.begin(), missing.end());
  if (!missing.empty() || !use.available) return;
  const Implement& implement = value.implement;
  const LoadParts load = parts_of(value, need);
  const bool drawn = assessing::has_own_draft(*need.machine); // its draft goes with the width
  const bool fed = detail::uses_feed(*need.machine);
  const Power usable = (1.0 - assessing::wanted_reserve(value)) * use.available->low;
  const Power pull = load.draft + load.climb;
  const Power fixed = load.steady + load.hydraulics;
  if (detail::uses_width(*need.machine)) {
    const Power draft = drawn ? load.draft : Power{};
    use.widest = carried(*implement.width, usable, fixed + load.with_feed + pull - draft, load.with_width + draft);
  }
  if (fed) {
    const MassRate most = carried(*implement.feed_rate, usable, fixed + load.with_width + pull, load.with_feed);
    use.greatest_feed = carried_as_measured(most, *implement.feed_rate, usable, need, load.hydraulics + pull, Power{});
  }
  if (!fed && !drawn) return; // nothing in the row goes with the ground speed
  if (!value.range.ground_speed) {
    use.missing.emplace_back("range.ground_speed");
    return;
  }
  const Speed most = carried(*value.range.ground_speed, usable, fixed + load.with_width, load.with_feed + pull);
  use.fastest = carried_as_measured(most, *value.range.ground_speed, usable, need, load.hydraulics, pull);
}

GearUse use_of(const Case& value, const PtoGear& gear) {
  GearUse use;
  use.gear = gear.name;
  use.pto_speed = gear.pto_speed;
  const auto& wanted = value.implement.input_speed;
  const auto& idle = value.tractor.engine.high_idle;
  if (wanted && gear.pto_speed) use.suits = is_nominal_speed(*gear.pto_speed, *wanted);
  if (gear.pto_speed && gear.engine_speed) {
    const double ratio = gear_ratio(*gear.engine_speed, *gear.pto_speed);
    if (use.suits == true) use.set = *wanted / ratio;
    if (idle) use.pto_at_high_idle = geared_speed(*idle, ratio);
  }
  if (use.suits != false) use.never_pass = never_pass_in(value, gear.name, use.missing);
  use.out_of_reach = use.never_pass && idle && *use.never_pass >= *idle;
  const assessing::GearPower power = assessing::gear_power(value, gear);
  use.available = power.available;
  add_limits_of_work(value, use);
  use.missing.insert(use.missing.end(), power.missing.begin(), power.missing.end());
  sort_out(use.missing);
  return use;
}

struct GearPair {
  const PtoGear* plain = nullptr;
  const PtoGear* economy = nullptr;
};

/// Of the gears for the implement's speed, the one with the highest engine speed and the one with the lowest.
GearPair gears_for_implement(const Case& value) {
  GearPair pair;
  for (const PtoGear& gear : value.tractor.pto.gears) {
    if (!gear.pto_speed || !gear.engine_speed || !value.implement.input_speed) continue;
    if (!is_nominal_speed(*gear.pto_speed, *value.implement.input_speed)) continue;
    if (pair.plain == nullptr || *gear.engine_speed > *pair.plain->engine_speed) pair.plain = &gear;
    if (pair.economy == nullptr || *gear.engine_speed < *pair.economy->engine_speed) pair.economy = &gear;
  }
  if (pair.plain == pair.economy) pair.economy = nullptr;
  return pair;
}

void answer_fuel(const Case& value, const SeasonUse& season, EconomyAnswer& answer) {
  const Power rated = assessing::tractor_power(value).pto->low;
  const AngularSpeed full = std::max(*value.tractor.engine.rated_speed, *answer.plain_engine);
  const Power beside = assessing::load_beside_pto(assessing::with_row_draft(value)).value_or(Power{});
  const Power load = assessing::need_of(value.implement).power->mean + beside;
  const auto fuel = economy_saving(rated, load, *answer.plain_engine, *answer.economy_engine, full);
  answer.saved = fuel.value.plain - fuel.value.economy;
  answer.saving = fuel.value.saving;
  answer.outside = fuel.outside;
  const double litres_an_hour = in(*answer.saved, unit::litre_per_hour);
  answer.litres_a_season = litres_an_hour * in(season.hours, unit::hour);
  if (!season.fuel_price) return;
  answer.money_an_hour = litres_an_hour * *season.fuel_price;
  answer.money_a_season = *answer.litres_a_season * *season.fuel_price;
}

void answer_overspeed(const Case& value, const PtoGear& economy, EconomyAnswer& answer) {
  const double ratio = gear_ratio(*economy.engine_speed, *economy.pto_speed);
  answer.pto_at_plain_engine = geared_speed(*answer.plain_engine, ratio);
  const Engine& engine = value.tractor.engine;
  if (engine.rated_speed) answer.pto_at_rated = geared_speed(*engine.rated_speed, ratio);
  if (engine.high_idle) answer.pto_at_high_idle = geared_speed(*engine.high_idle, ratio);
  answer.never_pass = never_pass_in(value, economy.name, answer.missing);
}

/// Whether a need fits in a gear with the reserve.
Status reserve_in(const Case& value, const std::string& gear, Power need) {
  const Assessment found = with_gear(assessing::with_need(value, need), gear, assessing::check_power);
  const Finding* whole = found.find(Check::whole_load);
  const Status reserve = found.find(Check::power_reserve)->status;
  return whole == nullptr ? reserve : worse(reserve, whole->status);
}

} // namespace

std::vector<GearUse> gear_uses(const Case& value) {
  std::vector<GearUse> uses;
  for (const PtoGear& gear : value.tractor.pto.gears) uses.push_back(use_of(value, gear));
  return uses;
}

EconomyAnswer economy_answer(const Case& value, const SeasonUse& season) {
  check::not_negative(season.hours.value(), {"economy_answer", "season", "s"});
  if (season.fuel_price) check::not_negative(season.fuel_price->amount, {"economy_answer", "season", ""});
  EconomyAnswer answer;
  const assessing::Need need = assessing::need_of(value.implement);
  answer.missing = assessing::unstated({{value.implement.input_speed.has_value(), "implement.input_speed"},
                                        {need.machine || need.power, "implement.power_need"}});
  answer.missing.insert(answer.missing.end(), need.missing.begin(), need.missing.end());
  for (const PtoGear& gear : value.tractor.pto.gears) {
    if (!gear.pto_speed || !gear.engine_speed) answer.missing.emplace_back("tractor.pto.gears[].engine_speed");
  }
  const GearPair pair = gears_for_implement(value);
  if (pair.plain != nullptr) answer.plain = pair.plain->name;
  if (pair.economy == nullptr) {
    sort_out(answer.missing);
    return answer;
  }
  answer.economy = pair.economy->name;
  answer.plain_engine = *pair.plain->engine_speed;
  answer.economy_engine = *pair.economy->engine_speed;
  const assessing::GearPower power = assessing::gear_power(value, *pair.economy);
  answer.missing.insert(answer.missing.end(), power.missing.begin(), power.missing.end());
  answer_overspeed(value, *pair.economy, answer);
  if (power.available) answer.available = *power.available;
  if (power.available && need.power) {
    const Status at_high = reserve_in(value, answer.economy, need.power->high);
    const Status at_mean = reserve_in(value, answer.economy, need.power->mean);
    answer.fits = at_high == Status::stop && at_mean != Status::stop ? Status::caution : at_high;
    if (answer.fits != Status::stop) answer_fuel(value, season, answer);
  }
  sort_out(answer.missing);
  return answer;
}

} // namespace v0
} // namespace fieldshaft
