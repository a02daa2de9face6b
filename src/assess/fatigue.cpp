// Life of the stub under what happens in every turn: the joint bends it, and the torque swings about its mean.

#include "assess/fatigue.hpp"

#include <fieldshaft/fatigue.hpp>
#include <fieldshaft/joint.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// Stress concentration of a splined end. The fillet radius of PTO stubs is not known, so the notch counts in full.
constexpr Sourced<double> spline_concentration{
    2.8, {"Peterson (Yoshitake), involute spline in torsion, about 2.8", Standing::from_memory}};

/// Strength wanted over the swinging stress, against the scatter of fatigue strength and what the case does not hold:
/// starts, slips and the starts of the device.
constexpr Sourced<double> fatigue_margin{
    1.25, {"fatigue margin 1.25, a rule of thumb and the default of this library", Standing::common_practice}};

struct LifeOfStub {
  Time life{};
  Stress reversed{}; ///< what, fully reversed, does the same harm
  Stress allowed{};  ///< what is borne for the wanted life
  const char* outside = nullptr;
};

/// The notch counts on what swings; on the mean a ductile steel yields locally and evens it out.
LifeOfStub life_of(const Stub& stub, const ShaftLoad& load, AngularSpeed speed, const Stated<Time>& wanted) {
  const Stress ultimate = *stub.steel.ultimate;
  const auto factors = endurance_factors(ultimate, {SurfaceFinish::machined, stub.smallest, LoadKind::bending});
  const auto fraction = strength_fraction(ultimate);
  const FatigueStrength strength{endurance_limit(ultimate, factors.value), ultimate, *stub.steel.yield};
  const SnLine<Stress> line = sn_line(strength, fraction.value);
  const NotchFactors notch{spline_concentration.value, spline_concentration.value};
  const Stress amplitude = shaft_stresses(load, stub.smallest, notch).amplitude;
  const Stress mean = shaft_stresses(load, stub.smallest).mean;
  const auto reversed = equivalent_reversed(amplitude, mean, line, MeanStressRule::goodman);
  LifeOfStub result;
  result.outside = factors.outside != nullptr ? factors.outside : fraction.outside;
  const Time turn = (2.0 * pi * radians(1.0)) / speed;
  const double wanted_turns = wanted ? static_cast<double>(*wanted / turn) : sn_knee_cycles;
  result.allowed = wanted_turns < sn_knee_cycles
                       ? line.coefficient * math::pow(std::max(wanted_turns, sn_first_cycles), line.exponent)
                       : strength.endurance;
  if (!reversed.valid()) { // the mean alone reaches the strength: it breaks at once
    result.reversed = ultimate;
    return result;
  }
  result.reversed = reversed.value;
  result.life = cycles_to_failure(reversed.value, line).value * turn;
  return result;
}

const char* class_phrase(LifeClass life) {
  switch (life) {
  case LifeClass::under_10_h: return "life.under_10_h";
  case LifeClass::from_10_to_100_h: return "life.from_10_to_100_h";
  case LifeClass::from_100_to_1000_h: return "life.from_100_to_1000_h";
  case LifeClass::from_1000_to_10000_h: return "life.from_1000_to_10000_h";
  case LifeClass::beyond_10000_h: return "life.beyond_10000_h";
  }
  return "life.under_10_h";
}

} // namespace

void check_fatigue(const Case& value, const Stub& stub, const MeanLoad& mean, const Stated<Angle>& angle,
                   Findings& findings) {
  std::vector<std::string> missing = mean.missing;
  const bool kind_known = value.driveline.front_joint_kind.has_value();
  for (auto& path :
       unstated({{kind_known, "driveline.front_joint_kind"},
                 {angle.has_value() || !kind_known, "range.working"},
                 {value.implement.torque_swing.has_value(), "implement.torque_swing"},
                 {stub.steel.ultimate.has_value() || !stub.missing.empty(), "tractor.pto.stub_steel.ultimate"}})) {
    missing.push_back(std::move(path));
  }
  missing.insert(missing.end(), stub.missing.begin(), stub.missing.end());
  if (!stub.spline || !missing.empty()) {
    findings.add(
        not_known(Check::fatigue_life, stub.unknown_geometry ? "stub.unknown_geometry" : "life.unstated", missing));
    return;
  }
  if (*angle >= degrees(90.0)) {
    findings.add(not_known(Check::fatigue_life, "stub.joint_past_lock", {"range.working"}));
    return;
  }
  ShaftLoad load;
  load.torque_mean = *mean.torque;
  load.torque_amplitude = *mean.torque * *value.implement.torque_swing;
  load.bending_amplitude = joint_peak_couples(*mean.torque, *angle).driving;
  const Stated<Time>& wanted = value.limits.wanted_life;
  const LifeOfStub result = life_of(stub, load, mean.speed, wanted);
  Finding finding = compare(Check::fatigue_life, amount_of(result.reversed),
                            {amount_of(result.allowed / fatigue_margin.value),
                             amount_of(result.allowed),
                             LimitSense::at_most,
                             {stub.steel.source, mean_stress_source, surface_constants(SurfaceFinish::machined).source,
                              spline_concentration.source, fatigue_margin.source}},
                            wanted ? "life.wanted" : "life.no_wish");
  finding.state = MachineState::working;
  finding.facts = {fact("life", PhraseId{class_phrase(life_class(result.life))}), fact("mean", *mean.torque),
                   fact("swing", load.torque_amplitude), fact("angle", *angle), fact("couple", load.bending_amplitude)};
  if (wanted) finding.facts.push_back(fact("wanted", *wanted));
  if (finding.status != Status::ok) finding.advice = {"life.lengthen"};
  doubt_strength(finding, stub.steel);
  if (result.outside != nullptr && finding.status < Status::not_known) {
    finding.status = Status::not_known;
    finding.reason = "life.outside";
    finding.advice.clear();
  }
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
