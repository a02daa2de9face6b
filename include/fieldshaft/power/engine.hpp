#pragma once
// The engine at full throttle: its torque curve below rated speed and its governor line above.

#include <fieldshaft/core/check.hpp>
#include <fieldshaft/core/validity.hpp>
#include <fieldshaft/power/basis.hpp>
#include <fieldshaft/power/torque.hpp>

#include <optional>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// A point of a torque curve.
struct EnginePoint {
  AngularSpeed speed;
  Torque torque;
};

/// What an engine can give at full throttle, as it reaches the PTO: at every engine speed the PTO power over the engine
/// speed. A curve measured at the flywheel is brought here with a share (see basis.hpp) that the caller names.
///
/// From the lowest point to rated speed the full-load curve runs straight from point to point; above it the governor
/// line falls from point to point, and straight from the last one to no torque at high idle. Below the lowest point
/// nothing is known.
class EngineLine {
public:
  /// points       speeds strictly increasing, above 0; torques above 0, and falling above rated speed; at least one
  /// high_idle    engine speed without load at full throttle [rad/s], above every point
  /// rated_speed  that of one of the points [rad/s]; unstated, of the last one: a governor line without points
  EngineLine(std::vector<EnginePoint> points, AngularSpeed high_idle, std::optional<AngularSpeed> rated_speed = {})
      : points_(std::move(points)), high_idle_(high_idle) {
    constexpr const char* function = "EngineLine";
    if (points_.empty()) fail_input(function, "points", "none", "at least one point");
    AngularSpeed before{};
    for (const EnginePoint& point : points_) {
      check::positive(point.torque.value(), {function, "points.torque", "N·m"});
      check::finite(point.speed.value(), {function, "points.speed", "rad/s"});
      if (!(point.speed > before)) {
        check::fail_bound({function, "points.speed", "rad/s"}, point.speed.value(), "above the one before, ",
                          before.value());
      }
      before = point.speed;
    }
    check::finite(high_idle.value(), {function, "high_idle", "rad/s"});
    if (!(high_idle > before)) {
      check::fail_bound({function, "high_idle", "rad/s"}, high_idle.value(), "above the rated speed and every point, ",
                        before.value());
    }
    rated_ = place_of_rated(rated_speed.value_or(before));
    for (std::size_t i = rated_ + 1; i < points_.size(); ++i) {
      if (points_[i].torque < points_[i - 1].torque) continue;
      check::fail_bound({function, "points.torque", "N·m"}, points_[i].torque.value(),
                        "on the governor line, below the one before, ", points_[i - 1].torque.value());
    }
  }

  const std::vector<EnginePoint>& points() const noexcept { return points_; }
  const EnginePoint& rated() const noexcept { return points_[rated_]; }
  AngularSpeed rated_speed() const noexcept { return rated().speed; }
  AngularSpeed high_idle() const noexcept { return high_idle_; }
  PtoPower rated_power() const { return {text::shaft_power(rated().torque, rated().speed)}; }

  /// The point of greatest torque; the fastest of several equal ones.
  const EnginePoint& peak() const noexcept {
    const EnginePoint* best = &points_.back();
    for (auto point = points_.rbegin(); point != points_.rend(); ++point) {
      if (point->torque > best->torque) best = &*point;
    }
    return *best;
  }

  /// Torque that the engine can hold at a speed [N·m].
  ///   speed  of the engine [rad/s], at least 0
  /// Outside: below the lowest point, and above high idle, where the load drives the engine; the value is 0 there.
  Validated<Torque> torque_at(AngularSpeed speed) const {
    check::not_negative(speed.value(), {"EngineLine::torque_at", "speed", "rad/s"});
    if (speed < points_.front().speed) return {Torque{}, "below the lowest speed of the torque curve"};
    if (speed > high_idle_) return {Torque{}, "above high idle: the load drives the engine"};
    std::size_t above = 1;
    while (above < points_.size() && speed > points_[above].speed) ++above;
    const EnginePoint& low = points_[above - 1];
    const EnginePoint high = above == points_.size() ? EnginePoint{high_idle_, Torque{}} : points_[above];
    const double part = (speed - low.speed) / (high.speed - low.speed);
    return {(1.0 - part) * low.torque + part * high.torque};
  }

  /// PTO power that the engine can give at an engine speed [W]. Domain as torque_at.
  Validated<Power> power_at(AngularSpeed speed) const {
    const Validated<Torque> torque = torque_at(speed);
    return {text::shaft_power(torque.value, speed), torque.outside};
  }

  /// Engine speed at full throttle under a load [rad/s].
  ///   load  torque that the machine asks of the engine, at the engine [N·m], at least 0
  /// From high idle down the governor line; a load above rated torque lugs the engine down the curve to the first speed
  /// that carries it. Outside: more than the curve carries; the engine stalls and the value is 0.
  Validated<AngularSpeed> speed_under(Torque load) const {
    check::not_negative(load.value(), {"EngineLine::speed_under", "load", "N·m"});
    EnginePoint fast{high_idle_, Torque{}};
    for (auto slow = points_.rbegin(); slow != points_.rend(); ++slow) {
      if (load <= slow->torque) {
        const double part = (load - fast.torque) / (slow->torque - fast.torque);
        return {(1.0 - part) * fast.speed + part * slow->speed};
      }
      fast = *slow;
    }
    return {AngularSpeed{}, "more than the greatest torque: the engine stalls"};
  }

  /// Greatest PTO power of the line and the engine speed at which it occurs.
  struct PowerPoint {
    AngularSpeed speed;
    PtoPower power;
  };
  PowerPoint greatest_power() const {
    PowerPoint best{rated().speed, rated_power()};
    EnginePoint fast{high_idle_, Torque{}};
    for (auto slow = points_.rbegin(); slow != points_.rend(); ++slow) {
      const AngularSpeed at = speed_of_greatest_power(*slow, fast);
      const Power power = power_at(at).value;
      if (power > best.power.power) best = {at, {power}};
      fast = *slow;
    }
    return best;
  }

private:
  std::size_t place_of_rated(AngularSpeed rated_speed) const {
    for (std::size_t i = 0; i < points_.size(); ++i) {
      if (points_[i].speed == rated_speed) return i;
    }
    fail_input("EngineLine", "rated_speed", check::text_of(rated_speed.value(), "rad/s"),
               "the speed of one of the points");
  }

  /// Where torque times speed is greatest on a straight piece: the vertex of a parabola, kept inside the piece.
  static AngularSpeed speed_of_greatest_power(const EnginePoint& slow, const EnginePoint& fast) {
    const double run = (fast.speed - slow.speed).value();
    const double slope = (fast.torque - slow.torque).value() / run;
    const double steady = slow.torque.value() - slope * slow.speed.value();
    if (slope >= 0.0) return fast.speed;
    const double vertex = -0.5 * steady / slope;
    return radians_per_second(std::fmin(std::fmax(vertex, slow.speed.value()), fast.speed.value()));
  }

  std::vector<EnginePoint> points_;
  AngularSpeed high_idle_;
  std::size_t rated_ = 0;
};

/// An engine line from what a data sheet states: rated power, torque rise and two or three speeds.
///
///   rated_power  at the PTO [W], above 0
///   rated_speed  of the engine [rad/s], above 0
///   torque_rise  (peak torque - rated torque) / rated torque, at least 0
///   peak_speed   engine speed at the greatest torque [rad/s], above 0, below the rated speed
///   high_idle    [rad/s], above the rated speed
/// The curve between both points is taken as straight; a real one bulges above that line, so the line is on the safe
/// side. Source: definition of the torque rise. Example: 75 kW at 2200 r/min, 30 % at 1400, idle 2350: 325.5 and 423.2
/// N·m.
inline EngineLine engine_line(PtoPower rated_power, AngularSpeed rated_speed, double torque_rise,
                              AngularSpeed peak_speed, AngularSpeed high_idle) {
  check::positive(rated_power.power.value(), {"engine_line", "rated_power", "W"});
  check::positive(rated_speed.value(), {"engine_line", "rated_speed", "rad/s"});
  check::not_negative(torque_rise, {"engine_line", "torque_rise", ""});
  check::between(peak_speed.value(), 0.0, rated_speed.value(), {"engine_line", "peak_speed", "rad/s"});
  const Torque rated = text::shaft_torque(rated_power.power, rated_speed);
  return EngineLine({{peak_speed, (1.0 + torque_rise) * rated}, {rated_speed, rated}}, high_idle);
}

/// The same where the torque rise is not known: rated point and governor line only.
inline EngineLine engine_line(PtoPower rated_power, AngularSpeed rated_speed, AngularSpeed high_idle) {
  check::positive(rated_power.power.value(), {"engine_line", "rated_power", "W"});
  check::positive(rated_speed.value(), {"engine_line", "rated_speed", "rad/s"});
  return EngineLine({{rated_speed, text::shaft_torque(rated_power.power, rated_speed)}}, high_idle);
}

/// Torque rise (back-up): the peak torque over the rated one, less one [-].
///
/// rise = (Tpeak - Trated) / Trated
///   peak   [N·m], at least the rated torque
///   rated  [N·m], above 0
/// Exact. Source: definition. Example: 423 N·m over 325 N·m: 0.30.
constexpr double torque_rise(Torque peak, Torque rated) {
  check::positive(rated.value(), {"torque_rise", "rated", "N·m"});
  check::at_least(peak.value(), rated.value(), {"torque_rise", "peak", "N·m"});
  return (peak - rated) / rated;
}

/// Torque that the engine can be lugged down to [N·m]: rated torque times one plus the torque rise.
///
///   rated        [N·m], above 0
///   torque_rise  at least 0
/// Source: definition of the torque rise. Example: 325 N·m and 0.30: 422.5 N·m.
constexpr Torque lugged_torque(Torque rated, double torque_rise) {
  check::positive(rated.value(), {"lugged_torque", "rated", "N·m"});
  check::not_negative(torque_rise, {"lugged_torque", "torque_rise", ""});
  return (1.0 + torque_rise) * rated;
}

/// Regulation of a governor [-].
///
/// regulation = 2 (high idle - rated) / (high idle + rated)
///   high_idle    [rad/s], at least the rated speed
///   rated_speed  at the governor's maximum [rad/s], above 0
/// Source: Goering & Hansen, Engine and Tractor Power (from memory). Example: 2350 and 2200 r/min: 6.59 %.
constexpr double governor_regulation(AngularSpeed high_idle, AngularSpeed rated_speed) {
  check::positive(rated_speed.value(), {"governor_regulation", "rated_speed", "rad/s"});
  check::at_least(high_idle.value(), rated_speed.value(), {"governor_regulation", "high_idle", "rad/s"});
  return 2.0 * (high_idle - rated_speed) / (high_idle + rated_speed);
}

/// High idle over rated speed, less one, as handbooks give it: no datum of a given tractor.
inline constexpr Sourced<double> least_idle_rise{0.05, {"handbook practice: 5 to 10 %", Standing::from_memory}};
inline constexpr Sourced<double> greatest_idle_rise{0.10, {"handbook practice: 5 to 10 %", Standing::from_memory}};

} // namespace v0
} // namespace fieldshaft
