// Overload device, yoke, tube and joints against the torque that arrives.

#include "advise/proposals.hpp"
#include "assess/interface.hpp"

#include <fieldshaft/materials.hpp>
#include <fieldshaft/pto.hpp>

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

using assessing::fact;

/// The two schools of shear yield lie that far apart: what must meet the stricter one where the wider one was passed.
const double between_schools =
    shear_ratio(ShearRatio::maximum_shear).value / shear_ratio(ShearRatio::distortion_energy).value;

/// A friction clutch of ordinary make; its true scatter is in its papers.
constexpr double usual_scatter = 0.15;

/// How much a clutch between input shaft and yoke moves the rear joint away from the shaft. Source: common practice, no
/// source; the part's papers say it, and the joint is to be measured anew.
const Length shortest_clutch = millimetres(80);
const Length longest_clutch = millimetres(150);

/// The joint at the implement with a clutch of any usual length before it: what passes passes with all of them.
void move_joint_by_clutch(Case& c) {
  auto& section = c.driveline.fixed_section;
  Stated<MeasuredLength>& joint = section ? section->rear_joint : c.driveline.rear_joint;
  if (!joint) return; // unstated as before: nothing that needs it passes
  joint->value += 0.5 * (shortest_clutch + longest_clutch);
  joint->tolerance += 0.5 * (longest_clutch - shortest_clutch);
}

bool judges_peak(Check check) {
  switch (check) {
  case Check::root_torsion:
  case Check::root_torsion_at_angle:
  case Check::tooth_shear:
  case Check::tube_torsion:
  case Check::joint_rating:
  case Check::start_up:
  case Check::simulated_start:
  case Check::simulated_blockage: return true;
  default: return false;
  }
}

/// Share of the peak torque at which every part that the peak passes is within its limit.
double bearable_share(const Assessment& assessment) {
  double share = 1.0;
  for (const Finding& finding : assessment.findings) {
    if (!judges_peak(finding.check) || !finding.value || !finding.limit) continue;
    if (finding.status != Status::stop && finding.status != Status::caution) continue;
    if (!(finding.value->si > 0.0)) continue;
    const bool schools = finding.status == Status::stop && finding.check != Check::joint_rating;
    share = std::min(share, finding.limit->si / finding.value->si * (schools ? between_schools : 1.0));
  }
  return share;
}

struct Window {
  double lowest;
  double highest;
};

std::optional<Window> window_of(const Assessment& assessment) {
  const Finding* finding = assessment.find(Check::overload_window);
  if (finding == nullptr) return std::nullopt;
  const auto lowest = amount_fact(*finding, "lowest");
  const auto highest = amount_fact(*finding, "highest");
  if (!lowest || !highest) return std::nullopt;
  return Window{*lowest, *highest};
}

/// A torque that can be set: whole tens below it, unless they fall below the window; then the whole number above.
double settable(double torque, double lowest) {
  const double tens = 10.0 * std::floor(torque / 10.0);
  return tens >= lowest ? tens : std::ceil(lowest);
}

Proposal setting_proposal(Torque setting, Torque own, const Window& window) {
  return {ChangeKind::set_device,
          "",
          {fact("setting", setting),
           fact("own_setting", own),
           {"lowest", Amount{window.lowest, Kind::torque}},
           {"highest", Amount{window.highest, Kind::torque}}},
          [setting](Case& c) { c.overload->item.setting = setting; }};
}

/// The highest setting that all parts bear, not below what the work needs.
void propose_setting(const Situation& now, Proposals& proposals) {
  const auto& device = now.value.overload;
  const auto window = window_of(now.assessment);
  if (!device || !device->present || !device->item.setting || !window || window->lowest > window->highest) return;
  const double stated = device->item.setting->value();
  const double wanted =
      stated < window->lowest ? window->lowest : std::min(window->highest, stated * bearable_share(now.assessment));
  const Torque setting = newton_metres(settable(std::max(wanted, window->lowest), window->lowest));
  if (setting == *device->item.setting || setting.value() > window->highest) return;
  add(proposals, setting_proposal(setting, *device->item.setting, *window));
}

/// A friction clutch at the implement end, set as low as the work lets it be. It has a length of its own.
void propose_device(const Situation& now, Proposals& proposals) {
  const auto window = window_of(now.assessment);
  if (!now.value.overload || now.value.overload->present || !window) return;
  // The window of a case without a device is that of one without scatter.
  const double lowest = window->lowest / (1.0 - usual_scatter);
  const double highest = window->highest / (1.0 + usual_scatter);
  const Torque setting = newton_metres(10.0 * std::ceil(lowest / 10.0));
  if (setting.value() > highest) return;
  OverloadDevice device;
  device.kind = DeviceKind::friction_clutch;
  device.setting = setting;
  device.scatter = usual_scatter;
  device.place = DevicePlace::implement_end;
  add(proposals, {ChangeKind::fit_device,
                  "",
                  {fact("setting", setting),
                   {"lowest", Amount{lowest, Kind::torque}},
                   {"highest", Amount{highest, Kind::torque}},
                   {"scatter", Amount{100.0 * usual_scatter, Kind::number}},
                   fact("shortest", shortest_clutch),
                   fact("longest", longest_clutch)},
                  [device](Case& c) {
                    c.overload = Fitted<OverloadDevice>{true, device};
                    move_joint_by_clutch(c);
                  }});
}

/// How much more torque a part must carry than its limit lets it.
double needed_factor(const Finding& finding) {
  const double schools = finding.status == Status::stop ? 1.0 / between_schools : 1.0;
  return finding.value->si / finding.limit->si * schools;
}

bool beyond(const Finding& finding) {
  return finding.value && finding.limit && finding.value->si > finding.limit->si && finding.limit->si > 0.0;
}

/// A member of the same shape, larger in every measure.
TubeProfile scaled(TubeProfile tube, double scale) {
  for (Stated<Length>* length : {&tube.outer_diameter, &tube.inner_diameter, &tube.perimeter, &tube.wall}) {
    if (*length) *length = **length * scale;
  }
  if (tube.enclosed_area) tube.enclosed_area = *tube.enclosed_area * (scale * scale);
  if (tube.second_moment) tube.second_moment = *tube.second_moment * (scale * scale * scale * scale);
  return tube;
}

/// Members of the same shape, larger by at least a scale: the round one in whole millimetres, a profile in hundredths.
void propose_tube(const Situation& now, double scale, Proposals& proposals) {
  const TubeProfile& tube = now.value.driveline.tube;
  std::vector<Fact> facts;
  if (tube.outer_diameter && tube.inner_diameter) {
    const Length outer = millimetres(std::ceil(scale * in(*tube.outer_diameter, unit::millimetre)));
    scale = outer / *tube.outer_diameter;
    facts = {fact("outer", outer), fact("inner", *tube.inner_diameter * scale)};
  } else if (tube.enclosed_area && tube.perimeter && tube.wall) {
    scale = std::ceil(100.0 * scale) / 100.0;
    facts = {fact("perimeter", *tube.perimeter * scale), fact("wall", *tube.wall * scale)};
  } else {
    return;
  }
  add(proposals, {ChangeKind::stronger_tube, "", std::move(facts), [scale](Case& c) {
                    c.driveline.tube = scaled(c.driveline.tube, scale);
                    c.driveline.other_tube = scaled(c.driveline.other_tube, scale);
                  }});
}

bool names_part(const Finding& finding, std::string_view part) {
  return std::any_of(finding.facts.begin(), finding.facts.end(), [&](const Fact& fact) {
    const auto* phrase = std::get_if<PhraseId>(&fact.value);
    return phrase != nullptr && std::string_view(fact.name) == "part" && part == phrase->id;
  });
}

/// How much stronger the part that closes the window has to be to open it; 1 where it is open.
double opening_factor(const Finding& window) {
  const auto lowest = amount_fact(window, "lowest");
  const auto highest = amount_fact(window, "highest");
  constexpr double room = 1.02;
  return lowest && highest && *lowest > *highest ? room * *lowest / *highest : 1.0;
}

/// The joints' rating that all findings on it ask for, in steps of 50 N·m; nothing where they bear what arrives.
Stated<Torque> rating_for(const Assessment& assessment) {
  double torque = 0.0;
  for (const Check check : {Check::joint_rating, Check::pulsing_torque}) {
    const Finding* finding = assessment.find(check);
    if (finding != nullptr && beyond(*finding)) torque = std::max(torque, finding->value->si);
  }
  const Finding* window = assessment.find(Check::overload_window);
  if (window != nullptr && names_part(*window, "part.joints") && opening_factor(*window) > 1.0) {
    torque = std::max(torque, amount_fact(*window, "part_torque").value_or(0.0) * opening_factor(*window));
  }
  return torque > 0.0 ? Stated<Torque>(newton_metres(50.0 * std::ceil(torque / 50.0))) : std::nullopt;
}

/// The rating of the needle bearings with which they reach the wanted life, in steps of 500 N: life goes with its power
/// of 10/3. Nothing where they reach it.
Stated<Force> bearings_for(const Case& value, const Assessment& assessment) {
  const Finding* life = assessment.find(Check::joint_bearing_life);
  const Stated<Force>& own = value.driveline.bearing_rating;
  if (life == nullptr || life->status != Status::stop || !life->value || !life->limit || !own) return std::nullopt;
  const double wanted = own->value() * std::pow(life->limit->si / life->value->si, 0.3);
  constexpr double above_rounding = 1.0 + 1e-9;
  return Force::from_value(500.0 * std::ceil(above_rounding * wanted / 500.0));
}

/// Other joints, one purchase that serves every finding on their strength.
void propose_stronger_joints(const Situation& now, Proposals& proposals) {
  const Stated<Torque> rating = rating_for(now.assessment);
  const Stated<Force> bearings = bearings_for(now.value, now.assessment);
  std::vector<Fact> facts;
  if (rating) facts.push_back(fact("rating", *rating));
  if (bearings) facts.push_back(fact("bearings", *bearings));
  if (bearings && now.value.driveline.bearing_arm) facts.push_back(fact("arm", *now.value.driveline.bearing_arm));
  if (facts.empty()) return;
  add(proposals, {ChangeKind::stronger_joints, "", std::move(facts), [rating, bearings](Case& c) {
                    if (rating) c.driveline.joint_rating = rating;
                    if (bearings) c.driveline.bearing_rating = bearings;
                  }});
}

/// A device that lets go in the pulses of work, set above them as far as its window lets it.
void propose_setting_above(const Situation& now, const Finding& pulsing, Proposals& proposals) {
  const auto& device = now.value.overload;
  const auto window = window_of(now.assessment);
  const auto least = amount_fact(pulsing, "device");
  if (!device || !device->present || !device->item.setting || !window || !least || !pulsing.value) return;
  const double own = device->item.setting->value();
  const Torque setting = newton_metres(10.0 * std::ceil(0.1 * own * pulsing.value->si / *least));
  if (setting.value() <= own || setting.value() > window->highest) return;
  add(proposals, setting_proposal(setting, *device->item.setting, *window));
}

/// The part that closes the window, where it belongs to the driveline, made strong enough to open it.
void propose_weakest_part(const Situation& now, const Finding& window, Proposals& proposals) {
  const double factor = opening_factor(window);
  if (factor <= 1.0) return;
  if (names_part(window, "part.tube")) propose_tube(now, std::cbrt(factor), proposals);
  if (names_part(window, "part.joints")) propose_stronger_joints(now, proposals);
}

/// What pulses more than joints or tube bear.
void propose_against_pulses(const Situation& now, const Finding& finding, Proposals& proposals) {
  propose_setting_above(now, finding, proposals);
  if (!beyond(finding)) return;
  propose_stronger_joints(now, proposals);
  if (names_part(finding, "part.tube")) propose_tube(now, std::cbrt(needed_factor(finding)), proposals);
}

void propose_clamping(const Situation& now, Proposals& proposals) {
  if (now.value.driveline.seat != YokeSeat::clearance) return;
  add(proposals, {ChangeKind::clamp_seat, "", {}, [](Case& c) { c.driveline.seat = YokeSeat::clamped; }});
}

/// A hub as long as the stub's spline.
void propose_hub(const Situation& now, Proposals& proposals) {
  const PtoType* type = assessing::resolve(now.value.tractor.pto.stub).type;
  if (type == nullptr || !type->useful_spline_length.known() || !now.value.driveline.hub_length) return;
  const Length length = type->useful_spline_length.value();
  if (!(*now.value.driveline.hub_length < length)) return;
  add(proposals, {ChangeKind::longer_hub,
                  "",
                  {fact("length", length), fact("own_length", *now.value.driveline.hub_length)},
                  [length](Case& c) { c.driveline.hub_length = length; }});
}

} // namespace

void propose_strength(const Situation& now, const Finding& finding, Proposals& proposals) {
  if (judges_peak(finding.check) || finding.check == Check::overload_window) {
    propose_setting(now, proposals);
    propose_device(now, proposals);
  }
  switch (finding.check) {
  case Check::tube_torsion:
    if (beyond(finding)) propose_tube(now, std::cbrt(needed_factor(finding)), proposals);
    break;
  case Check::joint_rating:
  case Check::joint_bearing_life: propose_stronger_joints(now, proposals); break;
  case Check::pulsing_torque: propose_against_pulses(now, finding, proposals); break;
  case Check::whirling: // the critical speed goes with the diameter
    if (beyond(finding)) propose_tube(now, 1.01 * finding.value->si / finding.limit->si, proposals);
    break;
  case Check::overload_window: propose_weakest_part(now, finding, proposals); break;
  case Check::tooth_shear: propose_hub(now, proposals); break;
  case Check::tractor_power_through_interface: propose_device(now, proposals); break;
  case Check::flank_pressure:
    propose_clamping(now, proposals);
    propose_hub(now, proposals);
    break;
  default: break;
  }
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
