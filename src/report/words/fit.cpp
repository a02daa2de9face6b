// Words for stub, yoke and adaptor.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"fit.unstated", "Stub and tractor yoke are not both stated."},
    Phrase{"fit.same", "Stub and tractor yoke are the same: {stub}."},
    Phrase{"fit.different", "The stub is {stub}, the yoke is {yoke}: they do not go together."},
    Phrase{"fit.unidentified", "Stub: {stub}; yoke: {yoke}. Nearest to what was counted and measured: {near}."},
    Phrase{"fit.measure", "Count the splines again and measure over them with a calliper, engine off and key removed."},
    Phrase{"fit.change_yoke",
           "Fit a tractor-end yoke for {stub} where the driveline's manual allows it, or use the stub "
           "that fits {yoke} together with its speed. Never bridge the difference with an adaptor."},
    Phrase{"adaptor.unstated", "Whether an adaptor sits between stub and driveline is not stated."},
    Phrase{"adaptor.none", "No adaptor sits between stub and driveline."},
    Phrase{"adaptor.fitted",
           "An adaptor sits between stub and driveline. It moves the joint away from its place over the "
           "hitch, leaves parts uncovered by the master shield, lengthens the lever arm on the stub and "
           "lets the wrong implement be coupled."},
    Phrase{"adaptor.moves",
           "An adaptor sits between stub and driveline. It stands in the shield's way, loads the stub and its bearing "
           "further out, and moves the joint: {joint} behind the end of the stub instead of {own_joint}. Over all "
           "positions the joint at the tractor then bends up to {front} instead of {own_front}, the one at the "
           "implement up to {rear} instead of {own_rear}, and the joint centres come as near as {shortest} instead of "
           "{own_shortest}."},
    Phrase{"adaptor.remove", "Take the adaptor off and fit the yoke that belongs to the stub."},
    Phrase{"interface.unknown", "of no known type"},
    Phrase{"interface.ambiguous", "one of several types"},
    Phrase{"interface.none_near", "none of the known types"},
};

} // namespace

Phrases fit_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
