// Shields, guards and adaptors: absent stops the job, unstated is not known.

#include "assess/checks.hpp"

#include <algorithm>

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

Finding guard_finding(Check check, const Stated<GuardState>& state, const char* path, const GuardWords& words,
                      Source source) {
  if (!state) return not_known(check, words.unstated, {path});
  Finding finding = make_finding(check, Status::stop, words.absent);
  if (*state == GuardState::present) finding = make_finding(check, Status::ok, words.present);
  if (*state == GuardState::damaged) finding.reason = words.damaged;
  if (*state != GuardState::present) finding.advice = {words.advice};
  finding.basis = {source};
  return finding;
}

void check_guard(Check check, const Stated<GuardState>& state, const char* path, const GuardWords& words, Source source,
                 Findings& findings) {
  findings.add(guard_finding(check, state, path, words, source));
}

/// Where two stubs stand out the one that is not in use turns bare beside the driveline.
void check_other_stub(const Case& value, Findings& findings) {
  if (value.tractor.pto.arrangement != StubArrangement::two_stubs_out) return;
  Finding finding = guard_finding(Check::master_shield, value.tractor.pto.other_stub_cap, "tractor.pto.other_stub_cap",
                                  {"guard.other_stub.present", "guard.other_stub.damaged", "guard.other_stub.absent",
                                   "guard.other_stub.unstated", "guard.other_stub.refit"},
                                  guarding_rule);
  finding.part = "other stub";
  findings.add(std::move(finding));
}

} // namespace

void check_guards(const Case& value, Findings& findings) {
  check_guard(Check::master_shield, value.tractor.pto.master_shield, "tractor.pto.master_shield",
              {"guard.master.present", "guard.master.damaged", "guard.master.absent", "guard.master.unstated",
               "guard.master.refit"},
              guarding_rule, findings);
  check_other_stub(value, findings);
  check_guard(Check::driveline_guard, value.driveline.guard, "driveline.guard",
              {"guard.driveline.present", "guard.driveline.damaged", "guard.driveline.absent",
               "guard.driveline.unstated", "guard.driveline.refit"},
              full_length_rule, findings);
  check_guard(
      Check::input_guard, value.implement.input.guard, "implement.input.guard",
      {"guard.input.present", "guard.input.damaged", "guard.input.absent", "guard.input.unstated", "guard.input.refit"},
      guarding_rule, findings);
}

namespace {

Finding adaptor_finding(const Case& value) {
  const auto& adaptor = value.driveline.adaptor;
  if (!adaptor) return not_known(Check::adaptor, "adaptor.unstated", {"driveline.adaptor"});
  Finding finding = make_finding(Check::adaptor, Status::ok, "adaptor.none");
  if (adaptor->present) {
    finding = make_finding(Check::adaptor, Status::stop, "adaptor.fitted");
    finding.advice = {"adaptor.remove"};
  }
  finding.basis = {adaptor_rule};
  return finding;
}

/// Worst angles and shortest length over all states.
struct Extremes {
  Angle front{};
  Angle rear{};
  Length shortest{};
};

Extremes extremes_of(const DrivelineOverRange& range) {
  Extremes all{{}, {}, range.shortest()->shortest.value};
  for (const StateExtremes& state : range.states) {
    all.front = std::max(all.front, state.front.value);
    all.rear = std::max(all.rear, state.rear.value);
  }
  return all;
}

} // namespace

void check_adaptor(const Case& value, Findings& findings) { findings.add(adaptor_finding(value)); }

void check_adaptor_over(const Case& value, const DrivelineOverRange& range, Findings& findings) {
  Finding finding = adaptor_finding(value);
  Case without = value;
  without.driveline.adaptor = Fitted<Adaptor>{};
  if (finding.status == Status::stop && !range.states.empty() && range.missing_for_all().empty()) {
    const DrivelineOverRange bare = driveline_over_range(without);
    if (bare.states.size() == range.states.size()) {
      const Extremes now = extremes_of(range);
      const Extremes then = extremes_of(bare);
      const Length joint = value.driveline.front_joint->value;
      finding.reason = "adaptor.moves";
      finding.facts = {fact("joint", joint + *value.driveline.adaptor->item.length),
                       fact("own_joint", joint),
                       fact("front", now.front),
                       fact("own_front", then.front),
                       fact("rear", now.rear),
                       fact("own_rear", then.rear),
                       fact("shortest", now.shortest),
                       fact("own_shortest", then.shortest)};
    }
  }
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
