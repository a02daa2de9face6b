#pragma once
// Branches: further drivelines behind a splitter gearbox, such as those to folding wings.

#include <fieldshaft/driveline/envelope.hpp>

#include <string>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// One branch. Its driving shaft is stated in the frame of the machine's middle part, its input in the frame of the
/// wing, whose origin is the hinge and whose axes are those of the middle part when unfolded: a wing that folds about a
/// hinge along the machine rolls.
struct Branch {
  Driveline driveline;
  Position hinge;            ///< in the frame of the middle part
  AttitudeRange folding;     ///< of the wing about the hinge while its driveline turns
  double torque_share = 0.0; ///< of the torque that enters the splitter
};

struct BranchEnvelope {
  DrivelineEnvelope envelope;
  Torque torque{}; ///< that the branch carries
};

/// The envelope and the torque of every branch.
///
///   branches  at least one; shares above 0 that add up to 1 within 1e-9
///   torque    entering the splitter, referred to the branches' speed [N·m], at least 0
/// Source: driveline_envelope for each branch about its hinge; torque times share.
/// Example: two equal wings on 600 N·m: 300 N·m each.
inline std::vector<BranchEnvelope> branch_envelopes(const std::vector<Branch>& branches, Torque torque,
                                                    const EnvelopeOptions& options = {}) {
  constexpr const char* name = "branch_envelopes";
  if (branches.empty()) fail_input(name, "branches", "none", "at least one");
  check::not_negative(torque.value(), {name, "torque", "N·m"});
  double shares = 0.0;
  for (const Branch& branch : branches) {
    check::positive(branch.torque_share, {name, "torque_share", ""});
    shares += branch.torque_share;
  }
  check::within(shares, 1.0 - 1e-9, 1.0 + 1e-9, {name, "sum of torque_share", ""});
  std::vector<BranchEnvelope> result;
  result.reserve(branches.size());
  for (const Branch& branch : branches)
    result.push_back(
        {driveline_envelope(branch.driveline, branch.hinge, branch.folding, options), branch.torque_share * torque});
  return result;
}

/// A driveline seen from another frame: its driving shaft moved from the tractor's frame into that of a part that
/// stands at a pose. For a steered machine: the headstock's pose, then the envelope about the steering pivot with yaw
/// as the steering.
inline Driveline seen_from(const Pose& part, Driveline driveline) {
  driveline.output = in_implement(part, driveline.output);
  driveline.output_direction =
      Direction::from_unit(rotation(part.attitude).transpose() * driveline.output_direction.unit());
  return driveline;
}

} // namespace v0
} // namespace fieldshaft
