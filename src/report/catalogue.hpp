#pragma once
// Every text for people, by stable id. Translations replace the files of `words`.

#include <fieldshaft/assess/finding.hpp>

#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {

/// The heading of a check: "PTO speed against implement speed".
std::string_view title_of(Check check) noexcept;

/// What a check that nothing in a case asks for is about, in a few words that checks of one subject share: "branches of
/// the driveline".
std::string_view subject_of(Check check) noexcept;

/// A sentence by id, with {placeholders}; empty for an unknown id, which is a defect that a test finds.
std::string_view phrase(std::string_view id) noexcept;

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
