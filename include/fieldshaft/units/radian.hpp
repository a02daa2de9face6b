#pragma once
// The one place where the radian is added or dropped, and the elementary functions that formulas use.
//
// In Boost.Units' SI the radian is a base unit: a torque is N·m/rad, an angular speed rad/s. Formulas that
// cross between turning and straight motion (v = w r, stress = T / Z) say so by one of these names.
// Numbers of any other type (double, dual, enclosure) pass through unchanged, so one formula serves them all.

#include <fieldshaft/units/quantity.hpp>

#include <boost/units/pow.hpp>

#include <cmath>
#include <type_traits>

namespace fieldshaft {
inline namespace v0 {

/// Pi to the last digit of a double.
inline constexpr double pi = 3.14159265358979323846;

namespace detail {
template <class T> struct IsQuantity : std::false_type {};
template <class U> struct IsQuantity<boost::units::quantity<U, double>> : std::true_type {};
template <class T> using IfPlainNumber = std::enable_if_t<!IsQuantity<T>::value, T>;
} // namespace detail

// Dropping the radian. ------------------------------------------------------------------------------------
constexpr double without_radian(Angle angle) noexcept { return angle.value(); }
constexpr Frequency without_radian(AngularSpeed speed) noexcept { return Frequency::from_value(speed.value()); }
constexpr auto without_radian(AngularAcceleration a) noexcept {
  return detail::Quotient<Frequency, Time>::from_value(a.value());
}
constexpr Energy without_radian(Torque torque) noexcept { return Energy::from_value(torque.value()); }
constexpr auto without_radian(MomentOfInertia inertia) noexcept {
  return detail::Product<Mass, Area>::from_value(inertia.value());
}
constexpr auto without_radian(TwistRate rate) noexcept {
  return detail::Quotient<double, Length>::from_value(rate.value());
}
template <class T> constexpr detail::IfPlainNumber<T> without_radian(T value) noexcept { return value; }

// Adding it. ----------------------------------------------------------------------------------------------
template <class T> constexpr detail::IfPlainNumber<T> as_angle(T value) noexcept { return value; }
constexpr Angle angle_from_ratio(double ratio) noexcept { return Angle::from_value(ratio); }
constexpr AngularSpeed as_angular_speed(Frequency f) noexcept { return AngularSpeed::from_value(f.value()); }
constexpr AngularAcceleration as_angular_acceleration(detail::Quotient<Frequency, Time> a) noexcept {
  return AngularAcceleration::from_value(a.value());
}
constexpr Torque as_torque(Energy moment) noexcept { return Torque::from_value(moment.value()); }
constexpr MomentOfInertia as_inertia(detail::Product<Mass, Area> i) noexcept {
  return MomentOfInertia::from_value(i.value());
}
constexpr TwistRate as_twist_rate(detail::Quotient<double, Length> rate) noexcept {
  return TwistRate::from_value(rate.value());
}
template <class T> constexpr detail::IfPlainNumber<T> as_angular_speed(T value) noexcept { return value; }
template <class T> constexpr detail::IfPlainNumber<T> as_angular_acceleration(T value) noexcept { return value; }
template <class T> constexpr detail::IfPlainNumber<T> as_torque(T value) noexcept { return value; }
template <class T> constexpr detail::IfPlainNumber<T> as_inertia(T value) noexcept { return value; }
template <class T> constexpr detail::IfPlainNumber<T> as_twist_rate(T value) noexcept { return value; }

// Elementary functions for quantities and for plain number types alike. -------------------------------------
namespace math {

inline double sin(Angle a) noexcept { return std::sin(a.value()); }
inline double cos(Angle a) noexcept { return std::cos(a.value()); }
inline double tan(Angle a) noexcept { return std::tan(a.value()); }
template <class T> detail::IfPlainNumber<T> sin(T a) noexcept {
  using std::sin;
  return sin(a);
}
template <class T> detail::IfPlainNumber<T> cos(T a) noexcept {
  using std::cos;
  return cos(a);
}
template <class T> detail::IfPlainNumber<T> tan(T a) noexcept {
  using std::tan;
  return tan(a);
}
template <class T> T abs(T x) noexcept {
  using std::abs;
  if constexpr (detail::IsQuantity<T>::value) {
    return T::from_value(std::abs(x.value()));
  } else {
    return abs(x);
  }
}
template <class T> auto sqrt(T x) noexcept {
  using std::sqrt;
  if constexpr (detail::IsQuantity<T>::value) {
    using Root = typename boost::units::root_typeof_helper<T, boost::units::static_rational<2>>::type;
    return Root::from_value(std::sqrt(x.value()));
  } else {
    return sqrt(x);
  }
}
template <class T> auto atan(T x) noexcept {
  using std::atan;
  if constexpr (detail::IsQuantity<T>::value) {
    return std::atan(static_cast<double>(x)); // compiles only for a ratio of like quantities
  } else {
    return atan(x);
  }
}
template <class T> auto log(T x) noexcept {
  using std::log;
  if constexpr (detail::IsQuantity<T>::value) {
    return std::log(static_cast<double>(x)); // compiles only for a ratio of like quantities
  } else {
    return log(x);
  }
}
/// A plain number to any power.
template <class T, class E> auto pow(T x, E exponent) noexcept {
  using std::pow;
  if constexpr (detail::IsQuantity<T>::value) {
    return std::pow(static_cast<double>(x), exponent); // compiles only for a ratio of like quantities
  } else {
    return pow(x, exponent);
  }
}
template <class T> auto log1p(T x) noexcept {
  using std::log1p;
  if constexpr (detail::IsQuantity<T>::value) {
    return std::log1p(static_cast<double>(x)); // compiles only for a ratio of like quantities
  } else {
    return log1p(x);
  }
}
template <class T> auto cbrt(T x) noexcept {
  using std::cbrt;
  if constexpr (detail::IsQuantity<T>::value) {
    using Root = typename boost::units::root_typeof_helper<T, boost::units::static_rational<3>>::type;
    return Root::from_value(std::cbrt(x.value()));
  } else {
    return cbrt(x);
  }
}
/// x * x * ... (N factors), exactly as written out by hand.
template <int N, class T> constexpr auto power(T x) noexcept {
  static_assert(N >= 1, "a whole power of at least one");
  if constexpr (N == 1) {
    return x;
  } else if constexpr (N % 2 == 0) {
    return power<N / 2>(x) * power<N / 2>(x);
  } else {
    return power<N - 1>(x) * x;
  }
}

} // namespace math
} // namespace v0
} // namespace fieldshaft
