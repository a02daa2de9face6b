#pragma once
// How a tractor is changed from one PTO stub or speed to another: what can go wrong, and the steps in their order.

#include <fieldshaft/assess/finding.hpp>
#include <fieldshaft/case/case.hpp>
#include <fieldshaft/pto.hpp>

#include <optional>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// What is out and how fast it turns: number of the stub's type, and the speed of the gear.
struct PtoSetup {
  int type = 1;
  AngularSpeed speed{};
};

/// Something that can go wrong, in words by its id.
struct ChangeoverHazard {
  StubHazard hazard;
  const char* id;
  Source source;
};

/// One step, in words by its id, with the numbers that it needs.
struct ChangeoverStep {
  const char* id;
  std::vector<Fact> facts;
};

struct Changeover {
  StubArrangement arrangement = StubArrangement::fixed;
  PtoSetup from;
  PtoSetup to;
  HitchKind hitch = HitchKind::drawbar; ///< what the implement hangs on
  bool possible = true;                 ///< whether this arrangement can make the change at all
  std::vector<ChangeoverHazard> hazards;
  std::vector<ChangeoverStep> steps; ///< in their order
};

/// The steps of a safe changeover, and what can go wrong in it.
///
/// Whatever has to be looked up or driven comes before the hands go near the stub: the list begins with the attitude
/// against loss of oil where a stub is moved, then stop, standstill, driveline off. Where another stub asks for another
/// position of the drawbar, the implement is unhitched before and hitched up after; a mounted implement (`hitch`) needs
/// neither. It checks the oil, length, overlap and shields, and ends with the shaft turned by hand. The operator's
/// manuals come before it. Where the arrangement cannot make the change (a fixed stub, another stub on a tractor that
/// has only a lever), `possible` is false and the steps say so. An unknown type number is an InputError.
Changeover changeover(StubArrangement arrangement, const PtoSetup& from, const PtoSetup& to,
                      HitchKind hitch = HitchKind::drawbar);

/// The changeover that leads from one case to another of the same tractor, such as from a case to its remedy; empty
/// where stub and speed stay, or arrangement, stub or speed of one of them is not known. What the implement hangs on is
/// taken from the later case, then the earlier one; a drawbar where neither says.
std::optional<Changeover> changeover_between(const Case& before, const Case& after);

} // namespace v0
} // namespace fieldshaft
