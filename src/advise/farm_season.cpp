#include "advise/farm_season.hpp"

#include "assess/loads.hpp"
#include "assess/need.hpp"

#include <fieldshaft/cost.hpp>
#include <fieldshaft/power.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

std::string entry(const char* list, std::size_t place, const char* key) {
  return std::string(list) + "[" + std::to_string(place) + "]." + key;
}

/// Litres an hour of a tractor in a gear under an implement's mean need, with pull, climb and hydraulics where all of
/// them are stated; nothing where a figure is not stated.
std::optional<Validated<double>> litres_an_hour(const Tractor& tractor, const FarmImplement& implement,
                                                const PtoGear& gear, Power pto_need) {
  Case value;
  value.tractor = tractor;
  value.implement = implement.machine;
  value.range = implement.range;
  const Power need = pto_need + assessing::load_beside_pto(assessing::with_row_draft(value)).value_or(Power{});
  const auto power = assessing::tractor_power(value).pto;
  if (!power || !gear.engine_speed || !tractor.engine.rated_speed) return std::nullopt;
  const Power rated = 0.5 * (power->low + power->high);
  const double speed = std::min(1.0, static_cast<double>(*gear.engine_speed / *tractor.engine.rated_speed));
  const Validated<VolumeRate> rate = fuel_rate_checked(rated, need / rated, speed);
  return Validated<double>{in(rate.value, unit::litre_per_hour), rate.outside};
}

/// What fuel cannot be found without; at least one of them is not stated.
void note_missing(const Farm& farm, PairPlace pair, std::vector<std::string>& missing) {
  const Tractor& tractor = farm.tractors[pair.tractor].machine;
  if (!tractor.power && tractor.engine.curve.empty()) missing.push_back(entry("tractors", pair.tractor, "power"));
  if (!tractor.power_basis) missing.push_back(entry("tractors", pair.tractor, "power_basis"));
  if (!tractor.engine.rated_speed) missing.push_back(entry("tractors", pair.tractor, "engine") + ".rated_speed");
  if (!assessing::need_of(farm.implements[pair.implement].machine).power) {
    missing.push_back(entry("implements", pair.implement, "power_need"));
  }
  const auto& gears = tractor.pto.gears;
  const bool all = std::all_of(gears.begin(), gears.end(), [](const PtoGear& gear) { return gear.engine_speed; });
  if (gears.empty() || !all) missing.push_back(entry("tractors", pair.tractor, "pto") + ".gears[].engine_speed");
}

/// Repair that an hour of a tractor causes, mean over the years; nothing where its costs are not stated.
double repair_an_hour(const FarmTractor& tractor, Stated<double> years) {
  const Stated<Money>& list = tractor.cost.list_price ? tractor.cost.list_price : tractor.cost.price;
  if (!list || !tractor.cost.repair_class || !tractor.hours || !years) return 0.0;
  const Time from = tractor.cost.hours_so_far.value_or(Time{});
  const Time use = *years * *tractor.hours;
  if (use <= Time{}) return 0.0;
  const RepairClass& repair = repair_class_named(*tractor.cost.repair_class);
  return repair_cost(*list, repair, from, from + use).value.amount / in(use, unit::hour);
}

/// The least fuel of the gears in which a pair works.
std::optional<Runner> runner_of(const Farm& farm, PairPlace pair, const std::vector<std::size_t>& gears,
                                SeasonFacts& facts) {
  const FarmTractor& tractor = farm.tractors[pair.tractor];
  const FarmImplement& implement = farm.implements[pair.implement];
  Runner runner{pair.tractor, 0.0, repair_an_hour(tractor, farm.years), tractor.share_down.value_or(0.0)};
  bool known = false;
  const auto need = assessing::need_of(implement.machine).power;
  for (const std::size_t gear : gears) {
    if (gear == PairSetUp::none || !need) continue;
    const auto litres = litres_an_hour(tractor.machine, implement, tractor.machine.pto.gears[gear], need->mean);
    if (!litres || (known && runner.litres <= litres->value)) continue;
    runner.litres = litres->value;
    facts.outside_fuel_range = facts.outside_fuel_range || litres->outside != nullptr;
    known = true;
  }
  if (!known) note_missing(farm, pair, facts.missing);
  return known ? std::optional<Runner>(runner) : std::nullopt;
}

} // namespace

SeasonFacts season_facts(FarmJudge& judge, const JudgedFarm& judged, const std::vector<std::size_t>& options) {
  SeasonFacts facts;
  for (std::size_t i = 0; i < judged.farm.implements.size(); ++i) {
    const FarmImplement& implement = judged.farm.implements[i];
    ImplementSeason season{implement.machine.name, 0.0, std::nullopt, {}};
    if (implement.hours) {
      season.hours = in(*implement.hours, unit::hour);
    } else {
      facts.missing.push_back(entry("implements", i, "hours"));
    }
    if (implement.hire_price) season.hire_price = implement.hire_price->amount;
    for (std::size_t t = 0; t < judged.farm.tractors.size(); ++t) {
      if (!judged.matrix.row(t)[i].runs()) continue;
      const PairRecord record = judge.record(judged, options, {t, i});
      if (const auto runner = runner_of(judged.farm, {t, i}, record.gears, facts)) season.runners.push_back(*runner);
    }
    facts.implements.push_back(std::move(season));
  }
  return facts;
}

SeasonCost season_cost(const SeasonFacts& facts, double fuel_price, const Factors& factors) {
  SeasonCost cost;
  for (const ImplementSeason& season : facts.implements) {
    const auto an_hour = [&](const Runner& r) { return r.litres * fuel_price * factors.fuel_price + r.repair; };
    std::vector<Runner> runners = season.runners;
    std::sort(runners.begin(), runners.end(),
              [&](const Runner& a, const Runner& b) { return an_hour(a) < an_hour(b); });
    double left = season.hours * factors.hours;
    for (const Runner& runner : runners) {
      cost.running += left * (1.0 - runner.share_down) * an_hour(runner);
      left *= runner.share_down;
    }
    if (season.hire_price) {
      cost.hire += left * *season.hire_price;
    } else {
      cost.hours_without_price += left;
    }
  }
  return cost;
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
