// Words of every page: its language, the words for a status, the headings that all kinds of page share.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"page.language", "en"}, // as a tag of BCP 47
    Phrase{"page.sources", "Where the limits come from"},
    Phrase{"page.footer", "fieldshaft {version}. {units}. Limits are limits, not permissions."},
    Phrase{"units.metric", "Metric units"},
    Phrase{"units.us", "US customary units"},
    Phrase{"word.ok", "NO OBJECTION"},
    Phrase{"word.caution", "CAUTION"},
    Phrase{"word.not_known", "NOT KNOWN"},
    Phrase{"word.stop", "STOP"},
    // How sure a datum is.
    Phrase{"standing.exact", "exact"},
    Phrase{"standing.given", "given"},
    Phrase{"standing.published", "published"},
    Phrase{"standing.textbook", "textbook example"},
    Phrase{"standing.quoted", "published (quoted elsewhere)"},
    Phrase{"standing.common_practice", "common practice, no source"},
    Phrase{"standing.from_memory", "from memory, verify"},
};

} // namespace

Phrases page_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
