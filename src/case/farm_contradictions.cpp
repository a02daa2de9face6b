#include "case/farm_contradictions.hpp"

#include "case/contradictions.hpp"
#include "case/farm_fields.hpp"

#include <fieldshaft/cost.hpp>

#include <algorithm>
#include <string>
#include <unordered_set>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {
namespace {

using Problems = std::vector<CaseProblem>;

std::string at(const std::string& list, std::size_t index) { return list + "[" + std::to_string(index) + "]"; }

// Names ----------------------------------------------------------------------------------------------------

/// The names of one kind of thing, each with the place where it stands first.
class Names {
public:
  explicit Names(const char* thing) : thing_(thing) {}

  void add(const std::string& name, const std::string& path, Problems& problems) {
    if (name.empty()) return; // noted already as missing
    if (known_.insert(name).second) {
      names_.push_back({name});
    } else {
      problems.push_back({path + ".name", "\"" + name + "\"", std::string("a name that no other ") + thing_ + " has"});
    }
  }
  /// A name that something else refers to.
  void expect(const std::string& name, const std::string& path, Problems& problems) const {
    if (known_.count(name) == 1) return;
    std::string nearest;
    for (const std::string_view near :
         names_.empty() ? std::vector<std::string_view>{} : detail::nearest_names(names_, name)) {
      nearest += (nearest.empty() ? "; nearest: \"" : ", \"") + std::string(near) + "\"";
    }
    problems.push_back(
        {path, "\"" + name + "\"", std::string("the name of ") + article() + thing_ + " of the farm" + nearest});
  }

private:
  struct Entry {
    std::string name;
  };
  const char* article() const { return thing_[0] == 'i' ? "an " : "a "; }

  const char* thing_;
  std::unordered_set<std::string> known_;
  std::vector<Entry> names_;
};

template <class List, class NameOf>
void add_names(Names& names, const List& list, const std::string& path, NameOf name_of, Problems& problems) {
  for (std::size_t i = 0; i < list.size(); ++i) names.add(name_of(list[i]), at(path, i), problems);
}

const auto machine_name = [](const auto& machine) -> const std::string& { return machine.machine.name; };
const auto own_name = [](const auto& thing) -> const std::string& { return thing.name; };

void check_serves(const std::vector<FarmDriveline>& drivelines, const std::string& path, const Names& implements,
                  Problems& problems) {
  for (std::size_t i = 0; i < drivelines.size(); ++i) {
    const FarmDriveline& driveline = drivelines[i];
    if (driveline.serves.empty()) {
      problems.push_back({at(path, i) + ".serves", "missing", "the names of the implements on which it is used"});
    }
    for (std::size_t j = 0; j < driveline.serves.size(); ++j) {
      implements.expect(driveline.serves[j], at(at(path, i) + ".serves", j), problems);
    }
  }
}

/// Names of options are looked up among the farm's machines and the option's own: options do not build on each other.
void check_option_names(const FarmOption& option, const std::string& path, Names tractors, Names implements,
                        Names drivelines, Problems& problems) {
  add_names(tractors, option.tractors, path + ".tractors", machine_name, problems);
  add_names(implements, option.implements, path + ".implements", machine_name, problems);
  add_names(drivelines, option.drivelines, path + ".drivelines", own_name, problems);
  if (option.tractor) tractors.expect(*option.tractor, path + ".tractor", problems);
  if (option.replaces) implements.expect(*option.replaces, path + ".replaces", problems);
  check_serves(option.drivelines, path + ".drivelines", implements, problems);
}

void check_names(const Farm& farm, Problems& problems) {
  Names tractors("tractor");
  Names implements("implement");
  Names drivelines("driveline");
  Names options("option");
  add_names(tractors, farm.tractors, "tractors", machine_name, problems);
  add_names(implements, farm.implements, "implements", machine_name, problems);
  add_names(drivelines, farm.drivelines, "drivelines", own_name, problems);
  add_names(options, farm.options, "options", own_name, problems);
  check_serves(farm.drivelines, "drivelines", implements, problems);
  for (std::size_t i = 0; i < farm.options.size(); ++i) {
    check_option_names(farm.options[i], at("options", i), tractors, implements, drivelines, problems);
  }
}

// Prices ---------------------------------------------------------------------------------------------------

/// Every price of a farm is in one currency: the stated one, else that of the first price.
class PricesOfFarm {
public:
  PricesOfFarm(const Farm& farm, Problems& problems) : problems_(problems) {
    if (!farm.currency) return;
    const std::string& code = *farm.currency;
    const bool letters = std::all_of(code.begin(), code.end(), [](char c) { return c >= 'A' && c <= 'Z'; });
    if (code.size() == 3 && letters) {
      currency_ = Currency(std::string_view(code));
    } else {
      problems_.push_back({"currency", "\"" + code + "\"", "three capital letters such as EUR"});
    }
  }

  void look(const Stated<Money>& price, const std::string& path) {
    if (!price) return;
    if (!currency_) currency_ = price->currency;
    if (price->currency != *currency_) {
      problems_.push_back({path, "a price in " + std::string(price->currency.code()),
                           "a price in " + std::string(currency_->code()) + " like the others; nothing converts them"});
    }
    if (!is_finite(price->amount) || price->amount < 0.0) {
      problems_.push_back({path, check::text_of(price->amount, ""), "a price of at least nothing"});
    }
  }
  void look(const MachineCost& cost, const std::string& path) {
    look(cost.price, path + ".price");
    look(cost.list_price, path + ".list_price");
    look(cost.value_at_end, path + ".value_at_end");
  }

private:
  Problems& problems_;
  std::optional<Currency> currency_;
};

/// Looks at every price of a description.
struct PriceLooker {
  PricesOfFarm& prices;
  void price(const char* key, Stated<Money>& entry, PricePer, const char*) const {
    prices.look(entry, std::string("prices.") + key);
  }
};

template <class Table>
void check_class(const Stated<std::string>& name, const Table& table, const std::string& path, Problems& problems) {
  if (!name || detail::find_by_name(table, *name) != nullptr) return;
  std::string nearest;
  for (const std::string_view near : detail::nearest_names(table, *name)) {
    nearest += (nearest.empty() ? "\"" : ", \"") + std::string(near) + "\"";
  }
  problems.push_back({path, "\"" + *name + "\"", "a class of machines; nearest: " + nearest});
}

void check_cost(const MachineCost& cost, const std::string& path, PricesOfFarm& prices, Problems& problems) {
  prices.look(cost, path);
  check_class(cost.value_class, value_classes(), path + ".value_class", problems);
  check_class(cost.repair_class, repair_classes(), path + ".repair_class", problems);
  if (cost.value_class && cost.value_at_end) {
    problems.push_back({path, "a value_class and a value_at_end", "one of the two"});
  }
}

// Machines -------------------------------------------------------------------------------------------------

/// What is wrong with a case that holds one machine only, told with the machine's place in the farm.
void check_machine(const Case& value, const std::string& front, const std::string& path, Problems& problems) {
  Problems found;
  find_contradictions(value, found);
  for (CaseProblem& problem : found) {
    const bool own = problem.path.rfind(front, 0) == 0;
    problem.path = path + (own ? problem.path.substr(front.size()) : "." + problem.path);
    problems.push_back(std::move(problem));
  }
}

void check_tractor(const FarmTractor& tractor, const std::string& path, PricesOfFarm& prices, Problems& problems) {
  Case value;
  value.tractor = tractor.machine;
  check_machine(value, "tractor", path, problems);
  for (std::size_t i = 0; i < tractor.other_hitches.size(); ++i) {
    Case other;
    other.tractor.hitch = tractor.other_hitches[i];
    check_machine(other, "tractor.hitch", at(path + ".other_hitches", i), problems);
  }
  check_cost(tractor.cost, path, prices, problems);
}

void check_implement(const FarmImplement& implement, const std::string& path, PricesOfFarm& prices,
                     Problems& problems) {
  Case value;
  value.implement = implement.machine;
  value.range = implement.range;
  value.limits = implement.limits;
  value.tractor.hitch.kind = implement.hitch;
  check_machine(value, "implement", path, problems);
  check_cost(implement.cost, path, prices, problems);
  prices.look(implement.hire_price, path + ".hire_price");
}

void check_driveline(const FarmDriveline& driveline, const std::string& path, Problems& problems) {
  Case value;
  value.driveline = driveline.driveline;
  value.overload = driveline.overload;
  check_machine(value, "driveline", path, problems);
}

/// The gears that an option adds must agree with those that the tractor has.
void check_option_gears(const Farm& farm, const FarmOption& option, const std::string& path, Problems& problems) {
  const bool adds = !option.gears.empty() || !option.stubs.empty() || option.arrangement;
  if (adds && !option.tractor) {
    problems.push_back({path + ".tractor", "missing", "the name of the tractor that gets the gears and stubs"});
  }
  if (!option.tractor) return;
  for (const FarmTractor& tractor : farm.tractors) {
    if (tractor.machine.name != *option.tractor) continue;
    Case value;
    value.tractor = tractor.machine;
    Problems of_tractor;
    find_contradictions(value, of_tractor);
    if (!of_tractor.empty()) return; // told at the tractor itself
    if (option.arrangement) value.tractor.pto.arrangement = option.arrangement;
    for (const PtoGear& gear : option.gears) value.tractor.pto.gears.push_back(gear);
    check_machine(value, "tractor.pto", path + " (tractor)", problems);
  }
}

template <class T>
void check_agrees(const Stated<T>& of_option, const Stated<T>& of_tractor, const std::string& path, const char* key,
                  const std::string& tractor, Problems& problems) {
  if (!of_option || !of_tractor || *of_option == *of_tractor) return;
  problems.push_back(
      {path + "." + key, "another one than " + tractor + "." + key, "the same in both places, or in one place only"});
}

/// What a bought tractor costs may stand with the option or with the tractor; its repairs would be counted twice.
void check_bought_tractors(const FarmOption& option, const std::string& path, Problems& problems) {
  for (std::size_t i = 0; i < option.tractors.size(); ++i) {
    const MachineCost& cost = option.tractors[i].cost;
    const std::string tractor = at(path + ".tractors", i);
    if (option.cost.repair_class && cost.repair_class) {
      problems.push_back({path + ".repair_class", "repairs here and at " + tractor + ".repair_class",
                          "repairs in one place only: at the tractor they go by its hours of work"});
    }
    if (option.tractors.size() + option.implements.size() > 1) continue; // then the option's are of all together
    check_agrees(option.cost.age, cost.age, path, "age", tractor, problems);
    check_agrees(option.cost.hours_so_far, cost.hours_so_far, path, "hours_so_far", tractor, problems);
    check_agrees(option.cost.list_price, cost.list_price, path, "list_price", tractor, problems);
  }
}

void check_option(const Farm& farm, const FarmOption& option, const std::string& path, PricesOfFarm& prices,
                  Problems& problems) {
  for (std::size_t i = 0; i < option.tractors.size(); ++i)
    check_tractor(option.tractors[i], at(path + ".tractors", i), prices, problems);
  for (std::size_t i = 0; i < option.implements.size(); ++i)
    check_implement(option.implements[i], at(path + ".implements", i), prices, problems);
  for (std::size_t i = 0; i < option.drivelines.size(); ++i)
    check_driveline(option.drivelines[i], at(path + ".drivelines", i), problems);
  check_option_gears(farm, option, path, problems);
  check_bought_tractors(option, path, problems);
  check_cost(option.cost, path, prices, problems);
  prices.look(option.sold_for, path + ".sold_for");
  const bool changes = option.tractor || !option.gears.empty() || !option.stubs.empty() || option.arrangement ||
                       !option.tractors.empty() || !option.implements.empty() || !option.drivelines.empty() ||
                       option.replaces;
  if (!changes) problems.push_back({path, "no change", "gears, stubs or machines that the option adds"});
}

} // namespace

void find_contradictions(const Farm& farm, Problems& problems) {
  check_names(farm, problems);
  PricesOfFarm prices(farm, problems);
  prices.look(farm.fuel_price, "fuel_price");
  fieldshaft::Prices of_changes = farm.prices; // the description takes its entries by plain reference
  PriceLooker looker{prices};
  fields(looker, of_changes);
  for (std::size_t i = 0; i < farm.tractors.size(); ++i)
    check_tractor(farm.tractors[i], at("tractors", i), prices, problems);
  for (std::size_t i = 0; i < farm.implements.size(); ++i)
    check_implement(farm.implements[i], at("implements", i), prices, problems);
  for (std::size_t i = 0; i < farm.drivelines.size(); ++i)
    check_driveline(farm.drivelines[i], at("drivelines", i), problems);
  for (std::size_t i = 0; i < farm.options.size(); ++i)
    check_option(farm, farm.options[i], at("options", i), prices, problems);
}

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
