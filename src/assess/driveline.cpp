// Joint angles and the telescope over all positions of the machine.

#include "assess/checks.hpp"
#include "assess/coupling_yokes.hpp"
#include "assess/geometry.hpp"
#include "assess/high_idle.hpp"
#include "assess/layout.hpp"
#include "assess/limits.hpp"
#include "assess/torsion.hpp"

#include <fieldshaft/joint.hpp>

#include <algorithm>
#include <cmath>
#include <optional>
#include <string_view>
#include <type_traits>

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
  const bool mounted = value.tractor.hitch.kind == HitchKind::three_point;
  const char* driven_advice = mounted ? "angle.reduce_mounted" : "angle.reduce_driven";
  if (finding.status != Status::ok) finding.advice = {extremes->driven ? driven_advice : "angle.reduce_at_rest"};
  findings.add(std::move(finding));
}

/// What makes both joints bend equally: on a drawbar the place of the pin, on a linkage its pitch.
const char* equalising_advice(const Case& value) {
  return value.tractor.hitch.kind == HitchKind::three_point ? "difference.equalise_mounted" : "difference.equalise";
}

/// The finding of a proved value, or that of what the tolerances make of it where they pass a further limit.
template <class Q>
Finding within_tolerances(Check check, const WorstCase<Q>& worst, const LimitBand& band, const char* as_stated,
                          const char* loose) {
  const auto amount = [](Q q) {
    if constexpr (std::is_same_v<Q, double>) {
      return Amount{q, Kind::share};
    } else {
      return amount_of(q);
    }
  };
  Finding stated = compare(check, amount(worst.value), band, as_stated);
  Finding found = compare(check, amount(worst.loose), band, loose);
  found.facts = {{"stated", amount(worst.value)}};
  return found.status > stated.status ? found : stated;
}

/// The driven state in which the shaft turns least evenly.
const StateExtremes* least_even(const DrivelineOverRange& range) {
  const StateExtremes* worst = nullptr;
  for (const StateExtremes& state : range.states) {
    if (state.driven && (worst == nullptr || state.variation.value > worst->variation.value)) worst = &state;
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
    finding =
        at_both_speeds(*gear->pto_speed, pto_speed_at_high_idle(value), [angle](AngularSpeed speed, bool high_idle) {
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
  const StateExtremes* worst = least_even(range);
  if (gear == nullptr || worst == nullptr || !missing.empty()) {
    findings.add(not_known(Check::speed_variation, "variation.unstated", missing));
    return;
  }
  Finding finding =
      at_both_speeds(*gear->pto_speed, pto_speed_at_high_idle(value), [worst](AngularSpeed speed, bool high_idle) {
        Finding judged = within_tolerances(Check::speed_variation, worst->variation, variation_band(speed),
                                           high_idle ? "variation.at_high_idle" : "variation.driven",
                                           high_idle ? "variation.loose_at_high_idle" : "variation.loose");
        judged.facts.push_back(fact("speed", speed));
        return judged;
      });
  place(finding, worst->state, worst->variation.pose);
  if (!is_finite(finding.value->si)) { // a joint at a right angle, or yokes out of line with loose measurements
    finding = make_finding(Check::speed_variation, Status::stop, "variation.endless");
    place(finding, worst->state, worst->variation.pose);
  }
  if (finding.status != Status::ok) {
    finding.advice = {equalising_advice(value)};
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
  Finding finding =
      within_tolerances(Check::angle_difference, extremes->difference, band, "difference.in_work", "difference.loose");
  place(finding, MachineState::working, extremes->difference.pose);
  if (finding.status != Status::ok) finding.advice = {equalising_advice(value)};
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
