#pragma once
// The torsional line of a case as a train, with what pulses in it and the speeds at which it works.

#include "assess/context.hpp"

#include <fieldshaft/dynamics/interference.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Damping of a driveline in torsion, which nobody states: steel and greased splines lose little.
inline constexpr Sourced<double> torsional_damping_share{
    0.02, {"damping of the driveline 2 % of critical, the default of this library", Standing::common_practice}};

/// Speed of the PTO in a gear with the engine at high idle; empty where the case does not say.
Stated<AngularSpeed> pto_speed_at_high_idle(const Case& value);
std::vector<std::string> high_idle_missing(const Case& value);

/// PTO speeds at which the machine works: as the torsional line states them, else from a lugged engine to high idle.
/// Wants `working_speeds_missing` to be empty.
SpeedRange working_pto_speeds(const Case& value);
std::vector<std::string> working_speeds_missing(const Case& value);

/// Everything in the order of the case: masses, shafts, pulses; the joints' two and four pulses in a turn come last,
/// where there are any.
struct TorsionLine {
  TorsionalTrain train;
  std::vector<ExcitationOrder> orders;
  std::vector<Fact> order_names;
  SpeedRange speeds{};   ///< of the first mass
  double pto_over_first; ///< speed of the PTO over that of the first mass
  bool play = false;     ///< some shaft has play
  std::size_t given = 0; ///< how many of the orders the case states; the rest are the joints'
};

/// Entries without which the line cannot be examined.
std::vector<std::string> torsion_missing(const Case& value);

/// Wants those entries to be stated.
TorsionLine torsion_line(const Case& value);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
