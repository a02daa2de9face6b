// Words for joint angles and telescope.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"angle.unstated", "Hitch, joints, input connection or the positions in this state are not all stated."},
    Phrase{"angle.impossible", "A position as stated cannot be: {why}."},
    Phrase{"angle.driven",
           "Over all positions of this state, with the shaft turning: {end} fares worse against its limit."},
    Phrase{"angle.at_rest",
           "Over all positions of this state, with the shaft at rest: {end} fares worse against its limit."},
    Phrase{"angle.reduce_driven",
           "Bend the joints no further than {limit} while the shaft turns: disengage the PTO before "
           "tighter turns, or use a wide-angle joint where its manual allows it."},
    Phrase{"angle.reduce_mounted",
           "Bend the joints no further than {limit} while the shaft turns: disengage the PTO before higher "
           "lifts, limit the lift, and set the top link so that the input shaft runs parallel to the "
           "stub in work."},
    Phrase{
        "angle.reduce_mounted_low",
        "Bend the joints no further than {limit} while the shaft turns: do not lower the machine so far with the PTO "
        "engaged, and set the top link so that the input shaft runs parallel to the stub in work."},
    Phrase{"pivot.input_ahead",
           "The input shaft ends ahead of the steering pivot: on the headstock it does not turn with the machine, and "
           "the driveline that leads over the pivot is another one. Neither is followed here. If the input shaft does "
           "ride behind the pivot, measure both places again."},
    Phrase{"angle.reduce_at_rest",
           "Limit turn or lift so that no joint passes {limit} even at rest: it locks and breaks."},
    Phrase{"joint.front", "the joint at the tractor"},
    Phrase{"joint.rear", "the joint at the implement"},
    Phrase{"lock.unstated",
           "The angle at which each joint's yokes touch, the driveline's place or the positions are not "
           "all stated."},
    Phrase{"lock.within",
           "Over all positions of all states {end} comes nearest to the angle at which its yokes touch."},
    Phrase{"lock.reached",
           "{end} would have to bend past the angle at which its yokes touch: they break, or what holds them does."},
    Phrase{
        "lock.keep_off",
        "Limit turn or lift so that {end} stays below {limit} in every state, at rest too, or fit a joint that bends "
        "further."},
    Phrase{"centre.unstated", "Kinds and places of the joints, the pin or the turn are not all stated."},
    Phrase{
        "centre.off",
        "Seen from above, with the machine straight, the centre of the wide-angle joint ({end}) lies {along} "
        "{side} of the {about}'s centre and {aside} beside it. Turned by {turn}, that alone bends the other joint by "
        "{far}; with the centre over the {about} it would run straight."},
    Phrase{"centre.beyond",
           "The centre of the wide-angle joint lies farther from the pin than the other joint does: this joint does "
           "not serve the turn."},
    Phrase{"centre.pin", "pin"},
    Phrase{"centre.pivot", "steering pivot"},
    Phrase{"centre.ahead", "ahead"},
    Phrase{"centre.behind", "behind"},
    Phrase{"centre.move", "Bring the centre of the wide-angle joint over the {about}, by the hitch extension or joint "
                          "that its manual names; "
                          "the drawbar keeps the position that belongs to its PTO type."},
    Phrase{"fixed.unstated", "Places, joints or ends of the section behind the bearing are not all stated."},
    Phrase{"fixed.impossible", "The section behind the bearing cannot be as stated: {why}."},
    Phrase{"fixed.angle",
           "The section behind the bearing stands still within the implement: its joints always bend by {front} and "
           "{rear}; {end} fares worse against its limit for work."},
    Phrase{"fixed.front", "the joint at the bearing"},
    Phrase{"fixed.rear", "the joint at the machine"},
    Phrase{"fixed.move",
           "Bring the bearing's shaft and the machine's input shaft nearer to one line, by the place of the bearing."},
    Phrase{"chain.unstated",
           "Kinds of the joints, phases of the yokes, engaged gear, places or positions are not all stated."},
    Phrase{"chain.driven",
           "All joints of both sections together, in their true planes: over all positions of this state it is proved "
           "that the machine's shaft turns unevenly by no more than {value} of the PTO speed ({speed}); by {attained} "
           "it does. The moving section alone is uneven by up to {moving}. The measurements are taken as stated."},
    Phrase{"chain.not_proved",
           "All joints of both sections together make the machine's shaft turn unevenly by {attained} of the PTO speed "
           "({speed}) at the worst position found, and it is proved that no position of this state makes it {value}: a "
           "limit lies between the two, so that it is not known whether it is kept."},
    Phrase{"chain.turn_yoke",
           "Turn the yokes on the bearing's shaft so that the second section cancels what the first one leaves, and "
           "bring the angles of each section nearer to each other."},
    Phrase{"branch.unstated",
           "Place, joints, folding at work and for transport, telescope, speed or torque of this branch are not all "
           "stated."},
    Phrase{"branch.impossible", "This branch cannot be as stated: {why}."},
    Phrase{"branch.angle",
           "Over the whole folding while its driveline turns {end} fares worse against its limit for work, worst when "
           "folded by {fold}. {rest}"},
    Phrase{"branch.angle_at_rest",
           "Over all folds that the part takes with its driveline on, the PTO off, {end} fares worse against its limit "
           "at rest, worst when folded by {fold}. Past it the yokes touch and break, or bend shaft and gearbox."},
    Phrase{"branch.rest.coupled", "All folds with the driveline on count, those for transport too."},
    Phrase{"branch.rest.taken_off",
           "That is the folding while it turns: the case says that the driveline is taken off before the part folds "
           "further."},
    Phrase{"branch.rest.unstated",
           "That is the folding while it turns alone: how far the part folds for transport with its driveline on is "
           "not stated."},
    Phrase{
        "branch.take_off",
        "Take this driveline off, engine off and key out, before the part is folded for transport, and secure it; or "
        "fold the part no further. Put its guard back before work."},
    Phrase{
        "branch.take_off_or_fit",
        "Take this driveline off, engine off and key out, before the part is folded for transport, and secure it; or "
        "fit members that suit all folds, or fold the part no further. Put its guard back before work."},
    Phrase{"branch.front", "the joint at the splitter"},
    Phrase{"branch.rear", "the joint at the folding part"},
    Phrase{"branch.less_fold",
           "Fold this part no further while its driveline turns: disengage the PTO first, or fit a wide-angle joint "
           "where its manual allows it."},
    Phrase{
        "branch.uneven",
        "Its shaft turns unevenly by {value} of its speed ({speed}) when folded by {fold}. The limits are guide values "
        "for its angular acceleration, from passenger cars."},
    Phrase{
        "branch.uneven_at_high_idle",
        "Its shaft turns unevenly by {value} of its speed when folded by {fold}. At {nominal} that is within the guide "
        "value for its angular acceleration, from passenger cars; with the engine at high idle it turns at {speed}, "
        "and there it is not."},
    Phrase{"branch.equalise",
           "Bring both joint centres of this branch equally far from the hinge, with both yokes in line, so that each "
           "joint takes half of the folding."},
    Phrase{"branch.overlap",
           "Its joint centres are at most {length} apart, when folded by {fold}: so much overlap is left. "
           "{rest}"},
    Phrase{"branch.apart",
           "Its joint centres are up to {length} apart when folded by {fold}: the members come apart and swing. "
           "{rest}"},
    Phrase{"branch.room", "Its joint centres are at least {length} apart, when folded by {fold}: so much room is left. "
                          "{rest}"},
    Phrase{
        "branch.bottoms",
        "Its joint centres come as near as {length} when folded by {fold}: the members bottom and push on splitter and "
        "gearbox. {rest}"},
    Phrase{"branch.other_length",
           "Fit members of another length to this branch, or limit the folding while its driveline turns."},
    Phrase{
        "branch.joints",
        "In work it carries {share} of the torque. If its part alone jams, all that is let through ahead of the "
        "splitter arrives here, {torque} at its own speed behind its first joint ({origin}), and for an instant what "
        "the other parts give by their own inertia. Its joints are rated for {limit}."},
    Phrase{
        "branch.tube",
        "In work it carries {share} of the torque. If its part alone jams, all that is let through ahead of the "
        "splitter arrives here, {torque} at its own speed behind its first joint ({origin}), and for an instant what "
        "the other parts give by their own inertia. That shears its tube."},
    Phrase{"branch.joints_behind_own",
           "In work it carries {share} of the torque. If its part jams, its own overload device lets {torque} through "
           "({origin}), at its own speed. Its joints are rated for {limit}."},
    Phrase{"branch.tube_behind_own",
           "In work it carries {share} of the torque. If its part jams, its own overload device lets {torque} through "
           "({origin}), at its own speed. That shears its tube."},
    Phrase{"branch.unbounded",
           "No overload device bounds what arrives here when its part alone jams: at least {torque} at its own speed "
           "({origin}), and what the turning parts give by their inertia."},
    Phrase{"branch.fit_device",
           "Fit an overload device to this branch, or ahead of the splitter one that this branch bears alone."},
    Phrase{"branch.raise_device",
           "The device of this branch may let go at {least}, and the peaks of the work bring its share, {work}: set it "
           "higher where joints and tube bear it."},
    Phrase{"branch.stronger",
           "Use a stronger driveline on this branch, or an overload device on it that holds its torque down: the one "
           "ahead of the splitter lets through what all parts together need."},
    Phrase{"variation.unstated",
           "Hitch, kinds of the joints, phase of the yokes, engaged gear or the positions are not all stated."},
    Phrase{"variation.driven",
           "The implement's shaft turns unevenly by {value} of the PTO speed ({speed}) at the worst position "
           "in which it is driven, both joints in their true planes together. The limits go by a guide value for its "
           "angular acceleration, from passenger cars."},
    Phrase{"variation.loose",
           "The implement's shaft turns unevenly by {stated} of the PTO speed ({speed}) at the worst position in which "
           "it is driven, measured as stated; measurements within their tolerances make that {value}."},
    Phrase{
        "difference.loose",
        "As measured the two joint angles differ by {stated} at most in work; measurements within their tolerances "
        "make that {value}. Unequal angles make the implement run unevenly, twice in every turn, and shake the line."},
    Phrase{"variation.endless",
           "How unevenly the implement's shaft turns has no bound: a joint reaches a right angle, or the yokes "
           "stand out of line."},
    Phrase{
        "variation.at_high_idle",
        "The implement's shaft turns unevenly by {value} of its speed at the worst position in which it is driven. At "
        "{nominal} that is within the guide value for its angular acceleration, from passenger cars; with the engine "
        "at high idle the PTO turns at {speed}, and there it is not."},
    Phrase{
        "variation.loose_at_high_idle",
        "The implement's shaft turns unevenly by {stated} of its speed at the worst position in which it is driven, "
        "measured as stated; measurements within their tolerances make that {value}. At {nominal} that is within the "
        "guide value for its angular acceleration, from passenger cars; with the engine at high idle the PTO turns at "
        "{speed}, and there it is not."},
    Phrase{"inertia.unstated", "Hitch, kind of the front joint, engaged gear or the positions are not all stated."},
    Phrase{"inertia.endless", "The front joint reaches a right angle: how unevenly the shaft behind it turns has no "
                              "bound."},
    Phrase{
        "inertia.driven",
        "However smooth the pair is, the shaft between the joints runs as unevenly as the front joint alone makes it: "
        "bent {front} at {speed} it is speeded up and slowed down by up to {value}, "
        "twice in every turn, which loads joints and telescope with its own inertia. The guide value is from "
        "passenger cars."},
    Phrase{"high_idle.unstated",
           "Fast enough this would shake: at the gear's speed it passes, how fast the PTO turns with "
           "the engine at high idle is not stated."},
    Phrase{
        "inertia.at_high_idle",
        "However smooth the pair is, the shaft between the joints runs as unevenly as the front joint alone makes it: "
        "bent {front} it is speeded up and slowed down by up to {value}, twice in every turn, with the engine at high "
        "idle and the PTO at {speed}. At {nominal} that would be within the guide value, which is from passenger "
        "cars."},
    Phrase{
        "inertia.less_angle",
        "Bend the front joint, {front}, less while it turns, by a smaller turn, with the PTO let go before turning, or "
        "with a wide-angle joint whose centre lies over the pin."},
    Phrase{"variation.yokes",
           "See that both yokes of the intermediate shaft stand in line; a splined tube put together one "
           "position wrong makes it worse."},
    Phrase{"difference.unstated", "Hitch, joints, input connection or the working positions are not all stated."},
    Phrase{"difference.in_work",
           "Greatest difference of the two joint angles in work. Unequal angles make the implement run "
           "unevenly, twice in every turn, and shake the line."},
    Phrase{"difference.by_pin",
           "Greatest difference of the two joint angles in work. The pin lies {front_arm} behind the front joint and "
           "{rear_arm} ahead of the rear one: in a turn the joint nearer to the pin bends more. Unequal angles make "
           "the implement run unevenly, twice in every turn, and shake the line."},
    Phrase{"difference.equalise",
           "Bring both joint centres equally far from the pin (hitch extension, place of the input "
           "connection; the drawbar keeps the position that belongs to its PTO type), so that each joint takes half of "
           "the turn."},
    Phrase{"difference.other_hole",
           "With the pin in {hole_position} of {stub}, {hole} behind the shaft end, the joint angles differ by at most "
           "{hole_difference} in work instead of {value}; then check driveline length and clearance again."},
    Phrase{"difference.other_hole_runs",
           "With the pin in {hole_position} of {stub}, {hole} behind the shaft end, the joint angles differ by at most "
           "{hole_difference} in work instead of {value}; with the rear yoke {hole_phase} from the front one the "
           "implement's shaft then turns unevenly by {hole_variation} instead of {variation}, at the worst position "
           "looked at. Then check driveline length and clearance again."},
    Phrase{"difference.place_of_input_runs",
           "With the pin where it is and the end of the input shaft {equal_behind} behind it (now {input_behind}), the "
           "joint angles differ by at most {equal_difference} in work instead of {value}; with the rear yoke "
           "{equal_phase} from the front one the implement's shaft then turns unevenly by {equal_variation} instead of "
           "{variation}, at the worst position looked at. Then check driveline length and clearance again."},
    Phrase{"difference.place_of_input",
           "With the pin where it is and the end of the input shaft {equal_behind} behind it (now {input_behind}), the "
           "joint angles differ by at most {equal_difference} in work instead of {value}; then check driveline length "
           "and clearance again."},
    Phrase{
        "difference.into_line",
        "Bring pin and input shaft into the line of the stub, seen from above (the pin stands {pin_beside} beside the "
        "stub's line, the input shaft {input_beside} beside the pin): the joint angles then differ by at most "
        "{difference_there} in work instead of {value}, and no check becomes worse."},
    Phrase{
        "difference.pin_first",
        "First set the pin as the finding on the drawbar says, then assess the case again: the joint angles are then "
        "other ones."},
    Phrase{"difference.other_driveline",
           "Move neither pin nor input shaft with this driveline: what makes the joint angles more equal makes another "
           "check worse. Choose a driveline of another length together with the place."},
    Phrase{"difference.equalise_pivot",
           "Bring both joint centres equally far from the steering pivot, so that each joint takes half of the turn: "
           "straight, the one at the tractor stands {front_arm} ahead of it and the one at the implement {rear_arm} "
           "behind; an input shaft that ends {equal_behind} behind the lower hitch points would make them alike. Then "
           "check length and clearance again."},
    Phrase{
        "difference.equalise_pivot_in_general",
        "Bring both joint centres equally far from the steering pivot, one on each side, so that each joint takes half "
        "of the turn."},
    Phrase{"difference.equalise_mounted",
           "Set the top link so that the input shaft runs parallel to the stub in work: then both joints "
           "bend equally."},
    Phrase{"telescope.yokes_unstated",
           "A wide-angle joint bends at two crosses and pushes the telescope further together than a joint in one "
           "point: how long the coupling yoke between them is, is not stated."},
    Phrase{"telescope.unstated",
           "Closed length, overlap, hitch or the positions of all three states are not all stated."},
    Phrase{"telescope.overlap", "The joint centres are at most {length} apart."},
    Phrase{"telescope.overlap_of_three",
           "The joint centres are at most {length} apart. Each slide may have to give all of that before the other one "
           "moves, up to its stop: {slide} then overlaps least."},
    Phrase{"telescope.against_stop",
           "The joint centres are up to {length} apart: the telescope is pulled against its stops, and on gearbox and "
           "PTO bearings."},
    Phrase{"telescope.slide.only", "the slide"},
    Phrase{"telescope.slide.front", "the slide at the tractor"},
    Phrase{"telescope.slide.rear", "the slide at the implement"},
    Phrase{"telescope.apart",
           "The joint centres are up to {length} apart: the members come apart and the loose halves swing."},
    Phrase{"telescope.longer",
           "Fit a driveline with longer members, or limit the position that pulls it out this far."},
    Phrase{"telescope.clearance", "The joint centres are at least {length} apart."},
    Phrase{"telescope.bottoms",
           "The joint centres come as near as {length}: the members bottom and push on gearbox and PTO "
           "bearings."},
    Phrase{"telescope.shorter",
           "Cut both members and both guard tubes by the same amount, by the driveline's manual, if the "
           "overlap at the longest position allows it; else limit the position that pushes it together."},
};

} // namespace

Phrases driveline_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
