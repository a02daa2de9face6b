#pragma once
// A page as a person reads it: built once for each kind of result, written as plain text, Markdown or HTML.
//
// A page holds plain text only. Each form escapes it in its own way; a builder never writes markup.

#include <fieldshaft/assess/finding.hpp>

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace pages {

/// A text with the numbers of the notes that it rests on: those that Page::note gave.
struct Line {
  std::string text;
  std::vector<std::size_t> notes;

  Line() = default;
  Line(const char* words) : text(words) {}            // NOLINT(google-explicit-constructor): a line is a text
  Line(std::string words) : text(std::move(words)) {} // NOLINT(google-explicit-constructor)
  Line(std::string_view words) : text(words) {}       // NOLINT(google-explicit-constructor)
  Line(std::string words, std::vector<std::size_t> rests_on) : text(std::move(words)), notes(std::move(rests_on)) {}
};

/// The first thing that a reader sees: sign and word of the verdict with what follows it, and what it means below it.
struct Verdict {
  Status status = Status::not_known;
  std::string text; ///< directly after the word: ": 2 objections in 30 checks.", " in 30 checks."
  std::vector<Line> lines;
};

/// Level 1 starts a part of the page, level 2 a part of that. The page's own title stands above both.
struct Heading {
  int level = 1;
  std::string text;
  bool new_sheet = false; ///< on paper: what follows is to be looked up, and stays apart from what is to be done
};

struct Paragraph {
  Line line;
};

enum class ListKind {
  bullets,
  numbered, ///< in the order of their weight
  steps,    ///< to be done in this order; each with a box to tick on paper
};

struct List {
  ListKind kind = ListKind::bullets;
  std::vector<Line> items;
};

/// Rows of a name and what it says: "Tractor: ...".
struct Labelled {
  std::vector<std::pair<std::string, Line>> rows;
};

/// A cell of a table; with a status it shows the sign and the word of it before its own text.
struct Cell {
  Line line;
  std::optional<Status> status;

  Cell() = default;
  Cell(const char* words) : line(words) {}            // NOLINT(google-explicit-constructor): a cell is a line
  Cell(std::string words) : line(std::move(words)) {} // NOLINT(google-explicit-constructor)
  Cell(Line words) : line(std::move(words)) {}        // NOLINT(google-explicit-constructor)
  Cell(Status shown) : status(shown) {}               // NOLINT(google-explicit-constructor)
  Cell(Status shown, Line words) : line(std::move(words)), status(shown) {}
};

enum class Align {
  left,
  right,
  blank, ///< room to write on paper
};

struct Column {
  std::string title;
  Align align = Align::left;
};

/// Every row has as many cells as there are columns. The first column names the row.
struct Table {
  std::string caption; ///< may be empty
  std::vector<Column> columns;
  std::vector<std::vector<Cell>> rows;
};

/// One finding: sign and word of its status, its title with its notes, its figures, and what it means.
struct FindingBlock {
  Status status = Status::not_known;
  Line title;
  std::string figures; ///< may be empty
  std::vector<Line> lines;
};

using Block = std::variant<Verdict, Heading, Paragraph, List, Labelled, Table, FindingBlock>;

struct Page {
  std::string title;
  std::vector<Block> blocks;
  std::vector<std::string> notes; ///< sources, printed under a heading of their own at the end
  std::string footer;             ///< one line below everything

  /// The number of a note, from 1; the same text has the same number throughout the page.
  std::size_t note(const std::string& text);

  template <class B> void add(B block) { blocks.emplace_back(std::move(block)); }
};

/// At most 100 characters wide.
std::string text_of(const Page& page);

/// CommonMark with pipe tables.
std::string markdown_of(const Page& page);

/// One HTML document that needs nothing beside it: no script, no picture file, no font. It is well-formed XML too.
std::string html_of(const Page& page);

/// The word for a status as a page shows it: "STOP".
std::string status_word(Status status);

/// One line of valid UTF-8: line ends, tabs and control characters become spaces, broken bytes U+FFFD.
std::string one_line(std::string_view text);

/// Number of characters that a reader sees: bytes that continue a UTF-8 character do not count.
std::size_t width_of(std::string_view text);

/// " [1, 4]"; empty without notes.
std::string note_marks(const std::vector<std::size_t>& notes);

} // namespace pages
} // namespace v0
} // namespace fieldshaft
