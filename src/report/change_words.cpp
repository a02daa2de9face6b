#include "report/change_words.hpp"

#include "report/render.hpp"
#include "report/say.hpp"

#include <fieldshaft/units/text.hpp>

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace rendering {
namespace {

bool has_fact(const Change& change, std::string_view name) {
  return std::any_of(change.facts.begin(), change.facts.end(), [&](const Fact& fact) { return name == fact.name; });
}

const char* phrase_of(const Change& change) {
  switch (change.kind) {
  case ChangeKind::select_gear: return "change.select_gear";
  case ChangeKind::time_engagement: return "change.time_engagement";
  case ChangeKind::keep_pto_speed: return "change.keep_pto_speed";
  case ChangeKind::drive_slower: return "change.drive_slower";
  case ChangeKind::disengage_in_turns: return "change.disengage_in_turns";
  case ChangeKind::limit_turn: return "change.limit_turn";
  case ChangeKind::limit_lift: return "change.limit_lift";
  case ChangeKind::set_device: return "change.set_device";
  case ChangeKind::align_yokes: return "change.align_yokes";
  case ChangeKind::set_top_link: return "change.set_top_link";
  case ChangeKind::move_drawbar: return "change.move_drawbar";
  case ChangeKind::change_over: return has_fact(change, "distance") ? "change.change_over_pin" : "change.change_over";
  case ChangeKind::remove_adaptor: return "change.remove_adaptor";
  case ChangeKind::refit_guard: return "change.refit_guard";
  case ChangeKind::cut_tubes: return "change.cut_tubes";
  case ChangeKind::clamp_seat: return "change.clamp_seat";
  case ChangeKind::longer_hub: return "change.longer_hub";
  case ChangeKind::change_yoke: return "change.change_yoke";
  case ChangeKind::fit_device: return "change.fit_device";
  case ChangeKind::longer_driveline: return "change.longer_driveline";
  case ChangeKind::stronger_tube: return has_fact(change, "wall") ? "change.stronger_profile" : "change.stronger_tube";
  case ChangeKind::stronger_joints:
    if (!has_fact(change, "bearings")) return "change.stronger_joints";
    return has_fact(change, "rating") ? "change.stronger_joints_and_bearings" : "change.larger_bearings";
  case ChangeKind::wide_angle_front:
    return has_fact(change, "bearings") ? "change.wide_angle_front_bearings" : "change.wide_angle_front";
  case ChangeKind::wide_angle_rear:
    return has_fact(change, "bearings") ? "change.wide_angle_rear_bearings" : "change.wide_angle_rear";
  case ChangeKind::place_of_input: return "change.place_of_input";
  case ChangeKind::less_power: return "change.less_power";
  case ChangeKind::rotor_gear: return "change.rotor_gear";
  case ChangeKind::implement_speed:
    return has_fact(change, "setting") ? "change.implement_speed_and_device" : "change.implement_speed";
  }
  return "change.select_gear";
}

/// A single number with an SI unit, in the units of a report; nothing where the text is something else.
std::optional<std::string> quantity_text(std::string_view text, UnitStyle style) {
  text = detail::trimmed(text);
  const auto number = detail::take_decimal(text);
  text = detail::trimmed(text);
  if (!number || text.empty()) return std::nullopt;
  for (int i = 0; i <= static_cast<int>(Kind::second_moment_of_area); ++i) {
    const auto kind = static_cast<Kind>(i);
    if (kind != Kind::share && si_symbol(kind) == text) return to_string(Amount{*number, kind}, style);
  }
  return std::nullopt;
}

} // namespace

std::string say_facts(std::string_view id, const std::vector<Fact>& facts, UnitStyle style) {
  return report_texts::say(id, [&](std::string_view name) -> std::optional<std::string> {
    for (const Fact& fact : facts) {
      if (name == fact.name) return fact_text(fact, style);
    }
    return std::nullopt;
  });
}

std::string change_text(const Change& change, UnitStyle style) {
  return say_facts(phrase_of(change), change.facts, style);
}

std::string entry_text(const std::string& text, UnitStyle style) {
  const std::string plus_minus = " ± ";
  const std::size_t at = text.find(plus_minus);
  const auto value = quantity_text(text.substr(0, at), style);
  if (!value) return text;
  if (at == std::string::npos) return *value;
  const auto tolerance = quantity_text(text.substr(at + plus_minus.size()), style);
  return tolerance ? *value + plus_minus + *tolerance : text;
}

std::string price_text(const Money& price) {
  const bool whole = price.amount == std::round(price.amount);
  return format_number(price.amount, whole ? 0 : 2) + " " + std::string(price.currency.code());
}

} // namespace rendering
} // namespace v0
} // namespace fieldshaft
