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

/// The answers from the other end, for the power that the gear surely gives.
void add_limits_of_work(const Case& stated, GearUse& use) {
  const assessing::Need need = assessing::need_of(stated.implement);
  if (need.machine == nullptr || !need.power || !use.available || use.suits != true) return;
  const Case value = assessing::with_row_draft(stated);
  const Machine& machine = *need.machine;
  const double reserve = assessing::wanted_reserve(value);
  const auto beside = assessing::load_beside_pto(value);
  const bool own_draft = assessing::has_own_draft(machine); // which goes with the width
  const Power power = use.available->low - beside.value_or(Power{}) / (1.0 - reserve);
  if (!(power > Power{})) { // the rest takes it all
    if (detail::uses_width(machine) && !own_draft) use.widest = Length{};
    if (detail::uses_feed(machine)) use.greatest_feed = MassRate{};
    return;
  }
  const Length width = value.implement.width.value_or(Length{});
  const FeedRate feed = need.feed;
  if (detail::uses_width(machine) && !own_draft) use.widest = widest_implement(machine, power, reserve, feed).safe;
  if (!detail::uses_feed(machine)) return;
  MassRate most = greatest_feed(machine, power, reserve, width).safe;
  if (need.measured != nullptr) most = std::min(most, feed.rate * ((1.0 - reserve) * power / need.power->high));
  use.greatest_feed = most * (*value.implement.feed_rate / feed.rate);
  if (value.range.ground_speed && !beside) // the pull would go with the speed
    use.fastest = *value.range.ground_speed * (most / feed.rate);
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
