#pragma once
// Parts of a changeover's page and JSON that a farm shares.

#include <fieldshaft/advise/changeover.hpp>
#include <fieldshaft/units/table.hpp>

#include <nlohmann/json_fwd.hpp>

#include <string>

namespace fieldshaft {
inline namespace v0 {
namespace rendering {

/// "type 1, 1 3/8 in, 6 splines at 540 r/min".
std::string setup_text(const PtoSetup& setup, UnitStyle style);

/// What changes, in which arrangement, and the steps in their order.
nlohmann::ordered_json steps_json(const Changeover& changeover, UnitStyle style);

} // namespace rendering
} // namespace v0
} // namespace fieldshaft
