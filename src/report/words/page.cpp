// Words of every page: its language, the words for a status, the headings that all kinds of page share.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"page.language", "en"}, // as a tag of BCP 47
    Phrase{"page.sources", "WHERE THE LIMITS COME FROM"},
    Phrase{"word.ok", "NO OBJECTION"},
    Phrase{"word.caution", "CAUTION"},
    Phrase{"word.not_known", "NOT KNOWN"},
    Phrase{"word.stop", "STOP"},
};

} // namespace

Phrases page_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
