#pragma once
// Fouling: the guarded driveline against tongue, drawbar and lower links, and the tyres against the tongue.

#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/driveline/turn.hpp>

namespace fieldshaft {
inline namespace v0 {

/// A bar, tube or link: everything within a radius of a straight line.
struct Rod {
  Position from;
  Position to;
  Length radius{};
};

/// A tyre on an axle across the tractor, in the tractor frame: a solid cylinder.
struct Tyre {
  Position centre;
  Length radius{};
  Length width{};
};

/// What may foul. An empty list says that there is nothing of the kind.
struct Surroundings {
  Length guard_radius{};         ///< of the driveline's guard
  std::vector<Rod> on_tractor;   ///< drawbar, lower links; in the tractor frame
  std::vector<Rod> on_implement; ///< tongue; in the implement frame
  std::vector<Tyre> tyres;
};

namespace detail {

struct Segment {
  Eigen::Vector3d from, to;
};

/// Distance of two segments.
inline double segment_distance(const Segment& a, const Segment& b) noexcept {
  const Eigen::Vector3d u = a.to - a.from;
  const Eigen::Vector3d v = b.to - b.from;
  const Eigen::Vector3d w = a.from - b.from;
  const double uu = u.squaredNorm();
  const double vv = v.squaredNorm();
  const double uv = u.dot(v);
  const double across = uu * vv - uv * uv;
  const auto at_b = [&](double s) { return vv > 0.0 ? std::clamp((v.dot(w) + s * uv) / vv, 0.0, 1.0) : 0.0; };
  const auto at_a = [&](double t) { return uu > 0.0 ? std::clamp((t * uv - u.dot(w)) / uu, 0.0, 1.0) : 0.0; };
  double s = across > 1e-12 * uu * vv ? std::clamp((uv * v.dot(w) - vv * u.dot(w)) / across, 0.0, 1.0) : 0.0;
  const double t = at_b(s);
  s = at_a(t);
  double least = (w + s * u - at_b(s) * v).norm();
  for (const double end : {0.0, 1.0}) { // nearly parallel segments: the ends decide
    least = std::min({least, (w + end * u - at_b(end) * v).norm(), (w + at_a(end) * u - end * v).norm()});
  }
  return least;
}

/// Distance of a point from a solid cylinder across the tractor; 0 inside.
inline double tyre_distance(const Tyre& tyre, const Eigen::Vector3d& p) noexcept {
  const Eigen::Vector3d d = p - tyre.centre.metres();
  const double out = std::max(0.0, std::hypot(d.x(), d.z()) - tyre.radius.value());
  const double aside = std::max(0.0, std::abs(d.y()) - 0.5 * tyre.width.value());
  return std::hypot(out, aside);
}

/// Lower bound and value of a segment's distance from a tyre, which is convex along the segment: thirds of the
/// interval.
inline double tyre_distance(const Tyre& tyre, const Segment& s) noexcept {
  double low = 0.0;
  double high = 1.0;
  const auto at = [&](double t) { return tyre_distance(tyre, s.from + t * (s.to - s.from)); };
  for (int i = 0; i < 60; ++i) {
    const double third = (high - low) / 3.0;
    if (at(low + third) <= at(high - third)) {
      high -= third;
    } else {
      low += third;
    }
  }
  return std::min({at(0.5 * (low + high)), at(0.0), at(1.0)});
}

/// Minus the clearance of one pair; the part that moves does so by at most its arm times the turn.
class ClearanceObjective {
public:
  enum class Pair { driveline_tractor, driveline_implement, driveline_tyre, tongue_tyre };

  ClearanceObjective(const Lines& lines, const Driveline& driveline, const Position& pin, const Surroundings& around,
                     Pair pair, std::size_t one, std::size_t other, double gap)
      : lines_(lines), front_(front_joint_position(driveline).metres()), pin_(pin.metres()), around_(around),
        pair_(pair), one_(one), other_(other), gap_(gap) {}

  double value(const Triple& at) const noexcept {
    const Eigen::Matrix3d turn = text::rotation(at[0], at[1], at[2]);
    const Segment shaft{front_, pin_ + turn * lines_.to_joint};
    const double guard = around_.guard_radius.value();
    switch (pair_) {
    case Pair::driveline_tractor: {
      const Rod& rod = around_.on_tractor[one_];
      return guard + rod.radius.value() - segment_distance(shaft, {rod.from.metres(), rod.to.metres()});
    }
    case Pair::driveline_implement:
      return guard + around_.on_implement[one_].radius.value() - segment_distance(shaft, placed(turn));
    case Pair::driveline_tyre: return guard - tyre_distance(around_.tyres[other_], shaft);
    case Pair::tongue_tyre: break;
    }
    return around_.on_implement[one_].radius.value() - tyre_distance(around_.tyres[other_], placed(turn));
  }

  Expansion expand(const Triple& at, double size) const noexcept {
    Expansion e;
    e.jet.value = value(at);
    e.spread = std::min(arm() * size, most() - e.jet.value) + 1e-9; // the search along a tyre ends within 1e-10
    return e;
  }
  double slope_rounding() const noexcept { return 0.0; }
  double target(double best) const noexcept { return best + gap_; }

private:
  Segment placed(const Eigen::Matrix3d& turn) const noexcept {
    const Rod& rod = around_.on_implement[one_];
    return {pin_ + turn * rod.from.metres(), pin_ + turn * rod.to.metres()};
  }

  /// Where the centre lines meet or a line enters a tyre, the clearance cannot get less.
  double most() const noexcept {
    const double guard = around_.guard_radius.value();
    switch (pair_) {
    case Pair::driveline_tractor: return guard + around_.on_tractor[one_].radius.value();
    case Pair::driveline_implement: return guard + around_.on_implement[one_].radius.value();
    case Pair::driveline_tyre: return guard;
    case Pair::tongue_tyre: break;
    }
    return around_.on_implement[one_].radius.value();
  }

  /// Greatest distance from the pin of what moves against the other part.
  double arm() const noexcept {
    switch (pair_) {
    case Pair::driveline_tractor:
    case Pair::driveline_tyre: return lines_.to_joint.norm();
    case Pair::driveline_implement: return lines_.to_pin.norm(); // seen from the implement the front joint moves
    case Pair::tongue_tyre: break;
    }
    const Rod& rod = around_.on_implement[one_];
    return std::max(rod.from.metres().norm(), rod.to.metres().norm());
  }

  const Lines& lines_;
  Eigen::Vector3d front_, pin_;
  const Surroundings& around_;
  Pair pair_;
  std::size_t one_, other_;
  double gap_;
};

} // namespace detail

namespace check {
inline void surroundings(const Surroundings& s, const char* function) {
  not_negative(s.guard_radius.value(), {function, "guard_radius", "m"});
  for (const std::vector<Rod>* rods : {&s.on_tractor, &s.on_implement}) {
    for (const Rod& rod : *rods) not_negative(rod.radius.value(), {function, "rod.radius", "m"});
  }
  for (const Tyre& tyre : s.tyres) {
    positive(tyre.radius.value(), {function, "tyre.radius", "m"});
    positive(tyre.width.value(), {function, "tyre.width", "m"});
  }
  if (s.on_tractor.empty() && s.on_implement.empty() && s.tyres.empty())
    fail_input(function, "surroundings", "empty", "at least one part that may foul");
}
} // namespace check

/// The least clearance over a range: driveline guard to every rod and tyre, and tongue to every tyre.
///
///   around  at least one part; radii at least 0
///   gap     wanted gap of the clearance, above 0: half of it costs up to eight times the work
///   budget  boxes for each pair of parts
/// Below 0: the parts foul, by that much or more. The bounds hold over the whole range for straight rods and cylinders.
/// Source: branch and bound; no point moves by more than its distance from the pin times the turn.
inline Extreme<Length> least_clearance(const Driveline& driveline, const Position& pin, const AttitudeRange& range,
                                       const Surroundings& around, Length gap = millimetres(10), int budget = 200000) {
  constexpr const char* name = "least_clearance";
  check::driveline(driveline, name);
  check::attitude_range(range, name);
  check::surroundings(around, name);
  check::positive(gap.value(), {name, "gap", "m"});
  check::at_least(budget, 1.0, {name, "budget", "boxes"});
  using Pair = detail::ClearanceObjective::Pair;
  const detail::Lines lines = detail::lines(driveline, pin);
  const detail::Domain domain = detail::domain(range);
  detail::SearchResult worst;
  double upper = -std::numeric_limits<double>::infinity();
  const auto look = [&](Pair pair, std::size_t one, std::size_t other) {
    const detail::ClearanceObjective objective(lines, driveline, pin, around, pair, one, other, 0.98 * gap.value());
    const detail::SearchResult r =
        detail::Search<detail::ClearanceObjective>(objective, domain, budget).run(worst.value);
    if (!r.found) fail_input(name, "range", "no attitude keeps all couplings", "a range that is not empty");
    upper = std::max(upper, r.upper);
    if (r.value > worst.value) worst = r;
  };
  for (std::size_t i = 0; i < around.on_tractor.size(); ++i) look(Pair::driveline_tractor, i, 0);
  for (std::size_t i = 0; i < around.on_implement.size(); ++i) look(Pair::driveline_implement, i, 0);
  for (std::size_t t = 0; t < around.tyres.size(); ++t) {
    look(Pair::driveline_tyre, 0, t);
    for (std::size_t i = 0; i < around.on_implement.size(); ++i) look(Pair::tongue_tyre, i, t);
  }
  return detail::extreme<Length>(-worst.value, -upper, -worst.value, worst.at, gap.value());
}

/// How far one may turn to each side before something fouls.
///
///   clearance  that must be left, at least 0
///   fineness   how near `allowed` and `broken` shall come to each other, above 0
/// Others as for turn_limit and least_clearance. `allowed` is proved. Source: halving over least_clearance.
inline TurnLimits turn_limit(const Driveline& driveline, const Position& pin, const AttitudeRange& range,
                             const Surroundings& around, Length clearance, Angle fineness = degrees(0.001)) {
  constexpr const char* name = "turn_limit";
  check::not_negative(clearance.value(), {name, "clearance", "m"});
  check::positive(fineness.value(), {name, "fineness", "rad"});
  check::attitude_range(range, name);
  check::within(0.0, range.yaw.low.value(), range.yaw.high.value(), {name, "straight ahead (0 of yaw)", "rad"});
  const auto judge = [&](double side) {
    return [&, side](Angle turn) {
      AttitudeRange part = range;
      part.yaw = side < 0.0 ? AngleRange{-turn, Angle{}} : AngleRange{Angle{}, turn};
      const Extreme<Length> least = least_clearance(driveline, pin, part, around);
      LimitCheck check;
      detail::check_limit(check, least, std::optional<Length>(clearance), LimitKind::clearance, false);
      return check;
    };
  };
  return {detail::turn_to_one_side(judge(-1.0), -range.yaw.low, fineness),
          detail::turn_to_one_side(judge(1.0), range.yaw.high, fineness)};
}

inline constexpr const char* outside_unknown_surroundings =
    "not known whether tyre, tongue, drawbar or links foul: the limit is that of the driveline alone";

/// How far one may turn, with the surroundings where they are known.
///
///   around     what may foul; nothing stated: the result is that of turn_limit alone and says so
///   clearance  that must be left, at least 0
/// Others as for turn_limit. The smaller of both limits counts.
inline Validated<TurnLimits> turn_limit(const Driveline& driveline, const Position& pin, const AttitudeRange& range,
                                        const DrivelineLimits& limits, const std::optional<Surroundings>& around,
                                        Length clearance, const EnvelopeOptions& options = {}) {
  check::not_negative(clearance.value(), {"turn_limit", "clearance", "m"});
  Validated<TurnLimits> result{turn_limit(driveline, pin, range, limits, options)};
  if (!around) {
    result.outside = outside_unknown_surroundings;
    return result;
  }
  const TurnLimits fouling = turn_limit(driveline, pin, range, *around, clearance);
  const auto take_smaller = [](TurnLimit& own, const TurnLimit& other) {
    if (!other.straight_ahead || (own.straight_ahead && other.allowed < own.allowed)) own = other;
  };
  take_smaller(result.value.left, fouling.left);
  take_smaller(result.value.right, fouling.right);
  return result;
}

} // namespace v0
} // namespace fieldshaft
