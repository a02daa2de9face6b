#pragma once
// The PTO stub under what really loads it: torque, the couple of an angled joint, and side forces on its overhang.

#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/fatigue/shaft.hpp>

namespace fieldshaft {
inline namespace v0 {

/// One section of a stub and what its notch does to it in fatigue (see fatigue's notch_factor).
struct StubSection {
  Length diameter{};
  NotchFactors notch{};
};

/// A splined stub: the section between the teeth, the retaining groove, and a bore if it has one. The groove may be
/// smaller than the spline's root or larger: whichever is worse governs.
struct StubShaft {
  StubSection root;
  StubSection groove; ///< a diameter of zero: there is none
  Length bore_diameter{};
};

/// What loads a stub.
struct StubLoad {
  Torque torque;             ///< mean, at least 0
  Torque torque_amplitude{}; ///< half of its range, at least 0
  Angle joint_angle{};       ///< of the joint next to the stub, from 0, below 90°
  Force side_force{}; ///< across the shaft at the joint: its weight, the side thrust of the telescope; at least 0
  Length overhang{};  ///< from the joint's centre to the section, an adaptor included; at least 0
};

enum class StubPlace { root, groove };

/// Static stresses at the worst section of a stub, without its stress concentration.
struct StubStress {
  Stress torsion;    ///< shear, at the peak torque
  Stress bending;    ///< peak
  Stress equivalent; ///< distortion energy: sqrt(bending^2 + 3 torsion^2)
  StubPlace place;
};

/// A safety factor and where it is least.
struct StubSafety {
  double factor;
  StubPlace place;
};

namespace text {
/// Peak of the couple that a joint puts on its driving shaft, T tan b. The joint module has it over the whole turn.
template <class T, class B> auto driving_couple(T torque, B joint_angle) noexcept {
  return torque * math::tan(joint_angle);
}
} // namespace text

namespace detail {

inline void check_stub(const StubShaft& stub, const char* function) {
  check::positive(stub.root.diameter.value(), {function, "stub.root.diameter", "m"});
  check::not_negative(stub.groove.diameter.value(), {function, "stub.groove.diameter", "m"});
  const bool grooved = stub.groove.diameter.value() > 0.0;
  const Length least = grooved && stub.groove.diameter < stub.root.diameter ? stub.groove.diameter : stub.root.diameter;
  check::from_below(stub.bore_diameter.value(), 0.0, least.value(), {function, "stub.bore_diameter", "m"});
}

inline void check_stub_load(const StubLoad& load, const char* function) {
  check::not_negative(load.torque.value(), {function, "load.torque", "N·m"});
  check::not_negative(load.torque_amplitude.value(), {function, "load.torque_amplitude", "N·m"});
  check::from_below(load.joint_angle.value(), 0.0, pi / 2.0, {function, "load.joint_angle", "rad"});
  check::not_negative(load.side_force.value(), {function, "load.side_force", "N"});
  check::not_negative(load.overhang.value(), {function, "load.overhang", "m"});
}

/// The value of `less_is_worse` at the root and, if there is one, at the groove; the lower of the two.
template <class F> StubSafety worst_section(const StubShaft& stub, F less_is_worse) {
  const StubSafety root{less_is_worse(stub.root), StubPlace::root};
  if (stub.groove.diameter.value() == 0.0) return root;
  const StubSafety groove{less_is_worse(stub.groove), StubPlace::groove};
  return groove.factor < root.factor ? groove : root;
}

} // namespace detail

/// The load of a stub as its steel feels it.
///
/// bending amplitude (T + T_a) tan b + F a, no bending mean; torque T with the amplitude T_a
/// The couple of the joint stands in the plane across the pins of the driving yoke, which turns with the shaft, and
/// goes as T tan b sin(rotation): the steel feels it fully reversed once in each turn. A side force stands still and
/// bends the turning shaft just so. Their peaks are taken as falling together (they may not; safe).
///   load  torque T, amplitude T_a, joint angle b, side force F at the distance a
/// A couple does not grow with the overhang, a side force's moment does. Source: balance of moments at the joint (see
/// joint: T tan b is from Seherr-Thoss, Schmelz & Aucktor, section 1.2, from memory).
/// Example: 1000 N·m at 20°: 363.97 N·m of bending, reversed each turn.
inline ShaftLoad stub_shaft_load(const StubLoad& load) {
  detail::check_stub_load(load, "stub_shaft_load");
  ShaftLoad result;
  result.bending_amplitude = text::driving_couple(Torque(load.torque + load.torque_amplitude), load.joint_angle) +
                             as_torque(load.side_force * load.overhang);
  result.torque_amplitude = load.torque_amplitude;
  result.torque_mean = load.torque;
  return result;
}

/// Torsion, bending and equivalent stress at the worst section of a stub [Pa].
///
/// torsion 16 (T + T_a)/(pi d^3 (1 - k^4)), bending 32 M/(pi d^3 (1 - k^4)), equivalent sqrt(bending^2 + 3 torsion^2),
/// at the root or the groove, whichever has the smaller diameter; M as stub_shaft_load
///   stub  root above 0; groove 0 (none) or above; bore below both
///   load  see StubLoad
/// Static, ductile steel: the notches are left out. The stub is taken as held rigidly behind the section.
/// Source: distortion energy (Shigley, Eq. 5-15). Example: root 28.91 mm, groove 29.4 mm, 1061 N·m: 387.4 MPa straight,
/// 420.3 MPa at 20°.
inline StubStress stub_stress(const StubShaft& stub, const StubLoad& load) {
  detail::check_stub(stub, "stub_stress");
  detail::check_stub_load(load, "stub_stress");
  const bool grooved = stub.groove.diameter.value() > 0.0;
  const StubPlace place = grooved && stub.groove.diameter < stub.root.diameter ? StubPlace::groove : StubPlace::root;
  const Length diameter = place == StubPlace::groove ? stub.groove.diameter : stub.root.diameter;
  const double bore_ratio = stub.bore_diameter / diameter;
  const ShaftLoad shaft = stub_shaft_load(load);
  const Torque peak = shaft.torque_mean + shaft.torque_amplitude;
  return {text::round_stress(peak, diameter, bore_ratio),
          2.0 * text::round_stress(shaft.bending_amplitude, diameter, bore_ratio),
          shaft_stresses(shaft, diameter, {}, bore_ratio).peak, place};
}

/// Safety factor of a stub against yielding at its peak load.
///
/// n = S_y over the equivalent stress of stub_stress
///   stub, load  as for stub_stress
///   yield  S_y  tensile yield strength [Pa], above 0
/// Source: Shigley, Eq. 7-16. Example: as stub_stress with 530 MPa: 1.368 straight, 1.261 at 20°.
inline StubSafety stub_yield_safety_factor(const StubShaft& stub, const StubLoad& load, Stress yield) {
  const StubStress stress = stub_stress(stub, load);
  check::positive(yield.value(), {"stub_yield_safety_factor", "yield", "Pa"});
  return {detail::safety_factor(stress.equivalent / yield), stress.place};
}

/// Safety factor of a stub against fatigue, notches included.
///
/// The lower of the root's and the groove's, by shaft_fatigue_safety_factor with each one's notch factors
///   stub, load      as for stub_stress
///   strength, rule  as for fatigue_safety_factor: endurance limit of the stub without the notch factor
/// Long life under a steady angle. Straight and under steady torque a stub is stressed on one side only and its factor
/// is that of the mean stress; at an angle each turn reverses the bending, 32 000 times in an hour at 540 r/min.
/// Source: Shigley, 8th ed., Eqs. 7-7 to 7-14.
/// Example: root 28.91 mm, K_f 1.5, K_fs 1.5, 1061 N·m, S_e 200, S_ut 630, S_y 530 MPa, Goodman: 1.084 straight, 0.467
/// at 20°.
inline StubSafety stub_fatigue_safety_factor(const StubShaft& stub, const StubLoad& load,
                                             const FatigueStrength& strength, MeanStressRule rule) {
  detail::check_stub(stub, "stub_fatigue_safety_factor");
  const ShaftLoad shaft = stub_shaft_load(load);
  return detail::worst_section(stub, [&](const StubSection& section) {
    return shaft_fatigue_safety_factor(shaft, section.diameter, strength, rule, section.notch,
                                       stub.bore_diameter / section.diameter);
  });
}

/// Greatest joint angle at which a stub keeps a safety factor, both against yielding and in fatigue [rad].
///
/// The angle at which the lower of stub_yield_safety_factor and stub_fatigue_safety_factor comes down to the factor,
/// found by halving; both fall steadily with the angle
///   stub, load      as for stub_stress; the load's own joint angle is not used
///   strength, rule  as for stub_fatigue_safety_factor
///   safety_factor   above 0
/// 0 and said to be outside where the stub does not reach the factor even straight. A limit of the stub alone, and no
/// leave for the joint to work there. Source: the two functions named.
/// Example: as stub_fatigue_safety_factor, factor 1: 1.33°; the stub that is strong enough straight is not at 20°.
inline Validated<Angle> stub_angle_limit(const StubShaft& stub, StubLoad load, const FatigueStrength& strength,
                                         MeanStressRule rule, double safety_factor) {
  check::positive(safety_factor, {"stub_angle_limit", "safety_factor", ""});
  const auto holds = [&](Angle angle) {
    load.joint_angle = angle;
    return stub_yield_safety_factor(stub, load, strength.yield).factor >= safety_factor &&
           stub_fatigue_safety_factor(stub, load, strength, rule).factor >= safety_factor;
  };
  if (!holds(radians(0.0))) return {radians(0.0), "the stub does not reach the safety factor even straight"};
  Angle low = radians(0.0);
  Angle high = degrees(89.9);
  if (holds(high)) return {high};
  for (int i = 0; i < 60; ++i) { // to the last digit of a double
    const Angle middle = 0.5 * (low + high);
    (holds(middle) ? low : high) = middle;
  }
  return {low};
}

} // namespace v0
} // namespace fieldshaft
