// Whirling of the telescope over its lengths, pulses that meet a natural frequency of the line, and the torque that
// uneven joints add.

#include "assess/checks.hpp"
#include "assess/geometry.hpp"
#include "assess/limits.hpp"
#include "assess/loads.hpp"
#include "assess/phase.hpp"
#include "assess/positions.hpp"
#include "assess/torsion.hpp"

#include <fieldshaft/dynamics.hpp>
#include <fieldshaft/joint.hpp>
#include <fieldshaft/materials.hpp>
#include <fieldshaft/overload/overrun.hpp>
#include <fieldshaft/pto.hpp>

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

bool says_nothing(const TubeProfile& tube) {
  return !tube.outer_diameter && !tube.inner_diameter && !tube.enclosed_area && !tube.perimeter && !tube.wall &&
         !tube.second_moment;
}

void add_missing_tube(const TubeProfile& tube, const std::string& path, std::vector<std::string>& missing) {
  const bool profile = tube.enclosed_area || tube.perimeter || tube.wall || tube.second_moment;
  const auto want = [&](bool stated, const char* entry) {
    if (!stated) missing.push_back(path + entry);
  };
  if (profile) {
    want(tube.perimeter.has_value(), ".perimeter");
    want(tube.wall.has_value(), ".wall");
    want(tube.second_moment.has_value(), ".second_moment");
  } else {
    want(tube.outer_diameter.has_value(), ".outer_diameter");
    want(tube.inner_diameter.has_value(), ".inner_diameter");
  }
}

/// Second moment and area of a member.
struct MemberSection {
  SecondMomentOfArea second_moment;
  Area area;
};

MemberSection member_section(const TubeProfile& tube) {
  if (!tube.outer_diameter) return {*tube.second_moment, *tube.perimeter * *tube.wall};
  if (tube.inner_diameter->value() == 0.0) {
    const SolidSection solid(*tube.outer_diameter);
    return {solid.second_moment(), solid.area()};
  }
  const TubeSection round(*tube.outer_diameter, *tube.inner_diameter);
  return {round.second_moment(), round.area()};
}

/// The thin round tube that has the same radius of gyration, for the correction that asks for a round one.
TubeSection like_tube(const MemberSection& section) {
  const Length outer = math::sqrt(8.0 * (section.second_moment / section.area));
  return {outer, 0.999 * outer};
}

WhirlMember member(const MemberSection& section, Length length) {
  return {{length, steel::youngs_modulus.value * section.second_moment, steel::density.value * section.area}, {}, {}};
}

/// The lengths that the driveline takes while it turns.
struct DrivenLengths {
  const StateExtremes* longest = nullptr;
  const StateExtremes* shortest = nullptr;
};

DrivenLengths driven_lengths(const DrivelineOverRange& range) {
  DrivenLengths lengths;
  for (const StateExtremes& state : range.states) {
    if (!state.driven) continue;
    if (lengths.longest == nullptr || state.longest.value > lengths.longest->longest.value) lengths.longest = &state;
    if (lengths.shortest == nullptr || state.shortest.value < lengths.shortest->shortest.value) {
      lengths.shortest = &state;
    }
  }
  return lengths;
}

std::vector<std::string> whirl_missing(const Case& value, const DrivelineOverRange& range) {
  std::vector<std::string> missing = telescope_missing(value, range);
  add_missing_tube(value.driveline.tube, "driveline.tube", missing);
  add_missing_tube(value.driveline.other_tube, "driveline.other_tube", missing);
  if (value.driveline.middle_member) {
    add_missing_tube(value.driveline.middle_member->tube, "driveline.middle_member.tube", missing);
  }
  for (std::string& path : high_idle_missing(value)) missing.push_back(std::move(path));
  return missing;
}

LimitBand whirl_band(const Case& value) {
  LimitBand band{{working_speed_share.low.value, Kind::share},
                 {working_speed_share.high.value, Kind::share},
                 LimitSense::at_most,
                 {working_speed_share.low.source,
                  working_speed_share.high.source,
                  overlap_stiffness_share.source,
                  steel::youngs_modulus.source,
                  {"all members taken as equally long", Standing::common_practice}}};
  if (!value.limits.critical_speed_share) return band;
  return with_stated(band, {*value.limits.critical_speed_share, Kind::share},
                     "share of the critical speed as the case states it");
}

/// The telescope of the case, its members taken as equally long.
struct WhirlingCase {
  WhirlTelescope telescope;
  std::vector<MemberSection> sections;
  Length apart{}; ///< joint centre distance from which members come apart
};

WhirlingCase whirling_case(const Case& value) {
  const DrivelineCase& line = value.driveline;
  const Length closed = line.closed_length->value;
  const Length overlap = line.closed_overlap->value;
  WhirlingCase whirling{{}, {member_section(line.tube), member_section(line.other_tube)}, closed + overlap};
  const auto of = [&whirling](std::size_t i, Length length) { return member(whirling.sections[i], length); };
  if (!line.middle_member) {
    const Length each = 0.5 * (closed + overlap);
    whirling.telescope = {of(0, each), of(1, each)};
    return whirling;
  }
  const MiddleMember& middle = *line.middle_member;
  const Length second = middle.closed_overlap->value;
  const Length each = (closed + overlap + second) / 3.0;
  whirling.sections.push_back(member_section(middle.tube));
  whirling.telescope = {of(0, each), of(1, each)};
  const auto kept = [](Length whole, const Stated<Length>& travel) { return travel ? whole - *travel : Length{}; };
  whirling.telescope.middle = WhirlMiddle{of(2, each).tube, overlap, kept(overlap, line.greatest_travel), second,
                                          kept(second, middle.greatest_travel)};
  whirling.apart =
      closed + (overlap - whirling.telescope.middle->front_least) + (second - whirling.telescope.middle->rear_least);
  return whirling;
}

void judge_whirling(const Case& value, const DrivenLengths& lengths, Findings& findings) {
  const WhirlingCase whirling = whirling_case(value);
  const std::vector<MemberSection>& sections = whirling.sections;
  const WhirlTelescope& telescope = whirling.telescope;
  const Length closed = value.driveline.closed_length->value;
  const Length longest = lengths.longest->longest.value;
  if (!(longest < whirling.apart)) {
    findings.add(not_known(Check::whirling, "whirl.apart", {}));
    return;
  }
  // Shorter than closed it cannot be: there the members bottom, which is another finding.
  const Length shortest = std::min(longest, std::max(closed, lengths.shortest->shortest.value));
  const AngularSpeed speed = *pto_speed_at_high_idle(value);
  const WhirlExtreme least = least_critical_speed(telescope, shortest, longest, speed);
  Validated<double> excess = slender_tube_excess(like_tube(sections[0]), least.at);
  for (const MemberSection& section : sections) {
    const Validated<double> of_member = slender_tube_excess(like_tube(section), least.at);
    if (of_member.value > excess.value) excess = of_member;
  }
  if (!excess.valid()) {
    findings.add(not_known(Check::whirling, "whirl.stout", {}));
    return;
  }
  const AngularSpeed critical = least.critical_speed * (1.0 - excess.value);
  Finding finding = compare(Check::whirling, {static_cast<double>(speed / critical), Kind::share}, whirl_band(value),
                            "whirl.in_range");
  if (least.at == longest) {
    finding.state = lengths.longest->state;
    finding.pose = lengths.longest->longest.pose;
  }
  finding.facts = {fact("speed", speed), fact("critical", critical), fact("length", least.at)};
  if (finding.status != Status::ok) finding.advice = {"whirl.shorten"};
  findings.add(std::move(finding));
}

void check_whirling(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  if (says_nothing(value.driveline.other_tube)) {
    findings.not_examined(Check::whirling, {"driveline.other_tube"});
    return;
  }
  const std::vector<std::string> missing = whirl_missing(value, range);
  const DrivenLengths lengths = driven_lengths(range);
  if (!missing.empty() || lengths.longest == nullptr) {
    findings.add(not_known(Check::whirling, "whirl.unstated", missing));
    return;
  }
  try {
    judge_whirling(value, lengths, findings);
  } catch (const InputError&) {
    findings.add(not_known(Check::whirling, "vibration.extreme", {}));
  }
}

LimitBand resonance_band(const Case& value) {
  LimitBand band{{wide_separation.value, Kind::share},
                 {least_separation.value, Kind::share},
                 LimitSense::at_least,
                 {wide_separation.source,
                  least_separation.source,
                  {"torsional line as the case states it, undamped", Standing::given}}};
  if (!value.limits.resonance_separation) return band;
  return with_stated(band, {*value.limits.resonance_separation, Kind::share},
                     "separation from resonance as the case states it");
}

/// Where so many of the orders come nearest to a natural frequency.
Interference nearest_meeting(const TorsionLine& line, std::size_t orders) {
  const std::vector<ExcitationOrder> first(line.orders.begin(),
                                           line.orders.begin() + static_cast<std::ptrdiff_t>(orders));
  const std::vector<Interference> table = interference_table(line.train, first, line.speeds);
  return *std::min_element(table.begin(), table.end(),
                           [](const Interference& a, const Interference& b) { return a.separation < b.separation; });
}

/// All orders but the joints' four pulses in a turn, which are weak: how weak is the matter of strength.pulsing_torque.
std::size_t strong_orders(const TorsionLine& line) { return std::min(line.orders.size(), line.given + 1); }

void add_meeting(const TorsionLine& line, const Interference& meeting, Finding& finding) {
  finding.facts = {line.order_names[meeting.order], fact("natural", meeting.natural),
                   fact("critical", meeting.critical_speed * line.pto_over_first),
                   fact("low", line.speeds.low * line.pto_over_first),
                   fact("high", line.speeds.high * line.pto_over_first)};
}

/// The joints' four pulses in a turn make a pass a caution, and never a stop.
void add_weak_pulses(const Case& value, const TorsionLine& line, Finding& finding) {
  const Interference weak = nearest_meeting(line, line.orders.size());
  const Finding of_weak = compare(Check::resonance, {weak.separation, Kind::share}, resonance_band(value),
                                  weak.separation > 0.0 ? "resonance.apart" : "resonance.weak_within");
  if (finding.status != Status::ok || of_weak.status == Status::ok) return;
  finding = of_weak;
  finding.status = Status::caution;
  add_meeting(line, weak, finding);
}

/// Whether a gear drives the implement at its speed and the line can be examined in it.
bool serves(const Case& in_gear, const PtoGear& gear) {
  const Stated<AngularSpeed>& wanted = in_gear.implement.input_speed;
  return wanted && gear.pto_speed && is_nominal_speed(*gear.pto_speed, *wanted) && torsion_missing(in_gear).empty();
}

/// An economy gear turns the PTO alike, but the engine slower: it pulses elsewhere and is felt as another inertia. Says
/// which of the other gears for this implement comes nearest to a resonance, where it comes too near.
void add_other_gear(const Case& value, Finding& finding) {
  Case in_gear = value;
  double nearest = wide_separation.value;
  std::vector<Fact> facts;
  for (const PtoGear& gear : value.tractor.pto.gears) {
    in_gear.tractor.pto.selected = gear.name;
    if (gear.name == value.tractor.pto.selected || !serves(in_gear, gear)) continue;
    const TorsionLine line = torsion_line(in_gear);
    const Interference meeting = nearest_meeting(line, strong_orders(line));
    if (meeting.separation >= nearest) continue;
    nearest = meeting.separation;
    facts = {fact("gear", gear.name),
             {"gear_pulses", line.order_names[meeting.order].value},
             fact("gear_natural", meeting.natural),
             fact("gear_critical", meeting.critical_speed * line.pto_over_first),
             {"gear_separation", Amount{meeting.separation, Kind::share}}};
  }
  if (facts.empty()) return;
  finding.advice.push_back("resonance.other_gear");
  finding.facts.insert(finding.facts.end(), facts.begin(), facts.end());
}

void judge_resonance(const Case& value, Findings& findings) {
  const TorsionLine line = torsion_line(value);
  if (line.orders.empty()) { // two wide-angle joints and nothing else that is said to pulse
    findings.add(not_known(Check::resonance, "resonance.no_pulse", {"torsion.pulses"}));
    return;
  }
  const Interference worst = nearest_meeting(line, strong_orders(line));
  Finding finding = compare(Check::resonance, {worst.separation, Kind::share}, resonance_band(value),
                            worst.separation > 0.0 ? "resonance.apart" : "resonance.within");
  add_meeting(line, worst, finding);
  add_weak_pulses(value, line, finding);
  if (finding.status != Status::ok) finding.advice = {"resonance.shift"};
  // With play the line is linear only while its torque keeps its sense: a pass needs to know how far it swings.
  if (line.play && finding.status == Status::ok) {
    finding.reason = "resonance.apart_with_play";
    if (!value.implement.torque_swing)
      finding = not_known(Check::resonance, "resonance.play", {"implement.torque_swing"});
  }
  add_other_gear(value, finding);
  findings.add(std::move(finding));
}

void check_resonance(const Case& value, Findings& findings) {
  if (!value.torsion) {
    findings.not_examined(Check::resonance, {"torsion"});
    return;
  }
  const std::vector<std::string> missing = torsion_missing(value);
  if (!missing.empty()) {
    findings.add(not_known(Check::resonance, "resonance.unstated", missing));
    return;
  }
  try {
    judge_resonance(value, findings);
  } catch (const InputError&) {
    findings.add(not_known(Check::resonance, "vibration.extreme", {}));
  }
}

/// Torque swing of uneven running as a share of the mean torque: at half of it a rule of thumb of this library objects;
/// at the whole the torque reverses twice in every turn and the line hammers through its play.
constexpr Sourced<Interval<double>> swing_of_mean{
    {0.5, 1.0},
    {"swing below half of the mean torque: a rule of thumb and default of this library; above the whole it reverses",
     Standing::common_practice}};

/// Everything behind the driveline as felt at its speed.
Stated<MomentOfInertia> inertia_at_input(const Case& value) {
  const auto& rotor = value.implement.rotor;
  if (!value.start || !value.start->rotor_inertia) return {};
  if (!rotor || !rotor->present || !rotor->item.input_speed || !rotor->item.rotor_speed) return {};
  return referred_inertia(*value.start->rotor_inertia, gear_ratio(*rotor->item.input_speed, *rotor->item.rotor_speed));
}

std::vector<std::string> swing_missing(const Case& value, const DrivelineOverRange& range, const MeanLoad& mean) {
  std::vector<std::string> missing = mean.missing;
  for (auto& path : range.missing_for_all()) missing.push_back(std::move(path));
  for (auto& path : working_speeds_missing(value)) missing.push_back(std::move(path));
  for (auto& path : unstated({{value.start->driveline_stiffness.has_value(), "start.driveline_stiffness"},
                              {value.start->rotor_inertia.has_value(), "start.rotor_inertia"},
                              {!value.start->rotor_inertia || inertia_at_input(value).has_value(), "implement.rotor"},
                              {value.driveline.yoke_phase.has_value(), "driveline.yoke_phase"},
                              {value.driveline.front_joint_kind.has_value(), "driveline.front_joint_kind"},
                              {value.driveline.rear_joint_kind.has_value(), "driveline.rear_joint_kind"}})) {
    missing.push_back(std::move(path));
  }
  return missing;
}

/// A wide-angle joint shares its angle between two crosses, and only one of them is at the end of a shaft.
Angle bend(Stated<JointKind> kind, Angle angle) { return kind == JointKind::wide_angle ? 0.5 * angle : angle; }

/// The working speed that comes nearest to that at which two pulses in a turn meet the natural frequency of driveline
/// and rotor. Towards it the swing grows from both sides, so that it is the worst.
AngularSpeed worst_swing_speed(const Case& value) {
  const SpeedRange speeds = working_pto_speeds(value);
  const double natural = std::sqrt(value.start->driveline_stiffness->value() / inertia_at_input(value)->value());
  const AngularSpeed meets = radians_per_second(natural / joint_pulses_per_turn);
  return std::min(std::max(meets, speeds.low), speeds.high);
}

/// The couples of both joints under a torque. Of the rear joint it is the driven one, whose torque is that of the shaft
/// between the joints.
void add_couples(const Case& value, const StateExtremes& over, Torque peak, Finding& finding) {
  const Torque front = joint_peak_couples(peak, bend(value.driveline.front_joint_kind, over.front.value)).driving;
  const Torque couple = joint_peak_couples(peak, bend(value.driveline.rear_joint_kind, over.rear.value)).driven;
  for (Fact& more : std::vector<Fact>{fact("front", over.front.value), fact("front_couple", front),
                                      fact("rear", over.rear.value), fact("couple", couple)}) {
    finding.facts.push_back(std::move(more));
  }
  if (!value.implement.input.bearing_span) return;
  finding.facts.push_back(fact("span", *value.implement.input.bearing_span));
  finding.facts.push_back(fact("support", couple_bearing_force(couple, *value.implement.input.bearing_span)));
  finding.advice.push_back("swing.support");
}

Finding judge_swing(const Case& value, const StateExtremes& over, const MeanLoad& mean) {
  const Angle equivalent = joint_angle_for_variation(over.variation.value);
  const AngularSpeed speed = worst_swing_speed(value);
  const SpeedRange speeds = working_pto_speeds(value);
  const std::vector<Fact> at_speed = {fact("speed", speed), fact("low", speeds.low), fact("high", speeds.high)};
  const Validated<Torque> swing =
      joint_torque_swing(*value.start->driveline_stiffness, *inertia_at_input(value), equivalent, speed);
  if (!swing.valid()) {
    Finding finding = not_known(Check::joint_torque_swing, "swing.near_resonance", {});
    finding.facts = at_speed;
    return finding;
  }
  Finding finding = compare(
      Check::joint_torque_swing, {static_cast<double>(swing.value / *mean.torque), Kind::share},
      {{swing_of_mean.value.low, Kind::share},
       {swing_of_mean.value.high, Kind::share},
       LimitSense::at_most,
       {swing_of_mean.source, {"steady drive, driveline as a spring, rotor as a mass; undamped", Standing::textbook}}},
      "swing.driven");
  // In work the line carries the need, elsewhere it may carry as little as in the lightest part of the working time.
  const Torque least = over.state == MachineState::working ? *mean.torque : lightest_load(value, mean);
  if (swing.value >= least && finding.status == Status::ok) {
    finding.status = Status::caution;
    finding.reason = "swing.reverses_light";
  }
  const Torque peak = *mean.torque + swing.value;
  finding.state = over.state;
  finding.pose = over.variation.pose;
  finding.facts = at_speed;
  for (Fact& more : std::vector<Fact>{fact("swing", swing.value), fact("mean", *mean.torque), fact("least", least),
                                      fact("peak", peak), fact("equivalent", equivalent)}) {
    finding.facts.push_back(std::move(more));
  }
  if (finding.status != Status::ok) finding.advice = {"swing.reduce"};
  add_couples(value, over, peak, finding);
  return finding;
}

/// What uneven running adds to the mean torque, twice in every turn, in the driven state where that is worst.
void check_torque_swing(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  constexpr Check check = Check::joint_torque_swing;
  if (!value.start) {
    findings.not_examined(check, {"start.driveline_stiffness", "start.rotor_inertia"});
    return;
  }
  const MeanLoad mean = mean_load(value);
  const std::vector<std::string> missing = swing_missing(value, range, mean);
  if (!missing.empty() || !mean.torque) {
    findings.add(not_known(check, "swing.unstated", missing));
    return;
  }
  Finding worst = not_known(check, "swing.unstated", {range_path(MachineState::working)});
  bool any = false;
  for (const StateExtremes& state : range.states) {
    if (!state.driven) continue;
    const Angle most_bent = std::max(bend(value.driveline.front_joint_kind, state.front.value),
                                     bend(value.driveline.rear_joint_kind, state.rear.value));
    const bool endless = !is_finite(state.variation.value) || most_bent >= degrees(90.0);
    const Finding finding =
        endless ? not_known(check, "swing.endless", {range_path(state.state)}) : judge_swing(value, state, mean);
    worst = any ? worse_of(worst, finding) : finding;
    any = true;
  }
  findings.add(std::move(worst));
}

} // namespace

void check_vibration(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  check_phase(value, range, findings);
  check_torque_swing(value, range, findings);
  check_whirling(value, range, findings);
  check_resonance(value, findings);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
