// The plain-text report.

#include <fieldshaft/report/report.hpp>

#include "report/catalogue.hpp"
#include "report/render.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace {

using namespace rendering;

constexpr std::size_t page_width = 100;

/// Number of characters that a reader sees: bytes that continue a UTF-8 character do not count.
std::size_t width_of(std::string_view text) {
  std::size_t width = 0;
  for (const char c : text) width += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
  return width;
}

/// Text wrapped to the page, its first line after `first`, the others after as many spaces.
void append_wrapped(std::string& out, const std::string& first, std::string_view text) {
  const std::string indent(width_of(first), ' ');
  std::string line = first;
  bool fresh = true;
  while (!text.empty()) {
    const std::size_t space = text.find(' ');
    const std::string_view word = text.substr(0, space);
    if (!fresh && width_of(line) + 1 + width_of(word) > page_width) {
      out += line + "\n";
      line = indent;
      fresh = true;
    }
    line += (fresh ? "" : " ") + std::string(word);
    fresh = false;
    text = space == std::string_view::npos ? std::string_view() : text.substr(space + 1);
  }
  out += line + "\n";
}

void append_finding(std::string& out, const Finding& finding, UnitStyle style) {
  append_wrapped(out, "  * ", report_texts::title_of(finding.check));
  const std::string figures = numbers(finding, style);
  const std::string where = condition(finding, style);
  if (!figures.empty()) append_wrapped(out, "    ", figures + (where.empty() ? "" : ", " + where));
  append_wrapped(out, "    ", sentence(finding.reason, finding, style));
  std::string missing;
  for (const std::string& path : finding.missing) missing += (missing.empty() ? "" : ", ") + path;
  if (!missing.empty()) append_wrapped(out, "    ", "state in the case: " + missing);
  const std::string rests_on = basis(finding);
  if (!rests_on.empty()) append_wrapped(out, "    ", "rests on: " + rests_on);
}

void append_group(std::string& out, const Assessment& assessment, Status status, const char* heading, UnitStyle style) {
  const auto findings = with_status(assessment, status);
  if (findings.empty()) return;
  out += "\n" + std::string(heading) + "\n";
  for (const Finding* finding : findings) append_finding(out, *finding, style);
}

} // namespace

std::string to_text(const Assessment& assessment, UnitStyle style) {
  std::string out;
  append_wrapped(out, "", headline(assessment));
  out += "\n";
  if (!assessment.title.empty()) append_wrapped(out, "Case:      ", assessment.title);
  append_wrapped(out, "Tractor:   ", assessment.tractor);
  append_wrapped(out, "Implement: ", assessment.implement);
  if (!assessment.note.empty()) append_wrapped(out, "Note:      ", assessment.note);

  const auto changes = what_to_change(assessment, style);
  if (!changes.empty()) out += "\nWHAT TO CHANGE\n";
  for (std::size_t i = 0; i < changes.size(); ++i) append_wrapped(out, "  " + std::to_string(i + 1) + ". ", changes[i]);

  append_group(out, assessment, Status::stop, "STOP", style);
  append_group(out, assessment, Status::not_known, "NOT KNOWN", style);
  append_group(out, assessment, Status::caution, "CAUTION", style);
  append_group(out, assessment, Status::ok, "NO OBJECTION", style);

  out += "\nNOT EXAMINED\n";
  for (const Check check : assessment.not_examined) append_wrapped(out, "  * ", report_texts::title_of(check));
  append_wrapped(out, "  * ", report_texts::phrase("report.never_examined"));
  out += "\nBEFORE ANY WORK ON IT\n";
  for (const std::string& caution : cautions()) append_wrapped(out, "  * ", caution);
  return out;
}

} // namespace v0
} // namespace fieldshaft
