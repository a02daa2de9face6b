#pragma once
// The geometry of changed cases, remembered by state: most changes leave most states of the machine as they were.

#include "assess/geometry.hpp"

#include <string>
#include <unordered_map>

namespace fieldshaft {
inline namespace v0 {
namespace advising {

/// Examines states of the machine and remembers what it found.
class States {
public:
  /// The same as assessing::driveline_over_range, as deep as a search needs it.
  assessing::DrivelineOverRange over_range(const Case& value);

  /// Takes over what was found of a case already, as deep or deeper.
  void know(const Case& value, const assessing::DrivelineOverRange& range);

  /// How many states were examined anew.
  int examined() const noexcept { return examined_; }

private:
  const assessing::DrivelineOverRange& one_state(const Case& value, MachineState state);

  std::unordered_map<std::string, assessing::DrivelineOverRange> known_;
  int examined_ = 0;
};

} // namespace advising
} // namespace v0
} // namespace fieldshaft
