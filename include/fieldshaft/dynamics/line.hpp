#pragma once
// The PTO line as the simulation sees it: bodies that turn, from the engine to the rotor, and the link between each
// body and the next.
//
// Torques of a link are positive where the body before it drives the body behind it forwards.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/power/engine.hpp>
#include <fieldshaft/units.hpp>

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// A drive that keeps the speed that its body has at the start, whatever torque that takes.
struct HeldSpeed {};

/// An engine at full throttle on the body: its line, and the body's speed over the engine's. Below the lowest point of
/// the line it stalls and gives nothing from then on; above high idle it gives nothing.
struct EngineDrive {
  EngineLine line;
  double ratio; ///< above 0
};

/// No drive, a held speed or an engine.
using LineDrive = std::variant<std::monostate, HeldSpeed, EngineDrive>;

/// Torque that resists the turning of a body, whichever way it turns:
/// T = friction + viscous |w| + windage (w / windage_speed)².
struct LineLoad {
  Torque friction{};            ///< stays the same and holds the body at rest, at least 0
  TorsionalDamping viscous{};   ///< at least 0
  Torque windage{};             ///< of air at windage_speed, at least 0
  AngularSpeed windage_speed{}; ///< above 0 where there is windage
};

/// A further friction torque from a time on: a brake, or a crop that chokes the rotor.
struct LineBrake {
  Time from{};
  Torque torque{};
};

/// A turning mass at its own speed.
struct LineBody {
  std::string name;
  MomentOfInertia inertia; ///< above 0
  AngularSpeed speed{};    ///< at the start
  LineDrive drive{};
  LineLoad load{};
  std::vector<LineBrake> brakes{};
  std::optional<Time> blocked_at{}; ///< stands at once from then on, whatever torque that takes
};

/// A pair of joints at the driving end of a shaft: the exact ratio at every position (see joint_pair_speed_ratio).
struct LineJoints {
  Angle front{};    ///< from 0, below 90°
  Angle rear{};     ///< from 0, below 90°
  Angle phase{};    ///< 0 where equal angles cancel
  Angle rotation{}; ///< of the front joint's driving yoke at the start
};

/// An elastic shaft: joints at its driving end, then the shaft, then a gear at its far end. Stiffness, damping, play
/// and the shaft's torque are those between joints and gear.
struct LineShaft {
  TorsionalStiffness stiffness; ///< above 0
  TorsionalDamping damping{};   ///< while the flanks touch, at least 0
  Angle backlash{};             ///< whole play between both flanks, at least 0; in its middle at the start
  double ratio = 1.0;           ///< of the gear: output speed over input speed, above 0
  std::optional<LineJoints> joints{};
};

/// A friction clutch: the tractor's PTO clutch, or a slip clutch that is engaged from the start.
struct LineClutch {
  Torque torque;                    ///< while it slips, fully engaged, above 0
  Time engage_at{};                 ///< before that it carries nothing
  Time ramp{};                      ///< over which its torque rises evenly from nothing, at least 0
  std::optional<Time> release_at{}; ///< after that it carries nothing
  double break_away = 1.0;          ///< torque at which it starts to slip over the torque while it slips, at least 1
};

/// A shear bolt: carries nothing once it is broken. The work of breaking is left out.
struct LineShearBolt {
  Torque torque; ///< at which it breaks, above 0
};

/// A cut-out clutch: once tripped it carries a share of its torque until both of its sides stand.
struct LineCutOut {
  Torque torque;              ///< at which it trips, above 0
  double tripped_share = 0.2; ///< from 0 to 1
};

/// An overrunning clutch: drives in one sense and lets the body behind it run on.
struct LineOverrun {
  Torque drag{};          ///< while it overruns, at least 0
  bool backwards = false; ///< drives where the speeds are negative
};

/// What joins a body to the next. All but the shaft are stiff while they hold.
using LineLink = std::variant<LineShaft, LineClutch, LineShearBolt, LineCutOut, LineOverrun>;

/// A whole line: one link fewer than bodies.
struct PtoLine {
  std::vector<LineBody> bodies;
  std::vector<LineLink> links;
};

/// Throws InputError, naming `function`, unless the line is whole and every number is in its range. A blocked body may
/// not sit beside an overrunning clutch, which would carry an endless torque: give it a brake instead.
void check_line(const PtoLine& line, const char* function);

} // namespace v0
} // namespace fieldshaft
