#include "report/assessment_page.hpp"

#include "case/meaning.hpp"
#include "report/catalogue.hpp"
#include "report/certificate.hpp"
#include "report/figures.hpp"
#include "report/gears_page.hpp"
#include "report/render.hpp"
#include "report/say.hpp"

#include <algorithm>
#include <set>

namespace fieldshaft {
inline namespace v0 {
namespace pages {
namespace {

using report_texts::say;
using report_texts::say_count;

constexpr Status worst_first[] = {Status::stop, Status::not_known, Status::caution, Status::ok};

std::string title_of(const Finding& finding) {
  const std::string title(report_texts::title_of(finding.check));
  return finding.part.empty() ? title : title + " (" + finding.part + ")";
}

std::string joined(const std::vector<std::string>& texts, const char* between) {
  std::string all;
  for (const std::string& text : texts) all += (all.empty() ? "" : between) + text;
  return all;
}

/// Findings that are not known for the same reason, in the order of the checks.
using Group = std::vector<const Finding*>;

std::vector<Group> by_reason(const Assessment& assessment, UnitStyle style) {
  std::vector<Group> groups;
  for (const Finding* finding : rendering::with_status(assessment, Status::not_known)) {
    const std::string reason = rendering::sentence(finding->reason, *finding, style);
    const auto same = std::find_if(groups.begin(), groups.end(), [&](const Group& group) {
      return rendering::sentence(group.front()->reason, *group.front(), style) == reason &&
             group.front()->missing == finding->missing;
    });
    if (same == groups.end()) {
      groups.push_back({finding});
    } else {
      same->push_back(finding);
    }
  }
  return groups;
}

Verdict verdict_block(const Assessment& assessment, UnitStyle style) {
  Verdict verdict{assessment.verdict(), verdict_text(assessment), {}};
  constexpr std::size_t worth_saying = 3;
  for (const Group& group : by_reason(assessment, style)) {
    if (group.size() < worth_saying) continue;
    const std::string reason = rendering::sentence(group.front()->reason, *group.front(), style);
    verdict.lines.emplace_back(say("headline.one_reason", {{"n", std::to_string(group.size())}, {"reason", reason}}));
  }
  const auto softened = std::count_if(assessment.findings.begin(), assessment.findings.end(),
                                      [](const Finding& finding) { return finding.at_high_need; });
  if (softened > 0) verdict.lines.emplace_back(say("headline.high_need", {{"n", std::to_string(softened)}}));
  const std::size_t entries = entries_to_state(assessment).size();
  if (entries > 0) verdict.lines.emplace_back(say("headline.state", {{"n", std::to_string(entries)}}));
  return verdict;
}

Labelled names_block(const Assessment& assessment) {
  Labelled names;
  names.rows.emplace_back(say("assessment.tractor"), assessment.tractor);
  names.rows.emplace_back(say("assessment.implement"), assessment.implement);
  if (!assessment.note.empty()) names.rows.emplace_back(say("assessment.note"), assessment.note);
  return names;
}

void add_changes(Page& page, const Assessment& assessment, UnitStyle style) {
  List changes{ListKind::numbered, {}};
  for (std::string& change : rendering::what_to_change(assessment, style))
    changes.items.emplace_back(std::move(change));
  if (changes.items.empty()) return;
  page.add(Heading{1, say("heading.change")});
  page.add(std::move(changes));
}

/// A list to fill in: what the entry is, how many checks wait for it, and room to write.
void add_entries(Page& page, const std::vector<Entry>& entries) {
  if (entries.empty()) return;
  Table table{"",
              {{say("column.number"), Align::right},
               {say("column.entry")},
               {say("column.meaning")},
               {say("column.waiting"), Align::right},
               {say("column.fill_in"), Align::blank}},
              {}};
  for (const Entry& entry : entries) {
    table.rows.push_back(
        {std::to_string(table.rows.size() + 1), entry.path, entry.meaning, std::to_string(entry.waiting), ""});
  }
  page.add(Heading{1, say("heading.state")});
  page.add(std::move(table));
}

void add_glance(Page& page, const Assessment& assessment, UnitStyle style) {
  std::vector<const Finding*> findings;
  for (const Status status : worst_first) {
    for (const Finding* finding : rendering::with_status(assessment, status)) findings.push_back(finding);
  }
  if (findings.empty()) return;
  page.add(Heading{1, say("heading.glance"), true});
  page.add(findings_table(findings, style));
}

void add_findings(Page& page, const Assessment& assessment, Status status, Heading heading, UnitStyle style) {
  const auto findings = rendering::with_status(assessment, status);
  if (findings.empty()) return;
  page.add(std::move(heading));
  for (const Finding* finding : findings) page.add(finding_block(page, *finding, style));
}

/// The notes of what a finding rests on, added to the page, in ascending order.
std::set<std::size_t> notes_of(Page& page, const Finding& finding) {
  std::set<std::size_t> notes;
  for (const Source& source : finding.basis) notes.insert(page.note(rendering::source_text(source)));
  return notes;
}

/// "1-4, 7, 9": the numbers of the entries that a finding waits for.
std::string entry_numbers(const Finding& finding, const std::vector<Entry>& entries) {
  std::string text;
  std::size_t last = 0;
  bool running = false;
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const bool wanted =
        std::find(finding.missing.begin(), finding.missing.end(), entries[i].path) != finding.missing.end();
    if (wanted && last == i && i > 0) {
      running = true;
      last = i + 1;
      continue;
    }
    if (running) text += "-" + std::to_string(last);
    running = false;
    if (!wanted) continue;
    text += (text.empty() ? "" : ", ") + std::to_string(i + 1);
    last = i + 1;
  }
  return running ? text + "-" + std::to_string(last) : text;
}

/// Many findings that wait for one thing are one block.
FindingBlock group_block(Page& page, const Group& group, const std::vector<Entry>& entries, UnitStyle style) {
  const Finding& first = *group.front();
  FindingBlock block = finding_block(page, first, style);
  const std::string numbers = entry_numbers(first, entries);
  if (!numbers.empty()) block.lines.emplace_back(say("finding.state", {{"numbers", numbers}}));
  if (group.size() == 1) return block;
  std::vector<std::string> titles;
  std::set<std::size_t> notes;
  for (const Finding* finding : group) {
    titles.push_back(title_of(*finding));
    notes.merge(notes_of(page, *finding));
  }
  block.title = {say("finding.one_reason", {{"n", std::to_string(group.size())}}), {notes.begin(), notes.end()}};
  block.figures.clear();
  block.lines.emplace_back(joined(titles, "; "));
  return block;
}

void add_unknowns(Page& page, const Assessment& assessment, const std::vector<Entry>& entries, UnitStyle style) {
  const std::vector<Group> groups = by_reason(assessment, style);
  if (groups.empty()) return;
  page.add(Heading{1, say("heading.not_known")});
  for (const Group& group : groups) page.add(group_block(page, group, entries, style));
}

/// What is proved of the driveline: the certificate first, then its parts.
void add_certificate(Page& page, const Assessment& assessment, UnitStyle style) {
  std::vector<std::string> sentences = rendering::certificate(assessment, style);
  if (sentences.empty()) return;
  page.add(Heading{1, say("heading.certificate")});
  page.add(Paragraph{std::move(sentences.front())});
  List list;
  for (std::size_t i = 1; i < sentences.size(); ++i) list.items.emplace_back(std::move(sentences[i]));
  page.add(std::move(list));
}

/// What the case could ask for: checks that wait for the same entries stand together.
List unasked_checks(const Assessment& assessment) {
  List list;
  std::vector<std::vector<std::string>> done;
  for (const Unasked& first : assessment.unasked) {
    if (std::find(done.begin(), done.end(), first.entries) != done.end()) continue;
    done.push_back(first.entries);
    std::vector<std::string> titles;
    for (const Unasked& one : assessment.unasked) {
      if (one.entries == first.entries) titles.emplace_back(report_texts::title_of(one.check));
    }
    const std::string checks = joined(titles, "; ");
    list.items.emplace_back(say("finding.unasked", {{"check", checks}, {"entries", joined(first.entries, ", ")}}));
  }
  return list;
}

/// Checks that nothing in the case asks for: how many, and their subjects, each once.
std::string checks_not_asked_for(const Assessment& assessment) {
  std::vector<std::string> subjects;
  int count = 0;
  for (const Check check : assessment.not_examined) {
    const auto same = [check](const Unasked& unasked) { return unasked.check == check; };
    if (std::any_of(assessment.unasked.begin(), assessment.unasked.end(), same)) continue;
    ++count;
    const std::string subject(report_texts::subject_of(check));
    if (std::find(subjects.begin(), subjects.end(), subject) == subjects.end()) subjects.push_back(subject);
  }
  if (count == 0) return "";
  return say("finding.do_not_apply", {{"n", std::to_string(count)}, {"subjects", joined(subjects, "; ")}});
}

void add_not_examined(Page& page, const Assessment& assessment) {
  page.add(Heading{1, say("heading.not_examined")});
  List unasked = unasked_checks(assessment);
  if (!unasked.items.empty()) page.add(Paragraph{say("finding.to_be_examined")});
  if (!unasked.items.empty()) page.add(std::move(unasked));
  const std::string others = checks_not_asked_for(assessment);
  if (!others.empty()) page.add(Paragraph{others});
  page.add(Paragraph{say("report.never_examined")});
}

} // namespace

std::vector<Entry> entries_to_state(const Assessment& assessment) {
  std::vector<Entry> entries;
  for (const Finding* finding : rendering::with_status(assessment, Status::not_known)) {
    for (const std::string& path : finding->missing) {
      const auto same =
          std::find_if(entries.begin(), entries.end(), [&](const Entry& entry) { return entry.path == path; });
      if (same == entries.end()) {
        entries.push_back({path, std::string(case_document::meaning_of_entry(path)), 1});
      } else {
        ++same->waiting;
      }
    }
  }
  std::stable_sort(entries.begin(), entries.end(),
                   [](const Entry& a, const Entry& b) { return a.waiting > b.waiting; });
  return entries;
}

std::string counts_text(const Assessment& assessment) {
  const std::string checks = say_count(assessment.findings.size(), "count.check.one", "count.check.many");
  const std::string unknown = std::to_string(assessment.count(Status::not_known));
  switch (assessment.verdict()) {
  case Status::stop:
    return say(
        assessment.count(Status::not_known) > 0 ? "headline.stop_and_unknown" : "headline.stop",
        {{"objections", say_count(assessment.count(Status::stop), "count.objection.one", "count.objection.many")},
         {"checks", checks},
         {"unknown", unknown}});
  case Status::not_known: return say("headline.not_known", {{"unknown", unknown}, {"checks", checks}});
  case Status::caution:
    return say("headline.caution",
               {{"checks", checks},
                {"cautions", say_count(assessment.count(Status::caution), "count.caution.one", "count.caution.many")}});
  case Status::ok: break;
  }
  return say("headline.ok", {{"checks", checks}});
}

std::string verdict_text(const Assessment& assessment) {
  std::string text = counts_text(assessment);
  if (assessment.verdict() > Status::caution) return text;
  // A pass that rests on remembered limits says so in its first line.
  text += " " + say("report.not_all");
  return assessment.rests_on_memory() ? text + " " + say("report.memory") : text;
}

Table findings_table(const std::vector<const Finding*>& findings, UnitStyle style) {
  Table table{"",
              {{say("column.check")},
               {say("column.status")},
               {say("column.value"), Align::right},
               {say("column.limit")},
               {say("column.room"), Align::right}},
              {}};
  for (const Finding* finding : findings) {
    // Room to a limit would read like an answer where there is none.
    const bool judged = finding->status != Status::not_known;
    table.rows.push_back({title_of(*finding), finding->status, rendering::value_text(*finding, style),
                          rendering::limit_text(*finding, style), judged ? rendering::room_text(*finding) : ""});
  }
  return table;
}

FindingBlock finding_block(Page& page, const Finding& finding, UnitStyle style) {
  FindingBlock block;
  block.status = finding.status;
  const std::set<std::size_t> notes = notes_of(page, finding);
  block.title = {title_of(finding), {notes.begin(), notes.end()}};
  const std::string figures = rendering::figures_text(finding, style);
  const std::string condition = rendering::condition(finding, style);
  const std::string reason = rendering::sentence(finding.reason, finding, style);
  const bool brief = finding.status == Status::ok; // its figures stand in the table
  if (!brief) {
    block.figures = figures.empty() || condition.empty()
                        ? figures
                        : say("figures.where", {{"figures", figures}, {"condition", condition}});
  }
  const bool with_condition = brief && !condition.empty();
  block.lines.emplace_back(with_condition ? say("finding.worst", {{"reason", reason}, {"condition", condition}})
                                          : reason);
  if (finding.at_high_need) block.lines.emplace_back(say("finding.at_high_need"));
  return block;
}

void add_cautions(Page& page) {
  List list;
  for (std::string& caution : rendering::cautions()) list.items.emplace_back(std::move(caution));
  page.add(Heading{1, say("heading.before")});
  page.add(std::move(list));
}

std::string footer_text(UnitStyle style) {
  return say("page.footer", {{"version", FIELDSHAFT_VERSION_STRING}, {"units", rendering::units_text(style)}});
}

Page page_of(const Assessment& assessment, UnitStyle style) {
  Page page;
  page.title = assessment.title.empty() ? say("assessment.title_of_machines",
                                              {{"tractor", assessment.tractor}, {"implement", assessment.implement}})
                                        : say("assessment.title", {{"case", assessment.title}});
  const std::vector<Entry> entries = entries_to_state(assessment);
  page.add(verdict_block(assessment, style));
  page.add(names_block(assessment));
  add_changes(page, assessment, style);
  // Why it may not run, and the cautions, stand on the first sheet, which is taken to the yard.
  add_findings(page, assessment, Status::stop, {1, say("heading.stop")}, style);
  add_cautions(page);
  add_entries(page, entries);
  add_gears(page, assessment, style);
  add_unknowns(page, assessment, entries, style);
  add_findings(page, assessment, Status::caution, {1, say("heading.caution")}, style);
  // From here on it is to be looked up.
  add_glance(page, assessment, style);
  add_certificate(page, assessment, style);
  add_findings(page, assessment, Status::ok, {1, say("heading.ok")}, style);
  add_not_examined(page, assessment);
  page.footer = footer_text(style);
  return page;
}

} // namespace pages
} // namespace v0
} // namespace fieldshaft
