#pragma once
// An input shaft on the headstock of a semi-mounted machine.

#include <fieldshaft/case/case.hpp>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// Whether the input shaft ends ahead of the steering pivot: then it sits on the headstock and does not turn with the
/// machine, which is not followed here. `layout_missing` names this path then.
bool input_on_headstock(const Case& value);
constexpr const char* input_on_headstock_path = "implement.input.behind";

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
