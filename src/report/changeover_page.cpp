// A changeover as a page and as JSON.

#include <fieldshaft/report/changeover.hpp>

#include "report/assessment_page.hpp"
#include "report/change_words.hpp"
#include "report/changeover_page.hpp"
#include "report/figures.hpp"
#include "report/page.hpp"
#include "report/render.hpp"
#include "report/say.hpp"

#include <fieldshaft/core/config.hpp>
#include <fieldshaft/units/text.hpp>

#include <nlohmann/json.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace pages {
namespace {

using rendering::setup_text;
using report_texts::say;

const char* arrangement_phrase(StubArrangement arrangement) {
  switch (arrangement) {
  case StubArrangement::fixed: return "arrangement.fixed";
  case StubArrangement::two_stubs_out: return "arrangement.two_stubs_out";
  case StubArrangement::exchanged_from_carrier: return "arrangement.exchanged_from_carrier";
  case StubArrangement::bolted_with_separate_lever: return "arrangement.bolted_with_separate_lever";
  case StubArrangement::reversible: return "arrangement.reversible";
  case StubArrangement::lever_only: return "arrangement.lever_only";
  }
  return "arrangement.fixed";
}

Page changeover_page(const Changeover& changeover, UnitStyle style) {
  Page page;
  const std::string from = setup_text(changeover.from, style);
  const std::string to = setup_text(changeover.to, style);
  page.title = say("changeover.title", {{"from", from}, {"to", to}});
  page.add(Labelled{{{say("changeover.row.arrangement"), say(arrangement_phrase(changeover.arrangement))},
                     {say("changeover.row.from"), from},
                     {say("changeover.row.to"), to}}});
  page.add(Paragraph{say("changeover.manual")});
  page.add(Heading{1, say("changeover.heading.steps")});
  List steps{changeover.possible ? ListKind::steps : ListKind::bullets, {}};
  for (const ChangeoverStep& step : changeover.steps) {
    steps.items.emplace_back(rendering::say_facts(step.id, step.facts, style));
  }
  page.add(std::move(steps));
  page.add(Heading{1, say("changeover.heading.hazards")});
  List hazards{ListKind::bullets, {}};
  for (const ChangeoverHazard& hazard : changeover.hazards) {
    hazards.items.push_back(Line(say(hazard.id), {page.note(rendering::source_text(hazard.source))}));
  }
  page.add(std::move(hazards));
  add_cautions(page);
  page.footer = footer_text(style);
  return page;
}

} // namespace
} // namespace pages

std::string to_text(const Changeover& changeover, UnitStyle style) {
  return pages::text_of(pages::changeover_page(changeover, style));
}
std::string to_markdown(const Changeover& changeover, UnitStyle style) {
  return pages::markdown_of(pages::changeover_page(changeover, style));
}
std::string to_html(const Changeover& changeover, UnitStyle style) {
  return pages::html_of(pages::changeover_page(changeover, style));
}

namespace {

using Json = nlohmann::ordered_json;

Json setup_json(const PtoSetup& setup, UnitStyle style) {
  return {{"type", setup.type},
          {"name", pto_type(setup.type).name},
          {"speed",
           {{"si", setup.speed.value()},
            {"unit", si_symbol(Kind::angular_speed)},
            {"text", to_string(amount_of(setup.speed), style)}}}};
}

} // namespace

namespace rendering {

std::string setup_text(const PtoSetup& setup, UnitStyle style) {
  return report_texts::say("changeover.setup",
                           {{"stub", pto_type(setup.type).name}, {"speed", to_string(amount_of(setup.speed), style)}});
}

Json steps_json(const Changeover& changeover, UnitStyle style) {
  Json json = {{"arrangement", report_texts::say(pages::arrangement_phrase(changeover.arrangement))},
               {"possible", changeover.possible},
               {"from", setup_json(changeover.from, style)},
               {"to", setup_json(changeover.to, style)},
               {"hitch", changeover.hitch == HitchKind::drawbar ? "drawbar" : "three-point"}};
  json["steps"] = Json::array();
  for (const ChangeoverStep& step : changeover.steps) {
    json["steps"].push_back({{"id", step.id}, {"text", say_facts(step.id, step.facts, style)}});
  }
  return json;
}

} // namespace rendering

std::string to_json(const Changeover& changeover, UnitStyle style) {
  Json json = {{"schema", changeover_schema_version}, {"library", FIELDSHAFT_VERSION_STRING}};
  json.update(rendering::steps_json(changeover, style));
  json["hazards"] = Json::array();
  for (const ChangeoverHazard& hazard : changeover.hazards) {
    json["hazards"].push_back({{"id", hazard.id},
                               {"text", report_texts::say(hazard.id)},
                               {"source", hazard.source.text},
                               {"standing", standing_name(hazard.source.standing)}});
  }
  json["cautions"] = rendering::cautions();
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace v0
} // namespace fieldshaft
