#pragma once
// Machines by name, and machines of a user checked when made.

#include <fieldshaft/power.hpp>

#include <string>

namespace fieldshaft_python {

inline const fieldshaft::Machine& machine_of(const fieldshaft::Machine& machine) noexcept { return machine; }
inline const fieldshaft::Machine& machine_of(const std::string& name) { return fieldshaft::machine_named(name); }

inline fieldshaft::Machine checked_machine(const fieldshaft::Machine& machine) {
  fieldshaft::make_machine(machine.name, machine.constant, machine.per_width, machine.per_mass, machine.basis,
                           machine.range, machine.source);
  return machine;
}

} // namespace fieldshaft_python
