#include <fieldshaft/cost.hpp>

#include "rows.hpp"

using namespace fieldshaft;
using rows::Row;

namespace {

Money money(const Row& row, const char* name) {
  const rows::Json& given = row.given(name);
  return {given.at("amount").get<double>(), Currency(given.at("currency").get<std::string>())};
}
std::string text(const Row& row, const char* name) { return row.given(name).get<std::string>(); }
double number(const Row& row, const char* name) { return row.get<double>(name); }
const RepairClass& repair_class(const Row& row) { return repair_class_named(text(row, "repair_class")); }

void expect_ownership(const Row& row, const OwnershipCost& cost) {
  row.expect("capital", cost.capital.amount);
  row.expect("tih", cost.tih.amount);
  row.expect("total", cost.total.amount);
}

} // namespace

TEST_CASE("reference rows of cost") {
  rows::run(
      "cost",
      {
          {"remaining_value",
           [](const Row& row) {
             const ValueClass& value_class = value_class_named(text(row, "value_class"));
             row.expect("value", remaining_value(value_class, number(row, "years"), row.get<Time>("annual_use")).value);
           }},
          {"older_remaining_value",
           [](const Row& row) {
             const OlderValueClass& value_class = older_value_class_named(text(row, "value_class"));
             row.expect("value", older_remaining_value(value_class, number(row, "years")));
           }},
          {"real_interest",
           [](const Row& row) {
             row.expect("value", real_interest(number(row, "interest"), number(row, "inflation")));
           }},
          {"real_interest_by_difference",
           [](const Row& row) {
             row.expect("value", real_interest_by_difference(number(row, "interest"), number(row, "inflation")));
           }},
          {"capital_recovery_factor",
           [](const Row& row) {
             row.expect("value", capital_recovery_factor(number(row, "interest"), number(row, "years")));
           }},
          {"capital_recovery",
           [](const Row& row) {
             row.expect("value", capital_recovery(money(row, "price"), money(row, "salvage"), number(row, "interest"),
                                                  number(row, "years"))
                                     .amount);
           }},
          {"taxes_insurance_housing",
           [](const Row& row) {
             row.expect(
                 "value",
                 taxes_insurance_housing(money(row, "price"), money(row, "salvage"), number(row, "rate")).amount);
           }},
          {"ownership_cost",
           [](const Row& row) {
             expect_ownership(row, ownership_cost(money(row, "price"), money(row, "salvage"), number(row, "interest"),
                                                  number(row, "years")));
           }},
          {"ownership_share",
           [](const Row& row) {
             row.expect("value", ownership_share(number(row, "salvage_share"), number(row, "years"),
                                                 number(row, "interest"), number(row, "other")));
           }},
          {"accumulated_repair",
           [](const Row& row) {
             row.expect("value", accumulated_repair(repair_class(row), row.get<Time>("use")).value);
           }},
          {"repair_cost",
           [](const Row& row) {
             row.expect("value", repair_cost(money(row, "list_price"), repair_class(row), row.get<Time>("from"),
                                             row.get<Time>("to"))
                                     .value.amount);
           }},
          {"fuel_cost",
           [](const Row& row) {
             row.expect(
                 "value",
                 fuel_cost(row.get<VolumeRate>("rate"), row.get<Time>("time"), money(row, "price_per_litre")).amount);
           }},
          {"payback_years",
           [](const Row& row) {
             row.expect("value",
                        payback_years(money(row, "price"), money(row, "saving"), number(row, "interest")).value);
           }},
      });
}
