#include "assess/stub.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
Length smallest_section(const PtoType& type) {
  const auto spline = stub_spline(type, type.useful_spline_length.value());
  return std::min(type.groove_diameter.value().smallest, spline->value.root_diameter());
}

Stub resolve_stub(const Case& value) {
  Stub stub;
  const ResolvedInterface interface = resolve(value.tractor.pto.stub);
  stub.missing = unstated(
      {{interface.stated, "tractor.pto.stub"}, {value.driveline.hub_length.has_value(), "driveline.hub_length"}});
  if (interface.type == nullptr) return stub;
  const PtoType& type = *interface.type;
  stub.steel = resolve_steel(value.tractor.pto.stub_steel, type.nominal_diameter, "tractor.pto.stub_steel");
  stub.missing.insert(stub.missing.end(), stub.steel.missing.begin(), stub.steel.missing.end());
  if (!value.driveline.hub_length) return stub;
  const bool sizes_known =
      type.useful_spline_length.known() && type.groove_diameter.known() && type.groove_radius.known();
  stub.unknown_geometry = !sizes_known;
  if (!sizes_known) return stub;
  const Length width =
      groove_width(type.nominal_diameter, type.groove_diameter.value().smallest, type.groove_radius.value().largest);
  if (*value.driveline.hub_length <= width) { // the hub would touch nothing but the groove
    stub.missing.emplace_back("driveline.hub_length");
    return stub;
  }
  const auto spline =
      stub_spline(type, engaged_length(*value.driveline.hub_length, type.useful_spline_length.value(), width));
  stub.unknown_geometry = !spline;
  if (!spline) return stub;
  stub.spline = spline->value;
  stub.sources = {spline->source};
  const Length groove = type.groove_diameter.value().smallest;
  stub.groove_governs = groove < stub.spline->root_diameter();
  stub.smallest = std::min(groove, stub.spline->root_diameter());
  return stub;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
