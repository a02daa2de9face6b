// Joint angles and the telescope over all positions of the machine.

#include "assess/checks.hpp"
#include "assess/coupling_yokes.hpp"
#include "assess/geometry.hpp"
#include "assess/high_idle.hpp"
#include "assess/layout.hpp"
#include "assess/limits.hpp"
#include "assess/loosest.hpp"
#include "assess/torsion.hpp"

#include <fieldshaft/joint.hpp>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

void place(Finding& finding, MachineState state, const PoseAt& pose) {
  finding.state = state;
  finding.pose = pose;
}

/// The joint that fares worse against the limit of its own kind.
Finding worse_joint(Check check, const Case& value, const StateExtremes& extremes) {
  const auto judge = [&](const WorstCase<Angle>& angle, JointKind kind, const char* end) {
    Finding finding = compare(check, amount_of(angle.value), angle_band(value, extremes.state, extremes.driven, kind),
                              extremes.driven ? "angle.driven" : "angle.at_rest");
    place(finding, extremes.state, angle.pose);
    finding.facts = {fact("end", PhraseId{end})};
    return finding;
  };
  Finding front = judge(extremes.front, *value.driveline.front_joint_kind, "joint.front");
  Finding rear = judge(extremes.rear, *value.driveline.rear_joint_kind, "joint.rear");
  if (front.status != rear.status) return front.status < rear.status ? rear : front;
  return front.margin <= rear.margin ? front : rear;
}

/// A machine that turns bends its joints by that; a mounted one by its lift, at the end where they bend most.
const char* less_angle(const Case& value, const Finding& finding) {
  if (is_trailed(value) || is_semi_mounted(value)) return "angle.reduce_driven";
  const LengthRange lift = positions_in(value, finding.state).lift;
  const bool low = lift.low < lift.high && *finding.pose->lift - lift.low < lift.high - *finding.pose->lift;
  return low ? "angle.reduce_mounted_low" : "angle.reduce_mounted";
}

void check_angle(const Case& value, const DrivelineOverRange& range, Check check, MachineState state,
                 Findings& findings) {
  const StateExtremes* extremes = range.find(state);
  std::vector<std::string> missing = range.missing_for(state);
  for (auto& path : unstated({{value.driveline.front_joint_kind.has_value(), "driveline.front_joint_kind"},
                              {value.driveline.rear_joint_kind.has_value(), "driveline.rear_joint_kind"}})) {
    missing.push_back(std::move(path));
  }
  if (extremes == nullptr || !missing.empty()) {
    Finding finding = not_known(check, range.impossible.empty() ? "angle.unstated" : "angle.impossible", missing);
    if (!range.impossible.empty()) finding.facts = {fact("why", range.impossible.front())};
    findings.add(std::move(finding));
    return;
  }
  Finding finding = worse_joint(check, value, *extremes);
  if (finding.status != Status::ok)
    finding.advice = {extremes->driven ? less_angle(value, finding) : "angle.reduce_at_rest"};
  findings.add(std::move(finding));
}

/// How a machine that steers behind the links makes its joints bend alike, and from which arms about the pivot.
const char* equalise_about_pivot(const Case& value, MachineState state, Finding& finding) {
  const Driveline line = driveline_of(value);
  const Pose straight = placed_at(value, positions_in(value, state), {0.5, 0.5, 0.5}).pose;
  const Position pivot = steering_pivot_of(value);
  const Length front = (front_joint_position(line) - in_tractor(straight, pivot)).forward();
  const Length rear = -(rear_joint_position(line) - pivot).forward();
  if (!(front > Length{})) return "difference.equalise_pivot_in_general";
  finding.facts.push_back(fact("front_arm", front));
  finding.facts.push_back(fact("rear_arm", rear));
  finding.facts.push_back(fact("equal_behind", value.implement.input.behind->value + front - rear));
  return "difference.equalise_pivot";
}

/// What makes both joints bend equally: on a drawbar the place of the pin, of a steered machine that of the pivot, on a
/// linkage its pitch.
const char* equalising_advice(const Case& value, MachineState state, Finding& finding) {
  if (is_semi_mounted(value)) return equalise_about_pivot(value, state, finding);
  return is_trailed(value) ? "difference.equalise" : "difference.equalise_mounted";
}

double amount_si(Angle angle) { return angle.value(); }
double amount_si(double share) { return share; }

/// What was found to be made of an extreme within the tolerances: at its own worst position, or elsewhere.
template <class Q> Loosest loosest_of(const Case& value, MachineState state, const WorstCase<Q>& worst, Uneven of) {
  const Loosest there{amount_si(worst.loose), worst.pose};
  const Loosest anywhere = loosest(value, state, of);
  return anywhere.value > there.value ? anywhere : there;
}

/// The finding of a proved value, or that of what the tolerances make of it where they pass a further limit.
Finding within_tolerances(Check check, MachineState state, Amount stated_value, const PoseAt& pose,
                          const Loosest& loose_value, const LimitBand& band, const char* as_stated, const char* loose) {
  Finding stated = compare(check, stated_value, band, as_stated);
  Finding found = compare(check, {loose_value.value, stated_value.kind}, band, loose);
  place(stated, state, pose);
  place(found, state, loose_value.pose);
  found.facts = {{"stated", stated_value}};
  return found.status > stated.status ? found : stated;
}

/// A driven state and how uneven it may be.
struct LeastEven {
  const StateExtremes* state = nullptr;
  Loosest loose;

  double most() const { return std::max(state->variation.value, loose.value); }
};

/// The driven state in which the shaft turns least evenly, its measurements within their tolerances.
LeastEven least_even(const Case& value, const DrivelineOverRange& range) {
  const bool one_wide = value.driveline.front_joint_kind == JointKind::wide_angle ||
                        value.driveline.rear_joint_kind == JointKind::wide_angle;
  LeastEven worst;
  for (const StateExtremes& state : range.states) {
    if (!state.driven) continue;
    LeastEven one{&state, {state.variation.loose, state.variation.pose}};
    if (!one_wide) one.loose = loosest_of(value, state.state, state.variation, Uneven::variation);
    if (worst.state == nullptr || one.most() > worst.most()) worst = one;
  }
  return worst;
}

/// The state in which the front joint bends most while the shaft turns.
const StateExtremes* most_bent_in_front(const DrivelineOverRange& range) {
  const StateExtremes* worst = nullptr;
  for (const StateExtremes& state : range.states) {
    if (state.driven && (worst == nullptr || state.front.value > worst->front.value)) worst = &state;
  }
  return worst;
}

/// The shaft between the joints runs as unevenly as a plain front joint alone makes it, however smooth the pair is.
void check_inertia(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  constexpr Check check = Check::inertia_excitation;
  if (value.driveline.front_joint_kind == JointKind::wide_angle) { // it hardly turns unevenly behind such a joint
    findings.not_examined(check);
    return;
  }
  const PtoGear* gear = selected_gear(value);
  std::vector<std::string> missing = range.missing_for_all();
  for (auto& path : unstated({{value.driveline.front_joint_kind.has_value(), "driveline.front_joint_kind"},
                              {gear != nullptr && gear->pto_speed, "tractor.pto.selected"}})) {
    missing.push_back(std::move(path));
  }
  const StateExtremes* worst = most_bent_in_front(range);
  if (gear == nullptr || worst == nullptr || !missing.empty()) {
    findings.add(not_known(check, "inertia.unstated", missing));
    return;
  }
  const Angle angle = worst->front.value;
  Finding finding = make_finding(check, Status::stop, "inertia.endless");
  if (angle < degrees(90.0)) {
    finding = at_both_speeds(
        value, *gear->pto_speed, pto_speed_at_high_idle(value), [angle](AngularSpeed speed, bool high_idle) {
          Finding judged = compare(check, amount_of(joint_peak_acceleration(angle, speed)), inertia_band(),
                                   high_idle ? "inertia.at_high_idle" : "inertia.driven");
          judged.facts = {fact("front", angle), fact("speed", speed)};
          return judged;
        });
  }
  place(finding, worst->state, worst->front.pose);
  if (finding.status != Status::ok) finding.advice = {"inertia.less_angle"};
  findings.add(std::move(finding));
}

void check_variation(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  const PtoGear* gear = selected_gear(value);
  std::vector<std::string> missing = range.missing_for_all();
  for (auto& path : unstated({{value.driveline.front_joint_kind.has_value(), "driveline.front_joint_kind"},
                              {value.driveline.rear_joint_kind.has_value(), "driveline.rear_joint_kind"},
                              {value.driveline.yoke_phase.has_value(), "driveline.yoke_phase"},
                              {gear != nullptr && gear->pto_speed, "tractor.pto.selected"}})) {
    missing.push_back(std::move(path));
  }
  const bool none_driven =
      std::none_of(range.states.begin(), range.states.end(), [](const StateExtremes& s) { return s.driven; });
  if (gear == nullptr || none_driven || !missing.empty()) {
    findings.add(not_known(Check::speed_variation, "variation.unstated", missing));
    return;
  }
  const LeastEven least = least_even(value, range);
  const StateExtremes* worst = least.state;
  Finding finding =
      at_both_speeds(value, *gear->pto_speed, pto_speed_at_high_idle(value), [&](AngularSpeed speed, bool high_idle) {
        Finding judged = within_tolerances(Check::speed_variation, worst->state, {worst->variation.value, Kind::share},
                                           worst->variation.pose, least.loose, variation_band(speed),
                                           high_idle ? "variation.at_high_idle" : "variation.driven",
                                           high_idle ? "variation.loose_at_high_idle" : "variation.loose");
        judged.facts.push_back(fact("speed", speed));
        return judged;
      });
  if (!is_finite(finding.value->si)) { // a joint at a right angle, or yokes out of line with loose measurements
    finding = make_finding(Check::speed_variation, Status::stop, "variation.endless");
    place(finding, worst->state, worst->variation.pose);
  }
  if (finding.status != Status::ok) {
    finding.advice = {equalising_advice(value, worst->state, finding)};
    if (*value.driveline.yoke_phase != Angle{}) finding.advice.push_back("variation.yokes");
  }
  findings.add(std::move(finding));
}

/// How far the two joint angles may differ in work: a rule of thumb of this library, where no text states one.
constexpr Sourced<Interval<Angle>> usual_difference{
    {degrees(5.0), degrees(15.0)},
    {"joints should bend equally; 5° and 15° are rules of thumb and defaults of this library",
     Standing::common_practice}};

void check_difference(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  const StateExtremes* extremes = range.find(MachineState::working);
  if (extremes == nullptr) {
    findings.add(not_known(Check::angle_difference, "difference.unstated", range.missing_for(MachineState::working)));
    return;
  }
  // A wide-angle joint runs evenly by itself, and what a plain one does behind it stands in the uneven running.
  const bool any_wide = value.driveline.front_joint_kind == JointKind::wide_angle ||
                        value.driveline.rear_joint_kind == JointKind::wide_angle;
  if (any_wide) {
    findings.not_examined(Check::angle_difference);
    return;
  }
  LimitBand band{amount_of(usual_difference.value.low),
                 amount_of(usual_difference.value.high),
                 LimitSense::at_most,
                 {usual_difference.source, rigid_model}};
  if (value.limits.angle_difference) {
    band = with_stated(band, amount_of(*value.limits.angle_difference), "difference as the case states it");
  }
  const WorstCase<Angle>& worst = extremes->difference;
  Finding finding = within_tolerances(Check::angle_difference, MachineState::working, amount_of(worst.value),
                                      worst.pose, loosest_of(value, MachineState::working, worst, Uneven::difference),
                                      band, "difference.in_work", "difference.loose");
  if (finding.status != Status::ok) finding.advice = {equalising_advice(value, MachineState::working, finding)};
  findings.add(std::move(finding));
}

/// The slide that fares worst at the longest position, each of them giving all that its own stop lets it.
Finding overlap_finding(const Case& value, const StateExtremes& longest) {
  const Length length = longest.longest.value;
  const Telescope telescope = telescope_of(value, true);
  const std::optional<Length> held = greatest_length(telescope);
  std::optional<Finding> worst;
  if (held && *held < length) {
    const LimitBand band{amount_of(*held), amount_of(*held), LimitSense::at_most, {rigid_model}};
    worst = compare(Check::overlap, amount_of(length), band, "telescope.against_stop");
  }
  const std::vector<CaseSlide> slides = slides_of(value);
  for (const CaseSlide& slide : slides) {
    if (worst && worst->status == Status::stop) break;
    // Each measurement at the end of its tolerance that makes the answer worse.
    const Length extension = length - telescope.closed_length;
    const bool held_early = slides.size() > 1 && slide.travel;
    const Length given = held_early ? std::min(*slide.travel, extension) : extension;
    const Length left = slide.overlap.value - slide.overlap.tolerance - given;
    const char* reason = slides.size() > 1 ? "telescope.overlap_of_three" : "telescope.overlap";
    Finding finding = compare(Check::overlap, amount_of(left), overlap_band(value, slide.overlap.value),
                              left < Length{} ? "telescope.apart" : reason);
    finding.facts = {fact("slide", PhraseId{slide.name})};
    const bool takes_over =
        !worst || finding.status > worst->status || (finding.status == worst->status && finding.margin < worst->margin);
    if (takes_over) worst = std::move(finding);
  }
  place(*worst, longest.state, longest.longest.pose);
  worst->facts.push_back(fact("length", millimetres(std::ceil(in(length, unit::millimetre))))); // rounded outward
  if (worst->status != Status::ok) worst->advice = {"telescope.longer"};
  return *worst;
}

void check_telescope(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  const std::vector<std::string> missing = telescope_missing(value, range);
  const StateExtremes* longest = range.longest();
  const StateExtremes* shortest = range.shortest();
  if (longest == nullptr || shortest == nullptr || !missing.empty()) {
    findings.add(not_known(Check::overlap, "telescope.unstated", missing));
    findings.add(not_known(Check::clearance, "telescope.unstated", missing));
    return;
  }
  findings.add(overlap_finding(value, *longest));

  const MeasuredLength closed = *value.driveline.closed_length;
  const Length room = shortest->shortest.value - (closed.value + closed.tolerance);
  Finding finding = compare(Check::clearance, amount_of(room), clearance_band(value),
                            room < Length{} ? "telescope.bottoms" : "telescope.clearance");
  place(finding, shortest->state, shortest->shortest.pose);
  finding.facts = {fact("length", millimetres(std::floor(in(shortest->shortest.value, unit::millimetre))))};
  if (finding.status != Status::ok) finding.advice = {"telescope.shorter"};
  const std::vector<std::string> yokes = yokes_missing(value.driveline, "driveline");
  const bool unproved = !yokes.empty() && finding.status != Status::stop;
  findings.add(unproved ? not_known(Check::clearance, "telescope.yokes_unstated", yokes) : std::move(finding));
}

} // namespace

void check_driveline(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  check_angle(value, range, Check::working_angle, MachineState::working, findings);
  check_angle(value, range, Check::turning_angle, MachineState::turning, findings);
  check_angle(value, range, Check::transport_angle, MachineState::transport, findings);
  check_joints(value, range, findings);
  check_difference(value, range, findings);
  check_variation(value, range, findings);
  check_inertia(value, range, findings);
  check_telescope(value, range, findings);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
