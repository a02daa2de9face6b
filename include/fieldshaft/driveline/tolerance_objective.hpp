#pragma once
// Objectives with the allowance for all tolerances on top.
//
// Moving the joint centres by d changes an objective by its slope in the centre line times d, at most, and a remainder
// of the second order. The slope changes with the attitude no faster than the second derivative allows, so the search
// of search.hpp runs on the objective plus that allowance.

#include <fieldshaft/driveline/measurement.hpp>
#include <fieldshaft/driveline/objective.hpp>

namespace fieldshaft {
inline namespace v0 {
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

} // namespace detail
} // namespace v0
} // namespace fieldshaft
