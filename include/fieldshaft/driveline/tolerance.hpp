#pragma once
// The envelope for every driveline within the tolerances of the measurements at once.

#include <fieldshaft/driveline/envelope.hpp>
#include <fieldshaft/driveline/tolerance_objective.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The measurement that moves an extreme most, and by how much its tolerance moves it.
template <class Q> struct Influence {
  Measurement measurement{};
  Q amount{};
};

/// An envelope for all drivelines within the tolerances. `value` of an extreme is attained by one of them at `at`.
struct TolerantEnvelope {
  DrivelineEnvelope envelope;
  Influence<Angle> front_angle;
  Influence<Angle> rear_angle;
  Influence<Angle> difference;
  Influence<Length> longest;
  Influence<Length> shortest;
};

namespace detail {

/// What a driveline within the tolerances attains, and the measurement that does most of it.
struct Attained {
  double value;
  Measurement most;
  double amount;
};

/// A quantity of the state at one attitude, with the measurements elsewhere within their tolerances.
template <class F> struct WithinTolerances {
  const Driveline& driveline;
  const Position& pin;
  const DrivelineTolerance& tolerance;
  const Triple& at;
  const F& f;

  double seen(const Elsewhere& where) const {
    const Built b = built(driveline, pin, tolerance, where);
    return f(state(b.driveline, lines(b.driveline, b.pin), text::rotation(at[0], at[1], at[2])));
  }

  /// Moves each measurement to the end of its tolerance that raises f most, twice round, and notes which moved it most.
  Attained attained() const {
    Elsewhere where{};
    const double stated = seen(where);
    Attained best{stated, Measurement::front_joint, 0.0};
    for (std::size_t i = 0; i < where.size(); ++i) {
      for (const double side : {-1.0, 1.0}) {
        Elsewhere alone{};
        alone[i] = side;
        const double amount = seen(alone) - stated;
        if (amount > best.amount) best = {stated, static_cast<Measurement>(std::min(i, measurement_count - 1)), amount};
      }
    }
    for (int round = 0; round < 2; ++round) {
      for (std::size_t i = 0; i < where.size(); ++i) best.value = improve(where, i, best.value);
    }
    return best;
  }

private:
  double improve(Elsewhere& where, std::size_t i, double value) const {
    for (const double side : {-1.0, 1.0}) {
      Elsewhere trial = where;
      trial[i] = side;
      if (i >= 8) trial[i == 8 ? 9 : 8] = 0.0; // the direction leaves its cone at a corner of both
      const double moved = seen(trial);
      if (moved > value) {
        value = moved;
        where = trial;
      }
    }
    return value;
  }
};

/// The greatest of a quantity that is found by moving the measurements within their tolerances, at one attitude.
template <class F>
double greatest_within(const Driveline& driveline, const Position& pin, const DrivelineTolerance& tolerance,
                       const Attitude& attitude, const F& f) {
  const Triple at{attitude.yaw.value(), attitude.pitch.value(), attitude.roll.value()};
  return WithinTolerances<F>{driveline, pin, tolerance, at, f}.attained().value;
}

/// Tolerances of one driveline: searches with the allowance, then the measurements one by one.
class TolerantEnveloper {
public:
  TolerantEnveloper(const Driveline& driveline, const Position& pin, const DrivelineTolerance& tolerance,
                    const AttitudeRange& range, const EnvelopeOptions& options)
      : driveline_(driveline), pin_(pin), tolerance_(tolerance), range_(range), options_(options),
        domain_(domain(range)), shafts_(lines(driveline, pin)), slack_(slack(driveline, tolerance)) {}

  TolerantEnvelope run(const DrivelineEnvelope& exact) {
    TolerantEnvelope t;
    t.envelope = exact;
    const double least = exact.shortest.lower.value() - slack_.size();
    check::positive(least, {"driveline_envelope", "shortest joint centre distance less all tolerances", "m"});
    const double length_gap = 0.98 * options_.length_gap.value();
    const double angle_gap = 0.98 * options_.angle_gap.value();
    length(t.envelope.shortest, t.shortest, TolerantSquare(shafts_, -1.0, length_gap), -1.0,
           &DrivelineLimits::shortest);
    length(t.envelope.longest, t.longest, TolerantSquare(shafts_, 1.0, length_gap), 1.0, &DrivelineLimits::longest);
    angle(t.envelope.front_angle, t.front_angle, TolerantAngle(shafts_, End::front, angle_gap, least),
          &DrivelineState::front_angle, &DrivelineLimits::front_angle);
    angle(t.envelope.rear_angle, t.rear_angle, TolerantAngle(shafts_, End::rear, angle_gap, least),
          &DrivelineState::rear_angle, &DrivelineLimits::rear_angle);
    difference(t, exact, least);
    variation(t.envelope, exact, least);
    return t;
  }

private:
  template <class Objective> SearchResult search(const Objective& objective, const SearchQuestion& asked) const {
    const Tolerant<Objective> tolerant(objective, shafts_, slack_);
    return Search<Tolerant<Objective>>(tolerant, domain_, options_.budget).run(asked.known, asked.enough);
  }

  template <class Objective>
  void length(Extreme<Length>& extreme, Influence<Length>& influence, const Objective& objective, double sign,
              LimitOf<Length> of) {
    if (skips(options_, of)) return;
    const SearchResult r = search(objective, question(options_, of, objective, sign));
    const auto f = [sign](const DrivelineState& s) { return sign * s.length.value(); };
    const double bound = objective.length(r.upper);
    const Attained a = attained(r.at, f, keeps(of, bound, sign));
    const double value = sign * a.value;
    extreme = detail::extreme<Length>(value, sign > 0.0 ? value : std::min(bound, value),
                                      sign > 0.0 ? std::max(bound, value) : value, r.at, options_.length_gap.value());
    influence = {a.most, metres(a.amount)};
  }

  template <class Objective>
  void angle(Extreme<Angle>& extreme, Influence<Angle>& influence, const Objective& objective,
             Angle DrivelineState::*member, LimitOf<Angle> of) {
    if (skips(options_, of)) return;
    const SearchResult r = search(objective, question(options_, of, objective));
    const double bound = objective.angle(r.upper);
    const auto f = [member](const DrivelineState& s) { return (s.*member).value(); };
    const Attained a = attained(r.at, f, keeps(of, bound));
    extreme = detail::extreme<Angle>(a.value, a.value, std::max(a.value, bound), r.at, options_.angle_gap.value());
    influence = {a.most, radians(a.amount)};
  }

  /// The difference moves by no more than both angles: by the turn of the centre line for each, and of the input shaft.
  void difference(TolerantEnvelope& t, const DrivelineEnvelope& exact, double least) {
    if (skips(options_, &DrivelineLimits::difference)) return;
    const double change = 2.0 * line_turn(least) + slack_.turn;
    Extreme<Angle>& d = t.envelope.difference;
    if (options_.limits)
      d = Enveloper(driveline_, pin_, range_, options_)
              .difference_with(exact.shortest.lower.value(), options_.limits->difference->value() - change);
    const double upper = d.upper.value() + change;
    const Triple at = triple(d.at);
    const Attained a = attained(
        at, [](const DrivelineState& s) { return math::abs(s.difference).value(); },
        keeps(&DrivelineLimits::difference, upper));
    d = extreme<Angle>(a.value, a.value, std::max(a.value, upper), at, options_.angle_gap.value());
    t.difference = {a.most, radians(a.amount)};
  }

  /// Greatest turn of the centre line by the tolerances.
  double line_turn(double least) const noexcept {
    return std::asin(std::min(1.0, slack_.size() / (least + slack_.size())));
  }

  /// By the greatest change that the tolerances can bring, from the greatest angles.
  void variation(DrivelineEnvelope& e, const DrivelineEnvelope& exact, double least) {
    if (!exact.speed_variation) return;
    if (driveline_.wide_angle_front || driveline_.wide_angle_rear) {
      if (!(driveline_.wide_angle_front && driveline_.wide_angle_rear))
        e.speed_variation =
            variation_of(driveline_.wide_angle_front ? e.rear_angle : e.front_angle, options_.variation_gap);
      return;
    }
    const double u = exact.speed_variation->upper;
    double upper = std::numeric_limits<double>::infinity();
    if (is_finite(u)) {
      const double unevenness = u * u / (std::sqrt(u * u + 4.0) + 2.0); // k + 1/k - 2, without cancellation
      upper = variation_from(unevenness + unevenness_change(unevenness, e.front_angle.upper.value(),
                                                            e.rear_angle.upper.value(), pi, line_turn(least),
                                                            slack_.turn, driveline_.yoke_phase == Angle{}));
    }
    const Triple at = triple(exact.speed_variation->at);
    const Attained a = attained(at, [](const DrivelineState& s) { return s.speed_variation; });
    e.speed_variation = extreme<double>(a.value, a.value, std::max(a.value, upper), at, options_.variation_gap);
  }

  static Triple triple(const Attitude& a) noexcept { return {a.yaw.value(), a.pitch.value(), a.roll.value()}; }

  /// Whether only limits are asked about and a bound keeps the one of its extreme: what is attained then matters
  /// little.
  template <class Q> bool keeps(LimitOf<Q> of, double bound, double sign = 1.0) const {
    return options_.limits && sign * bound <= sign * ((*options_.limits).*of)->value();
  }

  /// With the measurements as stated where that suffices.
  template <class F> Attained attained(const Triple& at, const F& f, bool as_stated = false) const {
    const WithinTolerances<F> within{driveline_, pin_, tolerance_, at, f};
    return as_stated ? Attained{within.seen({}), Measurement::front_joint, 0.0} : within.attained();
  }

  const Driveline& driveline_;
  const Position& pin_;
  const DrivelineTolerance& tolerance_;
  const AttitudeRange& range_;
  const EnvelopeOptions& options_;
  Domain domain_;
  Shafts shafts_;
  Slack slack_;
};

} // namespace detail

/// The envelope of every driveline within the tolerances at once, with proved bounds, and what matters most.
///
///   driveline, pin, range, options  as for the envelope without tolerances
///   tolerance  of each measurement, at least 0; of the direction at most 0.5 rad
/// Every extreme's bounds hold for all drivelines within the tolerances and all attitudes of the range; `value` is
/// attained by one of them. Bounds are wider than the wanted gap where tolerances are large: remainders of the second
/// order are bounded, not followed, and difference and speed variation by their greatest change. `gap` says what was
/// reached and `proved` whether it is the wanted one. Source: branch and bound as without tolerances, the allowance of
/// this header on top. Example: both joints 0.5 m from the pin, straight, pin distance ± 10 mm: longest 1000 mm to 1010
/// mm.
inline TolerantEnvelope driveline_envelope(const Driveline& driveline, const Position& pin,
                                           const DrivelineTolerance& tolerance, const AttitudeRange& range,
                                           const EnvelopeOptions& options = {}) {
  check::tolerance(tolerance, "driveline_envelope");
  EnvelopeOptions alone = options;
  if (options.limits) alone.limits = DrivelineLimits{}; // the shortest distance, on which the others rest
  const DrivelineEnvelope exact = driveline_envelope(driveline, pin, range, alone);
  if (detail::leaning(driveline, pin, range) < 0.0) {
    const Driveline other = mirrored(driveline);
    const Position other_pin = mirrored(pin);
    const AttitudeRange other_range = mirrored(range);
    TolerantEnvelope t =
        detail::TolerantEnveloper(other, other_pin, tolerance, other_range, options).run(mirrored(exact));
    t.envelope = mirrored(t.envelope);
    return t;
  }
  return detail::TolerantEnveloper(driveline, pin, tolerance, range, options).run(exact);
}

} // namespace v0
} // namespace fieldshaft
