#pragma once
// Classes by name.

#include <fieldshaft/cost.hpp>

#include <string>

namespace fieldshaft_python {

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

} // namespace fieldshaft_python
