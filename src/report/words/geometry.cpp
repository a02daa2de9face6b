// Words for what follows from the geometry: lengths to cut, turn and lift limits, fouling, hand checks.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    // Lengths to cut.
    Phrase{"cut.none_needed",
           "Nothing to cut. Closed lengths from {least_closed} to {greatest_closed} suit all positions ({rule}); this "
           "one is {closed}."},
    Phrase{"cut.needed",
           "Closed lengths from {least_closed} to {greatest_closed} suit all positions ({rule}); this one is {closed}. "
           "The smallest cut is {cut}: then {closed_after} closed, {overlap_after} of overlap at the longest "
           "({longest_at}) and {clearance_after} of clearance at the shortest ({shortest_at})."},
    Phrase{
        "cut.too_short",
        "The tubes are too short already: closed lengths from {least_closed} to {greatest_closed} would suit ({rule}), "
        "this one is {closed}. No cut cures that."},
    Phrase{
        "cut.conflict",
        "No closed length of two members suits all positions ({rule}): the longest, {longest} {longest_at}, asks for "
        "at least {least_closed} and the shortest, {shortest} {shortest_at}, for at most {greatest_closed}."},
    Phrase{
        "cut.conflict_of_rules",
        "No closed length of two members suits all positions by every rule ({rule}): the longest, {longest} "
        "{longest_at}, asks for at least {least_closed} and the shortest, {shortest} {shortest_at}, for at most "
        "{greatest_closed}. By the looser rules ({looser_overlap} of overlap, {looser_clearance} of clearance) closed "
        "lengths from {least_by_any_rule} to {greatest_by_any_rule} suit; this one is {closed}."},
    Phrase{
        "cut.by_this_much",
        "Cut {cut} from the inner tube, from the outer tube and from each guard tube, by the driveline's manual; take "
        "off burrs and grease the tubes."},
    Phrase{"cut.members",
           "Cut {cut} from the inner tube and from the outer tube, by the driveline's manual; take off burrs and "
           "grease the tubes."},
    Phrase{"cut.guards_own",
           "From each guard tube cut {guard_cut}, not what the members lose: {guard_overlap_after} of overlap is then "
           "left at the longest and {guard_room_after} of room at the shortest."},
    Phrase{"cut.guards_stay",
           "Do not cut the guard tubes: they have the room that they need ({guard_room_after} at the shortest), and "
           "would come apart over a turning shaft ({guard_overlap_after} of overlap at the longest)."},
    Phrase{"cut.guards_by_looser_rules",
           "From each guard tube cut no more than {guard_cut}, whatever the members lose: {guard_overlap_after} of "
           "overlap is then left at the longest and {guard_room_after} of room at the shortest, which stays a caution. "
           "Guard tubes that suit by every rule are at most {guard_closed} long, closed, and then overlap by at least "
           "{guard_overlap}."},
    Phrase{"cut.guards_others",
           "Do not cut the guard tubes: cut to the room that they need they would leave the shaft bare at the longest. "
           "First fit others, at most {guard_closed} long when closed and then overlapping by at least "
           "{guard_overlap}."},
    Phrase{"cut.guards_unstated",
           "From each guard tube take no more than leaves them overlapping by {guards_keep} at the longest: how long "
           "they are "
           "is not stated (driveline.guard_closed_length, driveline.guard_closed_overlap), so that no cut of theirs "
           "is known."},
    Phrase{"cut.breaks_else",
           "Do not cut: the cut that suits the members makes another check worse ({worse}). Look for the cause of the "
           "short position, or for another driveline."},
    Phrase{
        "cut.longer_tubes",
        "Fit a driveline whose tubes are at least {missing_tube} longer each, or limit the position that pulls it out "
        "to {longest} ({longest_at})."},
    Phrase{"cut.by_looser_rules",
           "No cut satisfies every rule. By the looser rules alone ({looser_overlap} of overlap, {looser_clearance} of "
           "clearance) a cut of at least {least_cut} and at most {greatest_cut} from the inner tube and from the outer "
           "tube "
           "would do, by the driveline's manual; that stays a caution. A longest position "
           "shorter by {twice_too_long}, a shortest position longer by {too_long}, or a telescope of three members "
           "would satisfy them all."},
    Phrase{"cut.open_interval",
           "Do not cut. A longest position shorter by {twice_too_long}, a shortest position longer by {too_long}, or a "
           "telescope of three members would make a closed length possible."},
    Phrase{"cut.check_by_hand",
           "Before any cut and after it, check by hand at both extremes, engine off, key out: {longest_at} and "
           "{shortest_at}."},
    Phrase{"cut.rule.least", "rule of common practice: {least_overlap} stay in overlap"},
    Phrase{"cut.rule.third", "rule of common practice: one third of the tube stays in overlap"},
    Phrase{"cut.rule.stated", "rule: overlap as the case states it"},
    // Guard tubes.
    Phrase{"guard_tubes.unstated", "Guard tubes, hitch or the positions of all three states are not all stated."},
    Phrase{"guard_tubes.overlap", "The guard tubes overlap by {overlap} where the driveline is longest."},
    Phrase{"guard_tubes.room", "The guard tubes have {room} left where the driveline is shortest."},
    Phrase{"guard_tubes.cut",
           "Cut {guard_cut} from each guard tube: {guard_overlap_after} of overlap is then left at the "
           "longest and {guard_room_after} of room at the shortest."},
    Phrase{"guard_tubes.cut_by_looser_rules",
           "No cut of the guard tubes suits by every rule. Cut {guard_cut} from each: {guard_overlap_after} of overlap "
           "is then left at the longest and {guard_room_after} of room at the shortest, which stays a caution."},
    Phrase{"guard_tubes.others",
           "Fit guard tubes that are at most {guard_closed} long when closed and then overlap by at least "
           "{guard_overlap}: no part of the shaft may be bare in any position, and they may not bottom."},
    Phrase{"guard_tubes.longer",
           "Fit a guard of more parts: two tubes that do not bottom at the shortest position leave the shaft bare at "
           "the longest."},
    // How far to turn.
    Phrase{"turn.unstated", "Hitch, joints, telescope, input connection or the positions while turning are not all "
                            "stated."},
    Phrase{"turn.limit",
           "Over pitch and roll as stated for turning, no rule on joint angle or telescope objects up to {left} to the "
           "left ({left_stop}) and {right} to the right ({right_stop}); every rule does beyond {left_most} and "
           "{right_most}. {others} {fouling}"},
    Phrase{"turn.limit.open",
           "Over pitch and roll as stated for turning, no rule on joint angle or telescope objects up to {left} to the "
           "left ({left_stop}) and {right} to the right ({right_stop}). Turns beyond {left_most} and {right_most} were "
           "not looked at: the machine cannot be followed there, or nobody turns so far. {others} {fouling}"},
    Phrase{
        "turn.limit.left_open",
        "Over pitch and roll as stated for turning, no rule on joint angle or telescope objects up to {left} to the "
        "left ({left_stop}) and {right} to the right ({right_stop}). To the right every rule does beyond {right_most}; "
        "to the left turns beyond {left_most} were not looked at. {others} {fouling}"},
    Phrase{
        "turn.limit.right_open",
        "Over pitch and roll as stated for turning, no rule on joint angle or telescope objects up to {left} to the "
        "left ({left_stop}) and {right} to the right ({right_stop}). To the left every rule does beyond {left_most}; "
        "to the right turns beyond {right_most} were not looked at. {others} {fouling}"},
    Phrase{"turn.others.none", "Uneven running and strength are judged at the turn as stated."},
    Phrase{"turn.others.object",
           "Within the turn as stated other checks object: uneven running, or strength at the joint angle there."},
    Phrase{
        "turn.not_even_straight",
        "Even straight ahead a limit is broken, over pitch and roll as stated for turning: to the left {left_stop}, to "
        "the right {right_stop}. {fouling}"},
    Phrase{"turn.no_further",
           "Turn no further than {left} to the left and {right} to the right; disengage the PTO before tighter turns."},
    Phrase{
        "turn.mend_first",
        "To one side or both no turn is permitted as the machine stands (to the left: {left_stop}; to the "
        "right: {right_stop}): mend that first, by the advice of the finding on it, and disengage the PTO before you "
        "turn."},
    Phrase{"turn.stop.nothing", "nothing ends it up to there"},
    Phrase{"turn.stop.front", "then the joint at the tractor bends too far"},
    Phrase{"turn.stop.rear", "then the joint at the implement bends too far"},
    Phrase{"turn.stop.difference", "then the joint angles differ too much"},
    Phrase{"turn.stop.longest", "then too little overlap is left"},
    Phrase{"turn.stop.shortest", "then too little clearance is left in the telescope"},
    Phrase{"turn.stop.fouling", "then something fouls"},
    Phrase{"turn.fouling.considered", "Tyres, tongue and drawbar are reckoned with as stated."},
    Phrase{"turn.fouling.partly",
           "What may foul is not all stated: from the driveline's side only, the turn that is possible is not known."},
    Phrase{
        "turn.fouling.unstated",
        "That is from the driveline's side: whether tyre, tongue or drawbar foul earlier is not known (state fouling "
        "and driveline.guard_diameter)."},
    Phrase{"turn.fouling.not_followed",
           "That is from the driveline's side: what a machine fouls that steers behind the links or stands on its own "
           "wheels is not followed, whatever is stated."},
    // How high to lift.
    Phrase{"lift.unstated", "Linkage, joints, telescope, input connection or the positions while turning are not all "
                            "stated."},
    Phrase{"lift.limit", "From {from} upwards no rule on joint angle or telescope objects to a lift of up to {lift} "
                         "({stop}); every rule "
                         "does beyond {lift_most}. {fouling}"},
    Phrase{"lift.limit.open",
           "From {from} upwards no rule on joint angle or telescope objects to a lift of up to {lift} ({stop}). Lifts "
           "beyond {lift_most} were not looked at: no state of the case goes there. {fouling}"},
    Phrase{"lift.fouling.considered", "Lower links and parts are reckoned with as stated."},
    Phrase{"lift.fouling.partly", "What may foul is stated in part only: the limit beyond that is not known."},
    Phrase{"lift.fouling.unstated",
           "That is from the driveline's side: whether lower links or frame foul earlier is not known (state fouling "
           "with lower_links, and driveline.guard_diameter)."},
    Phrase{"lift.fouling.not_followed",
           "That is from the driveline's side: what a machine fouls that steers behind the links or stands on its own "
           "wheels is not followed, whatever is stated."},
    Phrase{"lift.not_even_low", "Even at the lowest lift while turning, {from}, a limit is broken: {stop}."},
    Phrase{"lift.no_higher", "Lift no higher than {lift} while turning; disengage the PTO before higher lifts."},
    Phrase{"lift.mend_first",
           "No lift while turning is permitted as the machine stands ({stop}): mend that first, by the advice of the "
           "finding on it, and disengage the PTO before you lift."},
    // Fouling.
    Phrase{"fouling.unstated", "What may foul, the driveline's place or the positions are not all stated."},
    Phrase{
        "fouling.not_followed",
        "What fouls is not followed for a machine that steers behind the links or stands on its own wheels: no entry "
        "of the case changes that. Look at it on the machine, engine off, key out, through turn and lift."},
    Phrase{"fouling.room", "{against} and {part} keep at least that far apart in all positions, {tolerance} of "
                           "measuring tolerance taken off."},
    Phrase{"fouling.touches", "{against} and {part} may touch, {tolerance} of measuring tolerance taken off."},
    Phrase{"fouling.keep_clear",
           "Keep {against} and {part} at least {limit} apart: limit the turn, move the part, or lengthen tongue or "
           "hitch."},
    Phrase{"fouling.keep_clear_mounted",
           "Keep {against} and {part} at least {limit} apart: limit lift and roll, or move the part."},
    Phrase{"fouling.part.links", "a lower link"},
    Phrase{"fouling.driveline", "The driveline's guard"},
    Phrase{"fouling.tongue", "The driveline's guard or the tongue"},
    // Lengths measured by hand.
    Phrase{"hand.unstated", "A length measured by hand wants its pose, and the model its measurements."},
    Phrase{"hand.impossible", "A pose of the hand checks cannot be: {why}."},
    Phrase{"hand.agrees", "Lengths measured by hand at {poses} poses agree with the model; the least well: measured "
                          "{measured}, reckoned {model}, {at}. There a mistake of measuring shows for certain from "
                          "{shows_from} on."},
    Phrase{"hand.too_coarse",
           "A length measured by hand within {value}, tape and pose together, passes any mistake of that size: "
           "measured {measured}, reckoned {model}, {at}. It proves nothing."},
    Phrase{"hand.same_pose",
           "The lengths measured by hand agree with the model, the least well: measured {measured}, reckoned {model}, "
           "{at}. But at these {poses} poses the lengths hardly differ, so that they count as one and say nothing of "
           "the turn."},
    Phrase{"hand.finer",
           "Measure the length by hand again with a tape along the driveline and the pose to a degree or two, within "
           "20 mm together, engine off, key out."},
    Phrase{"hand.one_pose",
           "The length measured by hand agrees with the model ({measured}, reckoned {model}, {at}), at "
           "one pose only."},
    Phrase{"hand.disagrees", "The length measured by hand is {measured}, the model says {model}, {at}: beyond all "
                             "tolerances. Something is measured wrong."},
    Phrase{
        "hand.measure_again",
        "Measure hitch, joints, input connection and the length by hand again, engine off, key out; do not cut before "
        "they agree."},
    Phrase{"hand.second_pose", "Measure the length by hand at a second pose, far from the first, engine off, key out."},
    Phrase{"hand.judge_later", "Not judged while a length measured by hand disagrees with the model."},
};

} // namespace

Phrases geometry_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
