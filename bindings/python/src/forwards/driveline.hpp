#pragma once
// Mirror images; sweeps on a number of threads.

#include <fieldshaft/core/threads.hpp>
#include <fieldshaft/driveline.hpp>
#include <fieldshaft/driveline/sweep.hpp>

#include <variant>

namespace fieldshaft_python {

/// Anything that lies to one side, as a mirror in the tractor's middle plane shows it.
using Mirrored = std::variant<fieldshaft::Position, fieldshaft::Direction, fieldshaft::Attitude, fieldshaft::Pose,
                              fieldshaft::AttitudeRange, fieldshaft::Driveline>;
template <class T> Mirrored mirrored_of(const T& item) { return fieldshaft::mirrored(item); }

inline fieldshaft::DrivelineSweep swept(const fieldshaft::Driveline& driveline, const fieldshaft::Position& pin,
                                        const fieldshaft::AttitudeGrid& grid, int threads,
                                        fieldshaft::ProcessorKernel kernel) {
  fieldshaft::check::within(threads, 0.0, 1024.0, {"driveline_sweep", "threads", ""});
  if (threads == 1) return fieldshaft::driveline_sweep(driveline, pin, grid, fieldshaft::run_in_turn, kernel);
  const auto executor = fieldshaft::thread_executor(static_cast<unsigned>(threads));
  return fieldshaft::driveline_sweep(driveline, pin, grid, executor, kernel);
}

} // namespace fieldshaft_python
