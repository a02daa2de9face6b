// Words for what was proved of the driveline.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{
        "certificate.whole",
        "Over all positions of all states it is proved, for the rigid model and the stated tolerances: no joint angle "
        "above {angle}, no distance of the joint centres outside {shortest} to {longest}. {near}"},
    Phrase{
        "certificate.hand",
        "Nothing is proved while a length measured by hand disagrees with the model, or cannot be compared with it."},
    Phrase{"certificate.some_states",
           "Over all positions of the states that could be examined, not of all, it is proved, for the rigid model and "
           "the "
           "stated tolerances: no joint angle above {angle}, no distance of the joint centres outside {shortest} to "
           "{longest}. {near}"},
    Phrase{
        "certificate.attained",
        "These bounds lie within {angle_gap} and {length_gap} of what some driveline within the tolerances reaches."},
    Phrase{"certificate.state",
           "{state} ({positions}): at the tractor at most {front} ({front_at}), at the implement at most {rear} "
           "({rear_at}); from {shortest} ({shortest_at}) to {longest} ({longest_at})."},
    Phrase{"certificate.crosses", "Wide-angle joints are taken as two crosses each, {yokes}, at equal angles."},
    Phrase{"certificate.crosses.one", "{yoke} apart in {end}"},
    Phrase{
        "certificate.one_point",
        "This takes each wide-angle joint as bending in one point, because not every coupling yoke is stated: with two "
        "crosses the telescope is pushed further together, by up to a quarter of the yoke, and the joints bend a "
        "little further."},
    Phrase{"certificate.measured",
           "{state}: {angle}, all tolerances included, follows from what was measured: {entries}."},
    Phrase{
        "certificate.steady_turns",
        "Turns that were measured as radii are steady turns: turning in, backing up and jack-knifing bend further and "
        "are not within these positions."},
    Phrase{"certificate.even_ground",
           "Hollow and crest are taken as even arcs: a ditch or a short hump bends further and is not within these "
           "positions."},
    Phrase{
        "certificate.level_ground",
        "A machine on its own wheels is taken to stand on level ground: a hollow or hump under them tilts it further "
        "and is not within these positions."},
    Phrase{"certificate.from_to", "{low} to {high}"},
    Phrase{"certificate.yaw", "yaw {range}"},
    Phrase{"certificate.steering", "turned about its pivot {range}"},
    Phrase{"certificate.less_roll", "of which {share} at full turn"},
    Phrase{"certificate.pitch", "pitch {range}"},
    Phrase{"certificate.roll", "roll {range}"},
    Phrase{"certificate.top_link", "a top link of {range}"},
    Phrase{"certificate.slack", "top link slack, on its own wheels"},
    Phrase{"certificate.lift", "lift {range}"},
    Phrase{"certificate.most.angle",
           "For the greatest joint angle {entry} matters most: its tolerance alone moves the angle by {moves}."},
    Phrase{"certificate.most.longest",
           "For the longest position {entry} matters most: its tolerance alone moves the length by {moves}."},
    Phrase{"certificate.most.shortest",
           "For the shortest position {entry} matters most: its tolerance alone moves the length by {moves}."},
    Phrase{"finding.unasked", "{check}: state {entries}."},
    Phrase{"heading.certificate", "Proved over the whole range"},
};

} // namespace

Phrases certificate_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
