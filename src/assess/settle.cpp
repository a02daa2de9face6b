#include "assess/settle.hpp"

#include <algorithm>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

bool advises(const Finding& finding, std::string_view id) {
  return std::any_of(finding.advice.begin(), finding.advice.end(), [&](const char* advice) { return id == advice; });
}

double amount_in(const Finding& finding, std::string_view name) {
  for (const Fact& fact : finding.facts) {
    if (name == fact.name) return std::get<Amount>(fact.value).si;
  }
  return 0.0;
}

} // namespace

void settle_lengths(Assessment& assessment) {
  const Finding* cut = assessment.find(Check::cut_list);
  if (cut == nullptr || cut->advice.empty()) return;
  for (Finding& finding : assessment.findings) {
    const bool of_members = finding.check == Check::overlap || finding.check == Check::clearance;
    const bool of_guard = finding.check == Check::guard_tubes && advises(finding, "guard_tubes.cut") &&
                          advises(*cut, "cut.by_this_much") && amount_in(finding, "cut") <= amount_in(*cut, "cut");
    if (of_members || of_guard) finding.advice.clear();
  }
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
