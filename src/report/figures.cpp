#include "report/figures.hpp"

#include "report/say.hpp"

#include <fieldshaft/units/text.hpp>

#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace rendering {
namespace {

using report_texts::say;

/// A value that has crossed a limit must not be rounded onto it: "35.0° (limit 35.0°)" would explain nothing.
std::string distinct(Amount amount, Amount other, UnitStyle style) {
  std::string text = to_string(amount, style);
  if (amount.si == other.si || text != to_string(other, style)) return text;
  const PrintUnit unit = print_unit(amount.kind, style, amount.si);
  const std::string number = format_number(amount.si / unit.factor, unit.decimals + 3);
  return *unit.symbol == '\0' ? number : number + " " + unit.symbol;
}

std::string standing_text(Standing standing) {
  switch (standing) {
  case Standing::exact: return say("standing.exact");
  case Standing::given: return say("standing.given");
  case Standing::published: return say("standing.published");
  case Standing::textbook: return say("standing.textbook");
  case Standing::quoted: return say("standing.quoted");
  case Standing::common_practice: return say("standing.common_practice");
  case Standing::from_memory: break;
  }
  return say("standing.from_memory");
}

/// "caution above 333.6, stop above 385.2 MPa": the unit once where both have the same.
std::string two_limits_text(const Finding& finding, std::string caution, const std::string& stop) {
  const bool below = finding.sense == LimitSense::at_least;
  if (!is_finite(finding.limits->stop.si)) {
    return below ? say("limit.below_caution", {{"caution", caution}})
                 : say("limit.above_caution", {{"caution", caution}});
  }
  const std::size_t unit = caution.find(' ');
  const bool same = unit != std::string::npos && stop.find(' ') != std::string::npos &&
                    caution.substr(unit) == stop.substr(stop.find(' '));
  if (same) caution.resize(unit);
  return below ? say("limit.below_two", {{"caution", caution}, {"stop", stop}})
               : say("limit.above_two", {{"caution", caution}, {"stop", stop}});
}

} // namespace

std::string value_text(const Finding& finding, UnitStyle style) {
  if (!finding.value) return "";
  return finding.limit ? distinct(*finding.value, *finding.limit, style) : to_string(*finding.value, style);
}

std::string limit_text(const Finding& finding, UnitStyle style) {
  if (!finding.limit) return "";
  const auto text = [&](Amount limit) {
    return finding.value ? distinct(limit, *finding.value, style) : to_string(limit, style);
  };
  if (finding.limits) return two_limits_text(finding, text(finding.limits->caution), text(finding.limits->stop));
  const std::string limit = text(*finding.limit);
  if (finding.sense == LimitSense::at_most) return say("limit.at_most", {{"limit", limit}});
  if (finding.sense == LimitSense::at_least) return say("limit.at_least", {{"limit", limit}});
  return say("limit.equal", {{"limit", limit}});
}

std::string room_text(const Finding& finding) {
  if (!finding.margin) return "";
  const double margin = *finding.margin;
  if (finding.status == Status::caution && margin >= 0.0) return ""; // room to this limit is not why it cautions
  const std::string share = format_number(100.0 * std::abs(margin), std::abs(margin) < 0.1 ? 1 : 0);
  return margin >= 0.0 ? say("room.in_hand", {{"share", share}}) : say("room.beyond", {{"share", share}});
}

std::string figures_text(const Finding& finding, UnitStyle style) {
  std::string value = value_text(finding, style);
  if (value.empty() || !finding.limit) return value;
  const std::string limit = limit_text(finding, style);
  const std::string room = room_text(finding);
  const bool two = finding.limits.has_value();
  if (room.empty())
    return say(two ? "figures.two_limits" : "figures.single_limit", {{"value", value}, {"limit", limit}});
  return say(two ? "figures.two_limits_and_room" : "figures.single_limit_and_room",
             {{"value", value}, {"limit", limit}, {"room", room}});
}

std::string units_text(UnitStyle style) { return style == UnitStyle::us ? say("units.us") : say("units.metric"); }

std::string source_text(const Source& source) {
  return say("finding.note", {{"source", source.text}, {"standing", standing_text(source.standing)}});
}

} // namespace rendering
} // namespace v0
} // namespace fieldshaft
