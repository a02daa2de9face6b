// A page as Markdown: CommonMark with pipe tables.

#include "report/page.hpp"

#include "report/catalogue.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace pages {
namespace {

/// A text within a line, in which no character is markup.
std::string escaped_within(const std::string& text) {
  std::string out;
  for (const char c : one_line(text)) {
    if (std::string_view("\\`*_[]<>|~&$#").find(c) != std::string_view::npos) out += '\\';
    out += c;
  }
  return out;
}

/// A text that may start a line, where further characters make lists, headings, rules and numbered lists.
std::string escaped(const std::string& text) {
  std::string out = escaped_within(text);
  if (!out.empty() && std::string_view("+-=:").find(out[0]) != std::string_view::npos) return "\\" + out;
  const std::size_t dot = std::min(out.find_first_not_of("0123456789"), out.size());
  const bool counts = dot > 0 && dot < out.size() && (out[dot] == '.' || out[dot] == ')');
  if (counts && (dot + 1 == out.size() || out[dot + 1] == ' ')) out.insert(dot, "\\");
  return out;
}

/// A text that goes on after a word.
std::string escaped_after(const std::string& text) {
  return (text.rfind(' ', 0) == 0 ? " " : "") + escaped_within(text);
}

std::string marks(const std::vector<std::size_t>& notes) {
  std::string text;
  for (const std::size_t note : notes) text += (text.empty() ? " \\[" : ", ") + std::to_string(note);
  return text.empty() ? text : text + "\\]";
}

std::string within_line(const Line& line) { return escaped_within(line.text) + marks(line.notes); }
std::string with_notes(const Line& line) { return escaped(line.text) + marks(line.notes); }

std::string cell_text(const Cell& cell) {
  std::string words = within_line(cell.line);
  if (!cell.status) return words;
  return "**" + escaped(status_word(*cell.status)) + "**" + (words.empty() ? "" : " " + words);
}

class MarkdownWriter {
public:
  void operator()(const Verdict& verdict) {
    out_ += "\n> **" + escaped(status_word(verdict.status)) + "**" + escaped_after(verdict.text) + "\n";
    for (const Line& line : verdict.lines) out_ += ">\n> " + with_notes(line) + "\n";
  }
  void operator()(const Heading& heading) {
    out_ += "\n" + std::string(static_cast<std::size_t>(heading.level) + 1, '#') + " " + escaped(heading.text) + "\n";
  }
  void operator()(const Paragraph& paragraph) { out_ += "\n" + with_notes(paragraph.line) + "\n"; }
  void operator()(const List& list) {
    other_list_ = !other_list_; // another mark than the list before, so that the two stay apart
    out_ += "\n";
    std::size_t number = 0;
    for (const Line& item : list.items) {
      ++number;
      const std::string counted = std::to_string(number) + (other_list_ ? ". " : ") ");
      out_ += list.kind == ListKind::bullets ? std::string(other_list_ ? "- " : "* ") : counted;
      out_ += (list.kind == ListKind::steps ? "[ ] " : "") + with_notes(item) + "\n";
    }
  }
  void operator()(const Labelled& labelled) {
    std::string rows;
    for (const auto& [name, line] : labelled.rows) {
      rows += (rows.empty() ? "\n" : "\\\n") + ("**" + escaped(name) + ":** ") + within_line(line);
    }
    if (!rows.empty()) out_ += rows + "\n";
  }
  void operator()(const Table& table) {
    if (!table.caption.empty()) out_ += "\n*" + escaped(table.caption) + "*\n";
    std::string titles = "|";
    std::string rule = "|";
    for (const Column& column : table.columns) {
      titles += " " + escaped(column.title) + " |";
      rule += column.align == Align::right ? " ---: |" : " --- |";
    }
    out_ += "\n" + titles + "\n" + rule + "\n";
    for (const auto& row : table.rows) {
      out_ += "|";
      for (const Cell& cell : row) out_ += " " + cell_text(cell) + " |";
      out_ += "\n";
    }
  }
  void operator()(const FindingBlock& finding) {
    out_ += "\n**" + escaped(finding.title.text) + "**" + marks(finding.title.notes) + "\n";
    if (!finding.figures.empty()) out_ += "\n" + escaped(finding.figures) + "\n";
    for (const Line& line : finding.lines) out_ += "\n" + with_notes(line) + "\n";
  }

  void notes(const Page& page) {
    if (page.notes.empty()) return;
    (*this)(Heading{1, std::string(report_texts::phrase("page.sources"))});
    out_ += "\n";
    std::size_t number = 0;
    for (const std::string& note : page.notes) out_ += std::to_string(++number) + ". " + escaped(note) + "\n";
  }
  void footer(const Page& page) {
    if (!page.footer.empty()) out_ += "\n---\n\n" + escaped(page.footer) + "\n";
  }
  std::string take() { return std::move(out_); }

private:
  std::string out_;
  bool other_list_ = false;
};

} // namespace

std::string markdown_of(const Page& page) {
  MarkdownWriter writer;
  for (const Block& block : page.blocks) std::visit(writer, block);
  writer.notes(page);
  writer.footer(page);
  return "# " + escaped(page.title) + "\n" + writer.take();
}

} // namespace pages
} // namespace v0
} // namespace fieldshaft
