#include "assess/worse.hpp"

#include <optional>
#include <string_view>
#include <variant>

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

/// How unevenly the shaft turns; where the shaft between the joints decides, the share stands among the facts.
std::optional<double> uneven_running(const Finding& finding) {
  if (finding.value && finding.value->kind == Kind::share) return finding.value->si;
  for (const Fact& fact : finding.facts) {
    if (std::string_view(fact.name) == "stated") return std::get<Amount>(fact.value).si;
  }
  return std::nullopt;
}

/// A machine that shakes clearly more than before is worse off, though both are a caution: a joint that is changed at
/// one end only may do that.
bool shakes_more(const Finding& after, const Finding& before) {
  constexpr double clearly = 1.25; // a rule of thumb of this library
  if (after.check != Check::speed_variation && after.check != Check::chain_variation) return false;
  const bool by_the_share = after.status == Status::caution && after.value && after.value->kind == Kind::share;
  const std::optional<double> was = uneven_running(before);
  return by_the_share && was && after.value->si > clearly * *was;
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
