// The measurements of a three-point linkage against those of its category: what does not agree is likely measured
// wrong.

#include "assess/checks.hpp"

#include <fieldshaft/hitch.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

/// How far a machine of the category may lie from its figures: a rule of this library, for figures of which many are
/// remembered. Pins must fit their ball ends and stand nearer.
constexpr Length allowed = millimetres(30.0);
constexpr Length allowed_of_pins = millimetres(1.5);
constexpr Source allowance{"30 mm, of pins 1.5 mm, beside the category's figures: a rule of thumb and default of this "
                           "library",
                           Standing::common_practice};

HitchCategory category_of(LinkageCategory category) {
  const int place = static_cast<int>(category);
  return hitch_category(1 + place / 2, place % 2 == 1);
}

const char* category_name(LinkageCategory category) {
  constexpr const char* names[] = {"1", "1N", "2", "2N", "3", "3N", "4", "4N"};
  return names[static_cast<int>(category)];
}

/// A measurement beside what the category says of it.
struct Compared {
  const char* entry;
  MeasuredLength measured;
  LengthRange usual;
  Source source;
  Length allowed;

  Length beyond() const {
    const Length off = std::max({usual.low - measured.value, measured.value - usual.high, Length{}});
    return off - measured.tolerance - allowed;
  }
  Length nearest() const { return std::clamp(measured.value, usual.low, usual.high); }
};

std::vector<Compared> compared(const Case& value, const HitchCategory& category) {
  std::vector<Compared> all;
  const auto one = [&all](const char* entry, const Stated<MeasuredLength>& measured, const Datum<Length>& usual,
                          Length room) {
    if (measured) all.push_back({entry, *measured, {usual.value(), usual.value()}, usual.source(), room});
  };
  const Hitch& hitch = value.tractor.hitch;
  one("implement.mast_height", value.implement.mast_height, category.mast_height, allowed);
  one("tractor.hitch.span", hitch.span, category.span, allowed);
  one("implement.lower_pin", value.implement.lower_pin, category.lower_pin, allowed_of_pins);
  one("implement.upper_pin", value.implement.upper_pin, category.upper_pin, allowed_of_pins);
  if (hitch.convergence) {
    const Datum<LengthRange>& usual = category.convergence;
    all.push_back({"tractor.hitch.convergence", *hitch.convergence, usual.value(), usual.source(), allowed});
  }
  if (hitch.lower_pivot_behind && hitch.lower_link) {
    const MeasuredLength& pivot = *hitch.lower_pivot_behind;
    const MeasuredLength& link = *hitch.lower_link;
    const Datum<LengthRange>& usual = category.pto_to_lower_points;
    all.push_back({"tractor.hitch.lower_pivot_behind+lower_link",
                   {pivot.value + link.value, pivot.tolerance + link.tolerance},
                   usual.value(),
                   usual.source(),
                   allowed});
  }
  return all;
}

/// So few figures say too little to call the measurements right.
constexpr std::size_t enough_figures = 3;

std::vector<Source> basis_of(const std::vector<Compared>& all) {
  std::vector<Source> basis{allowance};
  for (const Compared& one : all) {
    const auto same = [&](const Source& known) { return std::string(known.text) == one.source.text; };
    if (std::none_of(basis.begin(), basis.end(), same)) basis.push_back(one.source);
  }
  return basis;
}

} // namespace

void check_linkage(const Case& value, Findings& findings) {
  const Hitch& hitch = value.tractor.hitch;
  if (hitch.kind != HitchKind::three_point) {
    findings.not_examined(Check::linkage);
    return;
  }
  if (!hitch.category) {
    findings.not_examined(Check::linkage, {"tractor.hitch.category"});
    return;
  }
  const std::vector<Compared> all = compared(value, category_of(*hitch.category));
  if (all.empty()) {
    findings.add(not_known(Check::linkage, "linkage.unstated",
                           {"implement.mast_height", "implement.lower_pin", "implement.upper_pin"}));
    return;
  }
  const Compared& worst = *std::max_element(
      all.begin(), all.end(), [](const Compared& a, const Compared& b) { return a.beyond() < b.beyond(); });
  const bool differs = worst.beyond() > Length{};
  const bool few = all.size() < enough_figures;
  const char* agrees = few ? "linkage.agrees_in_few" : "linkage.agrees";
  Finding finding =
      make_finding(Check::linkage, differs || few ? Status::caution : Status::ok, differs ? "linkage.differs" : agrees);
  finding.value = amount_of(worst.measured.value);
  finding.limit = amount_of(worst.nearest());
  finding.sense = LimitSense::equal;
  finding.basis = basis_of(all);
  finding.facts = {fact("entry", std::string(worst.entry)),
                   fact("category", std::string(category_name(*hitch.category))),
                   fact("measured", worst.measured.value),
                   fact("usual", worst.nearest()),
                   {"count", Amount{static_cast<double>(all.size()), Kind::number}}};
  if (differs) finding.advice = {"linkage.measure_again"};
  if (few && !differs) finding.advice = {"linkage.state_more"};
  findings.add(std::move(finding));
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
