// Words for the gears of a tractor and for economy PTO.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"heading.gears", "Engine speed in each gear"},
    Phrase{"gears.column.gear", "Gear"},
    Phrase{"gears.column.set", "Set the engine to"},
    Phrase{"gears.column.never", "Never above"},
    Phrase{"gears.column.idle", "PTO at high idle"},
    Phrase{"gears.column.power", "PTO power"},
    Phrase{"gears.column.width", "Widest"},
    Phrase{"gears.column.feed", "Most feed"},
    Phrase{"gears.column.speed", "Fastest"},
    Phrase{"gears.range", "{low} to {high}"},
    Phrase{"gears.unfit", "do not engage"},
    Phrase{"gears.out_of_reach", "out of reach"},
    Phrase{"gears.nothing", "nothing"},
    Phrase{"gears.not_known", "not known"},
    Phrase{"gears.none", "-"},
    Phrase{"gears.each_alone",
           "Width, feed and ground speed stand each for itself, everything else being as the case states it."},
    Phrase{"gears.limits_not_known",
           "How wide, how fast or how many tonnes an hour each gear carries is not known; state {entries}."},
    Phrase{"economy.fits", "Economy PTO: the work fits in \"{economy}\" with its reserve, at {economy_engine} of the "
                           "engine in place of {plain_engine} in \"{plain}\" (power there: {power})."},
    Phrase{"economy.fits_barely",
           "Economy PTO: the work fits in \"{economy}\" with less than the wanted reserve, at {economy_engine} of the "
           "engine in place of {plain_engine} in \"{plain}\" (power there: {power})."},
    Phrase{"economy.too_weak", "Economy PTO: \"{economy}\" is not enough for this work: {power} at {economy_engine} of "
                               "the engine. Stay in \"{plain}\" at {plain_engine}."},
    Phrase{"economy.fit_not_known",
           "Economy PTO: whether the work fits in \"{economy}\" at {economy_engine} of the engine, in place of "
           "{plain_engine} in \"{plain}\", is not known (power there: {power})."},
    Phrase{"economy.saving",
           "By the average of many tractors it saves {rate} of fuel, {share} %; one tractor may differ "
           "by 15 % and more."},
    Phrase{"economy.hour", "That is {money} an hour."},
    Phrase{"economy.season", "In the season that is {fuel}."},
    Phrase{"economy.season_with_money", "In the season that is {fuel}, {money}."},
    Phrase{"economy.outside", "The relation does not hold well here: {why}."},
    Phrase{"economy.run_up",
           "Run up to {engine} in \"{gear}\", as in the plain gear, the engine turns the PTO at {pto}."},
    Phrase{"economy.rated", "At rated engine speed it turns at {pto}."},
    Phrase{"economy.idle", "At high idle it turns at {pto}."},
    Phrase{"economy.never", "Never run the engine above {engine} in this gear."},
};

} // namespace

Phrases gears_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
