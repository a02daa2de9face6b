#include <fieldshaft/dynamics/interference.hpp>

#include <fieldshaft/joint/kinematics.hpp>

#include <algorithm>
#include <cmath>
#include <string>

namespace fieldshaft {
inline namespace v0 {
namespace {

constexpr const char* name = "interference_table";

void check_orders(const std::vector<ExcitationOrder>& orders, std::size_t inertias) {
  if (orders.empty()) fail_input(name, "orders", "none", "at least one");
  for (const ExcitationOrder& order : orders) {
    check::positive(order.per_turn, {name, "orders.per_turn", ""});
    if (order.inertia >= inertias) {
      fail_input(name, "orders.inertia", std::to_string(order.inertia), "an index below " + std::to_string(inertias));
    }
  }
}

Interference meeting(double natural, double pulses_per_radian, const SpeedRange& speeds) {
  Interference found{};
  found.natural = hertz(natural);
  found.critical_speed = radians_per_second(2.0 * pi * natural / pulses_per_radian);
  found.nearest = std::clamp(found.critical_speed, speeds.low, speeds.high);
  found.separation = std::abs(static_cast<double>(found.nearest / found.critical_speed) - 1.0);
  return found;
}

} // namespace

Angle joint_pulse(Angle angle, int pulse) {
  check::joint_angle(angle, "joint_pulse", "angle");
  check::within(pulse, 1.0, 20.0, {"joint_pulse", "pulse", ""});
  const double tangent = math::tan(0.5 * angle);
  return radians(std::pow(tangent * tangent, pulse) / pulse);
}

std::vector<Interference> interference_table(const TorsionalTrain& train, const std::vector<ExcitationOrder>& orders,
                                             const SpeedRange& speeds) {
  check_train(train, name);
  check_orders(orders, train.inertias.size());
  check::not_negative(speeds.low.value(), {name, "speeds.low", "rad/s"});
  check::positive(speeds.high.value(), {name, "speeds.high", "rad/s"});
  check::at_least(speeds.high.value(), speeds.low.value(), {name, "speeds.high", "rad/s"});
  const std::vector<double> ratios = train_speed_ratios(train);
  const std::vector<TorsionalMode> modes = torsional_modes(train);
  std::vector<Interference> table;
  table.reserve(modes.size() * orders.size());
  for (std::size_t mode = 0; mode < modes.size(); ++mode) {
    const double natural = modes[mode].frequency.value();
    if (!(natural > 0.0)) continue;
    for (std::size_t order = 0; order < orders.size(); ++order) {
      const std::size_t inertia = orders[order].inertia;
      table.push_back(meeting(natural, orders[order].per_turn * ratios[inertia], speeds));
      table.back().mode = mode;
      table.back().order = order;
      table.back().swing = std::abs(modes[mode].amplitudes[inertia]);
    }
  }
  return table;
}

} // namespace v0
} // namespace fieldshaft
