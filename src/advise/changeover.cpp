// The steps of a changeover, by arrangement. Every list of steps ends with the shaft turned by hand.

#include <fieldshaft/advise/changeover.hpp>

#include "assess/interface.hpp"

#include <string>

namespace fieldshaft {
inline namespace v0 {
namespace {

template <class Q> Fact amount(const char* name, Q quantity) { return {name, amount_of(quantity)}; }
Fact name_of(const char* name, const PtoType& type) { return {name, std::string(type.name)}; }

const char* hazard_id(StubHazard hazard) {
  switch (hazard) {
  case StubHazard::spline_at_other_speed: return "hazard.spline_at_other_speed";
  case StubHazard::shifted_while_turning: return "hazard.shifted_while_turning";
  case StubHazard::hot_stub: return "hazard.hot_stub";
  case StubHazard::oil_lost: return "hazard.oil_lost";
  case StubHazard::dirt_in_bore: return "hazard.dirt_in_bore";
  case StubHazard::ring_not_seated: return "hazard.ring_not_seated";
  case StubHazard::bolts_not_tightened: return "hazard.bolts_not_tightened";
  case StubHazard::other_stub_turns: return "hazard.other_stub_turns";
  case StubHazard::drawbar_not_reset: return "hazard.drawbar_not_reset";
  case StubHazard::driveline_not_rechecked: return "hazard.driveline_not_rechecked";
  case StubHazard::shield_left_off: return "hazard.shield_left_off";
  case StubHazard::adaptor_fitted: return "hazard.adaptor_fitted";
  }
  return "hazard.adaptor_fitted";
}

/// A fixed stub has one speed; a lever changes the speed and never the stub.
bool can_change(StubArrangement arrangement, const PtoSetup& from, const PtoSetup& to) {
  if (arrangement == StubArrangement::fixed) return false;
  return arrangement != StubArrangement::lever_only || from.type == to.type;
}

class Steps {
public:
  Steps(StubArrangement arrangement, const PtoSetup& from, const PtoSetup& to, HitchKind hitch)
      : arrangement_(arrangement), from_(pto_type(from.type)), to_(pto_type(to.type)), speed_(to.speed),
        other_stub_(from.type != to.type), stub_moves_(other_stub_ && arrangement != StubArrangement::two_stubs_out),
        drawbar_moves_(other_stub_ && hitch == HitchKind::drawbar) {}

  std::vector<ChangeoverStep> take() {
    come_to_rest();
    if (other_stub_) change_stub();
    select_speed();
    if (drawbar_moves_) {
      set_drawbar();
      add("changeover.hitch");
    }
    add("changeover.couple", {name_of("stub", to_)});
    add(other_stub_ ? "changeover.length" : "changeover.length_same_stub");
    add("changeover.guards");
    add("changeover.by_hand");
    return std::move(steps_);
  }

private:
  void add(const char* id, std::vector<Fact> facts = {}) { steps_.push_back({id, std::move(facts)}); }

  /// The tractor is driven only before its driveline is uncoupled, or after its implement is unhitched: nothing is left
  /// for later that would start the engine with hands at the stub. A drawbar is never moved under an implement's load.
  void come_to_rest() {
    if (stub_moves_) add("changeover.look_up");
    if (stub_moves_ && !drawbar_moves_) add("changeover.attitude");
    add("changeover.stop");
    add("changeover.wait");
    add("changeover.uncouple");
    if (!drawbar_moves_) return;
    add("changeover.unhitch");
    add(stub_moves_ ? "changeover.park_for_stub" : "changeover.park");
  }

  void change_stub() {
    if (!stub_moves_) {
      add("changeover.cover_stub", {name_of("old", from_)});
      add("changeover.uncover_stub", {name_of("stub", to_)});
      return;
    }
    add("changeover.cool");
    add("changeover.raise_shield");
    move_stub();
    add("changeover.oil");
    add("changeover.lower_shield");
  }

  void move_stub() {
    const std::vector<Fact> stubs = {name_of("old", from_), name_of("stub", to_)};
    if (arrangement_ == StubArrangement::bolted_with_separate_lever) {
      add("changeover.unbolt", stubs);
      add("changeover.clean_flange");
      add("changeover.bolt", stubs);
      return;
    }
    add("changeover.release", stubs);
    add("changeover.clean_bore");
    add(arrangement_ == StubArrangement::reversible ? "changeover.turn_round" : "changeover.insert", stubs);
    add("changeover.ring");
  }

  void select_speed() {
    const bool agree = is_nominal_speed(speed_, to_.nominal_speed);
    const std::vector<Fact> facts = {name_of("stub", to_), amount("speed", speed_),
                                     amount("nominal", to_.nominal_speed)};
    if (arrangement_ == StubArrangement::two_stubs_out) {
      add("changeover.select_stub", facts);
    } else {
      add(agree ? "changeover.lever" : "changeover.lever_disagrees", facts);
    }
    if (!agree) add("changeover.tag", facts);
  }

  /// The positions for PTO work of the new type, in numbers; type 4 and the old shaft have none that is known.
  void set_drawbar() {
    std::vector<Fact> facts = {name_of("stub", to_)};
    for (const DrawbarDistance& entry : drawbar_distances(to_)) {
      switch (entry.position) {
      case DrawbarPosition::regular: facts.push_back(amount("regular", entry.distance.value)); break;
      case DrawbarPosition::extended: facts.push_back(amount("extended", entry.distance.value)); break;
      case DrawbarPosition::us_practice: facts.push_back(amount("us", entry.distance.value)); break;
      case DrawbarPosition::short_: facts.push_back(amount("short", entry.distance.value)); break;
      }
    }
    add(facts.size() > 1 ? "changeover.drawbar" : "changeover.drawbar_by_manual", facts);
  }

  StubArrangement arrangement_;
  const PtoType& from_;
  const PtoType& to_;
  AngularSpeed speed_;
  bool other_stub_;
  bool stub_moves_;    ///< it is pulled, turned or bolted, with oil behind it
  bool drawbar_moves_; ///< so that what hangs on it must be unhitched first
  std::vector<ChangeoverStep> steps_;
};

} // namespace

Changeover changeover(StubArrangement arrangement, const PtoSetup& from, const PtoSetup& to, HitchKind hitch) {
  check::positive(from.speed.value(), {"changeover", "from", "rad/s"});
  check::positive(to.speed.value(), {"changeover", "to", "rad/s"});
  Changeover result;
  result.arrangement = arrangement;
  result.from = from;
  result.to = to;
  result.hitch = hitch;
  for (const auto& hazard : stub_hazards(arrangement)) {
    result.hazards.push_back({hazard.value, hazard_id(hazard.value), hazard.source});
  }
  const PtoType& old = pto_type(from.type);
  const PtoType& wanted = pto_type(to.type);
  if (from.type == to.type && is_nominal_speed(from.speed, to.speed)) {
    fail_input("changeover", "to", wanted.name, "another stub or another speed than the one to change from");
  }
  result.possible = can_change(arrangement, from, to);
  result.steps =
      result.possible
          ? Steps(arrangement, from, to, hitch).take()
          : std::vector<ChangeoverStep>{
                {"changeover.not_possible", {name_of("old", old), name_of("stub", wanted), amount("speed", to.speed)}}};
  return result;
}

std::optional<Changeover> changeover_between(const Case& before, const Case& after) {
  const auto setup_of = [](const Case& value) -> std::optional<PtoSetup> {
    const PtoType* type = assessing::resolve(value.tractor.pto.stub).type;
    const PtoGear* gear = assessing::selected_gear(value);
    if (type == nullptr || gear == nullptr || !gear->pto_speed) return std::nullopt;
    return PtoSetup{type->number, *gear->pto_speed};
  };
  const auto from = setup_of(before);
  const auto to = setup_of(after);
  const Stated<StubArrangement>& arrangement = before.tractor.pto.arrangement;
  if (!from || !to || !arrangement) return std::nullopt;
  if (from->type == to->type && is_nominal_speed(from->speed, to->speed)) return std::nullopt;
  // Where neither case says what the implement hangs on, the steps for a drawbar are the ones that leave nothing out.
  const HitchKind hitch = after.tractor.hitch.kind.value_or(before.tractor.hitch.kind.value_or(HitchKind::drawbar));
  return changeover(*arrangement, *from, *to, hitch);
}

} // namespace v0
} // namespace fieldshaft
