#pragma once
// The four answers of a check.

#include <fieldshaft/core/config.hpp>

namespace fieldshaft {
inline namespace v0 {

/// From the best to the worst. The verdict of a case is its worst finding.
enum class Status { ok, caution, not_known, stop };

constexpr const char* status_name(Status status) noexcept {
  switch (status) {
  case Status::ok: return "ok";
  case Status::caution: return "caution";
  case Status::not_known: return "not_known";
  case Status::stop: return "stop";
  }
  return "stop";
}

constexpr Status worse(Status a, Status b) noexcept { return a < b ? b : a; }

} // namespace v0
} // namespace fieldshaft
