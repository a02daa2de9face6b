#include "report/gears_page.hpp"

#include "report/change_words.hpp"
#include "report/figures.hpp"
#include "report/say.hpp"

#include <fieldshaft/power.hpp>
#include <fieldshaft/units/text.hpp>

#include <algorithm>
#include <cmath>
#include <set>

namespace fieldshaft {
inline namespace v0 {
namespace pages {
namespace {

using report_texts::say;

template <class Q> std::string text_or(const std::optional<Q>& quantity, const char* otherwise, UnitStyle style) {
  return quantity ? to_string(amount_of(*quantity), style) : say(otherwise);
}

/// A limit of the engine's speed is rounded down, so that no reader passes it by rounding.
std::string speed_limit_text(const std::optional<AngularSpeed>& speed, UnitStyle style) {
  if (!speed) return say("gears.not_known");
  return to_string(amount_of(rpm(std::floor(in(*speed, unit::rpm) + 1e-9))), style);
}

/// The engine speed never to pass, or that the engine cannot reach it.
std::string never_text(const GearUse& gear, UnitStyle style) {
  return gear.out_of_reach ? say("gears.out_of_reach") : speed_limit_text(gear.never_pass, style);
}

/// Rounded down to the digits that are printed, so that no reader passes a limit by rounding.
double rounded_down(double value, int decimals) {
  const double step = std::pow(10.0, -decimals);
  return step * std::floor(value / step + 1e-9);
}

/// The greatest width or feed of a gear; nothing at all is carried where it is nought.
template <class Q> std::string most_text(const std::optional<Q>& most, UnitStyle style) {
  if (!most) return say("gears.none");
  if (!(*most > Q{})) return say("gears.nothing");
  const Amount amount = amount_of(*most);
  const PrintUnit unit = print_unit(amount.kind, style, amount.si);
  return to_string(Amount{rounded_down(amount.si / unit.factor, unit.decimals) * unit.factor, amount.kind}, style);
}

/// As farmers speak of it, not in m/s.
std::string ground_speed_text(const std::optional<Speed>& speed, UnitStyle style) {
  if (!speed) return say("gears.none");
  if (style == UnitStyle::us) return format_number(rounded_down(in(*speed, unit::mile_per_hour), 1), 1) + " mph";
  return format_number(rounded_down(in(*speed, unit::kilometre_per_hour), 1), 1) + " km/h";
}

std::string power_text(const std::optional<Interval<Power>>& power, UnitStyle style) {
  if (!power) return say("gears.not_known");
  const std::string low = to_string(amount_of(power->low), style);
  const std::string high = to_string(amount_of(power->high), style);
  return low == high ? low : say("gears.range", {{"low", low}, {"high", high}});
}

bool any(const std::vector<GearUse>& gears, bool (*has)(const GearUse&)) {
  return std::any_of(gears.begin(), gears.end(), has);
}

/// Columns that only a need from the table fills.
struct LimitsOfWork {
  bool width;
  bool feed;
  bool speed;
};

LimitsOfWork limits_in(const std::vector<GearUse>& gears) {
  return {any(gears, [](const GearUse& g) { return g.widest.has_value(); }),
          any(gears, [](const GearUse& g) { return g.greatest_feed.has_value(); }),
          any(gears, [](const GearUse& g) { return g.fastest.has_value(); })};
}

Table gears_table(const std::vector<GearUse>& gears, UnitStyle style) {
  const LimitsOfWork limits = limits_in(gears);
  Table table{"",
              {{say("gears.column.gear")},
               {say("gears.column.set"), Align::right},
               {say("gears.column.never"), Align::right},
               {say("gears.column.idle"), Align::right},
               {say("gears.column.power"), Align::right}},
              {}};
  if (limits.width) table.columns.push_back({say("gears.column.width"), Align::right});
  if (limits.feed) table.columns.push_back({say("gears.column.feed"), Align::right});
  if (limits.speed) table.columns.push_back({say("gears.column.speed"), Align::right});
  for (const GearUse& gear : gears) {
    const bool unfit = gear.suits == false;
    std::vector<Cell> row{gear.gear};
    row.emplace_back(unfit ? say("gears.unfit") : text_or(gear.set, "gears.not_known", style));
    row.emplace_back(unfit ? say("gears.none") : never_text(gear, style));
    row.emplace_back(text_or(gear.pto_at_high_idle, "gears.not_known", style));
    row.emplace_back(unfit ? say("gears.none") : power_text(gear.available, style));
    if (limits.width) row.emplace_back(most_text(gear.widest, style));
    if (limits.feed) row.emplace_back(most_text(gear.greatest_feed, style));
    if (limits.speed) row.emplace_back(ground_speed_text(gear.fastest, style));
    table.rows.push_back(std::move(row));
  }
  return table;
}

/// A whole amount of fuel: "420 L", "111 gal".
std::string fuel_text(double litres, UnitStyle style) {
  const bool us = style == UnitStyle::us;
  const double amount = us ? in(litres_per_hour(litres), unit::gallon_per_hour) : litres;
  return format_number(amount, 0) + (us ? " gal" : " L");
}

std::string saving_text(const EconomyAnswer& answer, UnitStyle style) {
  const std::string share = format_number(100.0 * *answer.saving, 0);
  std::string text = say("economy.saving", {{"rate", to_string(amount_of(*answer.saved), style)}, {"share", share}});
  if (answer.money_an_hour)
    text += " " + say("economy.hour", {{"money", rendering::price_text(*answer.money_an_hour)}});
  const double season = answer.litres_a_season.value_or(0.0); // of no stated hours nothing is said
  if (season > 0.0 && answer.money_a_season) {
    text += " " + say("economy.season_with_money",
                      {{"fuel", fuel_text(season, style)}, {"money", rendering::price_text(*answer.money_a_season)}});
  } else if (season > 0.0) {
    text += " " + say("economy.season", {{"fuel", fuel_text(season, style)}});
  }
  return answer.outside == nullptr ? text : text + " " + say("economy.outside", {{"why", answer.outside}});
}

const char* fit_phrase(Status fits) {
  switch (fits) {
  case Status::ok: return "economy.fits";
  case Status::caution: return "economy.fits_barely";
  case Status::stop: return "economy.too_weak";
  case Status::not_known: break;
  }
  return "economy.fit_not_known";
}

std::string run_up_text(const EconomyAnswer& answer, UnitStyle style) {
  std::string text = say("economy.run_up", {{"gear", answer.economy},
                                            {"engine", text_or(answer.plain_engine, "gears.not_known", style)},
                                            {"pto", text_or(answer.pto_at_plain_engine, "gears.not_known", style)}});
  if (answer.pto_at_rated)
    text += " " + say("economy.rated", {{"pto", to_string(amount_of(*answer.pto_at_rated), style)}});
  if (answer.pto_at_high_idle)
    text += " " + say("economy.idle", {{"pto", to_string(amount_of(*answer.pto_at_high_idle), style)}});
  if (answer.never_pass) text += " " + say("economy.never", {{"engine", speed_limit_text(answer.never_pass, style)}});
  return text;
}

/// What the answers from the other end wait for, where the case names a row of the table; empty where they are given.
std::string entries_for_limits(const Assessment& assessment) {
  if (assessment.find(Check::power_need) == nullptr) return "";
  std::set<std::string> entries;
  for (const GearUse& gear : assessment.gears) {
    if (gear.suits == false || gear.widest || gear.greatest_feed) continue;
    entries.insert(gear.missing.begin(), gear.missing.end());
  }
  std::string text;
  for (const std::string& entry : entries) text += (text.empty() ? "" : ", ") + entry;
  return text;
}

} // namespace

std::vector<std::string> economy_sentences(const EconomyAnswer& answer, UnitStyle style) {
  std::vector<std::string> sentences = {
      say(fit_phrase(answer.fits), {{"economy", answer.economy},
                                    {"plain", answer.plain},
                                    {"economy_engine", text_or(answer.economy_engine, "gears.not_known", style)},
                                    {"plain_engine", text_or(answer.plain_engine, "gears.not_known", style)},
                                    {"power", power_text(answer.available, style)}})};
  const bool fits = answer.fits == Status::ok || answer.fits == Status::caution;
  if (fits && answer.saved) sentences.push_back(saving_text(answer, style));
  sentences.push_back(run_up_text(answer, style));
  return sentences;
}

void add_gears(Page& page, const Assessment& assessment, UnitStyle style) {
  const auto says = [](const GearUse& g) { return g.set || g.never_pass || g.pto_at_high_idle || g.available; };
  if (std::none_of(assessment.gears.begin(), assessment.gears.end(), says)) return;
  page.add(Heading{1, say("heading.gears")});
  page.add(gears_table(assessment.gears, style));
  const LimitsOfWork limits = limits_in(assessment.gears);
  if (limits.width || limits.feed || limits.speed) page.add(Paragraph{say("gears.each_alone")});
  const std::string entries = entries_for_limits(assessment);
  if (!entries.empty()) page.add(Paragraph{say("gears.limits_not_known", {{"entries", entries}})});
  if (!assessment.economy) return;
  List list;
  for (std::string& sentence : economy_sentences(*assessment.economy, style))
    list.items.emplace_back(std::move(sentence));
  page.add(std::move(list));
}

} // namespace pages
} // namespace v0
} // namespace fieldshaft
