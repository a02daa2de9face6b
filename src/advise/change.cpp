#include "advise/change.hpp"

#include <fieldshaft/case/read.hpp>

#include <nlohmann/json.hpp>

#include <map>

namespace fieldshaft {
inline namespace v0 {

const char* change_id(ChangeKind kind) noexcept {
  switch (kind) {
  case ChangeKind::select_gear: return "select_gear";
  case ChangeKind::time_engagement: return "time_engagement";
  case ChangeKind::keep_pto_speed: return "keep_pto_speed";
  case ChangeKind::drive_slower: return "drive_slower";
  case ChangeKind::disengage_in_turns: return "disengage_in_turns";
  case ChangeKind::limit_turn: return "limit_turn";
  case ChangeKind::limit_lift: return "limit_lift";
  case ChangeKind::set_device: return "set_device";
  case ChangeKind::align_yokes: return "align_yokes";
  case ChangeKind::set_top_link: return "set_top_link";
  case ChangeKind::move_drawbar: return "move_drawbar";
  case ChangeKind::change_over: return "change_over";
  case ChangeKind::remove_adaptor: return "remove_adaptor";
  case ChangeKind::refit_guard: return "refit_guard";
  case ChangeKind::cut_tubes: return "cut_tubes";
  case ChangeKind::clamp_seat: return "clamp_seat";
  case ChangeKind::longer_hub: return "longer_hub";
  case ChangeKind::change_yoke: return "change_yoke";
  case ChangeKind::fit_device: return "fit_device";
  case ChangeKind::longer_driveline: return "longer_driveline";
  case ChangeKind::stronger_tube: return "stronger_tube";
  case ChangeKind::stronger_joints: return "stronger_joints";
  case ChangeKind::wide_angle_front: return "wide_angle_front";
  case ChangeKind::wide_angle_rear: return "wide_angle_rear";
  case ChangeKind::place_of_input: return "place_of_input";
  case ChangeKind::less_power: return "less_power";
  case ChangeKind::rotor_gear: return "rotor_gear";
  case ChangeKind::implement_speed: return "implement_speed";
  }
  return "unknown";
}

namespace advising {
namespace {

using Json = nlohmann::ordered_json;

/// "/tractor/pto/gears/0/name" as the paths of findings have it: "tractor.pto.gears[0].name".
std::string path_of(const std::string& pointer) {
  std::string path;
  std::size_t at = 1;
  while (at <= pointer.size()) {
    const std::size_t end = std::min(pointer.find('/', at), pointer.size());
    const std::string part = pointer.substr(at, end - at);
    const bool index = !part.empty() && part.find_first_not_of("0123456789") == std::string::npos;
    path += index ? "[" + part + "]" : (path.empty() ? "" : ".") + part;
    at = end + 1;
  }
  return path;
}

/// The other way round.
Json::json_pointer pointer_of(const std::string& path) {
  std::string pointer = "/";
  for (const char c : path) {
    if (c == '.' || c == '[') pointer += '/';
    if (c != '.' && c != '[' && c != ']') pointer += c;
  }
  return Json::json_pointer(pointer);
}

std::map<std::string, std::string> entries_of(const Case& value) {
  std::map<std::string, std::string> entries;
  const Json flat = Json::parse(write_case(value)).flatten();
  for (const auto& item : flat.items()) {
    entries[path_of(item.key())] = item.value().is_string() ? item.value().get<std::string>() : item.value().dump();
  }
  return entries;
}

const Stated<Money>* entry_for(ChangeKind kind, const Prices& prices) {
  switch (kind) {
  case ChangeKind::set_device: return &prices.set_device;
  case ChangeKind::align_yokes: return &prices.align_yokes;
  case ChangeKind::move_drawbar: return &prices.move_drawbar;
  case ChangeKind::change_over: return &prices.change_over;
  case ChangeKind::refit_guard: return &prices.guard;
  case ChangeKind::cut_tubes: return &prices.cut_tubes;
  case ChangeKind::clamp_seat:
  case ChangeKind::longer_hub:
  case ChangeKind::change_yoke: return &prices.change_yoke;
  case ChangeKind::fit_device: return &prices.fit_device;
  case ChangeKind::longer_driveline: return &prices.longer_driveline;
  case ChangeKind::stronger_tube: return &prices.stronger_tube;
  case ChangeKind::stronger_joints: return &prices.stronger_joints;
  case ChangeKind::wide_angle_front:
  case ChangeKind::wide_angle_rear: return &prices.wide_angle_joint;
  case ChangeKind::place_of_input: return &prices.place_of_input;
  case ChangeKind::drive_slower:
  case ChangeKind::less_power: return &prices.less_power;
  case ChangeKind::rotor_gear: return &prices.rotor_gear;
  case ChangeKind::implement_speed: return &prices.implement_speed;
  case ChangeKind::select_gear:
  case ChangeKind::time_engagement:
  case ChangeKind::keep_pto_speed:
  case ChangeKind::disengage_in_turns:
  case ChangeKind::limit_turn:
  case ChangeKind::limit_lift:
  case ChangeKind::set_top_link:
  case ChangeKind::remove_adaptor: return nullptr; // the operator's own hands
  }
  return nullptr;
}

std::optional<Currency> currency_of(const Prices& prices) {
  for (int i = 0; i < change_kind_count; ++i) {
    const Stated<Money>* price = entry_for(static_cast<ChangeKind>(i), prices);
    if (price != nullptr && *price) return (*price)->currency;
  }
  return std::nullopt;
}

} // namespace

std::vector<EntryChange> entries_between(const Case& before, const Case& after) {
  const auto old_entries = entries_of(before);
  const auto new_entries = entries_of(after);
  std::vector<EntryChange> changes;
  for (const auto& [path, from] : old_entries) {
    const auto to = new_entries.find(path);
    if (to == new_entries.end()) {
      changes.push_back({path, from, ""});
    } else if (to->second != from) {
      changes.push_back({path, from, to->second});
    }
  }
  for (const auto& [path, to] : new_entries) {
    if (old_entries.count(path) == 0) changes.push_back({path, "", to});
  }
  return changes;
}

Case with_entries_of(const Case& other, const std::vector<std::string>& paths, const Case& value) {
  if (paths.empty()) return value;
  const Json from = Json::parse(write_case(other));
  Json to = Json::parse(write_case(value));
  for (const std::string& path : paths) { // first what goes: it may have stood where another entry comes
    const Json::json_pointer pointer = pointer_of(path);
    if (!from.contains(pointer) && to.contains(pointer)) to[pointer.parent_pointer()].erase(pointer.back());
  }
  for (const std::string& path : paths) {
    const Json::json_pointer pointer = pointer_of(path);
    if (from.contains(pointer)) to[pointer] = from.at(pointer);
  }
  return read_case(to.dump());
}

std::optional<Money> price_of(ChangeKind kind, const Prices& prices) {
  const Stated<Money>* price = entry_for(kind, prices);
  if (price != nullptr) return *price;
  const auto currency = currency_of(prices);
  return currency ? std::optional<Money>(Money{0.0, *currency}) : std::nullopt;
}

std::optional<Money> price_of(const std::vector<Change>& changes) {
  std::optional<Money> sum;
  for (const Change& change : changes) {
    if (!change.price) return std::nullopt;
    sum = sum ? *sum + *change.price : *change.price;
  }
  return sum;
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
