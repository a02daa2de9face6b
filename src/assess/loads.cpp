#include "assess/loads.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

namespace {

Interval<Power> ends(const PtoPowerRange& range) { return {range.low.power, range.high.power}; }

} // namespace

TractorPower tractor_power(const Case& value) {
  TractorPower found;
  const Tractor& tractor = value.tractor;
  found.missing = unstated(
      {{tractor.power.has_value(), "tractor.power"}, {tractor.power_basis.has_value(), "tractor.power_basis"}});
  if (!found.missing.empty()) return found;
  switch (*tractor.power_basis) {
  case PowerBasis::pto:
    found.pto = Interval<Power>{*tractor.power, *tractor.power};
    found.basis = {{"PTO power as the case states it", Standing::given}};
    break;
  case PowerBasis::net_engine:
    found.pto = ends(pto_power(NetEnginePower{*tractor.power}));
    found.basis = {pto_of_net_engine.low.source, pto_of_net_engine.high.source};
    break;
  case PowerBasis::gross_engine:
    found.pto = ends(pto_power(GrossEnginePower{*tractor.power}));
    found.basis = {pto_of_gross_engine.low.source, pto_of_gross_engine.high.source};
    break;
  }
  return found;
}

GearPower gear_power(const Case& value, const PtoGear& gear) {
  GearPower found;
  const TractorPower tractor = tractor_power(value);
  const Engine& engine = value.tractor.engine;
  found.basis = tractor.basis;
  found.missing = unstated({{engine.rated_speed.has_value(), "tractor.engine.rated_speed"},
                            {gear.engine_speed.has_value(), "tractor.pto.gears[].engine_speed"}});
  found.missing.insert(found.missing.end(), tractor.missing.begin(), tractor.missing.end());
  if (!found.missing.empty()) return found;
  const double speed_share = *gear.engine_speed / *engine.rated_speed;
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

LuggedEngine lugged_engine(const Case& value, const PtoGear& gear) {
  LuggedEngine lugged;
  const TractorPower power = tractor_power(value);
  const Engine& engine = value.tractor.engine;
  lugged.missing = unstated({{engine.rated_speed.has_value(), "tractor.engine.rated_speed"},
                             {engine.torque_rise.has_value(), "tractor.engine.torque_rise"},
                             {gear.pto_speed && gear.engine_speed, "tractor.pto.gears[].engine_speed"}});
  lugged.missing.insert(lugged.missing.end(), power.missing.begin(), power.missing.end());
  if (!lugged.missing.empty()) return lugged;
  const AngularSpeed pto_at_rated = geared_speed(*engine.rated_speed, gear_ratio(*gear.engine_speed, *gear.pto_speed));
  lugged.torque = lugged_torque(shaft_torque(power.pto->high, pto_at_rated), *engine.torque_rise);
  return lugged;
}

namespace {

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
  if (!value.overload) return {std::nullopt, PeakOrigin::device, {"overload"}};
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

const char* peak_phrase(PeakOrigin origin) {
  switch (origin) {
  case PeakOrigin::device: return "peak.device";
  case PeakOrigin::implement: return "peak.implement";
  case PeakOrigin::engine: return "peak.engine";
  }
  return "peak.engine";
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
