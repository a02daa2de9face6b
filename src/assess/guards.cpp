// Shields, guards and adaptors: absent stops the job, unstated is not known.

#include "assess/checks.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

constexpr Source guarding_rule{"29 CFR 1928.57(b)(1): all PTO shafts guarded; master shield on the tractor; PTO-driven "
                               "equipment guarded against contact with rotating parts (read in the state copies of it)",
                               Standing::published};
constexpr Source full_length_rule{"guidance of a government safety body on entanglement: the shaft enclosed along its "
                                  "full length from the tractor to the first bearing on the machine",
                                  Standing::published};
constexpr Source adaptor_rule{"driveline trade association design guide, quoting international safety standards: no "
                              "device such as an adaptor between the tractor's PTO shaft and the driveline",
                              Standing::quoted};

struct GuardWords {
  const char* present;
  const char* damaged;
  const char* absent;
  const char* unstated;
  const char* advice;
};

void check_guard(Check check, const Stated<GuardState>& state, const char* path, const GuardWords& words, Source source,
                 Findings& findings) {
  if (!state) {
    findings.add(not_known(check, words.unstated, {path}));
    return;
  }
  Finding finding = make_finding(check, Status::stop, words.absent);
  if (*state == GuardState::present) finding = make_finding(check, Status::ok, words.present);
  if (*state == GuardState::damaged) finding.reason = words.damaged;
  if (*state != GuardState::present) finding.advice = {words.advice};
  finding.basis = {source};
  findings.add(std::move(finding));
}

} // namespace

void check_guards(const Case& value, Findings& findings) {
  check_guard(Check::master_shield, value.tractor.pto.master_shield, "tractor.pto.master_shield",
              {"guard.master.present", "guard.master.damaged", "guard.master.absent", "guard.master.unstated",
               "guard.master.refit"},
              guarding_rule, findings);
  check_guard(Check::driveline_guard, value.driveline.guard, "driveline.guard",
              {"guard.driveline.present", "guard.driveline.damaged", "guard.driveline.absent",
               "guard.driveline.unstated", "guard.driveline.refit"},
              full_length_rule, findings);
  check_guard(
      Check::input_guard, value.implement.input.guard, "implement.input.guard",
      {"guard.input.present", "guard.input.damaged", "guard.input.absent", "guard.input.unstated", "guard.input.refit"},
      guarding_rule, findings);
}

void check_adaptor(const Case& value, Findings& findings) {
  const auto& adaptor = value.driveline.adaptor;
  if (!adaptor) {
    findings.add(not_known(Check::adaptor, "adaptor.unstated", {"driveline.adaptor"}));
    return;
  }
  Finding finding = make_finding(Check::adaptor, Status::ok, "adaptor.none");
  if (adaptor->present) {
    finding = make_finding(Check::adaptor, Status::stop, "adaptor.fitted");
    finding.advice = {"adaptor.remove"};
  }
  finding.basis = {adaptor_rule};
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
