// Laws of cost: an account that is run year by year checks the closed formulas.

#include <fieldshaft/cost.hpp>

#include "close.hpp"
#include "random.hpp"

using namespace fieldshaft;

TEST_CASE("capital recovery pays the machine off: an account run year by year ends at the salvage value") {
  RandomInputs random;
  for (int i = 0; i < 500; ++i) {
    const double interest = random.between(-0.03, 0.25);
    const int years = random.whole(1, 30);
    const Money price{random.across(100.0, 1e6), "EUR"};
    const Money salvage = random.between(0.0, 1.0) * price;
    const Money payment = capital_recovery(price, salvage, interest, years);
    double debt = price.amount;
    for (int year = 0; year < years; ++year) debt = debt * (1.0 + interest) - payment.amount;
    CHECK(std::abs(debt - salvage.amount) < 1e-9 * price.amount * std::pow(1.0 + std::abs(interest), years));
  }
}

TEST_CASE("payback: an account run year by year is paid within the last year") {
  RandomInputs random;
  for (int i = 0; i < 500; ++i) {
    const double interest = random.between(0.001, 0.15);
    const Money price{random.across(100.0, 1e5), "EUR"};
    const Money saving = price * (interest + random.between(0.02, 1.0));
    const Validated<double> years = payback_years(price, saving, interest);
    REQUIRE(years.valid());
    double debt = price.amount;
    int whole = 0;
    while (debt > 0.0) {
      debt = debt * (1.0 + interest) - saving.amount;
      ++whole;
    }
    CHECK(years.value <= whole + 1e-9);
    CHECK(years.value > whole - 1);
    CHECK_CLOSE(capital_recovery_factor(interest, years.value) * price.amount, saving.amount, 1e-10);
  }
}

TEST_CASE("value falls and repair rises with age and use, and the parts of repair add up") {
  RandomInputs random;
  for (const ValueClass& value_class : value_classes()) {
    for (int i = 0; i < 100; ++i) {
      const double years = random.between(0.0, 40.0);
      const Time use = hours(random.between(0.0, 2000.0));
      const double now = remaining_value(value_class, years, use).value;
      CHECK(remaining_value(value_class, years + 1.0, use).value <= now);
      CHECK(remaining_value(value_class, years, use + hours(100)).value <= now);
      CHECK(now >= 0.0);
    }
  }
  for (const RepairClass& repair_class : repair_classes()) {
    for (int i = 0; i < 100; ++i) {
      const Money price{random.across(100.0, 1e6), "EUR"};
      const Time first = hours(random.between(0.0, 5000.0));
      const Time second = first + hours(random.between(0.0, 5000.0));
      const Money parts =
          repair_cost(price, repair_class, Time{}, first).value + repair_cost(price, repair_class, first, second).value;
      CHECK_CLOSE(parts.amount, repair_cost(price, repair_class, Time{}, second).value.amount, 1e-12);
    }
  }
}

TEST_CASE("everything in money grows in proportion to the prices") {
  RandomInputs random;
  for (int i = 0; i < 500; ++i) {
    const double factor = random.across(0.01, 100.0);
    const YearOfUse year{{random.across(1e3, 1e6), "EUR"}, {random.across(1e3, 1e6), "EUR"},
                         {random.across(1.0, 1e3), "EUR"}, random.between(0.0, 0.2),
                         random.between(1.0, 20.0),        hours(random.between(50.0, 500.0))};
    YearOfUse more = year;
    more.price = factor * year.price;
    more.list_price = factor * year.list_price;
    more.salvage = factor * year.salvage;
    const RepairClass& repair_class = repair_class_named("baler, large round");
    CHECK_CLOSE(hourly_cost(more, repair_class).value.amount, factor * hourly_cost(year, repair_class).value.amount,
                1e-12);
    CHECK(hourly_cost(more, repair_class).valid() == hourly_cost(year, repair_class).valid());
  }
}
