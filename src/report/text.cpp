// An assessment in the forms for people.

#include <fieldshaft/report/report.hpp>

#include "report/assessment_page.hpp"

namespace fieldshaft {
inline namespace v0 {

std::string to_text(const Assessment& assessment, UnitStyle style) {
  return pages::text_of(pages::page_of(assessment, style));
}

std::string to_markdown(const Assessment& assessment, UnitStyle style) {
  return pages::markdown_of(pages::page_of(assessment, style));
}

std::string to_html(const Assessment& assessment, UnitStyle style) {
  return pages::html_of(pages::page_of(assessment, style));
}

} // namespace v0
} // namespace fieldshaft
