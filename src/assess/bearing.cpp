// Life of the needle bearings in the joints' crosses, under the heaviest work or over the parts of the working time.

#include "assess/bearing.hpp"

#include <fieldshaft/joint.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

bool life_goes_by_positions(const Case& value) { return value.driveline.duties.empty(); }

namespace {

constexpr Source life_source{"ISO 281 basic rating life, the bearing swinging by four joint angles in each turn",
                             Standing::textbook};

/// No machine of the trade lasts so long: what the formula gives beyond is no number to plan with.
constexpr Sourced<Time> longest_told_life{
    seconds(1e5 * 3600.0),
    {"no life above 100,000 h is told as a number: a rule of thumb of this library", Standing::common_practice}};

/// Less of the working time under the heaviest work is doubted.
constexpr Sourced<double> least_heaviest_share{
    0.05,
    {"at least 5 % of the working time under the heaviest work: a rule of thumb and default of this library",
     Standing::common_practice}};

/// The more bent cross of a front and a rear joint; a wide-angle joint shares its angle between two crosses.
Angle cross_angle(const Case& value, Angle front, Angle rear) {
  const auto cross = [](Stated<JointKind> kind, Angle angle) {
    return kind == JointKind::wide_angle ? 0.5 * angle : angle;
  };
  return std::max(cross(value.driveline.front_joint_kind, front), cross(value.driveline.rear_joint_kind, rear));
}

/// Angle of the cross that swings more in work, every measurement within its tolerance.
Angle working_cross_angle(const Case& value, const StateExtremes& working) {
  return cross_angle(value, working.front.value, working.rear.value);
}

std::vector<std::string> missing_of_duties(const Case& value) {
  std::vector<std::string> missing;
  const PtoGear* gear = selected_gear(value);
  const bool gear_known = gear != nullptr && gear->pto_speed;
  const std::vector<DutyPart>& duties = value.driveline.duties;
  for (std::size_t i = 0; i < duties.size(); ++i) {
    const std::string path = "driveline.duties[" + std::to_string(i) + "]";
    if (!duties[i].share) missing.push_back(path + ".share");
    if (!duties[i].power) missing.push_back(path + ".power");
    if (!duties[i].joint_angle) missing.push_back(path + ".joint_angle");
    if (!duties[i].pto_speed && !gear_known) missing.push_back(path + ".pto_speed");
  }
  if (!value.implement.power_need) missing.emplace_back("implement.power_need");
  return missing;
}

std::vector<std::string> missing_of_work(const Case& value, const MeanLoad& mean, const DrivelineOverRange& range) {
  std::vector<std::string> missing = mean.missing;
  for (std::string& path : range.missing_for(MachineState::working)) missing.push_back(std::move(path));
  for (std::string& path : unstated({{value.driveline.front_joint_kind.has_value(), "driveline.front_joint_kind"},
                                     {value.driveline.rear_joint_kind.has_value(), "driveline.rear_joint_kind"}})) {
    missing.push_back(std::move(path));
  }
  return missing;
}

/// Of the working time what is the heaviest work that the case states: its share, 0 where the duties leave it out, and
/// the greatest angle of the joints then.
struct HeaviestWork {
  double share = 0.0;
  Angle angle{};
};

HeaviestWork heaviest_work(const std::vector<DutyPart>& duties, Power need) {
  constexpr double rounding = 1.0 - 1e-9;
  HeaviestWork work;
  for (const DutyPart& part : duties) {
    if (*part.power < rounding * need) continue;
    work.share += *part.share;
    work.angle = std::max(work.angle, *part.joint_angle);
  }
  return work;
}

/// Parts of the working time may lighten the mean. They may not bend the joints less than the positions of the same
/// case do, nor make next to nothing of the heaviest work.
void doubt_duties(const Case& value, const HeaviestWork& work, const StateExtremes* working, Finding& finding) {
  const auto doubt = [&finding](const char* advice, std::vector<Fact> facts) {
    finding.status = worse(finding.status, Status::caution);
    finding.advice.push_back(advice);
    finding.facts.insert(finding.facts.end(), facts.begin(), facts.end());
  };
  finding.facts.push_back(fact("need", *value.implement.power_need));
  if (work.share < least_heaviest_share.value) {
    doubt("bearing.small_share", {{"share", Amount{work.share, Kind::share}},
                                  {"least_share", Amount{least_heaviest_share.value, Kind::share}}});
    finding.basis.push_back(least_heaviest_share.source);
  }
  if (working == nullptr) return;
  const Angle bent = cross_angle(value, working->front.attained, working->rear.attained);
  if (work.angle < bent) doubt("bearing.small_angle", {fact("stated_angle", work.angle), fact("working_angle", bent)});
}

/// Needles hardly roll at a smaller angle than the least, and then last no longer.
Angle rolling(Angle angle) { return std::max(angle, least_rolling_angle.value); }

std::vector<JointDuty> duties_of(const Case& value, const MeanLoad& mean, const DrivelineOverRange& range) {
  std::vector<JointDuty> duties;
  for (const DutyPart& part : value.driveline.duties) {
    const AngularSpeed speed = part.pto_speed ? *part.pto_speed : *selected_gear(value)->pto_speed;
    duties.push_back({*part.share, shaft_torque(*part.power, speed), speed, rolling(*part.joint_angle)});
  }
  if (!duties.empty()) return duties;
  const Angle angle = working_cross_angle(value, *range.find(MachineState::working));
  return {{1.0, *mean.torque, mean.speed, rolling(angle)}};
}

/// The part of the working time that loads the bearings most.
const JointDuty& heaviest(const std::vector<JointDuty>& duties) {
  return *std::max_element(duties.begin(), duties.end(),
                           [](const JointDuty& a, const JointDuty& b) { return a.torque < b.torque; });
}

LimitBand life_band(Time wanted) {
  const Amount limit = amount_of(wanted);
  return {limit,
          limit,
          LimitSense::at_least,
          {life_source, least_rolling_angle.source, {"wanted life as the case states it", Standing::given}}};
}

/// The verdict on a life, without the facts.
Finding compare_life(const Case& value, Time life) {
  const Time told = std::min(life, std::max(longest_told_life.value, value.limits.wanted_life.value_or(Time{})));
  Finding finding = not_known(Check::joint_bearing_life, "bearing.no_wish", {"limits.wanted_life"});
  if (value.limits.wanted_life) {
    finding = compare(Check::joint_bearing_life, amount_of(told), life_band(*value.limits.wanted_life),
                      life_goes_by_positions(value) ? "bearing.of_work" : "bearing.of_parts");
    if (finding.status != Status::ok) finding.advice = {"bearing.larger"};
    if (told < life) {
      finding.reason = "bearing.beyond_numbers";
      finding.basis.push_back(longest_told_life.source);
    }
  }
  finding.value = amount_of(told);
  return finding;
}

Finding judge_life(const Case& value, const std::vector<JointDuty>& duties) {
  const Force rating = *value.driveline.bearing_rating;
  const Length arm = *value.driveline.bearing_arm;
  const JointDuty& worst = heaviest(duties);
  const JointDuty steady = joint_mean_duty(duties);
  Finding finding;
  if (joint_bearing_force(arm, worst.torque) > greatest_load_share.value * rating) {
    finding = not_known(Check::joint_bearing_life, "bearing.beyond_half", {});
    finding.basis = {greatest_load_share.source};
    finding.advice = {"bearing.larger"};
  } else {
    finding = compare_life(value, joint_bearing_life(rating, arm, duties));
  }
  finding.state = MachineState::working;
  finding.facts = {fact("torque", steady.torque),
                   fact("speed", steady.speed),
                   fact("angle", steady.angle),
                   fact("heaviest", worst.torque),
                   fact("force", joint_bearing_force(arm, worst.torque)),
                   fact("peak", joint_peak_bearing_force(arm, worst.torque, worst.angle)),
                   fact("rating", rating)};
  return finding;
}

} // namespace

void check_joint_bearings(const Case& value, const MeanLoad& mean, const DrivelineOverRange& range,
                          Findings& findings) {
  const DrivelineCase& driveline = value.driveline;
  if (!driveline.bearing_rating && !driveline.bearing_arm && driveline.duties.empty()) {
    findings.not_examined(Check::joint_bearing_life, {"driveline.bearing_rating", "driveline.bearing_arm"});
    return;
  }
  std::vector<std::string> missing = unstated({{driveline.bearing_rating.has_value(), "driveline.bearing_rating"},
                                               {driveline.bearing_arm.has_value(), "driveline.bearing_arm"}});
  const bool of_work = life_goes_by_positions(value);
  for (std::string& path : of_work ? missing_of_work(value, mean, range) : missing_of_duties(value)) {
    missing.push_back(std::move(path));
  }
  const StateExtremes* working = range.find(MachineState::working);
  if (!missing.empty() || (of_work && (working == nullptr || !mean.torque))) {
    findings.add(not_known(Check::joint_bearing_life, "bearing.unstated", missing));
    return;
  }
  if (of_work && working_cross_angle(value, *working) >= degrees(90.0)) {
    findings.add(not_known(Check::joint_bearing_life, "bearing.past_lock", {"range.working"}));
    return;
  }
  const HeaviestWork work = of_work ? HeaviestWork{1.0} : heaviest_work(driveline.duties, *value.implement.power_need);
  if (!(work.share > 0.0)) {
    Finding finding = not_known(Check::joint_bearing_life, "bearing.leaves_out", {});
    finding.facts = {fact("need", *value.implement.power_need)};
    findings.add(std::move(finding));
    return;
  }
  try {
    Finding finding = judge_life(value, duties_of(value, mean, range));
    if (!of_work) doubt_duties(value, work, working, finding);
    findings.add(std::move(finding));
  } catch (const InputError&) {
    findings.add(not_known(Check::joint_bearing_life, "vibration.extreme", {}));
  }
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
