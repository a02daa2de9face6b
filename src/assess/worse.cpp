#include "assess/worse.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// A finding that stops with less margin than before is worse, though the word is the same.
bool deeper(const Finding& after, const Finding& before) {
  constexpr double rounding = 1e-9;
  return after.status == Status::stop && before.status == Status::stop && after.margin && before.margin &&
         *after.margin < *before.margin - rounding;
}

/// A machine that shakes clearly more than before is worse off, though both are a caution: a joint that is changed at
/// one end only may do that.
bool shakes_more(const Finding& after, const Finding& before) {
  constexpr double clearly = 1.25; // a rule of thumb of this library
  if (after.check != Check::speed_variation && after.check != Check::chain_variation) return false;
  return after.status == Status::caution && after.value && before.value && after.value->si > clearly * before.value->si;
}

} // namespace

bool is_worse(const Finding& after, const Assessment& base) {
  const Finding* before = base.find(after.check, after.part);
  if (before == nullptr) return after.status > Status::caution;
  const bool newly_missing = !after.missing.empty() && before->missing.empty();
  return after.status > before->status || newly_missing || deeper(after, *before) || shakes_more(after, *before);
}

const Finding* worsened(const Assessment& after, const Assessment& base) {
  const Finding* first = nullptr;
  for (const Finding& finding : after.findings) {
    if (is_worse(finding, base) && (first == nullptr || finding.status > first->status)) first = &finding;
  }
  return first;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
