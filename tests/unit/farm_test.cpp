// The study of a farm: set-ups, backup, the fewest changes, the question for 1000, and the money of options.

#include <fieldshaft/fieldshaft.hpp>
#include <fieldshaft/power.hpp>

#include <doctest/doctest.h>

#include <fstream>
#include <sstream>

using namespace fieldshaft;

namespace {

Hitch drawbar() {
  Hitch hitch;
  hitch.kind = HitchKind::drawbar;
  hitch.distance = MeasuredLength{millimetres(400), millimetres(5)};
  return hitch;
}

PtoGear gear(const char* name, double pto, double engine) { return {name, rpm(pto), rpm(engine)}; }

/// A tractor with one gear and a six-spline stub, complete as far as a screening looks.
FarmTractor tractor(const char* name, double kilowatt) {
  FarmTractor tractor;
  tractor.machine.name = name;
  tractor.machine.power = kilowatts(kilowatt);
  tractor.machine.power_basis = PowerBasis::pto;
  tractor.machine.engine.rated_speed = rpm(2200);
  tractor.machine.engine.high_idle = rpm(2400);
  tractor.machine.engine.torque_rise = 0.3;
  tractor.machine.pto.arrangement = StubArrangement::lever_only;
  tractor.machine.pto.stub.type = 1;
  tractor.machine.pto.gears = {gear("540", 540, 2200)};
  tractor.machine.pto.master_shield = GuardState::present;
  tractor.machine.hitch = drawbar();
  return tractor;
}

FarmImplement implement(const char* name, double speed, double kilowatt) {
  FarmImplement implement;
  implement.machine.name = name;
  implement.machine.input_speed = rpm(speed);
  implement.machine.power_need = kilowatts(kilowatt);
  implement.machine.permitted_power = kilowatts(500);
  implement.machine.input.guard = GuardState::present;
  implement.hitch = HitchKind::drawbar;
  implement.hours = hours(100);
  return implement;
}

FarmDriveline driveline(const char* implement, int type) {
  FarmDriveline driveline;
  driveline.name = std::string("driveline of ") + implement;
  driveline.driveline.tractor_yoke.type = type;
  driveline.driveline.guard = GuardState::present;
  driveline.driveline.adaptor = Fitted<Adaptor>{};
  driveline.serves = {implement};
  return driveline;
}

/// Two tractors at 540, one implement for each speed. A is weak, B is strong.
Farm small_farm() {
  Farm farm;
  farm.tractors = {tractor("A", 40), tractor("B", 55)};
  farm.implements = {implement("mower", 540, 20), implement("baler", 1000, 30)};
  farm.drivelines = {driveline("mower", 1), driveline("baler", 2)};
  return farm;
}

FarmOption both_speeds(const char* name, const char* tractor) {
  FarmOption option;
  option.name = name;
  option.tractor = tractor;
  option.gears = {gear("1000", 1000, 2200)};
  option.stubs = {OtherStub{}};
  option.stubs.front().interface.type = 2;
  option.arrangement = StubArrangement::exchanged_from_carrier;
  return option;
}

FarmStudySettings screening() {
  FarmStudySettings settings;
  settings.depth = StudyDepth::screening;
  return settings;
}

Farm priced(Farm farm) {
  farm.interest = 0.08;
  farm.years = 15;
  farm.fuel_price = Money{1.2, "EUR"};
  return farm;
}

const Farm& example_farm() {
  static const Farm farm = [] {
    std::ifstream file(FIELDSHAFT_SOURCE_DIR "/docs/examples/farms/three-tractors-seven-implements.json");
    std::stringstream text;
    text << file.rdbuf();
    return read_farm(text.str());
  }();
  return farm;
}

} // namespace

TEST_CASE("a code orders verdicts first and then by how late the first objection comes") {
  constexpr VerdictCode good;
  constexpr VerdictCode early(Status::stop, Check::pto_speed);
  constexpr VerdictCode late(Status::stop, Check::power_reserve);
  constexpr VerdictCode unknown(Status::not_known, Check::pto_speed);
  static_assert(good < unknown && unknown < late && late < early, "order of codes");
  static_assert(early.status() == Status::stop && early.governing() == Check::pto_speed, "what a code holds");
  static_assert(!good.governing() && good.status() == Status::ok, "no objection, no governing check");
  static_assert(VerdictCode(Status::ok, Check::overlap) == good, "ok has no governing check");
  static_assert(sizeof(VerdictCode) == 2, "two bytes for each pair");
  CHECK(worse(late, unknown) == late);
  CHECK(good.runs());
  CHECK(VerdictCode(Status::caution, Check::overlap).runs());
  CHECK(!unknown.runs());
  CHECK(verdict_code(Assessment{}) == unknown);
  static_assert(check_count <= 255, "a check fits a byte");
}

TEST_CASE("set-ups are every gear, stub, hitch of the kind and driveline") {
  Farm farm = small_farm();
  farm.tractors[0].machine.pto.gears.push_back(gear("1000", 1000, 2200));
  farm.tractors[0].machine.pto.other_stubs.resize(1);
  farm.tractors[0].other_hitches = {drawbar(), Hitch{}};
  farm.tractors[0].other_hitches[1].kind = HitchKind::three_point;
  CHECK(pair_set_ups(farm, 0, 0).size() == 2 * 2 * 2);
  farm.implements[0].hitch = HitchKind::three_point;
  CHECK(pair_set_ups(farm, 0, 0).size() == 2 * 2);
  farm.implements[0].hitch.reset();
  CHECK(pair_set_ups(farm, 0, 0).front().hitch == PairSetUp::none);
  farm.drivelines.clear();
  farm.tractors[1].machine.pto.gears.clear();
  const auto lacking = pair_set_ups(farm, 1, 1);
  REQUIRE(lacking.size() == 1);
  CHECK(lacking.front().gear == PairSetUp::none);
  CHECK(lacking.front().driveline == PairSetUp::none);
  CHECK(assess(case_of(farm, 1, 1, lacking.front())).verdict() != Status::ok);
  CHECK_THROWS_AS(case_of(farm, 2, 0, {}), InputError);
  CHECK_THROWS_AS(case_of(farm, 0, 0, {7, 0, 0, 0}), InputError);
  CHECK_THROWS_AS(case_of(farm, 0, 0, {0, 0, 0, 7}), InputError);
}

TEST_CASE("the other stub takes the place of the one that is out") {
  Farm farm = small_farm();
  farm.tractors[0].machine.pto.other_stubs.resize(1);
  farm.tractors[0].machine.pto.other_stubs[0].interface.type = 2;
  const Case value = case_of(farm, 0, 1, {0, 1, 0, 1});
  CHECK(value.tractor.pto.stub.type == 2.0);
  CHECK(value.tractor.pto.other_stubs[0].interface.type == 1.0);
  CHECK(value.driveline.tractor_yoke.type == 2.0);
  CHECK(value.implement.name == "baler");
}

TEST_CASE("a missing datum never becomes a pass") {
  Farm farm = small_farm();
  CHECK(verdict_matrix(farm, StudyDepth::screening).runs(0, 0));
  farm.implements[0].machine.permitted_power.reset();
  CHECK(verdict_matrix(farm, StudyDepth::screening).at(0, 0) == VerdictCode(Status::not_known, Check::permitted_power));
  farm = small_farm();
  farm.tractors[0].machine.pto.master_shield.reset();
  CHECK(verdict_matrix(farm, StudyDepth::screening).at(0, 0).governing() == Check::master_shield);
  farm = small_farm();
  farm.drivelines.erase(farm.drivelines.begin());
  CHECK(verdict_matrix(farm, StudyDepth::screening).at(0, 0) == VerdictCode(Status::not_known, Check::spline_fit));
  farm = small_farm();
  farm.tractors[0].machine.hitch = Hitch{};
  CHECK(verdict_matrix(farm, StudyDepth::screening).at(0, 0).governing() == Check::drawbar_distance);
}

TEST_CASE("what stands still with one tractor down, with two, and always") {
  VerdictMatrix matrix(3, 4);
  const VerdictCode stop(Status::stop, Check::pto_speed);
  for (std::size_t t = 0; t < 3; ++t) {
    for (std::size_t i = 0; i < 4; ++i) matrix.row(t)[i] = stop;
  }
  matrix.row(1)[0] = {};                                     // one tractor
  matrix.row(0)[1] = matrix.row(2)[1] = {};                  // two
  for (std::size_t t = 0; t < 3; ++t) matrix.row(t)[2] = {}; // three
  const Backup backup = backup_of(matrix);
  CHECK(backup.never == std::vector<std::size_t>{3});
  REQUIRE(backup.singles.size() == 1);
  CHECK(backup.singles[0].tractors == std::vector<std::size_t>{1});
  CHECK(backup.singles[0].implements == std::vector<std::size_t>{0});
  REQUIRE(backup.pairs.size() == 1);
  CHECK(backup.pairs[0].tractors == std::vector<std::size_t>{0, 2});
  CHECK(backup.pairs[0].implements == std::vector<std::size_t>{1});
  CHECK(backup.runners == std::vector<std::size_t>{1, 2, 3, 0});
}

TEST_CASE("the fewest options for full backup, proved") {
  Farm farm = small_farm();
  farm.options = {both_speeds("A gets 1000", "A"), both_speeds("B gets 1000", "B")};
  FarmOption third = both_speeds("both get 1000 with a third tractor", "A");
  third.tractors = {tractor("C", 60)};
  third.tractors[0].machine.pto.gears = {gear("1000", 1000, 2200)};
  third.tractors[0].machine.pto.stub.type = 2;
  third.gears[0].name = "1000 too";
  farm.options.push_back(third);
  const FarmStudy study = study_farm(farm, screening());
  CHECK(study.backup.never == std::vector<std::size_t>{1});
  CHECK(study.plan.exact);
  CHECK(study.plan.options == std::vector<std::size_t>{2}); // one change does what the other two do together
  CHECK(study.plan.at_least == 1);
  CHECK(study.plan.without.empty());
  farm.options.pop_back();
  CHECK(study_farm(farm, screening()).plan.options == std::vector<std::size_t>{0, 1});
  farm.options.pop_back();
  const BackupPlan half = study_farm(farm, screening()).plan;
  CHECK(half.options == std::vector<std::size_t>{0}); // the baler gets its first tractor, and no second one
  CHECK(half.without == std::vector<std::size_t>{1});
}

TEST_CASE("a change is found that helps only together with another one") {
  Farm farm = small_farm();
  farm.tractors.push_back(tractor("C", 60));
  farm.drivelines.pop_back(); // the baler has no driveline that fits
  FarmOption shaft;
  shaft.name = "a driveline for the baler";
  shaft.drivelines = {driveline("baler", 2)};
  farm.options = {both_speeds("A gets 1000", "A"), both_speeds("B gets 1000", "B"), shaft};
  const BackupPlan plan = study_farm(farm, screening()).plan;
  CHECK(plan.exact);
  CHECK(plan.options == std::vector<std::size_t>{0, 1, 2});
  CHECK(plan.without.empty());
}

namespace {

/// Options that do nothing for the backup: economy gears of A.
std::vector<FarmOption> harmless_options(int count) {
  std::vector<FarmOption> options;
  for (int i = 0; i < count; ++i) {
    FarmOption option;
    option.name = "540E, way " + std::to_string(i);
    option.tractor = "A";
    option.gears = {gear(("540E " + std::to_string(i)).c_str(), 540, 1700)};
    options.push_back(option);
  }
  return options;
}

/// The gear alone and the stub alone, which help only together.
std::vector<FarmOption> halves_of_both_speeds(const char* tractor) {
  FarmOption gears = both_speeds("gear", tractor);
  gears.stubs.clear();
  FarmOption stubs = both_speeds("stub", tractor);
  stubs.gears.clear();
  return {gears, stubs};
}

} // namespace

TEST_CASE("many options are looked at in sets of growing size, and two that help only together are found") {
  Farm farm = small_farm();
  farm.options = harmless_options(20);
  for (const FarmOption& half : halves_of_both_speeds("A")) farm.options.push_back(half);
  farm.options.push_back(both_speeds("B gets 1000", "B"));
  const BackupPlan plan = study_farm(farm, screening()).plan;
  CHECK(plan.options == std::vector<std::size_t>{20, 21, 22});
  CHECK(plan.exact); // all sets of up to three were looked at
  CHECK(plan.at_least == 3);
  CHECK(plan.without.empty());
}

TEST_CASE("beyond what can be proved the plan comes with a bound and is not called proved") {
  Farm farm = small_farm();
  farm.options = harmless_options(200);
  FarmOption first = both_speeds("A gets 1000", "A");
  farm.options.push_back(first);
  farm.options.push_back(both_speeds("B gets 1000", "B"));
  BackupPlan plan = study_farm(farm, screening()).plan;
  CHECK(plan.options == std::vector<std::size_t>{200, 201}); // one after the other
  CHECK(plan.exact); // all sets of one were looked at, so that two are the fewest
  // Where only two together help, and there are too many pairs to try, none is found, and that is no proof.
  farm.options.resize(200);
  for (const FarmOption& half : halves_of_both_speeds("A")) farm.options.push_back(half);
  const FarmStudy study = study_farm(farm, screening());
  CHECK(!study.plan.exact);
  CHECK(study.plan.changes() == 0);
  CHECK(study.plan.without == std::vector<std::size_t>{1});
  const std::string page = to_text(study);
  CHECK(page.find("None was found.") != std::string::npos);
  CHECK(page.find("whatever of this") == std::string::npos);
  CHECK(page.find("Proved") == std::string::npos);
}

TEST_CASE("an implement that is sold does not count as backed up") {
  Farm farm = small_farm();
  FarmOption sale;
  sale.name = "sell the baler";
  sale.replaces = "baler";
  farm.options = {sale};
  const BackupPlan plan = study_farm(farm, screening()).plan;
  CHECK(plan.options.empty());
  CHECK(plan.exact);
  CHECK(plan.without == std::vector<std::size_t>{1});
  const Farm sold = with_options(farm, {0});
  CHECK(sold.implements.size() == 1);
  CHECK(sold.drivelines.size() == 1); // the baler's driveline serves nothing any more
  CHECK(farm_contradictions(sold).empty());
}

TEST_CASE("options for the same place exclude each other: this used baler or that one") {
  Farm farm = priced(small_farm());
  for (const char* name : {"used baler", "another used baler"}) {
    FarmOption option;
    option.name = name;
    option.replaces = "baler";
    option.implements = {implement(name, 540, 20)};
    option.drivelines = {driveline(name, 1)};
    option.cost.price = Money{5000, "EUR"};
    farm.options.push_back(option);
  }
  FarmOption shaft;
  shaft.name = "another driveline for the old baler";
  shaft.drivelines = {driveline("baler", 1)};
  shaft.drivelines[0].name = "second driveline";
  farm.options.push_back(shaft);
  REQUIRE(farm_contradictions(farm).empty());
  const FarmStudy study = study_farm(farm, screening());
  CHECK(study.plan.options == std::vector<std::size_t>{0});
  CHECK(study.plan.exact);
  CHECK(study.plan.without.empty());
  CHECK(study.pay_offs.size() == 3);
  CHECK_THROWS_WITH_AS(with_options(farm, {0, 1}), doctest::Contains("\"used baler\" with \"another used baler\""),
                       InputError);
  CHECK_THROWS_AS(with_options(farm, {0, 0}), InputError);
  const Farm after = with_options(farm, {1});
  CHECK(after.options.empty()); // neither the other baler nor a driveline for the old one is left to choose
  CHECK(farm_contradictions(after).empty());
}

TEST_CASE("do I need 1000 as well?") {
  Farm farm = small_farm();
  const auto answer = [&] {
    const FarmStudy study = study_farm(farm, screening());
    for (const SpeedAnswer& one : study.speeds) {
      if (is_nominal_speed(one.speed, rpm(1000))) return one;
    }
    FAIL("no answer for 1000");
    return SpeedAnswer{};
  };
  CHECK(answer().need == SpeedNeed::to_run_at_all);
  CHECK(answer().not_run == std::vector<std::size_t>{1});
  farm.options = {both_speeds("A gets 1000", "A"), both_speeds("B gets 1000", "B")};
  CHECK(answer().options == std::vector<std::size_t>{0, 1});
  farm = with_options(farm, {0});
  CHECK(answer().need == SpeedNeed::for_backup);
  CHECK(answer().tractors == std::vector<std::size_t>{0});
  farm = with_options(farm, {0});
  CHECK(answer().need == SpeedNeed::covered);
  farm.implements.pop_back();
  farm.drivelines.pop_back();
  CHECK(answer().need == SpeedNeed::not_needed);
  farm.implements[0].machine.power_need = kilowatts(70); // beyond every recommendation for six splines at 540
  CHECK(answer().overloaded == std::vector<std::size_t>{0});
}

TEST_CASE("owning and repair of an option follow the worked examples of the cost model") {
  Farm farm = priced(small_farm());
  FarmOption option;
  option.name = "another tractor";
  option.tractors = {tractor("C", 60)};
  option.tractors[0].hours = hours(400);
  option.cost.price = Money{130000, "EUR"};
  option.cost.list_price = Money{150000, "EUR"};
  option.cost.value_at_end = Money{34500, "EUR"};
  option.cost.repair_class = "tractor, two-wheel drive and stationary";
  farm.options = {option};
  PayOff result = study_farm(farm, screening()).pay_offs.at(0);
  REQUIRE(result.balance);
  // Iowa State University Extension PM 710, newer edition: 13 917 a year for capital (inputs published, computed to
  // full precision), and 1 % of the mean value for taxes, insurance and housing, 822.5.
  CHECK(-result.balance->ownership.amount == doctest::Approx(13917.0 + 822.5).epsilon(5e-5));
  // The same bulletin, from memory: 25 % of list after 6000 h; 25.2 % by the formula, 37 800 over 15 years.
  CHECK(-result.balance->repair.amount == doctest::Approx(37800.0 / 15.0).epsilon(1e-9));
  CHECK(result.pays == Pays::no);
  CHECK(!result.payback);
  // Older edition of the bulletin: 93 500 paid, 25 300 at the end, 5 %: 7836 a year (computed from published inputs).
  farm.interest = 0.05;
  farm.options[0].cost.price = Money{93500, "EUR"};
  farm.options[0].cost.value_at_end = Money{25300, "EUR"};
  result = study_farm(farm, screening()).pay_offs.at(0);
  CHECK(-result.balance->ownership.amount == doctest::Approx(7836.0 + 594.0).epsilon(1e-4));
  // By the class of machines: 180 hp at the PTO, 15 years, 400 h: 22.84 % of list (the bulletin prints 23 %).
  farm.options[0].cost.value_at_end.reset();
  farm.options[0].cost.value_class = "tractor above 112 kW";
  const double by_class = study_farm(farm, screening()).pay_offs.at(0).balance->ownership.amount;
  const Money end{0.22838 * 150000, "EUR"};
  CHECK(-by_class == doctest::Approx(ownership_cost({93500, "EUR"}, end, 0.05, 15).total.amount).epsilon(1e-4));
}

TEST_CASE("repairs of a bought tractor are counted once, at the option or by its hours of work") {
  Farm farm = priced(small_farm());
  FarmOption option;
  option.name = "another tractor";
  option.tractors = {tractor("C", 60)};
  option.tractors[0].hours = hours(400);
  option.cost.price = Money{50000, "EUR"};
  option.cost.list_price = Money{150000, "EUR"};
  option.cost.repair_class = "tractor, two-wheel drive and stationary";
  option.tractors[0].cost.repair_class = option.cost.repair_class;
  option.tractors[0].cost.list_price = Money{98000, "EUR"};
  farm.options = {option};
  const std::vector<CaseProblem> problems = farm_contradictions(farm);
  REQUIRE(problems.size() == 2);
  CHECK(problems[0].path == "options[0].repair_class");
  CHECK(problems[1].path == "options[0].list_price"); // 150 000 here, 98 000 there
  CHECK_THROWS_AS(study_farm(farm, screening()), CaseError);
  farm.options[0].cost.repair_class.reset();
  farm.options[0].tractors[0].cost.list_price = option.cost.list_price;
  CHECK(farm_contradictions(farm).empty());
  const PayOff result = study_farm(farm, screening()).pay_offs.at(0);
  CHECK(result.balance->repair.amount == 0.0);
  const auto says = [&](const char* remark) {
    return std::any_of(result.remarks.begin(), result.remarks.end(),
                       [&](const char* id) { return std::string(id) == remark; });
  };
  CHECK(!says("farm.remark.no_repair"));
}

TEST_CASE("nothing is worth more at the end than was paid, and other hours of work are told") {
  Farm farm = priced(small_farm());
  farm.years = 8;
  FarmOption option;
  option.name = "a cheap tractor";
  option.tractors = {tractor("C", 60)};
  option.tractors[0].hours = hours(200);
  option.cost.price = Money{9000, "EUR"};
  option.cost.list_price = Money{70000, "EUR"};
  option.cost.age = 14.0;
  option.cost.value_class = "tractor 60 to 112 kW";
  FarmOption baler;
  baler.name = "used baler";
  baler.replaces = "baler";
  baler.implements = {implement("baler for 540", 540, 30)};
  baler.implements[0].hours = hours(40); // the old one: 100
  baler.drivelines = {driveline("baler for 540", 1)};
  baler.cost.price = Money{5000, "EUR"};
  farm.options = {option, baler};
  const FarmStudy study = study_farm(farm, screening());
  // Bought and sold at the same price: interest on it, and 1 % for taxes, insurance and housing, stay.
  const PayOff& cheap = study.pay_offs.at(0);
  CHECK(cheap.balance->ownership.amount == doctest::Approx(-(0.08 * 9000 + 0.01 * 9000)).epsilon(1e-9));
  const auto says = [](const PayOff& pay_off, const std::string& remark) {
    return std::any_of(pay_off.remarks.begin(), pay_off.remarks.end(), [&](const char* id) { return remark == id; });
  };
  CHECK(says(cheap, "farm.remark.value_held"));
  CHECK(!says(cheap, "farm.remark.other_hours"));
  CHECK(says(study.pay_offs.at(1), "farm.remark.other_hours"));
  farm.options[1].implements[0].hours = hours(100);
  CHECK(!says(study_farm(farm, screening()).pay_offs.at(1), "farm.remark.other_hours"));
}

TEST_CASE("an economy gear saves what the fuel equation says") {
  Farm farm = priced(small_farm());
  FarmOption option;
  option.name = "540E on B";
  option.tractor = "B";
  option.gears = {gear("540E", 540, 1700)};
  option.cost.price = Money{500, "EUR"};
  farm.implements.pop_back();
  farm.drivelines.pop_back();
  farm.tractors.erase(farm.tractors.begin());
  farm.options = {option};
  const PayOff result = study_farm(farm, screening()).pay_offs.at(0);
  REQUIRE(result.balance);
  const EconomySaving saving = economy_saving(kilowatts(55), kilowatts(20), rpm(2200), rpm(1700), rpm(2200)).value;
  const double litres = in(saving.plain - saving.economy, unit::litre_per_hour) * 100.0;
  CHECK(result.balance->running.amount == doctest::Approx(litres * 1.2).epsilon(1e-12));
  CHECK(result.balance->hire.amount == 0.0);
  CHECK(result.gained.empty()); // the pair worked before
  // The table asks again with the figures changed by a fifth.
  const double net = result.balance->net.amount;
  for (const Sensitivity& entry : result.sensitivity) {
    const double low = entry.net_low.amount - net;
    const double high = entry.net_high.amount - net;
    if (entry.figure == Sensitivity::Figure::fuel_price || entry.figure == Sensitivity::Figure::hours) {
      CHECK(high == doctest::Approx(0.2 * litres * 1.2));
      CHECK(low == doctest::Approx(-0.2 * litres * 1.2));
    } else {
      CHECK(high < 0.0);
      CHECK(low > 0.0);
    }
  }
  CHECK(result.sensitivity.size() == 4);
}

TEST_CASE("hours that nobody of the farm can work are hired, and a backup is worth what it saves of that") {
  Farm farm = priced(small_farm());
  farm.options = {both_speeds("A gets 1000", "A"), both_speeds("B gets 1000", "B")};
  for (FarmOption& option : farm.options) option.cost.price = Money{1000, "EUR"};
  farm.implements[1].hire_price = Money{100, "EUR"};
  farm.tractors[0].share_down = 0.1;
  farm.tractors[1].share_down = 0.2;
  const FarmStudy study = study_farm(farm, screening());
  CHECK(study.pay_offs[0].balance->hire.amount == doctest::Approx(100 * 100 * 0.9));
  CHECK(study.pay_offs[1].balance->hire.amount == doctest::Approx(100 * 100 * 0.8));
  CHECK(study.pay_offs[0].pays == Pays::yes);
  REQUIRE(study.pay_offs[0].gained.size() == 1);
  CHECK(study.pay_offs[0].gained[0].tractor == "A");
  CHECK(study.pay_offs[0].gained[0].implement == "baler");
  // With A equipped, B as well saves only what is left while A is down.
  Farm equipped = with_options(farm, {0});
  CHECK(study_farm(equipped, screening()).pay_offs.at(0).balance->hire.amount ==
        doctest::Approx(100 * 100 * 0.1 * 0.8));
}

TEST_CASE("without the figures of money nothing is said of paying") {
  Farm farm = small_farm();
  farm.options = {both_speeds("A gets 1000", "A")};
  PayOff result = study_farm(farm, screening()).pay_offs.at(0);
  CHECK(result.pays == Pays::not_known);
  CHECK(result.missing == std::vector<std::string>{"interest", "years", "fuel_price", "options[0].price"});
  CHECK(result.gained.size() == 1);
  farm = priced(farm);
  farm.options[0].cost.price = Money{1000, "EUR"};
  farm.implements[0].hours.reset();
  CHECK(study_farm(farm, screening()).pay_offs.at(0).missing == std::vector<std::string>{"implements[0].hours"});
  // Hours that become possible without a hire price could turn a no into a yes: not known.
  farm.implements[0].hours = hours(50);
  result = study_farm(farm, screening()).pay_offs.at(0);
  CHECK(result.hours_not_priced == doctest::Approx(100.0));
  CHECK(result.pays == Pays::not_known);
}

TEST_CASE("a farm built in code is held to the same contradictions") {
  Farm farm = small_farm();
  farm.tractors[1].machine.name = "A";
  CHECK_THROWS_WITH_AS(study_farm(farm, screening()), doctest::Contains("no other tractor"), CaseError);
  farm = small_farm();
  farm.drivelines[0].serves = {"mowr"};
  CHECK_THROWS_WITH_AS(study_farm(farm), doctest::Contains("nearest: \"mower\""), CaseError);
  farm = small_farm();
  farm.tractors[0].cost.price = Money{-1.0, "EUR"};
  CHECK_THROWS_WITH_AS(study_farm(farm), doctest::Contains("expected a price of at least nothing"), CaseError);
  CHECK_THROWS_WITH_AS(with_options(small_farm(), {0}), doctest::Contains("with_options: options = 0"), InputError);
  farm = small_farm();
  FarmOption of_nobody;
  of_nobody.name = "a gear for a tractor that was sold";
  of_nobody.tractor = "sold";
  farm.options.push_back(of_nobody);
  CHECK_THROWS_WITH_AS(with_options(farm, {0}), doctest::Contains("with_options: tractor = \"sold\""), InputError);
  const Farm base = small_farm();
  const FarmStudy study = study_farm(base.tractors, base.implements, base.drivelines, {}, screening());
  CHECK(study.verdicts.runs(1, 0));
  CHECK(!study.verdicts.runs(1, 1));
}

TEST_CASE("the example farm: a certified study with changeover, plan and money") {
  const Farm& farm = example_farm();
  const FarmStudy study = study_farm(farm);
  const VerdictMatrix screened = verdict_matrix(farm, StudyDepth::screening);
  for (std::size_t t = 0; t < farm.tractors.size(); ++t) {
    for (std::size_t i = 0; i < farm.implements.size(); ++i) {
      CHECK(!(study.verdicts.at(t, i) < screened.at(t, i)));
      CHECK(verdict_code(study_pair(farm, t, i).assessment) == study.verdicts.at(t, i));
    }
  }
  REQUIRE(study.backup.singles.size() == 1);
  CHECK(study.backup.singles[0].tractors == std::vector<std::size_t>{1});
  CHECK(study.backup.singles[0].implements == std::vector<std::size_t>{5, 6});
  CHECK(study.plan.options == std::vector<std::size_t>{0});
  CHECK(study.plan.exact);
  // Tractor B to 1000 for wagon and square baler, and the way back, apart for what is trailed and what is mounted.
  REQUIRE(study.changeovers.size() == 3);
  std::vector<std::size_t> back;
  for (const FarmChangeover& entry : study.changeovers) {
    const Changeover& steps = entry.changeover;
    CHECK(entry.tractor == 1);
    CHECK(steps.possible);
    const bool to_1000 = is_nominal_speed(steps.to.speed, rpm(1000));
    CHECK(is_nominal_speed(steps.from.speed, to_1000 ? rpm(540) : rpm(1000)));
    if (to_1000) CHECK(entry.implements == std::vector<std::size_t>{5, 6});
    if (!to_1000) back.insert(back.end(), entry.implements.begin(), entry.implements.end());
    for (const std::size_t i : entry.implements) CHECK(farm.implements[i].hitch == steps.hitch);
  }
  std::sort(back.begin(), back.end());
  CHECK(back == std::vector<std::size_t>{0, 2, 3, 4});
  CHECK(study.pay_offs[0].pays == Pays::yes);
  CHECK(study.pay_offs[1].pays == Pays::no);
  CHECK(study_pair(with_options(farm, {0}), 0, 5).assessment.verdict() == Status::caution);
}

namespace {

Case case_file(const char* name) {
  std::ifstream file(std::string(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases/") + name);
  std::stringstream text;
  text << file.rdbuf();
  return read_case(text.str());
}

FarmTractor tractor_of(const Case& value, const char* name, Length pin) {
  FarmTractor tractor;
  tractor.machine = value.tractor;
  tractor.machine.name = name;
  tractor.machine.hitch.distance->value = pin;
  return tractor;
}

/// The cutter of the fitting case, with its one driveline, and tractors that differ by their pin.
Farm farm_of(const Case& value, const std::vector<Length>& pins) {
  Farm farm;
  const char* names[] = {"A", "B", "C"};
  for (std::size_t i = 0; i < pins.size(); ++i) farm.tractors.push_back(tractor_of(value, names[i], pins[i]));
  FarmImplement cutter;
  cutter.machine = value.implement;
  cutter.machine.name = "cutter";
  cutter.hitch = HitchKind::drawbar;
  cutter.range = value.range;
  cutter.limits = value.limits;
  farm.implements = {cutter};
  farm.drivelines = {{"driveline of cutter", value.driveline, value.overload, {"cutter"}}};
  return farm;
}

/// A farm after its plan, by hand: the shared parts of the remedy's changed case into the farm, then the options.
Farm carried_out(const Farm& farm, const FarmStudy& study) {
  Farm changed = farm;
  for (const PlannedRemedy& step : study.plan.remedies) {
    for (const PairRemedies& entry : study.remedies) {
      if (entry.pair.tractor != step.tractor || entry.pair.implement != step.implement) continue;
      const Case& after = entry.remedies.sets.at(step.set).changed;
      const std::size_t driveline = study.detail(step.tractor, step.implement)->set_up.driveline;
      changed.implements[step.implement].machine = after.implement;
      changed.drivelines[driveline].driveline = after.driveline;
      changed.drivelines[driveline].overload = after.overload;
    }
  }
  return with_options(changed, study.plan.options);
}

FarmStudySettings with_remedies(int sets) {
  FarmStudySettings settings;
  settings.remedies = true;
  settings.remedy_options.most_sets = sets;
  return settings;
}

} // namespace

TEST_CASE("a remedy that takes the shared driveline away from the tractor that uses it is no backup") {
  // As measured on B, whose pin stands 150 mm further back, the driveline bottoms on A; cut for A it comes apart on B.
  Case value = case_file("trailed-cutter-that-fits.json");
  value.driveline.closed_length->value = millimetres(690);
  value.driveline.closed_overlap->value = millimetres(400);
  for (Stated<StateRange>* range : {&value.range.turning, &value.range.transport}) {
    (*range)->yaw = Interval<Angle>{degrees(-15), degrees(15)};
  }
  value.limits.angle_difference = degrees(8); // so that the pin set further back makes nothing worse
  OverloadDevice clutch;
  clutch.kind = DeviceKind::friction_clutch;
  clutch.setting = newton_metres(1290);
  clutch.scatter = 0.15;
  clutch.place = DevicePlace::implement_end;
  value.overload = Fitted<OverloadDevice>{true, clutch};
  Farm farm = farm_of(value, {millimetres(400), millimetres(550)});
  farm.prices.cut_tubes = Money{5, "EUR"}; // so that the cut comes first
  farm.prices.move_drawbar = Money{10, "EUR"};
  const FarmStudy study = study_farm(farm, with_remedies(1));
  REQUIRE(study.backup.runners == std::vector<std::size_t>{1});
  REQUIRE(study.verdicts.runs(1, 0));
  REQUIRE(study.remedies.size() == 1);
  REQUIRE(study.remedies[0].remedies.sets.front().left.empty()); // the pair itself is healed
  REQUIRE(study.remedies[0].spoils.size() == 1);
  CHECK(study.remedies[0].spoils[0].tractor == 1);
  CHECK(study.plan.remedies.empty());
  CHECK(study.plan.without == std::vector<std::size_t>{0});
  CHECK(to_markdown(study).find("would take away what works today: B with cutter") != std::string::npos);
  // Among more sets is the pin of A set further back for this job, which takes nothing away from B.
  const FarmStudy wider = study_farm(farm, with_remedies(8));
  REQUIRE(wider.plan.remedies.size() == 1);
  CHECK(wider.plan.remedies[0].set > 0);
  CHECK(wider.plan.lost.empty());
  CHECK(wider.plan.without.empty());
  CHECK(wider.plan.exact);
  CHECK(to_markdown(wider).find("Bring A to run cutter: Set the hitch pin 550 mm") != std::string::npos);
}

TEST_CASE("one change to what two tractors share may bring both") {
  Case value = case_file("trailed-cutter-that-fits.json");
  value.driveline.guard = GuardState::damaged;
  const Farm farm = farm_of(value, {millimetres(400), millimetres(410), millimetres(405)});
  const FarmStudy study = study_farm(farm, with_remedies(2));
  REQUIRE(study.backup.runners == std::vector<std::size_t>{0});
  CHECK(study.plan.exact);
  CHECK(study.plan.changes() == 1);
  CHECK(study.plan.without.empty());
  CHECK(study_farm(carried_out(farm, study)).backup.runners[0] >= 2);
}
