// Counted cycles against the standard's wording, and in pieces against the whole.

#include "input.hpp"
#include "textbook_rainflow.hpp"

#include <fieldshaft/core/error.hpp>
#include <fieldshaft/fatigue.hpp>

using namespace fieldshaft;

namespace {

bool same(const std::vector<Cycle<>>& a, const std::vector<Cycle<>>& b) {
  if (a.size() != b.size()) return false;
  for (std::size_t i = 0; i < a.size(); ++i) {
    if (a[i].range != b[i].range || a[i].mean != b[i].mean || a[i].count != b[i].count) return false;
  }
  return true;
}

} // namespace

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  fuzzing::Bytes bytes(data, size);
  const std::size_t form = bytes.choice(3);
  const std::size_t first_piece = bytes.choice(64);
  std::vector<double> history;
  bool usable = true;
  while (!bytes.empty()) {
    const double sample = form == 0   ? static_cast<double>(bytes.byte())
                          : form == 1 ? bytes.between(-1e3, 1e3)
                                      : bytes.any_number();
    usable = usable && std::abs(sample) < 0x1p1023; // false for NaN
    history.push_back(sample);
  }
  try {
    const std::vector<Cycle<>> rows = count_cycles(history);
    fuzzing::require(usable, "a history that is no number is refused");
    if (form != 2) fuzzing::require(same(rows, textbook::rainflow(history)), "cycles as the standard words it");
    std::vector<Cycle<>> pieces;
    const auto sink = [&pieces](const Cycle<double>& cycle) { pieces.push_back(cycle); };
    CycleCounter counter(sink);
    const std::size_t cut = std::min(first_piece, history.size());
    counter.feed(history.data(), cut);
    counter.feed(history.data() + cut, history.size() - cut);
    counter.finish();
    fuzzing::require(same(rows, pieces), "cycles in pieces as in the whole");
  } catch (const InputError&) {
    fuzzing::require(!usable, "a usable history is counted");
  }
  return 0;
}
