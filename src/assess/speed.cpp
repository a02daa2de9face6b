// PTO speed against implement speed, and whether stub and speed lever agree.

#include "assess/speed.hpp"
#include "assess/checks.hpp"
#include "assess/interface.hpp"

#include <fieldshaft/pto.hpp>
#include <fieldshaft/rotor.hpp>

#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

constexpr Source speed_rule{"driveline trade association design guide: never a 540 implement at 1000, never a 1000 "
                            "implement at 540",
                            Standing::published};

const PtoGear* gear_for(const Case& value, AngularSpeed wanted, AngularSpeed tolerance) {
  for (const PtoGear& gear : value.tractor.pto.gears) {
    if (gear.pto_speed && math::abs(*gear.pto_speed - wanted) <= tolerance) return &gear;
  }
  return nullptr;
}

void add_tip_speed(const Case& value, AngularSpeed pto_speed, Finding& finding) {
  const auto& rotor = value.implement.rotor;
  if (!rotor || !rotor->present) return;
  const RotorCase& r = rotor->item;
  if (!r.tip_radius || !r.input_speed || !r.rotor_speed) return;
  finding.facts.push_back(fact("tip_speed", tip_speed(pto_speed * (*r.rotor_speed / *r.input_speed), *r.tip_radius)));
  finding.reason = "speed.too_fast_rotor";
}

void check_pto_speed(const Case& value, Findings& findings) {
  const PtoGear* gear = selected_gear(value);
  const auto missing = unstated({{value.implement.input_speed.has_value(), "implement.input_speed"},
                                 {gear != nullptr, "tractor.pto.selected"},
                                 {gear == nullptr || gear->pto_speed.has_value(), "tractor.pto.gears[].pto_speed"}});
  if (gear == nullptr || !missing.empty()) {
    findings.add(not_known(Check::pto_speed, "speed.unstated", missing));
    return;
  }
  const AngularSpeed wanted = *value.implement.input_speed;
  const AngularSpeed turned = *gear->pto_speed;
  const PtoSpeedTolerance tolerance = tolerance_for(wanted);
  const bool match = math::abs(turned - wanted) <= speed_tolerance(wanted);
  Finding finding = make_finding(Check::pto_speed, match ? Status::ok : Status::stop, "speed.match");
  finding.value = amount_of(turned);
  finding.limit = amount_of(wanted);
  finding.sense = LimitSense::equal;
  finding.basis = {speed_rule, tolerance.source};
  finding.facts = {fact("gear", gear->name), fact("tolerance", tolerance.tolerance)};
  if (!match) {
    const OverspeedRatios ratios = overspeed_ratios(wanted, turned);
    finding.facts.push_back({"ratio", Amount{ratios.speed, Kind::number}});
    finding.facts.push_back({"pull_ratio", Amount{ratios.energy, Kind::number}});
    finding.reason = turned > wanted ? "speed.too_fast" : "speed.too_slow";
    if (turned > wanted) add_tip_speed(value, turned, finding);
    const PtoGear* right = gear_for(value, wanted, tolerance.tolerance);
    if (right != nullptr) finding.facts.push_back(fact("right_gear", right->name));
    finding.advice = {right != nullptr ? "speed.select_gear" : "speed.no_gear"};
  }
  findings.add(std::move(finding));
}

/// The stub's own speed is what a person goes by who counts its splines; the lever decides what it does.
void check_stub_and_lever(const Case& value, Findings& findings) {
  const ResolvedInterface stub = resolve(value.tractor.pto.stub);
  const PtoGear* gear = selected_gear(value);
  const auto missing = unstated({{stub.stated, "tractor.pto.stub"},
                                 {gear != nullptr, "tractor.pto.selected"},
                                 {gear == nullptr || gear->pto_speed.has_value(), "tractor.pto.gears[].pto_speed"}});
  if (gear == nullptr || stub.type == nullptr || !missing.empty()) {
    findings.add(not_known(Check::stub_and_lever, missing.empty() ? "stub.no_type" : "stub.unstated", missing));
    return;
  }
  const bool agree = is_nominal_speed(*gear->pto_speed, stub.type->nominal_speed);
  const bool as_implement =
      value.implement.input_speed && is_nominal_speed(*gear->pto_speed, *value.implement.input_speed);
  Finding finding = make_finding(Check::stub_and_lever, Status::ok, "stub.agrees");
  if (!agree) {
    finding = make_finding(Check::stub_and_lever, as_implement ? Status::caution : Status::stop, "stub.disagrees");
    // Only the side that meets the implement's speed is named; where the gear is wrong, that finding says what to do.
    if (as_implement) finding.advice = {"stub.change"};
  }
  finding.value = amount_of(*gear->pto_speed);
  finding.limit = amount_of(stub.type->nominal_speed);
  finding.sense = LimitSense::equal;
  finding.basis = {stub.type->identity, speed_rule};
  finding.facts = {fact("gear", gear->name), interface_fact("stub", stub)};
  findings.add(std::move(finding));
}

} // namespace

PtoSpeedTolerance tolerance_for(AngularSpeed implement_speed) {
  for (const PtoSpeedTolerance& known : pto_speed_tolerances) {
    if (is_nominal_speed(implement_speed, known.nominal)) return known;
  }
  return {implement_speed,
          nominal_speed_band * implement_speed,
          {"2.5 %, the wider of the two published tolerances, for a speed that has none", Standing::common_practice}};
}

AngularSpeed speed_tolerance(AngularSpeed implement_speed) {
  const AngularSpeed rounding = 1e-9 * implement_speed;
  return tolerance_for(implement_speed).tolerance + rounding;
}

void check_speed(const Case& value, Findings& findings) {
  check_pto_speed(value, findings);
  check_stub_and_lever(value, findings);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
