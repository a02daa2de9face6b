#include "assess/loads.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

namespace {

Interval<Power> share_of(const Interval<double>& share, Power power) { return {share.low * power, share.high * power}; }

void use_share(const PowerShare& share, TractorPower& found) {
  found.share = {share.low.value, share.high.value};
  found.basis = {share.low.source, share.high.source};
}

void use_basis(PowerBasis basis, TractorPower& found) {
  switch (basis) {
  case PowerBasis::pto:
    found.share = {1.0, 1.0};
    found.basis = {{"PTO power as the case states it", Standing::given}};
    break;
  case PowerBasis::net_engine: use_share(pto_of_net_engine, found); break;
  case PowerBasis::gross_engine: use_share(pto_of_gross_engine, found); break;
  }
}

EnginePoint engine_point(const CurvePoint& point) {
  const AngularSpeed speed = point.speed.value_or(AngularSpeed{}); // refused by the line, like every other bad point
  return {speed, point.power ? shaft_torque(*point.power, speed) : point.torque.value_or(Torque{})};
}

/// The stated curve on its own basis; nothing where none is stated. Without a stated high idle the governor line is
/// steep beyond doubt, and must not be asked for power.
Stated<EngineLine> stated_line(const Engine& engine) {
  if (engine.curve.empty()) return std::nullopt;
  std::vector<EnginePoint> points;
  for (const CurvePoint& point : engine.curve) points.push_back(engine_point(point));
  const AngularSpeed last = points.back().speed;
  return EngineLine(std::move(points), engine.high_idle.value_or(1.01 * last), engine.rated_speed.value_or(last));
}

/// Power in a gear where the curve is stated.
GearPower power_on(const EngineLine& line, const TractorPower& tractor, const Engine& engine, AngularSpeed speed) {
  GearPower found;
  found.basis = tractor.basis;
  if (speed > line.points().back().speed && !engine.high_idle) {
    found.missing = {"tractor.engine.high_idle"};
    return found;
  }
  const Validated<Power> power = line.power_at(speed);
  if (power.valid()) {
    found.available = share_of(tractor.share, power.value);
  } else {
    found.missing = {"tractor.engine.curve"}; // it does not reach down to this gear
  }
  return found;
}

} // namespace

TractorPower tractor_power(const Case& value) {
  TractorPower found;
  const Tractor& tractor = value.tractor;
  const Stated<EngineLine> line = stated_line(tractor.engine);
  found.missing =
      unstated({{tractor.power || line, "tractor.power"}, {tractor.power_basis.has_value(), "tractor.power_basis"}});
  if (!found.missing.empty()) return found;
  use_basis(*tractor.power_basis, found);
  const Power rated = tractor.power ? *tractor.power : line->rated_power().power;
  found.pto = share_of(found.share, rated);
  found.greatest = line ? share_of(found.share, std::max(rated, line->greatest_power().power.power)) : *found.pto;
  return found;
}

namespace {

/// Down to this share of rated speed an engine without a stated curve is taken to hold its rated torque.
constexpr Sourced<double> least_known_share{
    0.60, {"0.60 of rated speed, a rule of thumb and the default of this library", Standing::common_practice}};

} // namespace

GearPower gear_power(const Case& value, const PtoGear& gear) {
  GearPower found;
  const TractorPower tractor = tractor_power(value);
  const Engine& engine = value.tractor.engine;
  found.basis = tractor.basis;
  found.missing = unstated({{engine.rated_speed.has_value(), "tractor.engine.rated_speed"},
                            {gear.engine_speed.has_value(), "tractor.pto.gears[].engine_speed"}});
  found.missing.insert(found.missing.end(), tractor.missing.begin(), tractor.missing.end());
  if (!found.missing.empty()) return found;
  if (const Stated<EngineLine> line = stated_line(engine)) return power_on(*line, tractor, engine, *gear.engine_speed);
  const double speed_share = *gear.engine_speed / *engine.rated_speed;
  if (speed_share <
      least_known_share.value) { // far below the speed of peak torque an engine gives less than its rated one
    found.missing = {"tractor.engine.curve"};
    return found;
  }
  if (speed_share > 1.0) { // on the governor line, where power falls to nothing at high idle
    found.missing = unstated({{engine.high_idle.has_value(), "tractor.engine.high_idle"}});
    if (!found.missing.empty()) return found;
    const auto at_gear = [&](Power rated) {
      return engine_line(PtoPower{rated}, *engine.rated_speed, *engine.high_idle).power_at(*gear.engine_speed).value;
    };
    found.available = Interval<Power>{at_gear(tractor.pto->low), at_gear(tractor.pto->high)};
    return found;
  }
  // Below rated speed the torque lies between the rated and the peak torque, and the power below the rated one (some
  // engines bulge a few per cent above it; that is no power to plan with).
  const double rise = engine.torque_rise.value_or(0.0);
  const Power lugged = tractor.pto->high * speed_share * (1.0 + rise);
  found.available = Interval<Power>{tractor.pto->low * speed_share, std::min(lugged, tractor.pto->high)};
  return found;
}

MeanLoad mean_load(const Case& value) {
  MeanLoad load;
  const PtoGear* gear = selected_gear(value);
  const bool speed_known = gear != nullptr && gear->pto_speed;
  load.missing = unstated(
      {{value.implement.power_need.has_value(), "implement.power_need"}, {speed_known, "tractor.pto.selected"}});
  if (gear == nullptr || !load.missing.empty()) return load;
  load.power = *value.implement.power_need;
  load.speed = *gear->pto_speed;
  load.torque = shaft_torque(load.power, load.speed);
  return load;
}

Torque lightest_load(const Case& value, const MeanLoad& mean) {
  Torque lightest = *mean.torque;
  for (const DutyPart& part : value.driveline.duties) {
    if (!part.power) return {};
    lightest = std::min(lightest, shaft_torque(*part.power, part.pto_speed.value_or(mean.speed)));
  }
  return lightest;
}

LuggedEngine lugged_engine(const Case& value, const PtoGear& gear) {
  LuggedEngine lugged;
  const TractorPower power = tractor_power(value);
  const Engine& engine = value.tractor.engine;
  const Stated<EngineLine> line = stated_line(engine);
  lugged.missing = unstated({{line || engine.rated_speed, "tractor.engine.rated_speed"},
                             {line || engine.torque_rise, "tractor.engine.torque_rise"},
                             {gear.pto_speed && gear.engine_speed, "tractor.pto.gears[].engine_speed"}});
  lugged.missing.insert(lugged.missing.end(), power.missing.begin(), power.missing.end());
  if (!lugged.missing.empty()) return lugged;
  if (line) {
    lugged.torque = power.share.high * line->peak().torque / gear_ratio(*gear.engine_speed, *gear.pto_speed);
    return lugged;
  }
  const AngularSpeed pto_at_rated = geared_speed(*engine.rated_speed, gear_ratio(*gear.engine_speed, *gear.pto_speed));
  lugged.torque = lugged_torque(shaft_torque(power.pto->high, pto_at_rated), *engine.torque_rise);
  return lugged;
}

namespace {

/// Joints that raise a torque by less than half a per cent are not worth a word.
constexpr double least_told_rise = 1.005;

/// Only a device whose kind and place are known bounds the torque.
PeakLoad device_peak(const OverloadDevice& device) {
  PeakLoad peak;
  peak.missing = unstated({{device.kind.has_value(), "overload.kind"},
                           {device.place.has_value(), "overload.place"},
                           {device.setting.has_value(), "overload.setting"},
                           {device.scatter.has_value(), "overload.scatter"}});
  if (peak.missing.empty()) peak.torque = *device.setting * (1.0 + *device.scatter);
  return peak;
}

} // namespace

PeakLoad peak_load(const Case& value) {
  PeakLoad unknown;
  unknown.missing = {"overload"};
  if (!value.overload) return unknown;
  if (value.overload->present) return device_peak(value.overload->item);
  PeakLoad peak;
  const MeanLoad mean = mean_load(value);
  peak.missing = mean.missing;
  if (!value.implement.peak_factor) peak.missing.emplace_back("implement.peak_factor");
  const PtoGear* gear = selected_gear(value);
  if (gear != nullptr) {
    const LuggedEngine lugged = lugged_engine(value, *gear);
    peak.missing.insert(peak.missing.end(), lugged.missing.begin(), lugged.missing.end());
    if (!peak.missing.empty()) return peak;
    const Torque implement_peak = *mean.torque * *value.implement.peak_factor;
    peak.origin = implement_peak > *lugged.torque ? PeakOrigin::implement : PeakOrigin::engine;
    peak.torque = std::max(implement_peak, *lugged.torque);
  }
  return peak;
}

const char* peak_phrase(const PeakLoad& peak) {
  const bool raised = peak.rise > least_told_rise;
  switch (peak.origin) {
  case PeakOrigin::device: return raised ? "peak.device_raised" : "peak.device";
  case PeakOrigin::implement: return raised ? "peak.implement_raised" : "peak.implement";
  case PeakOrigin::engine: return raised ? "peak.engine_raised" : "peak.engine";
  }
  return "peak.engine";
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
