// Rotation of the PTO against the implement's, and PTOs that are not at the rear or that the wheels turn.

#include "assess/place.hpp"

#include "assess/checks.hpp"

#include <fieldshaft/pto.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

PhraseId rotation_phrase(Rotation rotation) {
  return {rotation == Rotation::clockwise ? "rotation.clockwise" : "rotation.counter_clockwise"};
}

bool is_rear(const TractorPto& pto) { return pto.place.value_or(PtoPlace::rear) == PtoPlace::rear; }

void check_rotation(const Case& value, Findings& findings) {
  const TractorPto& pto = value.tractor.pto;
  const auto& needs = value.implement.rotation;
  if (!needs && !pto.rotation) {
    findings.not_examined(Check::pto_rotation, {"implement.rotation"});
    return;
  }
  const auto turns = rotation_of(pto);
  if (!needs || !turns) {
    findings.add(
        not_known(Check::pto_rotation, "rotation.unstated",
                  unstated({{needs.has_value(), "implement.rotation"}, {turns.has_value(), "tractor.pto.rotation"}})));
    return;
  }
  const bool match = turns->value == *needs;
  Finding finding = make_finding(Check::pto_rotation, match ? Status::ok : Status::stop,
                                 match ? "rotation.match" : "rotation.differs");
  finding.basis = {turns->source};
  finding.facts = {fact("turns", rotation_phrase(turns->value)), fact("needs", rotation_phrase(*needs))};
  if (!match) finding.advice = {"rotation.advice"};
  findings.add(std::move(finding));
}

void check_place_and_drive(const TractorPto& pto, Findings& findings) {
  if (!pto.place && !pto.drive) {
    findings.not_examined(Check::pto_place, {"tractor.pto.place", "tractor.pto.drive"});
    return;
  }
  if (pto.drive == PtoDrive::ground) {
    findings.add(not_known(Check::pto_place, "drive.ground", {}));
  } else if (!is_rear(pto)) {
    findings.add(not_known(Check::pto_place, pto.place == PtoPlace::front ? "place.front" : "place.mid", {}));
  } else {
    findings.add(make_finding(Check::pto_place, Status::ok, "place.usual"));
  }
}

} // namespace

Stated<Sourced<Rotation>> rotation_of(const TractorPto& pto) {
  if (pto.rotation) return Sourced<Rotation>{*pto.rotation, {"rotation as the case states it", Standing::given}};
  if (is_rear(pto)) return pto_rotation_from_behind;
  return std::nullopt;
}

void check_place(const Case& value, Findings& findings) {
  check_rotation(value, findings);
  check_place_and_drive(value.tractor.pto, findings);
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
