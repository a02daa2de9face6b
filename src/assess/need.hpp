#pragma once
// What the implement needs at its input: a stated figure, or a range from the published table.

#include "assess/context.hpp"

#include <fieldshaft/power.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Whether a row demands a draft beside its PTO power, as part of its total requirement.
bool has_own_draft(const Machine& machine) noexcept;

/// A need; low, mean and high are the same where the case states the figure itself.
struct Need {
  const Machine* machine = nullptr;                      ///< the row of the table, where the case names one
  FeedRate feed;                                         ///< on the basis of the row
  Stated<ImplementPower> row;                            ///< what the row gives, with its note
  Stated<ImplementPower> power;                          ///< its high end by a measurement, where one passes the row
  double high_factor = 1.0;                              ///< the high need over the mean of the row without its note
  bool stated = false;                                   ///< the power is the case's own figure
  Stated<bool> note_applies;                             ///< as the case states it
  bool note_open = false;                                ///< it does not: the high end counts the note
  const MeasuredNeed<EnergyPerMass>* measured = nullptr; ///< that measurement
  std::vector<std::string> missing;                      ///< without which the row gives no need
};
/// A stated figure comes before the row, which it is then compared with.
Need need_of(const Implement& implement);

/// The case with one figure in place of the row: the checks know figures only.
Case with_need(const Case& value, Stated<Power> need);

/// The finding on the table's range, or on a stated figure beside it, for a case that names a row.
void check_need(const Case& value, const Need& need, Findings& findings);

/// The case with the draft that its row demands, at the high end, where the case states none.
Case with_row_draft(Case value);

/// Of findings made at the high need: a stop that is none at the mean need is a caution, and says so.
void soften_where_mean_need_passes(Assessment& at_high, const Assessment& at_mean);

/// Entries that the row waits for, in place of the figure that the checks wait for.
void name_missing_of_row(const Need& need, Assessment& assessment);

/// What pull, climb and hydraulics load the engine with, as PTO power; nothing while the case does not state all of it.
Stated<Power> load_beside_pto(const Case& value);

/// The entries that this load waits for; none where the case says nothing of it at all.
std::vector<std::string> missing_beside_pto(const Case& value);

/// Pull, climb and hydraulics on top of the PTO's need, against the power in the gear.
void check_whole_load(const Case& value, Findings& findings);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
