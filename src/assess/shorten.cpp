#include "assess/shorten.hpp"

namespace fieldshaft {
inline namespace v0 {
namespace assessing {

void shorten(DrivelineCase& line, Length members, Length guard_tubes) {
  const auto by = [](Length cut, Stated<MeasuredLength>& length) {
    if (length) length->value -= cut;
  };
  by(members, line.closed_length);
  by(members, line.closed_overlap);
  by(guard_tubes, line.guard_closed_length);
  by(guard_tubes, line.guard_closed_overlap);
  if (line.greatest_travel) *line.greatest_travel -= members;
  if (!line.middle_member) return;
  by(members, line.middle_member->closed_overlap);
  if (line.middle_member->greatest_travel) *line.middle_member->greatest_travel -= members;
}

} // namespace assessing
} // namespace v0
} // namespace fieldshaft
