#pragma once
// Farms with random machines, some of whose data are missing or do not fit together. `Random` is RandomInputs or the
// like.

#include <fieldshaft/case.hpp>

#include <string>

namespace random_farms {

using namespace fieldshaft;

/// A share of the data is left out, as on a real farm.
template <class Random, class T> Stated<T> sometimes(Random& random, T value, double share = 0.95) {
  if (random.between(0.0, 1.0) > share) return std::nullopt;
  return value;
}

template <class Random> Interface interface_of(Random& random) {
  Interface interface;
  const int kind = random.whole(0, 19);
  if (kind == 0) return interface;
  if (kind == 1) { // counted and measured; may be no type at all
    interface.spline_count = random.whole(0, 1) == 0 ? 6.0 : 20.0;
    interface.diameter = MeasuredLength{millimetres(random.whole(0, 1) == 0 ? 35.0 : 40.0), millimetres(1.0)};
    return interface;
  }
  interface.type = random.whole(1, 3);
  return interface;
}

template <class Random> PtoGear gear_of(Random& random, int number) {
  static const double speeds[] = {540.0, 1000.0, 540.0, 1300.0};
  static const double engine[] = {2100.0, 2150.0, 1650.0, 2250.0};
  PtoGear gear;
  gear.name = "gear " + std::to_string(number);
  const int kind = random.whole(0, 3);
  gear.pto_speed = sometimes(random, rpm(speeds[kind] + random.between(-9.0, 9.0)));
  gear.engine_speed = sometimes(random, rpm(engine[kind]));
  return gear;
}

template <class Random> Hitch hitch_of(Random& random, HitchKind kind) {
  Hitch hitch;
  hitch.kind = kind;
  if (kind == HitchKind::drawbar) {
    hitch.distance = MeasuredLength{millimetres(random.whole(0, 1) == 0 ? 400.0 : 360.0), millimetres(5.0)};
    hitch.drop = MeasuredLength{millimetres(250.0), {}};
    hitch.lateral = MeasuredLength{};
  } else {
    hitch.lower_link = MeasuredLength{millimetres(850.0), {}};
  }
  return hitch;
}

template <class Random> FarmTractor tractor_of(Random& random, int number) {
  FarmTractor tractor;
  Tractor& machine = tractor.machine;
  machine.name = "tractor " + std::to_string(number);
  machine.power = sometimes(random, kilowatts(random.across(25.0, 250.0)));
  machine.power_basis = sometimes(random, static_cast<PowerBasis>(random.whole(0, 2)));
  machine.engine.rated_speed = sometimes(random, rpm(2200.0));
  machine.engine.high_idle = sometimes(random, rpm(2380.0));
  machine.engine.torque_rise = sometimes(random, random.between(0.1, 0.4));
  if (random.whole(0, 5) == 0) machine.pto.rotation = static_cast<Rotation>(random.whole(0, 1));
  if (random.whole(0, 9) == 0) machine.pto.place = static_cast<PtoPlace>(random.whole(0, 2));
  if (random.whole(0, 9) == 0) machine.pto.drive = static_cast<PtoDrive>(random.whole(0, 1));
  machine.pto.arrangement = StubArrangement::exchanged_from_carrier;
  machine.pto.stub = interface_of(random);
  for (int i = random.whole(0, 2); i > 0; --i) machine.pto.other_stubs.push_back({interface_of(random), {}});
  for (int i = random.whole(0, 3); i > 0; --i) machine.pto.gears.push_back(gear_of(random, i));
  machine.pto.master_shield = sometimes(random, static_cast<GuardState>(random.whole(0, 9) / 8));
  if (random.whole(0, 4) > 0) machine.hitch = hitch_of(random, HitchKind::drawbar);
  if (random.whole(0, 4) > 0) tractor.other_hitches.push_back(hitch_of(random, HitchKind::three_point));
  if (random.whole(0, 2) == 0) tractor.other_hitches.push_back(hitch_of(random, HitchKind::drawbar));
  return tractor;
}

template <class Random> FarmImplement implement_of(Random& random, int number) {
  static const double speeds[] = {540.0, 1000.0, 540.0, 750.0};
  FarmImplement implement;
  Implement& machine = implement.machine;
  machine.name = "implement " + std::to_string(number);
  machine.input_speed = sometimes(random, rpm(speeds[random.whole(0, 3)]));
  machine.power_need = sometimes(random, kilowatts(random.across(8.0, 120.0)));
  if (random.whole(0, 3) == 0) { // a need from the table
    machine.power_need.reset();
    machine.machine = "mower-conditioner, disk";
    machine.width = sometimes(random, metres(random.between(1.5, 9.0)));
  }
  if (random.whole(0, 5) == 0) machine.rotation = static_cast<Rotation>(random.whole(0, 1));
  machine.permitted_power = sometimes(random, kilowatts(random.across(40.0, 300.0)), 0.9);
  machine.input.guard = sometimes(random, GuardState::present);
  implement.hitch = sometimes(random, random.whole(0, 2) == 0 ? HitchKind::three_point : HitchKind::drawbar);
  if (random.whole(0, 4) == 0) implement.limits.power_reserve = random.between(0.0, 0.3);
  implement.hours = hours(100.0);
  return implement;
}

template <class Random> FarmDriveline driveline_of(Random& random, int number, int implements) {
  FarmDriveline driveline;
  driveline.name = "driveline " + std::to_string(number);
  driveline.driveline.tractor_yoke = interface_of(random);
  driveline.driveline.guard = sometimes(random, GuardState::present);
  driveline.driveline.adaptor = sometimes(random, Fitted<Adaptor>{random.whole(0, 9) == 0, {}});
  driveline.serves.push_back("implement " + std::to_string(random.whole(1, implements)));
  return driveline;
}

template <class Random> Farm farm_of(Random& random, int tractors, int implements) {
  Farm farm;
  for (int i = 1; i <= tractors; ++i) farm.tractors.push_back(tractor_of(random, i));
  for (int i = 1; i <= implements; ++i) farm.implements.push_back(implement_of(random, i));
  for (int i = 1; i <= 2 * implements; ++i) farm.drivelines.push_back(driveline_of(random, i, implements));
  return farm;
}

} // namespace random_farms
