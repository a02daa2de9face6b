#pragma once
// Which power a figure states. Gross engine, net engine and PTO power differ by 10 % and more, so they are different
// types, and one becomes another only through a named share that lies in a stated range.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/source.hpp>
#include <fieldshaft/units.hpp>

namespace fieldshaft {
inline namespace v0 {

/// Power of the bare engine: without fan, alternator and other parts that it needs to run in the tractor.
struct GrossEnginePower {
  Power power;
};
/// Power at the flywheel of the engine as it is fitted.
struct NetEnginePower {
  Power power;
};
/// Power at the PTO shaft.
struct PtoPower {
  Power power;
};

/// What one power is of another: the lowest, the usual and the highest figure in use.
struct PowerShare {
  Sourced<double> low;
  Sourced<double> usual;
  Sourced<double> high;
};

namespace detail {
inline constexpr Source share_of_rule{"Field & Solie, Introduction to Agricultural Engineering Technology, 86 % rule",
                                      Standing::published};
inline constexpr Source share_of_extension{"University of Arizona Cooperative Extension, Agricultural Machinery "
                                           "Management (after ASAE D497, fig. 1)",
                                           Standing::published};
inline constexpr Source share_of_standard{"ASAE D497, fig. 1", Standing::from_memory};
inline constexpr Source share_of_notes{"student notes: PTO power 80 to 85 % of engine power", Standing::published};
} // namespace detail

/// PTO power of net engine power. The 86 % rule does not say which engine power it means.
inline constexpr PowerShare pto_of_net_engine{
    {0.86, detail::share_of_rule}, {0.90, detail::share_of_extension}, {0.90, detail::share_of_extension}};

/// PTO power of gross engine power; 0.83 is 0.92 (gross to net) times 0.90 (net to PTO).
inline constexpr PowerShare pto_of_gross_engine{
    {0.80, detail::share_of_notes}, {0.83, detail::share_of_standard}, {0.86, detail::share_of_rule}};

/// Net engine power of gross engine power.
inline constexpr Sourced<double> net_of_gross_engine{0.92, detail::share_of_standard};

/// Ratings of different bodies cannot be turned into each other exactly: published figures for the same tractor lie
/// within 25 % (DLG test centre, published: +15 to -10 %). A measured PTO power is better than every share.
struct PtoPowerRange {
  PtoPower low;
  PtoPower usual;
  PtoPower high;
};

namespace detail {
constexpr PtoPowerRange shared_power(Power power, const PowerShare& share) {
  check::not_negative(power.value(), {"pto_power", "power", "W"});
  return {{share.low.value * power}, {share.usual.value * power}, {share.high.value * power}};
}
} // namespace detail

/// PTO power that a net engine power may mean [W].
///
/// P(PTO) = share P, with the shares of pto_of_net_engine
///   power  at least 0
/// A range, because the shares in use differ; an assessment takes the low end. Source: those of the shares.
/// Example: 100 kW: 86 to 90 kW.
constexpr PtoPowerRange pto_power(NetEnginePower power) { return detail::shared_power(power.power, pto_of_net_engine); }

/// PTO power that a gross engine power may mean [W]. As above, with the shares of pto_of_gross_engine.
/// Example: 100 kW: 80 to 86 kW, usually 83 kW.
constexpr PtoPowerRange pto_power(GrossEnginePower power) {
  return detail::shared_power(power.power, pto_of_gross_engine);
}

// Drawbar ---------------------------------------------------------------------------------------------------

/// The three powers that the 86 % rule ties together; the drawbar pulls on concrete.
struct RulePowers {
  Power engine;
  Power pto;
  Power drawbar;
};

/// Each step of the rule: engine to PTO, and PTO to drawbar.
inline constexpr Sourced<double> share_by_rule{0.86, detail::share_of_rule};

/// PTO and drawbar power by the 86 % rule from engine power [W].
///
/// PTO = 0.86 engine; drawbar = 0.86 PTO
///   engine  at least 0
/// A rule of thumb for a first look. Source: Field & Solie, 86 % rule. Example: 125 hp: 107.5 and 92.45 hp.
constexpr RulePowers powers_by_rule_from_engine(Power engine) {
  check::not_negative(engine.value(), {"powers_by_rule_from_engine", "engine", "W"});
  const Power pto = share_by_rule.value * engine;
  return {engine, pto, share_by_rule.value * pto};
}

/// Engine and PTO power by the 86 % rule from drawbar power on concrete [W].
///
/// PTO = drawbar / 0.86; engine = PTO / 0.86
///   drawbar  at least 0
/// Source: Field & Solie, 86 % rule. Example: 50 hp: 58.14 and 67.60 hp.
constexpr RulePowers powers_by_rule_from_drawbar(Power drawbar) {
  check::not_negative(drawbar.value(), {"powers_by_rule_from_drawbar", "drawbar", "W"});
  const Power pto = drawbar / share_by_rule.value;
  return {pto / share_by_rule.value, pto, drawbar};
}

enum class Traction { two_wheel, front_assist, four_wheel, tracks };
enum class Ground { concrete, firm, tilled, soft };

/// Drawbar power of PTO power by kind of traction and ground [-].
///
/// Source: University of Arizona Cooperative Extension (after ASAE D497, fig. 1), published. For tracks its 0.79 on
/// firm ground stands below 0.80 on tilled ground and looks like a slip (0.82 is remembered): to be checked. Example:
/// two-wheel drive on tilled ground: 0.67.
constexpr Sourced<double> drawbar_of_pto(Traction traction, Ground ground) noexcept {
  constexpr double share[4][4] = {
      {0.87, 0.72, 0.67, 0.55}, {0.87, 0.77, 0.73, 0.65}, {0.88, 0.78, 0.75, 0.70}, {0.88, 0.79, 0.80, 0.78}};
  return {share[static_cast<int>(traction)][static_cast<int>(ground)], detail::share_of_extension};
}

/// The PTO power that loads the engine as much as everything that a tractor delivers at once [W].
///
/// P = drawbar / (Em Et) + pto + hydraulic + electric
///   drawbar, pto, hydraulic, electric  [W], at least 0
///   transmission  Em, efficiency from engine to axle, above 0, at most 1 (0.96 for gears, from memory)
///   traction      Et, tractive efficiency, above 0, at most 1
/// Source: ASAE EP496, equivalent PTO power, as a textbook chapter on harvest systems restates it.
/// Example: 20 kW at the drawbar, 0.96, 0.72, 30 kW PTO: 58.9 kW.
constexpr PtoPower equivalent_pto_power(Power drawbar, double transmission, double traction, Power pto,
                                        Power hydraulic = Power{}, Power electric = Power{}) {
  constexpr const char* function = "equivalent_pto_power";
  check::not_negative(drawbar.value(), {function, "drawbar", "W"});
  check::positive(transmission, {function, "transmission", ""});
  check::within(transmission, 0.0, 1.0, {function, "transmission", ""});
  check::positive(traction, {function, "traction", ""});
  check::within(traction, 0.0, 1.0, {function, "traction", ""});
  check::not_negative(pto.value(), {function, "pto", "W"});
  check::not_negative(hydraulic.value(), {function, "hydraulic", "W"});
  check::not_negative(electric.value(), {function, "electric", "W"});
  return {drawbar / (transmission * traction) + pto + hydraulic + electric};
}

/// Power that pulling and climbing take [W].
///
/// P = (draft + m g sin(slope)) v
///   draft   pull on level ground, rolling of the implement included [N], at least 0
///   mass    of tractor and implement together, which the climb lifts [kg], at least 0
///   slope   of the climb along the way of travel [rad], from 0, below a quarter turn
///   speed   over the ground [m/s], at least 0
/// It has to arrive at the ground; what the PTO would give in its place is equivalent_pto_power. Source: definition of
/// work; standard gravity. Example: 8 kN, 10 t, 10°, 7.2 km/h: 50.1 kW.
inline Power pulling_power(Force draft, Mass mass, Angle slope, Speed speed) {
  constexpr const char* function = "pulling_power";
  check::not_negative(draft.value(), {function, "draft", "N"});
  check::not_negative(mass.value(), {function, "mass", "kg"});
  check::from_below(slope.value(), 0.0, pi / 2, {function, "slope", "rad"});
  check::not_negative(speed.value(), {function, "speed", "m/s"});
  return (draft + mass * metres_per_second_squared(unit::gravity_m_s2) * math::sin(slope)) * speed;
}

/// What is left of an available power or torque, as a share of it [-]; negative where it falls short.
///
/// reserve = (available - needed) / available
///   available  [W], above 0
///   needed     [W], at least 0; on the same basis and at the same shaft
/// Source: definition, as Jun et al. (2008) use it for a mower: (270 - 223)/270 N·m = 17.4 %.
/// Example: 60 kW available, 45 kW needed: 0.25.
constexpr double power_reserve(Power available, Power needed) {
  check::positive(available.value(), {"power_reserve", "available", "W"});
  check::not_negative(needed.value(), {"power_reserve", "needed", "W"});
  return (available - needed) / available;
}

/// The same for torque [-]; available above 0, needed at least 0 [N·m].
constexpr double torque_reserve(Torque available, Torque needed) {
  check::positive(available.value(), {"torque_reserve", "available", "N·m"});
  check::not_negative(needed.value(), {"torque_reserve", "needed", "N·m"});
  return (available - needed) / available;
}

} // namespace v0
} // namespace fieldshaft
