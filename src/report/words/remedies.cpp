// Words for remedies: each kind of change, and the page that shows them.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"remedies.title", "Remedies: {title}"},
    Phrase{"remedies.none_needed", "Nothing stands in the way of this case, so nothing has to be changed."},
    Phrase{"remedies.found", "With each of these sets of changes nothing stands in the way any more. Each set was "
                             "assessed as a whole: it heals what it claims, and no finding has become worse."},
    Phrase{
        "remedies.found_unknown",
        "Each of these sets of changes takes away every objection that was found. Checks that cannot be decided stay "
        "undecided: this is no pass. Each set was assessed as a whole, and no finding has become worse."},
    Phrase{"remedies.partly", "No set of changes was found that heals everything. These heal the most, and make "
                              "nothing worse; what is left is named with each."},
    Phrase{"remedies.not_found", "No change was found that heals what stands in the way without making something else "
                                 "worse. Use another tractor or another implement."},
    Phrase{"remedies.still_not_known", "Findings that are not known stay so: state the missing entries first."},
    Phrase{"remedies.heading.sets", "What to change"},
    Phrase{"remedies.heading.set", "Set {n}"},
    Phrase{"remedies.heading.by_finding", "What heals each finding by itself"},
    Phrase{"remedies.heading.without", "No change is known here for"},
    Phrase{"remedies.heading.state", "State these first"},
    Phrase{"remedies.heading.search", "What was searched"},
    Phrase{"remedies.price", "Price: {price}."},
    Phrase{"remedies.no_price", "Price: not all of it is stated."},
    Phrase{"remedies.after", "Afterwards: {verdict}"},
    Phrase{"remedies.memory", "That rests partly on limits from memory, not yet verified."},
    Phrase{"remedies.heals", "Heals: {checks}."},
    Phrase{"remedies.left", "Still in the way: {checks}."},
    Phrase{"remedies.mind", "New to keep in mind: {checks}."},
    Phrase{"remedies.entry", "In the case: {path}: {from} becomes {to}."},
    Phrase{"remedies.unstated", "unstated"},
    Phrase{"remedies.search", "{cases} changed cases and {ranges} states of the machine were examined; every set of up "
                              "to {size} of the changes that the findings call for was looked at."},
    Phrase{"remedies.cut_off",
           "The search was ended at its bound: a smaller or cheaper set of more changes may exist."},
    Phrase{"remedies.never",
           "Never offered: adaptors, the short drawbar position, a guard taken off, off-speed running, "
           "a stub that the tractor does not have."},
    // Why no change is known.
    Phrase{"remedies.because", "{check}: {why}"},
    Phrase{"remedies.why.permitted_power",
           "nothing here makes the tractor weaker or the implement stronger. Ask the implement's maker which overload "
           "device lets it run on this tractor, or take a smaller tractor."},
    Phrase{"remedies.why.rotation", "only a PTO, or a gearbox by the implement's maker, that turns it the right way."},
    Phrase{"remedies.why.hand_check", "something is measured wrong. Measure again before anything is changed."},
    Phrase{"remedies.why.fouling", "what is in the way has to be moved, or the turn kept narrower; the finding says "
                                   "where. Changes for the other findings do not look at it."},
    Phrase{"remedies.why.run_down", "a rotor runs on whatever is changed. Wait until it stands, every time."},
    Phrase{"remedies.why.other_gears", "the lever can always be moved. Lock or tag it."},
    Phrase{"remedies.why.tips", "a rotor slow enough for this limit would turn its tips below 20 m/s (66 ft/s), at "
                                "which stalks are no longer cut: another implement, or the limit looked up again."},
    Phrase{"remedies.why.follows", "it goes with the joint angles and the telescope, and heals with them."},
    Phrase{"remedies.why.none", "no change is known here."},
    // The changes.
    Phrase{"change.select_gear", "Select the gear \"{gear}\", which gives {speed}, with the PTO at rest."},
    Phrase{"change.time_engagement", "Let the tractor's PTO clutch in over {ramp} (now {own_ramp}), with the engine at "
                                     "low speed: an operating rule, where the tractor lets it be chosen."},
    Phrase{"change.keep_pto_speed", "Keep the PTO between {low} and {high} in work, where the line does not swing: an "
                                    "operating rule."},
    Phrase{"change.drive_slower", "Drive no faster than {speed} in the heaviest work (now {own_speed})."},
    Phrase{"change.disengage_in_turns", "Disengage the PTO before turning, wait until the driveline stands, then turn; "
                                        "every time: an operating rule. A rotor behind an overrunning clutch runs on."},
    Phrase{"change.limit_turn",
           "Turn no further than {turn} to either side {state} (now {own_turn}): an operating rule; "
           "mark it or fit a stop."},
    Phrase{"change.limit_lift",
           "Keep the lift between {low} and {high} {state}: an operating rule; set the stop of the "
           "linkage."},
    Phrase{"change.set_device", "Set the overload device to {setting} (now {own_setting}; right is {lowest} to "
                                "{highest}), and test it by its manual."},
    Phrase{"change.align_yokes", "Put the telescoping members together so that both yokes stand in line (now off by "
                                 "{phase})."},
    Phrase{"change.set_top_link", "Set the top link to {length} (now {own_length}), so that the input shaft runs "
                                  "parallel to the stub in work."},
    Phrase{"change.move_drawbar", "Set the hitch pin {distance} behind the shaft end (now {own_distance}): {position}, "
                                  "with the implement unhitched and no more vertical load than manual and drawbar "
                                  "permit there. Then check driveline length and clearance by hand, engine off."},
    Phrase{"change.change_over",
           "Change over to the stub {stub}, with the gear \"{gear}\" for {speed}, by the steps of "
           "the changeover."},
    Phrase{"change.change_over_pin",
           "Change over to the stub {stub}, with the gear \"{gear}\" for {speed} and the hitch "
           "pin {distance} behind the shaft end, by the steps of the changeover."},
    Phrase{"change.remove_adaptor",
           "Take the adaptor off and couple the yoke straight onto the stub; measure joint and "
           "driveline anew."},
    Phrase{"change.refit_guard", "Fit a sound guard: {guard}."},
    Phrase{"change.guard.master", "the master shield of the tractor"},
    Phrase{"change.guard.other_stub", "the cap of the stub that is not in use"},
    Phrase{"change.guard.driveline", "the guard of the driveline"},
    Phrase{"change.guard.input", "the guard of the implement's input connection"},
    Phrase{"change.cut_tubes", "Cut {cut} from both members and both guard tubes, by the driveline's manual; closed "
                               "length then {closed}. Check both extremes by hand first, engine off."},
    Phrase{"change.clamp_seat", "Fit a tractor yoke that clamps the stub. Measure the front joint anew with it, and "
                                "have the case assessed again before the PTO turns."},
    Phrase{"change.longer_hub", "Fit a tractor yoke with a hub of {length} (now {own_length}). Measure the front joint "
                                "anew with it, and have the case assessed again before the PTO turns."},
    Phrase{"change.change_yoke", "Fit a tractor yoke for {stub}, where the driveline's maker allows it. Measure the "
                                 "front joint anew with it, and have the case assessed again before the PTO turns."},
    Phrase{"change.fit_device",
           "Fit an overload clutch at the implement end, set to {setting} (right is {lowest} to {highest} with a "
           "scatter of {scatter} %, which its papers must confirm), and test it. It moves the rear joint {shortest} to "
           "{longest} away from the input shaft (common practice, no source). Measure that joint anew with the clutch "
           "in place, and have the case assessed again before the PTO turns."},
    Phrase{"change.longer_driveline", "Fit members that are {longer} longer: closed length {closed}, overlap then "
                                      "{overlap}."},
    Phrase{"change.stronger_tube", "Fit telescoping members of at least {outer} by {inner}, outside and inside, of the "
                                   "same steel."},
    Phrase{"change.stronger_profile",
           "Fit telescoping members of the same profile with a wall of at least {wall} and a "
           "perimeter of at least {perimeter}, of the same steel."},
    Phrase{"change.stronger_joints", "Fit joints with a rating of at least {rating}."},
    Phrase{
        "change.larger_bearings",
        "Fit joints whose needle bearings are rated for at least {bearings} each, {arm} from the centre of the cross "
        "or farther."},
    Phrase{"change.stronger_joints_and_bearings",
           "Fit joints with a rating of at least {rating}, whose needle bearings are rated for at least {bearings} "
           "each, {arm} from the centre of the cross or farther."},
    Phrase{"change.wide_angle_front_bearings",
           "Fit a wide-angle joint at the tractor, rated for at least {rating}, each of its needle bearings for at "
           "least {bearings} at {arm} from the centre of its cross, its two crosses at most {yoke} apart, its centre "
           "where the plain one had it, and its "
           "other end as its manual says."},
    Phrase{"change.wide_angle_rear_bearings",
           "Fit a wide-angle joint at the implement, rated for at least {rating}, each of its needle bearings for at "
           "least {bearings} at {arm} from the centre of its cross, its two crosses at most {yoke} apart, its centre "
           "where the plain one had it."},
    Phrase{"change.wide_angle_front", "Fit a wide-angle joint at the tractor, rated for at least {rating}, its two "
                                      "crosses at most {yoke} apart, its centre "
                                      "where the plain one had it, and its other end as its manual says."},
    Phrase{"change.wide_angle_rear", "Fit a wide-angle joint at the implement, rated for at least {rating}, its two "
                                     "crosses at most {yoke} apart, its centre "
                                     "where the plain one had it."},
    Phrase{"change.place_of_input",
           "Bring the end of the input shaft to {behind} behind the pin (now {own_behind}), by a "
           "hitch extension or another place of the input connection, so that the pin lies "
           "midway between the joints."},
    Phrase{"change.less_power", "Work narrower or slower, so that the implement needs no more than {need} (now "
                                "{own_need}, {share} % of it)."},
    Phrase{"change.rotor_gear", "Have a gearbox fitted, as the implement's manual allows, that turns the rotor at "
                                "{speed} (now {own_speed})."},
    Phrase{
        "change.implement_speed_and_device",
        "Use the implement, or its gearbox, in the make for {speed} (now {own_speed}), if its maker has one, with its "
        "overload device set to {setting}, which lets the same power through, and select the gear \"{gear}\"; rotor "
        "speed and permitted power as now."},
    Phrase{"change.implement_speed",
           "Use the implement, or its gearbox, in the make for {speed} (now {own_speed}), if its maker has one, and "
           "select the gear \"{gear}\"; rotor speed and permitted power as now."},
};

} // namespace

Phrases remedies_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
