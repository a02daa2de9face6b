// Words for drawbar and three-point linkage.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"drawbar.unstated",
           "Kind of hitch, distance from shaft end to pin and type of the stub are not all stated."},
    Phrase{"drawbar.no_distance", "No drawbar distance is known for {stub}; the tractor's manual states it."},
    Phrase{"drawbar.met", "The pin stands in {position} for {stub}."},
    Phrase{"drawbar.measure_again",
           "The pin may stand in {position} for {stub}, but the measurement is too loose to prove it."},
    Phrase{"drawbar.between", "The pin stands between the known positions for {stub}; nearest is {position}."},
    Phrase{"drawbar.too_short", "The pin is nearer to the shaft end than any position for work with {stub}: the front "
                                "joint bends more in turns, and the driveline bottoms earlier."},
    Phrase{"drawbar.too_long", "The pin is farther from the shaft end than any known position for {stub}."},
    Phrase{"drawbar.move_pin", "Set the drawbar, with the implement unhitched, so that the pin stands {limit} behind "
                               "the shaft end ({position}), with no more vertical load than manual and drawbar permit "
                               "there; then check driveline length and clearance again, by hand and engine off."},
    Phrase{"drawbar.position.short", "the short position"},
    Phrase{"drawbar.position.regular", "the regular position"},
    Phrase{"drawbar.position.extended", "the extended position"},
    Phrase{"drawbar.position.us", "the position usual in the United States"},
    Phrase{"linkage.unstated", "A category is stated, but none of the measurements that it fixes."},
    Phrase{
        "linkage.agrees",
        "All figures that were compared, {count}, agree with category {category}; the least well {entry}: "
        "{measured}, in the category {usual}. How far the links move and how low and high they reach is not compared: "
        "the case states the lifts that are used, not those that the tractor can reach."},
    Phrase{"linkage.agrees_in_few",
           "No more than {count} of the category's figures could be compared with category {category}, and what could "
           "agrees; the least well {entry}: {measured}, in the category {usual}. That is too little to call the "
           "linkage measured right."},
    Phrase{"linkage.differs", "{entry} is {measured}, in category {category} it is {usual}: measured wrong, of another "
                              "category, or a special machine. Figures compared: {count}."},
    Phrase{
        "linkage.state_more",
        "State more of the figures that a category fixes: span of the lower hitch points, pins, mast height, place and "
        "length of the lower links."},
    Phrase{"linkage.measure_again", "Measure {entry} again, and look up the category in both manuals; pins of another "
                                    "category want their own ball ends or bushes."},
};

} // namespace

Phrases drawbar_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
