// Words for PTO speed, stub and lever.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"rotation.unstated", "The rotation of the PTO, or the one that the implement needs, is not stated."},
    Phrase{"rotation.match", "The stub turns {turns} seen facing its end, as the implement needs."},
    Phrase{"rotation.differs",
           "The stub turns {turns} seen facing its end; the implement is made for {needs}. It would "
           "run backwards: freewheels, knives and threads hold in one direction only."},
    Phrase{"rotation.advice", "Do not couple them: the implement needs a PTO, or a gearbox by its maker, that turns it "
                              "the way for which it is made."},
    Phrase{"rotation.clockwise", "clockwise"},
    Phrase{"rotation.counter_clockwise", "counter-clockwise"},
    Phrase{"place.usual", "The stub stands at the rear and the engine turns it."},
    Phrase{"place.front",
           "A front PTO: speed, torque and power are judged; its geometry, drawbar and recommended powers "
           "are not known here, because the model and the standards at hand are those of a rear PTO."},
    Phrase{"place.mid", "A mid PTO: speed, torque and power are judged; its geometry and recommended powers are not "
                        "known here, because the model and the standards at hand are those of a rear PTO."},
    Phrase{"drive.ground", "The wheels turn this PTO: its speed goes with the ground speed, it turns backwards in "
                           "reverse, and the grip of the wheels bounds its torque. Nothing that goes by the speed of a "
                           "gear is known."},
    Phrase{"place.judge_later", "Not known for a PTO that is not at the rear."},
    Phrase{"drive.judge_later", "Not known for a PTO that the wheels turn."},
    Phrase{"speed.unstated", "The speeds of the engaged gear and of the implement are not both stated."},
    Phrase{
        "speed.match",
        "The engaged gear \"{gear}\" turns the PTO at the speed for which the implement is made (within {tolerance})."},
    Phrase{"speed.too_fast",
           "The engaged gear \"{gear}\" turns the PTO at {value}; the implement is made for {limit}. "
           "At {ratio} times its speed every pull on its rotating parts is {pull_ratio} times as large."},
    Phrase{
        "speed.too_fast_rotor",
        "The engaged gear \"{gear}\" turns the PTO at {value}; the implement is made for {limit}. At {ratio} times "
        "its speed the pull on the blades and the energy in the rotor are {pull_ratio} times as large, and the blade "
        "tips would reach {tip_speed}. Parts break off and objects are thrown."},
    Phrase{"speed.too_slow", "The engaged gear \"{gear}\" turns the PTO at {value}; the implement is made for {limit}. "
                             "For the same power the torque on every shaft is larger in the same ratio."},
    Phrase{"speed.select_gear", "Stop engine and PTO, wait until everything stands still, then select the gear "
                                "\"{right_gear}\", which gives {limit}; see that the stub is the one for that speed."},
    Phrase{"speed.no_gear", "Use a tractor that has a PTO gear for {limit}: this one lists none. No adaptor and no "
                            "off-speed running makes up for it."},
    Phrase{"speed.judge_later",
           "Not judged until the PTO is known to turn at the implement's own speed: what the implement needs "
           "at another speed is not known."},
    Phrase{"stub.unstated", "The stub and the engaged gear are not both stated."},
    Phrase{"stub.no_type", "The stub fits no known type, so its speed is not known."},
    Phrase{"stub.agrees", "The stub, {stub}, and the engaged gear \"{gear}\" mean the same speed."},
    Phrase{"stub.disagrees",
           "The stub, {stub}, stands for {limit}, but the engaged gear \"{gear}\" turns it at {value}. "
           "Whoever goes by the stub couples an implement for the wrong speed."},
    Phrase{"stub.change", "Make stub and speed lever agree: either fit the stub for {value} or select the gear for "
                          "{limit}, as the implement needs and by the tractor's manual."},
};

} // namespace

Phrases speed_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
