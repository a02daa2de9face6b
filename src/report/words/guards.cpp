// Words for guards.

#include "report/words/words.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace report_texts {
namespace {

constexpr Phrase phrases[] = {
    Phrase{"guard.master.unstated", "Whether the tractor's master shield is in place is not stated."},
    Phrase{"guard.master.present", "The tractor's master shield is in place."},
    Phrase{"guard.master.damaged", "The tractor's master shield is damaged."},
    Phrase{"guard.master.absent", "The tractor's master shield is missing."},
    Phrase{"guard.master.refit", "Fit a sound master shield before the PTO turns again."},
    Phrase{"guard.other_stub.unstated", "Whether the stub that is not in use is capped is not stated; it turns too."},
    Phrase{"guard.other_stub.present", "The stub that is not in use is capped."},
    Phrase{"guard.other_stub.damaged", "The cap of the stub that is not in use is damaged; the stub turns too."},
    Phrase{"guard.other_stub.absent", "The stub that is not in use stands out bare, and turns."},
    Phrase{"guard.other_stub.refit", "Cap or guard the stub that is not in use before the PTO turns again."},
    Phrase{"guard.driveline.unstated", "Whether the driveline's guard is in place is not stated."},
    Phrase{"guard.driveline.present", "The driveline's guard is in place."},
    Phrase{"guard.driveline.damaged", "The driveline's guard is damaged."},
    Phrase{"guard.driveline.absent",
           "The driveline has no guard. It winds up clothing faster than a person can react."},
    Phrase{"guard.driveline.refit",
           "Fit a sound guard of the right length, held against turning, before the PTO turns again."},
    Phrase{"guard.input.unstated", "Whether the guard of the implement's input connection is in place is not stated."},
    Phrase{"guard.input.present", "The guard of the implement's input connection is in place."},
    Phrase{"guard.input.damaged", "The guard of the implement's input connection is damaged."},
    Phrase{"guard.input.absent", "The guard of the implement's input connection is missing."},
    Phrase{"guard.input.refit", "Fit a sound guard at the implement's input connection before the PTO turns again."},
};

} // namespace

Phrases guards_words() noexcept { return {std::begin(phrases), std::end(phrases)}; }

} // namespace report_texts
} // namespace v0
} // namespace fieldshaft
