#pragma once
// What a season costs: which tractor does which hours, with which fuel, and what a contractor has to do.

#include "advise/farm_judge.hpp"

#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace advising {

/// What is multiplied to see how an answer depends on a figure.
struct Factors {
  double price = 1.0;
  double hours = 1.0;
  double fuel_price = 1.0;
  double interest = 1.0;
};

/// A tractor that can do an implement's work, and what an hour of it takes.
struct Runner {
  std::size_t tractor = 0;
  double litres = 0.0;     ///< an hour
  double repair = 0.0;     ///< an hour, in the farm's currency
  double share_down = 0.0; ///< of the season
};

/// An implement's season, worked out from names so that farms with and without an option can be compared.
struct ImplementSeason {
  std::string name;
  double hours = 0.0;
  Stated<double> hire_price;
  std::vector<Runner> runners;
};

struct SeasonFacts {
  std::vector<ImplementSeason> implements;
  std::vector<std::string> missing; ///< entries of the farm document
  bool outside_fuel_range = false;  ///< a load that the fuel equation is not meant for
};

SeasonFacts season_facts(FarmJudge& judge, const JudgedFarm& judged, const std::vector<std::size_t>& options);

/// Money of a year, in the farm's currency.
struct SeasonCost {
  double running = 0.0;
  double hire = 0.0;
  double hours_without_price = 0.0; ///< that nobody of the farm works and for which no hire price is stated
};

/// The cheapest tractor does the work as long as it is not down, then the next one; the rest is hired.
SeasonCost season_cost(const SeasonFacts& facts, double fuel_price, const Factors& factors);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
