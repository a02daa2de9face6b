#include "assess/limits.hpp"

#include "assess/coupling_yokes.hpp"
#include "assess/positions.hpp"

#include <fieldshaft/joint.hpp>

#include <algorithm>
#include <limits>
#include <string_view>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

LimitBand angle_band(const JointAngleBand& practice, const Stated<Angle>& stated) {
  LimitBand band{amount_of(practice.low.value),
                 amount_of(practice.high.value),
                 LimitSense::at_most,
                 {practice.low.source, practice.high.source, rigid_model}};
  if (!stated) return band;
  return with_stated(band, amount_of(*stated), "joint angle limit as the case states it");
}

/// Plain joints at rest: many yokes touch long before a right angle.
constexpr JointAngleBand plain_at_rest{
    {degrees(60.0), {"yokes of plain joints may touch from about 60°", Standing::from_memory}},
    {degrees(90.0), {"plain joints at rest: 90° at most", Standing::common_practice}}};

} // namespace

LimitBand with_stated(LimitBand practice, Amount stated, const char* name) {
  const bool upper = practice.sense == LimitSense::at_most;
  const auto stricter = [upper](double a, double b) { return upper ? std::min(a, b) : std::max(a, b); };
  practice.basis.insert(practice.basis.begin(), {name, Standing::given});
  const bool within_strictest = stricter(stated.si, practice.strictest.si) == stated.si;
  practice.strictest.si = within_strictest ? stated.si : stricter(stated.si, practice.loosest.si);
  practice.loosest.si = stated.si;
  return practice;
}

namespace {

DrivelineUse use_of(const Case& value, MachineState state, bool driven) {
  if (!driven) return DrivelineUse::not_turning;
  if (state == MachineState::working) return DrivelineUse::working;
  const bool raised = value.tractor.hitch.kind == HitchKind::three_point && !is_semi_mounted(value);
  return raised ? DrivelineUse::lifted_driven : DrivelineUse::turning_driven;
}

/// What the case states for a joint; a limit of wide-angle joints comes before that of any joint.
const Stated<Angle>& stated_angle(const Limits& own, DrivelineUse use, bool wide) {
  const auto first = [wide](const Stated<Angle>& of_wide, const Stated<Angle>& of_any) -> const Stated<Angle>& {
    return wide && of_wide ? of_wide : of_any;
  };
  switch (use) {
  case DrivelineUse::working: return first(own.wide_working_angle, own.working_angle);
  case DrivelineUse::turning_driven: return first(own.wide_turning_angle, own.turning_angle);
  case DrivelineUse::lifted_driven: return first(own.wide_lifted_angle, own.lifted_angle);
  case DrivelineUse::not_turning: break;
  }
  return first(own.wide_transport_angle, own.transport_angle);
}

} // namespace

LimitBand angle_band(const Case& value, MachineState state, bool driven, JointKind kind) {
  const bool wide = kind == JointKind::wide_angle;
  const DrivelineUse use = use_of(value, state, driven);
  const Stated<Angle>& stated = stated_angle(value.limits, use, wide);
  if (!driven && !wide) return angle_band(plain_at_rest, stated);
  return angle_band((wide ? wide_angle_use_limits : plain_use_limits).at(use), stated);
}

LimitBand up_to_lock(LimitBand band, const Stated<Angle>& lock) {
  if (!lock) return band;
  band.strictest.si = std::min(band.strictest.si, lock->value());
  band.loosest.si = std::min(band.loosest.si, lock->value());
  band.basis.push_back(lock_as_stated);
  return band;
}

std::vector<std::string> telescope_entries_missing(const DrivelineCase& driveline) {
  const auto& middle = driveline.middle_member;
  return unstated({{driveline.closed_length.has_value(), "driveline.closed_length"},
                   {driveline.closed_overlap.has_value(), "driveline.closed_overlap"},
                   {!middle || middle->closed_overlap, "driveline.middle_member.closed_overlap"}});
}

std::vector<CaseSlide> slides_of(const Case& value) {
  const DrivelineCase& line = value.driveline;
  if (!line.middle_member) return {{*line.closed_overlap, line.greatest_travel, "telescope.slide.only"}};
  const MiddleMember& middle = *line.middle_member;
  return {{*line.closed_overlap, line.greatest_travel, "telescope.slide.front"},
          {*middle.closed_overlap, middle.greatest_travel, "telescope.slide.rear"}};
}

Telescope telescope_of(const Case& value, bool worst) {
  const auto least = [worst](MeasuredLength length) { return worst ? length.value - length.tolerance : length.value; };
  const std::vector<CaseSlide> slides = slides_of(value);
  Telescope telescope{least(*value.driveline.closed_length), {least(slides[0].overlap), slides[0].travel}, {}};
  if (slides.size() > 1) telescope.second_slide = Slide{least(slides[1].overlap), slides[1].travel};
  return telescope;
}

LimitBand overlap_band(const Case& value, Length closed_overlap) {
  const Length third = (1.0 / 3.0) * closed_overlap;
  LimitBand practice{
      amount_of(std::max(third, millimetres(150.0))),
      amount_of(millimetres(110.0)),
      LimitSense::at_least,
      {{"one third of the tube, and 150 mm (6 in): the greatest of the rules in use", Standing::common_practice},
       {"5-1/2 in (140 mm) in the housing, University of Missouri wording", Standing::quoted},
       {"110 mm: the smallest of the rules in use", Standing::common_practice},
       rigid_model}};
  if (!value.limits.minimum_overlap) return practice;
  return with_stated(practice, amount_of(*value.limits.minimum_overlap), "overlap as the case states it");
}

namespace {

/// Beyond a guide value of angular acceleration a caution, beyond so many times of it a stop.
constexpr Sourced<double> stop_over_guide{
    2.5,
    {"a stop at 2.5 times the guide value: a rule of thumb and default of this library", Standing::common_practice}};

} // namespace

LimitBand variation_band(AngularSpeed pto_speed) {
  const double guide = torsional_excitation_guide.value.value() / (pto_speed.value() * pto_speed.value());
  return {{guide, Kind::share},
          {stop_over_guide.value * guide, Kind::share},
          LimitSense::at_most,
          {torsional_excitation_guide.source, stop_over_guide.source, rigid_model}};
}

LimitBand inertia_band() {
  return {amount_of(inertia_excitation_guide.value),
          amount_of(stop_over_guide.value * inertia_excitation_guide.value),
          LimitSense::at_most,
          {inertia_excitation_guide.source, stop_over_guide.source, rigid_model}};
}

LimitBand clearance_band(const Case& value) {
  LimitBand practice{
      amount_of(millimetres(50.0)),
      amount_of(millimetres(25.0)),
      LimitSense::at_least,
      {{"50 mm (2 in) and 25 mm (1 in) before the members touch: both in use", Standing::common_practice},
       rigid_model}};
  if (!value.limits.minimum_clearance) return practice;
  return with_stated(practice, amount_of(*value.limits.minimum_clearance), "clearance as the case states it");
}

std::vector<std::string> limits_missing(const Case& value) {
  const DrivelineCase& driveline = value.driveline;
  std::vector<std::string> missing = telescope_entries_missing(driveline);
  for (std::string& path : yokes_missing(driveline, "driveline")) missing.push_back(std::move(path));
  for (auto& path : unstated({{driveline.front_joint_kind.has_value(), "driveline.front_joint_kind"},
                              {driveline.rear_joint_kind.has_value(), "driveline.rear_joint_kind"}})) {
    missing.push_back(std::move(path));
  }
  return missing;
}

namespace {

void append_new(std::vector<Source>& basis, const std::vector<Source>& more) {
  for (const Source& source : more) {
    const auto same = [&](const Source& known) { return std::string_view(known.text) == source.text; };
    if (std::none_of(basis.begin(), basis.end(), same)) basis.push_back(source);
  }
}

} // namespace

namespace {

/// How far the telescope may come out: until a slide that gives all it can overlaps too little, or stops hold.
Length longest_allowed(const Case& value, Amount LimitBand::*end) {
  const Telescope telescope = telescope_of(value, true);
  const std::optional<Length> held = greatest_length(telescope);
  Length longest = held.value_or(metres(std::numeric_limits<double>::infinity()));
  for (const CaseSlide& slide : slides_of(value)) {
    const Length overlap = slide.overlap.value - slide.overlap.tolerance;
    const Length least = metres((overlap_band(value, slide.overlap.value).*end).si);
    if (slide.travel && overlap - *slide.travel >= least) continue;
    longest = std::min(longest, telescope.closed_length + overlap - least);
  }
  return longest;
}

} // namespace

StateLimits state_limits(const Case& value, MachineState state, bool driven) {
  const MeasuredLength closed = *value.driveline.closed_length;
  const DrivelineCase& line = value.driveline;
  const LimitBand front = up_to_lock(angle_band(value, state, driven, *line.front_joint_kind), line.front_joint_lock);
  const LimitBand rear = up_to_lock(angle_band(value, state, driven, *line.rear_joint_kind), line.rear_joint_lock);
  const LimitBand left = overlap_band(value, line.closed_overlap->value);
  const LimitBand room = clearance_band(value);
  const Length pushed_together = closed.value + closed.tolerance;
  const auto limits = [&](Amount LimitBand::*end) {
    DrivelineLimits all;
    all.front_angle = radians((front.*end).si);
    all.rear_angle = radians((rear.*end).si);
    all.longest = longest_allowed(value, end);
    all.shortest = pushed_together + metres((room.*end).si);
    return all;
  };
  StateLimits found{limits(&LimitBand::strictest), limits(&LimitBand::loosest), {}};
  for (const LimitBand* band : {&front, &rear, &left, &room}) append_new(found.basis, band->basis);
  return found;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
