#include "report/catalogue.hpp"

#include "report/words/words.hpp"

#include <unordered_map>

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

using Index = std::unordered_map<std::string_view, std::string_view>;

Index index_of_all_words() {
  Index index;
  for (const Phrases theme :
       {speed_words(), fit_words(), power_words(), gears_words(), strength_words(), driveline_words(), drawbar_words(),
        geometry_words(), certificate_words(), rotor_words(), vibration_words(), start_words(), guards_words(),
        report_words(), page_words(), assessment_words(), remedies_words(), changeover_words(), farm_words()}) {
    for (const Phrase& phrase : theme) index.emplace(phrase.id, phrase.text);
  }
  return index;
}

} // namespace

std::string_view phrase(std::string_view id) noexcept {
  static const Index index = index_of_all_words();
  const auto found = index.find(id);
  return found == index.end() ? std::string_view() : found->second;
}

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
