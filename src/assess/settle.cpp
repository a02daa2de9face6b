#include "assess/settle.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// Whether a cut of the members comes with what is to be done to the guard tubes.
bool says_of_guards(const Finding& cut) {
  constexpr std::array<std::string_view, 6> orders{"cut.by_this_much",  "cut.guards_own",
                                                   "cut.guards_stay",   "cut.guards_by_looser_rules",
                                                   "cut.guards_others", "cut.guards_unstated"};
  return std::any_of(cut.advice.begin(), cut.advice.end(), [&](std::string_view advice) {
    return std::find(orders.begin(), orders.end(), advice) != orders.end();
  });
}

} // namespace

void settle_lengths(Assessment& assessment) {
  const Finding* cut = assessment.find(Check::cut_list);
  if (cut == nullptr || cut->advice.empty()) return;
  for (Finding& finding : assessment.findings) {
    const bool of_members = finding.check == Check::overlap || finding.check == Check::clearance;
    const bool of_guard = finding.check == Check::guard_tubes && says_of_guards(*cut);
    if (of_members || of_guard) finding.advice.clear();
  }
}

void settle_turn(Assessment& assessment) {
  const auto objects = [](const Finding& finding) {
    const bool asked = finding.check == Check::speed_variation || finding.check == Check::chain_variation ||
                       finding.check == Check::root_torsion_at_angle || finding.check == Check::pulsing_torque;
    const bool there = finding.state == MachineState::turning || finding.state == MachineState::any;
    return asked && there && (finding.status == Status::caution || finding.status == Status::stop);
  };
  if (std::none_of(assessment.findings.begin(), assessment.findings.end(), objects)) return;
  for (Finding& finding : assessment.findings) {
    if (finding.check != Check::turn_limit) continue;
    for (Fact& one : finding.facts) {
      if (std::string_view(one.name) == "others") one.value = PhraseId{"turn.others.object"};
    }
  }
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
