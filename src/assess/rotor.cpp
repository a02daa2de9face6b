// Tip speed and overspeed of the rotor: in the engaged gear, at high idle, and in every other gear.

#include "assess/checks.hpp"
#include "assess/start.hpp"

#include <fieldshaft/power.hpp>
#include <fieldshaft/pto.hpp>
#include <fieldshaft/rotor.hpp>

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// Tip speed of the case's rotor at a PTO speed; empty unless the rotor is fully stated.
std::optional<Speed> tip_speed_at(const Case& value, AngularSpeed pto_speed) {
  const auto& rotor = value.implement.rotor;
  if (!rotor || !rotor->present) return std::nullopt;
  const RotorCase& r = rotor->item;
  if (!r.tip_radius || !r.input_speed || !r.rotor_speed) return std::nullopt;
  return tip_speed(geared_speed(pto_speed, gear_ratio(*r.input_speed, *r.rotor_speed)), *r.tip_radius);
}

/// Tips faster than this stop whatever is stated: the fastest PTO rotor in a published test ran at 105 m/s.
constexpr Sourced<Speed> tip_ceiling{
    metres_per_second(120.0),
    {"120 m/s, a ceiling of this library above the 105 m/s of the fastest published test", Standing::common_practice}};

struct TipLimit {
  LimitBand band;
  bool from_manual = false;
};

/// The manual's limit stops. Without it there is only a line for lawn mowers, which can caution a farm cutter, and a
/// ceiling. The owner's own limit may tighten either, never loosen it.
TipLimit tip_limit(const Case& value) {
  TipLimit limit;
  const Stated<Speed>& manual = value.implement.rotor->item.highest_tip_speed;
  if (manual) {
    const Amount stated = amount_of(*manual);
    limit = {{stated, stated, LimitSense::at_most, {{"highest tip speed as the case states it", Standing::given}}},
             true};
  } else {
    const TipSpeedLine& line = turf_tip_speed_line();
    limit.band = {
        amount_of(line.speed), amount_of(tip_ceiling.value), LimitSense::at_most, {line.source, tip_ceiling.source}};
  }
  limit.band.loosest.si = std::min(limit.band.loosest.si, tip_ceiling.value.value());
  if (value.limits.tip_speed) {
    limit.band.loosest.si = std::min(limit.band.loosest.si, value.limits.tip_speed->value());
    limit.band.basis.push_back({"tip speed limit of the owner, as the case states it", Standing::given});
  }
  limit.band.strictest.si = std::min(limit.band.strictest.si, limit.band.loosest.si);
  return limit;
}

void check_tip_speed(const Case& value, Findings& findings) {
  const auto& rotor = value.implement.rotor;
  if (rotor && !rotor->present) {
    findings.not_examined(Check::tip_speed);
    return;
  }
  const PtoGear* gear = selected_gear(value);
  const bool gear_speed = gear != nullptr && gear->pto_speed;
  const RotorCase r = rotor ? rotor->item : RotorCase{};
  const auto missing = unstated({{rotor.has_value(), "implement.rotor"},
                                 {!rotor || r.tip_radius.has_value(), "implement.rotor.tip_radius"},
                                 {!rotor || r.input_speed.has_value(), "implement.rotor.input_speed"},
                                 {!rotor || r.rotor_speed.has_value(), "implement.rotor.rotor_speed"},
                                 {gear_speed, "tractor.pto.selected"}});
  if (gear == nullptr || !missing.empty()) {
    findings.add(not_known(Check::tip_speed, "rotor.unstated", missing));
    return;
  }
  const Speed speed = *tip_speed_at(value, *gear->pto_speed);
  const TipLimit limit = tip_limit(value);
  Finding finding = compare(Check::tip_speed, amount_of(speed), limit.band,
                            limit.from_manual ? "rotor.tip_speed" : "rotor.tip_speed_line");
  if (!limit.from_manual &&
      finding.status == Status::caution) { // beyond the line of another machine, short of all sense
    finding.status = Status::not_known;
    finding.missing = {"implement.rotor.highest_tip_speed"};
    findings.add(std::move(finding));
    return;
  }
  if (!limit.from_manual && finding.status == Status::ok) finding.status = Status::caution;
  if (finding.status == Status::stop) finding.advice = {"rotor.slow_down"};
  if (finding.status == Status::caution) finding.advice = {"rotor.ask_manual"};
  findings.add(std::move(finding));
}

/// PTO speeds at which guards act, for the implement's nominal speed: the strictest and the widest that is printed. A
/// stated one may tighten them, never loosen them; alone it stands only where none is printed.
std::optional<LimitBand> overspeed_band(const Case& value) {
  const AngularSpeed implement_speed = *value.implement.input_speed;
  std::optional<LimitBand> band;
  for (const OverspeedGuard& guard : pto_overspeed_guards) {
    if (!is_nominal_speed(implement_speed, guard.nominal)) continue;
    const Amount limit = amount_of(guard.guard);
    if (!band) band = LimitBand{limit, limit, LimitSense::at_most, {}};
    if (limit.si < band->strictest.si) band->strictest = limit;
    if (limit.si > band->loosest.si) band->loosest = limit;
    band->basis.push_back(guard.source);
  }
  if (!value.limits.pto_speed) return band;
  const Amount stated = amount_of(*value.limits.pto_speed);
  if (!band) band = LimitBand{stated, stated, LimitSense::at_most, {}};
  if (stated.si < band->loosest.si) band->loosest = stated;
  if (stated.si < band->strictest.si) band->strictest = stated;
  band->basis.push_back({"highest PTO speed as the case states it", Standing::given});
  return band;
}

/// An overspeed at high idle that the driver keeps off by the hand lever; far beyond, the gearing itself is wrong.
constexpr Sourced<double> greatest_slip{1.5,
                                        {"1.5 times the implement's speed, a rule of thumb and the default of this "
                                         "library",
                                         Standing::common_practice}};

void check_high_idle(const Case& value, Findings& findings) {
  const PtoGear* gear = selected_gear(value);
  const auto missing =
      unstated({{value.implement.input_speed.has_value(), "implement.input_speed"},
                {value.tractor.engine.high_idle.has_value(), "tractor.engine.high_idle"},
                {gear != nullptr, "tractor.pto.selected"},
                {gear == nullptr || (gear->pto_speed && gear->engine_speed), "tractor.pto.gears[].engine_speed"}});
  if (gear == nullptr || !missing.empty()) {
    findings.add(not_known(Check::overspeed_at_high_idle, "overspeed.unstated", missing));
    return;
  }
  const auto band = overspeed_band(value);
  if (!band) {
    findings.add(not_known(Check::overspeed_at_high_idle, "overspeed.no_limit", {}));
    return;
  }
  const double ratio = gear_ratio(*gear->engine_speed, *gear->pto_speed);
  const AngularSpeed reached = geared_speed(*value.tractor.engine.high_idle, ratio);
  Finding finding = compare(Check::overspeed_at_high_idle, amount_of(reached), *band, "overspeed.at_high_idle");
  const auto tips = tip_speed_at(value, reached);
  // The engine need not be run up that far: a speed never to pass is the answer, not a stop. That holds for a gear of
  // the right speed and an overspeed that a slip of the hand lever explains, not beyond.
  const bool right_gear = is_nominal_speed(*gear->pto_speed, *value.implement.input_speed);
  const bool within_reason = reached <= *value.implement.input_speed * greatest_slip.value;
  if (finding.status == Status::stop && right_gear && within_reason) finding.status = Status::caution;
  AngularSpeed ceiling = AngularSpeed::from_value(band->strictest.si);
  if (tips) {
    finding.facts.push_back(fact("tip_speed", *tips));
    finding.reason = "overspeed.at_high_idle_rotor";
    const TipLimit limit = tip_limit(value);
    if (tips->value() > limit.band.loosest.si) {
      finding.status = Status::stop;
      finding.reason = "overspeed.tips_beyond";
      finding.facts.push_back({"tip_limit", limit.band.loosest});
    }
    // The line of lawn mowers is no limit of this machine, so it makes no engine speed either.
    const bool own = limit.from_manual || value.limits.tip_speed;
    if (own) ceiling = std::min(ceiling, reached * (limit.band.loosest.si / tips->value()));
  }
  // Rounded inwards: a printed limit must not lie above the true one.
  const double engine_rpm = std::floor(in(ceiling, unit::rpm) / ratio);
  finding.facts.push_back(fact("gear", gear->name));
  finding.facts.push_back(fact("engine_speed", rpm(engine_rpm)));
  finding.facts.push_back(fact("high_idle", *value.tractor.engine.high_idle));
  if (finding.status != Status::ok && right_gear) finding.advice = {"overspeed.keep_below"};
  findings.add(std::move(finding));
}

/// Whether the lever can put this gear on the stub that is out: always, where stub and lever are chosen apart; else
/// only a gear of the stub's own speed.
bool reaches_the_stub(const PtoGear& gear, const Case& value) {
  if (lever_can_disagree(*value.tractor.pto.arrangement)) return true;
  const PtoGear* engaged = selected_gear(value);
  return engaged == nullptr || !engaged->pto_speed || is_nominal_speed(*gear.pto_speed, *engaged->pto_speed);
}

/// The PTO speed that a gear reaches with the engine at high idle.
AngularSpeed highest_speed(const Case& value, const PtoGear& gear) {
  return geared_speed(*value.tractor.engine.high_idle, gear_ratio(*gear.engine_speed, *gear.pto_speed));
}

/// The gear that the lever reaches beside the engaged one and that turns the stub fastest at high idle. While the wrong
/// gear is engaged, the gears for the implement's own speed are the cure and no hazard.
const PtoGear* worst_other_gear(const Case& value) {
  const PtoGear* engaged = selected_gear(value);
  const AngularSpeed wanted = *value.implement.input_speed;
  const bool engaged_is_right =
      engaged != nullptr && engaged->pto_speed && is_nominal_speed(*engaged->pto_speed, wanted);
  const PtoGear* worst = nullptr;
  for (const PtoGear& gear : value.tractor.pto.gears) {
    if (&gear == engaged || !reaches_the_stub(gear, value)) continue;
    if (!engaged_is_right && is_nominal_speed(*gear.pto_speed, wanted)) continue;
    if (worst == nullptr || highest_speed(value, gear) > highest_speed(value, *worst)) worst = &gear;
  }
  return worst;
}

void check_other_gears(const Case& value, Findings& findings) {
  const TractorPto& pto = value.tractor.pto;
  const bool all_speeds =
      std::all_of(pto.gears.begin(), pto.gears.end(), [](const PtoGear& g) { return g.pto_speed && g.engine_speed; });
  const auto missing = unstated({{value.implement.input_speed.has_value(), "implement.input_speed"},
                                 {!pto.gears.empty(), "tractor.pto.gears"},
                                 {pto.selected.has_value(), "tractor.pto.selected"},
                                 {all_speeds, "tractor.pto.gears[].engine_speed"},
                                 {value.tractor.engine.high_idle.has_value(), "tractor.engine.high_idle"},
                                 {pto.arrangement.has_value(), "tractor.pto.arrangement"}});
  if (!missing.empty()) {
    findings.add(not_known(Check::overspeed_in_other_gears, "other_gears.unstated", missing));
    return;
  }
  const PtoGear* gear = worst_other_gear(value);
  if (gear == nullptr) {
    findings.not_examined(Check::overspeed_in_other_gears);
    return;
  }
  const auto band = overspeed_band(value);
  if (!band) {
    findings.add(not_known(Check::overspeed_in_other_gears, "overspeed.no_limit", {}));
    return;
  }
  const AngularSpeed reached = highest_speed(value, *gear);
  Finding finding = compare(Check::overspeed_in_other_gears, amount_of(reached), *band, "other_gears.speed");
  if (finding.status != Status::ok) {
    finding.status = Status::caution; // nobody has moved the lever yet
    finding.reason = "other_gears.too_fast";
    finding.advice = {"other_gears.secure"};
  }
  finding.facts = {fact("gear", gear->name)};
  if (finding.status == Status::caution && is_nominal_speed(*gear->pto_speed, *value.implement.input_speed)) {
    const double ratio = gear_ratio(*gear->engine_speed, *gear->pto_speed);
    finding.facts.push_back(fact("engine_speed", rpm(std::floor(30.0 / pi * band->strictest.si / ratio))));
    finding.advice = {"other_gears.keep_below"}; // an economy gear: of use, and no gear to be locked
  }
  const auto tips = tip_speed_at(value, reached);
  if (tips && finding.status == Status::caution) {
    finding.facts.push_back(fact("tip_speed", *tips));
    finding.reason = "other_gears.too_fast_rotor";
  }
  findings.add(std::move(finding));
}

} // namespace

void check_rotor(const Case& value, Findings& findings) {
  check_tip_speed(value, findings);
  check_high_idle(value, findings);
  check_other_gears(value, findings);
  check_run_down(value, findings);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
