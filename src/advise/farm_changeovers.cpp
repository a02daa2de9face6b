#include "advise/farm_changeovers.hpp"

#include "advise/farm_set_up.hpp"
#include "assess/interface.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

/// The stub that is out and the speed that is engaged; nothing where one of them is not known.
std::optional<PtoSetup> setup_of(const Case& value) {
  const assessing::ResolvedInterface stub = assessing::resolve(value.tractor.pto.stub);
  const PtoGear* gear = assessing::selected_gear(value);
  if (stub.type == nullptr || gear == nullptr || !gear->pto_speed) return std::nullopt;
  return PtoSetup{stub.type->number, *gear->pto_speed};
}

bool same(const PtoSetup& a, const PtoSetup& b) { return a.type == b.type && is_nominal_speed(a.speed, b.speed); }

/// A way in which implements of one kind of hitch are run on a tractor.
struct Use {
  PtoSetup setup;
  HitchKind hitch;
  std::vector<std::size_t> implements;
};

/// How the implements that a tractor runs want it set up, each implement in its best way.
std::vector<Use> uses_of(const Farm& farm, const FarmStudy& study, std::size_t tractor) {
  std::vector<Use> uses;
  for (std::size_t i = 0; i < farm.implements.size(); ++i) {
    if (!study.verdicts.runs(tractor, i)) continue;
    const std::optional<PtoSetup> setup = setup_of(case_of(farm, tractor, i, study.detail(tractor, i)->set_up));
    if (!setup) continue;
    const HitchKind hitch = farm.implements[i].hitch.value_or(HitchKind::drawbar);
    const auto known = std::find_if(uses.begin(), uses.end(),
                                    [&](const Use& use) { return same(use.setup, *setup) && use.hitch == hitch; });
    if (known == uses.end()) {
      uses.push_back({*setup, hitch, {i}});
    } else {
      known->implements.push_back(i);
    }
  }
  return uses;
}

/// From each set-up that is in use, or is the one of today, to another, and so also the way back.
void add_changeovers(std::size_t tractor, const PtoSetup& today, StubArrangement arrangement,
                     const std::vector<Use>& uses, std::vector<FarmChangeover>& list) {
  std::vector<PtoSetup> starts = {today};
  for (const Use& use : uses) {
    const auto is_use = [&](const PtoSetup& start) { return same(start, use.setup); };
    if (std::none_of(starts.begin(), starts.end(), is_use)) starts.push_back(use.setup);
  }
  for (const PtoSetup& from : starts) {
    for (const Use& to : uses) {
      if (same(from, to.setup)) continue;
      list.push_back({tractor, to.implements, changeover(arrangement, from, to.setup, to.hitch)});
    }
  }
}

} // namespace

std::vector<FarmChangeover> changeovers_of(const Farm& farm, const FarmStudy& study) {
  std::vector<FarmChangeover> list;
  for (std::size_t t = 0; t < farm.tractors.size(); ++t) {
    Case now;
    now.tractor = farm.tractors[t].machine;
    const std::optional<PtoSetup> today = setup_of(now);
    const Stated<StubArrangement> arrangement = now.tractor.pto.arrangement;
    if (today && arrangement) add_changeovers(t, *today, *arrangement, uses_of(farm, study, t), list);
  }
  return list;
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
