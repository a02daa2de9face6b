// Answers from the other end: smallest tractor, fastest work, engine speeds for each gear, economy PTO of a case.

#include <fieldshaft/fieldshaft.hpp>
#include <fieldshaft/power.hpp>

#include "close.hpp"

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>

using namespace fieldshaft;
using Json = nlohmann::ordered_json;

namespace {

Json trailed_cutter() {
  std::ifstream file(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/trailed-cutter-that-fits.json");
  REQUIRE(file);
  Json document = Json::parse(file);
  document["tractor"]["pto"]["gears"].push_back(
      {{"name", "540E"}, {"pto_speed", "540 r/min"}, {"engine_speed", "1600 r/min"}});
  return document;
}

} // namespace

TEST_CASE("the smallest tractor carries the high need with its reserve, and no smaller one does") {
  const Machine& mower = machine_named("mower-conditioner, disk");
  const auto tractor = smallest_tractor(mower, metres(3.0), 0.2);
  CHECK_CLOSE(in(tractor.safe, unit::kilowatt), 39.0, 1e-12);
  CHECK_CLOSE(in(tractor.mean, unit::kilowatt), 30.0, 1e-12);
  CHECK_CLOSE(in(tractor.optimistic, unit::kilowatt), 21.0, 1e-12);
  // The widest implement for the smallest tractor is the implement itself.
  CHECK_CLOSE(widest_implement(mower, tractor.safe, 0.2).safe.value(), 3.0, 1e-12);
  CHECK_CLOSE(widest_implement(mower, tractor.mean, 0.2).mean.value(), 3.0, 1e-12);
  CHECK_THROWS_AS(smallest_tractor(mower, metres(3.0), 1.0), InputError);
  CHECK_THROWS_AS(smallest_tractor(mower, metres(0.0), 0.2), InputError);
}

TEST_CASE("the fastest work is the speed at which the greatest feed comes in") {
  const Machine& baler = machine_named("baler, large rectangular");
  const FeedRate feed = wet_feed(tonnes_per_hour(20.0));
  const auto fastest = fastest_work(baler, kilowatts(60.0), 0.2, kilometres_per_hour(8.0), feed);
  // (48/1.35 - 4)/1.3 = 24.27 t/h against 20 t/h at 8 km/h
  CHECK_CLOSE(in(fastest.safe, unit::kilometre_per_hour), 8.0 * ((48.0 / 1.35 - 4.0) / 1.3) / 20.0, 1e-12);
  CHECK(fastest.safe < fastest.mean);
  CHECK(fastest.mean < fastest.optimistic);
  CHECK_THROWS_AS(fastest_work(baler, kilowatts(60.0), 0.2, kilometres_per_hour(0.0), feed), InputError);
  CHECK_THROWS_AS(fastest_work(baler, kilowatts(60.0), 0.2, kilometres_per_hour(8.0), dry_feed(tonnes_per_hour(20.0))),
                  InputError);
  CHECK_THROWS_AS(
      fastest_work(machine_named("mower, disk"), kilowatts(60.0), 0.2, kilometres_per_hour(8.0), {}, metres(3.0)),
      InputError); // its need goes with the width alone
}

TEST_CASE("each gear says which engine speed to set and which never to pass") {
  const auto uses = gear_uses(read_case(trailed_cutter().dump()));
  REQUIRE(uses.size() == 2);
  CHECK(uses[0].gear == "540");
  CHECK(*uses[0].suits);
  CHECK_CLOSE(in(*uses[0].set, unit::rpm), 2100.0, 1e-12);
  CHECK_CLOSE(in(*uses[1].set, unit::rpm), 1600.0, 1e-12);
  // Guards act at 630 r/min: 2100 * 630/540 = 2450 in the plain gear and 1866 in the economy gear; tips at 80 m/s are
  // reached at 640 r/min.
  CHECK(std::round(in(*uses[0].never_pass, unit::rpm)) == 2450.0);
  CHECK(std::round(in(*uses[1].never_pass, unit::rpm)) == 1866.0);
  CHECK_CLOSE(in(*uses[1].pto_at_high_idle, unit::rpm), 540.0 * 2350.0 / 1600.0, 1e-12);
  CHECK(uses[1].available->low < uses[0].available->low);
  CHECK(uses[0].missing.empty());
}

TEST_CASE("a gear of another speed has no engine speed to set, and what is not stated stays empty") {
  Json document = trailed_cutter();
  document["tractor"]["pto"]["arrangement"] = "lever only";
  document["tractor"]["pto"]["gears"].push_back(
      {{"name", "1000"}, {"pto_speed", "1000 r/min"}, {"engine_speed", "2050 r/min"}});
  const auto uses = gear_uses(read_case(document.dump()));
  CHECK(!*uses[2].suits);
  CHECK(!uses[2].set);
  CHECK(in(*uses[2].never_pass, unit::rpm) < 2050.0); // its own nominal speed is too fast for the implement
  document["tractor"]["engine"].erase("high_idle");
  const auto unknown = gear_uses(read_case(document.dump()));
  CHECK(!unknown[0].never_pass);
  CHECK(!unknown[0].pto_at_high_idle);
  CHECK(std::count(unknown[0].missing.begin(), unknown[0].missing.end(), "tractor.engine.high_idle") == 1);
}

TEST_CASE("economy PTO: what it saves, whether the need fits, and what a run-up does") {
  const Case value = read_case(trailed_cutter().dump());
  const EconomyAnswer answer = economy_answer(value, {hours(300), Money{1.2, "EUR"}});
  CHECK(answer.plain == "540");
  CHECK(answer.economy == "540E");
  CHECK(answer.missing.empty());
  const auto fuel = economy_saving(kilowatts(58), kilowatts(34), rpm(2100), rpm(1600), rpm(2200));
  CHECK_CLOSE(answer.saving, fuel.value.saving, 1e-12);
  CHECK_CLOSE(answer.litres_a_season, 300.0 * in(fuel.value.plain - fuel.value.economy, unit::litre_per_hour), 1e-12);
  CHECK_CLOSE(answer.money_a_season->amount, 1.2 * answer.litres_a_season, 1e-12);
  CHECK_CLOSE(answer.money_an_hour->amount * 300.0, answer.money_a_season->amount, 1e-12);
  CHECK_CLOSE(in(answer.pto_at_plain_engine, unit::rpm), 540.0 * 2100.0 / 1600.0, 1e-12);
  CHECK_CLOSE(in(*answer.pto_at_high_idle, unit::rpm), 540.0 * 2350.0 / 1600.0, 1e-12);
  // 58 kW * 1600/2200 = 42.2 kW less 18 %: 34.6 kW
  CHECK(answer.fits == Status::ok);
  Json heavy = trailed_cutter();
  heavy["implement"]["power_need"] = "38 kW";
  CHECK(economy_answer(read_case(heavy.dump()), {hours(300), std::nullopt}).fits != Status::ok);
}

TEST_CASE("the saving lies within what was measured for light work and falls as the load rises") {
  double before = 1.0;
  for (const char* need : {"12 kW", "20 kW", "28 kW", "36 kW"}) {
    Json document = trailed_cutter();
    document["implement"]["power_need"] = need;
    const EconomyAnswer answer = economy_answer(read_case(document.dump()), {hours(1), std::nullopt});
    CHECK(answer.saving < before);
    CHECK(answer.saving > 0.10);
    CHECK(answer.saving < 0.3441); // the greatest that was measured in the field
    CHECK(!answer.money_a_season);
    before = answer.saving;
  }
}

TEST_CASE("no economy gear, no need, no season") {
  Json document = trailed_cutter();
  document["implement"].erase("power_need");
  const EconomyAnswer unknown = economy_answer(read_case(document.dump()), {hours(300), std::nullopt});
  CHECK(unknown.fits == Status::not_known);
  CHECK(std::count(unknown.missing.begin(), unknown.missing.end(), "implement.power_need") == 1);
  document["tractor"]["pto"]["gears"].erase(1);
  CHECK(economy_answer(read_case(document.dump()), {hours(300), std::nullopt}).economy.empty());
  const Case value = read_case(trailed_cutter().dump());
  CHECK_THROWS_AS(economy_answer(value, {hours(-1), std::nullopt}), InputError);
  CHECK_THROWS_AS(economy_answer(value, {hours(1), Money{-1.0, "EUR"}}), InputError);
}
