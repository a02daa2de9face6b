#pragma once
// The envelope as a table over yaw and pitch, ready for a picture.

#include <fieldshaft/driveline/envelope.hpp>

#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// Proved bounds at one yaw and pitch, over the whole roll interval: angles and longest not above, shortest not below.
struct EnvelopeTableRow {
  Angle yaw{};
  Angle pitch{};
  Angle front_angle{};
  Angle rear_angle{};
  Angle difference{};
  Length longest{};
  Length shortest{};
};

/// The envelope at evenly spaced yaws and pitches, ends included, yaw running slowest.
///
///   yaw_points, pitch_points  2 to 1000; others as for driveline_envelope, without couplings
/// Each row is proved for its own yaw and pitch; between the rows nothing is claimed: the extremes over the whole range
/// are those of driveline_envelope.
inline std::vector<EnvelopeTableRow> envelope_table(const Driveline& driveline, const Position& pin,
                                                    const AttitudeRange& range, int yaw_points, int pitch_points,
                                                    const EnvelopeOptions& options = {}) {
  constexpr const char* name = "envelope_table";
  check::attitude_range(range, name);
  check::within(yaw_points, 2.0, 1000.0, {name, "yaw_points", ""});
  check::within(pitch_points, 2.0, 1000.0, {name, "pitch_points", ""});
  if (!range.couplings.empty()) fail_input(name, "range", "with couplings", "a range without couplings");
  EnvelopeOptions few = options;
  few.with_speed_variation = false;
  const auto point = [](const AngleRange& r, int i, int points) {
    const double share = static_cast<double>(i) / (points - 1);
    return (1.0 - share) * r.low + share * r.high;
  };
  std::vector<EnvelopeTableRow> table;
  for (int i = 0; i < yaw_points; ++i) {
    for (int j = 0; j < pitch_points; ++j) {
      const Angle yaw = point(range.yaw, i, yaw_points);
      const Angle pitch = point(range.pitch, j, pitch_points);
      const DrivelineEnvelope e = driveline_envelope(driveline, pin, {{yaw, yaw}, {pitch, pitch}, range.roll, {}}, few);
      table.push_back(
          {yaw, pitch, e.front_angle.upper, e.rear_angle.upper, e.difference.upper, e.longest.upper, e.shortest.lower});
    }
  }
  return table;
}

} // namespace v0
} // namespace fieldshaft
