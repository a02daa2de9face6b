#include "assess/torsion.hpp"

#include <fieldshaft/power.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// How far below its nominal speed the PTO works when the engine is lugged.
constexpr double lugged_share = 0.90;

std::size_t mass_index(const TorsionCase& torsion, const std::string& name) {
  const auto found = std::find_if(torsion.masses.begin(), torsion.masses.end(),
                                  [&](const LineMass& mass) { return mass.name == name; });
  return static_cast<std::size_t>(found - torsion.masses.begin());
}

/// Speed of a mass while the engaged gear turns the PTO at its nominal speed.
AngularSpeed speed_of(const Case& value, const LineMass& mass) {
  const PtoGear& gear = *selected_gear(value);
  switch (*mass.turns_with) {
  case MassDrive::engine: return *gear.engine_speed;
  case MassDrive::pto: return *gear.pto_speed;
  case MassDrive::geared: break;
  }
  return *mass.speed * static_cast<double>(*gear.pto_speed / *value.implement.input_speed);
}

void add_missing_masses(const Case& value, std::vector<std::string>& missing) {
  const TorsionCase& torsion = *value.torsion;
  bool engine = false;
  bool geared = false;
  for (std::size_t i = 0; i < torsion.masses.size(); ++i) {
    const LineMass& mass = torsion.masses[i];
    const std::string path = "torsion.masses[" + std::to_string(i) + "]";
    if (!mass.inertia) missing.push_back(path + ".inertia");
    if (!mass.turns_with) missing.push_back(path + ".turns_with");
    if (mass.turns_with == MassDrive::geared && !mass.speed) missing.push_back(path + ".speed");
    engine = engine || mass.turns_with == MassDrive::engine;
    geared = geared || mass.turns_with == MassDrive::geared;
  }
  const PtoGear* gear = selected_gear(value);
  if (engine && gear != nullptr && !gear->engine_speed) missing.emplace_back("tractor.pto.gears[].engine_speed");
  if (geared && !value.implement.input_speed) missing.emplace_back("implement.input_speed");
}

bool joints_pulse(const Case& value) {
  return value.driveline.front_joint_kind != JointKind::wide_angle ||
         value.driveline.rear_joint_kind != JointKind::wide_angle;
}

/// Pulses in a turn of the PTO, counted at the mass that turns with it, else at the first one.
ExcitationOrder joint_order(const TorsionCase& torsion, double pto_over_first, double per_turn) {
  const auto pto = std::find_if(torsion.masses.begin(), torsion.masses.end(),
                                [](const LineMass& mass) { return mass.turns_with == MassDrive::pto; });
  if (pto == torsion.masses.end()) return {per_turn * pto_over_first, 0};
  return {per_turn, static_cast<std::size_t>(pto - torsion.masses.begin())};
}

} // namespace

Stated<AngularSpeed> pto_speed_at_high_idle(const Case& value) {
  const PtoGear* gear = selected_gear(value);
  if (gear == nullptr || !gear->pto_speed || !gear->engine_speed || !value.tractor.engine.high_idle) return {};
  return geared_speed(*value.tractor.engine.high_idle, gear_ratio(*gear->engine_speed, *gear->pto_speed));
}

std::vector<std::string> high_idle_missing(const Case& value) {
  const PtoGear* gear = selected_gear(value);
  return unstated({{gear != nullptr, "tractor.pto.selected"},
                   {gear == nullptr || gear->pto_speed.has_value(), "tractor.pto.gears[].pto_speed"},
                   {gear == nullptr || gear->engine_speed.has_value(), "tractor.pto.gears[].engine_speed"},
                   {value.tractor.engine.high_idle.has_value(), "tractor.engine.high_idle"}});
}

SpeedRange working_pto_speeds(const Case& value) {
  if (value.torsion && value.torsion->pto_speeds) {
    return {value.torsion->pto_speeds->low, value.torsion->pto_speeds->high};
  }
  return {lugged_share * *selected_gear(value)->pto_speed, *pto_speed_at_high_idle(value)};
}

std::vector<std::string> working_speeds_missing(const Case& value) {
  if (value.torsion && value.torsion->pto_speeds) return {};
  return high_idle_missing(value);
}

std::vector<std::string> torsion_missing(const Case& value) {
  const TorsionCase& torsion = *value.torsion;
  const PtoGear* gear = selected_gear(value);
  std::vector<std::string> missing =
      unstated({{torsion.masses.size() > 1, "torsion.masses"},
                {!torsion.shafts.empty(), "torsion.shafts"},
                {gear != nullptr, "tractor.pto.selected"},
                {gear == nullptr || gear->pto_speed.has_value(), "tractor.pto.gears[].pto_speed"}});
  add_missing_masses(value, missing);
  for (std::size_t i = 0; i < torsion.shafts.size(); ++i) {
    if (!torsion.shafts[i].stiffness) missing.push_back("torsion.shafts[" + std::to_string(i) + "].stiffness");
  }
  for (std::size_t i = 0; i < torsion.pulses.size(); ++i) {
    if (!torsion.pulses[i].per_turn) missing.push_back("torsion.pulses[" + std::to_string(i) + "].per_turn");
  }
  if (!torsion.pto_speeds && gear != nullptr && !pto_speed_at_high_idle(value)) {
    missing.emplace_back("torsion.pto_speeds");
  }
  return missing;
}

TorsionLine torsion_line(const Case& value) {
  const TorsionCase& torsion = *value.torsion;
  TorsionLine line{};
  std::vector<AngularSpeed> speeds;
  for (const LineMass& mass : torsion.masses) {
    line.train.inertias.push_back({*mass.inertia});
    speeds.push_back(speed_of(value, mass));
  }
  for (const LineShaftCase& shaft : torsion.shafts) {
    const std::size_t from = mass_index(torsion, shaft.from);
    const std::size_t to = mass_index(torsion, shaft.to);
    line.train.shafts.push_back({from, to, *shaft.stiffness, static_cast<double>(speeds[to] / speeds[from])});
    line.train.shafts.back().backlash = shaft.backlash.value_or(Angle{});
    line.play = line.play || shaft.backlash.value_or(Angle{}) > Angle{};
  }
  for (const LinePulse& pulse : torsion.pulses) {
    line.orders.push_back({*pulse.per_turn, mass_index(torsion, pulse.of)});
    line.order_names.push_back(fact("pulses", pulse.name));
  }
  line.given = line.orders.size();
  line.pto_over_first = static_cast<double>(*selected_gear(value)->pto_speed / speeds.front());
  if (joints_pulse(value)) {
    for (const double times : {1.0, 2.0}) {
      line.orders.push_back(joint_order(torsion, line.pto_over_first, times * joint_pulses_per_turn));
    }
    line.order_names.push_back(fact("pulses", PhraseId{"resonance.joints"}));
    line.order_names.push_back(fact("pulses", PhraseId{"resonance.joints_four"}));
  }
  const SpeedRange pto = working_pto_speeds(value);
  line.speeds = {pto.low / line.pto_over_first, pto.high / line.pto_over_first};
  return line;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
