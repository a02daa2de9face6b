#pragma once
// Findings put into words: the pieces that all report forms share.

#include <fieldshaft/assess/finding.hpp>
#include <fieldshaft/units/table.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace rendering {

/// "while turning"; empty for any state.
std::string state_text(MachineState state);

/// "while turning, turned 35.0° to the left, in a hollow of 4.0°": an angle that prints as zero is left out.
std::string pose_text(const PoseIn& at, UnitStyle style);

std::string fact_text(const Fact& fact, UnitStyle style);

/// A phrase of the catalogue with its placeholders filled from the finding.
std::string sentence(std::string_view id, const Finding& finding, UnitStyle style);

/// The state, with the pose where one is the worst; empty where no state is worse than another.
std::string condition(const Finding& finding, UnitStyle style);

/// Findings of one status, in the order of the checks.
std::vector<const Finding*> with_status(const Assessment& assessment, Status status);

/// Every advice of the findings that are not ok, worst first, each once.
std::vector<std::string> what_to_change(const Assessment& assessment, UnitStyle style);

/// The usual cautions, always printed.
std::vector<std::string> cautions();

} // namespace rendering
} // namespace v0
} // namespace fieldshaft
