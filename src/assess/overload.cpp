// The window of settings of the overload device: above what the work needs, below what the weakest part bears.

#include "assess/overload.hpp"

#include "assess/rise.hpp"
#include "assess/steel.hpp"

#include <fieldshaft/shaft.hpp>
#include <fieldshaft/spline.hpp>

#include <set>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

// Ids of the report's catalogue.
constexpr std::string_view part_stub = "part.stub";
constexpr std::string_view part_teeth = "part.teeth";

void add_stub(const Stub& stub, Chain& chain) {
  chain.missing.insert(chain.missing.end(), stub.missing.begin(), stub.missing.end());
  if (!stub.spline || !stub.steel.yield) {
    if (stub.missing.empty()) chain.missing.emplace_back("tractor.pto.stub");
    return;
  }
  const Stress shear = shear_yield(*stub.steel.yield, ShearRatio::maximum_shear);
  chain.parts.push_back({part_stub, yield_torque(SolidSection(stub.smallest), shear), 1.0});
  const Stress per_newton_metre = spline_stress(*stub.spline, newton_metres(1.0)).tooth_shear;
  chain.parts.push_back({part_teeth, newton_metres(1.0) * (shear / per_newton_metre), 1.0});
}

void add_rest(const Case& value, const TubeYield& tube, Chain& chain) {
  chain.missing.insert(chain.missing.end(), tube.missing.begin(), tube.missing.end());
  if (tube.torque) chain.parts.push_back({"part.tube", *tube.torque, 1.0});
  if (value.driveline.joint_rating) {
    chain.parts.push_back({"part.joints", *value.driveline.joint_rating, 1.0});
  } else {
    chain.missing.emplace_back("driveline.joint_rating");
  }
}

void add_window_facts(Finding& finding, const DeviceWindow& window, const Chain& chain) {
  finding.facts.push_back(fact("lowest", window.lowest));
  finding.facts.push_back(fact("highest", window.highest));
  finding.facts.push_back(fact("part", PhraseId{window.weakest_name.data()}));
  finding.facts.push_back(fact("part_torque", chain.parts[window.weakest].yield_torque));
  if (!window.open()) finding.advice.emplace_back("window.closed");
}

Finding judge_device(const DeviceWindow& window, Torque setting) {
  Finding finding;
  if (setting > window.highest) {
    finding = make_finding(Check::overload_window, Status::stop, "window.too_high");
    finding.advice = {"window.lower"};
  } else if (setting < window.lowest) {
    finding = make_finding(Check::overload_window, Status::caution, "window.too_low");
    finding.advice = {"window.raise"};
  } else {
    finding = make_finding(Check::overload_window, Status::ok, "window.within");
  }
  if (!window.open()) finding.advice.clear(); // no setting is right; the window itself is the answer
  finding.value = amount_of(setting);
  finding.limit = amount_of(window.highest);
  finding.sense = LimitSense::at_most;
  finding.margin = 1.0 - setting / window.highest;
  return finding;
}

} // namespace

namespace {

/// Shear that a stub of a type has to bear when the same work is done at 1000 r/min behind a device that never slips in
/// it: the work's peak, up through both ends of the scatter.
struct StubAt1000 {
  Torque peak{};
  Stress shear{};
};

StubAt1000 stub_at_1000(const Case& value, const PtoType& type, double scatter) {
  const Torque mean = shaft_torque(*value.implement.power_need, rpm(1000));
  const Torque peak = mean * (*value.implement.peak_factor * (1.0 + scatter) / (1.0 - scatter));
  return {peak, torsion_stress(SolidSection(smallest_section(type)), peak)};
}

/// The smallest standard stub for 1000 r/min that bears the work with the steel at hand, else the strength it needs.
void add_healing(const Case& value, const Stub& stub, double scatter, Finding& finding) {
  const Stress allowed = shear_yield(*stub.steel.yield, ShearRatio::maximum_shear) / yield_margin(value);
  const PtoType* largest = nullptr;
  for (const int number : {2, 3}) {
    largest = &pto_type(number);
    const StubAt1000 at = stub_at_1000(value, *largest, scatter);
    if (at.shear > allowed) continue;
    finding.facts.push_back(fact("healing_type", std::string(largest->name)));
    finding.facts.push_back(fact("healing_peak", at.peak));
    finding.advice.emplace_back("heal.faster");
    return;
  }
  const StubAt1000 at = stub_at_1000(value, *largest, scatter);
  const double ratio = shear_ratio(ShearRatio::maximum_shear).value;
  finding.facts.push_back(fact("healing_type", std::string(largest->name)));
  finding.facts.push_back(fact("healing_yield", at.shear * (yield_margin(value) / ratio)));
  finding.advice.emplace_back("heal.steel");
}

/// A device at the implement end does not bound the shaft ahead of it: stopped at once, its torque swings up to twice
/// as high. The static pass stands as what it is; the words say so, and what happens then stands among what was not
/// examined until the case states what a simulation needs.
const char* device_reason(const Case& value) {
  const bool behind = value.overload->item.place == DevicePlace::implement_end;
  return behind && !value.start ? "start.device_behind" : "start.device";
}

/// What a harsh start lets through: the device, else the tractor's own clutch.
void check_start_up(const Case& value, const Chain& chain, Findings& findings) {
  const PeakLoad peak = peak_load(value);
  const bool device = value.overload && value.overload->present && peak.torque;
  const Stated<Torque>& clutch = value.tractor.pto.clutch_torque;
  std::vector<std::string> missing = chain.missing;
  if (!device && !clutch) missing.emplace_back("tractor.pto.clutch_torque");
  if (!missing.empty() || chain.parts.empty()) {
    findings.add(not_known(Check::start_up, "start.unstated", missing));
    return;
  }
  const bool clutch_first = clutch && (!device || *clutch < *peak.torque);
  const Torque arrives = clutch_first ? *clutch : *peak.torque;
  // The tractor's clutch sits ahead of all joints, and the stub takes what it lets through.
  const Chain seen = clutch_first ? seen_from_device(chain, {}, {}) : chain;
  const DeviceWindow weakest = device_window(Torque{}, seen.parts, 0.0, 1.0, yield_margin(value));
  const Amount limit = amount_of(weakest.weakest_torque / yield_margin(value));
  Finding finding = compare(Check::start_up, amount_of(arrives),
                            {limit,
                             amount_of(weakest.weakest_torque),
                             LimitSense::at_most,
                             {{"yield of the weakest part by the greatest-shear theory, static", Standing::textbook},
                              yield_margin_source(value)}},
                            clutch_first ? "start.clutch" : device_reason(value));
  finding.facts = {fact("part", PhraseId{weakest.weakest_name.data()}), fact("part_torque", weakest.weakest_torque),
                   fact("twice", 2.0 * arrives)};
  if (finding.status != Status::ok) finding.advice = {"start.gently"};
  doubt_unless_rise_known(seen.rise_missing, finding);
  findings.add(std::move(finding));
}

} // namespace

Chain chain_of(const Case& value, const Stub& stub, const TubeYield& tube) {
  Chain chain;
  add_stub(stub, chain);
  add_rest(value, tube, chain);
  return chain;
}

Chain seen_from_device(Chain chain, const PeakLoad& at_stub, const PeakLoad& between) {
  for (ChainPart& part : chain.parts) {
    const bool of_stub = part.name == part_stub || part.name == part_teeth;
    part.speed_ratio = 1.0 / (of_stub ? at_stub : between).rise;
  }
  std::set<std::string> missing(at_stub.rise_missing.begin(), at_stub.rise_missing.end());
  missing.insert(between.rise_missing.begin(), between.rise_missing.end());
  chain.rise_missing.assign(missing.begin(), missing.end());
  return chain;
}

void check_overload(const Case& value, const Stub& stub, const MeanLoad& mean, const Chain& chain, Findings& findings) {
  check_start_up(value, chain, findings);
  std::vector<std::string> missing = mean.missing;
  missing.insert(missing.end(), chain.missing.begin(), chain.missing.end());
  if (!value.implement.peak_factor) missing.emplace_back("implement.peak_factor");
  if (!value.overload) missing.emplace_back("overload");
  const bool fitted = value.overload && value.overload->present;
  if (fitted && !value.overload->item.kind) missing.emplace_back("overload.kind");
  if (fitted && !value.overload->item.place) missing.emplace_back("overload.place");
  if (fitted && !value.overload->item.setting) missing.emplace_back("overload.setting");
  if (fitted && !value.overload->item.scatter) missing.emplace_back("overload.scatter");
  if (!missing.empty()) {
    findings.add(not_known(Check::overload_window, "window.unstated", missing));
    return;
  }
  const Torque working_peak = *mean.torque * *value.implement.peak_factor;
  const double scatter = fitted ? *value.overload->item.scatter : 0.0;
  const DeviceWindow window = device_window(working_peak, chain.parts, scatter, 1.0, yield_margin(value));
  Finding finding;
  if (fitted) {
    finding = judge_device(window, *value.overload->item.setting);
  } else if (const PeakLoad peak = peak_load(value); peak.torque && *peak.torque <= window.highest) {
    // The engine is bounded, the inertia of a blocked rotor and of the engine's flywheel is not.
    finding = make_finding(Check::overload_window, Status::caution, "window.none_fitted_small");
    finding.advice = {"window.fit"};
  } else {
    finding = make_finding(Check::overload_window, Status::stop, "window.none_fitted");
    if (window.open()) finding.advice = {"window.fit"};
  }
  add_window_facts(finding, window, chain);
  const bool stub_governs = window.weakest_name == part_stub || window.weakest_name == part_teeth;
  const bool slow = is_nominal_speed(mean.speed, rpm(540));
  if (!window.open() && stub_governs && slow) add_healing(value, stub, scatter, finding);
  finding.facts.push_back(fact("working_peak", working_peak));
  finding.basis = {{"window between working peak and yield of the weakest part, static", Standing::exact},
                   yield_margin_source(value)};
  doubt_unless_rise_known(chain.rise_missing, finding);
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
