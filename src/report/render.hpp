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

/// "while turning, yaw -35.0°, pitch 4.0°, roll 0.0°".
std::string pose_text(const PoseIn& at, UnitStyle style);

std::string fact_text(const Fact& fact, UnitStyle style);

/// A phrase of the catalogue with its placeholders filled from the finding.
std::string sentence(std::string_view id, const Finding& finding, UnitStyle style);

/// "884 N·m (limit 1061 N·m, 17 % in hand)"; empty for a finding without a number.
std::string numbers(const Finding& finding, UnitStyle style);

/// "while turning, at yaw -35.0°, pitch 4.0°, roll 0.0°"; empty where no state is worse than another.
std::string condition(const Finding& finding, UnitStyle style);

std::string basis(const Finding& finding);

/// First line of a report: the verdict in words.
std::string headline(const Assessment& assessment);

/// Findings of one status, in the order of the checks.
std::vector<const Finding*> with_status(const Assessment& assessment, Status status);

/// Every advice of the findings that are not ok, worst first, each once.
std::vector<std::string> what_to_change(const Assessment& assessment, UnitStyle style);

/// The usual cautions, always printed.
std::vector<std::string> cautions();

} // namespace rendering
} // namespace v0
} // namespace fieldshaft
