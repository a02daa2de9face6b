#pragma once
// A sweep: the extremes over a grid of attitudes, at the speed of the processor. Part of the compiled library.
//
// A sweep proves nothing: what lies between the points of the grid is not looked at. driveline_envelope proves.

#include <fieldshaft/core/executor.hpp>
#include <fieldshaft/driveline/state.hpp>

#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// Every yaw with every pitch with every roll.
struct AttitudeGrid {
  std::vector<Angle> yaw;
  std::vector<Angle> pitch;
  std::vector<Angle> roll;
};

/// The state of the driveline where one of its values is the most extreme of a grid.
struct SweptExtreme {
  Attitude at;
  DrivelineState state;
};

struct DrivelineSweep {
  SweptExtreme front_angle; ///< greatest
  SweptExtreme rear_angle;  ///< greatest
  SweptExtreme difference;  ///< greatest size
  SweptExtreme longest;
  SweptExtreme shortest;
};

/// The instructions that a sweep uses. `automatic`: the widest that this machine has.
enum class ProcessorKernel { automatic, portable, avx2, avx512 };

/// True if this machine can run it.
bool kernel_is_available(ProcessorKernel kernel) noexcept;

/// The extremes over every attitude of a grid.
///
///   grid  each list with 1 to 100,000 finite angles [rad]
///   pin   of the implement, in the tractor frame
/// The extremes are found by cosines and squares of lengths that are linear in the roll's cosine and sine; the states
/// given are those of driveline_at at the attitudes found. A found angle may fall short of the grid's true extreme by
/// 1e-7 rad, a length by 1e-9 of itself. The joint centres must not coincide anywhere on the grid.
/// Source: Rz Ry Rx written out (driveline_at). Example: one attitude: what driveline_at says there.
/// Throws InputError naming the list; what the executor throws passes through.
DrivelineSweep driveline_sweep(const Driveline& driveline, const Position& pin, const AttitudeGrid& grid,
                               const Executor& executor = run_in_turn,
                               ProcessorKernel kernel = ProcessorKernel::automatic);

} // namespace v0
} // namespace fieldshaft
