#include "assess/influence.hpp"

#include <algorithm>
#include <cmath>

namespace fieldshaft {
inline namespace v0 {
namespace assessing {
namespace {

Stated<StateRange>& range_at(Case& value, MachineState state) {
  if (state == MachineState::turning) return value.range.turning;
  return state == MachineState::transport ? value.range.transport : value.range.working;
}

template <class Visit> void each_of_hitch(Hitch& hitch, const Visit& visit) {
  visit("tractor.hitch.distance", hitch.distance);
  visit("tractor.hitch.lateral", hitch.lateral);
  visit("tractor.hitch.drop", hitch.drop);
  visit("tractor.hitch.lower_pivot_behind", hitch.lower_pivot_behind);
  visit("tractor.hitch.lower_pivot_below", hitch.lower_pivot_below);
  visit("tractor.hitch.lower_link", hitch.lower_link);
  visit("tractor.hitch.top_pivot_behind", hitch.top_pivot_behind);
  visit("tractor.hitch.top_pivot_below", hitch.top_pivot_below);
  visit("tractor.hitch.top_link", hitch.top_link);
  visit("tractor.hitch.level_at", hitch.level_at);
  visit("tractor.hitch.span", hitch.span);
  visit("tractor.hitch.convergence", hitch.convergence);
  if (!hitch.quick_coupler) return;
  visit("tractor.hitch.quick_coupler.depth", hitch.quick_coupler->item.depth);
  visit("tractor.hitch.quick_coupler.rise", hitch.quick_coupler->item.rise);
}

template <class Visit> void each_of_implement(Implement& implement, const Visit& visit) {
  visit("implement.tongue_length", implement.tongue_length);
  visit("implement.track", implement.track);
  visit("implement.mast_height", implement.mast_height);
  visit("implement.mast_forward", implement.mast_forward);
  visit("implement.input.behind", implement.input.behind);
  visit("implement.input.above", implement.input.above);
  visit("implement.input.lateral", implement.input.lateral);
  visit("implement.input.yaw", implement.input.yaw);
  visit("implement.input.pitch", implement.input.pitch);
  if (implement.steering_pivot) {
    visit("implement.steering_pivot.behind", implement.steering_pivot->behind);
    visit("implement.steering_pivot.lateral", implement.steering_pivot->lateral);
  }
  if (!implement.support_wheels) return;
  visit("implement.support_wheels.behind", implement.support_wheels->item.behind);
  visit("implement.support_wheels.below", implement.support_wheels->item.below);
}

template <class Visit> void each_of_range(StateRange& range, const std::string& path, const Visit& visit) {
  visit(path + ".left_turn_radius", range.left_turn_radius);
  visit(path + ".right_turn_radius", range.right_turn_radius);
  visit(path + ".hollow_radius", range.hollow_radius);
  visit(path + ".crest_radius", range.crest_radius);
  visit(path + ".side_slope", range.side_slope);
  if (!range.wheel_drop) return;
  visit(path + ".wheel_drop.tractor_left", range.wheel_drop->tractor_left);
  visit(path + ".wheel_drop.tractor_right", range.wheel_drop->tractor_right);
  visit(path + ".wheel_drop.implement_left", range.wheel_drop->implement_left);
  visit(path + ".wheel_drop.implement_right", range.wheel_drop->implement_right);
}

/// Every measurement that the geometry of a state rests on, always in the same order.
template <class Visit> void each_measurement(Case& value, MachineState state, const Visit& visit) {
  visit("driveline.front_joint", value.driveline.front_joint);
  visit("driveline.rear_joint", value.driveline.rear_joint);
  visit("tractor.wheelbase", value.tractor.wheelbase);
  visit("tractor.rear_axle_ahead", value.tractor.rear_axle_ahead);
  visit("tractor.shaft_height", value.tractor.shaft_height);
  visit("tractor.track", value.tractor.track);
  each_of_hitch(value.tractor.hitch, visit);
  each_of_implement(value.implement, visit);
  each_of_range(*range_at(value, state), range_path(state), visit);
}

/// What the geometry of one state rests on, and no more, so that copies are cheap.
Case geometry_of(const Case& value, MachineState state) {
  Case geometry;
  geometry.tractor.hitch = value.tractor.hitch;
  geometry.tractor.wheelbase = value.tractor.wheelbase;
  geometry.tractor.rear_axle_ahead = value.tractor.rear_axle_ahead;
  geometry.tractor.shaft_height = value.tractor.shaft_height;
  geometry.tractor.track = value.tractor.track;
  geometry.implement = value.implement;
  geometry.implement.name.clear();
  geometry.driveline.front_joint_kind = value.driveline.front_joint_kind;
  geometry.driveline.rear_joint_kind = value.driveline.rear_joint_kind;
  geometry.driveline.yoke_phase = value.driveline.yoke_phase;
  geometry.driveline.front_joint = value.driveline.front_joint;
  geometry.driveline.rear_joint = value.driveline.rear_joint;
  geometry.driveline.adaptor = value.driveline.adaptor;
  range_at(geometry, state) = range_of(value, state);
  return geometry;
}

/// Where within the ranges of a state, measured as stated, a position lies.
Shares shares_of(const Case& value, const Positions& positions, const PoseAt& pose) {
  const auto share = [](const auto& range, auto at) {
    return range.low < range.high ? std::clamp((at - range.low).value() / (range.high - range.low).value(), 0.0, 1.0)
                                  : 0.0;
  };
  Shares shares;
  shares.turn = share(positions.yaw, pose.yaw);
  if (positions.sway)
    shares.turn = share(*positions.sway, -math::sin(pose.yaw) * value.tractor.hitch.convergence->value);
  shares.tilt = pose.lift ? share(positions.lift, *pose.lift) : share(positions.pitch, pose.pitch);
  shares.roll = share(positions.roll, pose.roll);
  if (positions.difference)
    shares.roll = share(*positions.difference, math::sin(pose.roll) * value.tractor.hitch.span->value);
  return shares;
}

/// The driveline there; nothing for a machine that cannot stand so.
std::optional<DrivelineState> driveline_of_machine(const Case& value, MachineState state, const Shares& shares) {
  try {
    return driveline_at(driveline_of(value), placed_at(value, positions_in(value, state), shares).pose);
  } catch (const InputError&) {
    return std::nullopt;
  }
}

} // namespace

MeasurementInfluence::MeasurementInfluence(const Case& value, MachineState state)
    : stated_(geometry_of(value, state)), state_(state), positions_(positions_in(value, state)) {
  each_measurement(stated_, state_, [this](const std::string&, auto& measured) {
    tolerances_.push_back(measured ? measured->tolerance.value() : 0.0);
    if (measured) measured->tolerance = {};
  });
}

std::optional<MattersMost>
MeasurementInfluence::on(const PoseAt& pose, const std::function<double(const DrivelineState&)>& of, Kind kind) const {
  const Shares shares = shares_of(stated_, positions_, pose);
  const auto as_stated = driveline_of_machine(stated_, state_, shares);
  if (!as_stated) return std::nullopt;
  std::optional<MattersMost> most;
  for (std::size_t i = 0; i < tolerances_.size(); ++i) {
    if (!(tolerances_[i] > 0.0)) continue;
    for (const double side : {-1.0, 1.0}) {
      Case moved = stated_;
      std::string entry;
      std::size_t at = 0;
      each_measurement(moved, state_, [&](const std::string& path, auto& measured) {
        if (at++ != i) return;
        entry = path;
        auto& length_or_angle = measured->value;
        length_or_angle += std::decay_t<decltype(length_or_angle)>::from_value(side * tolerances_[i]);
      });
      const auto there = driveline_of_machine(moved, state_, shares);
      if (!there) continue;
      const double moves = of(*there) - of(*as_stated);
      if (moves > (most ? most->moves.si : 0.0)) most = MattersMost{entry, {moves, kind}};
    }
  }
  return most;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
