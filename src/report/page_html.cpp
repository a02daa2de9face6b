// A page as one HTML document.

#include "report/page.hpp"

#include "report/catalogue.hpp"
#include "report/page_sign.hpp"
#include "report/page_style.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace pages {
namespace {

/// A text in which no character is markup, neither between tags nor within an attribute.
std::string escaped(std::string_view text) {
  std::string out;
  for (const char c : one_line(text)) {
    switch (c) {
    case '&': out += "&amp;"; break;
    case '<': out += "&lt;"; break;
    case '>': out += "&gt;"; break;
    case '"': out += "&quot;"; break;
    case '\'': out += "&#39;"; break;
    default: out += c;
    }
  }
  return out;
}

/// A text that goes on after a word.
std::string escaped_after(const std::string& text) { return (text.rfind(' ', 0) == 0 ? " " : "") + escaped(text); }

std::string element(const std::string& tag, const std::string& content) {
  return "<" + tag + ">" + content + "</" + tag.substr(0, tag.find(' ')) + ">";
}

std::string sign(Status status) {
  return std::string(R"(<svg xmlns="http://www.w3.org/2000/svg" class="sign" viewBox="0 0 24 24" )") +
         R"(stroke="currentColor" aria-hidden="true">)" + sign_drawing(status) + "</svg>";
}

std::string signed_word(Status status) {
  return sign(status) + element("span class=\"word\"", escaped(status_word(status)));
}

std::string marks(const std::vector<std::size_t>& notes) {
  std::string links;
  for (const std::size_t note : notes) {
    const std::string number = std::to_string(note);
    if (!links.empty()) links += ", ";
    links += element("a href=\"#note-" + number + "\"", number);
  }
  return links.empty() ? links : " " + element("span class=\"note\"", "[" + links + "]");
}

std::string with_notes(const Line& line) { return escaped(line.text) + marks(line.notes); }

class HtmlWriter {
public:
  void operator()(const Verdict& verdict) {
    close_findings();
    out_ += std::string("<div class=\"verdict ") + status_name(verdict.status) + "\">\n";
    out_ += element("p class=\"head\"", signed_word(verdict.status) + escaped_after(verdict.text)) + "\n";
    for (const Line& line : verdict.lines) out_ += element("p", with_notes(line)) + "\n";
    out_ += "</div>\n";
  }
  void operator()(const Heading& heading) {
    close_findings();
    level_ = heading.level + 1;
    const std::string tag = "h" + std::to_string(level_) + (heading.new_sheet ? " class=\"sheet\"" : "");
    out_ += element(tag, escaped(heading.text)) + "\n";
  }
  void operator()(const Paragraph& paragraph) {
    close_findings();
    out_ += element("p", with_notes(paragraph.line)) + "\n";
  }
  void operator()(const List& list) {
    close_findings();
    if (list.items.empty()) return; // a list without items is not allowed to readers' aids
    const bool steps = list.kind == ListKind::steps;
    const std::string tag = list.kind == ListKind::bullets ? "ul" : steps ? "ol class=\"steps\"" : "ol";
    std::string items = "\n";
    for (const Line& item : list.items) {
      items += element("li", (steps ? "<span class=\"box\"></span>" : "") + with_notes(item)) + "\n";
    }
    out_ += element(tag, items) + "\n";
  }
  void operator()(const Labelled& labelled) {
    close_findings();
    if (labelled.rows.empty()) return;
    std::string rows = "\n";
    for (const auto& [name, line] : labelled.rows) {
      rows += element("dt", escaped(name)) + element("dd", with_notes(line)) + "\n";
    }
    out_ += element("dl", rows) + "\n";
  }
  void operator()(const Table& table) {
    close_findings();
    std::string head;
    for (const Column& column : table.columns) {
      const char* const attribute = column.align == Align::right   ? " class=\"right\""
                                    : column.align == Align::blank ? " class=\"blank\""
                                                                   : "";
      head += element(std::string("th scope=\"col\"") + attribute, escaped(column.title));
    }
    std::string body = "\n";
    for (const auto& row : table.rows) body += table_row(table, row);
    out_ += "<div class=\"scroll\">\n<table>\n";
    if (!table.caption.empty()) out_ += element("caption", escaped(table.caption)) + "\n";
    out_ += element("thead", element("tr", head)) + "\n" + element("tbody", body) + "\n</table>\n</div>\n";
  }
  void operator()(const FindingBlock& finding) {
    if (!in_findings_) out_ += "<div class=\"findings\">\n";
    in_findings_ = true;
    const std::string title = signed_word(finding.status) + " " + with_notes(finding.title);
    std::string content = "\n" + element("h" + std::to_string(level_ + 1), title) + "\n";
    if (!finding.figures.empty()) content += element("p class=\"figures\"", escaped(finding.figures)) + "\n";
    for (const Line& line : finding.lines) content += element("p", with_notes(line)) + "\n";
    out_ += element(std::string("section class=\"finding ") + status_name(finding.status) + "\"", content) + "\n";
  }

  void notes(const Page& page) {
    close_findings();
    if (page.notes.empty()) return;
    std::string items = "\n";
    std::size_t number = 0;
    for (const std::string& note : page.notes) {
      items += element("li id=\"note-" + std::to_string(++number) + "\"", escaped(note)) + "\n";
    }
    const std::string title = element("h2", escaped(report_texts::phrase("page.sources")));
    out_ += element("section class=\"notes\"", "\n" + title + "\n" + element("ol", items) + "\n") + "\n";
  }
  std::string take() { return std::move(out_); }

private:
  static std::string table_row(const Table& table, const std::vector<Cell>& row) {
    std::string cells;
    std::string status;
    for (std::size_t i = 0; i < row.size(); ++i) {
      const Cell& cell = row[i];
      const std::string words = with_notes(cell.line);
      const bool right = table.columns[i].align == Align::right;
      std::string content = words;
      std::string classes = right ? "right" : "";
      if (cell.status) {
        content = signed_word(*cell.status) + (words.empty() ? "" : " " + words);
        classes = std::string(right ? "right " : "") + "state " + status_name(*cell.status);
      }
      const std::string attribute = classes.empty() ? "" : " class=\"" + classes + "\"";
      cells += element((i == 0 ? "th scope=\"row\"" : "td") + attribute, content);
    }
    return element("tr", cells) + "\n";
  }

  /// Findings that follow each other stand in one frame.
  void close_findings() {
    if (in_findings_) out_ += "</div>\n";
    in_findings_ = false;
  }

  std::string out_;
  int level_ = 1;
  bool in_findings_ = false;
};

} // namespace

std::string html_of(const Page& page) {
  HtmlWriter writer;
  for (const Block& block : page.blocks) std::visit(writer, block);
  writer.notes(page);
  std::string out = "<!DOCTYPE html>\n<html lang=\"" + escaped(report_texts::phrase("page.language")) +
                    "\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n<meta charset=\"utf-8\"/>\n"
                    "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n";
  out += element("title", escaped(page.title)) + "\n" + element("style", page_style) + "\n</head>\n<body>\n";
  const std::string title = element("h1", escaped(page.title)) + "\n";
  out += element("main", "\n" + title + writer.take()) + "\n";
  if (!page.footer.empty()) out += element("footer", element("p", escaped(page.footer))) + "\n";
  return out + "</body>\n</html>\n";
}

} // namespace pages
} // namespace v0
} // namespace fieldshaft
