#pragma once
// Laws of the formulas: scaling, proportion, monotony and symmetry.

#include "law.hpp"

#include <fieldshaft/fatigue.hpp>
#include <fieldshaft/joint.hpp>
#include <fieldshaft/overload.hpp>
#include <fieldshaft/power.hpp>
#include <fieldshaft/pto.hpp>
#include <fieldshaft/rotor.hpp>
#include <fieldshaft/shaft.hpp>
#include <fieldshaft/spline.hpp>
#include <fieldshaft/units/text.hpp>

#include <string>

namespace formula_laws {

using namespace fieldshaft;

inline constexpr double rounding = 1e-12; // a dozen operations at 1.1e-16 each, and room

inline Power any_power(RandomInputs& r) { return kilowatts(r.across(1, 500)); }
inline AngularSpeed any_speed(RandomInputs& r) { return rpm(r.across(50, 3000)); }
inline Torque any_torque(RandomInputs& r) { return newton_metres(r.across(1, 1e4)); }
inline Angle any_joint_angle(RandomInputs& r) { return degrees(r.between(0, 60)); }

inline TubeSection any_tube(RandomInputs& r) {
  const double outer = r.between(0.03, 0.12);
  const double inner = outer * r.between(0.1, 0.95);
  return TubeSection(metres(outer), metres(inner));
}

/// The same tube twice, the second `scale` times as large.
inline std::pair<TubeSection, TubeSection> two_tubes(RandomInputs& r, double scale) {
  const double outer = r.between(0.03, 0.12);
  const double inner = outer * r.between(0.1, 0.95);
  return {TubeSection(metres(outer), metres(inner)), TubeSection(metres(scale * outer), metres(scale * inner))};
}

inline StraightSpline six_teeth(double length) {
  return StraightSpline(6, millimetres(34.8), millimetres(28.9), millimetres(8.6), metres(length));
}

inline std::vector<double> any_history(RandomInputs& r) {
  std::vector<double> history(static_cast<std::size_t>(r.whole(2, 60)));
  for (double& h : history) h = r.whole(-40, 40); // whole numbers: sums and differences are exact
  return history;
}

inline std::vector<Cycle<double>> transformed(std::vector<double> history, double factor, double shift) {
  for (double& h : history) h = factor * h + shift;
  return count_cycles(history);
}

inline const Law laws[] = {
    {"power over speed gives the torque whose power it is", 2000,
     [](RandomInputs& r) {
       const Power power = any_power(r);
       const AngularSpeed speed = any_speed(r);
       CHECK_CLOSE(shaft_power(shaft_torque(power, speed), speed).value(), power.value(), rounding);
     }},
    {"at twice the speed the same power needs half the torque, to the last digit", 2000,
     [](RandomInputs& r) {
       const Power power = any_power(r);
       const AngularSpeed speed = any_speed(r);
       CHECK(shaft_torque(power, 2.0 * speed) == 0.5 * shaft_torque(power, speed));
     }},
    {"more load never burns less fuel, and a slower engine under the same load never more", 2000,
     [](RandomInputs& r) {
       const Power power = any_power(r);
       const double load = r.between(0.2, 0.9);
       CHECK(fuel_rate(power, load) <= fuel_rate(power, r.between(load, 1.0)));
       const double speed = r.between(0.5, 0.95);
       CHECK(fuel_rate(power, load, speed) <= fuel_rate(power, load, r.between(speed, 1.0)));
     }},
    {"torsion stress is in proportion to torque", 2000,
     [](RandomInputs& r) {
       const TubeSection tube = any_tube(r);
       const Torque torque = any_torque(r);
       CHECK(torsion_stress(tube, 4.0 * torque) == 4.0 * torsion_stress(tube, torque));
     }},
    {"a tube grown evenly is stressed by the third power less and twisted by the fourth", 2000,
     [](RandomInputs& r) {
       const double s = r.across(0.2, 5);
       const auto [tube, grown] = two_tubes(r, s);
       const Torque torque = any_torque(r);
       CHECK_CLOSE(torsion_stress(grown, torque).value() * s * s * s, torsion_stress(tube, torque).value(), rounding);
       const Stress g = gigapascals(79);
       CHECK_CLOSE(twist_rate(grown, torque, g).value() * s * s * s * s, twist_rate(tube, torque, g).value(), rounding);
     }},
    {"a bigger bore never makes a shaft stronger", 2000,
     [](RandomInputs& r) {
       const double outer = r.between(0.03, 0.12);
       const double inner = outer * r.between(0.1, 0.8);
       const double bigger = r.between(inner, 0.95 * outer);
       const Stress yield = megapascals(250);
       CHECK(yield_torque(TubeSection(metres(outer), metres(bigger)), yield) <=
             yield_torque(TubeSection(metres(outer), metres(inner)), yield));
     }},
    {"no section yields all through before it yields at its surface", 2000,
     [](RandomInputs& r) {
       const TubeSection tube = any_tube(r);
       CHECK(plastic_torque(tube, megapascals(250)) >= yield_torque(tube, megapascals(250)));
     }},
    {"a member grown evenly whirls slower in proportion", 2000,
     [](RandomInputs& r) {
       const double s = r.across(0.2, 5);
       const auto [tube, grown] = two_tubes(r, s);
       const Stress e = gigapascals(207);
       const Density steel = kilograms_per_cubic_metre(7850);
       CHECK_CLOSE(s * critical_speed(grown, metres(1.2 * s), e, steel).value(),
                   critical_speed(tube, metres(1.2), e, steel).value(), rounding);
     }},
    {"a longer member never whirls faster", 2000,
     [](RandomInputs& r) {
       const TubeSection tube = any_tube(r);
       const double length = r.between(0.3, 2);
       const auto at = [&tube](double l) {
         return critical_speed(tube, metres(l), gigapascals(207), kilograms_per_cubic_metre(7850));
       };
       CHECK(at(r.between(length, 3)) <= at(length));
     }},
    {"a joint is as fast after half a turn, and the same for a turn either way", 2000,
     [](RandomInputs& r) {
       const Angle angle = any_joint_angle(r);
       const Angle turn = degrees(r.between(0, 180));
       const double ratio = joint_speed_ratio(angle, turn);
       CHECK_CLOSE(joint_speed_ratio(angle, turn + degrees(180)), ratio, 1e-11);
       CHECK(joint_speed_ratio(angle, -turn) == ratio);
     }},
    {"no rotation of a joint is outside its speed variation", 2000,
     [](RandomInputs& r) {
       const Angle angle = any_joint_angle(r);
       const double ratio = joint_speed_ratio(angle, degrees(r.between(-360, 360)));
       CHECK(ratio <= (1 + rounding) / std::cos(angle.value()));
       CHECK(ratio >= (1 - rounding) * std::cos(angle.value()));
     }},
    {"the angle for a variation varies by just that", 2000,
     [](RandomInputs& r) {
       const double variation = r.across(1e-4, 2.0);
       CHECK_CLOSE(joint_speed_variation(joint_angle_for_variation(variation)), variation, 1e-11);
     }},
    {"more joint angle never runs smoother", 2000,
     [](RandomInputs& r) {
       const Angle angle = any_joint_angle(r);
       const Angle more = angle + degrees(r.between(0, 25));
       CHECK(joint_speed_variation(more) >= joint_speed_variation(angle));
       CHECK(joint_peak_acceleration(more, rpm(540)) >= joint_peak_acceleration(angle, rpm(540)));
     }},
    {"a pair of joints is as uneven with its ends exchanged, and with its phase turned the other way", 2000,
     [](RandomInputs& r) {
       const Angle front = any_joint_angle(r);
       const Angle rear = any_joint_angle(r);
       const Angle phase = degrees(r.between(-90, 90));
       const double uneven = joint_pair_extremes(front, rear, phase, rpm(540)).largest_ratio;
       CHECK_CLOSE(joint_pair_extremes(rear, front, phase, rpm(540)).largest_ratio, uneven, rounding);
       CHECK_CLOSE(joint_pair_extremes(front, rear, -phase, rpm(540)).largest_ratio, uneven, rounding);
     }},
    {"two equal joints in phase run evenly", 2000,
     [](RandomInputs& r) {
       const Angle angle = any_joint_angle(r);
       CHECK_CLOSE(joint_pair_speed_ratio(angle, angle, Angle{}, degrees(r.between(0, 360))), 1.0, 1e-12);
     }},
    {"joint acceleration goes with the square of speed", 2000,
     [](RandomInputs& r) {
       const Angle angle = any_joint_angle(r);
       const AngularSpeed speed = any_speed(r);
       CHECK(joint_peak_acceleration(angle, 2.0 * speed) == 4.0 * joint_peak_acceleration(angle, speed));
     }},
    {"twice the torque leaves a joint bearing 2^(-10/3) of its life, and never more", 2000,
     [](RandomInputs& r) {
       const auto life = [angle = degrees(r.between(1, 30)), speed = any_speed(r)](Torque torque) {
         return joint_bearing_life(kilonewtons(20), millimetres(35), torque, speed, angle);
       };
       const Torque torque = any_torque(r);
       CHECK_CLOSE(life(2.0 * torque).value(), life(torque).value() * std::pow(2.0, -10.0 / 3.0), rounding);
     }},
    {"tip speed doubles with speed and with radius, blade pull is four times at twice the speed", 2000,
     [](RandomInputs& r) {
       const AngularSpeed speed = any_speed(r);
       const Length radius = metres(r.between(0.1, 2));
       CHECK(tip_speed(2.0 * speed, radius) == 2.0 * tip_speed(speed, radius));
       CHECK(tip_speed(speed, 2.0 * radius) == 2.0 * tip_speed(speed, radius));
       CHECK(blade_pull(kilograms(3), radius, 2.0 * speed) == 4.0 * blade_pull(kilograms(3), radius, speed));
     }},
    {"a disc grown evenly or turned faster is stressed by the square", 2000,
     [](RandomInputs& r) {
       const double inner = r.between(0.01, 0.1);
       const double outer = inner + r.between(0.01, 0.5);
       const auto stress = [&](double size, double fast) {
         return disc_hoop_stress(metres(size * inner), metres(size * outer), rpm(540 * fast),
                                 kilograms_per_cubic_metre(7850), 0.3)
             .value();
       };
       const double s = r.across(0.2, 5);
       CHECK_CLOSE(stress(s, 1), s * s * stress(1, 1), rounding);
       CHECK_CLOSE(stress(1, s), s * s * stress(1, 1), rounding);
     }},
    {"a faster launch never falls shorter", 200,
     [](RandomInputs& r) {
       const auto throw_at = [angle = degrees(r.between(5, 50)), height = metres(r.between(0, 1))](double speed) {
         return throw_distance(metres_per_second(speed), angle, height, kilograms(0.1), square_metres(2e-3), 0.9,
                               kilograms_per_cubic_metre(1.225));
       };
       const double speed = r.between(5, 90);
       CHECK(throw_at(speed) <= throw_at(speed * r.between(1.001, 1.5)));
     }},
    {"a clutch grown evenly holds in proportion, a run-in one never more than a new one", 2000,
     [](RandomInputs& r) {
       const double inner = r.between(0.03, 0.1);
       const double outer = inner + r.between(0.005, 0.1);
       const auto holds = [&](double s, ClutchContact contact) {
         return disc_clutch_torque(metres(s * outer), metres(s * inner), newtons(5000), 0.35, 4, contact);
       };
       CHECK(holds(2.0, ClutchContact::uniform_wear) == 2.0 * holds(1.0, ClutchContact::uniform_wear));
       CHECK(holds(1.0, ClutchContact::uniform_wear) <= holds(1.0, ClutchContact::uniform_pressure));
     }},
    {"a shear bolt twice as thick holds four times as much", 2000,
     [](RandomInputs& r) {
       const Length bolt = millimetres(r.between(4, 20));
       const Length arm = millimetres(r.between(20, 200));
       const Stress strength = megapascals(r.between(200, 800));
       const double one = shear_bolt_torque(bolt, arm, strength, 1, 1).value();
       CHECK_CLOSE(shear_bolt_torque(2.0 * bolt, arm, strength, 1, 1).value(), 4.0 * one, rounding);
       CHECK_CLOSE(shear_bolt_torque(bolt, arm, strength, 1, 2).value(), 2.0 * one, rounding);
     }},
    {"a heavier machine never engages in less time or heat, a stronger clutch never in more", 2000,
     [](RandomInputs& r) {
       const double inertia = r.across(0.5, 50);
       const Torque load = newton_metres(r.between(0, 300));
       const Torque clutch = load + newton_metres(r.between(20, 900));
       const AngularSpeed speed = any_speed(r);
       const auto engage = [&](double more, Torque holds) {
         return clutch_engagement(kilogram_square_metres(more * inertia), speed, holds, load);
       };
       const ClutchEngagement once = engage(1.0, clutch);
       CHECK(engage(2.0, clutch).time >= once.time);
       CHECK(engage(2.0, clutch).heat >= once.heat);
       CHECK(engage(1.0, 2.0 * clutch).time <= once.time);
       CHECK(engage(1.0, 2.0 * clutch).heat <= once.heat);
     }},
    {"a load turned upside down or doubled keeps its cycles", 2000,
     [](RandomInputs& r) {
       const std::vector<double> history = any_history(r);
       const auto cycles = count_cycles(history);
       const auto upside = transformed(history, -1.0, 0.0);
       const auto doubled = transformed(history, 2.0, 0.0);
       REQUIRE(upside.size() == cycles.size());
       REQUIRE(doubled.size() == cycles.size());
       for (std::size_t i = 0; i < cycles.size(); ++i) {
         CHECK(upside[i].range == cycles[i].range);
         CHECK(upside[i].mean == -cycles[i].mean);
         CHECK(doubled[i].range == 2.0 * cycles[i].range);
       }
     }},
    {"a load moved up or down keeps its ranges and moves its means", 2000,
     [](RandomInputs& r) {
       const std::vector<double> history = any_history(r);
       const auto cycles = count_cycles(history);
       const auto moved = transformed(history, 1.0, 16.0);
       REQUIRE(moved.size() == cycles.size());
       for (std::size_t i = 0; i < cycles.size(); ++i) {
         CHECK(moved[i].range == cycles[i].range);
         CHECK(moved[i].mean == cycles[i].mean + 16.0);
       }
     }},
    {"every stress of a spline is in proportion to torque, and a longer hub is never stressed more", 2000,
     [](RandomInputs& r) {
       const double length = r.between(0.02, 0.1);
       const Torque torque = any_torque(r);
       const SplineStress once = spline_stress(six_teeth(length), torque);
       const SplineStress twice = spline_stress(six_teeth(length), 2.0 * torque);
       CHECK(twice.root_torsion == 2.0 * once.root_torsion);
       CHECK(twice.tooth_shear == 2.0 * once.tooth_shear);
       CHECK(twice.flank_pressure == 2.0 * once.flank_pressure);
       const SplineStress longer = spline_stress(six_teeth(length * r.between(1, 2)), torque);
       CHECK(longer.tooth_shear <= once.tooth_shear);
       CHECK(longer.flank_pressure <= once.flank_pressure);
     }},
    {"a wider machine never needs less power, and low, mean and high keep their order", 500,
     [](RandomInputs& r) {
       const Length width = metres(r.between(0.5, 6));
       for (const Machine& machine : machines()) {
         if (machine.per_mass.value() > 0.0 || machine.per_width.value() == 0.0) continue;
         const ImplementPower need = implement_power(machine, width);
         const ImplementPower wider = implement_power(machine, width * r.between(1, 2));
         CHECK(wider.mean >= need.mean);
         CHECK(need.low <= need.mean);
         CHECK(need.mean <= need.high);
       }
     }},
    {"a shaft is what it is in inches and in millimetres, in horsepower and in kilowatts", 2000,
     [](RandomInputs& r) {
       const double inch = r.across(0.01, 100);
       CHECK_CLOSE(parse<Length>(std::to_string(inch) + " in").value(),
                   parse<Length>(std::to_string(inch) + " mm").value() * 25.4, rounding);
       CHECK_CLOSE(parse<Power>(std::to_string(inch) + " hp").value(),
                   parse<Power>(std::to_string(inch) + " kW").value() * 0.74569987158227022, rounding);
     }},
    {"a wider measuring tolerance never loses a PTO type", 2000,
     [](RandomInputs& r) {
       const int count = r.whole(0, 1) == 0 ? 6 : r.whole(19, 22);
       const Length diameter = millimetres(r.between(27, 60));
       const Length tolerance = millimetres(r.between(0.1, 2));
       CHECK(identify_pto(count, diameter, tolerance).candidates.size() <=
             identify_pto(count, diameter, 2.0 * tolerance).candidates.size());
     }},
};

} // namespace formula_laws
