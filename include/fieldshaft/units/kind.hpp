#pragma once
// The kinds of quantity as values, for code that meets them at run time: parsing, findings, reports, bindings.

#include <fieldshaft/units/quantity.hpp>

namespace fieldshaft {
inline namespace v0 {

enum class Kind {
  number,
  share,
  angle,
  angular_speed,
  angular_acceleration,
  twist_rate,
  length,
  area,
  speed,
  acceleration,
  time,
  frequency,
  mass,
  density,
  moment_of_inertia,
  force,
  torque,
  torsional_stiffness,
  energy,
  power,
  stress,
  volume_rate,
  mass_rate,
  power_per_width,
  energy_per_mass,
  volume_per_energy,
  force_per_length,
  temperature_difference,
  heat_capacity,
  diametral_pitch,
  second_moment_of_area,
  torsional_damping,
  mass_per_length,
  bending_stiffness,
};

/// An article and a name for messages: "a power", "an angle".
constexpr const char* kind_name(Kind kind) noexcept {
  switch (kind) {
  case Kind::number: return "a plain number";
  case Kind::share: return "a share";
  case Kind::angle: return "an angle";
  case Kind::angular_speed: return "a shaft speed";
  case Kind::angular_acceleration: return "an angular acceleration";
  case Kind::twist_rate: return "a twist per length";
  case Kind::length: return "a length";
  case Kind::area: return "an area";
  case Kind::speed: return "a speed";
  case Kind::acceleration: return "an acceleration";
  case Kind::time: return "a time";
  case Kind::frequency: return "a frequency";
  case Kind::mass: return "a mass";
  case Kind::density: return "a density";
  case Kind::moment_of_inertia: return "a moment of inertia";
  case Kind::force: return "a force";
  case Kind::torque: return "a torque";
  case Kind::torsional_stiffness: return "a torsional stiffness";
  case Kind::energy: return "an energy";
  case Kind::power: return "a power";
  case Kind::stress: return "a stress";
  case Kind::volume_rate: return "a volume per time";
  case Kind::mass_rate: return "a mass per time";
  case Kind::power_per_width: return "a power per width";
  case Kind::energy_per_mass: return "an energy per mass";
  case Kind::volume_per_energy: return "a volume per energy";
  case Kind::force_per_length: return "a force per length";
  case Kind::temperature_difference: return "a temperature difference";
  case Kind::heat_capacity: return "a specific heat capacity";
  case Kind::diametral_pitch: return "a diametral pitch";
  case Kind::second_moment_of_area: return "a second moment of area";
  case Kind::torsional_damping: return "a torsional damping";
  case Kind::mass_per_length: return "a mass per length";
  case Kind::bending_stiffness: return "a bending stiffness";
  }
  return "a quantity";
}

/// The kind of a quantity type: kind_of<Torque> is Kind::torque, kind_of<double> is Kind::number.
template <class Q> inline constexpr Kind kind_of = Kind::number;
template <> inline constexpr Kind kind_of<Angle> = Kind::angle;
template <> inline constexpr Kind kind_of<AngularSpeed> = Kind::angular_speed;
template <> inline constexpr Kind kind_of<AngularAcceleration> = Kind::angular_acceleration;
template <> inline constexpr Kind kind_of<TwistRate> = Kind::twist_rate;
template <> inline constexpr Kind kind_of<Length> = Kind::length;
template <> inline constexpr Kind kind_of<Area> = Kind::area;
template <> inline constexpr Kind kind_of<Speed> = Kind::speed;
template <> inline constexpr Kind kind_of<Acceleration> = Kind::acceleration;
template <> inline constexpr Kind kind_of<Time> = Kind::time;
template <> inline constexpr Kind kind_of<Frequency> = Kind::frequency;
template <> inline constexpr Kind kind_of<Mass> = Kind::mass;
template <> inline constexpr Kind kind_of<Density> = Kind::density;
template <> inline constexpr Kind kind_of<MomentOfInertia> = Kind::moment_of_inertia;
template <> inline constexpr Kind kind_of<Force> = Kind::force;
template <> inline constexpr Kind kind_of<Torque> = Kind::torque;
template <> inline constexpr Kind kind_of<TorsionalStiffness> = Kind::torsional_stiffness;
template <> inline constexpr Kind kind_of<Energy> = Kind::energy;
template <> inline constexpr Kind kind_of<Power> = Kind::power;
template <> inline constexpr Kind kind_of<Stress> = Kind::stress;
template <> inline constexpr Kind kind_of<VolumeRate> = Kind::volume_rate;
template <> inline constexpr Kind kind_of<MassRate> = Kind::mass_rate;
template <> inline constexpr Kind kind_of<PowerPerWidth> = Kind::power_per_width;
template <> inline constexpr Kind kind_of<EnergyPerMass> = Kind::energy_per_mass;
template <> inline constexpr Kind kind_of<VolumePerEnergy> = Kind::volume_per_energy;
template <> inline constexpr Kind kind_of<ForcePerLength> = Kind::force_per_length;
template <> inline constexpr Kind kind_of<TemperatureDifference> = Kind::temperature_difference;
template <> inline constexpr Kind kind_of<HeatCapacity> = Kind::heat_capacity;
template <> inline constexpr Kind kind_of<DiametralPitch> = Kind::diametral_pitch;
template <> inline constexpr Kind kind_of<SecondMomentOfArea> = Kind::second_moment_of_area;
template <> inline constexpr Kind kind_of<TorsionalDamping> = Kind::torsional_damping;
template <> inline constexpr Kind kind_of<MassPerLength> = Kind::mass_per_length;
template <> inline constexpr Kind kind_of<BendingStiffness> = Kind::bending_stiffness;

/// A quantity whose kind is known at run time: a number in SI units with its kind.
struct Amount {
  double si = 0.0;
  Kind kind = Kind::number;
};

template <class Q> constexpr Amount amount_of(Q quantity) noexcept {
  if constexpr (kind_of<Q> == Kind::number) {
    return {quantity, Kind::number};
  } else {
    return {quantity.value(), kind_of<Q>};
  }
}

} // namespace v0
} // namespace fieldshaft
