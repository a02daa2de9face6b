#pragma once
// Whether an option of a farm pays.

#include <fieldshaft/advise/farm_backup.hpp>
#include <fieldshaft/cost.hpp>

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

enum class Pays { yes, no, not_known };

/// What a year costs less (above zero) or more (below zero) with an option, mean over the years of the study.
struct YearlyBalance {
  Money ownership; ///< of what is bought, less what is sold: below zero for a purchase
  Money repair;    ///< of the option's machines and of the one that is given up
  Money running;   ///< fuel, and repair of the tractors by their hours
  Money hire;      ///< contractors for hours that no tractor of the farm can work
  Money net;       ///< all together
};

/// The net of a year when one figure is a fifth lower or higher.
struct Sensitivity {
  enum class Figure { price, hours, fuel_price, interest };
  Figure figure = Figure::price;
  Money net_low;  ///< at 80 %
  Money net_high; ///< at 120 %
};

/// A tractor and an implement by name: an option may add machines that have no place in the farm as it is.
struct PairNames {
  std::string tractor;
  std::string implement;
};

/// One option of a farm, weighed.
struct PayOff {
  std::size_t option = 0;
  std::vector<PairNames> gained; ///< pairs that it brings to work
  std::vector<PairNames> lost;   ///< pairs that it spoils
  Pays pays = Pays::not_known;
  std::optional<YearlyBalance> balance;
  std::optional<Validated<double>> payback; ///< years until the savings have paid for it; none where it saves nothing
  std::vector<Sensitivity> sensitivity;
  std::vector<std::string> missing; ///< entries of the farm document without which it is not known
  std::vector<const char*> remarks; ///< ids of what the figures leave out
  double hours_not_priced = 0.0;    ///< hours a year that become possible and have no price
};

} // namespace v0
} // namespace fieldshaft
