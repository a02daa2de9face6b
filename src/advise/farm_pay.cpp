#include "advise/farm_pay.hpp"

#include "advise/farm_season.hpp"

#include <fieldshaft/cost.hpp>

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

// What is bought ------------------------------------------------------------------------------------------

/// Hours that the machines of an option run in a year: the implements' work, or the tractors' use.
double hours_of_option(const FarmOption& option) {
  double sum = 0.0;
  for (const FarmImplement& implement : option.implements) sum += in(implement.hours.value_or(Time{}), unit::hour);
  for (const FarmTractor& tractor : option.tractors) sum += in(tractor.hours.value_or(Time{}), unit::hour);
  return sum;
}

const FarmImplement* replaced_implement(const Farm& farm, const FarmOption& option) {
  if (!option.replaces) return nullptr;
  for (const FarmImplement& implement : farm.implements) {
    if (implement.machine.name == *option.replaces) return &implement;
  }
  return nullptr;
}

/// What a machine will be worth at the end of the study, as stated or by its class; nothing where that is not stated.
double class_value_at_end(const MachineCost& cost, double years, double hours_a_year) {
  if (cost.value_at_end) return cost.value_at_end->amount;
  const Stated<Money>& list = cost.list_price ? cost.list_price : cost.price;
  if (!cost.value_class || !list) return 0.0;
  const ValueClass& value_class = value_class_named(*cost.value_class);
  return list->amount * remaining_value(value_class, cost.age.value_or(0.0) + years, hours(hours_a_year)).value;
}

/// The same, but never more than is paid or fetched for it at the start, where that is stated: the class is a mean of
/// list prices, and a cheap machine does not become a dear one by growing older.
double value_at_end(const MachineCost& cost, const Stated<Money>& at_start, double years, double hours_a_year) {
  const double by_class = class_value_at_end(cost, years, hours_a_year);
  return at_start ? std::min(at_start->amount, by_class) : by_class;
}

/// Repair of a year, mean over the study; nothing where it is not stated.
double yearly_repair(const MachineCost& cost, double years, double hours_a_year) {
  const Stated<Money>& list = cost.list_price ? cost.list_price : cost.price;
  if (!cost.repair_class || !list) return 0.0;
  const Time from = cost.hours_so_far.value_or(Time{});
  const RepairClass& repair = repair_class_named(*cost.repair_class);
  return repair_cost(*list, repair, from, from + hours(years * hours_a_year)).value.amount / years;
}

bool states_value(const MachineCost& cost) { return cost.value_at_end || cost.value_class; }

// A year --------------------------------------------------------------------------------------------------

/// Everything that a weighing needs, gathered once; the sensitivity table asks again with other factors.
struct Weighing {
  const Farm& farm;
  const FarmOption& option;
  const FarmImplement* replaced;
  Currency currency;
  SeasonFacts without;
  SeasonFacts with;
};

/// What owning costs in a year, less what comes in by the sale of what is given up.
double yearly_ownership(const Weighing& w, const Factors& factors) {
  const double years = *w.farm.years;
  const double interest = *w.farm.interest * factors.interest;
  const double hours_a_year = hours_of_option(w.option) * factors.hours;
  const Money price = {w.option.cost.price->amount * factors.price, w.currency};
  const Money salvage = {value_at_end(w.option.cost, price, years, hours_a_year), w.currency};
  double total = ownership_cost(price, salvage, interest, years).total.amount;
  if (w.replaced == nullptr) return total;
  const double sold = w.option.sold_for ? w.option.sold_for->amount : 0.0;
  const double old_hours = in(w.replaced->hours.value_or(Time{}), unit::hour) * factors.hours;
  const Money old_end = {value_at_end(w.replaced->cost, w.option.sold_for, years, old_hours), w.currency};
  return total - ownership_cost({sold, w.currency}, old_end, interest, years).total.amount;
}

double added_repair(const Weighing& w, const Factors& factors) {
  const double years = *w.farm.years;
  double repair = yearly_repair(w.option.cost, years, hours_of_option(w.option) * factors.hours);
  if (w.replaced == nullptr) return repair;
  const double old_hours = in(w.replaced->hours.value_or(Time{}), unit::hour) * factors.hours;
  return repair - yearly_repair(w.replaced->cost, years, old_hours);
}

YearlyBalance balance_of(const Weighing& w, const Factors& factors) {
  const SeasonCost before = season_cost(w.without, w.farm.fuel_price->amount, factors);
  const SeasonCost after = season_cost(w.with, w.farm.fuel_price->amount, factors);
  const auto money = [&](double amount) { return Money{amount, w.currency}; };
  const Money ownership = money(-yearly_ownership(w, factors));
  const Money repair = money(-added_repair(w, factors));
  const Money running = money(before.running - after.running);
  const Money hire = money(before.hire - after.hire);
  return {ownership, repair, running, hire, ownership + repair + running + hire};
}

std::vector<Sensitivity> sensitivity_of(const Weighing& w) {
  std::vector<Sensitivity> table;
  const std::pair<Sensitivity::Figure, double Factors::*> figures[] = {
      {Sensitivity::Figure::price, &Factors::price},
      {Sensitivity::Figure::hours, &Factors::hours},
      {Sensitivity::Figure::fuel_price, &Factors::fuel_price},
      {Sensitivity::Figure::interest, &Factors::interest}};
  for (const auto& [figure, member] : figures) {
    Factors low;
    Factors high;
    low.*member = 0.8;
    high.*member = 1.2;
    table.push_back({figure, balance_of(w, low).net, balance_of(w, high).net});
  }
  return table;
}

std::optional<Validated<double>> payback_of(const Weighing& w, const YearlyBalance& balance) {
  const double sold = w.option.sold_for ? w.option.sold_for->amount : 0.0;
  const Money outlay = {std::max(0.0, w.option.cost.price->amount - sold), w.currency};
  const Money saving = balance.repair + balance.running + balance.hire;
  if (saving.amount <= 0.0) return std::nullopt;
  return payback_years(outlay, saving, *w.farm.interest);
}

// What is lacking -----------------------------------------------------------------------------------------

std::vector<std::string> missing_money(const Farm& farm, std::size_t option) {
  std::vector<std::string> missing;
  if (!farm.interest) missing.emplace_back("interest");
  if (!farm.years) missing.emplace_back("years");
  if (!farm.fuel_price) missing.emplace_back("fuel_price");
  if (!farm.options[option].cost.price) missing.push_back("options[" + std::to_string(option) + "].price");
  return missing;
}

/// Repairs of a bought tractor are counted by its hours of work where the tractor itself states their class.
bool counts_repair(const FarmOption& option) {
  const auto by_the_hour = [](const FarmTractor& tractor) { return tractor.cost.repair_class.has_value(); };
  const bool tractors = !option.tractors.empty() && option.implements.empty() &&
                        std::all_of(option.tractors.begin(), option.tractors.end(), by_the_hour);
  return option.cost.repair_class || tractors;
}

/// Whether the implements in the place of another one are stated with other hours than it has.
bool other_hours(const Weighing& w) {
  if (w.replaced == nullptr || w.option.implements.empty() || !w.replaced->hours) return false;
  const double old_hours = in(*w.replaced->hours, unit::hour);
  double new_hours = 0.0;
  for (const FarmImplement& implement : w.option.implements) {
    new_hours += in(implement.hours.value_or(Time{}), unit::hour);
  }
  constexpr double rounding = 1e-9;
  return std::abs(new_hours - old_hours) > rounding * old_hours;
}

/// Whether a value at the end was held at what is paid or fetched at the start.
bool value_was_held(const Weighing& w) {
  const double years = *w.farm.years;
  const auto held = [&](const MachineCost& cost, const Stated<Money>& at_start, double hours_a_year) {
    return value_at_end(cost, at_start, years, hours_a_year) < class_value_at_end(cost, years, hours_a_year);
  };
  if (held(w.option.cost, w.option.cost.price, hours_of_option(w.option))) return true;
  return w.replaced != nullptr &&
         held(w.replaced->cost, w.option.sold_for, in(w.replaced->hours.value_or(Time{}), unit::hour));
}

void add_remarks(const Weighing& w, PayOff& result) {
  const bool has_machines = !w.option.implements.empty() || !w.option.tractors.empty();
  if (!states_value(w.option.cost)) result.remarks.push_back("farm.remark.worth_nothing");
  if (value_was_held(w)) result.remarks.push_back("farm.remark.value_held");
  if (other_hours(w)) result.remarks.push_back("farm.remark.other_hours");
  if (has_machines && !counts_repair(w.option)) result.remarks.push_back("farm.remark.no_repair");
  if (w.replaced != nullptr && !states_value(w.replaced->cost))
    result.remarks.push_back("farm.remark.old_worth_nothing");
  if (w.without.outside_fuel_range || w.with.outside_fuel_range) result.remarks.push_back("farm.remark.fuel_range");
  const bool any_down = std::any_of(w.farm.tractors.begin(), w.farm.tractors.end(),
                                    [](const FarmTractor& t) { return t.share_down.value_or(0.0) > 0.0; });
  if (!any_down) result.remarks.push_back("farm.remark.never_down");
  if (result.hours_not_priced > 0.0) result.remarks.push_back("farm.remark.hours_not_priced");
}

/// Pairs that work in one farm and not in the other, by the names of their machines.
std::vector<PairNames> new_pairs(const JudgedFarm& from, const JudgedFarm& to) {
  const auto place = [](const auto& machines, const std::string& name) {
    const auto found =
        std::find_if(machines.begin(), machines.end(), [&](const auto& m) { return m.machine.name == name; });
    return static_cast<std::size_t>(found - machines.begin());
  };
  std::vector<std::size_t> tractors;
  for (const FarmTractor& tractor : to.farm.tractors)
    tractors.push_back(place(from.farm.tractors, tractor.machine.name));
  std::vector<PairNames> pairs;
  for (std::size_t i = 0; i < to.farm.implements.size(); ++i) {
    const std::size_t implement = place(from.farm.implements, to.farm.implements[i].machine.name);
    for (std::size_t t = 0; t < tractors.size(); ++t) {
      if (!to.matrix.row(t)[i].runs()) continue;
      const bool there = tractors[t] < from.farm.tractors.size() && implement < from.farm.implements.size();
      if (!there || !from.matrix.row(tractors[t])[implement].runs())
        pairs.push_back({to.farm.tractors[t].machine.name, to.farm.implements[i].machine.name});
    }
  }
  return pairs;
}

void weigh(const Weighing& w, PayOff& result) {
  const YearlyBalance balance = balance_of(w, {});
  const double before = season_cost(w.without, w.farm.fuel_price->amount, {}).hours_without_price;
  const double after = season_cost(w.with, w.farm.fuel_price->amount, {}).hours_without_price;
  result.hours_not_priced = std::max(0.0, before - after);
  result.balance = balance;
  result.payback = payback_of(w, balance);
  result.sensitivity = sensitivity_of(w);
  // Hours that become possible and have no price could only make a "no" a "yes".
  const bool undecided = balance.net.amount <= 0.0 && result.hours_not_priced > 0.0;
  result.pays = balance.net.amount > 0.0 ? Pays::yes : undecided ? Pays::not_known : Pays::no;
  add_remarks(w, result);
}

} // namespace

PayOff pay_off(FarmJudge& judge, std::size_t option) {
  const Farm& farm = judge.base();
  const JudgedFarm without = judge.with({});
  const JudgedFarm with = judge.with({option});
  PayOff result;
  result.option = option;
  result.gained = new_pairs(without, with);
  result.lost = new_pairs(with, without);
  result.missing = missing_money(farm, option);
  if (!result.missing.empty()) return result;
  Weighing weighing{farm,
                    farm.options[option],
                    replaced_implement(farm, farm.options[option]),
                    farm.options[option].cost.price->currency,
                    season_facts(judge, without, {}),
                    season_facts(judge, with, {option})};
  result.missing = weighing.without.missing;
  for (const std::string& path : weighing.with.missing) {
    if (std::find(result.missing.begin(), result.missing.end(), path) == result.missing.end()) {
      result.missing.push_back(path);
    }
  }
  if (result.missing.empty()) weigh(weighing, result);
  return result;
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
