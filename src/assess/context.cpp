#include "assess/context.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

namespace {

/// True but for NaN. A bit test, as is_finite: the comparisons that NaN fails may be turned round under -ffast-math.
bool is_number(double value) noexcept {
  constexpr std::uint64_t infinity = 0x7ff0000000000000ULL;
  return (FIELDSHAFT_BIT_CAST(std::uint64_t, value) & 0x7fffffffffffffffULL) <= infinity;
}

} // namespace

Finding make_finding(Check check, Status status, const char* reason) {
  Finding finding;
  finding.check = check;
  finding.status = status;
  finding.reason = reason;
  return finding;
}

Finding compare(Check check, Amount value, const LimitBand& band, const char* reason) {
  const bool upper = band.sense == LimitSense::at_most;
  const bool number = is_number(value.si);
  const auto within = [&](Amount limit) { return number && (upper ? value.si <= limit.si : value.si >= limit.si); };
  Status status = Status::stop; // also for NaN
  if (within(band.strictest)) {
    status = Status::ok;
  } else if (within(band.loosest)) {
    status = Status::caution;
  }
  Finding finding = make_finding(check, status, reason);
  finding.value = value;
  finding.limit = status == Status::stop ? band.loosest : band.strictest;
  finding.sense = band.sense;
  if (band.strictest.si != band.loosest.si) finding.limits = TwoLimits{band.strictest, band.loosest};
  finding.basis = band.basis;
  if (finding.limit->si != 0.0 && is_finite(finding.limit->si)) {
    const double room = upper ? finding.limit->si - value.si : value.si - finding.limit->si;
    finding.margin = room / std::abs(finding.limit->si);
  }
  return finding;
}

Finding not_known(Check check, const char* reason, std::vector<std::string> missing) {
  Finding finding = make_finding(check, Status::not_known, reason);
  std::sort(missing.begin(), missing.end());
  missing.erase(std::unique(missing.begin(), missing.end()), missing.end());
  finding.missing = std::move(missing);
  return finding;
}

const Finding& worse_of(const Finding& a, const Finding& b) {
  if (a.status != b.status) return a.status > b.status ? a : b;
  return a.margin.value_or(0.0) <= b.margin.value_or(0.0) ? a : b;
}

std::vector<std::string> unstated(std::initializer_list<std::pair<bool, const char*>> entries) {
  std::vector<std::string> missing;
  for (const auto& [stated, path] : entries) {
    if (!stated) missing.emplace_back(path);
  }
  return missing;
}

const PtoGear* selected_gear(const Case& value) {
  const TractorPto& pto = value.tractor.pto;
  if (!pto.selected) return nullptr;
  for (const PtoGear& gear : pto.gears) {
    if (gear.name == *pto.selected) return &gear;
  }
  return nullptr;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
