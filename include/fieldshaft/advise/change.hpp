#pragma once
// Changes to a case, as data: what is changed, from what to what, and at what price.

#include <fieldshaft/assess/finding.hpp>
#include <fieldshaft/case/case.hpp>
#include <fieldshaft/cost/money.hpp>

#include <optional>
#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// What a remedy may change, from what takes a moment to what is bought. Changes that are dangerous or that no tractor
/// can make (an adaptor, the short drawbar hole, a guard taken off, off-speed running, a stub that the tractor does not
/// have) have no name here.
enum class ChangeKind {
  select_gear,        ///< another gear of the lever, for the implement's own speed
  time_engagement,    ///< operating rule: the tractor's PTO clutch let in over another time
  keep_pto_speed,     ///< operating rule: narrower PTO speeds about the implement's own
  drive_slower,       ///< a lower ground speed, and the feed that comes in with it
  disengage_in_turns, ///< operating rule: PTO off before turning
  limit_turn,         ///< operating rule: a narrower yaw
  limit_lift,         ///< operating rule: a lower lift
  set_device,         ///< another setting of the overload device
  align_yokes,        ///< both yokes of the intermediate shaft in line
  set_top_link,       ///< another length of the top link
  move_drawbar,       ///< the pin into another standard position for PTO work
  change_over,        ///< another stub of the tractor, the gear of its speed, and the drawbar position of its type
  remove_adaptor,     ///< the yoke straight onto the stub
  refit_guard,        ///< a shield or guard that is absent or damaged
  cut_tubes,          ///< both members (and guard tubes) shortened by the same amount
  clamp_seat,         ///< a yoke that clamps the stub in place of a sliding one
  longer_hub,         ///< a yoke with a longer splined hub
  change_yoke,        ///< the tractor yoke made for the stub
  fit_device,         ///< an overload device where there is none
  longer_driveline,   ///< longer telescoping members
  stronger_tube,      ///< telescoping members of a larger section
  stronger_joints,    ///< joints of a higher rating
  wide_angle_front,   ///< a wide-angle joint at the tractor
  wide_angle_rear,    ///< a wide-angle joint at the implement
  place_of_input,     ///< hitch extension or place of the input connection, so that the pin lies midway
  less_power,         ///< a smaller working width or feed
  rotor_gear,         ///< a gearbox that turns the rotor at another speed
  implement_speed,    ///< the implement, or its gearbox, made for another PTO speed
};
inline constexpr int change_kind_count = static_cast<int>(ChangeKind::implement_speed) + 1;

/// Stable id of a kind, as it stands in JSON and in the case's prices: "cut_tubes".
const char* change_id(ChangeKind kind) noexcept;

/// One entry of the case document that a change touches, as text that the document takes; empty: unstated.
struct EntryChange {
  std::string path;
  std::string from;
  std::string to;
};

/// One change to a case.
struct Change {
  ChangeKind kind = ChangeKind::select_gear;
  std::vector<Fact> facts;          ///< the numbers and names that its sentence needs
  std::vector<EntryChange> entries; ///< what it changes in the case
  std::optional<Money> price;       ///< where the case states one
};

} // namespace v0
} // namespace fieldshaft
