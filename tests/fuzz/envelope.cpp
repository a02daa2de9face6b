// Proved envelopes of any layout: no attitude of the range lies outside, whatever the budget.

#include "input.hpp"

#include <fieldshaft/core/error.hpp>
#include <fieldshaft/driveline.hpp>

using namespace fieldshaft;

namespace {

AngleRange range(fuzzing::Bytes& bytes, double most) {
  const double low = bytes.number(-most, most);
  return {degrees(low), degrees(low + std::abs(bytes.number(0, most)))};
}

Angle inside(fuzzing::Bytes& bytes, const AngleRange& range) {
  const double share = bytes.between(0, 1);
  const Angle angle = range.low + share * (range.high - range.low);
  return std::min(std::max(angle, range.low), range.high);
}

} // namespace

int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) try {
  fuzzing::Bytes bytes(data, size);
  Driveline d;
  d.front_joint = metres(bytes.number(0, 0.4));
  d.rear_joint = metres(bytes.number(0, 0.4));
  d.yoke_phase = degrees(bytes.number(-90, 90));
  d.input = Position(metres(bytes.number(-1.5, 0.1)), metres(bytes.number(-0.4, 0.4)), metres(bytes.number(-0.5, 0.6)));
  const Position pin(metres(-bytes.number(0, 0.8)), metres(bytes.number(-0.3, 0.3)), metres(bytes.number(-0.6, 0.2)));
  AttitudeRange attitudes{range(bytes, 90), range(bytes, 30), range(bytes, 30), {}};
  EnvelopeOptions options;
  options.budget = 1 + static_cast<int>(bytes.choice(256)) * 2;
  const DrivelineEnvelope e = driveline_envelope(d, pin, attitudes, options);
  for (int i = 0; i < 20; ++i) {
    const Attitude at{inside(bytes, attitudes.yaw), inside(bytes, attitudes.pitch), inside(bytes, attitudes.roll)};
    const DrivelineState s = driveline_at(d, {pin, at});
    fuzzing::require(s.front_angle <= e.front_angle.upper, "front angle");
    fuzzing::require(s.rear_angle <= e.rear_angle.upper, "rear angle");
    fuzzing::require(math::abs(s.difference) <= e.difference.upper, "difference");
    fuzzing::require(s.length <= e.longest.upper, "longest");
    fuzzing::require(s.length >= e.shortest.lower, "shortest");
    if (e.speed_variation) fuzzing::require(s.speed_variation <= e.speed_variation->upper, "speed variation");
  }
  fuzzing::require(e.front_angle.lower <= e.front_angle.upper, "bounds in order");
  fuzzing::require(e.longest.lower <= e.longest.upper && e.shortest.lower <= e.shortest.upper, "bounds in order");
  return 0;
} catch (const InputError&) {
  return 0; // refused with words: impossible numbers, joint centres that meet
}
