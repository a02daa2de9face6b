// Shields and guards put back.

#include "advise/proposals.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace advising {

namespace {

void propose_cap(Proposals& proposals) {
  add(proposals, {ChangeKind::refit_guard,
                  "other_stub",
                  {assessing::fact("guard", PhraseId{"change.guard.other_stub"})},
                  [](Case& c) { c.tractor.pto.other_stub_cap = GuardState::present; }});
}

} // namespace

void propose_guards(const Situation&, const Finding& finding, Proposals& proposals) {
  if (finding.check == Check::master_shield && !finding.part.empty()) {
    propose_cap(proposals);
    return;
  }
  switch (finding.check) {
  case Check::master_shield:
    add(proposals,
        {ChangeKind::refit_guard, "master", {assessing::fact("guard", PhraseId{"change.guard.master"})}, [](Case& c) {
           c.tractor.pto.master_shield = GuardState::present;
         }});
    break;
  case Check::driveline_guard:
    add(proposals, {ChangeKind::refit_guard,
                    "driveline",
                    {assessing::fact("guard", PhraseId{"change.guard.driveline"})},
                    [](Case& c) { c.driveline.guard = GuardState::present; }});
    break;
  case Check::input_guard:
    add(proposals,
        {ChangeKind::refit_guard, "input", {assessing::fact("guard", PhraseId{"change.guard.input"})}, [](Case& c) {
           c.implement.input.guard = GuardState::present;
         }});
    break;
  default: break;
  }
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
