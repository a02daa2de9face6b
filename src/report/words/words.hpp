#pragma once
// The phrases of the catalogue, one file for each theme.

#include <iterator>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {

struct Phrase {
  std::string_view id;
  std::string_view text;
};

/// The phrases of one theme.
struct Phrases {
  const Phrase* first;
  const Phrase* last;
  constexpr const Phrase* begin() const noexcept { return first; }
  constexpr const Phrase* end() const noexcept { return last; }
};

Phrases speed_words() noexcept;
Phrases fit_words() noexcept;
Phrases power_words() noexcept;
Phrases gears_words() noexcept;
Phrases strength_words() noexcept;
Phrases driveline_words() noexcept;
Phrases drawbar_words() noexcept;
Phrases vibration_words() noexcept;
Phrases rotor_words() noexcept;
Phrases start_words() noexcept;
Phrases guards_words() noexcept;
Phrases remedies_words() noexcept;
Phrases changeover_words() noexcept;
Phrases farm_words() noexcept;
Phrases geometry_words() noexcept;
Phrases certificate_words() noexcept;
Phrases report_words() noexcept;
Phrases page_words() noexcept;
Phrases assessment_words() noexcept;

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
