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

void note(std::size_t tractor, std::size_t implement, StubArrangement arrangement, const PtoSetup& from,
          const PtoSetup& to, std::vector<FarmChangeover>& list) {
  const auto known = std::find_if(list.begin(), list.end(), [&](const FarmChangeover& entry) {
    return entry.tractor == tractor && same(entry.changeover.to, to);
  });
  if (known == list.end()) {
    list.push_back({tractor, {implement}, changeover(arrangement, from, to)});
  } else {
    known->implements.push_back(implement);
  }
}

} // namespace

std::vector<FarmChangeover> changeovers_of(const Farm& farm, const FarmStudy& study) {
  std::vector<FarmChangeover> list;
  for (std::size_t t = 0; t < farm.tractors.size(); ++t) {
    Case today;
    today.tractor = farm.tractors[t].machine;
    const std::optional<PtoSetup> from = setup_of(today);
    const Stated<StubArrangement> arrangement = today.tractor.pto.arrangement;
    if (!from || !arrangement) continue;
    for (std::size_t i = 0; i < farm.implements.size(); ++i) {
      if (!study.verdicts.runs(t, i)) continue;
      const std::optional<PtoSetup> to = setup_of(case_of(farm, t, i, study.detail(t, i)->set_up));
      if (to && !same(*from, *to)) note(t, i, *arrangement, *from, *to, list);
    }
  }
  return list;
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
