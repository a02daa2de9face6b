#pragma once
// Changes that a finding calls for, each with what it does to the case. Nothing here says that a change heals: that is
// found by assessing the changed case.

#include "advise/states.hpp"
#include "assess/context.hpp"

#include <fieldshaft/advise/remedies.hpp>

#include <functional>
#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace advising {

struct Proposal {
  ChangeKind kind = ChangeKind::select_gear;
  std::string label; ///< which of several of its kind: a gear, a state of the machine, a guard
  std::vector<Fact> facts;
  std::function<void(Case&)> apply;
};

/// A case as changed so far, and what was found in it.
struct Situation {
  const Case& value;
  const Assessment& assessment;
  States& states;
  const RemedyOptions& options;
};

using Proposals = std::vector<Proposal>;

/// Adds a proposal unless the same one is there.
void add(Proposals& proposals, Proposal proposal);

/// Whether any change is known here that may heal a finding of this check.
bool has_remedies(Check check);

/// What may heal one finding.
Proposals proposals_for(const Situation& now, const Finding& finding);

// By theme; each adds what belongs to the finding.
void propose_speed(const Situation& now, const Finding& finding, Proposals& proposals);
void propose_power(const Situation& now, const Finding& finding, Proposals& proposals);
void propose_strength(const Situation& now, const Finding& finding, Proposals& proposals);
void propose_hitch(const Situation& now, const Finding& finding, Proposals& proposals);
void propose_joints(const Situation& now, const Finding& finding, Proposals& proposals);
void propose_telescope(const Situation& now, const Finding& finding, Proposals& proposals);
void propose_range(const Situation& now, const Finding& finding, Proposals& proposals);
void propose_guards(const Situation& now, const Finding& finding, Proposals& proposals);
void propose_dynamics(const Situation& now, const Finding& finding, Proposals& proposals);

/// Whether a rotor slow enough for its tip limits would no longer cut, so that no gearbox is offered.
bool too_slow_to_cut(const Case& value, const Assessment& assessment);

/// A number or a name of a finding's facts; empty where it has none.
std::optional<double> amount_fact(const Finding& finding, std::string_view name);

bool is_trailed(const Case& value);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
