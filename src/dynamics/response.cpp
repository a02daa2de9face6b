#include <fieldshaft/dynamics/response.hpp>

#include "dynamics/matrices.hpp"

#include <fieldshaft/dynamics/interference.hpp>
#include <fieldshaft/joint/kinematics.hpp>

#include <Eigen/LU>

#include <cmath>
#include <complex>
#include <limits>
#include <string>

namespace fieldshaft {
inline namespace v0 {
namespace {

constexpr const char* name = "forced_response";
using Complex = std::complex<double>;

void check_excitation(const TorsionalTrain& train, const TorsionalExcitation& excitation) {
  check::positive(excitation.frequency.value(), {name, "excitation.frequency", "Hz"});
  for (const TorqueExcitation& pulse : excitation.torques) {
    check::not_negative(pulse.torque.amplitude.value(), {name, "excitation.torques.torque.amplitude", "N·m"});
    check::finite(pulse.torque.phase.value(), {name, "excitation.torques.torque.phase", "rad"});
    if (pulse.inertia < train.inertias.size()) continue;
    fail_input(name, "excitation.torques.inertia", std::to_string(pulse.inertia),
               "an index below " + std::to_string(train.inertias.size()));
  }
  for (const TwistExcitation& pulse : excitation.leads) {
    check::not_negative(pulse.lead.amplitude.value(), {name, "excitation.leads.lead.amplitude", "rad"});
    check::finite(pulse.lead.phase.value(), {name, "excitation.leads.lead.phase", "rad"});
    if (pulse.shaft < train.shafts.size()) continue;
    fail_input(name, "excitation.leads.shaft", std::to_string(pulse.shaft),
               "an index below " + std::to_string(train.shafts.size()));
  }
}

template <class Q> Complex phasor(const Swing<Q>& swing) {
  return std::polar(swing.amplitude.value(), swing.phase.value());
}
template <class Q> Swing<Q> swing_of(Complex phasor) {
  return {Q::from_value(std::abs(phasor)), radians(std::arg(phasor))};
}

/// Stiffness and damping of a shaft in one.
Complex complex_stiffness(const TrainShaft& shaft, double w) {
  return {shaft.stiffness.value(), w * shaft.damping.value()};
}

Eigen::MatrixXcd dynamic_stiffness(const TorsionalTrain& train, double w) {
  const auto count = static_cast<Eigen::Index>(train.inertias.size());
  Eigen::MatrixXcd all = Eigen::MatrixXcd::Zero(count, count);
  for (const TrainShaft& shaft : train.shafts) torsion::add_shaft(all, shaft, complex_stiffness(shaft, w));
  for (const TrainAnchor& anchor : train.anchors) {
    const auto at = static_cast<Eigen::Index>(anchor.inertia);
    all(at, at) += Complex(anchor.stiffness.value(), w * anchor.damping.value());
  }
  for (Eigen::Index i = 0; i < count; ++i) {
    const TrainInertia& mass = train.inertias[static_cast<std::size_t>(i)];
    all(i, i) += Complex(-w * w * mass.inertia.value(), w * mass.drag.value());
  }
  return all;
}

/// The lead that swings in each shaft.
std::vector<Complex> leads_of(const TorsionalTrain& train, const TorsionalExcitation& excitation) {
  std::vector<Complex> leads(train.shafts.size());
  for (const TwistExcitation& pulse : excitation.leads) leads[pulse.shaft] += phasor(pulse.lead);
  return leads;
}

Eigen::VectorXcd torques_on_inertias(const TorsionalTrain& train, const TorsionalExcitation& excitation,
                                     const std::vector<Complex>& leads, double w) {
  Eigen::VectorXcd force = Eigen::VectorXcd::Zero(static_cast<Eigen::Index>(train.inertias.size()));
  for (const TorqueExcitation& pulse : excitation.torques) {
    force[static_cast<Eigen::Index>(pulse.inertia)] += phasor(pulse.torque);
  }
  for (std::size_t i = 0; i < train.shafts.size(); ++i) {
    const TrainShaft& shaft = train.shafts[i];
    const Complex torque = complex_stiffness(shaft, w) * leads[i];
    force[static_cast<Eigen::Index>(shaft.from)] -= torque;
    force[static_cast<Eigen::Index>(shaft.to)] += torque / shaft.ratio;
  }
  return force;
}

ForcedResponse endless(const TorsionalTrain& train) {
  constexpr double infinity = std::numeric_limits<double>::infinity();
  return {std::vector<Swing<Angle>>(train.inertias.size(), {Angle::from_value(infinity), {}}),
          std::vector<Swing<Torque>>(train.shafts.size(), {Torque::from_value(infinity), {}})};
}

const char* play_opens(const TorsionalTrain& train, const ForcedResponse& response, const std::vector<Torque>& steady) {
  bool play = false;
  for (const TrainShaft& shaft : train.shafts) play = play || shaft.backlash.value() > 0.0;
  if (!play && steady.empty()) return nullptr;
  if (steady.empty()) return "a shaft with play whose mean torque is not given";
  std::vector<Torque> swing;
  for (const Swing<Torque>& torque : response.torques) swing.push_back(torque.amplitude);
  return torque_keeps_its_sense(train, steady, swing);
}

/// Below this reciprocal condition the swings are rounding.
constexpr double singular = 1e-13;

} // namespace

Validated<ForcedResponse> forced_response(const TorsionalTrain& train, const TorsionalExcitation& excitation,
                                          const std::vector<Torque>& steady) {
  check_train(train, name);
  check_excitation(train, excitation);
  const double w = 2.0 * pi * excitation.frequency.value();
  const std::vector<Complex> leads = leads_of(train, excitation);
  // Scaled by the roots of the inertias, so that a small and a large one stand on the same footing.
  Eigen::VectorXd root(static_cast<Eigen::Index>(train.inertias.size()));
  for (Eigen::Index i = 0; i < root.size(); ++i) {
    root[i] = 1.0 / std::sqrt(train.inertias[static_cast<std::size_t>(i)].inertia.value());
  }
  const Eigen::MatrixXcd scaled = root.asDiagonal() * dynamic_stiffness(train, w) * root.asDiagonal();
  const Eigen::PartialPivLU<Eigen::MatrixXcd> factors(scaled);
  if (!(factors.rcond() > singular)) return {endless(train), outside_undamped};
  const Eigen::VectorXcd force = torques_on_inertias(train, excitation, leads, w);
  const Eigen::VectorXcd swings = root.asDiagonal() * factors.solve(Eigen::VectorXcd(root.asDiagonal() * force));
  ForcedResponse response;
  for (Eigen::Index i = 0; i < swings.size(); ++i) response.swings.push_back(swing_of<Angle>(swings[i]));
  for (std::size_t i = 0; i < train.shafts.size(); ++i) {
    const TrainShaft& shaft = train.shafts[i];
    const Complex torque = complex_stiffness(shaft, w) * (torsion::twist(shaft, swings) + leads[i]);
    response.torques.push_back(swing_of<Torque>(torque));
  }
  const char* outside = play_opens(train, response, steady);
  return {std::move(response), outside};
}

TorsionalDamping shaft_damping(TorsionalStiffness stiffness, double loss_factor, Frequency frequency) {
  constexpr const char* function = "shaft_damping";
  check::positive(stiffness.value(), {function, "stiffness", "N·m/rad"});
  check::between(loss_factor, 0.0, 1.0, {function, "loss_factor", ""});
  check::positive(frequency.value(), {function, "frequency", "Hz"});
  return newton_metre_seconds_per_radian(loss_factor * stiffness.value() / (2.0 * pi * frequency.value()));
}

Validated<Torque> joint_torque_swing(TorsionalStiffness stiffness, MomentOfInertia inertia, Angle angle,
                                     AngularSpeed speed) {
  constexpr const char* function = "joint_torque_swing";
  check::positive(stiffness.value(), {function, "stiffness", "N·m/rad"});
  check::positive(inertia.value(), {function, "inertia", "kg·m²"});
  check::joint_angle(angle, function, "angle");
  check::positive(speed.value(), {function, "speed", "rad/s"});
  const double square = math::power<2>(joint_pulses_per_turn * speed.value());
  const double natural = stiffness.value() / inertia.value();
  const double torque = stiffness.value() * joint_pulse(angle).value() * square / std::abs(square - natural);
  const bool near = std::abs(std::sqrt(square / natural) - 1.0) < least_separation.value;
  return {newton_metres(torque),
          near ? "pulses within a tenth of the natural frequency, where damping decides" : nullptr};
}

} // namespace v0
} // namespace fieldshaft
