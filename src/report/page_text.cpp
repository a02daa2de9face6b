// A page as plain text.

#include "report/page.hpp"

#include "report/catalogue.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace pages {
namespace {

constexpr std::size_t page_width = 100;

/// The first `width` characters of a text, in bytes.
std::size_t bytes_of(std::string_view text, std::size_t width) {
  std::size_t at = 0;
  for (std::size_t seen = 0; at < text.size(); ++at) {
    if ((static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U) continue;
    if (seen++ == width) break;
  }
  return at;
}

/// Lines of at most `width` characters, broken between words; a word longer than a line is broken within.
std::vector<std::string> wrapped(const std::string& text, std::size_t width) {
  std::vector<std::string> lines(1);
  const std::string clean = one_line(text);
  for (std::string_view rest = clean; !rest.empty();) {
    std::string_view word = rest.substr(0, rest.find(' '));
    rest.remove_prefix(std::min(rest.size(), word.size() + 1));
    if (!lines.back().empty() && width_of(lines.back()) + 1 + width_of(word) > width) lines.emplace_back();
    while (width_of(word) > width) {
      const std::size_t part = bytes_of(word, width);
      lines.back() = word.substr(0, part);
      word.remove_prefix(part);
      lines.emplace_back();
    }
    lines.back() += (lines.back().empty() ? "" : " ") + std::string(word);
  }
  return lines;
}

std::size_t longest_word(const std::string& text) {
  std::size_t longest = 0;
  const std::string words = one_line(text);
  for (std::size_t at = 0; at < words.size();) {
    const std::size_t end = std::min(words.find(' ', at), words.size());
    longest = std::max(longest, width_of(std::string_view(words).substr(at, end - at)));
    at = end + 1;
  }
  return longest;
}

std::string with_notes(const Line& line) { return line.text + note_marks(line.notes); }

std::string padded(const std::string& text, std::size_t width, Align align) {
  const std::string space(width - std::min(width, width_of(text)), ' ');
  return align == Align::right ? space + text : text + space;
}

std::string cell_text(const Cell& cell) {
  if (!cell.status) return with_notes(cell.line);
  const std::string words = with_notes(cell.line);
  return status_word(*cell.status) + (words.empty() ? "" : " " + words);
}

class TextWriter {
public:
  void operator()(const Verdict& verdict) {
    append("", status_word(verdict.status) + verdict.text);
    for (const Line& line : verdict.lines) append("", with_notes(line));
  }
  void operator()(const Heading& heading) {
    const std::string title = one_line(heading.text);
    space();
    append("", title);
    if (heading.level == 1) append("", std::string(std::min(width_of(title), page_width), '-'));
  }
  void operator()(const Paragraph& paragraph) { append("", with_notes(paragraph.line)); }
  void operator()(const List& list) {
    std::size_t number = 0;
    for (const Line& item : list.items) {
      ++number;
      const std::string mark = list.kind == ListKind::bullets ? "*" : std::to_string(number) + ".";
      append("  " + mark + (list.kind == ListKind::steps ? " [ ] " : " "), with_notes(item));
    }
  }
  void operator()(const Labelled& labelled) {
    std::size_t widest = 0;
    for (const auto& row : labelled.rows) widest = std::max(widest, width_of(row.first));
    space();
    for (const auto& row : labelled.rows)
      append(padded(row.first + ":", widest + 2, Align::left), with_notes(row.second));
  }
  void operator()(const Table& table) {
    space();
    if (!table.caption.empty()) append("", table.caption);
    const std::vector<std::size_t> widths = widths_of(table);
    std::vector<Cell> titles;
    for (const Column& column : table.columns) titles.emplace_back(column.title);
    append_row(table, titles, widths);
    std::string rule;
    for (const std::size_t width : widths) rule += "  " + std::string(width, '-');
    out_ += rule + "\n";
    for (const auto& row : table.rows) append_row(table, row, widths);
    after_table_ = true;
  }
  void operator()(const FindingBlock& finding) {
    append("  * ", with_notes(finding.title));
    if (!finding.figures.empty()) append("    ", finding.figures);
    for (const Line& line : finding.lines) append("    ", with_notes(line));
  }

  void title(const Page& page) {
    space();
    append("", page.title);
  }
  void notes(const Page& page) {
    if (page.notes.empty()) return;
    (*this)(Heading{1, std::string(report_texts::phrase("page.sources"))});
    const std::size_t widest = std::to_string(page.notes.size()).size() + 2;
    for (std::size_t i = 0; i < page.notes.size(); ++i) {
      append("  " + padded("[" + std::to_string(i + 1) + "]", widest, Align::right) + " ", page.notes[i]);
    }
  }
  void footer(const Page& page) {
    if (page.footer.empty()) return;
    space();
    append("", page.footer);
  }
  void space() {
    if (!out_.empty() && (out_.size() < 2 || out_[out_.size() - 2] != '\n')) out_ += "\n";
  }
  std::string take() { return std::move(out_); }

private:
  /// Text wrapped to the page, its first line after `first`, the others after as many spaces.
  void append(const std::string& first, const std::string& text) {
    if (after_table_) space();
    after_table_ = false;
    const std::size_t indent = width_of(first);
    std::string start = first;
    for (const std::string& line : wrapped(text, page_width - indent)) {
      out_ += start + line + "\n";
      start = std::string(indent, ' ');
    }
  }

  /// The width of each column: as its widest cell, the widest columns narrowed until the page holds them. A column is
  /// not narrowed into its words, unless one is longer than half of the page.
  static std::vector<std::size_t> widths_of(const Table& table) {
    std::vector<std::size_t> widths(table.columns.size());
    std::vector<std::size_t> narrowest(table.columns.size());
    const auto fit = [&](std::size_t i, const std::string& text) {
      widths[i] = std::max(widths[i], width_of(text));
      narrowest[i] = std::max(narrowest[i], std::min(longest_word(text), page_width / 2));
    };
    for (std::size_t i = 0; i < table.columns.size(); ++i) fit(i, table.columns[i].title);
    for (const auto& row : table.rows) {
      for (std::size_t i = 0; i < row.size(); ++i) fit(i, cell_text(row[i]));
    }
    std::size_t all = 0;
    for (const std::size_t width : widths) all += 2 + width;
    for (; all > page_width; --all) {
      const std::size_t widest = widest_above(widths, narrowest);
      if (widest == widths.size()) break;
      --widths[widest];
    }
    return widths;
  }

  /// The widest column that is wider than its longest word; the number of columns where none is.
  static std::size_t widest_above(const std::vector<std::size_t>& widths, const std::vector<std::size_t>& narrowest) {
    std::size_t widest = widths.size();
    for (std::size_t i = 0; i < widths.size(); ++i) {
      if (widths[i] > narrowest[i] && (widest == widths.size() || widths[i] > widths[widest])) widest = i;
    }
    return widest;
  }

  void append_row(const Table& table, const std::vector<Cell>& row, const std::vector<std::size_t>& widths) {
    std::vector<std::vector<std::string>> cells;
    std::size_t height = 1;
    for (std::size_t i = 0; i < row.size(); ++i) {
      cells.push_back(wrapped(cell_text(row[i]), widths[i]));
      height = std::max(height, cells.back().size());
    }
    for (std::size_t at = 0; at < height; ++at) {
      std::string line;
      for (std::size_t i = 0; i < cells.size(); ++i) {
        line += "  " + padded(at < cells[i].size() ? cells[i][at] : "", widths[i], table.columns[i].align);
      }
      out_ += line.substr(0, line.find_last_not_of(' ') + 1) + "\n";
    }
  }

  std::string out_;
  bool after_table_ = false;
};

} // namespace

std::string text_of(const Page& page) {
  TextWriter writer;
  // The title stands first, but after the verdict where the page has one: that is what a reader looks for.
  const bool verdict_first = !page.blocks.empty() && std::holds_alternative<Verdict>(page.blocks.front());
  if (!verdict_first) writer(Paragraph{page.title});
  for (const Block& block : page.blocks) {
    std::visit(writer, block);
    if (verdict_first && &block == &page.blocks.front()) writer.title(page);
  }
  writer.notes(page);
  writer.footer(page);
  return writer.take();
}

} // namespace pages
} // namespace v0
} // namespace fieldshaft
