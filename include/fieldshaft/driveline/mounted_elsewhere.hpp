#pragma once
// A mounted machine with its measurements elsewhere within their tolerances: what it really attains.

#include <fieldshaft/driveline/mounted_search.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {
namespace detail {

/// Each measurement of driveline and linkage counted from -1 to 1. Places that are known to within a circle move along
/// either of its axes, not both: the pairs stand side by side.
class MountedElsewhere {
public:
  /// `line` in the frame of the motion's cells, as the search takes it.
  MountedElsewhere(const Driveline& line, const LinkageMotion& motion, const Triple& at)
      : line_(line), motion_(motion), position_(motion.position(at)), place_(at) {}

  /// The greatest of f that moving one measurement after the other to an end of its tolerance leads to.
  template <class F> double greatest(const F& f) const {
    Ends ends{};
    double best = f(state_at(ends));
    for (int round = 0; round < 2; ++round) {
      for (std::size_t i = 0; i < count; ++i) best = improved(ends, i, best, f);
    }
    return best;
  }

private:
  static constexpr std::size_t of_line = measurement_count - 1; ///< joints and place of the input; a pin there is none
  static constexpr std::size_t paired = of_line + 9;            ///< direction of the input, mast, wheel, pivot
  static constexpr std::size_t count = paired + 8;
  using Ends = std::array<double, count>;

  template <class F> double improved(Ends& ends, std::size_t i, double best, const F& f) const {
    for (const double side : {-1.0, 1.0}) {
      Ends trial = ends;
      trial[i] = side;
      if (i >= paired) trial[(i - paired) % 2 == 0 ? i + 1 : i - 1] = 0.0;
      try {
        const double moved = f(state_at(trial));
        if (!(moved > best)) continue;
        best = moved;
        ends = trial;
      } catch (const InputError&) { // such a machine cannot stand there
        continue;
      }
    }
    return best;
  }

  DrivelineState state_at(const Ends& ends) const {
    Elsewhere of_driveline{};
    std::copy_n(ends.begin(), of_line, of_driveline.begin());
    std::copy_n(ends.begin() + paired, 2, of_driveline.begin() + of_line);
    const LinkageMotion motion = moved(ends);
    DrivelineTolerance own = motion_.tolerance.driveline;
    own.pin_distance = own.pin_lateral = own.pin_drop = Length{};
    Driveline line = built(line_, Position(), own, of_driveline).driveline;
    if (motion.pivot) line.input = line.input + (*motion_.pivot - *motion.pivot);
    const LinkageCell cell = linkage_cell(motion, place(motion), {});
    return state(line, lines(line, cell.pin), text::rotation(cell.attitude[0], cell.attitude[1], cell.attitude[2]));
  }

  LinkageMotion moved(const Ends& ends) const {
    const MountedTolerance& t = motion_.tolerance;
    const double* at = ends.data() + of_line;
    ThreePointLinkage l = motion_.linkage;
    Length* const lengths[] = {&l.lower_pivot_behind, &l.lower_pivot_below, &l.lower_link,
                               &l.top_pivot_behind,   &l.top_pivot_below,   &l.span,
                               &l.convergence};
    const Length tolerances[] = {t.lower_pivot_behind, t.lower_pivot_below, t.lower_link,
                                 t.top_pivot_behind,   t.top_pivot_below,   t.span,
                                 t.convergence};
    for (std::size_t i = 0; i < 7; ++i) *lengths[i] += at[i] * tolerances[i];
    const double* pair = ends.data() + paired;
    l.mast_height += pair[2] * t.mast;
    l.mast_forward += pair[3] * t.mast;
    if (t.level.stated) {
      l.top_link = top_link_for(l, t.level.lift + at[7] * t.level.tolerance);
    } else {
      l.top_link += at[7] * t.top_link;
    }
    LinkageMotion motion = motion_;
    motion.tolerance = {};
    motion.own = {Eigen::Vector3d::Zero(), Eigen::Vector3d::Zero(), Eigen::Vector3d::UnitX(), 0.0, 0.0, 0.0};
    motion.linkage = l;
    motion.side = SideView(l);
    if (motion.far > 0.0) motion.far = l.convergence.value();
    if (motion.pivot) *motion.pivot = *motion.pivot + Position(pair[6] * t.pivot, pair[7] * t.pivot, Length{});
    if (!motion.wheel) return motion;
    motion.wheel->behind += pair[4] * t.wheel.value();
    motion.wheel->below += pair[5] * t.wheel.value();
    motion.wheel->ground += at[8] * t.ground.value();
    motion.wheel->pivot = motion.pivot;
    return motion;
  }

  /// The same lift, sway and height difference, or turn and roll as angles.
  Triple place(const LinkageMotion& motion) const {
    check::linkage_position(motion.linkage, position_, "driveline_envelope"); // with shorter links out of reach
    const auto angle = [](Length part, double whole) { return std::asin(part.value() / whole); };
    Triple at = place_;
    at[0] = angle(position_.lift, motion.side.link);
    if (motion.far > 0.0) at[1] = -angle(position_.sway, motion.far);
    if (motion.rolls_by_links) at[2] = angle(position_.difference, motion.linkage.span.value());
    return at;
  }

  const Driveline& line_;
  const LinkageMotion& motion_;
  LinkagePosition position_;
  Triple place_;
};

} // namespace detail
} // namespace v0
} // namespace fieldshaft
