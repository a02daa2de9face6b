#include <fieldshaft/power.hpp>

#include "rows.hpp"

#include <algorithm>
#include <utility>

using namespace fieldshaft;
using rows::Row;

namespace {

FeedRate feed_rate(const Row& row) {
  if (!row.has("feed_rate")) return {};
  const rows::Json& feed = row.given("feed_rate");
  const bool dry = feed.contains("dry");
  const MassRate rate = rows::read<MassRate>(feed.at(dry ? "dry" : "wet"));
  return dry ? dry_feed(rate) : wet_feed(rate);
}

PtoOption option(const Row& row) {
  const rows::Json& given = row.given("option");
  return pto_option(given.at("name"), rows::read<AngularSpeed>(given.at("nominal_speed")),
                    rows::read<AngularSpeed>(given.at("engine_speed")));
}

void expect_rule(const Row& row, const RulePowers& powers) {
  row.expect("engine", powers.engine);
  row.expect("pto", powers.pto);
  row.expect("drawbar", powers.drawbar);
}

void expect_need(const Row& row, const ImplementPower& need) {
  row.expect("low", need.low);
  row.expect("mean", need.mean);
  row.expect("high", need.high);
}

template <class E> E one_of(const Row& row, const char* key, std::initializer_list<std::pair<const char*, E>> names) {
  const std::string name = row.given(key).get<std::string>();
  const auto found = std::find_if(names.begin(), names.end(), [&](const auto& entry) { return name == entry.first; });
  REQUIRE(found != names.end());
  return found->second;
}

double drawbar_share(const Row& row) {
  const auto traction = one_of<Traction>(row, "traction",
                                         {{"two_wheel", Traction::two_wheel},
                                          {"front_assist", Traction::front_assist},
                                          {"four_wheel", Traction::four_wheel},
                                          {"tracks", Traction::tracks}});
  const auto ground = one_of<Ground>(
      row, "ground",
      {{"concrete", Ground::concrete}, {"firm", Ground::firm}, {"tilled", Ground::tilled}, {"soft", Ground::soft}});
  return drawbar_of_pto(traction, ground).value;
}

Power power(const Row& row) { return row.get<Power>("power"); }
AngularSpeed speed(const Row& row) { return row.get<AngularSpeed>("speed"); }
Power rated(const Row& row) { return row.get<Power>("rated_power"); }
double load(const Row& row) { return row.get<double>("load_fraction"); }
double throttle(const Row& row) { return row.get_or<double>("speed_fraction", 1.0); }

} // namespace

TEST_CASE("reference rows of power") {
  rows::run(
      "power",
      {
          {"shaft_torque", [](const Row& row) { row.expect("value", shaft_torque(power(row), speed(row))); }},
          {"shaft_power",
           [](const Row& row) { row.expect("value", shaft_power(row.get<Torque>("torque"), speed(row))); }},
          {"geared_speed",
           [](const Row& row) { row.expect("value", geared_speed(speed(row), row.get<double>("ratio"))); }},
          {"gear_ratio",
           [](const Row& row) {
             row.expect("value", gear_ratio(row.get<AngularSpeed>("input"), row.get<AngularSpeed>("output")));
           }},
          {"powers_by_rule_from_engine",
           [](const Row& row) { expect_rule(row, powers_by_rule_from_engine(row.get<Power>("engine"))); }},
          {"powers_by_rule_from_drawbar",
           [](const Row& row) { expect_rule(row, powers_by_rule_from_drawbar(row.get<Power>("drawbar"))); }},
          {"drawbar_of_pto", [](const Row& row) { row.expect("value", drawbar_share(row)); }},
          {"torque_reserve",
           [](const Row& row) {
             row.expect("value", torque_reserve(row.get<Torque>("available"), row.get<Torque>("needed")));
           }},
          {"implement_power",
           [](const Row& row) {
             const Machine& machine = machine_named(row.given("machine").get<std::string>());
             expect_need(row, implement_power(machine, row.get<Length>("width"), feed_rate(row)));
           }},
          {"fuel_rate", [](const Row& row) { row.expect("value", fuel_rate(rated(row), load(row), throttle(row))); }},
          {"specific_fuel", [](const Row& row) { row.expect("value", specific_fuel(load(row), throttle(row))); }},
          {"measured_fuel_rate",
           [](const Row& row) {
             row.expect("value", measured_fuel_rate(power(row), row.get<VolumePerEnergy>("specific_use")));
           }},
          {"average_fuel_rate", [](const Row& row) { row.expect("value", average_fuel_rate(rated(row))); }},
          {"older_fuel_rate",
           [](const Row& row) { row.expect("value", older_fuel_rate(rated(row), load(row)).value); }},
          {"engine_oil_rate",
           [](const Row& row) { row.expect("value", engine_oil_rate(row.get<Power>("rated_engine_power"))); }},
          {"pto_speed",
           [](const Row& row) { row.expect("value", pto_speed(option(row), row.get<AngularSpeed>("engine_speed"))); }},
          {"engine_speed_at",
           [](const Row& row) {
             row.expect("value", engine_speed_at(option(row), row.get<AngularSpeed>("pto_speed")));
           }},
          {"governor_regulation",
           [](const Row& row) {
             row.expect("value",
                        governor_regulation(row.get<AngularSpeed>("high_idle"), row.get<AngularSpeed>("rated_speed")));
           }},
      });
}
