#pragma once
// The main job: from a case to its findings.

#include <fieldshaft/assess/finding.hpp>
#include <fieldshaft/case/case.hpp>

#include <string>

namespace fieldshaft {
inline namespace v0 {

/// Assesses a case. Missing data give `not_known` findings, never a pass.
/// Throws InputError for a case built in code with numbers that cannot be (a case that was read holds none).
Assessment assess(const Case& value);

/// An assessment, or the reason why the case could not be assessed. Exactly one of the two is there.
struct AssessmentResult {
  std::optional<Assessment> result;
  std::string problem;
};

/// The same without exceptions.
AssessmentResult try_assess(const Case& value);

} // namespace v0
} // namespace fieldshaft
