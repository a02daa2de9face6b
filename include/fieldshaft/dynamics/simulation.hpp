#pragma once
// A PTO line in time: engagement, start of the rotor, blockage, stop and run-down.

#include <fieldshaft/dynamics/line.hpp>

#include <cstddef>

namespace fieldshaft {
inline namespace v0 {

/// How a simulation is run. Sensible as it stands.
struct SimulationSettings {
  Time duration = seconds(10);          ///< of machine time, above 0
  bool until_standstill = false;        ///< end when nothing turns any more and nothing more is set for a later time
  double relative_tolerance = 1e-6;     ///< of each step, from 1e-12 to 1e-2
  Time event_tolerance = seconds(1e-9); ///< to which a slip, a lock or a standstill is located, above 0
  std::size_t max_steps = 1000000;      ///< accepted steps, at least 1
  std::size_t max_events = 100000;      ///< at least 1
  Time sample_every{};                  ///< of the trace for plotting; 0: no trace
};

/// Why a simulation ended. The first two are proper ends.
enum class SimulationEnd {
  duration,        ///< the wanted time is reached
  standstill,      ///< nothing turns any more
  too_many_steps,  ///< the line is too stiff, or the time too long, for the allowed number of steps
  too_many_events, ///< a clutch sticks and slips, or flanks touch and part, too often
  step_too_small,  ///< no step is short enough for the tolerance
  not_finite,      ///< the numbers left the range of the machine
};

/// A sentence for people.
const char* simulation_end_text(SimulationEnd end) noexcept;

enum class LineEventKind {
  engages,    ///< link: the clutch starts to close
  releases,   ///< link: the clutch opens
  locks,      ///< link: both sides turn alike
  slips,      ///< link: the clutch starts to slip
  breaks,     ///< link: the shear bolt
  trips,      ///< link: the cut-out clutch
  resets,     ///< link: the cut-out clutch, both sides at rest
  overruns,   ///< link: the body behind runs on
  stops,      ///< body: comes to rest
  starts,     ///< body: leaves its rest
  is_blocked, ///< body
  stalls,     ///< body: its engine
};

struct LineEvent {
  Time time;
  LineEventKind kind;
  std::size_t index; ///< of the link or body
};

/// The torque of greatest size, with its sign, and when it was reached.
struct PeakTorque {
  Torque torque{};
  Time time{};
};

struct LinkResult {
  PeakTorque peak;               ///< in the link: of a shaft between its joints and its gear
  PeakTorque peak_driving;       ///< at the driving end: of a shaft before its joints
  Energy heat{};                 ///< made in the link
  Time slip_time{};              ///< that both sides turned unlike while the link carried torque
  std::optional<Time> locked_at; ///< when both sides first turned alike, if they had not from the start
  bool broken = false;           ///< shear bolt
  bool tripped = false;          ///< cut-out clutch, at the end
};

struct BodyResult {
  AngularSpeed speed{};           ///< at the end
  Energy drive_work{};            ///< that its drive gave
  Energy load_work{};             ///< that its load took
  std::optional<Time> standstill; ///< since when it has stood; empty if it turns, or stood all along
};

/// Where the energy came from and went.
struct EnergyBalance {
  Energy at_start{}; ///< of motion
  Energy drive{};    ///< given by the drives
  Energy load{};     ///< taken by the loads
  Energy heat{};     ///< made in the links
  Energy impact{};   ///< lost by bodies that were blocked at once
  Energy motion{};   ///< at the end
  Energy twist{};    ///< stored in the shafts at the end
  double error{};    ///< what is missing, as a share of the energy at the start and given: measures the integration
};

/// Speeds of the bodies and torques in the links at one time.
struct TraceSample {
  Time time{};
  std::vector<AngularSpeed> speeds;
  std::vector<Torque> torques;
};

struct SimulationResult {
  bool complete = false; ///< ended as wanted; otherwise what follows holds up to the time reached
  SimulationEnd end = SimulationEnd::duration;
  Time reached{};
  std::size_t steps = 0;
  std::vector<BodyResult> bodies;
  std::vector<LinkResult> links;
  std::vector<LineEvent> events;
  EnergyBalance energy;
  std::vector<TraceSample> trace;
};

/// Runs a line through time.
///
/// I dw/dt = torques, body by body; shafts T = k (twist beyond play) + c d(twist)/dt, twist rate r(angle) w_before -
/// w_behind / ratio with the exact ratio r of the joints. A stiff link holds while its torque stays within what it
/// carries, and slips at that torque until both sides turn alike; the bodies that it holds together move as one.
/// Friction holds a body at rest while nothing exceeds it.
///   line      as check_line demands
///   settings  as described there
/// Accuracy: an embedded Runge-Kutta pair of fifth order keeps the error of each step within the relative tolerance;
/// changes of state are looked for at two points in every step and located by bisection on its dense output. The
/// energy balance measures what remains. Rotors, loads and friction of a real machine are known far less well.
/// Outside: a line too stiff or a time too long ends early, with complete = false, the reason and the time reached.
/// Source: laws of motion; the stepper is that of Dormand and Prince.
/// Example: 4 kg·m² at rest behind a clutch of 600 N·m on a drive held at 540 r/min, load 250 N·m: locks after
/// 0.6463 s, heat 10 964 J (as clutch_engagement).
SimulationResult simulate(const PtoLine& line, const SimulationSettings& settings = {});

} // namespace v0
} // namespace fieldshaft
