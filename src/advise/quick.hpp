#pragma once
// A changed case assessed for the search: geometry remembered, costly answers that change no verdict of the rest left
// out. Whatever is offered is assessed in full afterwards.

#include "advise/states.hpp"

#include <fieldshaft/assess/finding.hpp>

#include <optional>

namespace fieldshaft {
inline namespace v0 {
namespace advising {

/// Nothing where the changed case cannot be.
std::optional<Assessment> assessed_quickly(const Case& value, States& states);

} // namespace advising
} // namespace v0
} // namespace fieldshaft
