// Start of the rotor, blockage and run-down, by simulation in time.

#include "assess/start.hpp"

#include "assess/steel.hpp"
#include "assess/torsion.hpp"

#include <fieldshaft/dynamics/simulation.hpp>
#include <fieldshaft/joint.hpp>
#include <fieldshaft/overload.hpp>
#include <fieldshaft/power.hpp>

#include <algorithm>
#include <array>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

constexpr Source simulation_source{"simulation with the engine holding its speed: laws of motion, joints exact",
                                   Standing::exact};

/// A blockage follows after the line has settled; its peak comes within a few swings.
constexpr Time settled = seconds(0.2);
constexpr Time after_blockage = seconds(0.3);
/// Far more than a line of the trade needs; one that is stiffer is not worth the wait.
constexpr std::size_t most_steps = 200000;
/// No start of the trade lasts longer.
constexpr Time longest_start = seconds(60.0);

bool has_device(const Case& value) { return value.overload && value.overload->present; }

std::vector<std::string> missing_device(const Case& value) {
  if (!value.overload) return {"overload"};
  if (!has_device(value)) return {};
  const OverloadDevice& device = value.overload->item;
  return unstated({{device.kind.has_value(), "overload.kind"},
                   {device.setting.has_value(), "overload.setting"},
                   {device.scatter.has_value(), "overload.scatter"},
                   {device.place.has_value(), "overload.place"}});
}

std::vector<std::string> missing_rotor(const Case& value) {
  const auto& rotor = value.implement.rotor;
  if (!rotor) return {"implement.rotor"};
  if (!rotor->present) return {};
  return unstated({{rotor->item.input_speed.has_value(), "implement.rotor.input_speed"},
                   {rotor->item.rotor_speed.has_value(), "implement.rotor.rotor_speed"}});
}

void append(std::vector<std::string>& to, const std::vector<std::string>& from) {
  to.insert(to.end(), from.begin(), from.end());
}

std::vector<std::string> missing_line(const Case& value, const DrivelineOverRange& range) {
  const StartCase& start = *value.start;
  const PtoGear* gear = selected_gear(value);
  auto missing = unstated({{start.clutch_ramp.has_value(), "start.clutch_ramp"},
                           {start.tractor_inertia.has_value(), "start.tractor_inertia"},
                           {start.driveline_inertia.has_value(), "start.driveline_inertia"},
                           {start.driveline_stiffness.has_value(), "start.driveline_stiffness"},
                           {start.backlash.has_value(), "start.backlash"},
                           {start.rotor_inertia.has_value(), "start.rotor_inertia"},
                           {start.rotor_friction.has_value(), "start.rotor_friction"},
                           {start.rotor_windage.has_value(), "start.rotor_windage"},
                           {value.tractor.pto.clutch_torque.has_value(), "tractor.pto.clutch_torque"},
                           {gear != nullptr && gear->pto_speed, "tractor.pto.selected"}});
  append(missing, missing_device(value));
  append(missing, missing_rotor(value));
  append(missing, range.missing_for(MachineState::working));
  // What is not known of the joints would pass as even running.
  append(missing, unstated({{value.driveline.yoke_phase.has_value(), "driveline.yoke_phase"},
                            {value.driveline.front_joint_kind.has_value(), "driveline.front_joint_kind"},
                            {value.driveline.rear_joint_kind.has_value(), "driveline.rear_joint_kind"}}));
  return missing;
}

/// Speed of the rotor over that of the input; a machine without rotor has its inertia at the input.
double rotor_ratio(const Case& value) {
  const Fitted<RotorCase>& rotor = *value.implement.rotor;
  return rotor.present ? gear_ratio(*rotor.item.input_speed, *rotor.item.rotor_speed) : 1.0;
}

/// The rotor as it is felt at the input.
LineBody rotor_body(const Case& value) {
  const double ratio = rotor_ratio(value);
  LineBody rotor{"rotor", referred_inertia(*value.start->rotor_inertia, ratio)};
  rotor.load.friction = *value.start->rotor_friction * ratio;
  rotor.load.windage = *value.start->rotor_windage * ratio;
  const Fitted<RotorCase>& stated = *value.implement.rotor;
  rotor.load.windage_speed = stated.present ? *stated.item.input_speed : *selected_gear(value)->pto_speed;
  return rotor;
}

/// Where in its scatter a device is looked at: what may arrive at the upper end, what must hold at the lower one.
enum class ScatterEnd { lower, setting, upper };

Torque device_torque(const OverloadDevice& device, ScatterEnd end) {
  if (end == ScatterEnd::setting) return *device.setting;
  return *device.setting * (1.0 + (end == ScatterEnd::upper ? *device.scatter : -*device.scatter));
}

LineLink device_link(const OverloadDevice& device, ScatterEnd end) {
  const Torque torque = device_torque(device, end);
  switch (*device.kind) {
  case DeviceKind::shear_bolt: return LineShearBolt{torque};
  case DeviceKind::cut_out_clutch: return LineCutOut{torque};
  case DeviceKind::friction_clutch: break;
  }
  return LineClutch{torque};
}

/// A joint as uneven as the pair is at its worst in work.
LineShaft shaft_link(const Case& value, const DrivelineOverRange& range) {
  const StartCase& start = *value.start;
  LineShaft shaft{*start.driveline_stiffness};
  const double critical = 2.0 * std::sqrt(start.driveline_stiffness->value() * start.driveline_inertia->value());
  shaft.damping = newton_metre_seconds_per_radian(torsional_damping_share.value * critical);
  shaft.backlash = *start.backlash;
  const double variation = range.find(MachineState::working)->variation.value;
  shaft.joints = LineJoints{joint_angle_for_variation(variation)};
  return shaft;
}

/// Index of the body that turns with the PTO.
constexpr std::size_t tractor_body = 1;

/// Engine, PTO clutch, tractor's side, driveline, device and rotor, in their order.
struct StartLine {
  PtoLine line;
  std::size_t shaft = 0;
  std::optional<std::size_t> device;
};

StartLine line_of(const Case& value, const DrivelineOverRange& range, bool with_device,
                  ScatterEnd end = ScatterEnd::upper) {
  const StartCase& start = *value.start;
  const LineBody engine{"engine", kilogram_square_metres(1), *selected_gear(value)->pto_speed, HeldSpeed{}};
  const LineBody driveline{"driveline", *start.driveline_inertia};
  const LineShaft shaft = shaft_link(value, range);
  LineBody rotor = rotor_body(value);
  StartLine made;
  made.line.bodies = {engine, {"tractor", *start.tractor_inertia}};
  made.line.links = {LineClutch{*value.tractor.pto.clutch_torque, seconds(0), *start.clutch_ramp}};
  made.shaft = 1;
  if (with_device && has_device(value)) {
    const bool in_front = value.overload->item.place == DevicePlace::tractor_end;
    const LineLink device = device_link(value.overload->item, end);
    made.line.bodies.push_back(driveline);
    made.line.links.push_back(in_front ? device : LineLink{shaft});
    made.line.links.push_back(in_front ? LineLink{shaft} : device);
    made.shaft = in_front ? 2 : 1;
    made.device = in_front ? 1 : 2;
  } else {
    rotor.inertia += driveline.inertia; // nothing parts them
    made.line.links.emplace_back(shaft);
  }
  made.line.bodies.push_back(rotor);
  return made;
}

Torque greatest_torque(const SimulationResult& result, std::size_t link) {
  const LinkResult& shaft = result.links[link];
  return std::max(math::abs(shaft.peak.torque), math::abs(shaft.peak_driving.torque));
}

/// Time enough for the start: several times that of a clutch of the same torque, and the ramp.
SimulationSettings start_settings(const Case& value, const PtoLine& line) {
  MomentOfInertia inertia{};
  for (std::size_t i = 1; i < line.bodies.size(); ++i) inertia += line.bodies[i].inertia;
  const Torque load = line.bodies.back().load.friction + line.bodies.back().load.windage;
  Torque torque = *value.tractor.pto.clutch_torque;
  if (has_device(value)) torque = std::min(torque, *value.overload->item.setting);
  const ClutchEngagement alone = clutch_engagement(inertia, line.bodies.front().speed, torque, load);
  SimulationSettings settings;
  settings.max_steps = most_steps;
  const double wanted = value.start->clutch_ramp->value() + 3.0 * alone.time.value() + 1.0;
  settings.duration = seconds(std::fmin(wanted, longest_start.value()));
  return settings;
}

SimulationResult run_start(const Case& value, const StartLine& made) {
  return simulate(made.line, start_settings(value, made.line));
}

/// Share of the drive's speed at which a rotor counts as taken along; uneven joints leave it swinging about that speed.
constexpr double taken_along = 0.9;

/// Whether the clutch has closed and the rotor turns with it. Behind a device that slips on or has broken it does not.
bool rotor_follows(const StartLine& made, const SimulationResult& result) {
  return result.links[0].locked_at && result.bodies.back().speed >= taken_along * made.line.bodies.front().speed;
}

/// The line at speed, its clutch closed.
void set_running(StartLine& made) {
  for (LineBody& body : made.line.bodies) body.speed = made.line.bodies.front().speed;
  std::get<LineClutch>(made.line.links.front()).ramp = seconds(0);
}

/// A rotor that something stops within a time; 0: at once. What stops it takes the torque of the line besides, so that
/// the rotor comes to rest however hard it is driven.
SimulationResult run_blockage(StartLine made, Time within, Torque line_torque) {
  set_running(made);
  LineBody& rotor = made.line.bodies.back();
  if (within > Time{}) {
    const double stopping = rotor.inertia.value() * rotor.speed.value() / within.value();
    rotor.brakes.push_back({settled, newton_metres(stopping) + line_torque});
  } else {
    rotor.blocked_at = settled;
  }
  SimulationSettings settings;
  settings.max_steps = most_steps;
  settings.duration = settled + after_blockage;
  return simulate(made.line, settings);
}

/// A stop at once is the worst for a slip clutch and the best for a bolt, which breaks by the inertia on its own side
/// before the shaft is twisted; a jam takes some milliseconds.
constexpr std::array<Time, 6> stopping_times{seconds(0.002), seconds(0.005), seconds(0.01),
                                             seconds(0.02),  seconds(0.035), seconds(0.05)};

/// The blockage with the highest torque in the line.
struct WorstBlockage {
  SimulationResult result;
  Time within{};
};

WorstBlockage worst_blockage(const Case& value, const StartLine& made) {
  WorstBlockage worst{run_blockage(made, Time{}, Torque{}), Time{}};
  if (!made.device || value.overload->item.kind == DeviceKind::friction_clutch) return worst;
  const Torque upper = device_torque(value.overload->item, ScatterEnd::upper);
  for (const Time& within : stopping_times) {
    if (!worst.result.complete) return worst;
    SimulationResult result = run_blockage(made, within, upper);
    const bool takes_over =
        !result.complete || greatest_torque(result, made.shaft) > greatest_torque(worst.result, made.shaft);
    if (takes_over) worst = {std::move(result), within};
  }
  return worst;
}

/// Yield of the weakest part by its margin, and without it.
LimitBand weakest_band(const DeviceWindow& weakest, const Case& value) {
  return {amount_of(weakest.weakest_torque / yield_margin(value)),
          amount_of(weakest.weakest_torque),
          LimitSense::at_most,
          {{"yield of the weakest part by the greatest-shear theory, static", Standing::textbook},
           yield_margin_source(value),
           simulation_source,
           torsional_damping_share.source}};
}

/// The numbers that a peak's finding mentions.
Finding peak_finding(Check check, Torque peak, const DeviceWindow& weakest, const Case& value, const char* reason) {
  Finding finding = compare(check, amount_of(peak), weakest_band(weakest, value), reason);
  finding.facts = {fact("part", PhraseId{weakest.weakest_name.data()}), fact("part_torque", weakest.weakest_torque)};
  return finding;
}

/// A simulation that ended early proves nothing.
bool ended_early(const SimulationResult& result, Check check, Findings& findings) {
  if (result.complete) return false;
  Finding finding = not_known(check, "simulated.ended_early", {});
  finding.facts = {fact("reached", result.reached)};
  findings.add(std::move(finding));
  return true;
}

/// Torque that a start brings to the device.
Torque brought_to(const StartLine& made, const SimulationResult& result) {
  return math::abs(result.links[*made.device].peak.torque);
}

/// A start must go on with the device at the lower end of its scatter too. Where it lets go at its very setting that is
/// a stop, where its scatter alone lets it, a caution.
void judge_holding(const Case& value, const DrivelineOverRange& range, Torque brought, Finding& finding) {
  const OverloadDevice& device = value.overload->item;
  if (brought <= device_torque(device, ScatterEnd::lower)) return; // it is a stiff link in this start anyway
  const auto holds = [&](ScatterEnd end) {
    const StartLine made = line_of(value, range, true, end);
    return rotor_follows(made, run_start(value, made));
  };
  if (holds(ScatterEnd::lower)) return; // it slips on the way, and the rotor follows
  const bool at_setting = holds(ScatterEnd::setting);
  finding.facts.push_back(fact("setting", *device.setting));
  finding.facts.push_back(fact("least", device_torque(device, ScatterEnd::lower)));
  finding.facts.push_back(fact("brought", brought));
  finding.advice.emplace_back("simulated.hold");
  const Status status = at_setting ? Status::caution : Status::stop;
  if (status < finding.status) return;
  finding.status = status;
  finding.reason = at_setting ? "simulated.may_let_go" : "simulated.lets_go";
}

void judge_peak(const Case& value, const StartLine& made, const SimulationResult& result, const DeviceWindow& weakest,
                const DrivelineOverRange& range, Findings& findings) {
  if (ended_early(result, Check::simulated_start, findings)) return;
  if (!rotor_follows(made, result)) {
    Finding finding = make_finding(Check::simulated_start, Status::stop, "simulated.never_follows");
    finding.facts = {fact("clutch", *value.tractor.pto.clutch_torque), fact("reached", result.reached),
                     fact("rotor", result.bodies.back().speed)};
    finding.basis = {simulation_source};
    findings.add(std::move(finding));
    return;
  }
  Finding finding = peak_finding(Check::simulated_start, greatest_torque(result, made.shaft), weakest, value,
                                 made.device ? "simulated.start_with_device" : "simulated.start");
  finding.facts.push_back(fact("time", *result.links[0].locked_at));
  if (made.device) finding.facts.push_back(fact("slip", result.links[*made.device].slip_time));
  if (finding.status != Status::ok) finding.advice = {"start.gently"};
  if (made.device) judge_holding(value, range, brought_to(made, result), finding);
  findings.add(std::move(finding));
}

void judge_heat(const Case& value, const StartLine& made, const SimulationResult& result, Findings& findings) {
  if (ended_early(result, Check::clutch_heat, findings)) return;
  const Energy heat = result.links[0].heat;
  Finding finding;
  if (!rotor_follows(made, result)) {
    finding = make_finding(Check::clutch_heat, Status::stop, "simulated.heat_without_end");
  } else if (value.limits.clutch_heat) {
    const Amount limit = amount_of(*value.limits.clutch_heat);
    finding = compare(Check::clutch_heat, amount_of(heat),
                      {limit, limit, LimitSense::at_most, {{"heat of a start as the case states it", Standing::given}}},
                      "simulated.heat");
  } else {
    finding = make_finding(Check::clutch_heat, Status::caution, "simulated.heat_without_limit");
    finding.value = amount_of(heat);
  }
  if (finding.status != Status::ok) finding.advice = {"simulated.cool"};
  finding.basis.push_back(simulation_source);
  finding.facts = {fact("slip", result.links[0].slip_time)};
  findings.add(std::move(finding));
}

/// A friction clutch goes on slipping, and heating, as long as the tractor drives it. Of other devices it is said in
/// which time the rotor was stopped.
void add_slip(const Case& value, const WorstBlockage& worst, const LinkResult& device, Finding& finding) {
  if (value.overload->item.kind != DeviceKind::friction_clutch) {
    finding.facts.push_back(fact("within", worst.within));
    finding.reason = "blocked.within";
    return;
  }
  if (!(device.slip_time > Time{})) return;
  finding.reason = "blocked.slips";
  finding.facts.push_back(fact("heating", device.heat / device.slip_time));
}

void judge_blockage(const Case& value, const StartLine& made, const DrivelineOverRange& range,
                    const DeviceWindow& weakest, Findings& findings) {
  const WorstBlockage worst = worst_blockage(value, made);
  const SimulationResult& result = worst.result;
  if (ended_early(result, Check::simulated_blockage, findings)) return;
  Finding finding = peak_finding(Check::simulated_blockage, greatest_torque(result, made.shaft), weakest, value,
                                 made.device ? "blocked.device" : "blocked.no_device");
  if (made.device) {
    const StartLine bare = line_of(value, range, false);
    const SimulationResult without = run_blockage(bare, Time{}, Torque{});
    finding.facts.push_back(fact("without", greatest_torque(without, bare.shaft)));
    finding.facts.push_back(fact("setting", *value.overload->item.setting));
    add_slip(value, worst, result.links[*made.device], finding);
  }
  if (finding.status != Status::ok) finding.advice = {made.device ? "blocked.lower" : "blocked.fit"};
  findings.add(std::move(finding));
}

/// Start, heat and blockage of a line that is known; the peaks where the parts are known too.
void judge_start(const Case& value, const Chain& chain, const DrivelineOverRange& range, bool peaks_known,
                 Findings& findings) {
  const StartLine made = line_of(value, range, true);
  const SimulationResult result = run_start(value, made);
  if (!peaks_known) {
    judge_heat(value, made, result, findings);
    return;
  }
  const DeviceWindow weakest = device_window(Torque{}, chain.parts, 0.0, 1.0, yield_margin(value));
  judge_peak(value, made, result, weakest, range, findings);
  judge_heat(value, made, result, findings);
  judge_blockage(value, made, range, weakest, findings);
}

/// The tractor's clutch lets go and its brake stops the PTO: without an overrunning clutch the rotor drives the line
/// on, and brings its torque from behind.
SimulationResult run_braked_stop(const Case& value, StartLine made) {
  set_running(made);
  std::get<LineClutch>(made.line.links.front()).release_at = settled;
  const Torque brake = *value.tractor.pto.brake_torque;
  MomentOfInertia inertia{};
  for (std::size_t i = tractor_body; i < made.line.bodies.size(); ++i) inertia += made.line.bodies[i].inertia;
  const double stops = inertia.value() * made.line.bodies.front().speed.value() / brake.value();
  made.line.bodies[tractor_body].brakes.push_back({settled, brake});
  SimulationSettings settings;
  settings.max_steps = most_steps;
  settings.duration = seconds(std::fmin((settled + after_blockage).value() + stops, longest_start.value()));
  return simulate(made.line, settings);
}

std::vector<std::string> missing_braked_stop(const Case& value, const DrivelineOverRange& range, const Chain& chain) {
  std::vector<std::string> missing = missing_line(value, range);
  append(missing, unstated({{value.start->overrunning_clutch.has_value(), "start.overrunning_clutch"},
                            {value.tractor.pto.brake_torque.has_value(), "tractor.pto.brake_torque"}}));
  append(missing, chain.missing);
  return missing;
}

void judge_braked_stop(const Case& value, const DrivelineOverRange& range, const Chain& chain, Findings& findings) {
  const StartLine made = line_of(value, range, true);
  const SimulationResult result = run_braked_stop(value, made);
  if (ended_early(result, Check::braked_stop, findings)) return;
  const DeviceWindow weakest = device_window(Torque{}, chain.parts, 0.0, 1.0, yield_margin(value));
  Finding finding =
      peak_finding(Check::braked_stop, greatest_torque(result, made.shaft), weakest, value, "braked.peak");
  finding.facts.push_back(fact("brake", *value.tractor.pto.brake_torque));
  if (finding.status != Status::ok) finding.advice = {"braked.overrun"};
  findings.add(std::move(finding));
}

/// Only a line without overrunning clutch feels the brake of the PTO.
void check_braked_stop(const Case& value, const DrivelineOverRange& range, const Chain& chain, Findings& findings) {
  constexpr Check check = Check::braked_stop;
  if (value.start->overrunning_clutch == true) {
    findings.not_examined(check);
    return;
  }
  const bool no_brake = value.tractor.pto.brake_torque == Torque{};
  const std::vector<std::string> missing = missing_braked_stop(value, range, chain);
  if (no_brake) {
    findings.add(make_finding(check, Status::ok, "braked.no_brake"));
  } else if (!missing.empty() || chain.parts.empty() || range.find(MachineState::working) == nullptr) {
    findings.add(not_known(check, "braked.unstated", missing));
  } else {
    judge_braked_stop(value, range, chain, findings);
  }
}

} // namespace

void check_start(const Case& value, const Chain& chain, const DrivelineOverRange& range, Findings& findings) {
  constexpr Check checks[] = {Check::simulated_start, Check::clutch_heat, Check::simulated_blockage,
                              Check::braked_stop};
  if (!value.start) {
    for (const Check check : checks) findings.not_examined(check, {"start"});
    return;
  }
  const StateExtremes* working = range.find(MachineState::working);
  if (working != nullptr && !is_finite(working->variation.value)) { // a joint at a right angle
    for (const Check check : checks) findings.add(not_known(check, "simulated.endless", {"range.working"}));
    return;
  }
  const std::vector<std::string> of_line = missing_line(value, range);
  std::vector<std::string> of_peak = of_line;
  append(of_peak, chain.missing);
  const bool line_known = of_line.empty() && working != nullptr;
  const bool peaks_known = line_known && of_peak.empty() && !chain.parts.empty();
  if (!peaks_known) findings.add(not_known(Check::simulated_start, "simulated.unstated", of_peak));
  if (!line_known) findings.add(not_known(Check::clutch_heat, "simulated.unstated", of_line));
  if (!peaks_known) findings.add(not_known(Check::simulated_blockage, "simulated.unstated", of_peak));
  if (line_known) judge_start(value, chain, range, peaks_known, findings);
  check_braked_stop(value, range, chain, findings);
}

namespace {

/// What runs on, at the rotor's own speed: with an overrunning clutch the rotor alone.
MomentOfInertia coasting_inertia(const Case& value, double ratio) {
  const StartCase& start = *value.start;
  MomentOfInertia inertia = *start.rotor_inertia;
  if (start.overrunning_clutch == true) return inertia;
  if (start.driveline_inertia) inertia += referred_inertia(*start.driveline_inertia, 1.0 / ratio);
  if (start.tractor_inertia) inertia += referred_inertia(*start.tractor_inertia, 1.0 / ratio);
  return inertia;
}

std::vector<std::string> missing_run_down(const Case& value) {
  const PtoGear* gear = selected_gear(value);
  auto missing = unstated({{value.start->rotor_inertia.has_value(), "start.rotor_inertia"},
                           {value.start->rotor_friction.has_value(), "start.rotor_friction"},
                           {gear != nullptr && gear->pto_speed, "tractor.pto.selected"}});
  append(missing, missing_rotor(value));
  return missing;
}

} // namespace

void check_run_down(const Case& value, Findings& findings) {
  if (!value.start) {
    findings.not_examined(Check::run_down, {"start"});
    return;
  }
  const auto missing = missing_run_down(value);
  if (!missing.empty()) {
    findings.add(not_known(Check::run_down, "run_down.unstated", missing));
    return;
  }
  const double ratio = rotor_ratio(value);
  const AngularSpeed speed = *selected_gear(value)->pto_speed * ratio;
  const Fitted<RotorCase>& rotor = *value.implement.rotor;
  const double share = rotor.present ? static_cast<double>(speed / *rotor.item.rotor_speed) : 1.0;
  const Torque windage = value.start->rotor_windage.value_or(Torque{}) * (share * share);
  const Time time = run_down_time(coasting_inertia(value, ratio), speed, *value.start->rotor_friction, windage);
  const bool overruns = value.start->overrunning_clutch == true;
  // A time is never a permission: whatever it is, nothing may be approached before everything stands.
  Finding finding =
      make_finding(Check::run_down, Status::caution, overruns ? "run_down.overrunning" : "run_down.coupled");
  finding.value = amount_of(time);
  finding.advice = {"run_down.wait"};
  finding.facts = {fact("speed", speed)};
  finding.basis = {{"integration of friction and windage over the speed", Standing::exact}};
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
