// Cut lengths and longer members.

#include "advise/proposals.hpp"
#include "assess/limits.hpp"
#include "assess/shorten.hpp"

#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace advising {
namespace {

using assessing::fact;

/// Whether every slide keeps some overlap and travel.
bool leaves_members(const DrivelineCase& line, Length cut) {
  const auto left = [cut](const Stated<MeasuredLength>& overlap, const Stated<Length>& travel) {
    return (!overlap || overlap->value > cut) && (!travel || *travel > cut);
  };
  if (!left(line.closed_overlap, line.greatest_travel)) return false;
  return !line.middle_member || left(line.middle_member->closed_overlap, line.middle_member->greatest_travel);
}

/// Both members and both guard tubes shortened alike; nothing where they would be gone.
void propose_cut(const Situation& now, Length cut, const char* label, Proposals& proposals) {
  const DrivelineCase& line = now.value.driveline;
  const Length whole = millimetres(std::ceil(in(cut, unit::millimetre)));
  if (!(whole > Length{}) || !leaves_members(line, whole)) return;
  add(proposals, {ChangeKind::cut_tubes,
                  label,
                  {fact("cut", whole), fact("closed", line.closed_length->value - whole)},
                  [whole](Case& c) { assessing::shorten(c.driveline, whole, whole); }});
}

/// A cut to the clearance that all schools accept, and the smallest that one of them does.
void propose_cuts(const Situation& now, const Finding& finding, Proposals& proposals) {
  const assessing::LimitBand band = assessing::clearance_band(now.value);
  const double room = finding.value->si;
  propose_cut(now, Length::from_value(band.strictest.si - room), "full", proposals);
  if (band.loosest.si > room) propose_cut(now, Length::from_value(band.loosest.si - room), "least", proposals);
}

/// Members longer by whole 5 mm until the overlap is what all schools want, or what one of them accepts.
void propose_longer(const Situation& now, const Finding& finding, bool full, Proposals& proposals) {
  const DrivelineCase& line = now.value.driveline;
  const auto enough = [&](double longer) {
    const assessing::LimitBand band = assessing::overlap_band(now.value, line.closed_overlap->value + metres(longer));
    return finding.value->si + 2.0 * longer >= (full ? band.strictest.si : band.loosest.si);
  };
  double longer = 0.005;
  while (!enough(longer) && longer < 3.0) longer += 0.005;
  const Length more = millimetres(std::round(1000.0 * longer));
  add(proposals, {ChangeKind::longer_driveline,
                  full ? "full" : "least",
                  {fact("longer", more), fact("closed", line.closed_length->value + more),
                   fact("overlap", line.closed_overlap->value + more)},
                  [more](Case& c) { assessing::shorten(c.driveline, -more, -more); }});
}

} // namespace

void propose_telescope(const Situation& now, const Finding& finding, Proposals& proposals) {
  const DrivelineCase& line = now.value.driveline;
  if (!finding.value || !line.closed_length || !line.closed_overlap) return;
  if (finding.check == Check::clearance) propose_cuts(now, finding, proposals);
  if (finding.check == Check::overlap) {
    propose_longer(now, finding, true, proposals);
    propose_longer(now, finding, false, proposals);
  }
}

} // namespace advising
} // namespace v0
} // namespace fieldshaft
