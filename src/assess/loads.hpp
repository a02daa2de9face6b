#pragma once
// The torques that really arrive at the stub: mean, and the largest that implement, engine and device let through.
// Mean and peak are never mixed: peaks are judged against yield, means against power, wear and fuel.

#include "assess/context.hpp"

#include <fieldshaft/power.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// PTO power of the tractor. A figure stated for the engine gives a range, because texts convert it differently.
struct TractorPower {
  Stated<Interval<Power>> pto;      ///< at rated engine speed
  Stated<Interval<Power>> greatest; ///< at any engine speed: more than that where the curve says so
  Interval<double> share;           ///< PTO power over the stated one
  std::vector<Source> basis;
  std::vector<std::string> missing;
};
TractorPower tractor_power(const Case& value);

/// PTO power in a gear: the least and the most that the engine can give at the gear's engine speed.
struct GearPower {
  Stated<Interval<Power>> available;
  std::vector<Source> basis;
  std::vector<std::string> missing;
};
GearPower gear_power(const Case& value, const PtoGear& gear);

/// Share of the power in the gear that shall be left over: the case's own, else the usual one.
double wanted_reserve(const Case& value);

/// Mean torque at the stub in the heaviest work, and the speed at which it is carried.
struct MeanLoad {
  Stated<Torque> torque;
  Power power{};
  AngularSpeed speed{};
  std::vector<std::string> missing;
};
MeanLoad mean_load(const Case& value);

/// Mean torque in the lightest part of the working time, at the stub; where no parts are stated, that of the heaviest
/// work, and nothing where the load of one is not. Wants `mean` to be known.
Torque lightest_load(const Case& value, const MeanLoad& mean);

/// Which part sets the largest torque.
enum class PeakOrigin { device, implement, engine };

/// Largest torque at the stub: the upper bound of the overload device, else the larger of the implement's peak and the
/// lugged engine.
struct PeakLoad {
  Stated<Torque> torque;
  PeakOrigin origin = PeakOrigin::device;
  std::vector<std::string> missing;
  double rise = 1.0; ///< over the torque at the end that sets it, where joints at an angle raise it on the way
  std::vector<std::string>
      rise_missing; ///< without which the rise is not known, and the torque that of straight joints
};
PeakLoad peak_load(const Case& value);

/// Torque at the PTO when the engine is lugged down to its peak torque, its power taken at the high end.
struct LuggedEngine {
  Stated<Torque> torque;
  std::vector<std::string> missing;
};
LuggedEngine lugged_engine(const Case& value, const PtoGear& gear);

const char* peak_phrase(const PeakLoad& peak);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
