// The distance from the PTO shaft end to the drawbar's hitch pin, for the PTO type that is out.

#include "assess/checks.hpp"
#include "assess/interface.hpp"
#include "assess/placement.hpp"

#include <fieldshaft/pto.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

struct PositionsForWork {
  const DrawbarDistance* nearest = nullptr;
  Length lowest{};
  Length highest{};
};

PositionsForWork positions_for_work(const DrawbarDistances& distances, Length measured) {
  PositionsForWork found;
  for (const DrawbarDistance& entry : distances) {
    if (!usable_for_pto_work(entry.position).value) continue;
    const Length length = entry.distance.value;
    const bool first = found.nearest == nullptr;
    if (first || length < found.lowest) found.lowest = length;
    if (first || length > found.highest) found.highest = length;
    if (first || math::abs(length - measured) < math::abs(found.nearest->distance.value - measured))
      found.nearest = &entry;
  }
  return found;
}

} // namespace

const char* position_phrase(DrawbarPosition position) {
  switch (position) {
  case DrawbarPosition::short_: return "drawbar.position.short";
  case DrawbarPosition::regular: return "drawbar.position.regular";
  case DrawbarPosition::extended: return "drawbar.position.extended";
  case DrawbarPosition::us_practice: return "drawbar.position.us";
  }
  return "drawbar.position.regular";
}

void check_drawbar(const Case& value, Findings& findings) {
  const Hitch& hitch = value.tractor.hitch;
  if (hitch.kind == HitchKind::three_point) {
    findings.not_examined(Check::drawbar_distance);
    return;
  }
  const ResolvedInterface stub = resolve(value.tractor.pto.stub);
  const auto missing = unstated({{hitch.kind.has_value(), "tractor.hitch.kind"},
                                 {hitch.distance.has_value(), "tractor.hitch.distance"},
                                 {stub.stated, "tractor.pto.stub"}});
  if (!missing.empty()) {
    findings.add(not_known(Check::drawbar_distance, "drawbar.unstated", missing));
    return;
  }
  const DrawbarDistances distances = stub.type != nullptr ? drawbar_distances(*stub.type) : DrawbarDistances{};
  if (distances.empty()) {
    Finding finding = not_known(Check::drawbar_distance, "drawbar.no_distance", {});
    finding.facts = {interface_fact("stub", stub)};
    findings.add(std::move(finding));
    return;
  }
  const Length measured = hitch.distance->value;
  const PositionsForWork positions = positions_for_work(distances, measured);
  Status status = Status::caution;
  const char* reason = "drawbar.between";
  const Length off = math::abs(positions.nearest->distance.value - measured);
  if (off + hitch.distance->tolerance <= hole_tolerance) {
    status = Status::ok;
    reason = "drawbar.met";
  } else if (off <= hole_tolerance) {
    reason = "drawbar.measure_again"; // a loose measurement proves no hole
  } else if (measured < positions.lowest) {
    status = Status::stop;
    reason = "drawbar.too_short";
  } else if (measured > positions.highest) {
    reason = "drawbar.too_long";
  }
  Finding finding = make_finding(Check::drawbar_distance, status, reason);
  finding.value = amount_of(measured);
  finding.limit = amount_of(positions.nearest->distance.value);
  finding.sense = LimitSense::equal;
  finding.basis = {positions.nearest->distance.source};
  finding.facts = {fact("position", PhraseId{position_phrase(positions.nearest->position)}),
                   interface_fact("stub", stub)};
  if (status != Status::ok) finding.advice = {"drawbar.move_pin"};
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
