// The second section of a driveline, behind a bearing that the implement carries: it stands still within the implement.

#include "assess/checks.hpp"
#include "assess/geometry.hpp"
#include "assess/layout.hpp"
#include "assess/limits.hpp"

#include <fieldshaft/driveline/chain_envelope.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// Boxes for one state: some hundredths of a second.
constexpr int budget_of_chain = 20000;

void append(std::vector<std::string>& paths, std::vector<std::string> more) {
  for (std::string& path : more) paths.push_back(std::move(path));
}

std::vector<std::string> section_missing(const FixedSection& section) {
  std::vector<std::string> missing =
      unstated({{section.front_joint_kind.has_value(), "driveline.fixed_section.front_joint_kind"},
                {section.rear_joint_kind.has_value(), "driveline.fixed_section.rear_joint_kind"},
                {section.front_joint.has_value(), "driveline.fixed_section.front_joint"},
                {section.rear_joint.has_value(), "driveline.fixed_section.rear_joint"}});
  append(missing, place_missing(section.from, "driveline.fixed_section.from"));
  append(missing, place_missing(section.to, "driveline.fixed_section.to"));
  return missing;
}

/// Of both ends and both joints; the bearing's end as the pin about which nothing turns. A bearing's shaft that leans
/// moves its joint aside.
DrivelineTolerance section_tolerance(const FixedSection& section, Angle lean) {
  const Length aside = section.front_joint->value * lean.value();
  DrivelineTolerance tolerance;
  tolerance.front_joint = section.front_joint->tolerance;
  tolerance.rear_joint = section.rear_joint->tolerance;
  tolerance.pin_distance = section.from.behind->tolerance;
  tolerance.pin_lateral = section.from.left->tolerance + aside;
  tolerance.pin_drop = section.from.above->tolerance + aside;
  tolerance.input_behind = section.to.behind->tolerance;
  tolerance.input_left = section.to.left->tolerance;
  tolerance.input_up = section.to.above->tolerance;
  return tolerance;
}

/// These joints bend alike in every state, so that what is allowed in work is what counts.
Finding angles_of(const Case& value, const FixedSection& section) {
  const Angle lean = input_lean(value.implement.input);
  StateExtremes still = extremes_at(fixed_section_of(value, section), Position(), AttitudeRange{},
                                    section_tolerance(section, lean), false);
  still.front.value = still.front.value + lean;
  const auto judge = [&](const WorstCase<Angle>& angle, JointKind kind, const char* end) {
    Finding finding = compare(Check::fixed_section, amount_of(angle.value),
                              angle_band(value, MachineState::working, true, kind), "fixed.angle");
    finding.facts = {fact("end", PhraseId{end}), fact("front", still.front.value), fact("rear", still.rear.value)};
    return finding;
  };
  Finding front = judge(still.front, *section.front_joint_kind, "fixed.front");
  Finding rear = judge(still.rear, *section.rear_joint_kind, "fixed.rear");
  const bool front_decides = front.status != rear.status ? front.status > rear.status : front.margin <= rear.margin;
  Finding& finding = front_decides ? front : rear;
  if (finding.status != Status::ok) finding.advice = {"fixed.move"};
  return finding;
}

/// How unevenly all joints turn over one state, proved for the measurements as stated.
WorstCase<double> chain_over(const Case& value, const FixedSection& section, MachineState state) {
  const Driveline first = driveline_of(value);
  const Driveline second = fixed_section_of(value, section);
  const Angle between = *section.bearing_phase;
  const auto worst = [](const Extreme<double>& extreme, std::optional<Length> lift) {
    const Attitude& at = extreme.at;
    return WorstCase<double>{extreme.upper, {at.yaw, at.pitch, at.roll, lift}, extreme.value, extreme.proved};
  };
  EnvelopeOptions options;
  options.budget = budget_of_chain;
  if (is_trailed(value)) {
    const AttitudeRange attitudes = attitudes_of(value, state);
    return worst(chain_envelope(first, second, between, pin_of(value), attitudes, options), {});
  }
  std::optional<SupportWheel> wheel;
  if (positions_in(value, state).slack) wheel = support_wheel_of(value);
  const MountedRange positions = positions_of(value, state);
  ThreePointLinkage linkage = linkage_of(value);
  if (wheel && !(linkage.top_link > Length{})) linkage.top_link = metres(1.0); // any: it hangs slack
  const MountedChainEnvelope over = chain_envelope(first, second, between, linkage, positions, wheel, options);
  return worst(over.speed_variation, over.at.lift);
}

Finding chain_finding(const StateExtremes& state, const WorstCase<double>& chain, AngularSpeed speed) {
  const LimitBand band = variation_band(speed);
  Finding finding = compare(Check::chain_variation, {chain.value, Kind::share}, band, "chain.driven");
  finding.facts = {{"moving", Amount{state.variation.value, Kind::share}},
                   {"attained", Amount{chain.attained, Kind::share}},
                   fact("speed", speed)};
  if (!is_finite(chain.attained)) {
    finding = make_finding(Check::chain_variation, Status::stop, "variation.endless");
  } else if (compare(Check::chain_variation, {chain.attained, Kind::share}, band, "").status != finding.status) {
    finding.status = Status::not_known; // bound and attained lie on different sides of a limit
    finding.reason = "chain.not_proved";
  }
  finding.state = state.state;
  finding.pose = chain.pose;
  if (finding.status != Status::ok) finding.advice = {"chain.turn_yoke"};
  return finding;
}

/// The least even driven state.
Finding variation_of(const Case& value, const FixedSection& section, const DrivelineOverRange& range,
                     AngularSpeed speed) {
  Finding worst = not_known(Check::chain_variation, "chain.unstated", {"range.working"});
  double most = -1.0;
  for (const StateExtremes& state : range.states) {
    if (!state.driven) continue;
    const WorstCase<double> chain = chain_over(value, section, state.state);
    if (!(chain.value > most)) continue;
    most = chain.value;
    worst = chain_finding(state, chain, speed);
  }
  return worst;
}

std::vector<std::string> chain_missing(const Case& value, const FixedSection& section, const DrivelineOverRange& range,
                                       const PtoGear* gear) {
  std::vector<std::string> missing = range.missing_for_all();
  append(missing, unstated({{value.driveline.front_joint_kind.has_value(), "driveline.front_joint_kind"},
                            {value.driveline.rear_joint_kind.has_value(), "driveline.rear_joint_kind"},
                            {value.driveline.yoke_phase.has_value(), "driveline.yoke_phase"},
                            {section.yoke_phase.has_value(), "driveline.fixed_section.yoke_phase"},
                            {section.bearing_phase.has_value(), "driveline.fixed_section.bearing_phase"},
                            {gear != nullptr && gear->pto_speed, "tractor.pto.selected"}}));
  return missing;
}

} // namespace

void check_fixed_section(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  const auto& section = value.driveline.fixed_section;
  if (!section) {
    findings.not_examined(Check::chain_variation);
    findings.not_examined(Check::fixed_section);
    return;
  }
  const PtoGear* gear = selected_gear(value);
  std::vector<std::string> missing = section_missing(*section);
  std::vector<std::string> of_chain = chain_missing(value, *section, range, gear);
  of_chain.insert(of_chain.end(), missing.begin(), missing.end());
  const auto guarded = [&](Check check, const auto& judge) {
    try {
      findings.add(judge());
    } catch (const InputError& error) { // joint centres that meet
      Finding finding = not_known(check, "fixed.impossible", {"driveline.fixed_section"});
      finding.facts = {fact("why", std::string(error.what()))};
      findings.add(std::move(finding));
    }
  };
  guarded(Check::chain_variation, [&] {
    return of_chain.empty() ? variation_of(value, *section, range, *gear->pto_speed)
                            : not_known(Check::chain_variation, "chain.unstated", of_chain);
  });
  guarded(Check::fixed_section, [&] {
    return missing.empty() ? angles_of(value, *section) : not_known(Check::fixed_section, "fixed.unstated", missing);
  });
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
