// Words for the report itself, states of the machine and cautions.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    // States of the machine.
    Phrase{"state.working", "in work"},
    Phrase{"state.turning", "while turning"},
    Phrase{"state.transport", "in transport"},
    // The report itself.
    Phrase{"report.not_all", "Not everything was examined (see below)."},
    Phrase{"report.memory", "It rests partly on limits from memory, not yet verified (marked below)."},
    Phrase{"report.never_examined",
           "Also outside this assessment: the implement-end yoke and its shaft; an overrunning "
           "clutch for a rotor that runs on; thrust of the telescope; "
           "brakes, weights and stability; electrical and hydraulic lines."},
    // Cautions.
    Phrase{"caution.standstill", "Stop the engine, remove the key and wait until everything stands still before you go "
                                 "near driveline or implement; rotors run on for a long time."},
    Phrase{"caution.guards", "Keep master shield, driveline guard and input guard in place and sound."},
    Phrase{"caution.speed", "Never run a 540 implement at 1000, nor a 1000 implement at 540."},
    Phrase{"caution.thrown",
           "Keep everybody out of the way of thrown objects; a rotary cutter can throw them more than "
           "300 ft (91 m) [published]."},
    Phrase{"caution.manual", "The operator's manuals of tractor, implement and driveline, local codes and licensed "
                             "practice come before this report. Limits are limits, not permissions."},
};

} // namespace

Phrases report_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
