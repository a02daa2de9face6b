// Tip speed and overspeed of the rotor: in the engaged gear, at high idle, and in every other gear.

#include "assess/checks.hpp"

#include <fieldshaft/power.hpp>
#include <fieldshaft/pto.hpp>
#include <fieldshaft/rotor.hpp>

#include <algorithm>
#include <limits>

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

/// The limit that the manual or the owner states; a value beyond it stops.
std::optional<LimitBand> stated_tip_limit(const Case& value) {
  std::optional<Speed> limit = value.limits.tip_speed;
  const Stated<Speed>& manual = value.implement.rotor->item.highest_tip_speed;
  if (manual && (!limit || *manual < *limit)) limit = manual;
  if (!limit) return std::nullopt;
  return LimitBand{amount_of(*limit),
                   amount_of(*limit),
                   LimitSense::at_most,
                   {{"highest tip speed as the case states it", Standing::given}}};
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
  Finding finding;
  if (const auto limit = stated_tip_limit(value)) {
    finding = compare(Check::tip_speed, amount_of(speed), *limit, "rotor.tip_speed");
    if (finding.status == Status::stop) finding.advice = {"rotor.slow_down"};
  } else {
    const TipSpeedLine& line = turf_tip_speed_line();
    // A line for lawn mowers cannot stop a farm cutter; passing it is a reason to look into the manual.
    const Amount beyond{std::numeric_limits<double>::infinity(), Kind::speed};
    finding = compare(Check::tip_speed, amount_of(speed),
                      {amount_of(line.speed), beyond, LimitSense::at_most, {line.source}}, "rotor.tip_speed_line");
    if (finding.status != Status::ok) finding.advice = {"rotor.ask_manual"};
  }
  findings.add(std::move(finding));
}

/// PTO speeds at which guards act, for the implement's nominal speed: the strictest and the widest that is printed.
std::optional<LimitBand> overspeed_band(AngularSpeed implement_speed) {
  std::optional<LimitBand> band;
  for (const OverspeedGuard& guard : pto_overspeed_guards) {
    if (!is_nominal_speed(implement_speed, guard.nominal)) continue;
    const Amount limit = amount_of(guard.guard);
    if (!band) band = LimitBand{limit, limit, LimitSense::at_most, {}};
    if (limit.si < band->strictest.si) band->strictest = limit;
    if (limit.si > band->loosest.si) band->loosest = limit;
    band->basis.push_back(guard.source);
  }
  return band;
}

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
  const auto band = overspeed_band(*value.implement.input_speed);
  if (!band) {
    findings.add(not_known(Check::overspeed_at_high_idle, "overspeed.no_limit", {}));
    return;
  }
  const double ratio = gear_ratio(*gear->engine_speed, *gear->pto_speed);
  const AngularSpeed reached = geared_speed(*value.tractor.engine.high_idle, ratio);
  Finding finding = compare(Check::overspeed_at_high_idle, amount_of(reached), *band, "overspeed.at_high_idle");
  // The engine need not be run up that far: a speed never to pass is the answer, not a stop. In a gear for another
  // speed there is no such answer.
  const bool right_gear = is_nominal_speed(*gear->pto_speed, *value.implement.input_speed);
  if (finding.status == Status::stop && right_gear) finding.status = Status::caution;
  finding.facts = {fact("gear", gear->name), fact("engine_speed", AngularSpeed::from_value(band->strictest.si / ratio)),
                   fact("high_idle", *value.tractor.engine.high_idle)};
  if (finding.status == Status::caution) finding.advice = {"overspeed.keep_below"};
  if (const auto tips = tip_speed_at(value, reached)) {
    finding.facts.push_back(fact("tip_speed", *tips));
    finding.reason = "overspeed.at_high_idle_rotor";
  }
  findings.add(std::move(finding));
}

/// The fastest gear that the lever reaches beside the engaged one. While the wrong gear is engaged, the gears for the
/// implement's own speed are the cure and no hazard.
const PtoGear* fastest_other_gear(const Case& value) {
  const PtoGear* engaged = selected_gear(value);
  const AngularSpeed wanted = *value.implement.input_speed;
  const bool engaged_is_right =
      engaged != nullptr && engaged->pto_speed && is_nominal_speed(*engaged->pto_speed, wanted);
  const PtoGear* fastest = nullptr;
  for (const PtoGear& gear : value.tractor.pto.gears) {
    if (&gear == engaged) continue;
    if (!engaged_is_right && gear.pto_speed && is_nominal_speed(*gear.pto_speed, wanted)) continue;
    if (gear.pto_speed && (fastest == nullptr || *gear.pto_speed > *fastest->pto_speed)) fastest = &gear;
  }
  return fastest;
}

/// The PTO speed that a gear reaches with the engine at high idle.
AngularSpeed highest_speed(const Case& value, const PtoGear& gear) {
  return geared_speed(*value.tractor.engine.high_idle, gear_ratio(*gear.engine_speed, *gear.pto_speed));
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
  const PtoGear* gear = fastest_other_gear(value);
  if (gear == nullptr) {
    findings.not_examined(Check::overspeed_in_other_gears);
    return;
  }
  const auto band = overspeed_band(*value.implement.input_speed);
  if (!band) {
    findings.add(not_known(Check::overspeed_in_other_gears, "overspeed.no_limit", {}));
    return;
  }
  const AngularSpeed reached = highest_speed(value, *gear);
  Finding finding = compare(Check::overspeed_in_other_gears, amount_of(reached), *band, "other_gears.speed");
  if (finding.status != Status::ok) {
    finding.status = lever_can_disagree(*pto.arrangement) ? Status::caution : Status::ok;
    finding.reason = finding.status == Status::ok ? "other_gears.own_stub" : "other_gears.too_fast";
    if (finding.status == Status::caution) finding.advice = {"other_gears.secure"};
  }
  finding.facts = {fact("gear", gear->name)};
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
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
