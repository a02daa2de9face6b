// Forced response of the torsional line: how far all that pulses swings the torque of the driveline, at every working
// speed, against what joints and weakest part bear.

#include "assess/pulsing.hpp"

#include "assess/positions.hpp"
#include "assess/steel.hpp"
#include "assess/torsion.hpp"

#include <fieldshaft/dynamics.hpp>
#include <fieldshaft/joint.hpp>
#include <fieldshaft/overload.hpp>

#include <algorithm>
#include <optional>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// Speeds looked at beside those where an order meets a natural frequency, which are looked at themselves.
constexpr int speeds_of_scan = 41;

double damping_of(const Case& value) { return value.torsion->damping.value_or(torsional_damping_share.value); }

Source damping_source(const Case& value) {
  if (!value.torsion->damping) return torsional_damping_share.source;
  return {"damping of the line as the case states it", Standing::given};
}

/// The torsional line with how strongly each order pulses.
struct PulsingLine {
  TorsionLine line;
  std::size_t driveline = 0;           ///< index of the shaft that holds the joints
  double from_over_pto = 1.0;          ///< speed of that shaft over the PTO's
  std::vector<double> over_first;      ///< speed of each mass over that of the first
  std::vector<Stated<Torque>> torques; ///< amplitude of each order at its mass; the joints have none
  Angle equivalent{};                  ///< of the pair of joints at its worst in a driven state
  double loss_factor = 0.0;
};

PulsingLine pulsing_line(const Case& value, Angle equivalent) {
  PulsingLine made;
  made.line = torsion_line(value);
  const TorsionCase& torsion = *value.torsion;
  const auto joined = std::find_if(torsion.shafts.begin(), torsion.shafts.end(),
                                   [](const LineShaftCase& shaft) { return shaft.joints == true; });
  made.driveline = static_cast<std::size_t>(joined - torsion.shafts.begin());
  made.over_first = train_speed_ratios(made.line.train);
  made.from_over_pto = made.over_first[made.line.train.shafts[made.driveline].from] / made.line.pto_over_first;
  for (const LinePulse& pulse : torsion.pulses) made.torques.push_back(pulse.torque);
  made.torques.resize(made.line.orders.size());
  made.equivalent = equivalent;
  made.loss_factor = 2.0 * damping_of(value);
  // Play is judged by whether the torque keeps its sense, not by the linear response.
  for (TrainShaft& shaft : made.line.train.shafts) shaft.backlash = {};
  return made;
}

/// Amplitude of a pulse of the joints, two or four in a turn, at the driveline's own speed.
Angle lead_of(const PulsingLine& made, std::size_t order) {
  const int pulse = 1 + static_cast<int>(order - made.line.given);
  return made.from_over_pto * joint_pulse(made.equivalent, pulse);
}

/// Swing of the driveline's torque under one order, at the PTO's speed [N·m].
Torque swing_under(const PulsingLine& made, std::size_t order, AngularSpeed first_speed) {
  const ExcitationOrder& pulses = made.line.orders[order];
  const double turns = first_speed.value() * made.over_first[pulses.inertia] / (2.0 * pi);
  TorsionalTrain train = made.line.train;
  TorsionalExcitation excitation{hertz(pulses.per_turn * turns), {}, {}};
  for (TrainShaft& shaft : train.shafts) {
    shaft.damping = shaft_damping(shaft.stiffness, made.loss_factor, excitation.frequency);
  }
  if (made.torques[order]) {
    excitation.torques.push_back({pulses.inertia, {*made.torques[order], {}}});
  } else {
    excitation.leads.push_back({made.driveline, {lead_of(made, order), {}}});
  }
  const ForcedResponse response = forced_response(train, excitation).value;
  return response.torques[made.driveline].amplitude * made.from_over_pto;
}

/// All orders together at one speed; their phases are not known, so that their swings add up.
struct SwingAt {
  AngularSpeed first_speed{};
  Torque total{};
  Torque largest{};
  std::size_t order = 0; ///< with the largest swing
};

SwingAt swing_at(const PulsingLine& made, AngularSpeed first_speed) {
  SwingAt at{first_speed, {}, {}, 0};
  for (std::size_t order = 0; order < made.line.orders.size(); ++order) {
    const Torque swing = swing_under(made, order, first_speed);
    at.total += swing;
    if (swing <= at.largest) continue;
    at.largest = swing;
    at.order = order;
  }
  return at;
}

std::vector<AngularSpeed> speeds_to_look_at(const PulsingLine& made) {
  const SpeedRange& range = made.line.speeds;
  std::vector<AngularSpeed> speeds;
  speeds.reserve(speeds_of_scan);
  for (int i = 0; i < speeds_of_scan; ++i) {
    speeds.push_back(range.low + (static_cast<double>(i) / (speeds_of_scan - 1)) * (range.high - range.low));
  }
  for (const Interference& meeting : interference_table(made.line.train, made.line.orders, range)) {
    if (meeting.separation == 0.0) speeds.push_back(meeting.critical_speed);
  }
  return speeds;
}

SwingAt worst_swing(const PulsingLine& made) {
  SwingAt worst;
  for (const AngularSpeed& speed : speeds_to_look_at(made)) {
    const SwingAt at = swing_at(made, speed);
    if (at.total >= worst.total) worst = at;
  }
  return worst;
}

std::vector<std::string> missing_pulses(const Case& value, const Chain& chain, const MeanLoad& mean,
                                        const DrivelineOverRange& range) {
  std::vector<std::string> missing = torsion_missing(value);
  const auto append = [&](const std::vector<std::string>& more) {
    missing.insert(missing.end(), more.begin(), more.end());
  };
  const TorsionCase& torsion = *value.torsion;
  const bool joined = std::any_of(torsion.shafts.begin(), torsion.shafts.end(),
                                  [](const LineShaftCase& shaft) { return shaft.joints == true; });
  if (!joined) missing.emplace_back("torsion.shafts[].joints");
  for (std::size_t i = 0; i < torsion.pulses.size(); ++i) {
    if (!torsion.pulses[i].torque) missing.push_back("torsion.pulses[" + std::to_string(i) + "].torque");
  }
  append(chain.missing);
  append(mean.missing);
  append(range.missing_for_all());
  append(unstated({{value.driveline.joint_rating.has_value(), "driveline.joint_rating"},
                   {value.driveline.yoke_phase.has_value(), "driveline.yoke_phase"},
                   {value.driveline.front_joint_kind.has_value(), "driveline.front_joint_kind"},
                   {value.driveline.rear_joint_kind.has_value(), "driveline.rear_joint_kind"}}));
  return missing;
}

/// Up to the joints' rating and to the yield of the weakest part less its margin; a stop beyond rating or yield.
LimitBand pulsing_band(const Case& value, const DeviceWindow& weakest) {
  const Torque rating = *value.driveline.joint_rating;
  return {amount_of(std::min(rating, weakest.weakest_torque / yield_margin(value))),
          amount_of(std::min(rating, weakest.weakest_torque)),
          LimitSense::at_most,
          {{"forced response of the line as the case states it; swings of all pulses added", Standing::textbook},
           {"rating of the joints as the case states it", Standing::given},
           yield_margin_source(value),
           damping_source(value)}};
}

/// Least torque at which the device may let go.
Stated<Torque> device_at_least(const Case& value) {
  if (!value.overload || !value.overload->present) return {};
  const OverloadDevice& device = value.overload->item;
  if (!device.setting || !device.scatter) return {};
  return *device.setting * (1.0 - *device.scatter);
}

Finding judge_pulses(const Case& value, const Chain& chain, const MeanLoad& mean, const StateExtremes& over) {
  const PulsingLine made = pulsing_line(value, joint_angle_for_variation(over.variation.value));
  if (made.line.orders.empty()) { // two wide-angle joints and nothing else that is said to pulse
    return not_known(Check::pulsing_torque, "resonance.no_pulse", {"torsion.pulses"});
  }
  const SwingAt worst = worst_swing(made);
  const DeviceWindow weakest = device_window(Torque{}, chain.parts, 0.0, 1.0, yield_margin(value));
  const Torque peak = *mean.torque + worst.total;
  Finding finding = compare(Check::pulsing_torque, amount_of(peak), pulsing_band(value, weakest), "pulsing.in_work");
  if (finding.status != Status::ok) finding.advice = {"pulsing.reduce"};
  const Stated<Torque> device = device_at_least(value);
  if (device && *device < peak) { // it slips, or tires, in every pulse
    finding.status = worse(finding.status, Status::caution);
    finding.advice.push_back("pulsing.device");
  }
  // In work the line carries the need, elsewhere it may carry as little as in the lightest part of the working time.
  const Torque least = over.state == MachineState::working ? *mean.torque : lightest_load(value, mean);
  if (worst.total >= least && finding.status < Status::not_known) {
    finding.status = Status::not_known;
    finding.reason = least < *mean.torque ? "pulsing.reverses_light" : "pulsing.reverses";
    finding.advice = {"pulsing.reduce"};
  }
  finding.state = over.state;
  finding.facts = {fact("speed", worst.first_speed * made.line.pto_over_first),
                   fact("low", made.line.speeds.low * made.line.pto_over_first),
                   fact("high", made.line.speeds.high * made.line.pto_over_first),
                   fact("swing", worst.total),
                   fact("mean", *mean.torque),
                   fact("least", least),
                   fact("largest", worst.largest),
                   {"damping", Amount{damping_of(value), Kind::share}},
                   fact("part", PhraseId{weakest.weakest_name.data()}),
                   made.line.order_names[worst.order]};
  if (device) finding.facts.push_back(fact("device", *device));
  return finding;
}

/// The driven state in which the pulses fare worst.
Finding worst_of_states(const Case& value, const Chain& chain, const MeanLoad& mean, const DrivelineOverRange& range) {
  std::optional<Finding> worst;
  for (const StateExtremes& state : range.states) {
    if (!state.driven) continue;
    if (!is_finite(state.variation.value)) { // a joint at a right angle
      return not_known(Check::pulsing_torque, "pulsing.endless", {range_path(state.state)});
    }
    const Finding finding = judge_pulses(value, chain, mean, state);
    worst = worst ? worse_of(*worst, finding) : finding;
  }
  return worst ? *worst : not_known(Check::pulsing_torque, "pulsing.unstated", {range_path(MachineState::working)});
}

} // namespace

void check_pulsing_torque(const Case& value, const Chain& chain, const MeanLoad& mean, const DrivelineOverRange& range,
                          Findings& findings) {
  if (!value.torsion) {
    findings.not_examined(Check::pulsing_torque, {"torsion"});
    return;
  }
  const std::vector<std::string> missing = missing_pulses(value, chain, mean, range);
  if (!missing.empty() || chain.parts.empty() || !mean.torque) {
    findings.add(not_known(Check::pulsing_torque, "pulsing.unstated", missing));
    return;
  }
  try {
    findings.add(worst_of_states(value, chain, mean, range));
  } catch (const InputError&) {
    findings.add(not_known(Check::pulsing_torque, "vibration.extreme", {}));
  }
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
