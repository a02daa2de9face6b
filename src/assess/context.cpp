#include "assess/context.hpp"

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

Finding make_finding(Check check, Status status, const char* reason) {
  Finding finding;
  finding.check = check;
  finding.status = status;
  finding.reason = reason;
  return finding;
}

Finding compare(Check check, Amount value, const LimitBand& band, const char* reason) {
  const bool upper = band.sense == LimitSense::at_most;
  const auto within = [&](Amount limit) { return upper ? value.si <= limit.si : value.si >= limit.si; };
  Status status = Status::stop; // also where a comparison with NaN is false
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
  if (finding.limit->si != 0.0 && std::isfinite(finding.limit->si)) {
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
