#pragma once
// A verdict and the check that governs it in two bytes, ordered so that the smaller code is the better one.

#include <fieldshaft/assess/finding.hpp>

#include <cstdint>
#include <optional>

namespace fieldshaft {
inline namespace v0 {

/// The worst status of some checks and, of those with that status, the first in the order of the checks. Of two codes
/// the worse is the maximum; of two set-ups with one verdict the one whose first objection comes later has the smaller
/// code. Without objection there is no governing check and the code is 0.
class VerdictCode {
public:
  constexpr VerdictCode() noexcept = default;
  constexpr VerdictCode(Status status, Check check) noexcept
      : code_(status == Status::ok ? std::uint16_t{0}
                                   : static_cast<std::uint16_t>(static_cast<unsigned>(status) << 8U |
                                                                (0xFFU - static_cast<unsigned>(check)))) {}

  constexpr Status status() const noexcept { return static_cast<Status>(code_ >> 8U); }
  constexpr std::optional<Check> governing() const noexcept {
    if (code_ == 0) return std::nullopt;
    return static_cast<Check>(0xFFU - (code_ & 0xFFU));
  }
  /// Whether the pair may work: no stop and nothing unknown.
  constexpr bool runs() const noexcept { return status() < Status::not_known; }

  friend constexpr bool operator==(VerdictCode a, VerdictCode b) noexcept { return a.code_ == b.code_; }
  friend constexpr bool operator!=(VerdictCode a, VerdictCode b) noexcept { return a.code_ != b.code_; }
  friend constexpr bool operator<(VerdictCode a, VerdictCode b) noexcept { return a.code_ < b.code_; }

private:
  std::uint16_t code_ = 0;
};

constexpr VerdictCode worse(VerdictCode a, VerdictCode b) noexcept { return a < b ? b : a; }

/// The code of a whole assessment. One without findings has examined nothing and is no pass.
inline VerdictCode verdict_code(const Assessment& assessment) noexcept {
  if (assessment.findings.empty()) return {Status::not_known, Check::pto_speed};
  VerdictCode code;
  for (const Finding& finding : assessment.findings) code = worse(code, {finding.status, finding.check});
  return code;
}

} // namespace v0
} // namespace fieldshaft
