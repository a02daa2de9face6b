#pragma once
// The quantities of the library: Boost.Units' SI, with the radian kept as a base unit.

#include <fieldshaft/core/config.hpp>

#include <boost/units/systems/si.hpp>

namespace fieldshaft {
inline namespace v0 {

namespace si = boost::units::si;

namespace detail {
template <class A, class B> using Product = typename boost::units::multiply_typeof_helper<A, B>::type;
template <class A, class B> using Quotient = typename boost::units::divide_typeof_helper<A, B>::type;
} // namespace detail

template <class U> using QuantityOf = boost::units::quantity<U, double>;

using Angle = QuantityOf<si::plane_angle>;
using AngularSpeed = QuantityOf<si::angular_velocity>;
using AngularAcceleration = QuantityOf<si::angular_acceleration>;
using Length = QuantityOf<si::length>;
using Area = QuantityOf<si::area>;
using Volume = QuantityOf<si::volume>;
using Speed = QuantityOf<si::velocity>;
using Acceleration = QuantityOf<si::acceleration>;
using Time = QuantityOf<si::time>;
using Frequency = QuantityOf<si::frequency>;
using Mass = QuantityOf<si::mass>;
using Density = QuantityOf<si::mass_density>;
using MomentOfInertia = QuantityOf<si::moment_of_inertia>;
using Force = QuantityOf<si::force>;
using Torque = QuantityOf<si::torque>;
using Energy = QuantityOf<si::energy>;
using Power = QuantityOf<si::power>;
using Stress = QuantityOf<si::pressure>;
using TemperatureDifference = QuantityOf<si::temperature>;

using TwistRate = detail::Quotient<Angle, Length>;
using DiametralPitch = detail::Quotient<double, Length>; ///< teeth per length of pitch diameter
using SecondMomentOfArea = detail::Product<Area, Area>;
using VolumeRate = detail::Quotient<Volume, Time>;
using MassRate = detail::Quotient<Mass, Time>;
using PowerPerWidth = detail::Quotient<Power, Length>;
using EnergyPerMass = detail::Quotient<Energy, Mass>;
using VolumePerEnergy = detail::Quotient<Volume, Energy>;
using ForcePerLength = detail::Quotient<Force, Length>;
using TorsionalStiffness = detail::Quotient<Torque, Angle>;
using TorsionalDamping = detail::Quotient<Torque, AngularSpeed>;
using MassPerLength = detail::Quotient<Mass, Length>;
using BendingStiffness = detail::Product<Stress, SecondMomentOfArea>;
using HeatCapacity = detail::Quotient<EnergyPerMass, TemperatureDifference>;

} // namespace v0
} // namespace fieldshaft
