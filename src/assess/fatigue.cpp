// Life of the stub under what happens in every turn: the joint bends it, and the torque swings about its mean.

#include "assess/fatigue.hpp"

#include <fieldshaft/fatigue.hpp>
#include <fieldshaft/joint.hpp>

#include <limits>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// Stress concentration of a splined end. The fillet radius of PTO stubs is not known, so the notch counts in full.
constexpr Sourced<double> spline_concentration{
    2.8, {"Peterson (Yoshitake), involute spline in torsion, about 2.8", Standing::from_memory}};

/// A life from S-N lines and Goodman's rule is known to about this factor either way.
constexpr Sourced<double> life_scatter{3.0,
                                       {"S-N lines are known to a factor of about three", Standing::common_practice}};

struct LifeOfStub {
  Time life{};
  Stress amplitude{};
  Stress endurance{};
};

/// The notch counts on what swings; on the mean a ductile steel yields locally and evens it out.
LifeOfStub life_of(const Stub& stub, const ShaftLoad& load, AngularSpeed speed) {
  const Stress ultimate = *stub.steel.ultimate;
  const EnduranceFactors factors =
      endurance_factors(ultimate, {SurfaceFinish::machined, stub.smallest, LoadKind::bending}).value;
  const FatigueStrength strength{endurance_limit(ultimate, factors), ultimate, *stub.steel.yield};
  const SnLine<Stress> line = sn_line(strength, strength_fraction(ultimate).value);
  const NotchFactors notch{spline_concentration.value, spline_concentration.value};
  const Stress amplitude = shaft_stresses(load, stub.smallest, notch).amplitude;
  const Stress mean = shaft_stresses(load, stub.smallest).mean;
  const Validated<Stress> reversed = equivalent_reversed(amplitude, mean, line, MeanStressRule::goodman);
  if (!reversed.valid()) return {Time{}, amplitude, strength.endurance};
  const double cycles = cycles_to_failure(reversed.value, line).value;
  const Time turn = (2.0 * pi * radians(1.0)) / speed;
  return {cycles * turn, reversed.value, strength.endurance};
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

Status judge(Time life, const Stated<Time>& wanted) {
  const Time needed = wanted.value_or(hours(10000));
  if (life >= needed * life_scatter.value) return Status::ok;
  if (!wanted) return Status::caution; // a finite life and nobody said how long it must be
  return life * life_scatter.value >= needed ? Status::caution : Status::stop;
}

} // namespace

void check_fatigue(const Case& value, const Stub& stub, const MeanLoad& mean, const Stated<Angle>& angle,
                   Findings& findings) {
  std::vector<std::string> missing = mean.missing;
  for (auto& path : unstated({{angle.has_value(), "range.working"},
                              {value.implement.torque_swing.has_value(), "implement.torque_swing"},
                              {stub.steel.ultimate.has_value(), "tractor.pto.stub_steel"}})) {
    missing.push_back(std::move(path));
  }
  missing.insert(missing.end(), stub.missing.begin(), stub.missing.end());
  if (!stub.spline || !missing.empty()) {
    findings.add(
        not_known(Check::fatigue_life, stub.unknown_geometry ? "stub.unknown_geometry" : "life.unstated", missing));
    return;
  }
  ShaftLoad load;
  load.torque_mean = *mean.torque;
  load.torque_amplitude = *mean.torque * *value.implement.torque_swing;
  load.bending_amplitude = joint_peak_couples(*mean.torque, *angle).driving;
  const LifeOfStub result = life_of(stub, load, mean.speed);
  Finding finding = make_finding(Check::fatigue_life, judge(result.life, value.limits.wanted_life),
                                 value.limits.wanted_life ? "life.wanted" : "life.no_wish");
  finding.state = MachineState::working;
  finding.basis = {stub.steel.source, mean_stress_source, surface_constants(SurfaceFinish::machined).source,
                   spline_concentration.source, life_scatter.source};
  finding.facts = {fact("life", PhraseId{class_phrase(life_class(result.life))}),
                   fact("mean", *mean.torque),
                   fact("swing", load.torque_amplitude),
                   fact("angle", *angle),
                   fact("couple", load.bending_amplitude),
                   fact("amplitude", result.amplitude),
                   fact("endurance", result.endurance)};
  if (value.limits.wanted_life) finding.facts.push_back(fact("wanted", *value.limits.wanted_life));
  if (finding.status != Status::ok) finding.advice = {"life.lengthen"};
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
