#pragma once
// Small forwards for the generated calls: entries of tables by name, and records that are checked when made.

#include <fieldshaft/cost.hpp>
#include <fieldshaft/materials.hpp>
#include <fieldshaft/power.hpp>
#include <fieldshaft/spline.hpp>

#include <string>
#include <variant>

namespace fieldshaft_python {

/// One of several classes as their common base.
template <class B, class V> B as_base(const V& one_of) {
  return std::visit([](const auto& one) -> B { return one; }, one_of);
}

inline const fieldshaft::Machine& machine_of(const fieldshaft::Machine& machine) noexcept { return machine; }
inline const fieldshaft::Machine& machine_of(const std::string& name) { return fieldshaft::machine_named(name); }

inline const fieldshaft::ValueClass& value_class_of(const fieldshaft::ValueClass& item) noexcept { return item; }
inline const fieldshaft::ValueClass& value_class_of(const std::string& name) {
  return fieldshaft::value_class_named(name);
}
inline const fieldshaft::OlderValueClass& older_value_class_of(const fieldshaft::OlderValueClass& item) noexcept {
  return item;
}
inline const fieldshaft::OlderValueClass& older_value_class_of(const std::string& name) {
  return fieldshaft::older_value_class_named(name);
}
inline const fieldshaft::RepairClass& repair_class_of(const fieldshaft::RepairClass& item) noexcept { return item; }
inline const fieldshaft::RepairClass& repair_class_of(const std::string& name) {
  return fieldshaft::repair_class_named(name);
}

inline fieldshaft::Machine checked_machine(const fieldshaft::Machine& machine) {
  fieldshaft::make_machine(machine.name, machine.constant, machine.per_width, machine.per_mass, machine.basis,
                           machine.range, machine.source);
  return machine;
}

inline fieldshaft::Material checked_material(const fieldshaft::Material& material) {
  fieldshaft::check_material(material);
  return material;
}

/// The root with which an involute spline was made: a fillet at 30° shows in its depth, elsewhere it is the usual one.
inline fieldshaft::SplineRoot root_of(const fieldshaft::InvoluteSpline& spline) {
  const fieldshaft::InvoluteGeometry& sizes = spline.geometry();
  const bool thirty = sizes.pressure_angle < fieldshaft::degrees(31.0);
  const bool deep = sizes.shaft_minor < sizes.pitch_diameter - 1.6 * sizes.module;
  return thirty && deep ? fieldshaft::SplineRoot::fillet : fieldshaft::SplineRoot::usual;
}

} // namespace fieldshaft_python
