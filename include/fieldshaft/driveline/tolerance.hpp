#pragma once
// The envelope for every driveline within the tolerances of the measurements at once.
//
// Moving the joint centres by d changes an objective by its slope in the centre line times d, at most, and a remainder
// of the second order. The slope changes with the attitude no faster than the second derivative allows, so the search
// of search.hpp runs on the objective plus that allowance.

#include <fieldshaft/driveline/envelope.hpp>

#include <array>

namespace fieldshaft {
inline namespace v0 {

/// What a tape and a level measure for a trailed driveline.
enum class Measurement {
  front_joint,     ///< PTO shaft end to front joint centre
  pin_distance,    ///< PTO shaft end to pin
  pin_lateral,     ///< pin left of the PTO axis
  pin_drop,        ///< pin below the PTO axis
  rear_joint,      ///< input shaft end to rear joint centre
  input_behind,    ///< pin to input shaft end, rearwards
  input_left,      ///< input shaft end left of the pin
  input_up,        ///< input shaft end above the pin
  input_direction, ///< where the input shaft points
};
inline constexpr std::size_t measurement_count = 9;

/// How far the true value of each measurement may lie from the stated one, to either side.
struct DrivelineTolerance {
  Length front_joint{};
  Length pin_distance{};
  Length pin_lateral{};
  Length pin_drop{};
  Length rear_joint{};
  Length input_behind{};
  Length input_left{};
  Length input_up{};
  Angle input_direction{}; ///< the shaft points anywhere in a cone of this half angle
};

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

namespace check {
inline void tolerance(const DrivelineTolerance& t, const char* function) {
  const Length lengths[] = {t.front_joint, t.pin_distance, t.pin_lateral, t.pin_drop,
                            t.rear_joint,  t.input_behind, t.input_left,  t.input_up};
  const char* const names[] = {"tolerance.front_joint", "tolerance.pin_distance", "tolerance.pin_lateral",
                               "tolerance.pin_drop",    "tolerance.rear_joint",   "tolerance.input_behind",
                               "tolerance.input_left",  "tolerance.input_up"};
  for (std::size_t i = 0; i < 8; ++i) not_negative(lengths[i].value(), {function, names[i], "m"});
  within(t.input_direction.value(), 0.0, 0.5, {function, "tolerance.input_direction", "rad"});
}
} // namespace check

namespace detail {

/// By how much the joint centres may stand elsewhere.
struct Slack {
  Eigen::Vector3d pin;   ///< front joint to pin, along the tractor's axes
  Eigen::Vector3d joint; ///< pin to rear joint, along the implement's axes
  Eigen::Vector3d axis;  ///< direction of the input shaft, along which the rear joint may slide ...
  double slide;          ///< ... by this much
  double swing;          ///< and swing to any side by this much, as the shaft points elsewhere
  double turn;           ///< of the input shaft's direction [rad]

  double tractor_size() const noexcept { return pin.norm(); }
  double implement_size() const noexcept { return joint.norm() + slide + swing; }
  double size() const noexcept { return tractor_size() + implement_size(); }

  /// Greatest product of a fixed vector with the displacement of the centre line.
  double most(const Eigen::Vector3d& in_tractor, const Eigen::Vector3d& in_implement) const noexcept {
    return in_tractor.cwiseAbs().dot(pin) + in_implement.cwiseAbs().dot(joint) +
           std::abs(in_implement.dot(axis)) * slide + in_implement.norm() * swing;
  }
};

inline Slack slack(const Driveline& d, const DrivelineTolerance& t) noexcept {
  const double turn = t.input_direction.value();
  const double chord = 2.0 * std::sin(0.5 * turn) * (d.rear_joint + t.rear_joint).value();
  const Eigen::Vector3d pin(t.pin_distance.value(), t.pin_lateral.value(), t.pin_drop.value());
  return {pin + t.front_joint.value() * d.output_direction.unit().cwiseAbs(),
          {t.input_behind.value(), t.input_left.value(), t.input_up.value()},
          d.input_direction.unit(),
          t.rear_joint.value(),
          chord,
          turn};
}

/// Slope of an objective in the centre line and bounds for it over a box and all tolerances.
struct LineSlope {
  Eigen::Vector3d slope;             ///< at the middle
  double size;                       ///< bound of its size
  double change;                     ///< bound of the second derivative
  bool moves_with_implement = false; ///< the slope keeps its place in the implement frame rather than the tractor's
  double direct = 0.0;               ///< further change by the direction of the input shaft, at the middle
  double direct_change = 0.0;        ///< and by how much that changes per |d|
};

/// An objective with the allowance for all tolerances on top.
template <class Objective> class Tolerant {
public:
  Tolerant(const Objective& objective, const Shafts& shafts, const Slack& slack)
      : objective_(objective), shafts_(shafts), slack_(slack) {}

  double value(const Triple& at) const noexcept { return expand(at, 0.0).jet.value; }

  Expansion expand(const Triple& at, double size) const noexcept {
    Expansion e = objective_.expand(at, size);
    const Eigen::Matrix3d turn = text::rotation(at[0], at[1], at[2]);
    const Eigen::Vector3d line = shafts_.lines().to_pin + turn * shafts_.lines().to_joint;
    const double length = line.norm();
    const double least = shafts_.least_length(length, size) - slack_.size();
    if (!(least > 0.0)) {
      e.third = e.spread = std::numeric_limits<double>::infinity();
      return e;
    }
    const double farthest = length + std::min(shafts_.pin_arm(), shafts_.joint_arm()) * size + slack_.size();
    const LineSlope s = objective_.line_slope(line, turn, least, farthest, slack_);
    const double second = objective_.second_order(s, slack_);
    e.jet.value += slack_.most(s.slope, turn.transpose() * s.slope) + s.direct + second;
    e.wobble = wobble(s);
    return e;
  }
  double slope_rounding() const noexcept { return objective_.slope_rounding(); }
  double target(double best) const noexcept { return objective_.target(best); }

private:
  /// Mixed derivative in attitude and displacement, times the displacement: by how much at most the allowance changes
  /// with the attitude, and the slope of the objective with the tolerances. The line's own change is that of the arm
  /// that turns.
  double wobble(const LineSlope& s) const noexcept {
    const double in_place = s.moves_with_implement ? slack_.implement_size() : slack_.tractor_size();
    const double turning = slack_.size() - in_place;
    const double arm = s.moves_with_implement ? shafts_.pin_arm() + slack_.tractor_size()
                                              : shafts_.joint_arm() + slack_.implement_size();
    return s.change * arm * slack_.size() + s.size * turning + s.direct_change;
  }

  const Objective& objective_;
  const Shafts& shafts_;
  const Slack& slack_;
};

/// The squared length: its slope in the line is twice the line, its second derivative 2.
class TolerantSquare : public SquareObjective {
public:
  TolerantSquare(const Shafts& shafts, double sign, double gap) : SquareObjective(shafts, sign, gap), sign_(sign) {}

  LineSlope line_slope(const Eigen::Vector3d& line, const Eigen::Matrix3d& /*turn*/, double /*least*/, double farthest,
                       const Slack& /*slack*/) const noexcept {
    return {sign_ * 2.0 * line, 2.0 * farthest, 2.0};
  }
  double second_order(const LineSlope& /*slope*/, const Slack& slack) const noexcept {
    return sign_ > 0.0 ? slack.size() * slack.size() : 0.0; // minus a square only lowers
  }

private:
  double sign_;
};

/// Minus a joint cosine.
class TolerantAngle : public AngleObjective {
public:
  TolerantAngle(const Shafts& shafts, End end, double gap, double least_length)
      : AngleObjective(shafts, end, gap, least_length), shafts_(shafts), end_(end) {}

  LineSlope line_slope(const Eigen::Vector3d& line, const Eigen::Matrix3d& turn, double least, double /*farthest*/,
                       const Slack& slack) const noexcept {
    const Eigen::Vector3d shaft =
        end_ == End::front ? shafts_.lines().output : Eigen::Vector3d(-(turn * shafts_.lines().input));
    const double length = line.norm();
    const Eigen::Vector3d n = line / length;
    const Eigen::Vector3d across = shaft - shaft.dot(n) * n;
    constexpr double second = 1.1547005383792517; // of a direction, see jet.hpp
    LineSlope s{-across / length, 1.0 / least, second / (least * least)};
    if (end_ == End::rear) {
      // cos(b + t) >= cos b - t sin b - t²/2, where the sine itself changes with tolerances and attitude
      s.direct = slack.turn * (across.norm() + slack.size() / least) + 0.5 * slack.turn * slack.turn;
      s.direct_change = slack.turn * (shafts_.pin_arm() + slack.tractor_size()) / least;
      s.moves_with_implement = true;
    }
    return s;
  }
  double second_order(const LineSlope& s, const Slack& slack) const noexcept {
    return 0.5 * s.change * slack.size() * slack.size();
  }

private:
  const Shafts& shafts_;
  End end_;
};

/// A driveline and pin with some measurements elsewhere within their tolerances: `at` counts each from -1 to 1, the
/// direction by its turn and its rise.
using Elsewhere = std::array<double, measurement_count + 1>;

struct Built {
  Driveline driveline;
  Position pin;
};

inline Built built(const Driveline& driveline, const Position& pin, const DrivelineTolerance& t, const Elsewhere& at) {
  Built b{driveline, pin};
  b.driveline.front_joint = std::max(Length{}, driveline.front_joint + at[0] * t.front_joint);
  b.pin = pin + Position(-at[1] * t.pin_distance, at[2] * t.pin_lateral, -at[3] * t.pin_drop);
  b.driveline.rear_joint = std::max(Length{}, driveline.rear_joint + at[4] * t.rear_joint);
  b.driveline.input = driveline.input + Position(-at[5] * t.input_behind, at[6] * t.input_left, at[7] * t.input_up);
  if (at[8] != 0.0 || at[9] != 0.0) {
    const Eigen::Vector3d axis = driveline.input_direction.unit();
    const Eigen::Vector3d side = Eigen::Vector3d::UnitZ().cross(axis).norm() > 0.1
                                     ? Eigen::Vector3d::UnitZ().cross(axis).normalized()
                                     : Eigen::Vector3d::UnitY();
    const Eigen::Vector3d up = axis.cross(side);
    const double angle = std::hypot(at[8], at[9]) * t.input_direction.value();
    const Eigen::Vector3d to = (at[8] * side + at[9] * up).normalized();
    b.driveline.input_direction = Direction::from_unit(std::cos(angle) * axis + std::sin(angle) * to);
  }
  return b;
}

/// Tolerances of one driveline: searches with the allowance, then the measurements one by one.
class TolerantEnveloper {
public:
  TolerantEnveloper(const Driveline& driveline, const Position& pin, const DrivelineTolerance& tolerance,
                    const AttitudeRange& range, const EnvelopeOptions& options)
      : driveline_(driveline), pin_(pin), tolerance_(tolerance), options_(options), domain_(domain(range)),
        shafts_(lines(driveline, pin)), slack_(slack(driveline, tolerance)) {}

  TolerantEnvelope run(const DrivelineEnvelope& exact) {
    TolerantEnvelope t;
    t.envelope = exact;
    const double least = exact.shortest.lower.value() - slack_.size();
    check::positive(least, {"driveline_envelope", "shortest joint centre distance less all tolerances", "m"});
    const double length_gap = 0.98 * options_.length_gap.value();
    const double angle_gap = 0.98 * options_.angle_gap.value();
    length(t.envelope.shortest, t.shortest, TolerantSquare(shafts_, -1.0, length_gap), -1.0);
    length(t.envelope.longest, t.longest, TolerantSquare(shafts_, 1.0, length_gap), 1.0);
    angle(t.envelope.front_angle, t.front_angle, TolerantAngle(shafts_, End::front, angle_gap, least),
          &DrivelineState::front_angle);
    angle(t.envelope.rear_angle, t.rear_angle, TolerantAngle(shafts_, End::rear, angle_gap, least),
          &DrivelineState::rear_angle);
    difference(t, exact, least);
    variation(t.envelope, exact, least);
    return t;
  }

private:
  template <class Objective> SearchResult search(const Objective& objective) const {
    const Tolerant<Objective> tolerant(objective, shafts_, slack_);
    return Search<Tolerant<Objective>>(tolerant, domain_, options_.budget).run();
  }

  template <class Objective>
  void length(Extreme<Length>& extreme, Influence<Length>& influence, const Objective& objective, double sign) {
    const SearchResult r = search(objective);
    const auto f = [sign](const DrivelineState& s) { return sign * s.length.value(); };
    const Attained a = attained(r.at, f);
    const double bound = objective.length(r.upper);
    const double value = sign * a.value;
    extreme = detail::extreme<Length>(value, sign > 0.0 ? value : std::min(bound, value),
                                      sign > 0.0 ? std::max(bound, value) : value, r.at, options_.length_gap.value());
    influence = {a.most, metres(a.amount)};
  }

  template <class Objective>
  void angle(Extreme<Angle>& extreme, Influence<Angle>& influence, const Objective& objective,
             Angle DrivelineState::*member) {
    const SearchResult r = search(objective);
    const Attained a = attained(r.at, [member](const DrivelineState& s) { return (s.*member).value(); });
    extreme = detail::extreme<Angle>(a.value, a.value, std::max(a.value, objective.angle(r.upper)), r.at,
                                     options_.angle_gap.value());
    influence = {a.most, radians(a.amount)};
  }

  /// The difference moves by no more than both angles: by the turn of the centre line for each, and of the input shaft.
  void difference(TolerantEnvelope& t, const DrivelineEnvelope& exact, double least) {
    Extreme<Angle>& d = t.envelope.difference;
    const Triple at = triple(exact.difference.at);
    const Attained a = attained(at, [](const DrivelineState& s) { return math::abs(s.difference).value(); });
    const double change = 2.0 * line_turn(least) + slack_.turn;
    d = extreme<Angle>(a.value, a.value, std::max(a.value, exact.difference.upper.value() + change), at,
                       options_.angle_gap.value());
    t.difference = {a.most, radians(a.amount)};
  }

  /// Greatest turn of the centre line by the tolerances.
  double line_turn(double least) const noexcept {
    return std::asin(std::min(1.0, slack_.size() / (least + slack_.size())));
  }

  /// k + 1/k = (1 - c12²)/(c1 c2) + 2 c12 changes by no more than its slopes in the three cosines times their changes.
  void variation(DrivelineEnvelope& e, const DrivelineEnvelope& exact, double least) {
    if (!exact.speed_variation) return;
    if (driveline_.wide_angle_front || driveline_.wide_angle_rear) {
      if (!(driveline_.wide_angle_front && driveline_.wide_angle_rear))
        e.speed_variation =
            variation_of(driveline_.wide_angle_front ? e.rear_angle : e.front_angle, options_.variation_gap);
      return;
    }
    const double c1 = std::cos(e.front_angle.upper.value());
    const double c2 = std::cos(e.rear_angle.upper.value());
    const bool bounded = driveline_.yoke_phase == Angle{} && c1 > 0.0 && c2 > 0.0;
    double upper = std::numeric_limits<double>::infinity();
    if (bounded) {
      const double bend = std::min(0.5 * pi, (e.front_angle.upper + e.rear_angle.upper).value());
      const double turn = 2.0 * std::sin(0.5 * line_turn(least));
      const double slope = math::power<2>(std::sin(bend)) / (c1 * c2);
      const double change =
          slope * (turn / c1 + (turn + slack_.turn) / c2) + 2.0 * (1.0 + 1.0 / (c1 * c2)) * slack_.turn;
      const double u = exact.speed_variation->upper;
      const double unevenness = u * u / (std::sqrt(u * u + 4.0) + 2.0);
      upper = variation_from(unevenness + change);
    }
    const Triple at = triple(exact.speed_variation->at);
    const Attained a = attained(at, [](const DrivelineState& s) { return s.speed_variation; });
    e.speed_variation = extreme<double>(a.value, a.value, std::max(a.value, upper), at, options_.variation_gap);
  }

  static Triple triple(const Attitude& a) noexcept { return {a.yaw.value(), a.pitch.value(), a.roll.value()}; }

  struct Attained {
    double value;
    Measurement most;
    double amount;
  };

  template <class F> double seen(const Triple& at, const Elsewhere& where, const F& f) const {
    const Built b = built(driveline_, pin_, tolerance_, where);
    return f(state(b.driveline, lines(b.driveline, b.pin), text::rotation(at[0], at[1], at[2])));
  }

  /// Moves each measurement to the end of its tolerance that raises f most, twice round, and notes which moved it most.
  template <class F> Attained attained(const Triple& at, const F& f) const {
    Elsewhere where{};
    const double stated = seen(at, where, f);
    Attained best{stated, Measurement::front_joint, 0.0};
    for (std::size_t i = 0; i < where.size(); ++i) {
      for (const double side : {-1.0, 1.0}) {
        Elsewhere alone{};
        alone[i] = side;
        const double amount = seen(at, alone, f) - stated;
        if (amount > best.amount) best = {stated, static_cast<Measurement>(std::min(i, measurement_count - 1)), amount};
      }
    }
    for (int round = 0; round < 2; ++round) {
      for (std::size_t i = 0; i < where.size(); ++i) best.value = improve(at, where, i, best.value, f);
    }
    return best;
  }

  template <class F> double improve(const Triple& at, Elsewhere& where, std::size_t i, double value, const F& f) const {
    for (const double side : {-1.0, 1.0}) {
      Elsewhere trial = where;
      trial[i] = side;
      if (i >= 8) trial[i == 8 ? 9 : 8] = 0.0; // the direction leaves its cone at a corner of both
      const double moved = seen(at, trial, f);
      if (moved > value) {
        value = moved;
        where = trial;
      }
    }
    return value;
  }

  const Driveline& driveline_;
  const Position& pin_;
  const DrivelineTolerance& tolerance_;
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
/// reached and `proved` whether it is the wanted one. With yokes that are not in line the speed variation has no upper
/// bound here. Source: branch and bound as without tolerances, the allowance of this header on top. Example: both
/// joints 0.5 m from the pin, straight, pin distance ± 10 mm: longest 1000 mm to 1010 mm.
inline TolerantEnvelope driveline_envelope(const Driveline& driveline, const Position& pin,
                                           const DrivelineTolerance& tolerance, const AttitudeRange& range,
                                           const EnvelopeOptions& options = {}) {
  check::tolerance(tolerance, "driveline_envelope");
  const DrivelineEnvelope exact = driveline_envelope(driveline, pin, range, options);
  if (detail::leaning(driveline, pin, range) < 0.0) {
    const Driveline other = mirrored(driveline);
    const Position other_pin = mirrored(pin);
    TolerantEnvelope t =
        detail::TolerantEnveloper(other, other_pin, tolerance, mirrored(range), options).run(mirrored(exact));
    t.envelope = mirrored(t.envelope);
    return t;
  }
  return detail::TolerantEnveloper(driveline, pin, tolerance, range, options).run(exact);
}

} // namespace v0
} // namespace fieldshaft
