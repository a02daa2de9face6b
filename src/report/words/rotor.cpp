// Words for the rotor.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"rotor.unstated", "The rotor's tip radius and speed, or the engaged gear, are not all stated."},
    Phrase{"rotor.tip_speed",
           "Blade tips at the nominal PTO speed of the engaged gear, against the highest tip speed that "
           "the case states."},
    Phrase{"rotor.tip_speed_line",
           "Blade tips at the nominal PTO speed of the engaged gear. The manual's limit is not "
           "stated; the line is one for lawn and turf mowers, no legal limit of a farm cutter."},
    Phrase{"rotor.slow_down", "Run the implement at its own input speed only; if the tips are too fast there, rotor or "
                              "gearbox are not the ones that its manual means."},
    Phrase{"rotor.ask_manual",
           "Look up the highest tip or input speed in the implement's manual and state it in the case."},
    Phrase{"overspeed.unstated", "Engine speeds, engaged gear and implement speed are not all stated."},
    Phrase{"overspeed.no_limit", "No ceiling is known for an implement of this input speed; its manual states it."},
    Phrase{"overspeed.at_high_idle",
           "With the engine at high idle ({high_idle}) the gear \"{gear}\" turns the PTO at {value}."},
    Phrase{"overspeed.at_high_idle_rotor",
           "With the engine at high idle ({high_idle}) the gear \"{gear}\" turns the PTO at "
           "{value} and the blade tips at {tip_speed}."},
    Phrase{"overspeed.tips_beyond",
           "With the engine at high idle ({high_idle}) the gear \"{gear}\" turns the blade tips at "
           "{tip_speed}, faster than the {tip_limit} that they may."},
    Phrase{"overspeed.keep_below", "In the gear \"{gear}\" never let the engine pass {engine_speed}."},
    Phrase{"other_gears.unstated", "Gears, engaged gear, stub arrangement and implement speed are not all stated."},
    Phrase{"other_gears.speed", "The fastest other gear, \"{gear}\", reaches {value} at most."},
    Phrase{"other_gears.too_fast", "One movement of the lever to \"{gear}\" turns this implement at up to {value}."},
    Phrase{"other_gears.too_fast_rotor",
           "One movement of the lever to \"{gear}\" turns this implement at up to {value}; its "
           "blade tips would reach {tip_speed}."},
    Phrase{"other_gears.keep_below",
           "Where you work in \"{gear}\", never let the engine pass {engine_speed} there; where "
           "you do not, lock or tag the lever against it. Tell everybody who drives."},
    Phrase{"other_gears.secure", "Lock or tag the lever against \"{gear}\" while this implement is coupled, and tell "
                                 "everybody who drives."},
};

} // namespace

Phrases rotor_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
