#pragma once
// The driveline over a whole range of attitudes: worst angles, longest and shortest, with proved bounds.

#include <fieldshaft/driveline/limits.hpp>
#include <fieldshaft/driveline/objective.hpp>
#include <fieldshaft/driveline/unevenness.hpp>

namespace fieldshaft {
inline namespace v0 {

/// A greatest or least value over a range. The true one lies from `lower` to `upper`, always.
template <class Q> struct Extreme {
  Q value{};           ///< at the attitude `at`
  Q lower{};           ///< proved: the extreme is not below
  Q upper{};           ///< proved: the extreme is not above
  Q gap{};             ///< upper - lower
  Attitude at;         ///< where `value` occurs
  bool proved = false; ///< the wanted gap was reached before the budget ran out
};

namespace detail {
/// Which extremes are searched, beside the speed variation; the bounds of the others say nothing. A caller that takes
/// some from the tolerances and the rest from what is stated saves half of the work.
enum class WantedExtremes { all, all_but_difference, difference };
} // namespace detail

struct EnvelopeOptions {
  Angle angle_gap = degrees(0.01);
  Length length_gap = millimetres(0.1);
  double variation_gap = 5e-4; ///< of the speed variation, as a share of the PTO speed
  int budget = 200000;         ///< boxes for each extreme
  bool with_speed_variation = true;
  /// Given: only whether these limits hold is asked. A search ends once its limit is proved to hold or to be broken, so
  /// that bounds are no closer than that needs; angles, difference and longest without a limit are not searched, and
  /// their bounds say nothing.
  std::optional<DrivelineLimits> limits;
  detail::WantedExtremes wanted = detail::WantedExtremes::all;
};

/// The extremes over a range. Bounds hold for the rigid model without play.
struct DrivelineEnvelope {
  Extreme<Angle> front_angle;
  Extreme<Angle> rear_angle;
  Extreme<Angle> difference; ///< greatest size of front less rear angle
  Extreme<Length> longest;
  Extreme<Length> shortest;
  std::optional<Extreme<double>> speed_variation;
  int boxes = 0; ///< looked at in all
};

namespace detail {

inline Attitude attitude(const Triple& at) noexcept {
  return {Angle::from_value(at[0]), Angle::from_value(at[1]), Angle::from_value(at[2])};
}

template <class Q> Extreme<Q> extreme(double value, double lower, double upper, const Triple& at, double gap) {
  const auto q = [](double x) {
    if constexpr (std::is_same_v<Q, double>) {
      return x;
    } else {
      return Q::from_value(x);
    }
  };
  // A gap is compared with a share of rounding to spare: the bounds themselves hold whatever the gap is.
  return {q(value), q(lower), q(upper), q(upper - lower), attitude(at), upper - lower <= gap * (1.0 + 1e-9) + 1e-12};
}

/// What a search is asked: its greatest value, or only whether that keeps a limit.
struct SearchQuestion {
  double known = -std::numeric_limits<double>::infinity(); ///< values up to it, and the gap, do not matter
  double enough = std::numeric_limits<double>::infinity(); ///< a value above it ends the search
};

template <class Q> using LimitOf = std::optional<Q> DrivelineLimits::*;

/// Whether this extreme is not wanted: only limits are asked about and none of it, or it is left out. Speed variation
/// rests on the angles.
template <class Q> bool skips(const EnvelopeOptions& options, LimitOf<Q> of) noexcept {
  if (options.limits) return !((*options.limits).*of);
  bool is_angle = false;
  bool is_difference = false;
  if constexpr (std::is_same_v<Q, Angle>) {
    is_difference = of == &DrivelineLimits::difference;
    is_angle = !is_difference;
  }
  switch (options.wanted) {
  case WantedExtremes::all: return false;
  case WantedExtremes::all_but_difference: return is_difference;
  case WantedExtremes::difference: return !is_difference && !(is_angle && options.with_speed_variation);
  }
  return false;
}

/// Whether an objective keeps the limit of its quantity, `sign` -1 where it is a least one. The bound that is aimed at
/// keeps it by a millionth of the gap, far more than the rounding of the way there and back.
template <class Objective> SearchQuestion keeps(const Objective& objective, double limit, double sign = 1.0) noexcept {
  return {objective.at(limit - sign * objective.gap() * (1.0 + 1e-6)), objective.at(limit)};
}

/// What a search of this extreme is asked.
template <class Objective, class Q>
SearchQuestion question(const EnvelopeOptions& options, LimitOf<Q> of, const Objective& objective, double sign = 1.0) {
  if (!options.limits) return {};
  return keeps(objective, ((*options.limits).*of)->value(), sign);
}

/// Of an extreme that was not asked for.
template <class Q> Extreme<Q> not_searched(double least, double most) {
  return {Q::from_value(least), Q::from_value(least), Q::from_value(most), Q::from_value(most - least), {}, false};
}

/// One envelope: shared lines and one search for each extreme.
class Enveloper {
public:
  Enveloper(const Driveline& driveline, const Position& pin, const AttitudeRange& range, const EnvelopeOptions& options)
      : driveline_(driveline), shafts_(detail::lines(driveline, pin)), domain_(domain(range)), options_(options) {}

  DrivelineEnvelope run() {
    DrivelineEnvelope e;
    e.shortest = shortest();
    least_length_ = std::max(1e-6, e.shortest.lower.value());
    e.longest = longest();
    e.front_angle = angle(End::front);
    e.rear_angle = angle(End::rear);
    if (options_.limits) {
      const auto& most = options_.limits->difference;
      e.difference = most ? difference(most->value()) : not_searched<Angle>(0.0, pi);
    } else {
      e.difference = skips(options_, &DrivelineLimits::difference) ? not_searched<Angle>(0.0, pi) : difference();
    }
    if (options_.with_speed_variation) e.speed_variation = speed_variation(e);
    e.boxes = boxes_;
    return e;
  }

  /// The greatest difference, or only whether it keeps a limit, where least_length() is known.
  Extreme<Angle> difference_with(double least_length, double limit) {
    least_length_ = least_length;
    return difference(limit);
  }

private:
  /// The search gets a little less than the wanted gap: the rest is for rounding on the way back to the quantity.
  static double inner(double gap) noexcept { return 0.98 * gap; }

  template <class Objective> SearchResult search(const Objective& objective, const SearchQuestion& asked = {}) {
    const SearchResult result = Search<Objective>(objective, domain_, options_.budget).run(asked.known, asked.enough);
    boxes_ += result.boxes;
    if (!result.found)
      fail_input("driveline_envelope", "range", "no attitude keeps all couplings", "a range that is not empty");
    return result;
  }

  DrivelineState at(const Triple& angles) const {
    return state(driveline_, shafts_.lines(), text::rotation(angles[0], angles[1], angles[2]));
  }

  Extreme<Length> shortest() {
    const SquareObjective objective(shafts_, -1.0, inner(options_.length_gap.value()));
    const SearchResult r = search(objective);
    const double value = at(r.at).length.value();
    check::at_least(value, 1e-6, {"driveline_envelope", "joint centre distance", "m"}); // nearer, angles mean nothing
    return extreme<Length>(value, std::min(value, objective.length(r.upper)), value + length_rounding(value), r.at,
                           options_.length_gap.value());
  }

  Extreme<Length> longest() {
    if (skips(options_, &DrivelineLimits::longest)) return not_searched<Length>(0.0, shafts_.reach());
    const SquareObjective objective(shafts_, 1.0, inner(options_.length_gap.value()));
    const SearchResult r = search(objective, question(options_, &DrivelineLimits::longest, objective));
    const double value = at(r.at).length.value();
    return extreme<Length>(value, value - length_rounding(value), std::max(value, objective.length(r.upper)), r.at,
                           options_.length_gap.value());
  }

  double length_rounding(double length) const noexcept {
    return Shafts::allowance * shafts_.reach() * shafts_.reach() / length;
  }

  /// Rounding of a state's angle: both arms against the distance.
  double angle_rounding() const noexcept { return Shafts::allowance * shafts_.reach() / least_length_; }

  Extreme<Angle> angle(End end) {
    const LimitOf<Angle> of = end == End::front ? &DrivelineLimits::front_angle : &DrivelineLimits::rear_angle;
    if (skips(options_, of)) return not_searched<Angle>(0.0, pi);
    const AngleObjective objective(shafts_, end, inner(options_.angle_gap.value()), least_length_);
    const SearchResult r = search(objective, question(options_, of, objective));
    const DrivelineState s = at(r.at);
    const double value = (end == End::front ? s.front_angle : s.rear_angle).value();
    return extreme<Angle>(value, value - angle_rounding(), std::max(value, objective.angle(r.upper)), r.at,
                          options_.angle_gap.value());
  }

  Extreme<Angle> difference(std::optional<double> limit = {}) {
    const double gap = inner(options_.angle_gap.value());
    const DifferenceObjective front(shafts_, 1.0, gap, least_length_);
    const DifferenceObjective rear(shafts_, -1.0, gap, least_length_);
    SearchQuestion asked = limit ? keeps(front, *limit) : SearchQuestion{};
    asked.known = std::max(0.0, asked.known);
    SearchResult best = search(front, asked);
    asked.known = std::max(asked.known, best.value);
    const SearchResult other = search(rear, asked);
    const double upper = std::max({0.0, best.upper, other.upper});
    if (other.value > best.value) best = other;
    const double value = math::abs(at(best.at).difference).value();
    return extreme<Angle>(value, std::max(0.0, value - 2.0 * angle_rounding()), std::max(value, front.angle(upper)),
                          best.at, options_.angle_gap.value());
  }

  Extreme<double> speed_variation(const DrivelineEnvelope& e);

  const Driveline& driveline_;
  Shafts shafts_;
  Domain domain_;
  const EnvelopeOptions& options_;
  double least_length_ = 0.0;
  int boxes_ = 0;
};

/// Speed variation behind one plain joint, which grows with its angle.
inline Extreme<double> variation_of(const Extreme<Angle>& angle, double gap) {
  const auto variation = [](Angle a) {
    return a < degrees(90) ? text::joint_speed_variation(a) : std::numeric_limits<double>::infinity();
  };
  Extreme<double> v;
  v.value = variation(angle.value);
  v.lower = angle.lower < Angle{} ? 0.0 : variation(angle.lower) * (1.0 - 1e-14);
  v.upper = variation(angle.upper) * (1.0 + 1e-14);
  v.gap = v.upper > v.lower ? v.upper - v.lower : 0.0;
  v.at = angle.at;
  v.proved = v.gap <= gap;
  return v;
}

inline Extreme<double> Enveloper::speed_variation(const DrivelineEnvelope& e) {
  if (driveline_.wide_angle_front && driveline_.wide_angle_rear) return {0.0, 0.0, 0.0, 0.0, e.front_angle.at, true};
  if (driveline_.wide_angle_front) return variation_of(e.rear_angle, options_.variation_gap);
  if (driveline_.wide_angle_rear) return variation_of(e.front_angle, options_.variation_gap);
  constexpr double infinite = std::numeric_limits<double>::infinity();
  for (const Extreme<Angle>* angle : {&e.front_angle, &e.rear_angle}) {
    if (angle->lower >= degrees(90)) return {infinite, infinite, infinite, 0.0, angle->at, true};
  }
  const UnevennessObjective objective(shafts_, driveline_.yoke_phase.value(), inner(options_.variation_gap),
                                      least_length_);
  const SearchResult r = search(objective);
  const double value = at(r.at).speed_variation;
  if (!(value < infinite)) return {infinite, infinite, infinite, 0.0, attitude(r.at), true};
  const double rounding = objective.variation_rounding(value);
  return extreme<double>(value, std::max(0.0, value - rounding), std::max(value, objective.variation(r.upper)), r.at,
                         options_.variation_gap);
}

/// Which of two mirrored cases this is: the sign of the first datum that tells left from right, 0 if none does.
inline double leaning(const Driveline& driveline, const Position& pin, const AttitudeRange& range) noexcept {
  double coupled = 0.0;
  for (const AngleCoupling& c : range.couplings) {
    if (coupled == 0.0) coupled = c.yaw_share != 0.0 ? c.yaw_share : c.roll_share;
  }
  const double signs[] = {pin.metres().y(),
                          driveline.input.metres().y(),
                          driveline.input_direction.left(),
                          driveline.output.metres().y(),
                          driveline.output_direction.left(),
                          (range.yaw.low + range.yaw.high).value(),
                          (range.roll.low + range.roll.high).value(),
                          driveline.yoke_phase.value(),
                          coupled};
  for (const double sign : signs) {
    if (sign != 0.0) return sign;
  }
  return 0.0;
}

template <class Q> void mirror_in_place(Extreme<Q>& extreme) noexcept { extreme.at = mirrored(extreme.at); }

} // namespace detail

/// The envelope as a mirror in the tractor's middle plane shows it: the same values at mirrored attitudes.
inline DrivelineEnvelope mirrored(DrivelineEnvelope envelope) noexcept {
  detail::mirror_in_place(envelope.front_angle);
  detail::mirror_in_place(envelope.rear_angle);
  detail::mirror_in_place(envelope.difference);
  detail::mirror_in_place(envelope.longest);
  detail::mirror_in_place(envelope.shortest);
  if (envelope.speed_variation) detail::mirror_in_place(*envelope.speed_variation);
  return envelope;
}

namespace check {
inline void envelope_options(const EnvelopeOptions& options, const char* function) {
  positive(options.angle_gap.value(), {function, "angle_gap", "rad"});
  positive(options.length_gap.value(), {function, "length_gap", "m"});
  positive(options.variation_gap, {function, "variation_gap", ""});
  at_least(options.budget, 1.0, {function, "budget", "boxes"});
}
} // namespace check

/// Worst joint angles, longest and shortest driveline over every attitude of a range, with proved bounds.
///
///   driveline  as for driveline_at
///   pin        the origin of the implement frame in the tractor frame [m]
///   range      intervals of yaw, pitch and roll within half a turn to either side, and couplings between them
///   options    wanted gaps (0.01°, 0.1 mm) and the budget of boxes
/// Each extreme lies within its bounds for the rigid model without play, rounding included; no grid is scanned. When
/// the budget runs out `proved` is false and the bounds still hold, only wider. Mirrored inputs give mirrored results,
/// bit by bit: of two mirrored cases one is solved and the other read off. An empty range (couplings that exclude each
/// other) and joint centres that meet are impossible input. Source: branch and bound after Neumaier, Acta Numerica 13
/// (2004) 271 (from memory), with the bounds of jet.hpp. Example: both joints 0.5 m from the pin, yaw ±60°: 30°, 30°,
/// difference 0, 1000 mm, 866 mm.
inline DrivelineEnvelope driveline_envelope(const Driveline& driveline, const Position& pin, const AttitudeRange& range,
                                            const EnvelopeOptions& options = {}) {
  check::driveline(driveline, "driveline_envelope");
  check::attitude_range(range, "driveline_envelope");
  check::envelope_options(options, "driveline_envelope");
  if (detail::leaning(driveline, pin, range) < 0.0) {
    const Driveline other = mirrored(driveline);
    return mirrored(detail::Enveloper(other, mirrored(pin), mirrored(range), options).run());
  }
  return detail::Enveloper(driveline, pin, range, options).run();
}

} // namespace v0
} // namespace fieldshaft
