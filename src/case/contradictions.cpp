#include "case/contradictions.hpp"

#include <fieldshaft/materials.hpp>
#include <fieldshaft/power.hpp>

#include <algorithm>
#include <cmath>
#include <set>

namespace fieldshaft {
inline namespace v0 {
namespace case_document {
namespace {

using Problems = std::vector<CaseProblem>;

std::string text_of(Amount amount) { return to_string(amount, UnitStyle::metric); }

/// Notes a problem unless small < large; says nothing while one of the two is unstated.
template <class T, class Value>
void expect_below(Problems& problems, const char* path, const Stated<T>& small, const Stated<T>& large,
                  const char* large_path, Value value_of) {
  if (!small || !large || value_of(*small) < value_of(*large)) return;
  problems.push_back({path, text_of(amount_of(value_of(*small))),
                      std::string("less than ") + large_path + " (" + text_of(amount_of(value_of(*large))) + ")"});
}

void check_interface(Problems& problems, const std::string& path, const Interface& interface) {
  const auto whole = [](double n) { return n == std::floor(n); };
  if (interface.type && !whole(*interface.type)) {
    problems.push_back({path + ".type", check::text_of(*interface.type, ""), "a whole number from 0 to 4"});
  }
  if (interface.spline_count && (!whole(*interface.spline_count) || *interface.spline_count > 200.0)) {
    problems.push_back(
        {path + ".spline_count", check::text_of(*interface.spline_count, ""), "a whole number up to 200"});
  }
  if (interface.type && (interface.spline_count || interface.diameter)) {
    problems.push_back({path, "a type and a count or diameter", "either the type, or what was counted and measured"});
  }
}

/// The conditions in which the catalogue holds a steel; for an unknown name, the names it holds.
std::string conditions_of(const std::string& name) {
  std::string conditions;
  std::set<std::string> names;
  for (const Material& material : materials()) {
    names.insert(material.name);
    if (name == material.name) conditions += (conditions.empty() ? "" : "; ") + (name + ", " + material.condition);
  }
  if (!conditions.empty()) return conditions;
  std::string all = "no \"" + name + "\"; it holds";
  for (const std::string& known : names) all += " " + known;
  return all;
}

void check_steel(Problems& problems, const std::string& path, const SteelChoice& steel) {
  const bool own = steel.yield || steel.ultimate;
  if (steel.name && own) {
    problems.push_back(
        {path, "a name and its own strengths", "either a steel of the catalogue, or yield and ultimate"});
  }
  if (steel.name && find_material(*steel.name, steel.condition.value_or("")) == nullptr) {
    problems.push_back({path, "\"" + *steel.name + "\", \"" + steel.condition.value_or("") + "\"",
                        "a steel of the catalogue with its condition: " + conditions_of(*steel.name)});
  }
  if (steel.condition && !steel.name) {
    problems.push_back(
        {path + ".condition", "\"" + *steel.condition + "\" without a name", "a name of the catalogue with it"});
  }
  if (steel.yield && steel.ultimate && *steel.yield > *steel.ultimate) {
    problems.push_back({path + ".yield", text_of(amount_of(*steel.yield)),
                        "at most " + path + ".ultimate (" + text_of(amount_of(*steel.ultimate)) + ")"});
  }
}

void check_other_stubs(Problems& problems, const TractorPto& pto) {
  for (std::size_t i = 0; i < pto.other_stubs.size(); ++i) {
    const std::string path = "tractor.pto.other_stubs[" + std::to_string(i) + "]";
    check_interface(problems, path, pto.other_stubs[i].interface);
    check_steel(problems, path + ".steel", pto.other_stubs[i].steel);
  }
  const bool only_one = pto.arrangement == StubArrangement::fixed || pto.arrangement == StubArrangement::lever_only;
  if (!only_one || pto.other_stubs.empty()) return;
  problems.push_back({"tractor.pto.other_stubs", "further stubs on a tractor whose stub stays",
                      "an arrangement in which the stub is changed"});
}

/// Nothing converts one currency into another.
void check_prices(Problems& problems, const Prices& prices, const SeasonOfWork& season) {
  const std::pair<const char*, const Stated<Money>&> entries[] = {{"change_over", prices.change_over},
                                                                  {"move_drawbar", prices.move_drawbar},
                                                                  {"set_device", prices.set_device},
                                                                  {"fit_device", prices.fit_device},
                                                                  {"cut_tubes", prices.cut_tubes},
                                                                  {"longer_driveline", prices.longer_driveline},
                                                                  {"stronger_tube", prices.stronger_tube},
                                                                  {"stronger_joints", prices.stronger_joints},
                                                                  {"wide_angle_joint", prices.wide_angle_joint},
                                                                  {"change_yoke", prices.change_yoke},
                                                                  {"align_yokes", prices.align_yokes},
                                                                  {"place_of_input", prices.place_of_input},
                                                                  {"guard", prices.guard},
                                                                  {"rotor_gear", prices.rotor_gear},
                                                                  {"implement_speed", prices.implement_speed},
                                                                  {"less_power", prices.less_power}};
  const Stated<Money>* first = season.fuel_price ? &season.fuel_price : nullptr;
  for (const auto& [name, price] : entries) {
    if (!price) continue;
    if (first == nullptr) first = &price;
    if (price->currency == (*first)->currency) continue;
    problems.push_back({std::string("prices.") + name, std::string(price->currency.code()),
                        std::string((*first)->currency.code()) + ", the currency of the other prices"});
  }
}

void check_gears(Problems& problems, const TractorPto& pto) {
  for (std::size_t i = 0; i < pto.gears.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      if (pto.gears[i].name != pto.gears[j].name) continue;
      problems.push_back({"tractor.pto.gears[" + std::to_string(i) + "].name", "\"" + pto.gears[i].name + "\"",
                          "a name that no other gear has"});
    }
  }
  const bool gears_unreadable = pto.gears.empty() && !problems.empty();
  if (!pto.selected || gears_unreadable) return;
  const bool known =
      std::any_of(pto.gears.begin(), pto.gears.end(), [&](const PtoGear& g) { return g.name == *pto.selected; });
  if (known) return;
  std::string names;
  for (const PtoGear& gear : pto.gears) names += (names.empty() ? "\"" : ", \"") + gear.name + "\"";
  problems.push_back({"tractor.pto.selected", "\"" + *pto.selected + "\"",
                      names.empty() ? "a gear of tractor.pto.gears, which lists none" : "one of " + names});
}

/// A name such as 540 or 540E states a PTO speed, and that the engine turns slower than in the plain gear.
void check_label(Problems& problems, const std::string& path, const std::vector<PtoGear>& gears, const PtoGear& gear) {
  const detail::PtoLabel label = detail::pto_label(gear.name);
  if (label.rpm > 0.0 && gear.pto_speed && !is_nominal_speed(*gear.pto_speed, rpm(label.rpm))) {
    problems.push_back({path + ".pto_speed", text_of(amount_of(*gear.pto_speed)),
                        "the speed that the name \"" + gear.name + "\" states, within 2.5 %"});
  }
  if (!label.economy || !(label.rpm > 0.0) || !gear.engine_speed) return;
  for (const PtoGear& plain : gears) {
    const detail::PtoLabel other = detail::pto_label(plain.name);
    if (other.economy || label.rpm != other.rpm || !plain.engine_speed) continue;
    if (*gear.engine_speed < *plain.engine_speed) continue;
    problems.push_back(
        {path + ".engine_speed", text_of(amount_of(*gear.engine_speed)),
         "for an economy gear, less than in \"" + plain.name + "\" (" + text_of(amount_of(*plain.engine_speed)) + ")"});
  }
}

/// Speeds that cannot belong to one machine.
void check_speeds(Problems& problems, const Case& value) {
  const TractorPto& pto = value.tractor.pto;
  for (std::size_t i = 0; i < pto.gears.size(); ++i) {
    const PtoGear& gear = pto.gears[i];
    const std::string path = "tractor.pto.gears[" + std::to_string(i) + "]";
    check_label(problems, path, pto.gears, gear);
    expect_below(problems, (path + ".engine_speed").c_str(), gear.engine_speed, value.tractor.engine.high_idle,
                 "tractor.engine.high_idle", [](AngularSpeed w) { return w; });
    const bool other_speed =
        gear.pto_speed && pto.gears[0].pto_speed && !is_nominal_speed(*gear.pto_speed, *pto.gears[0].pto_speed);
    if (pto.arrangement == StubArrangement::fixed && other_speed) {
      problems.push_back({"tractor.pto.arrangement", "\"fixed\" with gears of different PTO speeds",
                          "\"lever only\" or another arrangement that has more than one speed"});
      break;
    }
  }
  const auto& rotor = value.implement.rotor;
  if (!rotor || !rotor->present || !rotor->item.input_speed || !value.implement.input_speed) return;
  if (is_nominal_speed(*rotor->item.input_speed, *value.implement.input_speed)) return;
  problems.push_back({"implement.rotor.input_speed", text_of(amount_of(*rotor->item.input_speed)),
                      "implement.input_speed (" + text_of(amount_of(*value.implement.input_speed)) + ")"});
}

std::string point_path(std::size_t i) { return "tractor.engine.curve[" + std::to_string(i) + "]"; }

/// Whether something at or below a path was refused already.
bool told(const Problems& problems, const std::string& path) {
  return std::any_of(problems.begin(), problems.end(),
                     [&](const CaseProblem& problem) { return problem.path.rfind(path, 0) == 0; });
}

/// Points that are no function of the speed, or that state nothing or too much.
void check_curve_points(Problems& problems, const std::vector<CurvePoint>& curve) {
  for (std::size_t i = 0; i < curve.size(); ++i) {
    if (told(problems, point_path(i))) continue;
    const CurvePoint& point = curve[i];
    if (!point.speed) problems.push_back({point_path(i) + ".speed", "missing", "the engine speed of the point"});
    if (point.torque.has_value() == point.power.has_value()) {
      problems.push_back(
          {point_path(i), point.torque ? "a torque and a power" : "neither torque nor power", "one of the two"});
    }
    if (i == 0 || !point.speed || !curve[i - 1].speed || *point.speed > *curve[i - 1].speed) continue;
    problems.push_back({point_path(i) + ".speed", text_of(amount_of(*point.speed)),
                        "more than " + point_path(i - 1) + ".speed (" + text_of(amount_of(*curve[i - 1].speed)) + ")"});
  }
}

Power power_of(const CurvePoint& point) {
  return point.power ? *point.power : shaft_power(*point.torque, *point.speed);
}

/// The point at rated speed: the last one where that is not stated; past the end where none stands there.
std::size_t rated_point(const Engine& engine) {
  if (!engine.rated_speed) return engine.curve.size() - 1;
  const auto at_rated = [&](const CurvePoint& point) { return *point.speed == *engine.rated_speed; };
  const auto found = std::find_if(engine.curve.begin(), engine.curve.end(), at_rated);
  return static_cast<std::size_t>(found - engine.curve.begin());
}

/// Above rated speed the torque falls: one load, one speed.
void check_governor(Problems& problems, const std::vector<CurvePoint>& curve, std::size_t rated) {
  const auto torque = [&](std::size_t i) { return shaft_torque(power_of(curve[i]), *curve[i].speed); };
  for (std::size_t i = rated + 1; i < curve.size(); ++i) {
    if (torque(i) < torque(i - 1)) continue;
    problems.push_back({point_path(i), text_of(amount_of(torque(i))),
                        "on the governor line, less torque than " + point_path(i - 1) + " (" +
                            text_of(amount_of(torque(i - 1))) + ")"});
  }
}

/// Catalogues round powers and torques: within this share of each other they agree. Common practice, no source.
constexpr double curve_band = 0.03;

void check_curve(Problems& problems, const Tractor& tractor) {
  const Engine& engine = tractor.engine;
  if (engine.curve.empty()) return;
  const std::size_t before = problems.size();
  check_curve_points(problems, engine.curve);
  if (engine.torque_rise) {
    problems.push_back({"tractor.engine.torque_rise", text_of({*engine.torque_rise, Kind::number}),
                        "nothing beside tractor.engine.curve, which gives it"});
  }
  if (problems.size() != before || told(problems, "tractor.engine.curve")) return;
  expect_below(problems, (point_path(engine.curve.size() - 1) + ".speed").c_str(), engine.curve.back().speed,
               engine.high_idle, "tractor.engine.high_idle", [](AngularSpeed w) { return w; });
  const std::size_t rated = rated_point(engine);
  if (rated == engine.curve.size()) {
    problems.push_back({"tractor.engine.rated_speed", text_of(amount_of(*engine.rated_speed)),
                        "the speed of a point of tractor.engine.curve, where the governor line begins"});
    return;
  }
  check_governor(problems, engine.curve, rated);
  const Power power = power_of(engine.curve[rated]);
  if (tractor.power && std::abs(*tractor.power / power - 1.0) > curve_band) {
    problems.push_back(
        {"tractor.power", text_of(amount_of(*tractor.power)),
         "the power of tractor.engine.curve at rated speed (" + text_of(amount_of(power)) + "), within 3 %"});
  }
}

/// A row that the table has, with what its need goes with. A figure of the manual or a measurement comes before it.
void check_machine(Problems& problems, const Implement& implement) {
  if (implement.note_applies && !implement.machine) {
    problems.push_back({"implement.note_applies", "stands without implement.machine",
                        "a row of the published table whose note it is"});
  }
  if (!implement.machine) return;
  const Machine* machine = find_machine(*implement.machine);
  if (machine == nullptr) {
    std::string nearest;
    for (const std::string_view name : nearest_machines(*implement.machine)) {
      nearest += (nearest.empty() ? "\"" : ", \"") + std::string(name) + "\"";
    }
    problems.push_back(
        {"implement.machine", "\"" + *implement.machine + "\"", "a row of the published table; nearest: " + nearest});
    return;
  }
  if (implement.note_applies && !(note_factor(*machine) > 1.0)) {
    problems.push_back({"implement.note_applies", *implement.note_applies ? "yes" : "no",
                        "nothing: no note multiplies the need of \"" + std::string(machine->name) + "\""});
  }
  const bool from_wet = implement.feed_basis == FeedBasis::wet && machine->basis == FeedBasis::dry;
  if (!detail::uses_feed(*machine) || !implement.feed_basis || *implement.feed_basis == machine->basis || from_wet)
    return;
  problems.push_back({"implement.feed_basis", feed_basis_name(*implement.feed_basis),
                      std::string(feed_basis_name(machine->basis)) + ", which the row \"" + std::string(machine->name) +
                          "\" goes with"});
}

void check_peak(Problems& problems, const Implement& implement) {
  if (!implement.peak_factor || !implement.torque_swing) return;
  if (*implement.peak_factor >= 1.0 + *implement.torque_swing) return;
  problems.push_back(
      {"implement.peak_factor", check::text_of(*implement.peak_factor, ""),
       "at least one plus implement.torque_swing (" + check::text_of(1.0 + *implement.torque_swing, "") + ")"});
}

void check_tube(Problems& problems, const std::string& path, const TubeProfile& tube) {
  const auto same = [](Length l) { return l; };
  expect_below(problems, (path + ".inner_diameter").c_str(), tube.inner_diameter, tube.outer_diameter,
               (path + ".outer_diameter").c_str(), same);
  const bool round = tube.outer_diameter || tube.inner_diameter;
  const bool profile = tube.enclosed_area || tube.perimeter || tube.wall || tube.second_moment;
  if (round && profile) {
    problems.push_back(
        {path, "diameters and a profile", "either diameters, or enclosed_area, perimeter and wall of a profile"});
  }
  if (tube.enclosed_area && tube.perimeter) {
    // Of all closed curves of a given length the circle encloses the largest area.
    const double length = tube.perimeter->value();
    if (tube.enclosed_area->value() > length * length / (4.0 * pi) * (1.0 + 1e-9)) {
      problems.push_back({path + ".enclosed_area", text_of(amount_of(*tube.enclosed_area)),
                          "no more than a circle of that perimeter encloses"});
    }
  }
}

/// A stop that lets a slide go further than its overlap is none; no member overlaps by more than the whole.
void check_slide(Problems& problems, const std::string& path, const Stated<MeasuredLength>& overlap,
                 const Stated<Length>& travel, const Stated<MeasuredLength>& closed) {
  expect_below(problems, (path + ".closed_overlap").c_str(), overlap, closed, "driveline.closed_length",
               [](MeasuredLength l) { return l.value; });
  if (!travel || !overlap || *travel < overlap->value) return;
  problems.push_back({path + ".greatest_travel", text_of(amount_of(*travel)),
                      "less than " + path + ".closed_overlap (" + text_of(amount_of(overlap->value)) + ")"});
}

void check_telescope(Problems& problems, const DrivelineCase& driveline) {
  check_slide(problems, "driveline", driveline.closed_overlap, driveline.greatest_travel, driveline.closed_length);
  if (!driveline.middle_member) return;
  const MiddleMember& middle = *driveline.middle_member;
  check_slide(problems, "driveline.middle_member", middle.closed_overlap, middle.greatest_travel,
              driveline.closed_length);
  check_tube(problems, "driveline.middle_member.tube", middle.tube);
}

/// Shares of the torque beyond the whole, or that leave some of it over once all are stated.
void check_shares(Problems& problems, const std::vector<BranchCase>& branches) {
  constexpr double rounding = 1e-6;
  double sum = 0.0;
  bool all = !branches.empty();
  for (const BranchCase& branch : branches) {
    sum += branch.torque_share.value_or(0.0);
    all = all && branch.torque_share;
  }
  if (sum <= 1.0 + rounding && (!all || sum >= 1.0 - rounding)) return;
  problems.push_back({"implement.branches", "torque shares that add up to " + check::text_of(sum, ""),
                      "torque shares that add up to 1"});
}

void check_branches(Problems& problems, const std::vector<BranchCase>& branches) {
  check_shares(problems, branches);
  for (std::size_t i = 0; i < branches.size(); ++i) {
    const std::string path = "implement.branches[" + std::to_string(i) + "]";
    const BranchCase& branch = branches[i];
    for (std::size_t j = 0; j < i; ++j) {
      if (branches[j].name != branch.name) continue;
      problems.push_back({path + ".name", "\"" + branch.name + "\"", "a name that no other branch has"});
    }
    expect_below(problems, (path + ".closed_overlap").c_str(), branch.closed_overlap, branch.closed_length,
                 (path + ".closed_length").c_str(), [](MeasuredLength l) { return l.value; });
    if (branch.coupled_at_rest == false && branch.fold_at_rest) {
      problems.push_back({path + ".fold_at_rest", "stands beside coupled_at_rest \"no\"",
                          "either how far the part folds with its driveline on, or that it is taken off before"});
    }
    check_steel(problems, path + ".tube_steel", branch.tube_steel);
    check_tube(problems, path + ".tube", branch.tube);
  }
}

void check_positions(Problems& problems, const Stated<double>& positions) {
  if (!positions || (*positions == std::floor(*positions) && *positions <= 1000.0)) return;
  problems.push_back({"driveline.telescope_positions", check::text_of(*positions, ""), "a whole number up to 1000"});
}

void check_duties(Problems& problems, const std::vector<DutyPart>& duties) {
  double total = 0.0;
  for (const DutyPart& part : duties) {
    if (!part.share) return; // an unfinished list is no contradiction
    total += *part.share;
  }
  // Shares written with four decimals may miss 1 by this much.
  if (duties.empty() || std::abs(total - 1.0) <= 0.001) return;
  problems.push_back({"driveline.duties", text_of(Amount{total, Kind::share}), "shares that together make 100 %"});
}

void check_masses(Problems& problems, const std::vector<LineMass>& masses) {
  for (std::size_t i = 0; i < masses.size(); ++i) {
    const std::string path = "torsion.masses[" + std::to_string(i) + "]";
    for (std::size_t j = 0; j < i; ++j) {
      if (masses[i].name != masses[j].name) continue;
      problems.push_back({path + ".name", "\"" + masses[i].name + "\"", "a name that no other mass has"});
    }
    if (masses[i].speed && masses[i].turns_with && *masses[i].turns_with != MassDrive::geared) {
      problems.push_back(
          {path + ".speed", text_of(amount_of(*masses[i].speed)), "no speed unless turns_with is \"geared\""});
    }
  }
}

/// Masses that no row of shafts joins to the first one.
std::vector<std::string> loose_masses(const TorsionCase& torsion) {
  std::set<std::string> reached;
  if (!torsion.masses.empty()) reached.insert(torsion.masses.front().name);
  for (bool more = true; more;) {
    more = false;
    for (const LineShaftCase& shaft : torsion.shafts) {
      if (reached.count(shaft.from) == reached.count(shaft.to)) continue;
      reached.insert({shaft.from, shaft.to});
      more = true;
    }
  }
  std::vector<std::string> loose;
  for (const LineMass& mass : torsion.masses) {
    if (reached.count(mass.name) == 0) loose.push_back(mass.name);
  }
  return loose;
}

void check_torsion(Problems& problems, const TorsionCase& torsion) {
  check_masses(problems, torsion.masses);
  const auto expect_mass = [&](const std::string& path, const std::string& name) {
    std::string names;
    for (const LineMass& mass : torsion.masses) {
      if (mass.name == name) return;
      names += (names.empty() ? "\"" : ", \"") + mass.name + "\"";
    }
    problems.push_back(
        {path, "\"" + name + "\"", names.empty() ? "a mass of torsion.masses, which lists none" : "one of " + names});
  };
  for (std::size_t i = 0; i < torsion.shafts.size(); ++i) {
    const std::string path = "torsion.shafts[" + std::to_string(i) + "]";
    expect_mass(path + ".from", torsion.shafts[i].from);
    expect_mass(path + ".to", torsion.shafts[i].to);
    if (torsion.shafts[i].from != torsion.shafts[i].to) continue;
    problems.push_back({path + ".to", "\"" + torsion.shafts[i].to + "\"", "another mass than " + path + ".from"});
  }
  const auto joined = std::count_if(torsion.shafts.begin(), torsion.shafts.end(),
                                    [](const LineShaftCase& shaft) { return shaft.joints == true; });
  if (joined > 1) problems.push_back({"torsion.shafts", std::to_string(joined) + " shafts with joints", "only one"});
  if (!torsion.shafts.empty()) { // without any shaft the line is unfinished, which is no contradiction
    for (const std::string& mass : loose_masses(torsion)) {
      problems.push_back(
          {"torsion.shafts", "no shaft to \"" + mass + "\"", "shafts that join every mass to the others"});
    }
  }
  for (std::size_t i = 0; i < torsion.pulses.size(); ++i) {
    expect_mass("torsion.pulses[" + std::to_string(i) + "].of", torsion.pulses[i].of);
  }
}

void check_hitch(Problems& problems, const Hitch& hitch, const FoulingParts& fouling) {
  const bool drawbar_data = hitch.distance || hitch.drop || hitch.lateral;
  const bool linkage_data = hitch.lower_pivot_behind || hitch.lower_pivot_below || hitch.lower_link ||
                            hitch.top_pivot_behind || hitch.top_pivot_below || hitch.top_link || hitch.level_at ||
                            hitch.span || hitch.convergence || hitch.category || hitch.quick_coupler;
  if (hitch.kind == HitchKind::drawbar && linkage_data) {
    problems.push_back({"tractor.hitch", "a drawbar with linkage dimensions", "distance, drop and lateral"});
  }
  if (hitch.kind == HitchKind::three_point && drawbar_data) {
    problems.push_back(
        {"tractor.hitch", "a three-point hitch with drawbar dimensions", "the pivots and lengths of the links"});
  }
  if (hitch.kind == HitchKind::drawbar && fouling.lower_links) {
    problems.push_back({"fouling.lower_links", "lower links beside a drawbar", "no lower links"});
  }
  if (hitch.top_link && hitch.level_at) {
    problems.push_back({"tractor.hitch.top_link", "stands beside level_at",
                        "either the top link's length, or the lift at which the implement stands level"});
  }
  if (!hitch.kind && (drawbar_data || linkage_data)) {
    problems.push_back({"tractor.hitch.kind", "missing", "\"drawbar\" or \"three-point\" beside its dimensions"});
  }
}

/// An angle has one origin: stated, or by what was measured.
void check_origins(Problems& problems, const std::string& path, const StateRange& range) {
  const auto both = [&](bool stated, bool measured, const char* angle, const char* from, const char* either) {
    if (!stated || !measured) return;
    problems.push_back({path + "." + angle, std::string("stands beside ") + from, either});
  };
  both(range.yaw.has_value(), range.left_turn_radius || range.right_turn_radius, "yaw", "a turning radius",
       "either yaw, or left_turn_radius and right_turn_radius");
  both(range.yaw.has_value(), range.sway.has_value(), "yaw", "a sway", "either yaw or sway");
  both(range.roll.has_value(), range.lower_link_difference.has_value(), "roll", "a height difference of the links",
       "either roll or lower_link_difference");
  both(range.pitch.has_value(), range.hollow_radius || range.crest_radius, "pitch", "the radius of a hollow or crest",
       "either pitch, or hollow_radius and crest_radius");
  both(range.roll.has_value(), range.side_slope || range.wheel_drop, "roll", "a side slope or a wheel drop",
       "one of roll, side_slope and wheel_drop");
  both(range.side_slope.has_value(), range.wheel_drop.has_value(), "side_slope", "a wheel drop",
       "one of roll, side_slope and wheel_drop");
}

/// What follows from the implement's own wheels says nothing of one that hangs on the links.
void refuse_wheels(Problems& problems, const std::string& path, const StateRange& range) {
  const std::pair<bool, const char*> entries[] = {{range.left_turn_radius.has_value(), ".left_turn_radius"},
                                                  {range.right_turn_radius.has_value(), ".right_turn_radius"},
                                                  {range.hollow_radius.has_value(), ".hollow_radius"},
                                                  {range.crest_radius.has_value(), ".crest_radius"},
                                                  {range.side_slope.has_value(), ".side_slope"},
                                                  {range.wheel_drop.has_value(), ".wheel_drop"}};
  for (const auto& [there, key] : entries) {
    if (there) problems.push_back({path + key, "stated", "nothing: the implement hangs on the links"});
  }
}

void refuse_links(Problems& problems, const std::string& path, const StateRange& range) {
  const std::pair<bool, const char*> entries[] = {{range.sway.has_value(), ".sway"},
                                                  {range.lower_link_difference.has_value(), ".lower_link_difference"},
                                                  {range.top_link.has_value(), ".top_link"}};
  for (const auto& [there, key] : entries) {
    if (there) problems.push_back({path + key, "stated", "nothing: the implement is trailed on a drawbar"});
  }
}

/// A top link hangs slack only where wheels carry the implement.
void check_slack(Problems& problems, const std::string& path, const Implement& implement, Stated<TopLink> top_link) {
  const bool no_wheels = implement.support_wheels && !implement.support_wheels->present;
  if (top_link != TopLink::slack || !no_wheels) return;
  problems.push_back({path + ".top_link", "\"slack\"", "\"tight\": implement.support_wheels is \"none\""});
}

/// A trailed or steered machine turns at the headland, a mounted one is raised there: one limit for each.
void check_headland_limits(Problems& problems, const Case& value) {
  const Stated<HitchKind>& kind = value.tractor.hitch.kind;
  if (!kind) return;
  const bool raised = kind == HitchKind::three_point && !value.implement.steering_pivot;
  const auto refuse = [&](const char* entry, const Stated<Angle>& limit, const char* instead) {
    if (limit) problems.push_back({entry, text_of(amount_of(*limit)), instead});
  };
  if (raised) {
    refuse("limits.turning_angle", value.limits.turning_angle,
           "limits.lifted_angle: a mounted implement is raised at the headland");
    refuse("limits.wide_turning_angle", value.limits.wide_turning_angle,
           "limits.wide_lifted_angle: a mounted implement is raised at the headland");
    return;
  }
  refuse("limits.lifted_angle", value.limits.lifted_angle,
         "limits.turning_angle: a trailed or steered implement turns at the headland");
  refuse("limits.wide_lifted_angle", value.limits.wide_lifted_angle,
         "limits.wide_turning_angle: a trailed or steered implement turns at the headland");
}

/// Less roll at full turn asks for a turn and a roll to both sides of none.
void check_coupling(Problems& problems, const std::string& path, const StateRange& range, bool trailed) {
  if (!range.roll_at_full_turn) return;
  const auto refuse = [&](std::string found, const char* expected) {
    problems.push_back({path + ".roll_at_full_turn", std::move(found), expected});
  };
  if (!trailed) refuse("stated", "nothing: roll depends on the turn behind a drawbar only");
  const auto beside_none = [](const Stated<Interval<Angle>>& angles) {
    return angles && (angles->low > Angle{} || angles->high < Angle{});
  };
  if (beside_none(range.yaw)) refuse("beside a yaw without 0 deg", "a yaw from 0 deg or below to 0 deg or above");
  if (beside_none(range.roll)) refuse("beside a roll without 0 deg", "a roll from 0 deg or below to 0 deg or above");
}

/// A machine that steers about a pivot on its headstock hangs on the lower links, which then do not sway.
void check_steering(Problems& problems, const Case& value) {
  if (!value.implement.steering_pivot) return;
  if (value.tractor.hitch.kind == HitchKind::drawbar) {
    problems.push_back({"implement.steering_pivot", "stated", "nothing: the implement is trailed on a drawbar"});
  }
  const std::pair<const char*, const Stated<StateRange>&> states[] = {
      {"working", value.range.working}, {"turning", value.range.turning}, {"transport", value.range.transport}};
  for (const auto& [name, state] : states) {
    if (!state || !state->sway) continue;
    problems.push_back({std::string("range.") + name + ".sway", "beside implement.steering_pivot",
                        "yaw: the machine turns about its pivot"});
  }
}

void check_ranges(Problems& problems, const Case& value) {
  if (value.range.working && value.range.working->driven == false) {
    problems.push_back({"range.working.driven", "\"no\"", "\"yes\": the PTO turns in work"});
  }
  const bool trailed = value.tractor.hitch.kind == HitchKind::drawbar;
  if (trailed && value.range.turning && value.range.turning->yaw &&
      value.range.turning->yaw->low == value.range.turning->yaw->high) {
    problems.push_back({"range.turning.yaw", "an interval of nothing",
                        "the turns that the machine takes, such as [\"-30 deg\", \"30 deg\"]"});
  }
  const struct {
    const char* name;
    const Stated<StateRange>& range;
  } states[] = {
      {"working", value.range.working}, {"turning", value.range.turning}, {"transport", value.range.transport}};
  for (const auto& state : states) {
    if (!state.range) continue;
    const std::string path = std::string("range.") + state.name;
    check_origins(problems, path, *state.range);
    if (value.tractor.hitch.kind == HitchKind::three_point) refuse_wheels(problems, path, *state.range);
    if (value.tractor.hitch.kind == HitchKind::drawbar) refuse_links(problems, path, *state.range);
    check_slack(problems, path, value.implement, state.range->top_link);
    check_coupling(problems, path, *state.range, value.tractor.hitch.kind != HitchKind::three_point);
    if (value.tractor.hitch.kind == HitchKind::drawbar && state.range->lift) {
      problems.push_back({path + ".lift", "a lift", "no lift: the implement is trailed on a drawbar"});
    }
    if (value.tractor.hitch.kind == HitchKind::three_point && state.range->pitch) {
      problems.push_back({path + ".pitch", "a pitch", "no pitch: the linkage gives it at each lift height"});
    }
  }
}

} // namespace

void find_contradictions(const Case& value, Problems& problems) {
  const auto same = [](AngularSpeed w) { return w; };
  const Engine& engine = value.tractor.engine;
  expect_below(problems, "tractor.engine.rated_speed", engine.rated_speed, engine.high_idle, "tractor.engine.high_idle",
               same);
  check_curve(problems, value.tractor);
  check_telescope(problems, value.driveline);
  check_branches(problems, value.implement.branches);
  check_interface(problems, "tractor.pto.stub", value.tractor.pto.stub);
  check_interface(problems, "driveline.tractor_yoke", value.driveline.tractor_yoke);
  check_other_stubs(problems, value.tractor.pto);
  check_steel(problems, "tractor.pto.stub_steel", value.tractor.pto.stub_steel);
  check_steel(problems, "driveline.tube_steel", value.driveline.tube_steel);
  check_gears(problems, value.tractor.pto);
  check_speeds(problems, value);
  check_machine(problems, value.implement);
  check_peak(problems, value.implement);
  check_tube(problems, "driveline.tube", value.driveline.tube);
  check_tube(problems, "driveline.other_tube", value.driveline.other_tube);
  check_positions(problems, value.driveline.telescope_positions);
  check_duties(problems, value.driveline.duties);
  if (value.torsion) check_torsion(problems, *value.torsion);
  check_hitch(problems, value.tractor.hitch, value.fouling);
  check_ranges(problems, value);
  check_headland_limits(problems, value);
  check_steering(problems, value);
  check_prices(problems, value.prices, value.season);
}

} // namespace case_document
} // namespace v0
} // namespace fieldshaft
