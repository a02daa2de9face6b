#pragma once
// An assessment as a page, and the parts of it that pages of other results share.

#include "report/page.hpp"

#include <fieldshaft/assess/finding.hpp>
#include <fieldshaft/units/table.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace pages {

Page page_of(const Assessment& assessment, UnitStyle style);

/// What follows the word of the verdict on any page: ": 2 objections in 30 checks. ...".
std::string counts_text(const Assessment& assessment);

/// The same on the assessment's own page, where the first line says too what the verdict rests on.
std::string verdict_text(const Assessment& assessment);

/// An entry of the case that is not stated, what it means, and how many checks wait for it.
struct Entry {
  std::string path;
  std::string meaning;
  std::size_t waiting = 0;
};

/// Entries that are not stated, those first for which most checks wait.
std::vector<Entry> entries_to_state(const Assessment& assessment);

/// Check, status, value, limit and room of each finding.
Table findings_table(const std::vector<const Finding*>& findings, UnitStyle style);

/// A finding with its figures, its reason and the notes that it rests on, which are added to the page.
FindingBlock finding_block(Page& page, const Finding& finding, UnitStyle style);

/// The usual cautions under their heading.
void add_cautions(Page& page);

/// Version and units.
std::string footer_text(UnitStyle style);

} // namespace pages
} // namespace v0
} // namespace fieldshaft
