// Stub, telescoping member and joints against the torque that really arrives.

#include "assess/bearing.hpp"
#include "assess/checks.hpp"
#include "assess/fatigue.hpp"
#include "assess/interface.hpp"
#include "assess/loads.hpp"
#include "assess/overload.hpp"
#include "assess/pulsing.hpp"
#include "assess/rise.hpp"
#include "assess/start.hpp"
#include "assess/steel.hpp"
#include "assess/stub.hpp"
#include "assess/tube.hpp"

#include <fieldshaft/fatigue.hpp>
#include <fieldshaft/joint.hpp>
#include <fieldshaft/shaft.hpp>
#include <fieldshaft/spline.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// The figures that every strength finding carries: which torque, where it comes from, and what the part could carry.
void add_torque_facts(Finding& finding, const PeakLoad& peak, const MeanLoad& mean) {
  finding.facts.push_back(fact("torque", *peak.torque));
  finding.facts.push_back(fact("origin", PhraseId{peak_phrase(peak)}));
  if (!finding.value || !finding.limit || finding.value->si <= 0.0) return;
  const Torque capacity = *peak.torque * (finding.limit->si / finding.value->si);
  finding.facts.push_back(fact("capacity", capacity));
  if (mean.torque) finding.facts.push_back(fact("speed", mean.speed));
}

/// A shear stress under the peak torque against both schools of shear yield.
Finding shear_finding(Check check, Stress stress, const ResolvedSteel& steel, const Case& value, const char* reason) {
  LimitBand band = shear_yield_band(steel, yield_margin(value));
  band.basis.push_back(yield_margin_source(value));
  Finding finding = compare(check, amount_of(stress), band, reason);
  doubt_strength(finding, steel);
  return finding;
}

void check_tube(const Case& value, const TubeOfCase& tube, const PeakLoad& peak, const MeanLoad& mean,
                Findings& findings) {
  std::vector<std::string> missing = peak.missing;
  missing.insert(missing.end(), tube.missing.begin(), tube.missing.end());
  if (!tube.section || !missing.empty()) {
    findings.add(not_known(Check::tube_torsion, "tube.unstated", missing));
    return;
  }
  Finding finding = shear_finding(Check::tube_torsion, torsion_stress(*tube.section, *peak.torque), tube.steel, value,
                                  "tube.torsion");
  add_torque_facts(finding, peak, mean);
  if (finding.status == Status::stop || finding.status == Status::caution) {
    finding.advice = {"tube.larger"};
  }
  findings.add(std::move(finding));
}

/// Torque at which the member yields by the strictest school.
TubeYield yield_of(const TubeOfCase& tube) {
  if (!tube.section || !tube.missing.empty()) return {std::nullopt, tube.missing};
  return {yield_torque(*tube.section, shear_yield(*tube.steel.yield, ShearRatio::maximum_shear)), {}};
}

void check_joint_rating(const Case& value, const PeakLoad& peak, Findings& findings) {
  std::vector<std::string> missing = peak.missing;
  if (!value.driveline.joint_rating) missing.emplace_back("driveline.joint_rating");
  if (!missing.empty()) {
    findings.add(not_known(Check::joint_rating, "joint_rating.unstated", missing));
    return;
  }
  const Amount limit = amount_of(*value.driveline.joint_rating);
  Finding finding =
      compare(Check::joint_rating, amount_of(*peak.torque),
              {limit, limit, LimitSense::at_most, {{"rating of the joints as the case states it", Standing::given}}},
              "joint_rating.peak");
  finding.facts = {fact("origin", PhraseId{peak_phrase(peak)}), {"capacity", limit}};
  if (finding.status != Status::ok) finding.advice = {"joint_rating.larger"};
  findings.add(std::move(finding));
}

/// Entries that the checks of the stub need, or a finding that says which are missing.
bool stub_known(Check check, const Stub& stub, std::vector<std::string> missing, Findings& findings) {
  missing.insert(missing.end(), stub.missing.begin(), stub.missing.end());
  if (stub.spline && missing.empty()) return true;
  findings.add(not_known(check, stub.unknown_geometry ? "stub.unknown_geometry" : "stub.strength_unstated", missing));
  return false;
}

void add_stub_facts(Finding& finding, const Stub& stub) {
  finding.facts.push_back(fact("section", PhraseId{stub.groove_governs ? "stub.section.groove" : "stub.section.root"}));
  finding.facts.push_back(fact("diameter", stub.smallest));
  finding.facts.push_back(fact("engaged", stub.spline->length()));
  finding.basis.insert(finding.basis.end(), stub.sources.begin(), stub.sources.end());
}

void advise_on_stub(Finding& finding, const MeanLoad& mean) {
  if (finding.status != Status::stop && finding.status != Status::caution) return;
  if (!mean.torque || !is_nominal_speed(mean.speed, rpm(540))) {
    finding.advice = {"stub.larger_type"};
    return;
  }
  finding.facts.push_back(fact("mean", *mean.torque));
  finding.facts.push_back(fact("mean_at_1000", shaft_torque(mean.power, rpm(1000))));
  finding.advice = {"stub.faster"};
}

void check_root_and_teeth(const Case& value, const Stub& stub, const PeakLoad& peak, const MeanLoad& mean,
                          Findings& findings) {
  if (stub_known(Check::root_torsion, stub, peak.missing, findings)) {
    const Stress stress = torsion_stress(SolidSection(stub.smallest), *peak.torque);
    Finding finding = shear_finding(Check::root_torsion, stress, stub.steel, value, "stub.root_torsion");
    add_torque_facts(finding, peak, mean);
    add_stub_facts(finding, stub);
    advise_on_stub(finding, mean);
    doubt_unless_rise_known(peak.rise_missing, finding);
    findings.add(std::move(finding));
  }
  if (stub_known(Check::tooth_shear, stub, peak.missing, findings)) {
    const Stress stress = spline_stress(*stub.spline, *peak.torque).tooth_shear;
    Finding finding = shear_finding(Check::tooth_shear, stress, stub.steel, value, "stub.tooth_shear");
    add_torque_facts(finding, peak, mean);
    add_stub_facts(finding, stub);
    advise_on_stub(finding, mean);
    doubt_unless_rise_known(peak.rise_missing, finding);
    findings.add(std::move(finding));
  }
}

/// The hardness class of the allowables whose lower end the flanks reach. Harder ones are not read from a Brinell
/// number: a hard skin does not show in it.
std::optional<SplineSteel> hardness_class(double brinell) {
  if (brinell >= 302.0) return SplineSteel::brinell_302_351;
  if (brinell >= 230.0) return SplineSteel::brinell_230_260;
  if (brinell >= 160.0) return SplineSteel::brinell_160_200;
  return std::nullopt;
}

struct FlankLimit {
  Stated<Stress> allowed;
  std::vector<Source> basis;
};

/// What the flanks may bear without wearing out: as the case states it, else by their hardness.
FlankLimit flank_limit(const Case& value, const ResolvedSteel& steel) {
  if (value.limits.flank_pressure) {
    return {*value.limits.flank_pressure, {{"flank pressure as the case states it", Standing::given}}};
  }
  const auto hardness = steel.hardness ? hardness_class(*steel.hardness) : std::nullopt;
  if (!hardness) return {};
  const Datum<SplineLimits> limits = spline_limits(*hardness);
  return {limits.value().flank_pressure, {limits.source()}};
}

/// Turns over the wanted life wear the flanks of every seat that slips.
double wear_factor(const Case& value, const MeanLoad& mean) {
  if (!value.limits.wanted_life) return 1.0;
  const double turns = without_radian(mean.speed) * *value.limits.wanted_life / (2.0 * pi);
  return wear_life_factor(turns).value;
}

void check_flanks(const Case& value, const Stub& stub, const MeanLoad& mean, Findings& findings) {
  std::vector<std::string> missing = mean.missing;
  const FlankLimit limit = flank_limit(value, stub.steel);
  for (auto& path :
       unstated({{value.driveline.seat.has_value(), "driveline.seat"},
                 {limit.allowed.has_value() || !stub.missing.empty(), "tractor.pto.stub_steel.hardness"}})) {
    missing.push_back(std::move(path));
  }
  if (!stub_known(Check::flank_pressure, stub, missing, findings)) return;
  const bool clamped = *value.driveline.seat == YokeSeat::clamped;
  const SplineSeat seat = clamped ? SplineSeat::fixed : SplineSeat::flexible;
  SplineFactors factors;
  if (!clamped) factors.wear = wear_factor(value, mean);
  const Stress pressure = spline_stress(*stub.spline, *mean.torque, factors, seat).flank_pressure;
  LimitBand band{amount_of(*limit.allowed), amount_of(std::max(*limit.allowed, *stub.steel.yield)), LimitSense::at_most,
                 limit.basis};
  Finding finding =
      compare(Check::flank_pressure, amount_of(pressure), band, clamped ? "stub.flanks_clamped" : "stub.flanks_loose");
  finding.facts = {fact("mean", *mean.torque)};
  add_stub_facts(finding, stub);
  if (finding.status != Status::ok) finding.advice = {clamped ? "stub.flanks_longer" : "stub.flanks_clamp"};
  findings.add(std::move(finding));
}

/// Combined stress by both schools: strictest by the greatest shear stress, loosest by von Mises.
struct CombinedStress {
  Stress von_mises;
  Stress twice_shear;
};

CombinedStress combined_stress(Torque torque, Torque couple, Length diameter) {
  ShaftLoad load;
  load.torque_mean = torque;
  load.bending_amplitude = couple;
  const Stress von_mises = shaft_stresses(load, diameter).peak;
  ShaftLoad bending;
  bending.bending_amplitude = couple;
  const Stress bent = shaft_stresses(bending, diameter).peak;
  const Stress sheared = torsion_stress(SolidSection(diameter), torque);
  return {von_mises, math::sqrt(bent * bent + 4.0 * sheared * sheared)};
}

/// A joint at an angle bends the stub by the couple T tan b, fully reversed in the steel each turn.
void check_root_at_angle(const Case& value, const Stub& stub, const PeakLoad& peak, const DrivelineOverRange& range,
                         Findings& findings) {
  std::vector<std::string> missing = peak.missing;
  for (std::string& path : missing_angles(value, range)) missing.push_back(std::move(path));
  missing.insert(missing.end(), peak.rise_missing.begin(), peak.rise_missing.end());
  if (!stub_known(Check::root_torsion_at_angle, stub, missing, findings)) return;
  const Angle angle = driven_front_angle(range);
  const Angle bent = front_cross_angle(value, angle);
  if (bent >= degrees(90)) {
    findings.add(not_known(Check::root_torsion_at_angle, "stub.joint_past_lock", {"range.turning"}));
    return;
  }
  const Torque couple = joint_peak_couples(*peak.torque, bent).driving;
  const CombinedStress stress = combined_stress(*peak.torque, couple, stub.smallest);
  const Stress allowed = *stub.steel.yield / yield_margin(value);
  Finding finding = compare(Check::root_torsion_at_angle, amount_of(stress.von_mises),
                            {amount_of(allowed * (stress.von_mises / stress.twice_shear)),
                             amount_of(allowed),
                             LimitSense::at_most,
                             {stub.steel.source, mean_stress_source, yield_margin_source(value)}},
                            "stub.root_at_angle");
  finding.facts = {fact("torque", *peak.torque), fact("origin", PhraseId{peak_phrase(peak)}), fact("angle", angle),
                   fact("couple", couple)};
  const bool straight_holds = combined_stress(*peak.torque, Torque{}, stub.smallest).von_mises <= allowed;
  if (finding.status == Status::stop && straight_holds) {
    finding.reason = "stub.root_at_angle_only";
    finding.advice = {"stub.less_angle"};
  }
  doubt_strength(finding, stub.steel);
  add_stub_facts(finding, stub);
  findings.add(std::move(finding));
}

} // namespace

void check_strength(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  const Stub stub = resolve_stub(value);
  const PeakLoad peak = peak_load(value);
  const MeanLoad mean = mean_load(value);
  const PeakLoad at_stub = peak_at_stub(value, peak, range);
  const PeakLoad between = peak_between_joints(value, peak, range);
  check_root_and_teeth(value, stub, at_stub, mean, findings);
  check_root_at_angle(value, stub, at_stub, range, findings);
  check_flanks(value, stub, mean, findings);
  const TubeOfCase tube = resolve_tube(value.driveline.tube, value.driveline.tube_steel, "driveline.");
  check_tube(value, tube, between, mean, findings);
  check_joint_rating(value, between, findings);
  const Chain chain = chain_of(value, stub, yield_of(tube));
  check_overload(value, stub, mean, seen_from_device(chain, at_stub, between), findings);
  check_start(value, chain, range, findings);
  check_pulsing_torque(value, chain, mean, range, findings);
  check_joint_bearings(value, mean, range, findings);
  const StateExtremes* working = range.find(MachineState::working);
  const bool kind_known = value.driveline.front_joint_kind.has_value();
  check_fatigue(value, stub, mean,
                working != nullptr && kind_known ? Stated<Angle>(front_cross_angle(value, working->front.value))
                                                 : std::nullopt,
                findings);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
