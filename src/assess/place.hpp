#pragma once
// Rotation of the stub.

#include "assess/context.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

/// The rotation that the case states, else that of the standard, which speaks of rear PTOs only.
Stated<Sourced<Rotation>> rotation_of(const TractorPto& pto);

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
