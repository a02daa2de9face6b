// Reports as text, Markdown and HTML: the same content in each form, nothing lost, nothing taken for markup.

#include "../../src/report/figures.hpp"

#include "../../src/report/catalogue.hpp"
#include "../../src/report/page.hpp"
#include "../../src/report/render.hpp"

#include "markup.hpp"

#include <fieldshaft/fieldshaft.hpp>

#include <doctest/doctest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

using namespace fieldshaft;
namespace fs = std::filesystem;
using markup::squeezed;

namespace {

std::vector<Assessment> example_assessments() {
  std::vector<Assessment> assessments;
  for (const auto& entry : fs::directory_iterator(FIELDSHAFT_SOURCE_DIR "/docs/examples/cases")) {
    if (entry.path().extension() != ".json") continue;
    std::ifstream file(entry.path());
    std::stringstream text;
    text << file.rdbuf();
    assessments.push_back(assess(read_case(text.str())));
  }
  REQUIRE(assessments.size() >= 7);
  return assessments;
}

/// Markdown without its escapes and emphasis: what a person reads.
std::string read_markdown(const std::string& markdown) {
  std::string out;
  for (std::size_t i = 0; i < markdown.size(); ++i) {
    if (markdown[i] == '\\' && i + 1 < markdown.size() && markdown[i + 1] != '\n') {
      out += markdown[++i];
    } else if (markdown[i] != '*' && markdown[i] != '|' && markdown[i] != '>') {
      out += markdown[i];
    }
  }
  return squeezed(out);
}

/// The words of each form, line breaks and marks taken away. In the text a table breaks its cells over several lines,
/// so that only the two other forms hold each cell in one piece.
struct Forms {
  std::string text;
  std::string markdown;
  std::string html;
};

Forms forms_of(const Assessment& assessment, UnitStyle style) {
  return {squeezed(to_text(assessment, style)), read_markdown(to_markdown(assessment, style)),
          squeezed(markup::read(to_html(assessment, style)).text)};
}

bool holds(const std::string& text, const std::string& part) { return text.find(squeezed(part)) != std::string::npos; }

constexpr UnitStyle styles[] = {UnitStyle::metric, UnitStyle::us};

} // namespace

TEST_CASE("every finding stands in every form, with its reason's status and the same figures") {
  for (const Assessment& assessment : example_assessments()) {
    for (const UnitStyle style : styles) {
      const Forms forms = forms_of(assessment, style);
      for (const Finding& finding : assessment.findings) {
        const std::string title(report_texts::title_of(finding.check));
        CAPTURE(title);
        CHECK(holds(forms.text, title));
        CHECK(holds(forms.markdown, title));
        CHECK(holds(forms.html, title));
        const std::string value = rendering::value_text(finding, style);
        CHECK(holds(forms.text, value));
        const std::string limit = rendering::limit_text(finding, style);
        for (const std::string& figure : {value, limit}) {
          CHECK(holds(forms.markdown, figure));
          CHECK(holds(forms.html, figure));
        }
      }
      CHECK(holds(forms.text, rendering::units_text(style)));
      CHECK(holds(forms.html, rendering::units_text(style)));
    }
  }
}

TEST_CASE("metric and US reports differ in their figures and say which they are") {
  const Assessment assessment = example_assessments().front();
  const std::string metric = to_text(assessment);
  const std::string us = to_text(assessment, UnitStyle::us);
  CHECK(metric != us);
  CHECK(metric.find("Metric units") != std::string::npos);
  CHECK(us.find("US customary units") != std::string::npos);
  CHECK(nlohmann::json::parse(to_json(assessment))["units"] == "metric");
  CHECK(nlohmann::json::parse(to_json(assessment, UnitStyle::us))["units"] == "us");
}

TEST_CASE("in US units no rule and no amount stays metric, and the cautions come before the entries to state") {
  for (const Assessment& assessment : example_assessments()) {
    CAPTURE(assessment.title);
    Assessment nameless = assessment; // names may hold a size: "rotary cutter, 2.1 m"
    nameless.title = nameless.tractor = nameless.implement = nameless.note = "";
    std::string text = to_text(nameless, UnitStyle::us);
    text.erase(std::min(text.size(), text.find("Where the limits come from"))); // sources are quoted as printed
    for (const char* unit : {" mm", " kW", " N·m", " MPa", " kN", " m/s"}) {
      CAPTURE(unit);
      CHECK(text.find(unit) == std::string::npos);
    }
    const std::size_t cautions = text.find("\nBefore any work on it\n");
    REQUIRE(cautions != std::string::npos);
    CHECK(cautions < text.find("\nWhat to state in the case\n"));
  }
}

TEST_CASE("a text report is at most 100 characters wide") {
  std::vector<Assessment> assessments = example_assessments();
  assessments.front().note = std::string(333, 'x') + " " + std::string(101, 'y');
  assessments.front().tractor = "a name of letters that take more than one byte: ";
  for (int i = 0; i < 80; ++i) assessments.front().tractor += "ß√";
  for (const Assessment& assessment : assessments) {
    for (const UnitStyle style : styles) {
      std::istringstream lines(to_text(assessment, style));
      for (std::string line; std::getline(lines, line);) {
        CAPTURE(line);
        CHECK(pages::width_of(line) <= 100);
        CHECK((line.empty() || line.back() != ' '));
      }
    }
  }
}

TEST_CASE("an HTML report is well-formed, stands alone and can be found its way through") {
  std::vector<Assessment> assessments = example_assessments();
  assessments.emplace_back();
  for (const Assessment& assessment : assessments) {
    const std::string html = to_html(assessment);
    const markup::Document document = markup::read(html);
    std::set<std::string> ids;
    std::vector<std::string> links;
    int last_level = 0;
    for (const markup::Element& element : document.elements) {
      const auto attribute = [&](const char* key) {
        const auto found = element.attributes.find(key);
        return found == element.attributes.end() ? std::string() : found->second;
      };
      static const std::set<std::string> with_outside = {"script", "link", "img", "iframe", "object", "use", "image"};
      CHECK(with_outside.count(element.tag) == 0);
      CHECK(element.attributes.count("src") == 0);
      CHECK(element.attributes.count("style") == 0);
      if (element.attributes.count("id") == 1) CHECK(ids.insert(attribute("id")).second);
      if (element.tag == "a") links.push_back(attribute("href"));
      if (element.tag == "html") CHECK(attribute("lang") == "en");
      if (element.tag == "svg") CHECK(attribute("aria-hidden") == "true");
      const bool heading = element.tag.size() == 2 && element.tag[0] == 'h' && std::isdigit(element.tag[1]) != 0;
      if (!heading) continue;
      const int level = element.tag[1] - '0';
      CHECK(level <= last_level + 1); // none is left out on the way down
      last_level = level;
    }
    for (const std::string& link : links) {
      REQUIRE(link.rfind('#', 0) == 0);
      CHECK(ids.count(link.substr(1)) == 1);
    }
    CHECK(html.find("url(") == std::string::npos);
    CHECK(html.find("@import") == std::string::npos);
    CHECK(html.find("@media print") != std::string::npos);
  }
}

TEST_CASE("nothing that a case says is taken for markup") {
  const std::string hostile = "</style><script>alert(\"1\")</script> & 'two' | *three* _four_ [five](six) `seven` <!-- "
                              "# 8. $nine$ \\ &amp; ]]> \x01\x7F\xFF\xC2\x85 \n- ten\n\n# eleven";
  Assessment assessment = example_assessments().front();
  assessment.title = assessment.note = assessment.tractor = assessment.implement = hostile;
  assessment.findings.front().facts.clear();
  const std::string read_back =
      "</style><script>alert(\"1\")</script> & 'two' | *three* _four_ [five](six) `seven` <!-- "
      "# 8. $nine$ \\ &amp; ]]> \xEF\xBF\xBD - ten # eleven";

  const std::string html = to_html(assessment);
  const markup::Document document = markup::read(html);
  CHECK(holds(squeezed(document.text), read_back));
  CHECK(html.find("<script") == std::string::npos);
  CHECK(html.find("<!--") == std::string::npos);

  const std::string markdown = to_markdown(assessment);
  CHECK(markdown.find("\\</style\\>\\<script\\>alert(\"1\")") != std::string::npos);
  CHECK(markdown.find("\\| \\*three\\* \\_four\\_ \\[five\\](six) \\`seven\\` \\<!--") != std::string::npos);
  CHECK(markdown.find("\n- ten") == std::string::npos);
  CHECK(markdown.find("\n# eleven") == std::string::npos);

  const std::string text = to_text(assessment);
  CHECK(holds(squeezed(text), read_back));
  for (const char c : text) CHECK((c == '\n' || static_cast<unsigned char>(c) >= 0x20U));
}

TEST_CASE("every note is referred to, every reference has its note, and no source stands twice") {
  for (const Assessment& assessment : example_assessments()) {
    const markup::Document document = markup::read(to_html(assessment));
    std::set<std::string> notes;
    std::set<std::string> referred;
    for (const markup::Element& element : document.elements) {
      const auto id = element.attributes.find("id");
      if (id != element.attributes.end()) notes.insert("#" + id->second);
      if (element.tag == "a") referred.insert(element.attributes.at("href"));
    }
    CHECK(notes == referred);
    const std::string text = squeezed(to_text(assessment));
    const std::string sources = text.substr(text.rfind("Where the limits come from"));
    for (const Finding& finding : assessment.findings) {
      for (const Source& source : finding.basis) {
        const std::string note = "] " + squeezed(rendering::source_text(source));
        CAPTURE(note);
        const std::size_t first = sources.find(note);
        REQUIRE(first != std::string::npos);
        // Not again, unless as the start of a longer one.
        const std::size_t again = sources.find(note + " [", first + 1);
        CHECK(again == std::string::npos);
      }
    }
  }
}

TEST_CASE("every finding that is judged against a limit says what it rests on and how sure that is, in every form") {
  std::size_t judged = 0;
  for (const Assessment& assessment : example_assessments()) {
    const Forms forms = forms_of(assessment, UnitStyle::metric);
    const nlohmann::json json = nlohmann::json::parse(to_json(assessment));
    for (std::size_t i = 0; i < assessment.findings.size(); ++i) {
      const Finding& finding = assessment.findings[i];
      CAPTURE(std::string(check_id(finding.check)));
      if (finding.limit) CHECK(!finding.basis.empty());
      CHECK(json["findings"][i]["basis"].size() == finding.basis.size());
      for (const Source& source : finding.basis) {
        const std::string note = std::string(source.text) + " [" + standing_name(source.standing) + "]";
        CAPTURE(note);
        for (const std::string* form : {&forms.text, &forms.html}) CHECK(holds(*form, note));
        ++judged;
      }
    }
  }
  CHECK(judged > 300);
}

TEST_CASE("where schools differ both limits are named") {
  Finding finding;
  finding.value = amount_of(degrees(20.0));
  finding.limit = amount_of(degrees(15.0));
  finding.sense = LimitSense::at_most;
  finding.margin = -1.0 / 3.0;
  CHECK(rendering::figures_text(finding, UnitStyle::metric) == "20.0° (limit: at most 15.0°; 33 % beyond)");
  finding.limits = TwoLimits{amount_of(degrees(15.0)), amount_of(degrees(25.0))};
  CHECK(rendering::figures_text(finding, UnitStyle::metric) ==
        "20.0° (caution above 15.0°, stop above 25.0°; 33 % beyond)");

  finding.value = amount_of(millimetres(120.0));
  finding.sense = LimitSense::at_least;
  finding.limits = TwoLimits{amount_of(millimetres(150.0)), amount_of(millimetres(110.0))};
  finding.limit = finding.limits->caution;
  finding.margin.reset();
  CHECK(rendering::figures_text(finding, UnitStyle::metric) == "120 mm (caution below 150, stop below 110 mm)");
  finding.limits->stop.si = -std::numeric_limits<double>::infinity();
  CHECK(rendering::figures_text(finding, UnitStyle::metric) == "120 mm (caution below 150 mm)");

  // A value just beyond its limit is not rounded onto it.
  finding.limits.reset();
  finding.limit = amount_of(millimetres(120.3));
  CHECK(rendering::figures_text(finding, UnitStyle::metric) == "120.000 mm (limit: at least 120.300 mm)");
}

TEST_CASE("a pose is told in words that somebody beside the machine uses") {
  const auto text = [](double yaw, double pitch, double roll, std::optional<Length> lift = std::nullopt) {
    Finding finding;
    finding.state = MachineState::turning;
    finding.pose = PoseAt{degrees(yaw), degrees(pitch), degrees(roll), lift};
    return rendering::condition(finding, UnitStyle::metric);
  };
  CHECK(text(-30.0, 6.0, -4.0) ==
        "while turning, turned 30.0° to the left, in a hollow of 6.0°, implement's right side up by 4.0°");
  CHECK(text(30.0, -6.0, 4.0) ==
        "while turning, turned 30.0° to the right, over a crest of 6.0°, implement's left side up by 4.0°");
  CHECK(text(0.0, 0.04, 0.0) == "while turning, straight and level");
  CHECK(text(0.0, 0.0, 0.0, millimetres(-250.0)) ==
        "while turning, straight and level, hitch points 250 mm below the front pivots of the lower links");
  CHECK(text(5.0, 7.0, 0.0, millimetres(100.0)) ==
        "while turning, turned 5.0° to the right, implement's front end tilted down by 7.0°, hitch points 100 mm above "
        "the front pivots of the lower links");
  Finding anywhere;
  CHECK(rendering::condition(anywhere, UnitStyle::metric).empty());
}

TEST_CASE("both limits and what to state stand in the JSON report") {
  bool two = false;
  bool missing = false;
  for (const Assessment& assessment : example_assessments()) {
    const auto report = nlohmann::json::parse(to_json(assessment));
    std::set<std::string> paths;
    for (std::size_t i = 0; i < assessment.findings.size(); ++i) {
      const Finding& finding = assessment.findings[i];
      const auto& json = report["findings"][i];
      CHECK(json.contains("limits") == finding.limits.has_value());
      if (finding.limits && is_finite(finding.limits->stop.si)) {
        two = true;
        CHECK(json["limits"]["caution"]["si"] == finding.limits->caution.si);
        CHECK(json["limits"]["stop"]["si"] == finding.limits->stop.si);
      }
      if (finding.status == Status::not_known) paths.insert(finding.missing.begin(), finding.missing.end());
    }
    CHECK(report["what_to_state"].size() == paths.size());
    for (const auto& entry : report["what_to_state"]) {
      missing = true;
      CHECK(paths.count(entry["path"]) == 1);
      CHECK_MESSAGE(!entry["meaning"].get<std::string>().empty(), entry["path"]);
      CHECK(entry["waiting"] >= 1);
    }
  }
  CHECK(two);
  CHECK(missing);
}

TEST_CASE("an assessment of nothing is not known in every form") {
  const Assessment nothing;
  CHECK(to_text(nothing).find("NOT KNOWN: 0 of 0 checks cannot be decided") == 0);
  CHECK(to_markdown(nothing).find("> **NOT KNOWN**: 0 of 0 checks") != std::string::npos);
  CHECK(holds(squeezed(markup::read(to_html(nothing)).text), "NOT KNOWN : 0 of 0 checks"));
  const Assessment unstated = assess(Case{});
  CHECK(unstated.verdict() == Status::not_known);
  CHECK(to_text(unstated).find("NOT KNOWN: ") == 0);
}

TEST_CASE("a pass that rests on remembered limits says so in its first line, in every form") {
  Assessment assessment;
  Finding finding;
  finding.status = Status::ok;
  finding.reason = "adaptor.none";
  finding.basis = {{"some standard", Standing::from_memory}};
  assessment.findings.push_back(finding);
  const std::string said =
      "NO OBJECTION in 1 check. Not everything was examined (see below). It rests partly on limits "
      "from memory, not yet verified (marked below).";
  CHECK(squeezed(to_text(assessment)).rfind(said, 0) == 0);
  CHECK(holds(read_markdown(to_markdown(assessment)), said));
  CHECK(holds(squeezed(markup::read(to_html(assessment)).text), "NO OBJECTION in 1 check. Not everything"));
}

TEST_CASE("the parts of a page in each form") {
  using namespace pages;
  Page page;
  page.title = "Title";
  page.add(Heading{1, "First", true});
  page.add(Paragraph{"1. no list"});
  page.add(Paragraph{Line{"Words.", {page.note("book"), page.note("paper")}}});
  CHECK(page.note("book") == 1);
  page.add(List{ListKind::steps, {"stop", "go"}});
  page.add(Labelled{{{"Name", "value"}, {"Longer name", "1. other"}}});
  page.add(Table{"Caption", {{"Pair"}, {"Verdict"}, {"Price", Align::right}}, {{"A-B", Status::stop, "10"}}});
  page.add(FindingBlock{Status::caution, "Angle", "5.0°", {"Because."}});
  page.footer = "End.";

  CHECK(text_of(page) ==
        "Title\n\nFirst\n-----\n1. no list\nWords. [1, 2]\n  1. [ ] stop\n  2. [ ] go\n\nName:        value\n"
        "Longer name: 1. other\n\nCaption\n  Pair  Verdict  Price\n  ----  -------  -----\n"
        "  A-B   STOP        10\n\n  * Angle\n    5.0°\n    Because.\n\nWhere the limits come from\n"
        "--------------------------\n  [1] book\n  [2] paper\n\nEnd.\n");
  CHECK(markdown_of(page) ==
        "# Title\n\n## First\n\n1\\. no list\n\nWords. \\[1, 2\\]\n\n1. [ ] stop\n2. [ ] go\n\n**Name:** value\\\n"
        "**Longer name:** 1. other\n\n*Caption*\n\n| Pair | Verdict | Price |\n| --- | --- | ---: |\n"
        "| A-B | **STOP** | 10 |\n\n**Angle**\n\n5.0°\n\nBecause.\n\n"
        "## Where the limits come from\n\n1. book\n2. paper\n\n---\n\nEnd.\n");
  const std::string html = html_of(page);
  CHECK(holds(squeezed(markup::read(html).text), "First 1. no list Words. [ 1 , 2 ]"));
  CHECK(html.find("<li><span class=\"box\"></span>stop</li>") != std::string::npos);
  CHECK(html.find("<h2 class=\"sheet\">First</h2>") != std::string::npos);
  CHECK(html.find("<caption>Caption</caption>") != std::string::npos);
  CHECK(html.find("<td class=\"right\">10</td>") != std::string::npos);
}

TEST_CASE("one line of text, whatever stands in it") {
  CHECK(pages::one_line("  two\r\n words\t ") == "two words");
  CHECK(pages::one_line("\xC3\x9F \xE2\x82\xAC \xF0\x9F\x9A\x9C") == "\xC3\x9F \xE2\x82\xAC \xF0\x9F\x9A\x9C");
  const std::string broken = "\xEF\xBF\xBD";
  CHECK(pages::one_line("a\xC3") == "a" + broken);                                 // cut short
  CHECK(pages::one_line("\xC0\xAF") == broken + broken);                           // overlong
  CHECK(pages::one_line("\xED\xA0\x80") == broken + broken + broken);              // half of a pair
  CHECK(pages::one_line("\xEF\xBF\xBE") == broken + broken + broken);              // no character
  CHECK(pages::one_line("\xF4\x90\x80\x80") == broken + broken + broken + broken); // beyond the last
  CHECK(pages::one_line("\xE2\x80\xA8x\xC2\x85y") == "x y");                       // line ends of other kinds
  CHECK(pages::one_line(std::string("a\0b", 3)) == "a b");
}
