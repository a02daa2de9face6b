#pragma once
// The trace of a simulation as arrays.

#include "tables.hpp"

#include <fieldshaft/dynamics.hpp>

namespace fieldshaft_python {

/// Times, the speed of each body and the torque of each link.
struct Trace {
  Table<fieldshaft::Time> time;
  Table<fieldshaft::AngularSpeed> speeds;
  Table<fieldshaft::Torque> torques;
};

inline Trace trace_of(const fieldshaft::SimulationResult& result) {
  Trace trace;
  trace.time.rows = trace.speeds.rows = trace.torques.rows = result.trace.size();
  trace.speeds.columns = result.bodies.size();
  trace.torques.columns = result.links.size();
  for (const fieldshaft::TraceSample& sample : result.trace) {
    trace.time.add(sample.time);
    for (const auto& speed : sample.speeds) trace.speeds.add(speed);
    for (const auto& torque : sample.torques) trace.torques.add(torque);
  }
  return trace;
}

} // namespace fieldshaft_python
