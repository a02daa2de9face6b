// Power through the interface, power of the tractor against need, and against what the implement may take.

#include "assess/checks.hpp"
#include "assess/interface.hpp"
#include "assess/loads.hpp"
#include "assess/need.hpp"

#include <fieldshaft/pto.hpp>

#include <algorithm>
#include <limits>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

std::vector<Source> sources_of(const RecommendedPowers& powers) {
  std::vector<Source> sources;
  for (const RecommendedPower& entry : powers.editions) sources.push_back(entry.source);
  return sources;
}

void check_interface_power(const Case& value, Findings& findings) {
  const ResolvedInterface stub = resolve(value.tractor.pto.stub);
  const MeanLoad load = mean_load(value);
  std::vector<std::string> missing = load.missing;
  if (stub.type == nullptr) missing.emplace_back("tractor.pto.stub");
  if (!missing.empty() || stub.type == nullptr) {
    findings.add(not_known(Check::interface_power, "power.interface.unstated", missing));
    return;
  }
  const RecommendedPowers powers = recommended_power(*stub.type, load.speed);
  if (!powers.known()) {
    Finding finding = not_known(Check::interface_power, "power.interface.no_edition", {});
    finding.facts = {interface_fact("stub", stub), fact("speed", load.speed)};
    findings.add(std::move(finding));
    return;
  }
  const Power lowest = powers.lowest().value();
  const Power highest = powers.highest().value();
  Finding finding =
      compare(Check::interface_power, amount_of(load.power),
              {amount_of(lowest), amount_of(highest), LimitSense::at_most, sources_of(powers)}, "power.interface");
  finding.facts = {interface_fact("stub", stub), fact("speed", load.speed), fact("lowest", lowest),
                   fact("highest", highest), fact("torque", *load.torque)};
  if (finding.status != Status::ok) {
    const bool slow = is_nominal_speed(load.speed, rpm(540));
    if (slow) finding.facts.push_back(fact("torque_at_1000", shaft_torque(load.power, rpm(1000))));
    finding.advice = {slow ? "power.interface.faster" : "power.interface.smaller"};
  }
  findings.add(std::move(finding));
}

/// A device is tested, one that is unstated is looked for, one that is missing is fitted.
const char* device_advice(const Case& value) {
  if (!value.overload) return "power.through.look";
  return value.overload->present ? "power.through.test" : "power.through.device";
}

/// The recommendation is written for tractors, but what goes through is set by implement and device: a caution at most.
void check_tractor_through_interface(const Case& value, Findings& findings) {
  const ResolvedInterface stub = resolve(value.tractor.pto.stub);
  const TractorPower tractor = tractor_power(value);
  const PtoGear* gear = selected_gear(value);
  std::vector<std::string> missing = tractor.missing;
  if (stub.type == nullptr) missing.emplace_back("tractor.pto.stub");
  if (gear == nullptr || !gear->pto_speed) missing.emplace_back("tractor.pto.selected");
  if (gear == nullptr || stub.type == nullptr || !missing.empty()) {
    findings.add(not_known(Check::tractor_power_through_interface, "power.through.unstated", missing));
    return;
  }
  const RecommendedPowers powers = recommended_power(*stub.type, *gear->pto_speed);
  if (!powers.known()) {
    Finding finding = not_known(Check::tractor_power_through_interface, "power.interface.no_edition", {});
    finding.facts = {interface_fact("stub", stub), fact("speed", *gear->pto_speed)};
    findings.add(std::move(finding));
    return;
  }
  const Amount beyond{std::numeric_limits<double>::infinity(), Kind::power};
  Finding finding =
      compare(Check::tractor_power_through_interface, amount_of(tractor.pto->high),
              {amount_of(powers.highest().value()), beyond, LimitSense::at_most, sources_of(powers)}, "power.through");
  finding.facts = {interface_fact("stub", stub)};
  if (finding.status != Status::ok) finding.advice = {device_advice(value)};
  findings.add(std::move(finding));
}

/// Power that should be left over in the heaviest work.
constexpr Sourced<Interval<double>> usual_reserve{
    {0.06, 0.18},
    {"power reserve kept in field work: 6 to 18 %, from a journal paper on tractor load", Standing::published}};

void check_reserve(const Case& value, Findings& findings) {
  const PtoGear* gear = selected_gear(value);
  std::vector<std::string> missing = unstated(
      {{value.implement.power_need.has_value(), "implement.power_need"}, {gear != nullptr, "tractor.pto.selected"}});
  const GearPower power = gear != nullptr ? gear_power(value, *gear) : GearPower{};
  missing.insert(missing.end(), power.missing.begin(), power.missing.end());
  if (gear == nullptr || !missing.empty()) {
    findings.add(not_known(Check::power_reserve, "power.reserve.unstated", missing));
    return;
  }
  const double reserve = wanted_reserve(value);
  Finding finding = compare(Check::power_reserve, amount_of(*value.implement.power_need),
                            {amount_of(power.available->low * (1.0 - reserve)), amount_of(power.available->high),
                             LimitSense::at_most, power.basis},
                            power.available->low < power.available->high ? "power.reserve" : "power.reserve.one");
  finding.basis.push_back(value.limits.power_reserve ? Source{"reserve as the case states it", Standing::given}
                                                     : usual_reserve.source);
  finding.facts = {fact("gear", gear->name),
                   fact("available_low", power.available->low),
                   fact("available_high", power.available->high),
                   {"reserve", Amount{100.0 * reserve, Kind::number}}};
  if (finding.status != Status::ok) finding.advice = {"power.reserve.lacking"};
  findings.add(std::move(finding));
}

void check_permitted(const Case& value, Findings& findings) {
  const TractorPower tractor = tractor_power(value);
  std::vector<std::string> missing = tractor.missing;
  if (!value.implement.permitted_power) missing.emplace_back("implement.permitted_power");
  if (!missing.empty()) {
    findings.add(not_known(Check::permitted_power, "power.permitted.unstated", missing));
    return;
  }
  const Amount limit = amount_of(*value.implement.permitted_power);
  // A power that is only estimated from the engine's stops where even its low end is too much.
  const bool even_low = *value.implement.permitted_power < tractor.greatest->low;
  const Amount loosest = even_low ? limit : Amount{std::max(limit.si, tractor.greatest->high.value()), Kind::power};
  Finding finding =
      compare(Check::permitted_power, amount_of(tractor.greatest->high),
              {limit, loosest, LimitSense::at_most, {{"permitted input power as the case states it", Standing::given}}},
              "power.permitted");
  if (finding.status != Status::ok) finding.advice = {"power.permitted.advice"};
  findings.add(std::move(finding));
}

} // namespace

double wanted_reserve(const Case& value) { return value.limits.power_reserve.value_or(usual_reserve.value.high); }

void check_power(const Case& value, Findings& findings) {
  check_interface_power(value, findings);
  check_tractor_through_interface(value, findings);
  check_reserve(value, findings);
  check_permitted(value, findings);
  check_whole_load(value, findings);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
