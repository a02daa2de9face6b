// Words for a changeover of stub or speed: the steps and what can go wrong.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"changeover.title", "Changeover: {from} to {to}"},
    Phrase{"changeover.setup", "{stub} at {speed}"},
    Phrase{"changeover.row.arrangement", "Arrangement"},
    Phrase{"changeover.row.from", "From"},
    Phrase{"changeover.row.to", "To"},
    Phrase{"changeover.heading.steps", "Steps, in this order"},
    Phrase{"changeover.heading.hazards", "What can go wrong"},
    Phrase{"changeover.manual",
           "The tractor's manual comes before this list: it says how this stub is held, in which attitude the tractor "
           "must stand, and with which torque bolts are tightened."},
    // Arrangements.
    Phrase{"arrangement.fixed", "one fixed stub, one speed"},
    Phrase{"arrangement.two_stubs_out", "two stubs that both stand out"},
    Phrase{"arrangement.exchanged_from_carrier", "stub exchanged, held by a ring or carrier"},
    Phrase{"arrangement.bolted_with_separate_lever", "bolted stub, with a lever of its own for the speed"},
    Phrase{"arrangement.reversible", "reversible stub, turned end for end"},
    Phrase{"arrangement.lever_only", "one stub for good, a lever for the speed"},
    // Steps.
    Phrase{"changeover.not_possible",
           "This arrangement cannot be changed from {old} to {stub} at {speed}. Use a tractor that has that stub and "
           "speed; no adaptor makes up for it."},
    Phrase{"changeover.look_up", "Before anything else, look up in the tractor's manual how this stub is held, whether "
                                 "it sits below the oil level, and in which attitude the tractor must stand then (nose "
                                 "down, say). Have a pan and the right oil at hand."},
    Phrase{"changeover.attitude",
           "Bring the tractor now to where the stub will be changed, in the attitude that the manual asks for; it is "
           "not driven again before the end. Chock its wheels as soon as it stands."},
    Phrase{"changeover.stop",
           "Disengage the PTO, lower the implement, set the parking brake, stop the engine and take the key with you."},
    Phrase{"changeover.wait", "Wait until PTO, driveline and implement stand still. Rotors run on for a long time."},
    Phrase{"changeover.uncouple", "Uncouple the driveline and lay it on its rest; keep its halves together."},
    Phrase{"changeover.unhitch",
           "Unhitch the implement: a drawbar is never moved under its load. Level, firm ground; the implement's wheels "
           "chocked, its stand down and locked; pressure let off the lines, lines and chain off; pin out. Then draw "
           "the tractor clear of it, with nobody between the two."},
    Phrase{"changeover.park_for_stub",
           "Park the tractor in the attitude that the manual asks for against loss of oil; parking brake, engine "
           "stopped, key with you again, wheels chocked. Wait until everything stands still."},
    Phrase{"changeover.park", "Park the tractor on level ground; parking brake, engine stopped, key with you again, "
                              "wheels chocked. Wait until everything stands still."},
    Phrase{
        "changeover.cool",
        "Let the stub cool, or wear gloves: it may burn the hand after work. Set the pan under it where oil may run."},
    Phrase{"changeover.raise_shield", "Raise the master shield, or take it off only as far as the manual says."},
    Phrase{"changeover.release", "Release the ring or carrier and pull out the stub: {old}."},
    Phrase{"changeover.clean_bore",
           "Clean the bore, the stub's ends and the groove of the ring; grease as the manual says."},
    Phrase{"changeover.turn_round", "Turn the stub end for end and push it home: {stub} is now out."},
    Phrase{"changeover.insert", "Push in the other stub until it is home: {stub}."},
    Phrase{"changeover.ring", "Seat the ring or carrier fully, all round; pull at the stub to prove it."},
    Phrase{"changeover.unbolt", "Unscrew the bolts of the flange and take off the stub: {old}."},
    Phrase{"changeover.clean_flange", "Clean both flanges; look at the seal and renew it if it is damaged."},
    Phrase{"changeover.bolt", "Bolt on the other stub, {stub}; tighten all bolts to the torque and in the order of the "
                              "manual."},
    Phrase{"changeover.oil", "Look for oil that leaks at the stub. Before the PTO runs again, with the tractor level, "
                             "check the oil level as the manual says and refill what ran out."},
    Phrase{"changeover.lower_shield", "Put the master shield back before anything else."},
    Phrase{"changeover.cover_stub", "Put the cap on the stub that is not used any more, {old}: it may turn as well."},
    Phrase{"changeover.uncover_stub", "Take the cap off the stub to be used: {stub}."},
    Phrase{"changeover.select_stub",
           "Select the PTO that drives {stub} at {speed}, with the shaft at rest; see that the other one is off."},
    Phrase{"changeover.lever",
           "Set the speed lever for {speed}, with the shaft at rest (in its middle position it can be turned by hand "
           "to line up). Lever and stub must agree: {stub} stands for {nominal}."},
    Phrase{"changeover.lever_disagrees",
           "Set the speed lever for {speed}, with the shaft at rest (in its middle position it can be turned by hand "
           "to line up). Lever and stub do not agree from now on."},
    Phrase{"changeover.tag", "The stub, {stub}, stands for {nominal}, but it will turn at {speed}: tag lever and stub, "
                             "tell everybody who drives, and couple nothing that is not made for {speed}."},
    Phrase{"changeover.drawbar",
           "Set the drawbar for {stub}. Hitch pin behind the shaft end, one of these: {regular} (regular), {extended} "
           "(extended), {us} where that is the practice; never {short}, the short position. The further out, the less "
           "it may carry: only with the vertical load that the manual and the drawbar permit there. Put the drawbar's "
           "own pin home and secure it. Take off a clevis that is in the way."},
    Phrase{"changeover.drawbar_by_manual",
           "Set the drawbar for {stub} as the tractor's manual says: no standard distance is known here. Only with the "
           "vertical load that is permitted there; put the drawbar's own pin home and secure it."},
    Phrase{
        "changeover.hitch",
        "Hitch up: take the tractor's chocks away and, PTO off, back to the implement with nobody between the two; "
        "parking brake, engine stopped, key with you, wait for standstill. Hitch pin home and secured, the drawbar's "
        "own pin looked at once more; chain and lines on, stand up; only then take the implement's chocks away."},
    Phrase{"changeover.couple",
           "Couple a driveline whose yoke is made for {stub}, without an adaptor; pull at the yoke to see that it is "
           "locked."},
    Phrase{"changeover.length",
           "Check the driveline anew, by hand: room before the members touch at the shortest position, overlap at the "
           "longest, in turns and lifts. The front joint stands elsewhere now."},
    Phrase{"changeover.length_same_stub",
           "Check the driveline that is coupled now, by hand: room before the members touch at the shortest position, "
           "overlap at the longest, in turns and lifts."},
    Phrase{"changeover.guards", "See that master shield, driveline guard with its chain, and the guard of the input "
                                "connection are in place and sound."},
    Phrase{"changeover.by_hand",
           "Engine off and key still out: turn the driveline by hand through a whole turn. It must turn freely, touch "
           "nothing, and the stub must not move out. Only then start, at low engine speed, with nobody near."},
    // What can go wrong.
    Phrase{"hazard.spline_at_other_speed",
           "Stub and lever disagree: the spline stands for one speed, the lever gives the other, and an implement for "
           "540 is driven at 1000 or the other way round."},
    Phrase{"hazard.shifted_while_turning", "The speed is shifted with the PTO engaged or the shaft still turning."},
    Phrase{"hazard.hot_stub", "The stub burns the hand after work."},
    Phrase{"hazard.oil_lost", "Oil runs out where stub or flange sit below its level, and the gearbox runs dry."},
    Phrase{"hazard.dirt_in_bore", "Dirt in the bore keeps the stub from going home."},
    Phrase{"hazard.ring_not_seated", "The ring or carrier is not seated, and the stub walks out under load."},
    Phrase{"hazard.bolts_not_tightened", "The bolts of the flange are not at their torque, and the stub works loose."},
    Phrase{"hazard.other_stub_turns", "The stub that is not used turns as well, bare."},
    Phrase{"hazard.drawbar_not_reset",
           "The drawbar is left in the hole of the other type: joints bend more in turns and the driveline bottoms or "
           "comes apart."},
    Phrase{"hazard.driveline_not_rechecked", "Length, overlap and clearance of the driveline are not checked again."},
    Phrase{"hazard.shield_left_off", "The master shield is left off."},
    Phrase{"hazard.adaptor_fitted", "An adaptor is used instead: it takes away what keeps speeds and splines apart, "
                                    "moves the joint and uncovers the shaft."},
};

} // namespace

Phrases changeover_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
