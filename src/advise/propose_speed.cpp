// Gears, stubs, yokes and the implement's own speed.

#include "advise/proposals.hpp"
#include "assess/interface.hpp"

#include <fieldshaft/pto.hpp>
#include <fieldshaft/rotor.hpp>

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

using assessing::fact;
using assessing::resolve;

bool same_speed(const Stated<AngularSpeed>& a, AngularSpeed b) { return a && is_nominal_speed(*a, b); }

/// The gear that is engaged, if the case says so.
const PtoGear* engaged(const Case& value) { return assessing::selected_gear(value); }

/// Another gear for the implement's own speed. Where each speed has a stub of its own a gear of another speed is a
/// change of stub, not of lever.
void propose_gears(const Situation& now, Proposals& proposals) {
  const Case& value = now.value;
  if (!value.implement.input_speed) return;
  const TractorPto& pto = value.tractor.pto;
  const PtoGear* now_in = engaged(value);
  for (const PtoGear& gear : pto.gears) {
    if (now_in != nullptr && gear.name == now_in->name) continue;
    if (!same_speed(gear.pto_speed, *value.implement.input_speed)) continue;
    const bool own_stub = pto.arrangement == StubArrangement::two_stubs_out && now_in != nullptr && now_in->pto_speed &&
                          !is_nominal_speed(*gear.pto_speed, *now_in->pto_speed);
    if (own_stub) continue;
    add(proposals, {ChangeKind::select_gear,
                    gear.name,
                    {fact("gear", gear.name), fact("speed", *gear.pto_speed)},
                    [name = gear.name](Case& c) { c.tractor.pto.selected = name; }});
  }
}

/// The standard position for PTO work that lies nearest to where the pin stands; none where none is known.
const DrawbarDistance* nearest_position(const DrawbarDistances& distances, Length pin) {
  const DrawbarDistance* nearest = nullptr;
  for (const DrawbarDistance& entry : distances) {
    if (!usable_for_pto_work(entry.position).value) continue;
    const auto off = [pin](const DrawbarDistance& d) { return math::abs(d.distance.value - pin); };
    if (nearest == nullptr || off(entry) < off(*nearest)) nearest = &entry;
  }
  return nearest;
}

void exchange_stub(Case& c, std::size_t index, const std::string& gear, Stated<Length> pin) {
  TractorPto& pto = c.tractor.pto;
  OtherStub& other = pto.other_stubs.at(index);
  std::swap(pto.stub, other.interface);
  std::swap(pto.stub_steel, other.steel);
  pto.selected = gear;
  if (pin && c.tractor.hitch.distance) c.tractor.hitch.distance->value = *pin;
}

/// A stub that the tractor has, with the gear of its speed, where both are the implement's own.
void propose_other_stubs(const Situation& now, Proposals& proposals) {
  const Case& value = now.value;
  const TractorPto& pto = value.tractor.pto;
  const auto here = resolve(pto.stub).type;
  for (std::size_t i = 0; i < pto.other_stubs.size(); ++i) {
    const PtoType* type = resolve(pto.other_stubs[i].interface).type;
    if (type == nullptr || type == here) continue;
    if (!same_speed(value.implement.input_speed, type->nominal_speed)) continue;
    for (const PtoGear& gear : pto.gears) {
      if (!same_speed(gear.pto_speed, type->nominal_speed)) continue;
      Stated<Length> pin;
      const DrawbarDistances distances = drawbar_distances(*type); // outlives the pointer into it
      if (is_trailed(value) && value.tractor.hitch.distance) {
        const DrawbarDistance* position = nearest_position(distances, value.tractor.hitch.distance->value);
        if (position != nullptr) pin = position->distance.value;
      }
      std::vector<Fact> facts = {fact("stub", std::string(type->name)), fact("gear", gear.name),
                                 fact("speed", *gear.pto_speed)};
      if (pin) facts.push_back(fact("distance", *pin));
      add(proposals, {ChangeKind::change_over, std::string(type->name) + "/" + gear.name, std::move(facts),
                      [i, name = gear.name, pin](Case& c) { exchange_stub(c, i, name, pin); }});
      break; // one gear for a stub: another one of the same speed is a change of gear
    }
  }
}

/// The setting with which a device lets the same power through at another speed, in whole tens.
Torque setting_at(Torque setting, AngularSpeed own, AngularSpeed speed) {
  return newton_metres(10.0 * std::round((setting * (own / speed)).value() / 10.0));
}

bool has_setting(const Case& value) {
  return value.overload && value.overload->present && value.overload->item.setting;
}

void turn_input_at(Case& c, AngularSpeed speed, const std::string& gear) {
  if (has_setting(c)) {
    Stated<Torque>& setting = c.overload->item.setting;
    setting = setting_at(*setting, *c.implement.input_speed, speed);
  }
  c.implement.input_speed = speed;
  auto& rotor = c.implement.rotor;
  if (rotor && rotor->present && rotor->item.input_speed) rotor->item.input_speed = speed;
  c.tractor.pto.selected = gear;
}

/// The implement for a speed that the tractor has, with the gear for it. Rotor and need stay what they are; the input
/// turns otherwise.
void propose_implement_speeds(const Situation& now, bool faster_only, Proposals& proposals) {
  const Case& value = now.value;
  if (!value.implement.input_speed) return;
  for (const PtoGear& gear : value.tractor.pto.gears) {
    if (!gear.pto_speed || same_speed(value.implement.input_speed, *gear.pto_speed)) continue;
    if (faster_only && *gear.pto_speed < *value.implement.input_speed) continue;
    for (const auto& nominal : nominal_pto_speeds) {
      if (!is_nominal_speed(*gear.pto_speed, nominal.value)) continue;
      const AngularSpeed speed = nominal.value;
      const AngularSpeed own = *value.implement.input_speed;
      std::vector<Fact> facts = {fact("speed", speed), fact("own_speed", own), fact("gear", gear.name)};
      if (has_setting(value)) facts.push_back(fact("setting", setting_at(*value.overload->item.setting, own, speed)));
      add(proposals, {ChangeKind::implement_speed, gear.name, std::move(facts),
                      [speed, name = gear.name](Case& c) { turn_input_at(c, speed, name); }});
    }
  }
}

/// A yoke for the stub that is out, where that stub stands for the implement's own speed: a yoke that lets a slow
/// implement onto a fast stub would invite the accident.
void propose_yoke(const Situation& now, Proposals& proposals) {
  const PtoType* type = resolve(now.value.tractor.pto.stub).type;
  if (type == nullptr || !same_speed(now.value.implement.input_speed, type->nominal_speed)) return;
  const double number = type->number;
  add(proposals, {ChangeKind::change_yoke, type->name, {fact("stub", std::string(type->name))}, [number](Case& c) {
                    c.driveline.tractor_yoke = {};
                    c.driveline.tractor_yoke.type = number;
                  }});
}

void propose_without_adaptor(Proposals& proposals) {
  add(proposals, {ChangeKind::remove_adaptor, "", {}, [](Case& c) { c.driveline.adaptor = Fitted<Adaptor>{}; }});
}

/// What share of their speed the tips may keep by a finding on them; one where they are slow enough.
double bearable_tips(const Assessment& assessment, Check check) {
  const Finding* finding = assessment.find(check);
  if (finding == nullptr) return 1.0;
  std::optional<double> speed = amount_fact(*finding, "tip_speed");
  std::optional<double> limit = amount_fact(*finding, "tip_limit");
  if (check == Check::tip_speed && finding->value && finding->limit) {
    speed = finding->value->si;
    limit = finding->limit->si;
  }
  return speed && limit && *speed > *limit ? *limit / *speed : 1.0;
}

/// The rotor's speed with which its tips keep both limits, as set and at high idle, rounded down to 5 r/min; nothing
/// where they do already.
std::optional<AngularSpeed> slower_rotor(const Case& value, const Assessment& assessment) {
  const auto& rotor = value.implement.rotor;
  if (!rotor || !rotor->present || !rotor->item.rotor_speed) return std::nullopt;
  const double share =
      std::min(bearable_tips(assessment, Check::tip_speed), bearable_tips(assessment, Check::overspeed_at_high_idle));
  if (!(share < 1.0)) return std::nullopt;
  return rpm(5.0 * std::floor(in(*rotor->item.rotor_speed, unit::rpm) * share / 5.0));
}

/// Whether tips at a rotor's speed still reach the published speed at which stalks are cut at all.
bool still_cuts(const Case& value, AngularSpeed speed) {
  const Stated<Length>& radius = value.implement.rotor->item.tip_radius;
  return speed > AngularSpeed{} && radius && !(tip_speed(speed, *radius) < cutting_speeds.front().low);
}

/// A gearbox that brings the tips within both limits and leaves the rotor fit for its work.
void propose_rotor_gear(const Situation& now, Proposals& proposals) {
  const auto speed = slower_rotor(now.value, now.assessment);
  if (!speed || !still_cuts(now.value, *speed)) return;
  add(proposals, {ChangeKind::rotor_gear,
                  "",
                  {fact("speed", *speed), fact("own_speed", *now.value.implement.rotor->item.rotor_speed)},
                  [speed = *speed](Case& c) { c.implement.rotor->item.rotor_speed = speed; }});
}

} // namespace

bool too_slow_to_cut(const Case& value, const Assessment& assessment) {
  const auto speed = slower_rotor(value, assessment);
  return speed && !still_cuts(value, *speed);
}

void propose_speed(const Situation& now, const Finding& finding, Proposals& proposals) {
  switch (finding.check) {
  case Check::pto_speed:
    propose_gears(now, proposals);
    propose_other_stubs(now, proposals);
    propose_implement_speeds(now, false, proposals);
    break;
  case Check::stub_and_lever:
    propose_gears(now, proposals);
    propose_other_stubs(now, proposals);
    break;
  case Check::spline_fit:
    propose_yoke(now, proposals);
    propose_other_stubs(now, proposals);
    break;
  case Check::adaptor: propose_without_adaptor(proposals); break;
  case Check::tip_speed:
    propose_gears(now, proposals);
    propose_rotor_gear(now, proposals);
    break;
  case Check::overspeed_at_high_idle:
    propose_gears(now, proposals);
    propose_rotor_gear(now, proposals);
    break;
  case Check::power_reserve:
  case Check::whole_load: propose_gears(now, proposals); break;
  case Check::interface_power:
  case Check::root_torsion:
  case Check::root_torsion_at_angle:
  case Check::tooth_shear:
  case Check::flank_pressure:
  case Check::overload_window:
  case Check::fatigue_life:
    propose_other_stubs(now, proposals);
    propose_implement_speeds(now, true, proposals);
    break;
  case Check::tractor_power_through_interface: propose_other_stubs(now, proposals); break;
  default: break;
  }
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
