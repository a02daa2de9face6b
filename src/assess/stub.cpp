#include "assess/stub.hpp"

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// Width of the retaining groove where it cuts the outside of the shaft.
Length groove_width(const PtoType& type, Length major) {
  const Length radius = type.groove_radius.value().largest;
  const Length depth = 0.5 * (major - type.groove_diameter.value().smallest);
  const Length rise = radius - depth;
  return 2.0 * math::sqrt(radius * radius - rise * rise);
}

/// The spline with the smallest sizes that its limits allow, on the engaged length.
Stated<Spline> spline_of(const PtoType& type, Length engaged, Stub& stub) {
  if (type.form == SplineForm::straight) {
    const bool standard = type.straight_standard.known();
    if (!standard && !type.straight_rule.known()) return std::nullopt;
    // Two readings of the minor diameter are in use; the smaller one is on the safe side.
    StraightProfile profile = standard ? type.straight_standard.value() : type.straight_rule.value();
    stub.sources.push_back(standard ? type.straight_standard.source() : type.straight_rule.source());
    return StraightSpline(type.spline_count, profile.major_diameter.smallest, profile.minor_diameter.smallest,
                          profile.tooth_width.smallest, engaged);
  }
  if (!type.involute.known()) return std::nullopt;
  const InvoluteProfile& profile = type.involute.value();
  stub.sources.push_back(type.involute.source());
  return InvoluteSpline(profile.teeth, profile.module, profile.pressure_angle, engaged, SplineRoot::fillet);
}

} // namespace

Stub resolve_stub(const Case& value) {
  Stub stub;
  const ResolvedInterface interface = resolve(value.tractor.pto.stub);
  stub.missing = unstated(
      {{interface.stated, "tractor.pto.stub"}, {value.driveline.hub_length.has_value(), "driveline.hub_length"}});
  if (interface.type == nullptr || !value.driveline.hub_length) return stub;
  const PtoType& type = *interface.type;
  const bool sizes_known =
      type.useful_spline_length.known() && type.groove_diameter.known() && type.groove_radius.known();
  if (!sizes_known) {
    stub.unknown_geometry = true;
    return stub;
  }
  const Length useful = std::min(*value.driveline.hub_length, type.useful_spline_length.value());
  const Length engaged = useful - groove_width(type, type.nominal_diameter);
  if (engaged <= Length{}) {
    stub.missing = {"driveline.hub_length"};
    return stub;
  }
  stub.spline = spline_of(type, engaged, stub);
  stub.unknown_geometry = !stub.spline;
  if (!stub.spline) return stub;
  const Length groove = type.groove_diameter.value().smallest;
  stub.groove_governs = groove < stub.spline->root_diameter();
  stub.smallest = std::min(groove, stub.spline->root_diameter());
  stub.steel = resolve_steel(value.tractor.pto.stub_steel, type.nominal_diameter, "tractor.pto.stub_steel");
  stub.missing.insert(stub.missing.end(), stub.steel.missing.begin(), stub.steel.missing.end());
  return stub;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
